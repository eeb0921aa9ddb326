"""The work of the coming weeks: open steps by the week in which they are due, and by whom."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, timedelta

from quarterday.core.book.adds import LATE, LATER, WEEKS
from quarterday.core.book.sums import Sums, Work
from quarterday.office.book.topics.topic import Bar, Columns, Keys, Teller, Topic, chart, table

COLUMNS: Columns = (
    ("week", "choice"), ("when", "text"), ("us", "integer"), ("leaders", "integer"),
    ("insurer", "integer"), ("steps", "integer"),
)  # fmt: skip
KEYS: Keys = (("borne", "us"), ("paid", "leaders"), ("short", "insurer"))


def weeks(as_of: date) -> list[str]:
    """Return the keys of the weeks that are told, in order: late, twelve weeks, later."""
    monday = as_of - timedelta(days=as_of.weekday())
    days = (monday + timedelta(weeks=n) for n in range(WEEKS))
    return [LATE, *(day.isoformat() for day in days), LATER]


def topic(tell: Teller, sums: Sums) -> Topic:
    """Return what is due when, and who has to do it."""
    rows = [(week, sums.work.get(week, Work())) for week in weeks(tell.as_of)]
    message = _message(tell, dict(rows))
    made = table(tell, "work", COLUMNS, (_row(tell, week, row) for week, row in rows))
    bars = list(_bars(tell, rows))
    return Topic(
        "work", made.title, message, chart(tell, "work", message, KEYS, bars), made,
        ("when", "us", "leaders", "insurer", "steps"),
    )  # fmt: skip


def _when(tell: Teller, week: str) -> str:
    if week in {LATE, LATER}:
        return tell.say(f"book-week-{week}")
    return tell.day(date.fromisoformat(week))


def _row(tell: Teller, week: str, row: Work) -> tuple[str | int, ...]:
    return week, _when(tell, week), *row, sum(row)


def _bars(tell: Teller, rows: list[tuple[str, Work]]) -> Iterator[Bar]:
    for week, row in rows:
        if week != LATER:
            yield _when(tell, week), tell.count(sum(row)), row


def _message(tell: Teller, rows: dict[str, Work]) -> str:
    weeks = {week: sum(row) for week, row in rows.items() if week not in {LATE, LATER}}
    most = max(weeks, key=lambda week: weeks[week])
    late, soon = sum(rows[LATE]), sum(list(weeks.values())[:2])
    case = "some" if late or any(weeks.values()) else "none"
    return tell.say("book-work-message", case=case, late=late, soon=soon, most=weeks[most],
                    week=tell.day(date.fromisoformat(most)))  # fmt: skip
