"""Parquet: what is written is read back as it was, by pyarrow and by pandas.

Types: Apache Parquet, logical types (DECIMAL, DATE, LIST); pyarrow and pandas read independently of
what wrote.
"""

from __future__ import annotations

import tempfile
from datetime import date
from decimal import Decimal
from pathlib import Path
from typing import Any

import pandas as pd
import pyarrow as pa
import pyarrow.parquet as pq
import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from quarterday.core.file.layout import SHEETS, rows
from quarterday.core.file.records import Building, Claim, Organisation, Record, Terms
from quarterday.intake import parquet
from quarterday.intake.parquet import column_name, write_parquet
from quarterday.invent.demo.book import demo_book
from tests.intake.test_write import terms

BY_NAME = {sheet.name: sheet for sheet in SHEETS}


def demo() -> list[tuple[str, Record]]:
    kinds = {sheet.record.kind for sheet in SHEETS}
    return [(a.id, r) for a in demo_book() for r in a.records if r.kind in kinds]


def read(path: Path, sheet: str) -> list[dict[str, Any]]:
    return pq.read_table(path / f"{sheet}.parquet").to_pylist()  # type: ignore[no-any-return]


def told(records: list[tuple[str, Record]], sheet: str) -> list[dict[str, Any]]:
    """The rows as the records' own fields have them, lists as lists."""
    columns = BY_NAME[sheet].columns
    found = []
    for account, record in records:
        for of, row in rows(account, record):
            if of.name == sheet:
                plain = {column_name(c): row.get(c.heading) for c in columns}
                lists = {column_name(c) for c in columns if c.kind == "list"}
                found.append({n: _items(v) if n in lists else v for n, v in plain.items()})
    return found


def _items(cell: Any) -> list[str] | None:
    if cell is None:
        return None
    return [] if cell in {"", "none"} else str(cell).split("; ")


def test_the_demo_book_comes_back_from_every_sheet_as_it_is_on_file(tmp_path: Path) -> None:
    paths = write_parquet(demo(), tmp_path)
    assert [path.stem for path in paths] == list(BY_NAME)
    for sheet in BY_NAME:
        assert read(tmp_path, sheet) == told(demo(), sheet), sheet


@settings(max_examples=20, deadline=None, suppress_health_check=list(HealthCheck))
@given(st.lists(terms(), max_size=3))
def test_any_terms_come_back_exactly(made: list[Terms]) -> None:
    records: list[tuple[str, Record]] = [("0007", one) for one in made]
    with tempfile.TemporaryDirectory() as folder:
        write_parquet(records, Path(folder))
        back = read(Path(folder), "Coverages")
    lines = [line for one in made for line in one.coverages]
    assert [(r["coverage"], r["location"], r["limit"]) for r in back] == [
        (line.coverage, line.location, line.limit) for line in lines
    ]


def test_columns_have_types_that_a_program_computes_with(tmp_path: Path) -> None:
    write_parquet(demo(), tmp_path)
    schema = pq.read_schema(tmp_path / "Coverages.parquet")
    assert schema.field("limit").type == pa.decimal128(18, 2)
    assert schema.field("start").type == pa.date32()
    buildings = pq.read_schema(tmp_path / "Buildings.parquet")
    assert buildings.field("special_features").type == pa.list_(pa.string())
    assert buildings.field("heritage").type == pa.bool_()
    assert buildings.field("year_built").type == pa.int64()


def test_pandas_sums_what_the_records_sum(tmp_path: Path) -> None:
    write_parquet(demo(), tmp_path)
    frame = pd.read_parquet(tmp_path / "Premiums.parquet")
    mine = [line.amount for _, r in demo() if isinstance(r, Terms) for line in r.premiums]
    assert sum(frame["amount"]) == sum(mine)
    assert len(frame) == len(mine)
    organisations = pd.read_parquet(tmp_path / "Organisations.parquet")
    assert organisations["account"].is_unique


def test_unknown_is_null_and_empty_is_an_empty_list(tmp_path: Path) -> None:
    halls = [Building(id="a", name="A"), Building(id="b", name="B", special_features=()),
             Building(id="c", name="C", special_features=("organ", "none"))]  # fmt: skip
    write_parquet([("1", hall) for hall in halls], tmp_path)
    found = read(tmp_path, "Buildings")
    assert [row["special_features"] for row in found] == [[], [], ["organ", "none"]]
    assert {row["area_m2"] for row in found} == {None}


def test_a_text_that_a_spreadsheet_would_run_stays_as_it_is(tmp_path: Path) -> None:
    write_parquet([("1", Organisation(name="=1+1", province="ON"))], tmp_path)
    assert read(tmp_path, "Organisations")[0]["name"] == "=1+1"


def test_many_rows_are_written_a_part_at_a_time_and_none_is_lost(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(parquet, "AT_ONCE", 3)
    write_parquet(demo(), tmp_path)
    assert read(tmp_path, "Buildings") == told(demo(), "Buildings")
    assert pq.ParquetFile(tmp_path / "Buildings.parquet").num_row_groups > 1


def test_the_largest_amount_and_the_finest_number_that_a_file_holds_fit(tmp_path: Path) -> None:
    paid, area = Decimal("999999999999.99"), Decimal("123456789.123456")
    claim = Claim(number="1", cause="fire", date_of_loss=date(2026, 1, 1), status="open", paid=paid)
    write_parquet([("1", claim), ("1", Building(id="a", name="A", area_m2=area))], tmp_path)
    assert read(tmp_path, "Claims")[0]["paid"] == paid
    assert read(tmp_path, "Buildings")[0]["area_m2"] == area


def test_days_are_days(tmp_path: Path) -> None:
    hall = Building(id="a", name="A", unoccupied_since=date(2026, 9, 1))
    write_parquet([("1", hall)], tmp_path)
    assert read(tmp_path, "Buildings")[0]["unoccupied_since"] == date(2026, 9, 1)
