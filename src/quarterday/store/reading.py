"""Reading the ledger: a file's entries, the file they add up to, and its history."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from datetime import date, datetime
from decimal import Decimal
from itertools import islice
from typing import Any, TypeVar

from quarterday.core.dates import Period
from quarterday.core.file.difference import Difference, differences
from quarterday.core.file.entry import Entry, Origin
from quarterday.core.file.fold import File, fold
from quarterday.core.file.records import Record
from quarterday.core.words import words
from quarterday.store.drafts import keepable
from quarterday.store.index import folded
from quarterday.store.models import IndexedFile, LedgerEntry
from quarterday.store.refusals import UnknownFile

R = TypeVar("R", bound=Record)
CHUNK = 200  # files read at a time: bounds memory whatever the size of the book
COLUMNS = (
    "file", "seq", "recorded_at", "by", "act", "kind", "key", "body", "salt", "body_digest",
    "origin", "digest", "previous",
)  # fmt: skip


@dataclass(frozen=True, slots=True)
class Listed:
    """A line of the list of files; premiums are before tax, in ``currency``."""

    file: str
    name: str
    province: str
    organisation_class: str
    language: str
    office: str
    broker: str
    renewal_date: date | None
    currency: str
    premium_expiring: Decimal | None
    premium_offered: Decimal | None
    seq: int


@dataclass(frozen=True, slots=True)
class Step:
    """An entry of a file's history, and what it changed in the record that stood before it."""

    entry: Entry
    changes: tuple[Difference, ...]


def _entry(row: tuple[Any, ...]) -> Entry:
    values = dict(zip(COLUMNS, row, strict=True))
    return Entry(**{**values, "origin": Origin.model_validate_json(values["origin"])})


def entries_of(files: Iterable[str]) -> dict[str, list[Entry]]:
    """Return the entries of several files, by file, each in order of ``seq``."""
    found: dict[str, list[Entry]] = defaultdict(list)
    kept = LedgerEntry.objects.filter(file__in=[*filter(keepable, files)]).order_by("file", "seq")
    for row in kept.values_list(*COLUMNS).iterator():
        found[row[0]].append(_entry(row))
    return found


def entries(file: str) -> tuple[Entry, ...]:
    """Return a file's entries in order of ``seq``; UnknownFile when there are none."""
    found = tuple(entries_of([file])[file])
    if not found:
        raise UnknownFile(words("store-unknown-file", file=file))
    return found


def load(file: str, known_at: datetime | None = None) -> File:
    """Return a file as it stands, or as it was known at a moment (recorded by then).

    UnknownFile when it has no entries.
    """
    return fold(file, entries(file), known_at)


def listed(due: Period | None = None, search: str = "") -> tuple[Listed, ...]:
    """Return the list of files by name, without accents and capitals, then by id.

    ``due`` keeps the files whose renewal date lies in the period; ``search`` those whose id, names
    or town hold every one of its words.
    """
    found = IndexedFile.objects.all()
    if due is not None:
        found = found.filter(renewal_date__gte=due.start, renewal_date__lt=due.end)
    for word in folded(search).split():
        found = found.filter(search_text__contains=word)
    names = ("sort_name", *Listed.__dataclass_fields__)
    # sorted here: each database has its own idea of the order of letters
    return tuple(Listed(*row[1:]) for row in sorted(found.values_list(*names), key=lambda r: r[:2]))


def files() -> tuple[str, ...]:
    """Return the ids of all files, in order."""
    return tuple(sorted(IndexedFile.objects.values_list("file", flat=True)))


def chunks(files: Iterable[str]) -> Iterator[list[str]]:
    """Yield ``files`` in groups that are read at a time."""
    rest = iter(files)
    while chunk := list(islice(rest, CHUNK)):
        yield chunk


def many(of: Iterable[str] | None = None, known_at: datetime | None = None) -> Iterator[File]:
    """Yield files in the order of ``of`` (None: the whole book, by id), few at a time in memory.

    Each file is read whole at one moment; two files may be read at different moments. UnknownFile
    when one has no entries.
    """
    return (fold(file, found, known_at) for file, found in _each(of))


def _each(of: Iterable[str] | None) -> Iterator[tuple[str, list[Entry]]]:
    for chunk in chunks(files() if of is None else of):
        found = entries_of(chunk)
        for file in chunk:
            if not found[file]:
                raise UnknownFile(words("store-unknown-file", file=file))
            yield file, found.pop(file)


def versions(
    kind: type[R], of: Iterable[str] | None = None
) -> Iterator[tuple[File, tuple[R, ...]]]:
    """Yield files as ``many`` does, each with every version of its records of one kind.

    The oldest comes first. What was withdrawn or redacted is left out, its older versions too.
    """
    for id, found in _each(of):
        file = fold(id, found)
        kept = {record.key for record in file.all(kind)}
        bodies = (e.body for e in found if e.kind == kind.kind and e.key in kept)
        yield file, tuple(kind.read(body) for body in bodies if body is not None)


def history(file: str, known_at: datetime | None = None) -> tuple[Step, ...]:
    """Return a file's entries with what each changed, field by field; UnknownFile when none."""
    standing: dict[tuple[str, str], Entry] = {}
    steps = []
    for entry in entries(file):
        if known_at is not None and entry.recorded_at > known_at:
            break
        before = standing.get((entry.kind, entry.key))
        changes = differences(before.body if before else None, entry.body)
        steps.append(Step(entry, changes))
        standing[entry.kind, entry.key] = entry
    return tuple(steps)
