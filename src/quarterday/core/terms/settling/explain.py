"""The record of the moves, read at one row: sentences that a treasurer reads."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from fractions import Fraction
from math import floor
from typing import Any

from quarterday.core.file.records.terms import EVERYWHERE
from quarterday.core.money import Money
from quarterday.core.terms.settling.machine import Moved, Note, Share
from quarterday.core.words import Term, Words, words

TOLD_WHEN_IDLE = ("limit", "year-limit", "coinsurance")


@dataclass(frozen=True, slots=True)
class Step:
    """One move at one row: its sentence, the clause behind it, and what it moved."""

    reason: str
    said: Words
    note: Note
    moved: Fraction


def named(component: str, place: str, names: Mapping[str, str]) -> Words:
    """Return what was lost, with the place where it is told."""
    what = words(f"settling-component-{component}")
    if place == EVERYWHERE:
        return what
    return words("settling-at", what=what, place=names.get(place, place))


def decimal(value: Fraction) -> Decimal:
    """Return ``value`` (not below zero) to the cent, rounded half-up."""
    return Decimal(floor(value * 100 + Fraction(1, 2))).scaleb(-2)


@dataclass(frozen=True, slots=True)
class Group:
    """The rows of one thing lost (its months together): numbers, items, day, and it in words."""

    rows: tuple[int, ...]
    items: tuple[int, ...]
    day: date
    what: Words


def steps(log: tuple[Moved, ...], group: Group, currency: str) -> Iterator[Step]:
    """Yield what each move did to a group, in order; moves that say nothing are left out."""
    for done in log:
        told = _note(done, group)
        before = sum((done.before[row] for row in group.rows), Fraction(0))
        moved = sum((done.moved[row] for row in group.rows), Fraction(0))
        if told is None or not before:
            continue
        ending = _of_moved(done, told, group, moved) if moved else _idle(done, told, group, before)
        if ending is not None:
            args = {**_amounts(before, moved, currency), **dict(told.args), "what": group.what}
            said = words(f"settling-step-{told.said}{ending}", **args)
            yield Step(done.move.reason, said, told, moved)


def _note(done: Moved, group: Group) -> Note | None:
    notes = (done.move.notes[item] for item in group.items) if done.move.notes else iter(())
    return next((note for note in notes if note is not None), None)


def _amounts(before: Fraction, moved: Fraction, currency: str) -> dict[str, Any]:
    shown = {"before": before, "moved": moved, "after": before - moved}
    return {name: Money(decimal(amount), currency) for name, amount in shown.items()}


def _of_moved(done: Moved, told: Note, group: Group, moved: Fraction) -> str:
    """Return the ending of the wording: a deductible may take only a part of itself."""
    cap = done.move.how.amounts[group.items[0]]
    in_part = told.said == "deductible" and cap is not None and moved < cap
    return "-in-part" if in_part else ""


def _idle(done: Moved, told: Note, group: Group, before: Fraction) -> str | None:
    """Return the ending for a clause that moved nothing; None when that needs no telling."""
    how, since, item = done.move.how, done.move.since, group.items[0]
    if told.said not in TOLD_WHEN_IDLE:
        return None
    if since is not None and (since[item] or 0) > group.day.toordinal():
        return "-agreed"
    above = how.above[item] if isinstance(how, Share) and how.above else None
    return "-small" if above is not None and before <= above else "-enough"


def reason_named(reason: str) -> Term:
    """Return how a reason is named."""
    return Term("settling-reason", reason)
