"""An account with a hall, a rented room, terms and claims."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from decimal import Decimal
from typing import Any

import pytest

from quarterday.core.file.records import Building, Claim, Operations, Record, Terms, Valuation
from quarterday.core.review.case import Case

RENEWAL = date(2027, 1, 31)  # as the maker of cases has it
HALL = Building(
    id="hall", name="Elm Grove Hall", province="ON", year_built=1977, basement="unfinished"
)
ROOM = Building(id="room", name="Rented room", province="ON", ownership="rent")
PROFILE = Operations(
    employees=2,
    personal_data_held=True,
    camp=False,
    revenue_donations=Decimal(104_000),
    revenue_rents=Decimal(16_000),
)
VALUED = Valuation(building="hall", amount=Decimal(1_000_000), valued_on=date(2026, 5, 15))
CONTENTS = Valuation(
    building="hall", valued="contents", amount=Decimal(80_000), valued_on=date(2025, 5, 1)
)
LINES: tuple[dict[str, Any], ...] = (
    {"coverage": "building", "location": "hall", "limit": 1_200_000, "deductible": 2500},
    {"coverage": "contents", "location": "hall", "limit": 90_000, "deductible": 2500},
    {"coverage": "sewer-backup", "limit": 25_000, "aggregate": 30_000, "deductible": 1000},
    {"coverage": "money-inside", "limit": 5000},
    {"coverage": "general-liability", "limit": 2_000_000, "defence": "outside",
     "wording": "GL 2024"},
)  # fmt: skip


def version(stage: str, *lines: dict[str, Any], **more: Any) -> Terms:
    """Return expiring terms (stage issued) or those of the coming year."""
    start = RENEWAL.replace(year=2026) if stage == "issued" else RENEWAL
    end = start.replace(year=start.year + 1)
    whole = {"stage": stage, "start": start, "end": end, "coverages": lines or LINES, **more}
    return Terms.model_validate(whole)


def claim(number: str, cause: str, day: date, paid: int, **more: Any) -> Claim:
    return Claim(number=number, cause=cause, date_of_loss=day, paid=Decimal(paid), **more)


Account = Callable[..., Case]


@pytest.fixture(scope="session")
def account(case_of: Callable[..., Case]) -> Account:
    """A maker of the account with expiring and offered terms; more records may be added."""

    def make(*more: Record) -> Case:
        known = (HALL, PROFILE, VALUED, CONTENTS, version("issued"), version("offered"))
        return case_of(*known, *more)

    return make
