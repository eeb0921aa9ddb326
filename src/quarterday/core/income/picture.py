"""What a closed building would cost an organisation in income, against what its terms pay.

Everything is reckoned for the building that is closed for longest, and for the month of the coming
term in which its loss would cost most. Who owns a building rebuilds it; who rents finds another.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from decimal import Decimal
from typing import get_args

from quarterday.core.figure import Fact, Figure, Node, Parameter, Unit, Value
from quarterday.core.file.records import Building, Terms
from quarterday.core.file.records.terms import Coverage
from quarterday.core.income.calc import Kind
from quarterday.core.income.worksheet import Closure, Expense, Kept, Outage, Stream, Worksheet
from quarterday.core.money import Money, total
from quarterday.core.review.case import Case
from quarterday.core.values.coinsurance import Settlement, settle_partial
from quarterday.core.values.cost import number, rebuilding
from quarterday.core.values.facts import line_fact
from quarterday.core.values.index import DOLLAR
from quarterday.core.words import Rate, Term, Words, words

KINDS: tuple[Kind, ...] = get_args(Kind)
LINE, EXTRA = "loss-of-income", ("extra-expense", "alternate-premises")
NOTHING = Decimal(0)
RENTED = "income.months-to-another-place"
PARAMETERS = (
    RENTED,
    "income.growth",
    "income.kept-recovery-months",
    "income.kept-donations-first",
    *(f"income.kept-{kind}" for kind in KINDS),
)


@dataclass(frozen=True, slots=True)
class Coinsured:
    """How the income cover stands under its coinsurance clause: required, share paid, paid."""

    required: Figure
    share: Figure
    paid: Figure


@dataclass(frozen=True, slots=True)
class IncomePicture:
    """What the worst closure costs, and how far the terms go.

    ``short`` is zero when the limit (and its clause) pay for all of it. ``extra`` holds need, limit
    and shortage of living elsewhere; None where its rent is not known.
    """

    terms: Terms
    line: Coverage
    building: Building
    worst: Outage
    need: Figure
    limit: Figure
    short: Figure
    coinsured: Coinsured | None
    extra: tuple[Figure, Figure, Figure] | None

    answered: bool  # whether the organisation said what depends on the building, and what stops

    @property
    def lasts(self) -> int:
        """For how many whole months of the worst closure the limit pays everything."""
        return self.worst.lasts(self.limit.money)

    def figures(self) -> Mapping[str, Figure]:
        """Return the figures by what they are, such as ``income-need``."""
        found = [self.need, self.limit, self.short]
        found += (
            [self.coinsured.required, self.coinsured.share, self.coinsured.paid]
            if (self.coinsured)
            else []
        )
        return {figure.id: figure for figure in (*found, *(self.extra or ()))}


def picture(case: Case) -> IncomePicture | None:
    """Return the picture; None without a limit for income, an income, or a building of its own."""
    terms = case.terms
    line = _line(terms) if terms else None
    building = _slowest(case)
    if terms is None or line is None or building is None:
        return None
    maker = _Maker(case, terms, line, building)
    return maker.picture() if maker.streams else None


def _line(terms: Terms) -> Coverage | None:
    """Return the line that insures income for most: one building burns at a time."""
    lines = [c for c in terms.coverages if c.coverage == LINE and c.limit]
    return max(lines, key=lambda line: line.limit or NOTHING, default=None)


def _slowest(case: Case) -> Building | None:
    """Return the building that a fire closes for longest; the larger one of equals."""
    return max(
        case.file.buildings,
        key=lambda b: (number(_closed(case, b)), b.area_m2 or NOTHING),
        default=None,
    )


def _closed(case: Case, building: Building) -> Parameter:
    """Return for how many months a fire closes a building."""
    rented = building.ownership == "rent"
    return case.parameter(RENTED) if rented else rebuilding(case, building)[0]


class _Maker:
    """Makes the figures of one organisation's income."""

    def __init__(self, case: Case, terms: Terms, line: Coverage, building: Building) -> None:
        self.case, self.terms, self.line, self.building = case, terms, line, building
        self.profile = case.file.operations
        self.months = _closed(case, building)
        self.share = self.profile.premises_share
        self.growth = self._known("income_growth", "income.growth")
        self.seasons: list[tuple[Parameter, ...]] = []
        self.streams = tuple(self._streams())
        self.sheet = Worksheet(self.streams, tuple(self._expenses()), self._closure())

    def picture(self) -> IncomePicture:
        worst = self.sheet.worst
        need, limit = self._need(worst), self._limit()
        coinsured = self._coinsured(need, limit)
        return IncomePicture(
            self.terms, self.line, self.building, worst, need, limit,
            self._short("income-short", need, coinsured.paid if coinsured else limit),
            coinsured, self._extra(worst), self._answered,
        )  # fmt: skip

    def _known(self, field: str, parameter: str) -> Fact | Parameter:
        """Return what the file says, else the dated parameter."""
        if getattr(self.profile, field) is None:
            return self.case.parameter(parameter)
        return self.case.file.fact(self.profile, field, "rate")

    def _yearly(self, field: str) -> Decimal:
        """Return a year's amount as far as it turns on the premises."""
        amount: Decimal | None = getattr(self.profile, field)
        share = Decimal(1) if self.share is None else self.share
        return (amount or NOTHING) * share

    def _streams(self) -> Iterator[Stream]:
        of_class = self.case.file.organisation.organisation_class
        for kind in KINDS:
            yearly = self._yearly(f"revenue_{kind}")
            if yearly:
                season = self.case.reference.season(kind, of_class).on(self.case.as_of)
                self.seasons.append(season)
                shares = tuple(number(share) for share in season)
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

    def _figure(
        self, id: str, value: Value, how: Words, inputs: tuple[Node, ...], unit: Unit = "money"
    ) -> Figure:
        return Figure(id, value, unit, words(id), how, inputs)

    def _facts(self, *fields: str, unit: Unit = "money") -> tuple[Fact, ...]:
        """Return the fields that the file knows."""
        known = (f for f in fields if getattr(self.profile, f) is not None)
        return tuple(self.case.file.fact(self.profile, f, unit, self.terms.currency) for f in known)

    def _need(self, worst: Outage) -> Figure:
        shares = self._facts("premises_share", "giving_kept", "payroll_kept", unit="rate")
        amounts = self._facts(
            *(f"revenue_{kind}" for kind in KINDS), "payroll", "expenses_stopping"
        )
        months = tuple(self._months(worst))
        need = total((month.money for month in months), self.terms.currency)
        how = words("income-how-need", start=_spoken(worst), months=len(months))
        inputs = (*amounts, *shares, self.growth, *self._kept_parameters(), self.months, *months)
        found = self._figure("income-need", max(need, need * 0), how, inputs)
        return replace(found, caution=self._caution())

    def _kept_parameters(self) -> Iterator[Parameter]:
        for stream in self.streams:
            yield self.case.parameter(f"income.kept-{stream.kind}")
            if stream.kind == "donations":
                yield self.case.parameter("income.kept-recovery-months")
                if self.profile.giving_kept is None:
                    yield self.case.parameter("income.kept-donations-first")

    def _months(self, worst: Outage) -> Iterator[Figure]:
        for month, lost in zip(worst.months, worst.shown(DOLLAR), strict=True):
            day = month.first_day
            label = words("income-lost-in", month=Term("month", str(day.month)), year=str(day.year))
            how = words(
                "income-how-month",
                income=month.income.rounded(DOLLAR),
                kept=month.kept.rounded(DOLLAR),
                saved=month.saved.rounded(DOLLAR),
            )
            of_month = tuple(season[day.month - 1] for season in self.seasons)
            yield Figure(f"income-lost@{day:%Y-%m}", lost, "money", label, how, of_month)

    @property
    def _answered(self) -> bool:
        return self.share is not None and self._says_what_stops

    @property
    def _says_what_stops(self) -> bool:
        return self.profile.expenses_stopping is not None or self.profile.payroll_kept is not None

    def _caution(self) -> Words:
        if self._answered:
            return words("income-caution-season")
        which = "share" if self._says_what_stops else "both" if self.share is None else "expenses"
        return words(f"income-caution-{which}")

    def _limit(self) -> Figure:
        fact = line_fact(self.case.file, self.terms, self.line, "limit", "money")
        amount = self.terms.money(self.line.limit or NOTHING)
        how = words("income-how-limit", start=self.terms.start)
        return self._figure("income-limit", amount, how, (fact,))

    def _short(self, id: str, need: Figure, pays: Figure) -> Figure:
        short = max(need.money - pays.money, need.money * 0)
        how = words("income-how-short", need=need.money, pays=pays.money)
        return self._figure(id, short, how, (need, pays))

    def _coinsured(self, need: Figure, limit: Figure) -> Coinsured | None:
        clause = self.line.coinsurance
        if not clause:
            return None
        exposure = self.sheet.exposure.rounded(DOLLAR)
        done = settle_partial(exposure, clause, limit.money, need.money, need.money * 0)
        fact = line_fact(self.case.file, self.terms, self.line, "coinsurance", "rate")
        required = self._required(done, exposure, fact)
        share = self._figure(
            "income-coinsured-share", Rate(done.share), words("values-how-share"),
            (limit, required), "rate",
        )  # fmt: skip
        how = words("income-how-paid", need=need.money, share=share.value, limit=limit.money)
        paid = self._figure("income-paid", done.paid.rounded(DOLLAR), how, (need, share, limit))
        return Coinsured(required, share, paid)

    def _required(self, done: Settlement, exposure: Money, clause: Fact) -> Figure:
        amounts = self._facts(
            *(f"revenue_{kind}" for kind in KINDS), "payroll", "expenses_stopping"
        )
        how = words("income-how-exposure")
        year = self._figure("income-exposure", exposure, how, (*amounts, self.growth))
        amount = done.required_amount.rounded(DOLLAR)
        why = words("income-how-required", exposure=exposure, percent=clause.value)
        return self._figure("income-required", amount, why, (year, clause))

    def _extra(self, worst: Outage) -> tuple[Figure, Figure, Figure] | None:
        facts = self._facts("rent_elsewhere", "moving_costs")
        if not worst.extra:
            return None
        how = words("income-how-extra", months=len(worst.months))
        need = self._figure("income-extra", worst.extra.rounded(DOLLAR), how, (*facts, self.months))
        limit = self._extra_limit()
        return need, limit, self._short("income-extra-short", need, limit)

    def _extra_limit(self) -> Figure:
        """Return what the terms pay for living elsewhere: extra expense and other premises."""
        lines = [c for c in self.terms.coverages if c.coverage in EXTRA and c.limit]
        facts = tuple(
            line_fact(self.case.file, self.terms, line, "limit", "money") for line in lines
        )
        amount = self.terms.money(sum((line.limit or NOTHING for line in lines), NOTHING))
        return self._figure("income-extra-limit", amount, words("income-how-extra-limit"), facts)


def _number(node: Fact | Parameter) -> Decimal:
    value = node.value.value if isinstance(node.value, Rate) else node.value
    assert isinstance(value, Decimal)
    return value


def _spoken(worst: Outage) -> Words:
    month = Term("month", str(worst.start.month))
    return words("income-month", month=month, year=str(worst.start.year))
