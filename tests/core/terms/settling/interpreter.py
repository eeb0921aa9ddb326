"""An independent reading of a plan: one row after another, purses in a dictionary, no columns."""

from __future__ import annotations

from collections import Counter, defaultdict
from dataclasses import dataclass
from fractions import Fraction
from typing import Any

from quarterday.core.terms.settling.machine import Highest, Move, OfTotal, Plan, Share, UpTo


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
        live.sort(
            key=lambda n: (rows[n].year, rows[n].occurrence, (move.rank or [0] * 99)[rows[n].item])
        )
        keys = {n: _key(move, n, rows[n]) for n in live}
        before = {n: held[move.source][n] for n in live}
        sums: Counter[Any] = Counter()
        for n in live:
            sums[keys[n]] += before[n]
        purse: dict[Any, Fraction] = {}
        for n in live:
            group = [m for m in live if keys[m] == keys[n]]
            moved = _moved(move, rows, n, group, before, sums[keys[n]], purse, keys[n])
            held[move.source][n] -= moved
            held[move.reason][n] += moved
    return held


def _moved(move: Move, rows: list[Row], n: int, group: list[int], before: dict[int, Fraction],
           whole: Fraction, purse: dict[Any, Fraction], key: Any) -> Fraction:  # fmt: skip
    how, item, x = move.how, rows[n].item, before[n]
    if isinstance(how, Share):
        above = how.above[item] if how.above else None
        return Fraction(0) if how.above and whole <= (above or 0) else x * (how.part[item] or 0)
    room = min(x, purse.setdefault(key, _size(move, rows, item, group, before, whole)))
    purse[key] -= room
    return room if isinstance(how, UpTo) else x - room


def _size(move: Move, rows: list[Row], item: int, group: list[int], before: dict[int, Fraction],
          whole: Fraction) -> Fraction:  # fmt: skip
    cap = move.how.cap  # type: ignore[union-attr]
    if isinstance(cap, OfTotal):
        size = max(whole * (cap.ratio[item] or 0), cap.least[item] or 0)
        return size if cap.most[item] is None else min(size, cap.most[item] or 0)
    if isinstance(cap, Highest):
        return max([cap.amount[rows[m].item] or 0 for m in group if before[m]], default=Fraction(0))
    return cap[item] or Fraction(0)


def _applies(move: Move, row: Row) -> bool:
    since = move.since[row.item] if move.since else None
    before = move.before[row.item] if move.before else None
    in_time = (since is None or row.day >= since) and (before is None or row.day < before)
    return move.touches[row.item] and in_time


def _key(move: Move, n: int, row: Row) -> Any:
    scope = {"loss": n, "occurrence": (row.year, row.occurrence), "year": row.year}
    return scope[move.how.per], 0 if move.how.per == "loss" else move.purses[row.item]
