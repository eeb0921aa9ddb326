"""The rules about values: when they speak, when they keep still, and what they say."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from datetime import date
from decimal import Decimal
from typing import Any

import pytest

from quarterday.catalogue.speech import Speech
from quarterday.core.dates import Quarter
from quarterday.core.figure import Figure, walk
from quarterday.core.file.records import Building, Terms, Valuation
from quarterday.core.file.records.terms import Coverage, Premium
from quarterday.core.money import Money
from quarterday.core.reference import Reference
from quarterday.core.review.case import Case
from quarterday.core.review.finding import Finding, Tier
from quarterday.core.review.priority import agenda, ordered
from quarterday.core.review.rules.values import RULES
from quarterday.core.review.rules.values.buildings import area_mismatch, incomplete_building
from quarterday.core.review.rules.values.clause import agreed_value_lapsing, coinsurance
from quarterday.core.review.rules.values.insured import below_replacement, index_too_low
from quarterday.core.review.rules.values.sources import implausible_value, valuations_disagree
from quarterday.core.review.rules.values.valuations import (
    contents_unlisted,
    special_features,
    valuation_stale,
)

CaseOf = Callable[..., Case]
RENEWAL, END = date(2027, 1, 31), date(2028, 1, 31)
VALUED = date(2024, 2, 15)
FORM = ("statement-of-values",)


def building(id: str = "hall", **more: Any) -> Building:
    """Return a building of which underwriting knows all it needs."""
    known = {
        "id": id, "name": id.title(), "postal_code": "N0G 2J0", "construction": "frame",
        "year_built": 2015, "area_m2": Decimal(600), "storeys": Decimal(2), "basement": "none",
        "sprinklers": False, "fire_alarm": True,
    }  # fmt: skip
    return Building.model_validate({**known, **more})


def valued(id: str = "hall", amount: int = 1_000_000, **more: Any) -> Valuation:
    given = {"building": id, "amount": Decimal(amount), "valued_on": VALUED,
             "basis": "formal-appraisal", "includes_fees": True, **more}  # fmt: skip
    return Valuation.model_validate(given)


def line(id: str = "hall", limit: int = 2_000_000, **more: Any) -> Coverage:
    given = {"coverage": "building", "location": id, "limit": Decimal(limit), **more}
    return Coverage.model_validate(given)


def offered(*lines: Coverage, **more: Any) -> Terms:
    return Terms(stage="offered", start=RENEWAL, end=END, coverages=lines, **more)


def ids(findings: Iterable[Finding]) -> list[str]:
    return [finding.id for finding in findings]


def kinds(findings: Iterable[Finding]) -> dict[str, str]:
    return {finding.subject.key: finding.kind for finding in findings}


def one(findings: Iterable[Finding]) -> Finding:
    (found,) = findings
    return found


def evidence(finding: Finding) -> set[str]:
    return {node.id for node in finding.evidence}


# --- values.below-replacement


def _cost(case_of: CaseOf) -> int:
    """Return what the hall costs rebuilt, in dollars."""
    found = case_of(building(), valued(), offered(line())).pictures["hall"]
    assert found.costs is not None
    return int(found.costs.rebuilt.money.amount)


def test_a_sum_insured_below_the_cost_is_a_decision_for_the_leaders(case_of: CaseOf) -> None:
    cost = _cost(case_of)
    found = one(below_replacement(case_of(building(), valued(), offered(line(limit=900_000)))))
    assert (found.id, found.kind) == ("values.below-replacement@hall", "decide")
    assert found.priority.tier is Tier.MONEY
    assert found.priority.at_risk == Money(Decimal(cost - 900_000))
    assert {"shortfall@hall", "cost-at-renewal@hall"} <= evidence(found)
    assert "cost-rebuilt@hall" in {node.id for e in found.evidence for _, node in walk(e)}
    assert found.encloses == ("building-values",)


def test_exactly_the_cost_is_enough_and_a_dollar_less_is_told(case_of: CaseOf) -> None:
    cost = _cost(case_of)
    assert not list(below_replacement(case_of(building(), valued(), offered(line(limit=cost)))))
    short = one(below_replacement(case_of(building(), valued(), offered(line(limit=cost - 1)))))
    assert short.kind == "know", "a dollar is no question for leaders"


@pytest.mark.parametrize(("share", "kind"), [("0.981", "know"), ("0.979", "decide")])
def test_a_gap_below_two_per_cent_of_the_cost_is_only_told(
    case_of: CaseOf, share: str, kind: str
) -> None:
    limit = int(_cost(case_of) * Decimal(share))
    found = one(below_replacement(case_of(building(), valued(), offered(line(limit=limit)))))
    assert found.kind == kind


def test_without_a_valuation_nothing_is_said_of_a_gap(case_of: CaseOf) -> None:
    assert not list(below_replacement(case_of(building(), offered(line(limit=1)))))


@pytest.mark.parametrize(
    ("premium", "cost"),
    [
        ({"amount": Decimal(1_800), "rate": Decimal("0.002")}, "0.002"),
        ({"amount": Decimal(1_800)}, "0.002"),  # over the limit of 900,000
        ({"amount": Decimal(1_800), "exposure": Decimal(600_000)}, "0.003"),
    ],
)
def test_closing_the_gap_is_priced_at_the_building_s_own_rate(
    case_of: CaseOf, premium: dict[str, Any], cost: str
) -> None:
    own = Premium(coverage="building", location="hall", **premium)
    terms = offered(line(limit=900_000), premiums=(own,))
    found = one(below_replacement(case_of(building(), valued(), terms)))
    gap = found.priority.at_risk
    assert gap is not None
    assert found.priority.cost == (gap * Decimal(cost)).rounded()
    assert found.todo.id == "values-below-replacement-todo"


def test_without_a_premium_line_the_price_is_not_known(case_of: CaseOf) -> None:
    fee = Premium(coverage="building", location="hall", kind="fee", amount=Decimal(50))
    terms = offered(line(limit=900_000), premiums=(fee,))
    found = one(below_replacement(case_of(building(), valued(), terms)))
    assert found.priority.cost is None
    assert found.todo.id == "values-below-replacement-todo-unpriced"


def test_a_weak_valuation_brings_a_fresh_one_into_the_same_question(case_of: CaseOf) -> None:
    weak = valued(basis="unknown")
    found = one(below_replacement(case_of(building(), weak, offered(line(limit=900_000)))))
    assert found.todo.id == "values-below-replacement-todo-unsure-unpriced"


def _village(
    *names: str, limit: int = 900_000, basis: str = "formal-appraisal", **more: Any
) -> tuple[Any, ...]:
    buildings = [building(name) for name in names]
    valuations = [valued(name, 1_000_000 + 1_000 * n, basis=basis) for n, name in enumerate(names)]
    return *buildings, *valuations, offered(*(line(name, limit, **more) for name in names))


def test_two_buildings_are_two_questions(case_of: CaseOf) -> None:
    found = list(below_replacement(case_of(*_village("hall", "church"))))
    assert kinds(found) == {"hall": "decide", "church": "decide"}


def test_more_than_two_are_one_question_and_each_is_told(case_of: CaseOf) -> None:
    found = list(below_replacement(case_of(*_village("hall", "church", "manse"))))
    assert kinds(found) == {"": "decide", "hall": "know", "church": "know", "manse": "know"}
    joined = found[0]
    assert joined.id == "values.below-replacement"
    gaps = [f.priority.at_risk for f in found[1:] if f.priority.at_risk]
    assert joined.priority.at_risk == max(gaps), "one fire burns one building"
    names = ("hall", "church", "manse")
    assert evidence(joined) == {
        f"{what}@{n}" for n in names for what in ("shortfall", "cost-at-renewal")
    }
    assert joined.todo.id == "values-below-replacement-together-todo-unpriced"


def test_the_joined_question_names_the_buildings_that_need_a_fresh_valuation(
    case_of: CaseOf,
) -> None:
    *records, terms = _village("hall", "church", "manse")
    weak = valued("church", 1_001_000, basis="unknown")  # replaces the appraisal of that day
    joined = next(iter(below_replacement(case_of(*records, weak, terms))))
    assert joined.todo.id == "values-below-replacement-together-todo-unpriced-unsure"
    assert dict(joined.todo.args)["doubtful"] == ("Church",)


def test_the_joined_question_costs_what_its_parts_cost(case_of: CaseOf) -> None:
    names = ("hall", "church", "manse")
    premiums = tuple(
        Premium(coverage="building", location=n, amount=Decimal(900), rate=Decimal("0.001"))
        for n in names
    )
    *records, terms = _village(*names)
    found = list(
        below_replacement(case_of(*records, terms.model_copy(update={"premiums": premiums})))
    )
    parts = [f.priority.cost for f in found[1:] if f.priority.cost]
    assert len(parts) == 3
    assert found[0].priority.cost == parts[0] + parts[1] + parts[2]


def test_one_building_never_takes_more_than_one_place_on_the_agenda(case_of: CaseOf) -> None:
    """A hall that is short, coinsured, stale and behind the index is one question."""
    clause: dict[str, Any] = {"coinsurance": Decimal("0.9"), "automatic_increase": Decimal("0.02")}
    old = valued(valued_on=date(2018, 1, 1))
    case = case_of(building(), old, offered(line(limit=900_000, **clause)))
    found = [finding for rule in RULES for finding in rule.find(case)]
    rules = {finding.rule for finding in found}
    assert {"values.below-replacement", "values.coinsurance", "values.index-too-low",
            "values.valuation-stale"} <= rules  # fmt: skip
    assert ids(agenda(ordered(found))) == ["values.below-replacement@hall"]


def test_six_buildings_take_at_most_three_places_on_the_agenda(case_of: CaseOf) -> None:
    names = ("a", "b", "c", "d", "e", "f")
    case = case_of(*_village(*names, coinsurance=Decimal("0.9")))
    found = [finding for rule in RULES for finding in rule.find(case)]
    assert len(agenda(ordered(found))) <= 3


# --- values.coinsurance


def _clause(case_of: CaseOf, limit: int, basis: str = "formal-appraisal", **more: Any) -> Finding:
    clause = line(limit=limit, coinsurance=Decimal("0.9"), **more)
    return one(coinsurance(case_of(building(), valued(basis=basis), offered(clause))))


def test_a_clause_without_agreed_value_brings_the_statement_of_values(case_of: CaseOf) -> None:
    found = _clause(case_of, 2_000_000)
    assert (found.id, found.kind) == ("values.coinsurance@hall", "send back")
    assert found.encloses[0] == "statement-of-values"
    assert found.title.id == "values-coinsurance-title-unlikely"
    assert found.priority.cost == Money(Decimal(0)), "a signature is free"


def test_the_evidence_shows_four_penalties_and_the_chance(case_of: CaseOf) -> None:
    found = _clause(case_of, 2_000_000)
    shown = {f"penalty-{n}@hall" for n in (10, 25, 50, 100)} | {"penalty-chance@hall", "share@hall"}
    assert shown <= evidence(found)


def test_a_likely_penalty_is_a_decision(case_of: CaseOf) -> None:
    """Enough by an owner's own estimate, which may be a quarter off."""
    cost = _cost(case_of)
    found = _clause(case_of, cost, basis="owner-estimate")
    assert found.title.id == "values-coinsurance-title-likely"
    assert found.kind == "decide"
    expected = next(e for e in found.evidence if e.id == "penalty-expected@hall")
    assert isinstance(expected, Figure)
    assert found.priority.at_risk == (Money(Decimal(cost)) * expected.number).rounded()


def test_with_a_penalty_at_risk_is_the_largest_of_the_four(case_of: CaseOf) -> None:
    found = _clause(case_of, 700_000)
    four = [e.value for e in found.evidence if e.id.startswith("penalty-") and e.unit == "money"]
    assert found.priority.at_risk == max(four, key=lambda money: money.amount)  # type: ignore[union-attr]


def test_a_penalty_on_a_building_that_is_short_is_told_with_that_question(case_of: CaseOf) -> None:
    found = _clause(case_of, 700_000)
    assert found.title.id == "values-coinsurance-title-penalised"
    assert found.kind == "know"
    assert found.todo.id == "values-coinsurance-todo-know"


def test_one_statement_of_values_answers_for_all_buildings(case_of: CaseOf) -> None:
    cost = _cost(case_of)
    names = ("hall", "church", "manse")
    clause: dict[str, Any] = {"basis": "owner-estimate", "coinsurance": Decimal("0.9")}
    found = coinsurance(case_of(*_village(*names, limit=cost + 5_000, **clause)))
    assert sorted(kinds(found).values()) == ["decide", "send back", "send back"]


def test_without_a_valuation_the_clause_still_brings_the_statement(case_of: CaseOf) -> None:
    terms = offered(line(coinsurance=Decimal("0.9")))
    found = one(coinsurance(case_of(building(), terms)))
    assert (found.title.id, found.kind) == ("values-coinsurance-title-unknown", "send back")
    assert evidence(found) == {
        "sum-insured@hall", "terms/2027-01-31/offered/building@hall/coinsurance",
    }  # fmt: skip


@pytest.mark.parametrize(
    "clause",
    [
        {},
        {"coinsurance": Decimal(0)},
        {"coinsurance": Decimal("0.9"), "agreed_value_until": END},
        {"coinsurance": Decimal("0.9"), "agreed_value_until": RENEWAL},  # the lapsing rule speaks
        {"coinsurance_stated_amount": Decimal(2_000_000)},
    ],
)
def test_no_clause_an_agreed_value_or_a_stated_amount_that_is_met_is_quiet(
    case_of: CaseOf, clause: dict[str, Any]
) -> None:
    assert not list(coinsurance(case_of(building(), valued(), offered(line(**clause)))))


def test_an_agreed_value_that_ended_before_the_renewal_is_none(case_of: CaseOf) -> None:
    found = _clause(case_of, 2_000_000, agreed_value_until=date(2027, 1, 30))
    assert found.rule == "values.coinsurance"


def test_a_stated_amount_that_is_not_met_is_told(case_of: CaseOf) -> None:
    clause = line(limit=1_900_000, coinsurance_stated_amount=Decimal(2_000_000))
    found = one(coinsurance(case_of(building(), valued(), offered(clause))))
    assert found.title.id == "values-coinsurance-title-penalised"


# --- values.agreed-value-lapsing


@pytest.mark.parametrize(
    ("until", "speaks"),
    [
        (date(2027, 1, 30), False),
        (RENEWAL, True),
        (date(2028, 1, 30), True),
        (END, False),
        (None, False),
    ],
)
def test_an_agreed_value_that_ends_within_the_coming_term_is_told(
    case_of: CaseOf, until: date | None, speaks: bool
) -> None:
    terms = offered(line(coinsurance=Decimal("0.9"), agreed_value_until=until))
    found = list(agreed_value_lapsing(case_of(building(), valued(), terms)))
    assert ids(found) == (["values.agreed-value-lapsing@hall"] if speaks else [])


def test_it_ranks_among_what_lapses_and_brings_the_statement(case_of: CaseOf) -> None:
    terms = offered(line(coinsurance=Decimal("0.9"), agreed_value_until=date(2027, 6, 30)))
    found = one(agreed_value_lapsing(case_of(building(), valued(), terms)))
    assert (found.priority.tier, found.priority.by) == (Tier.LAPSES, date(2027, 6, 30))
    assert "statement-of-values" in found.encloses
    assert found.by == RENEWAL


def test_it_is_told_without_a_valuation_too(case_of: CaseOf) -> None:
    terms = offered(line(agreed_value_until=date(2027, 6, 30)))
    found = one(agreed_value_lapsing(case_of(building(), terms)))
    assert found.means.id == "values-agreed-value-lapsing-means-no-clause"


# --- values.index-too-low


def _increase(rate: str | None) -> Terms:
    return offered(line(automatic_increase=None if rate is None else Decimal(rate)))


def test_increases_behind_the_index_are_told(case_of: CaseOf) -> None:
    """Common practice, no source: automatic increases of 2 to 3 % a year.

    Ontario's published index rose 10.8 % from 2024Q1 to 2026Q2 (table 18-10-0289-01).
    """
    found = one(index_too_low(case_of(building(), valued(), _increase("0.02"))))
    assert (found.id, found.kind) == ("values.index-too-low@hall", "know")
    assert evidence(found) == {"increases-behind@hall", "increases-gap@hall"}


@pytest.mark.parametrize("rate", ["0.2", None])
def test_increases_ahead_of_it_or_not_on_file_are_quiet(case_of: CaseOf, rate: str | None) -> None:
    assert not list(index_too_low(case_of(building(), valued(), _increase(rate))))


def test_increases_without_a_valuation_are_quiet(case_of: CaseOf) -> None:
    assert not list(index_too_low(case_of(building(), _increase("0.01"))))


# --- values.valuation-stale: five years before the renewal is 31 January 2022


@pytest.mark.parametrize(("day", "speaks"), [(date(2022, 1, 30), True), (date(2022, 1, 31), False)])
def test_a_valuation_more_than_five_years_old_on_the_renewal_is_stale(
    case_of: CaseOf, day: date, speaks: bool
) -> None:
    """Common practice, no source: five years."""
    case = case_of(building(), valued(valued_on=day), offered(line(limit=9_000_000)))
    found = list(valuation_stale(case))
    assert ids(found) == (["values.valuation-stale@hall"] if speaks else [])
    assert all(
        (f.kind, f.title.id) == ("decide", "values-valuation-stale-title-old") for f in found
    )


@pytest.mark.parametrize(
    ("bases", "title", "kind"),
    [
        ((), "none", "decide"),
        (("indexed",), "indexed", "decide"),
        (("unknown",), "unknown", "send back"),
    ],
)
def test_none_only_indexed_and_unknown_are_told_apart(
    case_of: CaseOf, bases: tuple[str, ...], title: str, kind: str
) -> None:
    made = [valued(basis=basis) for basis in bases]
    found = one(valuation_stale(case_of(building(), *made, offered(line(limit=9_000_000)))))
    assert (found.title.id, found.kind) == (f"values-valuation-stale-title-{title}", kind)
    assert found.encloses == (FORM if kind == "send back" else ("building-values",))
    dated = {"valuation/hall/building/2024-02-15/valued_on"} & evidence(found)
    assert bool(dated) == bool(bases)


@pytest.mark.parametrize(("valued_on", "reaches"), [("2016-12-31", False), ("2017-01-01", True)])
def test_a_value_from_before_the_index_begins_is_told_in_a_sentence(
    case_of: CaseOf, valued_on: str, reaches: bool
) -> None:
    """Statistics Canada, table 18-10-0289-01: its series begin with the first quarter of 2017."""
    made = valued(valued_on=date.fromisoformat(valued_on))
    found = one(valuation_stale(case_of(building(), made, offered(line(limit=9_000_000)))))
    told = {reason.id for reason in found.priority.reasons}
    assert ("values-not-indexed-old" in told) is not reaches


def test_a_valuation_that_comes_after_the_review_s_day_cures_nothing_yet(case_of: CaseOf) -> None:
    later = valued(valued_on=date(2026, 12, 1))
    found = one(valuation_stale(case_of(building(), later, offered(line(limit=9_000_000)))))
    assert found.title.id == "values-valuation-stale-title-none"


def test_an_index_carried_forward_does_not_make_an_old_valuation_young(case_of: CaseOf) -> None:
    old, fresh = valued(valued_on=date(2019, 1, 1)), valued(valued_on=VALUED, basis="indexed")
    found = one(valuation_stale(case_of(building(), old, fresh, offered(line(limit=9_000_000)))))
    assert found.title.id == "values-valuation-stale-title-old"


def test_of_several_only_the_one_insured_for_most_is_a_question(case_of: CaseOf) -> None:
    terms = offered(line("hall", 1_000), line("church", 5_000), line("manse", 2_000))
    case = case_of(building("hall"), building("church"), building("manse"), terms)
    assert kinds(valuation_stale(case)) == {"hall": "know", "church": "decide", "manse": "know"}


def test_a_rented_or_uninsured_building_needs_no_valuation(case_of: CaseOf) -> None:
    assert not list(valuation_stale(case_of(building(ownership="rent"), offered())))


# --- values.special-features


def test_features_without_a_valuation_of_their_own_are_asked_for(case_of: CaseOf) -> None:
    church = building(special_features=("Pipe organ", "Steeple"))
    organ = valued(valued="feature", feature="pipe organ")
    found = one(special_features(case_of(church, valued(), organ, offered(line()))))
    assert dict(found.means.args)["features"] == ("Steeple",)
    assert (found.kind, found.encloses) == ("send back", FORM)


@pytest.mark.parametrize(("basis", "speaks"), [("formal-appraisal", False), ("cost-manual", True)])
def test_a_heritage_building_needs_a_formal_appraisal(
    case_of: CaseOf, basis: str, speaks: bool
) -> None:
    """heritagehome.ca: general cost guides do not fit; insurers want an appraisal."""
    case = case_of(building(heritage=True), valued(basis=basis), offered(line()))
    assert bool(list(special_features(case))) == speaks


@pytest.mark.parametrize("heritage", [None, False])
def test_a_building_without_features_is_quiet(case_of: CaseOf, heritage: bool | None) -> None:
    assert not list(special_features(case_of(building(heritage=heritage), offered(line()))))


# --- values.contents-unlisted


def _contents(location: str = "hall", limit: int | None = 80_000) -> Coverage:
    amount = None if limit is None else Decimal(limit)
    return Coverage(coverage="contents", location=location, limit=amount)


@pytest.mark.parametrize(("itemised", "speaks"), [(True, False), (False, True), (None, True)])
def test_contents_never_listed_are_asked_for(
    case_of: CaseOf, itemised: bool | None, speaks: bool
) -> None:
    listed = valued(valued="contents", itemised=itemised)
    found = list(contents_unlisted(case_of(building(), listed, offered(_contents()))))
    assert ids(found) == (["values.contents-unlisted@hall"] if speaks else [])


def test_an_older_list_still_counts_as_one(case_of: CaseOf) -> None:
    old = valued(valued="contents", itemised=True, valued_on=date(2019, 1, 1))
    newer = valued(valued="contents", itemised=None)
    assert not list(contents_unlisted(case_of(building(), old, newer, offered(_contents()))))


@pytest.mark.parametrize("limit", [None, 0])
def test_contents_that_are_not_insured_need_no_list(case_of: CaseOf, limit: int | None) -> None:
    assert not list(contents_unlisted(case_of(building(), offered(_contents(limit=limit)))))


def test_contents_insured_everywhere_are_one_finding_about_the_organisation(
    case_of: CaseOf,
) -> None:
    found = one(contents_unlisted(case_of(building(), offered(_contents("*")))))
    assert (found.id, found.subject.kind) == ("values.contents-unlisted", "organisation")
    assert found.title.id == "values-contents-unlisted-title-everywhere"
    listed = valued(valued="contents", itemised=True)
    assert not list(contents_unlisted(case_of(building(), listed, offered(_contents("*")))))


def test_a_list_of_another_place_is_none_of_this_one(case_of: CaseOf) -> None:
    listed = valued("church", valued="contents", itemised=True)
    case = case_of(building(), building("church"), listed, offered(_contents()))
    found = one(contents_unlisted(case))
    assert (found.subject.kind, found.title.id) == ("building", "values-contents-unlisted-title")


# --- values.incomplete-building


def _missing(finding: Finding) -> list[str]:
    told: Any = dict(finding.means.args)["missing"]
    return [word.id for word in told]


def test_a_building_that_is_known_whole_is_quiet(case_of: CaseOf) -> None:
    assert not list(incomplete_building(case_of(building(), offered(line()))))


@pytest.mark.parametrize(
    "field",
    ["postal_code", "construction", "year_built", "area_m2", "storeys", "basement", "sprinklers",
     "fire_alarm"],
)  # fmt: skip
def test_each_fact_underwriting_needs_is_missed(case_of: CaseOf, field: str) -> None:
    unknown: dict[str, Any] = {field: None}
    case = case_of(building(**unknown), offered(line()))
    found = one(incomplete_building(case))
    missing = _missing(found)
    assert f"field-{field.replace('_', '-')}" in missing
    assert (found.kind, found.encloses) == ("send back", FORM)


def test_an_area_of_nothing_is_missing_too(case_of: CaseOf) -> None:
    assert list(incomplete_building(case_of(building(area_m2=Decimal(0)), offered(line()))))


@pytest.mark.parametrize(("built", "asked"), [(2007, True), (2008, False)])
def test_from_twenty_years_on_the_years_of_renewal_are_needed(
    case_of: CaseOf, built: int, asked: bool
) -> None:
    """Common practice, no source: insurers ask for updates of older buildings."""
    found = list(incomplete_building(case_of(building(year_built=built), offered(line()))))
    assert bool(found) == asked
    assert all(dict(f.title.args)["n"] == 4 for f in found)


def test_a_building_without_a_sum_insured_misses_it(case_of: CaseOf) -> None:
    found = one(incomplete_building(case_of(building(), offered())))
    assert _missing(found) == ["values-sum-insured-field"]


def test_a_rented_building_is_its_owner_s_to_describe(case_of: CaseOf) -> None:
    rented = Building(id="shop", name="Shop", ownership="rent")
    assert not list(incomplete_building(case_of(rented, offered())))


# --- values.area-mismatch


@pytest.mark.parametrize(
    ("field", "theirs", "speaks"),
    [
        ("area_m2", Decimal(540), False),  # a tenth of the larger
        ("area_m2", Decimal("539.9"), True),
        ("area_m2", Decimal("666.6"), False),
        ("area_m2", Decimal(667), True),
        ("storeys", Decimal("2.5"), False),
        ("storeys", Decimal(3), True),
        ("year_built", 2017, False),
        ("year_built", 2018, True),
        ("area_m2", None, False),
    ],
)
def test_two_sources_may_differ_by_the_tolerance_and_no_more(
    case_of: CaseOf, field: str, theirs: Any, speaks: bool
) -> None:
    case = case_of(building(), valued(**{field: theirs}), offered(line()))
    found = list(area_mismatch(case))
    assert bool(found) == speaks
    for finding in found:
        assert (finding.kind, finding.audience) == ("fix", ("broker",))
        assert len(finding.evidence) == 2


def test_what_the_file_does_not_know_is_no_mismatch(case_of: CaseOf) -> None:
    case = case_of(building(area_m2=None), valued(area_m2=Decimal(600)), offered(line()))
    assert not list(area_mismatch(case))


def test_the_newest_valuation_that_measured_is_the_one_compared(case_of: CaseOf) -> None:
    """A building that was extended differs from its older valuation, and rightly."""
    before = valued(valued_on=date(2019, 1, 1), area_m2=Decimal(300))
    after = valued(area_m2=Decimal(600))
    assert not list(area_mismatch(case_of(building(), before, after, offered(line()))))


def test_a_zero_area_disagrees_with_any_other_without_failing(case_of: CaseOf) -> None:
    case = case_of(building(area_m2=Decimal(0)), valued(area_m2=Decimal(600)), offered(line()))
    assert list(area_mismatch(case))
    both = case_of(building(area_m2=Decimal(0)), valued(area_m2=Decimal(0)), offered(line()))
    assert not list(area_mismatch(both))


@pytest.mark.parametrize("size", ["area_m2", "storeys"])
@pytest.mark.parametrize("amount", [0, -20])
def test_a_size_of_nothing_or_less_is_asked_for_again(
    case_of: CaseOf, size: str, amount: int
) -> None:
    odd = building().model_copy(update={size: Decimal(amount)})
    found = one(incomplete_building(case_of(odd, valued(), offered(line()))))
    assert _missing(found) == [f"field-{size.replace('_', '-')}"]


# --- values.valuations-disagree


def _two(case_of: CaseOf, second: int, **more: Any) -> list[Finding]:
    """Return what is found of a first valuation of a million and a second one a year later."""
    later = valued(amount=second, valued_on=date(2025, 2, 15), **more)
    return list(valuations_disagree(case_of(building(), valued(), later, offered(line()))))


def _forward(case_of: CaseOf) -> Decimal:
    """Return a million of 15 February 2024 a year later: both days are middles of a quarter."""
    points = case_of(building()).index(building()).points
    return 1_000_000 * points[Quarter(2025, 1)] / points[Quarter(2024, 1)]


def test_valuations_that_differ_only_by_the_index_agree(case_of: CaseOf) -> None:
    assert not _two(case_of, int(_forward(case_of)))


@pytest.mark.parametrize(("factor", "found"), [("0.86", 0), ("0.84", 1), ("1.17", 0), ("1.18", 1)])
def test_more_than_the_tolerance_apart_is_told_to_the_broker(
    case_of: CaseOf, factor: str, found: int
) -> None:
    """15 % of the larger: 1 − 1/1.17 = 14.5 %, 1 − 1/1.18 = 15.3 %."""
    told = _two(case_of, int(_forward(case_of) * Decimal(factor)))
    assert len(told) == found
    assert all((f.kind, f.audience) == ("fix", ("broker",)) for f in told)


def test_the_earlier_amount_is_shown_at_the_later_prices(case_of: CaseOf) -> None:
    (told,) = _two(case_of, 2_000_000)
    brought = next(e for e in told.evidence if e.id == "brought-forward@hall")
    assert brought.value == Money(_forward(case_of)).rounded(Decimal(1))


def test_a_value_carried_forward_is_no_second_opinion(case_of: CaseOf) -> None:
    assert not _two(case_of, 2_000_000, basis="indexed")


def test_a_valuation_too_old_to_rely_on_cannot_contradict_a_new_one(case_of: CaseOf) -> None:
    old = valued(valued_on=date(2018, 1, 1))
    new = valued(amount=2_000_000, valued_on=date(2023, 1, 2))
    assert not list(valuations_disagree(case_of(building(), old, new, offered(line()))))
    near = valued(valued_on=date(2018, 1, 2))
    assert list(valuations_disagree(case_of(building(), near, new, offered(line()))))


def test_a_valuation_after_the_reviews_day_is_not_compared(case_of: CaseOf) -> None:
    coming = valued(amount=2_000_000, valued_on=date(2026, 12, 1))
    assert not list(valuations_disagree(case_of(building(), valued(), coming, offered(line()))))


def test_valuations_before_the_index_began_are_not_compared(case_of: CaseOf) -> None:
    early = (valued(valued_on=date(2013, 1, 1)), valued(amount=9, valued_on=date(2014, 1, 1)))
    assert not list(valuations_disagree(case_of(building(), *early, offered(line()))))


# --- values.implausible-value


@pytest.mark.parametrize(
    ("area", "found"), [(1_000, 0), (1_001, 1), (67, 0), (66, 1), (0, 0), (-5, 0)]
)
def test_a_value_by_square_metre_outside_its_bounds_is_told_with_the_figure(
    case_of: CaseOf, area: int, found: int
) -> None:
    """A million over 1,001 m² is $999; over 66 m² $15,152. Bounds: 1,000 and 15,000."""
    case = case_of(building(area_m2=Decimal(area)), valued(), offered(line()))
    told = list(implausible_value(case))
    assert len(told) == found
    for finding in told:
        assert finding.kind == "fix"
        assert finding.evidence[0].value == (Money(Decimal(1_000_000)) / area).rounded(Decimal(1))


def test_the_valuations_own_area_counts_before_the_files(case_of: CaseOf) -> None:
    measured = valued(area_m2=Decimal(500))
    assert not list(implausible_value(case_of(building(area_m2=Decimal(5)), measured)))


def test_an_implausible_value_changes_no_figure(case_of: CaseOf) -> None:
    """Warned of, not refused: the building may be unusual."""
    terms = offered(line(limit=900_000))
    usual, odd = (case_of(building(area_m2=Decimal(a)), valued(), terms) for a in (600, 301))
    assert list(implausible_value(odd)) == list(implausible_value(usual)) == []
    tiny = case_of(building(area_m2=Decimal(600)), valued(area_m2=Decimal(10)), terms)
    assert list(implausible_value(tiny))
    assert one(below_replacement(tiny)).priority.at_risk == (
        one(below_replacement(usual)).priority.at_risk
    )


# --- all of them


def _everything(case_of: CaseOf) -> list[Finding]:
    """Return findings of each rule in each of its forms."""
    clause: dict[str, Any] = {"coinsurance": Decimal("0.9"), "automatic_increase": Decimal("0.02")}
    cost = _cost(case_of)
    priced = (Premium(coverage="building", location="hall", amount=Decimal(900)),)
    mismatched = valued(area_m2=Decimal(400), storeys=Decimal(4), year_built=1990)
    short, unsure = line(limit=700_000, **clause), valued(basis="unknown")
    cases = [
        case_of(building(heritage=True, special_features=("Bell",)), mismatched,
                offered(short, _contents())),
        case_of(building(), valued(), offered(short, premiums=priced)),
        case_of(building(), unsure, offered(short, premiums=priced)),
        case_of(building(), unsure, offered(short, _contents("*"))),
        case_of(building(), valued(), offered(line(limit=cost + 1, **clause))),
        case_of(building(), valued(), offered(line(limit=9_000_000, **clause))),
        case_of(building(year_built=None), offered(line(**clause))),
        case_of(building(), valued(basis="indexed"), offered(line(limit=cost - 1))),
        case_of(building(), valued(valued_on=date(2018, 1, 1)), offered(line())),
        case_of(building(), valued(), offered(line(agreed_value_until=date(2027, 6, 1), **clause))),
        case_of(building(), valued(), offered(line(agreed_value_until=date(2027, 6, 1)))),
        case_of(*_village("hall", "church", "manse", **clause)),
        case_of(building("a"), building("b"), offered(line("a"), line("b"))),
        case_of(building(), valued(), valued(amount=2_000_000, valued_on=date(2025, 3, 1)),
                offered(line())),
        case_of(building(), valued(area_m2=Decimal(6000)), offered(line())),
        case_of(building(), valued(valued="contents"), offered(_contents())),
    ]  # fmt: skip
    return [finding for case in cases for rule in RULES for finding in rule.find(case)]


@pytest.mark.parametrize("language", ["en", "fr"])
def test_every_finding_can_be_said_with_its_evidence(
    case_of: CaseOf, canada: Reference, language: str
) -> None:
    speech, found = Speech(canada, language), _everything(case_of)
    assert {finding.rule for finding in found} == {rule.id for rule in RULES}
    for finding in found:
        sentences = (finding.title, finding.means, finding.todo, *finding.priority.reasons)
        assert all(speech.say(sentence) for sentence in sentences)
        for node in (node for e in finding.evidence for _, node in walk(e)):
            assert speech.parts(node).label


@pytest.mark.parametrize(
    ("language", "title", "todo"),
    [
        ("en", "Hall would be about $450,000 short after a total loss",
         "At the building's present rate that adds about $900 a year before tax."),
        ("fr", "Hall : il manquerait environ 450 000 $ après un sinistre total",
         "Au taux actuel du bâtiment, cela ajoute environ 900 $ par année avant taxe."),
    ],
)  # fmt: skip
def test_the_leaders_read_the_gap_and_its_price(
    case_of: CaseOf, canada: Reference, language: str, title: str, todo: str
) -> None:
    limit = _cost(case_of) - 450_000
    own = Premium(coverage="building", location="hall", amount=Decimal(1), rate=Decimal("0.002"))
    terms = offered(line(limit=limit), premiums=(own,))
    found = one(below_replacement(case_of(building(), valued(), terms)))
    speech = Speech(canada, language)

    def said(sentence: Any) -> str:
        return speech.say(sentence).replace("\xa0", " ").replace("\u202f", " ").replace("’", "'")

    assert said(found.title) == title
    assert said(found.todo).endswith(todo)


def test_each_rule_names_parameters_that_exist(canada: Reference) -> None:
    for rule in RULES:
        assert set(rule.parameters) <= canada.parameters.keys(), rule.id


def test_a_rule_s_evidence_rests_only_on_parameters_it_names(case_of: CaseOf) -> None:
    named = {rule.id: set(rule.parameters) for rule in RULES}
    for finding in _everything(case_of):
        used = {n.id for e in finding.evidence for _, n in walk(e) if n.id.startswith("values.")}
        assert used <= named[finding.rule], finding.id
