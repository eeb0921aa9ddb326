"""The work on one account: its lines, its file, and what comes of them."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field
from functools import cached_property
from typing import Literal, TypeVar

from quarterday.core.file.entry import Origin, Place
from quarterday.core.file.fold import File
from quarterday.core.file.layout import SHEETS, Sheet
from quarterday.core.file.records import Record
from quarterday.intake.assemble import KEYS, PART_KEYS, require
from quarterday.intake.changes import Item, item_of
from quarterday.intake.faults import Fault
from quarterday.intake.older import questions
from quarterday.intake.table import Line

R = TypeVar("R", bound=Record)


@dataclass(frozen=True)
class Source:
    """The document that lines come from."""

    way: Literal["workbook", "csv"]
    document: str
    name: str

    @cached_property
    def origin(self) -> Origin:
        """The origin of what stands somewhere in the document."""
        return Origin(way=self.way, document=self.document, name=self.name)


@dataclass(slots=True)
class Work:
    """One account's lines by the layout's sheet, its file (None: new), and what comes of them.

    ``kinds`` are the kinds of record that the lines spoke of, once they are let go.
    """

    account: str
    file: File | None
    lines: Mapping[str, list[Line]]
    source: Source
    items: list[Item] = field(default_factory=list)
    faults: list[Fault] = field(default_factory=list)
    kinds: set[str] = field(default_factory=set)

    def all_lines(self) -> Iterator[Line]:
        """Yield every line of the account."""
        for lines in self.lines.values():
            yield from lines

    def good_lines(self, sheet: Sheet) -> list[Line]:
        """Return a sheet's lines that are not refused and say what must be said."""
        return [x for x in self.lines.get(sheet.name, ()) if not x.is_bad and says_all(x)]

    def held(self, record: type[R], key: str) -> R | None:
        """Return a record of the file, or None."""
        return self.file.get(record, key) if self.file else None

    def add(self, record: Record, places: Iterable[Place]) -> None:
        """Add a record: new, changed or unchanged, with what has to be asked about it."""
        old = self.held(type(record), record.key)
        item = item_of(self.account, old, record, self.source.origin, places)
        self.items.append(item)
        if self.file is not None and item.status != "unchanged":
            self.faults += questions(self.file, item, record)

    def let_go(self) -> None:
        """Forget the lines but for their faults, once worked out: a book has very many."""
        self.faults += [fault for line in self.all_lines() for fault in line.faults]
        self.kinds = {of[0].of.sheet.record.kind for of in self.lines.values() if of}
        self.lines = {}


def says_all(line: Line) -> bool:
    """Tell whether a line says what tells one thing of its sheet from another; refuse it if not.

    What else is required may stand on file already: the record's own check tells.
    """
    return require(line, _TELLING[line.of.sheet.name])


def _telling(sheet: Sheet) -> tuple[str, ...]:
    """Return the fields that tell one thing of a sheet from another and must be said."""
    telling = PART_KEYS[sheet.part] if sheet.part else KEYS[sheet.record]
    return tuple(c.field for c in sheet.columns if c.required and c.field in telling)


_TELLING = {sheet.name: _telling(sheet) for sheet in SHEETS}
