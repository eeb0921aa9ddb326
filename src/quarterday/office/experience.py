"""The whole book's claims beside its premium, and what they are still to come to."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from typing import Any

from quarterday.catalogue.speech import Speech
from quarterday.core.claims.book import AXES, Axis, BookExperience, Line
from quarterday.core.claims.experience import CAP
from quarterday.core.claims.valuations import Valuations, YearForecast, by_year
from quarterday.core.file.fold import File
from quarterday.core.file.records import Claim
from quarterday.core.money import Money
from quarterday.core.reference import Reference
from quarterday.core.review.case import Case
from quarterday.core.risk.sampling import Sampled, shown
from quarterday.core.values.cost import number
from quarterday.core.words import Term, words
from quarterday.store import ledger

YEARS = "claims.experience-years"
Plain = dict[str, Any]
Seen = tuple[File, tuple[Claim, ...]]  # a file, and its claims in every version on record
Watch = Callable[[Iterator[Seen], int], Iterator[Seen]]


@dataclass(frozen=True, slots=True)
class Found:
    """The experience, the day it is of, and how claims develop; None without two loss runs.

    ``files`` counts those with loss runs of two years in a row.
    """

    as_of: date
    cap: Money
    book: BookExperience
    forecasts: tuple[YearForecast, ...]
    total: YearForecast | None
    files: int


def of_the_book(
    reference: Reference, as_of: date, years: int | None = None, watch: Watch | None = None
) -> Found:
    """Return the book's experience of the last ``years`` (None: as the parameter says).

    ``watch`` sees the files go by, and how many there are. They are read a few at a time.
    """
    ids = ledger.files()
    read = ledger.versions(Claim, ids)
    asked = years or int(number(reference.parameter(YEARS, as_of)))
    book, valuations = BookExperience(asked), Valuations()
    for file, versions in watch(read, len(ids)) if watch else read:
        book.add(Case(file, reference, as_of))
        valuations.add(versions)
    forecasts, total = by_year(valuations) or ((), None)
    cap = book.money(number(reference.parameter(CAP, as_of)))
    return Found(as_of, cap, book, forecasts, total, valuations.files)


def name(axis: Axis, key: str, speech: Speech) -> str:
    """Return what a line is called: a cause, a province, a class, an insurer or a year."""
    if not key:
        return speech.say(words("experience-unknown"))
    if axis in {"cause", "province"}:
        return speech.say(Term(axis, key))
    return speech.say(words(f"organisation-class-{key}")) if axis == "class" else key


def to_come(one: YearForecast, currency: str) -> Money:
    """Return what is still to come, in no more digits than its standard error leaves."""
    more = one.ultimate - one.latest
    return shown(Sampled(more, more - one.error, more + one.error), currency)


def plain(found: Found) -> Plain:
    """Return the experience as JSON can hold it: dollars and ratios as text."""
    book = found.book
    return {
        "as_of": found.as_of.isoformat(),
        "years": book.years,
        "currency": book.currency,
        "cap": f"{found.cap.amount:.2f}",
        "total": _line(book.total),
        **{axis: {key: _line(line) for key, line in book.of(axis)} for axis in AXES},
        "left_out": {
            "no_renewal": book.no_renewal,
            "no_premium": book.no_premium,
            "other_currency": book.other_currency,
        },
        "development": None if found.total is None else {
            "files": found.files,
            "years": {str(one.year): _forecast(one) for one in found.forecasts},
            "total": _forecast(found.total),
        },
    }  # fmt: skip


def _line(line: Line) -> Plain:
    ratios = {"ratio": line.ratio, "capped_ratio": line.capped_ratio}
    return {
        "files": line.files,
        "claims": line.claims,
        "incurred": f"{line.incurred:.2f}",
        "capped": f"{line.capped:.2f}",
        "premium": f"{line.premium:.2f}",
        **{key: None if r is None else f"{r:.4f}" for key, r in ratios.items()},
    }


def _forecast(one: YearForecast) -> Plain:
    amounts = {"latest": one.latest, "ultimate": one.ultimate, "standard_error": one.error}
    return {key: f"{Decimal(repr(amount)):.2f}" for key, amount in amounts.items()}
