"""A written book, read by intake, is the same book: every record, and nothing refused or asked."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping
from pathlib import Path

import pytest

from quarterday.catalogue.load import reference
from quarterday.core.file.records import Record
from quarterday.intake.map import match
from quarterday.intake.parse import parse
from quarterday.intake.plan import Plan, plan
from quarterday.intake.profile import NO_PROFILE
from quarterday.invent.account import Account
from quarterday.invent.book import make_book
from quarterday.invent.demo import AS_OF
from quarterday.invent.write import write_csv, write_workbook

Key = tuple[str, str, str]
Writer = Callable[[Iterable[Account], Path], None]
WRITERS: list[tuple[Writer, str]] = [(write_workbook, "book.xlsx"), (write_csv, "book")]


def planned(path: Path) -> Plan:
    parsed = parse(path)
    return plan(parsed, match(parsed, NO_PROFILE), lambda _: None, reference())


def bodies(account: str, records: Iterable[Record]) -> Iterator[tuple[Key, str]]:
    yield from (((account, r.kind, r.key), r.body()) for r in records)


def written(accounts: Iterable[Account]) -> dict[Key, str]:
    return dict(pair for account in accounts for pair in bodies(account.id, account.records))


def read(found: Plan) -> dict[Key, str]:
    return dict(pair for item in found.items for pair in bodies(item.account, [item.record]))


@pytest.mark.parametrize(("write", "name"), WRITERS, ids=["workbook", "csv"])
def test_the_demo_book_is_read_back_whole(
    write: Writer, name: str, demo: Mapping[str, Account], tmp_path: Path
) -> None:
    write(demo.values(), tmp_path / name)
    found = planned(tmp_path / name)
    assert [fault for fault in found.faults if fault.severity != "note"] == []
    assert read(found) == written(demo.values())


@pytest.mark.parametrize(("write", "name"), WRITERS, ids=["workbook", "csv"])
def test_a_made_book_is_read_back_whole(write: Writer, name: str, tmp_path: Path) -> None:
    accounts = list(make_book(60, 11, AS_OF))
    write(accounts, tmp_path / name)
    found = planned(tmp_path / name)
    assert [fault for fault in found.faults if fault.severity != "note"] == []
    assert read(found) == written(accounts)
