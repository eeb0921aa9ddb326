"""Say in sentences what a load would do, before anything is written."""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Iterator, Mapping
from decimal import Decimal
from typing import Any

from quarterday.core.file.layout import SHEETS, Column
from quarterday.core.file.records import Record, Terms
from quarterday.core.file.records.terms import SharedLimit
from quarterday.core.money import Money
from quarterday.core.words import Arg, Rate, Said, Term, Words, words
from quarterday.intake.changes import Change, Item
from quarterday.intake.faults import Fault, Spot
from quarterday.intake.labels import choice, field_label
from quarterday.intake.map import MappedSheet, Match, WorkbookMap
from quarterday.intake.plan import Plan

NAMED_AT_MOST = 20  # new accounts that are told one by one
_IN_REFERENCE = frozenset({"coverage", "cause", "province"})
# What only the desk and the forms write is in no sheet; these of its fields hold a catalogue's ids.
_NAMED: Mapping[tuple[str, str], str] = {
    ("decision", "answer"): "answer",
    ("form returned", "form"): "paper",
    ("answers", "form"): "paper",
    ("package built", "language"): "language",
    ("package sealed", "language"): "language",
    ("organisation", "language"): "language",
    ("contact", "language"): "language",
}
_COLUMNS: Mapping[tuple[str, str, str], Column] = {
    (sheet.record.kind, sheet.part or "", column.field): column
    for sheet in SHEETS
    for column in sheet.columns
}


def preview(plan: Plan) -> Iterator[Words]:
    """Yield the plan in sentences: in short, refused, to accept, changed, new, and notes."""
    yield summary(plan)
    for severity in ("refused", "asks"):
        yield from map(sentence, plan.of(severity))
    for item in plan.with_status("changed"):
        yield from changed(item)
    yield from _new(plan.with_status("new"))
    yield from map(sentence, plan.of("note"))


def summary(plan: Plan) -> Words:
    """Return how many records are new, changed, unchanged, and what is refused or asked."""
    count = Counter(item.status for item in plan.items)
    return words(
        "intake-summary",
        name=plan.source.name,
        new=count["new"],
        changed=count["changed"],
        unchanged=count["unchanged"],
        refused=len(plan.of("refused")),
        asks=len(plan.of("asks")),
    )


def understood(mapping: WorkbookMap) -> Iterator[Words]:
    """Yield how each sheet and each of its columns was understood."""
    for sheet in mapping.sheets:
        columns = tuple(_column(sheet, match) for match in sheet.matches)
        known_as = Term("sheet", sheet.sheet.name)
        yield words(
            "intake-map-sheet",
            sheet=sheet.raw.name,
            known_as=known_as,
            row=str(sheet.header_row),
            columns=columns,
        )


def _column(sheet: MappedSheet, match: Match) -> Words:
    label = field_label(match.column.field, sheet.sheet.record.kind)
    id = "intake-map-column-alike" if match.how == "likeness" else "intake-map-column"
    return words(id, heading=match.heading.strip(), column=label, score=match.score)


def sentence(fault: Fault) -> Words:
    """Return a fault as one sentence or two: where, what is there, what is wrong, what to do."""
    where = _where(fault.spot)
    parts: dict[str, Said] = {"what": fault.what}
    if fault.value:
        parts["value"] = fault.value
    if where is not None:
        parts["where"] = where
    if fault.remedy is not None:
        parts["remedy"] = fault.remedy
    extra = "".join(f"-{name}" for name in ("where", "value", "remedy") if name in parts)
    return words(f"intake-fault{extra}", **parts)


def _where(spot: Spot) -> Words | None:
    if not spot.sheet:
        return None
    if spot.row is None and not spot.heading:
        return words("intake-where-sheet", sheet=spot.sheet)
    if spot.row is None:
        return words("intake-where-column", sheet=spot.sheet, column=spot.heading)
    if not spot.heading:
        return words("intake-where-row", sheet=spot.sheet, row=str(spot.row))
    return words("intake-where-cell", sheet=spot.sheet, row=str(spot.row), column=spot.heading)


def title(record: Record) -> Words:
    """Return what a record is called: its kind and its name."""
    if isinstance(record, Terms):
        return words("intake-terms-name", start=record.start, stage=Term("stage", record.stage))
    name = getattr(record, "name", None) or record.key
    kind = Term("record", record.kind)
    return words("intake-record-name" if name else "intake-record-alone", kind=kind, name=name)


def changed(item: Item) -> Iterator[Words]:
    """Yield what changes in a record, field by field, with the old and the new value."""
    record = item.record
    for change in item.changes:
        said: dict[str, Said] = {"account": item.account, "record": title(record)}
        if change.part:
            said["line"] = line_name(change)
        if change.part and not change.field:
            yield words("intake-line-new" if change.old is None else "intake-line-gone", **said)
            continue
        said["field"] = field_label(change.field, record.kind)
        said["old"] = value_told(record, change, change.old)
        said["new"] = value_told(record, change, change.new)
        yield words("intake-line-change" if change.part else "intake-change", **said)


def line_name(change: Change) -> Words:
    """Return the name of one line of a part: what it covers, and where."""
    first, second, *_ = change.line
    if change.part == "totals":
        return words("intake-total-line", of=Term("total-of", first), where=second)
    named = words(
        "intake-part-line", part=Term("sheet", change.part), coverage=Term("coverage", first)
    )
    return words("intake-line-at", line=named, location=second) if second != "*" else named


def field_told(record: Record, field: str, value: Any) -> Said:  # noqa: ANN401 - a field's value
    """Return a field of a record on file as it is spoken."""
    catalogue = _NAMED.get((record.kind, field))
    if catalogue:
        return Term(catalogue, value)
    return value_told(record, Change(field, None, value), value)


def value_told(record: Record, change: Change, value: Any) -> Said:  # noqa: ANN401
    """Return a value of a field as it is spoken: an amount as money, a choice by its name."""
    column = _COLUMNS.get((record.kind, change.part, change.field))
    if isinstance(value, tuple):
        return tuple(_one(record, column, item) for item in value) or words("intake-nothing")
    return _one(record, column, value)


def _one(record: Record, column: Column | None, value: Any) -> Arg | Words:  # noqa: ANN401
    """Return one value as it is spoken: an amount as money, a choice by its name."""
    match value:
        case None:
            return words("unknown")
        case bool():
            return words("yes" if value else "no")
        case SharedLimit():
            return words("intake-shared-limit", amount=record_money(record, value.amount))
        case Decimal():
            return _number(record, column, value)
        case int():
            is_count = column is not None and "year" not in column.field
            return value if is_count else str(value)  # a year has no thousands mark
        case _:
            return _named(record, column, value)


def _named(record: Record, column: Column | None, value: Arg) -> Arg:
    """Return a text, or the name of the choice or catalogue entry that it is the id of."""
    if column is None or not isinstance(value, str):
        return value
    if column.choices:
        return choice(record.kind, column.field, value)
    return Term(column.refers, value) if column.refers in _IN_REFERENCE else value


def record_money(record: Record, amount: Decimal) -> Money:
    """Return an amount of a record in the currency of its terms."""
    return Money(amount, record.currency) if isinstance(record, Terms) else Money(amount)


def _number(record: Record, column: Column | None, value: Decimal) -> Arg:
    if column and column.kind == "amount":
        return record_money(record, value)
    return Rate(value, 2) if column and column.kind == "ratio" else value


def _new(items: tuple[Item, ...]) -> Iterator[Words]:
    """Yield what is new, an account at a time; of many accounts the rest in one sentence."""
    by_account: dict[str, Counter[str]] = defaultdict(Counter)
    for item in items:
        by_account[item.account][item.kind] += 1
    accounts = [*by_account]
    told = accounts if len(accounts) <= NAMED_AT_MOST + 1 else accounts[:NAMED_AT_MOST]
    for account in told:
        yield words("intake-new", account=account, records=_counts(by_account[account]))
    rest = accounts[len(told) :]
    if rest:
        together = sum((by_account[account] for account in rest), Counter())
        yield words("intake-new-rest", n=len(rest), records=_counts(together))


def _counts(kinds: Mapping[str, int]) -> tuple[Words, ...]:
    return tuple(words("intake-count", count=n, kind=Term("record", k)) for k, n in kinds.items())
