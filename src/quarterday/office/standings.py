"""Making the standings: where each renewal is, what is late, what can no longer be done in time."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date

from quarterday.core.diary.diary import Due, diary
from quarterday.core.file.fold import File
from quarterday.core.file.records import Organisation
from quarterday.core.reference import Reference
from quarterday.core.review.case import Case
from quarterday.core.review.state import came_back, renewal_at_work, state
from quarterday.store import ledger, standings
from quarterday.store.standings import OpenStep, Stood

CHUNK = 100  # files at a time, so that nobody waits long to write
FEW = 10  # files that a page brings up to date itself, so that nobody waits long to read


def stood(file: File, reference: Reference, day: date) -> Stood:
    """Return where a file stands on a day."""
    if file.get(Organisation) is None or file.renewal is None:
        return Stood(file.id, file.seq, day, None, "gathering", ())
    case = Case(file, reference, day)
    at_work = renewal_at_work(case)
    steps = tuple(_open(due) for due in diary(case) if not due.is_done)
    stands, back = state(case, at_work), came_back(case, at_work)
    return Stood(file.id, file.seq, day, at_work, stands, steps, back)


def _open(due: Due) -> OpenStep:
    return OpenStep(
        due.renewal, due.id, due.who, due.start_by, due.latest, due.is_late, due.is_impossible
    )


def refresh(
    reference: Reference, day: date, of: Iterable[str] | None = None, most: int | None = None
) -> int:
    """Make the stale standings anew (of some files, at most ``most``); return how many."""
    todo = standings.stale(day, of, most)
    for start in range(0, len(todo), CHUNK):
        part = todo[start : start + CHUNK]
        standings.replace([stood(file, reference, day) for file in ledger.many(part)])
    return len(todo)
