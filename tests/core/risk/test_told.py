"""What options would change reaches the findings and their figures, in both languages."""

from __future__ import annotations

from collections.abc import Callable
from concurrent.futures import ProcessPoolExecutor
from datetime import date
from decimal import Decimal
from typing import Any

import pytest
from tests.core.risk.conftest import HALL as BARE
from tests.core.risk.conftest import VALUED, building, claim, liability, terms_of

from quarterday.catalogue.load import reference
from quarterday.catalogue.speech import Speech
from quarterday.core.figure import Figure, walk
from quarterday.core.file.records import Operations
from quarterday.core.money import Money
from quarterday.core.reference import Reference
from quarterday.core.review.case import Case
from quarterday.core.review.finding import Finding
from quarterday.core.review.rules.terms.gaps import option_open
from quarterday.core.review.rules.terms.losses import sublimit_thin
from quarterday.core.risk.told import option_told
from quarterday.core.words import words

CaseOf = Callable[..., Case]
LANGUAGES = ("en", "fr")
HALL = BARE.model_copy(update={"basement": "finished"})
SEWER = {"coverage": "sewer-backup", "location": "*", "limit": 100_000, "deductible": 2_500,
         "price": 640}  # fmt: skip


def backed_up() -> list[Any]:
    """Four sewer backups in seven years, so that this is what hurts."""
    return [claim(str(n), date(2020 + n, 5, 1), "sewer-backup") for n in range(4)]


def offered(case_of: CaseOf, *lines: dict[str, Any], option: dict[str, Any] = SEWER) -> Case:
    terms = terms_of("offered", building(), liability(), *lines, options=(option,))
    return case_of(HALL, VALUED, Operations(owns_premises=True), terms, *backed_up())


def only(case: Case) -> Finding:
    (found,) = [f for f in option_open(case) if f.subject.key.startswith("sewer-backup")]
    return found


def test_what_is_at_risk_is_what_the_option_keeps_away_in_a_bad_year(case_of: CaseOf) -> None:
    case = offered(case_of)
    (row,) = case.options
    assert row.saves_in_bad_year is not None
    assert row.saves_in_bad_year > Money(Decimal(1_000))
    assert only(case).priority.at_risk == row.saves_in_bad_year


def test_an_open_option_carries_its_figures_and_what_they_were_made_from(case_of: CaseOf) -> None:
    finding = only(offered(case_of))
    ids = {node.id for root in finding.evidence if isinstance(root, Figure)
           for _, node in walk(root)}  # fmt: skip
    assert {"risk-change-mean@sewer-backup/*", "risk-change-1-in-100@sewer-backup/*",
            "risk-mean-cause@offered/sewer-backup", "risk-rate@sewer-backup"} <= ids  # fmt: skip
    assert not any(id.startswith("risk-mean-cause@offered/fire") for id in ids)


@pytest.mark.parametrize(
    ("language", "said"), [("en", "1-in-100 year"), ("fr", "une année sur 100")]
)
def test_the_finding_says_what_the_option_would_change(
    case_of: CaseOf, language: str, said: str
) -> None:
    assert said in Speech(reference(), language).say(only(offered(case_of)).means)


def test_a_thin_sublimit_tells_what_the_higher_one_would_change(case_of: CaseOf) -> None:
    thin = {"coverage": "sewer-backup", "limit": 5_000, "deductible": 2_500}
    large = claim("9", date(2025, 5, 1), "sewer-backup", paid=Decimal(60_000))
    terms = terms_of("offered", building(), liability(), thin, options=(SEWER,))
    (finding,) = sublimit_thin(case_of(HALL, VALUED, terms, *backed_up(), large))
    for language, said in (("en", "The insurer offers $100,000."), ("fr", "L'assureur offre")):
        assert said in Speech(reference(), language).say(finding.means)
    assert any(node.id.startswith("risk-change-mean@sewer-backup") for node in finding.evidence)


def test_where_nothing_can_be_measured_the_finding_goes_without(case_of: CaseOf) -> None:
    """The offer names no limit for the building: nobody can settle a loss of it."""
    terms = terms_of("offered", building(limit=-1), liability(), options=(SEWER,))
    case = case_of(HALL, VALUED, terms, *backed_up())
    assert case.risk is None
    assert case.options == ()
    finding = only(case)
    assert finding.priority.at_risk == Money(Decimal(100_000))
    assert finding.means.id == "terms-option-open-means"


@pytest.mark.parametrize("language", LANGUAGES)
def test_what_harms_people_is_told_without_a_sum(case_of: CaseOf, language: str) -> None:
    accident = {"coverage": "volunteer-accident", "location": "*", "limit": 50_000, "price": 115}
    (row,) = offered(case_of, option=accident).options
    told = option_told(row)
    assert told == row.why_not
    assert told is not None
    assert "$" not in Speech(reference(), language).say(told)


# --- the same on any machine


def costs(id: str) -> str:
    """Every figure of a demo file's risk, to the last bit."""
    from tests.papers.given import AS_OF, book

    risk = Case(book()[id], reference(), AS_OF).risk
    assert risk is not None
    costs = risk.comparison.costs
    return repr([(c.id, c.mean, sorted(c.bad.items()), c.by_peril) for c in costs])


def test_any_order_and_number_of_processes_costs_the_same_bytes() -> None:
    ids = ["HW-1005", "HW-1012", "HW-1023"]
    here = [costs(id) for id in ids]
    with ProcessPoolExecutor(2) as pool:
        there = list(pool.map(costs, reversed(ids)))
    assert there[::-1] == here


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("bad", ["less", "more", "same"])
@pytest.mark.parametrize("average", ["less", "more", "same"])
def test_every_way_two_years_can_change_has_its_sentence(
    canada: Reference, average: str, bad: str, language: str
) -> None:
    """Less in one and more in the other is told as such, never as two bare amounts."""
    case = f"{average}-{bad}"
    money = {"average": Money(Decimal(730)), "bad": Money(Decimal(20_000))}
    said = Speech(canada, language).say(words("risk-option-told", case=case, **money))
    ways = {"en": ("less", "more"), "fr": ("de moins", "de plus")}[language]
    for way, word in zip(("less", "more"), ways, strict=True):
        assert said.count(word) == [average, bad].count(way)
    assert ("730" in said, "20" in said) == (average != "same", bad != "same")
