"""Build packages, and record their delivery."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date
from pathlib import Path

import click

from quarterday.cli.choice import chosen_files
from quarterday.cli.options import (
    DAY,
    all_option,
    due_option,
    json_option,
    needs_store,
    screen_of,
    today,
)
from quarterday.cli.screen import Screen
from quarterday.core.words import Term


@click.command()
@click.argument("files", nargs=-1)
@due_option
@all_option
@click.option("--out", type=click.Path(path_type=Path, file_okay=False), default=Path("packages"),
              show_default=True, help="The folder to write to.")  # fmt: skip
@click.option("--language", "paper", type=click.Choice(["en", "fr"]),
              help="The package's language; default: the organisation's.")  # fmt: skip
@click.option("--as-of", type=DAY, help="The day of the review; default: of the signed one.")
@click.option("--brokerage", "brand", type=click.Path(exists=True, path_type=Path),
              help="The file that describes the brokerage.")  # fmt: skip
@click.option("--workers", type=click.IntRange(1, 64), default=2, show_default=True)
@json_option
@click.pass_context
@needs_store
def package(
    context: click.Context, /, *, files: tuple[str, ...], due: tuple[date, date] | None,
    everything: bool, out: Path, paper: str | None, as_of: date | None, brand: Path | None,
    workers: int, as_json: bool,
) -> None:  # fmt: skip
    """Build the packages of FILES as PDF."""
    from quarterday.office import packages
    from quarterday.office.brand import brokerage

    screen = screen_of(context)
    ids = chosen_files(screen, files, due, everything)
    orders = [packages.Order(id, paper, as_of, today()) for id in ids]
    if len(orders) == 1:
        done = [packages.keep(packages.compose(orders[0], brokerage(brand)), out, "cli")]
        results: list[packages.Built | packages.Withheld] = [*done]
    else:
        made = packages.batch(orders, brokerage(brand), out, by="cli", workers=workers)
        results = list(screen.progress(made, len(orders), "cli-building"))
    _tell(screen, results, as_json)


def _tell(screen: Screen, results: Iterable[object], as_json: bool) -> None:
    from quarterday.office.packages import Built, Withheld

    built = sorted((r for r in results if isinstance(r, Built)), key=lambda b: b.path)
    withheld = [r for r in results if isinstance(r, Withheld)]
    if as_json:
        screen.json({"built": [{**b.plain, "path": str(b.path)} for b in built],
                     "withheld": [{"file": w.file, "reason": screen.speech.say(w.reason)}
                                  for w in withheld]})  # fmt: skip
        return
    if len(built) == 1:
        _enclosed(screen, built[0])
    else:
        screen.say("cli-built-many", n=len(built), drafts=sum(b.composed.is_draft for b in built))
    for one in withheld:
        screen.line(screen.speech.say(one.reason))


def _enclosed(screen: Screen, built: object) -> None:
    from quarterday.office.packages import Built

    assert isinstance(built, Built)
    screen.say("cli-built-one", path=str(built.path), version=built.composed.version)
    if built.composed.is_draft:
        screen.say("cli-draft", file=built.composed.file)
    for paper, reason in built.composed.enclosed:
        screen.line(f"{screen.speech.say(Term('paper', paper))} – {screen.speech.say(reason)}",
                    indent=2)  # fmt: skip
