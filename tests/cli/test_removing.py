"""Removing on lawful request from the terminal."""

from __future__ import annotations

from tests.cli.conftest import Run, printed

FILE = "HW-1001"
WHY = ("--reason", "Asked in writing on 2026-11-20.")


def _contact(loaded: Run) -> str:
    """Return the number of an entry with a contact."""
    rows = printed(loaded("history", FILE, "--json"))
    return str(next(row["seq"] for row in rows if row["kind"] == "contact"))


def test_an_entry_and_then_the_workbook_it_came_from_are_removed(loaded: Run) -> None:
    done = loaded("redact", FILE, _contact(loaded), *WHY)
    assert done.exit_code == 0
    (line,) = (line for line in done.stdout.splitlines() if "three.xlsx" in line)
    gone = loaded("erase", FILE, line.split()[0], *WHY)
    assert gone.exit_code == 0
    told = loaded("verify")
    assert told.exit_code == 0
    assert "1 entry, 1 document" in " ".join(told.stdout.split())
    assert printed(loaded("verify", "--json"))["erased"] == 1


def test_the_workbook_cannot_come_back_as_it_was(loaded: Run, workbook: object) -> None:
    line = next(
        line for line in loaded("redact", FILE, _contact(loaded), *WHY).stdout.splitlines()
        if "three.xlsx" in line
    )  # fmt: skip
    loaded("erase", FILE, line.split()[0], *WHY)
    done = loaded("load", str(workbook))
    assert done.exit_code == 1
    assert "not kept again" in done.stderr


def test_a_reason_is_asked_for_and_a_wrong_document_is_told(loaded: Run) -> None:
    assert loaded("redact", FILE, "2").exit_code == 2
    done = loaded("--language", "fr", "erase", FILE, "0" * 12, *WHY)
    assert (done.exit_code, "ne nomme aucun document" in done.stderr) == (1, True)
