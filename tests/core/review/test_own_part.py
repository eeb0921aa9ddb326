"""A percentage deductible in a finding is what the machine takes off the largest loss."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from decimal import Decimal
from typing import Any

import pytest

from quarterday.catalogue.speech import Speech
from quarterday.core.figure import Figure
from quarterday.core.file.records import Building, Terms, Valuation
from quarterday.core.money import Money
from quarterday.core.reference import LANGUAGES, Reference
from quarterday.core.review.case import Case
from quarterday.core.review.rules.terms.own_part import OwnPart, largest_part
from quarterday.core.review.rules.terms.worse import worse
from quarterday.core.terms.compare import compare
from quarterday.core.terms.losses.loss import Loss
from quarterday.core.terms.percentage import part_of
from quarterday.core.terms.settling.account import setting_of
from quarterday.core.terms.settling.outcomes import last_day
from quarterday.core.terms.settling.settlement import settle
from quarterday.core.values.building import picture
from quarterday.core.values.coinsured import deductible_of

CaseOf = Callable[..., Case]
TermsOf = Callable[..., Terms]
HALL = Building(id="hall", name="Hall", province="ON", ownership="own")
ANNEX = Building(id="annex", name="Annex", province="ON", ownership="own")
LINE = {"coverage": "building", "location": "hall", "limit": 900_000, "deductible": 2_500}
WORTH = {"hall": Decimal(1_000_000), "annex": Decimal(200_000)}


def percent(of: str, share: str = "0.02", **more: Any) -> dict[str, Any]:
    return {**LINE, "deductible": None, "deductible_percent": share,
            "deductible_percent_of": of, **more}  # fmt: skip


def valued(id: str) -> Valuation:
    return Valuation(building=id, amount=WORTH[id], valued_on=date(2026, 5, 15))


@pytest.fixture
def offered(case_of: CaseOf, terms_of: TermsOf) -> Callable[..., Case]:
    def make(after: dict[str, Any], before: dict[str, Any] = LINE, *more: Any) -> Case:
        return case_of(
            terms_of("issued", before), terms_of("offered", after), HALL, valued("hall"), *more
        )

    return make


Offered = Callable[..., Case]


def part(case: Case) -> OwnPart:
    assert case.expiring is not None
    assert case.offered is not None
    differences = compare(case.expiring, case.offered)
    found = largest_part(case, case.expiring, case.offered, differences)
    assert found is not None
    return found


def taken(case: Case, cause: str, *places: str) -> Decimal:
    """What the machine keeps as deductible of a total loss on the last day, place by place."""
    assert case.offered is not None
    day, kept = last_day(case.offered), Decimal(0)
    setting = setting_of(case, case.offered, day)
    for place in places:
        worth = setting.values.of("building", place)
        assert worth is not None
        loss = Loss(
            id="all", cause=cause, place=place, date_of_loss=day, amounts={"building": worth}
        )
        kept += dict(settle(setting, loss).by_reason)["deductible"].money.amount
    return kept


@pytest.mark.parametrize("of", ["value", "loss", "limit"])
def test_it_is_what_the_machine_takes_off_a_total_loss(offered: Offered, of: str) -> None:
    case = offered(percent(of))
    found = part(case)
    machine = taken(case, "fire", "hall")
    assert found.own.amount.quantize(Decimal("0.01")) == machine
    assert found.more == Money(machine - 2_500).rounded(Decimal(1))
    assert (machine == 18_000) == (of == "limit")  # 2 % of 900,000; the hall is worth more


def test_bounds_hold_at_each_building_that_a_line_for_all_places_meets(offered: Offered) -> None:
    """5 % of either hall, but at least 30,000 at each: the annex, worth 200,000, has the least."""
    quake = {"coverage": "earthquake", "location": "*", "limit": 1_200_000}
    before = percent("value", "0.01", **quake)
    after = percent("value", "0.05", **quake, deductible_minimum=30_000)
    case = offered(after, before, ANNEX, valued("annex"))
    found = part(case)
    assert found.own.amount.quantize(Decimal("0.01")) == taken(case, "earthquake", "hall", "annex")
    setting = setting_of(case, case.offered, last_day(case.offered))  # type: ignore[arg-type]
    hall = setting.values.of("building", "hall")
    assert hall is not None
    assert found.own.amount == hall * Decimal("0.05") + 30_000


def test_the_finding_says_what_it_is_a_part_of(offered: Offered, canada: Reference) -> None:
    said = {"value": "that replacing what stands there costs", "limit": "of the $900,000 insured",
            "loss": "the largest there can be"}  # fmt: skip
    for of, text in said.items():
        (finding,) = worse(offered(percent(of, deductible_minimum=5_000)))
        assert text in Speech(canada, "en").say(finding.means)
        assert all(Speech(canada, language).say(finding.means) for language in LANGUAGES)
        figure = finding.evidence[0]
        assert isinstance(figure, Figure)
        behind = figure.inputs[1].id
        assert behind.startswith("terms/") == (of == "limit")
        assert all(Speech(canada, language).parts(figure).how for language in LANGUAGES)


def test_the_building_s_own_page_takes_the_same(offered: Offered) -> None:
    """The figures of a coinsurance clause and the finding use one function."""
    case = offered(percent("value", coinsurance="0.9"))
    found, seen = part(case), picture(case, HALL)
    assert case.offered is not None
    assert seen is not None
    assert seen.costs is not None
    worth = seen.costs.at_term_end.money
    line = case.offered.coverages[0]
    assert deductible_of(case.offered, line, worth) == Money(part_of(line, worth.amount)).rounded()
    assert found.own.amount == part_of(line, worth.amount)


def test_what_nobody_knows_is_not_put_in_money(
    case_of: CaseOf, terms_of: TermsOf, canada: Reference
) -> None:
    """A line without an amount at a building that nobody valued."""
    bare: dict[str, Any] = {"limit": None}
    after = percent("value", **bare, deductible_minimum=5_000)
    case = case_of(terms_of("issued", {**LINE, **bare}), terms_of("offered", after), HALL)
    (finding,) = worse(case)
    assert finding.priority.at_risk is None
    assert "could reach" not in Speech(canada, "en").say(finding.means)
