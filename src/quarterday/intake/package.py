"""Open an .xlsx file's package safely, and look for what the fast reader would not tell.

The fast reader shows error cells and formulas that were never calculated as blank cells, and makes
room for every cell between the first and the last. So every part is unpacked once under a limit and
looked over before the reader sees it.
"""

from __future__ import annotations

import io
import re
import struct
import zipfile
import zlib
from collections.abc import Iterator
from dataclasses import dataclass, field
from xml.sax import SAXException
from xml.sax.handler import ContentHandler, feature_namespaces
from xml.sax.xmlreader import AttributesImpl

from defusedxml.common import DefusedXmlException
from defusedxml.ElementTree import fromstring
from defusedxml.sax import make_parser

from quarterday.intake.refusals import Unreadable

LARGEST_FILE = 100 * 2**20
LARGEST_UNPACKED = 768 * 2**20
MOST_PARTS = 2_000
MOST_CELLS = 12_000_000  # of one sheet, blank cells between the first and the last included
_CHUNK = 2**20
_OVERLAP = 64
_ENCRYPTED, _DEFLATED, _STORED = 0x1, 8, 0
_LOCAL_HEADER = struct.Struct("<4s5HL2L2H")
_OLE = b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1"
_ENCRYPTED_PACKAGE = "EncryptedPackage".encode("utf-16-le")
_COLUMNS = re.compile(rb"""\br=["']([A-Z]{1,3})\d""")
_HIGH_ROWS = re.compile(rb"""\br=["'][A-Z]{0,3}(\d{5,7})["']""")
_ODD_MARKS = (b'"e"', b"'e'", b"<f>", b"<f ", b"<f/", b":f>", b":f ", b":f/")
_TO_CALCULATE = re.compile(rb"""\bfullCalcOnLoad=["'](?:1|true)["']""")
_RELATION = "{http://schemas.openxmlformats.org/officeDocument/2006/relationships}id"
# What no XML is: also one that names an encoding nobody knows, or a part that is not there.
_BAD_XML = (LookupError, SyntaxError, ValueError, DefusedXmlException)
Cell = tuple[int, int]


@dataclass(frozen=True, slots=True)
class OddCells:
    """Cells of one sheet (row and column from 1) that the fast reader would show as blank.

    ``linked`` are cells whose value comes from another workbook.
    """

    errors: dict[Cell, str] = field(default_factory=dict)
    uncalculated: set[Cell] = field(default_factory=set)
    linked: list[Cell] = field(default_factory=list)


def _parts(data: bytes) -> list[zipfile.ZipInfo]:
    """Return the package's parts; Unreadable when it is no package or has far too many parts."""
    try:
        with zipfile.ZipFile(io.BytesIO(data)) as package:
            parts = package.infolist()
    except (zipfile.BadZipFile, ValueError, NotImplementedError, OSError) as error:
        cut_short = data.startswith(b"PK")
        raise Unreadable("intake-truncated" if cut_short else "intake-not-a-workbook") from error
    if len(parts) > MOST_PARTS:
        raise Unreadable("intake-too-many-parts", most=MOST_PARTS)
    return parts


def _packed(data: bytes, part: zipfile.ZipInfo) -> bytes:
    start = part.header_offset
    header = data[start : start + _LOCAL_HEADER.size]
    if len(header) < _LOCAL_HEADER.size or not header.startswith(b"PK\x03\x04"):
        raise Unreadable("intake-truncated")
    *_, name, extra = _LOCAL_HEADER.unpack(header)
    start += _LOCAL_HEADER.size + name + extra
    packed = data[start : start + part.compress_size]
    if len(packed) < part.compress_size:
        raise Unreadable("intake-truncated")
    return packed


def _unpacked(data: bytes, part: zipfile.ZipInfo) -> Iterator[bytes]:
    """Yield a part in pieces as large as it really is, whatever its header claims."""
    packed = _packed(data, part)
    if part.compress_type == _STORED:
        yield packed
        return
    if part.compress_type != _DEFLATED:
        raise Unreadable("intake-truncated")
    inflate = zlib.decompressobj(-zlib.MAX_WBITS)
    try:
        while packed and not inflate.eof:
            yield inflate.decompress(packed, _CHUNK)
            packed = inflate.unconsumed_tail
        yield inflate.flush()
    except zlib.error as error:
        raise Unreadable("intake-truncated") from error


def _column_number(letters: bytes) -> int:
    number = 0
    for letter in letters:
        number = number * 26 + letter - 64
    return number


@dataclass(slots=True)
class _Looked:
    """What was seen of one part: its columns, its highest rows, and whether it has odd cells."""

    columns: set[bytes] = field(default_factory=set)
    last_row: int = 10_000
    has_odd_cells: bool = False

    def look(self, piece: bytes) -> None:
        self.columns.update(_COLUMNS.findall(piece))
        self.last_row = max(self.last_row, *map(int, set(_HIGH_ROWS.findall(piece))), 0)
        self.has_odd_cells = self.has_odd_cells or any(m in piece for m in _ODD_MARKS)

    @property
    def cells(self) -> int:
        return self.last_row * max(map(_column_number, self.columns), default=0)


class Package:
    """An .xlsx package whose parts were all unpacked once, under the limits.

    Unreadable says why a file is refused: no workbook, cut short, a password, macros, an older or
    a foreign format, too large, or a document type that ordinary workbooks do not have.
    """

    def __init__(self, data: bytes) -> None:
        if len(data) > LARGEST_FILE:
            raise Unreadable("intake-too-large", most=LARGEST_FILE // 2**20)
        _refuse_other_formats(data)
        self._data = data
        self._by_name = {part.filename: part for part in _parts(data)}
        _refuse_other_packages(self._by_name)
        self._unpacked = 0
        self._looked = {name: self._look(part) for name, part in self._by_name.items()}

    @property
    def links_elsewhere(self) -> bool:
        """Whether cells take values from other workbooks."""
        return any(name.startswith("xl/externalLinks/") for name in self._by_name)

    def _look(self, part: zipfile.ZipInfo) -> _Looked:
        if part.flag_bits & _ENCRYPTED:
            raise Unreadable("intake-password")
        looked, before = _Looked(), b""
        is_sheet = part.filename.startswith("xl/worksheets/")
        for piece in _unpacked(self._data, part):
            self._unpacked += len(piece)
            if self._unpacked > LARGEST_UNPACKED:
                raise Unreadable("intake-too-large-unpacked", most=LARGEST_UNPACKED // 2**20)
            seen = before + piece
            if b"<!DOCTYPE" in seen or b"<!ENTITY" in seen:
                raise Unreadable("intake-not-a-workbook")
            if is_sheet:
                looked.look(seen)
            before = seen[-_OVERLAP:]
        if looked.cells > MOST_CELLS:
            raise Unreadable("intake-too-wide", part=part.filename, most=MOST_CELLS)
        return looked

    def _read(self, name: str) -> bytes:
        return b"".join(_unpacked(self._data, self._by_name[name]))

    def odd_cells(self) -> dict[str, OddCells]:
        """Return, by sheet name, the cells that would be read as blank though they are not.

        A formula counts as never calculated too when the workbook says that its formulas have to
        be calculated on opening: programs that write workbooks leave a zero in such cells.
        """
        stale = bool(_TO_CALCULATE.search(self._read("xl/workbook.xml")))
        return {
            sheet: _odd_cells(self._read(part), stale=stale)
            for sheet, part in self._sheets()
            if part in self._looked and self._looked[part].has_odd_cells
        }

    def _sheets(self) -> Iterator[tuple[str, str]]:
        """Yield the sheets' names with the parts that hold them."""
        try:
            relations = fromstring(self._read("xl/_rels/workbook.xml.rels"))
            workbook = fromstring(self._read("xl/workbook.xml"))
        except _BAD_XML as error:
            raise Unreadable("intake-truncated") from error
        targets = {r.get("Id"): (r.get("Target") or "").lstrip("/") for r in relations}
        for sheet in workbook.iter():
            if sheet.tag.endswith("}sheet"):
                target = targets.get(sheet.get(_RELATION), "")
                yield sheet.get("name") or "", target if target[:3] == "xl/" else f"xl/{target}"


def _refuse_other_formats(data: bytes) -> None:
    if not data:
        raise Unreadable("intake-empty")
    if data.startswith(_OLE):
        raise Unreadable("intake-password" if _ENCRYPTED_PACKAGE in data else "intake-older-format")


def _refuse_other_packages(parts: dict[str, zipfile.ZipInfo]) -> None:
    if any(name.endswith("vbaProject.bin") or "/macrosheets/" in name for name in parts):
        raise Unreadable("intake-macros")
    if "content.xml" in parts or "xl/workbook.bin" in parts:
        raise Unreadable("intake-older-format")
    if "xl/workbook.xml" not in parts:
        raise Unreadable("intake-not-a-workbook")


class _OddCellFinder(ContentHandler):
    """Collects error cells, formulas without a value, and formulas on other workbooks."""

    def __init__(self, *, stale: bool) -> None:
        super().__init__()
        self.found = OddCells()
        self._stale = stale
        self._row = self._column = 0
        self._kind = ""
        self._has_formula = False
        self._text: dict[str, str] = {}
        self._inside = ""

    def startElement(self, name: str, attrs: AttributesImpl) -> None:  # noqa: N802 - SAX's name
        tag = name.rpartition(":")[2]
        if tag == "row":
            self._row = int(attrs.get("r") or self._row + 1)
            self._column = 0
        elif tag == "c":
            self._start_cell(attrs.get("r") or "", attrs.get("t") or "")
        elif tag in {"f", "v"}:
            self._has_formula = self._has_formula or tag == "f"
            self._inside = tag
            self._text[tag] = ""
        elif tag == "is":
            self._text["v"] = "inline"

    def _start_cell(self, place: str, kind: str) -> None:
        letters = place.rstrip("0123456789")
        self._column = _column_number(letters.encode()) if letters else self._column + 1
        self._kind, self._has_formula, self._text = kind, False, {}

    @property
    def _has_value(self) -> bool:
        """Whether a value was kept; a text may have been calculated to nothing."""
        return bool(self._text.get("v")) or (self._kind == "str" and "v" in self._text)

    def characters(self, content: str) -> None:
        if self._inside:
            self._text[self._inside] += content

    def endElement(self, name: str) -> None:  # noqa: N802 - SAX's name
        tag = name.rpartition(":")[2]
        if tag in {"f", "v"}:
            self._inside = ""
        elif tag == "c":
            self._end_cell()

    def _end_cell(self) -> None:
        cell = (self._row, self._column)
        if self._kind == "e":
            self.found.errors[cell] = self._text.get("v", "")
        elif self._has_formula and (self._stale or not self._has_value):
            self.found.uncalculated.add(cell)
        elif "[" in self._text.get("f", ""):
            self.found.linked.append(cell)


def _odd_cells(xml: bytes, *, stale: bool) -> OddCells:
    finder = _OddCellFinder(stale=stale)
    parser = make_parser()
    parser.setFeature(feature_namespaces, False)
    parser.setContentHandler(finder)
    try:
        parser.parse(io.BytesIO(xml))
    except (SAXException, *_BAD_XML) as error:
        raise Unreadable("intake-truncated") from error
    return finder.found
