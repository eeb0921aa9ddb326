"""Write records as a workbook or a folder of CSV files, in the layout that intake reads."""

from __future__ import annotations

import csv
from collections.abc import Callable, Iterable, Mapping
from contextlib import ExitStack
from datetime import date, datetime
from decimal import Decimal
from functools import partial
from pathlib import Path
from typing import Any

import xlsxwriter
from xlsxwriter.worksheet import Worksheet

from quarterday.core.file.layout import SHEETS, Cell, CellKind, Column, Row, Sheet, rows
from quarterday.core.file.records import Record
from quarterday.intake.cells.answers import guarded, marked
from quarterday.intake.cells.numbers import from_float, highest_ratio
from quarterday.intake.vocabulary import heading, sheet_name

Records = Iterable[tuple[str, Record]]
CREATED = datetime(2000, 1, 1)  # noqa: DTZ001 - a workbook's clock has no zone; equal records, equal bytes
YES_NO = {"en": {True: "yes", False: "no"}, "fr": {True: "oui", False: "non"}}
FORMATS: Mapping[CellKind, dict[str, Any]] = {
    "amount": {"num_format": "#,##0.00"},
    "ratio": {"num_format": "0.0###%"},
    "date": {"num_format": "yyyy-mm-dd"},
    "text": {"num_format": "@", "quote_prefix": True},
    "list": {"num_format": "@", "quote_prefix": True},
}
WIDTHS: Mapping[CellKind, int] = {"amount": 16, "date": 12, "text": 22, "list": 28}
_WIDTH = 11


def _percent(value: Decimal) -> str:
    return f"{value * 100:f} %"


def _words(value: Cell, column: Column, language: str) -> Cell:
    """Return a cell's value with yes, no and what would be misread put in words."""
    if isinstance(value, bool):
        return YES_NO[language][value]
    if isinstance(value, str):
        return marked(value, column.kind)
    if isinstance(value, Decimal) and column.kind == "ratio":
        return _percent(value) if abs(value) > highest_ratio(column.field) else value
    return value


def write_workbook(records: Records, path: Path, language: str = "en") -> None:
    """Write ``records`` as an .xlsx workbook with headings in English or French.

    Texts are written as texts, never as formulas; equal records give equal bytes.
    """
    options = {"constant_memory": True, "strings_to_formulas": False, "strings_to_urls": False}
    with xlsxwriter.Workbook(str(path), options) as book:
        book.set_properties({"created": CREATED})
        formats = {kind: book.add_format(form) for kind, form in FORMATS.items()}
        bold = book.add_format({"bold": True, "text_wrap": True, "valign": "top"})
        sheets = {s.name: book.add_worksheet(sheet_name(s, language)) for s in SHEETS}
        for sheet in SHEETS:
            _head(sheets[sheet.name], sheet, language, bold)
        at = dict.fromkeys(sheets, 0)
        for account, record in records:
            for sheet, row in rows(account, record):
                at[sheet.name] += 1
                _row(sheets[sheet.name], at[sheet.name], sheet, row, (language, formats))


def _head(page: Worksheet, sheet: Sheet, language: str, bold: Any) -> None:  # noqa: ANN401 - untyped library
    page.freeze_panes(1, 2)
    for at, column in enumerate(sheet.columns):
        page.set_column(at, at, WIDTHS.get(column.kind, _WIDTH))
        page.write_string(0, at, heading(sheet, column, language), bold)


def _row(
    page: Worksheet, at: int, sheet: Sheet, row: Row, how: tuple[str, Mapping[CellKind, Any]]
) -> None:
    language, formats = how
    for index, column in enumerate(sheet.columns):
        value = _words(row.get(column.heading), column, language)
        if value is not None and value != "":
            put_cell(partial(put_at, page, at, index, formats.get(column.kind)), value)


def put_at(page: Worksheet, at: int, index: int, form: object, kind: str, value: object) -> None:
    """Write a cell of a ``kind`` that ``put_cell`` chose, in its column's form."""
    getattr(page, f"write_{kind}")(at, index, value, form)


def put_cell(put: Callable[[str, object], None], value: Cell) -> None:
    """Write a value as text, day or number; a number a spreadsheet cannot hold goes as text."""
    if isinstance(value, str):
        put("string", value)
    elif isinstance(value, date):
        put("datetime", value)
    elif isinstance(value, int | Decimal):
        fits = from_float(float(value)) == value
        put("number", float(value)) if fits else put("string", f"{value:f}")


def write_csv(records: Records, folder: Path, language: str = "en") -> None:
    """Write ``records`` as a folder of CSV files (UTF-8), one a sheet, commas or semicolons.

    French files have decimal commas and semicolons, as French spreadsheets do. A text that a
    spreadsheet would run as a formula has an apostrophe in front, which intake takes off again.
    """
    folder.mkdir(parents=True, exist_ok=True)
    with ExitStack() as files:
        writers = {}
        for sheet in SHEETS:
            path = folder / f"{sheet_name(sheet, language)}.csv"
            file = files.enter_context(path.open("w", encoding="utf-8-sig", newline=""))
            writers[sheet.name] = csv.writer(file, delimiter=";" if language == "fr" else ",")
            writers[sheet.name].writerow(heading(sheet, c, language) for c in sheet.columns)
        for account, record in records:
            for sheet, row in rows(account, record):
                cells = (_text(row.get(c.heading), c, language) for c in sheet.columns)
                writers[sheet.name].writerow(cells)


def _text(value: Cell, column: Column, language: str) -> str:
    if isinstance(value, str):
        return guarded(value, column.kind)
    said = _words(value, column, language)
    if said is None:
        return ""
    if isinstance(said, Decimal):
        return f"{said:f}".replace(".", "," if language == "fr" else ".")
    return said.isoformat() if isinstance(said, date) else str(said)
