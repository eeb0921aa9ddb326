"""Papers for people outside: certificates, and requests for a discharge."""

from __future__ import annotations

from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING

import click

from quarterday.cli.commands.evidence import by_option, folder_option, house_option, written
from quarterday.cli.options import as_of_option, json_option, needs_store, screen_of
from quarterday.cli.screen import Screen

if TYPE_CHECKING:
    from quarterday.office.certifying import Prepared

_language = click.option(
    "--language", "paper", type=click.Choice(["en", "fr"]), default="en", show_default=True,
    help="The language of who gets it.",
)  # fmt: skip
_sent = click.option("--sent", is_flag=True, help="Record that it went out.")


@click.command()
@click.argument("file")
@click.argument("holder")
@click.option("--name", help="Their name, when they are not on file.")
@click.option("--address", help="Their address, in one line.")
@click.option("--for", "purpose", help="What they need it for, in their words.")
@_language
@_sent
@folder_option
@house_option
@by_option
@as_of_option
@json_option
@click.pass_context
@needs_store
def certificate(
    context: click.Context, /, *, file: str, holder: str, name: str | None, address: str | None,
    purpose: str | None, paper: str, sent: bool, out: Path, brand: Path | None, by: str,
    as_of: date, as_json: bool,
) -> None:  # fmt: skip
    """Certify to HOLDER what FILE's policy has in force.

    HOLDER is a lender's or lessor's id on file, or a short name for somebody else: a hall's owner,
    a town, a school. Who asked before is known by the same short name.
    """
    from quarterday.catalogue.speech import Speech
    from quarterday.office import certifying
    from quarterday.office.brand import brokerage
    from quarterday.store import ledger

    screen = screen_of(context)
    told, speech = certifying.Stranger(name, address, purpose), Speech(screen.reference, paper)
    made = certifying.certify(
        ledger.load(file), holder, told, brokerage(brand), speech, day=as_of, by=by
    )
    _finish(screen, made, "cli-certificate", out, by if sent else None, as_json=as_json)


@click.command()
@click.argument("file")
@click.argument("holder")
@_language
@_sent
@folder_option
@house_option
@by_option
@as_of_option
@json_option
@click.pass_context
@needs_store
def discharge(
    context: click.Context, /, *, file: str, holder: str, paper: str, sent: bool, out: Path,
    brand: Path | None, by: str, as_of: date, as_json: bool,
) -> None:  # fmt: skip
    """Ask HOLDER, a lender or lessor of FILE that is paid off, to confirm it in writing."""
    from quarterday.catalogue.speech import Speech
    from quarterday.office import certifying
    from quarterday.office.brand import brokerage
    from quarterday.store import ledger

    screen = screen_of(context)
    speech = Speech(screen.reference, paper)
    made = certifying.ask_discharge(ledger.load(file), holder, brokerage(brand), speech, as_of)
    _finish(screen, made, "cli-discharge", out, by if sent else None, as_json=as_json)


def _finish(
    screen: Screen, made: Prepared, said: str, out: Path, by: str | None, *, as_json: bool
) -> None:
    """Write a paper, record it for ``by`` when it went out, and say so."""
    from quarterday.office import certifying

    if by is not None:
        certifying.send(made, by=by)
    path, record = written(out / made.name, made.pdf), made.record
    if as_json:
        screen.json({"path": str(path), "document": record.document, "holder": record.name,
                     "recorded": by is not None})  # fmt: skip
        return
    screen.say(said, path=str(path), name=record.name, day=record.sent_on)
    if by is None:
        screen.tell("cli-evidence-not-recorded")
