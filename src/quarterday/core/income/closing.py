"""An organisation whose slowest building closes: its income by kind, its expenses, the months.

Everything is reckoned for the building that is closed for longest. Who owns a building rebuilds it;
who rents finds another.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from decimal import Decimal
from functools import cached_property
from typing import get_args

from quarterday.core.figure import Fact, Node, Parameter, Unit
from quarterday.core.file.records import Building, Operations, Terms
from quarterday.core.income.calc import Kind
from quarterday.core.income.worksheet import Closure, Expense, Kept, Stream, Worksheet
from quarterday.core.review.case import Case
from quarterday.core.values.cost import number, rebuilding
from quarterday.core.words import Rate, Words, words

KINDS: tuple[Kind, ...] = get_args(Kind)
NOTHING = Decimal(0)
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
class Closing:
    """What closing ``building`` stops, with the facts and parameters behind it."""

    case: Case
    terms: Terms
    building: Building

    @property
    def profile(self) -> Operations:
        """What the organisation says of its activities."""
        return self.case.file.operations

    @cached_property
    def months(self) -> Parameter:
        """For how many months it is closed."""
        return months_closed(self.case, self.building)

    @cached_property
    def growth(self) -> Fact | Parameter:
        """By how much a year income and expenses grow."""
        return self._known("income_growth", "income.growth")

    @cached_property
    def streams(self) -> tuple[Stream, ...]:
        """The income by kind, as far as it turns on the premises."""
        return tuple(self._streams())

    @cached_property
    def sheet(self) -> Worksheet:
        """The worksheet, month by month."""
        return Worksheet(self.streams, tuple(self._expenses()), self._closure())

    @property
    def answered(self) -> bool:
        """Whether the organisation said what depends on the building, and what stops."""
        return self.profile.premises_share is not None and self._says_what_stops

    def season(self, kind: Kind) -> tuple[Parameter, ...]:
        """Return the share of a year's income of a kind that each calendar month brings."""
        of_class = self.case.file.organisation.organisation_class
        return self.case.reference.season(kind, of_class).on(self.case.as_of)

    @cached_property
    def seasons(self) -> tuple[tuple[Parameter, ...], ...]:
        """The seasons of all kinds that bring something."""
        return tuple(self.season(kind) for kind in KINDS if self._yearly(f"revenue_{kind}"))

    def _known(self, field: str, parameter: str) -> Fact | Parameter:
        """Return what the file says, else the dated parameter."""
        if getattr(self.profile, field) is None:
            return self.case.parameter(parameter)
        return self.case.file.fact(self.profile, field, "rate")

    def _yearly(self, field: str) -> Decimal:
        """Return a year's amount as far as it turns on the premises."""
        amount: Decimal | None = getattr(self.profile, field)
        share = self.profile.premises_share
        return (amount or NOTHING) * (Decimal(1) if share is None else share)

    def _streams(self) -> Iterator[Stream]:
        for kind in KINDS:
            yearly = self._yearly(f"revenue_{kind}")
            if yearly:
                shares = tuple(number(share) for share in self.season(kind))
                yield Stream(kind, self.terms.money(yearly), shares, self._kept(kind))

    def _kept(self, kind: Kind) -> Kept:
        settled = number(self.case.parameter(f"income.kept-{kind}"))
        if kind != "donations":
            return Kept(settled, settled)
        first = _number(self._known("giving_kept", "income.kept-donations-first"))
        months = number(self.case.parameter("income.kept-recovery-months"))
        return Kept(first, max(first, settled), int(months))

    def _expenses(self) -> Iterator[Expense]:
        kept = self.profile.payroll_kept
        payroll, stopping = self._yearly("payroll"), self._yearly("expenses_stopping")
        yield Expense(self.terms.money(payroll), Decimal(1) if kept is None else kept)
        yield Expense(self.terms.money(stopping), NOTHING)

    def _closure(self) -> Closure:
        money = self.terms.money
        return Closure(
            first=self.case.coming.start.replace(day=1),
            months=int(number(self.months)),
            growth=_number(self.growth),
            rent=money(self.profile.rent_elsewhere or NOTHING),
            moving=money(self.profile.moving_costs or NOTHING),
        )

    def facts(self, *fields: str, unit: Unit = "money") -> tuple[Fact, ...]:
        """Return the fields of the profile that the file knows."""
        known = (f for f in fields if getattr(self.profile, f) is not None)
        return tuple(self.case.file.fact(self.profile, f, unit, self.terms.currency) for f in known)

    @property
    def amounts(self) -> tuple[Fact, ...]:
        """The yearly incomes and expenses that the file knows."""
        return self.facts(*(f"revenue_{kind}" for kind in KINDS), "payroll", "expenses_stopping")

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


def _number(node: Fact | Parameter) -> Decimal:
    value = node.value.value if isinstance(node.value, Rate) else node.value
    assert isinstance(value, Decimal)
    return value
