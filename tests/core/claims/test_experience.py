"""Claims beside the premium, and claims at the prices of the coming term."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from decimal import Decimal

import pytest
from tests.core.claims.conftest import claim, policy

from quarterday.core.claims.experience import experience
from quarterday.core.claims.trend import trended
from quarterday.core.file.records import Building, Organisation
from quarterday.core.money import Money
from quarterday.core.review.case import Case

CaseOf = Callable[..., Case]
HALL = Building(id="hall", name="Hall")


def test_claims_are_divided_by_the_premium_at_today_s_price(case_of: CaseOf) -> None:
    """4,000 a year from 31 January 2022 to 25 November 2026 are 1,759 of 365 days: 19,276.71."""
    claims = (claim("A", date(2025, 3, 1), deductible=Decimal(500), includes_deductible=True),)
    found = experience(case_of(policy(2026), *claims), 5)
    assert found is not None
    assert found.premium.money == Money(Decimal("19276.71"))
    assert found.incurred.money == Money(Decimal(9_500))
    assert found.ratio is not None
    assert found.ratio.number == pytest.approx(Decimal(9_500) / Decimal("19276.71"))


def test_a_large_claim_counts_up_to_the_cap(case_of: CaseOf) -> None:
    """The default cap is 100,000."""
    claims = (claim("A", date(2025, 3, 1), paid=900_000), claim("B", date(2025, 4, 1)))
    found = experience(case_of(policy(2026), *claims), 5)
    assert found is not None
    assert found.incurred.money == Money(Decimal(910_000))
    assert found.capped.money == Money(Decimal(110_000))
    assert found.capped_ratio is not None
    assert found.ratio is not None
    assert found.capped_ratio.number < found.ratio.number


def test_older_claims_are_left_out(case_of: CaseOf) -> None:
    claims = (claim("A", date(2022, 1, 30)), claim("B", date(2022, 1, 31)))
    found = experience(case_of(policy(2026), *claims), 5)
    assert found is not None
    assert [c.number for c in found.claims] == ["B"]


def test_a_young_organisation_counts_from_its_founding(case_of: CaseOf) -> None:
    young = Organisation(name="Elm", province="ON", founded_year=2025)
    claims = (claim("A", date(2024, 6, 1)), claim("B", date(2025, 6, 1)))
    found = experience(case_of(young, policy(2026), *claims), 5)
    assert found is not None
    assert found.period.start == date(2025, 1, 1)
    assert [c.number for c in found.claims] == ["B"]


def test_without_any_premium_there_is_nothing_to_compare(case_of: CaseOf) -> None:
    assert experience(case_of(claim("A", date(2025, 3, 1))), 5) is None
    assert experience(case_of(policy(2026, None)), 5) is None


def test_a_premium_of_nothing_has_no_ratio(case_of: CaseOf) -> None:
    found = experience(case_of(policy(2026, 0), claim("A", date(2025, 3, 1))), 5)
    assert found is not None
    assert found.ratio is found.capped_ratio is None


def test_years_without_claims_are_experience_too(case_of: CaseOf) -> None:
    found = experience(case_of(policy(2026)), 5)
    assert found is not None
    assert found.ratio is not None
    assert found.ratio.number == 0


# --- the prices of the coming term


def test_damage_follows_the_construction_index_of_the_place(case_of: CaseOf) -> None:
    """The ratio is that of the index itself, from the day of loss to the renewal."""
    case = case_of(HALL)
    one = claim("A", date(2022, 6, 1))
    case = case_of(HALL, one)
    ratio = case.index(HALL)
    found = trended(case, one, "CAD")
    assert ratio.points
    assert found.money > Money(Decimal(10_000))
    level = {node.id: node for node in found.inputs}
    first, last = (f.number for f in found.inputs[1:])  # type: ignore[union-attr]
    assert "claim-ground-up@A" in level
    assert found.money.amount == pytest.approx(10_000 * last / first, abs=1)


@pytest.mark.parametrize(
    ("cause", "location"), [("injury-on-premises", "hall"), ("water-escape", None)]
)
def test_what_has_no_index_stays_as_it_was(
    case_of: CaseOf, cause: str, location: str | None
) -> None:
    one = claim("A", date(2022, 6, 1), cause, location=location)
    found = trended(case_of(HALL, one), one, "CAD")
    assert found.money == Money(Decimal(10_000))
    assert found.how.id == "claims-how-not-trended"


def test_a_claim_older_than_the_index_stays_as_it_was(case_of: CaseOf) -> None:
    one = claim("A", date(1975, 6, 1))
    assert trended(case_of(HALL, one), one, "CAD").how.id == "claims-how-not-trended"
