"""Simulated years: which losses fall in them, the same for every alternative.

Each peril of an account draws from a stream of its own, keyed by what it is and by the block of
years, never by its place in a batch: any order, any number of processes and any machine draw the
same losses, and more blocks leave the earlier ones as they were.
"""

from __future__ import annotations

from dataclasses import dataclass
from hashlib import blake2b

import numpy as np

from quarterday.core.risk.curves import Codes
from quarterday.core.risk.perils import Model
from quarterday.core.risk.severity import Floats

SEED = "quarterday"


@dataclass(frozen=True, slots=True)
class Events:
    """Losses of a block of ``years``, sorted by year and by ``moment`` (0 to 1) within it."""

    years: int
    peril: Codes
    size: Floats
    year: Codes
    moment: Floats

    def crowded(self) -> Events:
        """Return only the losses of years that have several."""
        count = np.bincount(self.year, minlength=self.years)
        keep = count[self.year] > 1
        return Events(
            years=self.years,
            peril=self.peril[keep],
            size=self.size[keep],
            year=self.year[keep],
            moment=self.moment[keep],
        )


def stream(account: str, peril: str, block: int, seed: str = SEED) -> np.random.Generator:
    """Return the random numbers of one peril of an account in one block."""
    key = blake2b("|".join((seed, account, peril, str(block))).encode(), digest_size=16)
    return np.random.Generator(np.random.Philox(key=int.from_bytes(key.digest(), "little")))


def simulated(model: Model, account: str, block: int, years: int, seed: str = SEED) -> Events:
    """Return the losses of one block of ``years``: Poisson numbers, independent sizes."""
    perils, sizes, when = [], [], []
    for number, peril in enumerate(model.perils):
        numbers = stream(account, peril.name, block, seed)
        count = int(numbers.poisson(peril.rate * years))
        drawn = numbers.random((2, count))
        perils.append(np.full(count, number, dtype=np.int64))
        sizes.append(peril.severity.quantile(drawn[0]))
        when.append(drawn[1] * years)
    moment = np.concatenate([np.zeros(0), *when])
    order = np.argsort(moment, kind="stable")
    moment = moment[order]
    year = np.minimum(moment.astype(np.int64), years - 1)
    return Events(
        years=years,
        peril=np.concatenate([np.zeros(0, dtype=np.int64), *perils])[order],
        size=np.concatenate([np.zeros(0), *sizes])[order],
        year=year,
        moment=moment - year,
    )
