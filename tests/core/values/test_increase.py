"""Automatic yearly increases against the index."""

from __future__ import annotations

import math
from datetime import date
from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterday.core.money import Money
from quarterday.core.values.increase import applied, renewals_between, shortfall

RENEWAL = date(2027, 1, 31)
TWO_PER_CENT = Decimal("0.02")


def test_renewals_after_the_valuation_count_up_to_this_one() -> None:
    found = renewals_between(date(2024, 1, 31), RENEWAL)
    assert found == (date(2025, 1, 31), date(2026, 1, 31), RENEWAL)


def test_a_valuation_the_day_before_a_renewal_counts_that_renewal() -> None:
    assert len(renewals_between(date(2024, 1, 30), RENEWAL)) == 4


def test_a_valuation_on_or_after_the_renewal_counts_none() -> None:
    assert renewals_between(RENEWAL, RENEWAL) == ()
    assert renewals_between(date(2027, 3, 1), RENEWAL) == ()


def test_increases_build_on_each_other() -> None:
    """Common practice, no source: 2 % a year, three times, is 1.061208."""
    known = {date(year, 1, 31): TWO_PER_CENT for year in (2025, 2026, 2027)}
    done = applied(date(2024, 6, 1), RENEWAL, known)
    assert (done.ratio, done.assumed) == (Decimal("1.061208"), ())


def test_a_renewal_without_terms_takes_the_nearest_later_rate_and_says_so() -> None:
    known = {date(2026, 1, 31): Decimal("0.03"), RENEWAL: TWO_PER_CENT}
    done = applied(date(2023, 6, 1), RENEWAL, known)
    assert dict(done.rates)[date(2024, 1, 31)] == Decimal("0.03")
    assert done.assumed == (date(2024, 1, 31), date(2025, 1, 31))


def test_a_renewal_after_the_last_known_takes_the_last_rate() -> None:
    done = applied(date(2025, 6, 1), RENEWAL, {date(2026, 1, 31): Decimal("0.03")})
    assert done.rates == ((date(2026, 1, 31), Decimal("0.03")), (RENEWAL, Decimal("0.03")))
    assert done.assumed == (RENEWAL,)


def test_with_no_rate_on_file_nothing_is_assumed() -> None:
    with pytest.raises(LookupError, match="No terms on file"):
        applied(date(2024, 1, 1), RENEWAL, {})


def test_calgary_s_costs_ran_ahead_of_two_per_cent_a_year() -> None:
    """Statistics Canada, table 18-10-0276-01 (archived), Calgary: 103.5 (2019Q4), 121.4 (2023Q4).

    Four increases of 2 % make 1.08243; costs rose by 1.17295. On 1,000,000 that leaves 90,515.
    """
    index, four = Decimal("121.4") / Decimal("103.5"), Decimal("1.02") ** 4
    behind = shortfall(Money(Decimal(1_000_000)), four, index)
    assert behind.money.rounded(Decimal(1)) == Money(Decimal(90_515))
    assert behind.share.quantize(Decimal("0.0001")) == Decimal("0.0772")


def test_increases_that_ran_ahead_show_a_negative_shortfall() -> None:
    behind = shortfall(Money(Decimal(100)), Decimal("1.2"), Decimal("1.1"))
    assert behind.money == Money(Decimal(-10))
    assert behind.share < 0


RATIOS = st.decimals(min_value="0.5", max_value="3", places=4)


@given(RATIOS, RATIOS, st.integers(1, 10**9))
def test_the_share_and_the_money_say_the_same(grown: Decimal, index: Decimal, value: int) -> None:
    behind = shortfall(Money(Decimal(value)), grown, index)
    assert math.isclose(behind.share * value * index, behind.money.amount, abs_tol=1e-12)
