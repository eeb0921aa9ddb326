"""The demo book, read once, and an account's file without a database."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from datetime import UTC, datetime

import pytest

from quarterday.core.file.chain import Head, append
from quarterday.core.file.entry import Draft, Entry, Origin
from quarterday.core.file.fold import File, fold
from quarterday.invent.account import Account
from quarterday.invent.demo import AS_OF, Tale, demo_book, tales

FileOf = Callable[[Account], File]


def _file_of(account: Account) -> File:
    head, entries = Head(), list[Entry]()
    for record in account.records:
        draft = Draft("load", record.kind, record.key, record.body(), Origin(way="workbook"))
        moment = datetime(AS_OF.year, AS_OF.month, AS_OF.day, tzinfo=UTC)
        entry = append(head, draft, file=account.id, by="a test", recorded_at=moment, salt="00")
        head = Head(entry.seq, entry.digest)
        entries.append(entry)
    return fold(account.id, entries)


@pytest.fixture(scope="session")
def file_of() -> FileOf:
    return _file_of


@pytest.fixture(scope="session")
def demo() -> Mapping[str, Account]:
    return {account.id: account for account in demo_book()}


@pytest.fixture(scope="session")
def told() -> Mapping[str, Tale]:
    return {tale.id: tale for tale in tales()}
