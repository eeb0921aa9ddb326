"""The rules about income: when they speak, what they ask, and what their figures rest on."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from decimal import Decimal
from typing import Any

import pytest

from quarterday.catalogue.speech import Speech
from quarterday.core.figure import Figure, Parameter, walk
from quarterday.core.file.records import Building, Decision, Operations, Organisation, Terms
from quarterday.core.file.records.terms import Coverage, Option, Premium
from quarterday.core.income.calc import income
from quarterday.core.income.picture import IncomePicture
from quarterday.core.money import Money, total
from quarterday.core.reference import Reference
from quarterday.core.review.case import Case
from quarterday.core.review.finding import Finding, Tier
from quarterday.core.review.motions import motions
from quarterday.core.review.rules.income import RULES, extra_low, too_low
from quarterday.core.review.rules.terms.gaps import option_open
from quarterday.core.terms.agreed import wishes

CaseOf = Callable[..., Case]
RENEWAL, END = date(2027, 1, 31), date(2028, 1, 31)
HALL = Building(id="hall", name="Hall", area_m2=Decimal(600))  # of middle size: 18 months
ANSWERS: dict[str, Any] = {"premises_share": Decimal(1), "expenses_stopping": Decimal(0)}


def earns(**more: Any) -> Operations:
    """Return an organisation that lives on rents of 10,000 a month and does not grow."""
    given = {"revenue_rents": Decimal(120_000), "income_growth": Decimal(0), **more}
    return Operations.model_validate(given)


def insured(limit: int | None, *more: Coverage, **fields: Any) -> Terms:
    own = {"coverage": "loss-of-income", "limit": limit, **fields.pop("line", {})}
    lines = (Coverage.model_validate(own), *more)
    return Terms(stage="offered", start=RENEWAL, end=END, coverages=lines, **fields)


def shown(case: Case) -> IncomePicture:
    found = case.income
    assert found is not None
    return found


def low(case: Case) -> Finding:
    (found,) = too_low(case)
    return found


# --- what is reckoned


def test_the_need_is_the_income_of_the_months_without_the_building(case_of: CaseOf) -> None:
    """Eighteen months of 10,000; nothing kept, saved or grown."""
    found = shown(case_of(HALL, earns(), insured(100_000)))
    assert found.need.money == Money(Decimal(180_000))
    assert found.short.money == Money(Decimal(80_000))
    assert found.lasts == 10


def test_the_months_behind_the_need_add_up_to_it(case_of: CaseOf) -> None:
    odd = earns(revenue_donations=Decimal("77777.77"), income_growth=Decimal("0.031"))
    found = shown(case_of(HALL, odd, insured(1)))
    months = [n for n in found.need.inputs if n.id.startswith("income-lost@")]
    assert len(months) == 18
    assert total(m.money for m in months if isinstance(m, Figure)) == found.need.money


def test_it_is_what_the_calculation_alone_gives(case_of: CaseOf, canada: Reference) -> None:
    profile = earns(
        revenue_donations=Decimal(90_000), payroll=Decimal(60_000), payroll_kept=Decimal("0.75"),
        expenses_stopping=Decimal(12_000), giving_kept=Decimal("0.4"),
        income_growth=Decimal("0.02"),
    )  # fmt: skip
    given = {
        "revenue": {"donations": 90_000, "rents": 120_000}, "months": 18, "growth": "0.02",
        "kept": {"donations": {"first": "0.4", "settled": "0.8", "months": 6}}, "month": 1,
        "expenses": {"wages": {"yearly": 60_000, "continues": "0.75"},
                     "food": {"yearly": 12_000, "continues": 0}},
    }  # fmt: skip
    done = income(given, canada)
    found = shown(case_of(HALL, profile, insured(1)))
    assert found.need.money == Money(Decimal(str(done["need"]))).rounded(Decimal(1))
    assert found.worst.start.month == done["worst_start"]


@pytest.mark.parametrize(("area", "months"), [(299, 12), (300, 18), (1500, 24), (None, 18)])
def test_a_larger_building_is_closed_for_longer(
    case_of: CaseOf, area: int | None, months: int
) -> None:
    sized = Building(id="hall", name="Hall", area_m2=None if area is None else Decimal(area))
    assert len(shown(case_of(sized, earns(), insured(1))).worst.months) == months


def test_the_building_that_is_closed_longest_counts(case_of: CaseOf) -> None:
    large = Building(id="school", name="School", area_m2=Decimal(2_000))
    assert shown(case_of(HALL, large, earns(), insured(1))).building == large


def test_who_rents_finds_another_place_in_six_months(case_of: CaseOf) -> None:
    rented = Building(id="hall", name="Hall", area_m2=Decimal(2_000), ownership="rent")
    assert len(shown(case_of(rented, earns(), insured(1))).worst.months) == 6


def test_only_income_that_needs_the_building_is_at_risk(case_of: CaseOf) -> None:
    half = earns(premises_share=Decimal("0.5"))
    assert shown(case_of(HALL, half, insured(1))).need.money == Money(Decimal(90_000))


def test_a_camps_fees_fall_in_summer_and_a_schools_do_not(case_of: CaseOf) -> None:
    camp = Organisation(name="Camp", province="ON", organisation_class="camp", renewal_date=RENEWAL)
    rented = Building(id="hall", name="Hall", ownership="rent")  # six months
    fees = Operations(revenue_tuition=Decimal(100_000), income_growth=Decimal(0))
    summer = shown(case_of(camp, rented, fees, insured(1)))
    assert summer.need.money == Money(Decimal(100_000))
    assert all(month.lost for month in summer.worst.months if month.first_day.month in (6, 7, 8))
    school = shown(case_of(rented, fees, insured(1)))
    assert school.need.money == Money(Decimal(60_000))


@pytest.mark.parametrize(
    ("answers", "caution"),
    [
        ({}, "both"),
        ({"premises_share": Decimal(1)}, "expenses"),
        ({"payroll_kept": Decimal(1)}, "share"),
        (ANSWERS, "season"),
    ],
)
def test_the_figure_says_what_is_assumed(
    case_of: CaseOf, answers: dict[str, Any], caution: str
) -> None:
    found = shown(case_of(HALL, earns(**answers), insured(1))).need
    assert found.caution is not None
    assert found.caution.id == f"income-caution-{caution}"


def test_the_trace_holds_published_seasons_and_marks_the_rest(case_of: CaseOf) -> None:
    gives = Operations(revenue_donations=Decimal(120_000))
    need = shown(case_of(HALL, gives, insured(1))).need
    seasons = {n.id: n for _, n in walk(need) if isinstance(n, Parameter)}
    december = seasons["season/donations/12"]
    assert december.source.publisher == "Abundance Canada"
    assert not december.illustrative
    assert seasons["season/donations/3"].illustrative


@pytest.mark.parametrize(
    "records",
    [
        (HALL, earns()),  # no terms
        (HALL, earns(), insured(None)),  # no amount
        (HALL, insured(100)),  # no income known
        (HALL, Operations(revenue_rents=Decimal(0)), insured(100)),
        (earns(), insured(100)),  # no building
    ],
)
def test_nothing_is_said_where_something_is_missing(
    case_of: CaseOf, records: tuple[Any, ...]
) -> None:
    case = case_of(*records)
    assert case.income is None
    assert not list(too_low(case))
    assert not list(extra_low(case))


def test_of_several_lines_the_largest_counts(case_of: CaseOf) -> None:
    other = Coverage(coverage="loss-of-income", location="hall", limit=Decimal(500_000))
    assert not list(too_low(case_of(HALL, earns(), insured(1_000, other))))


# --- income.too-low


def test_a_limit_that_lasts_is_enough_and_a_dollar_less_is_told(case_of: CaseOf) -> None:
    assert not list(too_low(case_of(HALL, earns(), insured(180_000))))
    found = low(case_of(HALL, earns(), insured(179_999)))
    assert (found.id, found.kind, found.by) == ("income.too-low@loss-of-income", "know", None)
    assert found.todo.id == "income-too-low-todo-know"


@pytest.mark.parametrize(
    ("limit", "answers", "kind"),
    [
        (162_001, ANSWERS, "know"),
        (162_000, ANSWERS, "decide"),
        (162_000, {}, "send back"),
        (90_001, {}, "send back"),
        (90_000, {}, "decide"),
    ],
)
def test_assumptions_need_a_larger_gap_before_leaders_decide(
    case_of: CaseOf, limit: int, answers: dict[str, Any], kind: str
) -> None:
    """10 % of 180,000 once the organisation has answered, 50 % before."""
    found = low(case_of(HALL, earns(**answers), insured(limit)))
    assert found.kind == kind
    assert found.encloses == ("operations-form",)


def test_what_is_at_risk_ranks_the_finding(case_of: CaseOf) -> None:
    found = low(case_of(HALL, earns(), insured(60_000)))
    assert found.priority.tier is Tier.MONEY
    assert found.priority.at_risk == Money(Decimal(120_000))
    assert found.priority.cost is None
    assert found.todo.id == "income-too-low-todo-decide-unpriced"


@pytest.mark.parametrize(
    ("premium", "cost"),
    [
        ({"amount": 90, "rate": "0.0015"}, 180),
        ({"amount": 90}, 180),  # over the limit of 60,000
        ({"amount": 90, "exposure": 30_000}, 360),
        ({"amount": 0}, None),  # included: no rate to go by
    ],
)
def test_the_price_is_the_lines_own_rate(
    case_of: CaseOf, premium: dict[str, Any], cost: int | None
) -> None:
    own = Premium.model_validate({"coverage": "loss-of-income", **premium})
    other = Premium(coverage="building", amount=Decimal(5_000), rate=Decimal(1))
    found = low(case_of(HALL, earns(), insured(60_000, premiums=(other, own))))
    assert found.priority.cost == (None if cost is None else Money(Decimal(cost)))


def test_the_insurers_offer_that_is_enough_counts_before_the_rate(case_of: CaseOf) -> None:
    own = Premium(coverage="loss-of-income", amount=Decimal(90), rate=Decimal("0.0015"))
    options = tuple(
        Option(coverage="loss-of-income", limit=Decimal(limit), price=Decimal(price))
        for limit, price in ((100_000, 20), (180_000, 75), (300_000, 140))
    )
    terms = insured(60_000, premiums=(own,), options=options)
    assert low(case_of(HALL, earns(), terms)).priority.cost == Money(Decimal(75))


# --- one question where the insurer offers more


def income_option(limit: int, price: int | None = 75, **more: Any) -> Option:
    given = {"coverage": "loss-of-income", "limit": limit, "price": price, **more}
    return Option.model_validate(given)


@pytest.mark.parametrize(
    ("limit", "price", "said"),
    [
        (100_000, 75, "for $75 a year. That would last 10 months."),
        (180_000, 75, "for $75 a year. That lasts until the building is back."),
        (100_000, None, "at a price still to be asked."),
    ],
)
def test_an_option_is_part_of_the_question_it_answers(
    case_of: CaseOf, canada: Reference, limit: int, price: int | None, said: str
) -> None:
    terms = insured(60_000, options=(income_option(limit, price),))
    case = case_of(HALL, earns(), terms)
    found = low(case)
    assert found.priority.cost == (None if price is None else Money(Decimal(price)))
    assert found.subject.key == "loss-of-income"
    assert found.priority.removed == Money(Decimal(limit - 60_000))
    assert found.priority.at_risk == Money(Decimal(120_000))
    assert "terms.option-open@others" not in {f.id for f in option_open(case)}
    english = Speech(canada, "en").say
    assert said in english(found.means)
    assert ("have us ask for $180,000" in english(found.todo)) == (limit < 180_000)
    (motion,) = motions([found])
    assert f"be raised to ${limit:,}" in english(motion.moved)
    assert ("what $180,000 would cost" in english(motion.moved)) == (limit < 180_000)
    assert english(motion.moved).endswith(".")
    assert " ." not in english(motion.moved)
    for words in (found.title, found.means, found.todo, motion.moved, motion.instead):
        assert words is not None
        assert Speech(canada, "fr").say(words)
    facts = {node.id.partition("/options/")[2] for node in found.evidence}
    assert "loss-of-income/*/limit" in facts


def test_of_several_options_the_cheapest_that_is_enough_is_asked(case_of: CaseOf) -> None:
    options = (income_option(100_000, 20), income_option(180_000, 90), income_option(300_000, 80))
    found = low(case_of(HALL, earns(), insured(60_000, options=options)))
    assert found.priority.cost == Money(Decimal(80))
    found = low(case_of(HALL, earns(), insured(60_000, options=options[:1])))
    assert dict(found.title.args)["offered"] == Money(Decimal(100_000))


def test_an_option_that_the_clause_would_still_cut_says_so(
    case_of: CaseOf, canada: Reference
) -> None:
    """120,000 a year at 100 %: an offer of 100,000 does not meet the clause, 200,000 does."""
    clause = {"line": {"coinsurance": Decimal(1)}}
    short = insured(60_000, options=(income_option(100_000),), **clause)
    enough = insured(60_000, options=(income_option(200_000),), **clause)
    for language, said in (("en", "it asks for $120,000"), ("fr", "elle demande 120 000 $")):
        say = Speech(canada, language).say
        means = [say(low(case_of(HALL, earns(), t)).means) for t in (short, enough)]
        plain = [text.replace("\xa0", " ").replace("\u202f", " ") for text in means]
        assert said in plain[0]
        assert said not in plain[1]


def test_an_option_below_the_limit_answers_nothing(case_of: CaseOf) -> None:
    found = low(case_of(HALL, earns(), insured(60_000, options=(income_option(50_000),))))
    assert found.title.id == "income-too-low-title"


def test_while_nothing_is_decided_the_option_stands_with_the_others(case_of: CaseOf) -> None:
    """A gap too small to be decided leaves the option as a question of its own."""
    terms = insured(170_000, options=(income_option(200_000),))
    case = case_of(HALL, earns(**ANSWERS), terms)
    assert low(case).kind == "know"
    assert "terms.option-open@others" in {f.id for f in option_open(case)}


def test_more_for_living_elsewhere_is_one_question_too(case_of: CaseOf, canada: Reference) -> None:
    """Eighteen months at 2,000 are 36,000; 10,000 is insured and 30,000 offered."""
    extra = Coverage(coverage="extra-expense", limit=Decimal(10_000))
    option = income_option(30_000, 40, coverage="extra-expense")
    profile = earns(rent_elsewhere=Decimal(2_000))
    case = case_of(HALL, profile, insured(180_000, extra, options=(option,)))
    (found,) = extra_low(case)
    assert (found.id, found.kind) == ("income.extra-expense-low@extra-expense", "decide")
    assert "terms.option-open@others" not in {f.id for f in option_open(case)}
    (motion,) = motions([found])
    for language in ("en", "fr"):
        say = Speech(canada, language).say
        assert "30" in say(found.title)
        assert all(map(say, (found.means, found.todo, motion.moved)))


@pytest.mark.parametrize("question", [
    "income.too-low@loss-of-income", "option/loss-of-income/*", "terms.option-open@loss-of-income",
])  # fmt: skip
def test_the_answer_to_the_question_is_the_answer_to_the_option(
    case_of: CaseOf, question: str
) -> None:
    answer = Decision(
        renewal=RENEWAL, question=question, answer="take-it", decided_on=RENEWAL, by="Chair"
    )
    terms = insured(60_000, options=(income_option(100_000),))
    case = case_of(HALL, earns(), terms, answer)
    assert [row.state for row in case.options] == ["taken"]
    (wish,) = wishes(case.file, terms)
    assert wish.is_taken


def test_a_coinsurance_clause_cuts_what_is_paid(case_of: CaseOf) -> None:
    """120,000 a year at 100 %: 60,000 carried pays half of each loss, at most the limit."""
    clause = {"line": {"coinsurance": Decimal(1)}}
    case = case_of(HALL, earns(), insured(90_000, **clause))
    found = shown(case)
    assert found.coinsured is not None
    assert found.coinsured.required.money == Money(Decimal(120_000))
    assert found.coinsured.share.number == Decimal("0.75")
    assert found.coinsured.paid.money == Money(Decimal(90_000))
    assert low(case).means.id == "income-too-low-means-clause"


def test_a_clause_can_leave_a_closure_short_that_the_limit_alone_would_pay(case_of: CaseOf) -> None:
    """Six months of 10,000 are 60,000; the limit of 60,000 is half of what the clause asks."""
    rented = Building(id="hall", name="Hall", ownership="rent")
    case = case_of(rented, earns(), insured(60_000, line={"coinsurance": Decimal(1)}))
    assert low(case).priority.at_risk == Money(Decimal(30_000))
    assert not list(too_low(case_of(rented, earns(), insured(60_000))))


def test_a_clause_that_is_met_is_not_spoken_of(case_of: CaseOf) -> None:
    case = case_of(HALL, earns(), insured(120_000, line={"coinsurance": Decimal("0.8")}))
    assert low(case).means.id == "income-too-low-means"


# --- income.extra-expense-low


def _elsewhere(case_of: CaseOf, *lines: Coverage, **answers: Any) -> Case:
    given = {"rent_elsewhere": Decimal(3_000), "moving_costs": Decimal(6_000), **answers}
    return case_of(HALL, earns(**given), insured(1, *lines))


def _extra(coverage: str, limit: int) -> Coverage:
    return Coverage(coverage=coverage, limit=Decimal(limit))


def test_living_elsewhere_is_compared_with_both_its_covers(case_of: CaseOf) -> None:
    """18 × 3,000 + 6,000 = 60,000."""
    enough = (_extra("extra-expense", 40_000), _extra("alternate-premises", 20_000))
    assert not list(extra_low(_elsewhere(case_of, *enough)))
    (found,) = extra_low(_elsewhere(case_of, enough[0], **ANSWERS))
    assert found.kind == "decide"
    assert found.priority.at_risk == Money(Decimal(20_000))
    assert [e.value for e in found.evidence] == [
        Money(Decimal(n)) for n in (60_000, 40_000, 20_000)
    ]


@pytest.mark.parametrize(
    ("limit", "kind"), [(59_000, "know"), (40_000, "send back"), (30_000, "decide")]
)
def test_the_gap_decides_what_is_asked(case_of: CaseOf, limit: int, kind: str) -> None:
    (found,) = extra_low(_elsewhere(case_of, _extra("extra-expense", limit)))
    assert (found.id, found.kind) == ("income.extra-expense-low@extra-expense", kind)
    assert found.todo.id == f"income-extra-expense-low-todo-{kind.replace(' ', '-')}"


def test_without_a_known_rent_nothing_is_said_of_living_elsewhere(case_of: CaseOf) -> None:
    assert not list(extra_low(case_of(HALL, earns(), insured(1))))


# --- what is read


@pytest.mark.parametrize("language", ["en", "fr"])
def test_every_finding_can_be_said_with_its_evidence(
    case_of: CaseOf, canada: Reference, language: str
) -> None:
    own = Premium(coverage="loss-of-income", amount=Decimal(90), rate=Decimal("0.0015"))
    clause = {"line": {"coinsurance": Decimal(1)}}
    extra = _extra("extra-expense", 30_000)
    whole = {**ANSWERS, "rent_elsewhere": 3_000, "revenue_donations": 50_000, "giving_kept": "0.4"}
    cases = [
        case_of(HALL, earns(), insured(limit, premiums=(own,))) for limit in (1, 10_001, 170_000)
    ]
    cases += [
        case_of(HALL, earns(), insured(150_000)), case_of(HALL, earns(**whole), insured(1, extra)),
        case_of(HALL, earns(**whole), insured(60_000, _extra("extra-expense", 53_000), **clause)),
        case_of(HALL, earns(rent_elsewhere=3_000),
                insured(60_000, _extra("extra-expense", 40_000))),
    ]  # fmt: skip
    speech = Speech(canada, language)
    found = [finding for case in cases for rule in RULES for finding in rule.find(case)]
    assert {finding.rule for finding in found} == {rule.id for rule in RULES}
    assert {finding.kind for finding in found} == {"decide", "send back", "know"}
    for finding in found:
        said = (finding.title, finding.means, finding.todo, *finding.priority.reasons)
        assert all(speech.say(sentence) for sentence in said)
        for node in (node for e in finding.evidence for _, node in walk(e)):
            assert speech.parts(node).label


@pytest.mark.parametrize(
    ("language", "title", "means"),
    [
        ("en", "After a fire, your income cover would be about $120,000 short",
         "That lasts 6 months."),
        ("fr", "Après un incendie, il manquerait environ 120 000 $ à votre assurance des revenus",
         "Cela dure 6 mois."),
    ],
)  # fmt: skip
def test_the_leaders_read_the_gap_and_how_long_the_cover_lasts(
    case_of: CaseOf, canada: Reference, language: str, title: str, means: str
) -> None:
    found = low(case_of(HALL, earns(), insured(60_000)))
    speech = Speech(canada, language)
    said = [
        speech.say(text).replace("\xa0", " ").replace("\u202f", " ").replace("’", "'")
        for text in (found.title, found.means)
    ]
    assert said[0] == title
    assert said[1].strip().endswith(means)


def test_evidence_rests_only_on_parameters_that_the_rules_name(
    case_of: CaseOf, canada: Reference
) -> None:
    gives = earns(revenue_donations=Decimal(5_000), revenue_other=Decimal(10), income_growth=None)
    case = case_of(HALL, gives, insured(1))
    used = {n.id for e in low(case).evidence for _, n in walk(e) if n.id.startswith("income.")}
    assert used <= {id for rule in RULES for id in rule.parameters}
    assert used <= canada.parameters.keys()
