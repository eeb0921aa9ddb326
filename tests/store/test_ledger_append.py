"""Adding to the ledger, and reading it: now, on an earlier day, one file and the whole book."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from datetime import UTC, date, datetime, timedelta
from decimal import Decimal

import pytest

from quarterday.core.dates import Period
from quarterday.core.file import chain
from quarterday.core.file.entry import Draft, Entry, Origin, Place
from quarterday.core.file.records import Building, Contact, Note, Organisation, Terms
from quarterday.core.file.records.terms import Premium
from quarterday.store import ledger
from quarterday.store.refusals import BadDraft, BadTime, UnknownFile

pytestmark = pytest.mark.django_db
Save = Callable[..., tuple[Entry, ...]]
MONDAY = datetime(2026, 11, 2, 9, 30, 0, 123456, tzinfo=UTC)
CHURCH = Organisation(name="Église Saint-Érable", province="QC", town="Val-Pin", language="fr")
HALL = Building(id="hall", name="Hall")
ORIGIN = Origin(
    way="workbook",
    document="a" * 64,
    name="livre d’été.xlsx",
    places=(Place(sheet="Buildings", row=4, part="whole"),),
)


def draft(record: Building | Organisation | Note, act: str = "load") -> Draft:
    return Draft(act, record.kind, record.key, record.body(), ORIGIN)


def test_what_was_added_comes_back_as_it_was(save: Save) -> None:
    added = ledger.append("A1", [draft(CHURCH), draft(HALL)], by="ann", expected_seq=0, at=MONDAY)
    assert ledger.entries("A1") == added
    assert [entry.seq for entry in added] == [1, 2]
    assert {entry.recorded_at for entry in added} == {MONDAY}
    assert added[0].origin == ORIGIN
    assert list(chain.faults(added)) == []


def test_a_file_is_the_fold_of_its_entries(save: Save) -> None:
    save("A1", CHURCH, HALL)
    save("A1", HALL.model_copy(update={"storeys": Decimal(2)}))
    file = ledger.load("A1")
    assert (file.id, file.seq) == ("A1", 3)
    assert file.organisation == CHURCH
    assert [(b.id, b.storeys) for b in file.buildings] == [("hall", Decimal(2))]


def test_a_file_is_shown_as_it_was_known_at_a_moment(save: Save) -> None:
    save("A1", CHURCH, HALL, at=MONDAY)
    later = MONDAY + timedelta(days=1)
    save("A1", HALL.model_copy(update={"name": "Great hall"}), at=later)
    assert ledger.load("A1", known_at=MONDAY).buildings[0].name == "Hall"
    assert ledger.load("A1", known_at=later).buildings[0].name == "Great hall"
    assert ledger.load("A1", known_at=MONDAY - timedelta(microseconds=1)).seq == 0
    assert len(ledger.history("A1", known_at=MONDAY)) == 2


def test_a_withdrawn_record_is_gone_and_stays_readable_in_the_history(save: Save) -> None:
    save("A1", CHURCH, HALL)
    withdrawal = Draft("withdraw", HALL.kind, HALL.key, None, Origin(way="person", person="ann"))
    ledger.append("A1", [withdrawal], by="ann", expected_seq=2)
    assert ledger.load("A1").buildings == ()
    assert ledger.entries("A1")[1].body == HALL.body()
    assert list(chain.faults(ledger.entries("A1"))) == []


def test_nothing_added_leaves_no_trace() -> None:
    assert ledger.append("A1", [], by="ann", expected_seq=0) == ()
    assert ledger.files() == ()


@pytest.mark.parametrize(
    "bad",
    [
        Draft("load", "building", "hall", None, ORIGIN),  # no body without a withdrawal
        Draft("withdraw", "building", "hall", HALL.body(), ORIGIN),  # a withdrawal has none
        Draft("load", "castle", "hall", HALL.body(), ORIGIN),  # no such kind
        Draft("load", "building", "barn", HALL.body(), ORIGIN),  # the key is another's
        Draft("load", "building", "hall", HALL.body().replace(":", ": "), ORIGIN),  # not canonical
        Draft("load", "building", "hall", '{"id":"hall"}', ORIGIN),  # not whole
        Draft("load", "building", "hall", "", ORIGIN),
        Draft("lo\0ad", "building", "hall", HALL.body(), ORIGIN),
        Draft("", "building", "hall", HALL.body(), ORIGIN),
        Draft("load", "building", "hall", HALL.body(), Origin(way="csv", name="b\ud800d.csv")),
    ],
)
def test_what_is_not_a_whole_record_is_refused_and_nothing_beside_it_is_written(bad: Draft) -> None:
    with pytest.raises(BadDraft):
        ledger.append("A1", [draft(CHURCH), bad], by="ann", expected_seq=0)
    assert ledger.files() == ()
    with pytest.raises(UnknownFile):
        ledger.entries("A1")


@pytest.mark.parametrize("file", ["", "  ", "A\n1", "A\x001", "A\ud8001", "A" * 81])
def test_a_file_id_that_cannot_be_kept_is_refused(file: str) -> None:
    with pytest.raises(BadDraft):
        ledger.append(file, [draft(CHURCH)], by="ann", expected_seq=0)
    with pytest.raises(UnknownFile):
        ledger.load(file)


@pytest.mark.parametrize("by", ["", "a\x00b", "b" * 301])
def test_an_author_that_cannot_be_kept_is_refused(by: str) -> None:
    with pytest.raises(BadDraft):
        ledger.append("A1", [draft(CHURCH)], by=by, expected_seq=0)


def test_a_stated_moment_before_the_newest_entry_is_refused(save: Save) -> None:
    save("A1", CHURCH, at=MONDAY)
    with pytest.raises(BadTime):
        save("A1", HALL, at=MONDAY - timedelta(seconds=1))
    save("A1", HALL, at=MONDAY)
    assert len(ledger.entries("A1")) == 2


def test_a_clock_that_lags_behind_never_turns_the_order_round(save: Save) -> None:
    ahead = datetime.now(UTC) + timedelta(hours=1)
    save("A1", CHURCH, at=ahead)
    (entry,) = save("A1", HALL)
    assert entry.recorded_at == ahead


def test_a_moment_without_a_time_zone_is_refused(save: Save) -> None:
    with pytest.raises(ValueError, match="time zone"):
        save("A1", CHURCH, at=datetime(2026, 1, 1))  # noqa: DTZ001 - this is the mistake


def test_a_moment_of_another_time_zone_is_the_same_moment(save: Save) -> None:
    eastern = MONDAY.astimezone(datetime.fromisoformat("2026-11-02T00:00:00-05:00").tzinfo)
    (entry,) = save("A1", CHURCH, at=eastern)
    assert entry.recorded_at == MONDAY == ledger.entries("A1")[0].recorded_at
    assert list(chain.faults(ledger.entries("A1"))) == []


def test_a_load_writes_many_files_in_one_go() -> None:
    batches = [ledger.Batch(f"A{n:03}", [draft(CHURCH), draft(HALL)]) for n in range(450)]
    assert ledger.append_many(iter(batches), by="ann") == 900
    assert ledger.files() == tuple(f"A{n:03}" for n in range(450))
    assert all(file.buildings == (HALL,) for file in ledger.many())


def test_a_load_that_names_a_file_twice_adds_both_in_order() -> None:
    note = Note(id="n1", text="second")
    batches = [
        ledger.Batch("A1", [draft(CHURCH)]),
        ledger.Batch("A2", [draft(CHURCH)]),
        ledger.Batch("A1", [draft(note)]),
    ]
    assert ledger.append_many(batches, by="ann") == 3
    assert [entry.kind for entry in ledger.entries("A1")] == ["organisation", "note"]
    assert list(chain.faults(ledger.entries("A1"))) == []


def test_a_load_with_one_bad_record_writes_nothing(save: Save) -> None:
    save("A000", CHURCH)

    def batches() -> Iterator[ledger.Batch]:
        for n in range(450):
            yield ledger.Batch(f"A{n:03}", [draft(HALL)])
        yield ledger.Batch("B", [Draft("load", "building", "hall", "{}", ORIGIN)])

    with pytest.raises(BadDraft):
        ledger.append_many(batches(), by="ann")
    assert ledger.files() == ("A000",)
    assert len(ledger.entries("A000")) == 1


def test_an_empty_load_adds_nothing() -> None:
    assert ledger.append_many([], by="ann") == 0


def test_files_come_in_the_order_asked_for(save: Save) -> None:
    for id in ("A1", "A2", "A3"):
        save(id, CHURCH)
    assert [file.id for file in ledger.many(["A3", "A1"])] == ["A3", "A1"]
    assert [file.id for file in ledger.many()] == ["A1", "A2", "A3"]
    with pytest.raises(UnknownFile):
        list(ledger.many(["A1", "A9"]))


def test_the_list_sorts_and_finds_names_without_accents_and_capitals(save: Save) -> None:
    for id, name in (("A1", "Zion Hall"), ("A2", "Église Érable"), ("A3", "eglise d’en bas")):
        save(id, Organisation(name=name, province="QC", town="Sainte-Œuvre"))
    assert [line.file for line in ledger.listed()] == ["A3", "A2", "A1"]
    assert [line.file for line in ledger.listed(search="ÉRABLE eglise")] == ["A2"]
    assert [line.file for line in ledger.listed(search="zion oeuvre")] == ["A1"]
    assert [line.file for line in ledger.listed(search="a3")] == ["A3"]
    assert ledger.listed(search="%") == ledger.listed(search="\ud800x") == ()


def test_the_list_shows_the_renewals_of_a_period_with_its_end_left_out(save: Save) -> None:
    for id, day in (("A1", 30), ("A2", 1), ("A3", 29)):
        start = date(2025, 12 if day == 1 else 11, day)
        terms = Terms(
            stage="issued",
            start=start,
            end=start.replace(year=2026),
            premiums=(Premium(coverage="building", amount=Decimal("1234.50")),),
        )
        save(id, CHURCH, terms)
    due = ledger.listed(due=Period(date(2026, 11, 30), date(2026, 12, 1)))
    assert [(line.file, line.renewal_date) for line in due] == [("A1", date(2026, 11, 30))]
    assert (due[0].premium_expiring, due[0].premium_offered) == (Decimal("1234.50"), None)


def test_the_history_says_what_each_entry_changed(save: Save) -> None:
    first = Contact(id="c1", name="Ann Example", phone="555-0101")
    save("A1", first)
    save("A1", first.model_copy(update={"phone": "555-0102", "is_key": True}))
    steps = ledger.history("A1")
    assert [(c.field, c.before, c.after) for c in steps[1].changes] == [
        ("is_key", False, True),
        ("phone", "555-0101", "555-0102"),
    ]
    assert {change.before for change in steps[0].changes} == {None}


def test_an_unknown_file_is_said_to_be_unknown() -> None:
    for read in (ledger.entries, ledger.load, ledger.history):
        with pytest.raises(UnknownFile):
            read("A9")
