"""Making the book's sums: a line for each file, anew when the file or the day changes; then cells.

No page does this: the figures of a page are those of the moment it names.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from datetime import UTC, date, datetime
from itertools import chain

from quarterday.core.book.adds import adds, is_dated
from quarterday.core.book.cells import WHOLE, Cell, cells
from quarterday.core.book.sums import Sums
from quarterday.core.file.fold import File
from quarterday.core.file.records import Organisation
from quarterday.core.reference import Reference
from quarterday.core.review.case import Case
from quarterday.core.review.state import renewal_at_work
from quarterday.store import book, ledger
from quarterday.store.book import Asked, Line

Watch = Callable[[Iterator[File], int], Iterator[File]]
CHUNK = 50  # files at a time, so that nobody waits long to write


def line_of(file: File, reference: Reference, day: date) -> Line:
    """Return what a file adds to the book on a day."""
    case, who = Case(file, reference, day), file.get(Organisation)
    month = f"{renewal_at_work(case):%Y-%m}" if is_dated(case) else ""
    where = (who.office or "", who.broker or "", who.province) if who else ("", "", "")
    return Line(file.id, file.seq, day, Cell(WHOLE, *where, month), adds(case))


def refresh(reference: Reference, day: date, most: int | None = None) -> int:
    """Make stale lines anew, at most ``most``; return how many. The cells follow the last one."""
    todo = book.stale(day, most)
    for start in range(0, len(todo), CHUNK):
        part = todo[start : start + CHUNK]
        book.replace_lines([line_of(file, reference, day) for file in ledger.many(part)])
    if most is None or len(todo) < most:
        _make_cells(day)
    return len(todo)


def _make_cells(day: date) -> None:
    """Make the cells anew when the lines are of the day and not those the cells were made from."""
    book.forget_missing()
    if book.is_due(day):
        book.replace_cells(cells(book.lines()), day, datetime.now(UTC))


def counted(reference: Reference, day: date, asked: Asked, watch: Watch | None = None) -> Sums:
    """Return the answer to a question as on any day, whatever is kept; nothing is written.

    Kept lines of the day are used as they are, the other files are read. ``watch`` sees those go
    by, and how many there are.
    """
    todo, sums = book.stale(day), Sums()
    files = ledger.many(todo)
    made = (line_of(f, reference, day) for f in (watch(files, len(todo)) if watch else files))
    for cell, found in chain(book.lines(day), ((line.cell, line.sums) for line in made)):
        if asked.holds(cell):
            sums += found
    return sums
