"""Write accounts as a workbook or a folder of CSV files, in the layout that intake reads.

Accounts are taken one after the other, so that a book of any size fits in a small memory; the same
accounts give the same bytes.
"""

from __future__ import annotations

import csv
from collections.abc import Iterable, Iterator
from contextlib import ExitStack
from datetime import date, datetime
from decimal import Decimal
from pathlib import Path
from typing import Any

import xlsxwriter

from quarterday.core.file.layout import SHEETS, Cell, CellKind, Column, Sheet, rows
from quarterday.invent.account import Account

CREATED = datetime(2026, 11, 25)  # noqa: DTZ001 - a workbook's dates have no zone
NUMBER_FORMATS: dict[CellKind, str] = {
    "amount": "#,##0.00",
    "number": "General",
    "ratio": "0.0###",
    "integer": "0",
    "date": "yyyy-mm-dd",
}


def book_rows(accounts: Iterable[Account]) -> Iterator[tuple[Sheet, dict[str, Cell]]]:
    """Yield every row of every account with the sheet that it belongs to."""
    for account in accounts:
        for record in account.records:
            yield from rows(account.id, record)


class _Page:
    """A worksheet that is filled row by row."""

    def __init__(
        self, book: xlsxwriter.Workbook, sheet: Sheet, formats: dict[CellKind, Any]
    ) -> None:
        self.sheet, self.formats, self.next = sheet, formats, 1
        self.page = book.add_worksheet(sheet.name)
        self.page.freeze_panes(1, 1)
        heading = book.add_format({"bold": True, "bg_color": "#E7E2D6", "bottom": 1})
        for at, column in enumerate(sheet.columns):
            self.page.set_column(at, at, max(10, len(column.heading) + 2))
            self.page.write_string(0, at, column.heading, heading)

    def add(self, row: dict[str, Cell]) -> None:
        """Write one row below the last."""
        for at, column in enumerate(self.sheet.columns):
            self._write(at, column, row.get(column.heading))
        self.next += 1

    def _write(self, at: int, column: Column, cell: Cell) -> None:
        if cell is None or cell == "":
            return
        if isinstance(cell, bool | str):
            self.page.write_string(self.next, at, plain(cell))
        elif isinstance(cell, date):
            self.page.write_datetime(self.next, at, cell, self.formats[column.kind])
        else:
            self.page.write_number(self.next, at, cell, self.formats[column.kind])


def write_workbook(accounts: Iterable[Account], path: Path) -> None:
    """Write ``accounts`` as one workbook with a sheet for each part of the layout."""
    settings = {"constant_memory": True, "strings_to_numbers": False}
    with xlsxwriter.Workbook(path, settings) as book:
        book.set_properties({"title": "Invented book", "created": CREATED})
        formats = {kind: book.add_format({"num_format": f}) for kind, f in NUMBER_FORMATS.items()}
        pages = {sheet.name: _Page(book, sheet, formats) for sheet in SHEETS}
        for sheet, row in book_rows(accounts):
            pages[sheet.name].add(row)


def plain(cell: Cell) -> str:
    """Return a cell as text: ``yes`` or ``no``, an ISO date, a number without group marks."""
    if isinstance(cell, bool):
        return "yes" if cell else "no"
    if isinstance(cell, Decimal):
        return f"{cell:f}"
    return "" if cell is None else str(cell)


def write_csv(accounts: Iterable[Account], folder: Path) -> None:
    """Write ``accounts`` as a folder with a CSV file (UTF-8, commas) for each sheet."""
    folder.mkdir(parents=True, exist_ok=True)
    with ExitStack() as stack:
        writers = {}
        for sheet in SHEETS:
            file = (folder / f"{sheet.name}.csv").open("w", encoding="utf-8", newline="")
            headings = [column.heading for column in sheet.columns]
            writer = csv.DictWriter(stack.enter_context(file), headings, lineterminator="\n")
            writer.writeheader()
            writers[sheet.name] = writer
        for sheet, row in book_rows(accounts):
            writers[sheet.name].writerow({h: plain(cell) for h, cell in row.items()})
