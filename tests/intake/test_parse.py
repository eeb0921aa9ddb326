"""Sheets are read with their true row numbers, and nothing of them is silently lost."""

from __future__ import annotations

import hashlib
import io
import random
from contextlib import suppress
from datetime import date, time
from pathlib import Path

import openpyxl
import pytest
import xlsxwriter

from quarterday.intake.parse import CellError, Parsed, parse_workbook
from quarterday.intake.refusals import Unreadable
from tests.intake.books import ORGANISATIONS, csv_folder, parsed, plan_of, previewed, said, workbook


def test_rows_have_their_true_numbers_though_the_first_are_blank() -> None:
    book = openpyxl.Workbook()
    page = book["Sheet"]
    page["C5"], page["D9"] = "heading", 12
    out = io.BytesIO()
    book.save(out)
    sheet = parse_workbook(out.getvalue(), "x").sheets[0]
    assert (sheet.first_row, sheet.first_column) == (5, 3)
    assert sheet.rows[0][0] == "heading"
    assert sheet.rows[9 - sheet.first_row][4 - sheet.first_column] == 12


def test_cells_come_as_the_kind_they_are() -> None:
    rows = [("text", 12.5, True, date(2024, 1, 31), "", "7")]
    assert parsed({"S": rows}).sheets[0].rows[0] == ["text", 12.5, True, date(2024, 1, 31), "", "7"]


@pytest.mark.parametrize(
    "code", ["#REF!", "#N/A", "#VALUE!", "#DIV/0!", "#NAME?", "#NUM!", "#NULL!"]
)
def test_every_error_of_a_spreadsheet_is_kept_as_an_error(code: str) -> None:
    """The seven error values of ECMA-376 Part 1, 18.18.11 (ST_CellType) and 22.10.2.2."""
    book = openpyxl.Workbook()
    page = book["Sheet"]
    page["A1"], page["B2"] = "x", code
    page["B2"].data_type = "e"
    page["D4"] = code
    page["D4"].data_type = "e"
    out = io.BytesIO()
    book.save(out)
    rows = parse_workbook(out.getvalue(), "x").sheets[0].rows
    assert rows[1][1] == CellError(code)
    assert rows[3][3] == CellError(code)


def test_a_formula_without_a_value_is_kept_as_an_error() -> None:
    rows = parsed({"S": [("total", "=1+1")]}).sheets[0].rows
    assert rows[0][1] == CellError("=", "uncalculated")


def test_a_zero_shown_as_a_day_is_not_blank() -> None:
    out = io.BytesIO()
    with xlsxwriter.Workbook(out) as book:
        page = book.add_worksheet()
        page.write_number(0, 0, 0, book.add_format({"num_format": "yyyy-mm-dd"}))
    assert parse_workbook(out.getvalue(), "x").sheets[0].rows[0][0] == time(0, 0)


def test_a_workbook_that_counts_its_days_from_1904_gives_the_same_days() -> None:
    """The 1904 date system: ECMA-376 Part 1, 18.2.28 (workbookPr, date1904)."""
    days = []
    for from_1904 in (False, True):
        out = io.BytesIO()
        with xlsxwriter.Workbook(out, {"date_1904": from_1904}) as book:
            form = book.add_format({"num_format": "yyyy-mm-dd"})
            book.add_worksheet().write_datetime(0, 0, date(2024, 1, 31), form)
        days.append(parse_workbook(out.getvalue(), "x").sheets[0].rows[0][0])
    assert days == [date(2024, 1, 31)] * 2


def test_a_hidden_sheet_is_left_out_and_told() -> None:
    book = openpyxl.Workbook()
    book["Sheet"]["A1"] = "seen"
    book.create_sheet("Old").sheet_state = "hidden"
    book.create_sheet("Older").sheet_state = "veryHidden"
    out = io.BytesIO()
    book.save(out)
    found = parse_workbook(out.getvalue(), "x")
    assert [sheet.name for sheet in found.sheets] == ["Sheet"]
    assert [(f.severity, f.spot.sheet) for f in found.faults] == [
        ("note", "Old"),
        ("note", "Older"),
    ]


def _with_link() -> Parsed:
    out = io.BytesIO()
    with xlsxwriter.Workbook(out) as book:
        page = book.add_worksheet("Organisations")
        for at, row in enumerate(ORGANISATIONS):
            page.write_row(at, 0, row)
        page.write_formula(1, 1, "='[other.xlsx]Sheet1'!A1", None, "St. Brendan")
    data = out.getvalue()
    return parse_workbook(_calculated(data), "x")


def _calculated(data: bytes) -> bytes:
    import zipfile

    out = io.BytesIO()
    with zipfile.ZipFile(io.BytesIO(data)) as old, zipfile.ZipFile(out, "w", 8) as new:
        for name in old.namelist():
            new.writestr(name, old.read(name).replace(b'fullCalcOnLoad="1"', b""))
    return out.getvalue()


def test_a_value_from_another_workbook_asks_to_be_accepted() -> None:
    done = plan_of(_with_link())
    assert len(done.items) == 2
    asked = said(done.of("asks"))
    assert asked == [
        (
            "Organisations, row 2: One cell takes its value from another"
            " workbook, as it was when last"
            " opened. Accept them, or paste them as values."
        )
    ]


def test_the_document_is_known_by_its_digest() -> None:
    data = workbook({"Organisations": ORGANISATIONS})
    found = parse_workbook(data, "book.xlsx")
    assert found.document == hashlib.sha256(data).hexdigest()
    assert found.original == data


def test_merged_cells_are_told_with_both_corners() -> None:
    book = openpyxl.Workbook()
    page = book["Sheet"]
    page["B2"] = "x"
    page.merge_cells("B2:C4")
    out = io.BytesIO()
    book.save(out)
    assert parse_workbook(out.getvalue(), "x").sheets[0].merged == (((2, 2), (4, 3)),)


def test_a_csv_folder_is_read_a_sheet_a_file(tmp_path: Path) -> None:
    found = csv_folder(
        tmp_path / "b", {"Organisations.csv": "account,name\n0007,A\n", "note.md": "x"}
    )
    assert found.way == "csv"
    assert [(s.name, s.rows) for s in found.sheets] == [
        ("Organisations", [["account", "name"], ["0007", "A"]])
    ]


@pytest.mark.parametrize("seed", range(150))
def test_a_mutated_workbook_gives_a_sentence_or_a_plan_and_never_a_traceback(seed: int) -> None:
    chance = random.Random(seed)
    data = bytearray(workbook({"Organisations": ORGANISATIONS, "Claims": [("account", "number")]}))
    for _ in range(chance.randint(1, 8)):
        at = chance.randrange(len(data))
        if chance.random() < 0.3:
            del data[at : at + chance.randint(1, 40)]
        else:
            data[at] = chance.randrange(256)
    with suppress(Unreadable):
        done = plan_of(parse_workbook(bytes(data), "book.xlsx"))
        assert all(previewed(done))
