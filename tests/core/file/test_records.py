"""Records: only what can be kept for years gets in, and it comes back as it went in."""

from __future__ import annotations

import json
import sys
import unicodedata
from datetime import date
from decimal import Decimal
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from pydantic import ValidationError

from quarterday.core.dates import Period
from quarterday.core.file.records import (
    BY_KIND,
    RECORDS,
    AllocationKey,
    Answers,
    Authority,
    Bound,
    Building,
    Claim,
    Contact,
    Decision,
    Delivery,
    EvidenceSent,
    FindingSetAside,
    FormReturned,
    Interest,
    Note,
    Operations,
    Organisation,
    OriginalErased,
    PackageBuilt,
    PackageSealed,
    PaymentChoice,
    PolicyChecked,
    Record,
    Redaction,
    RequestSent,
    ReviewSigned,
    Terms,
    Valuation,
)
from quarterday.core.file.records.acts import Answer
from quarterday.core.file.records.terms import Coverage, Option, Premium, SharedLimit, StatedTotal
from quarterday.core.money import Money

TEXT = st.text(st.characters(exclude_categories=("Cc", "Cs")), min_size=1, max_size=30)
LINE = TEXT.filter(lambda t: t.split())
DAY = st.dates(date(1900, 1, 2), date(2199, 12, 31))
AMOUNT = st.decimals(-(10**12) + 1, 10**12 - 1, places=2)
NUMBER = st.decimals(-(10**9), 10**9, places=6)
RATIO = st.decimals(0, 1, places=4)

COVERAGE = st.builds(
    Coverage,
    coverage=LINE, location=LINE, limit=st.none() | AMOUNT, deductible_percent=st.none() | NUMBER,
    coinsurance=st.none() | RATIO, agreed_value_until=st.none() | DAY,
    coinsurance_of=st.sampled_from((None, "whole-income", "less-stopping")),
    excluded_causes=st.lists(LINE, max_size=2).map(tuple),
    damages=st.none() | st.sampled_from(((), ("punitive",), ("punitive", "multiplied"))),
    defence=st.sampled_from((None, "inside", "outside")), claims_made=st.none() | st.booleans(),
)  # fmt: skip
OPTION = st.builds(
    Option,
    coverage=LINE, price=AMOUNT, deductible_percent=st.none() | NUMBER,
    deductible_percent_of=st.sampled_from((None, "loss", "limit", "value")),
    deductible_minimum=st.none() | AMOUNT, deductible_maximum=st.none() | AMOUNT,
)  # fmt: skip
SPAN = st.tuples(DAY, DAY).filter(lambda days: days[0] < days[1])


@st.composite
def terms(draw: st.DrawFn) -> Terms:
    start, end = draw(SPAN)
    return Terms(
        stage=draw(st.sampled_from(("requested", "offered", "issued"))),
        start=start,
        end=end,
        coverages=tuple(draw(st.lists(COVERAGE, max_size=2))),
        shared_limit=draw(
            st.none() | st.builds(SharedLimit, amount=AMOUNT, tops_up=st.tuples(LINE))
        ),
        premiums=tuple(
            draw(st.lists(st.builds(Premium, coverage=LINE, amount=AMOUNT), max_size=2))
        ),
        totals=tuple(
            draw(st.lists(st.builds(StatedTotal, of=st.just("tax"), amount=AMOUNT), max_size=1))
        ),
        options=tuple(draw(st.lists(OPTION, max_size=1))),
        instalments_available=draw(st.none() | st.booleans()),
    )


KINDS: dict[type[Record], st.SearchStrategy[Record]] = {
    Organisation: st.builds(Organisation, name=LINE, province=LINE, notes=st.none() | TEXT),
    Contact: st.builds(Contact, id=LINE, name=LINE, phone=st.none() | LINE, is_key=st.booleans()),
    Authority: st.builds(Authority, contact=LINE, since=st.none() | DAY, until=st.none() | DAY),
    Operations: st.builds(
        Operations, confirmed_on=st.none() | DAY, children=st.none() | st.booleans(),
        revenue_rents=st.none() | AMOUNT, attendance=st.none() | st.integers(0, 10**8),
    ),
    Building: st.builds(
        Building, id=LINE, name=LINE, area_m2=st.none() | NUMBER,
        year_built=st.none() | st.integers(1500, 2199),
        special_features=st.lists(LINE, max_size=3).map(tuple),
    ),
    Valuation: st.builds(
        Valuation, building=LINE, feature=st.none() | LINE, valued_on=DAY,
        amount=AMOUNT.filter(lambda a: a > 0),
    ),
    Terms: terms(),
    Claim: st.builds(
        Claim, number=LINE, cause=LINE, date_of_loss=DAY, paid=AMOUNT, outstanding=AMOUNT,
        deductible=st.none() | AMOUNT, description=st.none() | TEXT,
    ),
    Interest: st.builds(Interest, id=LINE, name=LINE, amount=st.none() | AMOUNT),
    AllocationKey: st.builds(
        AllocationKey, name=LINE, party=LINE, measure=st.none() | NUMBER.filter(lambda n: n >= 0),
    ),
    Decision: st.builds(Decision, renewal=DAY, question=LINE, decided_on=DAY, by=LINE),
    Delivery: st.builds(
        Delivery, renewal=DAY, document=LINE, to=LINE, delivered_on=DAY, message=st.none() | TEXT,
        attachments=st.lists(LINE, max_size=2).map(tuple), came_back=st.none() | LINE,
    ),
    Bound: st.builds(
        Bound, renewal=DAY, bound_on=DAY, by=LINE, words=st.none() | TEXT,
        accepted=st.lists(LINE, max_size=2).map(tuple), agreed=terms(),
    ),
    PolicyChecked: st.builds(
        PolicyChecked, renewal=DAY, checked_on=DAY, by=LINE, differences=st.integers(0, 99),
        done_about=st.none() | TEXT, seq=st.integers(1, 10**6),
    ),
    FindingSetAside: st.builds(FindingSetAside, renewal=DAY, finding=LINE, reason=TEXT),
    FormReturned: st.builds(FormReturned, renewal=DAY, form=LINE, document=LINE, returned_on=DAY),
    Note: st.builds(Note, id=LINE, text=TEXT),
    PackageBuilt: st.builds(
        PackageBuilt, renewal=DAY, version=st.integers(1, 9), built_on=DAY, document=LINE,
    ),
    PackageSealed: st.builds(
        PackageSealed, renewal=DAY, version=st.integers(1, 9), document=LINE, sealed=LINE,
        sealed_on=DAY, certificate=LINE,
    ),
    Answers: st.builds(
        Answers, renewal=DAY, form=LINE, subject=LINE, answered_on=DAY,
        answers=st.lists(st.builds(Answer, question=LINE, answer=TEXT), max_size=3).map(tuple),
    ),
    RequestSent: st.builds(
        RequestSent, renewal=DAY, number=st.integers(1, 9), sent_on=DAY, to=LINE, document=LINE,
        seq=st.integers(1, 10**6), changes=st.integers(0, 99),
    ),
    EvidenceSent: st.builds(
        EvidenceSent, holder=LINE, name=LINE, address=LINE, purpose=LINE, start=DAY, sent_on=DAY,
        document=LINE, seq=st.integers(1, 10**6),
    ),
    PaymentChoice: st.builds(PaymentChoice, renewal=DAY, plan=LINE, chosen_on=DAY, by=LINE),
    OriginalErased: st.builds(OriginalErased, document=LINE, reason=TEXT),
    Redaction: st.builds(Redaction, seq=st.integers(1, 10**6), reason=TEXT),
    ReviewSigned: st.builds(
        ReviewSigned, renewal=DAY, as_of=DAY, reviewer=LINE, licence=LINE, review_digest=LINE,
    ),
}  # fmt: skip


def refused(kind: type[Record], **fields: object) -> str:
    """Return the sentence with which a record is refused."""
    with pytest.raises(ValidationError) as caught:
        kind.model_validate(fields)
    return str(caught.value)


def test_every_kind_of_record_is_tried_below() -> None:
    assert set(KINDS) == set(RECORDS) == set(BY_KIND.values())
    assert all(BY_KIND[record.kind] is record for record in RECORDS)


@given(st.one_of(*KINDS.values()))
def test_a_record_comes_back_as_it_went_in(record: Record) -> None:
    body = record.body()
    again = type(record).read(body)
    assert again == record
    assert again.body() == body
    assert again.key == record.key


@given(st.one_of(*KINDS.values()))
def test_a_body_is_canonical_and_leaves_out_what_is_not_known(record: Record) -> None:
    held = json.loads(record.body())
    again = json.dumps(held, sort_keys=True, separators=(",", ":"), ensure_ascii=False)
    assert again == record.body()
    assert None not in held.values()
    assert not any(isinstance(value, float) for value in held.values())


@given(st.one_of(*KINDS.values()))
def test_a_body_is_kept_by_every_database(record: Record) -> None:
    assert record.body().encode("utf-8")
    assert "\0" not in record.body()


@pytest.mark.parametrize("value", [12.5, 1.0, True, False, float("nan"), float("inf")])
@pytest.mark.parametrize(("kind", "field"), [(Claim, "paid"), (Building, "area_m2")])
def test_floats_are_refused(kind: type[Record], field: str, value: float) -> None:
    start = {"number": "F-1", "cause": "fire", "date_of_loss": "2020-01-01"}
    given_ = start if kind is Claim else {"id": "hall", "name": "Hall"}
    assert "exact number" in refused(kind, **given_, **{field: value})


def test_a_float_in_a_body_is_refused() -> None:
    with pytest.raises(ValidationError, match="exact number"):
        Claim.read('{"number":"F-1","cause":"fire","date_of_loss":"2020-01-01","paid":1.5}')


@pytest.mark.parametrize(
    "value", ["NaN", "Infinity", "-Infinity", "sNaN", "twelve", "", "1 2", "0x1F"]
)
def test_what_is_no_number_is_refused(value: str) -> None:
    assert refused(Building, id="hall", name="Hall", area_m2=value)


@pytest.mark.parametrize("value", ["1e15", "1000000000000", "-1e12", "1e999999", 10**15])
def test_a_trillion_and_more_is_refused(value: object) -> None:
    assert "trillion" in refused(Interest, id="i", role="lender", name="Bank", amount=value)
    assert "trillion" in refused(Building, id="hall", name="Hall", area_m2=value)


def test_the_largest_amount_is_a_cent_below() -> None:
    largest = Interest(id="i", role="lender", name="Bank", amount=Decimal("999999999999.99"))
    assert Interest.read(largest.body()) == largest


@pytest.mark.parametrize("value", ["0.001", "1.005", "1e-9", "1e-999999"])
def test_fractions_of_a_cent_are_refused(value: str) -> None:
    assert "fractions of a cent" in refused(
        Interest, id="i", role="lender", name="Bank", amount=value
    )


def test_a_number_of_a_million_zeros_is_refused_before_it_fills_the_store() -> None:
    assert "zeros" in refused(Building, id="hall", name="Hall", area_m2="1e-999999")
    assert Building(id="hall", name="Hall", area_m2=Decimal(0)).area_m2 == 0


@pytest.mark.parametrize(
    ("given_", "kept"),
    [("5", "5.00"), ("5.1", "5.10"), ("1E+3", "1000.00"), ("-0", "0.00"), (7, "7.00")],
)
def test_amounts_are_kept_with_two_decimals(given_: object, kept: str) -> None:
    one = Interest.model_validate({"id": "i", "role": "lender", "name": "Bank", "amount": given_})
    assert json.loads(one.body())["amount"] == kept


@pytest.mark.parametrize(
    ("given_", "kept"), [("5.00", "5"), ("1E+3", "1000"), ("-0.0", "0"), ("0.250", "0.25")]
)
def test_numbers_are_kept_in_their_shortest_form(given_: str, kept: str) -> None:
    """So that one and the same number has one and the same digest."""
    one = Building.model_validate({"id": "hall", "name": "Hall", "area_m2": given_})
    assert json.loads(one.body())["area_m2"] == kept


BAD_LETTERS = [*map(chr, [*range(0x20), 0x7F, *range(0x80, 0xA0), 0xD800, 0xDBFF, 0xDC00, 0xDFFF])]


@pytest.mark.parametrize("letter", [c for c in BAD_LETTERS if c not in "\n\t"], ids=ascii)
def test_control_characters_and_lone_surrogates_are_refused(letter: str) -> None:
    """Unicode Standard: general categories Cc and Cs."""
    for field in ("name", "notes"):
        given_ = {"name": "Chapel", "province": "ON", field: f"a{letter}b"}
        assert refused(Organisation, **given_)
    assert refused(Note, id=f"a{letter}b", text="x")


def test_the_letters_refused_are_all_there_are() -> None:
    found = {c for c in map(chr, range(sys.maxunicode + 1)) if unicodedata.category(c) == "Cc"}
    assert found == {c for c in BAD_LETTERS if not "\ud800" <= c <= "\udfff"}


def test_line_ends_stay_in_prose_and_become_spaces_in_a_line() -> None:
    one = Organisation(name=" St.\tBede’s\n Chapel ", province="ON", notes="one\n\ttwo")
    assert (one.name, one.notes) == ("St. Bede’s Chapel", "one\n\ttwo")


def test_letters_with_accents_are_kept_in_one_form() -> None:
    """Unicode Standard Annex 15: form NFC of e with a combining acute accent."""
    assert Note(id="e\u0301", text="e\u0301").body() == Note(id="é", text="é").body()


@pytest.mark.parametrize("name", ["", " ", "\u00a0", "\u2028", "\n"])
def test_an_id_without_a_letter_is_refused(name: str) -> None:
    assert refused(Note, id=name, text="x")


@pytest.mark.parametrize(("length", "field"), [(301, "name"), (81, "province"), (10_001, "notes")])
def test_texts_beyond_all_measure_are_refused(length: int, field: str) -> None:
    given_ = {"name": "Chapel", "province": "ON", field: "x" * length}
    assert refused(Organisation, **given_)
    given_[field] = given_[field][1:]
    assert len(getattr(Organisation.model_validate(given_), field)) == length - 1


@pytest.mark.parametrize(
    "day", ["1899-12-31", "1900-01-01", "2200-01-01", "9999-12-31", "0001-01-01"]
)
def test_days_of_no_living_policy_are_refused(day: str) -> None:
    """1899-12-30 and 1900-01-00 are what spreadsheets make of an empty or broken date."""
    assert "check the year" in refused(Claim, number="F-1", cause="fire", date_of_loss=day)


@pytest.mark.parametrize("day", ["2020-02-30", "30/02/2020", "2020", "yesterday", 1.5])
def test_what_is_no_day_is_refused(day: object) -> None:
    assert refused(Claim, number="F-1", cause="fire", date_of_loss=day)


@pytest.mark.parametrize("year", [1499, 2200, -1, 19.5, "MCM"])
def test_years_of_no_standing_building_are_refused(year: object) -> None:
    assert refused(Building, id="hall", name="Hall", year_built=year)


def test_unknown_names_and_choices_are_refused() -> None:
    assert "colour" in refused(Building, id="hall", name="Hall", colour="red")
    assert refused(Building, id="hall", name="Hall", ownership="borrowed")


def test_a_record_cannot_be_changed() -> None:
    hall = Building(id="hall", name="Hall")
    with pytest.raises(ValidationError):
        hall.name = "Shed"  # type: ignore[misc]


def test_terms_must_end_after_they_start() -> None:
    for end in ("2026-12-01", "2026-11-30"):
        assert "end after they start" in refused(Terms, stage="issued", start="2026-12-01", end=end)


def test_a_valuation_of_nothing_is_refused() -> None:
    for amount in ("0", "-1"):
        assert refused(Valuation, building="hall", amount=amount, valued_on="2020-01-01")


def test_a_coinsurance_share_lies_between_nothing_and_all() -> None:
    for share in ("-0.1", "1.01", "80"):
        with pytest.raises(ValidationError):
            Coverage.model_validate({"coverage": "building", "coinsurance": share})


KEYS: list[tuple[type[Record], dict[str, Any], str]] = [
    (Organisation, {"name": "Chapel", "province": "ON"}, ""),
    (Operations, {}, ""),
    (Contact, {"id": "c1", "name": "Ann"}, "c1"),
    (Authority, {"contact": "c1", "area": "claims"}, "c1/claims"),
    (Valuation, {"building": "hall", "amount": 1, "valued_on": "2020-01-01"},
     "hall/building/2020-01-01"),
    (Valuation, {"building": "hall", "valued": "feature", "feature": "organ", "amount": 1,
                 "valued_on": "2020-01-01"}, "hall/feature:organ/2020-01-01"),
    (Terms, {"stage": "issued", "start": "2025-12-01", "end": "2026-12-01"}, "2025-12-01/issued"),
    (Claim, {"number": "F-1", "cause": "fire", "date_of_loss": "2020-01-01"}, "F-1"),
    (OriginalErased, {"document": "0af3", "reason": "asked"}, "0af3"),
    (Redaction, {"seq": 7, "reason": "asked"}, "7"),
]  # fmt: skip


@pytest.mark.parametrize(("kind", "fields", "key"), KEYS)
def test_a_records_key_tells_it_from_others_of_its_kind(
    kind: type[Record], fields: dict[str, Any], key: str
) -> None:
    assert kind.model_validate(fields).key == key


def test_what_a_claim_cost_is_paid_and_outstanding_less_recovered() -> None:
    claim = Claim(
        number="F-1", cause="fire", date_of_loss=date(2020, 1, 1),
        paid=Decimal(100), outstanding=Decimal(50), recovered=Decimal(30),
    )  # fmt: skip
    assert claim.incurred == Decimal(120)


def test_terms_find_a_coverage_at_its_location_else_the_one_for_everywhere() -> None:
    hall = Coverage(coverage="building", location="hall", limit=Decimal(1))
    everywhere = Coverage(coverage="building", limit=Decimal(2))
    one = Terms.model_validate(
        {
            "stage": "issued",
            "start": "2025-12-01",
            "end": "2026-12-01",
            "currency": "USD",
            "coverages": (hall, everywhere),
        }
    )
    assert one.find("building", "hall") == hall
    assert one.find("building", "shed") == one.find("building") == everywhere
    assert one.find("contents") is None
    assert one.period == Period(date(2025, 12, 1), date(2026, 12, 1))
    assert one.money(Decimal(5)) == Money(Decimal(5), "USD")


@pytest.mark.parametrize(
    "yes", ["children", "youth", "vulnerable_adults", "day_care", "school", "camp"]
)
def test_whoever_cares_for_the_vulnerable_in_any_way_works_with_them(yes: str) -> None:
    assert Operations.model_validate({yes: True}).works_with_vulnerable
    assert not Operations.model_validate({yes: False}).works_with_vulnerable
    assert not Operations().works_with_vulnerable
