"""The contents worksheet: categories that add up, beside a whole."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from decimal import Decimal
from typing import Any

import pytest

from quarterday.catalogue.speech import Speech
from quarterday.core.file.records import Building, Terms, Valuation
from quarterday.core.file.records.terms import Coverage, Premium
from quarterday.core.money import Money
from quarterday.core.reference import Reference
from quarterday.core.review.case import Case
from quarterday.core.review.rules.values.contents import contents_too_low
from quarterday.core.values.contents import worksheet

CaseOf = Callable[..., Case]
HALL = Building(id="hall", name="Hall")


def line(amount: int | str, feature: str | None = None, year: int = 2024) -> Valuation:
    return Valuation(
        building="hall", valued="contents", feature=feature, amount=Decimal(amount),
        valued_on=date(year, 5, 1), basis="owner-estimate",
    )  # fmt: skip


def insured(limit: int, *premiums: Premium, **more: Any) -> Terms:
    given = {"coverage": "contents", "location": "hall", "limit": limit, **more}
    return Terms(
        stage="offered", start=date(2027, 1, 31), end=date(2028, 1, 31),
        coverages=(Coverage.model_validate(given),), premiums=premiums,
    )  # fmt: skip


def amount(case: Case) -> Decimal | None:
    found = worksheet(case, HALL)
    return found.money.amount if found else None


@pytest.mark.parametrize(
    ("lines", "worth"),
    [
        ((), None),
        ((line(50_000),), 50_000),
        ((line(50_000, year=2020), line(60_000)), 60_000),
        ((line(12_000, "Kitchen"), line(30_000, "Instruments")), 42_000),
        ((line(12_000, "Kitchen", 2020), line(15_000, "kitchen")), 15_000),
        ((line(50_000), line(12_000, "Kitchen")), 50_000),  # a list that is not complete
        ((line(50_000), line(12_000, "Kitchen"), line(45_000, "Office")), 57_000),
        ((line(12_000, "Kitchen", 2027),), None),  # after the review's day
    ],
)
def test_the_worksheet_adds_the_newest_of_each_category(
    case_of: CaseOf, lines: tuple[Valuation, ...], worth: int | None
) -> None:
    assert amount(case_of(HALL, *lines)) == worth


def test_the_figure_rests_on_each_line(case_of: CaseOf) -> None:
    found = worksheet(case_of(HALL, line("0.60", "Books"), line("1.20", "Office")), HALL)
    assert found is not None
    assert [node.value for node in found.inputs] == [Money(Decimal(n)) for n in ("0.60", "1.20")]
    assert found.money == Money(Decimal(2)), "to the dollar, half-up, once: not 1 + 1"


@pytest.mark.parametrize(
    ("limit", "kind"), [(42_000, None), (41_999, "know"), (41_160, "decide"), (41_161, "know")]
)
def test_contents_below_their_worksheet_are_told(
    case_of: CaseOf, limit: int, kind: str | None
) -> None:
    """2 % of 42,000 is 840."""
    case = case_of(HALL, line(12_000, "Kitchen"), line(30_000, "Office"), insured(limit))
    assert [f.kind for f in contents_too_low(case)] == ([kind] if kind else [])


def test_the_price_is_the_contents_own_rate(case_of: CaseOf) -> None:
    premiums = (
        Premium(coverage="building", location="hall", amount=Decimal(9), rate=Decimal(1)),
        Premium(coverage="contents", location="hall", amount=Decimal(35), rate=Decimal("0.00175")),
    )
    case = case_of(HALL, line(42_000), insured(20_000, *premiums))
    (found,) = contents_too_low(case)
    assert found.priority.at_risk == Money(Decimal(22_000))
    assert found.priority.cost == Money(Decimal(39)), "38.50, to the dollar"


def test_a_line_that_shares_its_amount_is_left_to_its_blanket(case_of: CaseOf) -> None:
    case = case_of(HALL, line(42_000), insured(20_000, blanket="all"))
    assert not list(contents_too_low(case))


@pytest.mark.parametrize("language", ["en", "fr"])
def test_it_can_be_said_in_each_form(case_of: CaseOf, canada: Reference, language: str) -> None:
    own = Premium(coverage="contents", location="hall", amount=Decimal(35))
    cases = [
        case_of(HALL, line(42_000), insured(20_000, own)),
        case_of(HALL, line(42_000, "Office"), insured(20_000)),
        case_of(HALL, line(1, "Kitchen"), line(42_000, "Office"), insured(41_999)),
    ]
    speech = Speech(canada, language)
    for found in (finding for case in cases for finding in contents_too_low(case)):
        said = (found.title, found.means, found.todo, *found.priority.reasons)
        assert all(speech.say(sentence) for sentence in said)
        assert all(speech.parts(node).how for node in found.evidence)
