"""Calculations about premiums on their own: plain values in, plain values and steps out.

Amounts come in as text or whole numbers, never as floats, and go out as text. ``steps`` are the
sentences a person reads.
"""

from __future__ import annotations

from collections.abc import Mapping
from decimal import Decimal
from typing import Any

from pydantic import Field

from quarterday.core.file.records.base import Day, Number, Part
from quarterday.core.given import Unusable, read
from quarterday.core.money import CENT, Money, total
from quarterday.core.premium.apportion import apportion as divide
from quarterday.core.premium.tax import Line, TaxedLine, TaxResult
from quarterday.core.premium.tax import tax as tax_on
from quarterday.core.reference import Family, Reference
from quarterday.core.words import Rate, Term, Words, words

Done = Mapping[str, Any]
NO_FEES = Money(Decimal(0))


class TaxLine(Part):
    """A premium of one coverage family."""

    family: Family
    amount: Number


class TaxInputs(Part):
    """What ``calc tax`` needs; the policy starts and is paid on ``date``."""

    province: str
    date: Day
    lines: tuple[TaxLine, ...] = Field(min_length=1)


class ApportionInputs(Part):
    """What ``calc apportion`` needs."""

    total: Number
    weights: Mapping[str, Number]
    unit: Number = CENT


def tax(given: Mapping[str, object], reference: Reference) -> Done:
    """Return ``lines``, ``base``, ``rate``, ``tax``, ``total`` and ``steps`` for TaxInputs.

    Unusable for an unknown key or province, or a day before the first known rate.
    """
    inputs = read(TaxInputs, given)
    result = _taxed(inputs, reference)
    premium = total(line.amount for line in result.lines)
    whole = premium + result.tax.money
    ratio = result.rate.value if result.rate else Rate(Decimal(0))
    assert isinstance(ratio, Rate)
    return {
        "lines": [_line(*pair) for pair in zip(inputs.lines, result.lines, strict=True)],
        "base": _cents(result.base.money),
        "rate": f"{ratio.value.normalize():f}",
        "tax": _cents(result.tax.money),
        "total": _cents(whole),
        "steps": _tax_steps(result, premium, whole),
    }


def _cents(money: Money) -> str:
    return f"{money.rounded().amount:.2f}"


def _line(line: TaxLine, taxed: TaxedLine) -> dict[str, Any]:
    return {"family": line.family, "amount": _cents(taxed.amount), "taxed": taxed.is_taxed}


def _taxed(inputs: TaxInputs, reference: Reference) -> TaxResult:
    code = inputs.province.upper()
    if code not in reference.provinces:
        known = tuple(sorted(reference.provinces))
        raise Unusable(words("calc-no-province", province=inputs.province, known=known))
    lines: list[Line] = [(line.family, "", Money(line.amount)) for line in inputs.lines]
    result = tax_on(reference.provinces[code], inputs.date, inputs.date, lines, NO_FEES)
    if not result.is_known:
        where = Term("province", code)
        raise Unusable(words("calc-tax-not-known", province=where, day=inputs.date))
    return result


def _tax_steps(result: TaxResult, premium: Money, whole: Money) -> tuple[Words, ...]:
    last = words("calc-tax-total", premium=premium, tax=result.tax.money, total=whole)
    caution = (result.tax.caution,) if result.tax.caution else ()
    return (result.base.how, result.tax.how, *caution, last)


def apportion(given: Mapping[str, object], _reference: Reference) -> Done:
    """Return ``parts`` by name and ``steps`` for ApportionInputs.

    Unusable for an unknown key, weights that are negative or all zero, or a total that is not a
    whole number of units.
    """
    inputs = read(ApportionInputs, given)
    parts = divide(inputs.total, inputs.weights, inputs.unit)
    step = words("calc-apportion", total=inputs.total, unit=inputs.unit, count=len(parts))
    return {"parts": {k: shown(v, inputs.unit) for k, v in parts.items()}, "steps": (step,)}


def shown(amount: Decimal, unit: Decimal = CENT) -> str:
    """Return an amount with as many decimals as its unit has."""
    places = max(0, -int(unit.normalize().as_tuple().exponent))
    return f"{amount:.{places}f}"
