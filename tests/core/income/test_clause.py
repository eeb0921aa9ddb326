"""What a coinsurance clause of income counts: the page and the settling machine say the same."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from decimal import Decimal
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from quarterday.catalogue.speech import Speech
from quarterday.core.figure import Figure, Parameter, walk
from quarterday.core.file.records import Building, Operations, Terms
from quarterday.core.file.records.terms import Coverage
from quarterday.core.income.calc import income
from quarterday.core.income.clause import measured
from quarterday.core.income.earnings import Earnings
from quarterday.core.income.worksheet import COUNTED, Year, counted_part
from quarterday.core.money import Money
from quarterday.core.reference import LANGUAGES, Reference
from quarterday.core.review.case import Case
from quarterday.core.terms.calc import settle as settle_plain
from quarterday.core.terms.losses.loss import Loss
from quarterday.core.terms.settling.account import setting_of, values_on
from quarterday.core.terms.settling.settlement import Settlement, settle
from quarterday.core.values.cost import last_day

CaseOf = Callable[..., Case]
RENEWAL, END = date(2027, 1, 31), date(2028, 1, 31)
HALL = Building(id="hall", name="Hall", area_m2=Decimal(600))
WORDINGS = (None, "whole-income", "less-stopping")


def profile(**more: Any) -> Operations:
    """Return who earns 400,000 a year, of which 100,000 of expenses would stop, without growth."""
    told = {"revenue_other": 400_000, "expenses_stopping": 100_000, "income_growth": 0, **more}
    return Operations.model_validate(told)


def terms_of(limit: int = 150_000, location: str = "*", **line: Any) -> Terms:
    told = {"coverage": "loss-of-income", "location": location, "limit": limit, **line}
    lines = (Coverage.model_validate(told),)
    return Terms(stage="offered", start=RENEWAL, end=END, coverages=lines)


def by_machine(case: Case, terms: Terms, lost: int = 80_000) -> Settlement:
    """Settle a month's lost income on the last day of the coming term."""
    fire = Loss(cause="fire", place="hall", date_of_loss=last_day(case),
                amounts={"income": Decimal(lost)})  # fmt: skip
    return settle(setting_of(case, terms, last_day(case)), fire)


def required_by_machine(done: Settlement) -> Money:
    """Return the amount that the coinsurance step names."""
    steps = (step for part in done.parts for step in part.steps)
    (found,) = (dict(step.args)["required"] for step in steps if "coinsurance" in step.id)
    assert isinstance(found, Money)
    return found


def required_by_page(case: Case) -> Money:
    assert case.income is not None
    assert case.income.coinsured is not None
    return case.income.coinsured.required.money


# --- both parts of the house say the same


@pytest.mark.parametrize(
    ("wording", "required", "pays"),
    [
        # ISO CP 00 30, Example 1 (City of Santa Ana, document 133111, page 98): net income and
        # operating expenses of 400,000, 50 %, limit 150,000, loss 80,000: "We will pay no more than
        # $60,000". Operating expenses are not lessened by those that would stop.
        ("whole-income", 200_000, 60_000),
        # The same account under a wording of profits: net profit and standing charges are 300,000;
        # half of that is what is insured. Computed: 150,000 ÷ 150,000.
        ("less-stopping", 150_000, 80_000),
        # Not said: the parameter, whose source is IBC form 4029 ("No other costs shall be deducted
        # in determining gross earnings", course notes at docsbay.net).
        (None, 200_000, 60_000),
    ],
)
def test_the_textbook_account_needs_the_same_amount_on_the_page_and_in_a_loss(
    case_of: CaseOf, wording: str | None, required: int, pays: int
) -> None:
    terms = terms_of(coinsurance="0.5", coinsurance_of=wording)
    case = case_of(HALL, profile(), terms)
    done = by_machine(case, terms)
    assert required_by_page(case) == Money(Decimal(required))
    assert required_by_machine(done) == Money(Decimal(required))
    assert done.paid.money == Money(Decimal(pays))


@st.composite
def accounts(draw: st.DrawFn) -> tuple[Operations, Terms, int]:
    """Draw a profile and terms, and the year that the clause counts, in whole dollars.

    The year is counted again in whole millionths of a dollar, without the code under test.
    """
    earned, stops, payroll = (draw(st.integers(least, 5_000_000)) for least in (1, 0, 0))
    kept, share, growth = (draw(st.integers(*ends)) for ends in ((0, 100), (1, 100), (-20, 50)))
    wording = draw(st.sampled_from(WORDINGS))
    told = profile(
        revenue_other=earned, expenses_stopping=stops, payroll=payroll,
        payroll_kept=Decimal(kept) / 100, premises_share=Decimal(share) / 100,
        income_growth=Decimal(growth) / 100,
    )  # fmt: skip
    less = stops * 100 + payroll * (100 - kept) if wording == "less-stopping" else 0
    millionths = max(earned * 100 - less, 0) * share * (100 + growth)
    clause = draw(st.sampled_from(("0.5", "0.8", "1")))
    terms = terms_of(coinsurance=clause, coinsurance_of=wording)
    return told, terms, (2 * millionths + 1_000_000) // 2_000_000  # rounded half-up


@settings(deadline=None)
@given(accounts())
def test_page_and_machine_agree_with_a_sum_of_whole_numbers(
    case_of: CaseOf, account: tuple[Operations, Terms, int]
) -> None:
    told, terms, year = account
    case = case_of(HALL, told, terms)
    assert values_on(case, terms, last_day(case)).of("loss-of-income", "*") == year
    percent = terms.coverages[0].coinsurance
    assert percent is not None
    required = Money(year * percent)
    if year:
        assert required_by_machine(by_machine(case, terms)) == required
        assert required_by_page(case) == required.rounded(Decimal(1))


# --- published Canadian figures


def test_a_canadian_article_on_the_profits_wording_comes_out(canada: Reference) -> None:
    """mondaq.com, "Co-Dependant" (2015): 1,000,000 in force, 1,500,000 of annual gross profit
    required, a loss of 500,000. The article rounds the share to 66.67 % and pays 333,350; unrounded
    it is 333,333.33. Here 2,000,000 come in and 500,000 of expenses would stop."""
    told = {
        "revenue": {"other": [500_000] + [136_363] * 10 + [136_370]}, "months": 1,
        "expenses": {"goods": {"yearly": 500_000, "continues": 0}},
        "limit": 1_000_000, "coinsurance": "1", "coinsurance_of": "less-stopping",
    }  # fmt: skip
    done = income(told, canada)["settlement"]
    assert (done["required_amount"], done["share"]) == ("1500000.00", "0.6666666667")
    plain = {
        "terms": {"start": date(2027, 1, 1), "coverages": [
            {"coverage": "loss-of-income", "limit": 1_000_000, "coinsurance": "1"}]},
        "values": [{"coverage": "loss-of-income", "value": 1_500_000}],
        "losses": [{"cause": "fire", "place": "*", "date_of_loss": date(2027, 5, 1),
                    "amounts": {"income": 500_000}}],
    }  # fmt: skip
    assert settle_plain(plain, canada)["losses"][0]["paid"] == "333333.33"


def test_ninety_thousand_of_a_hundred_thousand_pays_nine_tenths(case_of: CaseOf) -> None:
    """h-t.ca, "Factors to consider in choosing an amount of Business Interruption Insurance":
    90,000 insured of 100,000 of projected annual gross profit covers "90% of any loss"."""
    terms = terms_of(90_000, coinsurance="1", coinsurance_of="less-stopping")
    told = profile(revenue_other=130_000, expenses_stopping=30_000)
    done = by_machine(case_of(HALL, told, terms), terms, 10_000)
    assert done.paid.money == Money(Decimal(9_000))


# --- what is counted


def test_a_wording_counts_all_or_none_and_the_parameter_what_is_unsaid() -> None:
    usual = Decimal("0.25")
    assert [counted_part(wording, usual) for wording in WORDINGS] == [usual, 1, 0]  # type: ignore[arg-type]
    year = Year(Money(Decimal(100)), Money(Decimal(40)))
    assert [year.counted(Decimal(p)).amount for p in ("1", "0", "0.25")] == [100, 60, 70]
    assert Year(Money(Decimal(10)), Money(Decimal(40))).counted(Decimal(0)).amount == 0


@pytest.mark.parametrize(
    ("day", "year"),
    [
        (date(2026, 6, 1), 100_000),  # of the expiring year: as told
        (date(2027, 1, 30), 100_000),
        (RENEWAL, 110_000),  # the coming term: one year's growth
        (date(2028, 1, 30), 110_000),
        (END, 121_000),
    ],
)
def test_the_income_is_that_of_the_policy_year_of_the_loss(
    case_of: CaseOf, day: date, year: int
) -> None:
    terms = terms_of(coinsurance="0.5")
    told = profile(revenue_other=100_000, expenses_stopping=0, income_growth="0.1")
    assert values_on(case_of(HALL, told, terms), terms, day).of("loss-of-income", "*") == year


def test_income_that_needs_no_premises_is_not_counted(case_of: CaseOf) -> None:
    terms = terms_of(coinsurance="0.5")
    case = case_of(HALL, profile(premises_share="0.25"), terms)
    assert required_by_page(case) == Money(Decimal(50_000))
    assert required_by_machine(by_machine(case, terms)) == Money(Decimal(50_000))


def test_where_no_income_needs_the_premises_the_clause_asks_for_nothing(case_of: CaseOf) -> None:
    """Nothing is refused, and nothing is cut: what is lost all the same is paid in full."""
    terms = terms_of(coinsurance="1")
    case = case_of(HALL, profile(premises_share=0), terms)
    assert values_on(case, terms, last_day(case)).of("loss-of-income", "*") == 0
    assert by_machine(case, terms).paid.money == Money(Decimal(80_000))


def test_the_worksheet_and_the_earnings_know_the_same_year(case_of: CaseOf) -> None:
    told = profile(payroll=60_000, payroll_kept="0.5", premises_share="0.5", income_growth="0.03")
    terms = terms_of(coinsurance="0.5")
    case = case_of(HALL, told, terms)
    assert case.income is not None
    from quarterday.core.income.closing import closing

    of = closing(case, terms)
    assert of is not None
    assert of.sheet.year == Earnings(case, terms).year(RENEWAL)


def test_a_line_at_one_place_is_measured_by_income_and_not_by_its_own_limit(
    case_of: CaseOf,
) -> None:
    """Its own limit would always be enough for its clause."""
    terms = terms_of(location="hall", coinsurance="0.5")
    case = case_of(HALL, profile(), terms)
    done = by_machine(case, terms)
    assert required_by_page(case) == required_by_machine(done) == Money(Decimal(200_000))
    assert "settling-caution-value" not in {said.id for said in done.cautions}


def test_without_a_told_income_there_is_nothing_to_measure(case_of: CaseOf) -> None:
    terms = terms_of(coinsurance="0.5")
    case = case_of(HALL, Operations(payroll=Decimal(5)), terms)
    assert measured(case, terms, terms.coverages[0], RENEWAL) is None
    assert values_on(case, terms, RENEWAL).of("loss-of-income", "*") is None


def test_a_line_at_one_place_then_counts_its_own_limit_and_says_so(case_of: CaseOf) -> None:
    terms = terms_of(location="hall", coinsurance="0.5")
    done = by_machine(case_of(HALL, Operations(), terms), terms)
    assert done.paid.money == Money(Decimal(80_000))
    assert "settling-caution-value" in {said.id for said in done.cautions}


# --- clauses that do not bite


def test_a_monthly_limit_stands_in_place_of_the_clause_everywhere(case_of: CaseOf) -> None:
    """CP 00 30, Monthly Limit of Indemnity (City of Santa Ana, page 99): limit 120,000 and 1/4; of
    80,000 in one month 30,000 is paid. That coinsurance then does not apply is from memory."""
    terms = terms_of(120_000, coinsurance="1", monthly_limit="0.25")
    case = case_of(HALL, profile(), terms)
    assert by_machine(case, terms).paid.money == Money(Decimal(30_000))
    assert case.income is not None
    assert case.income.coinsured is None


def test_an_agreed_value_past_the_term_suspends_the_clause_on_the_page(case_of: CaseOf) -> None:
    """CP 00 30, agreed value (page 99): suspended until its day; the term's last day counts."""
    for until, bites in ((END, False), (date(2028, 1, 30), True)):
        terms = terms_of(coinsurance="0.5", agreed_value_until=until)
        case = case_of(HALL, profile(), terms)
        assert case.income is not None
        assert (case.income.coinsured is not None) == bites
        assert (by_machine(case, terms).paid.money < Money(Decimal(80_000))) == bites


def test_a_stated_amount_is_asked_for_on_the_page_too(case_of: CaseOf, canada: Reference) -> None:
    terms = terms_of(coinsurance_stated_amount=300_000)
    case = case_of(HALL, profile(), terms)
    assert required_by_page(case) == Money(Decimal(300_000))
    assert required_by_machine(by_machine(case, terms)) == Money(Decimal(300_000))
    assert case.income is not None
    assert case.income.coinsured is not None
    figure = case.income.coinsured.required
    assert [node.id.rpartition("/")[2] for node in figure.inputs] == ["coinsurance_stated_amount"]
    for language in LANGUAGES:
        assert Speech(canada, language).say(figure.how)


# --- what is said


@pytest.mark.parametrize(
    ("wording", "stops", "open"),
    [(None, 100_000, True), (None, 0, False), ("whole-income", 100_000, False),
     ("less-stopping", 100_000, False)],
)  # fmt: skip
def test_an_open_wording_is_told_where_it_matters(
    case_of: CaseOf, canada: Reference, wording: str | None, stops: int, open: bool
) -> None:
    terms = terms_of(coinsurance="0.5", coinsurance_of=wording)
    case = case_of(HALL, profile(expenses_stopping=stops), terms)
    assert case.income is not None
    assert case.income.coinsured is not None
    required = case.income.coinsured.required
    assert (required.caution is not None) == open
    done = by_machine(case, terms)
    said = {caution.id: caution for caution in done.cautions}
    assert ("settling-caution-income" in said) == open
    for language in LANGUAGES:
        speech = Speech(canada, language)
        parts = [speech.parts(node) for _, node in walk(required) if isinstance(node, Figure)]
        assert all(part.label and part.how for part in parts)
        assert all(map(speech.say, done.cautions))


def test_an_open_wording_of_a_stated_amount_needs_no_caution(case_of: CaseOf) -> None:
    terms = terms_of(coinsurance_stated_amount=300_000)
    done = by_machine(case_of(HALL, profile(), terms), terms)
    assert "settling-caution-income" not in {caution.id for caution in done.cautions}


def test_the_trace_holds_the_parameter_or_the_wording(case_of: CaseOf) -> None:
    def behind(wording: str | None) -> dict[str, Any]:
        terms = terms_of(coinsurance="0.5", coinsurance_of=wording)
        case = case_of(HALL, profile(), terms)
        assert case.income is not None
        assert case.income.coinsured is not None
        return {node.id: node for _, node in walk(case.income.coinsured.required)}

    usual = behind(None)[COUNTED]
    assert isinstance(usual, Parameter)
    assert usual.source.publisher == "docsbay.net"
    said = behind("less-stopping")
    assert COUNTED not in said
    assert any(id.endswith("/coinsurance_of") for id in said)


@pytest.mark.parametrize(
    ("wording", "begins"),
    [
        ("whole-income", "A year's income, whole"),
        ("less-stopping", "A year's income less the expenses"),
        (None, "A year's income as a clause usually counts it"),
    ],
)
def test_the_calculation_alone_says_what_it_counts(
    canada: Reference, wording: str | None, begins: str
) -> None:
    told = {"revenue": {"rents": 100_000}, "months": 1,
            "expenses": {"wages": {"yearly": 40_000, "continues": 0}}}  # fmt: skip
    done = income({**told, **({"coinsurance_of": wording} if wording else {})}, canada)
    exposure = "60000.00" if wording == "less-stopping" else "100000.00"
    assert done["published"]["exposure"] == exposure
    assert Speech(canada, "en").say(done["steps"][0]).startswith(begins)
    assert Speech(canada, "fr").say(done["steps"][0])
