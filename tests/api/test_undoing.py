"""Taking an entry back over the interface: the rules are the desk's, and so is the right."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pytest
from tests.api.conftest import FILE, FLAGSHIP, OTHER, ROOT, Program
from tests.desk.conftest import As as Browsers
from tests.desk.conftest import signed_in

from quarterday.core.file.records import Building, FindingSetAside, Note
from quarterday.people.models import Grant, Person
from quarterday.store import ledger
from quarterday.store.verify import verify

__all__ = ["signed_in"]
As = Callable[[str], Program]
UNDO, ENTRIES = f"{FILE}/undo", f"{FILE}/entries"


def seq() -> int:
    return ledger.entries(FLAGSHIP)[-1].seq


def hall() -> Building:
    found = ledger.load(FLAGSHIP).get(Building, "hall")
    assert found is not None
    return found


def renamed(program: Program, name: str) -> int:
    """Rename the hall and return the entry's number."""
    records = program.get(FILE).json()["records"]
    record = next(r["record"] for r in records if (r["kind"], r["key"]) == ("building", "hall"))
    said = {"kind": "building", "key": "hall", "record": {**record, "name": name}, "seen": seq()}
    (entry,) = program.post(f"{FILE}/records", said).json()["entries"]
    return int(entry["seq"])


def undo(program: Program, entry: int, seen: int | None = None, **named: str) -> Any:
    return program.post(UNDO, {"entry": entry, "seen": seq() if seen is None else seen}, **named)


def offered(program: Program, **query: object) -> list[int]:
    found = program.get(f"{ENTRIES}?" + "&".join(f"{k}={v}" for k, v in query.items())).json()
    told: list[int] = found["undoable"]
    assert set(told) <= {entry["seq"] for entry in found["entries"]}
    return told


def test_an_edit_gives_way_to_what_stood_before_by_an_entry_of_its_own(
    book: None, program: As
) -> None:
    ann, before = program("ann"), hall()
    number = renamed(ann, "Great hall")
    answer = undo(ann, number)
    assert answer.status_code == 200, answer.content
    (entry,) = answer.json()["entries"]
    assert (entry["act"], entry["kind"], entry["key"]) == ("undo", "building", "hall")
    assert entry["by"] == "Ann <ann@holliswren.example.org>"
    assert (answer.json()["seq"], hall()) == (number + 1, before)
    assert verify(FLAGSHIP).is_sound
    assert undo(ann, number + 1).status_code == 200
    assert hall().name == "Great hall"


def test_what_nothing_stood_before_is_withdrawn(book: None, program: As) -> None:
    ann = program("ann")
    ann.post(f"{FILE}/notes", {"text": "Hello.", "seen": seq()})
    (entry,) = undo(ann, seq()).json()["entries"]
    assert entry["act"] == "withdraw"
    assert ledger.load(FLAGSHIP).all(Note) == ()


def test_what_can_be_taken_back_is_told_with_the_entries_as_at_the_desk(
    book: None, program: As, signed_in: Browsers
) -> None:
    ann = program("ann")
    first, second = renamed(ann, "One"), renamed(ann, "Two")
    told = offered(ann, limit=500)
    assert {first, second} & set(told) == {second}
    assert set(told) == signed_in("ann").get(f"/files/{FLAGSHIP}/history/").context["undoable"]
    assert offered(ann, limit=500, after=second - 1) == [second]
    assert offered(ann, limit=500, as_known="2026-11-25") == []
    assert offered(program("rhea"), limit=500) == []


def test_an_older_entry_waits_for_the_newer_one(book: None, program: As) -> None:
    ann = program("ann")
    first, second = renamed(ann, "One"), renamed(ann, "Two")
    refused = undo(ann, first)
    assert (refused.status_code, "newer entry" in refused.json()["detail"]) == (422, True)
    assert undo(ann, second).status_code == 200
    assert hall().name == "One"


def test_what_was_done_stays_and_so_does_who_the_file_is_about(book: None, program: As) -> None:
    ann = program("ann")
    ann.post(f"{FILE}/signature", {"read": True, "seen": seq()})
    organisation = next(e.seq for e in ledger.entries(FLAGSHIP) if e.kind == "organisation")
    before = seq()
    for number in (before, organisation, before + 1):
        assert undo(ann, number).status_code == 422
    assert seq() == before


def test_who_did_not_see_the_newest_entry_takes_nothing_back(book: None, program: As) -> None:
    ann = program("ann")
    number = renamed(ann, "Great hall")
    program("maria").post(f"{FILE}/notes", {"text": "Meanwhile.", "seen": number})
    answer = undo(ann, number, seen=number)
    assert answer.status_code == 409
    assert answer.json()["type"].endswith("#conflict")
    assert "nothing was taken back" in answer.json()["detail"]
    assert hall().name == "Great hall"


def test_under_one_name_it_is_taken_back_once(book: None, program: As) -> None:
    """Without the name the second would be stale; under it the first answer comes back."""
    ann, name = program("ann"), {"Idempotency-Key": "u-1"}
    number = renamed(ann, "Great hall")
    first, again = (undo(ann, number, number, **name) for _ in range(2))
    assert first.json() == again.json()
    assert undo(ann, number, number).status_code == 409
    assert [e.act for e in ledger.entries(FLAGSHIP)].count("undo") == 1
    other = undo(ann, number + 1, seq(), **name)
    assert other.json()["type"].endswith("#repeated")


def test_it_needs_the_right_of_the_act_that_it_undoes(
    book: None, program: As, people: dict[str, Person]
) -> None:
    ann = program("ann")
    review = ann.get(f"{FILE}/review").json()
    said = {"finding": review["findings"][0]["id"], "reason": "Asked.", "seen": seq()}
    assert ann.post(f"{FILE}/set-aside", said).status_code == 200
    assert seq() in offered(ann, limit=500)
    Grant.objects.filter(person=people["ann"]).update(role="colleague")
    assert seq() not in offered(program("ann"), limit=500)
    assert undo(program("ann"), seq()).status_code == 403
    assert len(ledger.load(FLAGSHIP).all(FindingSetAside)) == 1


def test_another_offices_entry_is_not_there(book: None, program: As) -> None:
    answer = program("ann").post(f"{ROOT}/files/{OTHER}/undo", {"entry": 1, "seen": 1})
    assert answer.status_code == 404


def test_a_file_is_not_taken_back_into_an_office_out_of_reach(
    book: None, program: As, people: dict[str, Person]
) -> None:
    """Maria moved it here; who serves only this office may not send it back."""
    maria = program("maria")
    organisation = {r["kind"]: r["record"] for r in maria.get(f"{ROOT}/files/{OTHER}").json()[
        "records"]}["organisation"]  # fmt: skip
    moved = {"kind": "organisation", "key": "", "seen": 999,
             "record": {**organisation, "office": "port-ellery"}}  # fmt: skip
    (entry,) = maria.post(f"{ROOT}/files/{OTHER}/records", moved).json()["entries"]
    said = {"entry": entry["seq"], "seen": entry["seq"]}
    assert program("ann").post(f"{ROOT}/files/{OTHER}/undo", said).status_code == 403
    assert ledger.load(OTHER).organisation.office == "port-ellery"


@pytest.mark.parametrize(
    "entry", [0, -1, 1.5, "1", "x", True, None, [1], {"seq": 1}, 10**12, "\u0663", "1 or 1=1"]
)
def test_a_number_that_is_no_entrys_is_refused_by_name(
    entry: object, book: None, program: As
) -> None:
    before = seq()
    answer = program("ann").post(UNDO, {"entry": entry, "seen": before})
    assert answer.status_code == 400
    assert answer.json()["errors"][0]["where"] == "entry"
    assert seq() == before


@pytest.mark.parametrize(
    "said", [{}, {"entry": 1}, {"seen": 1}, {"entry": 1, "seen": 1, "force": True}, [1, 1], "1"]
)
def test_a_body_that_says_more_or_less_is_refused(said: object, book: None, program: As) -> None:
    assert program("ann").post(UNDO, said).status_code == 400


def test_a_redacted_entry_is_neither_offered_nor_brought_back(book: None, program: As) -> None:
    ann = program("ann")
    number = renamed(ann, "Great hall")
    ledger.redact(FLAGSHIP, number, "Asked by law.", by="ann")
    assert number not in offered(ann, limit=500)
    assert undo(ann, number).status_code == 422
