"""Construction index releases: a CSV of three columns and a YAML that says whose and of when."""

from __future__ import annotations

import csv
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from decimal import Decimal, InvalidOperation
from io import StringIO
from pathlib import Path

from pydantic import ValidationError

from quarterday.catalogue.problems import BadReference, sentences
from quarterday.catalogue.strict import read_yaml
from quarterday.catalogue.text import read_text, short_name
from quarterday.core.dates import Quarter
from quarterday.core.reference import Both, Cited, IndexRelease, Shape

COLUMNS = ("geography", "quarter", "index")
# The shipped series move by 6.3 % in a quarter at most; 2017 = 100 to 2023 = 100 is a fall of a
# fifth and more.
LARGEST_MOVE = Decimal("0.1")
Points = dict[Quarter, Decimal]
Releases = Mapping[str, tuple[IndexRelease, ...]]


class ReleaseNote(Shape):
    """What is known of a release as a whole: its CSV, base, day, source, and how to credit it."""

    file: str
    base: str
    released_on: date
    source: Cited
    attribution: Both | None = None
    about: Both | None = None


@dataclass(frozen=True, slots=True)
class _Row:
    line: int
    geography: str
    quarter: Quarter
    index: Decimal


def _row(line: int, cells: Mapping[str, str | None]) -> _Row:
    """Return a CSV row as values; ValueError says what is wrong with it."""
    geography, quarter, index = ((cells[column] or "").strip() for column in COLUMNS)
    try:
        value = Decimal(index)
    except InvalidOperation as error:
        raise ValueError(f"the index {index!r} is not a number; write it like 109.9") from error
    if not value.is_finite() or value <= 0:
        raise ValueError(f"the index {index} must be above zero; leave the row out if not known")
    return _Row(line, geography, Quarter.parse(quarter), value)


def _rows(text: str, file: str, problems: list[str]) -> Iterator[_Row]:
    reader = csv.DictReader(StringIO(text, newline=None))
    heading = tuple((name or "").strip() for name in reader.fieldnames or ())
    if heading != COLUMNS:
        raise BadReference([f"{file}: the first line must read {','.join(COLUMNS)}."])
    for cells in reader:
        try:
            yield _row(reader.line_num, cells)
        except ValueError as error:
            problems.append(f"{file}, line {reader.line_num}: {error}.")


def _gaps(geography: str, points: Points, file: str) -> Iterator[str]:
    first, last = min(points), max(points)
    quarter = first
    while quarter < last:
        if quarter not in points:
            yield f"{file}: {geography} has no index for {quarter}; a gap cannot be indexed."
        quarter = quarter.shifted(1)


def _moves(geography: str, points: Points, file: str) -> Iterator[str]:
    """Yield a sentence where a series leaps as it does when its base changes on the way."""
    for quarter in sorted(points):
        before = points.get(quarter.shifted(-1))
        if before is not None and abs(points[quarter] / before - 1) > LARGEST_MOVE:
            yield (
                f"{file}: {geography} goes from {before} to {points[quarter]} in {quarter}, more "
                "than a tenth in one quarter. If the base changes there, give the whole series on "
                "one base; if a figure is mistyped, correct it."
            )


def _points(
    text: str, file: str, known: frozenset[str] | None, problems: list[str]
) -> dict[str, Points]:
    """Return the CSV's values by geography and quarter; add a sentence to ``problems`` a fault."""
    found: dict[str, Points] = {}
    try:
        rows = tuple(_rows(text, file, problems))
    except csv.Error as error:
        raise BadReference([f"{file}: cannot be read as CSV ({error})."]) from error
    for row in rows:
        of_geography = found.setdefault(row.geography, {})
        if row.quarter in of_geography:
            twice = f"{row.geography} {row.quarter} stands here twice; keep one"
            problems.append(f"{file}, line {row.line}: {twice}.")
        of_geography[row.quarter] = row.index
    if known is not None:
        problems += [
            f"{file}: the geography {name!r} is not known; use one of {', '.join(sorted(known))}."
            for name in found
            if name not in known
        ]
    return found


def _carried(points: Points, note: ReleaseNote, earlier: IndexRelease | None) -> Points:
    """Return ``points`` with the earlier release's quarters that the new one does not restate."""
    if earlier is None or min(points) <= min(earlier.points):
        return points
    if earlier.base != note.base:
        begins = f"{note.file}: {earlier.geography} begins in {min(points)} with {note.base} = 100"
        raise BadReference([f"{begins}, before it was {earlier.base}; give the whole series."])
    return {q: v for q, v in earlier.points.items() if q < min(points)} | points


def read_release(
    text: str, note: ReleaseNote, earlier: Mapping[str, IndexRelease] | None = None
) -> tuple[IndexRelease, ...]:
    """Return the series of one release, one for each geography in the CSV ``text``.

    ``earlier`` holds the newest release of each known geography (None: any geography may come).
    Its quarters before the new release's first are kept when the base is the same. BadReference
    has one sentence for each fault: heading, number, zero, quarter, second row, gap, geography.
    """
    problems: list[str] = []
    known = frozenset(earlier) if earlier else None
    found = _points(text, note.file, known, problems)
    if not found and not problems:
        problems.append(f"{note.file}: holds no index values.")
    if problems:
        raise BadReference(problems)
    series = {g: _carried(points, note, (earlier or {}).get(g)) for g, points in found.items()}
    problems += [gap for g, points in series.items() for gap in _gaps(g, points, note.file)]
    problems += [leap for g, points in series.items() for leap in _moves(g, points, note.file)]
    if problems:
        raise BadReference(problems)
    return tuple(
        IndexRelease(
            geography=geography,
            base=note.base,
            released_on=note.released_on,
            points=points,
            source=note.source,
        )
        for geography, points in series.items()
    )


def _note(file: Path) -> ReleaseNote:
    name = short_name(file)
    try:
        return ReleaseNote.model_validate(read_yaml(read_text(file), name))
    except ValidationError as error:
        raise BadReference(sentences(name, file.stem, error)) from error


def release_notes(folder: Path) -> tuple[ReleaseNote, ...]:
    """Return the notes of the releases in ``folder``, oldest first; each CSV must have its own."""
    notes = sorted(map(_note, folder.glob("*.yaml")), key=lambda note: note.released_on)
    orphans = {file.name for file in folder.glob("*.csv")} - {note.file for note in notes}
    if orphans:
        raise BadReference(
            f"indices/{name}: no YAML file beside it gives its base, release day and source."
            for name in sorted(orphans)
        )
    return tuple(notes)


def releases(folders: Sequence[Path]) -> Releases:
    """Return all releases in ``folders`` by geography, oldest first."""
    noted = [(note, folder) for folder in folders for note in release_notes(folder)]
    found: dict[str, tuple[IndexRelease, ...]] = {}
    for note, folder in sorted(noted, key=lambda pair: pair[0].released_on):
        file = folder / note.file
        if not file.is_file():
            raise BadReference([f"indices/{note.file}: is named by its YAML file but missing."])
        newest = {geography: of_it[-1] for geography, of_it in found.items()}
        for release in read_release(read_text(file), note, newest):
            found[release.geography] = (*found.get(release.geography, ()), release)
    return found
