"""The statement of a premium holds together, and says what the insurer's table cannot mean."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from decimal import Decimal
from typing import Any

import pytest

from quarterday.catalogue.speech import Speech
from quarterday.core.file.records import AllocationKey, Building, Organisation, PaymentChoice, Terms
from quarterday.core.given import Unusable
from quarterday.core.premium.statement import statement
from quarterday.core.reference import Reference
from quarterday.core.review.case import Case

CaseOf = Callable[..., Case]
HALL = Building(id="hall", name="Parish hall")
KEY = tuple(
    AllocationKey(name="ministries", party=party, measure=Decimal(measure), fund=fund)
    for party, measure, fund in (("Youth", 1, "Youth fund"), ("Supper", 2, None))
)


def cell(amount: str, coverage: str = "building", location: str = "*", **more: Any) -> Any:
    return {"amount": amount, "coverage": coverage, "location": location, **more}


@pytest.fixture
def offer(terms: Callable[..., Terms]) -> Callable[..., Terms]:
    def make(*cells: Any, **fields: Any) -> Terms:
        fields.setdefault("start", date(2027, 1, 31))
        return terms(cells or (cell("1000"),), **fields)

    return make


def doubts(case: Case, offered: Terms, language: str = "en") -> list[str]:
    return [Speech(case.reference, language).say(d) for d in statement(case, offered).doubts]


def test_without_a_key_one_fund_without_a_name_bears_all(
    case_of: CaseOf, offer: Callable[..., Terms]
) -> None:
    made = statement(case_of(), offer())
    assert made.allocation is None
    assert made.funds == {"": Decimal("1080.00")}
    assert sum(s.total for s in made.slices) == Decimal("1080.00")


def test_funds_bear_what_their_parties_bear(case_of: CaseOf, offer: Callable[..., Terms]) -> None:
    made = statement(case_of(*KEY), offer(), "ministries")
    assert made.funds == {"Youth fund": Decimal("360.00"), "Supper": Decimal("720.00")}


def test_the_journal_is_paid_at_once_unless_a_plan_was_chosen(
    case_of: CaseOf, offer: Callable[..., Terms]
) -> None:
    offered = offer(instalments_available=True)
    choice = PaymentChoice(renewal=offered.start, plan="three-cheques", chosen_on=offered.start,
                           by="treasurer")  # fmt: skip
    at_once = statement(case_of(), offered).journal()
    by_plan = statement(case_of(choice), offered).journal()
    banked = [[x.credit for x in j if x.account.id == "journal-bank" and x.credit]
              for j in (at_once, by_plan)]  # fmt: skip
    assert banked[0] == [Decimal("1080.00")]
    assert sum(banked[1]) == Decimal("1110.00")  # the plan's charge is 30
    assert {x.date for x in by_plan if x.account.id == "journal-charge"} == {
        date(2027, 3, 31), date(2027, 5, 31)
    }  # fmt: skip


def test_a_plan_that_the_insurer_does_not_take_is_doubted_and_not_reckoned_with(
    case_of: CaseOf, offer: Callable[..., Terms]
) -> None:
    offered = offer(instalments_available=True)
    by = {"renewal": offered.start, "chosen_on": offered.start, "by": "treasurer"}
    for plan, told in (("weekly", ["weekly"]), ("three-cheques", []), ("at-once", [])):
        case = case_of(PaymentChoice.model_validate({"plan": plan, **by}))
        assert [word for word in told if word in " ".join(doubts(case, offered))] == told
        assert len(doubts(case, offered)) == len(told)


def test_tax_that_a_plan_adds_is_borne_by_the_funds_too(
    case_of: CaseOf, offer: Callable[..., Terms]
) -> None:
    """Quebec: 9 % until the end of 2026, 9.975 % on payments after it (Bill 99)."""
    parish = Organisation(name="Paroisse", province="QC", renewal_date=date(2026, 12, 8))
    offered = offer(start=date(2026, 12, 8), instalments_available=True)
    choice = PaymentChoice(renewal=offered.start, plan="ten-withdrawals", chosen_on=offered.start,
                           by="trésorier")  # fmt: skip
    made = statement(case_of(parish, *KEY, choice), offered, "ministries")
    assert made.chosen is not None
    assert made.chosen.extra_tax.amount == Decimal("8.78")  # 900 × 0.975 %, to the cent in all
    assert sum(made.funds.values()) == Decimal("1098.78")
    lines = made.journal()
    assert sum(x.debit for x in lines) == sum(x.credit for x in lines)


def test_plans_are_told_only_when_the_insurer_takes_instalments(
    case_of: CaseOf, offer: Callable[..., Terms]
) -> None:
    assert statement(case_of(), offer()).plans == {}
    assert statement(case_of(), offer(instalments_available=True)).plans


def test_a_table_of_the_files_own_buildings_raises_no_doubt(
    case_of: CaseOf, offer: Callable[..., Terms]
) -> None:
    offered = offer(cell("5", location="hall"), cell("-1", kind="discount"),
                    cell("-3", kind="surcharge", reason="credit for the sprinklers"))  # fmt: skip
    assert doubts(case_of(HALL), offered) == []


@pytest.mark.parametrize("language", ["en", "fr"])
def test_a_location_that_the_file_has_not_is_told(
    case_of: CaseOf, offer: Callable[..., Terms], language: str
) -> None:
    (said,) = doubts(case_of(HALL), offer(cell("5", location="barn")), language)
    assert "barn" in said


@pytest.mark.parametrize("language", ["en", "fr"])
def test_a_premium_below_zero_without_a_reason_is_told(
    case_of: CaseOf, offer: Callable[..., Terms], language: str
) -> None:
    (said,) = doubts(case_of(HALL), offer(cell("9"), cell("-5", "glass", "hall")), language)
    assert "Parish hall" in said
    assert "5" in said


def test_a_tax_on_what_is_exempt_is_told_with_both_figures(
    case_of: CaseOf, offer: Callable[..., Terms]
) -> None:
    """Ontario exempts automobile insurance (Ministry of Finance, 2013): 8 % of 1,000, not 1,100."""
    cells = (cell("1000"), cell("100", "non-owned-vehicle"))
    taxed = offer(*cells, totals=({"of": "tax", "amount": "88.00"},))
    (said,) = doubts(case_of(), taxed)
    assert "$88" in said
    assert "$80" in said
    assert "Non-owned vehicles" in said
    right = offer(*cells, totals=({"of": "tax", "amount": "80.00"},))
    assert doubts(case_of(), right) == []


def test_an_unknown_province_is_refused(case_of: CaseOf, offer: Callable[..., Terms]) -> None:
    nowhere = Organisation(name="Nowhere", province="ZZ")
    with pytest.raises(Unusable) as refused:
        statement(case_of(nowhere), offer())
    assert refused.value.words.id == "calc-no-province"


def test_a_fiscal_year_end_of_the_organisation_cuts_the_months(
    case_of: CaseOf, offer: Callable[..., Terms], canada: Reference
) -> None:
    hall = Organisation(name="Hall", province="ON", fiscal_year_end="06-15")
    years = {s.fiscal_year for s in statement(case_of(hall), offer()).slices}
    assert years == {date(2027, 6, 15), date(2028, 6, 15)}
