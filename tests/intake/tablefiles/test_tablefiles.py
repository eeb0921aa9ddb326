"""Tables as files, each read back by another library than the one that wrote it."""

from __future__ import annotations

import csv
import io
from collections.abc import Iterator
from dataclasses import replace
from datetime import date
from decimal import Decimal
from typing import Any

import openpyxl
import pyarrow as pa
import pyarrow.parquet as pq
import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterday.core.file.layout import Cell, CellKind
from quarterday.intake.cells.answers import unguarded
from quarterday.intake.tablefiles import columnar, plainfiles
from quarterday.intake.tablefiles.plainfiles import csv_bytes
from quarterday.intake.tablefiles.table import Field, Table, of_rows

EVIL = '=HYPERLINK("http://example.org","x")'
KINDS: tuple[tuple[CellKind, Cell], ...] = (
    ("text", EVIL), ("amount", Decimal("1234567.5")), ("ratio", Decimal("0.08125")),
    ("integer", 12), ("date", date(2027, 1, 15)), ("yes-no", True),
)  # fmt: skip
TABLE = Table(
    id="claims",
    title="Claims by cause: 10 years / all",
    fields=[Field(kind, f"The {kind}", kind) for kind, _ in KINDS],
    rows=[[cell for _, cell in KINDS], [None] * len(KINDS)],
    about=[("as of", "2026-11-25")],
)


def parquet(table: Table) -> Any:
    out = io.BytesIO()
    columnar.write(table, out)
    return pq.read_table(io.BytesIO(out.getvalue()))


def as_csv(table: Table, language: str) -> list[list[str]]:
    out = io.BytesIO()
    plainfiles.write_csv(table, out, language)
    text = out.getvalue().decode("utf-8-sig")
    return list(csv.reader(io.StringIO(text), delimiter=";" if language == "fr" else ","))


def workbook(*tables: Table) -> Any:
    out = io.BytesIO()
    plainfiles.write_workbook(tables, out)
    return openpyxl.load_workbook(io.BytesIO(out.getvalue()))


def test_parquet_gives_each_column_its_type_and_each_cell_its_value() -> None:
    read = parquet(TABLE)
    assert dict(zip(read.schema.names, read.schema.types, strict=True)) == {
        "text": pa.string(), "amount": pa.decimal128(18, 2), "ratio": pa.decimal128(38, 12),
        "integer": pa.int64(), "date": pa.date32(), "yes-no": pa.bool_(),
    }  # fmt: skip
    assert read.to_pylist() == [dict(KINDS), dict.fromkeys(dict(KINDS))]


def test_parquet_carries_the_title_the_headings_and_what_the_table_says_of_itself() -> None:
    read = parquet(TABLE)
    assert read.schema.metadata[b"title"] == TABLE.title.encode()
    assert read.schema.metadata[b"as of"] == b"2026-11-25"
    assert read.schema.field("amount").metadata[b"heading"] == b"The amount"


def test_a_table_longer_than_a_group_is_written_whole_and_read_once() -> None:
    def rows() -> Iterator[list[int]]:
        yield from ([n] for n in range(columnar.GROUP + 7))

    table = Table("n", "n", [Field("n", "n", "integer")], rows())
    assert parquet(table)["n"].to_pylist() == list(range(columnar.GROUP + 7))


def test_a_table_without_rows_keeps_its_columns() -> None:
    empty = replace(TABLE, rows=[])
    assert parquet(empty).schema.names == [field.id for field in TABLE.fields]
    assert as_csv(empty, "en") == [[field.heading for field in TABLE.fields]]
    assert workbook(empty).worksheets[0]["B1"].value == "The amount"


@pytest.mark.parametrize(("language", "mark"), [("en", "."), ("fr", ",")])
def test_csv_is_written_as_its_language_writes_numbers(language: str, mark: str) -> None:
    _, row, nothing = as_csv(TABLE, language)
    assert row[1:3] == [f"1234567{mark}5", f"0{mark}08125"]
    assert row[4:] == ["2027-01-15", "yes" if language == "en" else "oui"]
    assert nothing == [""] * len(KINDS)


@pytest.mark.parametrize("evil", [EVIL, "+1", "-1+1", "@SUM(A1)", "\t=1"])
def test_no_text_is_run_as_a_formula(evil: str) -> None:
    """The signs that OWASP names for CSV injection (its page on it, from memory)."""
    table = replace(TABLE, fields=[Field("text", evil, "text")], rows=[[evil]])
    assert all(cell.startswith("'") for row in as_csv(table, "en") for cell in row)
    page = workbook(table).worksheets[0]
    assert [cell.data_type for cell in (page["A1"], page["A2"])] == ["s", "s"]
    assert parquet(table)["text"].to_pylist() == [evil]


@given(st.text(max_size=40))
def test_a_guarded_text_is_read_back_as_it_was(text: str) -> None:
    assert unguarded(plainfiles._text(text, "en")) == text


def test_a_workbook_has_a_sheet_a_table_whatever_its_title() -> None:
    book = workbook(TABLE, replace(TABLE, title="What was [offered]? " * 3))
    assert [len(name) <= 31 for name in book.sheetnames] == [True, True]
    page = book.worksheets[0]
    assert [cell.value for cell in page[2]][1:4] == [1234567.5, 0.08125, 12]
    assert page["A2"].value == EVIL
    assert page["A5"].value == "as of: 2026-11-25"


def test_equal_tables_give_equal_bytes() -> None:
    def made() -> bytes:
        out = io.BytesIO()
        plainfiles.write_workbook([TABLE], out)
        return out.getvalue()

    assert made() == made()


def test_a_table_for_programs_has_its_ids_as_headings_and_blanks_for_what_a_row_lacks() -> None:
    """Read back by the csv module, which had no part in writing it."""
    rows: list[dict[str, Cell]] = [
        {"file": "A", "sum": Decimal("10.50")}, {"file": "=B", "day": date(2027, 1, 15)},
    ]  # fmt: skip
    table = of_rows("things", {"file": "text", "sum": "amount", "day": "date"}, rows)
    told = csv.DictReader(io.StringIO(csv_bytes(table).decode("utf-8-sig")))
    assert list(told) == [
        {"file": "A", "sum": "10.50", "day": ""}, {"file": "'=B", "sum": "", "day": "2027-01-15"},
    ]  # fmt: skip
