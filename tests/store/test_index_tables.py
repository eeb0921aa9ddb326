"""Index tables: what lists need, made from the entries alone, and always what they say."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from decimal import Decimal
from uuid import uuid4

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from quarterday.core.file.entry import Draft, Entry, Origin
from quarterday.core.file.records import Building, Claim, Organisation, Record, Terms
from quarterday.core.file.records.terms import Coverage, Premium, StatedTotal
from quarterday.store import bulk, ledger, whole_book
from quarterday.store.conflict import Conflict
from quarterday.store.index import folded
from quarterday.store.models import (
    IndexedBuilding,
    IndexedClaim,
    IndexedCoverage,
    IndexedFile,
)
from quarterday.store.refusals import NothingToRedact
from quarterday.store.verify import rebuild, verify

pytestmark = pytest.mark.django_db
Save = Callable[..., tuple[Entry, ...]]
CHURCH = Organisation(
    name="Église Saint-Érable", known_as="La Ruche", province="QC", language="fr",
    organisation_class="worship", renewal_date=date(2026, 12, 1),
)  # fmt: skip


def terms(stage: str, year: int, limit: str, *amounts: str) -> Terms:
    return Terms.model_validate(
        {
            "stage": stage,
            "start": date(year, 12, 1),
            "end": date(year + 1, 12, 1),
            "coverages": [
                Coverage(coverage="building", location="hall", limit=Decimal(limit)),
                Coverage(coverage="contents", limit=Decimal(50000), deductible=Decimal(1000)),
            ],
            "premiums": [Premium(coverage="building", amount=Decimal(a)) for a in amounts],
        }
    )


def line(file: str = "A1") -> IndexedFile:
    return IndexedFile.objects.get(file=file)


def test_a_file_without_terms_renews_on_the_date_it_states(save: Save) -> None:
    save("A1", CHURCH)
    found = line()
    assert (found.name, found.province, found.language) == ("Église Saint-Érable", "QC", "fr")
    assert (found.organisation_class, found.renewal_date) == ("worship", date(2026, 12, 1))
    assert (found.premium_expiring, found.premium_offered, found.currency) == (None, None, "")


def test_the_list_shows_the_premiums_before_tax_of_expiring_and_offered_terms(save: Save) -> None:
    save("A1", CHURCH, terms("issued", 2025, "900000", "1200.10", "0.20"))
    save("A1", terms("offered", 2026, "950000", "1300", "-50"))
    found = line()
    assert (found.premium_expiring, found.premium_offered) == (Decimal("1200.30"), Decimal(1250))
    assert (found.renewal_date, found.currency) == (date(2026, 12, 1), "CAD")


def test_registration_numbers_lead_to_their_files(save: Save) -> None:
    first = CHURCH.model_copy(update={"registration_number": "123456782RR0001"})
    save("A1", first)
    save("A2", CHURCH)
    assert whole_book.registrations() == {"123456782RR0001": "A1"}
    save("A1", first.model_copy(update={"registration_number": "876543217RR0001"}))
    assert whole_book.registrations() == {"876543217RR0001": "A1"}


def test_terms_without_a_premium_table_show_the_printed_subtotal(save: Save) -> None:
    printed = (
        StatedTotal(of="tax", amount=Decimal(108)),
        StatedTotal(of="subtotal", amount=Decimal(1200)),
    )
    save("A1", CHURCH, terms("issued", 2025, "1").model_copy(update={"totals": printed}))
    assert line().premium_expiring == Decimal(1200)


def test_a_premium_beyond_all_measure_is_not_shown_and_stops_nothing(save: Save) -> None:
    save("A1", CHURCH, terms("issued", 2025, "1", *["999999999999.99"] * 11))
    assert line().premium_expiring is None
    assert verify().is_sound


def test_the_largest_amounts_are_kept_to_the_cent(save: Save) -> None:
    largest = Decimal("999999999999.99")
    fire = Claim(
        number="F-1", cause="fire", date_of_loss=date(2020, 1, 1), paid=largest, outstanding=largest
    )
    save("A1", CHURCH, fire, terms("issued", 2025, str(largest), str(largest)))
    assert IndexedClaim.objects.get().incurred == 2 * largest
    assert line().premium_expiring == largest
    assert verify().is_sound


def test_a_building_shows_the_newest_sum_insured_at_its_own_location(save: Save) -> None:
    hall = Building(id="hall", name="Hall", province="ON", area_m2=Decimal("412.345"))
    save("A1", CHURCH, hall, Building(id="shed", name="Shed"), terms("issued", 2025, "900000"))
    save("A1", terms("offered", 2026, "950000"))
    shown = IndexedBuilding.objects.order_by("building")
    assert [(b.building, b.province, b.area_m2, b.sum_insured) for b in shown] == [
        ("hall", "ON", Decimal("412.35"), Decimal(950000)),
        ("shed", "QC", None, None),
    ]


def test_coverages_are_those_of_the_coming_renewal_alone(save: Save) -> None:
    old, issued = terms("issued", 2024, "800000"), terms("issued", 2025, "900000")
    save("A1", CHURCH, old, issued, terms("offered", 2026, "950000"))
    found = IndexedCoverage.objects.filter(coverage="building").order_by("start")
    assert [(c.stage, c.start.year, c.limit) for c in found] == [
        ("issued", 2025, Decimal(900000)),
        ("offered", 2026, Decimal(950000)),
    ]


def test_claims_are_found_by_cause_over_the_whole_book(save: Save) -> None:
    for file in ("A1", "A2"):
        fire = Claim(number="F-1", cause="fire", date_of_loss=date(2020, 1, 1), paid=Decimal(5))
        save(file, CHURCH, fire, fire.model_copy(update={"number": "W-1", "cause": "water-escape"}))
    fires = IndexedClaim.objects.filter(cause="fire").order_by("file")
    assert [(c.file_id, c.file.name, c.incurred) for c in fires] == [
        ("A1", CHURCH.name, Decimal(5)),
        ("A2", CHURCH.name, Decimal(5)),
    ]


def test_a_file_that_does_not_say_whose_it_is_stands_in_the_list_without_a_name(
    save: Save,
) -> None:
    save("A1", Building(id="hall", name="Hall", province="ON"), terms("issued", 2025, "1"))
    assert (line().name, line().renewal_date) == ("", None)
    assert IndexedBuilding.objects.get().province == "ON"
    assert verify().is_sound


@pytest.mark.parametrize("values", [{"file_id": "A1"}, {"file_id": "A1", "colour": "red"}])
def test_a_row_that_lacks_a_column_or_has_one_too_many_is_refused(values: dict[str, str]) -> None:
    whole = dict.fromkeys(bulk.columns(IndexedClaim), "")
    assert len(bulk.row(IndexedClaim, **whole)) == len(whole)
    for given_ in (values, {**whole, **values, "shape": "round"}):
        with pytest.raises(KeyError):
            bulk.row(IndexedClaim, **given_)


@pytest.mark.parametrize(
    ("text", "plain"),
    [
        ("Érable", "erable"),
        ("  L’Œuvre   d’ÂGE d’or ", "l’oeuvre d’age d’or"),
        ("Straße", "strasse"),
        ("ﬁn", "fin"),  # a ligature of one character
        ("E\u0301", "e"),  # an accent of its own
    ],
)
def test_names_are_folded_to_letters_without_accents(text: str, plain: str) -> None:
    """Unicode Standard Annex 15 (normalisation form KD) and the Unicode default case folding."""
    assert folded(text) == plain


@given(st.text())
def test_folding_twice_changes_nothing_more(text: str) -> None:
    assert folded(folded(text)) == folded(text)


FILES = ("A1", "A2")
BUILDINGS = st.builds(
    Building,
    id=st.sampled_from(("hall", "shed")),
    name=st.sampled_from(("Hall", "Église")),
    town=st.none() | st.just("Pinebrook"),
    area_m2=st.none() | st.decimals(0, 10**6, places=3),
    year_built=st.none() | st.integers(1800, 2026),
)
CLAIMS = st.builds(
    Claim,
    number=st.sampled_from(("F-1", "W-1")),
    cause=st.sampled_from(("fire", "water-escape")),
    date_of_loss=st.dates(date(2016, 1, 1), date(2026, 1, 1)),
    paid=st.decimals(0, 10**6, places=2),
    outstanding=st.decimals(0, 10**6, places=2),
)
TERMS = st.builds(
    terms,
    st.sampled_from(("issued", "offered", "requested")),
    st.integers(2024, 2026),
    st.integers(1, 10**6).map(str),
    st.integers(-(10**4), 10**6).map(str),
)
RECORDS = st.one_of(st.just(CHURCH), BUILDINGS, CLAIMS, TERMS)
ACTS = st.lists(
    st.tuples(
        st.sampled_from(FILES),
        st.sampled_from(("add", "add", "add", "withdraw", "redact")),
        st.lists(RECORDS, min_size=1, max_size=3),
        st.none() | st.integers(0, 12),
    ),
    max_size=12,
)


def act(file: str, what: str, records: list[Record], seen: int | None) -> None:
    """Do one of the acts there are; one that is refused must leave no trace, so it is not told."""
    origin = Origin(way="office")
    try:
        if what == "redact":
            ledger.redact(file, seen or 1, "asked", by="bea")
        else:
            gone = what == "withdraw"
            drafts = [
                Draft(what, one.kind, one.key, None if gone else one.body(), origin)
                for one in records
            ]
            ledger.append(file, drafts, by="ann", expected_seq=seen)
    except (Conflict, NothingToRedact):
        pass


@settings(max_examples=60, deadline=None)
@given(ACTS)
def test_after_any_acts_the_tables_are_what_the_entries_make_of_them(
    acts: list[tuple[str, str, list[Record], int | None]],
) -> None:
    run = uuid4().hex[:8]
    names = {file: f"{run}-{file}" for file in FILES}
    for file in FILES:
        act(names[file], "add", [CHURCH], None)
    for file, what, records, seen in acts:
        act(names[file], what, records, seen)
    kept = [_rows(file) for file in names.values()]
    for file in names.values():
        assert verify(file).is_sound
    rebuild()
    assert [_rows(file) for file in names.values()] == kept


def _rows(file: str) -> list[list[tuple[object, ...]]]:
    tables = (IndexedFile, IndexedBuilding, IndexedClaim, IndexedCoverage)
    found = []
    for table in tables:
        names = [f.attname for f in table._meta.concrete_fields if f.attname != "id"]
        found.append(sorted(table.objects.filter(file=file).values_list(*names), key=repr))
    return found
