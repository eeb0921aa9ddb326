"""Edges that mutants showed to be untested: each test fails when its sign is turned."""

from __future__ import annotations

from datetime import date
from typing import Any

import pytest
from tests.core.terms.losses.conftest import Account, version
from tests.core.terms.settling.conftest import Pay, payers, reasons

from quarterday.core.given import Unusable
from quarterday.core.terms.settling.account import values_on
from quarterday.core.terms.settling.form import given

DAY = date(2027, 6, 1)
LIABILITY = {"coverage": "general-liability", "limit": 10}


@pytest.mark.parametrize(
    ("fields", "paid"),
    [
        ({"limit": 500, "limit_basis": "aggregate", "aggregate": 60}, 60),
        ({"limit": 50, "limit_basis": "aggregate"}, 50),
        ({"limit": 500, "limit_basis": "aggregate"}, 90),
    ],
)
def test_an_umbrella_by_the_year_pays_its_yearly_maximum_before_its_limit(
    pay: Pay, fields: dict[str, Any], paid: int
) -> None:
    done = pay([LIABILITY, {"coverage": "umbrella", **fields}], "injury-on-premises",
               {"compensatory": 100})  # fmt: skip
    assert payers(done)["umbrella"] == paid


def test_a_deductible_that_took_nothing_is_not_the_highest(pay: Pay) -> None:
    """By-laws lost nothing: their deductible of 5,000 does not count among those that met."""
    lines = [
        {"coverage": "building", "location": "hall", "limit": 500_000, "deductible": 1000},
        {"coverage": "debris-removal", "limit": 50_000, "deductible": 500},
        {"coverage": "by-laws", "limit": 50_000, "deductible": 5000},
    ]
    for more, borne in (({}, 1000), ({"by-laws": 0}, 1000), ({"by-laws": 20_000}, 5000)):
        done = pay(lines, "fire", {"building": 40_000, "debris": 10_000, **more},
                   terms={"deductible_rule": "highest"}, place="hall")  # fmt: skip
        assert reasons(done) == {"deductible": borne}


def test_contents_everywhere_are_not_counted_beside_those_that_were_valued(
    account: Account,
) -> None:
    """A line for everywhere is taken at its amount only where no place of its kind is valued."""
    everywhere = {"coverage": "contents", "location": "*", "limit": 90_000}
    other = {"coverage": "outdoor-property", "location": "*", "limit": 15_000}
    worth = values_on(account(), version("offered", everywhere, other), DAY).worth
    kinds = {kind for kind, place in worth if place != "*"}
    assert (("contents", "*") in worth) == ("contents" not in kinds)
    assert worth["outdoor-property", "*"] == 15_000


def test_terms_too_far_from_today_are_refused_whether_or_not_they_say_their_end() -> None:
    for end in ({}, {"end": "9999-12-31"}):
        told = {
            "terms": {"start": "9999-12-30", "coverages": [], **end},
            "losses": [{"cause": "fire", "date_of_loss": "2027-02-01", "amounts": {"contents": 5}}],
        }
        with pytest.raises(Unusable) as found:
            given(told)
        assert found.value.words.id == "given-far"
