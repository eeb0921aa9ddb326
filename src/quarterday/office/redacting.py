"""Remove what a person may lawfully ask to have removed: an entry's body, and the documents.

An entry's body goes alone. A document holds more than one person's facts, so it is removed only
when asked for by name, and whole: what was recorded from it stays, with its sheet and row.
"""

from __future__ import annotations

import json
from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from quarterday.core.file.entry import Entry
from quarterday.core.words import words
from quarterday.office.trouble import Trouble
from quarterday.store import ledger, originals
from quarterday.store.models import Original

DIGESTS = ("document", "sealed")  # the fields of records that name a document


@dataclass(frozen=True, slots=True)
class Document:
    """A document that a file names: its SHA-256, and the name it was kept under."""

    digest: str
    name: str


@dataclass(frozen=True, slots=True)
class Removed:
    """What was removed, and the documents of the file that may still say it."""

    entry: Entry
    still: tuple[Document, ...]


def documents(entries: Iterable[Entry]) -> Iterator[Document]:
    """Yield every document that entries name and the store keeps, in order of SHA-256."""
    kept = Original.objects.filter(digest__in=set(_named(entries)))
    for digest, name in sorted(kept.values_list("digest", "name")):
        yield Document(digest, name)


def _named(entries: Iterable[Entry]) -> Iterator[str]:
    for entry in entries:
        if entry.origin.document:
            yield entry.origin.document
        body = json.loads(entry.body) if entry.body else {}
        yield from (body[key] for key in DIGESTS if body.get(key))


def redact(file: str, seq: int, reason: str, *, by: str) -> Removed:
    """Remove the body of an entry; name the documents from it or after it that may still say it."""
    later = [entry for entry in ledger.entries(file) if entry.seq >= seq]
    entry = ledger.redact(file, seq, reason, by=by)
    still = (d for d in documents(later) if not originals.is_erased(d.digest))
    return Removed(entry, tuple(still))


def erase(file: str, document: str, reason: str, *, by: str) -> Entry:
    """Remove the content of a document that the file names; Trouble when it names none such.

    The beginning of a SHA-256 is enough where only one document begins so.
    """
    found = [d for d in documents(ledger.entries(file)) if d.digest.startswith(document)]
    if len(found) != 1:
        raise Trouble(words("redact-no-document", file=file, document=document))
    return ledger.erase(file, found[0].digest, reason, by=by)
