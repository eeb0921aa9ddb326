"""Redaction: on lawful request a body goes, its digest stays, and the chain still holds."""

from __future__ import annotations

import sqlite3
from collections.abc import Callable
from datetime import UTC, datetime
from pathlib import Path

import pytest
from django.db import connection

from quarterday.core.file import chain
from quarterday.core.file.entry import Draft, Entry, Origin
from quarterday.core.file.records import Contact, Organisation, Redaction
from quarterday.store import ledger
from quarterday.store.models import LedgerEntry
from quarterday.store.refusals import BadDraft, NothingToRedact, UnknownFile
from quarterday.store.verify import verify

Save = Callable[..., tuple[Entry, ...]]
CHURCH = Organisation(name="Pinebrook Chapel", province="ON")
ANN = Contact(id="c1", name="Ann Example", phone="555-0187")
NOW = datetime(2026, 11, 25, 10, tzinfo=UTC)


@pytest.mark.django_db
def test_the_body_goes_and_the_chain_still_verifies(save: Save) -> None:
    before = save("A1", CHURCH, ANN, at=NOW)
    said = ledger.redact("A1", 2, "Asked by the person on 2026-11-20.", by="bea", at=NOW)
    church, redacted, last = ledger.entries("A1")
    assert (redacted.body, redacted.salt, redacted.is_redacted) == (None, None, True)
    assert (redacted.digest, redacted.body_digest) == (before[1].digest, before[1].body_digest)
    assert (church, last) == (before[0], said)
    assert list(chain.faults((church, redacted, last))) == []
    assert Redaction.read(said.body or "").seq == 2


@pytest.mark.django_db
def test_the_report_says_what_was_redacted_when_by_whom_and_why(save: Save) -> None:
    save("A1", CHURCH, ANN, at=NOW)
    ledger.redact("A1", 2, "Asked by the person.", by="bea", at=NOW)
    report = verify("A1")
    assert report.faults == []
    (one,) = report.redacted
    assert (one.file, one.seq, one.at, one.by, one.reason) == (
        "A1", 2, NOW, "bea", "Asked by the person.",
    )  # fmt: skip


@pytest.mark.django_db
def test_a_redacted_record_is_known_at_no_moment(save: Save) -> None:
    save("A1", CHURCH, ANN, at=NOW)
    ledger.redact("A1", 2, "asked", by="bea")
    assert ledger.load("A1").contacts == ()
    assert ledger.load("A1", known_at=NOW).contacts == ()


@pytest.mark.django_db
def test_the_index_tables_forget_what_was_redacted(save: Save) -> None:
    save("A1", CHURCH)
    ledger.redact("A1", 1, "asked", by="bea")
    (line,) = ledger.listed()
    assert (line.file, line.name, line.seq) == ("A1", "", 2)
    assert ledger.listed(search="pinebrook") == ()


@pytest.mark.django_db
def test_an_older_version_can_be_redacted_while_the_newer_stays(save: Save) -> None:
    save("A1", ANN, ANN.model_copy(update={"phone": "555-0188"}))
    ledger.redact("A1", 1, "the old number is somebody else's now", by="bea")
    assert ledger.load("A1").contacts[0].phone == "555-0188"
    assert verify("A1").is_sound


@pytest.mark.django_db
def test_what_has_no_body_to_remove_cannot_be_redacted(save: Save) -> None:
    save("A1", ANN)
    gone = Draft("withdraw", ANN.kind, ANN.key, None, Origin(way="person"))
    ledger.append("A1", [gone], by="ann", expected_seq=1)
    ledger.redact("A1", 1, "asked", by="bea")  # entry 3
    for seq in (0, 1, 2, 3, 99):  # none, gone already, a withdrawal, a redaction, none
        with pytest.raises(NothingToRedact):
            ledger.redact("A1", seq, "asked", by="bea")
    with pytest.raises(UnknownFile):
        ledger.redact("A9", 1, "asked", by="bea")
    assert len(ledger.entries("A1")) == 3


@pytest.mark.django_db
@pytest.mark.parametrize("reason", ["", " \n", "a\x00b", "a\ud800", "x" * 10_001])
def test_a_redaction_without_a_reason_that_can_be_kept_is_refused(save: Save, reason: str) -> None:
    save("A1", ANN)
    with pytest.raises(BadDraft):
        ledger.redact("A1", 1, reason, by="bea")
    assert ledger.load("A1").contacts == (ANN,)


@pytest.mark.django_db
def test_a_redaction_that_fails_leaves_the_body(
    save: Save, monkeypatch: pytest.MonkeyPatch
) -> None:
    save("A1", CHURCH, ANN)

    def fail(*_: object) -> None:
        raise RuntimeError

    monkeypatch.setattr("quarterday.store.index.replace", fail)
    with pytest.raises(RuntimeError):
        ledger.redact("A1", 2, "asked", by="bea")
    assert LedgerEntry.objects.get(file="A1", seq=2).body == ANN.body()
    assert len(ledger.entries("A1")) == 2


def test_no_copy_of_a_redacted_body_stays_in_the_embedded_database(
    own_store: str, save: Save
) -> None:
    if connection.vendor != "sqlite":
        pytest.skip("PostgreSQL removes old row versions by its own VACUUM")
    save("A1", CHURCH, ANN)
    folder = Path(own_store)
    assert _holds(folder, b"555-0187")
    ledger.redact("A1", 2, "asked", by="bea")
    assert not _holds(folder, b"555-0187")
    assert _holds(folder, b"Pinebrook Chapel")


def _holds(folder: Path, text: bytes) -> bool:
    """Look at the bytes on disk, with everything that is still in the write-ahead log."""
    return any(text in path.read_bytes() for path in folder.iterdir())


def test_the_bytes_are_looked_for_in_all_of_a_database(tmp_path: Path) -> None:
    with sqlite3.connect(tmp_path / "t.sqlite3") as own:
        own.execute("CREATE TABLE t (x TEXT)")
        own.execute("INSERT INTO t VALUES ('555-0187')")
    assert _holds(tmp_path, b"555-0187")
    assert not _holds(tmp_path, b"555-0188")
