"""The database itself refuses to change or delete entries, originals and seals."""

from __future__ import annotations

import re
from collections.abc import Callable

import pytest
from django.core.management import call_command
from django.core.management.base import SystemCheckError
from django.db import DatabaseError, IntegrityError, connection, transaction

from quarterday.core.file.entry import Entry
from quarterday.core.file.records import Contact, Organisation
from quarterday.store import guards, ledger, originals, seals
from quarterday.store.models import LedgerEntry, Original, Seal
from quarterday.store.verify import verify

pytestmark = pytest.mark.django_db
Save = Callable[..., tuple[Entry, ...]]
CHURCH = Organisation(name="Pinebrook Chapel", province="ON")
ANN = Contact(id="c1", name="Ann Example", phone="555-0101")


@pytest.fixture
def kept(save: Save) -> None:
    """A file with two entries, one original and one seal."""
    save("A1", CHURCH, ANN)
    originals.put(b"a workbook", "book.xlsx")
    seals.seal()


def refused(statement: str) -> bool:
    """Tell whether the database refuses ``statement`` with its own sentence."""
    try:
        with transaction.atomic(), connection.cursor() as cursor:
            cursor.execute(statement)
    except IntegrityError as error:
        return "is only ever added to" in str(error)
    return False


@pytest.mark.parametrize("table", ["store_ledgerentry", "store_original", "store_seal"])
@pytest.mark.usefixtures("kept")
def test_rows_cannot_be_deleted(table: str) -> None:
    assert refused(f"DELETE FROM {table}")


@pytest.mark.parametrize(
    "change",
    [
        "store_ledgerentry SET body = '{}'",
        "store_ledgerentry SET digest = ''",
        "store_ledgerentry SET recorded_at = '2020-01-01 00:00:00+00'",
        "store_ledgerentry SET seq = seq + 10",
        "store_ledgerentry SET id = id + 10",
        "store_original SET content = ''",
        "store_original SET name = ''",
        "store_seal SET signature = ''",
        "store_seal SET number = 7",
    ],
)
@pytest.mark.usefixtures("kept")
def test_rows_cannot_be_changed(change: str) -> None:
    if connection.vendor == "postgresql":
        change = change.replace("content = ''", "content = ''::bytea")
    assert refused(f"UPDATE {change}")


@pytest.mark.parametrize("what", ["body = NULL, salt = NULL", "body = NULL", "salt = NULL"])
@pytest.mark.usefixtures("kept")
def test_a_body_cannot_go_without_an_entry_that_says_why(what: str) -> None:
    assert refused(f"UPDATE store_ledgerentry SET {what} WHERE seq = 2")


@pytest.mark.parametrize(
    "change",
    [
        "body = NULL",  # the salt must go too
        "salt = NULL",
        "body = NULL, salt = NULL, by = 'x'",  # and nothing else may
        "body = NULL, salt = NULL, digest = ''",
        "body = '{}', salt = NULL",
    ],
)
def test_a_redaction_may_remove_body_and_salt_and_nothing_else(
    save: Save, change: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    save("A1", CHURCH, ANN)
    statement = f"UPDATE store_ledgerentry SET {change} WHERE file = 'A1' AND seq = 2"
    with transaction.atomic():
        monkeypatch.setattr("django.db.models.query.QuerySet.update", lambda *_, **__: 0)
        ledger.redact("A1", 2, "asked", by="bea")  # says so, and removes nothing
    assert ledger.entries("A1")[1].body == ANN.body()
    assert refused(statement)
    with connection.cursor() as cursor:
        cursor.execute("UPDATE store_ledgerentry SET body = NULL, salt = NULL WHERE seq = 2")
    assert verify("A1").is_sound


def test_the_redaction_of_one_entry_does_not_permit_that_of_another(save: Save) -> None:
    save("A1", CHURCH, ANN)
    save("A2", CHURCH, ANN)
    ledger.redact("A1", 2, "asked", by="bea")
    gone = "UPDATE store_ledgerentry SET body = NULL, salt = NULL"
    assert refused(f"{gone} WHERE file = 'A1' AND seq = 1")
    assert refused(f"{gone} WHERE file = 'A2' AND seq = 2")


@pytest.mark.usefixtures("kept")
def test_a_redacted_body_cannot_be_put_back() -> None:
    ledger.redact("A1", 2, "asked", by="bea")
    assert refused("UPDATE store_ledgerentry SET body = '{}', salt = 'x' WHERE seq = 2")


@pytest.mark.parametrize("table", ["store_ledgerentry", "store_original", "store_seal"])
@pytest.mark.usefixtures("kept")
def test_tables_cannot_be_emptied_on_postgresql(table: str) -> None:
    if connection.vendor != "postgresql":
        pytest.skip("SQLite has no TRUNCATE")
    assert refused(f"TRUNCATE {table}")


@pytest.mark.parametrize("same", ["id, file, seq", "file, seq"])
@pytest.mark.usefixtures("kept")
def test_a_row_cannot_be_put_in_place_of_another_on_sqlite(same: str) -> None:
    """SQLite's INSERT OR REPLACE deletes rows without a delete trigger."""
    if connection.vendor != "sqlite":
        pytest.skip("only SQLite has INSERT OR REPLACE")
    columns = [f'"{f.column}"' for f in LedgerEntry._meta.concrete_fields]
    shown = [c if c.strip('"') in re.findall(r"\w+", same) else "''" for c in columns]
    if "id" not in same:
        columns, shown = columns[1:], shown[1:]
    into = f"store_ledgerentry ({', '.join(columns)})"
    assert refused(
        f"INSERT OR REPLACE INTO {into} SELECT {', '.join(shown)} FROM store_ledgerentry"
    )
    assert refused("INSERT OR REPLACE INTO store_seal SELECT * FROM store_seal")
    assert refused("INSERT OR REPLACE INTO store_original SELECT * FROM store_original")
    assert ledger.entries("A1")[1].body == ANN.body()


@pytest.mark.usefixtures("kept")
def test_an_upsert_changes_nothing() -> None:
    statement = (
        "INSERT INTO store_original (digest, kept_at, name, size, content) "
        "SELECT digest, kept_at, 'other', size, content FROM store_original WHERE TRUE "
        "ON CONFLICT (digest) DO UPDATE SET name = 'other'"
    )
    assert refused(statement)


def test_no_number_of_a_file_is_given_twice(save: Save) -> None:
    (entry,) = save("A1", CHURCH)
    again = {name: getattr(entry, name) for name in ("file", "seq", "recorded_at")}
    with pytest.raises(DatabaseError), transaction.atomic():
        LedgerEntry.objects.create(**again, by="x", act="x", kind="note", key="x", origin="{}")


def test_the_ordinary_way_through_django_is_refused_too(save: Save) -> None:
    save("A1", CHURCH)
    for act in (LedgerEntry.objects.all().delete, lambda: LedgerEntry.objects.update(by="x")):
        with pytest.raises(IntegrityError), transaction.atomic():
            act()


def test_all_guards_stand_after_the_migrations() -> None:
    assert guards.missing() == []
    tables = {guard.table for guard in guards.guards()}
    assert tables == {m._meta.db_table for m in (LedgerEntry, Original, Seal)}


def test_a_guard_that_is_gone_or_rewritten_is_found_and_comes_back() -> None:
    names = [guard.name for guard in guards.guards()]
    guards.drop()
    assert guards.missing() == names
    assert [fault.area for fault in verify().faults] == ["guard"] * len(names)
    guard = guards.guards()[0]
    with connection.cursor() as cursor:
        for statement in guard.statements:
            cursor.execute(statement.replace("OLD.salt IS NOT NULL", "TRUE"))
    assert guards.missing() == names
    guards.create()
    assert guards.missing() == []


def test_a_guard_that_is_switched_off_is_found() -> None:
    if connection.vendor != "postgresql":
        pytest.skip("only PostgreSQL can switch a trigger off")
    with connection.cursor() as cursor:
        cursor.execute("ALTER TABLE store_seal DISABLE TRIGGER USER")
    assert guards.missing() == ["store_seal_no_change", "store_seal_no_truncate"]


def test_the_system_check_finds_a_missing_guard() -> None:
    call_command("check", databases=["default"])
    guards.drop()
    with pytest.raises(SystemCheckError, match="lacks the guard"):
        call_command("check", databases=["default"])


def test_migrating_brings_the_guards_back() -> None:
    guards.drop()
    call_command("migrate", verbosity=0)
    assert guards.missing() == []
