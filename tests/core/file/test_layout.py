"""The workbook's layout: every field of every record has its column, and comes back from it."""

from __future__ import annotations

from datetime import date
from decimal import Decimal
from itertools import chain

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterday.core.file import layout
from quarterday.core.file.layout import SHEETS, Sheet, rows
from quarterday.core.file.records import (
    AllocationKey,
    Authority,
    Building,
    Claim,
    Contact,
    Decision,
    Interest,
    Note,
    Operations,
    Organisation,
    Record,
    Terms,
    Valuation,
)
from quarterday.core.file.records.terms import Coverage, Option, Premium, SharedLimit, StatedTotal

BY_NAME = {sheet.name: sheet for sheet in SHEETS}
TERMS = Terms(
    stage="offered",
    start=date(2026, 12, 1),
    end=date(2027, 12, 1),
    coverages=(
        Coverage(coverage="building", location="hall", excluded_causes=("earthquake", "glass")),
        Coverage(coverage="contents", damages=()),
    ),
    shared_limit=SharedLimit(amount=Decimal(9), tops_up=("by-laws", "extra-expense")),
    premiums=(Premium(coverage="building", amount=Decimal(5)),),
    totals=(StatedTotal(of="total", amount=Decimal(5)),),
    options=(Option(coverage="earthquake"),),
)


def test_the_sheets_are_the_kinds_of_a_workbook_and_the_parts_of_terms() -> None:
    assert {sheet.record for sheet in SHEETS} == {
        Organisation, Contact, Authority, Operations, Building, Valuation, Terms, Claim, Interest,
        AllocationKey,
    }  # fmt: skip
    assert [sheet.name for sheet in SHEETS if sheet.part] == [
        "Coverages", "Premiums", "Totals", "Options",
    ]  # fmt: skip
    assert len(BY_NAME) == len(SHEETS)


@pytest.mark.parametrize("sheet", SHEETS, ids=lambda sheet: sheet.name)
def test_every_field_has_exactly_one_column(sheet: Sheet) -> None:
    fields = [column.field for column in sheet.columns]
    assert len(fields) == len(set(fields)) == len(sheet.by_heading)
    expected = {"account", *sheet.model.model_fields}
    if sheet.part:
        expected |= set(layout.TERMS_KEY)
    elif sheet.record is Terms:
        expected -= {"coverages", "premiums", "totals", "options", "shared_limit"}
        expected |= {f"shared_limit_{field}" for field in SharedLimit.model_fields}
    assert set(fields) == expected


@pytest.mark.parametrize("sheet", SHEETS, ids=lambda sheet: sheet.name)
def test_a_row_begins_with_the_account_and_headings_are_plain_words(sheet: Sheet) -> None:
    assert sheet.columns[0] == layout.Column("account", "account", "text", required=True)
    for column in sheet.columns:
        assert column.heading == column.field.replace("_", " ") == column.heading.lower()
        assert bool(column.choices) == (column.kind == "choice") or column.kind == "list"


@pytest.mark.parametrize(
    ("sheet", "heading", "kind"),
    [
        ("Organisations", "province", "text"),
        ("Organisations", "fiscal year end", "month-day"),
        ("Organisations", "language", "choice"),
        ("Contacts", "is key", "yes-no"),
        ("Buildings", "area m2", "number"),
        ("Buildings", "year built", "integer"),
        ("Buildings", "special features", "list"),
        ("Valuations", "amount", "amount"),
        ("Valuations", "valued on", "date"),
        ("Coverages", "coinsurance", "ratio"),
        ("Coverages", "limit", "amount"),
        ("Coverages", "damages", "list"),
        ("Claims", "paid", "amount"),
        ("Terms", "shared limit amount", "amount"),
        ("Terms", "shared limit meant for", "choice"),
        ("Operations", "payroll", "amount"),
        ("Operations", "payroll kept", "ratio"),
        ("Operations", "giving kept", "ratio"),
        ("Operations", "premises share", "ratio"),
        ("Operations", "income growth", "ratio"),
    ],
)
def test_a_column_says_what_its_cells_hold(sheet: str, heading: str, kind: str) -> None:
    assert BY_NAME[sheet].by_heading[heading].kind == kind


def test_required_columns_are_those_without_which_there_is_no_record() -> None:
    def required(sheet: str) -> set[str]:
        return {column.field for column in BY_NAME[sheet].columns if column.required}

    assert required("Organisations") == {"account", "name", "province"}
    assert required("Buildings") == {"account", "id", "name"}
    assert required("Operations") == {"account"}
    assert required("Terms") == {"account", "stage", "start", "end"}
    assert required("Coverages") == {"account", "stage", "start", "coverage"}


def test_a_column_says_what_its_ids_name_and_whether_it_may_stay_unknown() -> None:
    coverages, totals = BY_NAME["Coverages"].by_heading, BY_NAME["Totals"].by_heading
    assert coverages["coverage"].refers == coverages["sublimit of"].refers == "coverage"
    assert coverages["location"].refers == "building"
    assert coverages["excluded causes"].refers == "cause"
    assert totals["id"].refers == "total"
    assert coverages["damages"].may_be_unknown
    assert not coverages["excluded causes"].may_be_unknown
    assert BY_NAME["Buildings"].by_heading["storeys"].may_be_unknown
    assert not BY_NAME["Buildings"].by_heading["ownership"].may_be_unknown


def test_terms_become_one_row_and_one_for_each_of_their_parts() -> None:
    made = [(sheet.name, row) for sheet, row in rows("A1", TERMS)]
    assert [name for name, _ in made] == [
        "Terms", "Coverages", "Coverages", "Premiums", "Totals", "Options",
    ]  # fmt: skip
    for _, row in made:
        assert (row["account"], row["stage"], row["start"]) == (
            "A1", "offered", date(2026, 12, 1),
        )  # fmt: skip
    assert made[0][1]["shared limit amount"] == Decimal(9)
    assert made[0][1]["shared limit tops up"] == "by-laws; extra-expense"
    assert made[1][1]["excluded causes"] == "earthquake; glass"


def test_a_list_that_is_empty_differs_from_one_that_is_not_known() -> None:
    told, silent = (row for sheet, row in rows("A1", TERMS) if sheet.name == "Coverages")
    assert (told["damages"], silent["damages"]) == (None, "none")
    assert silent["excluded causes"] == ""


def test_a_record_is_written_whole() -> None:
    hall = Building(id="hall", name="Hall", storeys=Decimal(2), heritage=True)
    ((sheet, row),) = rows("A1", hall)
    assert set(row) == set(sheet.by_heading)
    kept = {c.field: row[c.heading] for c in sheet.columns if c.field != "account"}
    assert Building.model_validate({**kept, "special_features": ()}) == hall


def test_what_is_done_on_a_file_is_not_a_sheet() -> None:
    decision = Decision(
        renewal=date(2026, 12, 1), question="earthquake", answer="later",
        decided_on=date(2026, 11, 1), by="Ann",
    )  # fmt: skip
    acts: tuple[Record, ...] = (decision, Note(id="n", text="x"))
    assert list(chain.from_iterable(rows("A1", act) for act in acts)) == []


ITEMS = st.lists(
    st.text(st.characters(exclude_categories=("Cc", "Cs")), min_size=1)
    .map(str.strip)
    .filter(lambda item: item and not item.endswith("\\")),
    max_size=5,
)


@given(ITEMS)
def test_a_list_comes_back_from_its_cell(items: list[str]) -> None:
    assert layout.split(layout.joined(items)) == tuple(items)


@pytest.mark.parametrize(
    ("cell", "items"),
    [
        ("organ; steeple", ("organ", "steeple")),
        ("organ;steeple;", ("organ", "steeple")),
        ("organ\nsteeple", ("organ", "steeple")),
        (r"a \; b; c", ("a ; b", "c")),
        ("  ;; ", ()),
        ("", ()),
    ],
)
def test_lists_are_read_as_people_write_them(cell: str, items: tuple[str, ...]) -> None:
    assert layout.split(cell) == items
