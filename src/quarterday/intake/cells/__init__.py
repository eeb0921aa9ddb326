"""Reads the cells of one column, knowing the column's other cells."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Sequence
from functools import partial

from quarterday.core.file.layout import CellKind, Column
from quarterday.intake.cells.answers import ChoiceReader, ListReader, TextReader, YesNoReader
from quarterday.intake.cells.base import BadCell, Read, Readings, Said, Value
from quarterday.intake.cells.days import DayReader, MonthDayReader
from quarterday.intake.cells.numbers import NumberReader
from quarterday.intake.parse import Raw

__all__ = ["BadCell", "Readings", "Said", "Value", "read_column"]


def _reader(kind: str, column: Column, raws: Sequence[Raw], language: str, seen: Readings) -> Read:
    readers: dict[CellKind, Callable[[], Read]] = {
        "text": lambda: TextReader(column),
        "date": lambda: DayReader(raws, seen),
        "month-day": MonthDayReader,
        "yes-no": YesNoReader,
        "choice": lambda: ChoiceReader(kind, column, seen),
        "list": lambda: ListReader(kind, column, seen),
    }
    numbers = partial(NumberReader, column.kind, column.field, raws, language, seen)
    return readers.get(column.kind, numbers)()


def read_column(
    kind: str, column: Column, raws: Sequence[Raw], language: str, seen: Readings
) -> list[Value | BadCell]:
    """Return what each cell of a column says, a BadCell where it cannot be read.

    ``kind`` is the record's kind; ``language`` ("en", "fr" or "") tells which decimal mark is
    meant when the column does not; what a person should know of is counted in ``seen``.
    """
    read = _reader(kind, column, raws, language, seen)
    count = Counter((type(raw), raw) for raw in raws)
    known = {(type_, raw): _read(read, raw, seen, n) for (type_, raw), n in count.items()}
    return [known[type(raw), raw] for raw in raws]


def _read(read: Read, raw: Raw, seen: Readings, times: int) -> Value | BadCell:
    seen.times = times
    try:
        return read(raw)
    except BadCell as cell:
        return cell
