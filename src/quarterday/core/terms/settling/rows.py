"""Losses as columns: one row an amount, sorted by year and occurrence.

The same columns hold floats for millions of rows, or Decimals or Fractions for exactness.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from decimal import Decimal
from fractions import Fraction
from functools import cached_property
from typing import Any, Literal, NamedTuple

import numpy as np
from numpy.typing import NDArray

Per = Literal["loss", "occurrence", "year"]
Column = NDArray[Any]  # float64, or objects that are all Decimal or all Fraction
Codes = NDArray[np.int64]
Flags = NDArray[np.bool_]
ByItem = tuple[Fraction | None, ...]  # one entry an item; None: the move leaves the item alone
NOTHING = Fraction(0)
SHORT = 8  # rows of a group that are added up one by one
BLOCK = 1 << 15  # rows whose columns stay in a processor's cache


@dataclass(frozen=True, slots=True)
class Runs:
    """Rows in groups: ``order`` sorts them (None: sorted already), ``first`` begins each group.

    ``start`` holds for each sorted row the first row of its group, ``later`` the second rows of all
    groups, then the third rows and so on, where groups are short. All are None where every group
    has one row.
    """

    order: Codes | None = None
    first: Codes | None = None
    start: Codes | None = None
    later: tuple[Codes, ...] | None = None

    def sorted(self, column: Column) -> Column:
        """Return ``column`` in the order of the groups."""
        return column if self.order is None else column[self.order]

    def restored(self, column: Column) -> Column:
        """Return a sorted column in the order of the rows again."""
        if self.order is None:
            return column
        back = np.empty_like(column)
        back[self.order] = column
        return back

    def running(self, column: Column) -> Column:
        """Return the running total of a sorted column within each group.

        In short groups it is added up by row: one sum over all rows would leave cents of noise in
        floats once there are many.
        """
        if self.later is None:
            run = np.cumsum(column)
            run -= (run - column)[self.start]
            return run
        run = column.copy()
        for rows in self.later:
            run[rows] += run[rows - 1]
        return run

    def over(self, combine: Any, column: Column) -> Column:  # noqa: ANN401 - a NumPy ufunc
        """Return for each row what ``combine`` makes of its whole group."""
        if self.first is None:
            return column
        sizes = np.diff(np.append(self.first, len(column)))
        of_group = combine.reduceat(self.sorted(column), self.first)
        return self.restored(np.repeat(of_group, sizes))


SINGLE = Runs()


def runs_of(group: Codes, finer: Codes | None = None) -> Runs:
    """Return the rows as groups of equal ``group``; within one they stand by ``finer``."""
    order = None
    if finer is not None:
        order = np.lexsort((finer, group))
    elif (group[1:] < group[:-1]).any():
        order = np.argsort(group, kind="stable")
    ranked = group if order is None else group[order]
    begins = np.ones(len(ranked), dtype=bool)
    np.not_equal(ranked[1:], ranked[:-1], out=begins[1:])
    if begins.all():
        return SINGLE
    first = np.flatnonzero(begins)
    sizes = np.diff(np.append(first, len(ranked)))
    longest = int(sizes.max())
    later = None
    if longest <= SHORT:
        later = tuple(first[sizes > place] + place for place in range(1, longest))
    return Runs(order, first, np.repeat(first, sizes), later)


@dataclass(frozen=True)
class Rows:
    """Amounts lost, one a row, sorted by ``year`` and within it by ``occurrence``.

    ``item`` numbers what was lost among a plan's items; ``day`` is the day of the loss as a
    proleptic ordinal, and may be left out where no clause turns on a date.
    """

    amount: Column
    item: Codes
    occurrence: Codes
    year: Codes
    day: Codes | None = None
    _kept: dict[object, tuple[Codes | None, Runs]] = field(default_factory=dict, repr=False)

    def __post_init__(self) -> None:
        columns = (
            self.item,
            self.occurrence,
            self.year,
            *(() if self.day is None else (self.day,)),
        )
        if any(len(column) != len(self.amount) for column in columns):
            raise ValueError("All columns of losses must be equally long.")
        for start in range(0, len(self), BLOCK):
            self._check(slice(start, start + BLOCK + 1))

    def _check(self, part: slice) -> None:
        """Refuse what cannot be losses; block by block, as that is several times faster."""
        year, occurrence = self.year[part], self.occurrence[part]
        if not (self.amount[part] >= 0).all():
            raise ValueError("A loss cannot be negative, nor be no number.")
        earlier = (year[1:] == year[:-1]) & (occurrence[1:] < occurrence[:-1])
        if ((year[1:] < year[:-1]) | earlier).any():
            raise ValueError("Losses must be sorted by year, and within it by occurrence.")

    def __len__(self) -> int:
        return len(self.amount)

    @property
    def _goes_on(self) -> Flags:
        """Whether each row but the first belongs to the event of the row before."""
        year, occurrence = self.year, self.occurrence
        same: Flags = (year[1:] == year[:-1]) & (occurrence[1:] == occurrence[:-1])
        return same

    @cached_property
    def alone(self) -> bool:
        """Whether every row is an event of its own."""
        return not self._goes_on.any()

    @cached_property
    def event(self) -> Codes:
        """The number of each row's occurrence among all, from 0."""
        begins = np.zeros(len(self), dtype=np.int64)
        begins[1:] = ~self._goes_on
        return np.cumsum(begins)

    def items(self, rows: Codes | None) -> Codes:
        """Return the items of ``rows``."""
        return self.item if rows is None else self.item[rows]

    def touched(self, flags: Flags) -> Codes | None:
        """Return the rows whose item is flagged; None for all."""
        if flags.all():
            return None
        return np.flatnonzero(flags.take(self.item))

    def runs(
        self,
        per: Per,
        purse: tuple[int, ...] | None,
        rank: tuple[int, ...] | None,
        rows: Codes | None,
    ) -> Runs:
        """Return ``rows`` as groups that share one purse a loss, an occurrence or a year."""
        if per == "loss" or (per == "occurrence" and self.alone):
            return SINGLE
        group = _of(self.event if per == "occurrence" else self.year, rows)
        item = self.items(rows)
        if purse is not None and len(set(purse)) > 1:
            group = group * (max(purse) + 1) + np.array(purse)[item]
        if rank is None or self.alone:
            return runs_of(group)
        return runs_of(group, _of(self.event, rows) * (max(rank) + 1) + np.array(rank)[item])

    def kept(
        self, key: object, make: Callable[[], tuple[Codes | None, Runs]]
    ) -> tuple[Codes | None, Runs]:
        """Return what ``make`` made for ``key``, once: alternatives of terms share it."""
        if key not in self._kept:
            self._kept[key] = make()
        return self._kept[key]

    @cached_property
    def blocks(self) -> tuple[tuple[slice, Rows], ...]:
        """The rows in blocks of whole years, small enough to stay in a processor's cache."""
        if len(self) <= BLOCK:
            return ((slice(0, len(self)), self),)
        return tuple((part, self._part(part)) for part in self._slices())

    def _slices(self) -> Iterator[slice]:
        begins = np.flatnonzero(np.diff(self.year, prepend=self.year[0] - 1))
        wanted = np.arange(0, len(self), BLOCK)
        cuts = np.unique(begins[np.searchsorted(begins, wanted, side="right") - 1])
        yield from map(slice, cuts, [*cuts[1:], len(self)])

    def _part(self, part: slice) -> Rows:
        """Return a block as rows of their own; the whole was checked already."""
        found = object.__new__(Rows)
        day = None if self.day is None else self.day[part]
        values = (self.amount[part], self.item[part], self.occurrence[part], self.year[part], day)
        for name, value in zip(
            ("amount", "item", "occurrence", "year", "day"), values, strict=True
        ):
            object.__setattr__(found, name, value)
        object.__setattr__(found, "_kept", {})
        return found


def _of(column: Codes, rows: Codes | None) -> Codes:
    return column if rows is None else column[rows]


class Kind(NamedTuple):
    """What a column's numbers are: how one is made of a fraction, and the column's type."""

    of: Callable[[Fraction], Any]
    dtype: Any


def kind_of(amount: Column) -> Kind:
    """Return the kind of numbers that ``amount`` holds."""
    if amount.dtype != object:
        return Kind(float, np.float64)
    exact = bool(len(amount)) and isinstance(amount[0], Decimal)
    return Kind(_decimal if exact else Fraction, object)


@dataclass(frozen=True, slots=True)
class Numbers:
    """A plan's parameters as numbers of one kind; each tuple is turned into them once."""

    kind: Kind
    made: dict[int, tuple[ByItem, Column]] = field(default_factory=dict)

    def zeros(self, length: int) -> Column:
        """Return a column of nothing."""
        if self.kind.dtype is object:
            return np.full(length, self.kind.of(Fraction(0)), object)
        return np.zeros(length)

    def table(self, values: ByItem) -> Column:
        """Return one number an item; nothing for an item that is left alone."""
        if id(values) not in self.made:
            nothing = self.kind.of(NOTHING)
            told = [self.kind.of(value) if value else nothing for value in values]
            self.made[id(values)] = values, np.array(told, dtype=self.kind.dtype)
        return self.made[id(values)][1]


def _decimal(value: Fraction) -> Decimal:
    return Decimal(value.numerator) / value.denominator
