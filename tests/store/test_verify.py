"""What was changed by hand, with the guards out of the way, is found and named."""

from __future__ import annotations

import os
import sqlite3
import subprocess
import sys
from collections.abc import Callable
from datetime import date
from decimal import Decimal
from pathlib import Path

import pytest
from django.db import connection
from django.db.models import F

from quarterday.core.file import chain
from quarterday.core.file.entry import Draft, Entry, Origin
from quarterday.core.file.records import Building, Claim, Contact, Note, Organisation, Terms
from quarterday.core.file.records.terms import Coverage
from quarterday.store import guards, ledger, originals, seals
from quarterday.store.models import (
    IndexedBuilding,
    IndexedClaim,
    IndexedCoverage,
    IndexedFile,
    LedgerEntry,
    Original,
    Seal,
)
from quarterday.store.refusals import BadOriginal, UnknownFile
from quarterday.store.verify import Fault, rebuild, verify

pytestmark = pytest.mark.django_db
Save = Callable[..., tuple[Entry, ...]]
CHURCH = Organisation(name="Pinebrook Chapel", province="ON")
HALL = Building(id="hall", name="Hall", area_m2=Decimal("412.345"))
ANN = Contact(id="c1", name="Ann Example", phone="555-0101")
FIRE = Claim(number="F-1", cause="fire", date_of_loss=date(2020, 2, 29), paid=Decimal("12.50"))
TERMS = Terms(
    stage="issued",
    start=date(2025, 12, 1),
    end=date(2026, 12, 1),
    coverages=(Coverage(coverage="building", location="hall", limit=Decimal(900000)),),
)


@pytest.fixture
def book(save: Save) -> None:
    """Two files of five entries each, sealed, and then one entry more each."""
    for file in ("A1", "A2"):
        save(file, CHURCH, HALL, ANN, FIRE, TERMS)
    seals.seal()
    for file in ("A1", "A2"):
        save(file, Note(id="n1", text="after the seal"))


def ids(faults: list[Fault]) -> list[str]:
    return [fault.words.id for fault in faults]


def by_hand(**change: object) -> list[str]:
    """Change entry 3 of file A1 with the guards dropped, and return what is found."""
    guards.drop()
    LedgerEntry.objects.filter(file="A1", seq=3).update(**change)
    guards.create()
    assert verify("A2").is_sound  # the other file is as it was
    report = verify()
    assert {fault.file for fault in report.faults} == {"A1"}
    return ids(report.faults)


@pytest.mark.usefixtures("book")
def test_an_untouched_book_is_sound() -> None:
    report = verify()
    assert report.is_sound
    assert (report.files, report.entries, report.seals, report.unsealed) == (2, 12, 1, 2)
    assert (verify("A1").files, verify("A1").entries) == (1, 6)


@pytest.mark.usefixtures("book")
def test_one_byte_of_a_body_changed_by_hand_is_found() -> None:
    body = ANN.body().replace("0101", "0102")
    assert by_hand(body=body) == ["store-chain-body"]
    (fault,) = verify("A1").faults
    assert dict(fault.words.args) == {"file": "A1", "seq": 3}


@pytest.mark.usefixtures("book")
@pytest.mark.parametrize(
    "change",
    [{"by": "eve"}, {"act": "load"}, {"origin": '{"way":"csv"}'}, {"body_digest": "0" * 64}],
)
def test_a_changed_envelope_is_found(change: dict[str, object]) -> None:
    assert "store-chain-envelope" in by_hand(**change)


@pytest.mark.usefixtures("book")
def test_a_moment_changed_by_hand_is_found() -> None:
    found = LedgerEntry.objects.get(file="A1", seq=3).recorded_at
    assert by_hand(recorded_at=found.replace(year=2020)) == ["store-chain-envelope"]


@pytest.mark.usefixtures("book")
def test_a_changed_key_or_kind_is_found_even_when_it_means_nothing() -> None:
    assert "store-chain-envelope" in by_hand(kind="redaction", key="no number")


@pytest.mark.usefixtures("book")
def test_a_body_that_nobody_can_read_is_found_and_does_not_stop_the_verification() -> None:
    assert by_hand(body="{") == ["store-chain-body", "store-index-unreadable"]


@pytest.mark.usefixtures("book")
def test_a_body_removed_without_a_redaction_is_found() -> None:
    assert "store-chain-redaction" in by_hand(body=None, salt=None)


@pytest.mark.usefixtures("book")
def test_another_body_put_in_place_of_a_redacted_one_is_found() -> None:
    ledger.redact("A1", 3, "asked", by="bea")
    assert verify("A1").is_sound
    assert "store-chain-body" in by_hand(body=ANN.body())


@pytest.mark.usefixtures("book")
def test_an_entry_deleted_from_the_middle_is_found() -> None:
    guards.drop()
    LedgerEntry.objects.filter(file="A1", seq=3).delete()
    found = ids(verify("A1").faults)
    assert {"store-chain-sequence", "store-chain-previous"} <= set(found)


@pytest.mark.usefixtures("book")
def test_entries_renumbered_to_close_a_gap_are_found() -> None:
    guards.drop()
    LedgerEntry.objects.filter(file="A1", seq=3).delete()
    for seq in (4, 5, 6):
        LedgerEntry.objects.filter(file="A1", seq=seq).update(seq=F("seq") - 1)
    guards.create()
    rebuild()
    assert {"store-chain-previous", "store-chain-envelope"} <= set(ids(verify("A1").faults))


def cut(file: str, after: int) -> None:
    """Cut a file's tail, and make its index tables fit."""
    guards.drop()
    LedgerEntry.objects.filter(file=file, seq__gt=after).delete()
    guards.create()
    rebuild()


@pytest.mark.usefixtures("book")
def test_a_cut_tail_is_found_through_the_seal() -> None:
    cut("A1", after=3)
    assert list(chain.faults(ledger.entries("A1"))) == []  # the chain alone shows nothing
    assert ids(verify("A1").faults) == ["store-seal-cut"]


@pytest.mark.usefixtures("book")
def test_what_was_cut_after_the_last_seal_is_counted_as_unsealed_before() -> None:
    assert verify("A1").unsealed == 1
    seals.seal()
    assert verify("A1").unsealed == 0
    cut("A1", after=5)
    assert ids(verify("A1").faults) == ["store-seal-cut"]


@pytest.mark.usefixtures("book")
def test_a_file_removed_whole_is_found_through_the_seal() -> None:
    cut("A1", after=0)
    assert ids(verify().faults) == ["store-seal-cut"]
    assert ids(verify("A1").faults) == ["store-seal-cut"]


@pytest.mark.usefixtures("book")
def test_a_chain_written_anew_is_found_through_the_seal(save: Save) -> None:
    cut("A1", after=0)
    save("A1", CHURCH, HALL, ANN, FIRE, TERMS)
    assert list(chain.faults(ledger.entries("A1"))) == []
    assert ids(verify("A1").faults) == ["store-seal-rewritten"]


@pytest.mark.usefixtures("book")
@pytest.mark.parametrize(
    ("model", "change"),
    [
        (IndexedFile, {"name": "Other"}),
        (IndexedFile, {"renewal_date": None}),
        (IndexedFile, {"digest": "0" * 64}),
        (IndexedBuilding, {"area_m2": Decimal("412.34")}),
        (IndexedBuilding, {"sum_insured": Decimal(900001)}),
        (IndexedClaim, {"incurred": Decimal("12.51")}),
        (IndexedCoverage, {"limit": Decimal("900000.01")}),
    ],
)
def test_an_index_table_that_says_something_else_is_found_and_can_be_rebuilt(
    model: type[IndexedFile | IndexedBuilding | IndexedClaim | IndexedCoverage],
    change: dict[str, object],
) -> None:
    model.objects.filter(file="A1").update(**change)
    (fault,) = verify().faults
    table = str(model._meta.db_table)
    assert (fault.area, dict(fault.words.args)) == ("index", {"file": "A1", "table": table})
    assert rebuild() == 2
    assert verify().is_sound


@pytest.mark.usefixtures("book")
def test_a_missing_and_a_surplus_row_are_found() -> None:
    IndexedClaim.objects.filter(file="A1").delete()
    assert ids(verify().faults) == ["store-index-differs"]
    rebuild()
    for building in IndexedBuilding.objects.filter(file="A2"):
        building.pk = None
        building.save()
    assert ids(verify().faults) == ["store-index-differs"]


@pytest.mark.usefixtures("book")
def test_a_line_of_the_list_without_entries_is_found_and_goes_when_rebuilt() -> None:
    line = IndexedFile.objects.get(file="A1")
    line.pk = "A9"
    line.save(force_insert=True)
    assert [(fault.file, fault.area) for fault in verify().faults] == [("A9", "index")]
    rebuild()
    assert verify().is_sound


def test_originals_come_back_and_are_kept_once() -> None:
    digest = originals.put(b"a workbook", "book.xlsx")
    assert originals.put(b"a workbook", "another name.xlsx") == digest
    # by sha256sum of GNU coreutils
    assert digest == "37d8bc64479724f8d283b493733c59c932bd1ce4baae470e44a64dd4c1958c57"
    assert originals.get(digest) == b"a workbook"
    assert Original.objects.get().name == "book.xlsx"
    with pytest.raises(BadOriginal):
        originals.get("0" * 64)


def test_an_altered_original_is_found_and_not_handed_out() -> None:
    digest = originals.put(b"a workbook", "book.xlsx")
    guards.drop()
    Original.objects.update(content=b"a workbooK")
    guards.create()
    assert ids(verify().faults) == ["store-original-altered"]
    with pytest.raises(BadOriginal):
        originals.get(digest)


def test_an_entry_whose_original_is_not_kept_is_found() -> None:
    digest = originals.put(b"a workbook", "book.xlsx")
    for file, document in (("A1", digest), ("A2", "0" * 64)):
        origin = Origin(way="workbook", document=document, name="book.xlsx")
        drafts = [Draft("load", CHURCH.kind, CHURCH.key, CHURCH.body(), origin)]
        ledger.append(file, drafts, by="ann", expected_seq=0)
    (fault,) = verify().faults
    assert (fault.file, fault.words.id) == ("A2", "store-original-missing")


def test_a_file_without_a_trace_is_unknown() -> None:
    with pytest.raises(UnknownFile):
        verify("A9")


def test_an_empty_book_is_sound() -> None:
    assert verify().is_sound
    assert rebuild() == 0


def test_a_changed_seal_is_found(save: Save) -> None:
    for file in ("A1", "A2", "A3"):
        save(file, CHURCH)
        seals.seal()
    guards.drop()
    Seal.objects.filter(number=2).update(heads='[["A2",1,"x"]]')
    assert "store-seal-digest" in ids(verify().faults)


def test_a_backup_made_beside_the_work_verifies(own_store: str, save: Save, tmp_path: Path) -> None:
    """SQLite's VACUUM INTO copies what is committed, with its guards (SQLite documentation)."""
    if connection.vendor != "sqlite":
        pytest.skip("a PostgreSQL database is backed up by pg_dump")
    save("A1", CHURCH, HALL, ANN)
    ledger.redact("A1", 3, "asked", by="bea")
    seals.seal()
    copy = tmp_path / "copy"
    copy.mkdir()
    with connection.cursor() as cursor:
        cursor.execute("VACUUM INTO %s", [str(copy / "quarterday.sqlite3")])
    save("A1", Note(id="n1", text="after the backup"))
    script = (
        "import sys; from quarterday.store import setup; setup.configure(sys.argv[1]);"
        "setup.require_started(); from quarterday.store.verify import verify; r = verify();"
        "print(r.files, r.entries, r.seals, len(r.redacted), r.faults)"
    )
    environ = {**os.environ, "QUARTERDAY_DATABASE": ""}
    done = subprocess.run(
        [sys.executable, "-c", script, str(copy)], env=environ, capture_output=True, text=True,
        check=True,
    )  # fmt: skip
    assert done.stdout.split("\n")[0] == "1 4 1 1 []"
    with sqlite3.connect(copy / "quarterday.sqlite3") as restored:
        with pytest.raises(sqlite3.IntegrityError, match="only ever added to"):
            restored.execute("DELETE FROM store_ledgerentry")
        assert restored.execute("PRAGMA integrity_check").fetchone() == ("ok",)
