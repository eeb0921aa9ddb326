"""The oracle on published examples, before anything is judged by it.

Klugman, Panjer and Willmot, Loss Models; inputs as read in the documentation of the package
aggregate (problems of Loss Models), answers computed by recursion.
"""

from __future__ import annotations

import numpy as np
import pytest
from tests.core.risk.compound import compound, lattice

from quarterday.core.risk.severity import exponential


def test_two_compound_poisson_parts() -> None:
    """Example 9.9: cP(2) of {1: .6, 2: .4} and cP(1) of {1: .7, 3: .3}: P(S = 2) = 0.129695."""
    parts = [(2.0, np.array([0, 0.6, 0.4])), (1.0, np.array([0, 0.7, 0, 0.3]))]
    assert compound(parts, 256)[2] == pytest.approx(0.129695, abs=5e-7)


def test_a_stop_loss_problem() -> None:
    """Exercise 9.57: Poisson 3, sizes 1–4 with .4/.3/.2/.1: P(S <= 3) = 0.288168."""
    found = compound([(3.0, np.array([0, 0.4, 0.3, 0.2, 0.1]))], 256)
    assert found[:4].sum() == pytest.approx(0.288168, abs=5e-7)


def test_the_lattice_keeps_the_mean() -> None:
    step = 10.0
    limited = exponential(100).limited_mean(np.arange(400) * step)
    points = lattice(limited, step)
    assert points.sum() == pytest.approx(1)
    assert (points * np.arange(len(points)) * step).sum() == pytest.approx(100, abs=0.1)
