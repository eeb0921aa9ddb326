"""The record of the moves, read at one row: sentences that a treasurer reads."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction
from typing import Any

from quarterday.core.file.records.terms import EVERYWHERE
from quarterday.core.money import CENT, Money, round_to
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
    """Return ``value`` to the cent, rounded half-up."""
    exact = Decimal(value.numerator) / value.denominator
    return round_to(exact, CENT)


def steps(
    log: tuple[Moved, ...], row: int, item: int, what: Words, currency: str
) -> Iterator[Step]:
    """Yield what each move did at ``row``, in order; moves that say nothing are left out."""
    for done in log:
        told = done.move.notes[item] if done.move.notes else None
        before, moved = done.before[row], done.moved[row]
        if told is None or not before:
            continue
        variant = _variant(done, item, before, moved)
        if variant is not None:
            shown = _amounts(before, moved, currency)
            args = {**shown, **dict(told.args), "what": what}
            said = words(f"settling-step-{done.move.said}{variant}", **args)
            yield Step(done.move.reason, said, told, moved)


def _amounts(before: Fraction, moved: Fraction, currency: str) -> dict[str, Any]:
    shown = {"before": before, "moved": moved, "after": before - moved}
    return {name: Money(decimal(amount), currency) for name, amount in shown.items()}


def _variant(done: Moved, item: int, before: Fraction, moved: Fraction) -> str | None:
    """Return the ending of the step's wording; None when there is nothing to say."""
    move = done.move
    if moved:
        return _of_moved(done, item, moved)
    if move.said not in TOLD_WHEN_IDLE:
        return None
    if not isinstance(move.how, Share):
        return "-enough"
    if not move.how.part[item]:
        return "-enough"
    return "-small" if _is_small(done, item, before) else "-agreed"


def _is_small(done: Moved, item: int, before: Fraction) -> bool:
    how = done.move.how
    assert isinstance(how, Share)
    above = how.above[item] if how.above else None
    return above is not None and before <= above


def _of_moved(done: Moved, item: int, moved: Fraction) -> str:
    """Return the ending for a deductible that takes only a part of itself."""
    move = done.move
    cap = move.how.amounts[item]
    in_part = move.said == "deductible" and cap is not None and moved < cap
    return "-in-part" if in_part else ""


def reason_named(reason: str) -> Term:
    """Return how a reason is named."""
    return Term("settling-reason", reason)
