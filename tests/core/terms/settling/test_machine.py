"""The machine against an independent interpreter, and what must always hold."""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction
from typing import Any, get_args

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.core.terms.settling.interpreter import Row, interpret

from quarterday.core.given import Unusable
from quarterday.core.terms.settling import rows as blocks
from quarterday.core.terms.settling.machine import (
    Beyond,
    Cap,
    Highest,
    Move,
    OfTotal,
    Plan,
    Settled,
    Share,
    UpTo,
)
from quarterday.core.terms.settling.rows import SINGLE, ByItem, Per, Rows, runs_of

F = Fraction
BUCKETS = ("claim", "deductible", "over", "wear", "pool", "top")
INSURED = {"claim", "pool", "top"}


def column(values: list[Any], kind: Any = object) -> Any:
    made = np.empty(len(values), dtype=kind)
    made[:] = values
    return made


def rows_of(told: list[Row], kind: Any = Fraction) -> Rows:
    """Return rows as columns of ``kind``: float, Decimal or Fraction."""
    amounts = [kind(r.amount) if kind is not Decimal else to_decimal(r.amount) for r in told]
    return Rows(
        amount=column(amounts, np.float64 if kind is float else object),
        item=column([r.item for r in told], np.int64),
        occurrence=column([r.occurrence for r in told], np.int64),
        year=column([r.year for r in told], np.int64),
        day=column([r.day for r in told], np.int64),
    )


def to_decimal(value: Fraction) -> Decimal:
    return Decimal(value.numerator) / value.denominator


amounts = st.integers(0, 60).map(lambda n: F(n * 500, 3))
shares = st.sampled_from([F(0), F(1, 3), F(1, 2), F(2, 7), F(1)])


def by_item(values: st.SearchStrategy[Fraction], size: int) -> st.SearchStrategy[ByItem]:
    return st.tuples(*[st.none() | values] * size)


@st.composite
def caps(draw: st.DrawFn, size: int, purse: tuple[int, ...], per: Per) -> Cap:
    kind = draw(st.sampled_from(["flat", "flat", "part", "highest"]))
    if kind == "highest" and per != "loss":
        return Highest(draw(by_item(amounts, size)))
    if kind == "part" and per != "loss":
        touched = draw(st.tuples(*[st.booleans()] * size))
        of_purse = {n: (draw(shares), draw(amounts), draw(st.none() | amounts)) for n in set(purse)}
        ratio, least, most = zip(*(of_purse[n] for n in purse), strict=True)
        keep = tuple(r if t else None for r, t in zip(ratio, touched, strict=True))
        return OfTotal(keep, least, most)
    sizes = {n: draw(amounts) for n in set(purse)}
    if per == "loss":
        return draw(by_item(amounts, size))
    return tuple(sizes[n] if draw(st.booleans()) else None for n in purse)


@st.composite
def moves(draw: st.DrawFn, size: int) -> Move:
    source, reason = draw(st.permutations(BUCKETS))[:2]
    per: Per = draw(st.sampled_from(get_args(Per)))
    purse = draw(st.tuples(*[st.integers(0, 2)] * size))
    ranks = st.none() | st.tuples(*[st.integers(0, 3)] * size)
    days = st.none() | st.tuples(*[st.none() | st.integers(0, 9)] * size)
    how: Share | UpTo | Beyond
    if draw(st.booleans()):
        how = Share(draw(by_item(shares, size)), draw(st.none() | st.tuples(*[amounts] * size)))
    else:
        cap = draw(caps(size, purse, per))
        how = UpTo(cap, per) if draw(st.booleans()) else Beyond(cap, per)
    return Move(
        reason=reason,
        how=how,
        source=source,
        paid_by="insurer" if reason in INSURED else "organisation",
        purse=draw(st.sampled_from((purse, None))) if isinstance(how, Share) else purse,
        rank=draw(ranks) if how.per != "loss" else None,
        since=draw(days),
        before=draw(days),
    )


@st.composite
def plans(draw: st.DrawFn) -> tuple[Plan, list[Row]]:
    """Draw a plan of up to six moves that use buckets again, and a list of sorted losses."""
    size = draw(st.integers(1, 3))
    plan = Plan(size, tuple(draw(st.lists(moves(size), max_size=6))))
    told = draw(
        st.lists(
            st.tuples(st.integers(0, 2), st.integers(0, 2), amounts, st.integers(0, size - 1)),
            max_size=8,
        )
    )
    told.sort(key=lambda t: t[:2])
    day = draw(st.lists(st.integers(0, 9), min_size=len(told), max_size=len(told)))
    return plan, [Row(t[2], t[3], t[1], t[0], d) for t, d in zip(told, day, strict=True)]


@settings(max_examples=500, deadline=None)
@given(plans())
def test_columns_of_fractions_are_exactly_what_one_row_after_another_gives(
    drawn: tuple[Plan, list[Row]],
) -> None:
    plan, told = drawn
    expected, found = interpret(plan, told), plan.settle(rows_of(told)).buckets
    for name in set(expected) | set(found):
        want = expected[name] if name in expected else [F(0)] * len(told)
        assert list(found[name]) == want if name in found else not any(want), name


@settings(max_examples=200, deadline=None)
@given(plans())
def test_floats_and_decimals_come_within_a_millionth_of_the_exact(
    drawn: tuple[Plan, list[Row]],
) -> None:
    plan, told = drawn
    exact = plan.settle(rows_of(told))
    for kind in (float, Decimal):
        found = plan.settle(rows_of(told, kind))
        for name, want in exact.buckets.items():
            off = [abs(F(a) - b) for a, b in zip(found.buckets[name], want, strict=True)]
            assert not off or max(off) < F(1, 10**6), (name, kind)


@settings(max_examples=200, deadline=None)
@given(plans())
def test_no_money_is_lost_or_made_and_no_bucket_is_below_zero(
    drawn: tuple[Plan, list[Row]],
) -> None:
    plan, told = drawn
    done = plan.settle(rows_of(told))
    for n, row in enumerate(told):
        held = [bucket[n] for bucket in done.buckets.values()]
        assert sum(held) == row.amount
        assert min(held) >= 0
        assert 0 <= done.paid[n] <= row.amount
        assert done.paid[n] + done.borne[n] == row.amount


@settings(max_examples=100, deadline=None)
@given(plans())
def test_the_record_of_the_moves_is_what_the_buckets_hold(drawn: tuple[Plan, list[Row]]) -> None:
    plan, told = drawn
    done = plan.settle(rows_of(told), log=True)
    held = {name: [F(0)] * len(told) for name in done.buckets} | {"claim": [r.amount for r in told]}
    for step in done.log:
        assert list(step.before) == held[step.move.source]
        for n, moved in enumerate(step.moved):
            held[step.move.source][n] -= moved
            held[step.move.reason][n] += moved
    assert {name: list(column) for name, column in done.buckets.items()} == held


@settings(max_examples=100, deadline=None)
@given(plans(), st.integers(1, 4))
def test_blocks_of_whole_years_change_nothing(drawn: tuple[Plan, list[Row]], size: int) -> None:
    plan, told = drawn
    whole = plan.settle(rows_of(told))
    kept = blocks.BLOCK
    try:
        blocks.BLOCK = size
        parted = plan.settle(rows_of(told))
    finally:
        blocks.BLOCK = kept
    assert {k: list(v) for k, v in parted.buckets.items()} == {
        k: list(v) for k, v in whole.buckets.items()
    }


def test_a_record_is_kept_whole_however_many_the_blocks() -> None:
    told = [Row(F(40_000), 0, 0, n, 0) for n in range(5)]
    kept = blocks.BLOCK
    try:
        blocks.BLOCK = 2
        done = Plan(1, (C, D, L)).settle(rows_of(told), log=True)
    finally:
        blocks.BLOCK = kept
    assert [len(step.moved) for step in done.log] == [5, 5, 5]


def test_blocks_are_cut_where_a_year_begins() -> None:
    told = [Row(F(1), 0, n, n // 3, 0) for n in range(12)]
    kept = blocks.BLOCK
    try:
        blocks.BLOCK = 4
        parts = rows_of(told).blocks
    finally:
        blocks.BLOCK = kept
    assert [part.start for part, _ in parts] == [0, 3, 6]
    assert [set(block.year) for _, block in parts] == [{0}, {1}, {2, 3}]
    assert [part.stop for part, _ in parts] == [3, 6, 12]


# The table of orders: computed by hand; loss 40,000, share one half, deductible 2,500, limit
# 15,000. Common practice, no source, except the first: the usual printed condition (ISO CP 00 10,
# D. Deductible, read in a public record of the City of Santa Ana, document 133111, page 84).
C = Move("coinsurance", Share((F(1, 2),)))
D = Move("deductible", UpTo((F(2500),)))
L = Move("over-limit", Beyond((F(15_000),)))
ORDERS = [
    ((C, D, L), 15_000), ((C, L, D), 12_500), ((D, C, L), 15_000),
    ((D, L, C), 7_500), ((L, D, C), 6_250), ((L, C, D), 5_000),
]  # fmt: skip


@pytest.mark.parametrize(("order", "paid"), ORDERS)
def test_the_order_of_the_moves_is_data_and_matters(order: tuple[Move, ...], paid: int) -> None:
    assert one(Plan(1, order), 40_000).paid[0] == paid


def test_before_the_limit_the_two_orders_differ() -> None:
    assert one(Plan(1, (C, D)), 40_000).paid[0] == 17_500
    assert one(Plan(1, (D, C)), 40_000).paid[0] == 18_750


def one(plan: Plan, *amounts_: int | str, items: tuple[int, ...] = (), **more: Any) -> Settled:
    """Settle one event of these amounts."""
    told = [
        Row(F(a), i, 0, 0, more.get("day", 0))
        for a, i in zip(amounts_, items or (0,) * len(amounts_), strict=True)
    ]
    return plan.settle(rows_of(told))


def test_rows_of_one_event_share_one_deductible() -> None:
    plan = Plan(1, (Move("deductible", UpTo((F(1000),))),))
    assert list(one(plan, 600, 30_000, 5).buckets["deductible"]) == [600, 400, 0]


def test_a_purse_a_loss_is_filled_afresh_for_each_row() -> None:
    plan = Plan(1, (Move("deductible", UpTo((F(100),), "loss")),))
    assert list(one(plan, 70, 300, 50).buckets["deductible"]) == [70, 100, 50]


def test_a_purse_of_the_year_is_used_up_by_the_first_losses() -> None:
    plan = Plan(1, (Move("over-aggregate", Beyond((F(100),), "year")),))
    told = [Row(F(70), 0, n, n // 3, 0) for n in range(6)]
    assert list(plan.settle(rows_of(told)).paid) == [70, 30, 0, 70, 30, 0]


def test_a_smaller_rank_takes_from_the_purse_first() -> None:
    plan = Plan(2, (Move("pool", UpTo((F(100), F(100)), "year"), paid_by="insurer", rank=(1, 0)),))
    done = one(plan, 80, 50, items=(0, 1))
    assert list(done.buckets["pool"]) == [50, 50]


def test_an_earlier_event_comes_before_any_rank() -> None:
    plan = Plan(2, (Move("pool", UpTo((F(100), F(100)), "year"), rank=(1, 0)),))
    told = [Row(F(80), 0, 0, 0, 0), Row(F(50), 1, 1, 0, 0)]
    assert list(plan.settle(rows_of(told)).buckets["pool"]) == [80, 20]


def test_days_bound_a_move_closed_at_its_start_and_open_at_its_end() -> None:
    plan = Plan(1, (Move("wear", Share((F(1),)), since=(5,), before=(7,)),))
    moved = [one(plan, 10, day=day).buckets["wear"][0] for day in (4, 5, 6, 7)]
    assert moved == [0, 10, 10, 0]


def test_a_small_loss_is_spared_up_to_and_including_the_amount() -> None:
    plan = Plan(1, (Move("wear", Share((F(1, 2),), above=(F(100),))),))
    assert [one(plan, x).buckets["wear"][0] for x in (99, 100, 101)] == [0, 0, F(101, 2)]
    assert list(one(plan, 60, 60).buckets["wear"]) == [30, 30]


def test_a_part_of_the_loss_stays_within_its_bounds() -> None:
    cap = OfTotal((F(1, 10),), (F(500),), (F(2000),))
    plan = Plan(1, (Move("deductible", UpTo(cap)),))
    kept = [one(plan, x).buckets["deductible"][0] for x in (300, 4000, 9000, 50_000)]
    assert kept == [300, 500, 900, 2000]


def test_only_the_highest_counts_of_the_deductibles_that_are_met() -> None:
    own = Move("deductible", UpTo((F(1000), F(400))), purse=(0, 1))
    back = Move("claim", Beyond(Highest((F(1000), F(400)))), "deductible", "insurer")
    plan = Plan(2, (own, back))
    assert list(one(plan, 5000, 5000, items=(0, 1)).buckets["deductible"]) == [1000, 0]
    assert list(one(plan, 500, 5000, items=(0, 1)).buckets["deductible"]) == [500, 400]
    assert list(one(plan, 0, 5000, items=(0, 1)).buckets["deductible"]) == [0, 400]


def test_two_payers_for_one_reason_are_refused() -> None:
    moves_ = (Move("pool", UpTo((F(1),))), Move("pool", UpTo((F(1),)), paid_by="insurer"))
    with pytest.raises(Unusable) as caught:
        Plan(1, moves_)
    assert caught.value.words.id == "settling-refused-two-payers-reason"


def test_money_can_only_come_back_to_the_claim_as_the_insurers() -> None:
    with pytest.raises(Unusable):
        Plan(1, (Move("claim", UpTo((F(1),)), source="deductible"),))


@pytest.mark.parametrize(
    "make",
    [
        lambda: Move("wear", Share((F(3, 2),))),
        lambda: Move("wear", Share((F(-1),))),
        lambda: Move("over", Beyond((F(-1),))),
        lambda: Move("over", Beyond((F(1), F(-1)), "loss")),
        lambda: Move("wear", Share((F(1), F(2)))),
        lambda: Move("over", UpTo((F(1), F(2)))),
        lambda: Plan(2, (Move("over", UpTo((F(1),))),)),
    ],
)
def test_a_move_that_makes_no_sense_is_refused(make: Any) -> None:
    with pytest.raises(ValueError, match=r"\w"):
        make()


def test_purses_of_their_own_may_have_sizes_of_their_own() -> None:
    plan = Plan(2, (Move("over", Beyond((F(1), F(2))), purse=(0, 1)),))
    assert list(one(plan, 5, 5, items=(0, 1)).paid) == [1, 2]


@pytest.mark.parametrize(
    ("amount", "year", "occurrence", "said"),
    [
        ([1.0, -1.0], [0, 0], [0, 1], "negative"),
        ([1.0, float("nan")], [0, 0], [0, 1], "no number"),
        ([1.0, 1.0], [1, 0], [0, 1], "sorted"),
        ([1.0, 1.0], [0, 0], [1, 0], "sorted"),
        ([1.0], [0, 0], [0, 1], "equally long"),
    ],
)
def test_columns_that_cannot_be_losses_are_refused(
    amount: list[float], year: list[int], occurrence: list[int], said: str
) -> None:
    with pytest.raises(ValueError, match=said):
        Rows(np.array(amount), np.zeros(2, np.int64), np.array(occurrence), np.array(year))


def test_occurrences_may_begin_anew_each_year() -> None:
    rows = Rows(np.ones(3), np.zeros(3, np.int64), np.array([3, 0, 0]), np.array([0, 1, 2]))
    assert list(rows.event) == [0, 1, 2]


@pytest.mark.parametrize("item", [1, -1])
def test_an_item_the_plan_does_not_know_is_refused(item: int) -> None:
    with pytest.raises(ValueError, match="does not know"):
        one(Plan(1, ()), 5, 5, items=(0, item))


def test_a_clause_that_turns_on_a_date_needs_the_days() -> None:
    plan = Plan(1, (Move("wear", Share((F(1),)), since=(5,)),))
    zeros = np.zeros(1, np.int64)
    with pytest.raises(ValueError, match="give the days"):
        plan.settle(Rows(np.ones(1), zeros, zeros, zeros))


def test_no_losses_settle_to_nothing() -> None:
    plan = Plan(1, (C, D, L))
    assert len(plan.settle(rows_of([], float)).paid) == 0
    assert len(plan.settle(rows_of([]), log=True).borne) == 0


def test_the_losses_themselves_are_never_written_to() -> None:
    rows = rows_of([Row(F(40_000), 0, 0, 0, 0)], float)
    Plan(1, (C, D, L)).settle(rows)
    assert rows.amount[0] == 40_000


def test_groups_know_where_each_of_them_begins() -> None:
    runs = runs_of(np.array([2, 1, 2]))
    assert runs.first is not None
    assert runs.start is not None
    assert (list(runs.first), list(runs.start)) == ([0, 1], [0, 1, 1])
    assert list(runs.over(np.add, np.array([1.0, 5.0, 2.0]))) == [3.0, 5.0, 3.0]
    assert runs_of(np.array([1, 2, 3])) == SINGLE


def test_alternatives_share_the_groups_of_the_same_losses() -> None:
    rows = rows_of([Row(F(5), 0, 0, 0, 0)], float)
    Plan(1, (D,)).settle(rows)
    kept = dict(rows._kept)
    Plan(1, (Move("deductible", UpTo((F(9),))),)).settle(rows)
    assert rows._kept == kept
