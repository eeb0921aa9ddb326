"""The lists of names people use are sound: nothing stands for two things, nothing for none."""

from __future__ import annotations

from functools import lru_cache
from pathlib import Path
from typing import Any, Literal

import pytest
import yaml
from babel.dates import get_month_names

import quarterday.reference
from quarterday.catalogue.load import reference
from quarterday.core.file.layout import SHEETS
from quarterday.core.file.records import Claim
from quarterday.intake.vocabulary import (
    Names,
    choices,
    heading,
    marks_for,
    months,
    normal,
    sheet_name,
    sheet_names,
    words_for,
)
from tests.intake.books import ORGANISATIONS, plan_of

FOLDER = Path(quarterday.reference.__file__).parent / "intake"
CATALOGUES = ("coverage", "cause", "province")


@lru_cache(maxsize=2)
def listed(name: str) -> dict[str, Any]:
    found: dict[str, Any] = yaml.safe_load((FOLDER / name).read_text("utf-8"))
    return found


def known(catalogue: str) -> dict[str, tuple[str, str]]:
    places = reference()
    entries: Any = getattr(places, f"{catalogue}s")
    return {id: (entry.name.en, entry.name.fr) for id, entry in entries.items()}


@pytest.mark.parametrize("catalogue", CATALOGUES)
def test_every_entry_of_the_reference_is_found_by_its_id_and_both_names(catalogue: str) -> None:
    names = Names(reference()).of(catalogue)
    for id, both in known(catalogue).items():
        assert names[normal(id)] == id
        for name in both:
            assert names[normal(name)] == id, (catalogue, name)


@pytest.mark.parametrize("catalogue", CATALOGUES)
def test_no_word_of_the_list_stands_for_two_entries_or_for_none(catalogue: str) -> None:
    seen: dict[str, str] = {}
    for id, words in listed("values.yaml")[catalogue].items():
        assert id in known(catalogue), f"there is no {catalogue} {id}"
        for word in words:
            assert seen.setdefault(normal(word), id) == id, (catalogue, word)


def test_no_word_stands_for_two_choices_of_one_column() -> None:
    for sheet in SHEETS:
        for column in sheet.columns:
            if not column.choices:
                continue
            lists = listed("values.yaml")["choices"]
            words = (
                lists.get(f"{sheet.record.kind}_{column.field}") or lists.get(column.field) or {}
            )
            seen: dict[str, str] = {}
            for id in column.choices:
                for word in words.get(id, ()):
                    assert seen.setdefault(normal(word), id) == id, (sheet.name, column.field, word)


def test_every_listed_choice_is_one_of_the_layout() -> None:
    fields = {c.field for s in SHEETS for c in s.columns} | {
        f"{s.record.kind}_{c.field}" for s in SHEETS for c in s.columns
    }
    choices_of: dict[str, set[str]] = {}
    for sheet in SHEETS:
        for column in sheet.columns:
            for name in (column.field, f"{sheet.record.kind}_{column.field}"):
                choices_of.setdefault(name, set()).update(column.choices)
    for field, words in listed("values.yaml")["choices"].items():
        assert field in fields, field
        assert set(words) <= choices_of[field], field


def test_every_listed_column_and_sheet_is_one_of_the_layout() -> None:
    data = listed("columns.yaml")
    headings = {sheet.name: set(sheet.by_heading) for sheet in SHEETS}
    assert set(data["sheets"]) == set(headings)
    assert set(data["columns"]) <= set().union(*headings.values())
    for sheet, columns in data["on_sheet"].items():
        assert set(columns) <= headings[sheet], sheet
    for unit in data["units"]:
        assert unit["column"] in set().union(*headings.values())


def test_yes_no_and_not_known_are_three_things() -> None:
    lists = ("yes", "no", "unknown")
    marks = [marks_for(name) for name in lists]
    words = [words_for(name) for name in lists]
    for kind in (marks, words):
        assert not kind[0] & kind[1]
        assert not kind[0] & kind[2]
        assert not kind[1] & kind[2]


@pytest.mark.parametrize("language", ["en", "fr"])
@pytest.mark.parametrize("width", ["wide", "abbreviated"])
def test_months_are_known_by_the_names_that_babel_has(
    language: str, width: Literal["wide", "abbreviated"]
) -> None:
    """Names from Babel's CLDR data, as a sentence and alone."""
    contexts: tuple[Literal["format", "stand-alone"], ...] = ("format", "stand-alone")
    for context in contexts:
        for number, name in get_month_names(width, context, f"{language}_CA").items():
            assert months()[normal(name)] == number


def test_a_choice_is_known_in_every_case_and_with_spaces_for_hyphens() -> None:
    for sheet in SHEETS:
        for column in sheet.columns:
            for id in column.choices:
                assert (
                    choices(sheet.record.kind, column)[normal(id.replace("-", " ").upper())] == id
                )


def test_sheets_are_known_by_their_names_in_both_languages() -> None:
    for sheet in SHEETS:
        for language in ("en", "fr"):
            assert sheet.name in sheet_names()[normal(sheet_name(sheet, language))]


def test_french_headings_of_one_sheet_differ() -> None:
    for sheet in SHEETS:
        headings = [normal(heading(sheet, column, "fr")) for column in sheet.columns]
        assert len(set(headings)) == len(headings), sheet.name


def test_common_words_of_the_trade_are_understood() -> None:
    """Common practice, no source: what brokers write in loss runs and schedules."""
    headings = ("account", "number", "cause", "date of loss")
    causes = {
        "Dégât d'eau": "water-escape",
        "refoulement d'égouts": "sewer-backup",
        "Hail": "windstorm-hail",
        "Burglary": "theft",
        "slip and fall": "injury-on-premises",
        "incendie": "fire",
    }
    rows = [headings, *(("0007", str(n), text, "2024-01-01") for n, text in enumerate(causes))]
    done = plan_of({"Organisations": ORGANISATIONS, "Claims": rows})
    found = [i.record.cause for i in done.items if isinstance(i.record, Claim)]
    assert found == list(causes.values())
