"""The chain ladder against published triangles and an independent library."""

from __future__ import annotations

from collections.abc import Sequence
from importlib import import_module
from typing import Any

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterday.core.claims.development import Development, Latest, Link, developed

Triangle = Sequence[Sequence[float]]
chainladder: Any = import_module("chainladder")  # it says nothing of its types

# Taylor and Ashe (1983), as in Mack, ASTIN Bulletin 23 (1993); read in the sample "genins" of
# chainladder 0.10.1 and in the R package ChainLadder. Cumulative, a row a year of loss.
TAYLOR_ASHE: Triangle = (
    (357848, 1124788, 1735330, 2218270, 2745596, 3319994, 3466336, 3606286, 3833515, 3901463),
    (352118, 1236139, 2170033, 3353322, 3799067, 4120063, 4647867, 4914039, 5339085),
    (290507, 1292306, 2218525, 3235179, 3985995, 4132918, 4628910, 4909315),
    (310608, 1418858, 2195047, 3757447, 4029929, 4381982, 4588268),
    (443160, 1136350, 2128333, 2897821, 3402672, 3873311),
    (396132, 1333217, 2180715, 2985752, 3691712),
    (440832, 1288463, 2419861, 3483130),
    (359480, 1421128, 2864498),
    (376686, 1363294),
    (344014,),
)


def of_triangle(rows: Triangle) -> Development:
    """Return a whole triangle developed: each row's last amount is its latest."""
    links = [
        [Link(row[age], row[age + 1]) for row in rows if len(row) > age + 1]
        for age in range(len(rows[0]) - 1)
    ]
    return developed(links, [Latest(len(row) - 1, row[-1]) for row in rows])


def sample(name: str) -> Triangle:
    """Return a triangle that comes with the library."""
    values = chainladder.load_sample(name).values[0, 0]
    return [[float(x) for x in row[~np.isnan(row)]] for row in values]


def test_taylor_and_ashe_factors_and_reserves_are_the_published_ones() -> None:
    """Mack, ASTIN Bulletin 23 (1993): total reserve 18,680,856; factors from 3.4906 to 1.0177."""
    found = of_triangle(TAYLOR_ASHE)
    factors = [3.4906, 1.7473, 1.4574, 1.1739, 1.1038, 1.0863, 1.0539, 1.0766, 1.0177]
    assert [round(s.factor, 4) for s in found.steps] == factors
    reserves = [0, 94_634, 469_511, 709_638, 984_889, 1_419_459, 2_177_641, 3_920_301, 4_278_972,
                4_625_811]  # fmt: skip
    assert [round(f.to_come) for f in found.forecasts] == reserves
    assert round(found.total.to_come) == 18_680_856


def test_taylor_and_ashe_standard_errors_are_the_published_ones() -> None:
    """Mack, ASTIN Bulletin 23 (1993): 2,447,095 in all; by year as chainladder 0.10.1 has them."""
    found = of_triangle(TAYLOR_ASHE)
    errors = [0, 75_535, 121_699, 133_549, 261_406, 411_010, 558_317, 875_328, 971_258, 1_363_155]
    assert [round(f.error) for f in found.forecasts] == errors
    assert round(found.total.error) == 2_447_095


@pytest.mark.filterwarnings("ignore")
def test_the_raa_triangle_gives_the_published_reserve_and_error() -> None:
    """Reserve 52,135 and, with Mack's last variance, error 26,909.01 (R package ChainLadder)."""
    found = of_triangle(sample("raa"))
    assert round(found.total.to_come) == 52_135
    assert found.total.error == pytest.approx(26_909.01, abs=0.01)


@pytest.mark.filterwarnings("ignore")
@pytest.mark.parametrize(("name", "factors", "sigmas"), [
    ("raa", [2.9994, 1.6235, 1.2709, 1.1717, 1.1134, 1.0419, 1.0333, 1.0169, 1.0092], None),
    ("mortgage", [11.10, 4.092, 1.708, 1.276, 1.139, 1.069, 1.026, 1.023],
     [1337, 988.5, 440.1, 207, 164.2, 74.60, 35.49, 16.89]),
])  # fmt: skip
def test_factors_and_their_spread_are_those_of_the_published_triangles(
    name: str, factors: list[float], sigmas: list[float] | None
) -> None:
    """R package ChainLadder, unit tests: RAA, and Mack (1999) before the tail that he adds by hand.

    We add no tail (none is published that fits), so its last figures are not ours.
    """
    steps = of_triangle(sample(name)).steps
    assert [s.factor for s in steps] == pytest.approx(factors, rel=5e-4)
    if sigmas is not None:
        assert [s.variance**0.5 for s in steps] == pytest.approx(sigmas, rel=5e-4)


@pytest.mark.filterwarnings("ignore")
@pytest.mark.parametrize("name", ["genins", "raa", "mortgage", "abc", "ukmotor"])
def test_an_independent_library_finds_the_same(name: str) -> None:
    """chainladder 0.10.1, Mack's method with the volume weights and Mack's last variance."""
    whole = chainladder.load_sample(name)
    prepared = chainladder.Development(average="volume", sigma_interpolation="mack")
    mack = chainladder.MackChainladder().fit(prepared.fit_transform(whole))
    found = of_triangle(sample(name))
    told = mack.summary_.to_frame(origin_as_datetime=False)
    for forecast, (_, row) in zip(found.forecasts, told.iterrows(), strict=True):
        assert forecast.ultimate == pytest.approx(row["Ultimate"])
        assert forecast.error == pytest.approx(np.nan_to_num(row["Mack Std Err"]), rel=1e-6)
    assert found.total.error == pytest.approx(float(np.ravel(mack.total_mack_std_err_)[0]))


def test_ages_end_where_no_claims_were_valued_twice() -> None:
    found = developed([[Link(100, 150)], []], [Latest(0, 10), Latest(1, 150), Latest(7, 80)])
    assert [f.ultimate for f in found.forecasts] == pytest.approx([15, 150, 80])
    assert found.total.error == 0  # one link shows no chance


def test_without_links_all_is_as_it_is() -> None:
    found = developed([], [Latest(0, 10), Latest(3, 0)])
    assert (found.total.latest, found.total.ultimate, found.total.error) == (10, 10, 0)


def test_claims_that_came_to_nothing_say_nothing_of_the_next() -> None:
    """A year of loss without cost has no ratio; what it came to later is not divided by it."""
    with_nothing = developed([[Link(100, 150), Link(80, 100), Link(0, 40)]], [Latest(0, 0)])
    assert with_nothing.steps[0].factor == pytest.approx(250 / 180)
    assert with_nothing.total.ultimate == with_nothing.total.error == 0


def test_all_claims_gone_ends_the_ages() -> None:
    assert developed([[Link(100, 0)]], [Latest(0, 100)]).steps == ()


@given(st.lists(st.floats(1, 1e6), min_size=2, max_size=6), st.floats(1.01, 3))
def test_years_that_all_grow_alike_have_no_error(firsts: list[float], growth: float) -> None:
    n = len(firsts)
    rows = [[first * growth**k for k in range(n - at)] for at, first in enumerate(firsts)]
    found = of_triangle(rows)
    for forecast, first in zip(found.forecasts, firsts, strict=True):
        assert forecast.ultimate == pytest.approx(first * growth ** (n - 1))
    assert found.total.error == pytest.approx(0, abs=1e-3 * found.total.ultimate)


@given(st.permutations(range(10)))
def test_the_order_of_years_changes_nothing(order: list[int]) -> None:
    rows = [TAYLOR_ASHE[n] for n in order]
    links = [
        [Link(row[age], row[age + 1]) for row in rows if len(row) > age + 1] for age in range(9)
    ]
    found = developed(links, [Latest(len(row) - 1, row[-1]) for row in rows])
    assert found.total.error == pytest.approx(2_447_094.861, abs=1)
