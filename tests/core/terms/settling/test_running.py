"""Running totals within groups: exact where groups are short, one long sum elsewhere."""

from __future__ import annotations

from fractions import Fraction
from itertools import accumulate, groupby

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterday.core.terms.settling.rows import SHORT, runs_of


@given(st.lists(st.tuples(st.integers(0, 5), st.integers(0, 10**6)), min_size=1, max_size=60))
def test_totals_run_within_each_group_of_any_length(rows: list[tuple[int, int]]) -> None:
    """Against a sum written out group by group, in exact numbers."""
    rows = sorted(rows, key=lambda row: row[0])
    amounts = [Fraction(amount, 7) for _, amount in rows]
    runs = runs_of(np.array([group for group, _ in rows]))
    wanted: list[Fraction] = []
    for _, own in groupby(zip(rows, amounts, strict=True), key=lambda pair: pair[0][0]):
        wanted += accumulate(amount for _, amount in own)
    if runs.start is None:
        assert wanted == amounts
    else:
        assert list(runs.running(np.array(amounts, dtype=object))) == wanted


@pytest.mark.parametrize("length", [2, 3, SHORT])
def test_many_short_groups_leave_no_noise_in_floats(length: int) -> None:
    """One sum over a hundred thousand rows of a million would be off by more than a millionth."""
    groups = np.repeat(np.arange(100_000 // length), length)
    column = np.full(len(groups), 1e6 / 3)
    run = runs_of(groups).running(column)
    assert (run.reshape(-1, length) == np.cumsum(np.full(length, 1e6 / 3))).all()


def test_a_long_group_is_summed_at_once() -> None:
    groups = np.repeat([0, 1], [SHORT + 1, 2])
    runs = runs_of(groups)
    assert runs.later is None
    assert runs.running(np.ones(len(groups))).tolist() == [*range(1, SHORT + 2), 1, 2]
