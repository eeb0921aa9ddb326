"""Whether terms give a coverage, in whichever way."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pytest

from quarterday.core.file.records import Terms
from quarterday.core.terms.presence import SHARED, gives, lines_of, within

TermsOf = Callable[..., Terms]


def test_a_line_gives_its_coverage_and_a_limit_of_zero_gives_nothing(terms: TermsOf) -> None:
    assert gives(terms({"coverage": "glass", "limit": 5000}), "glass")
    assert gives(terms({"coverage": "glass"}), "glass")
    nothing = terms({"coverage": "glass", "limit": 0})
    assert not gives(nothing, "glass")
    assert lines_of(nothing, "glass") == ()
    assert not gives(terms(), "glass")


@pytest.mark.parametrize(("location", "expected"), [("hall", True), ("shed", False)])
def test_a_place_is_covered_by_its_own_line_or_one_for_everywhere(
    terms: TermsOf, location: str, expected: bool
) -> None:
    hall = {"coverage": "building", "location": "hall", "limit": 9}
    assert gives(terms(hall), "building", location) is expected
    assert gives(terms(hall, {"coverage": "building", "limit": 9}), "building", location)


def test_the_shared_limit_gives_what_it_tops_up_but_at_no_place_of_its_own(
    terms: TermsOf,
) -> None:
    shared = terms(shared_limit={"amount": 100, "tops_up": ["by-laws"]})
    assert gives(shared, "by-laws")
    assert not gives(shared, "by-laws", "hall")
    assert not gives(shared, "debris-removal")


@pytest.mark.parametrize(
    ("coverage", "fields"),
    [
        ("inflation-protection", {"automatic_increase": "0.03"}),
        ("defence-costs", {"defence": "inside"}),
        ("punitive-damages", {"damages": ["punitive"]}),
    ],
)
def test_some_coverages_are_a_clause_of_another_line(
    terms: TermsOf, coverage: str, fields: dict[str, Any]
) -> None:
    line = {"coverage": "general-liability"}
    assert gives(terms({**line, **fields}), coverage)
    assert not gives(terms(line), coverage)
    assert not gives(terms({**line, **fields}), "glass")


def test_what_gives_a_coverage_without_a_line_of_its_own_is_named_once_each(
    terms: TermsOf,
) -> None:
    liability = {"coverage": "general-liability", "defence": "outside"}
    abuse = {"coverage": "abuse-liability", "defence": "inside"}
    both = terms({**liability, "location": "hall"}, {**liability, "location": "shed"}, abuse)
    assert within(both, "defence-costs") == ("general-liability", "abuse-liability")
    assert within(both, "glass") == ()
    shared = terms(liability, shared_limit={"amount": 100, "tops_up": ["by-laws"]})
    assert within(shared, "by-laws") == (SHARED,)
