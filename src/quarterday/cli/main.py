"""The program ``quarterday``: its options, its commands, and how it tells of trouble."""

from __future__ import annotations

import os
import sys

import click

from quarterday.cli.commands import (
    accounts,
    books,
    calc,
    loading,
    packages,
    proof,
    reference,
    reviewing,
)
from quarterday.cli.screen import Screen
from quarterday.cli.trouble import sentences

LANGUAGE = "QUARTERDAY_LANGUAGE"
STOPPED = 1


@click.group(context_settings={"help_option_names": ["-h", "--help"], "max_content_width": 80})
@click.option("--store", envvar="QUARTERDAY_STORE",
              help="Folder of the embedded store, or the address of a PostgreSQL database.")  # fmt: skip
@click.option("--language", envvar=LANGUAGE, type=click.Choice(["en", "fr"]),
              default="en", show_default=True, help="The language to speak.")  # fmt: skip
@click.version_option(package_name="quarterday", prog_name="quarterday")
@click.pass_context
def cli(context: click.Context, store: str | None, language: str) -> None:
    """Yearly insurance renewals of volunteer-run organisations.

    Load what a brokerage knows, review a file, ask why, build the package, prove it later.
    """
    from quarterday.store import setup

    setup.configure(store)
    os.environ[LANGUAGE] = language  # the programs that this one starts speak it too
    context.obj = Screen(language)


for command in (
    accounts.start,
    books.demo,
    books.make_book,
    loading.load,
    accounts.list_renewals,
    accounts.show,
    accounts.history,
    reviewing.review_files,
    reviewing.why,
    reviewing.sign,
    packages.package,
    proof.verify,
    reference.rules,
    reference.causes,
    reference.coverages,
    reference.parameters,
    calc.calc,
):
    cli.add_command(command)


def main() -> None:
    """Run the program: exit 0 done, 1 stopped by what was found, 2 wrong usage."""
    try:
        cli.main(standalone_mode=False)
    except click.exceptions.Exit as stop:
        sys.exit(stop.exit_code)
    except click.Abort:
        sys.exit(130)
    except click.ClickException as wrong:
        wrong.show()
        sys.exit(wrong.exit_code)
    except BrokenPipeError:
        sys.exit(STOPPED)
    except Exception as trouble:
        told = tuple(sentences(trouble, os.environ.get(LANGUAGE, "en")))
        if not told:
            raise
        click.echo("\n".join(told), err=True)
        sys.exit(STOPPED)
