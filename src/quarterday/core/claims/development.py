"""How claims grow from one valuation to the next: the chain ladder, with its standard error.

The factor of an age is volume-weighted: all that claims came to a year later, divided by what they
had come to at that age. Standard errors are those of Mack, Distribution-free calculation of the
standard error of chain ladder reserve estimates, ASTIN Bulletin 23 (1993), formulas from memory;
the tests check them against its published figures and an independent library.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from math import sqrt


@dataclass(frozen=True, slots=True)
class Link:
    """What the claims of one year of loss came to at an age, and a year later."""

    before: float
    after: float


@dataclass(frozen=True, slots=True)
class Latest:
    """What claims came to when they were valued last; ``age`` counts years from 0."""

    age: int
    amount: float


@dataclass(frozen=True, slots=True)
class Step:
    """One age: its ``factor``, its variance parameter, and the volume the factor rests on."""

    factor: float
    variance: float
    volume: float

    @property
    def spread(self) -> float:
        """The variance beside the square of the factor."""
        return self.variance / self.factor**2


@dataclass(frozen=True, slots=True)
class Forecast:
    """What claims will come to, and the standard error of that; ``latest`` is where they are."""

    latest: float
    ultimate: float
    error: float

    @property
    def to_come(self) -> float:
        """What is still to come; negative where claims come down."""
        return self.ultimate - self.latest


@dataclass(frozen=True, slots=True)
class Development:
    """The steps by age, the forecast of each latest amount, and of all together."""

    steps: tuple[Step, ...]
    forecasts: tuple[Forecast, ...]
    total: Forecast


def developed(links: Sequence[Sequence[Link]], latest: Sequence[Latest]) -> Development:
    """Return how amounts develop: ``links`` by age, ``latest`` in any order.

    Ages end where no links are left that hold money; what comes after is taken to be nothing.
    """
    steps = tuple(steps_of(links))
    paths = [list(_path(one, steps)) for one in latest]
    forecasts = tuple(_forecast(one, path, steps) for one, path in zip(latest, paths, strict=True))
    return Development(steps, forecasts, _together(latest, paths, steps, forecasts))


def steps_of(links: Sequence[Sequence[Link]]) -> Iterator[Step]:
    """Yield the step of each age until one has no volume or leaves nothing.

    The variance of an age with a single link is Mack's: the ratio of the two before goes on, and
    it is no larger than either.
    """
    variances: list[float] = []
    for of_age in links:
        known = [link for link in of_age if link.before > 0]
        volume = sum(link.before for link in known)
        factor = sum(link.after for link in known) / volume if volume else 0.0
        if factor <= 0:
            return
        if len(known) > 1:
            squares = (x.before * (x.after / x.before - factor) ** 2 for x in known)
            variance = sum(squares) / (len(known) - 1)
        else:
            variance = _extrapolated(variances)
        variances.append(variance)
        yield Step(factor, variance, volume)


def _extrapolated(variances: list[float]) -> float:
    if len(variances) < 2 or not variances[-2]:  # noqa: PLR2004 - a ratio takes two
        return variances[-1] if variances else 0.0
    before, last = variances[-2:]
    return min(last**2 / before, before, last)


def _path(one: Latest, steps: Sequence[Step]) -> Iterator[float]:
    """Yield what an amount comes to at each age from its own on."""
    amount = one.amount
    yield amount
    for step in steps[one.age :]:
        amount *= step.factor
        yield amount


def _forecast(one: Latest, path: Sequence[float], steps: Sequence[Step]) -> Forecast:
    ahead = zip(path, steps[one.age :], strict=False)
    ratio = sum(s.spread * (1 / c + 1 / s.volume) for c, s in ahead if c > 0)
    return Forecast(one.amount, path[-1], abs(path[-1]) * sqrt(ratio))


def _together(
    latest: Sequence[Latest],
    paths: Sequence[Sequence[float]],
    steps: Sequence[Step],
    forecasts: Sequence[Forecast],
) -> Forecast:
    """Return all amounts as one: factors are shared, so their errors do not cancel."""
    variance = 0.0
    for age, step in enumerate(steps):
        there = [(p[age - one.age], p[-1]) for one, p in zip(latest, paths, strict=True)
                 if one.age <= age]  # fmt: skip
        own = sum(end**2 / now for now, end in there if now > 0)
        variance += step.spread * (own + sum(end for _, end in there) ** 2 / step.volume)
    return Forecast(
        sum(f.latest for f in forecasts), sum(f.ultimate for f in forecasts), sqrt(variance)
    )
