"""A hall with terms, claims and options, and its risk in few words."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from decimal import Decimal
from typing import Any

import pytest

from quarterday.core.file.records import Building, Claim, Record, Terms, Valuation
from quarterday.core.review.case import Case
from quarterday.core.risk.cost import Effort
from quarterday.core.risk.risk import Risk, risk_of

RENEWAL = date(2027, 1, 31)
STARTS = {"issued": date(2026, 1, 31), "offered": RENEWAL}
QUICK = Effort(years=4_000, blocks=1)
HALL = Building(id="hall", name="Hall", ownership="own")
VALUED = Valuation(building="hall", amount=Decimal(1_200_000), valued_on=date(2025, 6, 1))
RiskOf = Callable[..., Risk]


def terms_of(stage: str, *coverages: dict[str, Any], **fields: Any) -> Terms:
    start = STARTS[stage]
    end = start.replace(year=start.year + 1)
    given = {"stage": stage, "start": start, "end": end, "coverages": coverages, **fields}
    return Terms.model_validate(given)


def claim(number: str, day: date, cause: str = "water-escape", **more: Any) -> Claim:
    given = {"number": number, "cause": cause, "date_of_loss": day, "paid": Decimal(8_000),
             "location": "hall", **more}  # fmt: skip
    return Claim.model_validate(given)


def building(limit: int = 1_500_000, **more: Any) -> dict[str, Any]:
    return {"coverage": "building", "location": "hall", "limit": limit, "deductible": 2_500, **more}


def liability(**more: Any) -> dict[str, Any]:
    return {"coverage": "general-liability", "limit": 2_000_000, "deductible": 500, **more}


@pytest.fixture(scope="session")
def risk_case(case_of: Callable[..., Case]) -> RiskOf:
    """A maker of risks from records, simulated briefly unless told otherwise."""

    def make(*records: Record, effort: Effort = QUICK, **more: Any) -> Risk:
        return risk_of(case_of(HALL, VALUED, *records), effort=effort, **more)

    return make
