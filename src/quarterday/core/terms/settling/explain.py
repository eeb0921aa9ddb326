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
from quarterday.core.terms.losses.loss import Damage
from quarterday.core.terms.settling.machine import Moved, Note, Share
from quarterday.core.words import Term, Words, words

TOLD_WHEN_IDLE = ("limit", "coinsurance")


@dataclass(frozen=True, slots=True)
class Step:
    """One move at one row: its sentence, the clause behind it, and what it moved."""

    reason: str
    said: Words
    note: Note
    moved: Fraction


def named(damage: Damage, names: Mapping[str, str]) -> Words:
    """Return what was lost, with the month and the place where they are told."""
    what = words(f"settling-component-{damage.component}")
    if damage.month > 1:
        what = words("settling-in-month", what=what, month=damage.month)
    if damage.place == EVERYWHERE:
        return what
    return words("settling-at", what=what, place=names.get(damage.place, damage.place))


def decimal(value: Fraction) -> Decimal:
    """Return ``value`` (not below zero) to the cent, rounded half-up."""
    return Decimal(floor(value * 100 + Fraction(1, 2))).scaleb(-2)


@dataclass(frozen=True, slots=True)
class Row:
    """One row of the record: its number, its item, its day, and what was lost, in words."""

    number: int
    item: int
    day: date
    what: Words


def steps(log: tuple[Moved, ...], row: Row, currency: str) -> Iterator[Step]:
    """Yield what each move did at a row, in order; moves that say nothing are left out."""
    for done in log:
        told = done.move.notes[row.item] if done.move.notes else None
        before, moved = done.before[row.number], done.moved[row.number]
        if told is None or not before:
            continue
        ending = _of_moved(done, told, row, moved) if moved else _idle(done, told, row, before)
        if ending is not None:
            args = {**_amounts(before, moved, currency), **dict(told.args), "what": row.what}
            said = words(f"settling-step-{told.said}{ending}", **args)
            yield Step(done.move.reason, said, told, moved)


def _amounts(before: Fraction, moved: Fraction, currency: str) -> dict[str, Any]:
    shown = {"before": before, "moved": moved, "after": before - moved}
    return {name: Money(decimal(amount), currency) for name, amount in shown.items()}


def _of_moved(done: Moved, told: Note, row: Row, moved: Fraction) -> str:
    """Return the ending of the wording: a deductible may take only a part of itself."""
    cap = done.move.how.amounts[row.item]
    in_part = told.said == "deductible" and cap is not None and moved < cap
    return "-in-part" if in_part else ""


def _idle(done: Moved, told: Note, row: Row, before: Fraction) -> str | None:
    """Return the ending for a clause that moved nothing; None when that needs no telling."""
    how, since = done.move.how, done.move.since
    if told.said not in TOLD_WHEN_IDLE:
        return None
    if since is not None and (since[row.item] or 0) > row.day.toordinal():
        return "-agreed"
    above = how.above[row.item] if isinstance(how, Share) and how.above else None
    return "-small" if above is not None and before <= above else "-enough"


def reason_named(reason: str) -> Term:
    """Return how a reason is named."""
    return Term("settling-reason", reason)
