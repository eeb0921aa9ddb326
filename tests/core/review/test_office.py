"""The rules of the office: each triggers, stays silent, holds its boundary, and can be said."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterday.catalogue.speech import Speech
from quarterday.core.figure import Fact, walk
from quarterday.core.file.records import (
    Authority,
    Contact,
    Delivery,
    Interest,
    Operations,
    Organisation,
    Record,
    ReviewSigned,
    Terms,
)
from quarterday.core.reference import Reference
from quarterday.core.review.case import Case
from quarterday.core.review.finding import Finding, Tier
from quarterday.core.review.rules.office import RULES
from quarterday.core.review.rules.office.identity import number_fault, plain_name
from quarterday.core.words import Term

CaseOf = Callable[..., Case]
AS_OF = date(2026, 11, 25)
YEAR_AGO, DAY_TOO_OLD = date(2025, 11, 25), date(2025, 11, 24)
RENEWAL = date(2027, 1, 31)


def contact(id: str, confirmed: date | None = AS_OF, *, key: bool = True, **more: Any) -> Contact:
    return Contact(id=id, name=id.title(), is_key=key, confirmed_on=confirmed, **more)


def authority(who: str, area: str, **more: Any) -> Authority:
    return Authority.model_validate({"contact": who, "area": area, **more})


def organisation(**fields: Any) -> Organisation:
    return Organisation.model_validate(
        {"name": "Elm Grove Hall", "province": "ON", "renewal_date": RENEWAL, **fields}
    )


def found(case: Case, rule: str) -> list[Finding]:
    return [f for r in RULES if r.id == rule for f in r.find(case)]


def title(finding: Finding, canada: Reference, language: str = "en") -> str:
    return Speech(canada, language).say(finding.title)


@pytest.mark.parametrize(("confirmed", "count"), [(YEAR_AGO, 0), (DAY_TOO_OLD, 1), (None, 1)])
def test_a_key_contact_is_to_be_confirmed_when_the_last_time_is_over_twelve_months_ago(
    case_of: CaseOf, confirmed: date | None, count: int
) -> None:
    assert len(found(case_of(contact("ana", confirmed)), "office.contact-unconfirmed")) == count


def test_all_unconfirmed_contacts_are_one_finding_that_names_them(
    case_of: CaseOf, canada: Reference
) -> None:
    case = case_of(contact("ana", None), contact("bo", DAY_TOO_OLD), contact("cy"))
    (finding,) = found(case, "office.contact-unconfirmed")
    assert "Ana and Bo?" in title(finding, canada)
    assert (finding.kind, finding.encloses) == ("send back", ("contacts-form",))
    facts = [e for e in finding.evidence if isinstance(e, Fact)]
    assert [fact.value for fact in facts] == ["Ana", DAY_TOO_OLD]


def test_contacts_who_are_not_key_do_not_matter_while_there_is_a_key_one(case_of: CaseOf) -> None:
    case = case_of(contact("ana"), contact("bo", None, key=False))
    assert found(case, "office.contact-unconfirmed") == []


def test_without_a_key_contact_all_who_are_there_count(case_of: CaseOf) -> None:
    case = case_of(contact("bo", None, key=False))
    assert len(found(case, "office.contact-unconfirmed")) == 1


@pytest.mark.parametrize(("left", "named"), [(AS_OF, False), (date(2026, 11, 26), True)])
def test_somebody_who_has_left_is_not_asked_about(
    case_of: CaseOf, canada: Reference, left: date, named: bool
) -> None:
    case = case_of(contact("ana", None, left_on=left), contact("bo", None))
    (finding,) = found(case, "office.contact-unconfirmed")
    assert ("Ana" in title(finding, canada)) == named


def test_a_file_without_anybody_says_so(case_of: CaseOf, canada: Reference) -> None:
    (finding,) = found(case_of(contact("ana", left_on=YEAR_AGO)), "office.contact-unconfirmed")
    assert title(finding, canada) == "We have nobody to write to at your organisation"


ALL_AREAS = tuple(authority("ana", area) for area in ("coverage", "accounts", "claims"))


def test_somebody_there_for_every_area_is_no_finding(case_of: CaseOf) -> None:
    assert found(case_of(contact("ana"), *ALL_AREAS), "office.authorised-people") == []


def test_areas_in_which_nobody_may_decide_are_named(case_of: CaseOf, canada: Reference) -> None:
    (finding,) = found(case_of(contact("ana"), ALL_AREAS[0]), "office.authorised-people")
    assert title(finding, canada).endswith("may decide for you on accounts and claims")
    assert finding.encloses == ("contacts-form",)


def test_somebody_who_left_and_may_still_decide_is_named_with_the_day(
    case_of: CaseOf, canada: Reference
) -> None:
    gone = contact("bo", left_on=date(2026, 9, 1))
    case = case_of(contact("ana"), *ALL_AREAS, gone, authority("bo", "claims"))
    (finding,) = found(case, "office.authorised-people")
    assert title(finding, canada) == (
        "Bo may still decide for you but is no longer among your contacts"
    )
    assert [fact.value for fact in finding.evidence if isinstance(fact, Fact)] == [
        Term("area", "claims"), date(2026, 9, 1),
    ]  # fmt: skip


def test_an_area_held_only_by_somebody_who_left_is_named_too(
    case_of: CaseOf, canada: Reference
) -> None:
    gone = contact("bo", left_on=date(2026, 9, 1))
    case = case_of(contact("ana"), *ALL_AREAS[:2], gone, authority("bo", "claims"))
    (finding,) = found(case, "office.authorised-people")
    said = Speech(canada, "en").say(finding.means)
    assert said.endswith("At present nobody may decide on claims.")


def test_an_authority_of_somebody_not_on_file_is_told(case_of: CaseOf, canada: Reference) -> None:
    case = case_of(contact("ana"), *ALL_AREAS, authority("zed", "claims"))
    (finding,) = found(case, "office.authorised-people")
    assert title(finding, canada).startswith("zed may still decide")


@pytest.mark.parametrize(
    ("since", "until", "holds"),
    [
        (None, None, True),
        (AS_OF, None, True),
        (date(2026, 11, 26), None, False),
        (None, date(2026, 11, 26), True),
        (None, AS_OF, False),  # its last day is not included
    ],
)
def test_an_authority_counts_from_its_first_day_until_before_its_last(
    case_of: CaseOf, since: date | None, until: date | None, holds: bool
) -> None:
    limited = authority("ana", "claims", since=since, until=until)
    case = case_of(contact("ana"), *ALL_AREAS[:2], limited)
    assert (found(case, "office.authorised-people") == []) == holds


@pytest.mark.parametrize(("confirmed", "count"), [(YEAR_AGO, 0), (DAY_TOO_OLD, 1), (None, 1)])
def test_operations_are_to_be_confirmed_every_year(
    case_of: CaseOf, confirmed: date | None, count: int
) -> None:
    case = case_of(Operations(confirmed_on=confirmed))
    findings = found(case, "office.operations-stale")
    assert len(findings) == count
    assert all(f.encloses == ("operations-form",) for f in findings)


def test_operations_never_given_are_asked_for(case_of: CaseOf, canada: Reference) -> None:
    (finding,) = found(case_of(), "office.operations-stale")
    assert title(finding, canada) == "We do not know yet what your organisation does"


def lender(id: str = "1", **fields: Any) -> Interest:
    return Interest.model_validate({"id": id, "role": "lender", "name": f"Lender {id}", **fields})


def test_no_lender_is_no_finding(case_of: CaseOf) -> None:
    assert found(case_of(), "office.interests") == []


@pytest.mark.parametrize(
    ("fields", "kind"),
    [
        ({"confirmed_on": YEAR_AGO}, "know"),
        ({"confirmed_on": DAY_TOO_OLD}, "send back"),
        ({}, "send back"),
        ({"confirmed_on": AS_OF, "status": "unknown"}, "send back"),
    ],
)
def test_copies_are_enclosed_and_what_is_not_confirmed_is_sent_back(
    case_of: CaseOf, fields: dict[str, Any], kind: str
) -> None:
    (finding,) = found(case_of(lender(**fields)), "office.interests")
    assert finding.kind == kind
    assert "copies-for-lenders" in finding.encloses
    assert ("interests-form" in finding.encloses) == (kind == "send back")
    assert isinstance(finding.evidence[0], Fact)
    assert finding.evidence[0].value == Term("interest-status", fields.get("status", "active"))


def test_only_those_to_be_confirmed_are_named_when_there_are_any(
    case_of: CaseOf, canada: Reference
) -> None:
    (finding,) = found(case_of(lender("1", confirmed_on=AS_OF), lender("2")), "office.interests")
    assert title(finding, canada) == "Does Lender 2 still have a loan or lease with you?"
    assert len([e for e in finding.evidence if isinstance(e, Fact)]) == 1


def test_paid_off_lenders_are_a_finding_of_their_own_that_wants_the_discharge(
    case_of: CaseOf, canada: Reference
) -> None:
    findings = found(case_of(lender("1"), lender("2", status="paid-off")), "office.interests")
    assert [f.id for f in findings] == ["office.interests@current", "office.interests@paid-off"]
    assert title(findings[1], canada) == "Lender 2 is paid off but still named on your policy"
    assert findings[1].encloses == ("interests-form",)


@pytest.mark.parametrize(
    ("number", "fault"),
    [
        # 123026635 is valid and 123456783 is not: doctests of python-stdnum, module stdnum.ca.bn.
        ("123026635RR0001", None),
        ("123456783RR0001", "check-digit"),
        # "usually 0001; … registered internal division … for example, 0002" (canada.ca).
        ("123026635RR0002", None),
        # Computed by Luhn: 123456782 valid; the agency's format samples are not.
        ("123456782RR0001", None),
        ("123456789RR0001", "check-digit"),
        ("987654321RR0001", "check-digit"),
        # Form: nine digits, RR and four digits.
        ("123 026 635 rr 0001", None),
        ("123026635-RR-0001", None),
        ("123026635", "form"),
        ("123026635RT0001", "form"),
        ("123026635RR001", "form"),
        ("12302663RR0001", "form"),
        ("1230266350RR0001", "form"),
        ("charity", "form"),
        ("١٢٣٠٢٦٦٣٥RR0001", "form"),
    ],
)
def test_a_registration_number_is_judged_by_its_form_and_check_digit(
    number: str, fault: str | None
) -> None:
    assert number_fault(number) == fault


def luhn(digits: str) -> str:
    """Return the check digit of eight digits: double every second from the right, sum up."""
    doubled = [2 * int(d) if n % 2 == 0 else int(d) for n, d in enumerate(reversed(digits))]
    return str(-sum(d - 9 if d > 9 else d for d in doubled) % 10)


@given(st.from_regex(r"[0-9]{8}", fullmatch=True), st.integers(1, 9))
def test_exactly_one_last_digit_makes_a_number_valid(digits: str, off: int) -> None:
    right = luhn(digits)
    wrong = str((int(right) + off) % 10)
    assert number_fault(f"{digits}{right}RR0001") is None
    assert number_fault(f"{digits}{wrong}RR0001") == "check-digit"


@pytest.mark.parametrize(
    ("number", "count"), [(None, 0), ("123026635RR0001", 0), ("123456789RR0001", 1), ("n/a", 1)]
)
def test_a_wrong_registration_number_is_told_and_a_missing_one_is_not(
    case_of: CaseOf, number: str | None, count: int
) -> None:
    case = case_of(organisation(registration_number=number))
    assert len(found(case, "office.registration")) == count


@pytest.mark.parametrize(
    ("insured", "legal"),
    [
        ("ELM GROVE HALL", "Elm Grove Hall"),
        ("Elm Grove Hall Inc.", "Elm Grove Hall"),
        ("Elm Grove Hall Corp", "Elm Grove Hall Corporation"),
        ("The Elm Grove Hall", "Elm Grove Hall, Incorporated"),
        ("Eglise Saint-Remi", "Église Saint-Rémi"),
        ("St. Brigid's Parish", "Saint Brigid’s Parish"),
        ("L'Eglise Ste Anne Ltée", "L’Église Sainte-Anne"),
        ("Elm & Oak Society", "Elm and Oak Society"),
        ("Centre d'arts et métiers", "Centre d’arts & métiers"),
        ("La Ruche", "Ruche"),
    ],
)
def test_names_that_differ_only_in_writing_are_the_same(insured: str, legal: str) -> None:
    assert plain_name(insured) == plain_name(legal)


@pytest.mark.parametrize("name", ["The", "Inc.", "Les"])
def test_a_name_that_is_only_an_article_or_an_ending_keeps_it(name: str) -> None:
    assert plain_name(name) == name.casefold().rstrip(".")


@pytest.mark.parametrize(
    ("insured", "legal"),
    [
        ("Elm Grove Hall", "Elm Grove Hall Association"),
        ("Elm Grove Hall", "Elm Grave Hall"),
        ("St. Brigid's Parish", "St. Brigid's Parish Women's League"),
        ("Trustees of Elm Grove Hall", "Elm Grove Hall"),
    ],
)
def test_names_that_differ_in_substance_are_told(case_of: CaseOf, insured: str, legal: str) -> None:
    case = case_of(organisation(name=legal, named_insured=insured))
    (finding,) = found(case, "office.name-mismatch")
    assert (finding.kind, finding.audience) == ("fix", ("broker", "insurer"))
    assert [e.value for e in finding.evidence] == [insured, legal]


@pytest.mark.parametrize("insured", [None, "", "ELM GROVE HALL INC."])
def test_the_same_name_or_none_is_not_told(case_of: CaseOf, insured: str | None) -> None:
    assert found(case_of(organisation(named_insured=insured)), "office.name-mismatch") == []


@given(st.text(min_size=1, max_size=40))
def test_any_name_equals_itself_in_capitals_with_a_legal_ending(name: str) -> None:
    if name.casefold() == name.upper().casefold():
        assert plain_name(f"Hall {name}") == plain_name(f"HALL {name.upper()} INC.")


def offered() -> Terms:
    return Terms(stage="offered", start=RENEWAL, end=date(2028, 1, 31))


def test_in_good_time_no_deadline_is_lost(case_of: CaseOf) -> None:
    assert found(case_of(), "office.deadline") == []


@pytest.mark.parametrize(("as_of", "count"), [(date(2027, 1, 27), 0), (date(2027, 1, 28), 1)])
def test_decisions_that_can_no_longer_be_made_are_told(
    case_of: CaseOf, as_of: date, count: int
) -> None:
    """Two days to decide, the last business day Friday 2027-01-29."""
    signed = ReviewSigned(
        renewal=RENEWAL, as_of=as_of, reviewer="A. Broker", licence="1", seq=1, review_digest="d"
    )
    sent = Delivery(renewal=RENEWAL, document="d", to="t", way="e-mail", delivered_on=as_of)
    done = Operations(confirmed_on=date(2026, 11, 1))
    case = case_of(offered(), signed, sent, done, as_of=as_of)
    assert len(found(case, "office.deadline")) == count


def test_all_lost_steps_are_one_finding_for_the_broker_that_ranks_as_what_lapses(
    case_of: CaseOf, canada: Reference
) -> None:
    (finding,) = found(case_of(as_of=date(2027, 1, 26)), "office.deadline")
    assert (finding.audience, finding.kind) == (("broker",), "fix")
    assert (finding.priority.tier, finding.priority.by) == (Tier.LAPSES, RENEWAL)
    assert len(finding.evidence) > 1
    assert title(finding, canada).endswith(
        "can no longer be done before the renewal on January 31, 2027"
    )


EVERYTHING: tuple[Record, ...] = (
    organisation(registration_number="123456789RR0001", named_insured="Oak Hall"),
    contact("ana", None),
    contact("bo", DAY_TOO_OLD, left_on=date(2026, 9, 1)),
    authority("bo", "claims"),
    Operations(confirmed_on=DAY_TOO_OLD),
    lender("1"),
    lender("2", status="paid-off"),
)


@pytest.mark.parametrize("language", ["en", "fr"])
@pytest.mark.parametrize(
    "records",
    [
        EVERYTHING,
        (organisation(registration_number="x"),),
        (contact("ana"), lender("3", confirmed_on=date(2027, 1, 1))),
        (contact("ana", None), contact("bo", None), lender("1"), lender("2")),
    ],
)
def test_everything_a_finding_says_can_be_said(
    case_of: CaseOf, canada: Reference, records: tuple[Record, ...], language: str
) -> None:
    speech = Speech(canada, language)
    case = case_of(*records, as_of=date(2027, 1, 27))
    findings = [f for rule in RULES for f in rule.find(case)]
    assert len({f.id for f in findings}) == len(findings)
    for finding in findings:
        assert all(map(speech.say, (finding.title, finding.means, finding.todo)))
        assert finding.priority.reasons
        assert all(map(speech.say, finding.priority.reasons))
        for top in finding.evidence:
            assert all(speech.parts(node).label for _, node in walk(top))


def test_every_rule_of_the_office_triggers_on_a_file_with_everything_wrong(case_of: CaseOf) -> None:
    case = case_of(*EVERYTHING, as_of=date(2027, 1, 27))
    assert {f.rule for rule in RULES for f in rule.find(case)} == {rule.id for rule in RULES}


def test_the_parameters_a_rule_names_exist(canada: Reference) -> None:
    assert all(id in canada.parameters for rule in RULES for id in rule.parameters)
