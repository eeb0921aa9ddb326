"""Loading from the terminal: previews, refusals, and nothing twice."""

from __future__ import annotations

from pathlib import Path

import pytest
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


@pytest.mark.parametrize("language", ["en", "fr"])
def test_a_place_that_cannot_be_written_is_told_in_a_sentence(
    run: Run, workbook: Path, tmp_path: Path, language: str
) -> None:
    bad = spoiled(workbook, tmp_path / "bad.xlsx")
    done = run("--language", language, "load", str(bad), "--preview", "--annotate", str(tmp_path))
    assert done.exit_code == 1
    assert tmp_path.name in done.stderr.replace("\n", "")
    assert {"en": "is a folder", "fr": "est un dossier"}[language] in " ".join(done.stderr.split())


def test_a_workbook_s_library_does_not_hide_what_is_wrong(loaded: Run, tmp_path: Path) -> None:
    done = loaded("export", "--out", str(tmp_path / "nowhere" / "book.xlsx"))
    assert done.exit_code == 1
    assert "There is no" in done.stderr
