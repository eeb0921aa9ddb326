"""How hard the papers are to read: English at about grade 8, no long sentence, French likewise.

Measures by the library textstat: for English the mean of the Automated Readability Index and the
Coleman–Liau index, which need no dictionary; for French its Flesch ease. Both judge running text,
so that tables stay out.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

import pytest
import textstat
from fluent.syntax import FluentParser
from fluent.syntax.ast import Message, Pattern, SelectExpression, TextElement

from quarterday.catalogue.load import place_folder
from quarterday.papers.package import _data, _enclosed

from . import given

AREAS = ["papers", "forms", "motions"]
LONGEST = 25  # words
HIGHEST_GRADE = 8.0
LEAST_EASE = 60.0  # Flesch (1948), from memory: 60 to 70 is standard, above is easier
PROSE = {"lead", "means", "todo", "status", "title", "texts", "reasons", "note", "caution",
         "moved", "instead", "story", "why", "steps"}  # fmt: skip


def patterns(language: str, area: str) -> Iterator[tuple[str, str]]:
    """Yield each wording as plain text, once for each of its variants; a variable is one word."""
    file = place_folder("canada") / "wordings" / language / f"{area}.ftl"
    for entry in FluentParser().parse(file.read_text("utf-8")).body:
        if isinstance(entry, Message) and entry.value:
            for text in _texts(entry.value):
                yield entry.id.name, text


def _texts(pattern: Pattern) -> list[str]:
    found = [""]
    for element in pattern.elements:
        if isinstance(element, TextElement):
            parts = [element.value]
        elif isinstance(element.expression, SelectExpression):
            parts = [text for v in element.expression.variants for text in _texts(v.value)]
        else:
            parts = ["x"]
        found = [before + part for before in found for part in parts]
    return found


def sentences(text: str) -> list[str]:
    return [part for part in re.split(r"(?<=[.?!:;])\s+", text) if part]


@pytest.mark.parametrize("area", AREAS)
@pytest.mark.parametrize("language", ["en", "fr"])
def test_no_sentence_of_the_papers_is_long(language: str, area: str) -> None:
    long = [
        (id, sentence)
        for id, text in patterns(language, area)
        for sentence in sentences(text)
        if len(sentence.split()) >= LONGEST
    ]
    assert long == []


def prose(value: object, name: str = "") -> Iterator[str]:
    """Yield the running text of a package's data: leads, reasons, what to do."""
    if isinstance(value, dict):
        for key, part in value.items():
            yield from prose(part, key)
    elif isinstance(value, list | tuple):
        for part in value:
            yield from prose(part, name)
    elif isinstance(value, str) and name in PROSE and len(value.split()) > 4:
        yield value if value.endswith((".", "?", "!")) else f"{value}."


def running_text(language: str) -> str:
    of = given.setting(language=language)
    return " ".join(prose(_data(of, _enclosed(of))["papers"]))


def test_english_reads_at_about_grade_eight() -> None:
    text = running_text("en")
    textstat.set_lang("en_US")
    assert len(text.split()) > 600
    indices = textstat.automated_readability_index(text), textstat.coleman_liau_index(text)
    assert sum(indices) / 2 <= HIGHEST_GRADE


def test_french_reads_as_easily() -> None:
    textstat.set_lang("fr_FR")
    ease = textstat.flesch_reading_ease(running_text("fr"))
    textstat.set_lang("en_US")
    assert ease >= LEAST_EASE


@pytest.mark.parametrize("area", AREAS)
def test_both_languages_have_the_same_wordings_with_the_same_variables(area: str) -> None:
    def variables(language: str) -> dict[str, set[str]]:
        file = place_folder("canada") / "wordings" / language / f"{area}.ftl"
        blocks = re.split(r"^(?=[a-z][a-z0-9-]* =)", file.read_text("utf-8"), flags=re.MULTILINE)
        return {b.split(" =")[0]: set(re.findall(r"\$(\w+)", b)) for b in blocks if " =" in b}

    assert variables("en") == variables("fr")


@pytest.mark.parametrize("area", AREAS)
def test_french_sets_no_break_before_a_colon_and_none_before_a_question_mark(area: str) -> None:
    """Usage in Canadian French: Office québécois de la langue française, from memory."""
    for id, text in patterns("fr", area):
        assert " :" not in text, id
        assert not re.search(r"[\s\u00a0][?!;]", text), id
