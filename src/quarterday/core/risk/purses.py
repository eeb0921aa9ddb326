"""What yearly maximums and the shared limit change in the mean, in closed form.

A purse that is filled once a year pays the lesser of its size and what the losses of the year ask
of it together. Looking at one loss at a time counts the lesser of each; the difference is what the
year adds. What the losses ask of a purse adds up as a compound Poisson variable, whose distribution
up to the purse's size comes from one fast Fourier transform (Grübel and Hermesmeier, Computation of
compound distributions, ASTIN Bulletin 29 (1999): exponential tilting; from memory). Sizes are put
on a lattice that keeps their limited means (Klugman, Panjer, Willmot, Loss Models; from memory).
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

import numpy as np

from quarterday.core.risk.curves import Curve
from quarterday.core.risk.severity import Floats, Severity

POINTS = 1 << 11
TILT = 20.0  # at the purse's size: what wraps round is smaller by the square of its exponential
HALF_A_DOLLAR = 0.5


@dataclass(frozen=True)
class Asking:
    """Losses that ask something of a purse: how many a year, how large, and how much each asks."""

    rate: float
    severity: Severity
    curve: Curve

    def limited(self, most: Floats) -> Floats:
        """Return the mean of what one loss asks, of which no more than each ``most`` counts."""
        return limited_mean(self.curve, self.severity, most)


def limited_mean(curve: Curve, severity: Severity, most: Floats) -> Floats:
    """Return E[min(asked, most)] for a curve that is straight between its corners."""
    z = most[:, None]
    a, b, low, high = curve.at[:-1], curve.at[1:], curve.borne[:-1], curve.borne[1:]
    slope = (high - low) / (b - a)
    flat = slope == 0
    cross = np.clip(a + (z - low) / np.where(flat, 1.0, slope), a, b)
    start = np.where(slope < 0, cross, a)
    end = np.where(slope > 0, cross, np.where(flat, a, b))
    sizes = severity.limited_mean(end) - severity.limited_mean(start)
    return np.asarray(np.minimum(curve.borne[0], most) + (slope * sizes).sum(axis=1), np.float64)


def most_added(asking: Sequence[Asking], purse: float) -> float:
    """Return a bound of what the year adds to the mean.

    With M the mean of what is asked, each loss up to the size C of the purse, it is M²/2C. For
    amounts up to C, what goes beyond C is no more than the sum over pairs of their product, over C
    (Bonferroni's inequality); and the mean of that sum, for a Poisson number, is M²/2.
    """
    mean = sum(one.rate * float(one.limited(np.array([purse]))[0]) for one in asking)
    return mean**2 / (2 * purse) if purse else 0.0


def added_by_the_year(asking: Sequence[Asking], purse: float, points: int = POINTS) -> float:
    """Return how much less a yearly purse pays in the mean than one filled for each loss."""
    if not asking or not purse:
        return 0.0
    step = purse / points
    grid: Floats = np.arange(points + 1, dtype=np.float64) * step
    alone, parts = 0.0, []
    for one in asking:
        limited = one.limited(grid)
        alone += one.rate * float(limited[-1])
        parts.append((one.rate, lattice(limited, step)))
    chances = compound(parts, points)
    paid = float(chances @ grid[:-1]) + (1 - float(chances.sum())) * purse
    return max(alone - paid, 0.0)


def compound(parts: Iterable[tuple[float, Floats]], points: int) -> Floats:
    """Return the chances that a year's losses add up to 0, 1, … steps, below ``points``.

    Each part is a number of losses a year, Poisson, and the chances of the size of one, by steps.
    """
    tilted, total = np.zeros(points + 1, dtype=np.complex128), 0.0
    tilt = np.exp(-TILT / points * np.arange(points))
    for rate, sizes in parts:
        total += rate
        tilted += rate * np.fft.rfft(sizes * tilt[: len(sizes)], 2 * points)
    found: Floats = np.fft.irfft(np.exp(tilted - total), 2 * points)[:points] / tilt
    return found


def lattice(limited: Floats, step: float) -> Floats:
    """Return the chances of 0, 1, … steps, the last point and all beyond it left out.

    ``limited`` holds the limited means at the points; those of the lattice are the same.
    """
    stretches = np.diff(limited) / step
    chances = np.empty(len(stretches))
    chances[0] = 1 - stretches[0]
    chances[1:] = stretches[:-1] - stretches[1:]
    return chances
