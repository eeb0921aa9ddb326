"""People first: abuse cover and prevention, and activities that nothing covers."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from decimal import Decimal
from typing import Any

import pytest

from quarterday.catalogue.speech import Speech
from quarterday.core.file.records import Operations, Terms
from quarterday.core.money import Money
from quarterday.core.reference import LANGUAGES, Reference
from quarterday.core.review.case import Case
from quarterday.core.review.finding import Finding, Tier
from quarterday.core.review.priority import ordered
from quarterday.core.review.rules.people import (
    RULES,
    abuse_unqualified,
    activity_uncovered,
    screening_due,
)
from quarterday.core.review.rules.terms import RULES as TERMS_RULES

CaseOf = Callable[..., Case]
TermsOf = Callable[..., Terms]
AS_OF, RENEWAL = date(2026, 11, 25), date(2027, 1, 31)
ABUSE = {"coverage": "abuse-liability", "limit": 1000000}
NOBODY: dict[str, Any] = dict.fromkeys(
    ("children", "youth", "vulnerable_adults", "day_care", "school", "camp"), False
)
AT_RISK = {
    "en": "Call emergency services and child protection first, as provincial law requires, "
    "then us.",
    "fr": "Appelez d'abord les services d'urgence et la protection de l'enfance, comme la loi de "
    "la province l'exige, puis nous.",
}


def _only(findings: Any) -> Finding | None:
    found: list[Finding] = list(findings)
    assert len(found) <= 1
    return found[0] if found else None


# people.abuse-unqualified


@pytest.mark.parametrize("field", sorted(NOBODY))
def test_everyone_in_care_calls_for_qualified_cover(
    case_of: CaseOf, terms_of: TermsOf, field: str
) -> None:
    profile = Operations(**{**NOBODY, field: True})
    case = case_of(terms_of("offered", {**ABUSE, "qualified": False}), profile)
    found = _only(abuse_unqualified(case))
    assert found
    assert (found.kind, found.encloses) == ("decide", ("abuse-form",))
    assert found.audience == ("leaders", "broker")
    assert found.priority.tier is Tier.SAFETY_OR_DUTY


@pytest.mark.parametrize(
    ("lines", "state"),
    [
        ([], "absent"),
        ([{**ABUSE, "limit": 0, "qualified": True}], "absent"),
        ([{**ABUSE, "qualified": False}], "unqualified"),
        ([{**ABUSE, "qualified": None}], "unstated"),
        ([{**ABUSE, "qualified": True}], None),
        (
            [
                {**ABUSE, "location": "hall", "qualified": True},
                {**ABUSE, "location": "camp", "qualified": False},
            ],
            "unqualified",
        ),
    ],
)
def test_the_weakest_line_says_how_the_cover_stands(
    case_of: CaseOf, terms_of: TermsOf, lines: list[dict[str, Any]], state: str | None
) -> None:
    found = _only(abuse_unqualified(case_of(terms_of("offered", *lines), Operations(youth=True))))
    assert (dict(found.title.args)["state"] if found else None) == state


def test_cover_that_the_offer_drops_says_so(case_of: CaseOf, terms_of: TermsOf) -> None:
    had = terms_of("issued", {**ABUSE, "qualified": True})
    found = _only(abuse_unqualified(case_of(had, terms_of("offered"), Operations(youth=True))))
    assert found
    assert dict(found.title.args)["state"] == "dropped"


def test_nobody_in_care_needs_no_abuse_cover(case_of: CaseOf, terms_of: TermsOf) -> None:
    assert _only(abuse_unqualified(case_of(terms_of("offered"), Operations(**NOBODY)))) is None


def test_an_unanswered_question_about_care_is_sent_back_as_a_duty(
    case_of: CaseOf, terms_of: TermsOf, canada: Reference
) -> None:
    nearly = Operations(**{**NOBODY, "youth": None})
    found = _only(abuse_unqualified(case_of(terms_of("offered"), nearly)))
    assert found
    assert (found.kind, found.encloses) == ("send back", ("operations-form",))
    assert found.priority.tier is Tier.SAFETY_OR_DUTY
    assert "whether young people are in your care" in Speech(canada, "en").say(found.means)


def test_qualified_cover_and_missing_terms_raise_nothing(
    case_of: CaseOf, terms_of: TermsOf
) -> None:
    assert _only(abuse_unqualified(case_of(Operations(children=True)))) is None
    qualified = terms_of("offered", {**ABUSE, "qualified": True})
    assert _only(abuse_unqualified(case_of(qualified))) is None


@pytest.mark.parametrize(
    ("price", "said"),
    [(0, "up to $2,000,000, at no extra charge."), (80, "up to $2,000,000, for $80 a year.")],
)
def test_what_the_insurer_offers_to_who_shows_a_plan_is_told_there(
    case_of: CaseOf, terms_of: TermsOf, canada: Reference, price: int, said: str
) -> None:
    option = {"coverage": "abuse-liability", "limit": 2000000, "price": price}
    terms = terms_of("offered", {**ABUSE, "qualified": False}, options=[option])
    found = _only(abuse_unqualified(case_of(terms, Operations(children=True))))
    assert found
    assert Speech(canada, "en").say(found.means).endswith(said)
    assert "2 000 000" in Speech(canada, "fr").say(found.means).replace("\xa0", " ")
    assert found.priority.cost == Money(Decimal(0))


def test_it_stands_first_on_the_agenda_whatever_else_is_open(
    case_of: CaseOf, terms_of: TermsOf
) -> None:
    """People come before money and dates: the declared order of the review."""
    case = case_of(
        terms_of("issued", {"coverage": "loss-of-income", "limit": 900000}),
        terms_of("offered", {**ABUSE, "qualified": False}),
        Operations(children=True, volunteers=9, volunteer_drivers=True, online_giving=True),
    )
    found = ordered(f for rule in (*TERMS_RULES, *RULES) for f in rule.find(case))
    assert found[0].rule == "people.abuse-unqualified"
    assert sum(f.kind == "decide" for f in found) > 3


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("lines", [[], [{**ABUSE, "qualified": False}], [ABUSE]])
def test_prevention_is_named_before_insurance_and_the_authorities_before_us(
    case_of: CaseOf,
    terms_of: TermsOf,
    canada: Reference,
    language: str,
    lines: list[dict[str, Any]],
) -> None:
    case = case_of(terms_of("offered", *lines), Operations(children=True))
    found = _only(abuse_unqualified(case))
    assert found
    speech = Speech(canada, language)
    assert speech.say(found.means).startswith(
        {"en": "Prevention protects people", "fr": "La prévention protège les personnes"}[language]
    )
    todo = speech.say(found.todo)
    assert todo.index(AT_RISK[language]) < 90, "the person at risk comes before the paper"
    assert speech.say(found.title)


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_finding_about_care_says_whom_to_call_first(
    case_of: CaseOf, terms_of: TermsOf, canada: Reference, language: str
) -> None:
    speech = Speech(canada, language)
    for profile in (Operations(children=True), Operations()):
        case = case_of(terms_of("offered"), profile)
        for finding in (*abuse_unqualified(case), *screening_due(case)):
            assert AT_RISK[language] in speech.say(finding.todo)


# people.screening-due


def test_record_checks_are_renewed_every_three_years(canada: Reference) -> None:
    """Scouts Canada, By-Laws, Policies and Procedures, section 3000 (edition of 2009-01-08):
    "Police Record Checks must be renewed every three years"."""
    interval = canada.parameter("people.record-check-months", AS_OF)
    assert interval.value == Decimal(36)
    assert not interval.illustrative
    assert interval.source.publisher == "Scouts Canada"


@pytest.mark.parametrize(
    ("field", "fresh", "due"),
    [
        ("prevention_plan_reviewed_on", date(2026, 2, 1), date(2026, 1, 31)),
        ("screening_training_on", date(2026, 2, 1), date(2026, 1, 31)),
        ("record_checks_on", date(2024, 2, 1), date(2024, 1, 31)),
    ],
)
def test_a_step_is_due_when_its_interval_ends_by_the_renewal(
    case_of: CaseOf, terms_of: TermsOf, field: str, fresh: date, due: date
) -> None:
    done: dict[str, Any] = {
        "children": True,
        "prevention_plan_reviewed_on": AS_OF,
        "screening_training_on": AS_OF,
        "record_checks_on": AS_OF,
    }
    assert _only(screening_due(case_of(Operations(**{**done, field: fresh})))) is None
    found = _only(screening_due(case_of(Operations(**{**done, field: due}))))
    assert found
    assert (found.kind, found.encloses) == ("send back", ("abuse-form",))
    assert dict(found.title.args)["count"] == 1
    assert f"operations//{field}" in {e.id for e in found.evidence}


@pytest.mark.parametrize(
    ("done", "said"),
    [
        (date(2025, 11, 24), "was due on November 24, 2026"),
        (date(2025, 11, 25), "falls due on November 25, 2026"),
    ],
)
def test_a_step_whose_day_has_passed_is_said_to_be_late(
    case_of: CaseOf, canada: Reference, done: date, said: str
) -> None:
    profile = Operations(children=True, prevention_plan_reviewed_on=done)
    found = _only(screening_due(case_of(profile)))
    assert found
    assert f"a review of the prevention plan {said}" in Speech(canada, "en").say(found.means)


def test_a_step_nobody_recorded_is_due(case_of: CaseOf, canada: Reference) -> None:
    found = _only(screening_due(case_of(Operations(camp=True))))
    assert found
    assert dict(found.title.args)["count"] == 3
    means = Speech(canada, "en").say(found.means)
    assert "no date of police record checks is on file (every 36 months)" in means


def test_after_the_renewal_the_day_of_the_review_counts(case_of: CaseOf) -> None:
    profile = Operations(
        children=True,
        prevention_plan_reviewed_on=date(2026, 2, 10),
        screening_training_on=date(2026, 6, 1),
        record_checks_on=date(2026, 6, 1),
    )
    assert _only(screening_due(case_of(profile))) is None
    assert _only(screening_due(case_of(profile, as_of=date(2027, 2, 9)))) is None
    assert _only(screening_due(case_of(profile, as_of=date(2027, 2, 10))))


@pytest.mark.parametrize("profile", [Operations(**NOBODY), Operations()])
def test_without_people_in_care_or_an_answer_no_step_is_due(
    case_of: CaseOf, profile: Operations
) -> None:
    assert _only(screening_due(case_of(profile))) is None


# people.activity-uncovered


@pytest.mark.parametrize(
    ("answers", "coverage", "kind"),
    [
        ({"volunteer_drivers": True}, "non-owned-vehicle", "decide"),
        ({"counselling": True}, "counselling-liability", "decide"),
        ({"trips_abroad": True}, "travel", "decide"),
        ({"trips_in_canada": True}, "travel", "fix"),
        ({"construction_planned": True}, "construction-in-progress", "decide"),
        ({"food_service": True}, "products-liability", "fix"),
        ({"hall_rental": True}, "hall-rental-liability", "fix"),
        ({"hall_rental": True, "alcohol_at_events": True}, "hall-rental-liability", "decide"),
    ],
)
def test_a_declared_activity_without_its_cover_is_found(
    case_of: CaseOf, terms_of: TermsOf, answers: dict[str, Any], coverage: str, kind: str
) -> None:
    found = _only(activity_uncovered(case_of(terms_of("offered"), Operations(**answers))))
    assert found
    assert (found.id, found.kind) == (f"people.activity-uncovered@{coverage}", kind)
    assert ("leaders" in found.audience) is (kind == "decide")
    covered = terms_of("offered", {"coverage": coverage, "limit": 1000000})
    assert _only(activity_uncovered(case_of(covered, Operations(**answers)))) is None


@pytest.mark.parametrize("answer", [False, None])
def test_no_and_no_answer_declare_no_activity(
    case_of: CaseOf, terms_of: TermsOf, answer: bool | None
) -> None:
    profile = Operations(volunteer_drivers=answer)
    assert _only(activity_uncovered(case_of(terms_of("offered"), profile))) is None
    assert _only(activity_uncovered(case_of(Operations(volunteer_drivers=True)))) is None


def test_the_price_on_offer_orders_it(
    case_of: CaseOf, terms_of: TermsOf, canada: Reference
) -> None:
    options = [{"coverage": "non-owned-vehicle", "limit": 2000000, "price": 95}]
    case = case_of(terms_of("offered", options=options), Operations(volunteer_drivers=True))
    found = _only(activity_uncovered(case))
    assert found
    assert (found.priority.cost, found.priority.at_risk) == (
        Money(Decimal(95)),
        Money(Decimal(2000000)),
    )
    say = Speech(canada, "en").say
    assert say(found.title) == (
        "Nothing in your policy answers for this: people drive their own vehicles for you"
    )
    assert say(found.todo) == "Decide: take it for $95 a year, leave it, later, or ask us."


def test_what_the_offer_drops_is_left_to_the_rule_for_it(
    case_of: CaseOf, terms_of: TermsOf
) -> None:
    had = terms_of("issued", {"coverage": "non-owned-vehicle", "limit": 2000000})
    case = case_of(had, terms_of("offered"), Operations(volunteer_drivers=True))
    assert _only(activity_uncovered(case)) is None


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_sentence_of_the_family_can_be_spoken(
    case_of: CaseOf, terms_of: TermsOf, canada: Reference, language: str
) -> None:
    speech = Speech(canada, language)
    profile = Operations(children=True, food_service=True, counselling=True,
                         record_checks_on=date(2020, 1, 1))  # fmt: skip
    case = case_of(terms_of("offered", {**ABUSE, "qualified": False}), profile)
    found = [finding for rule in RULES for finding in rule.find(case)]
    assert {f.rule for f in found} == {rule.id for rule in RULES}
    for finding in found:
        for words in (finding.means, finding.todo, *finding.priority.reasons):
            assert speech.say(words).endswith("."), finding.id
        assert not speech.say(finding.title).endswith(".")
        assert all(speech.parts(node).label for node in finding.evidence)


def test_rules_name_only_parameters_that_exist(canada: Reference) -> None:
    for rule in RULES:
        assert set(rule.parameters) <= set(canada.parameters)
