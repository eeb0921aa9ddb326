"""Amounts that would not last: what a total fire leaves, and sublimits that are too thin."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from decimal import Decimal
from typing import Any

import pytest

from quarterday.catalogue.speech import Speech
from quarterday.core.figure import Figure
from quarterday.core.file.records import Building, Claim, Operations, Record, Terms, Valuation
from quarterday.core.reference import Reference
from quarterday.core.review.case import Case
from quarterday.core.review.finding import Finding
from quarterday.core.review.rules.terms.losses import RULES, sublimit_thin, total_loss_gap

HALL = Building(id="hall", name="Elm Grove Hall", province="ON", basement="finished")
VALUED = Valuation(building="hall", amount=Decimal(1_000_000), valued_on=date(2026, 5, 15))
PROFILE = Operations(employees=2, revenue_donations=Decimal(12_000))
GENEROUS: tuple[dict[str, Any], ...] = (
    {"coverage": "building", "location": "hall", "limit": 9_000_000, "deductible": 2500},
    *({"coverage": c, "limit": 9_000_000} for c in (
        "contents", "by-laws", "debris-removal", "professional-fees", "extra-expense",
        "alternate-premises", "loss-of-income",
    )),
)  # fmt: skip
Maker = Callable[..., Case]


def offered(*lines: dict[str, Any]) -> Terms:
    return Terms.model_validate(
        {"stage": "offered", "start": date(2027, 1, 31), "end": date(2028, 1, 31),
         "coverages": lines}
    )  # fmt: skip


@pytest.fixture
def make(case_of: Maker) -> Maker:
    def made(*lines: dict[str, Any], more: tuple[Record, ...] = ()) -> Case:
        return case_of(HALL, VALUED, PROFILE, offered(*lines), *more)

    return made


def only(found: Any) -> Finding:
    (finding,) = found
    assert isinstance(finding, Finding)
    return finding


def in_both(canada: Reference, finding: Finding) -> str:
    for language in ("fr", "en"):
        speech = Speech(canada, language)
        told = " ".join(map(speech.say, (finding.title, finding.means, finding.todo)))
        assert all(speech.say(reason) for reason in finding.priority.reasons)
    return told


def test_a_total_fire_that_leaves_much_is_told_with_what_is_short(
    make: Maker, canada: Reference
) -> None:
    by_laws = {"coverage": "by-laws", "limit": 10_000}
    lines = (*(line for line in GENEROUS if line["coverage"] != "by-laws"), by_laws)
    finding = only(total_loss_gap(make(*lines)))
    assert (finding.id, finding.kind) == ("terms.total-loss-gap@hall", "know")
    told = in_both(canada, finding)
    assert told.startswith("If Elm Grove Hall burned down, about $")
    assert "What today's building rules add" in told
    borne = finding.evidence[0]
    assert isinstance(borne, Figure)
    assert finding.priority.at_risk == borne.money
    assert borne.money.amount > 100_000


def test_a_total_fire_that_leaves_little_is_not_told(make: Maker) -> None:
    assert not list(total_loss_gap(make(*GENEROUS)))


def test_a_part_below_a_thousand_is_not_named(make: Maker, canada: Reference) -> None:
    """The waiting period costs 25 of lost income: 12,000 a year, a quarter of a month, a tenth."""
    income = {"coverage": "loss-of-income", "limit": 9_000_000, "waiting_hours": 72}
    lines = [line for line in GENEROUS if line["coverage"] not in ("loss-of-income", "by-laws")]
    finding = only(total_loss_gap(make(*lines, income)))
    assert "Lost income" not in in_both(canada, finding)


def test_terms_that_cannot_be_tried_are_told_to_the_broker_with_the_reason(
    make: Maker, canada: Reference
) -> None:
    for lines, said in (
        (({"coverage": "building", "location": "hall"},), "building@hall: no limit is given"),
        ((GENEROUS[0], GENEROUS[0]), "building@hall stands twice"),
    ):
        finding = only(total_loss_gap(make(*lines)))
        assert (finding.kind, finding.audience) == ("fix", ("broker",))
        assert said in in_both(canada, finding)
        assert not list(sublimit_thin(make(*lines)))


def test_without_terms_or_a_building_there_is_nothing_to_tell(case_of: Maker) -> None:
    assert not list(total_loss_gap(case_of(HALL)))
    assert not list(sublimit_thin(case_of(HALL)))
    assert not list(total_loss_gap(case_of(PROFILE, offered(*GENEROUS))))


def sewer(limit: int, **fields: Any) -> dict[str, Any]:
    return {"coverage": "sewer-backup", "limit": limit, **fields}


def backup(paid: int) -> Claim:
    return Claim(
        number="1", cause="sewer-backup", date_of_loss=date(2023, 5, 5), location="hall",
        paid=Decimal(paid),
    )  # fmt: skip


def small_backups(count: int) -> tuple[Claim, ...]:
    """Claims small enough to be paid in full, so that only how often they came speaks."""
    return tuple(
        backup(2_000).model_copy(
            update={"number": str(n), "date_of_loss": date(2018 + n % 8, 5, 1 + n)}
        )
        for n in range(count)
    )


def test_a_sublimit_that_a_bad_year_s_loss_outruns_is_thin(make: Maker, canada: Reference) -> None:
    """Six small backups in ten years: once in a hundred years one costs far more than 25,000."""
    case = make(GENEROUS[0], sewer(25_000), more=small_backups(6))
    finding = only(sublimit_thin(case))
    assert finding.id == "terms.sublimit-thin@sewer-backup/*"
    told = in_both(canada, finding)
    assert "$25,000 could leave about" in told
    assert "Once in a hundred years, such a loss would come to about" in told
    figure = finding.evidence[0]
    assert isinstance(figure, Figure)
    assert figure.id == "risk-loss-1-in-100@sewer-backup/*"
    assert figure.caution is not None
    assert finding.priority.at_risk is not None
    assert finding.priority.at_risk.amount == pytest.approx(figure.money.amount - 25_000, abs=1)


def test_without_such_a_year_in_the_model_nothing_is_thin(make: Maker) -> None:
    """One backup in ten years, of 2,000: 25,000 is enough for a year that comes once in 100."""
    assert not list(sublimit_thin(make(GENEROUS[0], sewer(25_000))))
    assert not list(sublimit_thin(make(GENEROUS[0], sewer(25_000), more=small_backups(1))))


def test_the_accounts_own_loss_counts_where_it_is_the_larger(
    make: Maker, canada: Reference
) -> None:
    finding = only(sublimit_thin(make(GENEROUS[0], sewer(25_000), more=(backup(140_000),))))
    assert finding.priority.at_risk is not None
    assert finding.priority.at_risk.amount == 115_000
    assert "You have had such a loss: sewer backup, about $140,000" in in_both(canada, finding)


@pytest.mark.parametrize(
    "line",
    [
        sewer(500_000),
        sewer(0),
        sewer(25_000, location="barn"),
        sewer(25_000, excluded_causes=["sewer-backup"]),
        {"coverage": "by-laws", "limit": 5},
        {"coverage": "sewer-backup"},
    ],
)
def test_what_is_enough_or_answers_nothing_is_not_thin(make: Maker, line: dict[str, Any]) -> None:
    assert not list(sublimit_thin(make(GENEROUS[0], line)))


@pytest.mark.parametrize(("paid", "told"), [(104_999, False), (105_000, True)])
def test_a_few_thousand_over_are_not_worth_telling(make: Maker, paid: int, told: bool) -> None:
    case = make(GENEROUS[0], sewer(100_000), more=(backup(paid),))
    assert bool(list(sublimit_thin(case))) is told


def test_both_rules_are_of_the_review_with_the_parameters_they_use(canada: Reference) -> None:
    assert [rule.id for rule in RULES] == ["terms.total-loss-gap", "terms.sublimit-thin"]
    assert all(id in canada.parameters for rule in RULES for id in rule.parameters)
