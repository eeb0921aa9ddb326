"""What stays of one loss, found by asking, and its mean: against quadrature and by hand."""

from __future__ import annotations

import itertools
from collections.abc import Callable

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy import integrate, stats

from quarterday.core.risk.curves import Codes, Curve, discover
from quarterday.core.risk.severity import Capped, Floats, Layer, Lognormal, Pareto, borne_mean

MOST = 2_000_000.0
Terms = Callable[[Floats], Floats]


def found(terms: Terms, marks: tuple[float, ...] = (0.0, MOST)) -> Curve:
    def borne(_: Codes, size: Floats) -> Floats:
        return terms(size)

    return discover(borne, [np.array(marks)])[0]


def layered(deductible: float, limit: float, share: float) -> Terms:
    def borne(x: Floats) -> Floats:
        return x - np.minimum(share * np.maximum(x - deductible, 0), limit)

    return borne


@given(
    st.one_of(st.just(0.0), st.floats(50, 60_000)),
    st.floats(100, 2e6),
    st.floats(0.05, 1),
    st.floats(4, 12),
)
@settings(max_examples=60, deadline=None)
def test_the_mean_is_the_closed_form_whatever_the_layer(
    deductible: float, limit: float, share: float, mu: float
) -> None:
    severity = Capped(Lognormal(mu, 1.9), MOST)
    curve = found(layered(deductible, limit, share))
    expected = borne_mean(severity, Layer(deductible, limit, share))
    assert curve.mean(severity) == pytest.approx(expected, rel=1e-6, abs=1e-3)


def test_the_mean_agrees_with_quadrature_over_the_density() -> None:
    """SciPy integrates borne × density for a Pareto under a deductible, a share and a limit."""
    terms, law = layered(5_000, 250_000, 0.8), stats.lomax(2.2, scale=36_000)

    def integrand(x: float) -> float:
        return float(terms(np.array([x]))[0] * law.pdf(x))

    corners = [0, 5_000, 5_000 + 250_000 / 0.8, MOST]
    area = sum(
        integrate.quad(integrand, a, b, epsrel=1e-11, limit=400)[0]
        for a, b in itertools.pairwise(corners)
    )
    area += float(terms(np.array([MOST]))[0] * law.sf(MOST))
    curve = found(terms)
    assert curve.mean(Capped(Pareto(2.2, 36_000), MOST)) == pytest.approx(area, rel=1e-8)


def test_a_clause_that_is_waived_up_to_an_amount_makes_a_jump() -> None:
    """Coinsurance of three quarters, waived up to 10,000: the mean has the jump's share exactly."""

    def terms(x: Floats) -> Floats:
        return np.where(x <= 10_000, 0.0, 0.25 * x)

    severity = Capped(Lognormal(9, 1.5), MOST)
    over = severity.mean - float(severity.limited_mean(10_000))
    expected = 0.25 * (over + 10_000 * float(severity.beyond(10_000)))
    assert found(terms).mean(severity) == pytest.approx(expected, rel=1e-6)


def test_corners_that_hide_between_equal_slopes_are_found() -> None:
    """Nothing is paid below the deductible nor above the limit, so both ends rise by one."""
    curve = found(layered(2_500, 100_000, 1))
    at = np.array([1_000, 2_500, 50_000, 102_500, 500_000.0])
    assert np.interp(at, curve.at, curve.borne) == pytest.approx(
        [1_000, 2_500, 2_500, 2_500, 400_000], abs=0.01
    )


def test_marks_are_kept_and_several_curves_stay_apart() -> None:
    def borne(curve: Codes, size: Floats) -> Floats:
        most: Floats = np.array([1_000.0, 5_000.0])[curve]
        return np.where(size < most, size, most)

    first, second = discover(borne, [np.array([0, 300.0, 1e6]), np.array([0, 2e6])])
    assert 300.0 in first.at
    assert (first.borne[-1], second.borne[-1]) == (1_000, 5_000)
    assert (first.at[-1], second.at[-1]) == (1e6, 2e6)
