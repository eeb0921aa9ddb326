"""The hash chain over a file's entries: adding a link, and finding where one was broken."""

from __future__ import annotations

import hashlib
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from datetime import UTC, datetime
from typing import Literal

from quarterday.core.file.entry import Draft, Entry, canonical

GENESIS = "0" * 64
FaultKind = Literal["sequence", "previous", "body", "envelope", "redaction"]


@dataclass(frozen=True, slots=True)
class Head:
    """The newest link of a file's chain: its number (0 for an empty file) and digest."""

    seq: int = 0
    digest: str = GENESIS


@dataclass(frozen=True, slots=True)
class ChainFault:
    """An entry that does not fit its chain, and in what respect."""

    file: str
    seq: int
    kind: FaultKind


def hashed(text: str) -> str:
    """Return the SHA-256 of ``text`` (UTF-8) in hex."""
    return hashlib.sha256(text.encode("utf-8")).hexdigest()


def body_digest(body: str | None, salt: str) -> str:
    """Return the digest of a salted body; a withdrawal hashes as the empty text."""
    return hashed(f"{salt}\n{'' if body is None else body}")


def _link(entry: Entry) -> str:
    """Return the digest that the envelope, the body's digest and the link before it demand."""
    envelope = {
        "file": entry.file,
        "seq": entry.seq,
        "recorded_at": entry.recorded_at.astimezone(UTC).isoformat(timespec="microseconds"),
        "by": entry.by,
        "act": entry.act,
        "kind": entry.kind,
        "key": entry.key,
        "withdraws": entry.act == "withdraw",
        "origin": entry.origin.model_dump(mode="json", exclude_defaults=True),
    }
    return hashed(f"{entry.previous}\n{entry.body_digest}\n{canonical(envelope)}")


def append(
    head: Head, draft: Draft, *, file: str, by: str, recorded_at: datetime, salt: str
) -> Entry:
    """Return the entry that follows ``head``, its digest sealing draft, author and time."""
    bare = Entry(
        file=file,
        seq=head.seq + 1,
        recorded_at=recorded_at,
        by=by,
        act=draft.act,
        kind=draft.kind,
        key=draft.key,
        body=draft.body,
        salt=salt,
        body_digest=body_digest(draft.body, salt),
        origin=draft.origin,
        digest="",
        previous=head.digest,
    )
    return replace(bare, digest=_link(bare))


def faults(entries: Iterable[Entry]) -> Iterator[ChainFault]:
    """Yield every fault of one file's chain; ``entries`` come in order of ``seq``.

    A body may be missing only where a later entry of kind ``redaction`` names it.
    """
    chain = tuple(entries)
    redacted = {entry.key for entry in chain if entry.kind == "redaction"}
    head = Head()
    for entry in chain:
        kinds = _faults_of(entry, head, redacted)
        yield from (ChainFault(entry.file, entry.seq, kind) for kind in kinds)
        head = Head(entry.seq, entry.digest)


def _faults_of(entry: Entry, head: Head, redacted: set[str]) -> Iterator[FaultKind]:
    if entry.seq != head.seq + 1:
        yield "sequence"
    if entry.previous != head.digest:
        yield "previous"
    if entry.is_redacted and str(entry.seq) not in redacted:
        yield "redaction"
    if not _body_fits(entry):
        yield "body"
    if entry.digest != _link(entry):
        yield "envelope"


def _body_fits(entry: Entry) -> bool:
    """Tell whether the body is the one that was sealed; without a salt there may be none."""
    if entry.salt is None:
        return entry.body is None
    return entry.body_digest == body_digest(entry.body, entry.salt)
