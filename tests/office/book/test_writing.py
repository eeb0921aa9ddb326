"""The book's tables as files, read back by other libraries."""

from __future__ import annotations

import csv
import io
from decimal import Decimal

import openpyxl
import pyarrow.parquet as pq
import pytest
from tests.office.book.test_topics import GIVEN, teller, topic

from quarterday.office.book import writing
from quarterday.office.book.topics import TOPICS
from quarterday.office.trouble import Trouble
from quarterday.store.book import Asked

ASKED = Asked(frozenset({"port-ellery"}), "Ann", "ON", "2027-01", "2027-03")


@pytest.mark.parametrize("id", TOPICS)
def test_each_table_as_parquet_has_its_types_and_its_rows(id: str) -> None:
    found = topic(id)
    data = writing.written([found], "parquet", teller(), ASKED)
    read = pq.read_table(io.BytesIO(data))
    assert read.schema.names == [field.id for field in found.table.fields]
    assert [list(row.values()) for row in read.to_pylist()] == [list(r) for r in found.table.rows]
    assert b"as of" in read.schema.metadata


@pytest.mark.parametrize("id", TOPICS)
@pytest.mark.parametrize("language", ["en", "fr"])
def test_each_table_as_csv_has_a_line_a_row(id: str, language: str) -> None:
    found = topic(id, language=language)
    text = writing.written([found], "csv", teller(language), ASKED).decode("utf-8-sig")
    read = list(csv.reader(io.StringIO(text), delimiter=";" if language == "fr" else ","))
    assert read[0] == [field.heading for field in found.table.fields]
    assert len(read) == 1 + len(list(found.table.rows))


def test_an_insurer_named_like_a_formula_is_text_everywhere() -> None:
    found = topic("insurers")
    text = writing.written([found], "csv", teller(), ASKED).decode("utf-8-sig")
    assert "'=Larch()" in text
    assert "\n=Larch()" not in text
    book = openpyxl.load_workbook(io.BytesIO(writing.written([found], "xlsx", teller(), ASKED)))
    cells = [cell for row in book.worksheets[0].iter_rows() for cell in row]
    assert {cell.data_type for cell in cells if cell.value == "=Larch()"} == {"s"}
    assert all(cell.data_type != "f" for cell in cells)


def test_a_workbook_holds_every_table_and_says_what_was_asked() -> None:
    found = [topic(id) for id in TOPICS]
    book = openpyxl.load_workbook(io.BytesIO(writing.written(found, "xlsx", teller(), ASKED)))
    assert len(book.worksheets) == len(TOPICS)
    said = [cell.value for cell in book.worksheets[0]["A"]]
    for part in ("as of: 2026-11-25", "currency: CAD", "Office: port-ellery", "Owner: Ann",
                 "Province: Ontario", "Renews from: 2027-01", "Renews until: 2027-03"):  # fmt: skip
        assert part in said


def test_amounts_of_a_workbook_are_numbers_to_the_cent() -> None:
    data = writing.written([topic("offers")], "xlsx", teller(), Asked())
    page = openpyxl.load_workbook(io.BytesIO(data)).worksheets[0]
    heads = [cell.value for cell in page[1]]
    price = page[2][heads.index("Price declined")]
    assert Decimal(str(price.value)) == Decimal(350)
    assert price.number_format == "#,##0.00"


@pytest.mark.parametrize("kind", ["csv", "parquet"])
def test_several_tables_do_not_go_into_a_file_of_one(kind: str) -> None:
    with pytest.raises(Trouble) as trouble:
        writing.written([topic("work"), topic("cover")], kind, teller(), Asked())
    assert trouble.value.words.id == "book-one-table"


def test_the_whole_book_is_asked_without_a_word_on_filters() -> None:
    told = dict(writing.about(teller(), Asked()))
    assert set(told) == {"as of", "currency"}
    assert GIVEN.files
