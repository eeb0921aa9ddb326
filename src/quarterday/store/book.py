"""The book's sums, kept: a line for each file, and the cells they add up to.

The office makes them from files, reference data and a day. A line whose ``seq`` or ``day`` is old
is stale and made again; the cells are of one day, and made anew whole.
"""

from __future__ import annotations

import json
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from datetime import date, datetime

from django.db.models import Count, F, Min, Q, QuerySet, Sum

from quarterday.core.book.cells import BROKER, MONTH, OFFICE, PROVINCE, WHOLE, Cell
from quarterday.core.book.sums import Sums
from quarterday.store import bulk, locks
from quarterday.store.models import BookCell, BookLine, BookMade, IndexedFile

CHUNK = 500  # lines read at a time


@dataclass(frozen=True, slots=True)
class Line:
    """What a file adds on a day, and the cell it falls into."""

    file: str
    seq: int
    day: date
    cell: Cell
    sums: Sums


@dataclass(frozen=True, slots=True)
class Made:
    """The day the cells are of, the moment they were made, and how many lines are in them."""

    day: date
    at: datetime
    lines: int
    seqs: int


@dataclass(frozen=True, slots=True)
class Asked:
    """A question to the book; ``offices`` None is every office, an empty text is not asked.

    ``first`` and ``last`` are months of renewal, both included.
    """

    offices: frozenset[str] | None = None
    broker: str = ""
    province: str = ""
    first: str = ""
    last: str = ""

    @property
    def level(self) -> int:
        """The level of the cells that answer it."""
        named = ((OFFICE, self.offices is not None), (BROKER, self.broker),
                 (PROVINCE, self.province), (MONTH, self.first or self.last))  # fmt: skip
        return sum(bit for bit, is_asked in named if is_asked)

    def holds(self, cell: Cell) -> bool:
        """Tell whether a line's cell is asked for."""
        return (
            (self.offices is None or cell.office in self.offices)
            and self.broker in {"", cell.broker}
            and self.province in {"", cell.province}
            and self._holds_month(cell.month)
        )

    def _holds_month(self, month: str) -> bool:
        if not (self.first or self.last):
            return True
        return bool(month) and self.first <= month and month <= (self.last or month)


def _written(sums: Sums) -> str:
    return json.dumps(sums.plain(), ensure_ascii=False, separators=(",", ":"), sort_keys=True)


def replace_lines(lines: Sequence[Line]) -> None:
    """Write these lines in place of the kept ones of their files."""
    with locks.book():
        BookLine.objects.filter(file__in=[line.file for line in lines]).delete()
        bulk.insert(BookLine, map(_line_row, lines))


def _line_row(line: Line) -> bulk.Row:
    _, office, broker, province, month = line.cell
    return bulk.row(
        BookLine, file_id=line.file, seq=line.seq, day=line.day, office=office, broker=broker,
        province=province, month=month, body=_written(line.sums),
    )  # fmt: skip


def _stale(day: date) -> QuerySet[IndexedFile]:
    fresh = Q(bookline__seq=F("seq"), bookline__day=day)
    return IndexedFile.objects.exclude(pk__in=IndexedFile.objects.filter(fresh).values("pk"))


def stale(day: date, most: int | None = None) -> tuple[str, ...]:
    """Return the files without a line of their newest entry on ``day``, in order of id."""
    return tuple(_stale(day).order_by("pk").values_list("pk", flat=True)[:most])


def changed_since(made: Made, offices: frozenset[str] | None) -> int:
    """Return how many files of some offices (None: all) were changed since the cells were made."""
    found = _stale(made.day)
    return (found if offices is None else found.filter(office__in=offices)).count()


def lines(day: date | None = None) -> Iterator[tuple[Cell, Sums]]:
    """Yield the kept lines' cells and sums: every one, or those that are not stale on ``day``."""
    found = BookLine.objects.order_by("pk")
    if day is not None:
        found = found.filter(day=day, file__seq=F("seq"))
    names = ("office", "broker", "province", "month", "body")
    for *where, body in found.values_list(*names).iterator(CHUNK):
        yield Cell(WHOLE, *where), Sums.of(json.loads(body))


def is_due(day: date) -> bool:
    """Tell whether every file has a line of ``day`` that the cells were not made from."""
    stand = BookLine.objects.aggregate(n=Count("pk"), seqs=Sum("seq"), first=Min("day"))
    made = made_when()
    if stand["first"] != day or _stale(day).exists():
        return False
    return made is None or (made.day, made.lines, made.seqs) != (day, stand["n"], stand["seqs"])


def replace_cells(cells: Iterable[tuple[Cell, Sums]], day: date, at: datetime) -> None:
    """Write ``cells``, made from the lines as they stand, in place of the kept ones."""
    with locks.book():
        stand = BookLine.objects.aggregate(n=Count("pk"), seqs=Sum("seq"))
        BookCell.objects.all().delete()
        bulk.insert(BookCell, (_cell_row(cell, sums) for cell, sums in cells))
        BookMade.objects.update_or_create(
            number=1,
            defaults={"day": day, "made_at": at, "lines": stand["n"], "seqs": stand["seqs"] or 0},
        )


def _cell_row(cell: Cell, sums: Sums) -> bulk.Row:
    return bulk.row(BookCell, **cell._asdict(), body=_written(sums))


def forget_missing() -> None:
    """Remove the lines of files that are not listed any more."""
    BookLine.objects.exclude(pk__in=IndexedFile.objects.values("pk")).delete()


def made_when() -> Made | None:
    """Return when the cells were made; None when they never were."""
    kept = BookMade.objects.first()
    return Made(kept.day, kept.made_at, kept.lines, kept.seqs) if kept else None


def answer(asked: Asked) -> Sums:
    """Return the sums of a question, from the cells alone."""
    found = BookCell.objects.filter(level=asked.level)
    if asked.offices is not None:
        found = found.filter(office__in=asked.offices)
    if asked.broker:
        found = found.filter(broker=asked.broker)
    if asked.province:
        found = found.filter(province=asked.province)
    if asked.first or asked.last:
        found = found.filter(month__gte=asked.first or "0")
    if asked.last:
        found = found.filter(month__lte=asked.last)
    sums = Sums()
    for body in found.values_list("body", flat=True):
        sums += Sums.of(json.loads(body))
    return sums


@dataclass(frozen=True, slots=True)
class Choices:
    """What can be asked for: the offices, brokers, provinces and months that occur."""

    offices: tuple[str, ...]
    brokers: tuple[str, ...]
    provinces: tuple[str, ...]
    months: tuple[str, ...]


def choices(offices: frozenset[str] | None) -> Choices:
    """Return what can be asked of some offices' files (None: all), each in order."""
    levels = (OFFICE, OFFICE | BROKER, OFFICE | PROVINCE, OFFICE | MONTH)
    found = BookCell.objects.filter(level__in=levels)
    if offices is not None:
        found = found.filter(office__in=offices)
    rows = list(found.values_list("office", "broker", "province", "month"))
    return Choices(*(tuple(sorted({row[n] for row in rows} - {""})) for n in range(4)))
