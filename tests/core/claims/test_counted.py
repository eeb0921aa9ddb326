"""One event under two numbers is linked and counted once; two events stay two."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.core.claims.conftest import claim

from quarterday.core.claims.counted import counted, duplicates, linked, same_event
from quarterday.core.claims.record import record
from quarterday.core.file.records import Claim
from quarterday.core.review.case import Case

DAY = date(2024, 3, 1)


@pytest.mark.parametrize(
    ("more", "same"),
    [
        ({"number": "WH-0417"}, True),
        ({"number": "wh 417", "paid": 12_000}, False),
        ({"number": "Wh.0417", "paid": 12_000}, True),
        ({"number": "0-WH0417", "paid": 12_000}, True),
        ({"number": "B-9"}, True),
        ({"number": "B-9", "paid": 12_000}, False),
        ({"number": "B-9", "paid": 4_000, "outstanding": 6_000}, True),
        ({"number": "B-9", "location": None}, True),
        ({"number": "B-9", "location": "annex"}, False),
        ({"number": "B-9", "cause": "fire"}, False),
        ({"number": "B-9", "date_of_loss": date(2024, 3, 2)}, False),
    ],
)
def test_day_cause_and_place_with_number_or_amount_make_one_event(
    more: dict[str, Any], same: bool
) -> None:
    """Common practice, no source."""
    first = claim("WH-0417", DAY)
    second = Claim.model_validate({**first.model_dump(), **more})
    assert same_event(first, second) is same


def test_two_claims_that_came_to_nothing_are_not_one_for_that() -> None:
    first, second = (claim(number, DAY, paid=0) for number in ("A", "B"))
    assert not same_event(first, second)


def test_the_newest_valuation_stands() -> None:
    old = claim("A-1", DAY, paid=9_000, valued_on=date(2024, 6, 1))
    new = claim("A1", DAY, paid=11_000, valued_on=date(2025, 6, 1))
    undated = claim("a 1", DAY, paid=20_000)
    assert counted([old, undated, new]) == (new,)
    assert counted([undated, old]) == (old,)
    assert list(duplicates([old, new, claim("C", date(2020, 1, 1))])) == [(new, old)]


def test_the_record_counts_an_event_once(case_of: Callable[..., Case]) -> None:
    case = case_of(claim("A-1", DAY), claim("A1", DAY), claim("B", date(2025, 1, 1)))
    found = record(case, 10)
    assert found.sums.count == 2
    assert found.sums.incurred.amount == 20_000


CLAIMS = st.builds(
    claim,
    number=st.sampled_from(["A-1", "A1", "B", "C"]),
    day=st.sampled_from([DAY, date(2024, 3, 2)]),
    paid=st.sampled_from([0, 100, 200]),
)


@given(st.lists(CLAIMS, max_size=8))
def test_every_claim_is_in_one_group_and_the_order_given_does_not_matter(
    claims: list[Claim],
) -> None:
    groups = linked(claims)
    assert sorted((c.number, c.date_of_loss, c.paid) for g in groups for c in g) == sorted(
        (c.number, c.date_of_loss, c.paid) for c in claims
    )
    assert len(counted(claims)) == len(groups) <= len(claims)
    assert all(g[0].date_of_loss == c.date_of_loss for g in groups for c in g)
