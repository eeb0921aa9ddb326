"""Backing up and putting back from the terminal."""

from __future__ import annotations

import os
from pathlib import Path

import pytest
from django.db import connection
from tests.cli.conftest import Run, printed

from quarterday.store import seals


@pytest.fixture(autouse=True)
def _embedded(own_store: str) -> None:
    if connection.vendor != "sqlite":
        pytest.skip("PostgreSQL has its own backups")


def test_a_book_is_backed_up_put_back_elsewhere_and_verified(loaded: Run, tmp_path: Path) -> None:
    out, again = tmp_path / "b.tar", tmp_path / "again"
    done = loaded("backup", str(out))
    assert done.exit_code == 0
    assert "the keys" in " ".join(done.stdout.split())
    restored = loaded("--store", str(again), "restore", str(out), "--json")
    assert restored.exit_code == 0
    assert (printed(restored)["files"], printed(restored)["faults"]) == (3, [])
    assert "St. Ebba" in loaded("--store", str(again), "show", "HW-1001").stdout


def test_a_restored_store_that_does_not_verify_ends_with_one(loaded: Run, tmp_path: Path) -> None:
    """A wrong that was in the store before the backup is found after it."""
    from quarterday.store import guards
    from quarterday.store.models import LedgerEntry

    guards.drop()
    LedgerEntry.objects.filter(file="HW-1001", seq=1).update(by="somebody else")
    out = tmp_path / "b.tar"
    assert loaded("backup", str(out)).exit_code == 0
    done = loaded("--store", str(tmp_path / "again"), "restore", str(out))
    assert done.exit_code == 1
    assert "HW-1001" in done.stdout


def test_a_backup_over_another_is_refused_in_both_languages(loaded: Run, tmp_path: Path) -> None:
    out = tmp_path / "b.tar"
    out.write_bytes(os.urandom(10))
    assert "never written over" in loaded("backup", str(out)).stderr
    french = loaded("--language", "fr", "backup", str(out))
    assert (french.exit_code, "écrasée" in french.stderr) == (1, True)


def test_a_new_key_signs_from_then_on_and_all_seals_hold(loaded: Run) -> None:
    seals.seal()
    done = loaded("new-seal-key")
    assert done.exit_code == 0
    assert "stay proven" in " ".join(done.stdout.split())
    assert printed(loaded("verify", "--json"))["faults"] == []
