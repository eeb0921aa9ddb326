"""One entry taken back from the history: never a deletion, never more than that one entry."""

from __future__ import annotations

from typing import Any

import pytest
from django.test import Client
from tests.desk.conftest import FLAGSHIP, OTHER, As, make_person

from quarterday.core.file.records import Building, Decision, FindingSetAside, Note, ReviewSigned
from quarterday.office import undoing
from quarterday.store import ledger
from quarterday.store.verify import verify

F = f"/files/{FLAGSHIP}/"
HALL = f"{F}edit/?kind=building&key=hall"


def seq() -> int:
    return ledger.load(FLAGSHIP).seq


def undo(browser: Client, number: int, seen: int | None = None) -> Any:
    said = {"seq": str(number), "seen": str(seq() if seen is None else seen)}
    return browser.post(f"{F}undo/", said)


def hall() -> Building:
    found = ledger.load(FLAGSHIP).get(Building, "hall")
    assert found is not None
    return found


def renamed(browser: Client, name: str) -> int:
    """Rename the hall and return the entry's number."""
    form = {field.name: field.text for field in browser.get(HALL).context["fields"]}
    assert browser.post(HALL, {**form, "name": name, "seen": str(seq())}).status_code == 302
    return seq()


def shown(browser: Client) -> frozenset[int]:
    found: frozenset[int] = browser.get(f"{F}history/").context["undoable"]
    return found


def test_an_edit_that_is_taken_back_gives_way_to_what_stood_before(
    book: None, signed_in: As
) -> None:
    browser, before = signed_in("ann"), hall()
    number = renamed(browser, "Great hall")
    assert undo(browser, number).status_code == 302
    assert hall() == before
    entries = ledger.entries(FLAGSHIP)
    assert [e.act for e in entries[-2:]] == ["edit", "undo"]
    assert entries[-1].by == "Ann <ann@holliswren.example.org>"
    page = browser.get(f"{F}history/").content.decode()
    assert "undone" in page
    assert "Great hall" in page
    assert verify(FLAGSHIP).is_sound


def test_a_taking_back_can_be_taken_back(book: None, signed_in: As) -> None:
    browser = signed_in("ann")
    undo(browser, renamed(browser, "Great hall"))
    undo(browser, seq())
    assert hall().name == "Great hall"


def test_what_nothing_stood_before_counts_no_more_and_a_withdrawal_ends(
    book: None, signed_in: As
) -> None:
    browser = signed_in("ann")
    browser.post(f"{F}note/", {"text": "Hello.", "seen": str(seq())})
    number = seq()
    assert undo(browser, number).status_code == 302
    assert ledger.load(FLAGSHIP).all(Note) == ()
    browser.post(f"{F}withdraw/?kind=contact&key=treasurer", {"seen": str(seq())})
    assert ("contact", "treasurer") not in ledger.load(FLAGSHIP).held
    undo(browser, seq())
    assert ("contact", "treasurer") in ledger.load(FLAGSHIP).held


def test_an_older_entry_of_a_record_waits_for_the_newer_one(book: None, signed_in: As) -> None:
    browser = signed_in("ann")
    first, second = renamed(browser, "One"), renamed(browser, "Two")
    assert shown(browser) & {first, second} == {second}
    answer = undo(browser, first)
    assert answer.status_code == 422
    assert "newer entry" in answer.content.decode()
    assert hall().name == "Two"
    undo(browser, second)
    assert hall().name == "One"


def test_what_was_done_outside_stays(book: None, signed_in: As) -> None:
    """Signing, building, sending, binding happened: an entry does not make them not so."""
    browser = signed_in("ann")
    browser.post(f"{F}sign/", {"read": "yes", "seen": str(seq())})
    assert ledger.entries(FLAGSHIP)[-1].kind == ReviewSigned.kind
    assert seq() not in shown(browser)
    answer = undo(browser, seq())
    assert answer.status_code == 422
    assert ledger.entries(FLAGSHIP)[-1].kind == ReviewSigned.kind


def test_who_the_file_is_about_cannot_be_taken_away(book: None, signed_in: As) -> None:
    number = next(e.seq for e in ledger.entries(FLAGSHIP) if e.kind == "organisation")
    assert undo(signed_in("ann"), number).status_code == 422
    assert ledger.load(FLAGSHIP).organisation.office == "port-ellery"


@pytest.mark.parametrize("number", ["", "0", "-1", "x", "9" * 30, "٣"])
def test_a_number_that_is_no_entrys_is_told(number: str, book: None, signed_in: As) -> None:
    answer = signed_in("ann").post(f"{F}undo/", {"seq": number, "seen": str(seq())})
    assert answer.status_code == 422


def test_who_did_not_see_the_newest_entry_takes_nothing_back(book: None, signed_in: As) -> None:
    browser = signed_in("ann")
    number = renamed(browser, "Great hall")
    signed_in("maria").post(f"{F}note/", {"text": "Meanwhile.", "seen": str(number)})
    answer = undo(browser, number, seen=number)
    assert answer.status_code == 409
    assert hall().name == "Great hall"


def test_pressing_twice_takes_back_once(book: None, signed_in: As) -> None:
    browser = signed_in("ann")
    number = renamed(browser, "Great hall")
    assert undo(browser, number, seen=number).status_code == 302
    assert undo(browser, number, seen=number).status_code == 409
    assert [e.act for e in ledger.entries(FLAGSHIP)].count("undo") == 1


def test_an_undo_needs_the_right_of_the_act_that_it_undoes(book: None, signed_in: As) -> None:
    browser = signed_in("ann")
    findings = browser.get(F).context["findings"]
    said = {"finding": findings[0]["finding"].id, "reason": "Asked.", "seen": str(seq())}
    browser.post(f"{F}set-aside/", said)
    helper = Client()
    helper.force_login(make_person("carl", "port-ellery", "colleague"))
    assert seq() in shown(browser)
    assert seq() not in shown(helper)
    assert undo(helper, seq()).status_code == 403
    assert len(ledger.load(FLAGSHIP).all(FindingSetAside)) == 1


def test_who_may_only_look_sees_no_way_to_take_back(book: None, signed_in: As) -> None:
    assert shown(signed_in("rhea")) == frozenset()
    assert "/undo/" not in signed_in("rhea").get(f"{F}history/").content.decode()


def test_a_decision_taken_back_is_open_again_and_ends_the_signature(
    book: None, signed_in: As
) -> None:
    browser = signed_in("ann")
    said = {"question": "option/by-laws/*", "answer": "take-it", "by": "The wardens",
            "on": "2026-11-25", "seen": str(seq())}  # fmt: skip
    browser.post(f"{F}decide/", said)
    number = seq()
    browser.post(f"{F}sign/", {"read": "yes", "seen": str(seq())})
    undo(browser, number)
    assert ledger.load(FLAGSHIP).all(Decision) == ()
    assert browser.get(F).context["head"]["signed"] is None


def test_nothing_of_another_file_or_of_a_redacted_entry_is_offered(
    book: None, signed_in: As
) -> None:
    browser = signed_in("ann")
    number = renamed(browser, "Great hall")
    ledger.redact(FLAGSHIP, number, "Asked by law.", by="ann")
    assert number not in undoing.undoable(ledger.entries(FLAGSHIP))
    assert browser.post(f"/files/{OTHER}/undo/", {"seq": "1", "seen": "1"}).status_code == 404
