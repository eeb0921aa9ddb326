"""A rounded two-way table adds up both ways, and no cell, row or column is a cent off."""

from __future__ import annotations

from collections.abc import Mapping
from decimal import Decimal
from fractions import Fraction
from random import Random

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from quarterday.core.premium.rounding import TwoWay, controlled, to_margins

CENT = Decimal("0.01")
Table = dict[tuple[str, str], Fraction]
fractions = st.fractions(min_value=-50, max_value=5000, max_denominator=997)
sparse = st.one_of(fractions, fractions, st.just(Fraction(0)), st.integers(0, 3).map(Fraction))


@st.composite
def tables(draw: st.DrawFn, most: int = 7) -> Table:
    rows, columns = draw(st.integers(1, most)), draw(st.integers(1, most))
    cells = [(f"r{r}", f"c{c}") for r in range(rows) for c in range(columns)]
    kept = draw(st.lists(st.booleans(), min_size=len(cells), max_size=len(cells)))
    found = {cell: draw(sparse) for cell, keep in zip(cells, kept, strict=True) if keep}
    return found or {("r0", "c0"): draw(fractions)}


def is_next_to(rounded: Decimal, exact: Fraction) -> bool:
    """Whether a rounded value is the whole cent just below or above, and equal when exact is."""
    cents = exact * 100
    return rounded == rounded.quantize(CENT) and (
        Fraction(rounded) == exact
        if cents.denominator == 1
        else abs(Fraction(rounded) * 100 - cents) < 1
    )


def sums(exact: Mapping[tuple[str, str], Fraction], at: int) -> dict[str, Fraction]:
    found: dict[str, Fraction] = {}
    for cell, value in exact.items():
        found[cell[at]] = found.get(cell[at], Fraction(0)) + value
    return found


def check(exact: Table) -> None:
    done = TwoWay(controlled(exact))
    assert done.cells.keys() == exact.keys()
    assert all(is_next_to(done.cells[cell], value) for cell, value in exact.items())
    assert all(is_next_to(done.rows()[row], value) for row, value in sums(exact, 0).items())
    assert all(is_next_to(done.columns()[c], value) for c, value in sums(exact, 1).items())
    assert is_next_to(done.total, sum(exact.values(), Fraction(0)))


@settings(max_examples=300, deadline=None)
@given(tables())
def test_every_cell_row_column_and_the_total_is_within_a_cent_of_its_exact_value(
    exact: Table,
) -> None:
    check(exact)


@pytest.mark.parametrize("seed", range(6))
def test_it_holds_for_thousands_of_tables_with_empty_and_whole_cells(seed: int) -> None:
    chance = Random(seed)
    for _ in range(500):
        rows, columns = chance.randint(1, 6), chance.randint(1, 6)
        cells = [(f"r{r}", f"c{c}") for r in range(rows) for c in range(columns)]
        filled = [cell for cell in cells if chance.random() < 0.8] or cells
        check({cell: Fraction(chance.randint(-200, 9000), chance.choice([1, 7, 100, 300, 365]))
               for cell in filled})  # fmt: skip


@settings(max_examples=200, deadline=None)
@given(tables(), st.randoms(use_true_random=False))
def test_the_order_of_rows_and_columns_does_not_matter(exact: Table, chance: object) -> None:
    shuffled = list(exact.items())
    chance.shuffle(shuffled)  # type: ignore[attr-defined]
    assert controlled(dict(shuffled)) == controlled(exact)


margins = st.lists(st.integers(0, 10**6), min_size=1, max_size=9)


@settings(max_examples=500, deadline=None)
@given(margins.filter(any), st.data())
def test_margins_that_are_billed_already_come_out_as_they_are(
    rows: list[int], data: st.DataObject
) -> None:
    whole = sum(rows)
    cuts = sorted(data.draw(st.lists(st.integers(0, whole), max_size=6)))
    columns = [b - a for a, b in zip([0, *cuts], [*cuts, whole], strict=True)]
    by_row = {f"r{n}": Decimal(cents) / 100 for n, cents in enumerate(rows)}
    by_column = {f"c{n}": Decimal(cents) / 100 for n, cents in enumerate(columns)}
    done = TwoWay(to_margins(by_row, by_column))
    assert (done.rows(), done.columns()) == (by_row, by_column)
    for (r, c), amount in done.cells.items():
        exact = Fraction(by_row[r]) * Fraction(by_column[c]) / Fraction(whole, 100)
        assert is_next_to(amount, exact)


def test_two_halves_on_a_diagonal_cannot_be_rounded_apart() -> None:
    """Row sums 1 and 0 with column sums 0 and 1 would be impossible; the table knows it."""
    half = Fraction(1, 200)
    done = controlled({("a", "x"): half, ("b", "y"): half})
    assert sorted(done.values()) in ([Decimal(0), CENT], [CENT, CENT], [Decimal(0), Decimal(0)])
    assert is_next_to(sum(done.values(), Decimal(0)), 2 * half)
    assert sum(done.values()) == CENT  # the total was a whole cent and stays one


def test_a_table_of_whole_cents_stays_as_it_is() -> None:
    exact = {("a", "x"): Fraction(5), ("a", "y"): Fraction(-3, 100), ("b", "x"): Fraction(0)}
    assert controlled(exact) == {cell: Decimal(v.numerator) / v.denominator
                                 for cell, v in exact.items()}  # fmt: skip


def test_a_table_can_be_rounded_to_whole_dollars() -> None:
    exact = {(r, c): Fraction(10, 3) for r in "ab" for c in "xyz"}
    done = TwoWay(controlled(exact, Decimal(1)))
    assert set(done.cells.values()) == {Decimal(3), Decimal(4)}
    assert done.rows() == {"a": Decimal(10), "b": Decimal(10)}
    assert set(done.columns().values()) <= {Decimal(6), Decimal(7)}


def test_rounding_stays_close_on_the_whole() -> None:
    """12 × 30 cells of thirds: the mean distance is near the quarter of a cent of free rounding."""
    exact = {(r, c): Fraction(r * 31 + c * 17 + 1, 700) for r in range(12) for c in range(30)}
    done = controlled(exact)
    off = sum(abs(Fraction(done[cell]) - value) for cell, value in exact.items()) / len(exact)
    assert off < Fraction(3, 1000)


@pytest.mark.parametrize(
    ("rows", "columns"), [({"a": 1}, {"x": 2}), ({"a": 0}, {"x": 0}), ({}, {"x": 1})]
)
def test_margins_of_different_sums_are_refused(
    rows: dict[str, int], columns: dict[str, int]
) -> None:
    with pytest.raises(ValueError, match="same sum"):
        to_margins({k: Decimal(v) for k, v in rows.items()},
                   {k: Decimal(v) for k, v in columns.items()})  # fmt: skip
