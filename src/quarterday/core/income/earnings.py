"""What an organisation earns in a year as far as it needs its premises, and what it spends."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from functools import cached_property
from typing import get_args

from quarterday.core.dates import years_between
from quarterday.core.figure import Fact, Parameter, Unit
from quarterday.core.file.records import Operations, Terms
from quarterday.core.income.worksheet import Expense, Kept, Kind, Stream, Year, year_of
from quarterday.core.review.case import Case
from quarterday.core.values.cost import number
from quarterday.core.words import Rate

KINDS: tuple[Kind, ...] = get_args(Kind)
NOTHING = Decimal(0)


@dataclass(frozen=True)
class Earnings:
    """The yearly income and expenses that the profile tells; ``terms`` give the currency."""

    case: Case
    terms: Terms

    @property
    def profile(self) -> Operations:
        """What the organisation says of its activities."""
        return self.case.file.operations

    @cached_property
    def growth(self) -> Fact | Parameter:
        """By how much a year income and expenses grow."""
        return self._known("income_growth", "income.growth")

    @cached_property
    def streams(self) -> tuple[Stream, ...]:
        """The income by kind, as far as it turns on the premises."""
        return tuple(self._streams())

    @cached_property
    def rate(self) -> Decimal:
        """That growth as a ratio."""
        return _number(self.growth)

    @cached_property
    def expenses(self) -> tuple[Expense, ...]:
        """The expenses of which closing stops something."""
        return tuple(self._expenses())

    @property
    def is_known(self) -> bool:
        """Whether an income was told, of which none may need the premises."""
        return self.profile.yearly_income > 0

    def grown(self, day: date) -> int:
        """Return for how many years the told amounts grow until the policy year of ``day``.

        They are those of the year before the coming term; no earlier year is reckoned back.
        """
        start = self.case.coming.start
        return years_between(start, day) + 1 if day >= start else 0

    def year(self, day: date) -> Year:
        """Return the income of the policy year that ``day`` lies in, and what would stop of it."""
        incomes = (self.terms.money(self._yearly(f"revenue_{kind}")) for kind in KINDS)
        return year_of(incomes, self.expenses, (1 + self.rate) ** self.grown(day))

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

    def facts(self, *fields: str, unit: Unit = "money") -> tuple[Fact, ...]:
        """Return the fields of the profile that the file knows."""
        known = (f for f in fields if getattr(self.profile, f) is not None)
        return tuple(self.case.file.fact(self.profile, f, unit, self.terms.currency) for f in known)

    @property
    def amounts(self) -> tuple[Fact, ...]:
        """The yearly incomes and expenses that the file knows."""
        return self.facts(*(f"revenue_{kind}" for kind in KINDS), "payroll", "expenses_stopping")


def _number(node: Fact | Parameter) -> Decimal:
    value = node.value.value if isinstance(node.value, Rate) else node.value
    assert isinstance(value, Decimal)
    return value
