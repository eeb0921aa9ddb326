"""The ugly workbook: what is good goes on, what is not is told, twice changes nothing."""

from __future__ import annotations

from datetime import date
from decimal import Decimal
from typing import Any

import pytest

from quarterday.core.file.records import Building, Claim, Organisation, Terms, Valuation
from quarterday.intake.parse import Parsed, parse
from quarterday.intake.plan import Plan
from tests.intake.books import after, plan_of
from tests.intake.ugly import build


@pytest.fixture(scope="module")
def book(tmp_path_factory: pytest.TempPathFactory) -> Parsed:
    path = tmp_path_factory.mktemp("ugly") / "ugly.xlsx"
    build(path)
    return parse(path)


@pytest.fixture(scope="module")
def done(book: Parsed) -> Plan:
    return plan_of(book)


def get(done: Plan, account: str, kind: type, key: str = "") -> Any:
    return next(
        i.record
        for i in done.items
        if i.account == account and isinstance(i.record, kind) and i.record.key == key
    )


def test_sheets_are_found_below_their_titles(done: Plan) -> None:
    assert {s.raw.name: s.sheet.name for s in done.map.sheets} == {
        "Organismes": "Organisations",
        "Immeubles (Québec)": "Buildings",
        "Immeubles ailleurs": "Buildings",
        "Évaluations": "Valuations",
        "Polices": "Terms",
        "Garanties": "Coverages",
        "Primes": "Premiums",
        "Sinistres": "Claims",
    }
    assert {s.header_row for s in done.map.sheets} == {4}


def test_the_parish_is_read_as_it_is(done: Plan) -> None:
    assert get(done, "0007", Organisation) == Organisation(
        name="Fabrique de Sainte-Odile-des-Pins",
        named_insured="Fabrique Sainte-Odile",
        organisation_class="worship",
        registration_number="811111115 RR 0001",
        province="QC",
        town="Val-des-Pins",
        language="fr",
        fiscal_year_end="12-31",
        renewal_date=date(2026, 12, 31),
    )


def test_its_buildings_stand_on_two_sheets(done: Plan) -> None:
    church = get(done, "0007", Building, "01")
    assert (church.construction, church.area_m2) == ("stone", Decimal("1152.0"))  # 12,400 ft2
    assert church.special_features == ("orgue", "vitraux", "clocher")
    assert (church.sprinklers, church.alarm_monitored, church.backwater_valve) == (
        False,
        True,
        True,
    )
    assert get(done, "0007", Building, "02").backwater_valve is None
    assert get(done, "0007", Building, "03").name == "Chapelle du rang 4"


def test_amounts_and_days_are_read_in_every_spelling(done: Plan) -> None:
    assert get(done, "0007", Valuation, "01/building/2024-01-01").amount == Decimal("4850000.00")
    assert get(done, "0007", Valuation, "02/building/2024-01-31").amount == Decimal("612500.50")
    assert get(done, "0012", Valuation, "H1/building/2021-03-01").amount == Decimal("1950000.00")
    assert get(done, "0012", Claim, "NS-9").paid == Decimal("12800.10")


def test_terms_hold_their_coverages_and_premiums(done: Plan) -> None:
    expiring = get(done, "0007", Terms, "2025-12-31/issued")
    assert [(c.coverage, c.location, c.limit) for c in expiring.coverages] == [
        ("building", "01", Decimal(4_200_000)),
        ("building", "02", Decimal(540_000)),
        ("sewer-backup", "*", Decimal(25_000)),
        ("earthquake", "*", Decimal(2_000_000)),
    ]
    assert expiring.coverages[0].coinsurance == Decimal("0.9")
    assert expiring.coverages[3].deductible_percent == Decimal("0.05")
    assert sum(line.amount for line in expiring.premiums) == Decimal("13252.00")


def test_what_cannot_be_right_is_refused_where_it_stands(done: Plan) -> None:
    refused = [(f.spot.sheet, f.spot.row, f.what.id) for f in done.of("refused")]
    assert refused == [
        ("Organismes", 8, "intake-same-number"),
        ("Organismes", 9, "intake-same-number"),
        ("Immeubles (Québec)", 7, "intake-not-a-number"),
        ("Évaluations", 7, "intake-greater-than"),
        ("Évaluations", 9, "intake-no-building"),
        ("Polices", 7, "intake-terms-held"),
        ("Garanties", 12, "intake-no-coverage"),
        ("Sinistres", 8, "intake-two-dates"),
        ("Sinistres", 10, "intake-contradicts"),
        ("Sinistres", 11, "intake-contradicts"),
        ("Sinistres", 12, "intake-organisation-refused"),
        ("Sinistres", 13, "intake-zero-date"),
        ("Sinistres", 14, "intake-trillion"),
        ("Sinistres", 15, "intake-no-cause"),
        ("Sinistres", 16, "intake-error-cell"),
        ("Sinistres", 17, "intake-no-account"),
    ]


def test_what_was_left_out_is_told(done: Plan) -> None:
    told = {fault.what.id for fault in done.of("note")}
    assert told >= {
        "intake-hidden-sheet",
        "intake-sheet-left-out",
        "intake-column-left-out",
        "intake-total-row",
        "intake-remark-row",
        "intake-twice",
        "intake-merged",
        "intake-ids-read",
    }


def test_loaded_a_second_time_everything_is_unchanged(book: Parsed, done: Plan) -> None:
    again = plan_of(book, after(done))
    assert {item.status for item in again.items} == {"unchanged"}
    assert len(again.items) == len(done.items)
