"""A faulty workbook comes back with each fault as a comment on its cell, all else as it was."""

from __future__ import annotations

import csv
import io
from pathlib import Path

import openpyxl
import pytest
from openpyxl.comments import Comment
from openpyxl.styles import Font

from quarterday.intake import annotate as annotating
from quarterday.intake.annotate import annotate
from quarterday.intake.parse import Parsed, parse, parse_workbook
from tests.intake.books import ORGANISATIONS, Sheets, csv_folder, parsed, plan_of, speech

FAULTY: Sheets = {
    "Organisations": [
        *ORGANISATIONS,
        ("0020", '=HYPERLINK("http://x")', "ON"),
        ("0021", "B", "ZZ"),
    ],
    "Claims": [("account", "number", "cause", "date of loss"), ("0007", "1", "ghost", "soon")],
}


def copied(book: Parsed, out: Path, language: str = "en") -> openpyxl.Workbook:
    return openpyxl.load_workbook(
        annotate(book, plan_of(book), out / "copy.xlsx", speech(language))
    )


def test_each_fault_is_a_comment_on_its_cell(tmp_path: Path) -> None:
    book = copied(parsed(FAULTY), tmp_path)
    comments = {
        f"{page.title}!{cell.coordinate}": cell.comment.text
        for page in book
        for row in page.iter_rows()
        for cell in row
        if cell.comment
    }
    assert set(comments) == {"Organisations!B4", "Organisations!C5", "Claims!C2", "Claims!D2"}
    assert comments["Claims!D2"] == (
        "This is not a date. Write year, month and day, such as 2026-03-31."
    )


def test_cells_formulas_formats_and_comments_stay_as_they_were(tmp_path: Path) -> None:
    original = openpyxl.Workbook()
    page = original["Sheet"]
    page.title = "Organisations"
    for row in (*ORGANISATIONS, ("0021", "B", "ZZ")):
        page.append(list(row))
    page["E1"], page["E2"] = "Members", "=1+1"
    page["A1"].font = Font(italic=True)
    page["C4"].comment = Comment("Check with Ada", "Bo")
    page.column_dimensions["B"].width = 44
    page.freeze_panes = "A2"
    out = io.BytesIO()
    original.save(out)
    copy = copied(parse_workbook(out.getvalue(), "b.xlsx"), tmp_path)["Organisations"]
    assert copy["E2"].value == "=1+1"
    assert copy["A1"].font.italic
    assert copy.column_dimensions["B"].width == 44
    assert copy.freeze_panes == "A2"
    assert [[c.value for c in row] for row in copy["A1:C4"]] == [
        [c.value for c in row] for row in page["A1:C4"]
    ]
    assert copy["C4"].comment is not None
    assert copy["C4"].comment.text.startswith("There is no province or territory called “ZZ”.")
    assert copy["C4"].comment.text.endswith("Bo:\nCheck with Ada")


@pytest.mark.parametrize(("language", "title"), [("en", "What could not"), ("fr", "Ce qui n'a pu")])
def test_a_first_sheet_lists_every_fault_as_text(tmp_path: Path, language: str, title: str) -> None:
    book = copied(parsed(FAULTY), tmp_path, language)
    page = book["Quarterday"]
    assert book.sheetnames[0] == "Quarterday"
    assert str(page["A1"].value).startswith(title)
    rows = list(page.iter_rows(min_row=5, values_only=True))
    assert [row[:3] for row in rows] == [
        ("Organisations", "4", "name"),
        ("Organisations", "5", "province"),
        ("Claims", "2", "cause"),
        ("Claims", "2", "date of loss"),
    ]
    assert {cell.data_type for row in page.iter_rows() for cell in row} <= {"s", "n", "inlineStr"}
    assert "f" not in {cell.data_type for row in page.iter_rows() for cell in row}


def test_the_copy_of_a_merged_cell_is_commented_where_its_value_stands(tmp_path: Path) -> None:
    original = openpyxl.Workbook()
    page = original["Sheet"]
    page.title = "Claims"
    for row in (
        ("account", "number", "cause", "date of loss", "paid"),
        ("0007", "1", "fire", "2024-01-01", 900),
        ("0007", "2", "fire", "2024-01-01", None),
    ):
        page.append(list(row))
    page.merge_cells("E2:E3")
    out = io.BytesIO()
    original.save(out)
    copy = copied(parse_workbook(out.getvalue(), "b.xlsx"), tmp_path)["Claims"]
    assert copy["E2"].comment is not None
    assert copy["E2"].comment.text.count("One number stands for several rows") == 2


def test_the_mended_copy_loads(tmp_path: Path) -> None:
    path = annotate(parsed(FAULTY), plan_of(FAULTY), tmp_path / "copy.xlsx", speech())
    book = openpyxl.load_workbook(path)
    book["Organisations"]["B4"] = "Camp Kestrel"
    book["Organisations"]["C5"] = "ON"
    book["Claims"]["C2"], book["Claims"]["D2"] = "fire", "2024-01-01"
    book.save(path)
    done = plan_of(parse(path))
    assert not done.of("refused")
    assert len(done.items) == 5


def test_csv_files_get_a_list_beside_them_that_no_program_runs(tmp_path: Path) -> None:
    text = "account,number,cause,date of loss\n0007,1,\"=cmd|' /C calc'!A0\",2024-01-01\n"
    organisations = "account,name,province\n0007,A,ON\n"
    book = csv_folder(tmp_path / "b", {"Claims.csv": text, "Organisations.csv": organisations})
    path = annotate(book, plan_of(book), tmp_path / "out", speech())
    assert path == tmp_path / "out" / "faults.csv"
    with path.open(encoding="utf-8-sig", newline="") as file:
        rows = list(csv.reader(file))
    assert rows[1][:4] == ["Claims", "2", "cause", "'=cmd|' /C calc'!A0"]
    assert all(cell[:1] not in "=+-@" or not cell for row in rows for cell in row)


def test_a_very_large_workbook_gets_the_list_alone(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(annotating, "MOST_CELLS", 5)
    book = copied(parsed(FAULTY), tmp_path)
    assert book.sheetnames == ["Quarterday"]
    assert book["Quarterday"].max_row == 5
