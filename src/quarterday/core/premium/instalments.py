"""Pay a premium over time: dates, amounts, and what it costs more than paying at once.

The deposit and the fees are due on the first day; the rest follows by the plan, each payment a
whole unit, the last with the rounding. Tax goes by the day of each payment where the province says
so: a plan that runs past a change of the rate bears both rates. All tax at one rate is rounded
once, as the tax itself is, and the last payment at that rate takes the rounding.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from fractions import Fraction

from quarterday.core.dates import Period, add_months, rolled
from quarterday.core.figure import Figure
from quarterday.core.file.records import Terms
from quarterday.core.given import Unusable
from quarterday.core.money import CENT, Money, round_to
from quarterday.core.premium.apr import CanadaRate, Paid, canada, effective
from quarterday.core.premium.table import table, tax_of
from quarterday.core.premium.tax import TaxResult
from quarterday.core.reference import InstalmentPlan, Reference
from quarterday.core.words import Rate, Term, Words, words

MONTHS = 12
AT_ONCE = "at-once"
"""The choice of no plan: everything is paid on the first day."""


@dataclass(frozen=True, slots=True)
class Taxable:
    """What is taxed of a premium and of its fees, and the rate, if it is paid on some day."""

    rate: Fraction
    premium: Fraction
    fees: Fraction = Fraction(0)


@dataclass(frozen=True, slots=True)
class Bill:
    """What is to be paid for a term: premium and fees before tax, and the tax by day of payment."""

    term: Period
    province: str
    premium: Money
    fees: Money
    tax_on: Callable[[date], Taxable]


@dataclass(frozen=True, slots=True)
class Payment:
    """One payment of a plan; number 0 is the deposit."""

    number: int
    due: date
    premium: Money
    fees: Money
    tax: Money
    charge: Money

    @property
    def billed(self) -> Money:
        """Premium, fees and tax, without the plan's charge."""
        return self.premium + self.fees + self.tax

    @property
    def amount(self) -> Money:
        """All that is to be paid on the day."""
        return self.billed + self.charge


@dataclass(frozen=True, slots=True)
class Schedule:
    """A bill paid by a plan.

    ``canada`` is the cost-of-borrowing rate of the charge alone; ``effective`` the yearly rate of
    all that is paid more than ``at_once``, tax included. Without a charge ``canada`` is nothing.
    """

    plan: InstalmentPlan
    start: date
    payments: tuple[Payment, ...]
    at_once: Money
    canada: CanadaRate
    effective: Decimal

    @property
    def total(self) -> Money:
        """Everything that is paid."""
        return sum((p.amount for p in self.payments), self.at_once * 0)

    @property
    def charge(self) -> Money:
        """The plan's charges."""
        return sum((p.charge for p in self.payments), self.at_once * 0)

    @property
    def extra(self) -> Money:
        """What is paid more than at once."""
        return self.total - self.at_once

    @property
    def extra_tax(self) -> Money:
        """The part of ``extra`` that is tax, because a later payment bears another rate."""
        return self.extra - self.charge


def bill(terms: Terms, province: str, reference: Reference) -> Bill:
    """Return the bill for the premium of ``terms`` in a province; Unusable when it is unknown."""
    known_province(province, reference)
    summed = table(terms, province, reference)
    return Bill(
        term=terms.period,
        province=province,
        premium=summed.subtotal,
        fees=summed.fees,
        tax_on=lambda day: taxable(tax_of(terms, province, reference, pay_on=day)),
    )


def known_province(code: str, reference: Reference) -> None:
    """Refuse a province or territory that the reference data does not have (Unusable)."""
    if code not in reference.provinces:
        raise Unusable(words("calc-no-province", province=code,
                             known=tuple(sorted(reference.provinces))))  # fmt: skip


def taxable(result: TaxResult) -> Taxable:
    """Return a tax as a plan needs it: its rate and what it is laid on."""
    rate = result.rate.value if result.rate else Rate(Decimal(0))
    assert isinstance(rate, Rate)
    premium = sum((Fraction(x.amount.amount) for x in result.lines if x.is_taxed), Fraction(0))
    return Taxable(Fraction(rate.value), premium, Fraction(result.base.money.amount) - premium)


def schedule(plan: InstalmentPlan, owed: Bill) -> Schedule:
    """Return the payments of a bill by a plan.

    Unusable when there is nothing to pay over time, the deposit is more than the premium, or the
    plan ends after the term.
    """
    if owed.premium.amount <= 0:
        raise Unusable(words("instalments-nothing", premium=owed.premium))
    premiums = _premiums(plan, owed)
    dues = _dues(plan, owed)
    charges = _charges(plan, owed.premium - premiums[0])
    fees = [owed.fees, *(owed.fees * 0 for _ in charges)]
    taxes = _taxes(plan, owed, premiums, dues)
    none = owed.premium * 0
    parts = zip(dues, premiums, fees, taxes, [none, *charges], strict=True)
    payments = tuple(Payment(number, *part) for number, part in enumerate(parts))
    at_once = owed.premium + owed.fees + _tax_at_once(owed)
    return Schedule(
        plan=plan,
        start=owed.term.start,
        payments=payments,
        at_once=at_once,
        canada=_canada(plan, payments),
        effective=_effective(owed.term.start, at_once, payments),
    )


def _premiums(plan: InstalmentPlan, owed: Bill) -> list[Money]:
    """Return the premium of the deposit and of each payment after it."""
    stated = plan.deposit_amount
    share = plan.deposit_rate or Decimal(0)
    deposit = owed.premium * share if stated is None else Money(stated, owed.premium.currency)
    deposit = deposit.rounded(plan.unit if stated is None else CENT)
    if deposit > owed.premium:
        raise Unusable(words("instalments-deposit-above", deposit=deposit, premium=owed.premium))
    return [deposit, *_equal(owed.premium - deposit, plan.count, plan.unit)]


def _equal(whole: Money, count: int, unit: Decimal = CENT) -> list[Money]:
    """Return ``count`` equal parts in whole units; the last takes the rounding."""
    part = (whole / count).rounded(unit)
    return [part] * (count - 1) + [whole - part * (count - 1)]


def _dues(plan: InstalmentPlan, owed: Bill) -> list[date]:
    """Return the business days on which the deposit and the payments are due."""
    start, last = owed.term.start, plan.count * plan.months_between
    months = range(0, last + 1, plan.months_between)
    dues = [rolled(add_months(start, n), owed.province, plan.roll) for n in months]
    if dues[-1] >= owed.term.end:
        raise Unusable(words("instalments-after-term", due=dues[-1], end=owed.term.end))
    return dues


def _charges(plan: InstalmentPlan, financed: Money) -> list[Money]:
    """Return the charge on each payment after the deposit."""
    spread = Money(plan.charge_flat, financed.currency) + financed * plan.charge_rate
    each = Money(plan.charge_each, financed.currency)
    return [part + each for part in _equal(spread.rounded(), plan.count)]


def _exact_taxes(
    plan: InstalmentPlan, owed: Bill, premiums: list[Money], dues: list[date]
) -> Iterator[tuple[Fraction, Fraction]]:
    """Yield the rate and the exact tax of each payment."""
    for number, (premium, due) in enumerate(zip(premiums, dues, strict=True)):
        of = owed.tax_on(due)
        whole = plan.tax_due == "deposit" and number == 0
        share = Fraction(premium.amount) / Fraction(owed.premium.amount)
        part = Fraction(1) if whole else share * (plan.tax_due == "each")
        fees = of.fees if number == 0 else Fraction(0)
        yield of.rate, of.rate * (of.premium * part + fees)


def _taxes(
    plan: InstalmentPlan, owed: Bill, premiums: list[Money], dues: list[date]
) -> list[Money]:
    exact = list(_exact_taxes(plan, owed, premiums, dues))
    found = [_cents(tax) for _, tax in exact]
    for rate in {rate for rate, _ in exact}:
        at_rate = [n for n, (r, _) in enumerate(exact) if r == rate]
        whole = _cents(sum((exact[n][1] for n in at_rate), Fraction(0)))
        last = max((n for n in at_rate if exact[n][1]), default=at_rate[-1])
        found[last] += whole - sum(found[n] for n in at_rate)
    return [Money(tax, owed.premium.currency) for tax in found]


def _cents(exact: Fraction) -> Decimal:
    """Return an exact amount half-up to the cent."""
    cents = exact * 100
    return round_to(Decimal(cents.numerator) / Decimal(cents.denominator), Decimal(1)) / 100


def _tax_at_once(owed: Bill) -> Money:
    of = owed.tax_on(owed.term.start)
    return Money(_cents(of.rate * (of.premium + of.fees)), owed.premium.currency)


def _canada(plan: InstalmentPlan, payments: tuple[Payment, ...]) -> CanadaRate:
    """Return the cost-of-borrowing rate; a month is a twelfth of a year, whatever its days."""
    later = payments[1:]
    financed = sum((p.billed.amount for p in later), Decimal(0))
    paid = (Paid(p.amount.amount, Fraction(p.number * plan.months_between, MONTHS)) for p in later)
    return canada(financed, paid)


def _effective(start: date, at_once: Money, payments: tuple[Payment, ...]) -> Decimal:
    return effective([(start, at_once.amount), *((p.due, -p.amount.amount) for p in payments)])


def plan_name(plan: InstalmentPlan) -> Term:
    """Return a plan as people call it."""
    return Term("plan", plan.id)


def plans_of(insurer: str | None, reference: Reference) -> tuple[InstalmentPlan, ...]:
    """Return the plans of an insurer: its own by name, else those that are nobody's own."""
    every = tuple(reference.plans.values())
    wanted = _plain(insurer or "")
    own = tuple(p for p in every if wanted and wanted in map(_plain, p.insurers))
    return own or tuple(p for p in every if not p.insurers)


def _plain(insurer: str) -> str:
    return " ".join(insurer.split()).casefold()


def check_choice(plan: str, insurer: str | None, reference: Reference) -> Words | None:
    """Return why a plan cannot be chosen with an insurer, as a sentence; None when it can."""
    theirs = plans_of(insurer, reference)
    if plan == AT_ONCE or plan in {one.id for one in theirs}:
        return None
    if plan not in reference.plans:
        return words("acts-no-plan", plan=plan[:80])
    names = tuple(plan_name(one) for one in theirs)
    asked = plan_name(reference.plans[plan])
    return words("instalments-not-theirs", plan=asked, insurer=insurer or "–", plans=names,
                 count=len(names))  # fmt: skip


def check_offered(
    plan: str, terms: Terms | None, province: str, reference: Reference
) -> Words | None:
    """Return why a plan was not offered with ``terms``, as a sentence; None when it was.

    Paying at once is always possible. ``terms`` None: nothing was offered.
    """
    wrong = check_choice(plan, terms.insurer if terms else None, reference)
    if wrong is not None or plan == AT_ONCE:
        return wrong
    named = plan_name(reference.plans[plan])
    if terms is None or not terms.instalments_available:
        return words("instalments-not-offered", plan=named)
    try:
        schedule(reference.plans[plan], bill(terms, province, reference))
    except Unusable as refused:
        return words("instalments-not-possible", plan=named, why=refused.words)
    return None


def schedules(terms: Terms, province: str, reference: Reference) -> Mapping[str, Schedule]:
    """Return every plan of the terms' insurer that fits them, by id, the cheapest first.

    Plans that end after the term, or ask for more than the premium as a deposit, are left out.
    """
    owed = bill(terms, province, reference)
    found = list(_possible(plans_of(terms.insurer, reference), owed))
    return {s.plan.id: s for s in sorted(found, key=lambda s: (s.extra.amount, s.plan.id))}


def _possible(plans: Iterable[InstalmentPlan], owed: Bill) -> Iterator[Schedule]:
    for plan in plans:
        try:
            yield schedule(plan, owed)
        except Unusable:
            continue


def cost(made: Schedule, key: str) -> Figure:
    """Return what a plan costs more than paying at once, with its payments and both yearly rates.

    ``key`` is that of the terms; it stands in the figures' ids.
    """
    id, plan = f"premium/{key}/plans/{made.plan.id}", plan_name(made.plan)
    first, last = made.payments[0].due, made.payments[-1].due
    count = sum(1 for payment in made.payments if payment.amount)
    rate, years = made.canada, made.canada.years
    inputs = (
        Figure(f"premium/{key}/at-once", made.at_once, "money",
               words("instalments-at-once"), words("instalments-at-once-how")),
        Figure(f"{id}/total", made.total, "money", words("instalments-total", plan=plan),
               words("instalments-total-how", count=count, first=first, last=last)),
        Figure(f"{id}/cost-of-borrowing", Rate(rate.rate, 2), "rate",
               words("instalments-canada", plan=plan),
               words("instalments-canada-how", cost=made.charge,
                     years=round_to(Decimal(years.numerator) / years.denominator, CENT),
                     average=Money(rate.average, made.at_once.currency).rounded())),
        Figure(f"{id}/effective", Rate(made.effective, 2), "rate",
               words("instalments-effective", plan=plan), words("instalments-effective-how")),
    )  # fmt: skip
    return Figure(
        id=f"{id}/extra",
        value=made.extra,
        unit="money",
        label=words("instalments-extra", plan=plan),
        how=words("instalments-extra-how", charge=made.charge, tax=made.extra_tax),
        inputs=inputs,
        caution=words("caution-illustrative") if made.plan.illustrative else None,
    )


def told(made: Schedule) -> Words:
    """Return what a plan costs in a few words."""
    plan = plan_name(made.plan)
    if not made.extra:
        return words("instalments-plan-free", plan=plan)
    return words("instalments-plan-costs", plan=plan, extra=made.extra, rate=Rate(made.effective))
