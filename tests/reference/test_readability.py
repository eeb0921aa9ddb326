"""A tired volunteer can read it: short sentences in both languages, about grade 8 in English.

English is graded by two published formulas that need no dictionary and no download: the Automated
Readability Index (Smith and Senter, 1967) and the Coleman-Liau index (1975), both by the library
textstat; the mean of the two is the grade. French is measured by the Flesch reading ease with the
library's French constants and its hyphenation dictionary. Every variable stands as one word.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from statistics import mean
from typing import Any

import pytest
import textstat

from quarterday.catalogue.load import not_covered, reference
from quarterday.core.reference import Both

LONGEST = 25  # words in a sentence
GRADE = 9.0
EASE = 50.0  # Flesch: 50 to 60 is fairly difficult, below 50 difficult
ENOUGH = 60  # words, below which a grade says nothing
END = re.compile(r"(?<=[.!?])\s+|\n+")
WORD = re.compile(r"[^\W_]+(?:['’.,-][^\W_]+)*")


def sentences(text: str) -> Iterator[str]:
    """Yield the sentences of a text; a heading or a list item counts as one."""
    yield from (part.strip() for part in END.split(text) if WORD.search(part))


def words_in(sentence: str) -> int:
    return len(WORD.findall(sentence))


def long_ones(texts: dict[str, str]) -> list[tuple[str, int]]:
    return [
        (place, words_in(sentence))
        for place, text in texts.items()
        for sentence in sentences(text)
        if words_in(sentence) >= LONGEST
    ]


def by_clause(id: str, text: str) -> str:
    """Return a text to measure: a motion is one sentence by custom, and is read by its clauses."""
    return text.replace("; ", ". ") if id.startswith("motion-") else text


def whole(texts: dict[str, str]) -> str:
    """Return the sentences of ``texts`` that end like one, as a text to grade."""
    found = (s for text in texts.values() for s in sentences(text) if s[-1] in ".!?")
    return " ".join(s for s in found if words_in(s) >= 4)


def grade(text: str) -> float:
    textstat.set_lang("en_US")
    indices = textstat.automated_readability_index(text), textstat.coleman_liau_index(text)
    return float(mean(indices))


def texts_of(wordings: Any, area: str) -> dict[str, str]:
    return {id: wordings.text(id) for id in wordings.areas[area].messages}


def catalogue(language: str) -> dict[str, str]:
    """Return the sentences of causes, coverages and taxes."""
    canada = reference()
    found: dict[str, Both] = {}
    for cause in canada.causes.values():
        found |= {f"cause {cause.id} tip {n}": tip for n, tip in enumerate(cause.tips)}
    for coverage in canada.coverages.values():
        for name in ("meaning", "not_covered", "question"):
            found[f"coverage {coverage.id} {name}"] = getattr(coverage, name)
    return {place: both[language] for place, both in found.items()}


@pytest.mark.parametrize("language", ["en", "fr"])
def test_no_wording_has_a_long_sentence(language: str, english: Any, french: Any) -> None:
    wordings = english if language == "en" else french
    texts = {id: by_clause(id, wordings.text(id)) for id in wordings.messages}
    assert len(texts) > 400
    assert long_ones(texts) == []


@pytest.mark.parametrize("language", ["en", "fr"])
def test_no_text_of_the_catalogues_has_a_long_sentence(language: str) -> None:
    assert long_ones(catalogue(language)) == []


@pytest.mark.parametrize("language", ["en", "fr"])
def test_what_is_not_covered_is_told_in_short_sentences(language: str) -> None:
    """Lines of a list item belong together; headings and items end a sentence."""
    text = re.sub(r"\n  (?=\S)", " ", not_covered(language))
    paragraphs = re.sub(r"(?<=[^\n])\n(?=[^\n\-#])", " ", text)
    assert long_ones({"NOT-COVERED": paragraphs}) == []


def test_english_reads_at_about_grade_eight_in_each_area(english: Any) -> None:
    graded = {
        area: grade(text)
        for area in english.areas
        if words_in(text := whole(texts_of(english, area))) >= ENOUGH
    }
    assert graded
    assert {area: round(g, 1) for area, g in graded.items() if g > GRADE} == {}


def test_the_catalogues_read_at_about_grade_eight() -> None:
    assert grade(whole(catalogue("en"))) <= GRADE


def test_french_reads_with_fair_ease_in_each_area(french: Any) -> None:
    textstat.set_lang("fr")
    eased = {
        area: textstat.flesch_reading_ease(text)
        for area in french.areas
        if words_in(text := whole(texts_of(french, area))) >= ENOUGH
    }
    assert eased
    assert {area: round(e) for area, e in eased.items() if e < EASE} == {}


def test_the_measures_tell_plain_from_heavy() -> None:
    """The check of the check, on a plain and a heavy way of saying one thing."""
    plain = "Your hall would be short after a fire. Ask us what it costs to close the gap."
    heavy = (
        "Notwithstanding indemnification provisions, insufficient insurance-to-value adequacy "
        "necessitates proportional participation in restoration expenditures hereunder."
    )
    assert grade(plain) < GRADE < grade(heavy)
    assert long_ones({"x": " ".join(["word"] * 25) + "."}) == [("x", 25)]
    assert long_ones({"x": " ".join(["word"] * 24) + "."}) == []
    textstat.set_lang("fr")
    lourd = "Nonobstant l'indemnisation proportionnelle, l'insuffisance assurantielle nécessitera."
    assert textstat.flesch_reading_ease("Votre salle a brûlé. Que faire?") > EASE
    assert textstat.flesch_reading_ease(lourd) < EASE


def test_the_measures_need_no_download(monkeypatch: pytest.MonkeyPatch) -> None:
    """The formulas count letters, words and sentences; nothing is fetched to do it."""

    def refuse(*_: object, **__: object) -> None:
        raise AssertionError("a readability measure asked for the network")

    monkeypatch.setattr("socket.socket.connect", refuse)
    monkeypatch.setattr("urllib.request.urlopen", refuse)
    assert grade("This is a short text about a hall.") < GRADE
