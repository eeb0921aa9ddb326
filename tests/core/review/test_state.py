"""The state of a renewal follows from its records and the day, by the documented table."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date, timedelta
from typing import Any, get_args

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterday.catalogue.speech import Speech
from quarterday.core.file.records import (
    Bound,
    Decision,
    Delivery,
    FormReturned,
    Operations,
    PaymentChoice,
    PolicyChecked,
    Record,
    RequestSent,
    Terms,
)
from quarterday.core.reference import Reference
from quarterday.core.review import state as module
from quarterday.core.review.case import Case
from quarterday.core.review.state import State, came_back, renewal_at_work, state
from quarterday.core.words import Term

CaseOf = Callable[..., Case]
RENEWAL = date(2027, 1, 31)
EARLY = date(2026, 10, 5)


def terms(stage: str, start: date = RENEWAL) -> Terms:
    end = start.replace(year=start.year + 1)
    return Terms.model_validate({"stage": stage, "start": start, "end": end})


def checked(seq: int) -> PolicyChecked:
    return PolicyChecked(renewal=RENEWAL, checked_on=EARLY, by="ann", differences=0, seq=seq)


DELIVERY = Delivery(renewal=RENEWAL, document="d", to="t", way="e-mail", delivered_on=EARLY)
DECISION = Decision(renewal=RENEWAL, question="q", answer="take-it", decided_on=EARLY, by="chair")
PAYMENT = PaymentChoice(renewal=RENEWAL, plan="twelve", chosen_on=EARLY, by="treasurer")
ASKED = RequestSent(
    renewal=RENEWAL, number=1, sent_on=EARLY, to="Lakeside Mutual", document="d", seq=1, changes=1
)
EXPIRING, REQUESTED, OFFERED, ISSUED = (
    terms("issued", date(2026, 1, 31)), terms("requested"), terms("offered"), terms("issued"),
)  # fmt: skip
BOUND = Bound(renewal=RENEWAL, bound_on=EARLY, by="An underwriter", agreed=OFFERED)
STORY: tuple[tuple[Record, State], ...] = (
    (EXPIRING, "gathering"),
    (Operations(confirmed_on=EARLY), "reviewing"),
    (ASKED, "asked"),
    (REQUESTED, "asked"),
    (OFFERED, "offered"),
    (DELIVERY, "with leaders"),
    (DECISION, "settling"),
    (BOUND, "bound"),
    (ISSUED, "bound"),
    (checked(99), "checked"),
)


def test_each_record_of_the_year_moves_the_renewal_on(case_of: CaseOf) -> None:
    for count, (_, expected) in enumerate(STORY, start=1):
        case = case_of(*(record for record, _ in STORY[:count]), as_of=EARLY)
        assert state(case, RENEWAL) == expected


@pytest.mark.parametrize(
    ("as_of", "expected"),
    [(date(2026, 11, 2), "gathering"), (date(2026, 11, 3), "reviewing")],
)
def test_once_the_updates_are_overdue_the_review_goes_on_without_them(
    case_of: CaseOf, as_of: date, expected: State
) -> None:
    """90 days before 2027-01-31 is 2026-11-02."""
    assert state(case_of(as_of=as_of)) == expected


def test_a_payment_choice_alone_is_settling(case_of: CaseOf) -> None:
    assert state(case_of(OFFERED, DELIVERY, PAYMENT, as_of=EARLY)) == "settling"


@pytest.mark.parametrize(
    ("record", "expected"),
    [(DELIVERY, "offered"), (DECISION, "offered"), (PAYMENT, "offered")],
)
def test_acts_of_another_renewal_do_not_count(
    case_of: CaseOf, record: Record, expected: State
) -> None:
    other = record.model_copy(update={"renewal": date(2026, 1, 31)})
    assert state(case_of(OFFERED, other, as_of=EARLY)) == expected


@pytest.mark.parametrize(
    ("as_of", "expected"),
    [(RENEWAL - timedelta(days=1), "settling"), (RENEWAL, "lapsed"), (date(2027, 5, 1), "lapsed")],
)
def test_on_the_renewal_day_without_issued_terms_cover_has_lapsed(
    case_of: CaseOf, as_of: date, expected: State
) -> None:
    assert state(case_of(EXPIRING, OFFERED, DELIVERY, DECISION, as_of=as_of)) == expected


def test_terms_issued_in_time_are_bound_before_and_after_the_renewal_day(case_of: CaseOf) -> None:
    for day in (RENEWAL - timedelta(days=5), RENEWAL, RENEWAL + timedelta(days=40)):
        assert state(case_of(ISSUED, as_of=day), RENEWAL) == "bound"


@pytest.mark.parametrize(("seq", "expected"), [(1, "bound"), (2, "checked")])
def test_a_check_of_an_earlier_version_of_the_policy_does_not_count(
    case_of: CaseOf, seq: int, expected: State
) -> None:
    """The organisation is entry 1, the policy 2; a check that compared less did not see it."""
    assert state(case_of(ISSUED, checked(seq)), RENEWAL) == expected


def test_a_request_to_the_insurer_is_asking_without_terms_of_its_own(case_of: CaseOf) -> None:
    assert state(case_of(EXPIRING, ASKED, as_of=EARLY)) == "asked"


def test_a_package_that_came_back_is_not_with_the_leaders(case_of: CaseOf) -> None:
    back = DELIVERY.model_copy(update={"came_back_on": EARLY, "came_back": "unknown here"})
    assert state(case_of(OFFERED, back, as_of=EARLY)) == "offered"


@pytest.mark.parametrize("days", [-20, 0, 30])
def test_cover_that_was_bound_does_not_lapse_while_the_policy_is_awaited(
    case_of: CaseOf, days: int
) -> None:
    case = case_of(EXPIRING, OFFERED, BOUND, as_of=RENEWAL + timedelta(days=days))
    assert (renewal_at_work(case), state(case)) == (RENEWAL, "bound")


def test_the_renewal_just_bound_is_worked_on_until_it_is_checked(case_of: CaseOf) -> None:
    day = date(2027, 2, 10)
    assert renewal_at_work(case_of(ISSUED, as_of=day)) == RENEWAL
    assert renewal_at_work(case_of(ISSUED, checked(9), as_of=day)) == date(2028, 1, 31)


@pytest.mark.parametrize(
    ("days", "expected"), [(-30, RENEWAL), (-1, RENEWAL), (0, RENEWAL), (89, RENEWAL),
                           (90, date(2028, 1, 31))],
)  # fmt: skip
def test_follow_up_ends_after_ninety_days(case_of: CaseOf, days: int, expected: date) -> None:
    assert renewal_at_work(case_of(ISSUED, as_of=RENEWAL + timedelta(days=days))) == expected


def test_without_issued_terms_the_next_renewal_is_worked_on(case_of: CaseOf) -> None:
    assert renewal_at_work(case_of()) == RENEWAL


@pytest.mark.parametrize("language", ["en", "fr"])
def test_every_state_has_its_word_and_stands_in_the_table(canada: Reference, language: str) -> None:
    speech = Speech(canada, language)
    for word in get_args(State):
        assert speech.say(Term("state", word))
        assert f"| {word} |" in (module.__doc__ or "")


records = st.lists(st.sampled_from([record for record, _ in STORY]), unique_by=id)


@given(records, st.integers(-60, 200))
def test_every_set_of_records_has_a_state_and_only_the_day_makes_it_lapse(
    case_of: CaseOf, some: list[Any], days_before: int
) -> None:
    case = case_of(*some, as_of=RENEWAL - timedelta(days=days_before))
    found = state(case, RENEWAL)
    assert found in get_args(State)
    held = ISSUED in some or BOUND in some
    assert (found == "lapsed") == (days_before <= 0 and not held)


FORM = FormReturned(renewal=RENEWAL, form="water-form", document="d", returned_on=EARLY)
LATER = EARLY + timedelta(days=3)


@pytest.mark.parametrize("record", [FORM, DECISION, PAYMENT])
def test_what_comes_from_the_leaders_waits_for_us_until_the_insurer_is_asked(
    record: Record, case_of: CaseOf
) -> None:
    asked_before = ASKED.model_copy(update={"sent_on": EARLY - timedelta(days=1)})
    for others, back in (((), EARLY), ((asked_before,), EARLY), ((ASKED,), None)):
        assert came_back(case_of(EXPIRING, record, *others, as_of=LATER), RENEWAL) == back


def test_the_newest_that_came_back_counts_and_nothing_of_another_year(case_of: CaseOf) -> None:
    newer = FORM.model_copy(update={"returned_on": LATER, "document": "e"})
    last_year = DECISION.model_copy(update={"renewal": RENEWAL.replace(year=2026)})
    assert came_back(case_of(EXPIRING, DECISION, newer, as_of=LATER), RENEWAL) == LATER
    assert came_back(case_of(EXPIRING, last_year, as_of=LATER), RENEWAL) is None


def test_nothing_waits_once_the_renewal_is_bound_or_its_day_has_come(case_of: CaseOf) -> None:
    assert came_back(case_of(EXPIRING, OFFERED, DECISION, BOUND, as_of=LATER), RENEWAL) is None
    assert came_back(case_of(EXPIRING, DECISION, as_of=RENEWAL), RENEWAL) is None
