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
    Decision,
    Delivery,
    Operations,
    PaymentChoice,
    Record,
    ReviewSigned,
    Terms,
)
from quarterday.core.reference import Reference
from quarterday.core.review import state as module
from quarterday.core.review.case import Case
from quarterday.core.review.state import State, renewal_at_work, state
from quarterday.core.words import Term

CaseOf = Callable[..., Case]
RENEWAL = date(2027, 1, 31)
EARLY = date(2026, 10, 5)


def terms(stage: str, start: date = RENEWAL) -> Terms:
    end = start.replace(year=start.year + 1)
    return Terms.model_validate({"stage": stage, "start": start, "end": end})


def signed(as_of: date) -> ReviewSigned:
    return ReviewSigned(
        renewal=RENEWAL, as_of=as_of, reviewer="A. Broker", licence="1", seq=1, review_digest="d"
    )


DELIVERY = Delivery(renewal=RENEWAL, document="d", to="t", way="e-mail", delivered_on=EARLY)
DECISION = Decision(renewal=RENEWAL, question="q", answer="take-it", decided_on=EARLY, by="chair")
PAYMENT = PaymentChoice(renewal=RENEWAL, plan="twelve", chosen_on=EARLY, by="treasurer")
EXPIRING, REQUESTED, OFFERED, ISSUED = (
    terms("issued", date(2026, 1, 31)), terms("requested"), terms("offered"), terms("issued"),
)  # fmt: skip
STORY: tuple[tuple[Record, State], ...] = (
    (EXPIRING, "gathering"),
    (Operations(confirmed_on=EARLY), "reviewing"),
    (REQUESTED, "asked"),
    (OFFERED, "offered"),
    (DELIVERY, "with leaders"),
    (DECISION, "settling"),
    (ISSUED, "bound"),
    (signed(date(2027, 2, 10)), "checked"),
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


def test_a_review_signed_before_the_policy_came_does_not_check_it(case_of: CaseOf) -> None:
    case = case_of(ISSUED, signed(date(2026, 12, 20)), recorded_on=date(2027, 2, 1))
    assert state(case, RENEWAL) == "bound"


def test_the_renewal_just_bound_is_worked_on_until_it_is_checked(case_of: CaseOf) -> None:
    day = date(2027, 2, 10)
    bound = case_of(ISSUED, as_of=day)
    checked = case_of(ISSUED, signed(day), as_of=day)
    assert renewal_at_work(bound) == RENEWAL
    assert renewal_at_work(checked) == date(2028, 1, 31)


@pytest.mark.parametrize(
    ("days", "expected"), [(-1, date(2028, 1, 31)), (0, RENEWAL), (89, RENEWAL),
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
    assert (found == "lapsed") == (days_before <= 0 and ISSUED not in some)
