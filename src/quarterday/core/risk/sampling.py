"""What a simulation may say: bad years with the interval that chance leaves, and honest digits."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from decimal import Decimal
from functools import lru_cache

import numpy as np
from scipy.special import bdtr, bdtrik

from quarterday.core.money import Money, round_to
from quarterday.core.risk.severity import Floats

CERTAINTY = 0.95
SECTIONS, STUDENT = 10, 2.262  # the 97.5 % point of Student's t with 9 degrees of freedom
STEPS_OF_TEN = (1, 2, 5, 10)


@dataclass(frozen=True, slots=True)
class Sampled:
    """A sampled amount and its 95 % sampling interval (both ends closed)."""

    value: float
    low: float
    high: float

    @property
    def error(self) -> float:
        """The larger distance from the value to an end of the interval."""
        return max(self.high - self.value, self.value - self.low)


def exact(value: float) -> Sampled:
    """Return an amount that no sampling went into."""
    return Sampled(value, value, value)


@lru_cache(maxsize=512)
def binomial_quantile(chance: float, count: int, share: float) -> int:
    """Return the smallest number of successes that ``chance`` of the time is not exceeded."""
    found = int(np.ceil(bdtrik(chance, count, share)))
    lower = max(found - 1, 0)
    return lower if bdtr(lower, count, share) >= chance else found


def bad_year(costs: Floats, one_in: int) -> Sampled:
    """Return what one year in ``one_in`` costs or exceeds, with its interval.

    The interval is that of order statistics: it needs no assumption on the distribution (for
    example Conover, Practical Nonparametric Statistics, from memory).
    """
    return bad_years(costs, (one_in,))[one_in]


def bad_years(costs: Floats, one_ins: Sequence[int]) -> Mapping[int, Sampled]:
    """Return bad years of several rarities, each with its interval."""
    places = {one_in: _places(len(costs), one_in) for one_in in one_ins}
    lowest = min(min(found) for found in places.values())
    tail = np.sort(np.partition(costs, lowest)[lowest:])
    return {
        one_in: Sampled(*(float(tail[place - lowest]) for place in found))
        for one_in, found in places.items()
    }


def _places(count: int, one_in: int) -> tuple[int, ...]:
    """Return where a bad year and the ends of its interval stand among ``count`` sorted years."""
    share, tail = 1 - 1 / one_in, (1 - CERTAINTY) / 2
    ranks = (
        int(np.ceil(count * share)),
        binomial_quantile(tail, count, share),
        binomial_quantile(1 - tail, count, share) + 1,
    )
    return tuple(min(max(rank, 1), count) - 1 for rank in ranks)


@dataclass(frozen=True)
class Seen:
    """Simulated years of one alternative: its bad years, in all years and in each section."""

    bad: Mapping[int, Sampled]
    sections: Mapping[int, Floats]

    @classmethod
    def of(cls, costs: Floats, one_ins: Sequence[int]) -> Seen:
        """Return the bad years of ``costs``."""
        parts = np.array_split(costs, SECTIONS)
        found = [[_quantile(part, one_in) for part in parts] for one_in in one_ins]
        return cls(
            bad_years(costs, one_ins),
            {one_in: np.array(own) for one_in, own in zip(one_ins, found, strict=True)},
        )


def change_of_bad_year(before: Floats, after: Floats, one_in: int) -> Sampled:
    """Return how a bad year changes over the same simulated years, with its interval."""
    return changed(Seen.of(before, (one_in,)), Seen.of(after, (one_in,)), one_in)


def changed(before: Seen, after: Seen, one_in: int) -> Sampled:
    """Return how a bad year changes between two alternatives over the same simulated years.

    The interval is Student's over ten sections of the years, each of which sees both, and as much
    wider as the sections' mean is from the change over all years: where a bad year falls on an
    amount that many years cost, the sections alone would be too sure.
    """
    value = after.bad[one_in].value - before.bad[one_in].value
    parts = after.sections[one_in] - before.sections[one_in]
    half = STUDENT * float(np.std(parts, ddof=1)) / SECTIONS**0.5
    half += abs(value - float(np.mean(parts)))
    return Sampled(value, value - half, value + half)


def _quantile(costs: Floats, one_in: int) -> float:
    place = int(np.ceil(len(costs) * (1 - 1 / one_in))) - 1
    return float(np.partition(costs, place)[place])


def mean_of(costs: Floats) -> Sampled:
    """Return a sampled mean with its interval by the normal distribution."""
    mean = float(costs.mean())
    half = 1.96 * float(costs.std(ddof=1)) / len(costs) ** 0.5
    return Sampled(mean, mean - half, mean + half)


def step_for(value: float, error: float) -> Decimal:
    """Return the unit to show an amount in: two digits at most, and none that chance decided.

    It is 1, 2 or 5 times a power of ten, at least a dollar, and not below ``error``.
    """
    least = max(_power_below(abs(value)) / 10, 1.0)
    if error <= least:
        return Decimal(int(least))
    power = _power_below(error)
    return next(Decimal(int(power * n)) for n in STEPS_OF_TEN if power * n >= error)


def _power_below(amount: float) -> float:
    """Return the largest power of ten that is not above ``amount``; 1 below that."""
    power = 1.0
    while power * 10 <= amount:
        power *= 10
    return power


def shown(amount: Sampled, currency: str) -> Money:
    """Return an amount as it may be shown."""
    unit = step_for(amount.value, amount.error)
    return Money(round_to(Decimal(repr(amount.value)), unit), currency)
