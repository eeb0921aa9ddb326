"""Clauses that can hurt by themselves, and buildings that stand empty."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date, timedelta
from decimal import Decimal
from typing import Any

import pytest

from quarterday.catalogue.speech import Speech
from quarterday.core.file.records import Building, Operations, Terms
from quarterday.core.money import Money
from quarterday.core.reference import LANGUAGES, Reference
from quarterday.core.review.case import Case
from quarterday.core.review.finding import Finding, Tier
from quarterday.core.review.rules.terms import clauses
from quarterday.core.review.rules.terms.vacancy import vacancy

CaseOf = Callable[..., Case]
TermsOf = Callable[..., Terms]
AS_OF = date(2026, 11, 25)
RENEWAL = date(2027, 1, 31)
GENERAL = {"coverage": "general-liability"}
BOARD = {"coverage": "directors-and-officers", "claims_made": True, "reporting_days": 60}
ALL_DAMAGES = ("punitive", "exemplary", "multiplied")


def _only(findings: Any) -> Finding | None:
    found: list[Finding] = list(findings)
    assert len(found) <= 1
    return found[0] if found else None


# terms.additional-limit-basis


@pytest.mark.parametrize(
    ("meant_for", "ownership", "told"),
    [
        ("renter", "own", True),
        ("owner", "rent", True),
        ("owner", "own", False),
        ("renter", "rent", False),
        ("renter", "mandate", True),
        ("owner", "mandate", False),
        (None, "own", False),
    ],
)
def test_the_shared_limit_must_fit_owning_or_renting(
    case_of: CaseOf, terms_of: TermsOf, meant_for: str | None, ownership: Any, told: bool
) -> None:
    shared = {"amount": 100000, "tops_up": ["by-laws"], "meant_for": meant_for}
    hall = Building(id="hall", name="Main hall", ownership=ownership)
    case = case_of(terms_of("offered", shared_limit=shared), hall)
    found = _only(clauses.additional_limit_basis(case))
    assert bool(found) is told
    if found:
        assert {e.id for e in found.evidence} == {
            "terms/2027-01-31/offered/shared-limit-meant-for",
            "terms/2027-01-31/offered/shared-limit-amount",
            "building/hall/ownership",
        }


def test_one_own_building_makes_an_owner(case_of: CaseOf, terms_of: TermsOf) -> None:
    shared = {"amount": 100000, "tops_up": [], "meant_for": "owner"}
    both = (Building(id="a", name="A"), Building(id="b", name="B", ownership="rent"))
    case = case_of(terms_of("offered", shared_limit=shared), *both)
    assert _only(clauses.additional_limit_basis(case)) is None


@pytest.mark.parametrize(("owns", "told"), [(True, True), (False, False), (None, False)])
def test_without_buildings_on_file_the_profile_decides(
    case_of: CaseOf, terms_of: TermsOf, owns: bool | None, told: bool
) -> None:
    shared = {"amount": 100000, "tops_up": [], "meant_for": "renter"}
    case = case_of(terms_of("offered", shared_limit=shared), Operations(owns_premises=owns))
    assert bool(_only(clauses.additional_limit_basis(case))) is told


def test_without_terms_or_a_shared_limit_there_is_nothing_to_fit(
    case_of: CaseOf, terms_of: TermsOf
) -> None:
    assert _only(clauses.additional_limit_basis(case_of())) is None
    assert _only(clauses.additional_limit_basis(case_of(terms_of("offered", GENERAL)))) is None


# terms.damages


def test_kinds_of_damages_left_out_are_named(
    case_of: CaseOf, terms_of: TermsOf, canada: Reference
) -> None:
    lines = ({**GENERAL, "damages": ("punitive",)}, {"coverage": "umbrella", "damages": ()})
    found = _only(clauses.damages(case_of(terms_of("offered", *lines))))
    assert found
    assert (found.kind, found.audience) == ("know", ("leaders", "broker"))
    say = Speech(canada, "en").say
    assert say(found.title).endswith("punitive damages, exemplary damages and multiplied damages")
    assert "General liability and Umbrella" in say(found.means)
    assert "Where the law allows" in say(found.means)
    assert [e.value for e in found.evidence] == ["punitive", "-"]


def test_all_kinds_of_damages_or_a_coverage_of_their_own_is_enough(
    case_of: CaseOf, terms_of: TermsOf
) -> None:
    whole = {**GENERAL, "damages": ALL_DAMAGES}
    assert _only(clauses.damages(case_of(terms_of("offered", whole)))) is None
    own = ({**GENERAL, "damages": ()}, {"coverage": "punitive-damages", "limit": 1000000})
    assert _only(clauses.damages(case_of(terms_of("offered", *own)))) is None


def test_silence_about_damages_is_for_the_broker_to_ask(case_of: CaseOf, terms_of: TermsOf) -> None:
    found = _only(clauses.damages(case_of(terms_of("offered", GENERAL))))
    assert found
    assert (found.kind, found.audience) == ("fix", ("broker",))
    property_only = {"coverage": "glass", "limit": 100}
    assert _only(clauses.damages(case_of(terms_of("offered", property_only)))) is None
    assert _only(clauses.damages(case_of())) is None


# terms.defence-inside


def test_limits_that_lawyers_use_up_are_counted(
    case_of: CaseOf, terms_of: TermsOf, canada: Reference
) -> None:
    inside = ({**GENERAL, "defence": "inside"}, {**BOARD, "defence": "inside"})
    found = _only(clauses.defence_inside(case_of(terms_of("offered", *inside))))
    assert found
    assert Speech(canada, "en").say(found.title) == "Lawyers' bills would use up 2 of your limits"
    assert [e.value for e in found.evidence] == ["inside", "inside"]


@pytest.mark.parametrize("defence", ["outside", None])
def test_defence_on_top_or_not_stated_uses_up_nothing(
    case_of: CaseOf, terms_of: TermsOf, defence: str | None
) -> None:
    terms = terms_of("offered", {**GENERAL, "defence": defence})
    assert _only(clauses.defence_inside(case_of(terms))) is None
    assert _only(clauses.defence_inside(case_of())) is None


# terms.claims-made


@pytest.mark.parametrize(
    ("since", "told"),
    [
        (date(2010, 1, 2), True),
        (date(2010, 1, 1), False),
        (date(2009, 12, 31), False),
    ],
)
def test_a_retroactive_date_that_moves_later_loses_past_years(
    case_of: CaseOf, terms_of: TermsOf, canada: Reference, since: date, told: bool
) -> None:
    before = terms_of("issued", {**BOARD, "retroactive_date": date(2010, 1, 1)})
    after = terms_of("offered", {**BOARD, "retroactive_date": since})
    found = _only(clauses.claims_made(case_of(before, after)))
    assert bool(found) is told
    if found:
        assert (found.kind, found.priority.tier, found.by) == ("decide", Tier.LAPSES, RENEWAL)
        assert "from January 1, 2010 on" in Speech(canada, "en").say(found.means)


def test_cover_that_starts_to_count_claims_when_made_is_decided(
    case_of: CaseOf, terms_of: TermsOf
) -> None:
    before = terms_of("issued", {**BOARD, "claims_made": False})
    found = _only(clauses.claims_made(case_of(before, terms_of("offered", BOARD))))
    assert found
    assert (found.title.id, found.kind) == ("terms-claims-made-switched-title", "decide")


def test_a_missing_retroactive_date_is_for_the_broker(case_of: CaseOf, terms_of: TermsOf) -> None:
    found = _only(clauses.claims_made(case_of(terms_of("offered", BOARD))))
    assert found
    assert (found.title.id, found.audience) == ("terms-claims-made-missing-title", ("broker",))


def test_a_missing_reporting_period_is_another_finding(case_of: CaseOf, terms_of: TermsOf) -> None:
    line = {**BOARD, "retroactive_date": date(2010, 1, 1), "reporting_days": None}
    found = _only(clauses.claims_made(case_of(terms_of("offered", line))))
    assert found
    assert found.id == "terms.claims-made@directors-and-officers/reporting"


def test_occurrence_cover_and_silence_raise_nothing(case_of: CaseOf, terms_of: TermsOf) -> None:
    for claims_made in (False, None):
        line = {**BOARD, "claims_made": claims_made, "reporting_days": None}
        assert _only(clauses.claims_made(case_of(terms_of("offered", line)))) is None
    assert _only(clauses.claims_made(case_of())) is None


# terms.vacancy


def _empty(days: int) -> Building:
    """Return a building that has been empty for so many days on the day of the review."""
    return Building(id="hall", name="Main hall", unoccupied_since=AS_OF - timedelta(days=days))


@pytest.mark.parametrize(("days", "state"), [(29, "coming"), (30, "coming"), (31, "past")])
def test_a_building_is_empty_too_long_from_the_day_after_the_last_allowed_one(
    case_of: CaseOf, terms_of: TermsOf, days: int, state: str
) -> None:
    case = case_of(terms_of("offered", vacancy_days=30), _empty(days))
    found = _only(vacancy(case))
    assert found
    assert dict(found.title.args)["state"] == state
    assert found.by == AS_OF + timedelta(days=30 - days)
    assert (found.kind, found.priority.tier) == ("decide", Tier.LAPSES)
    assert found.evidence[0].value == days


def test_several_empty_buildings_are_one_finding_for_each_state(
    case_of: CaseOf, terms_of: TermsOf, canada: Reference
) -> None:
    sums = [
        {"coverage": "building", "location": id, "limit": limit}
        for id, limit in (("a", 900000), ("b", 50000), ("c", 10000))
    ]
    buildings = [
        Building(id=id, name=name, unoccupied_since=AS_OF - timedelta(days=days))
        for id, name, days in (("a", "Lodge", 50), ("b", "Cabins", 40), ("c", "Shed", 10))
    ]
    case = case_of(terms_of("offered", *sums, vacancy_days=30), *buildings)
    past, coming = vacancy(case)
    assert (past.id, coming.id) == ("terms.vacancy@a+1", "terms.vacancy@c")
    assert (past.priority.at_risk, past.by) == (
        Money(Decimal(950000)),
        AS_OF - timedelta(days=20),
    )
    said = Speech(canada, "en").say(past.title)
    assert said == "Empty longer than the policy allows: Lodge and Cabins"


def test_the_building_s_own_sum_insured_is_at_risk(case_of: CaseOf, terms_of: TermsOf) -> None:
    own = {"coverage": "building", "location": "hall", "limit": 900000}
    found = _only(vacancy(case_of(terms_of("offered", own, vacancy_days=30), _empty(40))))
    assert found
    assert found.priority.at_risk == Money(Decimal(900000))
    shared = {"coverage": "building", "limit": 900000}
    other = _only(vacancy(case_of(terms_of("offered", shared, vacancy_days=30), _empty(40))))
    assert other
    assert other.priority.at_risk is None


def test_a_building_that_empties_later_is_told_ahead_without_a_count_of_days(
    case_of: CaseOf, terms_of: TermsOf
) -> None:
    found = _only(vacancy(case_of(terms_of("offered", vacancy_days=30), _empty(-10))))
    assert found
    assert [e.id for e in found.evidence] == [
        "building/hall/unoccupied_since",
        "terms/2027-01-31/offered/vacancy-days",
    ]


def test_days_allowed_beyond_the_coming_term_are_no_matter_yet(
    case_of: CaseOf, terms_of: TermsOf
) -> None:
    last = date(2028, 1, 31) - AS_OF  # the first day after the coming term
    enough = terms_of("offered", vacancy_days=last.days)
    assert _only(vacancy(case_of(enough, _empty(0)))) is None
    assert _only(vacancy(case_of(terms_of("offered", vacancy_days=last.days - 1), _empty(0))))


@pytest.mark.parametrize(("days", "told"), [(30, False), (31, True)])
def test_a_number_of_empty_days_alone_counts_too(
    case_of: CaseOf, terms_of: TermsOf, days: int, told: bool
) -> None:
    hall = Building(id="hall", name="Main hall", unoccupied_days=days)
    found = _only(vacancy(case_of(terms_of("offered", vacancy_days=30), hall)))
    assert bool(found) is told
    if found:
        assert (dict(found.title.args)["state"], found.by) == ("past", None)


def test_days_the_terms_do_not_state_are_looked_up(case_of: CaseOf, terms_of: TermsOf) -> None:
    found = _only(vacancy(case_of(terms_of("offered"), _empty(40))))
    assert found
    assert (found.kind, found.audience) == ("fix", ("broker",))


def test_which_building_is_empty_is_asked_when_only_the_profile_says_so(
    case_of: CaseOf, terms_of: TermsOf
) -> None:
    hall = Building(id="hall", name="Main hall")
    one = Operations(unoccupied_buildings=True)
    found = _only(vacancy(case_of(terms_of("offered", vacancy_days=30), hall, one)))
    assert found
    assert (found.kind, found.encloses) == ("send back", ("statement-of-values",))
    for answer in (False, None):
        none = Operations(unoccupied_buildings=answer)
        assert _only(vacancy(case_of(terms_of("offered", vacancy_days=30), hall, none))) is None


def test_without_terms_no_days_are_known(case_of: CaseOf) -> None:
    assert _only(vacancy(case_of(_empty(40)))) is None


@pytest.mark.parametrize("language", LANGUAGES)
def test_an_empty_building_reads_right(
    case_of: CaseOf, terms_of: TermsOf, canada: Reference, language: str
) -> None:
    found = _only(vacancy(case_of(terms_of("offered", vacancy_days=30), _empty(10))))
    assert found
    said = Speech(canada, language).say(found.title).replace("\N{NO-BREAK SPACE}", " ")
    assert (
        said
        == {
            "en": "Empty too long after December 15, 2026: Main hall",
            "fr": "Vide trop longtemps après le 15 décembre 2026 : Main hall",
        }[language]
    )


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_sentence_about_clauses_can_be_spoken(
    case_of: CaseOf, terms_of: TermsOf, canada: Reference, language: str
) -> None:
    speech = Speech(canada, language)
    switched = (terms_of("issued", {**BOARD, "claims_made": False}), terms_of("offered", BOARD))
    missing = terms_of("offered", {**GENERAL, **BOARD, "reporting_days": None})
    cases = [
        case_of(*switched),
        case_of(missing),
        case_of(terms_of("offered", GENERAL), _empty(40)),
        case_of(terms_of("offered"), Operations(unoccupied_buildings=True)),
        case_of(terms_of("offered", vacancy_days=1), _empty(40)),
    ]
    rules = (clauses.claims_made, clauses.damages, clauses.defence_inside, vacancy)
    found = [finding for case in cases for rule in rules for finding in rule(case)]
    assert len(found) >= 7
    for finding in found:
        for words in (finding.title, finding.means, finding.todo, *finding.priority.reasons):
            assert speech.say(words)
        assert [speech.parts(node).value for node in finding.evidence].count("") == 0
