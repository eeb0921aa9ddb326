"""Construction costs moved through time by a published quarterly index.

A quarter's figure stands for the middle of its quarter. Between two of them the index moves
log-linearly; past the last it is projected at a yearly rate, and whatever uses it says so.
"""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from functools import lru_cache

from quarterday.core.dates import Quarter, add_years, years_between
from quarterday.core.figure import Figure, Node, Parameter
from quarterday.core.money import Money
from quarterday.core.reference import IndexRelease
from quarterday.core.words import Rate, Term, Words, words

COMPOSITE = "composite"
DOLLAR = Decimal(1)
SHOWN = Decimal("0.0001")  # index levels in a trace: enough to redo the sum to the dollar


def spoken(quarter: Quarter) -> Words:
    """Return a quarter as people write it."""
    return words("values-quarter", year=str(quarter.year), number=quarter.number)


class NotCoveredError(LookupError):
    """Raised when an index says nothing about a day."""


class BeyondHorizonError(NotCoveredError):
    """Raised when a day lies too far past the last published figure to be projected to."""


@dataclass(frozen=True, slots=True)
class Level:
    """An index on a day; ``projected`` when the day lies past the last published figure."""

    value: Decimal
    projected: bool = False


@dataclass(frozen=True, slots=True)
class Change:
    """How much costs move between two days; 1.25 means 25 % more."""

    ratio: Decimal
    projected: bool = False


@dataclass(frozen=True, slots=True)
class Curve:
    """An index as a line through its published figures, oldest first."""

    quarters: tuple[Quarter, ...]
    middles: tuple[date, ...]
    levels: tuple[Decimal, ...]

    @classmethod
    def of(cls, points: Mapping[Quarter, Decimal]) -> Curve:
        """Return the line through ``points``; ValueError without any, or with one not above 0."""
        if not points:
            raise ValueError("An index needs at least one quarter.")
        quarters = tuple(sorted(points))
        bad = [q for q in quarters if points[q] <= 0]
        if bad:
            raise ValueError(f"The index for {bad[0]} must be above zero, not {points[bad[0]]}.")
        return cls(quarters, tuple(q.middle for q in quarters), tuple(points[q] for q in quarters))

    @property
    def last(self) -> date:
        """The last day that is not projected."""
        return self.middles[-1]

    def at(self, day: date, projected_rate: Decimal | None) -> Level:
        """Return the level on ``day``; NotCoveredError before the first quarter begins.

        In the first half of the first quarter its own figure stands. ``projected_rate`` is a ratio
        a year (0.03 is 3 %); None refuses any day past the last published figure.
        """
        if day < self.quarters[0].first_day:
            raise NotCoveredError(
                f"The index begins with {self.quarters[0]} and says nothing about {day}. "
                f"Give a valuation from {self.quarters[0].first_day} or later."
            )
        after = bisect_right(self.middles, day)
        if day > self.last:
            return Level(self.levels[-1] * self._growth(day, projected_rate), projected=True)
        if after in (0, len(self.levels)):
            return Level(self.levels[max(after, 1) - 1])
        return Level(self._between(after, day))

    def change(self, start: date, end: date, projected_rate: Decimal | None) -> Change:
        """Return how much costs move from ``start`` to ``end``; below 1 when going back in time."""
        first, second = self.at(start, projected_rate), self.at(end, projected_rate)
        return Change(second.value / first.value, first.projected or second.projected)

    def around(self, day: date) -> tuple[Quarter, ...]:
        """Return the quarters whose published figures make the level on ``day`` (one or two)."""
        after = bisect_right(self.middles, day)
        first = max(after - 1, 0)
        on_a_middle = after > 0 and self.middles[first] == day
        single = on_a_middle or after in (0, len(self.middles))
        return self.quarters[first : first + (1 if single else 2)]

    def _between(self, after: int, day: date) -> Decimal:
        start, end = self.middles[after - 1], self.middles[after]
        low, high = self.levels[after - 1], self.levels[after]
        part = Decimal((day - start).days) / (end - start).days
        return low * (_log(high / low) * part).exp()

    def _growth(self, day: date, rate: Decimal | None) -> Decimal:
        if rate is None:
            raise NotCoveredError(
                f"The index ends with {self.quarters[-1]}; to reach {day} give the yearly rate to "
                "project it at."
            )
        if rate <= -1:
            raise ValueError(f"A yearly rate of {rate} would leave nothing; give one above -1.")
        whole = years_between(self.last, day)
        start, end = add_years(self.last, whole), add_years(self.last, whole + 1)
        part = Decimal((day - start).days) / (end - start).days
        return (1 + rate) ** whole * (_log(1 + rate) * part).exp()


@lru_cache(maxsize=4096)
def _log(ratio: Decimal) -> Decimal:
    """Return the natural logarithm: two neighbouring quarters' is asked for again and again."""
    return ratio.ln()


def level(release: IndexRelease, day: date, projected_rate: Decimal | None) -> Level:
    """Return a release's level on ``day``; NotCoveredError where it says nothing."""
    return Curve.of(release.points).at(day, projected_rate)


def factor(release: IndexRelease, start: date, end: date, projected_rate: Decimal | None) -> Change:
    """Return how much costs move from ``start`` to ``end`` by a release."""
    return Curve.of(release.points).change(start, end, projected_rate)


@dataclass(frozen=True, slots=True)
class Index:
    """A release, the dated rate to project it at, and its line: what figures are made from.

    ``horizon`` is the last day it may be projected to; None for no end.
    """

    release: IndexRelease
    rate: Parameter
    curve: Curve
    horizon: date | None = None

    @classmethod
    def of(cls, release: IndexRelease, rate: Parameter, horizon_years: int | None = None) -> Index:
        """Return a release ready to make figures up to ``horizon_years`` after its last one."""
        curve = Curve.of(release.points)
        end = None if horizon_years is None else add_years(curve.last, horizon_years)
        return cls(release, rate, curve, end)

    @property
    def yearly(self) -> Decimal:
        """The yearly rate of the projection, as a ratio."""
        assert isinstance(self.rate.value, Rate)
        return self.rate.value.value

    @property
    def place(self) -> Term:
        """The place the index is measured in."""
        return Term("index", self.release.geography)

    def change(self, start: date, end: date) -> Change:
        """Return how much costs move from ``start`` to ``end``.

        NotCoveredError before the index begins, BeyondHorizonError after its horizon.
        """
        if self.horizon is not None and max(start, end) > self.horizon:
            last = self.curve.quarters[-1]
            raise BeyondHorizonError(f"The index ends with {last}, too long before {end}.")
        return self.curve.change(start, end, self.yearly)

    def caution(self, *, projected: bool) -> Words | None:
        """Return what must be said of a figure made with this index, or None."""
        composite = self.release.geography == COMPOSITE
        ending = ("projected-" if projected else "") + ("composite-" if composite else "")
        if not ending:
            return None
        last = spoken(self.curve.quarters[-1])
        return words(f"values-caution-{ending}index", last=last, rate=Rate(self.yearly))

    def point(self, quarter: Quarter) -> Parameter:
        """Return a published figure with its source; ``since`` is the day of the release."""
        return Parameter(
            id=f"index/{self.release.geography}/{quarter}",
            value=self.release.points[quarter],
            unit="index",
            label=words("values-index-point", place=self.place, quarter=spoken(quarter)),
            source=self.release.source.source(),
            since=self.release.released_on,
        )

    def figure(self, day: date) -> Figure:
        """Return the level on ``day`` as a figure made from the published ones."""
        found = self.curve.at(day, self.yearly)
        quarters = self.curve.around(day)
        how = words(
            f"values-how-{'projected' if found.projected else f'level-{len(quarters)}'}",
            first=spoken(quarters[0]),
            last=spoken(quarters[-1]),
            rate=Rate(self.yearly),
        )
        return Figure(
            id=f"index-level@{self.release.geography}/{day}",
            value=found.value.quantize(SHOWN),
            unit="index",
            label=words("values-index-level", place=self.place, day=day),
            how=how,
            inputs=(*map(self.point, quarters), *([self.rate] if found.projected else [])),
            caution=self.caution(projected=found.projected),
        )


@dataclass(frozen=True, slots=True)
class Subject:
    """What a figure is called: its id and its label."""

    id: str
    label: Words


def indexed(name: Subject, base: Node, start: date, day: date, index: Index) -> Figure:
    """Return ``base`` (money, as on ``start``) as costs stand on ``day``, to the dollar.

    It is an estimate, so the figure itself is rounded half-up to the dollar: what a person adds up
    from the page is what was computed.
    """
    assert isinstance(base.value, Money)
    change = index.change(start, day)
    return Figure(
        id=name.id,
        value=(base.value * change.ratio).rounded(DOLLAR),
        unit="money",
        label=name.label,
        how=words("values-how-indexed", base=base.value, start=start, day=day),
        inputs=(base, index.figure(start), index.figure(day)),
        caution=index.caution(projected=change.projected),
    )
