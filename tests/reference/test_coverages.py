"""The coverage library of Canada: whole, in both languages, readable, and asking what exists."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal
from typing import Any, get_args, get_type_hints

import pytest
import textstat

from quarterday.catalogue.load import reference
from quarterday.catalogue.speech import Speech
from quarterday.core.file.layout import SHEETS
from quarterday.core.file.records import Building, Operations, Organisation
from quarterday.core.file.records.base import Amount
from quarterday.core.file.records.terms import LimitBasis
from quarterday.core.reference import LANGUAGES, Condition, CoverageType
from quarterday.core.review.need import SUBJECTS, questions
from quarterday.core.words import Term

# Every coverage a package may have to name; common practice, no source.
EXPECTED = {
    "property": (
        "building contents equipment stained-glass organ-and-fine-arts outdoor-property "
        "property-away property-of-others sewer-backup overland-flood earthquake "
        "equipment-breakdown by-laws debris-removal professional-fees valuable-papers "
        "lock-and-key construction-in-progress inflation-protection glass"
    ),
    "income": (
        "loss-of-income extra-expense alternate-premises civil-authority off-premises-utilities"
    ),
    "crime": (
        "money-inside money-outside offerings-in-transit employee-dishonesty "
        "volunteer-dishonesty forgery-and-funds-transfer counterfeit"
    ),
    "liability": (
        "general-liability products-liability personal-injury tenants-liability "
        "medical-payments counselling-liability hall-rental-liability punitive-damages "
        "defence-costs legal-expense media-liability pollution-liability"
    ),
    "vehicles": "non-owned-vehicle",
    "abuse": "abuse-liability abuse-defence abuse-therapy",
    "management": "directors-and-officers employment-practices",
    "cyber": "cyber-own-losses cyber-liability",
    "people": "volunteer-accident travel key-person",
    "umbrella": "umbrella",
}
RECORDS: dict[str, Any] = {
    "profile": Operations,
    "building": Building,
    "organisation": Organisation,
}
LIBRARY = reference("canada").coverages
ALL = pytest.mark.parametrize("coverage", LIBRARY.values(), ids=lambda c: c.id)


def test_the_library_holds_every_coverage_in_its_family() -> None:
    found = {(c.family, c.id) for c in LIBRARY.values()}
    assert found == {(family, id) for family, ids in EXPECTED.items() for id in ids.split()}


def _texts(coverage: CoverageType, language: str) -> dict[str, str]:
    return {n: getattr(coverage, n)[language] for n in ("meaning", "not_covered", "question")}


@ALL
def test_each_text_is_one_sentence_a_volunteer_can_take_in(coverage: CoverageType) -> None:
    for language in LANGUAGES:
        for name, text in _texts(coverage, language).items():
            end = "?" if name == "question" else "."
            assert text.endswith(end), f"{name} {language}"
            assert text[:-1].count(". ") == 0, f"{name} {language} is more than one sentence"
            assert len(text.split()) <= 26, f"{name} {language} is too long"


@ALL
def test_french_is_not_english_and_says_as_much(coverage: CoverageType) -> None:
    for name, text in _texts(coverage, "fr").items():
        english = _texts(coverage, "en")[name]
        assert text != english
        assert 0.6 < len(text) / len(english) < 2.0


@ALL
def test_what_is_not_covered_is_put_with_care(coverage: CoverageType) -> None:
    """Wordings differ, so no coverage promises what its wording alone decides."""
    careful = {
        "en": ("usually", "often", "may", "never", "If ", "does not", "mostly"),
        "fr": ("d'ordinaire", "souvent", "peut", "jamais", "Si ", "ne ", "n'"),
    }
    for language, marks in careful.items():
        assert any(mark in coverage.not_covered[language] for mark in marks)


def test_english_reads_at_about_grade_eight() -> None:
    """Automated readability index by an independent library, over all texts."""
    text = " ".join(" ".join(_texts(c, "en").values()) for c in LIBRARY.values())
    assert textstat.textstat.automated_readability_index(text) <= 9


def _conditions(coverage: CoverageType) -> Iterator[Condition]:
    todo = [c for c in (coverage.needed_when, coverage.hurts_when) if c]
    while todo:
        condition = todo.pop()
        yield condition
        todo += [*(condition.any or ()), *(condition.all or ())]


@ALL
def test_every_question_of_a_coverage_is_a_field_of_a_record(coverage: CoverageType) -> None:
    for condition in _conditions(coverage):
        for subject in SUBJECTS:
            name = getattr(condition, subject)
            assert name is None or name in RECORDS[subject].model_fields


@ALL
def test_every_condition_asks_exactly_one_thing(coverage: CoverageType) -> None:
    for condition in _conditions(coverage):
        asked = ("profile", "building", "organisation", "any", "all", "always")
        assert sum(getattr(condition, name) is not None for name in asked) == 1


@ALL
def test_sizes_are_asked_of_numbers_and_choices_of_what_can_be_chosen(
    coverage: CoverageType,
) -> None:
    for condition in _conditions(coverage):
        for subject, name in _asked_directly(condition):
            hint = get_type_hints(RECORDS[subject], include_extras=True)[name]
            if condition.at_least is not None or condition.at_most is not None:
                assert {int, Decimal} & set(_flat(hint)), name
            choices = {a for a in _flat(hint) if isinstance(a, str)}
            if choices:
                wanted = {*(condition.one_of or ()), condition.equals or next(iter(choices))}
                assert wanted <= choices, f"{coverage.id} asks {name} for {wanted - choices}"


def _asked_directly(condition: Condition) -> Iterator[tuple[str, str]]:
    for subject in SUBJECTS:
        name = getattr(condition, subject)
        if name is not None:
            yield subject, name


def _flat(hint: Any) -> Iterator[Any]:
    yield hint
    for inner in get_args(hint):
        yield from _flat(inner)


def test_amounts_that_are_asked_are_money() -> None:
    """The reasons show an amount as money, so no area or ratio may be asked for."""
    for coverage in LIBRARY.values():
        for condition in _conditions(coverage):
            for subject, name in _asked_directly(condition):
                hint = get_type_hints(RECORDS[subject], include_extras=True)[name]
                flat = list(_flat(hint))
                assert Decimal not in flat or Amount in flat, name


@ALL
@pytest.mark.parametrize("language", LANGUAGES)
def test_every_question_has_its_words_as_a_reason_and_as_a_question(
    coverage: CoverageType, language: str
) -> None:
    speech = Speech(reference("canada"), language)
    for subject, name in questions(coverage.needed_when):
        slug = name.replace("_", "-")
        assert speech.can_say(f"ask-{subject}-{slug}"), name
        assert speech.can_say(f"reason-{subject}-{slug}"), name


@ALL
def test_a_limit_basis_and_a_name_are_of_the_catalogues(coverage: CoverageType) -> None:
    assert coverage.basis in get_args(LimitBasis)
    for language in LANGUAGES:
        named = Speech(reference("canada"), language).say(Term("coverage", coverage.id))
        assert named[0].isupper()
        assert ":" not in named, "a name stands before a colon in titles"


def test_names_are_not_used_twice() -> None:
    for language in LANGUAGES:
        names = [c.name[language] for c in LIBRARY.values()]
        assert len(set(names)) == len(names)


def test_every_cause_of_loss_is_answered_by_some_coverage() -> None:
    answered = {cause for coverage in LIBRARY.values() for cause in coverage.answers}
    assert answered == set(reference("canada").causes)


def test_harm_to_people_ranks_by_duty_for_abuse_and_injury() -> None:
    safety = {c.id for c in LIBRARY.values() if c.safety}
    assert safety == {"abuse-liability", "abuse-defence", "abuse-therapy", "general-liability"}


def test_only_extra_costs_may_share_one_additional_limit() -> None:
    """Buildings, contents and liability need a limit of their own; common practice, no source."""
    shared = {c.family for c in LIBRARY.values() if c.may_share_limit}
    assert shared == {"property", "income"}
    for own in ("building", "contents", "sewer-backup", "overland-flood", "earthquake"):
        assert not LIBRARY[own].may_share_limit


def test_the_gaps_that_hurt_most_are_told_alone() -> None:
    """Common practice, no source."""
    alone = {c.id for c in LIBRARY.values() if c.hurts_when}
    assert alone >= {
        "building", "sewer-backup", "general-liability", "tenants-liability", "abuse-liability",
        "directors-and-officers", "volunteer-dishonesty", "non-owned-vehicle", "cyber-own-losses",
    }  # fmt: skip
    assert not alone & {"glass", "lock-and-key", "counterfeit", "debris-removal"}


def test_coverages_on_the_workbook_are_given_by_these_ids() -> None:
    sheet = next(s for s in SHEETS if s.part == "coverages")
    assert "coverage" in sheet.by_heading
