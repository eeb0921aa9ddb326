"""When a term ends early, what is earned and returned sum to the premium, as published."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date, timedelta
from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st
from pydantic import ValidationError

from quarterday.catalogue.speech import Speech
from quarterday.core.dates import Period
from quarterday.core.file.records import Terms
from quarterday.core.given import Unusable
from quarterday.core.money import Money
from quarterday.core.premium.midterm import change, earned, rule_named
from quarterday.core.premium.tax import Line
from quarterday.core.reference import Reference, ShortRate, ShortRateStep

START = date(2026, 1, 1)
YEAR = Period(START, date(2027, 1, 1))
LEAP = Period(date(2028, 1, 1), date(2029, 1, 1))


def dollars(amount: str) -> Money:
    return Money(Decimal(amount))


def after(days: int, term: Period = YEAR) -> date:
    return term.start + timedelta(days)


@pytest.mark.parametrize(
    ("rule", "kept", "back"),
    [
        # sapling.com/6404336, Calculating short rate: 1,500 a year, 219 days in force.
        ("pro-rata", "900", "600"),
        ("ninety-per-cent", "960", "540"),
        ("table-25", "1035", "465"),
    ],
)
def test_a_published_example_of_ending_after_219_days(
    canada: Reference, rule: str, kept: str, back: str
) -> None:
    done = earned(dollars("1500"), YEAR, after(219), rule_named(rule, canada))
    assert (done.earned, done.returned) == (dollars(kept), dollars(back))


def test_a_published_example_of_90_per_cent_after_150_days(canada: Reference) -> None:
    """ceopedia.org, Short rate cancellation: 215/365 × 500 = 294.52, × 0.90 = 265.07."""
    done = earned(dollars("500"), YEAR, after(150), rule_named("ninety-per-cent", canada))
    assert done.returned == dollars("265.07")
    assert earned(dollars("500"), YEAR, after(150)).returned == dollars("294.52")


@pytest.mark.parametrize(
    ("days", "percent"),
    # Wikipedia, Short rate table: rows read from the table for a 365-day term.
    [(1, 25), (54, 25), (55, 26), (75, 31), (90, 35), (92, 36), (112, 41), (120, 43), (126, 45),
     (149, 51), (150, 52), (161, 55), (186, 61), (201, 65), (223, 69), (238, 73), (260, 77),
     (275, 81), (297, 86), (312, 89), (334, 94), (350, 97)],
)  # fmt: skip
def test_the_short_rate_table_keeps_what_was_published(
    canada: Reference, days: int, percent: int
) -> None:
    done = earned(dollars("1000"), YEAR, after(days), rule_named("table-25", canada))
    assert done.earned == dollars(str(10 * percent))


def test_neither_rule_is_always_the_dearer(canada: Reference) -> None:
    """Day 150: the table keeps 52 %, 90 % of pro rata 46.99 %; late in the term it turns round."""
    table, ninety = (rule_named(name, canada) for name in ("table-25", "ninety-per-cent"))

    def kept(days: int, rule: ShortRate | None) -> Decimal:
        return earned(dollars("100"), YEAR, after(days), rule).earned.amount

    assert (kept(150, table), kept(150, ninety)) == (Decimal(52), Decimal("46.99"))
    assert kept(351, table) > kept(351, None)


@pytest.mark.parametrize("rule", ["pro-rata", "ninety-per-cent", "table-25"])
def test_nothing_is_earned_on_the_first_day_and_all_on_the_last(
    canada: Reference, rule: str
) -> None:
    by = rule_named(rule, canada)
    assert earned(dollars("99.99"), YEAR, YEAR.start, by).earned == dollars("0")
    assert earned(dollars("99.99"), YEAR, YEAR.end, by).returned == dollars("0")


@given(st.integers(0, 10**7), st.integers(0, 366), st.sampled_from([None, "ninety-per-cent"]))
def test_earned_and_returned_sum_to_the_premium_and_grow_with_the_days(
    canada: Reference, cents: int, days: int, name: str | None
) -> None:
    rule = rule_named(name, canada) if name else None
    premium = Money(Decimal(cents) / 100)
    done = earned(premium, LEAP, after(days, LEAP), rule)
    assert done.earned + done.returned == premium
    if days:
        before = earned(premium, LEAP, after(days - 1, LEAP), rule)
        assert before.earned <= done.earned


def test_a_leap_year_counts_its_own_days(canada: Reference) -> None:
    done = earned(dollars("366"), LEAP, date(2028, 3, 1))
    assert (done.days, done.of_days, done.earned, done.is_leap) == (60, 366, dollars("60"), True)
    assert not earned(dollars("365"), YEAR, date(2026, 3, 1)).is_leap
    table = rule_named("table-25", canada)
    assert earned(dollars("100"), LEAP, after(365, LEAP), table).earned == dollars("100")


def test_a_term_of_one_year_from_29_february_has_365_days() -> None:
    term = Period(date(2028, 2, 29), date(2029, 2, 28))
    assert earned(dollars("365"), term, date(2028, 3, 1)).earned == dollars("1")


@pytest.mark.parametrize(
    ("term", "days", "which"),
    [
        (YEAR, -1, "outside"),
        (YEAR, 366, "outside"),
        (YEAR, 60, "gap"),
        (YEAR, 360, "gap"),
        (Period(START, date(2026, 7, 1)), 30, "other-term"),
    ],
)
@pytest.mark.parametrize("language", ["en", "fr"])
def test_what_cannot_be_looked_up_is_refused_in_a_sentence(
    canada: Reference, term: Period, days: int, which: str, language: str
) -> None:
    with pytest.raises(Unusable) as refused:
        earned(dollars("1"), term, after(days), rule_named("table-25", canada))
    assert refused.value.words.id == f"midterm-{which}"
    assert Speech(canada, language).say(refused.value.words)


def test_an_unknown_rule_is_refused_with_those_there_are(canada: Reference) -> None:
    with pytest.raises(Unusable) as refused:
        rule_named("ours", canada)
    said = Speech(canada, "en").say(refused.value.words)
    assert all(name in said for name in ("ours", "pro-rata", "ninety-per-cent", "table-25"))


def test_the_shipped_table_never_falls_and_says_where_it_was_read(canada: Reference) -> None:
    table = canada.short_rates["table-25"]
    kept = [step.kept for step in table.steps]
    assert kept == sorted(kept)
    assert table.source.link.startswith("https://")
    read = sum(step.last - step.first + 1 for step in table.steps)
    assert read == 203  # days of 365; the others were not read and stay gaps


@pytest.mark.parametrize(
    "steps",
    [
        (),
        (ShortRateStep(first=5, last=4, kept=Decimal("0.3")),),
        (ShortRateStep(first=1, last=4, kept=Decimal("0.3")),
         ShortRateStep(first=5, last=6, kept=Decimal("0.2"))),
    ],
)  # fmt: skip
def test_a_table_that_falls_or_holds_nothing_is_refused(
    canada: Reference, steps: tuple[ShortRateStep, ...]
) -> None:
    whole = canada.short_rates["table-25"].model_dump() | {"steps": steps}
    with pytest.raises(ValidationError):
        ShortRate.model_validate(whole)


def test_more_cover_in_mid_term_costs_its_days_with_tax(
    canada: Reference, terms: Callable[..., Terms]
) -> None:
    """365 a year from the 100th day on: 265 dollars, and Ontario's 8 %."""
    offer = terms()
    on = offer.start + timedelta(100)
    done = change(offer, [("property", "building", dollars("365"))], on, on, "ON", canada)
    assert (done.days_left, done.of_days) == (265, 365)
    assert (done.premium, done.tax.tax.money) == (dollars("265"), dollars("21.20"))
    assert (done.annual, done.total) == (dollars("365"), dollars("286.20"))


def test_less_cover_comes_back_with_its_tax(canada: Reference, terms: Callable[..., Terms]) -> None:
    offer = terms()
    lines: list[Line] = [
        ("property", "glass", dollars("-73")),
        ("vehicles", "non-owned-vehicle", dollars("-73")),
    ]
    done = change(offer, lines, offer.start, offer.start, "ON", canada)
    assert done.premium == dollars("-146")
    assert done.tax.tax.money == dollars("-5.84")  # vehicles were not taxed


def test_a_change_after_new_year_in_quebec_bears_the_new_rate(
    canada: Reference, terms: Callable[..., Terms]
) -> None:
    """Premiums paid after 31 December 2026 bear 9.975 % (Bill 99, 2025, c. 27)."""
    lines: list[Line] = [("property", "building", dollars("400"))]
    offer = terms()
    old = change(offer, lines, offer.start, date(2026, 12, 31), "QC", canada)
    new = change(offer, lines, offer.start, date(2027, 1, 1), "QC", canada)
    assert (old.tax.tax.money, new.tax.tax.money) == (dollars("36"), dollars("39.90"))


def test_a_change_outside_the_term_or_in_no_province_is_refused(
    canada: Reference, terms: Callable[..., Terms]
) -> None:
    offer = terms()
    for day, province in ((offer.end, "ON"), (offer.start, "XX")):
        with pytest.raises(Unusable):
            change(offer, [("property", "building", dollars("1"))], day, day, province, canada)
