"""Calculations on their own: instalments, yearly rates, and a term that ends early.

Amounts come in as text or whole numbers, never as floats, and go out as text.
"""

from __future__ import annotations

from collections.abc import Mapping
from decimal import Decimal
from fractions import Fraction
from typing import Annotated, Literal

from pydantic import BeforeValidator, ConfigDict, Field

from quarterday.core.dates import Period, Roll, add_years
from quarterday.core.file.records.base import Amount, Day, Number, Part
from quarterday.core.given import Unusable, read
from quarterday.core.money import CENT, Money
from quarterday.core.premium import apr as rates
from quarterday.core.premium.calc import Done, shown
from quarterday.core.premium.instalments import (
    Bill,
    Payment,
    Schedule,
    Taxable,
    known_province,
    schedule,
    taxable,
)
from quarterday.core.premium.midterm import Earned, rule_named
from quarterday.core.premium.midterm import earned as earned_by
from quarterday.core.premium.tax import percentage, tax
from quarterday.core.reference import Both, Cited, Family, InstalmentPlan, Reference
from quarterday.core.words import Rate, Words, words


def _fraction(value: object) -> Fraction:
    """Return a fraction of text like ``19/30`` or ``12``; ValueError otherwise."""
    if isinstance(value, bool | float):
        raise ValueError("must be exact")  # noqa: TRY004 - pydantic tells of a ValueError
    try:
        return Fraction(str(value))
    except ZeroDivisionError as error:
        raise ValueError("divides by zero") from error


Ratio = Annotated[Fraction, BeforeValidator(_fraction)]
ORIGIN = Cited(title="as given", publisher="as given", checked_on=Day(2026, 11, 25))


class PlanInputs(Part):
    """A plan as given; ``deposit`` in dollars or ``deposit_rate`` as a ratio of the premium.

    ``charge`` is one for the whole plan, ``charge_each`` one for each later payment,
    ``charge_rate`` a ratio of what is left after the deposit; all in addition.
    """

    deposit: Amount | None = None
    deposit_rate: Number | None = Field(default=None, ge=0, le=1)
    count: int = Field(ge=1, le=60)
    months_between: int = Field(default=1, ge=1, le=12)
    charge: Number = Field(default=Decimal(0), ge=0)
    charge_rate: Number = Field(default=Decimal(0), ge=0, le=1)
    charge_each: Number = Field(default=Decimal(0), ge=0)
    tax_due: Literal["deposit", "each"] = "each"
    roll: Roll = "forwards"

    def plan(self) -> InstalmentPlan:
        """Return the plan; Unusable when it has two deposits or none."""
        if (self.deposit is None) == (self.deposit_rate is None):
            raise Unusable(words("instalments-one-deposit"))
        fields = self.model_dump(exclude={"deposit", "charge"})
        name = Both(en="plan", fr="plan")
        return InstalmentPlan(
            id="given", name=name, way="direct-withdrawal", source=ORIGIN,
            deposit_amount=self.deposit, charge_flat=self.charge, **fields,
        )  # fmt: skip


class InstalmentInputs(Part):
    """What ``calc instalments`` needs: a plan as given, or the id of one of the reference data.

    Without ``tax`` the province's tax on ``family`` is taken, by the day of each payment. The term
    is a year from ``start`` unless ``end`` says otherwise.
    """

    premium: Amount
    fees: Amount = Decimal(0)
    tax: Amount | None = None
    family: Family = "property"
    plan: PlanInputs | str
    start: Day
    end: Day | None = None
    province: str


class AdvanceInputs(Part):
    """Money advanced at a unit period; the first stands at nothing."""

    model_config = ConfigDict(arbitrary_types_allowed=True)

    amount: Number
    t: int = 0
    f: Ratio = Fraction(0)


class UnitInputs(AdvanceInputs):
    """Equal payments by unit periods."""

    count: int = Field(default=1, ge=1, le=1200)
    step: int = Field(default=1, ge=1)


class YearInputs(Part):
    """A payment so many years after the advance."""

    model_config = ConfigDict(arbitrary_types_allowed=True)

    amount: Number
    years: Ratio


class ActuarialInputs(Part):
    """What ``calc apr`` needs by Regulation Z: one advance, or several."""

    model_config = ConfigDict(arbitrary_types_allowed=True)

    method: Literal["actuarial"]
    advance: Number | None = None
    advances: tuple[AdvanceInputs, ...] = ()
    periods_per_year: Ratio
    payments: tuple[UnitInputs, ...] = Field(min_length=1)


class CanadaInputs(Part):
    """What ``calc apr`` needs by the Canadian formula."""

    method: Literal["canada"]
    financed: Number
    payments: tuple[YearInputs, ...] = Field(min_length=1)


class EffectiveFlow(Part):
    """Money in (above zero) or out (below) on a day."""

    amount: Number
    date: Day


class EffectiveInputs(Part):
    """What ``calc apr`` needs for the effective yearly rate of dated flows."""

    method: Literal["effective"]
    flows: tuple[EffectiveFlow, ...] = Field(min_length=2)


class EarnedInputs(Part):
    """What ``calc earned`` needs; ``rule`` is ``pro-rata`` or the id of a short-rate rule."""

    premium: Amount
    start: Day = Field(alias="from")
    end: Day = Field(alias="to")
    cancelled: Day
    rule: str = "pro-rata"


def instalments(given: Mapping[str, object], reference: Reference) -> Done:
    """Return ``payments``, ``total``, ``charge``, ``at_once``, ``extra``, rates and ``steps``.

    Unusable for an unknown key, province or plan, a plan that ends after the term, or a deposit
    above the premium.
    """
    inputs = read(InstalmentInputs, given)
    done = schedule(_plan(inputs.plan, reference), _bill(inputs, reference))
    return {
        "payments": [_payment(payment) for payment in done.payments],
        "total": _cents(done.total),
        "charge": _cents(done.charge),
        "at_once": _cents(done.at_once),
        "extra": _cents(done.extra),
        "extra_tax": _cents(done.extra_tax),
        "apr_canada": _plain(done.canada.rate * 100),
        "effective_rate": _plain(done.effective * 100),
        "steps": _instalment_steps(done),
    }


def _plan(given: PlanInputs | str, reference: Reference) -> InstalmentPlan:
    if isinstance(given, PlanInputs):
        return given.plan()
    if given not in reference.plans:
        known = tuple(sorted(reference.plans))
        raise Unusable(words("instalments-no-plan", plan=given, known=known))
    return reference.plans[given]


def _bill(inputs: InstalmentInputs, reference: Reference) -> Bill:
    code = inputs.province.upper()
    known_province(code, reference)
    end = inputs.end or add_years(inputs.start, 1)
    if end <= inputs.start:
        raise Unusable(words("midterm-reversed", start=inputs.start, end=end))

    def taxed(day: Day) -> Taxable:
        if inputs.tax is not None:
            premium = Fraction(inputs.premium)
            return Taxable(Fraction(inputs.tax) / (premium or Fraction(1)), premium)
        lines = [(inputs.family, "", Money(inputs.premium))]
        where = reference.provinces[code]
        return taxable(tax(where, inputs.start, day, lines, Money(inputs.fees)))

    return Bill(Period(inputs.start, end), code, Money(inputs.premium), Money(inputs.fees), taxed)


def _payment(payment: Payment) -> dict[str, str]:
    return {
        "date": payment.due.isoformat(),
        "amount": _cents(payment.amount),
        "premium": _cents(payment.premium),
        "fees": _cents(payment.fees),
        "tax": _cents(payment.tax),
        "charge": _cents(payment.charge),
    }


def _cents(money: Money) -> str:
    return shown(money.rounded().amount)


def _plain(number: Decimal) -> str:
    return f"{number.normalize() + 0:f}"


def _instalment_steps(done: Schedule) -> tuple[Words, ...]:
    parts = words("calc-instalments-parts", charge=done.charge, tax=done.extra_tax)
    return (
        words("calc-instalments-once", at_once=done.at_once, total=done.total, extra=done.extra),
        *((parts,) if done.extra_tax else ()),
        words("calc-instalments-canada", rate=Rate(done.canada.rate, 2)),
        words("calc-instalments-effective", rate=Rate(done.effective, 2)),
    )


def apr(given: Mapping[str, object], _reference: Reference) -> Done:
    """Return ``apr`` (per cent, unrounded), ``rounded`` and ``steps`` by the method named.

    ``actuarial`` is rounded to a hundredth, ``canada`` to the nearest eighth of a per cent,
    ``effective`` to a hundredth. Unusable for an unknown key or method, and where there is no rate
    or there may be several.
    """
    method = given.get("method")
    if method == "canada":
        return _canada(read(CanadaInputs, given))
    if method == "effective":
        return _effective(read(EffectiveInputs, given))
    return _actuarial(read(ActuarialInputs, given))


def _canada(inputs: CanadaInputs) -> Done:
    paid = [rates.Paid(p.amount, p.years) for p in inputs.payments]
    found = rates.canada(inputs.financed, paid)
    step = words("calc-apr-canada", cost=Money(found.cost), average=Money(found.average).rounded(),
                 years=Decimal(found.years.numerator) / found.years.denominator,
                 rate=Rate(found.rate, 4))  # fmt: skip
    return {
        "apr": _plain(found.rate * 100),
        "rounded": _plain(found.rounded * 100),
        "cost": shown(found.cost),
        "average": _plain(found.average),
        "steps": (step,),
    }


def _hundredth(rate: Decimal, step: str) -> Done:
    return {
        "apr": _plain(rate * 100),
        "rounded": shown((rate * 100).quantize(CENT)),
        "steps": (words(step, rate=Rate(rate, 4)),),
    }


def _effective(inputs: EffectiveInputs) -> Done:
    found = rates.effective((flow.date, flow.amount) for flow in inputs.flows)
    return _hundredth(found, "calc-apr-effective")


def _actuarial(inputs: ActuarialInputs) -> Done:
    advances = [rates.UnitPayments(a.amount, a.t, a.f) for a in inputs.advances]
    if inputs.advance is not None:
        advances.insert(0, rates.UnitPayments(inputs.advance, 0))
    payments = [rates.UnitPayments(p.amount, p.t, p.f, p.count, p.step) for p in inputs.payments]
    found = rates.actuarial(advances, payments, inputs.periods_per_year)
    return _hundredth(found, "calc-apr-actuarial")


def earned(given: Mapping[str, object], reference: Reference) -> Done:
    """Return ``earned``, ``returned``, ``days``, ``of_days``, ``share`` and ``steps``.

    Unusable for an unknown key or rule, a day outside the term, or a day the table was not
    published for.
    """
    inputs = read(EarnedInputs, given)
    if inputs.end <= inputs.start:
        raise Unusable(words("midterm-reversed", start=inputs.start, end=inputs.end))
    rule = rule_named(inputs.rule, reference)
    term = Period(inputs.start, inputs.end)
    done = earned_by(Money(inputs.premium), term, inputs.cancelled, rule)
    share = Decimal(done.share.numerator) / Decimal(done.share.denominator)
    return {
        "earned": _cents(done.earned),
        "returned": _cents(done.returned),
        "days": done.days,
        "of_days": done.of_days,
        "share": _plain(share.quantize(rates.PLACES)),
        "steps": _earned_steps(done, share),
    }


def _earned_steps(done: Earned, share: Decimal) -> tuple[Words, ...]:
    leap = (words("midterm-leap"),) if done.is_leap else ()
    kept = percentage(share.quantize(Decimal("0.0001")))
    return (
        words("midterm-days", days=done.days, of_days=done.of_days),
        *leap,
        words("midterm-kept", share=kept, earned=done.earned, returned=done.returned),
    )
