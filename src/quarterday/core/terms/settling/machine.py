"""The machine: terms as moves of money between named buckets.

A plan is an ordered list of moves. Each takes money out of one bucket (``claim`` holds the loss at
first) and puts it into another, named after the reason. What is left in ``claim`` the insurer pays.
One loss is a column of length one, and its explanation is the record of the moves.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from functools import cached_property
from typing import Any, Literal

import numpy as np

from quarterday.core.given import Unusable
from quarterday.core.terms.settling.rows import ByItem, Codes, Column, Per, Rows, Runs
from quarterday.core.words import Arg, Words, words

CLAIM = "claim"
Payer = Literal["organisation", "insurer"]
Days = tuple[int | None, ...]  # one entry an item, as proleptic ordinals; None: on every day


@dataclass(frozen=True, slots=True)
class OfTotal:
    """A cap that is a ratio of what the purse's rows hold, within ``least`` and ``most``."""

    ratio: ByItem
    least: ByItem
    most: ByItem  # None: no most


@dataclass(frozen=True, slots=True)
class Highest:
    """A cap that is the highest amount among the purse's rows that hold money."""

    amount: ByItem


Cap = ByItem | OfTotal | Highest


@dataclass(frozen=True, slots=True)
class Share:
    """A part (0 to 1) moves; ``above``: only where the purse's rows hold more than this."""

    part: ByItem
    above: ByItem | None = None
    per: Per = "occurrence"

    @property
    def amounts(self) -> ByItem:
        """What tells the items that the move touches."""
        return self.part


@dataclass(frozen=True, slots=True)
class UpTo:
    """Money moves until the purse, filled afresh each loss, occurrence or year, is empty."""

    cap: Cap
    per: Per = "occurrence"

    @property
    def amounts(self) -> ByItem:
        """What tells the items that the move touches."""
        return _amounts(self.cap)


@dataclass(frozen=True, slots=True)
class Beyond:
    """Money moves that finds no room in the purse, emptied each loss, occurrence or year."""

    cap: Cap
    per: Per = "occurrence"

    @property
    def amounts(self) -> ByItem:
        """What tells the items that the move touches."""
        return _amounts(self.cap)


def _amounts(cap: Cap) -> ByItem:
    match cap:
        case OfTotal():
            return cap.ratio
        case Highest():
            return cap.amount
        case _:
            return cap


@dataclass(frozen=True, slots=True)
class Note:
    """What a step says of one item: its wording, the clause behind it, and its figures."""

    said: str
    coverage: str
    location: str
    fields: tuple[str, ...] = ()
    args: tuple[tuple[str, Arg | Words], ...] = ()


@dataclass(frozen=True, slots=True)
class Move:
    """One move of money from the bucket ``source`` to the bucket ``reason``.

    Items with the same number in ``purse`` share a purse (None: all do); within an occurrence the
    smaller ``rank`` comes first. ``since`` and ``before`` bound the days of loss it applies to
    (closed and open). ``notes`` holds what its step says of each item.
    """

    reason: str
    how: Share | UpTo | Beyond
    source: str = CLAIM
    paid_by: Payer = "organisation"
    purse: tuple[int, ...] | None = None
    rank: tuple[int, ...] | None = None
    since: Days | None = None
    before: Days | None = None
    notes: tuple[Note | None, ...] = ()

    def __post_init__(self) -> None:
        how = self.how
        if isinstance(how, Share):
            if any(part is not None and not 0 <= part <= 1 for part in how.part):
                raise ValueError(f"A share lies from 0 to 1 ({self.reason}).")
            return
        if any(amount is not None and amount < 0 for amount in how.amounts):
            raise ValueError(f"A cap cannot be negative ({self.reason}).")
        if how.per != "loss" and not isinstance(how.cap, OfTotal | Highest):
            self._one_cap_a_purse(how.amounts)

    def _one_cap_a_purse(self, amounts: ByItem) -> None:
        """Refuse a purse of several sizes: nobody could say how much is left in it."""
        sizes: dict[int, Fraction] = {}
        for number, amount in zip(self.purses, amounts, strict=True):
            if amount is not None and sizes.setdefault(number, amount) != amount:
                raise ValueError(f"Items that share a purse share its size ({self.reason}).")

    @property
    def purses(self) -> tuple[int, ...]:
        """The number of each item's purse."""
        return self.purse or (0,) * len(self.how.amounts)

    @property
    def touches(self) -> tuple[bool, ...]:
        """Whether the move touches each item."""
        return tuple(amount is not None for amount in self.how.amounts)

    @property
    def timed(self) -> bool:
        """Whether the move turns on the day of loss."""
        return self.since is not None or self.before is not None


@dataclass(frozen=True, slots=True)
class Moved:
    """What a move did: for each row what moved, and what the source held before."""

    move: Move
    moved: Column
    before: Column


@dataclass(frozen=True, slots=True)
class Settled:
    """Columns settled: what each bucket holds, and the record of the moves where it was kept."""

    buckets: Mapping[str, Column]
    payers: Mapping[str, Payer]
    log: tuple[Moved, ...] = ()

    def _sum(self, payer: Payer) -> Column:
        columns = [c for name, c in self.buckets.items() if self.payers[name] == payer]
        first, *rest = columns or [self.buckets[CLAIM] * 0]
        for column in rest:
            first = first + column
        return first

    @property
    def paid(self) -> Column:
        """What the insurer pays of each row."""
        return self._sum("insurer")

    @property
    def borne(self) -> Column:
        """What the organisation bears of each row."""
        return self._sum("organisation")


@dataclass(frozen=True)
class Plan:
    """Terms made executable for ``size`` items.

    Unusable where a reason would have two payers.
    """

    size: int
    moves: tuple[Move, ...]

    def __post_init__(self) -> None:
        for move in self.moves:
            if self.payers[move.reason] != move.paid_by:
                raise Unusable(words("settling-refused-two-payers-reason", reason=move.reason))
            if len(move.how.amounts) != self.size:
                raise ValueError(f"The move {move.reason} does not know all items.")

    @cached_property
    def payers(self) -> Mapping[str, Payer]:
        """Who pays what lies in each bucket."""
        found: dict[str, Payer] = {CLAIM: "insurer"}
        for move in self.moves:
            found.setdefault(move.reason, move.paid_by)
        for move in self.moves:  # what no move fills is empty
            found.setdefault(move.source, "organisation")
        return found

    def settle(self, rows: Rows, *, log: bool = False) -> Settled:
        """Return ``rows`` settled; with ``log`` the record of the moves comes along.

        Rows without days cannot meet a clause that turns on a date (ValueError), nor can an item
        that the plan does not know.
        """
        if len(rows) and not 0 <= int(rows.item.min()) <= int(rows.item.max()) < self.size:
            raise ValueError("A row names an item that the plan does not know.")
        if log:
            record: list[Moved] = []
            return Settled(self._run(rows, record), self.payers, tuple(record))
        parts = [(part, self._run(block, None)) for part, block in rows.blocks]
        if len(parts) == 1:
            return Settled(parts[0][1], self.payers)
        whole = {name: np.empty(len(rows), rows.amount.dtype) for name in parts[0][1]}
        for part, buckets in parts:
            for name, column in buckets.items():
                whole[name][part] = column
        return Settled(whole, self.payers)

    def _run(self, rows: Rows, record: list[Moved] | None) -> dict[str, Column]:
        buckets: dict[str, Column] = {CLAIM: rows.amount}
        for name in (n for n in self.payers if n != CLAIM):
            buckets[name] = np.full(len(rows), rows.zero, rows.amount.dtype)
        for move in self.moves:
            picked, runs = _picked(move, rows)
            held = buckets[move.source]
            x = held if picked is None else held[picked]
            taken = _taken(move, rows, picked, runs, x)
            if record is not None:
                record.append(Moved(move, _spread(rows, picked, taken), held))
            _transfer(buckets, move, picked, taken)
        return buckets


def _transfer(buckets: dict[str, Column], move: Move, picked: Codes | None, taken: Column) -> None:
    """Move ``taken`` between the buckets; the loss's own column is never written to."""
    if picked is None:
        buckets[move.source] = buckets[move.source] - taken
        buckets[move.reason] = buckets[move.reason] + taken
        return
    for name, change in ((move.source, -taken), (move.reason, taken)):
        column = buckets[name].copy()
        column[picked] += change
        buckets[name] = column


def _spread(rows: Rows, picked: Codes | None, taken: Column) -> Column:
    if picked is None:
        return taken
    whole = np.full(len(rows), rows.zero, rows.amount.dtype)
    whole[picked] = taken
    return whole


def _picked(move: Move, rows: Rows) -> tuple[Codes | None, Runs]:
    """Return the rows a move touches (None: all) and the groups they share purses in."""
    how = move.how

    def made() -> tuple[Codes | None, Runs]:
        picked = rows.touched(move.touches)
        if move.timed:
            picked = _on_its_days(move, rows, picked)
        return picked, rows.runs(how.per, move.purse, move.rank, picked)

    if move.timed:
        return made()
    return rows.kept((how.per, move.purse, move.rank, move.touches), made)


def _on_its_days(move: Move, rows: Rows, picked: Codes | None) -> Codes:
    if rows.day is None:
        raise ValueError(f"The clause behind {move.reason} turns on a date; give the days.")
    picked = np.arange(len(rows)) if picked is None else picked
    day, item = rows.day[picked], rows.item[picked]
    keep = np.ones(len(picked), dtype=bool)
    if move.since is not None:
        keep &= day >= np.array([d or 0 for d in move.since])[item]
    if move.before is not None:
        never = np.iinfo(np.int64).max
        keep &= day < np.array([never if d is None else d for d in move.before])[item]
    return picked[keep]


def _taken(move: Move, rows: Rows, picked: Codes | None, runs: Runs, x: Column) -> Column:
    """Return what the move takes of the amounts ``x`` that its rows hold."""
    how = move.how
    if isinstance(how, Share):
        part = rows.by_item(how.part, picked)
        if how.above is None:
            return x * part
        small = runs.over(np.add, x) <= rows.by_item(how.above, picked)
        return np.where(small, rows.zero, x * part)
    room = _in_room(x, _cap(how.cap, rows, picked, runs, x), runs)
    return room if isinstance(how, UpTo) else x - room


def _in_room(x: Column, cap: Any, runs: Runs) -> Column:  # noqa: ANN401 - one cap, or one a row
    """Return how much of each row finds room in its purse of size ``cap``."""
    if runs.single and runs.order is None:
        return np.minimum(x, cap)  # type: ignore[no-any-return]
    x = runs.sorted(x)
    cap = runs.sorted(cap) if np.ndim(cap) else cap
    run = np.cumsum(x)
    run -= (run - x)[runs.start]
    room = np.minimum(run, cap) - np.minimum(run - x, cap)
    return runs.restored(np.minimum(room, x))  # floats: never more than there is


def _cap(cap: Cap, rows: Rows, picked: Codes | None, runs: Runs, x: Column) -> Any:  # noqa: ANN401
    match cap:
        case OfTotal():
            amount = runs.over(np.add, x) * rows.by_item(cap.ratio, picked)
            amount = np.maximum(amount, rows.by_item(cap.least, picked))
            bounded = tuple(None if m is None else Fraction(1) for m in cap.most)
            most = np.minimum(amount, rows.by_item(cap.most, picked))
            return np.where(rows.by_item(bounded, picked) > 0, most, amount)
        case Highest():
            held = np.where(x > 0, rows.by_item(cap.amount, picked), rows.zero)
            return runs.over(np.maximum, held)
        case _:
            return rows.by_item(cap, picked)
