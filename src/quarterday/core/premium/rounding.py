"""Round a two-way table so that its cells, rows, columns and total still add up.

Every cell, every row sum, every column sum and the total becomes the whole unit just below or just
above its exact value; what is whole already stays. Such a rounding exists for every table in two
dimensions (the fractional table lies in a polytope whose corners are whole: its matrix is totally
unimodular), and for none in general with three. It is found by pushing a fraction round a closed
path of fractional cells until one of them is whole, in exact integers; each push takes the
direction that leaves the smaller squared distance from the exact table.

Source of the problem: L. H. Cox, "A constructive procedure for unbiased controlled rounding",
Journal of the American Statistical Association 82 (1987), 520-524 (from memory); the method of
walking cycles here is our own.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Hashable, Iterable, Mapping
from dataclasses import dataclass, field
from decimal import Decimal
from fractions import Fraction
from itertools import pairwise
from math import lcm
from typing import Generic, TypeVar

from quarterday.core.money import CENT

R = TypeVar("R", bound=Hashable)
C = TypeVar("C", bound=Hashable)
K = TypeVar("K", bound=Hashable)
Node = tuple[bool, int]
"""A row (True) or a column (False) by its number; the slack row and column come last."""


@dataclass
class _Grid:
    """The fractional parts of a table whose margins are whole, in numerators over ``whole``."""

    whole: int
    parts: dict[tuple[int, int], int]
    drift: dict[tuple[int, int], int] = field(default_factory=lambda: defaultdict(int))
    near: dict[Node, set[int]] = field(default_factory=lambda: defaultdict(set))

    def __post_init__(self) -> None:
        for (row, column), part in self.parts.items():
            if 0 < part < self.whole:
                self.near[True, row].add(column)
                self.near[False, column].add(row)

    def circuit(self) -> list[tuple[int, int]]:
        """Return a closed path of fractional cells, which turns at each; [] when all are whole."""
        start = next((n for n, cells in self.near.items() if cells), None)
        if start is None:
            return []
        path, at = [start], {start: 0}
        while True:
            node = self._next(path)
            if node in at:
                return _cells([*path[at[node] :], node])
            at[node] = len(path)
            path.append(node)

    def _next(self, path: list[Node]) -> Node:
        """Return where a path goes on: not back, which a whole margin always allows."""
        is_row, _ = here = path[-1]
        came = path[-2][1] if len(path) > 1 else None
        return not is_row, min(n for n in self.near[here] if n != came)

    def push(self, circuit: list[tuple[int, int]]) -> None:
        """Move a fraction round a circuit, up and down by turns, until one cell is whole."""
        up, down = circuit[::2], circuit[1::2]
        forth = min(*(self.whole - self.parts[c] for c in up), *(self.parts[c] for c in down))
        back = min(*(self.parts[c] for c in up), *(self.whole - self.parts[c] for c in down))
        lean = sum(self.drift[c] for c in up) - sum(self.drift[c] for c in down)
        farther = len(circuit) * forth**2 + 2 * forth * lean
        step = forth if farther <= len(circuit) * back**2 - 2 * back * lean else -back
        self._move(up, step)
        self._move(down, -step)

    def _move(self, cells: Iterable[tuple[int, int]], step: int) -> None:
        for row, column in cells:
            self.parts[row, column] += step
            self.drift[row, column] += step
            if self.parts[row, column] in (0, self.whole):
                self.near[True, row].discard(column)
                self.near[False, column].discard(row)


def _cells(nodes: list[Node]) -> list[tuple[int, int]]:
    """Return the cells on a path of rows and columns."""
    return [
        (here[1], there[1]) if here[0] else (there[1], here[1]) for here, there in pairwise(nodes)
    ]


def _with_slack(table: Mapping[tuple[int, int], Fraction], rows: int, columns: int) -> _Grid:
    """Return the fractional parts with a slack row and column that make every margin whole."""
    whole = lcm(*(value.denominator for value in table.values()))
    parts = {cell: int(value * whole) % whole for cell, value in table.items()}
    across: dict[int, int] = defaultdict(int)
    along: dict[int, int] = defaultdict(int)
    for (row, column), part in parts.items():
        across[row] += part
        along[column] += part
    corner = sum(parts.values()) % whole
    slack = {(row, columns): -part % whole for row, part in across.items()}
    slack |= {(rows, column): -part % whole for column, part in along.items()}
    return _Grid(whole, {**parts, **slack, (rows, columns): corner})


def _whole(table: Mapping[tuple[int, int], Fraction], rows: int, columns: int) -> _Grid:
    grid = _with_slack(table, rows, columns)
    while circuit := grid.circuit():
        grid.push(circuit)
    return grid


def controlled(
    exact: Mapping[tuple[R, C], Fraction], unit: Decimal = CENT
) -> dict[tuple[R, C], Decimal]:
    """Return ``exact`` (by row and column) in whole ``unit``s, margins kept as the module says.

    Cells that are not given are nothing and stay nothing. The order of rows and columns does not
    matter: they are taken by name.
    """
    rows = {row: n for n, row in enumerate(sorted({r for r, _ in exact}, key=str))}
    columns = {column: n for n, column in enumerate(sorted({c for _, c in exact}, key=str))}
    table = {(rows[r], columns[c]): value / Fraction(unit) for (r, c), value in exact.items()}
    grid = _whole(dict(sorted(table.items())), len(rows), len(columns))
    return {
        (r, c): (value // 1 + (grid.parts[rows[r], columns[c]] == grid.whole)) * unit
        for (r, c) in exact
        for value in [table[rows[r], columns[c]]]
    }


def to_margins(
    rows: Mapping[R, Decimal], columns: Mapping[C, Decimal], unit: Decimal = CENT
) -> dict[tuple[R, C], Decimal]:
    """Return a table whose rows and columns sum to what is given, in proportion to both.

    Both margins are whole units and have the same sum, not zero (ValueError otherwise).
    """
    whole = sum(map(Fraction, rows.values()), Fraction(0))
    if not whole or whole != sum(map(Fraction, columns.values()), Fraction(0)):
        raise ValueError("Rows and columns must have the same sum, and not zero.")
    shares = {
        (r, c): Fraction(row) * Fraction(column) / whole
        for r, row in rows.items()
        for c, column in columns.items()
    }
    return controlled(shares, unit)


@dataclass(frozen=True, slots=True)
class TwoWay(Generic[R, C]):
    """A table in whole units with its margins, which are the sums of its cells."""

    cells: Mapping[tuple[R, C], Decimal]

    def rows(self) -> dict[R, Decimal]:
        """Return the sum of each row, in the order of the cells."""
        return _summed((row, amount) for (row, _), amount in self.cells.items())

    def columns(self) -> dict[C, Decimal]:
        """Return the sum of each column, in the order of the cells."""
        return _summed((column, amount) for (_, column), amount in self.cells.items())

    @property
    def total(self) -> Decimal:
        """The sum of all cells."""
        return sum(self.cells.values(), Decimal(0))


def _summed(parts: Iterable[tuple[K, Decimal]]) -> dict[K, Decimal]:
    found: dict[K, Decimal] = {}
    for key, amount in parts:
        found[key] = found.get(key, Decimal(0)) + amount
    return found
