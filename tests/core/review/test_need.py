"""Whether a file needs a coverage: yes, no, or nobody has said."""

from __future__ import annotations

from collections.abc import Callable
from decimal import Decimal
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from quarterday.catalogue.speech import Speech
from quarterday.core.file.records import Building, Operations, Organisation
from quarterday.core.reference import LANGUAGES, Condition, Reference
from quarterday.core.review.case import Case
from quarterday.core.review.need import Answer, Need, need, questions

CaseOf = Callable[..., Case]


@pytest.fixture(scope="session")
def answer(case_of: CaseOf) -> Callable[..., Need]:
    """Ask a condition of a file with these records."""

    def ask(condition: dict[str, Any], *records: Any) -> Need:
        return need(Condition.model_validate(condition), case_of(*records).file)

    return ask


def test_a_yes_is_needed_and_says_why_from_where(answer: Callable[..., Need]) -> None:
    found = answer({"profile": "camp"}, Operations(camp=True))
    assert (found.answer, found.because[0].id) == ("yes", "reason-profile-camp")
    assert [(f.id, f.value) for f in found.facts] == [("operations//camp", True)]
    assert found.facts[0].origin.name == "book.xlsx"


def test_a_no_is_a_no_and_an_unanswered_question_is_not(answer: Callable[..., Need]) -> None:
    assert answer({"profile": "camp"}, Operations(camp=False)).answer == "no"
    unknown = answer({"profile": "camp"}, Operations())
    assert (unknown.answer, unknown.asks) == ("unknown", (("profile", "camp"),))
    assert unknown.open_questions[0].id == "ask-profile-camp"


def test_a_file_without_a_profile_has_answered_nothing(answer: Callable[..., Need]) -> None:
    found = answer({"profile": "employees"})
    assert (found.answer, found.facts) == ("unknown", ())


@pytest.mark.parametrize(("count", "expected"), [(0, "no"), (1, "yes"), (40, "yes")])
def test_a_count_counts_above_zero(
    answer: Callable[..., Need], count: int, expected: Answer
) -> None:
    assert answer({"profile": "volunteers"}, Operations(volunteers=count)).answer == expected


@pytest.mark.parametrize(
    ("amount", "expected"), [("49999.99", "no"), ("50000", "yes"), ("50000.01", "yes")]
)
def test_at_least_includes_its_bound(
    answer: Callable[..., Need], amount: str, expected: Answer
) -> None:
    asked = {"profile": "revenue_rents", "at_least": 50000}
    assert answer(asked, Operations(revenue_rents=Decimal(amount))).answer == expected


@pytest.mark.parametrize(("year", "expected"), [(1974, "yes"), (1975, "yes"), (1976, "no")])
def test_at_most_includes_its_bound_and_a_year_has_no_thousands(
    answer: Callable[..., Need], year: int, expected: Answer
) -> None:
    asked = {"building": "year_built", "at_most": 1975}
    found = answer(asked, Building(id="hall", name="Hall", year_built=year))
    assert found.answer == expected
    assert (found.facts[0].value, found.facts[0].unit) == (str(year), "text")


def test_a_size_is_not_asked_of_a_text(answer: Callable[..., Need]) -> None:
    asked = {"building": "heating_type", "at_least": 1}
    with pytest.raises(TypeError, match="has no size"):
        answer(asked, Building(id="hall", name="Hall", heating_type="oil"))


def test_equals_can_ask_for_a_no(answer: Callable[..., Need]) -> None:
    asked = {"profile": "two_counters", "equals": False}
    assert answer(asked, Operations(two_counters=False)).answer == "yes"
    assert answer(asked, Operations(two_counters=True)).answer == "no"
    assert answer(asked, Operations()).answer == "unknown"


@pytest.mark.parametrize(
    ("text", "expected"),
    [("Oil furnace, 1988", "yes"), ("chauffage au mazout", "yes"), ("gas boiler", "no")],
)
def test_one_of_asks_for_a_word_that_begins_so(
    answer: Callable[..., Need], text: str, expected: Answer
) -> None:
    asked = {"building": "heating_type", "one_of": ["oil", "mazout"]}
    found = answer(asked, Building(id="hall", name="Hall", heating_type=text))
    assert found.answer == expected  # the "oil" inside "boiler" begins no word


def test_one_of_looks_into_lists_and_an_empty_list_says_none(answer: Callable[..., Need]) -> None:
    asked = {"building": "special_features", "one_of": ["stained", "vitrail", "vitraux"]}
    windows = Building(id="hall", name="Hall", special_features=("Steeple", "Stained glass"))
    found = answer(asked, windows)
    assert (found.answer, found.facts[0].value) == ("yes", "Steeple; Stained glass")
    plain = answer(asked, Building(id="hall", name="Hall"))
    assert (plain.answer, plain.facts) == ("no", ())


def test_one_building_is_enough_and_is_named(answer: Callable[..., Need]) -> None:
    asked = {"building": "basement", "equals": "finished"}
    found = answer(
        asked,
        Building(id="a", name="Shed", basement="none"),
        Building(id="b", name="Main hall", basement="finished"),
        Building(id="c", name="Annex"),
    )
    assert found.answer == "yes"
    assert dict(found.because[0].args)["building"] == "Main hall"


def test_no_building_has_it_only_when_all_are_known(answer: Callable[..., Need]) -> None:
    asked = {"building": "basement", "equals": "finished"}
    known = Building(id="a", name="Shed", basement="none")
    assert answer(asked, known).answer == "no"
    assert answer(asked, known, Building(id="c", name="Annex")).answer == "unknown"


def test_a_file_without_buildings_has_none_only_when_it_says_so(
    answer: Callable[..., Need],
) -> None:
    asked = {"building": "basement", "equals": "finished"}
    assert answer(asked).answer == "unknown"
    assert answer(asked, Operations(owns_premises=False)).answer == "unknown"
    nothing = Operations(owns_premises=False, rents_premises=False)
    assert answer(asked, nothing).answer == "no"


def test_a_building_stands_in_its_own_province_else_in_the_organisation_s(
    answer: Callable[..., Need],
) -> None:
    asked = {"building": "province", "equals": "BC"}
    assert answer(asked, Building(id="a", name="Lodge", province="BC")).answer == "yes"
    assert answer(asked, Building(id="a", name="Lodge")).answer == "no"
    west = Organisation(name="Cedar Hall", province="BC")
    found = answer(asked, Building(id="a", name="Lodge"), west)
    assert (found.answer, found.because[0].id) == ("yes", "reason-organisation-province")


VALUE = {"no": 0, "unknown": 1, "yes": 2}


@settings(deadline=None)
@given(
    st.sampled_from([True, False, None]),
    st.sampled_from([True, False, None]),
    st.sampled_from([True, False, None]),
)
def test_any_and_all_join_as_in_kleene_s_logic(
    canada: Reference,
    case_of: CaseOf,
    a: bool | None,
    b: bool | None,
    c: bool | None,
) -> None:
    """Kleene (1938): or is the greatest, and the least, of false < unknown < true."""
    file = case_of(Operations(camp=a, school=b, day_care=c)).file
    parts = tuple(Condition(profile=name) for name in ("camp", "school", "day_care"))
    values = [VALUE[need(part, file).answer] for part in parts]
    assert VALUE[need(Condition(any=parts), file).answer] == max(values)
    assert VALUE[need(Condition(all=parts), file).answer] == min(values)


@settings(deadline=None)
@given(
    st.builds(
        Operations,
        children=st.none() | st.booleans(),
        volunteers=st.none() | st.integers(0, 90),
        owns_premises=st.none() | st.booleans(),
        rents_premises=st.none() | st.booleans(),
        revenue_donations=st.none() | st.integers(0, 90000).map(Decimal),
    )
)
def test_only_an_unknown_answer_asks_and_every_answer_holds_its_own_evidence(
    canada: Reference, case_of: CaseOf, profile: Operations
) -> None:
    file = case_of(profile).file
    for coverage in canada.coverages.values():
        found = need(coverage.needed_when, file)
        assert bool(found.asks) == (found.answer == "unknown")
        assert set(found.asks) <= set(questions(coverage.needed_when))
        assert (found.answer == "yes") or not found.because


def test_always_needs_no_fact(answer: Callable[..., Need]) -> None:
    assert answer({"always": True}) == Need("yes")
    assert answer({"always": False}) == Need("no")


def test_a_reason_is_told_once(answer: Callable[..., Need]) -> None:
    same = {"any": [{"profile": "camp"}, {"profile": "camp"}]}
    found = answer(same, Operations(camp=True))
    assert (len(found.because), len(found.facts)) == (1, 1)


@pytest.mark.parametrize("language", LANGUAGES)
def test_reasons_and_questions_can_be_spoken(
    canada: Reference, case_of: CaseOf, language: str
) -> None:
    speech = Speech(canada, language)
    owner = case_of(
        Operations(camp=True, volunteers=4, employees=2),
        Building(id="hall", name="Main hall", basement="finished", heritage=True),
    ).file
    for coverage in canada.coverages.values():
        found = need(coverage.needed_when, owner)
        for said in (*found.because, *found.open_questions):
            text = speech.say(said)
            assert text
            assert text[0].islower() or text.startswith("Main hall")
            assert not text.endswith(".")
