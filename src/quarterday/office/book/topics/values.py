"""How far sums insured stayed behind building costs: the figures of ``quarterday shortfall``."""

from __future__ import annotations

from collections.abc import Iterator

from quarterday.core.book.adds import CURRENCY
from quarterday.core.book.sums import Sums, Values, cents, dollars
from quarterday.core.file.layout import Cell
from quarterday.core.values.book import Book, Line
from quarterday.office import shortfall
from quarterday.office.book.topics.topic import (
    Bar,
    Columns,
    Keys,
    Teller,
    Topic,
    chart,
    money,
    ratio,
    table,
)

COLUMNS: Columns = (
    ("province", "choice"), ("name", "text"), ("buildings", "integer"), ("behind", "integer"),
    ("increases", "ratio"), ("costs", "ratio"), ("lag", "ratio"), ("gap", "amount"),
    ("short", "amount"),
)  # fmt: skip
KEYS: Keys = (("insured", "grown"), ("short", "gap"))


def as_book(sums: Sums) -> Book:
    """Return the sums as the book of values that the command for shortfalls tells of."""
    book = Book(CURRENCY, no_renewal=sum(row.no_renewal for row in sums.files.values()))
    for province, row in sums.values.items():
        book.left_out += row.left_out
        if row.buildings:
            book.add(province, _line(row))
    return book


def _line(row: Values) -> Line:
    amounts = map(dollars, (row.valued, row.grown, row.cost, row.short))
    return Line(row.buildings, row.behind, *amounts)


def topic(tell: Teller, sums: Sums) -> Topic:
    """Return the shortfall by province."""
    book = as_book(sums)
    message = tell.speech.say(shortfall.sentence(book))
    rows = shortfall.ordered(book)
    made = table(tell, "values", COLUMNS, (_row(tell, *row) for row in rows))
    bars = list(_bars(tell, rows))
    return Topic(
        "values", made.title, message, chart(tell, "values", message, KEYS, bars), made,
        ("name", "buildings", "behind", "gap", "short"), tuple(_notes(tell, book)),
    )  # fmt: skip


def _row(tell: Teller, province: str, line: Line) -> tuple[Cell, ...]:
    gap, short = dollars(cents(line.gap)), dollars(cents(line.short))
    rates = (ratio(cents(part), cents(whole)) for part, whole in (
        (line.grown - line.valued, line.valued), (line.cost - line.valued, line.valued),
        (line.gap, line.cost)))  # fmt: skip
    name = tell.name("province", province)
    return (province, name, line.buildings, line.behind, *rates, gap, short)


def _bars(tell: Teller, rows: list[tuple[str, Line]]) -> Iterator[Bar]:
    for province, line in rows:
        gap = cents(line.gap)
        which = "behind" if gap > 0 else "ahead"
        note = tell.say("book-values-bar", case=which, gap=money(abs(gap)))
        yield tell.name("province", province), note, (min(cents(line.grown), cents(line.cost)), gap)


def _notes(tell: Teller, book: Book) -> Iterator[str]:
    yield tell.say("book-values-short", short=book.money(book.total.short).rounded())
    yield tell.say("shortfall-note")
    if book.left_out:
        yield tell.say("shortfall-left-out", n=book.left_out)
