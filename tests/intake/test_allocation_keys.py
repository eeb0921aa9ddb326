"""Allocation keys come back from a workbook as they went in, under French headings too."""

from __future__ import annotations

from decimal import Decimal
from pathlib import Path

import pytest

from quarterday.core.file.layout import SHEETS, rows
from quarterday.core.file.records import AllocationKey
from quarterday.intake.vocabulary import choices, heading, normal, sheet_name, targets
from quarterday.intake.write import write_workbook

(SHEET,) = (sheet for sheet in SHEETS if sheet.record is AllocationKey)
LINE = AllocationKey(
    name="ministries", party="Youth drop-in", location="hall", family="property", by="area",
    measure=Decimal(260), portion=Decimal("0.5"), fund="Youth",
)  # fmt: skip


def test_a_line_of_a_key_is_one_row() -> None:
    ((sheet, row),) = rows("HW-1", LINE)
    assert sheet is SHEET
    assert row["party"] == "Youth drop-in"
    assert (row["family"], row["by"], row["measure"]) == ("property", "area", Decimal(260))


@pytest.mark.parametrize("column", SHEET.columns, ids=lambda column: column.heading)
def test_the_french_heading_of_every_column_means_that_column(column: object) -> None:
    said = heading(SHEET, column, "fr")  # type: ignore[arg-type]
    assert targets(SHEET)[normal(said)].column == column


@pytest.mark.parametrize(
    ("said", "meant"),
    [("superficie", "area"), ("m2", "area"), ("personnes", "headcount"), ("revenus", "revenue"),
     ("fixed share", "share"), ("direct", "location")],
)  # fmt: skip
def test_a_unit_is_read_as_people_write_it(said: str, meant: str) -> None:
    by = SHEET.by_heading["by"]
    assert choices("allocation key", by)[normal(said)] == meant


def test_it_is_written_under_its_french_name(tmp_path: Path) -> None:
    path = tmp_path / "cles.xlsx"
    write_workbook([("HW-1", LINE)], path, "fr")
    assert path.stat().st_size > 0
    assert sheet_name(SHEET, "fr") == "Répartition"
