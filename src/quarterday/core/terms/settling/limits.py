"""Moves of what goes beyond a limit, and of what pays some of it after all.

The order: the most for thirty days, the margin at one place, limits from sublimits up to the
limits they are part of, what is left of yearly maximums, the shared additional limit, the umbrella.
"""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction
from functools import partial

from quarterday.core.file.records.terms import EVERYWHERE, Coverage, LimitBasis
from quarterday.core.terms.losses.components import COMPONENTS, PUNISHING
from quarterday.core.terms.settling.asked import Asked, Entry, Flow, Steps, move, note
from quarterday.core.terms.settling.machine import Beyond, UpTo
from quarterday.core.terms.settling.refusals import named, needed, refused
from quarterday.core.terms.settling.routing import Answer, is_topped_up
from quarterday.core.values import blanket
from quarterday.core.words import Term

OVER = "over-limit"
UMBRELLA = "umbrella"
LAST = 10**6  # a rank behind every coverage that the shared limit names


def limits(asked: Asked) -> Steps:
    """Yield the moves of limits, in order."""
    yield from _monthly(asked)
    yield from _margins(asked)
    deepest = max((len(answer.lines) for answer in asked.answers), default=0)
    for depth in range(deepest, 0, -1):
        yield from move(asked.of_lines(partial(_limit, asked, depth)), OVER, Beyond)
    for depth in range(deepest, 0, -1):
        yield from _yearly(asked, depth)
    yield from _shared(asked)
    yield from _umbrella(asked)


def _outside(answer: Answer) -> bool:
    """Tell whether an item is paid on top of the limit: defence costs, where the terms say so."""
    kind = COMPONENTS[answer.item.component].kind
    return kind == "defence" and answer.lines[0].defence == "outside"


def at_depth(answer: Answer, depth: int) -> Coverage | None:
    """Return the line of an item's chain at a depth, 1 for the limit all others are part of."""
    return answer.lines[-depth] if depth <= len(answer.lines) else None


def basis_of(asked: Asked, line: Coverage) -> LimitBasis:
    """Return how a line's limit applies; as the library says where the terms do not."""
    return line.limit_basis or asked.reference.coverages[line.coverage].basis


def _monthly(asked: Asked) -> Steps:
    yield from move(asked.of_lines(partial(_month, asked)), "monthly-limit", Beyond)


def _month(asked: Asked, answer: Answer) -> Entry | None:
    line, item = answer.lines[0], answer.item
    if line.monthly_limit is None or COMPONENTS[item.component].kind != "income":
        return None
    limit = needed(line.limit, "absent", line)
    most = limit * line.monthly_limit
    told = note("monthly", line, "monthly_limit", "limit", limit=asked.terms.money(most))
    return Entry(Fraction(most), (line.place, item.place, item.month), told)


def _margins(asked: Asked) -> Steps:
    yield from move(asked.of_lines(partial(_margin, asked)), "over-margin", Beyond)


def _margin(asked: Asked, answer: Answer) -> Entry | None:
    line = answer.lines[0]
    if line.margin is None or line.blanket is None or line.limit_basis == "blanket":
        return None
    most = needed(line.limit, "absent", line) * line.margin
    told = note("margin", line, "margin", "limit", limit=asked.terms.money(most))
    return Entry(Fraction(most), (line.place, answer.item.place), told)


def _limit(asked: Asked, depth: int, answer: Answer) -> Entry | None:
    line = at_depth(answer, depth)
    if line is None or _outside(answer):
        return None
    if basis_of(asked, line) == "aggregate":
        return None
    if line.blanket is not None:
        most = _blanket(asked, line)
        purse: tuple[str, ...] = ("blanket", line.blanket)
    else:
        most = needed(line.limit, "absent", line)
        purse = _purse(line, answer.item.place)
    said = "limit" if line == answer.line else "limit-above"
    told = note(said, line, "limit", coverage=coverage(line), limit=asked.terms.money(most))
    return Entry(Fraction(most), purse, told)


def coverage(line: Coverage) -> Term:
    """Return the coverage of a line by its name."""
    return Term("coverage", line.coverage)


def _blanket(asked: Asked, line: Coverage) -> Decimal:
    if all(c.limit is None for c in blanket.lines_under(asked.terms, line)):
        raise refused("absent", line=named(line))
    return blanket.carried(asked.terms, line).amount


def _purse(line: Coverage, place: str) -> tuple[str, ...]:
    """Return whose limit it is: a line's, at each building where the terms count it so."""
    each = line.location == EVERYWHERE and line.limit_basis == "per-building"
    return (*line.place, place if each else "")


def _yearly(asked: Asked, depth: int) -> Steps:
    """Yield the moves of what yearly maximums leave no room for.

    Where something tops up the limit, that pays it too, so it joins what is over the limit.
    """
    entries = asked.of_lines(partial(_aggregate, asked, depth))
    pairs = zip(asked.answers, entries, strict=True)
    topped = {entry.purse for answer, entry in pairs if entry and _has_more(asked, answer)}
    how = partial(Beyond, per="year")
    for joins, reason in ((True, OVER), (False, "over-aggregate")):
        kept = tuple(e if e and (e.purse in topped) == joins else None for e in entries)
        yield from move(kept, reason, how)


def _aggregate(asked: Asked, depth: int, answer: Answer) -> Entry | None:
    line = at_depth(answer, depth)
    if line is None or _outside(answer):
        return None
    most, said, field = line.aggregate, "aggregate", "aggregate"
    if basis_of(asked, line) == "aggregate":
        limit = needed(line.limit, "absent", line)
        most, said, field = limit if most is None else min(limit, most), "year-limit", "limit"
    if most is None:
        return None
    told = note(said, line, field, limit=asked.terms.money(most))
    return Entry(Fraction(most), line.place, told)


def _has_more(asked: Asked, answer: Answer) -> bool:
    line = answer.line
    if line is None:
        return False
    return is_topped_up(asked.terms, line) or _umbrella_over(asked, answer) is not None


def _shared(asked: Asked) -> Steps:
    """Yield the move of the shared limit: one purse a year, used in the order of the terms."""
    shared = asked.terms.shared_limit
    if shared is None:
        return
    order = {coverage: n for n, coverage in enumerate(shared.tops_up)}
    money = asked.terms.money(shared.amount)

    def entry(answer: Answer) -> Entry | None:
        line = answer.lines[0]
        topped = is_topped_up(asked.terms, line) and not _outside(answer)
        return (
            Entry(Fraction(shared.amount), note=note("shared", line, limit=money))
            if topped
            else None
        )

    ranks = tuple(order.get(answer.coverage, LAST) for answer in asked.answers)
    yield from move(
        asked.of_lines(entry),
        "shared-limit",
        partial(UpTo, per="year"),
        Flow(OVER, "insurer", rank=ranks),
    )


def _umbrella_over(asked: Asked, answer: Answer) -> Coverage | None:
    """Return the umbrella that lies over the line of an item, or None.

    It lies over the coverages it names, else over the liability for causes that it answers. What
    the line below does not cover it does not cover either, nor damages that it leaves out itself.
    """
    umbrella = asked.terms.find("umbrella", answer.item.place)
    kind = COMPONENTS[answer.item.component].kind
    if umbrella is None or kind not in ("damages", "defence") or _outside(answer):
        return None
    component = answer.item.component
    left_out = set(PUNISHING) - set(PUNISHING if umbrella.damages is None else umbrella.damages)
    if component in left_out:
        return None
    if umbrella.attaches_to is not None:
        return umbrella if answer.lines[0].coverage in umbrella.attaches_to else None
    answers = asked.reference.coverages["umbrella"].answers
    return umbrella if answer.item.cause in answers else None


def _umbrella(asked: Asked) -> Steps:
    entries = asked.entries(partial(_layer, asked))
    yield from move(entries, UMBRELLA, UpTo, Flow(OVER, "insurer"))
    yearly = asked.entries(partial(_yearly_layer, asked))
    how = partial(Beyond, per="year")
    yield from move(yearly, OVER, how, Flow(UMBRELLA))


def _layer(asked: Asked, answer: Answer) -> Entry | None:
    line = _umbrella_over(asked, answer)
    if line is None or answer.item.cause in line.excluded_causes:
        return None
    most = needed(line.limit, "absent", line)
    told = note("umbrella", line, "limit", limit=asked.terms.money(most))
    return Entry(Fraction(most), line.place, told)


def _yearly_layer(asked: Asked, answer: Answer) -> Entry | None:
    line = _umbrella_over(asked, answer)
    if line is None:
        return None
    most = line.aggregate
    if most is None and line.limit_basis == "aggregate":
        most = line.limit
    if most is None:
        return None
    told = note("umbrella-aggregate", line, "aggregate", limit=asked.terms.money(most))
    return Entry(Fraction(most), line.place, told)
