"""A backup of the embedded store, and its way back.

A backup is one file: the database as it stands at one moment, everything that lies beside it in the
store's folder (keys, the list of seals, the brokerage's own files), and a manifest with the SHA-256
of each. It holds personal data and the keys, so it is its owner's alone.
"""

from __future__ import annotations

import hashlib
import io
import json
import os
import shutil
import sqlite3
import tarfile
from collections.abc import Iterator
from contextlib import closing, contextmanager
from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path, PurePosixPath

from django.db import connections

from quarterday.core.words import words
from quarterday.store.place import FILE_NAME, Place
from quarterday.store.refusals import BadBackup

MANIFEST = "manifest.json"
_MADE_ANEW = (FILE_NAME, f"{FILE_NAME}-wal", f"{FILE_NAME}-shm", f"{FILE_NAME}-journal")
_BLOCK = 1 << 20


@dataclass(frozen=True, slots=True)
class Kept:
    """A backup: its file, when it was made, and the SHA-256 of each part by name."""

    path: Path
    made_at: datetime
    parts: dict[str, str]

    @property
    def size(self) -> int:
        """The size of the file in bytes."""
        return self.path.stat().st_size


def backup(place: Place, out: Path) -> Kept:
    """Write a backup of the store at ``place`` to the file ``out``, whole or not at all.

    Others may go on writing meanwhile. BadBackup for a store in PostgreSQL, and when ``out``
    exists, lies in the store's own folder, or cannot be written.
    """
    _check(place, out)
    at = datetime.now(UTC)
    part, copy = (out.with_name(f"{out.name}.{end}") for end in ("part", "database"))
    try:
        with _private(part) as written:
            parts = _pack(place, written, copy, at)
        part.rename(out)
    except (OSError, sqlite3.Error) as error:
        raise BadBackup(words("store-backup-unwritten", path=str(out), why=str(error))) from error
    finally:
        for left in (part, copy):
            left.unlink(missing_ok=True)
    return Kept(out, at, parts)


def _check(place: Place, out: Path) -> None:
    if place.url:
        raise BadBackup(words("store-backup-postgresql", place=place.shown))
    if out.exists():
        raise BadBackup(words("store-backup-exists", path=str(out)))
    if place.home.resolve() in out.resolve().parents:
        raise BadBackup(words("store-backup-inside", path=str(out)))


@contextmanager
def _private(path: Path) -> Iterator[io.BufferedWriter]:
    """Open a new file that its owner alone may read; what is written is on disk at the end."""
    with os.fdopen(os.open(path, os.O_WRONLY | os.O_CREAT | os.O_TRUNC, 0o600), "wb") as out:
        yield out
        out.flush()
        os.fsync(out.fileno())


def _pack(place: Place, out: io.BufferedWriter, copy: Path, at: datetime) -> dict[str, str]:
    """Write the parts, the database by way of ``copy``, and return their digests.

    The files beside the database come first: a seal made meanwhile is then in the database and not
    yet in its list, which the next seal completes; the other way round it would be missing.
    """
    with tarfile.open(fileobj=out, mode="w", format=tarfile.PAX_FORMAT) as made:
        parts = {name: _add(made, path, name) for name, path in _beside(place.home)}
        _copy_database(copy)
        parts[FILE_NAME] = _add(made, copy, FILE_NAME)
        told = {"made_at": at.isoformat(timespec="seconds"), "sha256": parts}
        data = json.dumps(told, indent=2, sort_keys=True).encode()
        info = tarfile.TarInfo(MANIFEST)
        info.size, info.mode = len(data), 0o600
        made.addfile(info, io.BytesIO(data))
    return parts


def _beside(home: Path) -> Iterator[tuple[str, Path]]:
    """Yield the files of the store's folder but the database, links and half-written ones."""
    for path in sorted(home.rglob("*")):
        name = path.relative_to(home).as_posix()
        if path.is_file() and not path.is_symlink() and name not in _MADE_ANEW:
            yield name, path


def _copy_database(to: Path) -> None:
    """Copy the database by SQLite's own means: one moment of it, whoever writes meanwhile."""
    with _private(to):
        pass
    connections["default"].ensure_connection()
    with closing(sqlite3.connect(to)) as target:
        connections["default"].connection.backup(target)


def _add(made: tarfile.TarFile, path: Path, name: str) -> str:
    made.add(path, arcname=name, recursive=False)
    return _digest(path)


def _digest(path: Path) -> str:
    with path.open("rb") as read:
        return hashlib.file_digest(read, "sha256").hexdigest()


def restore(path: Path, place: Place) -> Kept:
    """Put a backup's parts back as the folder of the store at ``place``, whole or not at all.

    What was restored is still to be verified. BadBackup for a store in PostgreSQL, when the folder
    holds anything, or when the backup cannot be read, lacks a part, or holds one that was altered.
    """
    if place.url:
        raise BadBackup(words("store-backup-postgresql", place=place.shown))
    home = place.home
    if home.exists() and (not home.is_dir() or any(home.iterdir())):
        raise BadBackup(words("store-restore-not-empty", place=str(home)))
    part = home.with_name(f".{home.name}.restoring")
    shutil.rmtree(part, ignore_errors=True)
    try:
        part.mkdir(mode=0o700, parents=True)
        kept = _unpacked(path, part)
        if home.exists():
            home.rmdir()
        part.rename(home)
    except (OSError, tarfile.TarError) as error:
        raise BadBackup(words("store-backup-unreadable", path=str(path), why=str(error))) from error
    finally:
        shutil.rmtree(part, ignore_errors=True)
    return kept


def _extract(read: tarfile.TarFile, member: tarfile.TarInfo, folder: Path) -> None:
    """Write one part, its owner's alone; TarError for anything but a file within the folder."""
    content, name = read.extractfile(member), PurePosixPath(member.name)
    if content is None or not member.isfile() or name.is_absolute() or ".." in name.parts:
        raise tarfile.TarError(f"{member.name!r} is no part of a backup")
    to = folder / name
    to.parent.mkdir(mode=0o700, parents=True, exist_ok=True)
    with _private(to) as out:
        shutil.copyfileobj(content, out, _BLOCK)


def _unpacked(path: Path, folder: Path) -> Kept:
    with tarfile.open(path, "r:") as read:
        for member in read:
            _extract(read, member, folder)
    manifest = folder / MANIFEST
    try:
        told = json.loads(manifest.read_bytes())
        made_at, parts = datetime.fromisoformat(told["made_at"]), dict(told["sha256"])
    except (ValueError, KeyError, TypeError, FileNotFoundError) as error:
        raise BadBackup(words("store-backup-none", path=str(path))) from error
    manifest.unlink()
    found = {p.relative_to(folder).as_posix(): p for p in folder.rglob("*") if p.is_file()}
    for name in sorted(found.keys() | parts.keys() | {FILE_NAME}):
        if name not in found or _digest(found[name]) != parts.get(name):
            raise BadBackup(words("store-backup-altered", path=str(path), name=name))
    return Kept(path, made_at, parts)
