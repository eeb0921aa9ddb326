"""The book cut into cells by office, broker, province and month of renewal, and added up again.

There is a cell for every combination that occurs, and for every combination of fewer of the four;
so that a question, whichever of them it names, is answered from a few cells, however many files
there are.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from typing import NamedTuple

from quarterday.core.book.sums import Sums

OFFICE, BROKER, PROVINCE, MONTH = 8, 4, 2, 1
WHOLE = OFFICE | BROKER | PROVINCE | MONTH


class Cell(NamedTuple):
    """A cell's place: ``level`` says which of the four it is cut by; the others are empty.

    ``month`` is that of the renewal at work, ``2027-01``; empty where a file gives none.
    """

    level: int
    office: str
    broker: str
    province: str
    month: str


def cells(lines: Iterable[tuple[Cell, Sums]]) -> Iterator[tuple[Cell, Sums]]:
    """Yield every cell that ``lines``, each of level ``WHOLE``, fall into, with its sums."""
    levels = {WHOLE: _added(lines)}
    yield from levels[WHOLE].items()
    for level in range(WHOLE - 1, -1, -1):
        finer = level | (~level & (level + 1))  # one more of the four
        levels[level] = _added((at(level, cell), sums) for cell, sums in levels[finer].items())
        yield from levels[level].items()


def at(level: int, cell: Cell) -> Cell:
    """Return the cell of a level that a finer one lies in."""
    return Cell(
        level,
        cell.office if level & OFFICE else "",
        cell.broker if level & BROKER else "",
        cell.province if level & PROVINCE else "",
        cell.month if level & MONTH else "",
    )


def _added(parts: Iterable[tuple[Cell, Sums]]) -> dict[Cell, Sums]:
    found: dict[Cell, Sums] = {}
    for cell, sums in parts:
        found[cell] = found.get(cell) or Sums()
        found[cell] += sums
    return found
