"""What the lines of one account would do to its file."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from functools import partial

from quarterday.core.file.layout import SHEETS, Sheet
from quarterday.core.file.records import (
    Building,
    Claim,
    Contact,
    Interest,
    Organisation,
    Record,
    Terms,
)
from quarterday.core.words import words
from quarterday.intake.assemble import (
    KEYS,
    Group,
    Key,
    each_made,
    give_ids,
    grouped,
    key_text,
    made,
)
from quarterday.intake.cells import BadCell
from quarterday.intake.faults import READ_AS, Fault, shown
from quarterday.intake.ids import Ids
from quarterday.intake.refer import Known, Referee
from quarterday.intake.table import Line, place
from quarterday.intake.termsheets import terms
from quarterday.intake.vocabulary import Names
from quarterday.intake.work import Work

_Named = type[Building] | type[Contact] | type[Interest]
_NAMED: tuple[_Named, ...] = (Building, Contact, Interest)
_WHOLE = tuple(sheet for sheet in SHEETS if sheet.part is None and sheet.record is not Terms)


def work_out(work: Work, names: Names, *, terms_held: bool) -> None:
    """Fill the account's items and faults; lines keep their own faults.

    ``terms_held`` says that a whole sheet of terms could not be read, so that no terms are whole.
    """
    for record in _NAMED:
        give_ids(_lines(work, record), _on_file(work, record))
        _as_on_file(work, _lines(work, record), "id", (id for id, _ in _on_file(work, record)))
    claims = work.file.claims if work.file else ()
    _as_on_file(work, _lines(work, Claim), "number", (claim.number for claim in claims))
    referee = Referee(names, _known(work, Building), _known(work, Contact))
    for line in work.all_lines():
        referee.settle(line)
    work.faults += referee.notes
    for sheet in _WHOLE:
        _whole(work, sheet)
    if work.file is None and not any(i.kind == Organisation.kind for i in work.items):
        _refuse_all(work)
    else:
        terms(work, held=terms_held)


def _as_on_file(work: Work, lines: list[Line], field: str, on_file: Iterable[str]) -> None:
    """Give ids the form they have on file where a spreadsheet changed it, and say so."""
    kept = Ids.of(on_file)
    for line in lines:
        id = line.said.get(field)
        meant = kept.meant(id) if isinstance(id, str) else ()
        if len(meant) == 1 and meant[0] != id:
            said = words(READ_AS, said=shown(id), meant=meant[0])
            work.faults.append(Fault("note", line.spot(field), said, account=work.account))
            line.said[field] = meant[0]


def _refuse_all(work: Work) -> None:
    """Refuse everything: without its organisation a new file would be about nobody."""
    work.items.clear()
    said = words("intake-organisation-refused", account=work.account)
    for line in work.all_lines():
        if not line.is_bad:
            line.refuse(BadCell(said, words("intake-mend-first-remedy")))


def _lines(work: Work, record: type[Record]) -> list[Line]:
    sheet = next(s for s in SHEETS if s.record is record and s.part is None)
    return work.lines.get(sheet.name, [])


def _on_file(work: Work, record: _Named) -> list[tuple[str, str]]:
    return [(r.id, r.name) for r in work.file.all(record)] if work.file else []


def _known(work: Work, record: _Named) -> Known:
    """Return what the account has of a kind: on file, and in good lines of the workbook."""
    named, refused = _on_file(work, record), []
    for line in _lines(work, record):
        id, name = line.said.get("id"), line.said.get("name")
        if line.is_bad:
            refused.append(str(id))
        elif isinstance(id, str):
            named.append((id, name if isinstance(name, str) else id))
    return Known.of(named, refused)


def _whole(work: Work, sheet: Sheet) -> None:
    """Add the records of a sheet whose rows are whole records."""
    fields = KEYS[sheet.record]
    records = work.file.all(sheet.record) if work.file else ()
    held = {tuple(key_text(getattr(r, f)) for f in fields): r for r in records}
    groups = grouped(work.good_lines(sheet), fields, work.faults)
    for group, record in each_made(groups, partial(_record, sheet, held)):
        work.add(record, (place(line) for line in group.lines))


def _record(sheet: Sheet, held: Mapping[Key, Record], group: Group) -> Record:
    return made(sheet.record, group.said, held.get(group.key), sheet)
