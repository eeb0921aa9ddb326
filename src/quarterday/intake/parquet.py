"""Write records as Apache Parquet, one file a sheet of the layout, for whoever computes with them.

Amounts are exact decimals, days are days, lists are lists, what is not known is null; texts are as
they stand, since nothing in a column is run as a formula.
"""

from __future__ import annotations

from collections.abc import Iterable
from contextlib import ExitStack
from pathlib import Path
from typing import TYPE_CHECKING

from quarterday.core.file.layout import SHEETS, Cell, Column, Row, Sheet, rows
from quarterday.core.file.records import Record
from quarterday.intake.tablefiles import columnar
from quarterday.intake.tablefiles.table import Field, Table
from quarterday.intake.vocabulary import heading, sheet_name

if TYPE_CHECKING:
    import pyarrow.parquet as pq

AT_ONCE = columnar.GROUP  # rows of a sheet that wait in memory before they are written


def column_name(column: Column) -> str:
    """Return the name of a column: its heading in one word."""
    return column.heading.replace(" ", "_")


def write_parquet(
    records: Iterable[tuple[str, Record]], folder: Path, language: str = "en"
) -> list[Path]:
    """Write ``records`` into ``folder``; return the paths, one for each sheet, empty ones too.

    Names are the same in every language, the headings beside them in ``language``.
    """
    import pyarrow.parquet as pq

    folder.mkdir(parents=True, exist_ok=True)
    with ExitStack() as files:
        writers = {}
        for sheet in SHEETS:
            table, path = _table(sheet, language), folder / f"{sheet.name}.parquet"
            writer = pq.ParquetWriter(path, columnar.schema(table), compression="zstd")
            writers[sheet.name] = _Rows(sheet, table, files.enter_context(writer))
        for account, record in records:
            for sheet, row in rows(account, record):
                writers[sheet.name].add(row)
        for writer in writers.values():
            writer.flush()
    return [folder / f"{sheet.name}.parquet" for sheet in SHEETS]


def _table(sheet: Sheet, language: str) -> Table:
    columns = (Field(column_name(c), heading(sheet, c, language), c.kind) for c in sheet.columns)
    return Table(sheet.name, sheet_name(sheet, language), tuple(columns), ())


class _Rows:
    """The rows of one sheet that wait to be written."""

    def __init__(self, sheet: Sheet, table: Table, writer: pq.ParquetWriter) -> None:
        self._sheet, self._table, self._writer = sheet, table, writer
        self._waiting: list[list[Cell]] = []

    def add(self, row: Row) -> None:
        self._waiting.append([row.get(column.heading) for column in self._sheet.columns])
        if len(self._waiting) >= AT_ONCE:
            self.flush()

    def flush(self) -> None:
        if self._waiting:
            made = columnar.group(self._table, self._waiting, self._writer.schema)
            self._writer.write_table(made)
            self._waiting.clear()
