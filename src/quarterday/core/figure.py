"""A value that explains itself: what it is, how it came about, and from what."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from typing import Literal

from quarterday.core.file.entry import Origin
from quarterday.core.money import Money
from quarterday.core.words import Rate, Term, Words

Value = Money | Rate | Term | Decimal | int | date | str | bool
Unit = Literal[
    "money", "rate", "ratio", "index", "days", "months", "years", "date", "m2", "count", "text"
]


@dataclass(frozen=True, slots=True)
class Source:
    """Where a published value was read: document, publisher, place in it, and when checked."""

    title: str
    publisher: str
    place: str = ""
    link: str = ""
    checked_on: date | None = None


@dataclass(frozen=True, slots=True)
class Fact:
    """Something the file holds: its value and where it came from."""

    id: str
    value: Value
    unit: Unit
    label: Words
    origin: Origin
    recorded_on: date


@dataclass(frozen=True, slots=True)
class Parameter:
    """A dated value of the reference data; ``illustrative`` when it is not a published figure."""

    id: str
    value: Value
    unit: Unit
    label: Words
    source: Source
    since: date
    illustrative: bool = False


@dataclass(frozen=True, slots=True)
class Figure:
    """A computed value with its label, its formula in words, and everything it was made from."""

    id: str
    value: Value
    unit: Unit
    label: Words
    how: Words
    inputs: tuple[Figure | Fact | Parameter, ...] = ()
    caution: Words | None = None

    @property
    def money(self) -> Money:
        """The value as money; TypeError when the figure is something else."""
        if not isinstance(self.value, Money):
            raise TypeError(f"{self.id} is not an amount of money.")
        return self.value

    @property
    def number(self) -> Decimal:
        """The value as a plain number; TypeError when the figure is something else."""
        if isinstance(self.value, Rate):
            return self.value.value
        if isinstance(self.value, Decimal | int):
            return Decimal(self.value)
        raise TypeError(f"{self.id} is not a number.")


Node = Figure | Fact | Parameter


def walk(node: Node, depth: int = 0) -> Iterator[tuple[int, Node]]:
    """Yield ``node`` and all it was made from, depth first, each with its depth."""
    yield depth, node
    for child in getattr(node, "inputs", ()):
        yield from walk(child, depth + 1)


def parameters_used(figures: Iterable[Node]) -> tuple[Parameter, ...]:
    """Return every parameter behind ``figures``, each once, in order of id."""
    found = {n.id: n for f in figures for _, n in walk(f) if isinstance(n, Parameter)}
    return tuple(found[key] for key in sorted(found))
