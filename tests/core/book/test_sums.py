"""Sums: the same whichever way the book is cut, and the same after they were kept."""

from __future__ import annotations

import json
from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterday.core.book.sums import (
    TOPICS,
    Cover,
    Offers,
    Sums,
    Work,
    added,
    cents,
    dollars,
    total,
)

NUMBERS = st.integers(-(10**15), 10**15)


@st.composite
def some_sums(draw: st.DrawFn) -> Sums:
    sums = Sums()
    for topic in draw(st.lists(st.sampled_from(sorted(TOPICS)), max_size=6)):
        kind = TOPICS[topic]
        width = len(kind())
        row = kind(*draw(st.lists(st.integers(0, 10**15), min_size=width, max_size=width)))
        sums.count(topic, draw(st.sampled_from(["", "a", "b"])), row)
    return sums


def summed(parts: list[Sums]) -> Sums:
    made = Sums()
    for part in parts:
        made += part
    return made


@given(st.lists(some_sums(), max_size=6), st.integers(0, 6), st.randoms())
def test_the_order_and_the_cut_of_the_parts_change_nothing(
    parts: list[Sums], cut: int, chance: object
) -> None:
    shuffled = list(parts)
    chance.shuffle(shuffled)  # type: ignore[attr-defined]
    whole = summed(parts)
    assert summed(shuffled) == whole
    assert summed([summed(parts[:cut]), summed(parts[cut:])]) == whole


@given(some_sums())
def test_what_is_kept_as_json_comes_back_as_it_was(sums: Sums) -> None:
    assert Sums.of(json.loads(json.dumps(sums.plain()))) == sums


@given(st.decimals(-(10**12), 10**12, places=2))
def test_an_amount_with_cents_is_kept_exactly(amount: Decimal) -> None:
    assert dollars(cents(amount)) == amount


@pytest.mark.parametrize(("amount", "kept"), [("0.005", 1), ("-0.005", -1), ("1.004", 100)])
def test_half_a_cent_is_rounded_away_from_zero(amount: str, kept: int) -> None:
    assert cents(Decimal(amount)) == kept


def test_a_row_of_nothing_adds_no_key() -> None:
    sums = Sums()
    sums.count("work", "late", Work())
    assert sums == Sums()
    assert sums.plain() == {}


def test_rows_are_added_column_by_column_and_stay_of_their_kind() -> None:
    both = added(Work(1, 2, 3), Work(broker=10))
    assert (both, type(both)) == (Work(11, 2, 3), Work)
    assert total(Offers, []) == Offers()
    assert total(Cover, [Cover(1), Cover(1, 1, 1)]) == Cover(2, 1, 1)


def test_adding_to_a_sum_leaves_what_was_added_as_it_was() -> None:
    one, other = Sums(work={"late": Work(1)}), Sums(work={"late": Work(2)})
    made = Sums()
    made += one
    made += other
    assert one.work["late"] == Work(1)
    assert made.work["late"] == Work(3)
