"""CSV files in the encodings and delimiters that spreadsheets write."""

from __future__ import annotations

import hashlib
from pathlib import Path

import pytest

from quarterday.intake import csvfiles
from quarterday.intake.parse import parse
from quarterday.intake.refusals import Unreadable
from tests.intake.books import csv_folder, speech


def rows(folder: Path, data: str | bytes) -> list[list[object]]:
    return csv_folder(folder / "b", {"Contacts.csv": data}).sheets[0].rows  # type: ignore[return-value]


def refusal(folder: Path, data: bytes) -> str:
    with pytest.raises(Unreadable) as caught:
        rows(folder, data)
    return speech("en").say(caught.value.words)


@pytest.mark.parametrize("mark", [",", ";", "\t"])
def test_the_delimiter_is_found(tmp_path: Path, mark: str) -> None:
    text = f"account{mark}name\n0007{mark}Ève\n"
    assert rows(tmp_path, text) == [["account", "name"], ["0007", "Ève"]]


def test_marks_inside_the_cells_are_no_delimiter(tmp_path: Path) -> None:
    """Every line has one comma between its cells; the lists in them have more semicolons."""
    text = "account,perils\n0007,a;b;c;d\n0008,a;b;c;d;e\n"
    assert rows(tmp_path, text)[1:] == [["0007", "a;b;c;d"], ["0008", "a;b;c;d;e"]]


@pytest.mark.parametrize("encoding", ["utf-8", "utf-8-sig", "utf-16", "cp1252"])
def test_the_encodings_that_spreadsheets_write_are_read(tmp_path: Path, encoding: str) -> None:
    data = "account,name\n0007,Église Saint-André\n".encode(encoding)
    assert rows(tmp_path, data)[1] == ["0007", "Église Saint-André"]


def test_an_encoding_that_had_to_be_guessed_is_told(tmp_path: Path) -> None:
    found = csv_folder(tmp_path / "b", {"Contacts.csv": "name\nÈve\n".encode("cp1252")})
    assert [fault.what.id for fault in found.faults] == ["intake-csv-encoding"]


def test_a_line_break_in_a_cell_does_not_shift_the_rows(tmp_path: Path) -> None:
    assert rows(tmp_path, 'a,b\n"x\ny",1\nz,2\n')[2] == ["z", "2"]


def test_half_a_character_is_refused_and_not_turned_into_others(tmp_path: Path) -> None:
    assert "characters that cannot be read" in refusal(tmp_path, b"name\n\xed\xa0\x80x\n")
    assert "characters that cannot be read" in refusal(tmp_path, b"\xff\xfea\x00\x00\xd8b\x00")
    assert "characters that cannot be read" in refusal(tmp_path, b"name\n\x81\x8d\n")


def test_a_cell_far_too_long_is_refused_with_its_row(tmp_path: Path) -> None:
    assert "near row 2" in refusal(tmp_path, b"name\n" + b"x" * 200_000 + b"\n")


def test_too_many_cells_files_and_bytes_are_refused(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(csvfiles, "MOST_CELLS", 10)
    assert "10 cells" in refusal(tmp_path, b"a,b,c\n" * 9)
    monkeypatch.setattr(csvfiles, "LARGEST_FILE", 5)
    assert "larger than" in refusal(tmp_path, b"a,b,c\n")
    monkeypatch.setattr(csvfiles, "MOST_FILES", 0)
    assert "more than 0 CSV files" in refusal(tmp_path, b"a\n")


def test_a_folder_without_csv_files_is_told(tmp_path: Path) -> None:
    with pytest.raises(Unreadable) as caught:
        parse(tmp_path)
    assert caught.value.words.id == "intake-no-csv"


def test_one_csv_file_alone_is_a_sheet(tmp_path: Path) -> None:
    (tmp_path / "Organisations.csv").write_text("account,name,province\n1,A,ON\n", "utf-8")
    assert [sheet.name for sheet in parse(tmp_path / "Organisations.csv").sheets] == [
        "Organisations"
    ]


def test_equal_files_are_one_document_whatever_their_dates(tmp_path: Path) -> None:
    first = csv_folder(tmp_path / "a", {"Contacts.csv": "x,y\n"})
    second = csv_folder(tmp_path / "b", {"Contacts.csv": "x,y\n"})
    other = csv_folder(tmp_path / "c", {"Contacts.csv": "x,z\n"})
    assert first.document == second.document != other.document
    assert first.document == hashlib.sha256(first.original).hexdigest()


def test_the_faults_that_were_written_beside_are_no_sheet(tmp_path: Path) -> None:
    found = csv_folder(tmp_path / "b", {"Contacts.csv": "x,y\n", "faults.csv": "Sheet,Row\n"})
    assert [sheet.name for sheet in found.sheets] == ["Contacts"]
