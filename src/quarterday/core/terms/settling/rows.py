"""Losses as columns: one row an amount, sorted by year and occurrence.

The same columns hold floats for millions of rows, or Decimals or Fractions for exactness.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from decimal import Decimal
from fractions import Fraction
from functools import cached_property
from typing import Any, Literal

import numpy as np
from numpy.typing import NDArray

Per = Literal["loss", "occurrence", "year"]
Column = NDArray[Any]  # float64, or objects that are all Decimal or all Fraction
Codes = NDArray[np.int64]
Flags = NDArray[np.bool_]
ByItem = tuple[Fraction | None, ...]  # one entry an item; None: the move leaves the item alone
BLOCK = 1 << 15  # rows whose columns stay in a processor's cache


@dataclass(frozen=True, slots=True)
class Runs:
    """Rows in groups: ``order`` sorts them (None: sorted already), ``first`` begins each group.

    ``start`` holds for each sorted row the first row of its group.
    """

    order: Codes | None
    first: Codes
    start: Codes

    @property
    def single(self) -> bool:
        """Whether every group has one row."""
        return len(self.first) == len(self.start)

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

    def over(self, combine: Any, column: Column) -> Column:  # noqa: ANN401 - a NumPy ufunc
        """Return for each row what ``combine`` makes of its whole group."""
        if not len(column):
            return column
        sizes = np.diff(np.append(self.first, len(column)))
        of_group = combine.reduceat(self.sorted(column), self.first)
        return self.restored(np.repeat(of_group, sizes))


def runs_of(group: Codes, finer: Codes | None = None) -> Runs:
    """Return the rows as groups of equal ``group``; within one they stand by ``finer``."""
    order = None
    if finer is not None:
        order = np.lexsort((finer, group))
    elif len(group) and (np.diff(group) < 0).any():
        order = np.argsort(group, kind="stable")
    ranked = group if order is None else group[order]
    begins = np.ones(len(ranked), dtype=bool)
    begins[1:] = ranked[1:] != ranked[:-1]
    first = np.flatnonzero(begins)
    return Runs(order, first, np.repeat(first, np.diff(np.append(first, len(ranked)))))


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
        if len(self.amount) and not (self.amount >= 0).all():
            raise ValueError("A loss cannot be negative, nor be no number.")
        later = np.diff(self.year)
        if (later < 0).any() or (np.diff(self.occurrence)[later == 0] < 0).any():
            raise ValueError("Losses must be sorted by year, and within it by occurrence.")

    def __len__(self) -> int:
        return len(self.amount)

    @cached_property
    def event(self) -> Codes:
        """The number of each row's occurrence among all, from 0."""
        changed = np.zeros(len(self), dtype=np.int64)
        changed[1:] = (np.diff(self.year) != 0) | (np.diff(self.occurrence) != 0)
        return np.cumsum(changed)

    @cached_property
    def exact(self) -> Callable[[Fraction], Any]:
        """What turns a parameter into a number of the columns' kind."""
        if self.amount.dtype != object:
            return float
        kind = type(self.amount[0]) if len(self) else Fraction
        return Fraction if kind is Fraction else _decimal

    @cached_property
    def zero(self) -> Any:  # noqa: ANN401 - of the columns' kind
        """Nothing, as a number of the columns' kind."""
        return self.exact(Fraction(0))

    def by_item(self, values: ByItem, rows: Codes | None) -> Column:
        """Return for each of ``rows`` (None: all) its item's value."""
        kind = np.float64 if self.amount.dtype != object else object
        table = np.array([self.exact(v or Fraction(0)) for v in values], dtype=kind)
        return table[0] if len(table) == 1 else table[self.items(rows)]

    def items(self, rows: Codes | None) -> Codes:
        """Return the items of ``rows``."""
        return self.item if rows is None else self.item[rows]

    def touched(self, flags: tuple[bool, ...]) -> Codes | None:
        """Return the rows whose item is flagged; None for all."""
        if all(flags):
            return None
        return np.flatnonzero(np.array(flags, dtype=bool)[self.item])

    def runs(
        self,
        per: Per,
        purse: tuple[int, ...] | None,
        rank: tuple[int, ...] | None,
        rows: Codes | None,
    ) -> Runs:
        """Return ``rows`` as groups that share one purse a loss, an occurrence or a year."""
        if per == "loss":
            every = np.arange(len(self) if rows is None else len(rows))
            return Runs(None, every, every)
        group = _of(self.event if per == "occurrence" else self.year, rows)
        item = self.items(rows)
        if purse is not None and len(set(purse)) > 1:
            group = group * (max(purse) + 1) + np.array(purse)[item]
        if rank is None:
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


def _decimal(value: Fraction) -> Decimal:
    return Decimal(value.numerator) / value.denominator
