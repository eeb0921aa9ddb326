"""Build packages, and record their delivery."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING

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

if TYPE_CHECKING:
    from quarterday.office.package_run import Result
    from quarterday.office.packages import Built

SHOWN = 20  # packages that were withheld, on the screen


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
    """Build the packages of FILES, of a day, a month or the book, as PDF.

    More than one is a run: stopped and repeated, it goes on where it was, and it leaves a report.
    """
    from quarterday.office import package_run, packages
    from quarterday.office.brand import brokerage

    screen = screen_of(context)
    ids = chosen_files(screen, files, due, everything)
    orders = [packages.Order(id, paper, as_of, today()) for id in ids]
    if len(orders) == 1:
        made = packages.keep(packages.compose(orders[0], brokerage(brand)), out, "cli")
        _tell_one(screen, made, as_json)
        return
    going = package_run.run(orders, brokerage(brand), out, by="cli", workers=workers)
    results = list(screen.progress(going, len(orders), "cli-building"))
    report = package_run.report(results, out, screen.speech)
    _tell_run(screen, results, (out, report), as_json)


def _tell_one(screen: Screen, built: Built, as_json: bool) -> None:
    if as_json:
        screen.json({"built": [{**built.plain, "path": str(built.path)}], "withheld": []})
        return
    _enclosed(screen, built)


def _tell_run(
    screen: Screen, results: Sequence[Result], where: tuple[Path, Path], as_json: bool
) -> None:
    from quarterday.office.package_run import Done
    from quarterday.office.packages import Withheld

    out, report = where
    built = sorted((r for r in results if isinstance(r, Done)), key=lambda d: d.name)
    withheld = [r for r in results if isinstance(r, Withheld)]
    if as_json:
        screen.json({"built": [{**d.plain, "path": str(out / d.name)} for d in built],
                     "report": str(report),
                     "withheld": [{"file": w.file, "reason": screen.speech.say(w.reason)}
                                  for w in withheld]})  # fmt: skip
        return
    screen.say("cli-run-built", n=sum(not d.earlier_run for d in built),
               drafts=sum(d.draft and not d.earlier_run for d in built),
               earlier=sum(d.earlier_run for d in built), withheld=len(withheld))  # fmt: skip
    for one in withheld[:SHOWN]:
        screen.line(screen.speech.say(one.reason), indent=2)
    if len(withheld) > SHOWN:
        screen.line(screen.words("cli-run-more", n=len(withheld) - SHOWN), indent=2)
    screen.say("cli-run-report", path=str(report))


def _enclosed(screen: Screen, built: Built) -> None:
    screen.say("cli-built-one", path=str(built.path), version=built.composed.version)
    if built.composed.is_draft:
        screen.say("cli-draft", file=built.composed.file)
    for paper, reason in built.composed.enclosed:
        screen.line(f"{screen.speech.say(Term('paper', paper))} – {screen.speech.say(reason)}",
                    indent=2)  # fmt: skip
