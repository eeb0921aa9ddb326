"""What is written is read back as it was, from workbooks and CSV files, in both languages."""

from __future__ import annotations

import tempfile
from collections.abc import Callable
from datetime import date
from decimal import Decimal
from pathlib import Path
from typing import Any, get_args

import openpyxl
import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from pydantic import BaseModel

from quarterday.catalogue.load import reference
from quarterday.core.file.layout import SHEETS, Column, Sheet
from quarterday.core.file.records import Building, Organisation, Record, Terms
from quarterday.core.file.records.terms import SharedLimit
from quarterday.intake.assemble import KEYS, PART_KEYS
from quarterday.intake.changes import part_key
from quarterday.intake.parse import parse
from quarterday.intake.write import write_csv, write_workbook
from tests.intake.books import file_of, plan_of

ACCOUNT = "0007"
COVERAGES, CAUSES = sorted(reference().coverages), sorted(reference().causes)
ORGANISATION = Organisation(name="St. Brendan", province="ON")
BUILDINGS = (Building(id="01", name="Hall"), Building(id="02", name="Barn"))
DAYS = st.dates(date(1901, 1, 1), date(2199, 12, 31))
# Characters that XML 1.0 (2.2) allows; noncharacters and controls cannot stand in a workbook.
TEXT = st.text(st.characters(exclude_categories=["Cc", "Cs", "Cn", "Zl", "Zp"]), max_size=30)
LINE = TEXT.map(lambda t: " ".join(t.split())).filter(bool)
AMOUNTS = st.decimals(min_value=1, max_value=10**12 - 1, places=2)
NUMBERS = st.decimals(min_value=0, max_value=10**9, places=6).map(lambda d: d.normalize() + 0)
RATIOS = st.decimals(min_value=Decimal("0.0001"), max_value=1, places=4)
KINDS: dict[str, st.SearchStrategy[Any]] = {
    "amount": AMOUNTS,
    "number": NUMBERS,
    "integer": st.integers(0, 10_000),
    "ratio": RATIOS,
    "date": DAYS,
    "month-day": st.sampled_from(["12-31", "02-29", "06-30"]),
    "yes-no": st.booleans(),
    "text": LINE,
}


def values(column: Column) -> st.SearchStrategy[Any]:
    if column.field == "currency":
        return st.just("CAD")
    refers: dict[str, list[str]] = {
        "coverage": COVERAGES, "cause": CAUSES, "building": ["01", "02"], "contact": ["a", "b"],
        "province": ["ON", "QC"], "total": ["*"],
    }  # fmt: skip
    known = refers.get(column.refers) or list(column.choices)
    one = st.sampled_from(known) if known else KINDS.get(column.kind, LINE)
    if column.kind == "text" and not known:
        one = one.map(lambda t: t[:30])
    if "year" in column.field and column.kind == "integer":
        one = st.integers(1500, 2199)
    found = st.lists(one, max_size=3).map(tuple) if column.kind == "list" else one
    return st.none() | found if column.may_be_unknown else found


def part(sheet: Sheet) -> st.SearchStrategy[Any]:
    fields = {c.field: c for c in sheet.columns if c.field in sheet.model.model_fields}
    return st.builds(sheet.model, **{name: values(column) for name, column in fields.items()})


def unique(sheet: Sheet) -> st.SearchStrategy[Any]:
    name = str(sheet.part)
    lines = st.lists(part(sheet), max_size=4, unique_by=lambda line: part_key(name, line))
    return lines.map(tuple)


def terms() -> st.SearchStrategy[Terms]:
    sheet = next(s for s in SHEETS if s.name == "Terms")
    columns = {c.field: c for c in sheet.columns}
    own = {f: values(c) for f, c in columns.items() if f in Terms.model_fields}
    parts = {str(s.part): unique(s) for s in SHEETS if s.part}
    limit = st.builds(
        SharedLimit,
        amount=AMOUNTS,
        tops_up=st.lists(st.sampled_from(COVERAGES), max_size=3).map(tuple),
        meant_for=st.sampled_from([None, "owner", "renter"]),
    )
    days = {
        "start": st.dates(date(2020, 1, 1), date(2020, 12, 31)),
        "end": st.just(date(2021, 6, 1)),
    }
    return st.builds(Terms, **(own | parts | days), shared_limit=st.none() | limit)


def records() -> st.SearchStrategy[Record]:
    whole = [s for s in SHEETS if s.part is None and s.record is not Terms]
    whole = [s for s in whole if s.name != "Authorities"]  # they need a contact beside them
    return st.one_of(terms(), *(part(s) for s in whole))


Write = Callable[[Any, Path, str], None]


def with_others(record: Record) -> list[Record]:
    """Return the record with the organisation and buildings it needs beside it."""
    others = [r for r in (ORGANISATION, *BUILDINGS) if (r.kind, r.key) != (record.kind, record.key)]
    return [*others, record]


def read_back(record: Record, write: Write, name: str, language: str) -> Record:
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / name
        write([(ACCOUNT, r) for r in with_others(record)], path, language)
        done = plan_of(parse(path))
    assert not done.of("refused"), done.of("refused")
    return next(
        i.record
        for i in done.items
        if type(i.record) is type(record) and i.record.key == record.key
    )


WAYS = [(write_workbook, "book.xlsx"), (write_csv, "book")]


@settings(max_examples=40, deadline=None, suppress_health_check=list(HealthCheck))
@given(records(), st.sampled_from(WAYS), st.sampled_from(["en", "fr"]))
def test_every_record_is_read_back_as_it_was(
    record: Record, way: tuple[Write, str], language: str
) -> None:
    write, name = way
    assert read_back(record, write, name, language) == record


@settings(max_examples=25, deadline=None, suppress_health_check=list(HealthCheck))
@given(records(), st.sampled_from(WAYS))
def test_an_export_loaded_over_its_own_file_changes_nothing(
    record: Record, way: tuple[Write, str]
) -> None:
    write, name = way
    held = with_others(record)
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / name
        write([(ACCOUNT, r) for r in held], path, "en")
        done = plan_of(parse(path), {ACCOUNT: file_of(ACCOUNT, held)})
    assert {item.status for item in done.items} == {"unchanged"}
    assert not done.needs_acceptance


@pytest.mark.parametrize(
    "text", ["=1+1", "+1 555-0101", "-5", "@cmd", '=HYPERLINK("x")', "N/A", "'-"]
)
def test_a_text_is_never_a_formula(tmp_path: Path, text: str) -> None:
    organisation = ORGANISATION.model_copy(update={"name": text})
    write_workbook([(ACCOUNT, organisation)], tmp_path / "b.xlsx")
    cell = openpyxl.load_workbook(tmp_path / "b.xlsx")["Organisations"]["B2"]
    assert cell.data_type == "s"
    write_csv([(ACCOUNT, organisation)], tmp_path / "b")
    line = (tmp_path / "b" / "Organisations.csv").read_text("utf-8-sig").splitlines()[1]
    assert line.split(",")[1].strip('"')[0] not in "=+-@"
    assert read_back(organisation, write_csv, "b", "en") == organisation


def test_a_ratio_above_what_is_usual_is_written_as_a_percentage(tmp_path: Path) -> None:
    """Else six tenths a year would be read as six tenths of one per cent."""
    sheet = next(s for s in SHEETS if s.name == "Coverages")
    line = sheet.model(
        coverage="building", automatic_increase=Decimal("0.6"), coinsurance=Decimal("0.9")
    )
    record = Terms(stage="issued", start=date(2025, 1, 1), end=date(2026, 1, 1), coverages=(line,))
    for write, name in WAYS:
        assert read_back(record, write, name, "en") == record


def test_equal_records_give_equal_bytes(tmp_path: Path) -> None:
    for name in ("a.xlsx", "b.xlsx"):
        write_workbook([(ACCOUNT, ORGANISATION)], tmp_path / name)
    assert (tmp_path / "a.xlsx").read_bytes() == (tmp_path / "b.xlsx").read_bytes()


def test_every_record_that_the_layout_holds_has_a_key_to_be_grouped_by() -> None:
    for sheet in SHEETS:
        fields = PART_KEYS[sheet.part] if sheet.part else KEYS[sheet.record]
        assert set(fields) <= set(sheet.model.model_fields)
        assert issubclass(sheet.model, BaseModel)
    assert set(PART_KEYS) == {sheet.part for sheet in SHEETS if sheet.part}


def test_languages_of_the_record_are_those_of_the_layout() -> None:
    language = Organisation.model_fields["language"].annotation
    assert get_args(language) == ("en", "fr")
