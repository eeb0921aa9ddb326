"""What is due when: business days of the province, what is late, and what is impossible."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date, timedelta
from decimal import Decimal
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterday.catalogue.speech import Speech
from quarterday.core.dates import is_business_day
from quarterday.core.diary.diary import PARAMETERS, STEPS, Due, diary, follow_up, last_day
from quarterday.core.file.records import (
    Bound,
    Building,
    Decision,
    Delivery,
    FormReturned,
    Interest,
    Operations,
    Organisation,
    PaymentChoice,
    PolicyChecked,
    RequestSent,
    ReviewSigned,
    Terms,
    Valuation,
)
from quarterday.core.reference import Reference
from quarterday.core.review.case import Case

CaseOf = Callable[..., Case]
RENEWAL = date(2027, 1, 31)
EARLY = date(2026, 10, 5)


def terms(stage: str, start: date = RENEWAL, **fields: Any) -> Terms:
    end = start.replace(year=start.year + 1)
    return Terms.model_validate({"stage": stage, "start": start, "end": end, **fields})


def insured_hall(**fields: Any) -> tuple[Building, Terms]:
    cover = {"coverage": "building", "location": "hall", "limit": Decimal(1_000_000)}
    expiring = terms("issued", date(2026, 1, 31), coverages=(cover,))
    return Building(id="hall", name="Hall", **fields), expiring


def valued(day: date) -> Valuation:
    return Valuation(
        building="hall", amount=Decimal(900_000), valued_on=day, basis="desk-valuation"
    )


def due(case: Case, step: str) -> Due:
    return next(found for found in diary(case) if found.id == step)


def steps(case: Case) -> list[str]:
    return [found.id for found in diary(case)]


def signed(as_of: date, renewal: date = RENEWAL) -> ReviewSigned:
    return ReviewSigned(
        renewal=renewal, as_of=as_of, reviewer="A. Broker", licence="1", seq=1, review_digest="d"
    )


def delivered(renewal: date = RENEWAL, to: str = "treasurer") -> Delivery:
    return Delivery(renewal=renewal, document="d", to=to, way="e-mail", delivered_on=EARLY)


def decided(answer: str, question: str = "q") -> Decision:
    return Decision.model_validate(
        {"renewal": RENEWAL, "question": question, "answer": answer, "decided_on": EARLY, "by": "b"}
    )


@pytest.mark.parametrize(
    ("province", "renewal", "step", "earliest", "latest"),
    [
        # 90 days before 2027-03-31 is Thursday 2026-12-31; 60 days is Saturday 2027-01-30: the
        # Friday before. Working days by the calendar.
        ("ON", date(2027, 3, 31), "request", date(2026, 12, 31), date(2027, 1, 29)),
        # 45 days before 2027-04-01 is Monday 2027-02-15, Family Day in Ontario (Retail Business
        # Holidays Act) and Islander Day in Prince Edward Island, a working day in Quebec.
        ("ON", date(2027, 4, 1), "offer", date(2027, 2, 1), date(2027, 2, 12)),
        ("PE", date(2027, 4, 1), "offer", date(2027, 2, 1), date(2027, 2, 12)),
        ("QC", date(2027, 4, 1), "offer", date(2027, 2, 1), date(2027, 2, 15)),
        # 30 days before 2027-07-24 is Thursday 2027-06-24, the national holiday of Quebec
        # (National Holiday Act, CQLR c. F-1.1); in Ontario offices are open.
        ("QC", date(2027, 7, 24), "delivery", date(2027, 6, 9), date(2027, 6, 23)),
        ("ON", date(2027, 7, 24), "delivery", date(2027, 6, 9), date(2027, 6, 24)),
        # 7 days before 2027-01-08 is New Year's Day, a holiday in every province.
        ("AB", date(2027, 1, 8), "decisions", date(2026, 11, 24), date(2026, 12, 31)),
    ],
)
def test_days_count_back_from_the_renewal_and_fall_on_business_days_of_the_province(
    case_of: CaseOf, province: str, renewal: date, step: str, earliest: date, latest: date
) -> None:
    where = Organisation(name="Elm Grove Hall", province=province, renewal_date=renewal)
    found = due(case_of(where, as_of=EARLY), step)
    assert (found.earliest, found.latest) == (earliest, latest)


def test_the_day_it_is_due_explains_itself_by_the_parameter_and_the_renewal(
    case_of: CaseOf, canada: Reference
) -> None:
    figure = due(case_of(as_of=EARLY), "request").figure
    assert [node.id for node in figure.inputs] == ["diary.request-due-days"]
    assert figure.unit == "date"
    said = Speech(canada, "en").say(figure.how)
    assert said.startswith("60 days before the renewal on January 31, 2027")


def test_the_list_is_in_order_of_the_day_due(case_of: CaseOf) -> None:
    latest = [found.latest for found in diary(case_of(as_of=EARLY))]
    assert latest == sorted(latest)


def test_steps_that_do_not_apply_are_left_out(case_of: CaseOf) -> None:
    found = steps(case_of(as_of=EARLY))
    assert "valuations" not in found
    assert "payment" not in found


def test_instalments_bring_the_choice_of_payment(case_of: CaseOf) -> None:
    case = case_of(terms("offered", instalments_available=True), as_of=EARLY)
    assert not due(case, "payment").is_done
    choice = PaymentChoice(renewal=RENEWAL, plan="twelve", chosen_on=EARLY, by="treasurer")
    paying = case_of(terms("offered", instalments_available=True), choice, as_of=EARLY)
    assert due(paying, "payment").is_done


@pytest.mark.parametrize(
    ("valued_on", "ownership", "applies"),
    [
        (date(2022, 1, 31), "own", False),  # five years to the renewal day: still good
        (date(2022, 1, 30), "own", True),
        (date(2022, 1, 30), "mandate", True),
        (date(2022, 1, 30), "rent", False),  # the owner's valuation
    ],
)
def test_a_valuation_is_due_for_an_insured_building_whose_last_one_is_stale(
    case_of: CaseOf, valued_on: date, ownership: str, applies: bool
) -> None:
    case = case_of(*insured_hall(ownership=ownership), valued(valued_on), as_of=EARLY)
    assert ("valuations" in steps(case)) == applies


def test_a_building_never_valued_wants_a_valuation_and_one_valued_for_this_renewal_is_done(
    case_of: CaseOf,
) -> None:
    assert not due(case_of(*insured_hall(), as_of=EARLY), "valuations").is_done
    fresh = case_of(*insured_hall(), valued(EARLY), as_of=EARLY)
    assert due(fresh, "valuations").is_done


def test_an_old_value_carried_forward_by_an_index_is_no_valuation(case_of: CaseOf) -> None:
    indexed = valued(date(2026, 1, 31)).model_copy(update={"basis": "indexed"})
    assert not due(case_of(*insured_hall(), indexed, as_of=EARLY), "valuations").is_done


def test_a_desk_valuation_must_be_begun_45_days_before_it_is_due(case_of: CaseOf) -> None:
    """A desk valuation takes 30 to 45 days: common practice, no source.

    Due 45 days before Sunday 2027-01-31, Thursday 2026-12-17; begun by Monday 2026-11-02.
    """
    found = due(case_of(*insured_hall(), as_of=EARLY), "valuations")
    assert (found.latest, found.start_by) == (date(2026, 12, 17), date(2026, 11, 2))


@pytest.mark.parametrize(
    ("as_of", "impossible"),
    [
        # Friday 2027-01-29 is the last business day before the renewal; 30 days before it is
        # Wednesday 2026-12-30.
        (date(2026, 12, 30), False),
        (date(2026, 12, 31), True),
    ],
)
def test_a_valuation_is_impossible_when_even_the_fastest_ends_after_the_last_business_day(
    case_of: CaseOf, as_of: date, impossible: bool
) -> None:
    found = due(case_of(*insured_hall(), as_of=as_of), "valuations")
    assert found.is_late
    assert found.is_impossible == impossible


def test_what_waits_for_an_open_step_can_end_only_after_it(case_of: CaseOf) -> None:
    """From Monday 2027-01-18: updates 7 days, offer 3, decisions 2; Saturday becomes Monday."""
    case = case_of(as_of=date(2027, 1, 18))
    ends = {found.id: found.could_end for found in diary(case)}
    assert ends["updates"] == ends["request"] == date(2027, 1, 25)
    assert ends["offer"] == ends["signature"] == ends["delivery"] == date(2027, 1, 28)
    assert ends["decisions"] == date(2027, 2, 1)
    lost = {found.id for found in diary(case) if found.is_impossible}
    assert lost == {"decisions", "binding"}


def test_a_step_that_is_done_holds_nothing_up(case_of: CaseOf) -> None:
    case = case_of(terms("offered"), signed(EARLY), delivered(), as_of=date(2027, 1, 18))
    assert due(case, "decisions").could_end == date(2027, 1, 20)
    assert not any(found.is_impossible for found in diary(case))


@pytest.mark.parametrize(
    ("province", "renewal", "expected"),
    [
        ("ON", date(2027, 2, 2), date(2027, 2, 1)),  # a Tuesday: Monday still helps
        ("ON", date(2027, 2, 16), date(2027, 2, 12)),  # after Family Day: the Friday before
        ("QC", date(2027, 2, 16), date(2027, 2, 15)),
    ],
)
def test_the_last_day_that_helps_is_the_business_day_before_the_renewal(
    case_of: CaseOf, province: str, renewal: date, expected: date
) -> None:
    where = Organisation(name="Elm Grove Hall", province=province, renewal_date=renewal)
    assert last_day(case_of(where)) == expected


def test_the_insurers_own_last_day_bounds_the_decisions(case_of: CaseOf) -> None:
    case = case_of(
        terms("offered", answer_by=date(2027, 1, 15)), signed(EARLY), delivered(),
        as_of=date(2027, 1, 14),
    )  # fmt: skip
    assert last_day(case, "decisions") == date(2027, 1, 15)
    assert last_day(case) == date(2027, 1, 29)
    assert due(case, "decisions").is_impossible


@pytest.mark.parametrize(("as_of", "late"), [(date(2026, 12, 2), False), (date(2026, 12, 3), True)])
def test_a_step_is_late_the_day_after_it_was_due(case_of: CaseOf, as_of: date, late: bool) -> None:
    """60 days before 2027-01-31 is Wednesday 2026-12-02."""
    assert due(case_of(as_of=as_of), "request").is_late == late


@pytest.mark.parametrize(
    ("confirmed", "done"),
    [(date(2026, 10, 3), True), (date(2026, 10, 2), False), (None, False)],
)
def test_updates_are_back_when_confirmed_within_the_120_days(
    case_of: CaseOf, confirmed: date | None, done: bool
) -> None:
    """120 days before 2027-01-31 is 2026-10-03."""
    case = case_of(Operations(confirmed_on=confirmed), as_of=EARLY)
    assert due(case, "updates").is_done == done


@pytest.mark.parametrize(
    ("form", "renewal", "done"),
    [
        ("operations-form", RENEWAL, True),
        ("contacts-form", RENEWAL, False),
        ("operations-form", date(2026, 1, 31), False),
    ],
)
def test_a_returned_operations_form_of_this_renewal_is_an_update(
    case_of: CaseOf, form: str, renewal: date, done: bool
) -> None:
    back = FormReturned(renewal=renewal, form=form, document="d", returned_on=EARLY)
    assert due(case_of(back, as_of=EARLY), "updates").is_done == done


@pytest.mark.parametrize(
    ("record", "step"),
    [
        (terms("requested"), "request"),
        (terms("offered"), "request"),
        (terms("offered"), "offer"),
        (signed(EARLY), "signature"),
        (delivered(), "delivery"),
        (decided("take-it"), "decisions"),
        (decided("leave-it"), "decisions"),
    ],
)
def test_the_record_of_an_act_marks_its_step_done(case_of: CaseOf, record: Any, step: str) -> None:
    assert not due(case_of(as_of=EARLY), step).is_done
    assert due(case_of(record, as_of=EARLY), step).is_done


@pytest.mark.parametrize("answer", ["later", "ask-us"])
def test_an_answer_that_puts_a_question_off_does_not_settle_the_decisions(
    case_of: CaseOf, answer: str
) -> None:
    case = case_of(decided("take-it", "a"), decided(answer, "b"), as_of=EARLY)
    assert not due(case, "decisions").is_done


def test_a_delivery_for_another_renewal_counts_for_that_one_only(case_of: CaseOf) -> None:
    case = case_of(delivered(date(2026, 1, 31)), as_of=EARLY)
    assert not due(case, "delivery").is_done


LENDER = Interest(id="1", role="lender", name="Northfield Credit Union")
BEGUN = terms("issued", RENEWAL)


@pytest.mark.parametrize(
    ("as_of", "expected"),
    [
        (date(2027, 1, 30), set()),
        (RENEWAL, {"policy-check", "lender-copies"}),
        (RENEWAL + timedelta(days=89), {"policy-check", "lender-copies"}),
        (RENEWAL + timedelta(days=90), set()),
    ],
)
def test_a_term_that_has_begun_is_followed_up_for_ninety_days(
    case_of: CaseOf, as_of: date, expected: set[str]
) -> None:
    assert {found.id for found in follow_up(case_of(BEGUN, LENDER, as_of=as_of))} == expected


def test_the_issued_policy_is_to_be_checked_within_thirty_days(case_of: CaseOf) -> None:
    """30 days after 2027-01-31 is Tuesday 2027-03-02."""
    found = due(case_of(BEGUN, as_of=date(2027, 2, 1)), "policy-check")
    assert (found.latest, found.is_late, found.is_impossible) == (date(2027, 3, 2), False, False)
    assert not due(case_of(BEGUN, as_of=date(2027, 3, 2)), "policy-check").is_late
    assert due(case_of(BEGUN, as_of=date(2027, 3, 3)), "policy-check").is_late


@pytest.mark.parametrize(("seq", "done"), [(2, True), (1, False)])
def test_the_policy_is_checked_by_who_compared_it_as_it_stands(
    case_of: CaseOf, seq: int, done: bool
) -> None:
    """The organisation is entry 1, the policy 2: a check that went that far has seen it."""
    check = PolicyChecked(
        renewal=RENEWAL, checked_on=date(2027, 2, 3), by="ann", differences=0, seq=seq
    )
    case = case_of(BEGUN, check, as_of=date(2027, 2, 10))
    assert due(case, "policy-check").is_done == done


def test_a_request_that_went_to_the_insurer_ends_that_step(case_of: CaseOf) -> None:
    asked = RequestSent(renewal=RENEWAL, number=1, sent_on=EARLY, to="x", document="d", seq=1,
                        changes=2)  # fmt: skip
    assert not due(case_of(as_of=EARLY), "request").is_done
    assert due(case_of(asked, as_of=EARLY), "request").is_done


def test_a_binder_ends_the_binding_before_the_policy_comes(case_of: CaseOf) -> None:
    bound = Bound(renewal=RENEWAL, bound_on=EARLY, by="x", agreed=terms("offered"))
    assert not due(case_of(as_of=EARLY), "binding").is_done
    assert due(case_of(bound, as_of=EARLY), "binding").is_done


def test_a_package_that_came_back_was_not_delivered(case_of: CaseOf) -> None:
    back = delivered().model_copy(update={"came_back_on": EARLY, "came_back": "no such address"})
    assert due(case_of(delivered(), as_of=EARLY), "delivery").is_done
    assert not due(case_of(back, as_of=EARLY), "delivery").is_done


def test_copies_are_done_when_every_active_lender_has_its_own(case_of: CaseOf) -> None:
    lessor = Interest(id="2", role="lessor", name="Birch Leasing")
    paid_off = Interest(id="3", role="lender", name="Old Loan", status="paid-off")
    day = date(2027, 2, 10)
    one = case_of(BEGUN, LENDER, lessor, paid_off, delivered(to=LENDER.name), as_of=day)
    both = (delivered(to=LENDER.name), delivered(to=lessor.name))
    assert not due(one, "lender-copies").is_done
    assert due(case_of(BEGUN, LENDER, lessor, paid_off, *both, as_of=day), "lender-copies").is_done


def test_without_active_lenders_no_copies_are_due(case_of: CaseOf) -> None:
    assert "lender-copies" not in steps(case_of(BEGUN, as_of=date(2027, 2, 10)))


def test_every_parameter_of_the_diary_is_named_and_used(canada: Reference) -> None:
    shipped = {id for id in canada.parameters if id.startswith("diary.")}
    assert set(PARAMETERS) == shipped | {"values.stale-years"}


@pytest.mark.parametrize("language", ["en", "fr"])
def test_every_step_has_its_name(case_of: CaseOf, canada: Reference, language: str) -> None:
    speech = Speech(canada, language)
    full = terms("offered", instalments_available=True)
    case = case_of(*insured_hall(), full, as_of=EARLY)
    found = [*diary(case), *follow_up(case_of(BEGUN, LENDER, as_of=date(2027, 2, 10)))]
    assert {d.id for d in found} == {*(s.id for s in STEPS), "policy-check", "lender-copies"}
    assert all(speech.say(d.what) and speech.say(d.figure.how) for d in found)


provinces = st.sampled_from(
    ["AB", "BC", "MB", "NB", "NL", "NS", "NT", "NU", "ON", "PE", "QC", "SK", "YT"]
)


@given(provinces, st.dates(date(2026, 6, 1), date(2030, 12, 31)), st.integers(0, 150))
def test_every_day_on_the_diary_is_a_business_day_of_its_province_and_none_is_out_of_order(
    case_of: CaseOf, province: str, renewal: date, days_before: int
) -> None:
    where = Organisation(name="Elm Grove Hall", province=province, renewal_date=renewal)
    case = case_of(where, as_of=renewal - timedelta(days=days_before))
    for found in diary(case):
        for day in (found.earliest, found.latest, found.start_by, found.could_end):
            assert is_business_day(day, province)
        assert found.start_by <= found.latest < renewal
        assert found.could_end >= case.as_of
        assert not (found.is_done and (found.is_late or found.is_impossible))


@given(st.integers(0, 150))
def test_what_is_impossible_today_is_impossible_tomorrow(case_of: CaseOf, days_before: int) -> None:
    day = RENEWAL - timedelta(days=days_before)
    today, tomorrow = case_of(as_of=day), case_of(as_of=day + timedelta(days=1))
    lost = {found.id for found in diary(today) if found.is_impossible}
    assert lost <= {found.id for found in diary(tomorrow) if found.is_impossible}
