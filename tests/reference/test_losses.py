"""The library of reference losses."""

from __future__ import annotations

import pytest

from quarterday.catalogue.load import reference
from quarterday.catalogue.speech import Speech
from quarterday.core.reference import ReferenceLoss
from quarterday.core.terms.losses.components import COMPONENTS
from quarterday.core.terms.losses.loss import is_monthly
from quarterday.core.words import Term

LOSSES = reference("canada").losses
each = pytest.mark.parametrize("loss", LOSSES.values(), ids=LOSSES.keys())


def test_the_library_holds_the_losses_everybody_asks_about() -> None:
    assert list(LOSSES) == [
        "burst-pipe", "basement-backup", "kitchen-fire", "total-fire", "roof-hail",
        "offering-theft", "dishonest-bookkeeper", "fall-on-steps", "punitive-lawsuit",
        "wrongful-dismissal", "data-theft", "camp-season",
        "earthquake", "river-flood", "volunteer-hurt", "abuse-lawsuit",
    ]  # fmt: skip


@each
def test_every_size_says_that_it_is_illustrative(loss: ReferenceLoss) -> None:
    assert loss.illustrative
    assert loss.source.publisher == "Quarterday"


@each
def test_each_is_told_in_two_short_sentences_in_both_languages(loss: ReferenceLoss) -> None:
    for text in (loss.story.en, loss.story.fr):
        sentences = [s for s in text.split(". ") if s]
        assert 1 <= len(sentences) <= 2
        assert all(len(s.split()) < 25 for s in sentences)
    assert loss.name.en != loss.name.fr


@each
def test_each_component_is_answered_by_some_coverage_for_the_cause(loss: ReferenceLoss) -> None:
    """Except extra expense after a backup, which the library's own causes leave out."""
    canada = reference("canada")
    for component in loss.amounts:
        answering = [
            c for c in COMPONENTS[component].coverages if loss.cause in canada.coverages[c].answers
        ]
        assert answering or (loss.id, component) == ("basement-backup", "extra-expense")


@each
def test_what_is_scaled_has_an_amount_where_nothing_is_known(loss: ReferenceLoss) -> None:
    for component, scale in loss.amounts.items():
        assert scale.amount is not None, component
        assert scale.months == 1 or is_monthly(component)


@pytest.mark.parametrize("language", ["en", "fr"])
def test_each_has_a_name_that_can_be_spoken(language: str) -> None:
    speech = Speech(reference("canada"), language)
    assert all(speech.say(Term("loss", id)) for id in LOSSES)
