"""Automatic yearly increases against the construction index."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date
from decimal import Decimal

from quarterday.core.dates import add_years
from quarterday.core.money import Money


@dataclass(frozen=True, slots=True)
class Applied:
    """The increases between two days: their product, each renewal's rate, which are assumed."""

    ratio: Decimal
    rates: tuple[tuple[date, Decimal], ...]
    assumed: tuple[date, ...]


@dataclass(frozen=True, slots=True)
class Shortfall:
    """How far increases stayed behind an index: a share of today's cost, and money.

    Both are negative when the increases ran ahead.
    """

    share: Decimal
    money: Money


def renewals_between(start: date, renewal: date) -> tuple[date, ...]:
    """Return the renewals after ``start`` up to and including ``renewal``, oldest first."""
    found, back = [], 0
    while (day := add_years(renewal, -back)) > start:
        found.append(day)
        back += 1
    return tuple(reversed(found))


def applied(start: date, renewal: date, known: Mapping[date, Decimal]) -> Applied:
    """Return the yearly increases applied after ``start`` up to and including ``renewal``.

    ``known`` holds the rate (a ratio) by the renewal it was applied at. A renewal without one is
    assumed to have had the rate of the nearest later one, else of the nearest earlier one; with
    nothing known at all LookupError.
    """
    if not known:
        raise LookupError("No terms on file state a yearly automatic increase.")
    days = renewals_between(start, renewal)
    rates = tuple((day, _rate_on(day, known)) for day in days)
    ratio = Decimal(1)
    for _, rate in rates:
        ratio *= 1 + rate
    return Applied(ratio, rates, tuple(day for day in days if day not in known))


def _rate_on(day: date, known: Mapping[date, Decimal]) -> Decimal:
    nearest = min((d for d in known if d >= day), default=max(known))
    return known[nearest]


def shortfall(value: Money, increases: Decimal, index: Decimal) -> Shortfall:
    """Compare a value grown by ``increases`` with the same grown by ``index`` (both ratios)."""
    return Shortfall(1 - increases / index, value * (index - increases))
