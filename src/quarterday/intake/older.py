"""Signs that a workbook is older than the file it is loaded over, and lines it takes away."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date

from quarterday.core.file.fold import File
from quarterday.core.file.records import Record, Terms, Valuation
from quarterday.core.words import Words, words
from quarterday.intake.changes import Item
from quarterday.intake.faults import Fault, Spot

_DATED = ("valued_on", "confirmed_on")


def questions(file: File, item: Item, record: Record) -> Iterator[Fault]:
    """Yield what a person has to accept before an item may go on: older facts, lines lost."""
    for said in (*_older(file, record), *_lost(item)):
        place = item.origin.places[0]
        remedy = words("intake-older-remedy")
        yield Fault("asks", Spot(place.sheet, place.row), said, remedy, account=item.account)


def _older(file: File, record: Record) -> Iterator[Words]:
    if isinstance(record, Terms):
        newest = max((t.start for t in file.all(Terms) if t.stage == record.stage), default=None)
        if newest is not None and record.start < newest:
            yield words("intake-older-terms", here=record.start, on_file=newest)
    elif isinstance(record, Valuation):
        on_file = file.valuations(record.building, record.valued)
        same = [v.valued_on for v in on_file if v.feature == record.feature]
        if same and record.valued_on < max(same):
            yield words("intake-older-valuation", here=record.valued_on, on_file=max(same))
    else:
        yield from _dated_back(file, record)


def _dated_back(file: File, record: Record) -> Iterator[Words]:
    old = file.get(type(record), record.key)
    for name in _DATED:
        before: date | None = getattr(old, name, None)
        now: date | None = getattr(record, name, None)
        if before and now and now < before:
            yield words("intake-older-record", here=now, on_file=before)


def _lost(item: Item) -> Iterator[Words]:
    """Yield the lines on file of a part that the workbook gives without them."""
    lost = [
        change for change in item.changes if change.part and change.new is None and not change.field
    ]
    if lost:
        names = tuple(" · ".join(filter(None, change.line)) for change in lost)
        yield words("intake-lines-lost", lines=names, count=len(names))
