"""Where each file's renewal stood on a day, kept so that a list need not review the book.

Standings are made by the office from files, reference data and a day. They are written after the
entries they are made from, in a transaction of their own: a standing whose ``seq`` or ``day`` is
old is stale, says so, and is made again.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date

from django.db.models import F, Q

from quarterday.store import bulk, locks
from quarterday.store.models import IndexedFile, Standing, StandingDue


@dataclass(frozen=True, slots=True)
class OpenStep:
    """A step that is still to be done."""

    renewal: date
    step: str
    who: str
    start_by: date
    latest: date
    is_late: bool
    is_impossible: bool


@dataclass(frozen=True, slots=True)
class Stood:
    """Where a file stood on a day; ``renewal`` None when it gives none."""

    file: str
    seq: int
    day: date
    renewal: date | None
    state: str
    open: tuple[OpenStep, ...]
    came_back: date | None = None

    @property
    def next(self) -> OpenStep | None:
        """The open step that is due first."""
        return min(self.open, key=lambda step: (step.latest, step.step), default=None)


def _line(stood: Stood) -> bulk.Row:
    first = stood.next
    return bulk.row(
        Standing,
        file_id=stood.file,
        seq=stood.seq,
        day=stood.day,
        renewal=stood.renewal,
        state=stood.state,
        late=sum(step.is_late for step in stood.open),
        impossible=sum(step.is_impossible for step in stood.open),
        next_step=first.step if first else "",
        next_who=first.who if first else "",
        next_by=first.latest if first else None,
        came_back=stood.came_back,
    )


def _due(file: str, step: OpenStep) -> bulk.Row:
    return bulk.row(
        StandingDue,
        file_id=file,
        renewal=step.renewal,
        step=step.step,
        who=step.who,
        start_by=step.start_by,
        latest=step.latest,
        is_late=step.is_late,
        is_impossible=step.is_impossible,
    )


def replace(found: Sequence[Stood]) -> None:
    """Write these standings in place of the kept ones."""
    ids = [stood.file for stood in found]
    with locks.book():  # two refreshers never write the same file at once
        StandingDue.objects.filter(file__in=ids).delete()
        Standing.objects.filter(file__in=ids).delete()
        bulk.insert(Standing, map(_line, found))
        bulk.insert(StandingDue, (_due(s.file, step) for s in found for step in s.open))


def stale(day: date, of: Iterable[str] | None = None, most: int | None = None) -> tuple[str, ...]:
    """Return the files without a standing of their newest entry on ``day``, in order of id."""
    fresh = Q(standing__seq=F("seq"), standing__day=day)
    found = IndexedFile.objects.exclude(pk__in=IndexedFile.objects.filter(fresh).values("pk"))
    if of is not None:
        found = found.filter(pk__in=list(of))
    return tuple(found.order_by("pk").values_list("pk", flat=True)[:most])
