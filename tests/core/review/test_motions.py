"""Draft motions: each decision of the agenda put for it and against it, whole, in both languages.

That a motion is put in the positive form ("that …") and recorded with who moved and seconded it is
common practice of meetings, no source.
"""

from __future__ import annotations

import re
from dataclasses import replace
from datetime import date
from decimal import Decimal

import pytest

from quarterday.catalogue.load import place_folder, reference
from quarterday.catalogue.speech import Speech
from quarterday.core.dates import Period
from quarterday.core.money import Money
from quarterday.core.review.finding import Finding, Priority, Subject, Tier
from quarterday.core.review.motions import (
    NOT_AGAINST,
    SUBJECTS,
    accepting,
    at_cost,
    motions,
)
from quarterday.core.words import Arg, Words, words

LANGUAGES = ("en", "fr")
OPENING = {"en": "Moved that ", "fr": "Il est proposé "}
TERM = Period(date(2027, 1, 15), date(2028, 1, 15))
# Whatever a title of the rules tells, so that every wording can be spoken.
TOLD: dict[str, Arg | Words | tuple[str, ...]] = {
    "building": "Parish hall", "gap": Money(Decimal(940_070)), "n": 4, "need": Money(Decimal(9000)),
    "limit": Money(Decimal(5000)), "short": Money(Decimal(4000)), "coverage": "Sewer backup",
    "options": ("By-laws", "Overland flood"), "buildings": ("Old hall",), "because": ("a trip",),
    "offered": Money(Decimal(8000)), "reach": "part", "count": 2,
}  # fmt: skip


def finding(title: str, cost: Money | None = None, at_risk: Money | None = None) -> Finding:
    return Finding(
        rule=title.replace("-", ".", 1),
        subject=Subject("coverage", "travel", "Travel"),
        audience=("leaders",),
        kind="decide",
        priority=Priority(Tier.MONEY, cost=cost, at_risk=at_risk),
        title=words(f"{title}-title", **TOLD),
        means=words("everywhere"),
        todo=words("everywhere"),
    )


def spoken(what: Words, language: str = "en") -> str:
    return Speech(reference("canada"), language).say(what)


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("subject", SUBJECTS)
def test_each_subject_has_its_own_motion_for_and_against(subject: str, language: str) -> None:
    (draft,) = motions([finding(subject)])
    assert draft.moved.id == f"motion-{subject}"
    assert spoken(draft.moved, language).startswith(OPENING[language])
    if subject in NOT_AGAINST:
        assert draft.instead is None
    else:
        assert draft.instead is not None
        assert spoken(draft.instead, language).startswith(OPENING[language])
        assert spoken(draft.instead, language) != spoken(draft.moved, language)
        assert " que un" not in spoken(draft.instead, language)  # French elides it


@pytest.mark.parametrize("language", LANGUAGES)
def test_one_option_alone_is_moved_by_its_name(language: str) -> None:
    asked = finding("terms-options-together")
    told = TOLD | {"count": 1, "options": ("By-laws",)}
    one = replace(asked, title=words("terms-options-together-title", **told))
    (draft,) = motions([one])
    assert draft.instead is not None
    for said in (spoken(draft.moved, language), spoken(draft.instead, language)):
        assert "By-laws" in said
        assert "take it" not in said
        assert "accepter »" not in said


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_question_nobody_foresaw_is_moved_in_the_agenda_s_own_words(language: str) -> None:
    asked = finding("terms-dropped")
    other = Finding(
        rule="own.rule", subject=asked.subject, audience=asked.audience, kind="decide",
        priority=asked.priority, title=words("everywhere"), means=asked.means, todo=asked.todo,
    )  # fmt: skip
    (draft,) = motions([other])
    assert draft.moved.id == "motion-other"
    assert draft.instead is not None
    said = spoken(words("everywhere"), language)
    assert said in spoken(draft.moved, language)
    assert said in spoken(draft.instead, language)


def test_the_motions_follow_the_agenda_and_name_its_questions() -> None:
    agenda = [finding("terms-worse"), finding("terms-dropped"), finding("income-too-low")]
    assert [draft.question for draft in motions(agenda)] == [f.id for f in agenda]
    assert motions([]) == ()


def test_no_motion_to_go_without_prevention_is_drafted() -> None:
    """Where people may be harmed the papers propose only that the plan be reviewed and declared."""
    assert NOT_AGAINST == ("people-abuse-unqualified",)
    text = spoken(motions([finding("people-abuse-unqualified")])[0].moved)
    assert "only what is truly done" in text


def test_a_price_is_said_to_the_dollar_or_that_it_is_free_or_open() -> None:
    assert spoken(at_cost(Money(Decimal("1391.30")))) == "at about $1,391 a year before tax"
    assert spoken(at_cost(Money(Decimal(0)))) == "at no extra charge"
    assert spoken(at_cost(None)) == "once the board has approved the price"


def test_what_is_at_stake_stands_in_the_motion_against_it() -> None:
    risky = motions([finding("terms-dropped", at_risk=Money(Decimal(50_000)))])[0].instead
    unknown = motions([finding("terms-dropped")])[0].instead
    assert risky is not None
    assert unknown is not None
    assert "up to $50,000 of a loss" in spoken(risky)
    assert "such a loss would be the organisation's own" in spoken(unknown)


@pytest.mark.parametrize("language", LANGUAGES)
def test_the_renewal_is_accepted_with_its_premium_or_before_one_is_known(language: str) -> None:
    known = accepting("Larkmoor Mutual", TERM, Money(Decimal("18185.52")), 5)
    unknown = accepting(None, TERM, None, 0)
    assert known.question == unknown.question == ""
    assert "Larkmoor Mutual" in spoken(known.moved, language)
    assert re.search(r"18.?185[.,]52", spoken(known.moved, language))
    assert not re.search(r"\$", spoken(unknown.moved, language))
    assert ("motions above" in spoken(known.moved)) is True
    assert ("motions above" in spoken(unknown.moved)) is False


def test_every_wording_of_a_motion_is_used() -> None:
    file = place_folder("canada") / "wordings" / "en" / "motions.ftl"
    ids = set(re.findall(r"^(motion-[\w-]+) =", file.read_text("utf-8"), re.MULTILINE))
    parts = {"cost", "cost-free", "cost-open", "stake", "stake-open", "insurer", "premium", "later"}
    named = {f"motion-{part}" for part in (*parts, "accept", "accept-about", "other")}
    named |= {f"motion-{subject}" for subject in SUBJECTS}
    against = {f"{id}-instead" for id in named if id[7:] in {*SUBJECTS, "other"}}
    assert ids == named | against - {f"motion-{s}-instead" for s in NOT_AGAINST}
