"""Moves that take a part of a loss: nothing covers it, waiting, wear, coinsurance."""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction
from functools import partial
from typing import get_args

from quarterday.core.file.records.terms import EVERYWHERE, Coverage
from quarterday.core.terms.losses.components import COMPONENTS
from quarterday.core.terms.losses.loss import HOURS_A_MONTH
from quarterday.core.terms.settling.asked import Asked, Entry, Flow, Steps, move, note
from quarterday.core.terms.settling.machine import Note, Share
from quarterday.core.terms.settling.refusals import named, refused
from quarterday.core.terms.settling.routing import Answer, NotCovered
from quarterday.core.terms.settling.rows import ByItem
from quarterday.core.values import blanket
from quarterday.core.values.coinsured import clause_of
from quarterday.core.words import Rate, Term

ALL = Fraction(1)


def uncovered(asked: Asked) -> Steps:
    """Yield the moves of what no line answers, by reason."""
    for reason in get_args(NotCovered):
        entries = tuple(_uncovered(answer, reason) for answer in asked.answers)
        yield from move(entries, reason, Share)
    yield from _too_early(asked)


def _uncovered(answer: Answer, reason: NotCovered) -> Entry | None:
    if answer.why_not != reason:
        return None
    args = {
        "coverage": Term("coverage", answer.coverage),
        "cause": Term("cause", answer.item.cause),
    }
    fields = ("excluded_causes",) if reason == "excluded-cause" else ("damages",)
    told = Note(reason, answer.coverage, answer.item.place, fields, tuple(sorted(args.items())))
    return Entry(ALL, note=told)


def _too_early(asked: Asked) -> Steps:
    """Yield the move of events before a retroactive date."""
    days = tuple(
        answer.line.retroactive_date if answer.line and answer.line.claims_made else None
        for answer in asked.answers
    )
    entries = tuple(
        Entry(ALL, note=note("retroactive", answer.line, "retroactive_date", day=day))
        if answer.line and day
        else None
        for answer, day in zip(asked.answers, days, strict=True)
    )
    before = tuple(day.toordinal() if day else None for day in days)
    yield from move(entries, "before-retroactive-date", Share, Flow(before=before))


def waiting(asked: Asked) -> Steps:
    """Yield the move of the first hours of an interruption: a month's income is spread evenly."""
    yield from move(asked.entries(_waiting), "waiting", Share)


def _waiting(answer: Answer) -> Entry | None:
    line, item = answer.lines[0], answer.item
    if not line.waiting_hours or COMPONENTS[item.component].kind != "income":
        return None
    gone = line.waiting_hours - HOURS_A_MONTH * (item.month - 1)
    part = min(max(Fraction(gone, item.hours), Fraction(0)), ALL)
    told = note("waiting", line, "waiting_hours", hours=line.waiting_hours)
    return Entry(part, note=told) if part else None


def wear(asked: Asked) -> Steps:
    """Yield the move of depreciation, where a loss is settled at actual cash value."""
    yield from move(asked.entries(partial(_wear, asked)), "depreciation", Share)


def _wear(asked: Asked, answer: Answer) -> Entry | None:
    line, item = answer.lines[0], answer.item
    if line.basis != "actual-cash-value" or COMPONENTS[item.component].kind != "property":
        return None
    part = asked.values.wear(item.component, item.place)
    if part is None:
        part = asked.values.wear(line.coverage, item.place)
    if part is None:
        raise refused("no-depreciation", line=named(line), component=item.component)
    return Entry(Fraction(part), note=note("depreciation", line, "basis", part=Rate(part)))


def coinsurance(asked: Asked, order: str) -> Steps:
    """Yield the move of the coinsurance share, for the lines of one order."""
    entries = asked.of_lines(partial(_share, asked, order))
    lines = [a.lines[0] if e else None for a, e in zip(asked.answers, entries, strict=True)]
    above: ByItem = tuple(_spared(asked, line) if line else None for line in lines)
    since = tuple(_agreed(line) if line else None for line in lines)
    yield from move(
        entries,
        "coinsurance",
        partial(Share, above=above if any(above) else None),
        Flow(since=since if any(since) else None),
    )


def order_of(line: Coverage) -> str:
    """Return whether coinsurance or the deductible comes first; the usual print when not stated."""
    return line.settling_order or "coinsurance-first"


def asks_coinsurance(answer: Answer) -> bool:
    """Tell whether a coinsurance clause stands over an item: costs around a loss have none."""
    kind = COMPONENTS[answer.item.component].kind
    return answer.lines[0].is_coinsured and kind in ("property", "income")


def _required(asked: Asked, line: Coverage, place: str) -> tuple[Decimal, Decimal | None]:
    """Return what must be insured, and the true value it follows from unless it is stated."""
    clause = clause_of(asked.terms, line)
    value = _worth(asked, line, place) if clause.stated is None else None
    required = clause.required_of(asked.terms.money(value or Decimal(0)))
    return required.amount.amount, value


def lines_insured(asked: Asked, line: Coverage) -> tuple[Coverage, ...]:
    """Return the lines that share the amount of ``line``, itself included."""
    return blanket.lines_under(asked.terms, line)


def _worth(asked: Asked, line: Coverage, place: str) -> Decimal:
    lines = lines_insured(asked, line)
    if len(lines) > 1 or line.location == EVERYWHERE:
        value = asked.values.of_lines(lines)
        if value is not None:
            return value
    return asked.value_of(line, place if line.location == EVERYWHERE else line.location)


def carried(asked: Asked, line: Coverage) -> Decimal:
    """Return the amount insured that a line belongs to; Refused where it has none."""
    if line.limit is None and not line.blanket:
        raise refused("absent", line=named(line))
    return blanket.carried(asked.terms, line).amount


def _share(asked: Asked, order: str, answer: Answer) -> Entry | None:
    line = answer.lines[0]
    if not asks_coinsurance(answer) or order_of(line) != order:
        return None
    required, value = _required(asked, line, answer.item.place)
    insured = carried(asked, line)
    kept = ALL if required <= 0 else min(ALL, Fraction(insured) / Fraction(required))
    args = {"insured": asked.terms.money(insured), "required": asked.terms.money(required)}
    if value is not None:
        args["value"] = asked.terms.money(value)
    told = note(
        "coinsurance",
        line,
        "limit",
        *(n for n in CLAUSES if getattr(line, n) is not None),
        **args,
        share=Rate(Decimal(kept.numerator) / kept.denominator, 2),
    )
    return Entry(ALL - kept, line.blanket or line.place, told)


CLAUSES = ("coinsurance", "coinsurance_stated_amount", "agreed_value_until",
           "coinsurance_waived_up_to", "coinsurance_waived_share")  # fmt: skip


def _spared(asked: Asked, line: Coverage) -> Fraction | None:
    """Return up to which loss the clause is waived: the lesser of an amount and a share."""
    told = []
    if line.coinsurance_waived_up_to is not None:
        told.append(Fraction(line.coinsurance_waived_up_to))
    if line.coinsurance_waived_share is not None:
        told.append(Fraction(line.coinsurance_waived_share) * Fraction(carried(asked, line)))
    return min(told, default=None)


def _agreed(line: Coverage) -> int | None:
    return line.agreed_value_until.toordinal() if line.agreed_value_until else None
