"""How large losses are: distributions whose limited means are known in closed form.

Amounts are floats, as probabilities are: they are estimates, and no money moves by them. The
formulas are those of Klugman, Panjer and Willmot, Loss Models, appendix A (from memory); the tests
check them against quadrature and published tables.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Protocol, Self

import numpy as np
from numpy.typing import ArrayLike, NDArray
from scipy.special import gammainc, gammaincc, gammaincinv, ndtr, ndtri

Floats = NDArray[np.float64]
INFINITE = float("inf")


class Severity(Protocol):
    """The size of one loss, zero or more. Arguments are numbers or arrays of them."""

    @property
    def mean(self) -> float:
        """The mean, infinite where there is none."""
        ...

    def limited_mean(self, most: ArrayLike) -> Floats:
        """Return the mean of losses of which no more than ``most`` counts (infinite: all)."""
        ...

    def beyond(self, amount: ArrayLike) -> Floats:
        """Return the chance that a loss is larger than ``amount``."""
        ...

    def quantile(self, chance: ArrayLike) -> Floats:
        """Return the amount that a loss stays within with ``chance`` (0 closed to 1 open)."""
        ...

    def scaled(self, factor: float) -> Self:
        """Return the distribution of losses ``factor`` times as large."""
        ...


def _floats(values: ArrayLike) -> Floats:
    return np.asarray(values, dtype=np.float64)


def _must_be_positive(**values: float) -> None:
    for name, value in values.items():
        if not 0 < value < INFINITE:
            raise ValueError(f"{name} must be above zero and finite, not {value}")


def _or_mean(most: Floats, limited: Floats, mean: float) -> Floats:
    """Return the mean itself where there is no limit."""
    return np.where(np.isinf(most), mean, limited)


@dataclass(frozen=True, slots=True)
class Lognormal:
    """Losses whose logarithm is normal with mean ``mu`` and standard deviation ``sigma``."""

    mu: float
    sigma: float

    def __post_init__(self) -> None:
        _must_be_positive(sigma=self.sigma)

    @classmethod
    def of_mean(cls, mean: float, sigma: float) -> Self:
        """Return the distribution with this mean."""
        _must_be_positive(mean=mean)
        return cls(float(np.log(mean)) - sigma * sigma / 2, sigma)

    @property
    def mean(self) -> float:
        """The mean."""
        return float(np.exp(self.mu + self.sigma**2 / 2))

    def _z(self, amount: Floats) -> Floats:
        with np.errstate(divide="ignore"):
            return (np.log(amount) - self.mu) / self.sigma

    def limited_mean(self, most: ArrayLike) -> Floats:
        """Return E[min(X, most)]."""
        u = _floats(most)
        z = self._z(u)
        with np.errstate(invalid="ignore"):
            limited = self.mean * ndtr(z - self.sigma) + u * ndtr(-z)
        return _or_mean(u, limited, self.mean)

    def beyond(self, amount: ArrayLike) -> Floats:
        """Return P(X > amount)."""
        return _floats(ndtr(-self._z(_floats(amount))))

    def quantile(self, chance: ArrayLike) -> Floats:
        """Return the inverse of P(X <= amount)."""
        return np.exp(self.mu + self.sigma * _floats(ndtri(_floats(chance))))

    def scaled(self, factor: float) -> Self:
        """Return the distribution of ``factor`` times the loss."""
        _must_be_positive(factor=factor)
        return replace(self, mu=self.mu + float(np.log(factor)))


@dataclass(frozen=True, slots=True)
class Pareto:
    """Losses of the second Pareto kind (Lomax): P(X > x) = (scale / (x + scale)) ** shape."""

    shape: float
    scale: float

    def __post_init__(self) -> None:
        _must_be_positive(shape=self.shape, scale=self.scale)

    @classmethod
    def of_mean(cls, mean: float, shape: float) -> Self:
        """Return the distribution with this mean; ValueError where ``shape`` allows none."""
        if shape <= 1:
            raise ValueError(f"a Pareto of shape {shape} has no mean; the shape must be above one")
        return cls(shape, mean * (shape - 1))

    @property
    def mean(self) -> float:
        """The mean, infinite for a shape of one or less."""
        return self.scale / (self.shape - 1) if self.shape > 1 else INFINITE

    def limited_mean(self, most: ArrayLike) -> Floats:
        """Return E[min(X, most)]."""
        u = _floats(most)
        if self.shape == 1:
            limited = self.scale * np.log1p(u / self.scale)
        else:
            power = 1 - self.shape
            limited = self.scale * np.expm1(power * np.log1p(u / self.scale)) / power
        return _or_mean(u, limited, self.mean)

    def beyond(self, amount: ArrayLike) -> Floats:
        """Return P(X > amount)."""
        return np.exp(-self.shape * np.log1p(_floats(amount) / self.scale))

    def quantile(self, chance: ArrayLike) -> Floats:
        """Return the inverse of P(X <= amount)."""
        return self.scale * np.expm1(-np.log1p(-_floats(chance)) / self.shape)

    def scaled(self, factor: float) -> Self:
        """Return the distribution of ``factor`` times the loss."""
        return replace(self, scale=self.scale * factor)


@dataclass(frozen=True, slots=True)
class Gamma:
    """Losses of a gamma distribution; with a ``shape`` of one they are exponential."""

    shape: float
    scale: float

    def __post_init__(self) -> None:
        _must_be_positive(shape=self.shape, scale=self.scale)

    @property
    def mean(self) -> float:
        """The mean."""
        return self.shape * self.scale

    def limited_mean(self, most: ArrayLike) -> Floats:
        """Return E[min(X, most)]."""
        u = _floats(most)
        x = u / self.scale
        with np.errstate(invalid="ignore"):
            limited = self.mean * gammainc(self.shape + 1, x) + u * gammaincc(self.shape, x)
        return _or_mean(u, limited, self.mean)

    def beyond(self, amount: ArrayLike) -> Floats:
        """Return P(X > amount)."""
        return _floats(gammaincc(self.shape, _floats(amount) / self.scale))

    def quantile(self, chance: ArrayLike) -> Floats:
        """Return the inverse of P(X <= amount)."""
        return self.scale * _floats(gammaincinv(self.shape, _floats(chance)))

    def scaled(self, factor: float) -> Self:
        """Return the distribution of ``factor`` times the loss."""
        return replace(self, scale=self.scale * factor)


def exponential(mean: float) -> Gamma:
    """Return the exponential distribution with this mean."""
    return Gamma(1, mean)


@dataclass(frozen=True, slots=True)
class Capped:
    """Losses that cannot be larger than ``most``, such as a total loss."""

    of: Severity
    most: float

    def __post_init__(self) -> None:
        _must_be_positive(most=self.most)

    @property
    def mean(self) -> float:
        """The mean."""
        return float(self.of.limited_mean(self.most))

    def limited_mean(self, most: ArrayLike) -> Floats:
        """Return E[min(X, most)]."""
        return self.of.limited_mean(np.minimum(_floats(most), self.most))

    def beyond(self, amount: ArrayLike) -> Floats:
        """Return P(X > amount)."""
        x = _floats(amount)
        return np.where(x < self.most, self.of.beyond(x), 0.0)

    def quantile(self, chance: ArrayLike) -> Floats:
        """Return the smallest amount that a loss stays within with ``chance``."""
        return np.minimum(self.of.quantile(chance), self.most)

    def scaled(self, factor: float) -> Self:
        """Return the distribution of ``factor`` times the loss."""
        return replace(self, of=self.of.scaled(factor), most=self.most * factor)


@dataclass(frozen=True, slots=True)
class Layer:
    """What an insurer pays of one loss: ``share`` of what is over ``deductible``, up to ``limit``.

    A ``share`` below one is the part left by a coinsurance penalty; the deductible comes off first.
    """

    deductible: float = 0.0
    limit: float = INFINITE
    share: float = 1.0

    def __post_init__(self) -> None:
        if self.deductible < 0 or not self.limit >= 0 or not 0 < self.share <= 1:
            raise ValueError("a deductible and a limit cannot be negative; a share is in (0, 1]")

    @property
    def full(self) -> float:
        """The loss from which on the insurer pays no more."""
        return self.deductible + self.limit / self.share


def paid_mean(severity: Severity, layer: Layer) -> float:
    """Return the mean of what the insurer pays of one loss, losses below the deductible counted."""
    over = severity.limited_mean(layer.full) - severity.limited_mean(layer.deductible)
    return float(layer.share * over)


def borne_mean(severity: Severity, layer: Layer) -> float:
    """Return the mean of what stays with the insured of one loss; infinite without a mean."""
    return severity.mean - paid_mean(severity, layer)


def eliminated(severity: Severity, deductible: float) -> float:
    """Return the share of all losses that ``deductible`` keeps from the insurer (a ratio)."""
    return float(severity.limited_mean(deductible)) / severity.mean
