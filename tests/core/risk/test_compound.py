"""A year's losses added up, on published examples: the program's transform, and the tests' oracle.

Klugman, Panjer and Willmot, Loss Models: inputs as read in the documentation of the package
aggregate (problems of Loss Models), answers computed by recursion or in closed form. Open Actuarial
Textbooks, Loss Data Analytics, chapter 5: inputs and answers as printed there. The program's own
numbers of losses are Poisson; examples with other numbers are put to the oracle that judges it.
"""

from __future__ import annotations

import numpy as np
import pytest
from scipy import stats
from tests.core.risk.compound import compound, counted, lattice, moments

from quarterday.core.risk import purses
from quarterday.core.risk.severity import Lognormal, exponential

ENGINES = {"program": purses.compound, "oracle": compound}
engines = pytest.mark.parametrize("engine", ENGINES)


@engines
def test_two_compound_poisson_parts(engine: str) -> None:
    """Example 9.9: cP(2) of {1: .6, 2: .4} and cP(1) of {1: .7, 3: .3}: P(S = 2) = 0.129695."""
    parts = [(2.0, np.array([0, 0.6, 0.4])), (1.0, np.array([0, 0.7, 0, 0.3]))]
    assert ENGINES[engine](parts, 256)[2] == pytest.approx(0.129695, abs=5e-7)


@engines
def test_a_stop_loss_problem(engine: str) -> None:
    """Exercise 9.57: Poisson 3, sizes 1–4 with .4/.3/.2/.1: P(S <= 3) = 0.288168."""
    found = ENGINES[engine]([(3.0, np.array([0, 0.4, 0.3, 0.2, 0.1]))], 256)
    assert found[:4].sum() == pytest.approx(0.288168, abs=5e-7)


@engines
def test_claimants_of_accidents(engine: str) -> None:
    """Loss Data Analytics 5: 12 accidents of one, two or three claimants (1/2, 1/3, 1/6): 40."""
    found = ENGINES[engine]([(12.0, np.array([0, 1 / 2, 1 / 3, 1 / 6]))], 512)
    assert moments(found) == pytest.approx((20, 40), rel=1e-4)


@engines
def test_a_normal_for_many_even_losses(engine: str) -> None:
    """Loss Data Analytics 5: 25 losses of 5 to 95, evenly spread: P(S > 2,000) .003884 as normal.

    The sum itself has a longer tail than the normal that stands for it.
    """
    step = 0.5
    grid = np.arange(401) * step
    at = np.clip(grid, 5, 95)
    limited = np.minimum(grid, 5) + (at - 5) - (at - 5) ** 2 / 180
    found = ENGINES[engine]([(25.0, purses.lattice(limited, step)[:400])], 16_384)
    mean, variance = moments(found, step)
    assert mean == pytest.approx(1_250)
    assert stats.norm.sf(2_000, mean, variance**0.5) == pytest.approx(0.003884, rel=2e-3)
    assert found[4_001:].sum() > 0.003884


# --- other numbers of losses than Poisson, put to the oracle


def test_a_retention_of_a_year() -> None:
    """Exercise 9.24: binomial (4, .5), sizes 2 and 3 thousand (.4/.6), a stop-loss at 5,000.

    4,027.5 is retained; with its price of 1,472 all costs 5,499.5.
    """
    found = counted(stats.binom(4, 0.5).pmf(np.arange(5)), np.array([0, 0, 0.4, 0.6]), 64)
    retained = 1_000 * float(found @ np.minimum(np.arange(64), 5))
    assert retained == pytest.approx(4_027.5)
    assert retained + 1_472 == pytest.approx(5_499.5)


def test_three_policies_of_exponential_losses() -> None:
    """Exercise 9.39: binomial (3, .4), exponential of mean 100: P(S <= 300) = 0.894053."""
    step, points = 0.25, 1 << 15
    limited = exponential(100).limited_mean(np.arange(points // 2) * step)
    found = counted(stats.binom(3, 0.4).pmf(np.arange(4)), lattice(limited, step), points)
    below = found[: int(300 / step)].sum() + found[int(300 / step)] / 2
    assert below == pytest.approx(0.894053, abs=2e-6)


def test_a_geometric_number_of_small_losses() -> None:
    """Loss Data Analytics 5: geometric of mean 4, sizes 1 to 4 alike: F(3) = 0.3456."""
    chances = stats.geom(0.2, loc=-1).pmf(np.arange(300))
    found = counted(chances, np.array([0, 0.25, 0.25, 0.25, 0.25]), 2_048)
    assert found[:4].sum() == pytest.approx(0.3456, abs=5e-5)


def test_mean_and_deviation_of_one_or_two_losses() -> None:
    """Loss Data Analytics 5: N 1 or 2 (.8/.2), X 0, 100, 1,000: 204 + the root of 98,344: 517.60.

    The chances of X, .2/.7/.1, follow from the two moments printed.
    """
    sizes = np.zeros(11)
    sizes[[0, 1, 10]] = 0.2, 0.7, 0.1
    mean, variance = moments(counted(np.array([0, 0.8, 0.2]), sizes, 64), 100)
    assert (mean, variance) == pytest.approx((204, 98_344))
    assert mean + variance**0.5 == pytest.approx(517.60, abs=5e-3)


def test_fire_policies_one_by_one() -> None:
    """Loss Data Analytics 5: 100 policies (.05, evenly to 400) and 200 (.06, evenly to 300).

    Mean 2,800, variance 600,467, P(S > 3,500) .1832 as normal.
    """
    step, points = 1.0, 1 << 14
    transform = np.ones(points // 2 + 1, dtype=complex)
    for policies, chance, most in ((100, 0.05, 400), (200, 0.06, 300)):
        at = np.minimum(np.arange(500) * step, most)
        sizes = np.pad(lattice(at - at**2 / (2 * most), step), (0, points - 499))[:points]
        transform *= (1 - chance + chance * np.fft.rfft(sizes)) ** policies
    mean, variance = moments(np.fft.irfft(transform, points), step)
    assert mean == pytest.approx(2_800)
    assert variance == pytest.approx(600_467, abs=5)  # the lattice adds a sixth of a step squared
    assert stats.norm.sf(3_500, mean, variance**0.5) == pytest.approx(0.1832, abs=5e-5)


def test_inflation_and_a_deductible_on_a_negative_binomial_number() -> None:
    """Loss Data Analytics 5: mean 300, variance 800; 40, 80, 120, 200 half as much again, over 100.

    22,500 and 6,322,500.
    """
    paid = np.maximum(np.array([40, 80, 120, 200]) * 1.5 - 100, 0)
    sizes = np.zeros(11)
    for amount in paid:
        sizes[int(amount / 20)] += 0.25
    number = stats.nbinom(300**2 / 500, 300 / 800)
    found = counted(number.pmf(np.arange(900)), sizes, 1 << 14)
    assert moments(found, 20) == pytest.approx((22_500, 6_322_500), rel=1e-6)


@pytest.mark.parametrize(("number", "size", "over"), [
    ((6.7, 2.3), (179_247, 52_141), (1.4, 0.13406, 0.12800)),
    ((8, 3), (10_000, 3_937), (1.5, 0.1056, None)),
])  # fmt: skip
def test_a_tail_by_the_first_two_moments(
    number: tuple[float, float],
    size: tuple[float, float],
    over: tuple[float, float, float | None],
) -> None:
    """Examples 9.3 and 9.4: 1,200,954.9 and 433,797.4; Loss Data Analytics 5: mean 8 and 10,000.

    A mean and a deviation of the number and of the size; the lognormal is the program's.
    """
    (n, sd_n), (x, sd_x) = number, size
    mean, sd = n * x, (n * sd_x**2 + x**2 * sd_n**2) ** 0.5
    ratio, normal, lognormal = over
    assert stats.norm.sf(ratio * mean, mean, sd) == pytest.approx(normal, abs=5e-5)
    if lognormal is not None:
        assert (mean, sd) == pytest.approx((1_200_954.9, 433_797.4), abs=0.05)
        sigma = np.log1p((sd / mean) ** 2) ** 0.5
        law = Lognormal.of_mean(mean, float(sigma))
        assert float(law.beyond(ratio * mean)) == pytest.approx(lognormal, abs=5e-5)


def test_the_lattice_keeps_the_mean() -> None:
    step = 10.0
    limited = exponential(100).limited_mean(np.arange(400) * step)
    points = lattice(limited, step)
    assert points.sum() == pytest.approx(1)
    assert (points * np.arange(len(points)) * step).sum() == pytest.approx(100, abs=0.1)
