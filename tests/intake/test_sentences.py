"""Every sentence of intake can be said in both languages, and reads well."""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from fluent.syntax import parse
from fluent.syntax.ast import Message, VariableReference
from fluent.syntax.visitor import Visitor

import quarterday.intake
from quarterday.core.file.layout import SHEETS
from quarterday.intake.labels import choice, field_label
from quarterday.intake.map import match
from quarterday.intake.preview import understood
from tests.intake.books import parsed, plan_of, previewed, speech
from tests.intake.ugly import build

SOURCE = Path(quarterday.intake.__file__).parent
WORDINGS = SOURCE.parent / "reference" / "canada" / "wordings"
LONGEST = 25  # words in an English sentence
MESSAGES = {
    language: {
        entry.id.name: entry
        for entry in parse((WORDINGS / language / "intake.ftl").read_text("utf-8")).body
        if isinstance(entry, Message)
    }
    for language in ("en", "fr")
}


class _Variables(Visitor):
    def __init__(self) -> None:
        self.names: set[str] = set()

    def visit_VariableReference(self, node: VariableReference) -> None:  # noqa: N802 - the visitor's name
        self.names.add(node.id.name)


def variables(message: Message) -> set[str]:
    found = _Variables()
    found.visit(message)
    return found.names


def used() -> set[str]:
    """Return the ids of wordings that the code names in full."""
    text = "\n".join(file.read_text("utf-8") for file in SOURCE.rglob("*.py"))
    bad = set(re.findall(r'\bbad\(\s*"([a-z-]+)"', text))
    named = set(re.findall(r'"(intake-[a-z-]+)"', text))
    read = {f"intake-read-{id}" for id in re.findall(r'\.add\("([a-z-]+)"', text)}
    return named | read | {f"intake-{id}" for id in bad} | {f"intake-{id}-remedy" for id in bad}


def test_both_languages_have_the_same_wordings_with_the_same_variables() -> None:
    assert MESSAGES["en"].keys() == MESSAGES["fr"].keys()
    for id, message in MESSAGES["en"].items():
        assert variables(message) == variables(MESSAGES["fr"][id]), id


def test_every_wording_that_the_code_names_is_there() -> None:
    assert used() - MESSAGES["en"].keys() == set()


def test_english_sentences_are_short() -> None:
    for id, message in MESSAGES["en"].items():
        if id.startswith("intake-map"):
            continue
        text = re.sub(r"\{[^{}]*\}", "x", (WORDINGS / "en/intake.ftl").read_text("utf-8"))
        line = next(line for line in text.splitlines() if line.startswith(f"{id} ="))
        for sentence in re.split(r"(?<=[.?!]) ", line.split("=", 1)[1].strip()):
            assert len(sentence.split()) <= LONGEST, (id, sentence)
        assert message.value


@pytest.mark.parametrize("language", ["en", "fr"])
def test_every_field_and_choice_of_the_layout_has_a_name(language: str) -> None:
    for sheet in SHEETS:
        for column in sheet.columns:
            assert speech(language).say(field_label(column.field, sheet.record.kind))
            for id in column.choices:
                named = speech(language).say(choice(sheet.record.kind, column.field, id))
                assert named, (sheet.name, column.field, id)


@pytest.mark.parametrize("language", ["en", "fr"])
def test_the_preview_of_an_ugly_workbook_is_said_whole(language: str, tmp_path: Path) -> None:
    from quarterday.intake.parse import parse as read

    build(tmp_path / "ugly.xlsx")
    book = read(tmp_path / "ugly.xlsx")
    lines = previewed(plan_of(book), language)
    lines += [speech(language).say(line) for line in understood(match(book))]
    for line in lines:
        assert "{" not in line
        assert "None" not in line
        assert "\n" not in line


def test_french_is_said_where_french_is_asked() -> None:
    done = plan_of(parsed({"Organisations": [("compte", "nom", "province"), ("7", "A", "ZZ")]}))
    assert previewed(done, "fr")[1] == (
        "Organisations, ligne 2, «\u00a0province\u00a0», «\u00a0ZZ\u00a0»\u00a0: Aucune province ni"
        " aucun territoire ne s'appelle «\u00a0ZZ\u00a0». Écrivez ses deux"
        " lettres, par exemple ON ou QC."
    )
