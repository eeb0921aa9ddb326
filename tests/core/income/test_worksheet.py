"""Loss of income month by month: published seasons and rules, and what must always hold."""

from __future__ import annotations

from datetime import date
from decimal import Decimal
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterday.core.income.published import amount_needed, maximum_coinsurance, paid_by_month
from quarterday.core.income.worksheet import Closure, Expense, Kept, Stream, Worksheet
from quarterday.core.money import Money, total

JANUARY = date(2027, 1, 1)
NOTHING_KEPT = Kept(Decimal(0), Decimal(0))
EVEN = (Decimal(1) / 12,) * 12
# Source of 30 % in December and 4 % in July: abundance.ca, Plan to Give this Summer
GIVING = tuple(Decimal({12: "0.30", 7: "0.04"}.get(m, "0.066")) for m in range(1, 13))


def cad(amount: int | str) -> Money:
    return Money(Decimal(amount))


def sheet(
    *streams: Stream,
    months: int = 12,
    growth: str = "0",
    expenses: tuple[Expense, ...] = (),
    first: date = JANUARY,
    rent: int = 0,
    moving: int = 0,
) -> Worksheet:
    closure = Closure(first, months, Decimal(growth), cad(rent), cad(moving))
    return Worksheet(streams, expenses, closure)


def stream(
    yearly: int = 120_000, shares: tuple[Decimal, ...] = EVEN, kept: Kept = NOTHING_KEPT
) -> Stream:
    return Stream("donations", cad(yearly), shares, kept)


# --- published figures


def test_one_month_loses_120_000_in_december_and_16_000_in_july() -> None:
    """The published shares on 400,000 a year; evenly spread it would be 33,333."""
    found = sheet(stream(400_000, GIVING), months=1)
    by_month = {outage.start.month: outage.lost for outage in found.outages}
    assert by_month[12] == cad(120_000)
    assert by_month[7] == cad(16_000)
    assert found.worst.start == date(2027, 12, 1)
    even = sheet(stream(400_000), months=1).worst.lost
    assert even.rounded(Decimal(1)) == cad(33_333)


@pytest.mark.parametrize(("months", "factor"), [(6, "0.5"), (9, "0.75"), (12, "1"), (18, "1.5")])
def test_the_period_factor_is_that_of_the_printed_worksheet(months: int, factor: str) -> None:
    """Agribusiness business income and extra expense worksheet, formsbank.com 154539, page 2."""
    assert maximum_coinsurance(months) == Decimal(factor)


def test_nine_months_of_1_375_000_need_1_031_250() -> None:
    """1,375,000 for twelve months is read (freebusiness.us); the nine months are computed."""
    exposure = cad(1_375_000)
    assert maximum_coinsurance(9) == Decimal("0.75")
    assert amount_needed(exposure, 9, Decimal("0.75")) == cad(1_031_250)
    assert sheet(stream(1_375_000), months=9).worst.lost.rounded() == cad(1_031_250)


@pytest.mark.parametrize(
    ("months", "share", "amount"),
    [
        (6, "0.7", 700_000),  # a season: 0.7 ÷ 0.5 × 500,000
        (6, "0.5", 500_000),  # no season
        (6, "0.4", 500_000),  # never less than the period's own part
        (12, "1", 1_000_000),
        (18, "1", 1_500_000),  # a year or longer: no season counts
    ],
)
def test_a_peak_season_raises_the_amount_of_a_short_closure(
    months: int, share: str, amount: int
) -> None:
    """The same worksheet: largest share ÷ period factor × base amount, below twelve months."""
    assert amount_needed(cad(1_000_000), months, Decimal(share)) == cad(amount)


@given(st.integers(1, 11), st.lists(st.integers(0, 100), min_size=12, max_size=12))
def test_the_printed_rule_for_a_peak_is_our_worst_start(months: int, weights: list[int]) -> None:
    """With nothing kept, saved or grown, both are the largest run of months; it may go round."""
    if not sum(weights):
        return
    shares = tuple(Decimal(w) / sum(weights) for w in weights)
    found = sheet(stream(120_000, shares), months=months)
    printed = amount_needed(found.year.income, months, found.largest_share())
    assert abs(printed - found.worst.lost) < cad("0.001")


def test_a_monthly_limit_pays_each_month_up_to_its_part() -> None:
    """CP 00 30, monthly limit of indemnity (City of Santa Ana, page 99): 120,000 and a quarter are
    read; the losses and the 80,000 are from memory."""
    losses = (cad(40_000), cad(20_000), cad(30_000))
    assert paid_by_month(cad(120_000), Decimal("0.25"), losses) == cad(80_000)


@given(
    limit=st.integers(0, 500_000),
    fraction=st.decimals("0", "1", places=2),
    losses=st.lists(st.integers(-5_000, 90_000), min_size=1, max_size=24),
)
def test_a_monthly_limit_never_pays_more_than_the_whole_limit(
    limit: int, fraction: Decimal, losses: list[int]
) -> None:
    assert paid_by_month(cad(limit), fraction, map(cad, losses)) <= cad(limit)


# --- by hand


def test_giving_recovers_in_a_straight_line() -> None:
    kept = Kept(Decimal("0.5"), Decimal("0.8"), 6)
    assert [kept.in_month(n) for n in (0, 1, 3, 6, 20)] == [
        Decimal(text) for text in ("0.5", "0.55", "0.65", "0.8", "0.8")
    ]


def test_without_a_recovery_the_settled_share_holds_at_once() -> None:
    assert Kept(Decimal("0.2"), Decimal("0.9")).in_month(0) == Decimal("0.9")


def test_what_is_kept_lowers_the_loss_month_by_month() -> None:
    """10,000 a month, half kept, then in steps of 0.1 up to 0.8."""
    kept = Kept(Decimal("0.5"), Decimal("0.8"), 3)
    found = sheet(stream(kept=kept), months=4).worst
    assert [month.kept.rounded() for month in found.months] == [
        cad(5_000), cad(6_000), cad(7_000), cad(8_000)
    ]  # fmt: skip
    assert found.lost.rounded() == cad(14_000)


def test_expenses_that_stop_are_saved_and_those_that_go_on_are_not() -> None:
    """Payroll of 60,000 kept to 80 %, and 24,000 that stop: 1,000 + 2,000 a month."""
    expenses = (Expense(cad(60_000), Decimal("0.8")), Expense(cad(24_000), Decimal(0)))
    found = sheet(stream(), months=3, expenses=expenses)
    assert [month.saved for month in found.worst.months] == [cad(3_000)] * 3
    assert found.worst.lost.rounded() == cad(21_000)
    assert found.year.counted(Decimal(0)).rounded() == cad(84_000)
    assert found.year.counted(Decimal(1)).rounded() == cad(120_000)


def test_closing_that_saves_more_than_it_loses_needs_nothing() -> None:
    found = sheet(stream(12_000), expenses=(Expense(cad(60_000), Decimal(0)),))
    assert found.worst.lost == cad(0)
    assert found.worst.months[0].lost < cad(0)


def test_income_grows_by_a_step_each_twelve_months_of_the_term() -> None:
    """10,000 a month last year: 11,000 in the coming term, 12,100 in the year after."""
    last = sheet(stream(), months=14, growth="0.1").outages[-1]
    assert last.start == date(2027, 12, 1)
    income = [month.income.rounded() for month in last.months]
    assert income == [cad(11_000), *[cad(12_100)] * 12, cad(13_310)]


def test_the_term_may_begin_in_any_month() -> None:
    found = sheet(stream(400_000, GIVING), months=1, first=date(2027, 6, 1))
    assert [outage.start.month for outage in found.outages] == [
        6,
        7,
        8,
        9,
        10,
        11,
        12,
        1,
        2,
        3,
        4,
        5,
    ]
    assert found.worst.start == date(2027, 12, 1)


def test_living_elsewhere_costs_the_rent_of_each_month_and_the_move_once() -> None:
    found = sheet(stream(), months=5, rent=2_000, moving=7_500).worst
    assert [month.extra for month in found.months] == [cad(9_500), *[cad(2_000)] * 4]
    assert found.extra == cad(17_500)


@pytest.mark.parametrize(
    ("limit", "lasts"), [(0, 0), (9_999, 0), (10_001, 1), (25_000, 2), (60_001, 6), (10**9, 6)]
)
def test_a_limit_lasts_so_many_whole_months(limit: int, lasts: int) -> None:
    assert sheet(stream(), months=6).worst.lasts(cad(limit)) == lasts


def test_no_income_is_no_need() -> None:
    found = sheet(months=3)
    assert found.worst.lost == cad(0)
    assert found.largest_share() == Decimal(0)


# --- properties

shares = (
    st.lists(st.integers(0, 50), min_size=12, max_size=12)
    .filter(any)
    .map(lambda weights: tuple(Decimal(w) / sum(weights) for w in weights))
)
ratios = st.decimals("0", "1", places=2)
streams = st.builds(
    Stream,
    kind=st.just("donations"),
    yearly=st.integers(0, 2_000_000).map(cad),
    shares=shares,
    kept=st.builds(Kept, first=ratios, settled=ratios, months=st.integers(0, 9)),
)
spends = st.builds(Expense, yearly=st.integers(0, 500_000).map(cad), continues=ratios)
sheets = st.builds(
    lambda of, spent, months, growth: sheet(
        *of, months=months, growth=str(growth), expenses=tuple(spent)
    ),
    st.lists(streams, min_size=1, max_size=3),
    st.lists(spends, max_size=2),
    st.integers(1, 30),
    st.decimals("-0.2", "0.3", places=2),
)


@given(sheets)
def test_no_start_loses_more_than_the_worst_one(found: Worksheet) -> None:
    assert all(outage.lost <= found.worst.lost + cad("0.000001") for outage in found.outages)
    assert found.worst in found.outages


@given(sheets)
def test_the_months_shown_add_up_to_the_rounded_whole(found: Worksheet) -> None:
    for unit in (Decimal("0.01"), Decimal(1)):
        shown = found.worst.shown(unit)
        assert total(shown) == total(m.lost for m in found.worst.months).rounded(unit)
        assert all(month == month.rounded(unit) for month in shown)


@given(sheets)
def test_a_year_elsewhere_is_never_cheaper_than_a_month_less_of_it(found: Worksheet) -> None:
    rents = [sheet(months=n, rent=1_500, moving=900).worst.extra for n in (1, 6, 12)]
    assert all(a < b for a, b in pairwise(rents))
    assert found.worst.extra == cad(0)


@given(streams, st.integers(1, 24))
def test_with_no_expense_saved_a_longer_closure_never_loses_less(of: Stream, months: int) -> None:
    shorter, longer = (sheet(of, months=n).worst.lost for n in (months, months + 1))
    assert shorter <= longer + cad("0.000001")


@given(streams, ratios)
def test_who_keeps_more_loses_no_more(of: Stream, more: Decimal) -> None:
    kept = Kept(max(of.kept.first, more), max(of.kept.settled, more), of.kept.months)
    better = Stream(of.kind, of.yearly, of.shares, kept)
    assert sheet(better).worst.lost <= sheet(of).worst.lost + cad("0.000001")


@given(sheets, st.integers(0, 3_000_000))
def test_a_larger_limit_never_lasts_shorter(found: Worksheet, limit: int) -> None:
    assert found.worst.lasts(cad(limit)) <= found.worst.lasts(cad(limit + 10_000))


def test_a_year_of_even_income_is_the_year_whatever_the_start() -> None:
    assert {o.lost.rounded() for o in sheet(stream(), months=12).outages} == {cad(120_000)}
