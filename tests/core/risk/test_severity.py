"""Limited means: published tables, quadrature, and what must hold of any severity."""

from __future__ import annotations

import math
from collections.abc import Callable
from datetime import date
from typing import Any, Self

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy import integrate, stats

from quarterday.core.reference import Reference
from quarterday.core.risk.curves import Curve
from quarterday.core.risk.severity import (
    Capped,
    Gamma,
    Layer,
    Lognormal,
    Pareto,
    Severity,
    borne_mean,
    eliminated,
    exponential,
    paid_mean,
)

# Open Actuarial Textbooks, Loss Data Analytics, appendix: limited expected values, all of mean 100.
# The printed table truncates some cells, so it is met within 0.01.
TABLE = [
    (Pareto(3, 200), [55.55, 80.25, 91.84, 97.22]),
    (exponential(100), [63.21, 91.79, 99.33, 99.99]),
]


@pytest.mark.parametrize(("severity", "printed"), TABLE)
def test_limited_means_are_those_of_the_published_table(
    severity: Severity, printed: list[float]
) -> None:
    assert severity.mean == pytest.approx(100)
    assert severity.limited_mean([100, 250, 500, 1000]) == pytest.approx(printed, abs=0.0101)


@pytest.mark.parametrize(
    ("mu", "sigma", "most", "computed"),
    [
        (7, 1.5, 1000, 724.4991),
        (9, 1.8, 5000, 3819.3214),
        (9, 1.8, 25000, 11562.9978),
    ],
)
def test_the_lognormal_follows_the_published_formula(
    mu: float, sigma: float, most: float, computed: float
) -> None:
    """Loss Data Analytics, appendix, has the formula; the values were computed from it."""
    assert float(Lognormal(mu, sigma).limited_mean(most)) == pytest.approx(computed, abs=5e-5)


FAMILIES: dict[str, tuple[Severity, Any]] = {
    "lognormal": (Lognormal(9, 1.8), stats.lognorm(1.8, scale=math.exp(9))),
    "pareto": (Pareto(2.5, 60_000), stats.lomax(2.5, scale=60_000)),
    "gamma": (Gamma(0.4, 30_000), stats.gamma(0.4, scale=30_000)),
    "exponential": (exponential(12_000), stats.expon(scale=12_000)),
}


@pytest.mark.parametrize("family", FAMILIES)
@pytest.mark.parametrize("most", [1.0, 2_500, 40_000, 1_000_000])
def test_closed_forms_agree_with_quadrature(family: str, most: float) -> None:
    """E[min(X, u)] is the area under P(X > x) from 0 to u, found by SciPy's own survival and quad.

    The error is absolute and relative to the limited mean, below one part in ten million.
    """
    ours, theirs = FAMILIES[family]
    points = [p for p in (1e-3, 1, 100, 1e4, 1e5) if p < most]
    area, _ = integrate.quad(theirs.sf, 0, most, points=points, epsabs=0, epsrel=1e-10, limit=500)
    assert float(ours.limited_mean(most)) == pytest.approx(area, rel=1e-7)


@pytest.mark.parametrize("family", FAMILIES)
def test_tails_and_quantiles_agree_with_another_library(family: str) -> None:
    ours, theirs = FAMILIES[family]
    amounts, chances = [10.0, 900, 30_000, 2e6], [0.01, 0.5, 0.9, 0.9999]
    assert ours.beyond(amounts) == pytest.approx(theirs.sf(amounts), rel=1e-9)
    assert ours.quantile(chances) == pytest.approx(theirs.ppf(chances), rel=1e-9)
    assert ours.mean == pytest.approx(theirs.mean(), rel=1e-12)


def test_a_pareto_of_shape_one_has_limited_means_but_no_mean() -> None:
    """Loss Models, appendix A (from memory): E[min(X, u)] = scale × ln((u + scale) / scale)."""
    one = Pareto(1, 100)
    assert float(one.limited_mean(100)) == pytest.approx(100 * math.log(2))
    assert math.isinf(one.mean)


# --- what an insurer pays of one loss: Loss Data Analytics, chapter 3


def test_a_deductible_one_third_higher_eliminates_four_fifths() -> None:
    """Exponential losses of which 70 % are eliminated; the deductible grows by a third: 0.80."""
    deductible = float(exponential(1).quantile(0.70))
    assert eliminated(exponential(1), deductible) == pytest.approx(0.70)
    assert eliminated(exponential(1), deductible * 4 / 3) == pytest.approx(0.7992, abs=5e-5)


def test_inflation_moves_what_is_paid_over_a_deductible() -> None:
    """Exponential of mean 1,000, deductible 100, at most 500 paid; then all losses 5 % larger.

    The book rounds on its way (361.659 for 361.6602).
    """
    before = exponential(1000)
    after = before.scaled(1.05)
    paid = {
        "before": paid_mean(before, Layer(100, 500)),
        "after": paid_mean(after, Layer(100, 500)),
    }
    assert paid["before"] == pytest.approx(356.026, abs=5e-4)
    assert paid["after"] == pytest.approx(361.659, abs=2e-3)
    assert paid["before"] / float(before.beyond(100)) == pytest.approx(393.469, abs=2e-3)
    assert paid["after"] / float(after.beyond(100)) == pytest.approx(397.797, abs=2e-3)


def test_inflation_moves_each_payment_by_a_tenth_of_a_half() -> None:
    """The same example: 5 % more of every loss is 1.1 % more of each payment."""
    layer, before = Layer(100, 500), exponential(1000)
    paid = [paid_mean(s, layer) / float(s.beyond(100)) for s in (before, before.scaled(1.05))]
    assert paid[1] / paid[0] - 1 == pytest.approx(0.011, abs=5e-4)


def test_the_variance_of_what_is_paid_over_a_deductible() -> None:
    """Exponential of mean 1,000 over 100: variance 990,944 of what is paid of a loss.

    E[(X - d)²] is twice the area under (x - d) P(X > x), by SciPy's quadrature.
    """
    severity = exponential(1000)
    square, _ = integrate.quad(lambda x: 2 * (x - 100) * float(severity.beyond(x)), 100, 60_000,
                               points=[500, 2_000, 9_000])  # fmt: skip
    assert square - paid_mean(severity, Layer(100)) ** 2 == pytest.approx(990_944, abs=1)


class Wedge:
    """Losses up to 10 with the density .02 x: a severity that the program does not have."""

    mean = 20 / 3

    def limited_mean(self, most: Any) -> Any:
        u = np.minimum(np.asarray(most, dtype=np.float64), 10)
        return u - u**3 / 300

    def beyond(self, amount: Any) -> Any:
        return 1 - np.minimum(np.asarray(amount, dtype=np.float64), 10) ** 2 / 100

    def quantile(self, chance: Any) -> Any:
        return 10 * np.sqrt(chance)

    def scaled(self, factor: float) -> Self:
        raise NotImplementedError(f"times {factor}")


def test_a_payment_over_a_deductible_of_any_severity() -> None:
    """Density .02 x on (0, 10), deductible 4: 3.43 a payment."""
    severity = Wedge()
    each = paid_mean(severity, Layer(4)) / float(severity.beyond(4))
    assert each == pytest.approx(3.43, abs=5e-3)


class Hump(Wedge):
    """Losses up to 3 with the density x (4 - x) / 9."""

    mean = 1.75

    def limited_mean(self, most: Any) -> Any:
        u = np.minimum(np.asarray(most, dtype=np.float64), 3)
        return u - (2 * u**3 / 3 - u**4 / 12) / 9


def test_a_curve_that_pays_up_to_one_of_any_severity() -> None:
    """Density x (4 - x) / 9 on (0, 3), at most 1 paid: 0.935."""
    paid = Curve(np.array([0.0, 1.0, 3.0]), np.array([0.0, 1.0, 1.0]))
    assert paid.mean(Hump()) == pytest.approx(0.935, abs=5e-4)


def test_the_frequency_above_a_deductible_falls_with_the_tail() -> None:
    """Pareto (4, 150), 0.4 payments a year over 30: 0.1075 over 100 (Loss Data Analytics, 5)."""
    severity = Pareto(4, 150)
    rate = 0.4 / float(severity.beyond(30)) * float(severity.beyond(100))
    assert rate == pytest.approx(0.1075, abs=5e-5)


# --- what must hold of any severity

ANY = st.one_of(
    st.builds(Lognormal, st.floats(2, 12), st.floats(0.2, 2.5)),
    st.builds(Pareto, st.floats(1.05, 8), st.floats(10, 1e6)),
    st.builds(Gamma, st.floats(0.1, 20), st.floats(1, 1e5)),
)
LAYERS = st.builds(Layer, st.floats(0, 1e5), st.floats(0, 1e6), st.floats(0.05, 1))


@given(ANY, LAYERS, st.floats(100, 1e7))
@settings(max_examples=60, deadline=None)
def test_paid_and_kept_make_the_whole_and_agree_with_drawn_losses(
    severity: Severity, layer: Layer, most: float
) -> None:
    """The mean over evenly spread quantiles stands in for the expectation."""
    capped = Capped(severity, most)
    paid, kept = paid_mean(capped, layer), borne_mean(capped, layer)
    assert paid >= -1e-9 * capped.mean
    assert kept >= -1e-9 * capped.mean
    assert paid + kept == pytest.approx(capped.mean)
    losses = capped.quantile((np.arange(50_000) + 0.5) / 50_000)
    one_by_one = np.minimum(layer.share * np.maximum(losses - layer.deductible, 0), layer.limit)
    assert paid == pytest.approx(one_by_one.mean(), rel=2e-2, abs=most * 1e-5)


@given(ANY, st.floats(0, 1e7), st.floats(0, 1e7))
def test_more_of_a_loss_never_counts_for_less(severity: Severity, a: float, b: float) -> None:
    low, high = severity.limited_mean(sorted((a, b)))
    assert -1e-9 <= low <= high * (1 + 1e-9) + 1e-9
    assert high <= severity.mean * (1 + 1e-9)
    assert float(severity.limited_mean(0)) == pytest.approx(0, abs=1e-9)
    assert float(severity.limited_mean(math.inf)) == pytest.approx(severity.mean)


@given(ANY, st.floats(0.1, 10), st.floats(1, 1e6))
def test_larger_losses_are_the_same_distribution_larger(
    severity: Severity, factor: float, most: float
) -> None:
    scaled = severity.scaled(factor)
    same = factor * float(severity.limited_mean(most / factor))
    assert float(scaled.limited_mean(most)) == pytest.approx(same, rel=1e-6, abs=1e-9)


def test_a_cap_is_the_largest_loss() -> None:
    capped = Capped(Lognormal(10, 2), 50_000)
    assert float(capped.quantile(0.999999)) == 50_000
    assert float(capped.beyond(50_000)) == 0
    assert float(capped.beyond(49_999)) > 0
    assert capped.scaled(2).mean == pytest.approx(2 * capped.mean)


@pytest.mark.parametrize(
    "make",
    [
        lambda: Lognormal(1, 0),
        lambda: Pareto(0, 1),
        lambda: Gamma(1, -1),
        lambda: Capped(exponential(1), 0),
        lambda: Layer(-1),
        lambda: Layer(share=0),
        lambda: Pareto.of_mean(100, 1),
        lambda: Lognormal.of_mean(0, 1),
    ],
)
def test_what_cannot_be_is_refused(make: Callable[[], object]) -> None:
    with pytest.raises(ValueError, match=r"\w"):
        make()


def test_the_default_spread_of_damage_is_that_of_published_claims(canada: Reference) -> None:
    """Wisconsin's fund, Loss Data Analytics: 6,258 claims with a mean of 15,586, a median of 1,837.

    A lognormal with both: 2.07, the dated parameter of the spread.
    """
    sigma = math.sqrt(2 * math.log(15_586 / 1_837))
    stated = canada.parameter("risk.damage-spread", date(2026, 11, 25)).value
    assert float(str(stated)) == pytest.approx(sigma, abs=5e-3)
    law = Lognormal.of_mean(15_586, float(str(stated)))
    assert float(law.quantile(0.5)) == pytest.approx(1_837, rel=0.01)


def test_distributions_can_be_made_of_their_mean() -> None:
    assert Lognormal.of_mean(15_586, 2.07).mean == pytest.approx(15_586)
    assert Pareto.of_mean(30_000, 2.2).mean == pytest.approx(30_000)
