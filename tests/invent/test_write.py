"""What is written reads back the same, by readers that are not ours, and is the same every time."""

from __future__ import annotations

import csv
import zipfile
from collections import Counter
from collections.abc import Mapping
from datetime import date
from decimal import Decimal
from pathlib import Path

import openpyxl
import pytest
from python_calamine import CalamineWorkbook

from quarterday.core.file.layout import SHEETS, Cell, Sheet
from quarterday.invent.account import Account
from quarterday.invent.book import make_book
from quarterday.invent.demo import AS_OF
from quarterday.invent.write import book_rows, plain, write_csv, write_workbook


@pytest.fixture(scope="module")
def workbook(demo: Mapping[str, Account], tmp_path_factory: pytest.TempPathFactory) -> Path:
    path = tmp_path_factory.mktemp("book") / "demo.xlsx"
    write_workbook(demo.values(), path)
    return path


@pytest.fixture(scope="module")
def folder(demo: Mapping[str, Account], tmp_path_factory: pytest.TempPathFactory) -> Path:
    path = tmp_path_factory.mktemp("csv")
    write_csv(demo.values(), path)
    return path


def expected(demo: Mapping[str, Account], sheet: Sheet) -> list[dict[str, Cell]]:
    return [row for of, row in book_rows(demo.values()) if of.name == sheet.name]


def test_a_workbook_has_the_sheets_and_headings_of_the_layout(workbook: Path) -> None:
    found = CalamineWorkbook.from_path(workbook)
    assert found.sheet_names == [sheet.name for sheet in SHEETS]
    for sheet in SHEETS:
        first = found.get_sheet_by_name(sheet.name).to_python()[0]
        assert first == [column.heading for column in sheet.columns]


def _same(written: Cell, read: object) -> bool:
    if written is None or written == "":
        return read == ""
    if isinstance(written, bool | str):
        return read == plain(written)
    if isinstance(written, date):
        return read == written
    return isinstance(read, float) and Decimal(repr(read)) == Decimal(written)


@pytest.mark.parametrize("sheet", SHEETS, ids=lambda s: s.name)
def test_every_cell_of_a_workbook_reads_back_exactly(
    sheet: Sheet, workbook: Path, demo: Mapping[str, Account]
) -> None:
    rows = CalamineWorkbook.from_path(workbook).get_sheet_by_name(sheet.name).to_python()[1:]
    want = expected(demo, sheet)
    assert len(rows) == len(want)
    wrong = [
        (column.heading, row[column.heading], cell)
        for row, cells in zip(want, rows, strict=True)
        for column, cell in zip(sheet.columns, cells, strict=True)
        if not _same(row.get(column.heading), cell)
    ]
    assert wrong == []


@pytest.mark.parametrize("sheet", SHEETS, ids=lambda s: s.name)
def test_every_cell_of_a_csv_folder_reads_back_exactly(
    sheet: Sheet, folder: Path, demo: Mapping[str, Account]
) -> None:
    with (folder / f"{sheet.name}.csv").open(encoding="utf-8", newline="") as file:
        rows = list(csv.DictReader(file))
    want = [{h: plain(cell) for h, cell in row.items()} for row in expected(demo, sheet)]
    headings = [column.heading for column in sheet.columns]
    assert rows == [{h: row.get(h, "") for h in headings} for row in want]


def test_a_workbook_holds_no_formula_and_no_link(workbook: Path) -> None:
    book = openpyxl.load_workbook(workbook)
    kinds = Counter(cell.data_type for sheet in book for row in sheet.rows for cell in row)
    assert kinds["f"] == 0
    assert [name for name in zipfile.ZipFile(workbook).namelist() if "external" in name] == []


def test_the_same_accounts_give_the_same_bytes(
    workbook: Path, folder: Path, demo: Mapping[str, Account], tmp_path: Path
) -> None:
    again, csvs = tmp_path / "again.xlsx", tmp_path / "csv"
    write_workbook(demo.values(), again)
    write_csv(demo.values(), csvs)
    assert again.read_bytes() == workbook.read_bytes()
    for sheet in SHEETS:
        name = f"{sheet.name}.csv"
        assert (csvs / name).read_bytes() == (folder / name).read_bytes()


def test_a_made_book_gives_the_same_bytes_for_the_same_seed_and_others_for_another(
    tmp_path: Path,
) -> None:
    for name, seed in (("a", 5), ("b", 5), ("c", 6)):
        write_workbook(make_book(25, seed, AS_OF), tmp_path / name)
    a, b, c = ((tmp_path / name).read_bytes() for name in "abc")
    assert a == b
    assert a != c


@pytest.mark.parametrize(
    ("cell", "text"),
    [
        (True, "yes"),
        (False, "no"),
        (None, ""),
        (Decimal("1234.50"), "1234.50"),
        (Decimal("1E+3"), "1000"),
        (date(2027, 1, 15), "2027-01-15"),
        (7, "7"),
    ],
)
def test_a_cell_of_a_csv_file_is_plain_text(cell: Cell, text: str) -> None:
    assert plain(cell) == text
