"""Moves of deductibles: an amount, or a part of the loss, the limit or the value, within bounds.

Each line has its own, once an occurrence. Of several in one event only the highest counts, unless
all together come to less ("only the highest deductible will be applied, unless applying more than
one benefits the insured", as a Canadian commercial form prints). Each counts where the terms say
so, and where it is a part of a value or a loss: such deductibles apply to each building.
"""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal
from fractions import Fraction
from functools import partial

from quarterday.core.file.records.terms import EVERYWHERE, PERCENT_DEDUCTIBLE, Coverage
from quarterday.core.terms.losses.components import COMPONENTS
from quarterday.core.terms.percentage import part_of
from quarterday.core.terms.settling.asked import Asked, Entry, Flow, Steps, move, note
from quarterday.core.terms.settling.machine import CLAIM, Beyond, Highest, Note, OfTotal, UpTo
from quarterday.core.terms.settling.refusals import named, refused
from quarterday.core.terms.settling.routing import Answer
from quarterday.core.terms.settling.rows import ByItem

NONE = Decimal(0)


def deductibles(asked: Asked) -> Steps:
    """Yield the moves of all deductibles, and the one that gives back what counts no more."""
    flat = asked.of_lines(partial(_flat, asked))
    yield from move(flat, "deductible", UpTo)
    yield from _of_losses(asked)
    if asked.terms.deductible_rule != "each":
        counted = tuple(
            _in_the_rule(asked, *pair) for pair in zip(asked.answers, flat, strict=True)
        )
        yield from _only_the_highest(counted)


def _line(answer: Answer) -> Coverage:
    return answer.lines[0]


def bears(answer: Answer) -> bool:
    """Tell whether a deductible comes off an item: defence on top of the limit has none."""
    outside = COMPONENTS[answer.item.component].kind == "defence"
    return not (outside and _line(answer).defence == "outside")


def _purse(line: Coverage, place: str) -> tuple[str, str, str]:
    """Return whose deductible it is: a line's once an event; a percentage's once a building."""
    by_place = line.deductible_percent is not None
    return line.coverage, line.location, place if by_place else ""


def _flat(asked: Asked, answer: Answer) -> Entry | None:
    line, place = _line(answer), answer.item.place
    if not bears(answer) or line.deductible_percent_of == "loss":
        return None
    amount = _amount(asked, line, place)
    if not amount:
        return None
    fields = ("deductible",) if line.deductible_percent is None else PERCENT_DEDUCTIBLE
    told = note("deductible", line, *fields, amount=asked.terms.money(amount))
    return Entry(Fraction(amount), _purse(line, place), told)


def _amount(asked: Asked, line: Coverage, place: str) -> Decimal:
    """Return a deductible that does not turn on the size of the loss."""
    if line.deductible_percent is None:
        return line.deductible or NONE
    return part_of(line, base_of(asked, line, place))


def base_of(asked: Asked, line: Coverage, place: str) -> Decimal:
    """Return the amount that a percentage deductible is a part of at a place, as the terms say.

    It is the limit, else what stands there is worth; of a loss, the largest there can be is that.
    Refused where nobody knows what it is worth.
    """
    if line.deductible_percent_of == "limit":
        return line.limit or NONE
    return asked.value_of(line, place if line.location == EVERYWHERE else line.location)


def _of_losses(asked: Asked) -> Steps:
    """Yield the move of deductibles that are a part of the loss as it stands then."""
    entries = asked.of_lines(_of_loss)

    def bound(name: str) -> ByItem:
        found = (getattr(_line(a), name) if e else None for a, e in _pairs(asked, entries))
        return tuple(None if amount is None else Fraction(amount) for amount in found)

    def how(ratio: ByItem) -> UpTo:
        return UpTo(OfTotal(ratio, bound("deductible_minimum"), bound("deductible_maximum")))

    yield from move(entries, "deductible", how)


def _pairs(
    asked: Asked, entries: tuple[Entry | None, ...]
) -> tuple[tuple[Answer, Entry | None], ...]:
    return tuple(zip(asked.answers, entries, strict=True))


def _of_loss(answer: Answer) -> Entry | None:
    line = _line(answer)
    if line.deductible_percent_of != "loss" or not line.deductible_percent or not bears(answer):
        return None
    told = note("deductible-part", line, *PERCENT_DEDUCTIBLE)
    return Entry(Fraction(line.deductible_percent), _purse(line, answer.item.place), told)


def _in_the_rule(asked: Asked, answer: Answer, entry: Entry | None) -> Entry | None:
    """Return an item's deductible where the rule of the highest holds for it."""
    line = answer.line
    if line is None or line.deductible_percent is None:
        return entry
    stated = asked.terms.deductible_rule == "highest"
    if stated and line.deductible_percent_of == "loss":
        raise refused("highest-of-loss", line=named(line))
    return entry if stated else None


def _only_the_highest(entries: tuple[Entry | None, ...]) -> Steps:
    """Yield the move that gives back what several deductibles take beyond the highest of them."""
    if len({entry.purse for entry in entries if entry}) < 2:  # noqa: PLR2004 - two make several
        return
    together = tuple(entry and Entry(entry.amount, note=_given_back(entry)) for entry in entries)
    yield from move(
        together,
        CLAIM,
        lambda caps: Beyond(Highest(caps)),
        Flow("deductible", "insurer"),
    )


def _given_back(entry: Entry) -> Note | None:
    return entry.note and replace(entry.note, said="highest")
