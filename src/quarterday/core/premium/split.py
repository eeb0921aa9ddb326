"""Why a premium moved: an exact split that does not depend on any order.

Lines of two versions are matched by coverage, location and kind. For a line rated on an exposure
the premium is exposure × rate, the rate being what was charged for each dollar; the change goes to
the two factors by Shapley's rule: ΔE × mean R to the exposure, ΔR × mean E to the rate. A line
without an exposure moved by its rate. Tax is split the same way between its base and its rate.
Every effect is exact; what is shown is rounded to the cent, each effect of each line down or up,
so that it adds up along the line, down the effect and in total.

Source: L. S. Shapley, "A value for n-person games" (1953): with two factors, the mean of the two
orders in which they can be changed (from memory).
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction
from typing import Literal

from quarterday.core.file.records import Terms
from quarterday.core.money import MoneyError
from quarterday.core.premium.apportion import rounded_to
from quarterday.core.premium.table import signed, tax_of
from quarterday.core.premium.tax import TaxResult
from quarterday.core.reference import Reference
from quarterday.core.words import Rate

Effect = Literal[
    "exposure", "rate", "added", "dropped", "adjustment", "fee", "tax-base", "tax-rate"
]
EFFECTS: tuple[Effect, ...] = (
    "exposure", "rate", "added", "dropped", "adjustment", "fee", "tax-base", "tax-rate",
)  # fmt: skip
Key = tuple[str, str, str]
"""Coverage, location and kind of a line."""
TAX: Key = ("tax", "*", "tax")
_BY_KIND: Mapping[str, Effect] = {
    "surcharge": "adjustment", "discount": "adjustment", "fee": "fee",
}  # fmt: skip
Exact = Mapping[Effect, Fraction]


@dataclass(frozen=True, slots=True)
class ChargedLine:
    """A line as charged; ``exposure`` None where the premium is not rated on one."""

    key: Key
    amount: Decimal
    exposure: Decimal | None = None


@dataclass(frozen=True, slots=True)
class ChargedTax:
    """The tax as charged: its amount in whole cents, what it was laid on, and the rate."""

    amount: Decimal = Decimal(0)
    base: Decimal = Decimal(0)
    rate: Decimal = Decimal(0)


@dataclass(frozen=True, slots=True)
class LineSplit:
    """One line before and after, and what moved it; effects that are nothing are left out."""

    key: Key
    before: Decimal
    after: Decimal
    effects: Mapping[Effect, Decimal]


@dataclass(frozen=True, slots=True)
class Split:
    """Why the whole moved: every line with its effects, the tax last, and each effect's sum."""

    before: Decimal
    after: Decimal
    lines: tuple[LineSplit, ...]
    effects: Mapping[Effect, Decimal]

    @property
    def change(self) -> Decimal:
        """After less before, with fees and tax."""
        return self.after - self.before


def two_factor(e0: Fraction, r0: Fraction, e1: Fraction, r1: Fraction) -> tuple[Fraction, Fraction]:
    """Return what e1·r1 − e0·r0 owes to the first factor and to the second, by Shapley's rule."""
    return (e1 - e0) * (r0 + r1) / 2, (r1 - r0) * (e0 + e1) / 2


def _matched(before: ChargedLine, after: ChargedLine) -> Exact:
    kind = _BY_KIND.get(after.key[2], "rate")
    a0, a1 = Fraction(before.amount), Fraction(after.amount)
    if kind != "rate" or not before.exposure or not after.exposure:
        return {kind: a1 - a0}
    e0, e1 = Fraction(before.exposure), Fraction(after.exposure)
    exposure, rate = two_factor(e0, a0 / e0, e1, a1 / e1)
    return {"exposure": exposure, "rate": rate}


def _line(before: ChargedLine | None, after: ChargedLine | None) -> Exact:
    if before and after:
        return _matched(before, after)
    line = before or after
    assert line is not None
    effect = _BY_KIND.get(line.key[2], "added" if after else "dropped")
    return {effect: Fraction(line.amount) * (1 if after else -1)}


def _tax(before: ChargedTax, after: ChargedTax) -> Exact:
    """Return the two effects on the tax; the rounding of the tax belongs to what moved it."""
    base, rate = two_factor(
        Fraction(before.base), Fraction(before.rate), Fraction(after.base), Fraction(after.rate)
    )
    left = Fraction(after.amount - before.amount) - base - rate
    if before.base != after.base:
        return {"tax-base": base + left, "tax-rate": rate}
    return {"tax-base": base, "tax-rate": rate + left}


def _nearest(value: Fraction) -> Decimal:
    """Return ``value`` in whole cents, half a cent away from zero."""
    cents = abs(value) * 100
    whole = (2 * cents.numerator + cents.denominator) // (2 * cents.denominator)
    return Decimal(whole if value >= 0 else -whole).scaleb(-2)


def _shown(
    exact: Mapping[Key, Exact], first: Effect, second: Effect
) -> dict[Key, dict[Effect, Decimal]]:
    """Round the lines that ``first`` and ``second`` share.

    A line's change is whole cents, so rounding ``first`` down rounds ``second`` up: one rounding
    of the column ``first`` to its own nearest sum settles every line and both columns.
    """
    firsts = {key: effects[first] for key, effects in exact.items()}
    rounded = rounded_to(firsts, _nearest(sum(firsts.values(), Fraction(0))))
    return {
        key: {first: rounded[key], second: _nearest(_whole(exact[key])) - rounded[key]}
        for key in exact
    }


def _whole(exact: Exact) -> Fraction:
    return sum(exact.values(), Fraction(0))


def _merged(lines: Iterable[ChargedLine]) -> dict[Key, ChargedLine]:
    """Return the lines by key; those with the same key are taken together."""
    found: dict[Key, ChargedLine] = {}
    for line in lines:
        same = found.get(line.key)
        found[line.key] = _together(same, line) if same else line
    return found


def _together(one: ChargedLine, other: ChargedLine) -> ChargedLine:
    known = one.exposure is not None and other.exposure is not None
    exposure = (one.exposure or 0) + (other.exposure or Decimal(0)) if known else None
    return ChargedLine(one.key, one.amount + other.amount, exposure)


def _rounded(exact: Mapping[Key, Exact]) -> dict[Key, dict[Effect, Decimal]]:
    shared = {key: effects for key, effects in exact.items() if "exposure" in effects}
    found = _shown(shared, "exposure", "rate")
    found |= _shown({TAX: exact[TAX]}, "tax-base", "tax-rate")
    for key in exact.keys() - found.keys():
        found[key] = {effect: _nearest(value) for effect, value in exact[key].items()}
    return found


def split(
    before: Iterable[ChargedLine],
    after: Iterable[ChargedLine],
    tax_before: ChargedTax = ChargedTax(),
    tax_after: ChargedTax = ChargedTax(),
) -> Split:
    """Return why the premium moved from ``before`` to ``after``, to the cent.

    Amounts are whole cents. Neither the order of the lines nor which factor is looked at first
    matters; exchanging before and after turns every sign round (added becomes dropped).
    """
    old, new = _merged(before), _merged(after)
    keys = sorted(old.keys() | new.keys())
    exact: dict[Key, Exact] = {key: _line(old.get(key), new.get(key)) for key in keys}
    exact[TAX] = _tax(tax_before, tax_after)
    shown = _rounded(exact)
    amounts = {key: (_amount(old, key), _amount(new, key)) for key in keys}
    amounts[TAX] = tax_before.amount, tax_after.amount
    lines = tuple(
        LineSplit(key, *amounts[key], {e: v for e, v in shown[key].items() if v})
        for key in (*keys, TAX)
    )
    return Split(
        before=sum((line.before for line in lines), Decimal(0)),
        after=sum((line.after for line in lines), Decimal(0)),
        lines=lines,
        effects={
            e: sum((line.effects.get(e, Decimal(0)) for line in lines), Decimal(0)) for e in EFFECTS
        },
    )


def _amount(lines: Mapping[Key, ChargedLine], key: Key) -> Decimal:
    return lines[key].amount if key in lines else Decimal("0.00")


def charged_lines(terms: Terms) -> tuple[ChargedLine, ...]:
    """Return the lines of the premium table of ``terms``, discounts negative, fees included."""
    return tuple(ChargedLine(p.line, signed(p), p.exposure) for p in terms.premiums)


def charged_tax(result: TaxResult) -> ChargedTax:
    """Return a tax as the split needs it."""
    ratio = result.rate.value if result.rate else Rate(Decimal(0))
    assert isinstance(ratio, Rate)
    return ChargedTax(result.tax.money.amount, result.base.money.amount, ratio.value)


def between(before: Terms, after: Terms, province: str, reference: Reference) -> Split:
    """Return why the premium moved from one version of the terms to another, with its tax.

    Each version is taxed as paid on its first day. MoneyError when the currencies differ.
    """
    if before.currency != after.currency:
        raise MoneyError(f"{before.currency} cannot be compared with {after.currency}.")
    return split(
        charged_lines(before),
        charged_lines(after),
        charged_tax(tax_of(before, province, reference)),
        charged_tax(tax_of(after, province, reference)),
    )
