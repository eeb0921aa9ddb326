"""From a mapped sheet to lines: what each row says, field by field, and what is wrong with it."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from decimal import Decimal

from quarterday.core.file.entry import Place
from quarterday.core.file.layout import ACCOUNT, CellKind, Sheet
from quarterday.core.words import Term, Words, words
from quarterday.intake.cells import BadCell, Readings, Said, Value, read_column
from quarterday.intake.faults import Fault, Spot, shown
from quarterday.intake.map import MappedSheet, Match
from quarterday.intake.parse import CellError, Raw
from quarterday.intake.vocabulary import normal, words_for

_NOT_TO_REPEAT: frozenset[CellKind] = frozenset({"amount", "number", "integer", "ratio"})
_TOTALS_BEGIN = ("tot", "gra", "sub", "sou", "som", "sum", "mon")


@dataclass(slots=True)
class Line:
    """One row of a sheet: the fields it says, and the faults found in it so far.

    ``at`` is its place among the lines of its table, whose columns hold what it says until somebody
    asks: a book has more lines than there is room for.
    """

    of: Table
    row: int
    cells: list[Raw] = field(repr=False)
    at: int
    account: str = ""
    faults: tuple[Fault, ...] = ()
    _said: dict[str, Value] | None = field(default=None, repr=False)

    @property
    def said(self) -> dict[str, Value]:
        """What the row says by field; no blank cells, ``Said.UNKNOWN`` for "not known"."""
        if self._said is None:
            told = ((name, values[self.at]) for name, values in self.of.columns.items())
            self._said = {name: value for name, value in told if value is not Said.BLANK}
        return self._said

    @property
    def is_bad(self) -> bool:
        """Whether the row is refused."""
        return bool(self.faults)

    def spot(self, field: str = "") -> Spot:
        """Return the place of one of the row's cells, or of the row."""
        match = self.of.by_field.get(field)
        if match is None:
            return Spot(self.of.name, self.row)
        return Spot(self.of.name, self.row, match.index, shown(match.heading))

    def raw(self, field: str) -> Raw:
        """Return one of the row's cells as it stands; a blank where there is none."""
        match = self.of.by_field.get(field)
        return _cell(self.cells, match, self.of.first_column) if match else ""

    def refuse(self, cell: BadCell, field: str = "") -> None:
        """Refuse the row for one of its cells."""
        value, spot = shown(self.raw(field)), self.spot(field)
        found = Fault("refused", spot, cell.what, cell.remedy, value, self.account)
        self.faults = (*self.faults, found)


@dataclass(slots=True)
class Table:
    """The lines of one sheet of the workbook, and what has to be said of it as a whole.

    ``columns`` holds what each line says by field, ``Said.BLANK`` where that is nothing.
    """

    name: str
    sheet: Sheet
    by_field: Mapping[str, Match]
    first_column: int
    lines: list[Line] = field(default_factory=list, repr=False)
    columns: dict[str, list[Value]] = field(default_factory=dict, repr=False)
    notes: list[Fault] = field(default_factory=list)


def table(mapped: MappedSheet) -> Table:
    """Read a mapped sheet; total rows, repeated headings and remarks are left out and told."""
    by_field = {match.column.field: match for match in mapped.matches}
    found = Table(mapped.raw.name, mapped.sheet, by_field, mapped.raw.first_column)
    rows = _spread(mapped, found)
    kept = [(row, cells) for row, cells in rows if _is_data(row, cells, mapped, found)]
    found.lines = [Line(found, row, cells, at) for at, (row, cells) in enumerate(kept)]
    for match in mapped.matches:
        _fill(found, match, mapped.language)
    _take_accounts(found)
    return found


def _cell(cells: list[Raw], match: Match, first_column: int) -> Raw:
    return cells[match.index - first_column]


def _take_accounts(found: Table) -> None:
    said = found.columns.pop(ACCOUNT, [Said.BLANK] * len(found.lines))
    for line, account in zip(found.lines, said, strict=True):
        if isinstance(account, str):
            line.account = account
        elif not any(fault.spot == line.spot(ACCOUNT) for fault in line.faults):
            remedy = words("intake-account-missing-remedy")
            line.refuse(BadCell(words("intake-account-missing"), remedy), ACCOUNT)


def _fill(found: Table, match: Match, language: str) -> None:
    """Read one column into the lines; blank cells say nothing."""
    at, name = match.index - found.first_column, match.column.field
    lines = [line for line in found.lines if line.cells[at] != ""]
    column: list[Value] = [Said.BLANK] * len(found.lines)
    seen = Readings()
    raws = [line.cells[at] for line in lines]
    said = read_column(found.sheet.record.kind, match.column, raws, language, seen)
    for line, value in zip(lines, said, strict=True):
        if isinstance(value, BadCell):
            line.refuse(value, name)
        elif value is not Said.BLANK:
            column[line.at] = _in_our_unit(value, match) if match.measure else value
    if lines:
        found.columns[name] = column
    found.notes.extend(_told(seen, Spot(found.name, None, match.index, shown(match.heading))))


def _told(seen: Readings, spot: Spot) -> Iterator[Fault]:
    """Yield how cells of a column were read, where a person should know of it."""
    for way, count in seen.ways.items():
        yield Fault("note", spot, words("intake-read", how=way, count=count))
    if seen.choices:
        pairs = tuple(_pair(said, id, n) for (said, id), n in seen.choices.most_common())
        yield Fault("note", spot, words("intake-read-choices", pairs=pairs))


def _pair(said: str, taken_for: Term, count: int) -> Words:
    return words("intake-read-choice", said=said, choice=taken_for, count=count)


def _in_our_unit(value: Value, match: Match) -> Value:
    if match.measure is None or isinstance(value, bool) or not isinstance(value, Decimal | int):
        return value
    return round(Decimal(value) * match.measure.factor, match.measure.decimals)


def _is_data(row: int, cells: list[Raw], mapped: MappedSheet, found: Table) -> bool:
    """Tell whether a row holds data; what else it holds is noted."""
    account = _cell(cells, found.by_field[ACCOUNT], found.first_column)
    if _is_plainly_an_account(account, found):
        return True
    filled = [cell for cell in cells if not (isinstance(cell, str) and not cell.strip())]
    if not filled:
        return False
    for is_so, said in (
        (_repeats_headings, words("intake-headings-again")),
        (_is_total, words("intake-total-row", text=shown(filled[0]))),
        (_is_remark, words("intake-remark-row", text=shown(filled[0]))),
    ):
        if is_so(filled, cells, mapped):
            found.notes.append(Fault("note", Spot(found.name, row), said))
            return False
    return True


def _is_plainly_an_account(cell: Raw, found: Table) -> bool:
    """Tell whether a cell is an account's and neither a heading nor the label of a total."""
    if not isinstance(cell, str):
        return True
    is_label = " " in cell or cell[:3].casefold() in _TOTALS_BEGIN
    return bool(cell) and not is_label and cell != found.by_field[ACCOUNT].heading


def _repeats_headings(_: list[Raw], cells: list[Raw], mapped: MappedSheet) -> bool:
    account = next(match for match in mapped.matches if match.column.field == ACCOUNT)
    if _cell(cells, account, mapped.raw.first_column) != account.heading:
        return False
    return all(_cell(cells, m, mapped.raw.first_column) in {m.heading, ""} for m in mapped.matches)


def _is_total(filled: list[Raw], cells: list[Raw], mapped: MappedSheet) -> bool:
    """Tell whether a row adds up others: it says so, and lacks what every data row must have."""
    label = filled[0]
    if not isinstance(label, str) or label.strip()[:3].casefold() not in _TOTALS_BEGIN:
        return False
    plain = normal(label)
    if plain not in words_for("totals") and not _begins_as_total(plain):
        return False
    must = (m for m in mapped.matches if m.column.required and m.column.field != ACCOUNT)
    return any(_cell(cells, match, mapped.raw.first_column) == "" for match in must)


def _begins_as_total(plain: str) -> bool:
    first = plain.split(" ", 1)[0]
    return first in {"total", "totaux", "subtotal"} or plain.startswith("sous total")


def _is_remark(filled: list[Raw], _: list[Raw], mapped: MappedSheet) -> bool:
    """Tell whether a row is a remark: one text alone, where a data row must have more."""
    must = sum(match.column.required for match in mapped.matches)
    return len(filled) == 1 and must > 1 and isinstance(filled[0], str) and " " in filled[0].strip()


def _spread(mapped: MappedSheet, found: Table) -> list[tuple[int, list[Raw]]]:
    """Return the rows below the headings, merged cells repeated in each row they cover."""
    raw = mapped.raw
    first = mapped.header_row + 1
    width = max(match.index for match in mapped.matches) + 1 - raw.first_column
    padded = (
        cells if len(cells) >= width else cells + [""] * (width - len(cells))
        for cells in raw.rows[first - raw.first_row :]
    )
    rows = list(enumerate(padded, first))
    for (top, left), (bottom, _) in raw.merged:
        match = next((m for m in mapped.matches if m.index == left), None)
        if match and first <= top < bottom:
            _repeat(rows, (top, bottom), match, raw.first_column)
            found.notes.extend(_merged_note(found.name, top, bottom, match))
    return rows


def _merged_note(name: str, top: int, bottom: int, match: Match) -> Iterator[Fault]:
    if match.column.kind not in _NOT_TO_REPEAT:
        said = words("intake-merged", first=str(top), last=str(bottom))
        yield Fault("note", Spot(name, top, match.index, shown(match.heading)), said)


def _repeat(
    rows: list[tuple[int, list[Raw]]], span: tuple[int, int], match: Match, first_column: int
) -> None:
    """Repeat a merged text in each row; an amount for several rows becomes an error in each."""
    top, bottom = span
    covered = [n for n, (row, _) in enumerate(rows) if top <= row <= bottom]
    value = _cell(rows[covered[0]][1], match, first_column) if covered else ""
    if value == "":
        return
    if match.column.kind in _NOT_TO_REPEAT:
        value = CellError(shown(value), "merged-number")
    at = match.index - first_column
    for n in covered:
        row, cells = rows[n]
        rows[n] = row, [*cells[:at], value, *cells[at + 1 :]]


_GIVEN = {"sheet", "row", "part"}


def place(line: Line, part: str = "") -> Place:
    """Return where a line stands; its values are known to be sound, so that none is checked."""
    return Place.model_construct(_GIVEN, sheet=line.of.name, row=line.row, field="", part=part)
