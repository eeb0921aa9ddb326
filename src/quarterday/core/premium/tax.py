"""The tax a province lays on premiums.

The base is the sum of what is taxed: every line whose family and coverage are not exempt, and the
fees where the province taxes fees. The tax is the base times the rate, rounded half-up to the cent
once, on the whole base. Each rate says which day decides whether it has begun: the start of the
policy or the day of payment; the newest rate whose own day has come is the rate.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date
from decimal import Decimal

from quarterday.core.dates import add_years
from quarterday.core.figure import Figure, Parameter
from quarterday.core.money import Money, total
from quarterday.core.reference import Family, Province, TaxRate
from quarterday.core.words import Rate, Term, Words, words

BASE = "/base"  # what ends the id of a tax's base
Line = tuple[Family | None, str, Money]
"""A line to be taxed: its family (None when not known: it is taxed), coverage and amount."""


@dataclass(frozen=True, slots=True)
class TaxedLine:
    """A line of the premium and whether the province taxes it."""

    coverage: str
    amount: Money
    is_taxed: bool


@dataclass(frozen=True, slots=True)
class TaxResult:
    """The tax on one payment of a premium.

    ``rate`` is None where there is no tax and where no rate is known for the day; ``is_known``
    tells the two apart. ``later`` is a rate already set for payments that come within a year.
    """

    province: str
    lines: tuple[TaxedLine, ...]
    rate: Parameter | None
    base: Figure
    tax: Figure
    later: Parameter | None
    is_known: bool


def percentage(ratio: Decimal) -> Rate:
    """Return ``ratio`` to be read with the decimals it has: 0.09975 is 9.975 %, 0.08 is 8 %."""
    places = -int(ratio.normalize().as_tuple().exponent)
    return Rate(ratio, decimals=max(0, places - 2))


def _has_begun(rate: TaxRate, policy_start: date, pay_on: date) -> bool:
    return rate.since <= (policy_start if rate.turns_on == "policy-start" else pay_on)


def _in_force(province: Province, policy_start: date, pay_on: date) -> TaxRate | None:
    begun = (r for r in province.tax.rates if _has_begun(r, policy_start, pay_on))
    return max(begun, key=lambda r: r.since, default=None)


def _later(province: Province, policy_start: date, pay_on: date) -> TaxRate | None:
    """Return the rate that decides what is paid later in the same year of cover."""
    last_payment = add_years(policy_start, 1)
    coming = (
        r for r in province.tax.rates
        if r.turns_on == "payment-date" and pay_on < r.since < last_payment
    )  # fmt: skip
    return min(coming, key=lambda r: r.since, default=None)


def _parameter(rate: TaxRate, province: str) -> Parameter:
    return Parameter(
        id=f"tax.{province}",
        value=percentage(rate.rate),
        unit="rate",
        label=words("money-tax-rate", province=Term("province", province)),
        source=rate.source.source(),
        since=rate.since,
    )


def is_taxed(rate: TaxRate | None, family: Family | None, coverage: str) -> bool:
    """Tell whether a line of this family and coverage is taxed at ``rate``."""
    if rate is None:
        return False
    return family not in rate.exempt_families and coverage not in rate.exempt_coverages


def _base(lines: Iterable[TaxedLine], fees: Money, taxes_fees: bool, id: str) -> Figure:
    parts = tuple(lines)
    taxed = total((p.amount for p in parts if p.is_taxed), fees.currency)
    exempt = total((p.amount for p in parts if not p.is_taxed), fees.currency)
    taxed_fees = fees if taxes_fees else fees * 0
    return Figure(
        id=f"{id}{BASE}",
        value=taxed + taxed_fees,
        unit="money",
        label=words("money-tax-base"),
        how=words("money-tax-base-how", taxed=taxed, exempt=exempt, fees=taxed_fees),
    )


def _straddle(later: Parameter | None) -> Words | None:
    if later is None:
        return None
    return words("money-tax-later", since=later.since, rate=_ratio(later))


def _how(base: Figure, rate: Parameter | None, premium: Money, *, is_known: bool) -> Words:
    if rate is None:
        return words("money-no-tax-how" if is_known else "money-tax-unknown-how", premium=premium)
    return words("money-tax-how", base=base.money, rate=_ratio(rate))


def _ratio(rate: Parameter | None) -> Rate:
    ratio = rate.value if rate else Rate(Decimal(0), 0)
    assert isinstance(ratio, Rate)
    return ratio


def tax(
    province: Province,
    policy_start: date,
    pay_on: date,
    lines: Iterable[Line],
    fees: Money,
    id: str = "tax",
) -> TaxResult:
    """Return the tax on a premium of ``lines`` and ``fees`` paid on ``pay_on``.

    Amounts of one currency; a discount is a negative line. ``id`` begins the figures' ids.
    Sources: the province's own, carried by the rate.
    """
    rate = _in_force(province, policy_start, pay_on)
    later = _later(province, policy_start, pay_on)
    taxed = tuple(TaxedLine(c, amount, is_taxed(rate, family, c)) for family, c, amount in lines)
    shown = _parameter(rate, province.code) if rate else None
    shown_later = _parameter(later, province.code) if later else None
    base = _base(taxed, fees, rate is not None and rate.taxes_fees, id)
    premium = total((line.amount for line in taxed), fees.currency) + fees
    is_known = rate is not None or not province.tax.rates
    return TaxResult(
        province=province.code,
        lines=taxed,
        rate=shown,
        base=base,
        tax=_figure(base, (shown, shown_later), _how(base, shown, premium, is_known=is_known)),
        later=shown_later,
        is_known=is_known,
    )


def _figure(base: Figure, rates: tuple[Parameter | None, Parameter | None], how: Words) -> Figure:
    """Return the tax on ``base`` at the first rate; the second is told as the one to come."""
    rate, later = rates
    return Figure(
        id=base.id.removesuffix(BASE),
        value=(base.money * _ratio(rate).value).rounded(),
        unit="money",
        label=words("money-tax"),
        how=how,
        inputs=tuple(node for node in (base, rate, later) if node),
        caution=_straddle(later),
    )
