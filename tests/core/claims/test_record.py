"""The claims record: windows by date of loss, totals by year and cause, the share of water."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date, timedelta
from decimal import Decimal
from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from quarterday.catalogue.speech import Speech
from quarterday.core.claims.record import ClaimsRecord, claims_in, record, water_claims, window
from quarterday.core.dates import Period
from quarterday.core.figure import Fact, walk
from quarterday.core.file.records import Claim
from quarterday.core.money import Money, total
from quarterday.core.reference import Reference
from quarterday.core.review.case import Case

CaseOf = Callable[..., Case]
RENEWAL = date(2027, 1, 31)


def cad(amount: str | int) -> Money:
    return Money(Decimal(amount))


def claim(number: str, day: date, cause: str = "fire", paid: int = 10_000, **more: Any) -> Claim:
    given_ = {"number": number, "cause": cause, "date_of_loss": day, "paid": Decimal(paid), **more}
    return Claim.model_validate(given_)


def numbers(found: ClaimsRecord) -> list[str]:
    return [claim.number for claim in found.sums.claims]


def test_the_window_is_whole_years_back_from_the_renewal_and_half_open(case_of: CaseOf) -> None:
    """Common practice, no source: by date of loss, from the renewal backwards."""
    assert window(case_of(), 5) == Period(date(2022, 1, 31), RENEWAL)


@pytest.mark.parametrize(
    ("day", "counted"),
    [
        (date(2022, 1, 30), False),
        (date(2022, 1, 31), True),
        (date(2027, 1, 30), True),
        (RENEWAL, False),
    ],
)
def test_the_first_day_counts_and_the_renewal_day_does_not(
    case_of: CaseOf, day: date, counted: bool
) -> None:
    assert numbers(record(case_of(claim("A", day)), 5)) == (["A"] if counted else [])


def test_a_record_of_no_years_is_refused(case_of: CaseOf) -> None:
    with pytest.raises(ValueError, match="at least one year, not 0"):
        window(case_of(), 0)


def test_incurred_is_paid_plus_outstanding_less_recovered(case_of: CaseOf) -> None:
    one = claim("A", date(2026, 6, 1), paid=1_000, outstanding=Decimal(500), recovered=Decimal(200))
    found = record(case_of(one), 5)
    assert found.sums.incurred == cad(1_300)
    assert found.incurred.money == cad(1_300)


@pytest.mark.parametrize(
    ("paid", "deductible", "counted_in", "incurred", "ground_up"),
    [
        (10_000, "1000.00", False, 10_000, 11_000),
        (10_000, None, False, 10_000, 10_000),
        (10_000, "1000.00", True, 9_000, 10_000),
        (10_000, None, True, 10_000, 10_000),
        (800, "1000.00", True, 0, 800),
        (0, "1000.00", False, 0, 0),
        (0, "1000.00", True, 0, 0),
    ],
)
def test_a_loss_run_is_net_of_the_deductible_unless_it_says_otherwise(
    case_of: CaseOf, paid: int, deductible: str | None, counted_in: bool, incurred: int,
    ground_up: int,
) -> None:  # fmt: skip
    """Common practice, no source: an insurer's loss run shows what the insurer pays."""
    one = claim("A", date(2026, 6, 1), paid=paid, includes_deductible=counted_in,
                deductible=None if deductible is None else Decimal(deductible))  # fmt: skip
    found = record(case_of(one), 5)
    assert (found.sums.incurred, found.incurred.money) == (cad(incurred), cad(incurred))
    assert (found.sums.ground_up, found.ground_up.money) == (cad(ground_up), cad(ground_up))


@given(paid=st.integers(0, 10**6), deductible=st.integers(0, 10**5), counted_in=st.booleans())
def test_what_the_insurer_bears_and_the_deductible_make_the_loss(
    paid: int, deductible: int, counted_in: bool
) -> None:
    """What the organisation bears never goes beyond the deductible, nor below nothing."""
    one = claim("A", date(2026, 6, 1), paid=paid, deductible=Decimal(deductible),
                includes_deductible=counted_in)  # fmt: skip
    assert 0 <= one.ground_up - one.incurred <= deductible
    assert (one.ground_up == one.shown) == (counted_in or not deductible or not paid)


def test_years_run_from_renewal_to_renewal_newest_first(case_of: CaseOf) -> None:
    claims = (claim("old", date(2025, 1, 30)), claim("mid", date(2025, 1, 31)),
              claim("new", date(2026, 1, 31)))  # fmt: skip
    found = record(case_of(*claims), 3)
    assert [[c.number for c in year.sums.claims] for year in found.years] == [
        ["new"], ["mid"], ["old"],
    ]  # fmt: skip
    assert found.years[0].period == Period(date(2026, 1, 31), RENEWAL)


def test_causes_come_costliest_first(case_of: CaseOf) -> None:
    claims = (
        claim("A", date(2026, 6, 1), "theft", 3_000),
        claim("B", date(2026, 7, 1), "fire", 2_000),
        claim("C", date(2026, 8, 1), "fire", 2_000),
    )
    found = record(case_of(*claims), 5)
    assert [(cause, sums.count, sums.incurred) for cause, sums in found.causes] == [
        ("fire", 2, cad(4_000)), ("theft", 1, cad(3_000)),
    ]  # fmt: skip


def test_the_five_kinds_of_water_count_as_water(case_of: CaseOf) -> None:
    """Common practice, no source: the five together are the trade's usual "water damage"."""
    water = ("water-escape", "sewer-backup", "overland-flood", "ice-damming", "rain-entry")
    claims = [claim(cause, date(2026, 6, 1), cause) for cause in water]
    case = case_of(*claims, claim("F", date(2026, 6, 2), paid=50_000))
    found = record(case, 5)
    assert {c.number for c in found.water.claims} == set(water)
    assert water_claims(case, 5) == found.water.claims
    assert found.water_share is not None
    assert found.water_share.number == Decimal(5) / 6
    assert found.water_cost_share is not None
    assert found.water_cost_share.number == Decimal("0.5")


def test_without_claims_there_is_nothing_to_share(case_of: CaseOf) -> None:
    found = record(case_of(), 10)
    assert (found.sums.count, found.incurred.money) == (0, cad(0))
    assert (found.water_share, found.water_cost_share, found.causes) == (None, None, ())
    assert len(found.years) == 10


def test_claims_that_came_to_nothing_count_and_share_no_cost(case_of: CaseOf) -> None:
    found = record(case_of(claim("A", date(2026, 6, 1), "sewer-backup", 0)), 5)
    assert found.sums.count == 1
    assert found.water_share is not None
    assert found.water_share.number == 1
    assert found.water_cost_share is None


def test_the_trace_ends_in_the_facts_of_each_claim(case_of: CaseOf) -> None:
    found = record(case_of(claim("A", date(2026, 6, 1), deductible=Decimal(500))), 5)
    leaves = [node for _, node in walk(found.ground_up) if isinstance(node, Fact)]
    assert {leaf.id for leaf in leaves} == {
        f"claim/A/{name}" for name in ("paid", "outstanding", "recovered", "deductible")
    }


@pytest.mark.parametrize("language", ["en", "fr"])
def test_every_figure_of_a_record_can_be_said(
    case_of: CaseOf, canada: Reference, language: str
) -> None:
    speech = Speech(canada, language)
    claims = (claim("A", date(2026, 6, 1), "sewer-backup", deductible=Decimal(500)),
              claim("B", date(2026, 7, 1)))  # fmt: skip
    found = record(case_of(*claims), 5)
    for figure in (found.incurred, found.ground_up, found.water_share, found.water_cost_share):
        assert figure is not None
        for _, node in walk(figure):
            assert speech.parts(node).label


DAYS = st.integers(-4_000, 400).map(lambda days: RENEWAL + timedelta(days))
CLAIMS = st.lists(
    st.tuples(DAYS, st.sampled_from(["fire", "sewer-backup", "theft"]), st.integers(0, 10**6)),
    max_size=12,
)


@settings(max_examples=30, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(drawn=CLAIMS, years=st.integers(1, 12))
def test_years_and_causes_each_add_up_to_the_record(
    case_of: CaseOf, drawn: list[tuple[date, str, int]], years: int
) -> None:
    claims = [claim(str(n), day, cause, paid) for n, (day, cause, paid) in enumerate(drawn)]
    case = case_of(*claims)
    found = record(case, years)
    assert total(year.sums.incurred for year in found.years) == found.sums.incurred
    assert total(sums.incurred for _, sums in found.causes) == found.sums.incurred
    assert sum(year.sums.count for year in found.years) == found.sums.count
    assert set(found.water.claims) <= set(claims_in(case, found.period))
