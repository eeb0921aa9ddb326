"""The published schema is the layout's, valid Frictionless, and our own CSV files conform to it."""

from __future__ import annotations

import shutil
from datetime import date
from decimal import Decimal
from pathlib import Path

from frictionless import Package

from quarterday.core.file.layout import SHEETS
from quarterday.core.file.records import Building, Claim, Contact, Organisation, Terms, Valuation
from quarterday.core.file.records.terms import Coverage, Premium
from quarterday.intake.schema import descriptor, write
from quarterday.intake.vocabulary import heading, sheet_name
from quarterday.intake.write import write_csv

KEPT = Path(__file__).parents[2] / "docs" / "schema" / "datapackage.json"
PAGE = KEPT.parents[1] / "workbook-columns.md"
RECORDS = (
    Organisation(
        name="=Église", province="QC", fiscal_year_end="12-31", confirmed_on=date(2026, 1, 1)
    ),
    Contact(id="a", name="Ada", is_key=True),
    Building(id="01", name="Hall", sprinklers=False, area_m2=Decimal("412.5"), year_built=1921),
    Valuation(building="01", amount=Decimal("1234567.89"), valued_on=date(2024, 1, 31)),
    Terms(
        stage="issued",
        start=date(2025, 12, 31),
        end=date(2026, 12, 31),
        coverages=(Coverage(coverage="building", location="01", coinsurance=Decimal("0.9")),),
        premiums=(Premium(coverage="building", location="01", amount=Decimal("3000.5")),),
    ),
    Claim(number="C-1", cause="fire", date_of_loss=date(2020, 2, 2)),
)


def test_the_kept_schema_is_the_one_of_the_layout(tmp_path: Path) -> None:
    """Else: python -m quarterday.intake.schema docs/schema/datapackage.json."""
    write(tmp_path / "new.json")
    assert (tmp_path / "new.json").read_text("utf-8") == KEPT.read_text("utf-8")


def test_the_kept_page_of_columns_is_the_one_of_the_layout(tmp_path: Path) -> None:
    """Else: python -m quarterday.intake.schema docs/workbook-columns.md."""
    write(tmp_path / "new.md")
    assert (tmp_path / "new.md").read_text("utf-8") == PAGE.read_text("utf-8")


def test_the_page_lists_every_column_in_both_languages() -> None:
    text = PAGE.read_text("utf-8")
    for sheet in SHEETS:
        assert f"## {sheet.name} · {sheet_name(sheet, 'fr')}" in text
        for column in sheet.columns:
            assert f"| {column.heading} | {heading(sheet, column, 'fr')} |" in text


def test_the_frictionless_library_finds_no_fault_in_it() -> None:
    assert list(Package.metadata_validate(descriptor())) == []
    assert [r.name for r in Package(str(KEPT)).resources] == [
        sheet.name.lower() for sheet in SHEETS
    ]


def test_the_csv_files_we_write_conform_to_it_by_the_frictionless_library(tmp_path: Path) -> None:
    write_csv([("0007", record) for record in RECORDS], tmp_path)
    shutil.copy(KEPT, tmp_path)
    report = Package(str(tmp_path / "datapackage.json")).validate()
    assert report.valid, report.flatten(["fieldName", "message"])


def test_a_file_that_does_not_conform_is_found_by_the_frictionless_library(tmp_path: Path) -> None:
    write_csv([("0007", record) for record in RECORDS], tmp_path)
    shutil.copy(KEPT, tmp_path)
    claims = tmp_path / "Claims.csv"
    claims.write_text(claims.read_text("utf-8-sig").replace("2020-02-02", "soon"), "utf-8")
    found = Package(str(tmp_path / "datapackage.json")).validate().flatten(["fieldName"])
    assert found == [["date of loss"]]
