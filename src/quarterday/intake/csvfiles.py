"""Read a folder of CSV files, one a sheet, in whichever encoding and delimiter they came."""

from __future__ import annotations

import codecs
import csv
import io
import zipfile
from collections import Counter
from dataclasses import dataclass, field
from pathlib import Path

from quarterday.core.words import words
from quarterday.intake.faults import Fault, Spot
from quarterday.intake.package import LARGEST_FILE, MOST_CELLS
from quarterday.intake.refusals import Unreadable

MOST_FILES = 100
_DELIMITERS = ",;\t"
_SUFFIXES = {".csv", ".tsv", ".txt"}
_EPOCH = (1980, 1, 1, 0, 0, 0)  # the earliest an archive can hold; equal files, equal archive
_LINES_LOOKED_AT = 20


@dataclass(frozen=True, slots=True)
class CsvFile:
    """A CSV file: its name without the ending, and its rows of text."""

    name: str
    rows: list[list[str]] = field(repr=False)


@dataclass(frozen=True, slots=True)
class CsvFolder:
    """The CSV files of a folder, and all of them in one archive to keep."""

    files: tuple[CsvFile, ...]
    original: bytes = field(repr=False)
    faults: tuple[Fault, ...] = ()


def read_folder(path: Path) -> CsvFolder:
    """Read one CSV file, or all of a folder; Unreadable with a sentence when that cannot be."""
    paths = sorted(p for p in path.iterdir() if _is_csv(p)) if path.is_dir() else [path]
    if not paths:
        raise Unreadable("intake-no-csv", name=path.name)
    if len(paths) > MOST_FILES:
        raise Unreadable("intake-too-many-files", most=MOST_FILES)
    if sum(p.stat().st_size for p in paths) > LARGEST_FILE:
        raise Unreadable("intake-too-large", most=LARGEST_FILE // 2**20)
    contents = [(p.name, p.read_bytes()) for p in paths]
    texts = [(name, *_text(name, data)) for name, data in contents]
    files = tuple(CsvFile(Path(name).stem, _rows(name, text)) for name, text, _ in texts)
    guessed = tuple(_guessed(name) for name, _, sure in texts if not sure)
    return CsvFolder(files, _archive(contents), guessed)


def _is_csv(path: Path) -> bool:
    return path.is_file() and path.suffix.lower() in _SUFFIXES and path.name != "faults.csv"


def _guessed(name: str) -> Fault:
    return Fault("note", Spot(Path(name).stem), words("intake-csv-encoding", name=name))


def _text(name: str, data: bytes) -> tuple[str, bool]:
    """Return the text of a file, and whether its encoding was sure."""
    if data.startswith((codecs.BOM_UTF16_LE, codecs.BOM_UTF16_BE)):
        encodings: tuple[str, ...] = ("utf-16",)
    elif _has_surrogates(data):
        raise Unreadable("intake-csv-characters", name=name)
    else:
        encodings = ("utf-8-sig", "cp1252")
    for encoding in encodings:
        try:
            return data.decode(encoding), encoding != "cp1252"
        except UnicodeDecodeError:
            continue
    raise Unreadable("intake-csv-characters", name=name)


def _has_surrogates(data: bytes) -> bool:
    """Tell whether half a character (a lone surrogate) was written into UTF-8 text."""
    try:
        text = data.decode("utf-8", "surrogatepass")
    except UnicodeDecodeError:
        return False
    return any("\ud800" <= c <= "\udfff" for c in text) if not text.isascii() else False


def _delimiter(text: str) -> str:
    """Return the delimiter that splits most of the first lines into equally many cells.

    A program writes as many cells in every line; marks inside the cells come and go.
    """
    lines = text.splitlines()[:_LINES_LOOKED_AT]
    return max(_DELIMITERS, key=lambda mark: _split_alike(lines, mark))


def _split_alike(lines: list[str], mark: str) -> tuple[int, int]:
    """Return how many lines ``mark`` splits into equally many cells, and into how many."""
    try:
        widths = Counter(len(row) for row in csv.reader(lines, delimiter=mark) if len(row) > 1)
    except csv.Error:
        return 0, 0
    return max(((n, width) for width, n in widths.items()), default=(0, 0))


def _rows(name: str, text: str) -> list[list[str]]:
    rows: list[list[str]] = []
    cells = 0
    try:
        for row in csv.reader(io.StringIO(text, newline=""), delimiter=_delimiter(text)):
            rows.append(row)
            cells += len(row)
            if cells > MOST_CELLS:
                raise Unreadable("intake-too-wide", part=name, most=MOST_CELLS)
    except csv.Error as error:
        raise Unreadable("intake-csv-broken", name=name, row=str(len(rows) + 1)) from error
    return rows


def _archive(contents: list[tuple[str, bytes]]) -> bytes:
    """Return the files in one archive whose bytes depend on the files alone."""
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w", zipfile.ZIP_STORED) as archive:
        for name, data in contents:
            archive.writestr(zipfile.ZipInfo(name, _EPOCH), data)
    return out.getvalue()
