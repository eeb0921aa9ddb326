"""Tables as CSV and as sheets of a workbook; no text in them is run as a formula."""

from __future__ import annotations

import csv
from collections.abc import Iterable
from datetime import date
from decimal import Decimal
from functools import partial
from io import BytesIO, TextIOWrapper
from typing import BinaryIO

import xlsxwriter
from xlsxwriter.format import Format
from xlsxwriter.worksheet import Worksheet

from quarterday.core.file.layout import Cell, CellKind
from quarterday.intake.cells.answers import guarded
from quarterday.intake.tablefiles.table import Table
from quarterday.intake.write import CREATED, FORMATS, WIDTHS, YES_NO, put_at, put_cell

_LONGEST_NAME = 31  # characters of a sheet's name, as spreadsheets have it
_NOT_IN_NAMES = str.maketrans(dict.fromkeys("[]:*?/\\'", " "))
_WIDTH = 14


def write_csv(table: Table, out: BinaryIO, language: str = "en") -> None:
    """Write a table as CSV (UTF-8) with its headings.

    French files have decimal commas and semicolons, as French spreadsheets do.
    """
    text = TextIOWrapper(out, encoding="utf-8-sig", newline="")
    writer = csv.writer(text, delimiter=";" if language == "fr" else ",")
    writer.writerow(guarded(field.heading) for field in table.fields)
    for row in table.rows:
        writer.writerow(_text(cell, language) for cell in row)
    text.detach()


def csv_bytes(table: Table) -> bytes:
    """Return a table as CSV for programs: commas, decimal points, days as ISO 8601 has them."""
    out = BytesIO()
    write_csv(table, out)
    return out.getvalue()


def _text(cell: Cell, language: str) -> str:
    match cell:
        case None:
            return ""
        case bool():
            return YES_NO[language][cell]
        case Decimal():
            return f"{cell:f}".replace(".", "," if language == "fr" else ".")
        case str():
            return guarded(cell)
        case date():
            return cell.isoformat()
        case int():
            return str(cell)


def write_workbook(tables: Iterable[Table], out: BinaryIO, language: str = "en") -> None:
    """Write tables as a workbook, a sheet each; equal tables give equal bytes.

    Texts are written as texts. Under a table stands what it says about itself.
    """
    options = {"in_memory": True, "strings_to_formulas": False, "strings_to_urls": False}
    with xlsxwriter.Workbook(out, options) as book:
        book.set_properties({"created": CREATED})
        formats = {kind: book.add_format(form) for kind, form in FORMATS.items()}
        bold = book.add_format({"bold": True, "text_wrap": True, "valign": "top"})
        for table in tables:
            name = table.title.translate(_NOT_IN_NAMES).strip()[:_LONGEST_NAME]
            _sheet(book.add_worksheet(name), table, formats, bold, language)


def _sheet(
    page: Worksheet, table: Table, formats: dict[CellKind, Format], bold: Format, language: str
) -> None:
    page.freeze_panes(1, 1)
    for at, field in enumerate(table.fields):
        page.set_column(at, at, WIDTHS.get(field.kind, _WIDTH))
        page.write_string(0, at, field.heading, bold)
    below = 1
    for below, row in enumerate(table.rows, start=2):
        for at, (field, cell) in enumerate(zip(table.fields, row, strict=True)):
            value = YES_NO[language][cell] if isinstance(cell, bool) else cell
            if value is not None and value != "":
                put_cell(partial(put_at, page, below - 1, at, formats.get(field.kind)), value)
    for at, (name, said) in enumerate(table.about, start=below + 1):
        page.write_string(at, 0, f"{name}: {said}")
