"""Give a faulty workbook back as a copy in which each fault is a comment on its cell."""

from __future__ import annotations

import csv
import io
from collections import defaultdict
from collections.abc import Iterable, Iterator
from pathlib import Path

import xlsxwriter
from openpyxl import load_workbook
from openpyxl.cell.cell import Cell, MergedCell
from openpyxl.comments import Comment
from openpyxl.styles import Font, PatternFill
from openpyxl.utils import get_column_letter
from openpyxl.workbook import Workbook
from openpyxl.worksheet.worksheet import Worksheet

from quarterday.catalogue.speech import Speech
from quarterday.core.words import Words, words
from quarterday.intake.cells.answers import guarded
from quarterday.intake.faults import Fault
from quarterday.intake.parse import Parsed
from quarterday.intake.plan import Plan

MOST_CELLS = 400_000  # a larger workbook gets the list of faults without the copy
_AUTHOR = "Quarterday"
_FILL = {"refused": "FFF4B6B0", "asks": "FFFCE7A6"}
_WIDTHS = (20, 8, 24, 24, 60, 50, 14)
_COMMENT_SIZE = (120, 340)
_HEADINGS = ("where", "row", "column", "value", "what", "remedy", "kind")


def annotate(parsed: Parsed, plan: Plan, out: Path, speech: Speech) -> Path:
    """Write the faults to ``out`` and return where: a copy with comments, or ``faults.csv``.

    ``out`` is a file for a workbook and a folder for CSV files. The copy keeps cells, formulas and
    formats as they are; a workbook too large to copy gets a workbook of the list alone.
    """
    faults = [fault for fault in plan.faults if fault.severity != "note"]
    if parsed.way == "csv":
        return _csv(faults, out, speech)
    if parsed.cells > MOST_CELLS:
        return _list_alone(faults, out, speech)
    book = load_workbook(io.BytesIO(parsed.original), rich_text=True)
    _comment(book, faults, speech)
    _summary(book, faults, speech)
    book.save(out)
    return out


def _comment(book: Workbook, faults: Iterable[Fault], speech: Speech) -> None:
    by_cell: dict[tuple[str, int, int], list[Fault]] = defaultdict(list)
    for fault in faults:
        spot = fault.spot
        if spot.sheet in book.sheetnames and spot.row is not None:
            by_cell[spot.sheet, spot.row, spot.column or 1].append(fault)
    for (sheet, row, column), found in by_cell.items():
        cell = _whole(book[sheet], row, column)
        cell.comment = _note("\n\n".join(_said(fault, speech) for fault in found), cell.comment)
        worst = "refused" if any(f.severity == "refused" for f in found) else "asks"
        cell.fill = PatternFill("solid", fgColor=_FILL[worst])


def _said(fault: Fault, speech: Speech) -> str:
    remedy = f" {speech.say(fault.remedy)}" if fault.remedy else ""
    return f"{speech.say(fault.what)}{remedy}"


def _note(text: str, earlier: Comment | None) -> Comment:
    """Return a comment; what somebody wrote there before stays below it."""
    before = f"\n\n{earlier.author}:\n{earlier.text}" if earlier else ""
    note = Comment(f"{text}{before}", _AUTHOR)
    note.height, note.width = _COMMENT_SIZE
    return note


def _whole(sheet: Worksheet, row: int, column: int) -> Cell:
    """Return the cell at a place; of merged cells the one that holds the value."""
    cell = sheet.cell(row, column)
    if isinstance(cell, Cell):
        return cell
    assert isinstance(cell, MergedCell)
    merged = next(r for r in sheet.merged_cells.ranges if cell.coordinate in r)
    corner = sheet.cell(merged.min_row, merged.min_col)
    assert isinstance(corner, Cell)
    return corner


def _heading(name: str) -> Words:
    return words(f"intake-copy-{name}")


def _rows(faults: Iterable[Fault], speech: Speech) -> Iterator[tuple[str, ...]]:
    """Yield the headings and the faults as rows of text."""
    yield tuple(speech.say(_heading(name)) for name in _HEADINGS)
    for fault in faults:
        spot = fault.spot
        yield (
            spot.sheet,
            str(spot.row or ""),
            spot.heading or (get_column_letter(spot.column) if spot.column else ""),
            fault.value,
            speech.say(fault.what),
            speech.say(fault.remedy) if fault.remedy else "",
            speech.say(words(f"intake-kind-{fault.severity}")),
        )


def _summary(book: Workbook, faults: list[Fault], speech: Speech) -> None:
    """Add a first sheet that lists the faults; its texts can never run as formulas."""
    name = speech.say(_heading("sheet"))
    if name in book.sheetnames:
        del book[name]
    sheet = book.create_sheet(name, 0)
    top = (speech.say(_heading("title")),), (speech.say(_heading("explains")),), ()
    for at, row in enumerate((*top, *_rows(faults, speech)), 1):
        for column, text in enumerate(row, 1):
            cell = sheet.cell(at, column, text)
            cell.data_type, cell.quotePrefix = "s", True
            cell.font = Font(bold=at in {1, len(top) + 1})
    for column, width in enumerate(_WIDTHS, 1):
        sheet.column_dimensions[get_column_letter(column)].width = width
    book.active = 0


def _list_alone(faults: list[Fault], out: Path, speech: Speech) -> Path:
    with xlsxwriter.Workbook(str(out), {"strings_to_formulas": False}) as book:
        sheet = book.add_worksheet(speech.say(_heading("sheet")))
        for at, row in enumerate(_rows(faults, speech)):
            for column, text in enumerate(row):
                sheet.write_string(at, column, text)
    return out


def _csv(faults: list[Fault], out: Path, speech: Speech) -> Path:
    """Write ``faults.csv`` into the folder ``out``."""
    out.mkdir(parents=True, exist_ok=True)
    path = out / "faults.csv"
    with path.open("w", encoding="utf-8-sig", newline="") as file:
        writer = csv.writer(file, delimiter=";" if speech.language == "fr" else ",")
        writer.writerows(tuple(map(guarded, row)) for row in _rows(faults, speech))
    return path
