"""The whole book's claims beside its premium."""

from __future__ import annotations

from datetime import date
from decimal import Decimal
from typing import TYPE_CHECKING

import click

from quarterday.cli.options import as_of_option, json_option, needs_store, screen_of
from quarterday.cli.screen import Screen
from quarterday.core.words import Rate

if TYPE_CHECKING:
    from quarterday.core.claims.book import Axis, Line
    from quarterday.core.claims.valuations import YearForecast
    from quarterday.office.experience import Found

CHOICES: tuple[Axis, ...] = ("cause", "province", "class", "insurer", "year")
HEADS = ("files", "claims", "incurred", "premium", "ratio", "capped")


@click.command()
@click.option("--by", type=click.Choice(CHOICES), multiple=True,
              help="What to divide the book by; may be repeated. Default: all five.")  # fmt: skip
@click.option("--years", type=click.IntRange(1, 50),
              help="Policy years back from each renewal.")  # fmt: skip
@as_of_option
@json_option
@click.pass_context
@needs_store
def experience(
    context: click.Context, /, *, by: tuple[Axis, ...], years: int | None, as_of: date,
    as_json: bool,
) -> None:  # fmt: skip
    """Compare the book's claims with its premium, and tell what claims may still come to."""
    from quarterday.office import experience as office

    screen = screen_of(context)
    found = office.of_the_book(
        screen.reference, as_of, years, lambda seen, n: screen.progress(seen, n, "cli-reviewing")
    )
    if as_json:
        screen.json(office.plain(found))
        return
    _head(screen, found)
    for axis in by or CHOICES:
        screen.line()
        _table(screen, found, axis)
    screen.line()
    _development(screen, found)
    _notes(screen, found)


def _head(screen: Screen, found: Found) -> None:
    total = found.book.total
    ratio = total.ratio
    screen.say(
        "experience-sentence",
        case="none" if ratio is None else "some",
        years=found.book.years,
        files=total.files,
        claims=total.claims,
        incurred=found.book.money(total.incurred).rounded(Decimal(1)),
        premium=found.book.money(total.premium).rounded(Decimal(1)),
        ratio=Rate(ratio or total.incurred, 0),
    )


def _table(screen: Screen, found: Found, axis: Axis) -> None:
    from quarterday.office.experience import name

    rows = [
        (name(axis, key, screen.speech), *_row(screen, found, line))
        for key, line in found.book.of(axis)
    ]
    if axis != "cause":
        rows.append((screen.words("shortfall-all"), *_row(screen, found, found.book.total)))
    heads = (screen.words(f"experience-by-{axis}"), *(screen.words(f"experience-head-{h}")
                                                     for h in HEADS))  # fmt: skip
    screen.table(heads, rows, right="123456")


def _row(screen: Screen, found: Found, line: Line) -> tuple[str, ...]:
    say, money = screen.speech, found.book.money
    ratios = (line.ratio, line.capped_ratio)
    return (
        str(line.files),
        str(line.claims),
        *(say.money(money(amount), cents=False) for amount in (line.incurred, line.premium)),
        *("–" if ratio is None else say.rate(Rate(ratio, 0)) for ratio in ratios),
    )


def _development(screen: Screen, found: Found) -> None:
    if found.total is None:
        screen.say("experience-no-development")
        return
    rows = [_forecast(screen, found, one) for one in (*found.forecasts, found.total)]
    heads = [screen.words(f"experience-head-{h}") for h in ("loss-year", "latest", "to-come",
                                                           "error")]  # fmt: skip
    screen.table(heads, rows, right="123")
    screen.say("experience-development", files=found.files)
    screen.line()


def _forecast(screen: Screen, found: Found, one: YearForecast) -> tuple[str, ...]:
    from quarterday.office.experience import to_come

    def said(amount: float) -> str:
        whole = found.book.money(Decimal(round(amount)))
        return screen.speech.money(whole, cents=False)

    year = str(one.year) if one.year else screen.words("shortfall-all")
    more = screen.speech.money(to_come(one, found.book.currency), cents=False)
    return year, said(one.latest), more, said(one.error)


def _notes(screen: Screen, found: Found) -> None:
    screen.say("experience-note", cap=found.cap)
    for id, count in (
        ("no-premium", found.book.no_premium),
        ("other-currency", found.book.other_currency),
        ("no-renewal", found.book.no_renewal),
    ):
        if count:
            screen.say(f"experience-left-out-{id}", n=count)
