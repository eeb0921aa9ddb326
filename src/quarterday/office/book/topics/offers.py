"""What insurers offered beside their terms, and what the organisations answered."""

from __future__ import annotations

from quarterday.core.book.adds import OTHER
from quarterday.core.book.sums import Offers, Sums, dollars, total
from quarterday.core.file.layout import Cell
from quarterday.office.book.topics.topic import Columns, Keys, Teller, Topic, chart, money, table

COLUMNS: Columns = (
    ("coverage", "choice"), ("name", "text"), ("offered", "integer"), ("taken", "integer"),
    ("left", "integer"), ("later", "integer"), ("asked", "integer"), ("unanswered", "integer"),
    ("price", "amount"), ("price_taken", "amount"), ("price_left", "amount"),
)  # fmt: skip
KEYS: Keys = (("insured", "taken"), ("borne", "left"), ("paid", "open"))


def topic(tell: Teller, sums: Sums) -> Topic:
    """Return what was offered, taken and declined, the most often offered first."""
    options = {id: row for id, row in sums.offers.items() if id != OTHER}
    rows = sorted(options.items(), key=lambda item: (-item[1].offered, item[0]))
    whole = total(Offers, options.values())
    message = tell.say(
        "book-offers-message", offered=whole.offered, taken=whole.taken, left=whole.left,
        open=_open(whole), price=money(whole.price_left),
    )  # fmt: skip
    made = table(tell, "offers", COLUMNS, (_row(tell, id, row) for id, row in [
        *rows, *((OTHER, row) for id, row in sums.offers.items() if id == OTHER)]))  # fmt: skip
    bars = [(tell.name("coverage", id), _note(tell, row), (row.taken, row.left, _open(row)))
            for id, row in rows]  # fmt: skip
    return Topic(
        "offers", made.title, message, chart(tell, "offers", message, KEYS, bars), made,
        ("name", "offered", "taken", "left", "unanswered", "price_left"),
        (tell.say("book-offers-note"),),
    )  # fmt: skip


def _open(row: Offers) -> int:
    return row.later + row.asked + row.unanswered


def _note(tell: Teller, row: Offers) -> str:
    return tell.say("book-offers-bar", offered=row.offered, taken=row.taken, left=row.left)


def _row(tell: Teller, id: str, row: Offers) -> tuple[Cell, ...]:
    name = tell.say("book-offers-other") if id == OTHER else tell.name("coverage", id)
    return (id, name, *row[:6], *map(dollars, row[6:]))
