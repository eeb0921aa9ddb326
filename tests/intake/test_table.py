"""Rows become lines; totals, remarks, repeated headings and merged cells are told."""

from __future__ import annotations

import io
from pathlib import Path

import openpyxl

from quarterday.core.file.records import Claim
from quarterday.intake.parse import parse_workbook
from quarterday.intake.plan import Plan
from tests.intake.books import ORGANISATIONS, Rows, csv_folder, notes, parsed, plan_of, refusals

CLAIMS = ("account", "number", "cause", "date of loss", "paid", "description")


def claims(*rows: tuple[object, ...]) -> Plan:
    return plan_of({"Organisations": ORGANISATIONS, "Claims": [CLAIMS, *rows]})


def row(number: str, **said: object) -> tuple[object, ...]:
    cells = {
        "account": "0007",
        "number": number,
        "cause": "fire",
        "date of loss": "2024-05-05",
    } | said
    return tuple(cells.get(heading, "") for heading in CLAIMS)


def numbers(done: Plan) -> list[str]:
    return [item.record.number for item in done.items if isinstance(item.record, Claim)]


def test_total_rows_are_left_out_and_told() -> None:
    for label in ("Total", "TOTAL:", "Sous-total", "Grand total", "Total Ontario", "Totaux"):
        done = claims(row("1"), (label, "", "", "", 500, ""), row("2"))
        assert numbers(done) == ["1", "2"]
        assert f"Claims, row 3: The row “{label}” adds up others and was left out." in notes(done)


def test_an_account_that_begins_like_a_total_is_none() -> None:
    organisations: Rows = [("account", "name", "province"), ("Total Praise", "Total Praise", "ON")]
    done = plan_of({"Organisations": organisations})
    assert [item.account for item in done.items] == ["Total Praise"]


def test_headings_that_stand_again_are_left_out_and_told() -> None:
    done = claims(row("1"), CLAIMS, row("2"))
    assert numbers(done) == ["1", "2"]
    assert "Claims, row 3: The headings stand here again; the row was left out." in notes(done)


def test_a_remark_alone_in_its_row_is_left_out_and_quoted() -> None:
    done = claims(row("1"), ("Prepared for the renewal", "", "", "", "", ""))
    assert numbers(done) == ["1"]
    assert any("“Prepared for the renewal”" in note for note in notes(done))


def test_blank_rows_are_passed_over() -> None:
    done = claims(
        row("1"), ("", "", "", "", "", ""), (None,) * 6, ("  ", "", "", "", "", ""), row("2")
    )
    assert numbers(done) == ["1", "2"]
    assert not refusals(done)


def test_a_row_without_its_account_is_refused() -> None:
    done = claims(row("1", account=""))
    assert refusals(done) == [
        (
            "Claims, row 2, “account”: The row does not say which account it belongs to."
            " Fill in the account."
        )
    ]


def test_every_cell_that_cannot_be_read_is_told_with_row_column_value_and_remedy() -> None:
    done = claims(row("1", paid="lots", **{"date of loss": "yesterday"}))
    assert refusals(done) == [
        (
            "Claims, row 2, “date of loss”, “yesterday”: This is not a date."
            " Write year, month and day,"
            " such as 2026-03-31."
        ),
        "Claims, row 2, “paid”, “lots”: This is not a number. Write digits only, such as 1234.50.",
    ]


def test_a_long_or_odd_value_is_shown_so_that_it_can_be_printed(tmp_path: Path) -> None:
    cells = row("1", paid="\x1b[31m" + "9" * 200)
    text = "\n".join(",".join(map(str, line)) for line in (CLAIMS, cells))
    done = plan_of(csv_folder(tmp_path / "b", {"Claims.csv": text}))
    told = next(t for t in refusals(done) if "paid" in t)
    assert "U+001B[31m999" in told
    assert "…" in told
    assert len(told) < 250


def merged(column: str, top: int, bottom: int, value: object) -> Plan:
    book = openpyxl.Workbook()
    del book["Sheet"]
    for name, rows in (("Organisations", ORGANISATIONS), ("Claims", [CLAIMS, row("1"), row("2")])):
        page = book.create_sheet(name)
        for cells in rows:
            page.append(list(cells))
    page = book["Claims"]
    at = CLAIMS.index(column) + 1
    page.cell(top, at).value = value  # type: ignore[assignment]
    page.merge_cells(start_row=top, end_row=bottom, start_column=at, end_column=at)
    out = io.BytesIO()
    book.save(out)
    return plan_of(parse_workbook(out.getvalue(), "book.xlsx"))


def test_a_merged_text_is_read_in_each_row_it_covers() -> None:
    done = merged("account", 2, 3, "0012")
    assert [(i.account, i.record.key) for i in done.items if isinstance(i.record, Claim)] == [
        ("0012", "1"),
        ("0012", "2"),
    ]
    assert "Claims, row 2, “account”: The merged cell was read for rows 2 to 3." in notes(done)


def test_a_merged_amount_is_refused_in_each_row_and_never_counted_twice() -> None:
    done = merged("paid", 2, 3, 900)
    assert not numbers(done)
    told = refusals(done)
    assert len(told) == 2
    assert told[0] == (
        "Claims, row 2, “paid”, “900”: One number stands for several rows, so whose it is cannot be"
        " told. Undo the merged cells and give each row its own number."
    )


def test_a_sheet_of_headings_alone_holds_nothing() -> None:
    done = claims()
    assert not numbers(done)
    assert not refusals(done)


def test_a_column_of_short_rows_is_blank_there() -> None:
    done = plan_of(parsed({"Organisations": [*ORGANISATIONS, ("0020", "Camp Kestrel", "ON")]}))
    assert len(done.items) == 3
