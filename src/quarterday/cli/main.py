"""The program ``quarterday``: its options, its commands, and how it tells of trouble."""

from __future__ import annotations

from collections.abc import Mapping
from importlib import import_module
from pathlib import Path
from typing import Any

import click

from quarterday.cli.screen import Screen
from quarterday.cli.trouble import sentences

STOPPED = 1
WHOLE = 300  # letters of a sentence that are shown
# Commands by what they are for, each with the module and name of its function. A module is read
# when its command is asked for: what the house computes takes longer to read than a list to print.
GROUPS: Mapping[str, Mapping[str, str]] = {
    "The book": {
        "start": "accounts.start",
        "demo": "books.demo",
        "make-book": "books.make_book",
        "load": "loading.load",
        "list": "accounts.list_renewals",
        "show": "accounts.show",
        "history": "accounts.history",
        "book": "book.book",
        "experience": "experience.experience",
        "shortfall": "shortfall.shortfall",
    },
    "A renewal": {
        "review": "reviewing.review_files",
        "why": "reviewing.why",
        "risk": "risk.risk",
        "pay": "terms.pay",
        "compare": "terms.compare",
        "premium": "premium.premium",
        "sign": "reviewing.sign",
    },
    "Papers": {
        "package": "packages.package",
        "seal": "evidence.seal",
        "certificate": "outside.certificate",
        "discharge": "outside.discharge",
        "request": "asking.request",
        "bordereau": "evidence.bordereau",
        "evidence": "evidence.evidence",
        "brand": "branding.brand",
    },
    "What comes back, and the acts of the year": {
        "read": "reading.read",
        "decide": "acts.decide",
        "payment": "acts.payment",
        "deliver": "acts.deliver",
        "bind": "acts.bind",
        "check": "acts.check",
        "undo": "undoing.undo",
    },
    "Keeping and proving": {
        "verify": "proof.verify",
        "export": "evidence.export",
        "backup": "keeping.backup",
        "restore": "keeping.restore",
        "new-seal-key": "keeping.new_seal_key",
        "redact": "removing.redact",
        "erase": "removing.erase",
    },
    "Catalogues, and calculations on their own": {
        "rules": "reference.rules",
        "causes": "reference.causes",
        "coverages": "reference.coverages",
        "parameters": "reference.parameters",
        "not-covered": "reference.not_covered_here",
        "calc": "calc.calc",
    },
    "The desk": {
        "serve": "serve.serve",
        "person": "serve.person",
        "key": "keys.key",
    },
}
COMMANDS = {name: found for group in GROUPS.values() for name, found in group.items()}


class Program(click.Group):
    """Commands that tell of trouble in a sentence, in the person's language, and stop."""

    def list_commands(self, ctx: click.Context) -> list[str]:  # noqa: ARG002 - as click has it
        """Return the names of the commands, in the order of the help."""
        return [*COMMANDS]

    def format_commands(self, ctx: click.Context, formatter: click.HelpFormatter) -> None:
        """Write the commands by what they are for, each with all of its first sentence."""
        for heading, group in GROUPS.items():
            found = ((name, self.get_command(ctx, name)) for name in group)
            with formatter.section(heading):
                formatter.write_dl([(n, c.get_short_help_str(WHOLE)) for n, c in found if c])

    def get_command(self, ctx: click.Context, cmd_name: str) -> click.Command | None:  # noqa: ARG002
        """Return a command; None when there is none of that name."""
        if cmd_name not in COMMANDS:
            return None
        module, name = COMMANDS[cmd_name].split(".")
        found = getattr(import_module(f"quarterday.cli.commands.{module}"), name)
        assert isinstance(found, click.Command)
        return found

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


def main() -> None:
    """Run the program: exit 0 done, 1 stopped by what was found, 2 wrong usage."""
    cli()
