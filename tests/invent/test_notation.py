"""The short notation says only what differs, and becomes whole records."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date
from decimal import Decimal
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterday.core.file.records import Organisation, Terms
from quarterday.core.file.records.terms import Premium
from quarterday.invent.notation import parties, places, policy
from quarterday.invent.notation.plans import plan
from quarterday.invent.tax import tax_on

ORG = Organisation(name="The Kestrel Hall Society", province="ON", town="Quillstead")
TOLD: dict[str, Any] = {
    "plan": "owner",
    "number": "LM-1",
    "renewal": date(2027, 1, 15),
    "expiring": {
        "rates": {"building": Decimal("0.002")},
        "lines": {"building@hall": 1_000_000, "contents@hall": {"limit": 50_000}},
    },
    "offered": {"lines": {"building@hall": 1_030_000, "volunteer-accident": None}},
}
leaves = st.one_of(st.integers(), st.text(max_size=3))
trees = st.recursive(leaves, lambda t: st.dictionaries(st.text(max_size=2), t, max_size=3))


def version(name: str) -> Terms:
    found = dict(policy.versions(TOLD, plan("owner")))
    return policy.terms(name, found[name], TOLD, "ON")


@given(st.dictionaries(st.text(max_size=2), trees, max_size=4))
def test_laying_nothing_upon_a_notation_changes_nothing(base: dict[str, Any]) -> None:
    assert policy.merged(base, {}) == base


@given(st.dictionaries(st.text(max_size=2), trees, max_size=4))
def test_laying_a_notation_upon_itself_changes_nothing(base: dict[str, Any]) -> None:
    assert policy.merged(base, base) == base


def test_a_null_takes_a_line_out() -> None:
    assert policy.merged({"lines": {"a": 1, "b": 2}}, {"lines": {"a": None}}) == {"lines": {"b": 2}}


def test_the_offer_is_laid_upon_the_expiring_terms() -> None:
    expiring, offered = version("expiring"), version("offered")
    assert (expiring.stage, expiring.end) == ("issued", date(2027, 1, 15))
    assert (offered.stage, offered.start) == ("offered", date(2027, 1, 15))
    gone = {c.coverage for c in expiring.coverages} - {c.coverage for c in offered.coverages}
    assert gone == {"volunteer-accident"}
    assert offered.find("contents", "hall") == expiring.find("contents", "hall")


def test_an_accounts_rate_replaces_the_plans() -> None:
    cell = next(p for p in version("offered").premiums if p.coverage == "building")
    assert (cell.exposure, cell.rate) == (Decimal(1_030_000), Decimal("0.002"))
    assert cell.amount == Decimal(2060)


def test_the_limit_values_is_the_sum_of_buildings_and_contents() -> None:
    breakdown = version("expiring").find("equipment-breakdown")
    assert breakdown
    assert breakdown.limit == Decimal(1_050_000)


def test_members_of_the_shared_limit_say_so() -> None:
    terms = version("expiring")
    assert terms.shared_limit
    members = {c.coverage for c in terms.coverages if c.in_shared_limit}
    assert members == set(terms.shared_limit.tops_up) & {c.coverage for c in terms.coverages}


def test_a_request_has_no_premium() -> None:
    told = {**TOLD, "requested": {"lines": {"by-laws": 500_000}}}
    requested = dict(policy.versions(told, plan("owner")))["requested"]
    terms = policy.terms("requested", requested, told, "ON")
    assert (terms.stage, terms.premiums, terms.totals) == ("requested", (), ())
    assert terms.find("by-laws") != version("expiring").find("by-laws")


@pytest.mark.parametrize("name", ["owner", "renter", "brindlegate", "proprietaire", "locataire"])
def test_every_plan_makes_terms(name: str) -> None:
    told = {**TOLD, "plan": name, "expiring": {"lines": {"contents@hall": 50_000}}}
    expiring = dict(policy.versions(told, plan(name)))["expiring"]
    terms = policy.terms("expiring", expiring, told, "ON")
    assert terms.insurer == plan(name)["insurer"]
    owns = name not in {"renter", "locataire"}
    assert (terms.shared_limit and terms.shared_limit.meant_for) == ("owner" if owns else "renter")


def test_ontario_lays_eight_per_cent_but_not_on_vehicles() -> None:
    # Ontario Ministry of Finance, Insurance and Benefits Plans, 2013: 8 %, automobile exempt.
    cells = [
        Premium(coverage="building", amount=Decimal(1000)),
        Premium(coverage="non-owned-vehicle", amount=Decimal(100)),
        Premium(coverage="building", kind="fee", amount=Decimal(50)),
    ]
    assert tax_on(cells, "ON", date(2027, 1, 15)) == Decimal("80.00")


@pytest.mark.parametrize(
    ("start", "tax"), [(date(2026, 12, 8), "360.00"), (date(2027, 1, 15), "399.00")]
)
def test_quebecs_tax_on_four_thousand_dollars_rises_by_thirty_nine(start: date, tax: str) -> None:
    # "for $4,000 in annual premiums, an additional $39 per year", Insurance Business, 2025.
    cells = [Premium(coverage="building", amount=Decimal(4000))]
    assert tax_on(cells, "QC", start) == Decimal(tax)


def test_a_contacts_mail_is_made_from_the_name_without_accents() -> None:
    assert parties.mail("Marie-Ève Corriveau", "escale") == "marie.eve.corriveau@escale.example.org"


def test_a_contact_takes_its_role_from_its_id_and_its_language_from_the_organisation() -> None:
    told = {"treasurer": {"name": "Gwen Pell"}, "coach": {"name": "Ada Rook", "language": "fr"}}
    treasurer, coach = parties.contacts(told, "kestrel", ORG)
    assert (treasurer.role, treasurer.language) == ("treasurer", "en")
    assert (coach.role, coach.language) == ("other", "fr")


def test_an_authority_may_say_since_when_and_until_when() -> None:
    told = {"coverage": ["chair", "treasurer 2024-03-01 2026-07-01"]}
    chair, treasurer = parties.authorities(told)
    assert (chair.contact, chair.until) == ("chair", None)
    assert (treasurer.since, treasurer.until) == (date(2024, 3, 1), date(2026, 7, 1))


def test_what_a_profile_does_not_list_is_no_and_what_it_leaves_open_is_unknown() -> None:
    told = {"does": ["children"], "unanswered": ["safe"], "revenue": {"rents": 100}}
    profile = parties.operations(told)
    assert (profile.children, profile.youth, profile.safe) == (True, False, None)
    assert profile.revenue_rents == 100


def test_a_question_that_the_profile_does_not_have_is_refused() -> None:
    with pytest.raises(ValueError, match="no question flies_kites"):
        parties.operations({"does": ["flies_kites"]})


def test_what_a_building_has_is_yes_and_what_is_unknown_stays_open() -> None:
    told = {"hall": {"name": "Hall", "has": ["sump_pump"], "unknown": ["sprinklers"]}}
    (hall,) = places.buildings(told, ORG)
    assert (hall.sump_pump, hall.sprinklers, hall.fire_alarm) == (True, None, False)
    assert hall.town == "Quillstead"


def test_a_feature_that_no_building_has_is_refused() -> None:
    with pytest.raises(ValueError, match="no feature moat"):
        list(places.buildings({"hall": {"name": "Hall", "has": ["moat"]}}, ORG))


def test_a_trade_gives_kind_and_year() -> None:
    told = {"hall": {"name": "Hall", "roof": ["gable", "slate", 1998], "water_reach": [70, 2]}}
    (hall,) = places.buildings(told, ORG)
    assert (hall.roof_shape, hall.roof_cover, hall.roof_year) == ("gable", "slate", 1998)
    assert hall.hydrant_m == Decimal(70)
    assert hall.fire_hall_km == Decimal(2)


def test_a_valuation_is_of_the_building_its_contents_or_a_feature() -> None:
    on: dict[str, Any] = {"building": "hall", "amount": 1, "valued_on": date(2024, 1, 1)}
    told: list[Mapping[str, Any]] = [on, {**on, "of": "contents"}, {**on, "of": "bell"}]
    found = [(v.valued, v.feature) for v in places.valuations(told)]
    assert found == [("building", None), ("contents", None), ("feature", "bell")]


def test_a_claim_is_closed_and_paid_unless_it_says_otherwise() -> None:
    rows = [
        [date(2020, 1, 1), "fire", "hall", 900, "A fire."],
        [date(2026, 1, 1), "theft", "-", 100, "A theft.", {"status": "open", "outstanding": 50}],
    ]
    first, second = places.claims(rows, "LM-1", "An insurer", date(2026, 10, 31))
    assert (first.status, first.incurred, first.location) == ("closed", Decimal(900), "hall")
    assert (second.status, second.incurred, second.location) == ("open", Decimal(150), None)
    assert first.number != second.number


def test_a_misprint_changes_what_is_printed_and_nothing_else() -> None:
    told = {**TOLD, "offered": {"printed": {"tax": 1}, "cells": {"contents@hall": 7}}}
    found = dict(policy.versions(told, plan("owner")))
    right = policy.terms("expiring", found["expiring"], told, "ON")
    wrong = policy.terms("offered", found["offered"], told, "ON")
    off = [t.of for t, r in zip(wrong.totals, right.totals, strict=True) if t != r]
    cells = [p.line for p, r in zip(wrong.premiums, right.premiums, strict=True) if p != r]
    assert (off, cells) == (["tax"], [("contents", "hall", "premium")])
