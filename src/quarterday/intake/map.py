"""Match a workbook's sheets and columns with the layout, and show how each match was made."""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace

from rapidfuzz import fuzz, process

from quarterday.core.file.layout import SHEETS, Column, Sheet
from quarterday.core.file.records import Terms
from quarterday.core.words import words
from quarterday.intake.faults import Fault, Spot, shown
from quarterday.intake.labels import field_label
from quarterday.intake.parse import Parsed, Raw, RawSheet
from quarterday.intake.profile import LEFT_OUT, NO_PROFILE, Profile
from quarterday.intake.vocabulary import (
    How,
    Measure,
    Target,
    normal,
    sheet_names,
    targets,
    unclear,
)

ALIKE = 88  # from this likeness (of 100) a name is taken for another
NEARLY = 70  # from this likeness a name is offered as a candidate
_CLEARLY_BETTER = 6
_ROWS_SEARCHED = 40
_LONGEST_HEADING = 80
_FEWEST_HEADINGS = 2
_SHEET_FITS = 0.5
_SHEET_CLOSE = 0.1
_MOST_CANDIDATES = 4
_ORDER: Mapping[How, int] = {"profile": 0, "name": 1, "synonym": 2, "likeness": 3}
_BY_NAME: Mapping[str, Sheet] = {sheet.name: sheet for sheet in SHEETS}


@dataclass(frozen=True, slots=True)
class Match:
    """A heading of the workbook and the column it was taken for; ``score`` is of 100."""

    heading: str
    index: int  # column number in the workbook, from 1
    column: Column
    how: How
    score: int = 100
    measure: Measure | None = None
    languages: frozenset[str] = frozenset()

    @property
    def target(self) -> str:
        """The name that a profile keeps for this match."""
        return self.measure.name if self.measure else self.column.heading


@dataclass(frozen=True, slots=True)
class Unmapped:
    """A heading that was taken for no column, and the columns it may have meant.

    ``unclear`` ones have to be decided by a person; the others are listed.
    """

    heading: str
    index: int
    candidates: tuple[str, ...] = ()
    unclear: bool = False


@dataclass(frozen=True, slots=True)
class MappedSheet:
    """A sheet of the workbook taken for a sheet of the layout, from its header row on."""

    raw: RawSheet = field(repr=False)
    sheet: Sheet
    header_row: int
    matches: tuple[Match, ...]
    unmapped: tuple[Unmapped, ...] = ()

    @property
    def language(self) -> str:
        """The language of the headings, "en" or "fr"; "" when they do not tell."""
        count = Counter(next(iter(m.languages)) for m in self.matches if len(m.languages) == 1)
        if count["en"] == count["fr"]:
            return ""
        return "en" if count["en"] > count["fr"] else "fr"

    @property
    def missing(self) -> tuple[Column, ...]:
        """The columns that must be there and are not."""
        there = {match.column.field for match in self.matches}
        derived = {"id"} if "name" in there else set()
        return tuple(c for c in self.sheet.columns if c.required and c.field not in there | derived)


@dataclass(frozen=True, slots=True)
class WorkbookMap:
    """How a workbook was understood: its sheets, and what has to be said of the rest."""

    sheets: tuple[MappedSheet, ...]
    faults: tuple[Fault, ...] = ()
    terms_unread: bool = False  # a sheet of terms lacks a column it must have


_Scored = tuple[float, MappedSheet | None]


def match(parsed: Parsed, profile: Profile = NO_PROFILE) -> WorkbookMap:
    """Match every sheet and heading by name, synonym and likeness; ``profile`` goes first.

    Nothing is guessed between equals: an unclear heading is refused with its candidates, a heading
    that means nothing to us is listed.
    """
    found = [_match_sheet(raw, profile) for raw in parsed.sheets]
    sheets = tuple(sheet for sheet in found if isinstance(sheet, MappedSheet))
    faults = [fault for fault in found if isinstance(fault, Fault)]
    faults += [fault for sheet in sheets for fault in _faults(sheet)]
    unread = any(sheet.missing and sheet.sheet.record is Terms for sheet in sheets)
    return WorkbookMap(tuple(s for s in sheets if not s.missing), tuple(faults), unread)


def _match_sheet(raw: RawSheet, profile: Profile) -> MappedSheet | Fault | None:
    kept = profile.sheet(raw.name)
    if kept == LEFT_OUT:
        return Fault("note", Spot(raw.name), words("intake-sheet-left-out-by-profile"))
    scored = _scored(raw, [_BY_NAME[kept]] if kept else _named(raw.name), profile)
    score, best = scored[0]
    if best is None and not kept:
        scored = _scored(raw, SHEETS, profile)
        score, best = scored[0]
    if best is None or (not kept and score < _SHEET_FITS):
        return _sheet_not_known(raw)
    close = [m.sheet.name for s, m in scored if m and score - s < _SHEET_CLOSE]
    if len(close) > 1:
        return Fault(
            "refused", Spot(raw.name), words("intake-sheet-unclear", sheets=tuple(close)),
            words("intake-profile-remedy"),
        )  # fmt: skip
    return best


def _named(name: str) -> Sequence[Sheet]:
    """Return the sheets of the layout with this very name, else all."""
    return [_BY_NAME[sheet] for sheet in sheet_names().get(normal(name), ())] or SHEETS


def _scored(raw: RawSheet, wanted: Sequence[Sheet], profile: Profile) -> list[_Scored]:
    """Return how well each sheet fits, the best first; equals in the layout's order."""
    return sorted((_sheet_score(raw, s, profile) for s in wanted), key=lambda scored: -scored[0])


def _sheet_not_known(raw: RawSheet) -> Fault:
    severity = "refused" if normal(raw.name) in sheet_names() else "note"
    id = "intake-no-headings" if severity == "refused" else "intake-sheet-left-out"
    return Fault("refused" if severity == "refused" else "note", Spot(raw.name), words(id))


def _sheet_score(raw: RawSheet, sheet: Sheet, profile: Profile) -> tuple[float, MappedSheet | None]:
    """Return how well a sheet of the layout fits: by name (up to 1) and by headings (up to 1)."""
    mapped = _mapped(raw, sheet, profile)
    if mapped is None:
        return 0.0, None
    headings = len(mapped.matches) + len(mapped.unmapped)
    fit = (len(mapped.matches) - len(mapped.missing)) / headings
    return fit + _name_score(raw.name, sheet), mapped


def _name_score(name: str, sheet: Sheet) -> float:
    plain = normal(name)
    known = sheet_names()
    if plain in known:
        return 1.0 if sheet.name in known[plain] else 0.0
    said = set(plain.split())
    for other, sheets in known.items():
        alike = set(other.split()) <= said or fuzz.ratio(other, plain) >= ALIKE
        if sheet.name in sheets and alike:
            return 0.9
    return 0.0


def _mapped(raw: RawSheet, sheet: Sheet, profile: Profile) -> MappedSheet | None:
    """Return the sheet mapped from its likeliest header row; None when no row has headings."""
    rows = [
        (_headings_known(row, sheet, raw.name, profile), -n)
        for n, row in enumerate(raw.rows[:_ROWS_SEARCHED])
    ]
    known, at = max(rows, default=(0, 0))
    if known < _FEWEST_HEADINGS:
        return None
    headings = list(_headings(raw, raw.rows[-at]))
    found = [_heading(text, index, sheet, raw.name, profile) for index, text in headings]
    matches, clashing = _one_each(m for m in found if isinstance(m, Match))
    unmapped = [m for m in found if isinstance(m, Unmapped)] + clashing
    return MappedSheet(raw, sheet, raw.first_row - at, tuple(matches), tuple(unmapped))


def _headings(raw: RawSheet, row: list[Raw]) -> Iterator[tuple[int, str]]:
    for index, cell in enumerate(row, raw.first_column):
        if isinstance(cell, str) and cell.strip():
            yield index, cell


def _headings_known(row: list[Raw], sheet: Sheet, name: str, profile: Profile) -> int:
    texts = {normal(c) for c in row if isinstance(c, str) and len(c) <= _LONGEST_HEADING}
    kept = sum(profile.column(name, text) is not None for text in texts)
    return kept + sum(t in targets(sheet) or t in unclear(sheet) for t in texts if t)


def _heading(text: str, index: int, sheet: Sheet, name: str, profile: Profile) -> Match | Unmapped:
    plain, known = normal(text), targets(sheet)
    kept = profile.column(name, plain)
    if kept is not None:
        return _kept(text, index, sheet, kept)
    if plain in known:
        return _taken(text, index, known[plain], known[plain].how, 100)
    if plain in unclear(sheet):
        meanings = tuple(t.name for t in unclear(sheet)[plain])
        return Unmapped(text, index, meanings, unclear=True)
    return _alike(text, index, sheet)


def _taken(text: str, index: int, target: Target, how: How, score: int) -> Match:
    return Match(text, index, target.column, how, score, target.measure, target.languages)


def _kept(text: str, index: int, sheet: Sheet, kept: str) -> Match | Unmapped:
    """Return the match that a profile keeps; the profile may say that a column is left out."""
    by_name = {t.name: t for t in targets(sheet).values()}
    if kept in by_name:
        return _taken(text, index, by_name[kept], "profile", 100)
    return Unmapped(text, index)


def _alike(text: str, index: int, sheet: Sheet) -> Match | Unmapped:
    """Return the column whose name is most alike, when it is alike enough and no other is."""
    best: dict[str, tuple[int, Target]] = {}
    near = process.extract(
        normal(text), targets(sheet).keys(), scorer=_likeness, score_cutoff=NEARLY, limit=None
    )
    for name, score, _ in near:
        target = targets(sheet)[name]
        if score > best.get(target.name, (0, target))[0]:
            best[target.name] = (round(score), target)
    ranked = sorted(best.values(), key=lambda found: -found[0])
    names = tuple(target.name for _, target in ranked[:_MOST_CANDIDATES])
    if not ranked or ranked[0][0] < ALIKE:
        return Unmapped(text, index, names)
    if len(ranked) > 1 and ranked[0][0] - ranked[1][0] < _CLEARLY_BETTER:
        return Unmapped(text, index, names, unclear=True)
    return _taken(text, index, ranked[0][1], "likeness", ranked[0][0])


def _likeness(a: str, b: str, *, score_cutoff: float | None = None) -> float:
    score = max(fuzz.ratio(a, b), fuzz.token_sort_ratio(a, b))
    return score if score >= (score_cutoff or 0) else 0.0


def _one_each(matches: Iterable[Match]) -> tuple[list[Match], list[Unmapped]]:
    """Return one match a column, the surest; others of the same column are listed or unclear."""
    by_field: dict[str, list[Match]] = defaultdict(list)
    for found in matches:
        by_field[found.column.field].append(found)
    kept: list[Match] = []
    clashing: list[Unmapped] = []
    for rivals in by_field.values():
        first, *others = sorted(rivals, key=lambda m: (_ORDER[m.how], -m.score, m.index))
        is_tie = any(_ORDER[m.how] == _ORDER[first.how] and m.score == first.score for m in others)
        kept += [] if is_tie else [first]
        lost = rivals if is_tie else others
        clashing += [Unmapped(m.heading, m.index, (m.target,), unclear=is_tie) for m in lost]
    return sorted(kept, key=lambda m: m.index), clashing


def _faults(sheet: MappedSheet) -> Iterator[Fault]:
    """Yield what has to be said of a mapped sheet's headings."""
    name = sheet.raw.name
    for column in sheet.missing:
        label = field_label(column.field, sheet.sheet.record.kind)
        said = words("intake-column-missing", column=label)
        yield Fault("refused", Spot(name, sheet.header_row), said, words("intake-profile-remedy"))
    for heading in sheet.unmapped:
        spot = Spot(name, sheet.header_row, heading.index, shown(heading.heading))
        if heading.unclear:
            said = words("intake-column-unclear", columns=heading.candidates)
            yield Fault("refused", spot, said, words("intake-profile-remedy"))
        elif heading.candidates:
            yield Fault("note", spot, words("intake-column-like", columns=heading.candidates))
        else:
            yield Fault("note", spot, words("intake-column-left-out"))
    for found in sheet.matches:
        if found.how == "likeness":
            spot = Spot(name, sheet.header_row, found.index, shown(found.heading))
            said = words("intake-column-alike", column=found.target, score=found.score)
            yield Fault("note", spot, said)


def corrected(found: WorkbookMap, sheet: str, heading: str, column: str) -> Profile:
    """Return a profile that keeps this mapping, with one heading of one sheet taken for ``column``.

    ``column`` is a heading of the layout, the name of a unit, or "" to leave the column out.
    """
    profile = keep(found)
    return replace(profile, columns={**profile.columns, (normal(sheet), normal(heading)): column})


def keep(found: WorkbookMap) -> Profile:
    """Return the profile that gives this mapping again."""
    return Profile(
        sheets={normal(s.raw.name): s.sheet.name for s in found.sheets},
        columns={
            (normal(s.raw.name), normal(m.heading)): m.target
            for s in found.sheets
            for m in s.matches
        },
    )
