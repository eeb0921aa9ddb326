"""Acts over the interface: what they write, what they refuse, and what is done only once."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pytest
from tests.api.conftest import FILE, FLAGSHIP, ROOT, Program

from quarterday.core.file.records import Building, Note, PackageBuilt
from quarterday.people.models import Answered
from quarterday.store import ledger, originals

As = Callable[[str], Program]


def seq() -> int:
    return ledger.entries(FLAGSHIP)[-1].seq


def building(program: Program, id: str = "hall") -> dict[str, Any]:
    records = program.get(FILE).json()["records"]
    return next(dict(r["record"]) for r in records if (r["kind"], r["key"]) == ("building", id))


def change(program: Program, seen: int, **fields: Any) -> Any:
    record = {**building(program), **fields}
    said = {"kind": "building", "key": "hall", "record": record, "seen": seen}
    return program.post(f"{FILE}/records", said)


def test_a_fact_is_edited_by_name_and_its_entry_says_who(book: None, program: As) -> None:
    answer = change(program("ann"), seq(), name="The new hall")
    assert answer.status_code == 200, answer.content
    (entry,) = answer.json()["entries"]
    assert entry["seq"] == answer.json()["seq"] == seq()
    assert entry["by"] == "Ann <ann@holliswren.example.org>"
    assert entry["origin"] == {"way": "person", "person": "Ann <ann@holliswren.example.org>"}
    held = ledger.load(FLAGSHIP).get(Building, "hall")
    assert held is not None
    assert held.name == "The new hall"


def test_what_says_the_same_writes_nothing(book: None, program: As) -> None:
    before = seq()
    answer = change(program("ann"), before)
    assert answer.json() == {"file": FLAGSHIP, "seq": before, "entries": []}


def test_who_comes_second_is_shown_the_difference_and_nothing_is_lost(
    book: None, program: As
) -> None:
    seen = seq()
    assert change(program("maria"), seen, name="Maria's hall").status_code == 200
    answer = change(program("ann"), seen, name="Ann's hall")
    assert answer.status_code == 409
    told = answer.json()
    assert told["type"].endswith("#conflict")
    (clash,) = told["difference"]
    assert (clash["kind"], clash["key"], clash["seq"]) == ("building", "hall", seen + 1)
    field = next(f for f in clash["fields"] if f["field"] == "name")
    assert (field["theirs"], field["mine"]) == ("Maria's hall", "Ann's hall")
    again = change(program("ann"), clash["seq"], name="Ann's hall")
    assert again.status_code == 200


def test_two_who_write_different_records_do_not_disturb_each_other(book: None, program: As) -> None:
    seen = seq()
    assert change(program("maria"), seen, name="Maria's hall").status_code == 200
    note = program("ann").post(f"{FILE}/notes", {"text": "Called.", "seen": seen})
    assert note.status_code == 200


def test_a_record_that_cannot_be_is_refused_by_the_name_of_its_field(
    book: None, program: As
) -> None:
    answer = change(program("ann"), seq(), year_built=3, colour="red")
    assert answer.status_code == 422
    where = {fault["where"] for fault in answer.json()["errors"]}
    assert where == {"record.year_built", "record.colour"}


@pytest.mark.parametrize(
    ("path", "said", "words"),
    [
        ("records", {"kind": "no such", "record": {}}, "no such"),
        ("records", {"kind": "building", "key": "none", "record": {}}, "building"),
        ("withdrawals", {"kind": "building", "key": "none"}, "none"),
        ("withdrawals", {"kind": "organisation", "key": ""}, "organisation"),
        ("set-aside", {"finding": "none@x", "reason": "y"}, "none@x"),
        ("decisions", {"question": "none@x", "answer": "later", "by": "Lou", "on": "2026-11-20"},
         "none@x"),
        ("payment", {"plan": "at-once", "by": "Lou", "on": "2027-11-20"}, "2027"),
        ("deliveries", {"language": "en", "to": "Lou", "way": "post", "on": "2026-11-20"}, "sign"),
    ],
)  # fmt: skip
def test_what_cannot_be_done_is_told_in_a_sentence_and_writes_nothing(
    path: str, said: dict[str, Any], words: str, book: None, program: As
) -> None:
    before = seq()
    answer = program("maria").post(f"{FILE}/{path}", {**said, "seen": before})
    assert answer.status_code == 422, answer.content
    assert words in answer.json()["detail"]
    assert seq() == before


def test_the_year_of_an_account_from_finding_to_package(book: None, program: As) -> None:
    """Set aside and take up, decide, pay, sign, build, fetch, deliver: each with its entry."""
    ann = program("ann")
    review = ann.get(f"{FILE}/review").json()
    other = next(f["id"] for f in review["findings"] if f["id"] not in review["agenda"])
    steps: list[tuple[str, dict[str, Any]]] = [
        ("set-aside", {"finding": other, "reason": "Known to us."}),
        ("take-up", {"finding": other}),
        ("decisions", {"question": review["agenda"][0], "answer": "take-it", "by": "The board",
                       "on": "2026-11-24", "words": "Carried."}),
        ("payment", {"plan": "at-once", "by": "The treasurer", "on": "2026-11-24"}),
        ("notes", {"text": "All calm."}),
        ("signature", {"read": True}),
    ]  # fmt: skip
    for path, said in steps:
        answer = ann.post(f"{FILE}/{path}", {**said, "seen": seq()})
        assert answer.status_code == 200, (path, answer.content)
        assert answer.json()["entries"][0]["seq"] == seq()
    built = ann.post(f"{FILE}/packages", {"language": "en"}).json()
    assert built["draft"] is False
    (held,) = ann.get(f"{FILE}/packages").json()
    assert held["record"]["document"] == built["sha256"]
    pdf = ann.get(f"{FILE}/packages/{built['sha256']}")
    assert pdf["Content-Type"] == "application/pdf"
    assert pdf.content == originals.get(built["sha256"])
    sent = {"language": "en", "to": "Lou", "way": "post", "on": "2026-11-25", "seen": seq()}
    assert ann.post(f"{FILE}/deliveries", sent).status_code == 200
    acts = [entry.act for entry in ledger.entries(FLAGSHIP)][-8:]
    assert acts == ["set-aside", "withdraw", "decide", "choose-payment", "note", "sign", "build",
                    "deliver"]  # fmt: skip


def test_a_signature_on_what_was_not_read_is_refused(book: None, program: As) -> None:
    answer = program("ann").post(f"{FILE}/signature", {"read": True, "seen": seq() - 1})
    assert answer.status_code == 409


def test_the_insurer_is_asked_for_what_was_changed(book: None, program: As) -> None:
    assert change(program("ann"), seq(), area_m2="812").status_code == 200
    ready = program("rhea").get(f"{FILE}/request")
    assert ready.status_code == 200, ready.content
    sent = program("ann").post(f"{FILE}/requests", {"language": "fr", "seen": seq()})
    assert sent.status_code == 200, sent.content
    assert sent.json()["request"]["changes"] == ready.json()["changes"]
    assert sent.json()["entries"][0]["kind"] == "request sent"


def test_an_act_that_is_asked_twice_under_one_name_is_done_once(book: None, program: As) -> None:
    said, name = {"text": "Once.", "seen": seq()}, {"Idempotency-Key": "a-1"}
    first = program("ann").post(f"{FILE}/notes", said, **name)
    again = program("ann").post(f"{FILE}/notes", said, **name)
    assert first.status_code == again.status_code == 200
    assert first.json() == again.json()
    assert [n.text for n in ledger.load(FLAGSHIP).all(Note)].count("Once.") == 1


def test_one_name_for_two_acts_is_refused_and_the_first_stays(book: None, program: As) -> None:
    name = {"Idempotency-Key": "a-1"}
    program("ann").post(f"{FILE}/notes", {"text": "One.", "seen": seq()}, **name)
    other = program("ann").post(f"{FILE}/notes", {"text": "Two.", "seen": seq()}, **name)
    assert other.status_code == 409
    assert other.json()["type"].endswith("#repeated")
    theirs = program("maria").post(f"{FILE}/notes", {"text": "Two.", "seen": seq()}, **name)
    assert theirs.status_code == 200


def test_an_act_that_was_refused_may_be_asked_again_under_its_name(book: None, program: As) -> None:
    name = {"Idempotency-Key": "a-1"}
    assert program("ann").post(f"{FILE}/notes", {"text": " ", "seen": 1}, **name).status_code == 422
    assert not Answered.objects.exists()
    told = program("ann").post(f"{FILE}/notes", {"text": "Now.", "seen": seq()}, **name)
    assert told.status_code == 200


def test_a_package_of_the_same_facts_is_one_package(book: None, program: As) -> None:
    one, two = (program("ann").post(f"{FILE}/packages", {"language": "fr"}) for _ in range(2))
    assert one.json() == two.json()
    assert len(ledger.load(FLAGSHIP).all(PackageBuilt)) == 1


def test_a_workbook_is_sent_read_and_accepted(book: None, program: As) -> None:
    csv = b"account,name,province,office\nHW-7777,A new hall,ON,port-ellery\n"
    sent = program("maria").send(f"{ROOT}/loads", "organisations.csv", csv)
    assert sent.status_code == 200, sent.content
    preview = sent.json()
    wrong = program("maria").post(f"{ROOT}/loads/{preview['token']}/accept", {"mark": "other"})
    assert wrong.status_code == 409
    said = {"mark": preview["mark"], "with_errors": True}
    done = program("maria").post(f"{ROOT}/loads/{preview['token']}/accept", said)
    assert done.status_code == 200, done.content
    assert done.json()["entries"] == preview["new"]
