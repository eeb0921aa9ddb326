"""Dates as people and spreadsheets write them.

Month names come from Babel's CLDR data for en_CA and fr_CA; spreadsheet day numbers are checked
with openpyxl's own conversion, made from ECMA-376 Part 1, 18.17.4.1 (as openpyxl documents it).
"""

from __future__ import annotations

from datetime import UTC, date, datetime, time, timedelta

import pytest
from babel.dates import format_date
from hypothesis import given
from hypothesis import strategies as st
from openpyxl.utils.datetime import to_excel

from quarterday.intake.cells.base import BadCell, Readings, Said, Value
from quarterday.intake.cells.days import DayReader, MonthDayReader
from quarterday.intake.parse import CellError, Raw

DAYS = st.dates(date(1960, 1, 1), date(2059, 12, 31))


def read(raw: Raw, *others: Raw) -> Value:
    return DayReader((raw, *others), Readings())(raw)


def refusal(raw: Raw, *others: Raw) -> str:
    with pytest.raises(BadCell) as caught:
        read(raw, *others)
    return caught.value.what.id


@pytest.mark.parametrize(
    ("raw", "day"),
    [
        (date(2024, 1, 31), date(2024, 1, 31)),
        (datetime(2024, 1, 31, 14, 5, tzinfo=UTC), date(2024, 1, 31)),
        ("2024-01-31", date(2024, 1, 31)),
        ("2024/1/31", date(2024, 1, 31)),
        ("2024.01.31", date(2024, 1, 31)),
        ("20240131", date(2024, 1, 31)),
        (20240131.0, date(2024, 1, 31)),
        ("2024-01-31T00:00:00", date(2024, 1, 31)),
        ("2024-01-31 00:00:00", date(2024, 1, 31)),
        ("31/01/2024", date(2024, 1, 31)),
        ("01/31/2024", date(2024, 1, 31)),
        ("31/01/24", date(2024, 1, 31)),
        ("05/05/2024", date(2024, 5, 5)),
        ("Jan-24", date(2024, 1, 1)),
        ("janv.-24", date(2024, 1, 1)),
        ("déc-99", date(1999, 12, 1)),
        ("August 2021", date(2021, 8, 1)),
        ("31-Jan-2024", date(2024, 1, 31)),
        ("31 janv. 2024", date(2024, 1, 31)),
        ("1er mars 2021", date(2021, 3, 1)),
        ("le 3 février 2025", date(2025, 2, 3)),
        ("Friday, January 3, 2025", date(2025, 1, 3)),
        ("March 1st, 2021", date(2021, 3, 1)),
        ("2021 août 9", date(2021, 8, 9)),
    ],
)
def test_a_day_is_read_however_it_is_written(raw: Raw, day: date) -> None:
    assert read(raw) == day


@given(DAYS, st.sampled_from(["en", "fr"]), st.sampled_from(["long", "medium", "full"]))
def test_what_babel_writes_is_read_back(day: date, language: str, form: str) -> None:
    assert read(format_date(day, form, locale=f"{language}_CA")) == day


@given(DAYS)
def test_a_spreadsheets_day_number_is_its_day(day: date) -> None:
    number = int(to_excel(day))  # type: ignore[no-untyped-call]
    assert read(float(number)) == day
    assert read(str(number)) == day


@given(st.lists(DAYS, min_size=3, max_size=20))
def test_a_column_is_read_in_the_one_order_that_fits_all_its_dates(days: list[date]) -> None:
    """One date beyond the twelfth settles the whole column."""
    for order, clear in (("%d/%m/%Y", "31/12/2024"), ("%m/%d/%Y", "12/31/2024")):
        texts = [clear, *(day.strftime(order) for day in days)]
        reader = DayReader(texts, Readings())
        assert [reader(text) for text in texts[1:]] == days


def test_a_date_with_two_meanings_is_refused_with_both() -> None:
    with pytest.raises(BadCell) as caught:
        read("03/04/2024")
    assert caught.value.what.id == "intake-two-dates"
    assert dict(caught.value.what.args) == {"first": date(2024, 3, 4), "second": date(2024, 4, 3)}


def test_a_column_in_both_orders_settles_nothing() -> None:
    others = ("31/12/2024", "12/31/2024")
    assert refusal("03/04/2024", *others) == "intake-two-dates"
    assert read("31/12/2024", *others) == date(2024, 12, 31)


def test_a_short_year_first_is_one_of_the_meanings() -> None:
    assert refusal("24-01-31") == "intake-two-dates"
    assert refusal("31-01-24") == "intake-two-dates"
    assert read("99-01-31") == date(1999, 1, 31)


@pytest.mark.parametrize(
    "zero", [time(0, 0), timedelta(0), 0.0, 1.0, 366.0, date(1899, 12, 31), date(1900, 2, 28)]
)
def test_the_day_that_a_spreadsheet_shows_for_zero_is_refused(zero: Raw) -> None:
    assert refusal(zero) == "intake-zero-date"


@pytest.mark.parametrize(
    "text", ["31/02/2024", "2024-13-01", "2019", "soon", "Q3 2024", "31 of", 2019.0]
)
def test_what_is_no_day_is_refused(text: Raw) -> None:
    assert refusal(text) == "intake-not-a-date"


def test_a_day_in_the_far_future_is_refused() -> None:
    assert refusal("2924-01-31") == "intake-far-date"


def test_an_error_cell_is_refused_and_a_blank_says_nothing() -> None:
    assert refusal(CellError("#VALUE!")) == "intake-error-cell"
    assert read("") is Said.BLANK
    assert read("n/d") is Said.UNKNOWN
    assert refusal(True) == "intake-not-a-date"


def test_a_month_without_a_day_and_a_day_number_are_told() -> None:
    seen = Readings()
    reader = DayReader((), seen)
    reader("Jan-24")
    reader(45322.0)
    assert {way.id for way in seen.ways} == {"intake-read-first-of-month", "intake-read-day-number"}


@pytest.mark.parametrize(
    ("raw", "day"),
    [
        ("12-31", "12-31"),
        ("31 décembre", "12-31"),
        ("Dec 31", "12-31"),
        ("Sept 30", "09-30"),
        (date(2026, 12, 31), "12-31"),
        ("02-29", "02-29"),
    ],
)
def test_a_day_of_the_year_is_read(raw: Raw, day: str) -> None:
    assert MonthDayReader()(raw) == day


@pytest.mark.parametrize("raw", ["31-12-2024", "13-01", "December", 12.5])
def test_what_is_no_day_of_the_year_is_refused(raw: Raw) -> None:
    with pytest.raises(BadCell):
        MonthDayReader()(raw)


def test_a_day_of_the_year_may_be_blank_or_unknown() -> None:
    assert MonthDayReader()("") is Said.BLANK
    assert MonthDayReader()("n/d") is Said.UNKNOWN
