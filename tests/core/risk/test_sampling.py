"""What a simulation may say: intervals that hold what they claim, and honest digits."""

from __future__ import annotations

from decimal import Decimal

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy import stats

from quarterday.core.money import Money
from quarterday.core.risk.sampling import (
    Sampled,
    bad_year,
    binomial_quantile,
    change_of_bad_year,
    exact,
    mean_of,
    shown,
    step_for,
)


@pytest.mark.parametrize("count", [1_000, 10_000, 100_000])
@pytest.mark.parametrize("share", [0.9, 0.99])
@pytest.mark.parametrize("chance", [0.025, 0.5, 0.975])
def test_ranks_are_those_of_the_binomial(count: int, share: float, chance: float) -> None:
    """SciPy's binomial distribution."""
    assert binomial_quantile(chance, count, share) == int(stats.binom.ppf(chance, count, share))


@pytest.mark.parametrize("one_in", [10, 100])
def test_the_interval_of_a_bad_year_holds_the_truth_as_often_as_it_says(one_in: int) -> None:
    """400 samples of 2,000 years of a known lognormal; a 95 % interval misses 5 % of the time.

    The number of misses is binomial; beyond three standard deviations the interval would lie.
    """
    truth = float(stats.lognorm(1.8, scale=8_000).ppf(1 - 1 / one_in))
    numbers, held = np.random.default_rng(7), 0
    for _ in range(400):
        found = bad_year(numbers.lognormal(np.log(8_000), 1.8, 2_000), one_in)
        held += found.low <= truth <= found.high
    assert held / 400 >= 0.95 - 3 * (0.95 * 0.05 / 400) ** 0.5
    assert found.low < found.value < found.high


def test_the_interval_of_a_change_holds_the_truth_as_often_as_it_says() -> None:
    """The same years twice, the second with all costs at seven tenths: the change is known."""
    truth = -0.3 * float(stats.lognorm(1.2, scale=8_000).ppf(0.99))
    numbers, held = np.random.default_rng(8), 0
    for _ in range(200):
        costs = numbers.lognormal(np.log(8_000), 1.2, 20_000)
        found = change_of_bad_year(costs, 0.7 * costs, 100)
        held += found.low <= truth <= found.high
    assert held / 200 >= 0.95 - 3 * (0.95 * 0.05 / 200) ** 0.5


def test_a_change_at_an_amount_that_many_years_cost_is_not_too_sure() -> None:
    """One section sees most of the years that cost 25,350; nine find their bad year at 25,000.

    The sections alone would tell the change of 350 as surer than what they differ from it.
    """
    costs = np.zeros(10_000)
    for section in range(10):
        start = section * 1_000
        costs[start : start + 25] = 25_000.0
        costs[start : start + (60 if section == 0 else 5)] = 25_350.0
    found = change_of_bad_year(costs, np.minimum(costs, 25_000.0), 100)
    assert found.value == -350
    assert found.low < -350
    assert found.high > 0


def test_the_same_years_make_a_change_far_surer_than_other_years() -> None:
    numbers = np.random.default_rng(9)
    costs, others = numbers.lognormal(9, 1.2, (2, 20_000))
    same = change_of_bad_year(costs, 0.9 * costs, 100)
    apart = change_of_bad_year(costs, 0.9 * others, 100)
    assert same.error < apart.error / 3


def test_a_sampled_mean_has_its_interval() -> None:
    found = mean_of(np.array([0.0, 10.0] * 500))
    assert found.value == 5
    assert found.error == pytest.approx(1.96 * 5 / 1000**0.5, rel=1e-3)


# --- digits


@pytest.mark.parametrize(
    ("value", "error", "unit"),
    [
        (22_900, 0, 1_000),
        (22_900, 400, 1_000),
        (22_900, 1_400, 2_000),
        (22_900, 2_600, 5_000),
        (22_900, 6_000, 10_000),
        (310, 0, 10),
        (7.4, 0, 1),
        (0, 0, 1),
        (0, 30, 50),
        (84_000, 900, 1_000),
        (-12_300, 1_700, 2_000),
    ],
)
def test_no_digit_is_shown_that_chance_decided(value: float, error: float, unit: int) -> None:
    assert step_for(value, error) == unit


@given(st.floats(-1e8, 1e8), st.floats(0, 1e7))
def test_an_amount_is_shown_within_half_a_unit_and_the_unit_is_not_below_its_error(
    value: float, error: float
) -> None:
    unit = step_for(value, error)
    told = shown(Sampled(value, value - error, value + error), "CAD")
    assert float(unit) >= min(error, 1e7)
    assert abs(float(told.amount) - value) <= float(unit) / 2 + 1e-6
    assert told.amount % unit == 0


def test_an_exact_amount_has_two_digits() -> None:
    assert shown(exact(2_539.7), "CAD") == Money(Decimal(2_500))
