"""Who may write when: one writer a file, one bulk load a book.

SQLite lets one transaction write at a time anyway (transactions begin IMMEDIATE). PostgreSQL
does not, and loses updates silently without these locks, which end with the transaction.
"""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from zlib import crc32

from django.db import OperationalError, connection, transaction

from quarterday.core.words import words
from quarterday.store.refusals import Busy, NotReached

_BOOK = 0x51756172  # any number of our own; the locks of other programs have theirs


def _lock(statement: str, *values: int | str) -> None:
    if connection.vendor == "postgresql":
        with connection.cursor() as cursor:
            cursor.execute(f"SELECT {statement}", values)


@contextmanager
def _writing() -> Iterator[None]:
    """Open a transaction; Busy when it may not write in time, NotReached when it cannot."""
    try:
        with transaction.atomic():
            yield
    except OperationalError as error:
        why = str(error).partition("\n")[0]
        if "lock" in why:  # "database is locked", "lock timeout", "deadlock detected"
            raise Busy(words("store-busy")) from error
        raise NotReached(words("store-not-written", why=why)) from error


def _number(id: str) -> int:
    """Return a file's lock: two files may share one, which only makes one wait."""
    return crc32(id.encode("utf-8", "surrogatepass")) - 2**31  # PostgreSQL's integers have signs


@contextmanager
def file(id: str) -> Iterator[None]:
    """Open a transaction in which nobody else writes to the file ``id``."""
    with _writing():
        _lock("pg_advisory_xact_lock_shared(%s, 0)", _BOOK)
        _lock("pg_advisory_xact_lock(%s, %s)", _BOOK + 1, _number(id))
        yield


@contextmanager
def book() -> Iterator[None]:
    """Open a transaction in which nobody else writes at all."""
    with _writing():
        _lock("pg_advisory_xact_lock(%s, 0)", _BOOK)
        yield


def settle() -> None:
    """Move what was committed out of SQLite's write-ahead log, which still holds what was removed.

    Inside a transaction nothing can be moved yet; the log then goes when the store is next closed.
    """
    if connection.vendor == "sqlite" and not connection.in_atomic_block:
        with connection.cursor() as cursor:
            cursor.execute("PRAGMA wal_checkpoint(TRUNCATE)")
