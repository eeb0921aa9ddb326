"""What the insurer must be told: what was changed and decided, and what is asked no more.

What a request asked for is kept in its letter alone. For the next one it is worked out again, from
the entries up to the one that the request speaks of.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date
from typing import Any

from pydantic import BaseModel

from quarterday.core.file.entry import Entry
from quarterday.core.file.fold import fold, read
from quarterday.core.file.records import (
    Answers,
    Building,
    Decision,
    Interest,
    Operations,
    Organisation,
    PaymentChoice,
    Record,
    RequestSent,
    Terms,
    Valuation,
)
from quarterday.intake.assemble import Key
from quarterday.intake.changes import Change, by_key, changes

# What an insurer rates, insures or writes into a policy. Who the contacts are is not its affair.
KINDS: tuple[type[Record], ...] = (
    Organisation, Terms, Building, Valuation, Operations, Interest, Decision, PaymentChoice,
    Answers,
)  # fmt: skip
OFFICE = frozenset({"broker", "office", "notes", "language", "confirmed_on", "renewal_date"})
TAKEN = "take-it"
LOADED = frozenset({"workbook", "csv"})
_NAMES = frozenset(kind.kind for kind in KINDS)
Value = Any  # a field's value: text, amount, date, list, a whole line, or None
Slot = tuple[str, str, str, Key, str]
Histories = Mapping[tuple[str, str], Sequence[Entry]]


@dataclass(frozen=True, slots=True)
class Earlier:
    """What an earlier request of the renewal asked for: its number, its day, and the value."""

    number: int
    day: date
    value: Value


@dataclass(frozen=True, slots=True)
class Moved:
    """One thing to tell the insurer: of which record, the change, and the entry that made it.

    ``earlier`` is what was asked in its place before; where it ``is_gone``, nothing is asked in its
    place, and the change names what stands.
    """

    record: Record
    change: Change
    entry: Entry
    earlier: Earlier | None = None
    is_gone: bool = False


@dataclass(frozen=True, slots=True)
class _Asked:
    """What a request asked for, and still asks; ``told`` is the newest value the insurer heard."""

    request: RequestSent
    moved: Moved
    told: Value

    def earlier(self, value: Value) -> Earlier:
        """Return the request, as the one that asked for a value."""
        return Earlier(self.request.number, self.request.sent_on, value)


@dataclass(frozen=True, slots=True)
class _Now:
    """Where a record stands: its newest entry and what it holds, the newest that somebody made.

    ``standing`` are the terms that requested ones ask to change.
    """

    last: Entry
    record: Record | None
    ours: int
    standing: Terms | None


Open = Mapping[Slot, _Asked]


def to_tell(
    entries: Sequence[Entry], requests: Iterable[RequestSent], renewal: date
) -> tuple[Moved, ...]:
    """Return what the next request of a renewal must say, a file's whole history given.

    First comes what is asked no more: an insurer may be at work on it.
    What a workbook brought is neither asked nor taken back: it is where an insurer's terms come
    from. What was asked for another renewal was answered by the terms since.
    """
    still: Open = {}
    seq = 0
    for request in sorted(requests, key=lambda one: one.seq):
        if request.renewal == renewal:
            until = [entry for entry in entries if entry.seq <= request.seq]
            told = [one for one in _to_tell(until, seq, still) if _was_told(one, request)]
            still = _after(still, told, request)
        seq = request.seq
    return tuple(sorted(_to_tell(entries, seq, still), key=lambda one: not one.is_gone))


def _to_tell(entries: Sequence[Entry], seq: int, still: Open) -> Iterator[Moved]:
    """Yield what to tell after entry ``seq``, when ``still`` is what was asked before."""
    histories = _histories(entries)
    now = {of: _now(histories[of], entries) for of in dict.fromkeys(slot[:2] for slot in still)}
    for slot, asked in still.items():
        yield from _otherwise(asked, now[slot[:2]], still)
    for history in histories.values():
        for one in _since(history, seq, entries):
            if not _is_open(one, still):
                yield one


def _histories(entries: Iterable[Entry]) -> Histories:
    found: dict[tuple[str, str], list[Entry]] = {}
    for entry in entries:
        if entry.kind in _NAMES:
            found.setdefault((entry.kind, entry.key), []).append(entry)
    return found


def _is_ours(entry: Entry, seq: int) -> bool:
    """Tell whether somebody made an entry after ``seq``, not a workbook."""
    return entry.seq > seq and entry.origin.way not in LOADED


def _since(history: Sequence[Entry], seq: int, entries: Sequence[Entry]) -> Iterator[Moved]:
    """Yield what of a record was changed and decided after entry ``seq``."""
    first = next((entry.seq for entry in history if _is_ours(entry, seq)), None)
    last = history[-1]
    if first is None or last.body is None:
        return
    record = read(last.kind, last.body)
    if _is_declined(record):
        return
    before = next((e.body for e in reversed(history) if e.seq < first), None)
    base = read(last.kind, before) if before else _base(record, last, entries)
    for change in changes(base, record) if base else _all(record):
        if _is_asked(record, change):
            yield Moved(record, change, last)


def _is_declined(record: Record) -> bool:
    return isinstance(record, Decision) and record.answer != TAKEN


def _base(record: Record, last: Entry, entries: Sequence[Entry]) -> Record | None:
    """Return what requested terms change, as it stood before they were last written."""
    base = _standing(record, [entry for entry in entries if entry.seq < last.seq])
    bare = {"stage", "start", "end", "premiums", "totals", "options", "rounding", "answer_by",
            "instalments_available"}  # fmt: skip
    return base.model_copy(update={n: getattr(record, n) for n in bare}) if base else None


def _standing(record: Record | None, entries: Iterable[Entry]) -> Terms | None:
    """Return the terms that requested ones ask to change: the offer, else what expires."""
    if not isinstance(record, Terms) or record.stage != "requested":
        return None
    file = fold("", (entry for entry in entries if entry.kind == Terms.kind))
    return file.terms(record.start, "offered") or file.expiring(record.start)


def _all(record: Record) -> Iterator[Change]:
    for name in type(record).model_fields:
        value = getattr(record, name)
        if value not in (None, ()):
            yield Change(name, None, value)


def _is_asked(record: Record, change: Change) -> bool:
    """Tell whether a field says something to an insurer, and not only whose the record is."""
    if change.field in OFFICE:
        return False
    if isinstance(record, Decision | PaymentChoice | Answers):
        return change.field in {"answer", "plan", "answers"}
    return change.field != "id"


def _slot(one: Moved) -> Slot:
    change = one.change
    return one.record.kind, one.record.key, change.part, change.line, change.field


def _line(slot: Slot) -> Slot:
    """Return the whole line that a field of a part belongs to."""
    return *slot[:4], ""


def _is_open(one: Moved, still: Open) -> bool:
    """Tell whether a change is of what was asked: the same, or a whole that it is part of."""
    slot = _slot(one)
    if slot in still or (*slot[:2], "", (), slot[2]) in still:
        return True
    wholes = (s[4] for s, asked in still.items()
              if s[:4] == slot[:4] and isinstance(asked.told, BaseModel))  # fmt: skip
    return any(not whole or slot[4].startswith(f"{whole}_") for whole in wholes)


def _now(history: Sequence[Entry], entries: Iterable[Entry]) -> _Now:
    last = history[-1]
    newest = next(entry for entry in reversed(history) if entry.body)  # it was asked, so it was
    record = read(newest.kind, newest.body or "")
    ours = max((entry.seq for entry in history if _is_ours(entry, 0)), default=0)
    return _Now(last, record if last.body else None, ours, _standing(record, entries))


def _otherwise(asked: _Asked, now: _Now, still: Open) -> Iterator[Moved]:
    """Yield what is asked now in place of what was, or that it is gone."""
    last, record, change = now.last, now.record, asked.moved.change
    if last.is_redacted or now.ours <= asked.request.seq:
        return
    stands = _at(now.standing, change) if now.standing else change.old
    wanted = stands if record is None or _is_declined(record) else _at(record, change)
    if record is not None and wanted == asked.told:
        return
    is_gone = wanted == stands
    said = asked.moved.record if is_gone or record is None else record
    one = Moved(said, replace(change, old=stands, new=wanted), last, asked.earlier(change.new),
                is_gone)  # fmt: skip
    is_line = change.part and not change.field and asked.told and wanted
    yield from _of_line(asked, one, still) if is_line and not is_gone else (one,)


def _of_line(asked: _Asked, now: Moved, still: Open) -> Iterator[Moved]:
    """Yield which fields of a line that was asked are asked otherwise."""
    stands = now.change.old
    for field in changes(asked.told, now.change.new):
        old = _field(stands, field.field) if stands else None
        change = replace(now.change, field=field.field, old=old, new=field.new)
        is_gone = old == field.new
        one = Moved(now.record, change, now.entry, asked.earlier(field.old), is_gone)
        if _is_asked(now.record, change) and _slot(one) not in still:
            yield one


def _at(record: Record, change: Change) -> Value:
    """Return the value that stands in a record where a change was; None where nothing does."""
    holder: BaseModel | None = record
    if change.part:
        holder = by_key(change.part, getattr(record, change.part)).get(change.line)
    return _field(holder, change.field) if holder and change.field else holder


def _field(holder: BaseModel, name: str) -> Value:
    """Return a field by its name; one of a part within is named after both, joined."""
    if name in type(holder).model_fields:
        return getattr(holder, name)
    own = [(n, getattr(holder, n)) for n in type(holder).model_fields if name.startswith(f"{n}_")]
    inner = ((n, value) for n, value in own if isinstance(value, BaseModel))
    return next((_field(value, name.removeprefix(f"{n}_")) for n, value in inner), None)


def _was_told(one: Moved, request: RequestSent) -> bool:
    """Tell whether a request said a thing.

    The ones that do not count what they took back were silent on what was withdrawn or declined.
    """
    was_silent = request.taken_back is None and one.is_gone
    return not (was_silent and (one.entry.body is None or isinstance(one.record, Decision)))


def _after(still: Open, told: Iterable[Moved], request: RequestSent) -> Open:
    """Return what is asked once a request has gone out."""
    after = dict(still)
    for one in told:
        slot = _slot(one)
        line = after.get(_line(slot))
        if line and one.change.part and one.change.field:
            after[_line(slot)] = replace(line, told=_at(one.record, line.moved.change))
        if one.is_gone:
            after.pop(slot, None)
        else:
            after[slot] = _Asked(request, one, one.change.new)
    return after
