"""Read a workbook or CSV files into sheets of raw cells with their true row numbers."""

from __future__ import annotations

import hashlib
import io
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field
from datetime import date, time, timedelta
from itertools import islice
from pathlib import Path
from typing import Any, Literal

from python_calamine import (
    CalamineError,
    CalamineSheet,
    CalamineWorkbook,
    SheetTypeEnum,
    SheetVisibleEnum,
)

from quarterday.core.words import words
from quarterday.intake.csvfiles import read_folder
from quarterday.intake.faults import Fault, Spot
from quarterday.intake.package import Cell, OddCells, Package
from quarterday.intake.refusals import Unreadable


@dataclass(frozen=True, slots=True)
class CellError:
    """A cell that cannot be read as a value, and why.

    It shows an error (``#REF!``), its formula was never calculated, or it is one number merged over
    several rows.
    """

    code: str
    why: Literal["error-cell", "uncalculated", "merged-number"] = "error-cell"

    def __str__(self) -> str:
        return self.code


Raw = str | float | int | bool | date | time | timedelta | CellError
Merged = tuple[Cell, Cell]


@dataclass(frozen=True, slots=True)
class RawSheet:
    """A sheet as it stands: its first row and column (from 1) and its rows of raw cells.

    A blank cell is the empty text. ``merged`` are the ranges of merged cells, corners included.
    """

    name: str
    first_row: int
    first_column: int
    rows: list[list[Raw]] = field(repr=False)
    merged: tuple[Merged, ...] = ()


@dataclass(frozen=True, slots=True)
class Parsed:
    """What was read: the name people know it by, its digest, its sheets, and what to say of it.

    ``original`` are the bytes to keep: the workbook, or the CSV files in one archive. ``cells`` is
    how many a workbook has. Planning takes the rows out of the sheets: a book has too many to keep.
    """

    name: str
    way: Literal["workbook", "csv"]
    document: str
    original: bytes = field(repr=False)
    sheets: tuple[RawSheet, ...]
    faults: tuple[Fault, ...] = ()
    cells: int = 0


def parse(path: Path) -> Parsed:
    """Read an .xlsx workbook, a CSV file, or a folder of CSV files.

    Unreadable has one sentence when nothing of it can be read. Error cells, formulas that were
    never calculated, links to other workbooks and hidden sheets are told, never read as blank.
    """
    if not path.exists():
        raise Unreadable("intake-not-found", name=path.name)
    if path.is_dir() or path.suffix.lower() in {".csv", ".tsv", ".txt"}:
        return _parse_csv(path)
    return parse_workbook(path.read_bytes(), path.name)


def _parse_csv(path: Path) -> Parsed:
    files = read_folder(path)
    sheets = tuple(RawSheet(f.name, 1, 1, [list[Raw](row) for row in f.rows]) for f in files.files)
    return Parsed(
        path.name, "csv", hashlib.sha256(files.original).hexdigest(), files.original, sheets,
        tuple(files.faults),
    )  # fmt: skip


def parse_workbook(data: bytes, name: str) -> Parsed:
    """Read the bytes of an .xlsx workbook; Unreadable as for ``parse``."""
    package = Package(data)
    odd = package.odd_cells()
    try:
        with CalamineWorkbook.from_filelike(io.BytesIO(data)) as workbook:
            read = tuple(_sheets(workbook, odd))
    except CalamineError as error:
        raise Unreadable("intake-truncated") from error
    sheets = tuple(sheet for sheet in read if isinstance(sheet, RawSheet))
    faults = [fault for fault in read if isinstance(fault, Fault)]
    faults += _links(package, odd)
    digest = hashlib.sha256(data).hexdigest()
    cells = sum(len(row) for sheet in sheets for row in sheet.rows)
    return Parsed(name, "workbook", digest, data, sheets, tuple(faults), cells)


def _sheets(workbook: CalamineWorkbook, odd: dict[str, OddCells]) -> Iterator[RawSheet | Fault]:
    for known in workbook.sheets_metadata:
        if known.typ != SheetTypeEnum.WorkSheet:
            continue
        if known.visible != SheetVisibleEnum.Visible:
            hidden = words("intake-hidden-sheet", sheet=known.name)
            yield Fault("note", Spot(known.name), hidden, words("intake-hidden-sheet-remedy"))
            continue
        sheet = _sheet(workbook.get_sheet_by_name(known.name), odd.get(known.name, OddCells()))
        if sheet.rows:
            yield sheet


def _sheet(sheet: CalamineSheet, odd: OddCells) -> RawSheet:
    row, column = sheet.start or (0, 0)
    one = _One()
    rows = [[one[cell] for cell in cells] for cells in islice(sheet.iter_rows(), row, None)]
    found = RawSheet(sheet.name, row + 1, column + 1, rows, tuple(_merged(sheet)))
    _overlay(found, ((cell, CellError(code)) for cell, code in odd.errors.items()))
    _overlay(found, ((cell, CellError("=", "uncalculated")) for cell in odd.uncalculated))
    return found


class _One(dict[Any, Any]):
    """Gives equal texts and equal numbers as one object: a book says the same things very often."""

    def __getitem__(self, cell: Raw) -> Raw:
        kind = type(cell)
        return self.setdefault(cell, cell) if kind is str or kind is float else cell


def _merged(sheet: CalamineSheet) -> Iterator[Merged]:
    for (top, left), (bottom, right) in sheet.merged_cell_ranges or ():
        yield (top + 1, left + 1), (bottom + 1, right + 1)


def _overlay(sheet: RawSheet, errors: Iterable[tuple[Cell, CellError]]) -> None:
    """Put errors where the reader left blanks, making room where it left none."""
    for (row, column), error in errors:
        at_row, at_column = row - sheet.first_row, column - sheet.first_column
        while len(sheet.rows) <= at_row:
            sheet.rows.append([])
        cells = sheet.rows[at_row]
        cells.extend([""] * (at_column + 1 - len(cells)))
        cells[at_column] = error


def _links(package: Package, odd: dict[str, OddCells]) -> Iterator[Fault]:
    linked = [(sheet, cell) for sheet, cells in odd.items() for cell in cells.linked]
    if linked:
        sheet, (row, column) = linked[0]
        said = words("intake-linked-cells", count=len(linked))
        remedy = words("intake-linked-cells-remedy")
        yield Fault("asks", Spot(sheet, row, column), said, remedy)
    elif package.links_elsewhere:
        yield Fault("note", Spot(""), words("intake-links-unused"))
