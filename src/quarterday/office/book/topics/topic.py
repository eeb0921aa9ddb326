"""A topic of the book: what it says in a sentence, a picture, and a table."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from datetime import date
from decimal import Decimal

from quarterday.catalogue.formats import short_day
from quarterday.catalogue.speech import Speech
from quarterday.core.book.adds import CURRENCY
from quarterday.core.book.sums import Sums, dollars
from quarterday.core.file.layout import Cell, CellKind
from quarterday.core.money import Money
from quarterday.core.words import Arg, Rate, Term, Words, words
from quarterday.intake.tablefiles.table import Field, Table
from quarterday.papers.chart import Key, Stacked, Tone, stacked

MOST_BARS = 12  # in a picture; the table beside it has every row
Columns = Sequence[tuple[str, CellKind]]
Keys = Sequence[tuple[Tone, str]]
Bar = tuple[str, str, Sequence[int]]
YEAR = "year"  # a column of years: a number without a thousands separator
FOUR_PLACES = Decimal("0.0001")


@dataclass(frozen=True, slots=True)
class Topic:
    """What a page tells of one topic; ``shown`` are the columns of a narrow table."""

    id: str
    title: str
    message: str
    chart: Stacked | None
    table: Table
    shown: tuple[str, ...]
    notes: tuple[str, ...] = ()

    def fields(self) -> list[tuple[int, Field]]:
        """Return the columns that are shown, each with its place in a row."""
        found = enumerate(self.table.fields)
        return [(at, field) for at, field in found if field.id in self.shown]


@dataclass(frozen=True)
class Teller:
    """Who tells: in which voice, and as of which day."""

    speech: Speech
    as_of: date

    def say(self, id: str, **args: Arg | Words | tuple[Arg | Words, ...]) -> str:
        """Return a wording in the reader's language."""
        return self.speech.say(words(id, **args))

    def name(self, catalogue: str, id: str) -> str:
        """Return a catalogue's name for an id; the id where the catalogue has none."""
        reference = self.speech.reference
        known = {"coverage": reference.coverages, "cause": reference.causes,
                 "province": reference.provinces}.get(catalogue)  # fmt: skip
        return id if known is not None and id not in known else self.speech.say(Term(catalogue, id))

    def day(self, day: date) -> str:
        """Return a date as short as its language writes it."""
        return short_day(day, self.speech.language)

    def count(self, number: int) -> str:
        """Return a whole number in words."""
        return self.speech.number(number)

    def money(self, cents: int) -> str:
        """Return an amount, to the dollar."""
        return self.speech.money(Money(dollars(cents), CURRENCY), cents=False)

    def shown(self, cell: Cell, field: Field) -> str:
        """Return a cell of a table as people read it: amounts to the dollar, ratios in per cent."""
        match cell:
            case None:
                return "–"
            case Decimal() if field.kind == "ratio":
                return self.speech.rate(Rate(cell, 0))
            case Decimal():
                return self.speech.money(Money(cell, CURRENCY), cents=False)
            case int() if field.id != YEAR:
                return self.count(cell)
            case _:
                return str(cell)


def money(cents: int) -> Money:
    """Return whole cents as an amount that is told to the dollar."""
    return Money(dollars(cents), CURRENCY).rounded(Decimal(1))


def ratio(part: int, whole: int) -> Decimal | None:
    """Return a share with four decimals; None of nothing."""
    return (Decimal(part) / Decimal(whole)).quantize(FOUR_PLACES) if whole else None


def table(tell: Teller, id: str, columns: Columns, rows: Iterable[Sequence[Cell]]) -> Table:
    """Return a table with the wordings ``book-head-{column}`` as its headings.

    The column ``name`` names what the first column holds the id of.
    """
    fields = [Field(name, _heading(tell, name, columns[0][0]), kind) for name, kind in columns]
    return Table(id, tell.say(f"book-{id}"), fields, list(rows))


def _heading(tell: Teller, name: str, first: str) -> str:
    of = tell.say(f"book-head-{(first if name == 'name' else name).replace('_', '-')}")
    return tell.say("book-head-id", of=of) if name == first and name != YEAR else of


def chart(tell: Teller, id: str, message: str, keys: Keys, bars: Sequence[Bar]) -> Stacked | None:
    """Return bars in parts, each a label, a note and its parts; None when nothing would be seen.

    ``keys`` are the parts' tones, named by the wordings ``book-key-{part}``.
    """
    seen = [bar for bar in bars if any(bar[2])][:MOST_BARS]
    if not seen:
        return None
    title = tell.say(f"book-{id}-chart")
    told = "; ".join(tell.speech.named(label, note) for label, note, _ in seen)
    alt = tell.say("book-alternative", title=title, message=message, rows=told)
    named = [Key(tone, tell.say(f"book-key-{part}")) for tone, part in keys]
    parts = [(label, note, [Decimal(max(n, 0)) for n in amounts]) for label, note, amounts in seen]
    return stacked(title, alt, named, parts)


Tell = Callable[[Teller, Sums], Topic]
