"""The rules about claims: when they speak, when they keep still, and what they say."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from decimal import Decimal
from typing import Any

import pytest

from quarterday.catalogue.speech import Speech
from quarterday.core.file.records import Building, Claim, Organisation, Terms, Valuation
from quarterday.core.money import Money
from quarterday.core.reference import Reference
from quarterday.core.review.case import Case
from quarterday.core.review.finding import Finding
from quarterday.core.review.rules.claims import (
    RULES,
    contradiction,
    duplicate,
    experience_found,
    late,
    repeat,
    stale_reserve,
    water_lookback,
)

CaseOf = Callable[..., Case]
HALL = Building(id="hall", name="Hall")


def claim(number: str, day: date, cause: str = "sewer-backup", **more: Any) -> Claim:
    given = {"number": number, "cause": cause, "date_of_loss": day, "paid": Decimal(10_000),
             "location": "hall", **more}  # fmt: skip
    return Claim.model_validate(given)


def ids(findings: Any) -> list[str]:
    return [finding.id for finding in findings]


# --- claims.water-lookback: the renewal is on 31 January 2027, so ten years begin in 2017


@pytest.mark.parametrize(
    ("day", "speaks"),
    [
        (date(2017, 1, 30), False),
        (date(2017, 1, 31), True),
        (date(2026, 11, 1), True),
        (date(2027, 1, 31), False),
    ],
)
def test_water_within_ten_years_brings_the_questionnaire(
    case_of: CaseOf, day: date, speaks: bool
) -> None:
    """Common practice, no source: insurers look back ten years on water."""
    found = list(water_lookback(case_of(HALL, claim("A", day))))
    assert ids(found) == (["claims.water-lookback@hall"] if speaks else [])
    assert all(finding.encloses == ("water-form",) for finding in found)


@pytest.mark.parametrize("cause", ["fire", "theft", "equipment-breakdown"])
def test_other_causes_do_not(case_of: CaseOf, cause: str) -> None:
    assert not list(water_lookback(case_of(HALL, claim("A", date(2026, 1, 1), cause))))


def test_claims_at_one_place_make_one_finding_and_places_are_told_apart(case_of: CaseOf) -> None:
    church = Building(id="church", name="Church")
    claims = (
        claim("A", date(2020, 1, 1)),
        claim("B", date(2021, 1, 1), "ice-damming"),
        claim("C", date(2022, 1, 1), location="church"),
    )
    found = list(water_lookback(case_of(HALL, church, *claims)))
    assert ids(found) == ["claims.water-lookback@church", "claims.water-lookback@hall"]
    assert found[1].priority.at_risk == Money(Decimal(20_000))
    assert [e.id for e in found[1].evidence[:2]] == ["claim-incurred@A", "claim-incurred@B"]


def test_a_claim_that_names_no_place_is_about_the_organisation(case_of: CaseOf) -> None:
    (found,) = water_lookback(case_of(claim("A", date(2020, 1, 1), location=None)))
    assert (found.id, found.subject.kind) == ("claims.water-lookback", "organisation")
    assert found.subject.name == "Elm Grove Hall"


def test_a_water_claim_that_came_to_nothing_still_counts(case_of: CaseOf) -> None:
    """Common practice, no source: insurers ask about incidents, paid or not."""
    assert list(water_lookback(case_of(HALL, claim("A", date(2020, 1, 1), paid=Decimal(0)))))


# --- claims.repeat


def test_two_of_one_cause_in_five_years_are_a_pattern(case_of: CaseOf) -> None:
    claims = (claim("A", date(2022, 1, 31), "theft"), claim("B", date(2026, 1, 1), "theft"))
    (found,) = repeat(case_of(HALL, *claims))
    assert found.id == "claims.repeat@theft"
    assert found.kind == "know"
    assert found.priority.at_risk == Money(Decimal(20_000))


def test_one_a_day_too_old_is_no_pattern(case_of: CaseOf) -> None:
    claims = (claim("A", date(2022, 1, 30), "theft"), claim("B", date(2026, 1, 1), "theft"))
    assert not list(repeat(case_of(HALL, *claims)))


def test_two_different_causes_are_no_pattern(case_of: CaseOf) -> None:
    claims = (claim("A", date(2025, 1, 1), "theft"), claim("B", date(2026, 1, 1), "fire"))
    assert not list(repeat(case_of(HALL, *claims)))


def test_two_claims_that_share_no_known_cause_are_no_pattern(case_of: CaseOf) -> None:
    claims = (claim("A", date(2025, 1, 1), "other"), claim("B", date(2026, 1, 1), "other"))
    assert not list(repeat(case_of(HALL, *claims)))


# --- claims.stale-reserve: reviewed on 25 November 2026


@pytest.mark.parametrize(
    ("moved", "speaks"),
    [(date(2025, 11, 25), True), (date(2025, 11, 26), False), (None, False)],
)
def test_an_open_claim_without_movement_for_twelve_months_is_asked_about(
    case_of: CaseOf, moved: date | None, speaks: bool
) -> None:
    """An unknown last movement may have been yesterday, so nothing is said of it."""
    one = claim("A", date(2024, 1, 1), status="open", outstanding=Decimal(5_000),
                last_movement_on=moved)  # fmt: skip
    found = list(stale_reserve(case_of(HALL, one)))
    assert ids(found) == (["claims.stale-reserve@A"] if speaks else [])
    assert all(finding.audience == ("broker",) for finding in found)


def test_a_closed_claim_rests(case_of: CaseOf) -> None:
    one = claim("A", date(2020, 1, 1), status="closed", last_movement_on=date(2020, 6, 1))
    assert not list(stale_reserve(case_of(HALL, one)))


# --- claims.experience: 3,585 days since 31 January 2017 at 3,650 a year are 35,850


def premium(amount: int) -> Terms:
    start = date(2026, 1, 31)
    given = {"stage": "issued", "start": start, "end": start.replace(year=2027),
             "premiums": [{"coverage": "building", "amount": amount}]}  # fmt: skip
    return Terms.model_validate(given)


@pytest.mark.parametrize(("paid", "speaks"), [(35_849, False), (35_850, True), (90_000, True)])
def test_claims_that_took_the_whole_premium_are_told(
    case_of: CaseOf, paid: int, speaks: bool
) -> None:
    """The share, all of it, is an illustrative default."""
    assert (date(2026, 11, 25) - date(2017, 1, 31)).days == 3_585
    one = claim("A", date(2025, 5, 1), paid=Decimal(paid))
    found = list(experience_found(case_of(premium(3_650), one)))
    assert ids(found) == (["claims.experience"] if speaks else [])


def test_a_record_without_a_known_premium_is_not_judged(case_of: CaseOf) -> None:
    assert not list(experience_found(case_of(claim("A", date(2025, 5, 1)))))
    assert not list(experience_found(case_of(premium(0), claim("A", date(2025, 5, 1)))))


def test_the_experience_is_told_in_both_languages(case_of: CaseOf, canada: Reference) -> None:
    one = claim("A", date(2025, 5, 1), paid=Decimal(35_850))
    (found,) = experience_found(case_of(premium(3_650), one))
    assert Speech(canada, "en").say(found.title) == (
        "Claims took 100% of what 10 years of your premium come to"
    )
    french = Speech(canada, "fr").say(found.title).replace("\xa0", " ")
    assert french == "Les sinistres ont pris 100 % de 10 ans de votre prime"


# --- claims.reported-late: more than thirty days, in the five years before 31 January 2027


def told_on(number: str, day: date, reported: date | None, **more: Any) -> Claim:
    return claim(number, day, **{"reported_on": reported, **more})


@pytest.mark.parametrize(
    ("day", "reported", "speaks"),
    [
        (date(2024, 3, 1), date(2024, 3, 31), False),
        (date(2024, 3, 1), date(2024, 4, 1), True),
        (date(2024, 3, 1), date(2024, 3, 1), False),
        (date(2024, 3, 1), None, False),
        (date(2024, 3, 1), date(2024, 1, 1), False),
        (date(2022, 1, 30), date(2022, 9, 1), False),
        (date(2022, 1, 31), date(2022, 9, 1), True),
    ],
)
def test_more_than_thirty_days_to_the_report_is_late(
    case_of: CaseOf, day: date, reported: date | None, speaks: bool
) -> None:
    """Common practice, no source. A report before the loss is a contradiction, told elsewhere."""
    found = list(late(case_of(HALL, told_on("A", day, reported))))
    assert ids(found) == (["claims.reported-late"] if speaks else [])


def test_late_claims_are_one_finding_with_the_days_of_each(
    case_of: CaseOf, canada: Reference
) -> None:
    claims = (
        told_on("A", date(2024, 3, 1), date(2024, 5, 1)),
        told_on("B", date(2025, 6, 2), date(2025, 8, 25), cause="injury-on-premises"),
        told_on("C", date(2025, 6, 2), date(2025, 6, 3), cause="theft"),
    )
    (found,) = late(case_of(HALL, *claims))
    assert (found.kind, found.audience) == ("know", ("leaders", "broker"))
    assert found.priority.at_risk is None
    figures = {node.id: node.value for node in found.evidence[:2]}
    assert figures == {"claim-days-to-report@A": 61, "claim-days-to-report@B": 84}
    days = [fact.value for fact in found.evidence[1].inputs]  # type: ignore[union-attr]
    assert days == [date(2025, 6, 2), date(2025, 8, 25)]
    english = Speech(canada, "en").say
    assert english(found.title) == "2 claims were reported late, one of them after 84 days"
    assert english(found.means).startswith("Sewer backup of March 1, 2024, reported 61 days later")
    assert "then nobody was slow" in english(found.means)
    french = Speech(canada, "fr").say(found.title).replace("\xa0", " ")
    assert french == "2 sinistres ont été déclarés tard, dont un après 84 jours"


def test_one_own_loss_is_told_without_a_word_on_others(case_of: CaseOf, canada: Reference) -> None:
    (found,) = late(case_of(HALL, told_on("A", date(2024, 3, 1), date(2024, 5, 1))))
    for language in ("en", "fr"):
        say = Speech(canada, language).say
        assert "61" in say(found.title)
        assert "then nobody" not in say(found.means)
        assert say(found.means).endswith(".")
        assert all(map(say, (found.todo, *found.priority.reasons)))


def test_nobody_is_late_who_could_not_speak_sooner(case_of: CaseOf) -> None:
    years_later = told_on("A", date(2022, 3, 1), date(2026, 5, 1), cause="abuse-allegation")
    assert not list(late(case_of(HALL, years_later)))


def test_an_event_under_two_numbers_is_late_once(case_of: CaseOf) -> None:
    twins = (told_on("A-1", date(2024, 3, 1), date(2024, 5, 1)),
             told_on("A1", date(2024, 3, 1), date(2024, 5, 1)))  # fmt: skip
    (found,) = late(case_of(HALL, *twins))
    assert len([n for n in found.evidence if n.id.startswith("claim-days")]) == 1


# --- claims.duplicate


def test_one_event_under_two_numbers_is_told_to_the_broker(case_of: CaseOf) -> None:
    twins = (claim("A-1", date(2024, 3, 1)), claim("A1", date(2024, 3, 1)))
    (found,) = duplicate(case_of(HALL, *twins))
    assert (found.rule, found.kind, found.audience) == ("claims.duplicate", "fix", ("broker",))
    assert [e.id for e in found.evidence] == ["claim-incurred@A-1", "claim-incurred@A1"]
    assert not list(repeat(case_of(HALL, *twins)))


# --- claims.contradiction

FOUNDED = Organisation(name="Elm Grove Hall", province="ON", founded_year=2022,
                       renewal_date=date(2027, 1, 31))  # fmt: skip
DAY = date(2024, 3, 1)


@pytest.mark.parametrize(
    ("more", "kind"),
    [
        ({"outstanding": 5_000}, "closed-with-reserve"),
        ({"outstanding": -1, "status": "open"}, "negative-reserve"),
        ({"recovered": 10_001}, "recovered-more"),
        ({"reported_on": date(2024, 2, 29)}, "reported-before"),
        ({"valued_on": date(2024, 2, 29)}, "valued-before"),
        ({"day": date(2026, 11, 26)}, "in-the-future"),
        ({"day": date(2021, 12, 31)}, "before-founded"),
        ({"cause": "fire", "paid": 9_000_000}, "above-value"),
    ],
)
def test_a_claim_that_cannot_be_so_is_told(
    case_of: CaseOf, canada: Reference, more: dict[str, Any], kind: str
) -> None:
    one = claim("A", **{"day": DAY, **more})
    value = Valuation(building="hall", amount=Decimal(900_000), valued_on=date(2025, 6, 1))
    line = {"coverage": "building", "location": "hall", "limit": Decimal(900_000)}
    insured = Terms.model_validate({"stage": "offered", "start": date(2027, 1, 31),
                                    "end": date(2028, 1, 31), "coverages": [line]})  # fmt: skip
    (found,) = contradiction(case_of(FOUNDED, HALL, value, insured, one))
    assert found.id == f"claims.contradiction@A/{kind}"
    assert (found.kind, found.audience) == ("fix", ("broker",))
    for language in ("en", "fr"):
        speech = Speech(canada, language)
        said = [speech.say(w) for w in (found.title, found.means, found.todo)]
        assert all("A" in said[0] and text for text in said)
        assert all(speech.parts(node).label for node in found.evidence)


@pytest.mark.parametrize(
    "more",
    [
        {},
        {"outstanding": 5_000, "status": "open"},
        {"recovered": 10_000},
        {"reported_on": DAY, "valued_on": DAY},
        {"day": date(2022, 1, 1)},
        {"cause": "injury-on-premises", "paid": 9_000_000},
    ],
)
def test_a_claim_that_can_be_so_rests(case_of: CaseOf, more: dict[str, Any]) -> None:
    one = claim("A", **{"day": DAY, **more})
    assert not list(contradiction(case_of(FOUNDED, HALL, one)))


# --- all of them


def _all(case: Case) -> list[Finding]:
    return [finding for rule in RULES for finding in rule.find(case)]


def _busy(case_of: CaseOf) -> Case:
    return case_of(
        HALL,
        claim("A", date(2023, 5, 1)),
        claim("B", date(2025, 6, 1), status="open", last_movement_on=date(2025, 7, 1),
              outstanding=Decimal(7_000)),
        claim("C", date(2019, 6, 1), "rain-entry", location=None),
    )  # fmt: skip


def test_an_organisation_without_claims_hears_nothing(case_of: CaseOf) -> None:
    assert _all(case_of(HALL)) == []


@pytest.mark.parametrize(
    ("language", "titles"),
    [
        ("en", [
            "One water claim in 10 years: Elm Grove Hall needs the water questionnaire",
            "2 water claims in 10 years: Hall needs the water questionnaire",
            "Sewer backup struck twice in 5 years",
            "Claim B is open, and nothing has moved since July 1, 2025",
        ]),
        ("fr", [
            "Elm Grove Hall : un sinistre d'eau en 10 ans, le questionnaire sur l'eau est requis",
            "Hall : 2 sinistres d'eau en 10 ans, le questionnaire sur l'eau est requis",
            "Refoulement d'égouts : 2 fois en 5 ans",
            "Le sinistre B est ouvert et rien n'a bougé depuis le 1er juillet 2025",
        ]),
    ],
)  # fmt: skip
def test_the_findings_say_it_in_both_languages(
    case_of: CaseOf, canada: Reference, language: str, titles: list[str]
) -> None:
    speech, found = Speech(canada, language), _all(_busy(case_of))
    said = [speech.say(finding.title).replace("\xa0", " ").replace("’", "'") for finding in found]
    assert said == titles
    for finding in found:
        for sentence in (finding.means, finding.todo, *finding.priority.reasons):
            assert speech.say(sentence)
        for node in finding.evidence:
            assert speech.parts(node).label


def test_each_rule_names_the_parameters_it_uses(canada: Reference) -> None:
    without = {"claims.duplicate", "claims.contradiction"}
    for rule in RULES:
        assert bool(rule.parameters) == (rule.id not in without)
        assert set(rule.parameters) <= canada.parameters.keys()
