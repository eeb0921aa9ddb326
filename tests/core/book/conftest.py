"""Thirty invented organisations as cases, without a database."""

from __future__ import annotations

from datetime import UTC, datetime

import pytest
from tests.core.conftest import AS_OF

from quarterday.core.file.chain import Head, append
from quarterday.core.file.entry import Draft, Entry, Origin
from quarterday.core.file.fold import File, fold
from quarterday.core.reference import Reference
from quarterday.core.review.case import Case
from quarterday.invent.account import Account
from quarterday.invent.book import make_book


def file_of(account: Account) -> File:
    head, entries = Head(), list[Entry]()
    for record in account.records:
        draft = Draft("load", record.kind, record.key, record.body(), Origin(way="csv"))
        moment = datetime(2026, 11, 1, tzinfo=UTC)
        entry = append(head, draft, file=account.id, by="a test", recorded_at=moment, salt="00")
        head = Head(entry.seq, entry.digest)
        entries.append(entry)
    return fold(account.id, entries)


@pytest.fixture(scope="session")
def cases(canada: Reference) -> list[Case]:
    return [Case(file_of(account), canada, AS_OF) for account in make_book(30, 5, AS_OF)]
