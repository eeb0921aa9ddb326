"""Files that must be refused before anything is read, and what each is told."""

from __future__ import annotations

import io
import struct
import tracemalloc
import zipfile
from collections.abc import Callable
from pathlib import Path

import openpyxl
import pytest

from quarterday.intake import package
from quarterday.intake.package import Package
from quarterday.intake.parse import parse, parse_workbook
from quarterday.intake.refusals import Unreadable
from tests.intake.books import ORGANISATIONS, speech, workbook

GOOD = workbook({"Organisations": ORGANISATIONS})
OLE = b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1"  # MS-CFB 2.2: the signature of a compound file
SHEET = "xl/worksheets/sheet1.xml"


def changed(change: Callable[[zipfile.ZipFile, zipfile.ZipFile], None]) -> bytes:
    """Return the good workbook's package, rewritten by ``change``."""
    out = io.BytesIO()
    with zipfile.ZipFile(io.BytesIO(GOOD)) as old, zipfile.ZipFile(out, "w", 8) as new:
        change(old, new)
    return out.getvalue()


def with_part(name: str, data: bytes) -> bytes:
    def change(old: zipfile.ZipFile, new: zipfile.ZipFile) -> None:
        for part in old.namelist():
            if part != name:
                new.writestr(part, old.read(part))
        new.writestr(name, data)

    return changed(change)


def sheet_xml(rows: str) -> bytes:
    main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main"
    return f'<worksheet xmlns="{main}"><sheetData>{rows}</sheetData></worksheet>'.encode()


def refusal(data: bytes) -> str:
    with pytest.raises(Unreadable) as caught:
        parse_workbook(data, "book.xlsx")
    for language in ("en", "fr"):
        assert speech(language).say(caught.value.words)
    return caught.value.words.id


@pytest.mark.parametrize(
    ("data", "id"),
    [
        (b"", "intake-empty"),
        (b"hello, this is text", "intake-not-a-workbook"),
        (b"%PDF-1.7 and so on", "intake-not-a-workbook"),
        (b"\x00" * 5000, "intake-not-a-workbook"),
        (GOOD[: len(GOOD) // 2], "intake-truncated"),
        (GOOD[:-30], "intake-truncated"),
        (OLE + b"\0" * 600 + "EncryptedPackage".encode("utf-16-le"), "intake-password"),
        (OLE + b"\0" * 600 + "Workbook".encode("utf-16-le"), "intake-older-format"),
        (with_part("xl/vbaProject.bin", b"x"), "intake-macros"),
        (with_part("xl/macrosheets/sheet1.xml", b"<x/>"), "intake-macros"),
        (with_part("xl/workbook.bin", b"x"), "intake-older-format"),
        (with_part("content.xml", b"<x/>"), "intake-older-format"),
    ],
)
def test_a_file_that_cannot_be_trusted_is_refused_with_its_reason(data: bytes, id: str) -> None:
    assert refusal(data) == id


def test_a_package_of_something_else_is_no_workbook() -> None:
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w") as other:
        other.writestr("word/document.xml", "<x/>")
    assert refusal(out.getvalue()) == "intake-not-a-workbook"


def test_a_part_cut_short_in_the_middle_is_refused() -> None:
    cut = bytearray(GOOD)
    middle = GOOD.index(b"xl/worksheets/sheet1.xml") + 60
    cut[middle : middle + 40] = b"\xff" * 40
    assert refusal(bytes(cut)) == "intake-truncated"


def test_a_part_locked_with_a_password_is_refused() -> None:
    locked = bytearray(GOOD)
    at = GOOD.index(b"PK\x01\x02")
    struct.pack_into("<H", locked, at + 8, 0x1)  # APPNOTE 4.4.4: bit 0 says encrypted
    assert refusal(bytes(locked)) == "intake-password"


def test_a_file_that_unpacks_to_too_much_is_refused_without_unpacking_it_all(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setattr(package, "LARGEST_UNPACKED", 20 * 2**20)
    bomb = with_part("xl/media/big.bin", b"\0" * (200 * 2**20))
    tracemalloc.start()
    assert refusal(bomb) == "intake-too-large-unpacked"
    _, peak = tracemalloc.get_traced_memory()
    tracemalloc.stop()
    assert peak < 40 * 2**20


def test_a_header_that_lies_about_the_size_does_not_help(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(package, "LARGEST_UNPACKED", 20 * 2**20)
    bomb = bytearray(with_part("xl/media/big.bin", b"\0" * (50 * 2**20)))
    at = bomb.rindex(b"PK\x01\x02", 0, bomb.rindex(b"xl/media/big.bin"))
    struct.pack_into("<L", bomb, at + 24, 10)  # APPNOTE 4.4.9: the size it claims to have
    assert refusal(bytes(bomb)) == "intake-too-large-unpacked"


def test_the_limit_holds_two_gigabytes_off() -> None:
    assert package.LARGEST_UNPACKED < 2**30


def test_a_file_larger_than_the_limit_is_refused(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(package, "LARGEST_FILE", 1000)
    assert refusal(GOOD) == "intake-too-large"


def test_a_package_of_very_many_parts_is_refused(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(package, "MOST_PARTS", 3)
    assert refusal(GOOD) == "intake-too-many-parts"


@pytest.mark.parametrize("quote", ['"', "'"])
def test_a_cell_in_the_far_corner_makes_no_room_for_billions(quote: str) -> None:
    """XFD1048576 is the last cell of a sheet (ECMA-376 Part 1, 18.3.1.73 and Excel's limits)."""
    cell = "<row r={q}1048576{q}><c r={q}XFD1048576{q}><v>1</v></c></row>".replace("{q}", quote)
    assert refusal(with_part(SHEET, sheet_xml(cell))) == "intake-too-wide"


def test_cells_whose_row_is_not_the_rows_are_counted_too() -> None:
    cell = '<row r="1"><c r="A1"><v>1</v></c><c r="XFD999999"><v>1</v></c></row>'
    assert refusal(with_part(SHEET, sheet_xml(cell))) == "intake-too-wide"


@pytest.mark.parametrize("name", [SHEET, "xl/workbook.xml", "xl/sharedStrings.xml"])
def test_a_document_type_is_refused_as_no_workbook_has_one(name: str) -> None:
    """Entities that name each other ten times over, as in the billion-laughs attack."""
    laughs = (
        b'<!DOCTYPE x [<!ENTITY a "ha"><!ENTITY b "&a;&a;&a;&a;&a;&a;&a;&a;&a;&a;">]><x>&b;</x>'
    )
    assert refusal(with_part(name, laughs)) == "intake-not-a-workbook"


def test_a_document_type_is_found_across_the_pieces_it_is_unpacked_in() -> None:
    padding = b"<!--" + b" " * (2**20 - 8) + b"-->"
    assert refusal(with_part(SHEET, padding + b"<!DOCTYPE x><x/>")) == "intake-not-a-workbook"


def test_a_sheet_that_is_no_xml_is_refused() -> None:
    broken = b'<worksheet><sheetData><row r="1"><c r="A1" t="e"><v>#REF!</v></row>'
    assert refusal(with_part(SHEET, broken)) == "intake-truncated"


@pytest.mark.parametrize("part", ["xl/workbook.xml", "xl/_rels/workbook.xml.rels"])
def test_a_part_in_an_encoding_nobody_knows_is_refused(part: str) -> None:
    """Found by spoiling ten thousand workbooks at random."""
    odd = b'<?xml version="1.0" encoding="Jan-24"?><workbook/>'
    assert refusal(with_part(part, odd)) == "intake-truncated"


def test_a_sheet_in_an_encoding_nobody_knows_is_refused() -> None:
    odd = sheet_xml('<row r="1"><c r="A1" t="e"><v>#REF!</v></c></row>')
    head = b'<?xml version="1.0" encoding="Infinity"?>'
    assert refusal(with_part(SHEET, head + odd)) == "intake-truncated"


def test_a_workbook_without_its_relations_is_refused() -> None:
    def drop(old: zipfile.ZipFile, new: zipfile.ZipFile) -> None:
        for part in old.namelist():
            if part != "xl/_rels/workbook.xml.rels":
                new.writestr(part, old.read(part))

    assert refusal(changed(drop)) == "intake-truncated"


def test_error_cells_are_found_whatever_the_prefix() -> None:
    main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main"
    xml = (
        f'<x:worksheet xmlns:x="{main}"><x:sheetData><x:row r="3">'
        "<x:c r='B3' t='e'><x:v>#N/A</x:v></x:c><x:c t='e'><x:v>#REF!</x:v></x:c>"
        "</x:row></x:sheetData></x:worksheet>"
    )
    odd = Package(with_part(SHEET, xml.encode())).odd_cells()
    assert odd["Organisations"].errors == {(3, 2): "#N/A", (3, 3): "#REF!"}


def test_a_formula_calculated_to_nothing_is_a_value_and_one_never_calculated_is_not() -> None:
    xml = sheet_xml(
        '<row r="1"><c r="A1" t="str"><f>""</f><v></v></c><c r="B1"><f>1+1</f></c>'
        '<c r="C1"><f>1+1</f><v>2</v></c><c r="D1"><f>[1]Sheet1!A1</f><v>3</v></c></row>'
    )

    def change(old: zipfile.ZipFile, new: zipfile.ZipFile) -> None:
        for part in old.namelist():
            data = xml if part == SHEET else old.read(part)
            new.writestr(part, data.replace(b'fullCalcOnLoad="1"', b""))

    odd = Package(changed(change)).odd_cells()["Organisations"]
    assert odd.uncalculated == {(1, 2)}
    assert odd.linked == [(1, 4)]


def test_a_workbook_that_asks_to_be_calculated_first_has_no_values_in_its_formulas(
    tmp_path: Path,
) -> None:
    """Programs that write workbooks leave formulas without a value, or with a zero."""
    book = openpyxl.Workbook()
    page = book["Sheet"]
    page["A1"] = "=1+1"
    book.save(tmp_path / "book.xlsx")
    parsed = parse(tmp_path / "book.xlsx")
    assert str(parsed.sheets[0].rows[0][0]) == "="


def test_a_missing_file_is_told() -> None:
    with pytest.raises(Unreadable) as caught:
        parse(Path("nowhere.xlsx"))
    assert caught.value.words.id == "intake-not-found"
