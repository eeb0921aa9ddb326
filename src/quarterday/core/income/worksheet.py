"""Loss of income month by month, for every month in which it could begin.

A loss stops the income of whole months, from the first of the month in which it begins until the
building can be used again. Income and expenses are those of the year before the coming term; in
its first twelve months they are one year's growth higher, in the next twelve two years', and so on.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from itertools import accumulate
from typing import Literal

from quarterday.core.dates import add_months
from quarterday.core.file.records.terms import CoinsuranceOf
from quarterday.core.money import Money, total

YEAR = 12
ZERO = Decimal(0)
Kind = Literal["donations", "rents", "tuition", "events", "other"]
COUNTED = "income.clause-counts-stopping"
_COUNTS: dict[CoinsuranceOf, Decimal] = {"whole-income": Decimal(1), "less-stopping": ZERO}


@dataclass(frozen=True, slots=True)
class Kept:
    """The share of an income that still comes in while displaced: a ratio from 0 to 1.

    It is ``first`` in the first month and moves in a straight line to ``settled``, which it reaches
    after ``months`` months.
    """

    first: Decimal
    settled: Decimal
    months: int = 0

    def in_month(self, number: int) -> Decimal:
        """Return the share kept in a month of the displacement, the first one numbered 0."""
        if number >= self.months:
            return self.settled
        return self.first + (self.settled - self.first) * number / self.months


@dataclass(frozen=True, slots=True)
class Stream:
    """One kind of income: its year, the share of each calendar month (January first), what stays.

    The twelve shares are ratios that add up to one.
    """

    kind: str
    yearly: Money
    shares: tuple[Decimal, ...]
    kept: Kept


@dataclass(frozen=True, slots=True)
class Expense:
    """An expense of a year, spread evenly, and the share of it (a ratio) that goes on."""

    yearly: Money
    continues: Decimal

    @property
    def stops(self) -> Money:
        """What a year of closure saves of it."""
        return self.yearly * (1 - self.continues)


def counted_part(of: CoinsuranceOf | None, usual: Decimal) -> Decimal:
    """Return the share of the expenses that stop which a clause counts; ``usual`` when unsaid."""
    return usual if of is None else _COUNTS[of]


@dataclass(frozen=True, slots=True)
class Year:
    """A year's income, and the expenses of that year that end with a closure."""

    income: Money
    stops: Money

    def counted(self, part: Decimal) -> Money:
        """Return the income less the expenses that stop, of which ``part`` (a ratio) counts.

        Never below zero.
        """
        return max(self.income - self.stops * (1 - part), self.income * 0)


def year_of(incomes: Iterable[Money], expenses: Iterable[Expense], grown: Decimal) -> Year:
    """Return a year's income and what stops of its expenses, both ``grown`` by a factor."""
    income = total(incomes)
    stops = total((expense.stops for expense in expenses), income.currency)
    return Year(income * grown, stops * grown)


@dataclass(frozen=True, slots=True)
class Closure:
    """How long the building is closed, from when the term runs, and what living elsewhere costs.

    ``first`` is the first day of the month in which the coming term begins; ``growth`` a ratio a
    year; ``rent`` the cost of a month elsewhere; ``moving`` what is paid once.
    """

    first: date
    months: int
    growth: Decimal
    rent: Money
    moving: Money


@dataclass(frozen=True, slots=True)
class Month:
    """A month of closure: what would have come in, what still does, what is not spent, and extra.

    ``lost`` may be below zero in a month in which closing saves more than it costs.
    """

    first_day: date
    income: Money
    kept: Money
    saved: Money
    extra: Money

    @property
    def lost(self) -> Money:
        """The income that is lost, less the expenses that stop."""
        return self.income - self.kept - self.saved


@dataclass(frozen=True, slots=True)
class Outage:
    """A closure that begins in one month, month by month."""

    months: tuple[Month, ...]

    @property
    def start(self) -> date:
        """The first day of the closure."""
        return self.months[0].first_day

    @property
    def lost(self) -> Money:
        """What the whole closure loses; never below zero."""
        lost = total(month.lost for month in self.months)
        return max(lost, lost * 0)

    @property
    def extra(self) -> Money:
        """What living elsewhere costs over the whole closure."""
        return total(month.extra for month in self.months)

    def lasts(self, limit: Money) -> int:
        """Return for how many whole months from the start ``limit`` pays everything lost."""
        spent = accumulate(month.lost for month in self.months)
        return next((n for n, so_far in enumerate(spent) if so_far > limit), len(self.months))

    def shown(self, unit: Decimal) -> tuple[Money, ...]:
        """Return the months' losses rounded so that they add up to their rounded total."""
        so_far = [sum_.rounded(unit) for sum_ in accumulate(m.lost for m in self.months)]
        return tuple(
            now - before for before, now in zip([so_far[0] * 0, *so_far], so_far, strict=False)
        )


@dataclass(frozen=True, slots=True)
class Worksheet:
    """The income of an organisation, its expenses, and the closure to reckon with."""

    streams: tuple[Stream, ...]
    expenses: tuple[Expense, ...]
    closure: Closure

    @property
    def outages(self) -> tuple[Outage, ...]:
        """The closures that begin in each month of the coming term, the earliest first."""
        kept = self._kept()
        return tuple(self._outage(usual, kept) for usual in self._spans())

    @property
    def worst(self) -> Outage:
        """The closure that loses most; the earliest of equals."""
        kept = self._kept()
        return self._outage(max(self._spans(), key=lambda usual: _lost(usual, kept)), kept)

    @property
    def usual(self) -> Money:
        """What a closure loses on average over the twelve months in which it may begin."""
        kept = self._kept()
        lost = sum((_lost(usual, kept) for usual in self._spans()), ZERO)
        return Money(lost / YEAR, self.closure.rent.currency)

    @property
    def year(self) -> Year:
        """The income of the coming term's year, and what would stop of its expenses."""
        return year_of((stream.yearly for stream in self.streams), self.expenses, self._grown(0))

    def largest_share(self) -> Decimal:
        """Return the largest share of a year's income that a closure of this length can stop.

        For closures of up to a year; growth and what is kept aside.
        """
        year = [_in_month(self.streams, month) for month in range(1, YEAR + 1)]
        whole = total(year)
        spans = ([year[(s + n) % YEAR] for n in range(self.closure.months)] for s in range(YEAR))
        return max(total(span).ratio(whole) for span in spans) if whole else Decimal(0)

    def _grown(self, months: int) -> Decimal:
        return (1 + self.closure.growth) ** (months // YEAR + 1)

    def _spans(self) -> Iterator[Sequence[_Usual]]:
        """Yield the months of a closure that begins in each month of the coming term."""
        usual = [self._usual(n) for n in range(YEAR + self.closure.months - 1)]
        return (usual[start : start + self.closure.months] for start in range(YEAR))

    def _kept(self) -> Sequence[Sequence[Decimal]]:
        """Return the shares kept, by month of the closure and stream."""
        numbers = range(self.closure.months)
        return [[stream.kept.in_month(n) for stream in self.streams] for n in numbers]

    def _usual(self, number: int) -> _Usual:
        """Return what a month would bring, the term's first one numbered 0."""
        day, grown = add_months(self.closure.first, number), self._grown(number)
        incomes = [s.yearly.amount * s.shares[day.month - 1] * grown for s in self.streams]
        return _Usual(
            day, incomes, sum((e.stops.amount for e in self.expenses), ZERO) * grown / YEAR
        )

    def _outage(self, usual: Sequence[_Usual], kept: Sequence[Sequence[Decimal]]) -> Outage:
        currency, extra = self.closure.rent.currency, self.closure.rent
        months = []
        for number, (month, shares) in enumerate(zip(usual, kept, strict=True)):
            stays = sum((i * k for i, k in zip(month.incomes, shares, strict=True)), ZERO)
            months.append(
                Month(
                    first_day=month.first_day,
                    income=Money(sum(month.incomes, ZERO), currency),
                    kept=Money(stays, currency),
                    saved=Money(month.saved, currency),
                    extra=extra if number else extra + self.closure.moving,
                )
            )
        return Outage(tuple(months))


@dataclass(frozen=True, slots=True)
class _Usual:
    """What a month would bring without a closure, by stream, and what closing saves in it."""

    first_day: date
    incomes: Sequence[Decimal]
    saved: Decimal


def _lost(usual: Sequence[_Usual], kept: Sequence[Sequence[Decimal]]) -> Decimal:
    """Return what a closure loses, or zero: the sum alone of what ``_outage`` tells by month."""
    return max(ZERO, sum((_month_lost(*m) for m in zip(usual, kept, strict=True)), ZERO))


def _month_lost(usual: _Usual, kept: Sequence[Decimal]) -> Decimal:
    return sum((i * (1 - k) for i, k in zip(usual.incomes, kept, strict=True)), -usual.saved)


def _in_month(streams: Iterable[Stream], month: int) -> Money:
    return total(stream.yearly * stream.shares[month - 1] for stream in streams)
