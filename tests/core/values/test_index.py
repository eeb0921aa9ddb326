"""Indexing: the published figures of Statistics Canada, and what must hold for any index."""

from __future__ import annotations

import math
from datetime import date, timedelta
from decimal import ROUND_HALF_UP, Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterday.core.dates import Quarter
from quarterday.core.figure import Fact, Parameter, Source, walk
from quarterday.core.file.entry import Origin
from quarterday.core.money import Money
from quarterday.core.reference import IndexRelease, Reference
from quarterday.core.values.index import (
    Change,
    Curve,
    Index,
    Level,
    NotCoveredError,
    Subject,
    factor,
    indexed,
    level,
)
from quarterday.core.words import Rate, words

RATE = Decimal("0.035")

# Statistics Canada, The Daily, 2026-01-27, table 1, non-residential, 2023=100: levels of 2024Q4,
# 2025Q3, 2025Q4 and the changes printed beside them (quarter on quarter, year on year).
THE_DAILY_2026_01_27 = [
    ("15-CMA composite", "105.6", "109.4", "109.9", "0.5", "4.1"),
    ("St. John's", "102.9", "105.5", "105.9", "0.4", "2.9"),
    ("Halifax", "103.0", "104.9", "105.4", "0.5", "2.3"),
    ("Moncton", "106.5", "110.2", "111.1", "0.8", "4.3"),
    ("Québec", "106.3", "113.5", "114.0", "0.4", "7.2"),
    ("Montréal", "103.8", "108.5", "108.8", "0.3", "4.8"),
    ("Ottawa–Gatineau (ON)", "104.7", "107.7", "108.4", "0.6", "3.5"),
    ("Toronto", "105.8", "109.1", "109.6", "0.5", "3.6"),
    ("London", "108.0", "116.0", "118.7", "2.3", "9.9"),
    ("Winnipeg", "104.1", "107.8", "108.0", "0.2", "3.7"),
    ("Regina", "107.5", "110.4", "110.9", "0.5", "3.2"),
    ("Saskatoon", "107.8", "112.3", "113.8", "1.3", "5.6"),
    ("Calgary", "104.9", "108.1", "108.5", "0.4", "3.4"),
    ("Edmonton", "106.0", "109.9", "110.1", "0.2", "3.9"),
    ("Vancouver", "106.8", "109.6", "109.5", "-0.1", "2.5"),
    ("Victoria", "108.4", "111.5", "111.5", "0.0", "2.9"),
]

# Statistics Canada, table 18-10-0276-01 (archived), institutional buildings, 2017=100. The changes
# are computed from these published levels.
INSTITUTIONAL = {
    "Calgary": {"2019Q4": "103.5", "2020Q4": "104.0", "2021Q1": "104.3", "2021Q4": "110.4",
                "2022Q1": "113.2", "2022Q4": "117.5", "2023Q4": "121.4"},
    "Edmonton": {"2019Q4": "104.6", "2020Q4": "104.6", "2021Q1": "105.4", "2021Q4": "114.6",
                 "2022Q1": "117.3", "2022Q4": "123.8", "2023Q4": "127.6"},
}  # fmt: skip
INSTITUTIONAL_CHANGES = [
    ("Calgary", "2020Q4", "2021Q4", "6.2"),
    ("Edmonton", "2020Q4", "2021Q4", "9.6"),
    ("Calgary", "2021Q1", "2022Q1", "8.5"),
    ("Edmonton", "2021Q1", "2022Q1", "11.3"),
    ("Calgary", "2021Q4", "2022Q4", "6.4"),
    ("Edmonton", "2021Q4", "2022Q4", "8.0"),
    ("Calgary", "2022Q4", "2023Q4", "3.3"),
    ("Edmonton", "2022Q4", "2023Q4", "3.1"),
]


def _curve(points: dict[str, str]) -> Curve:
    return Curve.of({Quarter.parse(q): Decimal(v) for q, v in points.items()})


def _percent(change: Change) -> Decimal:
    return ((change.ratio - 1) * 100).quantize(Decimal("0.1"), rounding=ROUND_HALF_UP)


def _middle(quarter: str) -> date:
    return Quarter.parse(quarter).middle


@pytest.mark.parametrize(("area", "q4", "q3", "last", "quarterly", "yearly"), THE_DAILY_2026_01_27)
def test_changes_between_quarters_are_the_published_ones(
    area: str, q4: str, q3: str, last: str, quarterly: str, yearly: str
) -> None:
    curve = _curve({"2024Q4": q4, "2025Q3": q3, "2025Q4": last})
    now = _middle("2025Q4")
    assert _percent(curve.change(_middle("2025Q3"), now, None)) == Decimal(quarterly), area
    assert _percent(curve.change(_middle("2024Q4"), now, None)) == Decimal(yearly), area


@pytest.mark.parametrize(("city", "start", "end", "percent"), INSTITUTIONAL_CHANGES)
def test_institutional_buildings_rose_as_the_archived_table_says(
    city: str, start: str, end: str, percent: str
) -> None:
    change = _curve(INSTITUTIONAL[city]).change(_middle(start), _middle(end), None)
    assert _percent(change) == Decimal(percent)


def test_calgary_rose_by_a_factor_of_1_1729_in_four_years() -> None:
    """Statistics Canada, table 18-10-0276-01 (archived): 121.4 / 103.5."""
    change = _curve(INSTITUTIONAL["Calgary"]).change(_middle("2019Q4"), _middle("2023Q4"), None)
    assert change.ratio.quantize(Decimal("0.0001")) == Decimal("1.1729")
    assert not change.projected


def test_the_shipped_composite_rose_as_the_daily_printed_it(canada: Reference) -> None:
    """The Daily, 2026-01-27, table 1: composite +0.5 % on the quarter, +4.1 % on the year."""
    release = canada.index("composite", date(2026, 11, 25))
    end = _middle("2025Q4")
    assert _percent(factor(release, _middle("2025Q3"), end, None)) == Decimal("0.5")
    assert _percent(factor(release, _middle("2024Q4"), end, None)) == Decimal("4.1")


SIMPLE = _curve({"2020Q1": "100", "2020Q2": "121"})


def test_a_published_figure_stands_for_the_middle_of_its_quarter() -> None:
    assert SIMPLE.at(date(2020, 2, 15), None) == Level(Decimal(100))
    assert SIMPLE.at(date(2020, 5, 15), None) == Level(Decimal(121))


def test_halfway_between_two_figures_lies_their_geometric_mean() -> None:
    """15 February to 15 May 2020 is 90 days; the 45th is 31 March."""
    assert math.isclose(SIMPLE.at(date(2020, 3, 31), None).value, 110, rel_tol=1e-25)


@given(days=st.integers(min_value=0, max_value=90))
def test_between_two_figures_the_logarithm_moves_in_a_line(days: int) -> None:
    found = SIMPLE.at(date(2020, 2, 15) + timedelta(days), None).value
    assert math.isclose(math.log(found), math.log(100) + days / 90 * math.log(1.21), rel_tol=1e-12)


def test_the_first_quarter_stands_from_its_first_day() -> None:
    assert SIMPLE.at(date(2020, 1, 1), None) == Level(Decimal(100))


def test_a_day_before_the_first_quarter_is_refused_with_what_to_do() -> None:
    with pytest.raises(NotCoveredError, match=r"begins with 2020Q1.*Give a valuation from"):
        SIMPLE.at(date(2019, 12, 31), RATE)


def test_the_refusal_is_a_lookup_error() -> None:
    with pytest.raises(LookupError):
        SIMPLE.change(date(2001, 1, 1), date(2020, 3, 1), RATE)


def test_past_the_last_figure_costs_rise_by_the_yearly_rate_and_say_so() -> None:
    found = SIMPLE.at(date(2021, 5, 15), Decimal("0.03"))
    assert found == Level(Decimal("124.63"), projected=True)
    assert SIMPLE.at(date(2022, 5, 15), Decimal("0.03")).value == Decimal(121) * Decimal("1.0609")


def test_part_of_a_year_is_projected_by_its_days() -> None:
    """16 May to 14 August 2020: 91 of the 365 days to the next 15 May."""
    found = SIMPLE.at(date(2020, 8, 14), Decimal("0.1")).value
    assert math.isclose(found, 121 * 1.1 ** (91 / 365), rel_tol=1e-12)


def test_a_day_past_the_last_figure_without_a_rate_is_refused() -> None:
    with pytest.raises(NotCoveredError, match=r"ends with 2020Q2; .* give the yearly rate"):
        SIMPLE.at(date(2020, 5, 16), None)


@pytest.mark.parametrize("rate", ["-1", "-1.5"])
def test_a_rate_that_would_leave_nothing_is_refused(rate: str) -> None:
    with pytest.raises(ValueError, match="above -1"):
        SIMPLE.at(date(2021, 1, 1), Decimal(rate))


def test_an_index_without_figures_or_with_a_zero_is_refused() -> None:
    with pytest.raises(ValueError, match="at least one quarter"):
        Curve.of({})
    with pytest.raises(ValueError, match="2020Q1 must be above zero"):
        _curve({"2020Q1": "0"})


def test_figures_with_quarters_between_them_are_joined_in_one_line() -> None:
    curve = _curve({"2019Q4": "100", "2021Q4": "144"})
    days = (date(2021, 11, 15) - date(2019, 11, 15)).days
    found = curve.at(date(2020, 11, 15), None).value
    assert math.isclose(found, 100 * 1.44 ** (366 / days), rel_tol=1e-12)


@pytest.mark.parametrize(
    ("day", "quarters"),
    [
        (date(2020, 1, 1), ["2020Q1"]),
        (date(2020, 2, 15), ["2020Q1"]),
        (date(2020, 2, 16), ["2020Q1", "2020Q2"]),
        (date(2020, 5, 14), ["2020Q1", "2020Q2"]),
        (date(2020, 5, 15), ["2020Q2"]),
        (date(2021, 1, 1), ["2020Q2"]),
    ],
)
def test_a_level_names_the_one_or_two_figures_it_comes_from(day: date, quarters: list[str]) -> None:
    assert [str(quarter) for quarter in SIMPLE.around(day)] == quarters


LEVELS = st.decimals(min_value="50", max_value="250", places=1)
DAYS = st.dates(min_value=date(2019, 1, 1), max_value=date(2035, 12, 31))


@st.composite
def curves(draw: st.DrawFn, *, rising: bool = False) -> Curve:
    levels = draw(st.lists(LEVELS, min_size=1, max_size=20))
    levels = sorted(levels) if rising else levels
    return Curve.of({Quarter(2019, 1).shifted(n): level for n, level in enumerate(levels)})


@given(curve=curves(), a=DAYS, b=DAYS, c=DAYS)
def test_two_moves_in_a_row_are_one_move(curve: Curve, a: date, b: date, c: date) -> None:
    first, second = curve.change(a, b, RATE).ratio, curve.change(b, c, RATE).ratio
    assert math.isclose(first * second, curve.change(a, c, RATE).ratio, rel_tol=1e-24)


@given(curve=curves(), a=DAYS, b=DAYS)
def test_back_and_forth_is_no_move(curve: Curve, a: date, b: date) -> None:
    there, back = curve.change(a, b, RATE).ratio, curve.change(b, a, RATE).ratio
    assert math.isclose(there * back, 1, rel_tol=1e-24)


@given(curve=curves(rising=True), a=DAYS, b=DAYS)
def test_under_a_rising_index_a_later_day_never_costs_less(curve: Curve, a: date, b: date) -> None:
    early, late = sorted((a, b))
    tiny = Decimal("1e-20")
    assert curve.at(early, RATE).value <= curve.at(late, RATE).value * (1 + tiny)


@given(curve=curves(), day=DAYS)
def test_the_level_lies_between_the_figures_it_is_made_from(curve: Curve, day: date) -> None:
    found = curve.at(day, Decimal(0)).value
    points = dict(zip(curve.quarters, curve.levels, strict=True))
    around = [points[quarter] for quarter in curve.around(day)]
    tiny = Decimal("1e-20")
    assert min(around) * (1 - tiny) <= found <= max(around) * (1 + tiny)


@given(day=DAYS)
def test_a_release_and_its_line_say_the_same(day: date) -> None:
    release = _release("on")
    assert level(release, day, RATE) == Curve.of(release.points).at(day, RATE)


def _release(geography: str) -> IndexRelease:
    source = {"title": "An index", "publisher": "A test", "checked_on": date(2026, 8, 27)}
    points = {"2018Q4": "90", "2019Q1": "95", "2019Q2": "100"}
    return IndexRelease.model_validate({
        "geography": geography, "base": "2019", "released_on": date(2026, 8, 27),
        "points": points, "source": source,
    })  # fmt: skip


def _parameter() -> Parameter:
    source = Source("A test's rate", "A test")
    since = date(2000, 1, 1)
    return Parameter("values.rate", Rate(RATE), "rate", words("x"), source, since, True)


def _valuation() -> Fact:
    amount = Money(Decimal(1_000_000))
    day = date(2026, 1, 1)
    return Fact("valuation/hall", amount, "money", words("x"), Origin(way="workbook"), day)


NAME = Subject("cost@hall", words("x"))


def test_an_indexed_figure_is_the_valuation_times_the_change_to_the_dollar() -> None:
    """95 / 90 of 1,000,000 is 1,055,555.56: shown as 1,055,556."""
    index = Index.of(_release("on"), _parameter())
    found = indexed(NAME, _valuation(), date(2018, 11, 15), date(2019, 2, 15), index)
    assert found.money == Money(Decimal(1_055_556))
    assert found.caution is None


def test_its_trace_holds_the_published_figures_with_source_and_release_day() -> None:
    index = Index.of(_release("on"), _parameter())
    found = indexed(NAME, _valuation(), date(2018, 11, 15), date(2019, 4, 1), index)
    nodes = {node.id: node for _, node in walk(found)}
    assert {"index/on/2018Q4", "index/on/2019Q1", "index/on/2019Q2"} <= nodes.keys()
    point = nodes["index/on/2019Q1"]
    assert isinstance(point, Parameter)
    assert (point.value, point.since) == (Decimal(95), date(2026, 8, 27))
    assert point.source.title == "An index"
    assert "values.rate" not in nodes, "nothing was projected, so the rate does not belong here"


def test_a_projected_figure_says_so_and_shows_its_rate() -> None:
    index = Index.of(_release("on"), _parameter())
    found = indexed(NAME, _valuation(), date(2018, 11, 15), date(2020, 5, 15), index)
    assert found.caution is not None
    assert found.caution.id == "values-caution-projected-index"
    assert "values.rate" in {node.id for _, node in walk(found)}


@pytest.mark.parametrize(
    ("day", "caution"),
    [
        (date(2019, 2, 15), "values-caution-composite-index"),
        (date(2020, 2, 15), "values-caution-projected-composite-index"),
    ],
)
def test_a_place_without_its_own_series_says_that_it_uses_the_composite(
    day: date, caution: str
) -> None:
    index = Index.of(_release("composite"), _parameter())
    found = indexed(NAME, _valuation(), date(2018, 11, 15), day, index)
    assert found.caution is not None
    assert found.caution.id == caution


@given(base=st.integers(1, 10**8), a=DAYS, b=DAYS)
def test_the_figure_can_be_redone_from_the_levels_it_shows(base: int, a: date, b: date) -> None:
    """Levels are shown with four decimals: enough to redo the sum to within two in a million."""
    index = Index.of(_release("on"), _parameter())
    amount = Money(Decimal(base))
    fact = Fact("f", amount, "money", words("x"), Origin(way="workbook"), a)
    found = indexed(NAME, fact, a, b, index)
    first, second = (index.figure(day).number for day in (a, b))
    assert abs(found.money.amount - base * second / first) <= Decimal("0.5") + base * Decimal(
        "2e-6"
    )
