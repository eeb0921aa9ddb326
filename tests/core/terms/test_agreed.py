"""What was agreed is the offer with exactly the accepted changes, and nothing else moves."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from decimal import Decimal
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterday.core.file.records import Bound, Decision, Terms
from quarterday.core.review.case import Case
from quarterday.core.review.rules.terms.agreed import not_as_agreed
from quarterday.core.terms.agreed import Wish, agreed, wishes
from quarterday.core.terms.compare import compare

RENEWAL = date(2027, 1, 31)
CaseOf = Callable[..., Case]


def line(coverage: str, location: str = "*", **fields: Any) -> dict[str, Any]:
    return {"coverage": coverage, "location": location, **fields}


def terms(stage: str, start: date = RENEWAL, **fields: Any) -> Terms:
    end = start.replace(year=start.year + 1)
    return Terms.model_validate({"stage": stage, "start": start, "end": end, **fields})


OFFERED = terms(
    "offered",
    coverages=(line("building", "hall", limit="900000.00", deductible="5000.00"),
               line("sewer-backup", limit="25000.00", deductible="10000.00", wording="SB 2")),
    premiums=({"coverage": "sewer-backup", "amount": "390.00", "exposure": "25000.00"},
              {"coverage": "building", "location": "hall", "amount": "1400.00"}),
    totals=({"of": "total", "amount": "1933.20"},),
    options=({"coverage": "sewer-backup", "limit": "100000.00", "price": "640.00"},
             {"coverage": "overland-flood", "limit": "250000.00", "deductible": "25000.00",
              "price": "780.00"},
             {"coverage": "earthquake"}),
)  # fmt: skip


def took(question: str, answer: str = "take-it", renewal: date = RENEWAL) -> Decision:
    return Decision.model_validate(
        {"renewal": renewal, "question": question, "answer": answer,
         "decided_on": date(2026, 12, 1), "by": "the board"}
    )  # fmt: skip


def of(case: Case) -> dict[str, Wish]:
    return {wish.id: wish for wish in wishes(case.file, OFFERED)}


def test_every_option_may_be_agreed_and_one_keeps_the_other_clauses_of_its_line(
    case_of: CaseOf,
) -> None:
    found = of(case_of(OFFERED))
    assert list(found) == [
        "option/sewer-backup/*", "option/overland-flood/*", "option/earthquake/*",
    ]  # fmt: skip
    raised = found["option/sewer-backup/*"]
    assert raised.line.limit == Decimal(100_000)
    assert (raised.line.deductible, raised.line.wording) == (Decimal(10_000), "SB 2")
    assert (raised.price, found["option/earthquake/*"].price) == (Decimal(640), None)


@pytest.mark.parametrize(
    "question",
    ["option/overland-flood/*", "terms.option-open@overland-flood"],
)
def test_an_option_the_leaders_took_is_taken_by_whichever_name(
    question: str, case_of: CaseOf
) -> None:
    found = of(case_of(OFFERED, took(question)))
    assert [id for id, wish in found.items() if wish.is_taken] == ["option/overland-flood/*"]


@pytest.mark.parametrize(
    "decision",
    [took("option/overland-flood/*", "leave-it"), took("option/overland-flood/*", "later"),
     took("option/overland-flood/*", renewal=date(2026, 1, 31)), took("values.stale@hall"),
     took("terms.option-open@others")],
)  # fmt: skip
def test_nothing_else_takes_an_option(decision: Decision, case_of: CaseOf) -> None:
    assert not any(wish.is_taken for wish in of(case_of(OFFERED, decision)).values())


def test_what_was_asked_for_may_be_agreed_where_the_offer_gives_something_else(
    case_of: CaseOf,
) -> None:
    asked = terms(
        "requested",
        coverages=(line("building", "hall", limit="1200000.00"), line("crime", limit="10000.00"),
                   line("sewer-backup", limit="25000.00")),
    )  # fmt: skip
    found = of(case_of(OFFERED, asked))
    assert [id for id in found if id.startswith("requested/")] == [
        "requested/building/hall", "requested/crime/*",
    ]  # fmt: skip
    hall = found["requested/building/hall"]
    assert (hall.line.limit, hall.line.deductible) == (Decimal(1_200_000), Decimal(5000))
    assert (hall.price, hall.is_taken) == (None, False)


def test_an_accepted_option_joins_the_terms_and_the_premium_table(case_of: CaseOf) -> None:
    found = of(case_of(OFFERED))
    made = agreed(OFFERED, [found["option/sewer-backup/*"], found["option/overland-flood/*"]])
    assert {d.coverage for d in compare(OFFERED, made)} == {"sewer-backup", "overland-flood"}
    assert [d for d in compare(OFFERED, made) if d.direction == "worse"] == []
    assert {p.coverage: p.amount for p in made.premiums} == {
        "sewer-backup": Decimal(1030), "building": Decimal(1400), "overland-flood": Decimal(780),
    }  # fmt: skip
    assert next(p for p in made.premiums if p.coverage == "sewer-backup").exposure is None
    assert made.totals == ()
    assert [option.coverage for option in made.options] == ["earthquake"]


def test_nothing_accepted_is_the_offer_itself() -> None:
    assert agreed(OFFERED, ()) == OFFERED


@given(st.sets(st.sampled_from(range(3))))
def test_the_premium_rises_by_the_prices_of_what_was_accepted_to_the_cent(
    case_of: CaseOf, chosen: set[int]
) -> None:
    found = [wish for n, wish in enumerate(of(case_of(OFFERED)).values()) if n in chosen]
    made = agreed(OFFERED, found)
    before, after = (sum(p.amount for p in t.premiums) for t in (OFFERED, made))
    assert after - before == sum((wish.price or Decimal(0) for wish in found), Decimal(0))
    again = agreed(OFFERED, reversed(found))
    assert not compare(made, again)


def test_the_policy_is_held_to_what_was_bound_and_not_to_the_bare_offer(case_of: CaseOf) -> None:
    """A policy like the offer, where more was bound: the option is missing."""
    wish = of(case_of(OFFERED))["option/sewer-backup/*"]
    bound = Bound(renewal=RENEWAL, bound_on=date(2027, 1, 20), by="x", accepted=(wish.id,),
                  agreed=agreed(OFFERED, [wish]))  # fmt: skip
    issued = OFFERED.model_copy(update={"stage": "issued", "options": ()})
    later = date(2027, 3, 1)
    assert not list(not_as_agreed(case_of(OFFERED, issued, as_of=later)))
    (found,) = not_as_agreed(case_of(OFFERED, bound, issued, as_of=later))
    assert (found.rule, found.kind) == ("terms.not-as-agreed", "fix")
    whole = issued.model_copy(update={"coverages": bound.agreed.coverages})
    assert not list(not_as_agreed(case_of(OFFERED, bound, whole, as_of=later)))
