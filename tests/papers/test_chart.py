"""Charts as definitions: scales that hold their values, steps that end where they must."""

from __future__ import annotations

from datetime import date
from decimal import Decimal
from itertools import pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from quarterday.papers.chart import (
    Key,
    Over,
    Scale,
    Step,
    lines,
    stacked,
    waterfall,
)

D = Decimal
amounts = st.decimals(min_value=-(10**7), max_value=10**8, places=2)
positive = st.decimals(min_value=1, max_value=10**8, places=2)
RESOLUTION = 1e-4  # positions are kept to four places


@given(st.lists(amounts, min_size=1, max_size=8))
def test_a_scale_holds_its_values_and_zero_in_a_few_round_steps(values: list[D]) -> None:
    scale = Scale.over(values)
    assert scale.low <= min([*values, D(0)])
    assert scale.high >= max(values)
    assert (scale.high - scale.low) % scale.step == 0
    assert 1 <= (scale.high - scale.low) / scale.step <= 8
    assert str(scale.step.normalize().as_tuple().digits[0]) in "125"


def test_the_steps_of_a_scale_are_labelled_from_its_low_end_to_its_high_end() -> None:
    """0 to 1,320 in fifths is 264, so the next of 1, 2, 5 times a power of ten: 500."""
    ticks = Scale.over([D(1000), D(1320)]).ticks(str)
    assert [tick.label for tick in ticks] == ["0", "500", "1000", "1500"]
    assert [tick.at for tick in ticks] == [0, 0.3333, 0.6667, 1]


@settings(max_examples=60)
@given(positive, st.lists(amounts, min_size=1, max_size=6))
def test_a_waterfall_ends_where_its_last_total_stands(start: D, changes: list[D]) -> None:
    end = start + sum(changes, D(0))
    steps = [
        Step("before", start, total=True),
        *(Step(str(n), c) for n, c in enumerate(changes)),
        Step("after", end, total=True),
    ]
    bars = waterfall("t", "a", steps, str, str).bars
    assert abs(bars[-2].ends - bars[-1].ends) <= RESOLUTION
    assert all(-RESOLUTION <= bar.low <= bar.high <= 1 + RESOLUTION for bar in bars)
    for before, bar in pairwise(bars[:-1]):
        assert abs((bar.low if bar.tone == "up" else bar.high) - before.ends) <= RESOLUTION


def test_a_waterfall_that_does_not_start_at_zero_says_where_it_starts() -> None:
    small = [Step("a", D(15000), total=True), Step("b", D(300)), Step("c", D(15300), total=True)]
    large = [Step("a", D(100), total=True), Step("b", D(300)), Step("c", D(400), total=True)]
    assert waterfall("t", "a", small, str, str).starts is not None
    assert waterfall("t", "a", large, str, str).starts is None


@given(st.lists(st.tuples(positive, positive), min_size=1, max_size=5))
def test_bars_in_parts_are_to_one_scale(rows: list[tuple[D, D]]) -> None:
    keys = [Key("paid", "paid"), Key("borne", "borne")]
    drawn = stacked("t", "a", keys, [("row", "note", row) for row in rows]).rows
    most = max(sum(row) for row in rows)
    for row, (paid, borne) in zip(drawn, rows, strict=True):
        whole = sum(part.share for part in row.parts)
        assert whole == pytest.approx(float((paid + borne) / most), abs=3 * RESOLUTION)


def test_lines_run_from_the_first_day_to_the_last_with_their_names_apart() -> None:
    days = [date(2020, 1, 1), date(2022, 1, 1), date(2024, 1, 1)]
    cost = Over("cost", "cost", tuple(zip(days, map(D, (100, 150, 200)), strict=True)))
    insured = Over("insured", "insured", ((days[1], D(195)), (days[2], D(195))))
    drawn = lines(
        "t", "a", [cost, insured], say=str, days=[(days[1], "renewal")], projected=(days[1], "p")
    )
    by_name = {series.name: series for series in drawn.series}
    assert by_name["cost"].points[0][0] == 0
    assert by_name["cost"].points[-1] == pytest.approx((1, 1))
    assert drawn.projected is not None
    assert drawn.projected.at == pytest.approx(731 / 1461, abs=RESOLUTION)  # days, counted by hand
    assert abs(by_name["cost"].label_at - by_name["insured"].label_at) >= 0.12
