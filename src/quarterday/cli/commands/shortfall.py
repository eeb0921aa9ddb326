"""The whole book's automatic increases against building costs."""

from __future__ import annotations

from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING

import click

from quarterday.cli.options import as_of_option, json_option, needs_store, screen_of
from quarterday.cli.screen import Screen
from quarterday.core.words import Rate, Term

if TYPE_CHECKING:
    from quarterday.core.values.book import Book, Line

HEADS = ("province", "buildings", "increases", "index", "share", "gap", "short")


@click.command()
@as_of_option
@json_option
@click.option("--out", type=click.Path(path_type=Path, dir_okay=False),
              help="Write the chart to this file (SVG).")  # fmt: skip
@click.pass_context
@needs_store
def shortfall(context: click.Context, /, *, as_of: date, as_json: bool, out: Path | None) -> None:
    """Compare the book's automatic increases with building costs, by province."""
    from quarterday.office import shortfall as office

    screen = screen_of(context)
    book = office.of_the_book(
        screen.reference, as_of, lambda files, n: screen.progress(files, n, "cli-reviewing")
    )
    if out is not None:
        out.write_text(office.svg(book, screen.speech), encoding="utf-8")
    if as_json:
        told = office.alternative(book, screen.speech)
        screen.json({**office.plain(book), "as_of": as_of.isoformat(), "in_words": told})
        return
    screen.line(screen.speech.say(office.sentence(book)), style="bold")
    screen.line()
    rows = [_row(screen, book, Term("province", p), line) for p, line in office.ordered(book)]
    rows.append(_row(screen, book, None, book.total))
    screen.table([screen.words(f"shortfall-head-{h}") for h in HEADS], rows, right="123456")
    _notes(screen, book, out)


def _row(screen: Screen, book: Book, place: Term | None, line: Line) -> tuple[str, ...]:
    say = screen.speech
    return (
        say.say(place) if place else screen.words("shortfall-all"),
        f"{line.behind} / {line.buildings}",
        say.rate(Rate(line.increases)),
        say.rate(Rate(line.index)),
        say.rate(Rate(line.behind_share)),
        say.money(book.money(line.gap), cents=False),
        say.money(book.money(line.short), cents=False),
    )


def _notes(screen: Screen, book: Book, out: Path | None) -> None:
    screen.line()
    screen.say("shortfall-note")
    if book.left_out:
        screen.say("shortfall-left-out", n=book.left_out)
    if book.no_renewal:
        screen.say("shortfall-no-renewal", n=book.no_renewal)
    if out is not None:
        screen.say("shortfall-written", path=str(out))
