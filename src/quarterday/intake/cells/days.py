"""Dates as people and spreadsheets write them, each column read in one order of day and month."""

from __future__ import annotations

import re
from collections.abc import Iterable
from datetime import date, datetime, time, timedelta
from functools import lru_cache
from typing import Literal

from quarterday.core.file.records.base import LATEST
from quarterday.intake.cells.base import (
    Readings,
    Said,
    Value,
    bad,
    is_unknown,
    text_of,
)
from quarterday.intake.parse import Raw
from quarterday.intake.vocabulary import months, normal

Order = Literal["dmy", "mdy", "ymd"]
_ORDERS: tuple[Order, ...] = ("dmy", "mdy", "ymd")
_EPOCH = date(1899, 12, 30)  # day 0 of spreadsheets that count 1900 as a leap year
_FIRST_SERIAL, _LAST_SERIAL = 20_000, 73_050  # 1954 to 2099: what a bare number can mean as a day
_ZERO_YEARS = 1900
_LONG_YEAR = 4
_CENTURY_TURNS = 60  # 00 to 59 are this century
_ISO = re.compile(r"(\d{4})[-/. ](\d{1,2})[-/. ](\d{1,2})")
_RUN_TOGETHER = re.compile(r"(\d{4})(\d{2})(\d{2})")
_THREE = re.compile(r"(\d{1,2})([-/. ])(\d{1,2})\2(\d{4}|\d{2})")
_DAY_NUMBER = re.compile(r"\d{5}")
_TIME = re.compile(r"[T ]\d{1,2}:\d{2}(?::\d{2}(?:\.\d+)?)?(?:Z|[+-]\d{2}:\d{2})?$")
_SMALL_WORDS = {"le", "the", "of", "de"}
_DAY_NAMES = frozenset(
    {"monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"}
    | {"mon", "tue", "tues", "wed", "thu", "thur", "thurs", "fri", "sat", "sun"}
    | {"lundi", "mardi", "mercredi", "jeudi", "vendredi", "samedi", "dimanche"}
)
_ORDINAL = re.compile(r"(\d{1,2})(?:st|nd|rd|th|er|e)")


def _year(text: str) -> int:
    """Return a year of four digits, or of two: 00 to 59 are this century, the rest the last."""
    if len(text) == _LONG_YEAR:
        return int(text)
    return int(text) + (2000 if int(text) < _CENTURY_TURNS else 1900)


def _day(year: int, month: int, day: int) -> date | None:
    try:
        return date(year, month, day)
    except ValueError:
        return None


def _in_order(text: str, order: Order) -> date | None:
    """Return the date that three numbers mean in one order of day, month and year."""
    match = _THREE.fullmatch(text)
    if match is None:
        return None
    a, mark, b, c = match.groups()
    if order == "dmy":
        return _day(_year(c), int(b), int(a))
    if order == "mdy":
        return _day(_year(c), int(a), int(b))
    is_short = mark == "-" and len(a) != 1 and len(c) != _LONG_YEAR
    return _day(_year(a), int(b), int(c)) if is_short else None


def order_of(texts: Iterable[str]) -> Order | None:
    """Return the one order in which every date of a column is a date; None when several are."""
    dates = [text for text in (_without_time(t) for t in texts) if _THREE.fullmatch(text)]
    fitting = [order for order in _ORDERS if all(_in_order(text, order) for text in dates)]
    return fitting[0] if dates and len(fitting) == 1 else None


@lru_cache(maxsize=1024)
def _without_time(text: str) -> str:
    return _TIME.sub("", text.strip())


def _numbers(text: str, order: Order | None) -> date | None:
    """Return a date written in numbers; BadCell when it has two meanings, None when it is none."""
    for pattern in (_ISO, _RUN_TOGETHER):
        match = pattern.fullmatch(text)
        if match:
            return _day(*map(int, match.groups()))
    if order is not None:
        return _in_order(text, order)
    meanings = sorted({d for d in (_in_order(text, o) for o in _ORDERS) if d})
    if len(meanings) > 1:
        raise bad("two-dates", first=meanings[0], second=meanings[-1])
    return meanings[0] if meanings else None


def _tokens(text: str) -> list[str]:
    words = normal(text).split()
    kept = (word for word in words if word not in _DAY_NAMES | _SMALL_WORDS)
    return [_ORDINAL.sub(r"\1", word) if _ORDINAL.fullmatch(word) else word for word in kept]


def _named_month(text: str) -> tuple[date | None, bool]:
    """Return a date with the month's name, and whether its day was not given."""
    tokens = _tokens(text)
    names = [n for n, token in enumerate(tokens) if token in months()]
    if len(names) != 1:
        return None, False
    month = months()[tokens[names[0]]]
    rest = [token for n, token in enumerate(tokens) if n != names[0]]
    if not all(token.isdecimal() and len(token) in {1, 2, 4} for token in rest):
        return None, False
    match rest:
        case [year] if len(year) > 1:
            return _day(_year(year), month, 1), True
        case [year, day] if len(year) == _LONG_YEAR:
            return _day(int(year), month, int(day)), False
        case [day, year]:
            return _day(_year(year), month, int(day)), False
        case _:
            return None, False


class DayReader:
    """Reads the cells of one column of dates, in the order of day and month they all agree on."""

    def __init__(self, raws: Iterable[Raw], readings: Readings) -> None:
        self._order = order_of({cell for cell in raws if isinstance(cell, str)})
        self._readings = readings

    def __call__(self, raw: Raw) -> Value:
        """Return the day a cell holds; BadCell when it holds none, or could be two."""
        if isinstance(raw, date):
            return _sane(raw.date() if isinstance(raw, datetime) else raw)
        if isinstance(raw, time | timedelta):
            raise bad("zero-date")
        if isinstance(raw, bool):
            raise bad("not-a-date")
        if isinstance(raw, int | float):
            return self._of_number(raw)
        text = text_of(raw)
        if not text:
            return Said.BLANK
        return Said.UNKNOWN if is_unknown(text) else _sane(self._of_text(_without_time(text)))

    def _of_number(self, raw: float) -> date:
        if _FIRST_SERIAL <= raw <= _LAST_SERIAL:
            self._readings.add("day-number")
            return _EPOCH + timedelta(days=int(raw))
        written = _RUN_TOGETHER.fullmatch(f"{raw:.0f}")
        day = _day(*map(int, written.groups())) if written else None
        if day is None:
            raise bad("zero-date" if 0 <= raw < 2 * 366 else "not-a-date")
        return _sane(day)

    def _of_text(self, text: str) -> date:
        if _DAY_NUMBER.fullmatch(text):
            return self._of_number(float(text))
        day = _numbers(text, self._order)
        if day is None:
            day, first_of_month = _named_month(text)
            if first_of_month:
                self._readings.add("first-of-month")
        if day is None:
            raise bad("not-a-date")
        return day


def _sane(day: date) -> date:
    if day.year <= _ZERO_YEARS:
        raise bad("zero-date")
    if day >= LATEST:
        raise bad("far-date", year=LATEST.year)
    return day


class MonthDayReader:
    """Reads a day of the year: 12-31, 31 décembre, Dec 31, or a date a spreadsheet made of it."""

    def __call__(self, raw: Raw) -> Value:
        """Return month and day as ``12-31``; BadCell when the cell holds no such day."""
        if isinstance(raw, date):
            return f"{raw:%m-%d}"
        if isinstance(raw, int | float):
            raise bad("not-a-month-day")
        text = text_of(raw)
        if not text:
            return Said.BLANK
        if is_unknown(text):
            return Said.UNKNOWN
        found = _month_day(text)
        if found is None:
            raise bad("not-a-month-day")
        return found


def _month_day(text: str) -> str | None:
    tokens = _tokens(text)
    named = [months()[token] for token in tokens if token in months()]
    numbers = [int(token) for token in tokens if token.isdecimal()]
    match named, numbers:
        case ([month], [day]) | ([], [month, day]):
            return _checked(month, day)
        case _:
            return None


def _checked(month: int, day: int) -> str | None:
    found = _day(2000, month, day)
    return f"{found:%m-%d}" if found else None
