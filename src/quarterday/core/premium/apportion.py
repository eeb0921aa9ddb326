"""Divide an amount without losing or making a cent: the method of the largest remainder.

Each part is its exact share, rounded down or up to the unit, and the parts add up to the amount.
Whole units left over after rounding down go to the parts that lost the most by it. Between parts
that lost the same, the larger part comes first, then the name that sorts first. What is owed and
what is owing divide alike: turning every sign round turns every part round.
"""

from __future__ import annotations

from collections.abc import Hashable, Mapping
from decimal import Decimal
from fractions import Fraction
from math import ceil, floor
from typing import TypeVar

from quarterday.core.given import Unusable
from quarterday.core.money import CENT
from quarterday.core.words import words

K = TypeVar("K", bound=Hashable)


class CannotApportion(Unusable):
    """Raised when an amount cannot be divided as asked."""


def _units(amount: Decimal, unit: Decimal) -> int:
    """Return ``amount`` as a whole number of units."""
    units = Fraction(amount) / Fraction(unit)
    if units.denominator != 1:
        raise CannotApportion(words("apportion-not-whole", amount=amount, unit=unit))
    return int(units)


def _mirrored(exact: Mapping[K, Fraction]) -> bool:
    """Tell whether to divide the mirror image: the first part by name that is not zero is owed."""
    signs = (exact[key] for key in sorted(exact, key=str) if exact[key])
    return next(signs, Fraction(0)) < 0


def _rounded(exact: Mapping[K, Fraction], units: int) -> dict[K, int]:
    """Return each part (in units) rounded down or up, so that they add up to ``units``."""
    found = {key: floor(part) for key, part in exact.items()}
    left = units - sum(found.values())
    if not 0 <= left <= sum(ceil(part) - floor(part) for part in exact.values()):
        raise CannotApportion(words("apportion-wrong-sum", amount=units))
    by_loss = sorted(
        exact, key=lambda key: (floor(exact[key]) - exact[key], -abs(exact[key]), str(key))
    )
    for key in by_loss[:left]:
        found[key] += 1
    return found


def rounded_to(
    exact: Mapping[K, Fraction], total: Decimal, unit: Decimal = CENT
) -> dict[K, Decimal]:
    """Return ``exact`` parts rounded to ``unit``, each down or up, so that they sum to ``total``.

    Parts may be negative. CannotApportion when no such rounding exists or ``total`` is not a whole
    number of units.
    """
    sign = -1 if _mirrored(exact) else 1
    in_units = {key: sign * part / Fraction(unit) for key, part in exact.items()}
    found = _rounded(in_units, sign * _units(total, unit))
    return {key: sign * found[key] * unit for key in exact}


def apportion(
    total: Decimal, weights: Mapping[K, Decimal], unit: Decimal = CENT
) -> dict[K, Decimal]:
    """Divide ``total`` by ``weights`` in whole ``unit``s; the parts sum to it exactly.

    A total may be negative; weights may be zero but neither negative nor all zero
    (CannotApportion). Largest remainder, also called Hamilton's method; ties as the module says.
    """
    if unit <= 0:
        raise CannotApportion(words("apportion-unit", unit=unit))
    if any(weight < 0 for weight in weights.values()):
        raise CannotApportion(words("apportion-negative"))
    whole = sum((Fraction(weight) for weight in weights.values()), Fraction(0))
    if not whole:
        raise CannotApportion(words("apportion-no-weight"))
    shares = {key: Fraction(total) * Fraction(weight) / whole for key, weight in weights.items()}
    return rounded_to(shares, total, unit)
