"""A deductible that changed its form: from an amount to a percentage, or the reverse."""

from __future__ import annotations

from decimal import Decimal

from quarterday.core.file.records.terms import Coverage
from quarterday.core.terms.clauses import NONE, Side
from quarterday.core.terms.difference import MIRRORED, Difference, Direction
from quarterday.core.terms.percentage import part_of
from quarterday.core.words import Arg, Rate


def same_currency(before: Side, after: Side) -> bool:
    """Tell whether amounts of the two versions can be compared."""
    return before.terms.currency == after.terms.currency


def change_of_form(before: Side, after: Side, place: str) -> Difference | None:
    """Return the difference when an amount became a percentage or the reverse; else None."""
    if _is_percent(before) == _is_percent(after):
        return None
    flat = after if _is_percent(before) else before
    if not flat.line.deductible:
        return None
    return Difference(
        kind="deductible-form",
        coverage=before.line.coverage,
        location=place,
        direction=_form_direction(before, after) if same_currency(before, after) else "cannot say",
        before=_deductible(before),
        after=_deductible(after),
    )


def _is_percent(side: Side) -> bool:
    return bool(side.line.deductible_percent) and not side.line.deductible


def _deductible(side: Side) -> Arg:
    if _is_percent(side):
        return Rate(side.line.deductible_percent or NONE)
    return side.terms.money(side.line.deductible or NONE)


def _form_direction(before: Side, after: Side) -> Direction:
    """Direct the change where every loss the percentage can meet is on one side of the amount."""
    percent, flat = (before, after) if _is_percent(before) else (after, before)
    amount = flat.line.deductible or NONE
    least, most = _range(percent.line)
    if least == most == amount:
        return "neutral"
    if least is not None and least >= amount:
        to_percent: Direction = "worse"
    elif most is not None and most <= amount:
        to_percent = "better"
    else:
        return "cannot say"
    return to_percent if percent is after else MIRRORED[to_percent]


def _range(line: Coverage) -> tuple[Decimal | None, Decimal | None]:
    """Return the least and the most that a percentage deductible can come to; None: not known.

    A percentage of the loss or of the value comes to anything between its minimum and its maximum:
    the terms alone do not hold the value, and the outcomes on losses say what they do not.
    """
    least, most = line.deductible_minimum, line.deductible_maximum
    if line.deductible_percent_of == "limit" and line.limit is not None:
        amount = part_of(line, line.limit)
        return amount, amount
    return least, most
