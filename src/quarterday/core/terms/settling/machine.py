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
from quarterday.core.terms.settling.rows import (
    ByItem,
    Codes,
    Column,
    Flags,
    Kind,
    Numbers,
    Per,
    Rows,
    Runs,
    kind_of,
)
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

    @property
    def bounded(self) -> ByItem:
        """One for each item that has a most."""
        return tuple(None if most is None else Fraction(1) for most in self.most)


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

    @cached_property
    def _steps(self) -> tuple[_Step, ...]:
        return tuple(map(_Step, self.moves))

    @property
    def touches(self) -> tuple[Flags, ...]:
        """Which items each move touches."""
        return tuple(step.flags for step in self._steps)

    @cached_property
    def _numbers(self) -> dict[Kind, Numbers]:
        """The parameters as numbers of each kind that was asked for."""
        return {}

    def settle(self, rows: Rows, *, log: bool = False) -> Settled:
        """Return ``rows`` settled; with ``log`` the record of the moves comes along.

        Rows without days cannot meet a clause that turns on a date (ValueError), nor can an item
        that the plan does not know.
        """
        if len(rows) and not 0 <= int(rows.item.min()) <= int(rows.item.max()) < self.size:
            raise ValueError("A row names an item that the plan does not know.")
        kind = kind_of(rows.amount)
        numbers = self._numbers.setdefault(kind, Numbers(kind))
        buckets: dict[str, Column] = {CLAIM: rows.amount.copy()}
        for name in (n for n in self.payers if n != CLAIM):
            buckets[name] = numbers.zeros(len(rows))
        record: list[Moved] = []
        blocks = ((slice(0, len(rows)), rows),) if log else rows.blocks
        for part, block in blocks:
            here = {name: column[part] for name, column in buckets.items()}
            self._run(block, numbers, here, record if log else None)
        return Settled(buckets, self.payers, tuple(record))

    def _run(
        self,
        rows: Rows,
        numbers: Numbers,
        buckets: Mapping[str, Column],
        record: list[Moved] | None,
    ) -> None:
        """Make the moves, in place."""
        for step in self._steps:
            move, touched = step.move, step.touched(rows, numbers)
            held = buckets[move.source]
            taken = touched.taken(move.how, held[touched.where])
            if record is not None:
                whole = numbers.zeros(len(rows))
                whole[touched.where] = taken
                record.append(Moved(move, whole, held.copy()))
            held[touched.where] -= taken
            buckets[move.reason][touched.where] += taken


@dataclass(frozen=True)
class _Step:
    """A move with what is worked out of it once, however many columns it is made on."""

    move: Move

    @cached_property
    def flags(self) -> Flags:
        """Whether it touches each item."""
        return np.array(self.move.touches, dtype=bool)

    @cached_property
    def key(self) -> tuple[Per, tuple[int, ...] | None, tuple[int, ...] | None, bytes]:
        """What tells rows and groups of its apart: moves that share it share those."""
        move = self.move
        return move.how.per, move.purse, move.rank, self.flags.tobytes()

    def touched(self, rows: Rows, numbers: Numbers) -> _Touched:
        """Return the rows the move touches and the groups they share purses in."""
        move, per = self.move, self.move.how.per

        def made() -> tuple[Codes | None, Runs]:
            picked = rows.touched(self.flags)
            if move.timed:
                picked = _on_its_days(move, rows, picked)
            return picked, rows.runs(per, move.purse, move.rank, picked)

        picked, runs = made() if move.timed else rows.kept(self.key, made)
        return _Touched(rows, picked, runs, numbers)


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


@dataclass(frozen=True, slots=True)
class _Touched:
    """The rows a move touches (``picked`` None: all), their groups, and the plan's numbers."""

    rows: Rows
    picked: Codes | None
    runs: Runs
    numbers: Numbers

    @property
    def where(self) -> Any:  # noqa: ANN401 - what NumPy takes between brackets
        """Where the rows stand in a column."""
        return slice(None) if self.picked is None else self.picked

    def taken(self, how: Share | UpTo | Beyond, x: Column) -> Column:
        """Return what a move takes of the amounts ``x`` that the rows hold."""
        if isinstance(how, Share):
            taken = x * self._each(how.part)
            return taken if how.above is None else self._above(how.above, x, taken)
        room = self._room(x, self._cap(how.cap, x))
        return room if isinstance(how, UpTo) else x - room

    def _each(self, values: ByItem) -> Any:  # noqa: ANN401 - one number, or one a row
        table = self.numbers.table(values)
        return table[0] if len(table) == 1 else table.take(self.rows.items(self.picked))

    def _above(self, above: ByItem, x: Column, taken: Column) -> Column:
        """Return nothing for groups that hold no more than ``above``."""
        small = self.runs.over(np.add, x) <= self._each(above)
        spared: Column = np.where(small, self.numbers.zeros(len(x)), taken)
        return spared

    def _room(self, x: Column, cap: Any) -> Column:  # noqa: ANN401 - one cap, or one a row
        """Return how much of each row finds room in its purse of size ``cap``."""
        runs = self.runs
        if runs.start is None:
            room: Column = np.minimum(x, cap)
            return room
        x = runs.sorted(x)
        cap = runs.sorted(cap) if np.ndim(cap) else cap
        run = runs.running(x)
        room = np.minimum(run, cap) - np.minimum(run - x, cap)
        return runs.restored(np.minimum(room, x))  # floats: never more than there is

    def _cap(self, cap: Cap, x: Column) -> Any:  # noqa: ANN401 - one cap, or one a row
        match cap:
            case OfTotal():
                amount = self.runs.over(np.add, x) * self._each(cap.ratio)
                amount = np.maximum(amount, self._each(cap.least))
                return np.where(
                    self._each(cap.bounded) > 0, np.minimum(amount, self._each(cap.most)), amount
                )
            case Highest():
                held = np.where(x > 0, self._each(cap.amount), self.numbers.zeros(len(x)))
                return self.runs.over(np.maximum, held)
            case _:
                return self._each(cap)
