"""Invented books: the demo, and books of any size."""

from __future__ import annotations

from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING

import click

from quarterday.cli.commands.serve import ADDRESS
from quarterday.cli.options import DAY, json_option, screen_of, today
from quarterday.cli.screen import Screen
from quarterday.core.words import Term

if TYPE_CHECKING:
    from quarterday.office.books import Demo
    from quarterday.office.packages import Built

SHOWN = 5


@click.command()
@click.option("--out", type=click.Path(path_type=Path, file_okay=False), default=Path("demo"),
              show_default=True, help="The folder to make it in.")  # fmt: skip
@click.option("--workers", type=click.IntRange(1, 64), default=2, show_default=True)
@click.pass_context
def demo(context: click.Context, out: Path, workers: int) -> None:
    """Make a fresh store with an invented book; review a file and build the packages."""
    from quarterday.office import books

    screen = screen_of(context)
    made = books.fresh_demo(out)
    screen.say("cli-demo-workbook", path=str(made.workbook))
    screen.say("cli-demo-loaded", files=made.loaded.files, entries=made.loaded.entries)
    _flagship(screen)
    first = _packages(screen, made, workers)
    screen.line()
    screen.say("cli-demo-packages", path=str(made.packages), first=str(first))
    _desk(screen, made)
    screen.say("cli-demo-rest", store=str(made.store))
    screen.say("cli-demo-fiction")


def _desk(screen: Screen, made: Demo) -> None:
    """Say where the desk opens, and who may sign in with which password."""
    from quarterday.office import books
    from quarterday.office.book import keeping
    from quarterday.office.demo_people import visitors

    keeping.refresh(screen.reference, books.DEMO_DAY)
    screen.say("cli-demo-desk", store=str(made.store), address=ADDRESS)
    for visitor in visitors(books.DEMO_DAY):
        role = Term("role-at-desk", visitor.role)
        screen.say("cli-demo-visitor", name=visitor.name, role=role, email=visitor.email,
                   password=visitor.password)  # fmt: skip


def _flagship(screen: Screen) -> None:
    from quarterday.office import books, reviewing

    day = books.DEMO_DAY
    file, review = reviewing.review_file(books.FLAGSHIP, screen.reference, day)
    screen.line()
    screen.say("cli-demo-flagship", day=day)
    screen.line(f"{file.id}  {file.organisation.name}", style="bold", indent=2)
    for finding in review.findings[:SHOWN]:
        kind = screen.speech.say(Term("finding-kind", finding.kind))
        screen.line(f"{kind} · {screen.speech.say(finding.title)}", indent=2)


def _packages(screen: Screen, made: Demo, workers: int) -> Path:
    """Build the flagship's package signed, in both languages, and everybody's as drafts."""
    from quarterday.office import books, packages, reviewing
    from quarterday.office.brand import brokerage
    from quarterday.store import ledger

    day, flagship, brand = books.DEMO_DAY, books.FLAGSHIP, brokerage()
    reviewer, licence = books.reviewer()
    reviewing.sign(flagship, screen.reference, reviewer=reviewer, licence=licence, as_of=day,
                   by=reviewer)  # fmt: skip
    orders = [packages.Order(flagship, "fr", day, day)]
    orders += [packages.Order(id, None, day, day) for id in ledger.files()]
    results = packages.batch(orders, brand, made.packages, by="demo", workers=workers)
    built: list[Built] = []
    for result in screen.progress(results, len(orders), "cli-building"):
        if isinstance(result, packages.Withheld):
            screen.line(screen.speech.say(result.reason))
        else:
            built.append(result)
    screen.line()
    screen.say("cli-built-many", n=len(built), drafts=sum(b.composed.is_draft for b in built))
    return next(b.path for b in built
                if b.composed.file == flagship and b.composed.language == "en")  # fmt: skip


@click.command("make-book")
@click.option("--files", type=click.IntRange(1, 1_000_000), required=True, help="How many.")
@click.option("--seed", type=int, default=1, show_default=True, help="Same seed, same book.")
@click.option("--as-of", type=DAY, default=today, show_default="today", help="The book's day.")
@click.option("--out", type=click.Path(path_type=Path), required=True,
              help="A workbook (.xlsx), or a folder for CSV files.")  # fmt: skip
@json_option
@click.pass_context
def make_book(
    context: click.Context, /, *, files: int, seed: int, as_of: date, out: Path, as_json: bool
) -> None:
    """Write an invented book of any size."""
    from quarterday.office import books

    screen = screen_of(context)
    path = books.write_book(files, seed, as_of, out)
    if as_json:
        screen.json({"files": files, "seed": seed, "as_of": as_of.isoformat(), "path": str(path)})
    else:
        screen.say("cli-made-book", files=files, path=str(path))
