"""Exact money: a decimal amount with its currency, never a binary float."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from decimal import ROUND_HALF_UP, Decimal

CENT = Decimal("0.01")


class MoneyError(TypeError):
    """Raised when money meets something that is not money of the same currency."""


def exact(number: Decimal | int | str) -> Decimal:
    """Return ``number`` as a finite Decimal; refuse floats, which are not exact."""
    if isinstance(number, bool) or not isinstance(number, Decimal | int | str):
        raise MoneyError(f"{number!r} is not an exact number; give a Decimal, int or text.")
    value = Decimal(number)
    if not value.is_finite():
        raise MoneyError(f"{number!r} is not a finite number.")
    return value


def round_to(amount: Decimal, unit: Decimal = CENT) -> Decimal:
    """Return ``amount`` rounded half-up to a multiple of ``unit`` (default: the cent)."""
    return (amount / unit).quantize(Decimal(1), rounding=ROUND_HALF_UP) * unit


@dataclass(frozen=True, slots=True, order=False)
class Money:
    """An exact amount of one currency (ISO 4217 code)."""

    amount: Decimal
    currency: str = "CAD"

    def __post_init__(self) -> None:
        object.__setattr__(self, "amount", exact(self.amount))

    def _same(self, other: object) -> Decimal:
        if not isinstance(other, Money):
            raise MoneyError(f"Money cannot be combined with {other!r}.")
        if other.currency != self.currency:
            raise MoneyError(f"{self.currency} cannot be combined with {other.currency}.")
        return other.amount

    def __add__(self, other: Money) -> Money:
        return Money(self.amount + self._same(other), self.currency)

    def __sub__(self, other: Money) -> Money:
        return Money(self.amount - self._same(other), self.currency)

    def __neg__(self) -> Money:
        return Money(-self.amount, self.currency)

    def __abs__(self) -> Money:
        return Money(abs(self.amount), self.currency)

    def __mul__(self, factor: Decimal | int) -> Money:
        return Money(self.amount * exact(factor), self.currency)

    __rmul__ = __mul__

    def __truediv__(self, divisor: Decimal | int) -> Money:
        return Money(self.amount / exact(divisor), self.currency)

    def __lt__(self, other: Money) -> bool:
        return self.amount < self._same(other)

    def __le__(self, other: Money) -> bool:
        return self.amount <= self._same(other)

    def __gt__(self, other: Money) -> bool:
        return self.amount > self._same(other)

    def __ge__(self, other: Money) -> bool:
        return self.amount >= self._same(other)

    def __bool__(self) -> bool:
        return bool(self.amount)

    def ratio(self, other: Money) -> Decimal:
        """Return this amount as a share of ``other`` (unrounded)."""
        return self.amount / self._same(other)

    def rounded(self, unit: Decimal = CENT) -> Money:
        """Return the amount rounded half-up to a multiple of ``unit``."""
        return Money(round_to(self.amount, unit), self.currency)

    def about(self, digits: int = 3) -> Money:
        """Return an estimate as a heading says it: half-up to ``digits`` leading digits."""
        return self.rounded(Decimal(1).scaleb(self.amount.adjusted() - digits + 1))


def total(amounts: Iterable[Money], currency: str = "CAD") -> Money:
    """Return the sum of ``amounts``; zero of ``currency`` when there are none."""
    parts = tuple(amounts)
    start = Money(Decimal(0), parts[0].currency if parts else currency)
    return sum(parts, start)
