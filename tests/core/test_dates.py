"""Periods, quarters, whole years, and the business days of each province."""

from __future__ import annotations

import calendar
from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterday.core.dates import (
    Period,
    Quarter,
    Roll,
    add_months,
    add_years,
    business_days_between,
    is_business_day,
    next_business_day,
    previous_business_day,
    rolled,
    years_between,
)

DAYS = st.dates(date(1950, 1, 1), date(2150, 1, 1))
NEAR = st.dates(date(2020, 1, 1), date(2035, 12, 31))
PROVINCES = ("AB", "BC", "MB", "NB", "NL", "NS", "NT", "NU", "ON", "PE", "QC", "SK", "YT")
ANYWHERE = st.sampled_from(PROVINCES)


@st.composite
def periods(draw: st.DrawFn) -> Period:
    start = draw(DAYS)
    return Period(start, start + timedelta(days=draw(st.integers(1, 800))))


def test_a_period_holds_its_first_day_and_not_its_last() -> None:
    term = Period(date(2026, 12, 1), date(2027, 12, 1))
    assert date(2026, 12, 1) in term
    assert date(2027, 11, 30) in term
    assert date(2027, 12, 1) not in term
    assert date(2026, 11, 30) not in term
    assert term.days == 365


@pytest.mark.parametrize("end", [date(2026, 12, 1), date(2026, 11, 30)])
def test_a_period_ends_after_it_starts(end: date) -> None:
    with pytest.raises(ValueError, match="must end after it starts"):
        Period(date(2026, 12, 1), end)


@given(periods(), periods())
def test_the_days_two_periods_share_are_in_both_and_in_either_order(a: Period, b: Period) -> None:
    shared = a.overlap(b)
    assert shared == b.overlap(a)
    days = {a.start + timedelta(n) for n in range(a.days)}
    days &= {b.start + timedelta(n) for n in range(b.days)}
    assert (shared.days if shared else 0) == len(days)
    assert all(day in a and day in b for day in days)


def test_periods_that_only_touch_share_no_day() -> None:
    first = Period(date(2026, 1, 1), date(2026, 2, 1))
    assert first.overlap(Period(date(2026, 2, 1), date(2026, 3, 1))) is None


@given(DAYS)
def test_every_day_lies_in_its_own_quarter(day: date) -> None:
    quarter = Quarter.of(day)
    assert day in quarter.period
    assert quarter.period.start == quarter.first_day
    assert quarter.middle in quarter.period
    assert Quarter.parse(str(quarter)) == quarter


@given(DAYS, st.integers(-400, 400), st.integers(-400, 400))
def test_moving_quarters_adds_up(day: date, one: int, two: int) -> None:
    quarter = Quarter.of(day)
    assert quarter.shifted(one).shifted(two) == quarter.shifted(one + two)
    assert quarter.shifted(4) == Quarter(quarter.year + 1, quarter.number)
    assert quarter.period.end == quarter.shifted(1).first_day


def test_the_quarters_of_a_year_are_the_calendars() -> None:
    """Common use, from memory: January to March is the first."""
    starts = [Quarter(2026, n).first_day for n in (1, 2, 3, 4)]
    assert [(s.month, s.day) for s in starts] == [(1, 1), (4, 1), (7, 1), (10, 1)]
    middles = [Quarter(2026, n).middle for n in (1, 2, 3, 4)]
    assert [(m.month, m.day) for m in middles] == [(2, 15), (5, 15), (8, 15), (11, 15)]


@pytest.mark.parametrize("text", [" 2025q4 ", "2025Q4"])
def test_a_quarter_is_read_as_it_is_written(text: str) -> None:
    assert Quarter.parse(text) == Quarter(2025, 4)


@pytest.mark.parametrize("text", ["", "2025", "2025Q5", "2025Q0", "Q4", "25Q", "2025-Q4", "Q42025"])
def test_what_names_no_quarter_is_refused(text: str) -> None:
    with pytest.raises(ValueError, match="is not a quarter"):
        Quarter.parse(text)


@pytest.mark.parametrize(
    ("day", "months", "moved"),
    [
        (date(2026, 1, 31), 1, date(2026, 2, 28)),
        (date(2028, 1, 31), 1, date(2028, 2, 29)),
        (date(2026, 3, 31), -1, date(2026, 2, 28)),
        (date(2026, 11, 30), 3, date(2027, 2, 28)),
        (date(2026, 12, 15), 1, date(2027, 1, 15)),
        (date(2026, 1, 15), -1, date(2025, 12, 15)),
        (date(2026, 5, 31), 0, date(2026, 5, 31)),
    ],
)
def test_a_month_without_such_a_day_ends_on_its_last(day: date, months: int, moved: date) -> None:
    assert add_months(day, months) == moved


@given(NEAR, st.integers(-600, 600))
def test_moving_months_lands_in_the_month_counted(day: date, months: int) -> None:
    moved = add_months(day, months)
    assert (moved.year * 12 + moved.month) - (day.year * 12 + day.month) == months
    last = calendar.monthrange(moved.year, moved.month)[1]
    assert moved.day == min(day.day, last)


def test_a_leap_day_becomes_the_28th_where_it_must() -> None:
    assert add_years(date(2024, 2, 29), 1) == date(2025, 2, 28)
    assert add_years(date(2024, 2, 29), 4) == date(2028, 2, 29)
    assert add_years(date(2024, 2, 29), -24) == date(2000, 2, 29)


@given(DAYS, st.integers(0, 30))
def test_whole_years_are_counted_back(day: date, years: int) -> None:
    anniversary = add_years(day, years)
    assert years_between(day, anniversary) == years
    if years:
        assert years_between(day, anniversary - timedelta(days=1)) == years - 1


@given(DAYS, DAYS)
def test_years_counted_backwards_are_negative(one: date, other: date) -> None:
    assert years_between(one, other) == -years_between(other, one)


# Public holidays on which offices are closed, worked out for 2026 from the rules of each law
# (Good Friday is 3 April 2026, from memory):
# ON  Employment Standards Act, 2000, subsection 1 (1), "public holiday": nine days
# QC  Act respecting labour standards (CQLR c. N-1.1), section 60, as the CNESST publishes it, with
#     Good Friday rather than Easter Monday; National Holiday Act (CQLR c. F-1.1), section 2
# BC  Employment Standards Act: ten days, and 30 September since 2023; the list from memory
# NU  9 July: Government of Nunavut, public service announcement of 16 June 2020; the rest of the
#     list from memory
# AB  Employment Standards Code, general holidays, from memory
ON_2026 = "01-01 02-16 04-03 05-18 07-01 09-07 10-12 12-25 12-26"
QC_2026 = "01-01 04-03 05-18 06-24 07-01 09-07 10-12 12-25"
BC_2026 = "01-01 02-16 04-03 05-18 07-01 08-03 09-07 09-30 10-12 11-11 12-25"
AB_2026 = "01-01 02-16 04-03 05-18 07-01 09-07 10-12 11-11 12-25"
NU_2026 = "01-01 04-03 05-18 07-01 07-09 08-03 09-07 09-30 10-12 11-11 12-25"
PUBLISHED = {"ON": ON_2026, "QC": QC_2026, "BC": BC_2026, "AB": AB_2026, "NU": NU_2026}


@pytest.mark.parametrize("province", PUBLISHED)
def test_offices_are_closed_on_weekends_and_the_holidays_that_the_law_names(province: str) -> None:
    year = [date(2026, 1, 1) + timedelta(days=n) for n in range(365)]
    closed = {day for day in year if not is_business_day(day, province)}
    named = {date.fromisoformat(f"2026-{day}") for day in PUBLISHED[province].split()}
    weekends = {day for day in year if day.weekday() >= 5}
    # what falls on a weekend is made good on a working day, which the law leaves to agreement
    made_good = {
        "ON": {date(2026, 12, 28)},  # 26 December 2026 is a Saturday
    }.get(province, set())
    assert closed == named | weekends | made_good


def test_a_holiday_of_one_province_is_a_working_day_in_another() -> None:
    national_holiday = date(2027, 6, 24)  # Quebec alone: National Holiday Act
    assert not is_business_day(national_holiday, "QC")
    assert is_business_day(national_holiday, "ON")
    family_day = date(2027, 2, 15)  # third Monday of February; not in Quebec
    assert not is_business_day(family_day, "ON")
    assert is_business_day(family_day, "QC")


def test_in_quebec_the_first_of_july_on_a_sunday_is_kept_on_the_second() -> None:
    """Act respecting labour standards, CQLR c. N-1.1, s. 60; 1 July 2029 is a Sunday."""
    assert not is_business_day(date(2029, 7, 2), "QC")
    assert is_business_day(date(2029, 7, 3), "QC")


def test_in_quebec_the_national_holiday_on_a_sunday_is_kept_on_the_25th() -> None:
    """National Holiday Act, CQLR c. F-1.1, s. 2; 24 June 2029 is a Sunday."""
    assert not is_business_day(date(2029, 6, 25), "QC")


@pytest.mark.parametrize("province", PROVINCES)
def test_every_province_and_territory_keeps_the_days_common_to_all(province: str) -> None:
    """New Year's Day, Good Friday, Canada Day, Labour Day and Christmas: in the law of each."""
    for day in ("2026-01-01", "2026-04-03", "2026-07-01", "2026-09-07", "2026-12-25"):
        assert not is_business_day(date.fromisoformat(day), province)
    assert is_business_day(date(2026, 11, 25), province)


def test_a_province_that_does_not_exist_is_refused() -> None:
    with pytest.raises(NotImplementedError):
        is_business_day(date(2026, 11, 25), "XX")


@given(NEAR, ANYWHERE)
def test_the_next_and_the_previous_business_day_have_none_between(day: date, where: str) -> None:
    later, earlier = next_business_day(day, where), previous_business_day(day, where)
    assert earlier <= day <= later
    assert is_business_day(later, where)
    assert is_business_day(earlier, where)
    span = (earlier + timedelta(days=n) for n in range(1, (later - earlier).days))
    assert not any(is_business_day(between, where) for between in span)
    assert (earlier == day == later) == is_business_day(day, where)


@pytest.mark.parametrize(
    ("roll", "day", "becomes"),
    [
        # the money markets' conventions (following, preceding, modified following), from memory
        ("forwards", date(2026, 10, 31), date(2026, 11, 2)),  # a Saturday at the month's end
        ("backwards", date(2026, 10, 31), date(2026, 10, 30)),
        ("modified-following", date(2026, 10, 31), date(2026, 10, 30)),
        ("modified-following", date(2026, 10, 24), date(2026, 10, 26)),
        ("forwards", date(2026, 12, 25), date(2026, 12, 29)),  # Ontario: Boxing Day kept Monday
        ("backwards", date(2026, 12, 28), date(2026, 12, 24)),
        ("forwards", date(2026, 11, 25), date(2026, 11, 25)),  # an ordinary Wednesday stays
    ],
)
def test_due_days_roll_to_business_days(roll: Roll, day: date, becomes: date) -> None:
    assert rolled(day, "ON", roll) == becomes


@given(NEAR, ANYWHERE)
def test_a_modified_roll_never_leaves_the_month(day: date, where: str) -> None:
    moved = rolled(day, where, "modified-following")
    assert moved.month == day.month
    assert is_business_day(moved, where)


@given(NEAR, st.integers(0, 120), st.integers(0, 120), ANYWHERE)
def test_business_days_add_up_over_a_day_between(
    day: date, first: int, second: int, where: str
) -> None:
    middle = day + timedelta(days=first)
    end = middle + timedelta(days=second)
    parts = business_days_between(day, middle, where) + business_days_between(middle, end, where)
    assert business_days_between(day, end, where) == parts


def test_business_days_are_counted_with_the_first_day_and_without_the_last() -> None:
    monday = date(2026, 11, 23)
    assert business_days_between(monday, monday + timedelta(days=7), "ON") == 5
    assert business_days_between(monday, monday + timedelta(days=4), "ON") == 4
    assert business_days_between(monday, monday, "ON") == 0
    assert business_days_between(date(2026, 12, 21), date(2027, 1, 1), "ON") == 7
