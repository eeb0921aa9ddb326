"""A table to be written: its columns, which have ids and headings, and its rows."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field

from quarterday.core.file.layout import Cell, CellKind


@dataclass(frozen=True, slots=True)
class Field:
    """A column: an id for programs, a heading for people, and what its cells hold.

    An ``amount`` has two decimals; a ``ratio`` is a ratio, 0.08 for 8 %.
    """

    id: str
    heading: str
    kind: CellKind


@dataclass(frozen=True, slots=True)
class Table:
    """A table with an id, a title for people, and what it says about itself, by name.

    ``rows`` hold a cell for each field, None where nothing is known; they may be a generator,
    which is then read once.
    """

    id: str
    title: str
    fields: Sequence[Field]
    rows: Iterable[Sequence[Cell]]
    about: Sequence[tuple[str, str]] = field(default=())


def of_rows(
    id: str, columns: Mapping[str, CellKind], rows: Iterable[Mapping[str, Cell]]
) -> Table:  # fmt: skip
    """Return a table for programs: ids are its headings too; what a row lacks is None."""
    fields = [Field(name, name, kind) for name, kind in columns.items()]
    return Table(id, id, fields, [[row.get(name) for name in columns] for row in rows])
