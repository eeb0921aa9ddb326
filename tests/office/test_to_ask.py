"""What was asked and is asked no more: the next request says so, once.

That an insurer acts on what it was sent until it is told otherwise is common practice, no source.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from decimal import Decimal
from typing import Any

import pytest

from quarterday.core.file.entry import Entry, Origin, Way
from quarterday.core.file.fold import fold
from quarterday.core.file.records import (
    Answers,
    Building,
    Decision,
    Note,
    PaymentChoice,
    Record,
    RequestSent,
    Terms,
)
from quarterday.core.file.records.terms import Coverage
from quarterday.office.to_ask import Moved, to_tell

RENEWAL, END = date(2027, 1, 15), date(2028, 1, 15)
SENT = date(2026, 11, 20)
Told = tuple[str, str, Any, Any, Any, int | None]


class Story:
    """A file's entries as they are written, and the requests that went out in between."""

    def __init__(self) -> None:
        self.entries: list[Entry] = []
        self.requests: list[RequestSent] = []

    def write(self, record: Record, way: Way = "person") -> None:
        self._add(record.kind, record.key, record.body(), way)

    def undo(self) -> None:
        """Take the newest entry back, as the history does: what stood before it counts again."""
        last = next(e for e in reversed(self.entries) if e.kind != RequestSent.kind)
        self.undo_of(last.kind, last.key)

    def undo_of(self, kind: str, key: str) -> None:
        of = [entry for entry in self.entries if (entry.kind, entry.key) == (kind, key)]
        self._add(kind, key, of[-2].body if len(of) > 1 else None, "person")

    def redact(self) -> None:
        self.entries[-1] = replace(self.entries[-1], body=None, salt=None)

    def told(self) -> list[Told]:
        """Return what the next request says."""
        return [_told(one) for one in self._next()]

    def send(self, *, old: bool = False) -> list[Told]:
        """Send the next request, and return what it said; ``old``: it could not take back."""
        moved, number = self._next(), len(self.requests) + 1
        self.requests.append(RequestSent(
            renewal=RENEWAL, number=number, sent_on=SENT + timedelta(days=number), to="Larkmoor",
            document="0" * 64, seq=len(self.entries), changes=len(moved),
            taken_back=None if old else sum(one.is_gone for one in moved),
        ))  # fmt: skip
        self.write(self.requests[-1], "office")
        return [_told(one) for one in moved]

    def _next(self) -> tuple[Moved, ...]:
        return to_tell(self.entries, self.requests, RENEWAL)

    def _add(self, kind: str, key: str, body: str | None, way: Way) -> None:
        seq = len(self.entries) + 1
        self.entries.append(Entry(
            file="HW-1001", seq=seq, recorded_at=datetime(2026, 11, 1, tzinfo=UTC), by="ann",
            act="edit", kind=kind, key=key, body=body, salt="0", body_digest="",
            origin=Origin(way=way), digest="", previous="",
        ))  # fmt: skip


def _told(one: Moved) -> Told:
    change, earlier = one.change, one.earlier
    ask = "disregard" if one.is_gone else "change"
    said = (earlier.value, earlier.number) if earlier else (None, None)
    return (ask, change.field, change.old, change.new, *said)


def decision(answer: str = "take-it", **other: Any) -> Decision:
    return Decision(**{"renewal": RENEWAL, "question": "option/by-laws/*", "answer": answer,
                       "decided_on": SENT, "by": "Priya Nathan", **other})  # fmt: skip


def hall(**facts: Any) -> Building:
    return Building(**{"id": "hall", "name": "Parish hall", "roof_year": 2021, **facts})


def cover(limit: str, coverage: str = "building", **other: Any) -> Coverage:
    return Coverage(coverage=coverage, location="hall", limit=Decimal(limit), **other)


def terms(stage: str, *lines: Coverage) -> Terms:
    start = date(2026, 1, 15) if stage == "issued" else RENEWAL
    end = RENEWAL if stage == "issued" else END
    return Terms.model_validate(
        {"stage": stage, "start": start, "end": end, "coverages": lines or (cover("1423000"),)}
    )


def wish(*lines: Coverage) -> Terms:
    return terms("requested", *lines)


@pytest.fixture
def story() -> Story:
    """A file whose hall and policy a workbook brought."""
    one = Story()
    one.write(hall(), "workbook")
    one.write(terms("issued"), "workbook")
    return one


@pytest.fixture
def decided(story: Story) -> Story:
    """An option was taken, and the insurer asked for it."""
    story.write(decision())
    assert story.send() == [("change", "answer", None, "take-it", None, None)]
    return story


@pytest.fixture
def larger(story: Story) -> Story:
    """A larger sum for the hall was accepted, and the insurer asked for it."""
    story.write(wish(cover("1650000")), "form")
    assert story.send() == [("change", "limit", 1423000, 1650000, None, None)]
    return story


NO_COVER = [("disregard", "answer", None, None, "take-it", 1)]
NO_SUM = [("disregard", "limit", 1423000, 1423000, 1650000, 1)]


@pytest.mark.parametrize("answer", ["leave-it", "later", "ask-us"])
def test_a_decision_that_was_asked_and_is_decided_otherwise_is_told_once(
    answer: str, decided: Story
) -> None:
    decided.write(decision(answer))
    assert decided.send() == NO_COVER
    assert decided.told() == []


def test_a_decision_that_was_asked_and_is_undone_is_told_once(decided: Story) -> None:
    decided.undo()
    assert decided.send() == NO_COVER
    assert decided.told() == []


def test_it_is_still_told_when_another_request_of_other_things_lies_between(
    decided: Story,
) -> None:
    decided.write(hall(roof_year=2024))
    assert len(decided.send()) == 1
    decided.undo_of("decision", decision().key)
    assert decided.told() == NO_COVER


@pytest.mark.parametrize("back", [lambda s: s.write(decision("leave-it")), Story.undo])
def test_what_was_never_sent_is_not_taken_back(back: Callable[[Story], None], story: Story) -> None:
    story.write(decision())
    back(story)
    assert story.told() == []


@pytest.mark.parametrize("answer", ["leave-it", "later"])
def test_what_asked_nothing_is_not_taken_back(answer: str, story: Story) -> None:
    story.write(decision(answer))
    story.write(hall(roof_year=2024))
    story.send()
    story.undo_of("decision", decision().key)
    assert story.told() == []


def test_a_decision_undone_and_taken_again_before_the_next_request_stays_asked(
    decided: Story,
) -> None:
    decided.undo()
    decided.write(decision(by="Ida Brandt"))
    assert decided.told() == []


def test_a_decision_that_was_taken_back_can_be_asked_again_and_taken_back_again(
    decided: Story,
) -> None:
    decided.write(decision("leave-it"))
    decided.send()
    decided.write(decision())
    assert decided.send() == [("change", "answer", "leave-it", "take-it", None, None)]
    decided.write(decision("later"))
    assert [row[-1] for row in decided.told()] == [3]


def test_an_accepted_sum_that_was_asked_and_is_undone_is_told_with_what_stands(
    larger: Story,
) -> None:
    larger.undo()
    assert larger.send() == NO_SUM
    assert larger.told() == []


def test_a_sum_that_went_back_to_what_the_terms_say_is_asked_no_more(larger: Story) -> None:
    larger.write(wish(cover("1423000")))
    assert larger.send() == NO_SUM
    assert larger.told() == []


def test_a_sum_that_was_asked_and_is_another_names_the_one_that_it_replaces(larger: Story) -> None:
    larger.write(wish(cover("1700000")))
    assert larger.send() == [("change", "limit", 1423000, 1700000, 1650000, 1)]
    assert larger.told() == []
    larger.undo()  # back to the sum of request 1, which request 2 replaced
    assert larger.send() == [("change", "limit", 1423000, 1650000, 1700000, 2)]


def test_another_sum_beside_the_asked_one_is_a_change_of_its_own(larger: Story) -> None:
    larger.write(wish(cover("1650000"), cover("90000", "contents")))
    (row,) = larger.told()
    assert (row[0], row[1], row[-1]) == ("change", "", None)


def test_a_sum_that_the_offer_grants_and_that_is_lowered_again_is_a_change_of_the_offer(
    larger: Story,
) -> None:
    larger.write(terms("offered", cover("1650000")), "workbook")
    assert larger.told() == []
    larger.write(wish(cover("1423000")))
    assert larger.told() == [("change", "limit", 1650000, 1423000, 1650000, 1)]


def test_a_sum_that_the_offer_grants_and_that_is_undone_is_taken_back(larger: Story) -> None:
    larger.write(terms("offered", cover("1650000")), "workbook")
    larger.undo_of("terms", wish().key)
    assert larger.told() == [("disregard", "limit", 1650000, 1650000, 1650000, 1)]


def flood(limit: str, deductible: str = "500") -> Coverage:
    return cover(limit, "flood", deductible=Decimal(deductible))


def test_a_cover_that_was_asked_changes_field_by_field_and_goes_whole(story: Story) -> None:
    hall_sum = cover("1423000")
    story.write(wish(hall_sum, flood("50000")))
    assert story.send() == [("change", "", None, flood("50000"), None, None)]
    story.write(wish(hall_sum, flood("75000")))
    assert story.send() == [("change", "limit", None, 75000, 50000, 1)]
    story.write(wish(hall_sum, flood("75000", "1000")))
    assert story.send() == [("change", "deductible", None, 1000, 500, 1)]
    assert story.told() == []
    story.write(wish(hall_sum))
    assert story.send() == [
        ("disregard", "", None, None, flood("50000"), 1),
        ("disregard", "limit", None, None, 75000, 2),
        ("disregard", "deductible", None, None, 1000, 3),
    ]
    assert story.told() == []


def test_a_field_of_an_asked_cover_that_the_offer_set_otherwise_is_let_go_once(
    story: Story,
) -> None:
    story.write(wish(cover("1423000"), flood("50000")))
    story.send()
    story.write(terms("offered", cover("1423000"), flood("40000", "1000")), "workbook")
    story.write(wish(cover("1423000"), flood("50000", "1000")))
    assert story.send() == [("disregard", "deductible", 1000, 1000, 500, 1)]
    assert story.told() == []


@pytest.mark.parametrize(("limit", "ask"), [("90000", "disregard"), ("95000", "change")])
def test_a_cover_that_was_to_be_taken_out_and_is_wanted_again(
    limit: str, ask: str, story: Story
) -> None:
    contents, wanted = cover("90000", "contents"), cover(limit, "contents")
    story.write(terms("offered", cover("1423000"), contents), "workbook")
    story.write(wish(cover("1423000")))
    assert story.send() == [("change", "", contents, None, None, None)]
    story.write(wish(cover("1423000"), wanted))
    assert story.send() == [(ask, "", contents, wanted, None, 1)]
    assert story.told() == []


def test_a_fact_that_was_asked_changes_and_goes_back(story: Story) -> None:
    story.write(hall(roof_year=2024))
    story.send()
    story.write(hall(roof_year=2025, sump_pump=True))
    assert story.send() == [
        ("change", "roof_year", 2021, 2025, 2024, 1),
        ("change", "sump_pump", None, True, None, None),
    ]
    story.write(hall())
    assert story.send() == [
        ("disregard", "roof_year", 2021, 2021, 2025, 2),
        ("disregard", "sump_pump", None, None, True, 2),
    ]
    assert story.told() == []


def test_what_is_asked_no_more_comes_first(decided: Story) -> None:
    decided.write(hall(roof_year=2024))
    decided.send()
    decided.write(hall(roof_year=2025))
    decided.undo_of("decision", decision().key)
    assert [row[0] for row in decided.told()] == ["disregard", "change"]


def test_a_building_that_was_asked_and_undone_is_taken_back_whole(story: Story) -> None:
    story.write(Building(id="shed", name="The shed", roof_year=1990))
    asked = story.send()
    story.undo()
    assert story.send() == [
        ("disregard", field, None, None, now, 1) for _, field, _, now, _, _ in asked
    ]
    assert story.told() == []


def payment(plan: str) -> PaymentChoice:
    return PaymentChoice(renewal=RENEWAL, plan=plan, chosen_on=SENT, by="Priya Nathan")


def test_a_payment_choice_that_was_asked_is_replaced_and_taken_back(story: Story) -> None:
    story.write(payment("at-once"))
    story.send()
    story.write(payment("three-cheques"))
    assert story.send() == [("change", "plan", None, "three-cheques", "at-once", 1)]
    story.undo()
    assert story.send() == [("change", "plan", None, "at-once", "three-cheques", 2)]


def test_answers_that_were_asked_are_taken_back(story: Story) -> None:
    story.write(Answers.model_validate(
        {"form": "renewal-questions", "renewal": RENEWAL, "answered_on": SENT,
         "answers": [{"question": "kitchen", "answer": "yes"}]}
    ))  # fmt: skip
    ((_, field, _, answers, _, _),) = story.send()
    story.undo()
    assert story.told() == [("disregard", field, None, None, answers, 1)]


def test_what_a_workbook_sets_back_is_not_taken_back(story: Story) -> None:
    story.write(hall(roof_year=2024))
    story.send()
    story.write(hall(), "workbook")
    assert story.told() == []


def test_what_was_asked_for_another_renewal_was_answered_by_the_terms_since(
    decided: Story,
) -> None:
    decided.write(decision("leave-it"))
    assert to_tell(decided.entries, decided.requests, END) == ()


def test_an_entry_that_was_redacted_neither_asks_nor_takes_back(decided: Story) -> None:
    decided.write(decision(words="Something that must go."))
    decided.redact()
    assert decided.told() == []


def test_what_an_old_request_was_silent_on_is_told_by_the_next(decided: Story) -> None:
    """Before requests could take back, they passed over what was declined or withdrawn."""
    decided.write(decision("leave-it"))
    decided.write(hall(roof_year=2024))
    decided.send(old=True)
    assert decided.send() == NO_COVER
    assert decided.told() == []


def test_what_an_old_request_told_as_a_change_is_not_told_again(story: Story) -> None:
    """Before, a fact that went back was asked as a change like any other."""
    story.write(hall(roof_year=2024))
    story.send()
    story.write(hall())
    story.send(old=True)
    assert story.told() == []


def test_what_is_recorded_folds_and_a_request_from_before_loads(decided: Story) -> None:
    decided.write(decision("leave-it"))
    decided.send()
    old = decided.requests[0].body().replace('"taken_back":0,', "")
    assert "taken_back" not in old
    assert RequestSent.read(old).taken_back is None
    kept = fold("HW-1001", decided.entries).all(RequestSent)
    assert [(one.changes, one.taken_back) for one in kept] == [(1, 0), (1, 1)]


def test_what_is_no_affair_of_the_insurer_is_neither_asked_nor_taken_back(decided: Story) -> None:
    decided.write(Note(id="call", text="Priya called."))
    decided.undo()
    assert decided.told() == []
