"""Yearly rates come out as published, agree with an independent library, or are refused."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date, timedelta
from decimal import Decimal
from fractions import Fraction

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from pyxirr import xirr

from quarterday.catalogue.speech import Speech
from quarterday.core.given import Unusable
from quarterday.core.premium.apr import Paid, UnitPayments, actuarial, canada, effective
from quarterday.core.reference import Reference

D, F = Decimal, Fraction


NONE = F(0)


def units(amount: str, t: int, f: Fraction = NONE, count: int = 1) -> UnitPayments:
    return UnitPayments(D(amount), t, f, count)


@pytest.mark.parametrize(
    ("advance", "payments", "per_year", "published"),
    [
        # 12 CFR part 1026 (Regulation Z), appendix J (c): examples with their published rates.
        ("5000", [units("230", 1, count=24)], F(12), "9.69"),  # (c)(1)(i)
        ("6000", [units("200", 1, F(19, 30), 36)], F(12), "11.82"),  # (c)(1)(ii)
        ("5000", [units("219.17", 0, F(6, 15), 24)], F(24), "10.34"),  # (c)(1)(iii)
        ("10000", [units("385", 1, F(39, 90), 40)], F(4), "8.97"),  # (c)(1)(iv)
        ("5000", [units("250", 1), units("230", 2, count=23)], F(12), "10.08"),  # (c)(2)(i)
        ("5000", [units("230", 1, count=23), units("280", 24)], F(12), "10.50"),  # (c)(3)(i)
        (
            "5000",
            [units("250", 1), units("230", 2, count=22), units("280", 24)],
            F(12),
            "10.90",
        ),  # (c)(4)(i)
        ("1000", [units("1080", 1)], F(365, 255), "11.45"),  # (c)(5)(i)
        ("1000", [units("1080", 255)], F(365), "11.45"),  # the same, told in days
    ],
)
def test_regulation_z_examples_come_out_as_published(
    advance: str, payments: list[UnitPayments], per_year: Fraction, published: str
) -> None:
    rate = actuarial([units(advance, 0)], payments, per_year)
    assert (rate * 100).quantize(D("0.01")) == D(published)


def test_many_periods_are_no_more_than_a_number_holds() -> None:
    """Put back into the equation, the daily rate gives the advance again."""
    paid = [units("600", 100), units("600", 1200)]
    daily = float(actuarial([units("1000", 0)], paid, F(365))) / 365
    worth = 600 / (1 + daily) ** 100 + 600 / (1 + daily) ** 1200
    assert worth == pytest.approx(1000, abs=1e-6)


def test_the_canadian_formula_is_cost_over_time_and_average_principal() -> None:
    """SOR/2002-263, s. 3: APR = C / (T × P). The figures are worked from the formula.

    12,000 by 12 payments of 1,030, the first at once: 10,970 over 11 payments. The monthly rate
    of that annuity × 12 is 6.5048 %, and the formula gives the same.
    """
    found = canada(D(10970), [Paid(D(1030), F(month, 12)) for month in range(1, 12)])
    assert (found.rate * 100).quantize(D("0.0001")) == D("6.5048")
    assert found.average.quantize(D("0.00001")) == D("6037.54559")
    assert (found.cost, found.years) == (D(360), F(11, 12))
    assert found.rounded == D("0.065")  # to the nearest 1/8 %, as s. 3 allows
    by_formula = found.cost / (D(11) / 12 * found.average)
    assert abs(by_formula - found.rate) < D("1e-10")
    rounded_years = found.cost / (D("0.92") * found.average)  # T to two decimals matters
    assert (rounded_years * 100).quantize(D("0.0001")) == D("6.4812")


def test_a_level_monthly_plan_has_the_same_rate_by_both_regulations() -> None:
    """With whole months both rules define 12 × the monthly rate of the annuity."""
    ours = canada(D(4800 - 1200), [Paid(D(425), F(month, 12)) for month in range(1, 10)])
    theirs = actuarial([units("3600", 0)], [units("425", 1, count=9)], F(12))
    assert abs(ours.rate - theirs) < D("1e-9")


def test_a_plan_without_a_charge_costs_nothing() -> None:
    found = canada(D(300), [Paid(D(100), F(month, 12)) for month in (1, 2, 3)])
    assert found.rate == found.cost == found.rounded == 0


@pytest.mark.parametrize(("rate", "rounded"), [("0.0651", "0.065"), ("0.065625", "0.06625")])
def test_an_eighth_of_a_per_cent_is_rounded_half_up(rate: str, rounded: str) -> None:
    found = canada(D(100), [Paid(D(100) * (1 + D(rate)), F(1))])
    assert found.rounded == D(rounded)


@settings(max_examples=200, deadline=None)
@given(
    st.lists(st.tuples(st.integers(1, 700), st.integers(100, 900_000)), min_size=1, max_size=14),
    st.integers(200, 9_000_000),
)
def test_the_effective_rate_agrees_with_an_independent_library(
    paid: list[tuple[int, int]], advance: int
) -> None:
    """pyxirr's xirr: the same equation, days over 365."""
    start = date(2026, 12, 8)
    assume(F(1, 3) < F(sum(amount for _, amount in paid), advance) < 3)
    flows = [(start, D(advance) / 100)]
    flows += [(start + timedelta(days=days), -D(amount) / 100) for days, amount in paid]
    theirs = xirr([day for day, _ in flows], [float(amount) for _, amount in flows])
    assume(theirs is not None and -0.9 < theirs < 1e5)
    assert theirs is not None
    assert float(effective(flows)) == pytest.approx(theirs, rel=1e-6, abs=1e-7)


def test_the_effective_rate_of_a_known_plan() -> None:
    """100 for a year at 8 % is 108; half a year compounds (days over 365)."""
    year = effective([(date(2026, 1, 1), D(100)), (date(2027, 1, 1), D(-108))])
    assert abs(year - D("0.08")) < D("1e-11")
    half = effective([(date(2026, 1, 1), D(100)), (date(2026, 7, 2), D(-104))])
    assert float(half) == pytest.approx(1.04 ** (365 / 182) - 1, abs=1e-10)


def test_paying_late_for_nothing_has_the_rate_nothing_and_less_is_below() -> None:
    start = date(2026, 1, 1)
    free = effective([(start, D(100)), (start + timedelta(90), D(-100))])
    saved = effective([(start, D(100)), (start + timedelta(365), D(-90))])
    assert abs(free) < D("1e-11")
    assert abs(saved + D("0.1")) < D("1e-11")


def refusals() -> list[tuple[str, Callable[[], object]]]:
    day = date(2026, 1, 1)
    later, last = day + timedelta(365), day + timedelta(730)
    return [
        # 100, −230, 132 has the two roots 10 % and 20 %; one of them would be a silent choice.
        ("several", lambda: effective([(day, D(100)), (later, D(-230)), (last, D(132))])),
        ("several", lambda: actuarial([units("100", 0), units("132", 2)], [units("230", 1)], F(1))),
        ("no-rate", lambda: effective([(day, D(100)), (later, D(1))])),
        ("no-rate", lambda: actuarial([units("100", 0)], [], F(12))),
        ("nothing-financed", lambda: canada(D(0), [Paid(D(1), F(1))])),
        ("nothing-financed", lambda: canada(D(5), [])),
        ("nothing-financed", lambda: canada(D(5), [Paid(D(6), F(0))])),
        ("not-repaid", lambda: canada(D(100), [Paid(D(99), F(1))])),
    ]


@pytest.mark.parametrize(("which", "asked"), refusals())
@pytest.mark.parametrize("language", ["en", "fr"])
def test_what_has_no_rate_or_several_is_refused_in_a_sentence(
    canada_speech: dict[str, Speech], which: str, asked: Callable[[], object], language: str
) -> None:
    with pytest.raises(Unusable) as refused:
        asked()
    assert which in refused.value.words.id
    assert canada_speech[language].say(refused.value.words)


@pytest.fixture(scope="module")
def canada_speech(request: pytest.FixtureRequest) -> dict[str, Speech]:
    reference: Reference = request.getfixturevalue("canada")
    return {language: Speech(reference, language) for language in ("en", "fr")}
