"""What the terms of the demo book pay: every loss that they cover can be settled."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from pathlib import Path

import pytest

from quarterday.catalogue.load import reference
from quarterday.core.file.fold import File
from quarterday.core.file.records import Terms
from quarterday.core.review.case import VERSIONS, Case
from quarterday.core.terms.settling.outcomes import past_outcomes, reference_outcomes
from quarterday.core.terms.settling.refusals import Refused, check_terms
from quarterday.core.values.cost import newest
from quarterday.invent.account import Account
from quarterday.invent.book import make_book
from quarterday.invent.demo import AS_OF, tales

IDS = [tale.id for tale in tales()]
DOCS = Path(__file__).parents[2] / "docs" / "demo.md"


@pytest.fixture
def case(id: str, demo: Mapping[str, Account], file_of: Callable[[Account], File]) -> Case:
    return Case(file_of(demo[id]), reference(), AS_OF)


@pytest.mark.parametrize("id", IDS)
def test_every_version_of_terms_settles_every_loss_of_the_library(case: Case) -> None:
    versions = [terms for name in VERSIONS if (terms := case.version(name))]
    settled = [
        outcome.after
        for terms in versions
        for _, outcome in reference_outcomes(case, terms, terms)
        if outcome is not None
    ]
    assert len(settled) >= len(versions)
    assert not [one.words for one in settled if isinstance(one, Refused)]


@pytest.mark.parametrize("id", IDS)
def test_the_organisations_own_claims_settle_under_both_terms(case: Case) -> None:
    newest_terms = case.issued or case.terms
    assert case.expiring is not None
    assert newest_terms is not None
    found = past_outcomes(case, case.expiring, newest_terms).outcomes
    sides = [side for outcome in found for side in (outcome.before, outcome.after)]
    assert not [side.words for side in sides if isinstance(side, Refused)]


def test_the_page_on_the_demo_names_each_file_whose_values_are_older_than_the_index(
    demo: Mapping[str, Account], file_of: Callable[[Account], File]
) -> None:
    old = set()
    for id, account in demo.items():
        told = Case(file_of(account), reference(), AS_OF)
        made = [v for b in told.file.buildings if b.id in told.pictures and (v := newest(told, b))]
        old |= {id for v in made if told.pictures[v.building].not_indexed}
    text = DOCS.read_text(encoding="utf-8")
    section = text.split("## What cannot be computed", 1)[1].split("##", 1)[0]
    assert old == {id for id in IDS if id in section}


def test_the_terms_of_an_invented_book_do_not_contradict_themselves() -> None:
    for account in make_book(120, 7, AS_OF):
        for record in account.records:
            if isinstance(record, Terms):
                check_terms(record, reference())
