"""The layout as a Frictionless Data Package, and as a page that lists every column.

``python -m quarterday.intake.schema docs/schema/datapackage.json docs/workbook-columns.md`` writes
both anew.
"""

from __future__ import annotations

import json
import sys
from pathlib import Path
from typing import Any

from quarterday.core.file.layout import ACCOUNT, SHEETS, CellKind, Column, Refers, Sheet
from quarterday.core.file.records import Organisation
from quarterday.intake.vocabulary import heading, sheet_name

Descriptor = dict[str, Any]
_PROFILE = "https://datapackage.org/profiles/2.0/datapackage.json"
_TYPES: dict[CellKind, str] = {
    "text": "string",
    "amount": "number",
    "number": "number",
    "integer": "integer",
    "ratio": "number",
    "date": "date",
    "month-day": "string",
    "yes-no": "boolean",
    "choice": "string",
    "list": "string",
}
_MISSING = ["", "N/A", "n/d"]
_INTRODUCTION = (
    "Made from the layout by `python -m quarterday.intake.schema`. [workbook.md](workbook.md)\n"
    "says how cells are read. **must**: a row without it is refused, unless it is on file already."
)
_HOLDS: dict[CellKind, str] = {
    "integer": "whole number",
    "month-day": "month and day",
    "yes-no": "yes or no",
    "list": "several texts",
}
_A: dict[Refers, str] = {
    "coverage": "a coverage's",
    "cause": "a cause's",
    "building": "a building's",
    "contact": "a contact's",
    "province": "a province's",
    "total": "a coverage's or building's",
}
_SAYS: dict[CellKind, str] = {
    "amount": "An amount of money, with at most two decimals.",
    "ratio": "A ratio (0.8), or a percentage with its sign (80 %).",
    "date": "A day: year, month, day.",
    "month-day": "A day of the year: month and day.",
    "list": 'Several items, with a semicolon between them; "none" for an empty list.',
}


def _field(sheet: Sheet, column: Column) -> Descriptor:
    found: Descriptor = {
        "name": column.heading,
        "type": _TYPES[column.kind],
        "title": heading(sheet, column, "fr"),
    }
    says = " ".join(filter(None, (_SAYS.get(column.kind), _names(column))))
    if says:
        found["description"] = says
    if column.kind == "yes-no":
        found |= {"trueValues": ["yes"], "falseValues": ["no"]}
    if column.kind == "ratio":
        found["bareNumber"] = False
    constraints = _constraints(column)
    return found | ({"constraints": constraints} if constraints else {})


def _names(column: Column) -> str:
    if column.refers == "total":
        return "The id of the coverage or building that is added up, or *."
    return f"The id of a {column.refers}." if column.refers else ""


def _constraints(column: Column) -> Descriptor:
    found: Descriptor = {"required": True} if column.required else {}
    if column.kind == "choice":
        found["enum"] = list(column.choices)
    if column.kind == "month-day":
        found["pattern"] = "[01][0-9]-[0-3][0-9]"
    return found


def _resource(sheet: Sheet) -> Descriptor:
    schema: Descriptor = {
        "fields": [_field(sheet, column) for column in sheet.columns],
        "missingValues": _MISSING,
    }
    if sheet.record is Organisation:
        schema["primaryKey"] = [ACCOUNT]
    else:
        to = {"resource": "organisations", "fields": [ACCOUNT]}
        schema["foreignKeys"] = [{"fields": [ACCOUNT], "reference": to}]
    return {
        "name": sheet.name.lower(),
        "title": f"{sheet.name} · {sheet_name(sheet, 'fr')}",
        "path": f"{sheet.name}.csv",
        "format": "csv",
        "encoding": "utf-8",
        "schema": schema,
    }


def descriptor() -> Descriptor:
    """Return the layout as a Data Package: a resource a sheet, a field a column."""
    return {
        "$schema": _PROFILE,
        "name": "quarterday-workbook",
        "title": "Quarterday's workbook as CSV files",
        "description": "Headings are in English; the title of each field is its French heading.",
        "resources": [_resource(sheet) for sheet in SHEETS],
    }


def columns_page() -> str:
    """Return the page, in Markdown, that lists the sheets with their columns in both languages."""
    return "\n".join(["# Sheets and columns", "", _INTRODUCTION, "", *map(_section, SHEETS)])


def _section(sheet: Sheet) -> str:
    rows = (
        f"| {column.heading} | {heading(sheet, column, 'fr')} | {_holds(column)} |"
        for column in sheet.columns
    )
    title = f"## {sheet.name} · {sheet_name(sheet, 'fr')}"
    return "\n".join([title, "", "| heading | intitulé | holds |", "|---|---|---|", *rows, ""])


def _holds(column: Column) -> str:
    """Return what a column's cells hold, in a few words."""
    what = f"{_A[column.refers]} id" if column.refers else _HOLDS.get(column.kind, column.kind)
    several = column.kind == "list" and bool(column.refers or column.choices)
    if column.choices:
        what = "one of: " + ", ".join(column.choices)
    return f"{'several, ' if several else ''}{what}{' · **must**' if column.required else ''}"


def write(path: Path) -> None:
    """Write the Data Package (``.json``) or the page of columns (``.md``)."""
    as_json = json.dumps(descriptor(), ensure_ascii=False, indent=2)
    path.write_text(columns_page() if path.suffix == ".md" else f"{as_json}\n", "utf-8")


if __name__ == "__main__":
    for argument in sys.argv[1:]:
        write(Path(argument))
