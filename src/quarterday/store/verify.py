"""Proof that nothing was changed: chains, seals, originals, index tables and guards."""

from __future__ import annotations

import hashlib
from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, field
from datetime import datetime
from typing import Literal

from django.db import models
from pydantic import ValidationError

from quarterday.core.file import chain
from quarterday.core.file.entry import Entry
from quarterday.core.file.fold import fold
from quarterday.core.file.records import Redaction
from quarterday.core.words import Words, words
from quarterday.store import guards, index, locks, originals, seals
from quarterday.store.bulk import columns
from quarterday.store.models import IndexedFile, LedgerEntry, Original, Seal, table_of
from quarterday.store.reading import chunks, entries_of
from quarterday.store.refusals import UnknownFile

Area = Literal["chain", "seal", "original", "index", "guard"]


@dataclass(frozen=True, slots=True)
class Fault:
    """Something that is not as it was written: in which area, of which file, and the sentence."""

    area: Area
    file: str
    words: Words


@dataclass(frozen=True, slots=True)
class Redacted:
    """A body that was removed on lawful request: when, by whom and why."""

    file: str
    seq: int
    at: datetime
    by: str
    reason: str


@dataclass(slots=True)
class Report:
    """What was verified, and every fault found; no faults means all is as it was written."""

    files: int = 0
    entries: int = 0
    originals: int = 0
    seals: int = 0
    unsealed: int = 0  # entries newer than the last seal of their file
    redacted: list[Redacted] = field(default_factory=list)
    erased: set[str] = field(default_factory=set)  # documents removed on lawful request
    faults: list[Fault] = field(default_factory=list)

    @property
    def is_sound(self) -> bool:
        """Whether nothing was changed."""
        return not self.faults


def verify(file: str | None = None) -> Report:
    """Return what was verified of one file, or of the whole book (None), and every fault.

    UnknownFile when there is no trace of the file.
    """
    report = Report()
    sealed = seals.sealed_heads()
    known = _traces() | sealed.keys()
    if file is not None and file not in known:
        raise UnknownFile(words("store-unknown-file", file=file))
    for part in chunks(sorted(known) if file is None else [file]):
        _files(part, sealed, report)
    _store_wide(report)
    return report


def _traces() -> set[str]:
    """Return the ids of all files that have entries or a line in the list."""
    kept = LedgerEntry.objects.values_list("file", flat=True).distinct()
    return {*kept, *IndexedFile.objects.values_list("file", flat=True)}


def _files(part: Sequence[str], sealed: dict[str, list[seals.SealedHead]], report: Report) -> None:
    with locks.book():  # so that entries and index tables are of the same moment
        kept = entries_of(part)
        rows = _kept_rows(part)
    found = _kept_originals(kept.values())
    for file in part:
        entries = kept[file]
        report.files += 1
        report.entries += len(entries)
        report.redacted += _redacted(entries)
        report.unsealed += len(entries) - max((h.seq for h in sealed.get(file, [])), default=0)
        report.faults += _chain_faults(entries)
        report.faults += _head_faults(entries, sealed.get(file, []))
        report.faults += _missing_originals(entries, found)
        report.faults += _index_faults(file, entries, rows)


def _chain_faults(entries: Sequence[Entry]) -> Iterator[Fault]:
    for fault in chain.faults(entries):
        sentence = words(f"store-chain-{fault.kind}", file=fault.file, seq=fault.seq)
        yield Fault("chain", fault.file, sentence)


def _head_faults(entries: Sequence[Entry], heads: Iterable[seals.SealedHead]) -> Iterator[Fault]:
    digests = {entry.seq: entry.digest for entry in entries}
    for head in heads:
        if digests.get(head.seq) != head.digest:
            id = "store-seal-rewritten" if head.seq in digests else "store-seal-cut"
            yield Fault("seal", head.file, words(id, file=head.file, seq=head.seq))


def _redacted(entries: Sequence[Entry]) -> Iterator[Redacted]:
    for entry in entries:
        if entry.kind == Redaction.kind and entry.body is not None:
            try:
                record = Redaction.read(entry.body)
            except ValidationError:
                continue  # the chain says so already
            yield Redacted(entry.file, record.seq, entry.recorded_at, entry.by, record.reason)


def _documents(entries: Iterable[Entry]) -> set[str]:
    return {entry.origin.document for entry in entries if entry.origin.document}


def _kept_originals(kept: Iterable[Sequence[Entry]]) -> set[str]:
    named = set[str]().union(*(_documents(entries) for entries in kept))
    found = Original.objects.filter(digest__in=named).values_list("digest", flat=True)
    return set(found)


def _missing_originals(entries: Sequence[Entry], kept: set[str]) -> Iterator[Fault]:
    for digest in sorted(_documents(entries) - kept):
        sentence = words("store-original-missing", digest=digest)
        yield Fault("original", entries[0].file, sentence)


Lines = Counter[tuple[object, ...]]
Rows = dict[str, dict[type[models.Model], Lines]]


def _kept_rows(part: Sequence[str]) -> Rows:
    found: Rows = {file: {model: Counter() for model in index.TABLES} for file in part}
    for model in index.TABLES:
        names = columns(model)
        of_file = names.index("file" if model is IndexedFile else "file_id")
        rows = model._default_manager.filter(file__in=part).values_list(*names)  # noqa: SLF001 - any model's manager
        for row in rows:
            found[row[of_file]][model][row] += 1
    return found


def _index_faults(file: str, entries: Sequence[Entry], kept: Rows) -> Iterator[Fault]:
    try:
        made = _made_rows(file, entries)
    except (ValidationError, KeyError):
        yield Fault("index", file, words("store-index-unreadable", file=file))
        return
    for model in index.TABLES:
        if made[model] != kept[file][model]:
            table = table_of(model)
            yield Fault("index", file, words("store-index-differs", file=file, table=table))


def _made_rows(file: str, entries: Sequence[Entry]) -> dict[type[models.Model], Lines]:
    if not entries:
        return {model: Counter() for model in index.TABLES}
    head = chain.Head(entries[-1].seq, entries[-1].digest)
    made = index.rows(fold(file, entries), head)
    return {model: Counter[tuple[object, ...]](made[model]) for model in index.TABLES}


def _store_wide(report: Report) -> None:
    for digest, content in Original.objects.values_list("digest", "content").iterator(chunk_size=1):
        report.originals += 1
        if not content and originals.is_erased(digest):
            report.erased.add(digest)
        elif hashlib.sha256(content).hexdigest() != digest:
            report.faults.append(
                Fault("original", "", words("store-original-altered", digest=digest))
            )
    report.seals = Seal.objects.count()
    for number, kind in seals.faults():
        report.faults.append(Fault("seal", "", words(f"store-seal-{kind}", number=number)))
    for name in guards.missing():
        report.faults.append(Fault("guard", "", words("store-guard-missing", guard=name)))


def rebuild() -> int:
    """Make the index tables anew from the entries, and return how many files they list."""
    count = 0
    with locks.book():
        kept = set(LedgerEntry.objects.values_list("file", flat=True).distinct())
        IndexedFile.objects.exclude(file__in=kept).delete()
        for part in chunks(sorted(kept)):
            found = entries_of(part)
            index.replace(
                (fold(file, of), chain.Head(of[-1].seq, of[-1].digest))
                for file, of in found.items()
            )
            count += len(found)
    return count
