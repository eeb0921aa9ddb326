"""Loading from the terminal: previews, refusals, and nothing twice."""

from __future__ import annotations

from pathlib import Path

from openpyxl import load_workbook
from tests.cli.conftest import Run, printed


def test_a_preview_says_what_would_be_done_and_writes_nothing(run: Run, workbook: Path) -> None:
    seen = printed(run("load", str(workbook), "--preview", "--json"))
    assert seen["new"] > 50
    assert (seen["changed"], seen["unchanged"], seen["refused"]) == (0, 0, 0)
    assert printed(run("list", "--json")) == []


def test_loading_twice_changes_nothing(loaded: Run, workbook: Path) -> None:
    entries = len(printed(loaded("history", "HW-1001", "--json")))
    again = printed(loaded("load", str(workbook), "--json"))
    assert (again["new"], again["changed"]) == (0, 0)
    assert len(printed(loaded("history", "HW-1001", "--json"))) == entries


def test_every_entry_knows_its_sheet_and_row(loaded: Run) -> None:
    for entry in printed(loaded("history", "HW-1001", "--json")):
        assert entry["origin"]["way"] == "workbook"
        assert all(place["row"] >= 2 for place in entry["origin"]["places"])


def spoiled(workbook: Path, out: Path) -> Path:
    book = load_workbook(workbook)
    sheet = book["Valuations"]
    column = next(c.column for c in sheet[1] if c.value == "amount")
    sheet.cell(2, column).value = "about two million"
    book.save(out)
    return out


def test_a_faulty_row_stops_the_load_and_is_named(run: Run, workbook: Path, tmp_path: Path) -> None:
    faulty = spoiled(workbook, tmp_path / "faulty.xlsx")
    result = run("load", str(faulty))
    assert result.exit_code == 1
    assert "about two million" in result.stdout
    assert printed(run("list", "--json")) == []


def test_good_rows_go_on_when_the_person_accepts(run: Run, workbook: Path, tmp_path: Path) -> None:
    faulty = spoiled(workbook, tmp_path / "faulty.xlsx")
    assert run("load", str(faulty), "--accept-with-errors").exit_code == 0
    assert len(printed(run("list", "--json"))) == 3


def test_a_faulty_workbook_comes_back_with_a_comment_at_the_cell(
    run: Run, workbook: Path, tmp_path: Path
) -> None:
    faulty, copy = spoiled(workbook, tmp_path / "faulty.xlsx"), tmp_path / "copy.xlsx"
    run("load", str(faulty), "--preview", "--annotate", str(copy))
    sheet = load_workbook(copy)["Valuations"]
    column = next(c.column for c in sheet[1] if c.value == "amount")
    assert sheet.cell(2, column).comment is not None
