"""Cells: any question about office, broker, province and month is answered by adding up few."""

from __future__ import annotations

from itertools import product

from hypothesis import given
from hypothesis import strategies as st

from quarterday.core.book.cells import BROKER, MONTH, OFFICE, PROVINCE, WHOLE, Cell, at, cells
from quarterday.core.book.sums import Sums, Work

PLACES = st.builds(
    lambda office, broker, province, month: Cell(WHOLE, office, broker, province, month),
    st.sampled_from(["", "north", "south"]), st.sampled_from(["Ann", "Ben"]),
    st.sampled_from(["ON", "QC"]), st.sampled_from(["", "2027-01", "2027-02"]),
)  # fmt: skip
LINES = st.lists(st.tuples(PLACES, st.integers(1, 9)), max_size=12)


def of(number: int) -> Sums:
    return Sums(work={"late": Work(number)})


@given(LINES)
def test_each_cell_is_the_sum_of_the_lines_that_lie_in_it(lines: list[tuple[Cell, int]]) -> None:
    made = list(cells((cell, of(number)) for cell, number in lines))
    found = dict(made)
    assert len(found) == len(made), "a cell stands once"
    for cell, sums in found.items():
        by_hand = sum(number for where, number in lines if at(cell.level, where) == cell)
        assert sums.work["late"].broker == by_hand


@given(LINES)
def test_every_combination_that_occurs_has_its_cell_on_every_level(
    lines: list[tuple[Cell, int]],
) -> None:
    found = {cell for cell, _ in cells((cell, of(number)) for cell, number in lines)}
    for level, (where, _) in product(range(WHOLE + 1), lines):
        assert at(level, where) in found


def test_a_level_names_what_it_is_cut_by_and_nothing_else() -> None:
    whole = Cell(WHOLE, "north", "Ann", "ON", "2027-01")
    assert at(0, whole) == Cell(0, "", "", "", "")
    assert at(OFFICE | MONTH, whole) == Cell(OFFICE | MONTH, "north", "", "", "2027-01")
    assert at(BROKER | PROVINCE, whole) == Cell(BROKER | PROVINCE, "", "Ann", "ON", "")


def test_a_book_without_files_has_no_cells() -> None:
    assert list(cells([])) == []
