"""The ledger: the one way in for entries, in one transaction with the index tables."""

from __future__ import annotations

import secrets
from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass
from datetime import UTC, datetime
from typing import TypeVar

from pydantic import ValidationError

from quarterday.core.file import chain
from quarterday.core.file.entry import Draft, Entry, Origin, canonical
from quarterday.core.file.fold import fold, read
from quarterday.core.file.records import OriginalErased, Record, Redaction
from quarterday.core.words import words
from quarterday.store import bulk, index, locks, originals
from quarterday.store.conflict import check
from quarterday.store.drafts import checked, clean
from quarterday.store.models import LedgerEntry, Original
from quarterday.store.reading import (
    CHUNK,
    COLUMNS,
    Listed,
    Step,
    entries,
    entries_of,
    files,
    history,
    listed,
    load,
    many,
    versions,
)
from quarterday.store.refusals import BadDraft, BadOriginal, BadTime, NothingToRedact

__all__ = [
    "Batch", "Listed", "Step", "append", "append_many", "entries", "erase", "files", "history",
    "listed", "load", "many", "redact", "versions",
]  # fmt: skip
_SALT_BYTES = 16
R = TypeVar("R", bound=Record)


@dataclass(frozen=True, slots=True)
class Batch:
    """What is to be added to one file; ``expected_seq`` is the newest entry the writer has seen.

    None for ``expected_seq`` adds without asking what others wrote meanwhile.
    """

    file: str
    drafts: Sequence[Draft]
    expected_seq: int | None = None

    def __post_init__(self) -> None:
        clean(self.file, "file")


def append(
    file: str,
    drafts: Sequence[Draft],
    *,
    by: str,
    expected_seq: int | None,
    at: datetime | None = None,
) -> tuple[Entry, ...]:
    """Add ``drafts`` to a file, all or none, and return the entries they became.

    Conflict when somebody changed one of the same records after ``expected_seq``; changes of other
    records stand beside these. BadDraft when a draft is not whole and canonical; BadTime when
    ``at`` (default: now) is before the file's newest entry.
    """
    batch = Batch(file, drafts, expected_seq)
    with locks.file(file):
        return tuple(_add([batch], by, at))


def append_many(batches: Iterable[Batch], *, by: str, at: datetime | None = None) -> int:
    """Add to many files in one transaction, all or nothing, and return the number of entries.

    ``batches`` is read as it is written, so it can be a generator that shows progress. Refuses as
    ``append`` does.
    """
    with locks.book():
        return sum(len(_add(part, by, at)) for part in _parts(batches))


def redact(file: str, seq: int, reason: str, *, by: str, at: datetime | None = None) -> Entry:
    """Remove the body of entry ``seq`` on lawful request, and return the entry that says so.

    The digest stays, so the chain still verifies. NothingToRedact when there is no such entry, when
    its body is gone already, and when it has none to remove (a withdrawal, or a redaction itself);
    BadDraft without a reason.
    """
    record = _reasoned(Redaction, reason, seq=seq)
    with locks.file(file):
        target = next((e for e in entries(file) if e.seq == seq), None)
        if target is None or target.body is None or target.kind == Redaction.kind:
            raise NothingToRedact(words("store-nothing-to-redact", file=file, seq=seq))
        origin = Origin(way="office", person=by)
        draft = Draft("redact", record.kind, record.key, record.body(), origin)
        (entry,) = _add([Batch(file, [draft])], by, at)
        LedgerEntry.objects.filter(file=file, seq=seq).update(body=None, salt=None)
        _index({file: entries_of([file])[file]})
    locks.settle()
    return entry


def erase(file: str, document: str, reason: str, *, by: str, at: datetime | None = None) -> Entry:
    """Remove the content of a kept document on lawful request; return the entry that says so.

    It is recorded on the file ``file``; the document's SHA-256, name and size stay. BadOriginal
    when it is not kept, or erased already; BadDraft without a reason.
    """
    record = _reasoned(OriginalErased, reason, document=document)
    with locks.book():
        if originals.is_erased(document) or not Original.objects.filter(digest=document).exists():
            raise BadOriginal(words("store-original-missing", digest=document))
        draft = Draft("redact", record.kind, record.key, record.body(),
                      Origin(way="office", person=by))  # fmt: skip
        (entry,) = _add([Batch(file, [draft])], by, at)
        Original.objects.filter(digest=document).update(content=b"")
    locks.settle()
    return entry


def _reasoned(kind: type[R], reason: str, **fields: object) -> R:
    """Return the record of something that was removed; BadDraft without a reason."""
    try:
        record = kind.model_validate({**fields, "reason": reason})
    except ValidationError:
        record = None
    if record is None or not getattr(record, "reason", ""):
        raise BadDraft(words("store-bad-text", what="reason", text=ascii(reason)[:80]))
    return record


def _parts(batches: Iterable[Batch]) -> Iterator[list[Batch]]:
    """Yield ``batches`` in groups written at a time; a file stands in a group once."""
    part: dict[str, Batch] = {}
    for batch in batches:
        if batch.file in part or len(part) == CHUNK:
            yield list(part.values())
            part = {}
        part[batch.file] = batch
    yield list(part.values())


def _add(part: Sequence[Batch], by: str, at: datetime | None) -> list[Entry]:
    clean(by, "by")
    kept = entries_of(batch.file for batch in part)
    records = _Records()
    added: list[Entry] = []
    for batch in part:
        standing = kept[batch.file]
        records.check(batch.drafts)
        check(batch.file, standing, batch.drafts, batch.expected_seq)
        new = list(_chained(batch, standing, by, at))
        standing.extend(new)
        added.extend(new)
    bulk.insert(LedgerEntry, map(_row, added))
    _index({file: entries for file, entries in kept.items() if entries}, records.read)
    return added


class _Records:
    """The records of the drafts at hand, read once: for the check and for the index tables."""

    def __init__(self) -> None:
        self._known: dict[tuple[str, str], Record] = {}

    def check(self, drafts: Iterable[Draft]) -> None:
        for draft in drafts:
            record = checked(draft)
            if record is not None and draft.body is not None:
                self._known[draft.kind, draft.body] = record

    def read(self, kind: str, body: str) -> Record:
        return self._known.get((kind, body)) or read(kind, body)


def _chained(
    batch: Batch, standing: Sequence[Entry], by: str, at: datetime | None
) -> Iterator[Entry]:
    head = chain.Head(standing[-1].seq, standing[-1].digest) if standing else chain.Head()
    moment = _moment(batch.file, standing[-1].recorded_at if standing else None, at)
    for draft in batch.drafts:
        entry = chain.append(
            head,
            draft,
            file=batch.file,
            by=by,
            recorded_at=moment,
            salt=secrets.token_hex(_SALT_BYTES),
        )
        head = chain.Head(entry.seq, entry.digest)
        yield entry


def _moment(file: str, last: datetime | None, at: datetime | None) -> datetime:
    """Return when an entry is recorded: never before the one it follows.

    A clock that lags behind another machine's is lifted to that; a stated moment is refused.
    """
    if at is not None and at.tzinfo is None:
        raise ValueError("A moment needs its time zone.")
    moment = (at or datetime.now(UTC)).astimezone(UTC)
    if last is None or moment >= last:
        return moment
    if at is not None:
        raise BadTime(words("store-bad-time", file=file, at=at.isoformat(), last=last.isoformat()))
    return last


def _row(entry: Entry) -> bulk.Row:
    values = {name: getattr(entry, name) for name in COLUMNS}
    origin = entry.origin.model_dump(mode="json", exclude_defaults=True)
    return bulk.row(LedgerEntry, **{**values, "origin": canonical(origin)})


def _index(entries: dict[str, list[Entry]], reader: Callable[[str, str], Record] = read) -> None:
    index.replace(
        (fold(file, of, reader=reader), chain.Head(of[-1].seq, of[-1].digest))
        for file, of in entries.items()
    )
