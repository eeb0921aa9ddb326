"""Means under yearly maximums: against textbooks, an independent library and simulation."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.stats import poisson

from quarterday.core.risk.curves import Curve
from quarterday.core.risk.purses import (
    Asking,
    added_by_the_year,
    lattice,
    limited_mean,
    most_added,
)
from quarterday.core.risk.severity import Capped, Lognormal, Pareto, Severity, exponential

RECORDED = json.loads((Path(__file__).parent / "aggregate.json").read_text())


def layer(deductible: float, limit: float, most: float) -> Curve:
    """What a policy with a deductible and a limit would pay of a loss."""
    at = [0.0, deductible, deductible + limit, most] if deductible else [0.0, limit, most]
    paid = [0.0, 0.0, limit, limit] if deductible else [0.0, limit, limit]
    return Curve(np.array(at), np.array(paid))


def whole(most: float) -> Curve:
    return Curve(np.array([0.0, most]), np.array([0.0, most]))


def paid_in_a_year(asking: list[Asking], purse: float) -> float:
    alone = sum(a.rate * float(a.limited(np.array([purse]))[0]) for a in asking)
    return alone - added_by_the_year(asking, purse)


def severity_of(told: dict[str, Any]) -> Severity:
    if told["kind"] == "lognormal":
        return Lognormal.of_mean(told["mean"], told["sigma"])
    if told["kind"] == "pareto":
        return Pareto(told["shape"], told["scale"])
    return exponential(told["mean"])


@pytest.mark.parametrize("case", RECORDED["cases"], ids=lambda case: case["name"])
def test_yearly_purses_pay_what_an_independent_library_finds(case: dict[str, Any]) -> None:
    """``aggregate`` 0.30.1; its answers and the script that asked are kept beside this test."""
    asking = [
        Asking(one["rate"], severity_of(one), layer(one["deductible"], one["limit"], 1e9))
        for one in case["losses"]
    ]
    assert paid_in_a_year(asking, case["purse"]) == pytest.approx(case["paid"], rel=2e-3)


def test_the_answers_say_which_version_gave_them() -> None:
    assert RECORDED["library"] == "aggregate 0.30.1"


def exact_paid(rate: float, mean: float, purse: float) -> float:
    """E[min(S, purse)] of a compound Poisson of exponentials: the sum over numbers of losses.

    A sum of n exponentials is an Erlang; its limited mean is closed (Loss Models, appendix A).
    """
    from scipy.stats import gamma

    total = 0.0
    for n in range(1, 200):
        below = gamma.cdf(purse, n + 1, scale=mean)
        limited = n * mean * below + purse * gamma.sf(purse, n, scale=mean)
        total += float(poisson.pmf(n, rate)) * float(limited)
    return total


@pytest.mark.parametrize(
    ("rate", "purse"), [(0.1, 5_000), (2.5, 30_000), (12, 60_000), (40, 200_000)]
)
def test_exponential_losses_have_an_exact_answer(rate: float, purse: float) -> None:
    asking = [Asking(rate, exponential(10_000), whole(1e7))]
    assert paid_in_a_year(asking, purse) == pytest.approx(exact_paid(rate, 10_000, purse), rel=1e-5)


def test_a_lattice_of_whole_units_is_what_was_given() -> None:
    """Sizes 1 to 4 with chances .4, .3, .2, .1 (Loss Models, exercise 9.57), by limited means."""
    chances = np.array([0, 0.4, 0.3, 0.2, 0.1, 0, 0, 0])
    limited = np.concatenate([[0], np.cumsum(1 - np.cumsum(chances))])
    assert lattice(limited, 1.0) == pytest.approx(chances)


@pytest.mark.parametrize("severity", [Lognormal.of_mean(12_000, 2.07), Pareto.of_mean(30_000, 2.2)])
@pytest.mark.parametrize(("rate", "purse"), [(0.3, 25_000), (1.5, 100_000)])
def test_simulation_agrees_within_its_own_error(
    severity: Severity, rate: float, purse: float
) -> None:
    rng, years = np.random.default_rng(7), 400_000
    capped, curve = Capped(severity, 500_000), layer(1_000, 50_000, 500_000)
    count = rng.poisson(rate * years)
    asked = np.interp(capped.quantile(rng.random(count)), curve.at, curve.borne)
    year = rng.integers(0, years, count)
    by_year = np.minimum(np.bincount(year, asked, years), purse)
    found = paid_in_a_year([Asking(rate, capped, curve)], purse)
    assert found == pytest.approx(by_year.mean(), abs=4 * by_year.std() / years**0.5)


def test_a_clause_that_pays_less_of_larger_losses_is_followed() -> None:
    """What is asked rises to 100, falls to 50 (a waiver ends), and rises again."""
    curve = Curve(np.array([0, 100, 101, 1_000.0]), np.array([0, 100, 50, 500.0]))
    severity = Capped(exponential(300), 1_000)
    sizes = severity.quantile((np.arange(400_000) + 0.5) / 400_000)
    asked = np.interp(sizes, curve.at, curve.borne)
    most = np.array([20.0, 60.0, 100.0, 400.0, 1e9])
    wanted = [np.minimum(asked, z).mean() for z in most]
    assert limited_mean(curve, severity, most) == pytest.approx(wanted, rel=1e-4)


RATES, SIZES = st.floats(0.01, 4), st.floats(500, 200_000)


@given(RATES, SIZES, st.floats(1_000, 500_000))
def test_the_bound_holds_and_nothing_negative_is_added(
    rate: float, mean: float, purse: float
) -> None:
    asking = [Asking(rate, Lognormal.of_mean(mean, 1.5), layer(1_000, 100_000, 1e9))]
    found = added_by_the_year(asking, purse)
    assert 0 <= found <= most_added(asking, purse) + 1e-6 * purse


@given(RATES, SIZES, st.floats(5_000, 500_000))
def test_a_larger_purse_never_pays_less(rate: float, mean: float, purse: float) -> None:
    asking = [Asking(rate, Lognormal.of_mean(mean, 1.5), layer(1_000, 100_000, 1e9))]
    small, large = (paid_in_a_year(asking, size) for size in (purse, 1.5 * purse))
    assert large >= small * (1 - 1e-4) - 0.01  # a lattice of two thousand steps, not more


def test_losses_divided_in_two_ask_the_same_together() -> None:
    one = Asking(2.0, Lognormal.of_mean(9_000, 1.2), layer(1_000, 50_000, 1e9))
    half = Asking(1.0, one.severity, one.curve)
    assert added_by_the_year([one], 30_000) == pytest.approx(
        added_by_the_year([half, half], 30_000)
    )


def test_a_purse_of_nothing_or_without_losses_adds_nothing() -> None:
    assert added_by_the_year([], 1_000) == 0
    asking = [Asking(1.0, exponential(100), whole(1e5))]
    assert added_by_the_year(asking, 0.0) == most_added(asking, 0.0) == 0
