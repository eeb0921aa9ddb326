"""The amount that is safe from a coinsurance penalty, and what it costs."""

from __future__ import annotations

import math
from collections.abc import Callable
from datetime import date
from decimal import Decimal
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterday.core.figure import walk
from quarterday.core.file.records import Building, Terms, Valuation
from quarterday.core.file.records.terms import Coverage, Premium
from quarterday.core.money import Money
from quarterday.core.review.case import Case
from quarterday.core.values.coinsurance import penalty_chance, safe_amount
from quarterday.core.values.coinsured import Coinsured

CaseOf = Callable[..., Case]
HALL = Building(id="hall", name="Hall")
VALUED = Valuation(
    building="hall", amount=Decimal(1_000_000), valued_on=date(2024, 2, 15),
    basis="desk-valuation", includes_fees=True,
)  # fmt: skip


def cad(amount: int | str) -> Money:
    return Money(Decimal(amount))


def test_the_95th_point_of_the_normal_law_is_used() -> None:
    """z(0.95) = 1.644854 (NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.1: 1.645)."""
    spread = math.sqrt(math.log1p(0.12**2))
    found = safe_amount(cad(1_000_000), Decimal("0.9"), 0.12, 0.95)
    assert float(found.amount) == pytest.approx(900_000 * math.exp(1.644854 * spread), abs=2)


@given(
    value=st.integers(50_000, 50_000_000),
    required=st.decimals("0.5", "1", places=2),
    error=st.floats(0.01, 0.5),
    certainty=st.floats(0.05, 0.99),
)
def test_it_is_the_inverse_of_the_chance_of_a_penalty(
    value: int, required: Decimal, error: float, certainty: float
) -> None:
    enough = safe_amount(cad(value), required, error, certainty)
    assert penalty_chance(cad(value), enough, required, error) <= 1 - certainty + 1e-9
    less = enough - cad(2)
    assert penalty_chance(cad(value), less, required, error) > 1 - certainty - 1e-9


def test_without_doubt_about_the_value_it_is_what_the_clause_asks_for() -> None:
    assert safe_amount(cad(1_000_000), Decimal("0.8"), 0.0, 0.95) == cad(800_000)


def test_even_odds_need_just_what_the_clause_asks_for() -> None:
    assert safe_amount(cad(1_000_000), Decimal("0.8"), 0.3, 0.5) == cad(800_000)


@given(st.floats(0.5, 0.98), st.floats(0.0, 0.4), st.floats(0.001, 0.1))
def test_more_doubt_or_more_certainty_never_asks_for_less(
    certainty: float, error: float, more: float
) -> None:
    base = safe_amount(cad(1_000_000), Decimal("0.9"), error, certainty)
    assert safe_amount(cad(1_000_000), Decimal("0.9"), error + more, certainty) >= base
    surer = min(certainty + more, 0.999)
    assert safe_amount(cad(1_000_000), Decimal("0.9"), error, surer) >= base


@pytest.mark.parametrize("certainty", [0.0, 1.0, -1.0, 95.0])
def test_a_certainty_outside_zero_to_one_is_refused_in_a_sentence(certainty: float) -> None:
    with pytest.raises(ValueError, match=r"lies between 0 and 1 \(0.95 is 95 %\)"):
        safe_amount(cad(1), Decimal("0.9"), 0.1, certainty)


def _coinsured(case_of: CaseOf, limit: int, *premiums: Premium, **clause: Any) -> Coinsured:
    line = Coverage.model_validate(
        {"coverage": "building", "location": "hall", "limit": Decimal(limit),
         **({"coinsurance": Decimal("0.9")} | clause)}
    )  # fmt: skip
    terms = Terms(
        stage="offered", start=date(2027, 1, 31), end=date(2028, 1, 31), coverages=(line,),
        premiums=premiums,
    )  # fmt: skip
    found = case_of(HALL, VALUED, terms).pictures["hall"].coinsured
    assert found is not None
    return found


RATED = Premium(coverage="building", location="hall", amount=Decimal(1_800), rate=Decimal("0.002"))


def test_a_building_shows_its_safe_amount_and_the_price_at_its_own_rate(case_of: CaseOf) -> None:
    found = _coinsured(case_of, 900_000, RATED)
    assert found.safe is not None
    assert found.price_of_safe is not None
    value = found.position.value
    assert found.safe.money == safe_amount(value, Decimal("0.9"), 0.12, 0.95)
    gap = found.safe.money - cad(900_000)
    assert found.price_of_safe.money == (gap * Decimal("0.002")).rounded()
    used = {node.id for _, node in walk(found.safe)}
    assert {"values.safe-certainty", "values.valuation-error-desk-valuation"} <= used


def test_who_is_insured_for_it_already_is_shown_no_price(case_of: CaseOf) -> None:
    exactly = _coinsured(case_of, 900_000, RATED).safe
    assert exactly is not None
    enough = int(exactly.money.amount)
    assert _coinsured(case_of, enough, RATED).price_of_safe is None
    assert _coinsured(case_of, enough - 1, RATED).price_of_safe is not None


def test_without_a_rate_there_is_an_amount_and_no_price(case_of: CaseOf) -> None:
    found = _coinsured(case_of, 900_000)
    assert found.safe is not None
    assert found.price_of_safe is None


def test_a_stated_amount_needs_no_safe_one(case_of: CaseOf) -> None:
    stated = {"coinsurance": None, "coinsurance_stated_amount": Decimal(500_000)}
    assert _coinsured(case_of, 900_000, **stated).safe is None
