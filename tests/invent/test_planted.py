"""What was planted in the demo book is what the review finds."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from pathlib import Path

import pytest

from quarterday.catalogue.load import reference
from quarterday.core.file.fold import File
from quarterday.core.file.records import Building
from quarterday.core.review.review import Review, review
from quarterday.core.review.rules import RULES
from quarterday.invent.account import Account
from quarterday.invent.demo import AS_OF, Tale, tales

IDS = [tale.id for tale in tales()]
KNOWN = {rule.id for rule in RULES}
CATALOGUE = {
    "values": "below-replacement coinsurance agreed-value-lapsing index-too-low valuation-stale "
    "special-features contents-unlisted incomplete-building area-mismatch",
    "terms": "dropped added worse better not-as-requested not-as-agreed option-open sublimit-thin "
    "total-loss-gap additional-limit-basis damages defence-inside claims-made vacancy",
    "income": "too-low",
    "claims": "water-lookback repeat stale-reserve experience reported-late",
    "people": "abuse-unqualified screening-due activity-uncovered",
    "money": "premium-moved does-not-add-up instalments",
    "office": "contact-unconfirmed authorised-people operations-stale interests registration "
    "name-mismatch deadline",
}
FINDINGS = {f"{family}.{name}" for family, names in CATALOGUE.items() for name in names.split()}


@pytest.fixture(scope="session")
def reviews(
    demo: Mapping[str, Account], file_of: Callable[[Account], File]
) -> Mapping[str, Review]:
    return {id: review(file_of(account), reference(), AS_OF) for id, account in demo.items()}


def test_every_finding_of_the_catalogue_is_planted_somewhere() -> None:
    planted = {finding for tale in tales() for finding in tale.plants}
    assert planted - FINDINGS - KNOWN == set()
    assert FINDINGS - planted == set()


@pytest.mark.parametrize("id", IDS)
def test_the_review_finds_what_was_planted(
    id: str, reviews: Mapping[str, Review], told: Mapping[str, Tale]
) -> None:
    found = {finding.rule for finding in reviews[id].findings}
    assert {plant for plant in told[id].plants if plant in KNOWN} - found == set()


@pytest.mark.parametrize("id", IDS)
def test_a_finding_planted_in_a_building_is_found_there(
    id: str,
    demo: Mapping[str, Account],
    reviews: Mapping[str, Review],
    told: Mapping[str, Tale],
) -> None:
    buildings = {r.id for r in demo[id].records if isinstance(r, Building)}
    places = {
        (plant, place)
        for plant, how in told[id].plants.items()
        if plant in KNOWN and (place := how.partition(":")[0]) in buildings
    }
    found = {(f.rule, f.subject.key.split("/")[0]) for f in reviews[id].findings}
    assert places - found == set()


@pytest.mark.parametrize("id", [tale.id for tale in tales() if tale.well_run])
def test_a_well_run_account_has_few_findings_and_at_most_one_decision(
    id: str, reviews: Mapping[str, Review]
) -> None:
    assert len(reviews[id].findings) <= 4
    assert len(reviews[id].agenda) <= 1


def test_some_accounts_are_well_run() -> None:
    assert sum(tale.well_run for tale in tales()) >= 3


def test_the_flagship_asks_five_things_and_the_first_is_peoples_safety(
    reviews: Mapping[str, Review],
) -> None:
    agenda = reviews["HW-1001"].agenda
    assert len(agenda) == 5
    assert agenda[0].rule == "people.abuse-unqualified"
    assert ("values.below-replacement", "hall") in {(f.rule, f.subject.key) for f in agenda}


def test_every_account_tells_its_story() -> None:
    assert [tale.id for tale in tales() if len(tale.story) < 80] == []


def test_the_guide_to_the_demo_says_where_each_finding_is() -> None:
    guide = (Path(__file__).resolve().parents[2] / "docs" / "demo.md").read_text(encoding="utf-8")
    for finding in FINDINGS:
        files = [tale.id for tale in tales() if finding in tale.plants]
        assert f"| {finding} | {', '.join(files)} |" in guide
