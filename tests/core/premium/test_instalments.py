"""A plan's payments add up, fall on business days, and tell what they cost."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date, timedelta
from decimal import Decimal
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from pydantic import ValidationError

from quarterday.catalogue.speech import Speech
from quarterday.core.dates import Period, is_business_day
from quarterday.core.figure import walk
from quarterday.core.file.records import Terms
from quarterday.core.given import Unusable
from quarterday.core.money import Money
from quarterday.core.premium.instalments import (
    AT_ONCE,
    Schedule,
    bill,
    check_choice,
    check_offered,
    cost,
    plans_of,
    schedule,
    schedules,
    told,
)
from quarterday.core.premium.table import table
from quarterday.core.reference import InstalmentPlan, Reference

Make = Callable[..., Terms]
SOURCE = {"title": "test", "publisher": "test", "checked_on": "2026-11-25"}


def plan(**fields: Any) -> InstalmentPlan:
    basic = {"id": "p", "name": {"en": "p", "fr": "p"}, "way": "direct-withdrawal", "count": 3,
             "source": SOURCE}  # fmt: skip
    deposit = {} if "deposit_amount" in fields else {"deposit_rate": "0.25"}
    return InstalmentPlan.model_validate({**basic, **deposit, **fields})


def premium(amount: str, coverage: str = "building", **fields: Any) -> dict[str, Any]:
    return {"coverage": coverage, "amount": amount, **fields}


def made(canada: Reference, terms: Terms, by: InstalmentPlan, province: str = "ON") -> Schedule:
    return schedule(by, bill(terms, province, canada))


def amounts(done: Schedule, part: str) -> list[Decimal]:
    return [getattr(payment, part).amount for payment in done.payments]


def test_quebec_taxes_each_payment_at_the_rate_of_its_day(canada: Reference, terms: Make) -> None:
    """9 % until 31 December 2026, 9.975 % from 1 January 2027 (Bill 99, 2025, c. 27)."""
    by = plan(deposit_rate="0.1", count=9)
    done = made(canada, terms((premium("4000"),), start=date(2026, 12, 8)), by, "QC")
    assert [p.due for p in done.payments][:2] == [date(2026, 12, 8), date(2027, 1, 8)]
    assert amounts(done, "tax") == [Decimal("36.00")] + [Decimal("39.90")] * 9
    assert done.at_once == Money(Decimal("4360.00"))
    assert done.extra_tax == Money(Decimal("35.10"))  # 3,600 × 0.975 %
    assert done.charge.amount == 0
    assert done.canada.rate == 0  # tax is no cost of borrowing, but it is paid more
    assert done.effective > 0


def test_the_last_day_of_the_old_rate_and_the_first_of_the_new(
    canada: Reference, terms: Make
) -> None:
    by = plan(deposit_amount="1000", count=1, roll="backwards")
    eve = made(canada, terms((premium("2000"),), start=date(2026, 11, 30)), by, "QC")
    new = made(canada, terms((premium("2000"),), start=date(2026, 12, 4)), by, "QC")
    assert [p.due for p in eve.payments][1] == date(2026, 12, 30)
    assert amounts(eve, "tax") == [Decimal(90), Decimal(90)]
    assert amounts(new, "tax") == [Decimal(90), Decimal("99.75")]


def test_a_plan_may_take_all_tax_with_the_deposit(canada: Reference, terms: Make) -> None:
    by = plan(tax_due="deposit", count=3)
    done = made(canada, terms((premium("4000"),), start=date(2026, 12, 8)), by, "QC")
    assert amounts(done, "tax") == [Decimal(360), 0, 0, 0]
    assert done.extra_tax.amount == 0


def test_ontario_tax_goes_by_the_first_day_whatever_the_payment(
    canada: Reference, terms: Make
) -> None:
    done = made(canada, terms((premium("1000"),)), plan(count=3))
    assert sum(amounts(done, "tax")) == Decimal("80.00")
    assert done.extra.amount == 0


def test_due_dates_move_to_business_days_of_the_province(canada: Reference, terms: Make) -> None:
    """Family Day in Ontario is the third Monday of February: 15 February 2027; not in Quebec."""
    offer = terms((premium("1200"),), start=date(2027, 1, 15))
    ontario = made(canada, offer, plan(count=3))
    quebec = made(canada, offer, plan(count=3), "QC")
    assert ontario.payments[1].due == date(2027, 2, 16)
    assert quebec.payments[1].due == date(2027, 2, 15)


@pytest.mark.parametrize(
    ("roll", "due"),
    [("forwards", "2027-02-01"), ("backwards", "2027-01-29"), ("modified-following", "2027-01-29")],
)
def test_a_saturday_at_the_end_of_a_month_moves_as_the_plan_says(
    canada: Reference, terms: Make, roll: str, due: str
) -> None:
    """30 January 2027 is a Saturday."""
    done = made(canada, terms((premium("1200"),), start=date(2026, 12, 30)), plan(roll=roll))
    assert done.payments[1].due.isoformat() == due


def test_the_last_payment_takes_the_rounding(canada: Reference, terms: Make) -> None:
    by = plan(deposit_amount="0", count=3, charge_flat="10", charge_each="2")
    done = made(canada, terms((premium("100"),)), by)
    assert amounts(done, "premium") == [0, Decimal("33.33"), Decimal("33.33"), Decimal("33.34")]
    assert amounts(done, "charge") == [0, Decimal("5.33"), Decimal("5.33"), Decimal("5.34")]
    assert sum(amounts(done, "tax")) == 8


def test_fees_and_their_tax_come_with_the_deposit(canada: Reference, terms: Make) -> None:
    offer = terms((premium("1000"), premium("50", "*", kind="fee")))
    done = made(canada, offer, plan(count=3))
    assert amounts(done, "fees") == [50, 0, 0, 0]
    assert done.at_once == table(offer, "ON", canada).total


PLANS = st.builds(
    plan,
    deposit_rate=st.decimals("0", "0.9", places=2),
    count=st.integers(1, 10),
    charge_rate=st.decimals("0", "0.2", places=3),
    tax_due=st.sampled_from(["deposit", "each"]),
)


@settings(max_examples=150, deadline=None)
@given(
    st.integers(1000, 5_000_000),
    PLANS,
    st.dates(date(2026, 6, 1), date(2027, 12, 31)),
    st.sampled_from(["ON", "QC", "NS", "SK", "MB", "NL", "BC"]),
)
def test_every_part_adds_up_to_the_cent(
    canada: Reference, terms: Make, cents: int, by: InstalmentPlan, start: date, province: str
) -> None:
    end = start + timedelta(days=365)
    offer = terms((premium(str(Decimal(cents) / 100)),), start=start, end=end)
    done = made(canada, offer, by, province)
    assert sum(amounts(done, "premium")) == Decimal(cents) / 100
    assert done.total == done.at_once + done.charge + done.extra_tax
    assert all(p.amount.amount == p.amount.rounded().amount for p in done.payments)
    assert all(is_business_day(p.due, province) for p in done.payments)
    assert province == "QC" or done.extra_tax.amount == 0
    assert (done.canada.rate > 0) == (done.charge.amount > 0)


def test_more_charge_costs_a_higher_rate(canada: Reference, terms: Make) -> None:
    offer = terms((premium("10000"),))
    rates = [made(canada, offer, plan(count=9, charge_rate=c)).effective
             for c in ("0", "0.01", "0.03", "0.05")]  # fmt: skip
    assert rates == sorted(rates)
    assert rates[0] < Decimal("1e-9") < rates[1]


@pytest.mark.parametrize(
    ("by", "which"),
    [
        (plan(deposit_amount="1000.01"), "deposit-above"),
        (plan(count=12), "after-term"),
        (plan(count=4, months_between=3), "after-term"),
    ],
)
@pytest.mark.parametrize("language", ["en", "fr"])
def test_a_plan_that_cannot_be_is_refused_in_a_sentence(
    canada: Reference, terms: Make, by: InstalmentPlan, which: str, language: str
) -> None:
    shipped = by.model_copy(update={"id": "ten-withdrawals"})
    with pytest.raises(Unusable) as refused:
        made(canada, terms((premium("1000"),)), shipped)
    assert which in refused.value.words.id
    assert Speech(canada, language).say(refused.value.words)


def test_nothing_to_pay_and_an_unknown_province_are_refused(canada: Reference, terms: Make) -> None:
    with pytest.raises(Unusable) as nothing:
        made(canada, terms((premium("-5"),)), plan())
    with pytest.raises(Unusable) as unknown:
        bill(terms((premium("5"),)), "ZZ", canada)
    said = [Speech(canada, "en").say(e.value.words) for e in (nothing, unknown)]
    assert said[0].startswith("The premium is")
    assert 'no province or territory "ZZ"' in said[1]


@pytest.mark.parametrize("fields", [{"deposit_amount": "1", "deposit_rate": "0.1"}, {"count": 0}])
def test_plan_data_that_contradicts_itself_is_refused(fields: dict[str, Any]) -> None:
    with pytest.raises(ValidationError):
        plan(**fields)


def test_the_cheapest_plan_comes_first_and_what_does_not_fit_is_left_out(
    canada: Reference, terms: Make
) -> None:
    offer = terms((premium("9000"),))
    found = schedules(offer, "ON", canada)
    assert list(found) == ["three-cheques", "ten-withdrawals"]
    assert [s.extra for s in found.values()] == sorted(s.extra for s in found.values())
    short = terms((premium("9000"),), end=date(2027, 5, 1))
    assert list(schedules(short, "ON", canada)) == ["three-cheques"]


@pytest.mark.parametrize("language", ["en", "fr"])
def test_the_cost_of_a_plan_can_be_told_with_all_it_is_made_of(
    canada: Reference, terms: Make, language: str
) -> None:
    speech = Speech(canada, language)
    for done in schedules(terms((premium("9000"),)), "ON", canada).values():
        figure = cost(done, "2026-12-01/offered")
        assert figure.money == done.extra
        assert figure.caution is not None  # the shipped plans are examples
        assert all(speech.parts(node).value for _, node in walk(figure))
        assert speech.rate(speech_rate(done)) in speech.say(told(done))


def speech_rate(done: Schedule) -> Any:
    return dict(told(done).args)["rate"]


def test_the_term_of_the_bill_is_that_of_the_terms(canada: Reference, terms: Make) -> None:
    offer = terms((premium("1"),))
    assert bill(offer, "ON", canada).term == Period(offer.start, offer.end)


def with_plans(canada: Reference, *plans: InstalmentPlan) -> Reference:
    return canada.model_copy(update={"plans": {**canada.plans, **{p.id: p for p in plans}}})


def test_an_insurer_with_plans_of_its_own_has_only_those(canada: Reference, terms: Make) -> None:
    own = plan(id="own", insurers=("Larkmoor Mutual",))
    known = with_plans(canada, own)
    theirs = terms((premium("9000"),), insurer=" LARKMOOR  mutual")
    others = terms((premium("9000"),), insurer="Brindlegate")
    unnamed = terms((premium("9000"),), insurer=None)
    assert list(schedules(theirs, "ON", known)) == ["own"]
    for each in (others, unnamed):
        assert list(schedules(each, "ON", known)) == ["three-cheques", "ten-withdrawals"]


def test_one_plan_may_be_that_of_several_insurers(canada: Reference) -> None:
    known = with_plans(canada, plan(id="own", insurers=("Larkmoor", "Brindlegate")))
    assert [p.id for p in plans_of("brindlegate", known)] == ["own"]
    assert "own" not in [p.id for p in plans_of("Val-Tremble", known)]


@pytest.mark.parametrize("language", ["en", "fr"])
def test_a_plan_of_another_insurer_is_refused_with_those_that_it_takes(
    canada: Reference, language: str
) -> None:
    own = plan(id="own", name={"en": "two halves", "fr": "deux moitiés"}, insurers=("Larkmoor",))
    known = with_plans(canada, own)
    assert check_choice("own", "Larkmoor", known) is None
    assert check_choice(AT_ONCE, "Larkmoor", known) is None
    wrong = check_choice("three-cheques", "Larkmoor", known)
    assert wrong is not None
    said = Speech(known, language).say(wrong)
    for name in (canada.plans["three-cheques"].name, own.name):
        assert (name.en if language == "en" else name.fr) in said
    assert "Larkmoor" in said
    none = check_choice("weekly", "Larkmoor", known)
    assert none is not None
    assert none.id == "acts-no-plan"


@pytest.mark.parametrize("language", ["en", "fr"])
def test_only_what_was_offered_can_be_chosen(canada: Reference, terms: Make, language: str) -> None:
    """At once always; a plan where the terms come with instalments and it fits them."""
    offered = terms((premium("9000"),), instalments_available=True)
    bare = terms((premium("9000"),), instalments_available=False)
    silent = terms((premium("9000"),), instalments_available=None)
    free = terms((premium("0"),), instalments_available=True)
    assert check_offered("three-cheques", offered, "ON", canada) is None
    for each in (offered, bare, silent, free, None):
        assert check_offered(AT_ONCE, each, "ON", canada) is None
    why = {
        "instalments-not-offered": (bare, silent, None), "instalments-not-possible": (free,),
    }  # fmt: skip
    for id, those in why.items():
        for each in those:
            wrong = check_offered("three-cheques", each, "ON", canada)
            assert wrong is not None
            assert wrong.id == id
            name = canada.plans["three-cheques"].name
            assert (name.en if language == "en" else name.fr) in Speech(canada, language).say(wrong)
    unknown = check_offered("weekly", offered, "ON", canada)
    assert unknown is not None
    assert unknown.id == "acts-no-plan"
