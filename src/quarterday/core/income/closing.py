"""An organisation whose slowest building closes: its income by kind, its expenses, the months.

Everything is reckoned for the building that is closed for longest. Who owns a building rebuilds it;
who rents finds another.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from functools import cached_property

from quarterday.core.figure import Node, Parameter
from quarterday.core.file.records import Building, Terms
from quarterday.core.income.earnings import KINDS, NOTHING, Earnings
from quarterday.core.income.worksheet import Closure, Worksheet
from quarterday.core.review.case import Case
from quarterday.core.values.cost import number, rebuilding
from quarterday.core.words import Words, words

RENTED = "income.months-to-another-place"
PARAMETERS = (
    RENTED,
    "income.growth",
    "income.kept-recovery-months",
    "income.kept-donations-first",
    *(f"income.kept-{kind}" for kind in KINDS),
)


def closing(case: Case, terms: Terms) -> Closing | None:
    """Return what closing the slowest building stops; None without a building, or an income.

    ``terms`` give the currency. Of equally slow buildings the larger one counts.
    """
    building = max(
        case.file.buildings,
        key=lambda b: (number(months_closed(case, b)), b.area_m2 or NOTHING),
        default=None,
    )
    if building is None:
        return None
    found = Closing(case, terms, building)
    return found if found.streams else None


def months_closed(case: Case, building: Building) -> Parameter:
    """Return for how many months a fire closes a building."""
    rented = building.ownership == "rent"
    return case.parameter(RENTED) if rented else rebuilding(case, building)[0]


@dataclass(frozen=True)
class Closing(Earnings):
    """What closing ``building`` stops, with the facts and parameters behind it."""

    building: Building

    @cached_property
    def months(self) -> Parameter:
        """For how many months it is closed."""
        return months_closed(self.case, self.building)

    @cached_property
    def sheet(self) -> Worksheet:
        """The worksheet, month by month."""
        return Worksheet(self.streams, self.expenses, self._closure())

    @property
    def answered(self) -> bool:
        """Whether the organisation said what depends on the building, and what stops."""
        return self.profile.premises_share is not None and self._says_what_stops

    def _closure(self) -> Closure:
        money = self.terms.money
        return Closure(
            first=self.case.coming.start.replace(day=1),
            months=int(number(self.months)),
            growth=self.rate,
            rent=money(self.profile.rent_elsewhere or NOTHING),
            moving=money(self.profile.moving_costs or NOTHING),
        )

    @property
    def inputs(self) -> tuple[Node, ...]:
        """Everything that what a closure loses is made from."""
        shares = self.facts("premises_share", "giving_kept", "payroll_kept", unit="rate")
        return (*self.amounts, *shares, self.growth, *self._kept_parameters(), self.months)

    def _kept_parameters(self) -> Iterator[Parameter]:
        for stream in self.streams:
            yield self.case.parameter(f"income.kept-{stream.kind}")
            if stream.kind == "donations":
                yield self.case.parameter("income.kept-recovery-months")
                if self.profile.giving_kept is None:
                    yield self.case.parameter("income.kept-donations-first")

    @property
    def _says_what_stops(self) -> bool:
        return self.profile.expenses_stopping is not None or self.profile.payroll_kept is not None

    @property
    def caution(self) -> Words:
        """What nobody answered, and that the seasons are of others."""
        if self.answered:
            return words("income-caution-season")
        is_open = self.profile.premises_share is None
        which = "share" if self._says_what_stops else "both" if is_open else "expenses"
        return words(f"income-caution-{which}")
