"""The fold: whatever was entered in whatever order, the file is what the entries add up to."""

from __future__ import annotations

import json
from collections.abc import Callable
from datetime import UTC, date, datetime, timedelta
from decimal import Decimal
from itertools import pairwise
from types import MappingProxyType

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterday.core.dates import Period
from quarterday.core.file.chain import Head, append
from quarterday.core.file.entry import Draft, Entry, Origin
from quarterday.core.file.fold import PROOF, File, fold, renewal_period
from quarterday.core.file.records import (
    Building,
    Claim,
    Contact,
    Delivery,
    Note,
    Operations,
    Organisation,
    PackageBuilt,
    Record,
    ReviewSigned,
    Terms,
    Valuation,
)
from quarterday.core.money import Money
from quarterday.core.words import words

START = datetime(2026, 11, 1, 12, tzinfo=UTC)
CHURCH = Organisation(name="Pinebrook Chapel", province="ON", renewal_date=date(2027, 3, 1))
HALL = Building(id="hall", name="Hall", area_m2=Decimal("400.5"))
Step = tuple[str, Record]  # what is done, and with which record


def entries(*steps: Step, hours: int = 1) -> list[Entry]:
    """Return a chain of edits, withdrawals and redacted edits, some hours apart."""
    head, made = Head(), []
    for number, (what, record) in enumerate(steps):
        body = None if what == "withdraw" else record.body()
        draft = Draft(what, record.kind, record.key, body, Origin(way="person", person="ann"))
        at = START + timedelta(hours=hours * number)
        entry = append(head, draft, file="A1", by="ann", recorded_at=at, salt="s")
        head = Head(entry.seq, entry.digest)
        made.append(entry)
    return made


def edits(*records: Record) -> File:
    return fold("A1", entries(*(("edit", record) for record in records)))


def naive(made: list[Entry], known_at: datetime | None = None) -> dict[tuple[str, str], object]:
    """Interpret entries the plainest way: a dictionary of JSON, read backwards."""
    found: dict[tuple[str, str], object] = {}
    seen: set[tuple[str, str]] = set()
    for entry in reversed(made):
        if known_at is not None and entry.recorded_at > known_at:
            continue
        if (entry.kind, entry.key) not in seen:
            seen.add((entry.kind, entry.key))
            if entry.body is not None:
                found[entry.kind, entry.key] = json.loads(entry.body)
    return found


IDS = st.sampled_from(("a", "b", "c"))
RECORDS: st.SearchStrategy[Record] = st.one_of(
    st.builds(Building, id=IDS, name=st.sampled_from(("Hall", "Shed"))),
    st.builds(Contact, id=IDS, name=st.just("Ann Example"), is_key=st.booleans()),
    st.builds(Note, id=IDS, text=st.text("xy", max_size=3)),
    st.builds(
        Claim, number=IDS, cause=st.just("fire"), date_of_loss=st.just(date(2020, 1, 1)),
        paid=st.decimals(0, 1000, places=2),
    ),
    st.just(CHURCH),
)  # fmt: skip
STEPS = st.lists(st.tuples(st.sampled_from(("edit", "edit", "withdraw", "redact")), RECORDS))


def made(steps: list[Step]) -> list[Entry]:
    """Return the entries of ``steps``, the bodies of those to be redacted gone."""
    chain = entries(*((("edit" if what == "redact" else what), record) for what, record in steps))
    return [
        Entry(**{**{f: getattr(e, f) for f in Entry.__dataclass_fields__}, "body": None})
        if what == "redact"
        else e
        for e, (what, _) in zip(chain, steps, strict=True)
    ]


def plain(file: File) -> dict[tuple[str, str], object]:
    return {ref: json.loads(held.record.body()) for ref, held in file.held.items()}


@given(STEPS)
def test_the_fold_is_what_a_plain_dictionary_makes_of_the_entries(steps: list[Step]) -> None:
    chain = made(steps)
    file = fold("A1", chain)
    assert plain(file) == naive(chain)
    assert (file.id, file.seq) == ("A1", len(steps))


@given(STEPS, st.integers(-1, 12))
def test_what_was_known_is_the_fold_of_what_was_recorded_by_then(
    steps: list[Step], hour: int
) -> None:
    chain, then = made(steps), START + timedelta(hours=hour)
    by_then = [entry for entry in chain if entry.recorded_at <= then]
    assert fold("A1", chain, then) == fold("A1", by_then)
    assert plain(fold("A1", chain, then)) == naive(chain, then)


@given(STEPS)
def test_each_record_names_the_entry_that_put_it_there(steps: list[Step]) -> None:
    file = fold("A1", made(steps))
    for ref, held in file.held.items():
        assert (held.entry.kind, held.entry.key) == ref
        assert held.entry.body == held.record.body()
        assert file.entry_of(held.record) is held.entry


@given(STEPS, RECORDS)
def test_folding_on_gives_the_same_as_folding_at_once(steps: list[Step], record: Record) -> None:
    """One more entry changes that record alone."""
    chain = made([*steps, ("edit", record)])
    before, after = fold("A1", chain[:-1]), fold("A1", chain)
    ref = (record.kind, record.key)
    rest = {k: h for k, h in before.held.items() if k != ref}
    assert {k: h for k, h in after.held.items() if k != ref} == rest
    assert after.held[ref].record == record


@given(STEPS)
def test_records_of_one_kind_come_in_order_of_key_and_are_found_by_it(steps: list[Step]) -> None:
    file = fold("A1", made(steps))
    for kind in (Building, Contact, Note, Claim):
        found = file.all(kind)
        assert all(a.key < b.key for a, b in pairwise(found))
        assert [file.get(kind, one.key) for one in found] == list(found)
    assert (file.buildings, file.contacts) == (file.all(Building), file.all(Contact))
    assert file.claims == file.all(Claim)


def test_the_file_cannot_be_changed() -> None:
    file = edits(CHURCH)
    assert isinstance(file.held, MappingProxyType)
    with pytest.raises(AttributeError):
        file.seq = 2  # type: ignore[misc]


def test_a_file_that_does_not_say_whose_it_is_says_so() -> None:
    with pytest.raises(LookupError, match="A1"):
        _ = edits(HALL).organisation


def test_a_profile_that_was_never_given_has_nothing_answered() -> None:
    assert edits(CHURCH).operations == Operations()
    assert edits(CHURCH).interests == ()


def test_a_record_that_is_not_held_has_no_entry() -> None:
    with pytest.raises(KeyError):
        edits(CHURCH).entry_of(HALL)


def test_the_province_of_a_building_is_its_own_else_the_organisations() -> None:
    file = edits(CHURCH, HALL)
    assert file.province_of(HALL) == "ON"
    assert file.province_of(HALL.model_copy(update={"province": "QC"})) == "QC"
    assert file.province_of(None) == "ON"


def valuation(day: int, building: str = "hall", amount: str = "100") -> Valuation:
    return Valuation(building=building, amount=Decimal(amount), valued_on=date(2020, 1, day))


def test_valuations_come_oldest_first_for_the_building_and_the_thing_asked_for() -> None:
    contents = valuation(3).model_copy(update={"valued": "contents"})
    file = edits(CHURCH, valuation(2), valuation(1), valuation(4, "shed"), contents)
    assert [v.valued_on.day for v in file.valuations("hall")] == [1, 2]
    assert file.valuations("hall", "contents") == (contents,)


def terms(stage: str, year: int) -> Terms:
    return Terms.model_validate(
        {"stage": stage, "start": f"{year}-03-01", "end": f"{year + 1}-03-01"}
    )


def test_the_renewal_is_where_the_newest_issued_terms_end_or_the_offered_ones_start() -> None:
    assert edits(CHURCH).renewal == date(2027, 3, 1)  # as the file states it
    assert edits(CHURCH, terms("issued", 2024), terms("issued", 2025)).renewal == date(2026, 3, 1)
    assert edits(CHURCH, terms("offered", 2026)).renewal == date(2026, 3, 1)
    stateless = CHURCH.model_copy(update={"renewal_date": None})
    assert edits(stateless, terms("requested", 2026)).renewal is None


def test_the_expiring_terms_are_the_issued_ones_that_end_on_the_renewal() -> None:
    file = edits(CHURCH, terms("issued", 2024), terms("issued", 2025), terms("offered", 2026))
    assert file.expiring(date(2026, 3, 1)) == terms("issued", 2025)
    assert file.expiring(date(2026, 3, 2)) is None
    assert file.terms(date(2026, 3, 1), "offered") == terms("offered", 2026)
    assert file.terms(date(2026, 3, 1), "requested") is None


def test_the_coming_term_is_as_offered_else_a_year() -> None:
    renewal = date(2026, 3, 1)
    short = Terms.model_validate({"stage": "offered", "start": "2026-03-01", "end": "2026-09-01"})
    assert renewal_period(edits(CHURCH), renewal) == Period(renewal, date(2027, 3, 1))
    assert renewal_period(edits(CHURCH, short), renewal).end == date(2026, 9, 1)


def test_a_fact_carries_its_value_its_origin_and_its_day() -> None:
    file = edits(CHURCH, HALL)
    area = file.fact(HALL, "area_m2", "m2")
    assert (area.id, area.value, area.unit) == ("building/hall/area_m2", Decimal("400.5"), "m2")
    assert area.label == words("field-area-m2")
    assert (area.origin.person, area.recorded_on) == ("ann", date(2026, 11, 1))
    one = valuation(1)
    assert edits(CHURCH, one).fact(one, "amount", "money", "USD").value == Money(
        Decimal(100), "USD"
    )


@pytest.mark.parametrize(
    "proof",
    [
        lambda seq: ReviewSigned(
            renewal=date(2027, 3, 1), as_of=date(2026, 11, 25), reviewer="Bea Broker",
            licence="12345", seq=seq, review_digest="0" * 64,
        ),
        lambda seq: PackageBuilt(
            renewal=date(2027, 3, 1), language="en", version=1, built_on=date(2026, 11, 25),
            document="0" * 64, seq=seq,
        ),
        lambda _: Delivery(
            renewal=date(2027, 3, 1), document="0" * 64, to="Ann Example", way="post",
            delivered_on=date(2026, 11, 26),
        ),
    ],
)  # fmt: skip
def test_a_proof_of_what_was_said_changes_nothing_of_it(proof: Callable[[int], Record]) -> None:
    before = edits(CHURCH, HALL)
    after = edits(CHURCH, HALL, proof(2))
    assert (before.last_change, after.last_change, after.seq) == (2, 2, 3)


def test_every_statement_is_a_change_and_so_is_taking_one_back() -> None:
    """A review signed before a building was withdrawn does not cover the file after it."""
    kept = entries(("edit", CHURCH), ("edit", HALL), ("withdraw", HALL))
    assert [fold("A1", kept[:n]).last_change for n in range(4)] == [0, 1, 2, 3]
    assert {
        "review signed", "package built", "package sealed", "delivery", "request sent", "bound",
        "policy checked", "evidence sent",
    } == PROOF  # fmt: skip
