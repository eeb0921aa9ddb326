"""What a closed building would cost an organisation in income, against what its terms pay.

Everything is reckoned for the building that is closed for longest, and for the month of the coming
term in which its loss would cost most. Who owns a building rebuilds it; who rents finds another.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace

from quarterday.core.figure import Figure, Node, Unit, Value
from quarterday.core.file.records import Building, Terms
from quarterday.core.file.records.terms import Coverage
from quarterday.core.income.clause import LINE, measured
from quarterday.core.income.closing import Closing, closing
from quarterday.core.income.earnings import NOTHING
from quarterday.core.income.worksheet import Outage
from quarterday.core.money import total
from quarterday.core.review.case import Case
from quarterday.core.values.coinsurance import Requirement, settle
from quarterday.core.values.coinsured import clause_of
from quarterday.core.values.cost import last_day
from quarterday.core.values.facts import line_fact
from quarterday.core.values.index import DOLLAR
from quarterday.core.words import Rate, Term, Words, words

EXTRA = ("extra-expense", "alternate-premises")


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
    if terms is None or line is None:
        return None
    of = closing(case, terms)
    return _Maker(of, line).picture() if of else None


def _line(terms: Terms) -> Coverage | None:
    """Return the line that insures income for most: one building burns at a time."""
    lines = [c for c in terms.coverages if c.coverage == LINE and c.limit]
    return max(lines, key=lambda line: line.limit or NOTHING, default=None)


@dataclass(frozen=True, slots=True)
class _Maker:
    """Makes the figures of one organisation's income."""

    of: Closing
    line: Coverage

    @property
    def terms(self) -> Terms:
        return self.of.terms

    def picture(self) -> IncomePicture:
        worst = self.of.sheet.worst
        need, limit = self._need(worst), self._limit()
        coinsured = self._coinsured(need, limit)
        return IncomePicture(
            self.terms, self.line, self.of.building, worst, need, limit,
            self._short("income-short", need, coinsured.paid if coinsured else limit),
            coinsured, self._extra(worst), self.of.answered,
        )  # fmt: skip

    def _figure(
        self, id: str, value: Value, how: Words, inputs: tuple[Node, ...], unit: Unit = "money"
    ) -> Figure:
        return Figure(id, value, unit, words(id), how, inputs)

    def _need(self, worst: Outage) -> Figure:
        months = tuple(self._months(worst))
        need = total((month.money for month in months), self.terms.currency)
        how = words("income-how-need", start=_spoken(worst), months=len(months))
        inputs = (*self.of.inputs, *months)
        found = self._figure("income-need", max(need, need * 0), how, inputs)
        return replace(found, caution=self.of.caution)

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
            of_month = tuple(season[day.month - 1] for season in self.of.seasons)
            yield Figure(f"income-lost@{day:%Y-%m}", lost, "money", label, how, of_month)

    def _limit(self) -> Figure:
        fact = line_fact(self.of.case.file, self.terms, self.line, "limit", "money")
        amount = self.terms.money(self.line.limit or NOTHING)
        how = words("income-how-limit", start=self.terms.start)
        return self._figure("income-limit", amount, how, (fact,))

    def _short(self, id: str, need: Figure, pays: Figure) -> Figure:
        short = max(need.money - pays.money, need.money * 0)
        how = words("income-how-short", need=need.money, pays=pays.money)
        return self._figure(id, short, how, (need, pays))

    def _coinsured(self, need: Figure, limit: Figure) -> Coinsured | None:
        clause, day = clause_of(self.terms, self.line), last_day(self.of.case)
        year = measured(self.of.case, self.terms, self.line, day)
        assert year is not None, "what closing stops is known, so there is an income"
        asked = clause.requirement(year.money, need.money, day)
        if not asked.amount:
            return None
        required = self._required(asked, year)
        done = settle(asked, limit.money, need.money, need.money * 0)
        share = self._figure(
            "income-coinsured-share", Rate(done.share), words("values-how-share"),
            (limit, required), "rate",
        )  # fmt: skip
        how = words("income-how-paid", need=need.money, share=share.value, limit=limit.money)
        paid = self._figure("income-paid", done.paid.rounded(DOLLAR), how, (need, share, limit))
        return Coinsured(required, share, paid)

    def _required(self, asked: Requirement, year: Figure) -> Figure:
        amount, file = asked.amount.rounded(DOLLAR), self.of.case.file
        if self.line.coinsurance_stated_amount is not None:
            name = "coinsurance_stated_amount"
            stated = line_fact(file, self.terms, self.line, name, "money")
            return self._figure("income-required", amount, asked.why, (stated,))
        clause = line_fact(file, self.terms, self.line, "coinsurance", "rate")
        why = words("income-how-required", exposure=year.money, percent=clause.value)
        found = self._figure("income-required", amount, why, (year, clause))
        return replace(found, caution=year.caution)

    def _extra(self, worst: Outage) -> tuple[Figure, Figure, Figure] | None:
        facts = self.of.facts("rent_elsewhere", "moving_costs")
        if not worst.extra:
            return None
        how = words("income-how-extra", months=len(worst.months))
        need = self._figure(
            "income-extra", worst.extra.rounded(DOLLAR), how, (*facts, self.of.months)
        )
        limit = self._extra_limit()
        return need, limit, self._short("income-extra-short", need, limit)

    def _extra_limit(self) -> Figure:
        """Return what the terms pay for living elsewhere: extra expense and other premises."""
        lines = [c for c in self.terms.coverages if c.coverage in EXTRA and c.limit]
        facts = tuple(
            line_fact(self.of.case.file, self.terms, line, "limit", "money") for line in lines
        )
        amount = self.terms.money(sum((line.limit or NOTHING for line in lines), NOTHING))
        return self._figure("income-extra-limit", amount, words("income-how-extra-limit"), facts)


def _spoken(worst: Outage) -> Words:
    month = Term("month", str(worst.start.month))
    return words("income-month", month=month, year=str(worst.start.year))
