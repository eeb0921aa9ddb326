"""Tables as Parquet: each column with its type, so that no program has to guess.

An amount is a decimal of two places, another number one of twelve; texts are texts, whatever a
spreadsheet would make of them. The library is heavy, so it is loaded when the first is written.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from decimal import Decimal
from itertools import islice
from typing import TYPE_CHECKING, Any, BinaryIO

from quarterday.core.file.layout import EMPTY_LIST, Cell, CellKind, split
from quarterday.core.money import round_to
from quarterday.intake.tablefiles.table import Table

if TYPE_CHECKING:
    import pyarrow as pa

GROUP = 10_000  # rows written at a time: bounds memory
_PLACES = {"amount": Decimal("0.01"), "number": Decimal("1e-12"), "ratio": Decimal("1e-12")}


def schema(table: Table) -> pa.Schema:
    """Return the types of a table's columns, with its title and headings beside them."""
    import pyarrow as pa

    types: dict[CellKind, pa.DataType] = {
        "amount": pa.decimal128(18, 2), "number": pa.decimal128(38, 12),
        "ratio": pa.decimal128(38, 12), "integer": pa.int64(), "date": pa.date32(),
        "yes-no": pa.bool_(), "list": pa.list_(pa.string()),
    }  # fmt: skip
    columns = [
        pa.field(f.id, types.get(f.kind, pa.string()), metadata={"heading": f.heading})
        for f in table.fields
    ]
    return pa.schema(columns, metadata={"title": table.title, **dict(table.about)})


def write(table: Table, out: BinaryIO) -> int:
    """Write a table as Parquet, and return the number of its rows."""
    import pyarrow.parquet as pq

    made, count, rows = schema(table), 0, iter(table.rows)
    with pq.ParquetWriter(out, made, compression="zstd") as writer:
        while part := list(islice(rows, GROUP)):
            writer.write_table(group(table, part, made))
            count += len(part)
    return count


def group(table: Table, rows: Sequence[Sequence[Cell]], made: pa.Schema) -> pa.Table:
    """Return rows as the columns of ``made``; pyarrow's ArrowInvalid where one does not fit."""
    import pyarrow as pa

    columns: Iterator[Any] = zip(*rows, strict=True)
    arrays = [
        pa.array([_typed(cell, field.kind) for cell in column], type=of.type)
        for field, column, of in zip(table.fields, columns, made, strict=True)
    ]
    return pa.Table.from_arrays(arrays, schema=made)


def _typed(cell: Cell, kind: CellKind) -> Cell | list[str]:
    """Return a cell as its column's type has it."""
    if cell is None:
        return None
    if kind in _PLACES:
        assert isinstance(cell, Decimal | int)
        return round_to(Decimal(cell), _PLACES[kind])
    if kind in {"integer", "date", "yes-no"}:
        return cell
    if kind == "list":
        return [] if cell in {"", EMPTY_LIST} else list(split(str(cell)))
    return str(cell)
