"""Taking an entry back from the terminal."""

from __future__ import annotations

import pytest
from tests.cli.conftest import Run, printed

from quarterday.core.file.entry import Draft, Origin
from quarterday.core.file.records import Building, Decision
from quarterday.store import ledger

FILE, DAY = "HW-1001", "2026-11-25"


def seq() -> int:
    return ledger.entries(FILE)[-1].seq


def hall() -> Building:
    found = ledger.load(FILE).get(Building, "hall")
    assert found is not None
    return found


def renamed(name: str) -> int:
    """Rename the hall and return the entry's number."""
    record = hall().model_copy(update={"name": name})
    draft = Draft("edit", record.kind, record.key, record.body(), Origin(way="person"))
    return ledger.append(FILE, [draft], by="ann", expected_seq=None)[0].seq


def decided(loaded: Run) -> int:
    loaded("decide", FILE, "option/by-laws/*", "take-it", "--said-by", "The board", "--on", DAY)
    return seq()


def test_an_edit_gives_way_to_what_stood_before(loaded: Run) -> None:
    before, number = hall(), renamed("Great hall")
    done = loaded("undo", FILE, str(number), "--by", "Tess <t@x.example.org>")
    assert done.exit_code == 0
    told = " ".join(done.stdout.split())
    assert f"entry {number} (building hall) is taken back by entry {number + 1}" in told
    assert "What stood before counts again." in told
    assert hall() == before
    entry = ledger.entries(FILE)[-1]
    assert (entry.act, entry.by, entry.origin.way) == ("undo", "Tess <t@x.example.org>", "person")
    assert loaded("verify").exit_code == 0


def test_a_decision_that_nothing_stood_before_counts_no_more(loaded: Run) -> None:
    number = decided(loaded)
    done = loaded("--language", "fr", "undo", FILE, str(number))
    assert done.exit_code == 0
    assert "la fiche ne vaut plus" in " ".join(done.stdout.split())
    assert ledger.load(FILE).all(Decision) == ()
    assert loaded("undo", FILE, str(number + 1)).exit_code == 0
    assert len(ledger.load(FILE).all(Decision)) == 1


def test_a_program_is_told_the_entry_as_the_history_tells_it(loaded: Run) -> None:
    number = decided(loaded)
    told = printed(loaded("undo", FILE, str(number), "--json"))
    assert told["file"] == FILE
    assert told["entries"] == printed(loaded("history", FILE, "--json"))[-1:]
    assert told["entries"][0]["act"] == "withdraw"


def test_an_older_entry_waits_for_the_newer_one(loaded: Run) -> None:
    first, second = renamed("One"), renamed("Two")
    done = loaded("undo", FILE, str(first))
    assert (done.exit_code, "Take that one back first" in done.stderr) == (1, True)
    assert (hall().name, seq()) == ("Two", second)


def test_what_was_done_cannot_be_taken_back(loaded: Run) -> None:
    loaded("sign", FILE, "--reviewer", "Judith Hollis", "--licence", "RIB-000417", "--as-of", DAY)
    number = seq()
    done = loaded("undo", FILE, str(number))
    assert (done.exit_code, "something that was done" in done.stderr) == (1, True)
    assert seq() == number


@pytest.mark.parametrize(("number", "code"), [("0", 2), ("-1", 2), ("x", 2), ("999999", 1)])
def test_a_number_that_is_no_entrys_writes_nothing(number: str, code: int, loaded: Run) -> None:
    before = seq()
    assert loaded("undo", FILE, "--", number).exit_code == code
    assert seq() == before


def test_a_file_that_is_not_there_is_told(loaded: Run) -> None:
    done = loaded("undo", "HW-9999", "1")
    assert (done.exit_code, "HW-9999" in done.stderr) == (1, True)
