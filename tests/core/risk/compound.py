"""An oracle of its own: the distribution of a year's losses by the fast Fourier transform.

It shares nothing with the program but NumPy. It is itself checked on published examples.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]


def compound(parts: Sequence[tuple[float, Floats]], points: int) -> Floats:
    """Return P(S = 0, 1, 2 …) of a sum of compound Poisson parts: (rate, P(X = 0, 1, 2 …))."""
    exponent = sum(rate * (np.fft.rfft(np.pad(p, (0, points - len(p)))) - 1) for rate, p in parts)
    return np.fft.irfft(np.exp(exponent), points)


def lattice(limited: Floats, step: float) -> Floats:
    """Return a lattice with the mean of a loss whose limited means at 0, h, 2h … are given.

    Second differences of the limited mean (Gerber's method, Loss Models, 9.6.5, from memory); the
    first point takes what is left.
    """
    inner = -np.diff(limited, 2) / step
    return np.concatenate([[1 - inner.sum()], inner])


def counted(chances: Floats, sizes: Floats, points: int) -> Floats:
    """Return P(S = 0, 1, 2 …) for P(N = 0, 1, 2 …) losses of sizes P(X = 0, 1, 2 …)."""
    of_one = np.fft.rfft(np.pad(sizes, (0, points - len(sizes))))
    return np.fft.irfft(np.polyval(chances[::-1], of_one), points)


def moments(chances: Floats, step: float = 1.0) -> tuple[float, float]:
    """Return the mean and the variance of a lattice."""
    at = np.arange(len(chances)) * step
    mean = float(chances @ at)
    return mean, float(chances @ at**2) - mean**2
