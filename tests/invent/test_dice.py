"""What the dice draw has the distribution that they promise."""

from __future__ import annotations

import math
from collections import Counter
from datetime import date
from statistics import fmean, median, pvariance

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterday.invent.chance.dice import Dice, rounded

MANY = 20_000


def test_the_same_seed_gives_the_same_draws() -> None:
    one, other = Dice("7/1"), Dice("7/1")
    assert [one.whole(1, 9) for _ in range(50)] == [other.whole(1, 9) for _ in range(50)]


def test_a_known_seed_gives_known_draws_on_every_machine() -> None:
    # Recorded once; Python promises the same draws from the same seed (library reference, random).
    dice = Dice("quarter day")
    assert [dice.whole(1, 100) for _ in range(6)] == [45, 84, 18, 79, 95, 18]


def test_weights_are_kept() -> None:
    dice = Dice("weights")
    drawn = Counter(dice.weighted({"a": 3, "b": 1, "never": 0}) for _ in range(MANY))
    assert drawn["never"] == 0
    assert drawn["a"] / MANY == pytest.approx(0.75, abs=0.015)


def test_the_median_of_a_spread_is_its_median() -> None:
    dice = Dice("spread")
    draws = [dice.spread(500, 0.8) for _ in range(MANY)]
    assert median(draws) == pytest.approx(500, rel=0.04)
    # A lognormal's mean is its median times exp(half the variance of the logarithm).
    assert fmean(draws) == pytest.approx(500 * math.exp(0.32), rel=0.05)


def test_half_of_a_tail_lies_below_its_median_and_none_below_its_least() -> None:
    # A Pareto's median is its least times the alpha-th root of two.
    dice = Dice("tail")
    draws = [dice.tail(1000, 1.5) for _ in range(MANY)]
    assert min(draws) >= 1000
    assert median(draws) == pytest.approx(1000 * 2 ** (1 / 1.5), rel=0.03)


def test_counts_have_the_mean_and_variance_of_a_gamma_mixed_poisson() -> None:
    # Negative binomial: variance = mean + mean² / shape.
    dice = Dice("count")
    draws = [dice.count(8, 2) for _ in range(MANY)]
    assert fmean(draws) == pytest.approx(8, rel=0.03)
    assert pvariance(draws) == pytest.approx(8 + 64 / 2, rel=0.06)


def test_days_lie_between_the_first_and_the_last_both_included() -> None:
    dice, first, last = Dice("days"), date(2026, 1, 30), date(2026, 2, 2)
    assert {dice.day(first, last).isoformat() for _ in range(400)} == {
        "2026-01-30", "2026-01-31", "2026-02-01", "2026-02-02",
    }  # fmt: skip


@given(st.floats(0, 1e9), st.sampled_from([1, 5, 50, 1000]))
def test_a_rounded_number_is_a_near_multiple_and_never_zero(number: float, unit: int) -> None:
    found = rounded(number, unit)
    assert found % unit == 0
    assert found >= unit
    assert found == unit or abs(found - number) <= unit / 2
