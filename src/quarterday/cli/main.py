"""The program ``quarterday``: its options, its commands, and how it tells of trouble."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import click

from quarterday.cli.commands import (
    accounts,
    acts,
    book,
    books,
    branding,
    calc,
    evidence,
    experience,
    keeping,
    keys,
    loading,
    outside,
    packages,
    premium,
    proof,
    reading,
    reference,
    removing,
    reviewing,
    risk,
    serve,
    shortfall,
    terms,
)
from quarterday.cli.screen import Screen
from quarterday.cli.trouble import sentences

STOPPED = 1


class Program(click.Group):
    """Commands that tell of trouble in a sentence, in the person's language, and stop."""

    def invoke(self, ctx: click.Context) -> Any:  # noqa: ANN401 - as click has it
        """Run the command that was named; exit 1 when something a person can mend is wrong."""
        try:
            return super().invoke(ctx)
        except click.exceptions.ClickException:
            raise
        except Exception as trouble:
            screen = ctx.find_object(Screen)
            told = tuple(sentences(trouble, screen.language if screen else "en"))
            if not told:
                raise
            click.echo("\n".join(told), err=True)
            ctx.exit(STOPPED)


@click.group(
    cls=Program, context_settings={"help_option_names": ["-h", "--help"], "max_content_width": 80}
)
@click.option(
    "--store",
    envvar="QUARTERDAY_STORE",
    help="Folder of the embedded store, or the address of a PostgreSQL database.",
)
@click.option("--language", envvar="QUARTERDAY_LANGUAGE", type=click.Choice(["en", "fr"]),
              default="en", show_default=True, help="The language to speak.")  # fmt: skip
@click.option("--reference", "own", envvar="QUARTERDAY_REFERENCE",
              type=click.Path(path_type=Path, file_okay=False),
              help="Folder of the brokerage's own data; default: beside the store.")  # fmt: skip
@click.version_option(package_name="quarterday", prog_name="quarterday")
@click.pass_context
def cli(context: click.Context, store: str | None, language: str, own: Path | None) -> None:
    """Yearly insurance renewals of volunteer-run organisations.

    Load what a brokerage knows, review a file, ask why, build the package, prove it later.
    """
    from quarterday.office import own_data, worker
    from quarterday.store import setup

    worker.collect_rarely()
    setup.configure(store)
    if own is not None:
        own_data.choose(own)
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
    terms.pay,
    terms.compare,
    reviewing.sign,
    risk.risk,
    packages.package,
    premium.premium,
    reading.read,
    acts.decide,
    acts.payment,
    acts.deliver,
    acts.bind,
    acts.check,
    proof.verify,
    removing.redact,
    removing.erase,
    keeping.backup,
    keeping.restore,
    keeping.new_seal_key,
    evidence.seal,
    evidence.evidence,
    branding.brand,
    outside.certificate,
    outside.discharge,
    evidence.request,
    evidence.bordereau,
    evidence.export,
    reference.rules,
    reference.causes,
    reference.coverages,
    reference.parameters,
    reference.not_covered_here,
    shortfall.shortfall,
    experience.experience,
    book.book,
    calc.calc,
    serve.serve,
    serve.person,
    keys.key,
):
    cli.add_command(command)


def main() -> None:
    """Run the program: exit 0 done, 1 stopped by what was found, 2 wrong usage."""
    cli()
