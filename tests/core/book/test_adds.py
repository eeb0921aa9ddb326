"""What a file adds to the book: each topic against the function that computes it for one file."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Mapping
from dataclasses import replace
from datetime import date, timedelta
from decimal import Decimal

import pytest
from tests.core.book.conftest import file_of
from tests.core.claims.conftest import claim, policy
from tests.core.conftest import AS_OF, RENEWAL

from quarterday.core.book.adds import LATE, LATER, OTHER, WEEKS, adds, week_of
from quarterday.core.book.sums import (
    Cover,
    Experience,
    Files,
    Offers,
    Sums,
    Work,
    cents,
    dollars,
    total,
)
from quarterday.core.claims.book import AXES
from quarterday.core.claims.book import tally as experience_of
from quarterday.core.diary.diary import diary
from quarterday.core.file.records import Decision, Organisation, Terms
from quarterday.core.reference import Reference
from quarterday.core.review.case import Case
from quarterday.core.review.need import need
from quarterday.core.review.state import renewal_at_work, state
from quarterday.core.terms.presence import gives
from quarterday.core.values.book import tally as values_of
from quarterday.invent.book import make_book

CaseOf = Callable[..., Case]
TOPIC_OF = {"cause": "causes", "year": "years", "class": "classes", "insurer": "insurers",
            "province": "provinces"}  # fmt: skip


@pytest.fixture(scope="session")
def sums(cases: list[Case]) -> Sums:
    made = Sums()
    for case in cases:
        made += adds(case)
    return made


def test_values_are_those_of_the_shortfall_to_the_cent(cases: list[Case], sums: Sums) -> None:
    book = values_of(cases)
    assert {p for p, row in sums.values.items() if row.buildings} == set(book.provinces)
    for province, line in book.provinces.items():
        row = sums.values[province]
        assert (row.buildings, row.behind) == (line.buildings, line.behind)
        kept = [dollars(n) for n in (row.valued, row.grown, row.cost, row.short)]
        assert kept == [line.valued, line.grown, line.cost, line.short]
    assert sum(row.left_out for row in sums.values.values()) == book.left_out


def test_claims_beside_premium_are_those_of_the_experience_to_the_cent(
    cases: list[Case], sums: Sums
) -> None:
    book = experience_of(cases, 10)
    for axis in AXES:
        rows: dict[str, Experience] = getattr(sums, TOPIC_OF[axis])
        assert set(rows) == set(book.lines[axis])
        for key, line in book.lines[axis].items():
            row = rows[key]
            assert (row.files, row.claims) == (line.files, line.claims)
            assert dollars(row.incurred) == line.incurred
            assert dollars(row.capped) == line.capped
            assert axis == "cause" or dollars(row.premium) == line.premium
    assert sums.files[""].no_premium == book.no_premium


def test_every_open_step_stands_in_one_week(cases: list[Case], sums: Sums) -> None:
    by_who = Counter(due.who for case in cases for due in diary(case) if not due.is_done)
    whole = total(Work, sums.work.values())
    assert whole._asdict() == {who: by_who[who] for who in ("broker", "leaders", "insurer")}
    late = sum(due.is_late for case in cases for due in diary(case) if not due.is_done)
    assert sum(sums.work[LATE]) == late
    for week in sums.work.keys() - {LATE, LATER}:
        assert date.fromisoformat(week).weekday() == 0, "a week is named by its Monday"


def test_every_renewal_stands_in_its_state(cases: list[Case], sums: Sums) -> None:
    by_hand = Counter(state(case, renewal_at_work(case)) for case in cases)
    assert {name: row.files for name, row in sums.stood.items()} == by_hand
    late = [any(due.is_late for due in diary(case) if not due.is_done) for case in cases]
    assert sum(row.late for row in sums.stood.values()) == sum(late)


def test_take_up_is_need_against_the_terms_in_force(cases: list[Case], sums: Sums) -> None:
    for coverage in cases[0].reference.coverages.values():
        by_hand = Counter[str]()
        for case in cases:
            terms = case.expiring or case.offered
            if terms is None:
                continue
            wanted, held = need(coverage.needed_when, case.file).answer, gives(terms, coverage.id)
            by_hand["needed"] += wanted == "yes"
            by_hand["held"] += held
            by_hand["needed_held"] += held and wanted == "yes"
            by_hand["unknown"] += wanted == "unknown"
        row = sums.cover.get(coverage.id, Cover())
        assert {n: getattr(row, n) for n in by_hand} == by_hand, coverage.id
        assert row.hurting <= row.needed - row.needed_held


def test_a_gap_counts_as_hurting_only_where_the_library_says_so(
    sums: Sums, canada: Reference
) -> None:
    never = {c.id for c in canada.coverages.values() if c.hurts_when is None}
    assert any(row.hurting for row in sums.cover.values())
    assert all(row.hurting == 0 for id, row in sums.cover.items() if id in never)


def offer(*options: Mapping[str, object]) -> Terms:
    return Terms.model_validate({
        "stage": "offered", "start": RENEWAL, "end": RENEWAL.replace(year=2028),
        "options": list(options),
    })  # fmt: skip


def answer(question: str, said: str, renewal: date = RENEWAL) -> Decision:
    return Decision.model_validate({
        "renewal": renewal, "question": question, "answer": said, "decided_on": AS_OF,
        "by": "The board",
    })  # fmt: skip


FLOOD = {"coverage": "overland-flood", "price": "310.50"}


@pytest.mark.parametrize(
    ("said", "counted"),
    [("take-it", {"taken": 1, "price_taken": 31050}),
     ("leave-it", {"left": 1, "price_left": 31050}),
     ("later", {"later": 1}), ("ask-us", {"asked": 1})],
)  # fmt: skip
@pytest.mark.parametrize(
    "question",
    ["option/overland-flood/*", "terms.option-open@overland-flood",
     "people.activity-uncovered@overland-flood"],
)  # fmt: skip
def test_an_answer_counts_for_its_option_however_it_was_asked(
    question: str, said: str, counted: dict[str, int], case_of: CaseOf
) -> None:
    sums = adds(case_of(offer(FLOOD), answer(question, said)))
    assert sums.offers == {"overland-flood": Offers(offered=1, price=31050, **counted)}


def test_an_option_without_an_answer_is_open_and_one_of_last_year_does_not_answer_it(
    case_of: CaseOf,
) -> None:
    old = answer("option/overland-flood/*", "take-it", RENEWAL.replace(year=2026))
    sums = adds(case_of(offer(FLOOD), old))
    assert sums.offers["overland-flood"] == Offers(offered=1, unanswered=1, price=31050)


def test_other_questions_are_counted_apart_and_each_answer_once(case_of: CaseOf) -> None:
    sums = adds(case_of(
        offer(FLOOD, {"coverage": "earthquake"}), answer("option/overland-flood/*", "leave-it"),
        answer("values.underinsured@hall", "take-it"),
    ))  # fmt: skip
    assert sums.offers[OTHER] == Offers(offered=1, taken=1)
    assert sums.offers["earthquake"] == Offers(offered=1, unanswered=1)
    assert sums.offers["overland-flood"].left == 1


def test_a_file_that_says_nothing_yet_gathers_and_adds_nothing_else(canada: Reference) -> None:
    account = next(iter(make_book(1, 1, AS_OF)))
    bare = file_of(account.__class__(account.id, account.records[:0]))
    sums = adds(Case(bare, canada, AS_OF))
    assert sums.files == {"": Files(1, no_renewal=1)}
    assert {state: row.files for state, row in sums.stood.items()} == {"gathering": 1}
    assert not any((sums.work, sums.cover, sums.offers))


def test_amounts_of_another_currency_are_left_out_and_said_so(case_of: CaseOf) -> None:
    foreign = policy(2026).model_copy(update={"currency": "USD"})
    sums = adds(case_of(foreign, claim("A", date(2026, 3, 1))))
    assert sums.files[""] == Files(1, other_currency=1)
    assert not any((sums.causes, sums.classes))
    assert all(row.premium == 0 for row in sums.stood.values())
    assert sums.cover, "what is covered has no currency"


def test_the_newest_premium_stands_with_the_state(case_of: CaseOf) -> None:
    priced = offer().model_copy(update={"premiums": policy(2026, 5_000).premiums})
    for terms, premium in (((policy(2026, 4_000),), 4_000), ((policy(2026, 4_000), priced), 5_000)):
        (row,) = adds(case_of(*terms)).stood.values()
        assert row.premium == cents(Decimal(premium))


@pytest.mark.parametrize(
    ("latest", "is_late", "week"),
    [("2026-11-24", True, LATE), ("2026-11-25", False, "2026-11-23"),
     ("2026-11-29", False, "2026-11-23"), ("2026-11-30", False, "2026-11-30"),
     ("2027-02-14", False, "2027-02-08"), ("2027-02-15", False, LATER)],
)  # fmt: skip
def test_a_week_begins_on_monday_and_twelve_are_told(
    latest: str, is_late: bool, week: str, cases: list[Case]
) -> None:
    """ISO 8601: weeks begin on Monday; 25 November 2026 is a Wednesday (calendar)."""
    last = date(2026, 11, 23) + timedelta(weeks=WEEKS)
    assert last == date(2027, 2, 15)
    due = replace(diary(cases[0])[0], latest=date.fromisoformat(latest), is_late=is_late)
    assert week_of(due, AS_OF) == week


def test_a_file_without_terms_has_no_take_up(case_of: CaseOf) -> None:
    assert adds(case_of(Organisation(name="Oak", province="QC", renewal_date=RENEWAL))).cover == {}
