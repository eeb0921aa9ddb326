"""Half-open periods, quarters, whole years back, and business days of a province."""

from __future__ import annotations

import calendar
from dataclasses import dataclass
from datetime import date, timedelta
from functools import lru_cache
from typing import Literal

import holidays

SATURDAY = 5  # as date.weekday counts
Roll = Literal["forwards", "backwards", "modified-following"]


@dataclass(frozen=True, slots=True, order=True)
class Period:
    """A span of days from ``start`` (included) to ``end`` (not included)."""

    start: date
    end: date

    def __post_init__(self) -> None:
        if self.end <= self.start:
            raise ValueError(f"A period must end after it starts: {self.start} to {self.end}.")

    @property
    def days(self) -> int:
        """The number of days in the period."""
        return (self.end - self.start).days

    def __contains__(self, day: date) -> bool:
        return self.start <= day < self.end

    def overlap(self, other: Period) -> Period | None:
        """Return the days both periods share, or None when there are none."""
        start, end = max(self.start, other.start), min(self.end, other.end)
        return Period(start, end) if start < end else None


@dataclass(frozen=True, slots=True, order=True)
class Quarter:
    """A calendar quarter, written ``2025Q4``."""

    year: int
    number: int

    @classmethod
    def parse(cls, text: str) -> Quarter:
        """Return the quarter that ``text`` names (``2025Q4``); ValueError otherwise."""
        year, mark, number = text.strip().upper().partition("Q")
        if not mark or not year.isdigit() or number not in {"1", "2", "3", "4"}:
            raise ValueError(f"{text!r} is not a quarter; write it like 2025Q4.")
        return cls(int(year), int(number))

    @classmethod
    def of(cls, day: date) -> Quarter:
        """Return the quarter that ``day`` falls in."""
        return cls(day.year, (day.month + 2) // 3)

    def __str__(self) -> str:
        return f"{self.year}Q{self.number}"

    @property
    def period(self) -> Period:
        """The quarter's days."""
        return Period(date(self.year, 3 * self.number - 2, 1), self.shifted(1).first_day)

    @property
    def first_day(self) -> date:
        """The first day of the quarter."""
        return date(self.year, 3 * self.number - 2, 1)

    @property
    def middle(self) -> date:
        """The fifteenth of the quarter's middle month, for which a quarterly figure stands."""
        return date(self.year, 3 * self.number - 1, 15)

    def shifted(self, quarters: int) -> Quarter:
        """Return the quarter ``quarters`` later (earlier when negative)."""
        year, index = divmod(self.year * 4 + self.number - 1 + quarters, 4)
        return Quarter(year, index + 1)


def add_months(day: date, months: int) -> date:
    """Return ``day`` moved by whole months; the last day of the month when it has no such day."""
    year, month = divmod(day.year * 12 + day.month - 1 + months, 12)
    return date(year, month + 1, min(day.day, calendar.monthrange(year, month + 1)[1]))


def add_years(day: date, years: int) -> date:
    """Return ``day`` moved by whole years; 29 February becomes 28 where it must."""
    return add_months(day, 12 * years)


def years_between(start: date, end: date) -> int:
    """Return the whole years completed from ``start`` to ``end`` (negative when reversed)."""
    if end < start:
        return -years_between(end, start)
    years = end.year - start.year
    return years if add_years(start, years) <= end else years - 1


@lru_cache(maxsize=128)
def _holidays(province: str) -> holidays.HolidayBase:
    return holidays.country_holidays("CA", subdiv=province)


def is_business_day(day: date, province: str) -> bool:
    """Tell whether offices in ``province`` (ISO 3166-2 letters, like ON) are open on ``day``."""
    return day.weekday() < SATURDAY and day not in _holidays(province)


def next_business_day(day: date, province: str) -> date:
    """Return the first business day on or after ``day``."""
    while not is_business_day(day, province):
        day += timedelta(days=1)
    return day


def previous_business_day(day: date, province: str) -> date:
    """Return the last business day on or before ``day``."""
    while not is_business_day(day, province):
        day -= timedelta(days=1)
    return day


def rolled(day: date, province: str, roll: Roll) -> date:
    """Return the business day that ``day`` becomes under the convention ``roll``."""
    if roll == "backwards":
        return previous_business_day(day, province)
    later = next_business_day(day, province)
    if roll == "modified-following" and later.month != day.month:
        return previous_business_day(day, province)
    return later


def business_days_between(start: date, end: date, province: str) -> int:
    """Return the number of business days from ``start`` (included) to ``end`` (not included)."""
    days = (start + timedelta(days=n) for n in range((end - start).days))
    return sum(is_business_day(day, province) for day in days)
