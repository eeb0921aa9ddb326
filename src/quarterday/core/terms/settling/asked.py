"""What the moves of a plan are made from, and how one clause a line becomes one move for all."""

from __future__ import annotations

from collections.abc import Callable, Hashable, Iterator
from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction
from functools import cached_property
from typing import NamedTuple

from quarterday.core.file.records import Terms
from quarterday.core.file.records.terms import Coverage
from quarterday.core.reference import Reference
from quarterday.core.terms.settling.machine import (
    CLAIM,
    Beyond,
    Days,
    Move,
    Note,
    Payer,
    Share,
    UpTo,
)
from quarterday.core.terms.settling.refusals import named, refused
from quarterday.core.terms.settling.routing import Answer
from quarterday.core.terms.settling.rows import ByItem
from quarterday.core.terms.settling.values import Values
from quarterday.core.words import Arg, Words

Steps = Iterator[Move]
ALL_PROPERTY = ("building", "contents", "equipment", "stained-glass", "organ-and-fine-arts")
OF_ONE_CAUSE = ("sewer-backup", "overland-flood", "earthquake", "equipment-breakdown")


class Entry(NamedTuple):
    """What a move does to one item: the amount, whose purse it comes from, and what to say."""

    amount: Fraction
    purse: Hashable = None
    note: Note | None = None


@dataclass(frozen=True)
class Asked:
    """Terms, true values, and which line answers each item."""

    terms: Terms
    reference: Reference
    values: Values
    answers: tuple[Answer, ...]

    def value_of(self, line: Coverage, place: str) -> Decimal:
        """Return what a line insures at a place is worth; Refused where nobody knows.

        A line for one cause (earthquake, flood) insures all the property of the place.
        """
        found = self.values.of(line.coverage, place)
        if found is None and line.coverage in OF_ONE_CAUSE:
            known = [self.values.of(kind, place) for kind in ALL_PROPERTY]
            found = sum((k for k in known if k is not None), Decimal(0)) or None
        if found is None:
            raise refused("no-value", line=named(line))
        return found

    def entries(self, of: Callable[[Answer], Entry | None]) -> tuple[Entry | None, ...]:
        """Return what ``of`` makes of each answered item."""
        return tuple(of(answer) if answer.lines else None for answer in self.answers)

    @cached_property
    def _alike(self) -> tuple[int, ...]:
        """The number of the first answer that differs from each in the cause alone."""
        first: dict[Hashable, int] = {}
        found = []
        for number, answer in enumerate(self.answers):
            item = answer.item
            key = (item.component, item.place, item.month, item.hours, *map(id, answer.lines))
            found.append(first.setdefault(key, number))
        return tuple(found)

    def of_lines(self, of: Callable[[Answer], Entry | None]) -> tuple[Entry | None, ...]:
        """Return the same for an ``of`` that does not turn on the cause: asked once a line."""
        made: list[Entry | None] = []
        for number, first in enumerate(self._alike):
            answer = self.answers[number]
            if first < number:
                made.append(made[first])
            else:
                made.append(of(answer) if answer.lines else None)
        return tuple(made)


def note(said: str, line: Coverage, *fields: str, **args: Arg | Words) -> Note:
    """Return what the step ``said`` says of a line's clauses."""
    return Note(said, line.coverage, line.location, fields, tuple(sorted(args.items())))


def amounts(entries: tuple[Entry | None, ...]) -> ByItem:
    """Return the amount of each item's entry."""
    return tuple(None if entry is None else entry.amount for entry in entries)


def purses(entries: tuple[Entry | None, ...]) -> tuple[int, ...]:
    """Return the number of each entry's purse, in order of appearance."""
    numbers: dict[Hashable, int] = {}
    return tuple(numbers.setdefault(entry.purse, len(numbers)) if entry else 0 for entry in entries)


class Flow(NamedTuple):
    """Where a move takes money from, who pays what it moves, on which days, in which order."""

    source: str = CLAIM
    paid_by: Payer = "organisation"
    since: Days | None = None
    before: Days | None = None
    rank: tuple[int, ...] | None = None


FROM_CLAIM = Flow()


def move(
    entries: tuple[Entry | None, ...],
    reason: str,
    how: Callable[[ByItem], Share | UpTo | Beyond],
    flow: Flow = FROM_CLAIM,
) -> Steps:
    """Yield the move that ``entries`` make; none when no item has one."""
    if any(entries):
        yield Move(
            reason=reason,
            how=how(amounts(entries)),
            purse=purses(entries),
            notes=tuple(entry.note if entry else None for entry in entries),
            **flow._asdict(),
        )
