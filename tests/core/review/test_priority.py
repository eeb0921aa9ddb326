"""The order of findings is the documented one, whatever order the rules told them in."""

from __future__ import annotations

import random
from dataclasses import replace
from datetime import date
from decimal import Decimal
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterday.catalogue.speech import Speech
from quarterday.core.file.records import Building, Operations, Terms
from quarterday.core.money import Money
from quarterday.core.reference import LANGUAGES, Reference
from quarterday.core.review.finding import Finding, Priority, Subject, Tier
from quarterday.core.review.priority import MOST_DECISIONS, agenda, ordered, placed, with_place
from quarterday.core.review.review import review_of
from quarterday.core.words import words

SAFETY, LAPSES, MONEY, RECORD = Tier


def cad(amount: str) -> Money:
    return Money(Decimal(amount))


def finding(rule: str, priority: Priority, **fields: Any) -> Finding:
    said = words("yes")
    bare = Finding(
        rule, Subject("organisation"), ("leaders",), "decide", priority, said, said, said
    )
    return replace(bare, **fields)


def order(**priorities: Priority) -> list[str]:
    return [f.rule for f in ordered(finding(rule, p) for rule, p in priorities.items())]


def test_safety_comes_before_what_lapses_then_money_then_the_record() -> None:
    found = order(
        d=Priority(RECORD), c=Priority(MONEY, at_risk=cad("900000")), b=Priority(LAPSES),
        a=Priority(SAFETY),
    )  # fmt: skip
    assert found == ["a", "b", "c", "d"]


def test_what_lapses_sooner_comes_first_and_an_unknown_day_last() -> None:
    found = order(
        later=Priority(LAPSES, by=date(2027, 2, 1)),
        never=Priority(LAPSES, at_risk=cad("900000")),
        sooner=Priority(LAPSES, by=date(2027, 1, 1)),
    )
    assert found == ["sooner", "later", "never"]


def test_money_at_risk_for_each_dollar_of_cost_decides_with_free_ones_first() -> None:
    found = order(
        unknown=Priority(MONEY, at_risk=cad("9000000")),
        ten=Priority(MONEY, at_risk=cad("1000"), cost=cad("100")),
        hundred=Priority(MONEY, at_risk=cad("5000"), cost=cad("50")),
        free=Priority(MONEY, at_risk=cad("10"), cost=cad("0")),
        free_and_more=Priority(MONEY, at_risk=cad("20"), cost=cad("0")),
    )
    assert found == ["free_and_more", "free", "hundred", "ten", "unknown"]


def test_the_same_worth_a_dollar_puts_more_at_risk_first() -> None:
    found = order(
        small=Priority(MONEY, at_risk=cad("100"), cost=cad("1")),
        large=Priority(MONEY, at_risk=cad("1000"), cost=cad("10")),
    )
    assert found == ["large", "small"]


def test_a_day_does_not_decide_about_money() -> None:
    found = order(
        soon=Priority(MONEY, by=date(2026, 12, 1), at_risk=cad("1"), cost=cad("0")),
        more=Priority(MONEY, by=date(2027, 12, 1), at_risk=cad("2"), cost=cad("0")),
    )
    assert found == ["more", "soon"]


def test_where_people_may_be_harmed_neither_price_nor_amount_ranks() -> None:
    found = order(
        b=Priority(SAFETY, at_risk=cad("900000"), cost=cad("0")),
        a=Priority(SAFETY, at_risk=cad("1"), cost=cad("500")),
    )
    assert found == ["a", "b"]


def test_what_is_set_aside_comes_last_whatever_its_tier() -> None:
    aside = finding("a", Priority(SAFETY), set_aside="done by phone")
    kept = finding("b", Priority(RECORD))
    assert ordered([aside, kept]) == (kept, aside)


@given(st.randoms(use_true_random=False), st.integers(0, 12))
def test_the_order_does_not_depend_on_the_order_told(luck: random.Random, count: int) -> None:
    found = [
        finding(
            f"rule-{n}",
            Priority(
                luck.choice(list(Tier)),
                by=luck.choice([None, date(2027, 1, 1), date(2027, 3, 1)]),
                at_risk=luck.choice([None, cad("0"), cad("500")]),
                cost=luck.choice([None, cad("0"), cad("25")]),
            ),
        )
        for n in range(count)
    ]
    assert ordered(luck.sample(found, count)) == ordered(found)
    assert agenda(luck.sample(found, count)) == ordered(found)[:MOST_DECISIONS]


def test_the_leaders_decide_at_most_five_things() -> None:
    found = [finding(f"rule-{n}", Priority(MONEY)) for n in range(7)]
    assert [f.rule for f in agenda(found)] == ["rule-0", "rule-1", "rule-2", "rule-3", "rule-4"]


@pytest.mark.parametrize(
    "fields",
    [{"kind": "know"}, {"kind": "send back"}, {"audience": ("broker",)}, {"set_aside": "agreed"}],
)
def test_only_what_the_leaders_are_to_decide_is_on_the_agenda(fields: dict[str, Any]) -> None:
    decide = finding("a", Priority(RECORD))
    assert agenda([finding("b", Priority(SAFETY), **fields), decide]) == (decide,)


def test_a_placed_priority_gives_its_reasons_in_order() -> None:
    more = words("office-diary")
    found = placed(LAPSES, more, by=date(2027, 1, 31), at_risk=cad("5"), cost=cad("0"))
    assert [reason.id for reason in found.reasons] == [
        "priority-lapses", "priority-by", "priority-at-risk", "priority-free", "office-diary",
    ]  # fmt: skip


def test_an_unknown_cost_is_not_called_free() -> None:
    assert [reason.id for reason in placed(MONEY).reasons] == ["priority-money"]
    assert placed(MONEY, cost=cad("310")).reasons[-1].id == "priority-cost"


# --- the reason for the place


@pytest.mark.parametrize(
    ("priority", "id"),
    [
        (Priority(SAFETY, cost=cad("5"), at_risk=cad("10")), "priority-safety"),
        (Priority(LAPSES), "priority-lapses"),
        (Priority(RECORD), "priority-record"),
        (Priority(MONEY, at_risk=cad("1000"), cost=cad("10.40")), "priority-each-dollar"),
        (Priority(MONEY, at_risk=cad("1000"), cost=cad("0")), "priority-free-first"),
        (Priority(MONEY, at_risk=cad("1000")), "priority-unpriced"),
        (Priority(MONEY, cost=cad("10")), "priority-no-ratio"),
        (Priority(MONEY, at_risk=cad("9"), cost=cad("10")), "priority-no-ratio"),
    ],
)
def test_a_decision_says_why_it_stands_where_it_does(
    canada: Reference, priority: Priority, id: str
) -> None:
    found = with_place(finding("a", priority))
    assert found.priority.reasons[-1].id == id
    assert with_place(found) == found
    for language in LANGUAGES:
        assert Speech(canada, language).say(found.priority.reasons[-1]).endswith(".")


def test_the_ratio_is_told_in_whole_dollars(canada: Reference) -> None:
    found = with_place(finding("a", Priority(MONEY, at_risk=cad("1000"), cost=cad("10.40"))))
    said = Speech(canada, "en").say(found.priority.reasons[-1])
    assert said.startswith("$10 a year removes $1,000 of what is at stake: $96 for each dollar.")


def test_what_removes_only_a_part_ranks_by_that_part(canada: Reference) -> None:
    part = Priority(MONEY, at_risk=cad("9000"), cost=cad("10"), removed=cad("500"))
    assert order(part=part, whole=Priority(MONEY, at_risk=cad("900"), cost=cad("10"))) == [
        "whole", "part"]  # fmt: skip
    said = Speech(canada, "en").say(with_place(finding("a", part)).priority.reasons[-1])
    assert said.startswith("$10 a year removes $500 of what is at stake: $50 for each dollar.")


def test_the_agenda_s_decisions_are_among_the_findings(case_of: Any) -> None:
    lines = {"coverage": "loss-of-income", "limit": 1_000}
    terms = Terms.model_validate({"stage": "offered", "start": date(2027, 1, 31),
                                  "end": date(2028, 1, 31), "coverages": [lines]})  # fmt: skip
    earns = Operations(revenue_rents=Decimal(90_000), premises_share=Decimal(1))
    made = review_of(case_of(Building(id="hall", name="Hall"), terms, earns))
    assert made.agenda
    assert [f for f in made.findings if f in made.agenda] == list(made.agenda)
