"""Two people on one file: nobody overwrites what the other wrote without being shown it."""

from __future__ import annotations

from collections.abc import Callable
from decimal import Decimal

import pytest

from quarterday.core.file.entry import Draft, Entry, Origin
from quarterday.core.file.records import Building, Contact, Organisation, Terms
from quarterday.core.file.records.terms import Coverage
from quarterday.store import ledger
from quarterday.store.conflict import Conflict, Disagreement

pytestmark = pytest.mark.django_db
Save = Callable[..., tuple[Entry, ...]]
CHURCH = Organisation(name="Pinebrook Chapel", province="ON")
ANN = Contact(id="c1", name="Ann Example", phone="555-0101")
HALL = Building(id="hall", name="Hall")


def test_the_second_writer_of_a_record_is_refused_and_shown_the_difference(save: Save) -> None:
    save("A1", CHURCH, ANN)
    theirs = ANN.model_copy(update={"phone": "555-0102"})
    mine = ANN.model_copy(update={"phone": "555-0103", "email": "ann@example.org"})
    save("A1", theirs, by="bea", seen=2)
    with pytest.raises(Conflict) as caught:
        save("A1", HALL, mine, by="cy", seen=2)
    (clash,) = caught.value.clashes
    assert (clash.kind, clash.key, clash.theirs.by) == ("contact", "c1", "bea")
    assert clash.fields == (
        Disagreement("email", None, None, "ann@example.org"),
        Disagreement("phone", "555-0101", "555-0102", "555-0103"),
    )
    assert ledger.load("A1").contacts == (theirs,)
    assert ledger.load("A1").buildings == ()  # what stood beside it was not written either


def test_the_difference_names_the_part_of_the_terms(save: Save) -> None:
    start = {"stage": "offered", "start": "2026-12-01", "end": "2027-12-01"}
    cover = Coverage(coverage="sewer-backup", limit=Decimal(25000))
    before = Terms.model_validate({**start, "coverages": (cover,)})
    save("A1", before)

    def raised(limit: int) -> Terms:
        changed = Coverage(coverage="sewer-backup", limit=Decimal(limit))
        return before.model_copy(update={"coverages": (changed,)})

    save("A1", raised(50000), seen=1)
    with pytest.raises(Conflict) as caught:
        save("A1", raised(75000), seen=1)
    assert caught.value.clashes[0].fields == (
        Disagreement("coverages[sewer-backup/*].limit", "25000.00", "50000.00", "75000.00"),
    )


def test_edits_of_different_records_merge(save: Save) -> None:
    save("A1", CHURCH, ANN, HALL)
    save("A1", ANN.model_copy(update={"phone": "555-0102"}), by="bea", seen=3)
    save("A1", HALL.model_copy(update={"name": "Great hall"}), by="cy", seen=3)
    file = ledger.load("A1")
    assert (file.contacts[0].phone, file.buildings[0].name) == ("555-0102", "Great hall")


def test_two_who_say_the_same_do_not_disagree(save: Save) -> None:
    save("A1", ANN)
    theirs = ANN.model_copy(update={"phone": "555-0102"})
    save("A1", theirs, by="bea", seen=1)
    save("A1", theirs, by="cy", seen=1)
    assert len(ledger.entries("A1")) == 3


def test_who_has_seen_the_change_may_change_it_again(save: Save) -> None:
    save("A1", ANN)
    save("A1", ANN.model_copy(update={"phone": "555-0102"}), seen=1)
    save("A1", ANN.model_copy(update={"phone": "555-0103"}), seen=2)
    assert ledger.load("A1").contacts[0].phone == "555-0103"


def test_who_asks_for_no_check_adds_in_any_case(save: Save) -> None:
    save("A1", ANN)
    save("A1", ANN.model_copy(update={"phone": "555-0102"}), seen=1)
    save("A1", ANN.model_copy(update={"phone": "555-0103"}), seen=None)
    assert ledger.load("A1").contacts[0].phone == "555-0103"


def test_two_who_open_a_new_file_at_once_are_told(save: Save) -> None:
    save("A1", CHURCH, seen=0)
    with pytest.raises(Conflict):
        save("A1", CHURCH.model_copy(update={"name": "Other"}), seen=0)


def test_an_edit_of_a_record_withdrawn_meanwhile_is_refused(save: Save) -> None:
    save("A1", ANN)
    gone = Draft("withdraw", ANN.kind, ANN.key, None, Origin(way="person", person="bea"))
    ledger.append("A1", [gone], by="bea", expected_seq=1)
    with pytest.raises(Conflict) as caught:
        save("A1", ANN.model_copy(update={"phone": "555-0103"}), seen=1)
    phone = next(f for f in caught.value.clashes[0].fields if f.field == "phone")
    assert phone == Disagreement("phone", "555-0101", None, "555-0103")


def test_a_body_redacted_meanwhile_is_not_brought_back_by_who_still_shows_it(save: Save) -> None:
    save("A1", CHURCH, ANN)
    ledger.redact("A1", 2, "asked by the person", by="bea")
    with pytest.raises(Conflict) as caught:
        save("A1", ANN.model_copy(update={"is_key": True}), by="cy", seen=2)
    assert caught.value.clashes[0].theirs.kind == "redaction"
    assert ledger.load("A1").contacts == ()


def test_a_conflict_in_one_file_of_a_load_stops_the_whole_load(save: Save) -> None:
    save("A1", ANN)
    save("A1", ANN.model_copy(update={"phone": "555-0102"}), seen=1)
    mine = ANN.model_copy(update={"phone": "555-0103"})
    drafts = [Draft("load", mine.kind, mine.key, mine.body(), Origin(way="csv"))]
    with pytest.raises(Conflict):
        ledger.append_many([ledger.Batch("A0", drafts, 0), ledger.Batch("A1", drafts, 1)], by="cy")
    assert ledger.files() == ("A1",)
