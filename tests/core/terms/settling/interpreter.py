"""An independent reading of a plan: one row after another, purses in a dictionary, no columns."""

from __future__ import annotations

from collections import defaultdict
from dataclasses import dataclass
from fractions import Fraction
from typing import Any

from quarterday.core.terms.settling.machine import (
    Cap,
    Highest,
    Move,
    OfTotal,
    Plan,
    Share,
    UpTo,
)


@dataclass(frozen=True)
class Row:
    """One amount of one event."""

    amount: Fraction
    item: int
    occurrence: int
    year: int
    day: int


def interpret(plan: Plan, rows: list[Row]) -> dict[str, list[Fraction]]:
    """Return what each bucket holds of each row."""
    held: dict[str, list[Fraction]] = defaultdict(lambda: [Fraction(0)] * len(rows))
    held["claim"] = [row.amount for row in rows]
    for move in plan.moves:
        live = [n for n, row in enumerate(rows) if _applies(move, row)]
        live.sort(key=lambda n: _order(move, rows[n]))
        keys = {n: _key(move, n, rows[n]) for n in live}
        before = {n: held[move.source][n] for n in live}
        purse: dict[Any, Fraction] = {}
        for n in live:
            group = [m for m in live if keys[m] == keys[n]]
            held_by = {m: before[m] for m in group}
            moved = _moved(move, rows, n, held_by, purse)
            held[move.source][n] -= moved
            held[move.reason][n] += moved
    return held


def _order(move: Move, row: Row) -> tuple[int, int, int]:
    return row.year, row.occurrence, move.rank[row.item] if move.rank else 0


def _moved(move: Move, rows: list[Row], n: int, held_by: dict[int, Fraction],
           purse: dict[Any, Fraction]) -> Fraction:  # fmt: skip
    how, item, x, key = move.how, rows[n].item, held_by[n], min(held_by)
    if isinstance(how, Share):
        spared = how.above is not None and sum(held_by.values()) <= (how.above[item] or 0)
        return Fraction(0) if spared else x * (how.part[item] or 0)
    room = min(x, purse.setdefault(key, _size(how.cap, rows, item, held_by)))
    purse[key] -= room
    return room if isinstance(how, UpTo) else x - room


def _size(cap: Cap, rows: list[Row], item: int, held_by: dict[int, Fraction]) -> Fraction:
    if isinstance(cap, OfTotal):
        part = sum(held_by.values(), Fraction(0)) * (cap.ratio[item] or 0)
        size = max(part, cap.least[item] or Fraction(0))
        return min(size, size if cap.most[item] is None else cap.most[item] or Fraction(0))
    if isinstance(cap, Highest):
        met = [cap.amount[rows[m].item] or 0 for m, x in held_by.items() if x]
        return Fraction(max(met, default=0))
    return cap[item] or Fraction(0)


def _applies(move: Move, row: Row) -> bool:
    since = move.since[row.item] if move.since else None
    before = move.before[row.item] if move.before else None
    in_time = (since is None or row.day >= since) and (before is None or row.day < before)
    return move.touches[row.item] and in_time


def _key(move: Move, n: int, row: Row) -> Any:
    scope = {"loss": n, "occurrence": (row.year, row.occurrence), "year": row.year}
    return scope[move.how.per], 0 if move.how.per == "loss" else move.purses[row.item]
