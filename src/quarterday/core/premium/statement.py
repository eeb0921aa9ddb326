"""Everything a treasurer needs to know about one premium, put together from the file."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from decimal import Decimal

from quarterday.core.file.records import Building, PaymentChoice, Terms
from quarterday.core.file.records.terms import EVERYWHERE, Premium
from quarterday.core.premium.allocation import Allocation, allocate, key_lines
from quarterday.core.premium.apportion import apportion
from quarterday.core.premium.instalments import Schedule, check_choice, known_province, schedules
from quarterday.core.premium.prepaid import Due, JournalLine, Slice, journal, spread
from quarterday.core.premium.table import PremiumTable, TableFault, coverage_name, faults, table
from quarterday.core.review.case import Case
from quarterday.core.words import Rate, Term, Words, words

NO_FUND = ""


@dataclass(frozen=True, slots=True)
class Statement:
    """One premium: what it is, whether it adds up, who bears it, how it is paid and used up.

    ``plans`` by id, the cheapest first, when the insurer takes instalments; ``chosen`` the one
    that the organisation chose. ``slices`` spread what is billed over months and funds.
    """

    terms: Terms
    table: PremiumTable
    faults: tuple[TableFault, ...]
    doubts: tuple[Words, ...]
    allocation: Allocation | None
    plans: Mapping[str, Schedule]
    chosen: Schedule | None
    funds: Mapping[str, Decimal]
    slices: tuple[Slice, ...]

    def journal(self) -> tuple[JournalLine, ...]:
        """Return the journal: paid by the plan that was chosen, else at once on the first day."""
        if self.chosen is None:
            whole = sum(self.funds.values(), Decimal(0))
            return journal(self.funds, self.slices, [Due(self.terms.start, whole)])
        dues = [
            Due(p.due, p.billed.amount, p.charge.amount)
            for p in self.chosen.payments
            if p.amount.amount
        ]
        return journal(self.funds, self.slices, dues)


def statement(case: Case, terms: Terms, key: str | None = None) -> Statement:
    """Return the statement of ``terms``, divided by the allocation key named ``key`` if any.

    Unusable when the province is unknown, there is no such key, or it leaves a premium over.
    """
    organisation = case.file.organisation
    province = organisation.province
    known_province(province, case.reference)
    allocation = _allocation(case, terms, key) if key else None
    plans = schedules(terms, province, case.reference) if terms.instalments_available else {}
    choice = case.file.get(PaymentChoice, str(terms.start))
    chosen = plans.get(choice.plan) if choice else None
    summed = table(terms, province, case.reference)
    funds = _funds(allocation, _billed(summed, chosen))
    return Statement(
        terms=terms,
        table=summed,
        faults=faults(terms, province, case.reference, case.building_name),
        doubts=tuple(doubts(case, terms)),
        allocation=allocation,
        plans=plans,
        chosen=chosen,
        funds=funds,
        slices=spread(funds, terms.period, organisation.fiscal_year_end),
    )


def _allocation(case: Case, terms: Terms, key: str) -> Allocation:
    lines = key_lines(case.file, key)
    province = case.file.organisation.province
    return allocate(terms, province, case.reference, lines, case.building_name)


def _billed(summed: PremiumTable, chosen: Schedule | None) -> Decimal:
    """Return what is billed in all, without the charge of a plan."""
    if chosen is None:
        return summed.total.amount
    return (chosen.total - chosen.charge).amount


def _funds(allocation: Allocation | None, billed: Decimal) -> dict[str, Decimal]:
    """Return what each fund bears; tax that a plan adds or saves is borne like the rest."""
    if allocation is None:
        return {NO_FUND: billed}
    found: dict[str, Decimal] = {}
    for party, amount in allocation.totals.items():
        fund = allocation.funds[party]
        found[fund] = found.get(fund, Decimal(0)) + amount
    if sum(found.values(), Decimal(0)) == billed:
        return found
    return apportion(billed, found)


def doubts(case: Case, terms: Terms) -> Iterator[Words]:
    """Yield what a premium table says that cannot be right, beside sums that do not add up."""
    known = {building.id for building in case.file.all(Building)}
    for premium in terms.premiums:
        what = coverage_name(case.reference, premium.coverage)
        if premium.location not in {*known, EVERYWHERE}:
            yield words("premium-no-building", coverage=what, location=premium.location,
                        amount=terms.money(premium.amount))  # fmt: skip
        if premium.amount < 0 and _needs_reason(premium):
            yield words("premium-negative", coverage=what, amount=terms.money(premium.amount),
                        location=case.building_name(premium.location))  # fmt: skip
    yield from _taxed_exempt(case, terms)
    choice = case.file.get(PaymentChoice, str(terms.start))
    wrong = check_choice(choice.plan, terms.insurer, case.reference) if choice else None
    if wrong is not None:
        yield wrong


def _needs_reason(premium: Premium) -> bool:
    return premium.kind != "discount" and not premium.reason


def _taxed_exempt(case: Case, terms: Terms) -> Iterator[Words]:
    """Tell when the printed tax is that of a premium with what is exempt."""
    province = case.file.organisation.province
    summed = table(terms, province, case.reference)
    rate = summed.tax.rate
    exempt = [line for line in summed.tax.lines if not line.is_taxed and line.amount]
    if rate is None or not exempt:
        return
    base = summed.tax.base.money + sum((x.amount for x in exempt), terms.money(Decimal(0)))
    assert isinstance(rate.value, Rate)
    wrong = (base * rate.value.value).rounded()
    for printed in terms.totals:
        if printed.of == "tax" and printed.amount == wrong.amount != summed.tax.tax.money.amount:
            coverages = tuple(Term("coverage", line.coverage) for line in exempt)
            where = Term("province", province)
            right = summed.tax.tax.money
            yield words(
                "premium-taxed-exempt", coverages=coverages, tax=wrong, right=right, province=where
            )
