"""Daily seals: a signature over the newest entry of every file that moved.

A chain shows an edit, but not a tail that was cut off, nor a chain rebuilt from the start. A seal
shows both, as long as its key and the list of seals lie outside the database: here in files of the
store's folder, ``seal.key`` and ``seals.txt``.
"""

from __future__ import annotations

import json
import os
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path
from typing import Literal

from django.conf import settings
from django.db import transaction
from django.db.models import Max

from quarterday.core.file.chain import GENESIS, hashed
from quarterday.core.file.entry import canonical
from quarterday.store import locks, seal_keys
from quarterday.store.models import LedgerEntry, Seal
from quarterday.store.reading import CHUNK

LIST_FILE = "seals.txt"
Trusted = Mapping[str, range]
SealFault = Literal["number", "previous", "digest", "signature", "key", "missing"]


@dataclass(frozen=True, slots=True)
class SealedHead:
    """What a seal says of one file: its newest entry then, and that entry's digest."""

    file: str
    seq: int
    digest: str


def _home() -> Path:
    home: Path = settings.QUARTERDAY_HOME
    return home


def heads_of(seal: Seal) -> list[SealedHead]:
    """Return the heads that a seal holds."""
    return [SealedHead(*head) for head in json.loads(seal.heads)]


def sealed_heads() -> dict[str, list[SealedHead]]:
    """Return every head that was ever sealed, by file, oldest first."""
    found: dict[str, list[SealedHead]] = {}
    for seal in Seal.objects.order_by("number").iterator():
        for head in heads_of(seal):
            found.setdefault(head.file, []).append(head)
    return found


def _moved(sealed: Mapping[str, SealedHead]) -> Iterator[SealedHead]:
    """Yield the newest entry of every file that has others than those sealed, in order of file.

    How far each file goes is read from the index of the ledger alone: a seal is made after every
    returned form, and the ledger is as long as the book.
    """
    newest = dict(LedgerEntry.objects.values_list("file").annotate(Max("seq")).order_by())
    known = {file: head.seq for file, head in sealed.items()}
    ahead = sorted(file for file, seq in newest.items() if known.get(file) != seq)
    for start in range(0, len(ahead), CHUNK):
        part = ahead[start : start + CHUNK]
        kept = LedgerEntry.objects.filter(file__in=part).values_list("file", "seq", "digest")
        heads = {file: digest for file, seq, digest in kept if seq == newest[file]}
        yield from (SealedHead(file, newest[file], heads[file]) for file in part)


def _content(seal: Seal) -> str:
    return hashed(
        canonical(
            {
                "number": seal.number,
                "sealed_at": seal.sealed_at.astimezone(UTC).isoformat(timespec="microseconds"),
                "heads": seal.heads,
                "previous": seal.previous,
                "public_key": seal.public_key,
            }
        )
    )


def seal(at: datetime | None = None) -> Seal | None:
    """Seal the files that moved since the last seal; return the seal, or None when none did."""
    with locks.book():
        last = Seal.objects.order_by("number").last()
        standing = {file: heads[-1] for file, heads in sealed_heads().items()}
        moved = list(_moved(standing))
        transaction.on_commit(_list_seals)  # a seal that is rolled back was never there
        return _make(last, moved, at or datetime.now(UTC)) if moved else None


def change_key() -> seal_keys.Handover:
    """Let a new key sign from the next seal on; the old one signs for it and is gone."""
    with locks.book():
        last = Seal.objects.order_by("number").last()
        return seal_keys.change(last.number if last else 0)


def _make(last: Seal | None, moved: list[SealedHead], at: datetime) -> Seal:
    key = seal_keys.in_use()
    made = Seal(
        number=last.number + 1 if last else 1,
        sealed_at=at,
        heads=canonical([[head.file, head.seq, head.digest] for head in moved]),
        previous=last.digest if last else GENESIS,
        public_key=seal_keys.public(key),
    )
    made.digest = _content(made)
    made.signature = key.sign(bytes.fromhex(made.digest)).hex()
    made.save(force_insert=True)
    return made


def _listed() -> dict[int, str]:
    """Return the seals that the list outside the database names: number and digest."""
    path = _home() / LIST_FILE
    lines = path.read_text(encoding="utf-8").splitlines() if path.exists() else []
    found = (line.split() for line in lines)
    return {int(parts[0]): parts[2] for parts in found if len(parts) == 3}  # noqa: PLR2004 - number, moment, digest


def _list_seals() -> None:
    """Add the seals that it lacks to the list outside the database."""
    newest = max(_listed(), default=0)
    found = Seal.objects.filter(number__gt=newest).order_by("number")
    lines = [f"{one.number} {one.sealed_at.isoformat()} {one.digest}\n" for one in found]
    if lines:
        with (_home() / LIST_FILE).open("a", encoding="utf-8") as out:
            out.writelines(lines)
            out.flush()
            os.fsync(out.fileno())


def faults() -> Iterator[tuple[int, SealFault]]:
    """Yield every fault of the seals themselves: the number of the seal, and in what respect."""
    trusted = seal_keys.trusted()
    expected, previous, found = 1, GENESIS, {}
    for one in Seal.objects.order_by("number").iterator():
        yield from ((one.number, kind) for kind in _faults_of(one, expected, previous, trusted))
        expected, previous, found[one.number] = one.number + 1, one.digest, one.digest
    listed = _listed()
    yield from ((number, "missing") for number in listed if found.get(number) != listed[number])


def _faults_of(
    one: Seal, number: int, previous: str, trusted: Trusted | None
) -> Iterator[SealFault]:
    if one.number != number:
        yield "number"
    if one.previous != previous:
        yield "previous"
    if one.digest != _content(one):
        yield "digest"
    if not _signed(one):
        yield "signature"
    if trusted is not None and one.number not in trusted.get(one.public_key, ()):
        yield "key"


def _signed(one: Seal) -> bool:
    try:
        said = bytes.fromhex(one.digest)
    except ValueError:
        return False
    return seal_keys.is_signed(one.public_key, one.signature, said)
