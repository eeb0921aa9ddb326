"""The keys that seals are signed with: the one in use, and those it took over from.

The private key lies in ``seal.key``. When a new one takes over, the old one signs for it: the line
in ``seal-keys.txt`` says up to which seal the old key holds, and its private half is gone. Both
files lie in the store's folder, outside the database.
"""

from __future__ import annotations

import os
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

from cryptography.exceptions import InvalidSignature
from cryptography.hazmat.primitives.asymmetric.ed25519 import Ed25519PrivateKey, Ed25519PublicKey
from cryptography.hazmat.primitives.serialization import (
    Encoding,
    NoEncryption,
    PrivateFormat,
    load_pem_private_key,
)
from django.conf import settings

from quarterday.store import keys

KEY_FILE, NEXT_FILE, LIST_FILE = "seal.key", "seal-next.key", "seal-keys.txt"


@dataclass(frozen=True, slots=True)
class Handover:
    """That a key gave way to another after the seal ``last``; the old key signed it."""

    old: str
    last: int
    new: str
    signature: str

    @property
    def said(self) -> bytes:
        """What the old key signed."""
        return f"{self.old} {self.last} {self.new}".encode("ascii")

    @property
    def is_genuine(self) -> bool:
        """Whether the old key signed it."""
        return is_signed(self.old, self.signature, self.said)


def _path(name: str) -> Path:
    home: Path = settings.QUARTERDAY_HOME
    return home / name


def ensure() -> Path:
    """Make the signing key when there is none, readable by its owner alone; return its file."""
    return keys.ensure(_path(KEY_FILE), _new)


def _new() -> bytes:
    key = Ed25519PrivateKey.generate()
    return key.private_bytes(Encoding.PEM, PrivateFormat.PKCS8, NoEncryption())


def _read(path: Path) -> Ed25519PrivateKey:
    key = load_pem_private_key(path.read_bytes(), password=None)
    assert isinstance(key, Ed25519PrivateKey)
    return key


def public(key: Ed25519PrivateKey) -> str:
    """Return a key's public half, in hex."""
    return key.public_key().public_bytes_raw().hex()


def is_signed(by: str, signature: str, said: bytes) -> bool:
    """Tell whether a public key (hex) signed something."""
    try:
        Ed25519PublicKey.from_public_bytes(bytes.fromhex(by)).verify(bytes.fromhex(signature), said)
    except (InvalidSignature, ValueError):
        return False
    return True


def in_use() -> Ed25519PrivateKey:
    """Return the signing key; a change of keys that a crash cut short is finished first."""
    _finish()
    return _read(ensure())


def handovers() -> list[Handover]:
    """Return the changes of keys, oldest first."""
    path = _path(LIST_FILE)
    lines = path.read_text(encoding="ascii").splitlines() if path.exists() else []
    found = (line.split() for line in lines)
    return [Handover(p[0], int(p[1]), p[2], p[3]) for p in found if len(p) == 4]  # noqa: PLR2004 - the four fields


def change(last: int) -> Handover:
    """Let a new key take over after the seal ``last``, and return the old key's word for it.

    Nobody may seal meanwhile. A crash at any moment leaves the old key or the new one in use.
    """
    old, following = in_use(), _read(keys.ensure(_path(NEXT_FILE), _new))
    unsigned = Handover(public(old), last, public(following), "")
    made = Handover(unsigned.old, last, unsigned.new, old.sign(unsigned.said).hex())
    with _path(LIST_FILE).open("a", encoding="ascii") as out:
        out.write(f"{made.old} {made.last} {made.new} {made.signature}\n")
        out.flush()
        os.fsync(out.fileno())
    _finish()
    return made


def _finish() -> None:
    """Put the next key in the place of the one that gave way to it."""
    waiting, listed = _path(NEXT_FILE), handovers()
    if listed and waiting.exists() and public(_read(waiting)) == listed[-1].new:
        waiting.replace(_path(KEY_FILE))


def trusted() -> dict[str, range] | None:
    """Return the public keys that may have signed, and which seals; None without a key of our own.

    A key counts when every key from it to the one in use gave way by its own signature.
    """
    if not _path(KEY_FILE).exists():
        return None
    return dict(_periods(public(in_use()), handovers()))


def _periods(newest: str, listed: list[Handover]) -> Iterator[tuple[str, range]]:
    end = 2**31  # no end: more seals than a database can number
    for one in reversed(listed):
        if one.new != newest or not one.is_genuine:
            break
        yield newest, range(one.last + 1, end)
        newest, end = one.old, one.last + 1
    yield newest, range(1, end)
