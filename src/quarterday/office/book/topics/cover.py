"""Which coverages the organisations need, and which their terms give."""

from __future__ import annotations

from quarterday.core.book.sums import Cover, Sums
from quarterday.core.file.layout import Cell
from quarterday.office.book.topics.topic import Columns, Keys, Teller, Topic, chart, ratio, table

COLUMNS: Columns = (
    ("coverage", "choice"), ("name", "text"), ("needed", "integer"), ("needed_held", "integer"),
    ("missing", "integer"), ("hurting", "integer"), ("take_up", "ratio"), ("held", "integer"),
    ("unknown", "integer"),
)  # fmt: skip
KEYS: Keys = (("insured", "held"), ("paid", "missing"), ("short", "hurting"))


def topic(tell: Teller, sums: Sums) -> Topic:
    """Return the take-up of each coverage by those who need it: what could really hurt first."""
    rows = sorted(
        sums.cover.items(), key=lambda item: (-item[1].hurting, -_missing(item[1]), item[0])
    )
    made = table(tell, "cover", COLUMNS, (_row(tell, id, row) for id, row in rows))
    message = _message(tell, rows)
    bars = [
        (tell.name("coverage", id), _note(tell, row),
         (row.needed_held, _missing(row) - row.hurting, row.hurting))
        for id, row in rows if _missing(row)
    ]  # fmt: skip
    return Topic(
        "cover", made.title, message, chart(tell, "cover", message, KEYS, bars), made,
        ("name", "needed", "missing", "hurting", "take_up"), (tell.say("book-cover-note"),),
    )  # fmt: skip


def _missing(row: Cover) -> int:
    return row.needed - row.needed_held


def _message(tell: Teller, rows: list[tuple[str, Cover]]) -> str:
    missing = sum(_missing(row) for _, row in rows)
    hurting = sum(row.hurting for _, row in rows)
    if not rows or not missing:
        return tell.say("book-cover-none")
    id, row = rows[0]
    return tell.say("book-cover-message", missing=missing, hurting=hurting, needed=row.needed,
                    coverage=tell.name("coverage", id), n=row.hurting)  # fmt: skip


def _note(tell: Teller, row: Cover) -> str:
    return tell.say("book-cover-bar", held=row.needed_held, needed=row.needed)


def _row(tell: Teller, id: str, row: Cover) -> tuple[Cell, ...]:
    share = ratio(row.needed_held, row.needed)
    return (id, tell.name("coverage", id), row.needed, row.needed_held, _missing(row), row.hurting,
            share, row.held, row.unknown)  # fmt: skip
