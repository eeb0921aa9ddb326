"""What insuring for more costs: the line's own rate, wherever the table gives it."""

from __future__ import annotations

from datetime import date
from decimal import Decimal
from typing import Any

import pytest

from quarterday.core.file.records import Building, Terms
from quarterday.core.file.records.terms import EVERYWHERE, Coverage, Premium
from quarterday.core.money import Money
from quarterday.core.values.facts import Maker
from quarterday.core.values.price import own_rate, priced

HALL = Maker(Building(id="hall", name="Hall"))


def line(limit: int | None = 900_000, location: str = "hall", of: str = "building") -> Coverage:
    return Coverage(coverage=of, location=location, limit=None if limit is None else Decimal(limit))


def premium(**given: Any) -> Premium:
    return Premium.model_validate({"coverage": "building", "location": "hall", **given})


def rate(of: Coverage, *premiums: Premium) -> Decimal | None:
    terms = Terms(
        stage="offered", start=date(2027, 1, 31), end=date(2028, 1, 31), coverages=(of,),
        premiums=premiums,
    )  # fmt: skip
    return own_rate(terms, of, "hall")


@pytest.mark.parametrize(
    ("given", "found"),
    [
        ({"amount": 1_800, "rate": "0.0025", "exposure": 1}, "0.0025"),  # as stated
        ({"amount": 1_800, "exposure": 600_000}, "0.003"),  # over what was rated
        ({"amount": 1_800}, "0.002"),  # over the sum insured
        ({"amount": 0}, "0"),  # included
        ({"amount": 0, "rate": "0"}, "0"),
    ],
)
def test_the_rate_is_stated_or_the_premium_over_what_it_is_for(
    given: dict[str, Any], found: str
) -> None:
    assert rate(line(), premium(**given)) == Decimal(found)


@pytest.mark.parametrize(
    "given",
    [
        {"amount": 5, "kind": "fee"},
        {"amount": 5, "location": "church"},
        {"amount": 5, "coverage": "contents"},
    ],
)
def test_another_line_says_nothing_of_the_rate(given: dict[str, Any]) -> None:
    assert rate(line(), premium(**given)) is None


def test_without_an_amount_to_divide_by_there_is_no_rate() -> None:
    assert rate(line(None), premium(amount=5)) is None


def test_the_buildings_own_premium_counts_before_the_one_for_everywhere() -> None:
    both = (premium(amount=9, location=EVERYWHERE, rate="0.009"), premium(amount=1, rate="0.001"))
    assert rate(line(location=EVERYWHERE), *both) == Decimal("0.001")
    assert rate(line(location=EVERYWHERE), both[0]) == Decimal("0.009")
    assert rate(line(), both[0]) is None


def test_the_price_is_the_gap_times_the_rate_to_the_cent() -> None:
    found = priced("price-of-raising", Money(Decimal(333_333)), Decimal("0.00125"), HALL)
    assert found is not None
    assert found.money == Money(Decimal("416.67"))
    assert found.id == "price-of-raising@hall"


def test_without_a_rate_there_is_no_price() -> None:
    assert priced("price-of-raising", Money(Decimal(1)), None, HALL) is None
