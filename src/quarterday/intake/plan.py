"""The plan: what loading a workbook would add, change, leave as it is, ask and refuse."""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Callable, Collection, Iterable, Iterator, Mapping
from dataclasses import dataclass, field, replace

from rapidfuzz import fuzz, process

from quarterday.core.file.entry import Draft
from quarterday.core.file.fold import File
from quarterday.core.file.records import Organisation
from quarterday.core.reference import Reference
from quarterday.core.words import Term, Words, words
from quarterday.intake.account import work_out
from quarterday.intake.cells import BadCell
from quarterday.intake.changes import Item, Status
from quarterday.intake.faults import READ_AS, Fault, Severity, Spot, shown
from quarterday.intake.ids import Ids, accounts
from quarterday.intake.map import MappedSheet, WorkbookMap
from quarterday.intake.parse import Parsed
from quarterday.intake.table import Line, Table, table
from quarterday.intake.vocabulary import Names, normal
from quarterday.intake.work import Source, Work

Existing = Callable[[str], File | None]
_NEAR = 75
_MOST_TOLD = 8
_ORGANISATIONS = "Organisations"


class NotAccepted(ValueError):
    """Raised when drafts are wanted of a plan with faults that nobody has accepted."""

    def __init__(self) -> None:
        super().__init__("the plan has faults or questions that nobody has accepted")
        self.words = words("intake-not-accepted")


@dataclass(frozen=True, slots=True)
class Plan:
    """What loading one workbook would do; nothing is written by it.

    ``items`` are the records that could be read, ``faults`` everything that has to be said, in the
    order of the workbook. ``map`` shows how sheets and columns were understood.
    """

    source: Source
    map: WorkbookMap
    items: tuple[Item, ...] = field(repr=False)
    faults: tuple[Fault, ...] = field(repr=False)

    def with_status(self, status: Status) -> tuple[Item, ...]:
        """Return the items that are new, changed or unchanged."""
        return tuple(item for item in self.items if item.status == status)

    def of(self, severity: Severity) -> tuple[Fault, ...]:
        """Return the faults that are refused, that ask, or that are notes."""
        return tuple(fault for fault in self.faults if fault.severity == severity)

    @property
    def needs_acceptance(self) -> bool:
        """Whether a person has to accept the plan before anything of it may go on."""
        return any(fault.severity != "note" for fault in self.faults)

    def drafts(self, *, accept_with_errors: bool = False) -> dict[str, list[Draft]]:
        """Return what to add to each account's file, new and changed records only.

        NotAccepted when the plan needs acceptance and ``accept_with_errors`` does not give it.
        """
        if self.needs_acceptance and not accept_with_errors:
            raise NotAccepted
        moved = self._moved()
        return {account: [item.draft() for item in items] for account, items in moved.items()}

    def batches(self, *, accept_with_errors: bool = False) -> Iterator[tuple[str, list[Draft]]]:
        """Yield what ``drafts`` returns, an account at a time: a book's are too many to hold."""
        if self.needs_acceptance and not accept_with_errors:
            raise NotAccepted
        for account, items in self._moved().items():
            yield account, [item.draft() for item in items]

    @property
    def accounts(self) -> int:
        """How many accounts' files it would add to."""
        return len(self._moved())

    def _moved(self) -> dict[str, list[Item]]:
        found: dict[str, list[Item]] = defaultdict(list)
        for item in self.items:
            if item.status != "unchanged":
                found[item.account].append(item)
        return found


def plan(
    parsed: Parsed,
    mapping: WorkbookMap,
    existing: Existing,
    reference: Reference,
    *,
    on_file: Collection[str] = (),
    registrations: Mapping[str, str] | None = None,
) -> Plan:
    """Return what loading ``parsed``, understood as ``mapping``, would do.

    ``existing`` returns an account's file, or None; it is called once an account. ``on_file`` are
    all accounts of the store: they tell what an account number was before a spreadsheet took its
    zeros. ``registrations`` gives the account of each registration number in the store. The rows
    are taken out of ``parsed``.
    """
    tables = [_taken(sheet) for sheet in mapping.sheets]
    source = Source(parsed.way, parsed.document, parsed.name)
    faults = [*parsed.faults, *mapping.faults, *(note for t in tables for note in t.notes)]
    faults += _settle_accounts(tables, Ids.of(on_file), existing)
    _one_number_each(tables, registrations or {})
    names, works, found = Names(reference), [], _by_account(tables)
    faults += _of_nobody(tables)
    for account in sorted(found):
        work = Work(account, existing(account), found.pop(account), source)
        work_out(work, names, terms_held=mapping.terms_unread)
        work.let_go()
        works.append(work)
    faults += [fault for work in works for fault in work.faults]
    faults += _left_alone(works)
    items = tuple(item for work in works for item in work.items)
    return Plan(source, mapping, items, tuple(_in_order(_gathered(faults), parsed)))


def _taken(sheet: MappedSheet) -> Table:
    """Return a sheet's lines, which alone hold its rows from now on and can let them go."""
    found = table(sheet)
    sheet.raw.rows.clear()
    return found


def _gathered(faults: Iterable[Fault]) -> Iterator[Fault]:
    """Yield the faults; ids that were read in another form are told once a column."""
    read_as: dict[Spot, list[Words]] = defaultdict(list)
    for fault in faults:
        if fault.what.id == READ_AS:
            read_as[replace(fault.spot, row=None)].append(fault.what)
        else:
            yield fault
    for spot, said in read_as.items():
        pairs = tuple(dict.fromkeys(said))
        id = "intake-ids-read" if len(pairs) <= _MOST_TOLD else "intake-ids-read-more"
        more = len(pairs) - _MOST_TOLD
        yield Fault("note", spot, words(id, pairs=pairs[:_MOST_TOLD], more=more))


def _in_order(faults: Iterable[Fault], parsed: Parsed) -> list[Fault]:
    """Return the faults as the workbook runs: by sheet, row and column, those of a sheet first."""
    at = {sheet.name: n for n, sheet in enumerate(parsed.sheets)}
    return sorted(
        dict.fromkeys(faults),
        key=lambda f: (at.get(f.spot.sheet, -1), f.spot.row or 0, f.spot.column or 0),
    )


def _settle_accounts(tables: list[Table], on_file: Ids, existing: Existing) -> Iterator[Fault]:
    """Give every line its account as it is kept; refuse lines of accounts that nobody knows."""
    listed = {x.account for t in tables if t.sheet.name == _ORGANISATIONS for x in t.lines}
    mentioned = {x.account for t in tables for x in t.lines} - {""}
    known = accounts(on_file.firm, listed - {""}, mentioned)
    for id in mentioned - listed - known.firm:
        if not known.meant(id) and existing(id) is not None:
            known = Ids.of([*known.firm, id])
    for found in tables:
        for line in found.lines:
            if line.account:
                yield from _settle_account(line, known)


def _settle_account(line: Line, known: Ids) -> Iterator[Fault]:
    meant = known.meant(line.account)
    if len(meant) != 1:
        line.refuse(_no_account(line.account, meant, known), "account")
        line.account = ""
    elif meant[0] != line.account:
        said = words(READ_AS, said=shown(line.account), meant=meant[0])
        line.account = meant[0]
        yield Fault("note", line.spot("account"), said, account=line.account)


def _no_account(account: str, meant: tuple[str, ...], known: Ids) -> BadCell:
    if meant:
        said = words("intake-several", said=shown(account), ids=meant)
        return BadCell(said, words("intake-several-remedy", ids=meant))
    said = words("intake-no-account", said=shown(account))
    near = process.extractOne(account, known.firm, scorer=fuzz.ratio, score_cutoff=_NEAR)
    if near:
        return BadCell(said, words("intake-no-account-near-remedy", near=near[0]))
    return BadCell(said, words("intake-no-account-remedy"))


def _by_account(tables: list[Table]) -> dict[str, dict[str, list[Line]]]:
    """Return the lines of each account by the layout's sheet."""
    found: dict[str, dict[str, list[Line]]] = defaultdict(lambda: defaultdict(list))
    for read in tables:
        for line in read.lines:
            if line.account:
                found[line.account][read.sheet.name].append(line)
    return found


def _of_nobody(tables: list[Table]) -> Iterator[Fault]:
    """Yield the faults of lines that are no account's; the tables let go of the others."""
    for read in tables:
        yield from (fault for line in read.lines if not line.account for fault in line.faults)
        read.lines.clear()


def _one_number_each(tables: list[Table], registrations: Mapping[str, str]) -> None:
    """Refuse organisations whose registration number is another organisation's too."""
    on_file = {
        normal(number).replace(" ", ""): account for number, account in registrations.items()
    }
    lines = [x for t in tables if t.sheet.record is Organisation for x in t.lines if x.account]
    by_number: dict[str, set[str]] = defaultdict(set)
    for line in lines:
        by_number[_number(line)] |= {line.account, on_file.get(_number(line), line.account)}
    for line in lines:
        others = tuple(sorted(by_number[_number(line)] - {line.account}))
        if _number(line) and others:
            said = words("intake-same-number", others=others)
            line.refuse(BadCell(said, words("intake-same-number-remedy")), "registration_number")


def _number(line: Line) -> str:
    number = line.said.get("registration_number")
    return normal(number).replace(" ", "") if isinstance(number, str) else ""


def _left_alone(works: list[Work]) -> Iterator[Fault]:
    """Yield how many records on file, of kinds the workbook holds, it does not mention."""
    count: Counter[str] = Counter()
    for work in works:
        if work.file is None:
            continue
        named = {(item.kind, item.key) for item in work.items}
        count.update(
            kind for kind, key in work.file.held if kind in work.kinds and (kind, key) not in named
        )
    for kind, n in count.items():
        yield Fault(
            "note", Spot(""), words("intake-left-alone", count=n, kind=Term("record", kind))
        )
