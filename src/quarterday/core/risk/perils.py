"""The ways an organisation can lose: how often, how much, and what of it is lost.

A loss of one size divides into parts by layers: the building and its contents in proportion to
their values up to a total loss, and what today's building rules add beyond that.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property

import numpy as np

from quarterday.core.risk.curves import Codes
from quarterday.core.risk.severity import Capped, Floats
from quarterday.core.terms.losses.loss import HOURS_A_MONTH
from quarterday.core.terms.settling.routing import Item
from quarterday.core.terms.settling.rows import Flags, Rows


@dataclass(frozen=True, slots=True)
class Layered:
    """A part of a loss: ``share`` of what lies between ``start`` and ``end`` of its size.

    Of lost income ``month`` and ``hours`` say which time of the closure it is of.
    """

    component: str
    share: float
    start: float
    end: float
    month: int = 1
    hours: int = HOURS_A_MONTH


@dataclass(frozen=True, slots=True)
class Peril:
    """A cause at a place: ``rate`` losses a year of this ``severity``, and how they divide."""

    cause: str
    place: str
    rate: float
    severity: Capped
    parts: tuple[Layered, ...]

    @property
    def name(self) -> str:
        """What tells it from the others; its random numbers are keyed by it."""
        return f"{self.cause}@{self.place}"

    @property
    def marks(self) -> Floats:
        """The sizes at which its parts begin and end."""
        ends = (
            {0.0, self.severity.most} | {p.start for p in self.parts} | {p.end for p in self.parts}
        )
        return np.array(sorted(size for size in ends if size <= self.severity.most))

    @property
    def items(self) -> tuple[Item, ...]:
        """What its parts are to the terms."""
        return tuple(
            Item(part.component, self.place, self.cause, part.month, part.hours)
            for part in self.parts
        )

    @property
    def steepest(self) -> float:
        """The most that all parts together grow by with each dollar of its size."""
        marks = self.marks
        return max(
            (sum(p.share for p in self.parts if p.start <= at < p.end) for at in marks[:-1]),
            default=0.0,
        )


@dataclass(frozen=True)
class Model:
    """All perils of an account, and how their losses become rows for the terms."""

    perils: tuple[Peril, ...]

    @cached_property
    def items(self) -> tuple[Item, ...]:
        """The items of all perils, each once."""
        return tuple(dict.fromkeys(item for peril in self.perils for item in peril.items))

    @cached_property
    def holds(self) -> Flags:
        """Whether each peril, a row, has each item, a column."""
        numbers = {item: n for n, item in enumerate(self.items)}
        found = np.zeros((len(self.perils), len(numbers)), dtype=bool)
        for row, peril in enumerate(self.perils):
            found[row, [numbers[item] for item in peril.items]] = True
        return found

    @cached_property
    def _layers(self) -> tuple[Floats, Floats, Floats, Codes]:
        """Share, start, end and item of each part, a row a peril; a share of 0 fills the row."""
        most = max((len(peril.parts) for peril in self.perils), default=0)
        shape = (len(self.perils), most)
        share, start, end = np.zeros(shape), np.zeros(shape), np.zeros(shape)
        item = np.zeros(shape, dtype=np.int64)
        numbers = {item: n for n, item in enumerate(self.items)}
        for row, peril in enumerate(self.perils):
            for column, part in enumerate(peril.parts):
                share[row, column], start[row, column] = part.share, part.start
                end[row, column], item[row, column] = part.end, numbers[peril.items[column]]
        return share, start, end, item

    def rows(
        self, peril: Codes, size: Floats, year: Codes, day: Codes | None = None
    ) -> tuple[Rows, Codes]:
        """Return events as rows for the terms, and the event of each row.

        Events are sorted by ``year``; each is an occurrence of its own.
        """
        share, start, end, item = self._layers
        sizes = size[:, None]
        amount = share[peril] * (np.minimum(sizes, end[peril]) - np.minimum(sizes, start[peril]))
        event, column = np.nonzero(amount > 0)
        rows = Rows(
            amount=amount[event, column],
            item=item[peril[event], column],
            occurrence=event,
            year=year[event],
            day=None if day is None else day[event],
        )
        return rows, event
