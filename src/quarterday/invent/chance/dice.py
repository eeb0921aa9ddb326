"""Chance that gives the same result everywhere: a seeded source and what is drawn from it."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from datetime import date, timedelta
from random import Random
from typing import TypeVar

T = TypeVar("T")


class Dice:
    """A seeded source of chance; the same seed gives the same draws."""

    def __init__(self, seed: str) -> None:
        self.random = Random(seed)  # noqa: S311 - chance for invented data, no secret

    def chance(self, share: float) -> bool:
        """Tell whether something of this likelihood happens."""
        return self.random.random() < share

    def one(self, items: Sequence[T]) -> T:
        """Return one of ``items``, each as likely."""
        return items[int(self.random.random() * len(items))]

    def weighted(self, weights: Mapping[T, int]) -> T:
        """Return a key of ``weights``, as likely as its weight."""
        left = self.random.random() * sum(weights.values())
        for item, weight in weights.items():
            left -= weight
            if left < 0:
                return item
        return next(reversed(list(weights)))

    def whole(self, least: int, most: int) -> int:
        """Return a whole number from ``least`` to ``most``, both included."""
        return least + int(self.random.random() * (most - least + 1))

    def spread(self, median: float, spread: float) -> float:
        """Return a lognormal number by its median and the deviation of its logarithm."""
        return median * math.exp(spread * self.random.gauss(0.0, 1.0))

    def tail(self, least: float, alpha: float) -> float:
        """Return a Pareto number of at least ``least``; a smaller ``alpha`` has a heavier tail."""
        return float(least * (1.0 - self.random.random()) ** (-1.0 / alpha))

    def day(self, first: date, last: date) -> date:
        """Return a day from ``first`` to ``last``, both included."""
        return first + timedelta(days=self.whole(0, (last - first).days))

    def count(self, mean: float, shape: float) -> int:
        """Return a number of events: Poisson around a gamma of this mean and shape."""
        left = self.random.gammavariate(shape, mean / shape)
        events = -1
        while left >= 0:
            events += 1
            left += math.log(1.0 - self.random.random())
        return events


def rounded(number: float, unit: int) -> int:
    """Return ``number`` as a whole multiple of ``unit``, at least one of it."""
    return max(unit, round(number / unit) * unit)
