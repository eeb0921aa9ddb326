"""What loading a location file of Open Exposure Data would do: records, and what is refused.

A file holds a part of what is known: nothing on file is taken away, and what the standard cannot
hold stays as it is. Terms go on whole or not at all, as from a workbook: one line that cannot be
honoured holds back the terms of its account.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, field, replace
from datetime import date
from typing import TypeVar

from pydantic import BaseModel

from quarterday.core.exposure.codes import Codes
from quarterday.core.exposure.location import (
    ACCOUNT_COLUMNS,
    LOCATION_COLUMNS,
    PLACES,
    Row,
    answers_of,
    location,
)
from quarterday.core.exposure.reading import (
    Cells,
    Fields,
    Unfit,
    building_fields,
    is_read,
    line_fields,
    refuse_place,
    refused_terms,
    says_line,
    valued,
)
from quarterday.core.file.entry import Place
from quarterday.core.file.fold import File
from quarterday.core.file.layout import SHEETS
from quarterday.core.file.records import Building, Organisation, Record, Terms, Valuation
from quarterday.core.file.records.terms import Coverage
from quarterday.core.reference import Reference
from quarterday.core.words import Words, words
from quarterday.intake.assemble import BadField, made
from quarterday.intake.cells.answers import unguarded
from quarterday.intake.faults import Fault, Severity, Spot, shown
from quarterday.intake.map import WorkbookMap
from quarterday.intake.parse import Parsed, RawSheet
from quarterday.intake.plan import Plan
from quarterday.intake.work import Source, Work

M = TypeVar("M", bound=BaseModel)
Existing = Callable[[str], File | None]
_LOCATION = {"AccNumber", "LocNumber", "CountryCode", "LocPerilsCovered"}
_ACCOUNT = {"AccNumber", "PolNumber", "PolPerilsCovered"}
_SPELT = {name.casefold(): name for name in (*LOCATION_COLUMNS, *ACCOUNT_COLUMNS)}
_SHEETS = {sheet.model: sheet for sheet in SHEETS}


@dataclass(slots=True)
class Line:
    """A row of a file, and where it stands."""

    sheet: str
    row: int
    cells: Cells
    columns: Mapping[str, int] = field(repr=False)

    def fault(self, severity: Severity, what: Words, column: str = "") -> Fault:
        """Return a fault of one of the row's cells, or of the row."""
        spot = Spot(self.sheet, self.row, self.columns.get(column), column)
        account, value = self.cells.text("AccNumber"), self.cells.text(column)
        return Fault(severity, spot, what, value=shown(value) if value else "", account=account)

    def place(self, part: str = "") -> Place:
        """Return the row's place in the document."""
        return Place(sheet=self.sheet, row=self.row, part=part)


def is_exposure(parsed: Parsed) -> bool:
    """Tell whether what was read is a location file, or a folder with one."""
    return any(set(_headings(sheet)) >= _LOCATION for sheet in parsed.sheets)


def plan(parsed: Parsed, existing: Existing, codes: Codes, reference: Reference) -> Plan:
    """Return what loading location files would do to the accounts that they name.

    An account that is not on file is made where an account file in the same folder names it.
    """
    locations = [x for sheet in _sheets(parsed, _LOCATION) for x in _lines(sheet)]
    accounts = [x for sheet in _sheets(parsed, _ACCOUNT) for x in _lines(sheet)]
    named = {x.cells.text("AccNumber"): x for x in accounts}
    source = Source(parsed.way, parsed.document, parsed.name)
    by_account: dict[str, list[Line]] = defaultdict(list)
    faults = [*parsed.faults, *_not_read(locations)]
    for line in locations:
        try:
            refuse_place(line.cells, reference.provinces)
        except Unfit as unfit:
            faults.append(line.fault("refused", unfit.words, unfit.column))
        else:
            by_account[line.cells.text("AccNumber")].append(line)
    works = [
        _Account(Work(id, existing(id), {}, source), lines, named.get(id), codes, reference)
        for id, lines in sorted(by_account.items())
    ]
    for work in works:
        work.work_out()
    faults += [fault for work in works for fault in work.of.faults]
    items = tuple(item for work in works for item in work.of.items)
    faults.sort(key=lambda f: (f.spot.sheet, f.spot.row or 0, f.spot.column or 0))
    return Plan(source, WorkbookMap(()), items, tuple(faults))


def _headings(sheet: RawSheet) -> list[str]:
    first = sheet.rows[0] if sheet.rows else []
    texts = (str(cell).strip() for cell in first)
    return [_SPELT.get(text.casefold(), text) for text in texts]


def _sheets(parsed: Parsed, need: set[str]) -> Iterator[RawSheet]:
    yield from (sheet for sheet in parsed.sheets if need <= set(_headings(sheet)))


def _lines(sheet: RawSheet) -> Iterator[Line]:
    headings = _headings(sheet)
    columns = {name: n for n, name in enumerate(headings, sheet.first_column)}
    for n, row in enumerate(sheet.rows[1:], sheet.first_row + 1):
        cells = {name: unguarded(str(cell)) for name, cell in zip(headings, row, strict=False)}
        if any(text.strip() for text in cells.values()):
            yield Line(sheet.name, n, Cells(cells), columns)


def _not_read(lines: list[Line]) -> Iterator[Fault]:
    """Yield once a file the columns that say something which is not read."""
    by_sheet: dict[str, dict[str, None]] = defaultdict(dict)
    for line in lines:
        said = (c for c, text in line.cells.row.items() if text.strip(" 0.") and not is_read(c))
        by_sheet[line.sheet] |= dict.fromkeys(said)
    for sheet, columns in by_sheet.items():
        if columns:
            yield Fault("note", Spot(sheet), words("oed-not-read", columns=tuple(columns)))


@dataclass(slots=True)
class _Account:
    """One account's locations, and the work on them."""

    of: Work
    lines: list[Line]
    named: Line | None
    codes: Codes
    reference: Reference
    holds: bool = False  # whether its terms are held back

    def work_out(self) -> None:
        """Fill the items and faults."""
        if self.of.file is None and not self._organisation():
            return
        read = list(self._each_once())
        for line in read:
            self._building(line)
            self._values(line)
        self._terms(read)

    def _organisation(self) -> bool:
        """Add the organisation of a new account; refuse its locations when nothing names it."""
        name = self.named.cells.text("AccName") if self.named else ""
        area = next((a for x in self.lines if (a := x.cells.text("AreaCode"))), "")
        if self.named is None or not name or not area:
            what = words("oed-no-organisation", account=self.of.account)
            self.of.faults.append(self.lines[0].fault("refused", what))
            return False
        return self._add(self.named, Organisation, None, {"name": name, "province": area})

    def _each_once(self) -> Iterator[Line]:
        seen: set[str] = set()
        for line in self.lines:
            id = line.cells.text("LocNumber")
            if id in seen:
                self._refuse(line, words("oed-twice", location=id), "LocNumber")
                self.holds = True
            else:
                seen.add(id)
                yield line

    def _refuse(self, line: Line, what: Words, column: str = "") -> None:
        self.of.faults.append(line.fault("refused", what, column))

    def _made(self, line: Line, model: type[M], base: M | None, fields: Fields) -> M | None:
        try:
            return made(model, {}, base, _SHEETS[model], **fields)
        except BadField as error:
            fault = line.fault("refused", words("oed-not-possible", why=error.cell.what))
            self.of.faults.append(replace(fault, remedy=error.cell.remedy))
            return None

    def _add(self, line: Line, model: type[Record], base: Record | None, fields: Fields) -> bool:
        record = self._made(line, model, base, fields)
        if record is not None:
            self.of.add(record, [line.place()])
        return record is not None

    def _written(self, line: Line, terms: Terms | None) -> Row:
        """Return the row that the building on file would be written as; empty for a new one."""
        held = self.of.held(Building, line.cells.text("LocNumber"))
        if held is None or self.of.file is None:
            return {}
        answers = answers_of(self.reference)
        return location(self.of.file, held, terms, self.codes, answers).row

    def _building(self, line: Line) -> None:
        id = line.cells.text("LocNumber")
        try:
            fields = building_fields(line.cells, self.codes, self._written(line, None))
        except Unfit as unfit:
            self._refuse(line, unfit.words, unfit.column)
            return
        if fields.get("province") == self._province():
            del fields["province"]
        self._add(line, Building, self.of.held(Building, id), {**fields, "id": id})

    def _province(self) -> str | None:
        new = (i.record for i in self.of.items if i.kind == Organisation.kind)
        organisation = self.of.file.organisation if self.of.file else next(new, None)
        return organisation.province if isinstance(organisation, Organisation) else None

    def _values(self, line: Line) -> None:
        id = line.cells.text("LocNumber")
        for thing in PLACES:
            try:
                found = valued(line.cells, thing)
            except Unfit as unfit:
                self._refuse(line, unfit.words, unfit.column)
                continue
            if found:
                amount, day = found
                base = self.of.held(Valuation, f"{id}/{thing}/{day}")
                fields = {"building": id, "valued": thing, "amount": amount, "valued_on": day}
                self._add(line, Valuation, base, fields)

    def _terms(self, lines: list[Line]) -> None:
        by_period: dict[tuple[date, date], list[Line]] = defaultdict(list)
        for line in lines:
            for unfit in refused_terms(line.cells):
                self._refuse(line, unfit.words, unfit.column)
                self.holds = True
            period = self._period(line)
            if period:
                by_period[period].append(line)
        for period, found in by_period.items():
            self._of_period(period, found)
        if self.holds:
            what = words("oed-terms-held", account=self.of.account)
            self.of.items[:] = [i for i in self.of.items if i.kind != Terms.kind]
            self._refuse(lines[0], what)

    def _period(self, line: Line) -> tuple[date, date] | None:
        """Return the days that a row's terms hold for; None when it says none."""
        try:
            start, end = line.cells.day("LocInceptionDate"), line.cells.day("LocExpiryDate")
        except Unfit as unfit:
            self._refuse(line, unfit.words, unfit.column)
            self.holds = True
            return None
        if start is None or end is None:
            self._refuse(line, words("oed-no-period"))
            return None
        return start, end

    def _of_period(self, period: tuple[date, date], lines: list[Line]) -> None:
        start, end = period
        base = self.of.held(Terms, f"{start}/issued")
        held = {line.place: line for line in base.coverages} if base else {}
        try:
            for line in lines:
                held |= {c.place: c for c in self._coverages(line, base, held)}
        except Unfit as unfit:
            self._refuse(line, unfit.words, unfit.column)
            self.holds = True
            return
        fields: Fields = {"start": start, "end": end, "stage": "issued"}
        number = self.named.cells.text("PolNumber") if self.named else ""
        if base is None and number and number != self.of.account:
            fields["policy_number"] = number
        record = self._made(lines[0], Terms, base, {**fields, "coverages": tuple(held.values())})
        if record is None:
            self.holds = True
        elif held:
            self.of.add(record, [line.place() for line in lines])

    def _coverages(
        self, line: Line, base: Terms | None, held: Mapping[tuple[str, str], Coverage]
    ) -> Iterator[Coverage]:
        written, id = self._written(line, base), line.cells.text("LocNumber")
        for thing in PLACES:
            mine = held.get((thing, id))
            if mine is not None and not says_line(line.cells, thing, written):
                continue
            fields = line_fields(line.cells, thing, self.codes)
            if not fields:
                continue
            found = self._made(line, Coverage, mine, {**fields, "coverage": thing, "location": id})
            if found is None:
                self.holds = True
            else:
                yield found
