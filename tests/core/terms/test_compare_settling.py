"""Differences of the clauses that only a settlement needs.

Directions: common practice, no source.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pytest

from quarterday.catalogue.speech import Speech
from quarterday.core.file.records import Terms
from quarterday.core.reference import Reference
from quarterday.core.terms.compare import compare
from quarterday.core.terms.difference import MIRRORED, Difference

Versions = Callable[..., tuple[Difference, ...]]
UNSURE = "cannot say"


@pytest.mark.parametrize(
    ("before", "after", "kind", "direction"),
    [
        ({}, {"monthly_limit": "0.25"}, "monthly-limit", "worse"),
        ({"monthly_limit": "0.25"}, {"monthly_limit": "0.5"}, "monthly-limit", "better"),
        ({}, {"coinsurance_waived_up_to": 5000}, "coinsurance-waiver", "better"),
        (
            {"coinsurance_waived_share": "0.02"},
            {"coinsurance_waived_share": "0.01"},
            "coinsurance-waiver-share",
            "worse",
        ),
        (
            {"settling_order": "coinsurance-first"},
            {"settling_order": "deductible-first"},
            "settling-order",
            "better",
        ),
        ({}, {"settling_order": "deductible-first"}, "settling-order", UNSURE),
        (
            {"coinsurance": "0.5", "coinsurance_of": "whole-income"},
            {"coinsurance": "0.5", "coinsurance_of": "less-stopping"},
            "coinsurance-of",
            "better",
        ),
        (
            {"coinsurance": "0.5"},
            {"coinsurance": "0.5", "coinsurance_of": "whole-income"},
            "coinsurance-of",
            UNSURE,
        ),
        ({}, {"attaches_to": ["general-liability"]}, "umbrella-over", UNSURE),
        (
            {"attaches_to": ["general-liability", "non-owned-vehicle"]},
            {"attaches_to": ["general-liability"]},
            "umbrella-over",
            "worse",
        ),
        (
            {"attaches_to": []},
            {"attaches_to": ["general-liability"]},
            "umbrella-over",
            "better",
        ),
    ],
)  # fmt: skip
def test_a_changed_clause_is_one_difference_with_its_direction_and_its_mirror(
    changed: Versions, canada: Reference, before: dict[str, Any], after: dict[str, Any], kind: str,
    direction: str,
) -> None:  # fmt: skip
    (found,) = changed(before, after)
    assert (found.kind, found.direction) == (kind, direction)
    (back,) = changed(after, before)
    assert (back.kind, back.direction) == (kind, MIRRORED.get(found.direction, found.direction))
    for language in ("en", "fr"):
        assert Speech(canada, language).say(found.sentence("Hall"))
        assert Speech(canada, language).say(back.sentence("Hall"))


@pytest.mark.parametrize(
    ("before", "after", "direction"),
    [("highest", "each", "worse"), ("each", "highest", "better"), (None, "each", UNSURE),
     ("highest", None, UNSURE)],
)  # fmt: skip
def test_the_rule_for_several_deductibles_is_compared_for_the_terms_as_a_whole(
    terms: Callable[..., Terms], canada: Reference, before: str | None, after: str | None,
    direction: str,
) -> None:  # fmt: skip
    (found,) = compare(terms(deductible_rule=before), terms(deductible_rule=after))
    assert (found.kind, found.coverage, found.direction) == ("deductible-rule", "", direction)
    for language in ("en", "fr"):
        assert Speech(canada, language).say(found.sentence("Hall"))


def test_an_equal_rule_is_no_difference(terms: Callable[..., Terms]) -> None:
    assert not compare(terms(deductible_rule="each"), terms(deductible_rule="each"))
