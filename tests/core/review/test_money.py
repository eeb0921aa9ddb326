"""The rules about money: each triggers, stays silent, and holds its boundary."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from decimal import Decimal
from typing import Any

import pytest

from quarterday.catalogue.speech import Speech
from quarterday.core.figure import Fact, Figure, walk
from quarterday.core.file.records import Building, Organisation, PaymentChoice, Record, Terms
from quarterday.core.money import Money
from quarterday.core.premium.explain import explained, premium_change
from quarterday.core.premium.instalments import schedules
from quarterday.core.reference import Reference
from quarterday.core.review.case import Case
from quarterday.core.review.finding import Finding, Tier
from quarterday.core.review.rules.money import RULES

CaseOf = Callable[..., Case]
RENEWAL = date(2027, 1, 31)
HALL = Building(id="hall", name="Parish hall")


def cell(amount: str, coverage: str = "building", location: str = "hall", **more: Any) -> Any:
    return {"coverage": coverage, "location": location, "amount": Decimal(amount), **more}


def terms(stage: str, *premiums: Any, start: date = RENEWAL, **fields: Any) -> Terms:
    end = start.replace(year=start.year + 1)
    return Terms.model_validate(
        {"stage": stage, "start": start, "end": end, "premiums": premiums, **fields}
    )


def expiring(*premiums: Any, **fields: Any) -> Terms:
    return terms("issued", *premiums, start=date(2026, 1, 31), **fields)


def stated(of: str, amount: str, id: str = "*") -> dict[str, Any]:
    return {"of": of, "id": id, "amount": Decimal(amount)}


def found(case: Case, rule: str) -> list[Finding]:
    return [f for r in RULES if r.id == rule for f in r.find(case)]


def moved(case_of: CaseOf, before: str, after: str, **fields: Any) -> list[Finding]:
    case = case_of(expiring(cell(before)), terms("offered", cell(after), **fields))
    return found(case, "money.premium-moved")


@pytest.mark.parametrize(
    ("after", "count"),
    [
        ("1100.00", 0),  # exactly the parameter, a tenth: not beyond it
        ("1100.10", 1),
        ("900.00", 0),
        ("899.90", 1),
        ("1000.00", 0),
    ],
)
def test_a_premium_that_moved_beyond_the_parameter_is_told_up_or_down(
    case_of: CaseOf, after: str, count: int
) -> None:
    assert len(moved(case_of, "1000.00", after)) == count


def test_the_finding_tells_the_change_and_its_largest_part_and_brings_the_paper(
    case_of: CaseOf, canada: Reference
) -> None:
    before = cell("2000", exposure=Decimal(1_000_000))
    after = cell("3000", exposure=Decimal(1_200_000))
    case = case_of(HALL, expiring(before), terms("offered", after))
    (finding,) = found(case, "money.premium-moved")
    speech = Speech(canada, "en")
    assert (finding.kind, finding.audience) == ("know", ("leaders",))
    assert finding.encloses == ("what-changed",)
    assert speech.say(finding.title) == "Your premium goes up by $1,080 (50%)"
    assert "The largest part, $550: The price for each dollar insured changed" in speech.say(
        finding.means
    )


def test_the_parts_in_the_evidence_sum_to_the_change_and_show_their_lines(case_of: CaseOf) -> None:
    case = case_of(
        expiring(cell("2000", exposure=Decimal(1_000_000)), cell("300", "contents")),
        terms("offered", cell("3000", exposure=Decimal(1_200_000)), cell("77", "umbrella", "*")),
    )
    change = premium_change(case)
    assert change is not None
    assert sum((e.money.amount for e in change.effects), Decimal(0)) == change.change.amount
    (finding,) = found(case, "money.premium-moved")
    ids = {node.id for top in finding.evidence for _, node in walk(top)}
    assert f"premium-change/{RENEWAL}/offered/exposure/building/hall/premium" in ids
    assert "money.moved-share" in ids
    assert f"tax/{RENEWAL}/offered" in ids


@pytest.mark.parametrize(
    "records",
    [
        (),
        (expiring(cell("1000")),),
        (terms("offered", cell("1000")),),
        (expiring(), terms("offered", cell("1000"))),
        (expiring(cell("1000")), terms("offered")),
        (expiring(cell("1000")), terms("offered", cell("2000"), currency="USD")),
        (expiring(cell("0")), terms("offered", cell("2000"))),
    ],
)
def test_what_cannot_be_compared_is_not_told(case_of: CaseOf, records: tuple[Record, ...]) -> None:
    assert found(case_of(*records), "money.premium-moved") == []


def test_a_quebec_parish_learns_what_the_new_tax_rate_costs(canada: Reference) -> None:
    """4,000 in both years: 9 % to 9.975 % is 39 dollars (insurancebusinessmag.com, Bill 99)."""
    before = terms("issued", cell("4000"), start=date(2026, 1, 31))
    change = explained(before, terms("offered", cell("4000")), "QC", canada)
    assert change is not None
    assert [(e.id.rsplit("/", 1)[-1], e.money) for e in change.effects] == [
        ("tax-rate", Money(Decimal("39.00")))
    ]


def test_an_offer_that_does_not_add_up_is_one_finding_with_both_figures_of_each_fault(
    case_of: CaseOf, canada: Reference
) -> None:
    totals = (stated("subtotal", "2500"), stated("coverage", "1900", "building"))
    case = case_of(HALL, terms("offered", cell("2000"), cell("300", "contents"), totals=totals))
    (finding,) = found(case, "money.does-not-add-up")
    assert (finding.kind, finding.audience) == ("fix", ("broker", "insurer"))
    facts = [e for e in finding.evidence if isinstance(e, Fact)]
    figures = [e for e in finding.evidence if isinstance(e, Figure)]
    assert [f.value for f in facts] == [Money(Decimal(2500)), Money(Decimal(1900))]
    assert [f.value for f in figures] == [Money(Decimal(2300)), Money(Decimal(2000))]
    assert all(fact.origin.name == "book.xlsx" for fact in facts)
    said = Speech(canada, "en").say(finding.title)
    assert said == (
        "The offered premium does not add up in 2 places: up to $200 is in question "
        "(Subtotal before fees and tax)"
    )


def test_the_right_sum_shows_the_cells_it_is_made_of(case_of: CaseOf) -> None:
    offer = terms(
        "offered", cell("2000"), cell("300", "contents"), totals=(stated("subtotal", "1"),)
    )
    (finding,) = found(case_of(offer), "money.does-not-add-up")
    (computed,) = (e for e in finding.evidence if isinstance(e, Figure))
    assert [node.value for node in computed.inputs] == [Money(Decimal(2000)), Money(Decimal(300))]


def test_ontarios_tax_charged_in_nova_scotia_is_told(case_of: CaseOf) -> None:
    where = Organisation(name="Elm Grove Hall", province="NS", renewal_date=RENEWAL)
    case = case_of(where, terms("offered", cell("1000"), totals=(stated("tax", "80"),)))
    (finding,) = found(case, "money.does-not-add-up")
    assert finding.priority.at_risk == Money(Decimal(80))


@pytest.mark.parametrize("tax", ["80.00", "80.01", "79.99"])
def test_a_table_that_adds_up_is_not_told(case_of: CaseOf, tax: str) -> None:
    """A cent of tax is within half a cent for each of two lines, taxed one by one."""
    totals = (stated("tax", tax), stated("subtotal", "1000"))
    case = case_of(terms("offered", cell("500"), cell("500", "contents"), totals=totals))
    assert found(case, "money.does-not-add-up") == []


def test_only_the_offer_is_judged(case_of: CaseOf) -> None:
    wrong = (stated("subtotal", "1"),)
    case = case_of(
        expiring(cell("2000"), totals=wrong), terms("requested", cell("2"), totals=wrong)
    )
    assert found(case, "money.does-not-add-up") == []


def test_a_premium_over_buildings_in_two_provinces_is_not_judged_because_it_is_prorated(
    case_of: CaseOf,
) -> None:
    """Manitoba prorates multi-province risks (Bulletin 061)."""
    far = Building(id="camp", name="Camp", province="MB")
    offer = terms("offered", cell("1000"), totals=(stated("tax", "1"),))
    assert found(case_of(HALL, far, offer), "money.does-not-add-up") == []


def test_an_instalment_plan_is_told_once_with_its_form(case_of: CaseOf) -> None:
    case = case_of(terms("offered", cell("1000"), instalments_available=True))
    (finding,) = found(case, "money.instalments")
    assert (finding.kind, finding.encloses) == ("send back", ("payment-form",))
    assert finding.by == date(2027, 1, 22)  # 7 days before is Sunday the 24th: Friday


@pytest.mark.parametrize("available", [False, None])
def test_without_a_plan_or_when_nobody_knows_of_one_nothing_is_told(
    case_of: CaseOf, available: bool | None
) -> None:
    offer = terms("offered", cell("1000"), instalments_available=available)
    assert found(case_of(offer), "money.instalments") == []


def test_a_choice_already_made_is_not_asked_for_again(case_of: CaseOf) -> None:
    choice = PaymentChoice(renewal=RENEWAL, plan="one", chosen_on=RENEWAL, by="treasurer")
    case = case_of(terms("offered", instalments_available=True), choice)
    assert found(case, "money.instalments") == []


def test_an_offer_not_yet_there_tells_nothing(case_of: CaseOf) -> None:
    case = case_of(expiring(cell("1000"), instalments_available=True))
    assert [f for rule in RULES for f in rule.find(case)] == []


@pytest.mark.parametrize("language", ["en", "fr"])
def test_everything_a_finding_says_can_be_said(
    case_of: CaseOf, canada: Reference, language: str
) -> None:
    speech = Speech(canada, language)
    case = case_of(
        HALL,
        expiring(cell("1000"), cell("5", "glass", "*", kind="fee"), cell("9", "umbrella", "*")),
        terms(
            "offered",
            cell("4000", exposure=Decimal(1_000_000), rate=Decimal("0.003")),
            cell("50", "*", "*", kind="surcharge"),
            cell("7", "glass", "*", kind="fee"),
            instalments_available=True,
            totals=tuple(
                stated(of, "1", id)
                for of, id in [("coverage", "building"), ("location", "hall"), ("subtotal", "*"),
                               ("tax", "*"), ("total", "*")]
            ),
        ),
    )  # fmt: skip
    findings = [f for rule in RULES for f in rule.find(case)]
    assert {f.rule for f in findings} == {rule.id for rule in RULES}
    for finding in findings:
        assert all(map(speech.say, (finding.title, finding.means, finding.todo)))
        assert all(map(speech.say, finding.priority.reasons))
        for top in finding.evidence:
            assert all(speech.parts(node).label for _, node in walk(top))


def test_the_parameters_a_rule_names_exist_and_money_ranks_by_money(
    case_of: CaseOf, canada: Reference
) -> None:
    assert all(id in canada.parameters for rule in RULES for id in rule.parameters)
    assert moved(case_of, "1000", "2000")[0].priority.tier is Tier.MONEY


@pytest.mark.parametrize("language", ["en", "fr"])
def test_the_cost_of_each_plan_is_told_with_the_cheapest_in_the_title(
    case_of: CaseOf, canada: Reference, language: str
) -> None:
    case = case_of(terms("offered", cell("10000"), instalments_available=True))
    (finding,) = found(case, "money.instalments")
    plans = schedules(terms("offered", cell("10000")), "ON", canada)
    speech = Speech(canada, language)
    cheapest = next(iter(plans.values()))
    assert speech.money(cheapest.extra) in speech.say(finding.title)
    assert all(speech.money(plan.extra) in speech.say(finding.means) for plan in plans.values())
    costs = [node for node in finding.evidence if node.id.endswith("/extra")]
    assert [node.money for node in costs if isinstance(node, Figure)] == [
        plan.extra for plan in plans.values()
    ]


def test_without_a_premium_the_plan_is_asked_about_without_figures(case_of: CaseOf) -> None:
    case = case_of(terms("offered", instalments_available=True))
    (finding,) = found(case, "money.instalments")
    assert finding.title.id == "money-instalments-title"
