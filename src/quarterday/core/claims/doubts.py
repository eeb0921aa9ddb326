"""Claims that cannot be as the loss run shows them, each with what contradicts what."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from typing import Literal

from quarterday.core.file.records import Claim
from quarterday.core.review.case import Case

Kind = Literal[
    "closed-with-reserve",
    "negative-reserve",
    "recovered-more",
    "reported-before",
    "valued-before",
    "in-the-future",
    "before-founded",
    "above-value",
]


@dataclass(frozen=True, slots=True)
class Doubt:
    """One thing about a claim that cannot be, with the fields that say it and what it is beside.

    ``beside`` is the amount, the day or the year that contradicts.
    """

    claim: Claim
    kind: Kind
    fields: tuple[str, ...]
    beside: Decimal | date | int | None = None


def doubts(case: Case, claim: Claim) -> Iterator[Doubt]:
    """Yield what cannot be about one claim."""
    for kind, fields, test in _TESTS:
        found = test(case, claim)
        if found is not None:
            yield Doubt(claim, kind, fields, found)


Found = Decimal | date | int | None


def _closed(_: Case, claim: Claim) -> Found:
    return claim.outstanding if claim.status == "closed" and claim.outstanding > 0 else None


def _negative(_: Case, claim: Claim) -> Found:
    return claim.outstanding if claim.outstanding < 0 else None


def _recovered(_: Case, claim: Claim) -> Found:
    return claim.recovered if claim.recovered > claim.paid + claim.outstanding else None


def _reported(_: Case, claim: Claim) -> Found:
    day = claim.reported_on
    return day if day is not None and day < claim.date_of_loss else None


def _valued(_: Case, claim: Claim) -> Found:
    day = claim.valued_on
    return day if day is not None and day < claim.date_of_loss else None


def _future(case: Case, claim: Claim) -> Found:
    return case.as_of if claim.date_of_loss > case.as_of else None


def _founded(case: Case, claim: Claim) -> Found:
    year = case.file.organisation.founded_year
    return year if year and claim.date_of_loss.year < year else None


def _value(case: Case, claim: Claim) -> Found:
    """Return the value of the building when a claim for damage to it alone is larger."""
    cause = case.reference.causes.get(claim.cause)
    picture = case.pictures.get(claim.location or "")
    if cause is None or cause.party == "third" or picture is None or picture.costs is None:
        return None
    worth = picture.costs.at_term_end.money.amount
    return worth if claim.ground_up > worth else None


_TESTS: tuple[tuple[Kind, tuple[str, ...], Callable[[Case, Claim], Found]], ...] = (
    ("closed-with-reserve", ("status", "outstanding"), _closed),
    ("negative-reserve", ("outstanding",), _negative),
    ("recovered-more", ("recovered", "paid"), _recovered),
    ("reported-before", ("reported_on", "date_of_loss"), _reported),
    ("valued-before", ("valued_on", "date_of_loss"), _valued),
    ("in-the-future", ("date_of_loss",), _future),
    ("before-founded", ("date_of_loss",), _founded),
    ("above-value", ("paid",), _value),
)
