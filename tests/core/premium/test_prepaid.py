"""A premium is used up by days, and its journal balances on every day and in every fund."""

from __future__ import annotations

from collections import defaultdict
from datetime import date, timedelta
from decimal import Decimal
from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from quarterday.core.dates import Period
from quarterday.core.given import Unusable
from quarterday.core.premium.prepaid import (
    Due,
    JournalLine,
    by_fiscal_year,
    fiscal_year_of,
    journal,
    spread,
    year_end,
)

D = Decimal
YEAR = Period(date(2027, 1, 15), date(2028, 1, 15))
FUNDS = st.dictionaries(
    st.sampled_from(["General", "Youth", "Hall", "Outreach"]),
    st.integers(1, 2_000_000).map(lambda cents: D(cents) / 100),
    min_size=1,
)
TERMS = st.builds(
    lambda start, days: Period(start, start + timedelta(days)),
    st.dates(date(2023, 6, 1), date(2029, 1, 1)),
    st.integers(1, 800),
)


def test_each_month_bears_its_days() -> None:
    """365.00 over 365 days is a dollar a day."""
    slices = spread({"": D("365.00")}, YEAR)
    assert [s.total for s in slices] == [17, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31, 14]
    assert slices[0].days == Period(date(2027, 1, 15), date(2027, 2, 1))
    assert (slices[-1].last_day, slices[-1].fiscal_year) == (date(2028, 1, 14), date(2028, 12, 31))


def test_a_term_with_29_february_has_366_days() -> None:
    slices = spread({"": D("366.00")}, Period(date(2028, 1, 1), date(2029, 1, 1)))
    assert [s.total for s in slices][:3] == [31, 29, 31]


def test_a_fiscal_year_that_ends_within_a_month_cuts_it() -> None:
    slices = spread({"": D("365.00")}, YEAR, "06-15")
    june = [s for s in slices if s.days.start.month == 6]
    assert [s.total for s in june] == [15, 15]
    assert [s.fiscal_year for s in june] == [date(2027, 6, 15), date(2028, 6, 15)]
    assert by_fiscal_year(slices) == {date(2027, 6, 15): 152, date(2028, 6, 15): 213}


@pytest.mark.parametrize(
    ("ends", "day", "year"),
    [
        ("12-31", date(2027, 12, 31), date(2027, 12, 31)),
        ("03-31", date(2027, 4, 1), date(2028, 3, 31)),
        ("02-29", date(2027, 2, 28), date(2027, 2, 28)),
        ("02-29", date(2028, 2, 29), date(2028, 2, 29)),
        (None, date(2027, 7, 1), date(2027, 12, 31)),
    ],
)
def test_a_day_falls_in_the_fiscal_year_that_ends_on_or_after_it(
    ends: str | None, day: date, year: date
) -> None:
    assert fiscal_year_of(day, ends) == year


@pytest.mark.parametrize("text", ["13-01", "12-40", "December", "0-1", "12"])
def test_what_is_no_end_of_a_fiscal_year_is_refused(text: str) -> None:
    with pytest.raises(Unusable) as refused:
        year_end(text, 2027)
    assert refused.value.words.id == "prepaid-year-end"


@settings(max_examples=200, deadline=None)
@given(FUNDS, TERMS, st.sampled_from([None, "03-31", "06-15", "02-29"]))
def test_months_and_funds_both_add_up(
    funds: dict[str, Decimal], term: Period, ends: str | None
) -> None:
    slices = spread(funds, term, ends)
    assert slices[0].days.start == term.start
    assert sum(s.days.days for s in slices) == term.days
    for fund, total in funds.items():
        assert sum(s.amounts[fund] for s in slices) == total
    for s in slices:
        part = Fraction(sum(funds.values())) * s.days.days / term.days
        assert abs(Fraction(s.total) - part) < Fraction(1, 100)
        assert s.last_day <= s.fiscal_year
    assert sum(by_fiscal_year(slices).values()) == sum(funds.values())


def balance(lines: tuple[JournalLine, ...]) -> None:
    sums: dict[tuple[date, str], Decimal] = defaultdict(Decimal)
    for line in lines:
        assert (line.debit > 0) != (line.credit > 0)
        sums[line.date, line.fund] += line.debit - line.credit
    assert not any(sums.values())


def left(lines: tuple[JournalLine, ...], account: str) -> Decimal:
    return sum((x.debit - x.credit for x in lines if x.account.id == f"journal-{account}"), D(0))


@settings(max_examples=150, deadline=None)
@given(FUNDS, st.integers(1, 12), st.integers(0, 9000))
def test_debits_equal_credits_on_every_day_and_in_every_fund(
    funds: dict[str, Decimal], count: int, charge: int
) -> None:
    whole = sum(funds.values(), D(0))
    part = (whole / count).quantize(D("0.01"))
    billed = [part] * (count - 1) + [whole - part * (count - 1)]
    dues = [Due(YEAR.start + timedelta(30 * n), b, D(charge) / 100) for n, b in enumerate(billed)]
    lines = journal(funds, spread(funds, YEAR), dues)
    balance(lines)
    assert [x.date for x in lines] == sorted(x.date for x in lines)
    assert left(lines, "prepaid") == left(lines, "payable") == 0  # used up and settled
    assert left(lines, "expense") == whole
    assert left(lines, "charge") == count * D(charge) / 100
    assert left(lines, "bank") == -(whole + count * D(charge) / 100)


def test_a_credit_is_booked_the_other_way() -> None:
    funds = {"General": D("-100.00"), "Youth": D("300.00")}
    lines = journal(funds, spread(funds, YEAR), [Due(YEAR.start, D("200.00"))])
    balance(lines)
    assert left(lines, "expense") == 200


def test_payments_that_do_not_settle_the_premium_are_refused() -> None:
    funds = {"": D("100.00")}
    with pytest.raises(ValueError, match="same sum"):
        journal(funds, spread(funds, YEAR), [Due(YEAR.start, D("99.99"))])


def test_a_premium_of_nothing_has_an_empty_journal() -> None:
    funds = {"General": D("0.00")}
    assert journal(funds, spread(funds, YEAR), [Due(YEAR.start, D("0.00"))]) == ()


def test_one_day_before_the_year_end_and_the_day_after_lie_in_two_years() -> None:
    term = Period(date(2027, 3, 31), date(2027, 4, 2))
    first, second = spread({"": D("2.00")}, term, "03-31")
    assert (first.fiscal_year, second.fiscal_year) == (date(2027, 3, 31), date(2028, 3, 31))
    assert first.total == second.total == 1
