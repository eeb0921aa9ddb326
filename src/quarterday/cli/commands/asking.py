"""Ask the insurer for what was changed and decided, on paper or by e-mail."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING

import click

from quarterday.cli.commands.evidence import by_option, folder_option, house_option, written
from quarterday.cli.letters import letter_options, own_words
from quarterday.cli.options import as_of_option, json_option, needs_store, screen_of
from quarterday.cli.screen import Screen

if TYPE_CHECKING:
    from quarterday.catalogue.speech import Speech
    from quarterday.office.delivering import Letter
    from quarterday.office.requesting import Prepared
    from quarterday.papers.brokerage import Brokerage


@click.command()
@click.argument("file")
@click.option("--language", "paper", type=click.Choice(["en", "fr"]), default="en",
              show_default=True, help="The insurer's language.")  # fmt: skip
@click.option("--sent", is_flag=True, help="Record that it went to the insurer.")
@letter_options
@folder_option
@house_option
@by_option
@as_of_option
@json_option
@click.pass_context
@needs_store
def request(
    context: click.Context, /, *, file: str, paper: str, sent: bool, address: str | None,
    subject: str | None, message: Path | None, out: Path, brand: Path | None, by: str,
    as_of: date, as_json: bool,
) -> None:  # fmt: skip
    """Ask the insurer for what was changed and decided on FILE since the last request.

    It is written as a letter, a table and JSON; with --mail the letter goes out too.
    """
    from quarterday.catalogue.speech import Speech
    from quarterday.office import requesting
    from quarterday.office.brand import brokerage

    screen, house = screen_of(context), brokerage(brand)
    own = own_words(screen, address, subject, message, by=by)
    made = requesting.prepare(file, screen.reference, house, as_of, paper)
    parts = {"pdf": made.pdf, "csv": made.csv, "json": made.json}
    paths = [written(out / f"{made.name}.{kind}", data) for kind, data in parts.items()]
    if address is not None:
        letter = _usual(made, house, Speech(screen.reference, paper), address, by).worded(*own)
        requesting.mail(made, letter, house, paper, by=by)
    elif sent:
        requesting.send(made, by=by)
    _tell(screen, made, paths, address, is_recorded=sent or address is not None, as_json=as_json)


def _usual(made: Prepared, house: Brokerage, speech: Speech, address: str, by: str) -> Letter:
    """Return the usual words that go with a request to an address."""
    from quarterday.office import requesting
    from quarterday.office.telling import signer
    from quarterday.store import ledger

    held = ledger.load(made.request.file)
    usual = requesting.usual_letter(held, made, house, speech, signer(by))
    return replace(usual, address=address)


def _tell(
    screen: Screen, made: Prepared, paths: list[Path], address: str | None, *, is_recorded: bool,
    as_json: bool,
) -> None:  # fmt: skip
    """Say what was asked, where it is, and whether it went."""
    asked = made.request
    if as_json:
        screen.json({"paths": [str(path) for path in paths], "number": asked.number,
                     "changes": len(made.moved), "taken_back": asked.gone,
                     "recorded": is_recorded, "address": address})  # fmt: skip
        return
    insurer = asked.terms.insurer or "–"
    screen.say("cli-request", path=str(paths[0]), number=asked.number, insurer=insurer,
               n=len(made.moved))  # fmt: skip
    if asked.gone:
        screen.say("cli-request-gone", n=asked.gone, left=asked.changes)
    if address is not None:
        screen.say("cli-mailed", file=asked.file, to=insurer, address=address)
    elif not is_recorded:
        screen.tell("cli-request-not-recorded")
