"""Texts, yes and no, choices and lists as people write them."""

from __future__ import annotations

from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterday.core.file.layout import SHEETS, Column, joined, split
from quarterday.intake.cells.answers import (
    ChoiceReader,
    ListReader,
    TextReader,
    YesNoReader,
    guarded,
    marked,
    unguarded,
)
from quarterday.intake.cells.base import BadCell, Readings, Said
from quarterday.intake.parse import CellError, Raw

TEXT = (
    st.text(st.characters(exclude_categories=["Cc", "Cs"]), min_size=1).map(str.strip).filter(bool)
)


def column(sheet: str, field: str) -> Column:
    found = next(s for s in SHEETS if s.name == sheet)
    return next(c for c in found.columns if c.field == field)


NAME = column("Organisations", "name")
ACCOUNT = column("Organisations", "account")
STAGE = column("Terms", "stage")


@pytest.mark.parametrize(
    "yes", ["yes", "Y", "TRUE", "x", "X", "1", 1.0, True, "✓", "☑", "oui", "Oui ", "O", "vrai"]
)
def test_yes_is_read_in_words_and_signs(yes: Raw) -> None:
    assert YesNoReader()(yes) is True


@pytest.mark.parametrize("no", ["no", "N", "FALSE", "0", 0.0, False, "non", "NON", "faux", "aucun"])
def test_no_is_read_in_words_and_signs(no: Raw) -> None:
    assert YesNoReader()(no) is False


@pytest.mark.parametrize("neither", ["maybe", "2", 2.0, "yes and no", CellError("#N/A")])
def test_what_is_neither_yes_nor_no_is_refused(neither: Raw) -> None:
    with pytest.raises(BadCell):
        YesNoReader()(neither)


def test_a_blank_answer_is_not_a_no() -> None:
    assert YesNoReader()("") is Said.BLANK
    assert YesNoReader()("N/A") is Said.UNKNOWN


@pytest.mark.parametrize(
    ("raw", "text"),
    [
        ("  St. Brendan \u00a0", "St. Brendan"),
        (7.0, "7"),
        (12.5, "12.5"),
        (True, "TRUE"),
        ("two\r\nlines", "two\nlines"),
        ("'=1+1", "=1+1"),
        ("'Ohana Hall", "'Ohana Hall"),
        ("5\u202f000 $", "5\u202f000 $"),
    ],
)
def test_a_text_is_read_as_it_stands(raw: Raw, text: str) -> None:
    assert TextReader(NAME)(raw) == text


def test_an_id_is_tidied() -> None:
    assert TextReader(ACCOUNT)("A\u00a0 12") == "A 12"
    assert TextReader(ACCOUNT)("e\u0301") == "é"


@pytest.mark.parametrize(
    ("raw", "shows"),
    [("a\x00b", "U+0000"), ("a\x1bb", "U+001B"), ("a\ud800b", "U+D800"), ("\x85x\x85y", "U+0085")],
)
def test_control_characters_and_halves_of_characters_are_refused_by_name(
    raw: str, shows: str
) -> None:
    with pytest.raises(BadCell) as caught:
        TextReader(NAME)(raw)
    assert caught.value.what.id == "intake-odd-character"
    assert dict(caught.value.what.args)["character"] == shows


def test_a_text_that_a_spreadsheet_made_a_date_of_is_refused() -> None:
    with pytest.raises(BadCell) as caught:
        TextReader(NAME)(date(2024, 1, 2))
    assert caught.value.what.id == "intake-date-for-text"


@given(TEXT)
def test_a_guarded_text_is_read_as_it_was(text: str) -> None:
    assert TextReader(NAME)(guarded(text)) == text


@given(TEXT)
def test_no_guarded_text_starts_a_formula(text: str) -> None:
    """The characters are those OWASP lists for CSV injection (=, +, -, @, tab, carriage return)."""
    assert guarded(text)[0] not in "=+-@\t\r"
    assert unguarded(guarded(text)) == text


@given(TEXT)
def test_a_marked_text_is_read_as_it_was(text: str) -> None:
    assert unguarded(marked(text)) == text


@pytest.mark.parametrize(
    ("text", "stage"),
    [
        ("issued", "issued"),
        ("Expiring", "issued"),
        ("expirante", "issued"),
        ("En vigueur", "issued"),
        ("QUOTE", "offered"),
        ("soumission", "offered"),
        ("demande", "requested"),
        ("isued", "issued"),
        ("offerred", "offered"),
    ],
)
def test_a_choice_is_read_by_id_synonym_and_likeness(text: str, stage: str) -> None:
    assert ChoiceReader("terms", STAGE, Readings())(text) == stage


def test_a_choice_in_other_words_is_told_and_its_own_id_is_not() -> None:
    seen = Readings()
    reader = ChoiceReader("terms", STAGE, seen)
    reader("issued")
    assert not seen.choices
    reader("Expiring")
    assert [(said, taken.id) for said, taken in seen.choices] == [("Expiring", "issued")]


def test_what_is_no_choice_is_refused_with_the_choices() -> None:
    with pytest.raises(BadCell) as caught:
        ChoiceReader("terms", STAGE, Readings())("cancelled")
    assert caught.value.what.id == "intake-not-a-choice"
    assert len(dict(caught.value.remedy.args)["choices"]) == 3  # type: ignore[arg-type]


def test_the_same_word_means_what_its_column_says() -> None:
    contact, interest = column("Contacts", "role"), column("Interests", "role")
    assert ChoiceReader("contact", contact, Readings())("Trésorière") == "treasurer"
    assert ChoiceReader("interest", interest, Readings())("créancier hypothécaire") == "lender"
    status = column("Claims", "status")
    assert ChoiceReader("claim", status, Readings())("Fermé") == "closed"


def test_not_known_is_the_choice_unknown_where_there_is_one() -> None:
    basis = column("Valuations", "basis")
    assert ChoiceReader("valuation", basis, Readings())("N/A") == "unknown"
    assert ChoiceReader("terms", STAGE, Readings())("N/A") is Said.UNKNOWN


def test_every_choice_is_read_by_its_own_id() -> None:
    for sheet in SHEETS:
        for found in sheet.columns:
            for choice in found.choices:
                if found.kind == "choice":
                    reader = ChoiceReader(sheet.record.kind, found, Readings())
                    assert reader(choice) == choice, (sheet.name, found.field)


FEATURES = column("Buildings", "special_features")
CAUSES = column("Coverages", "excluded_causes")
DAMAGES = column("Coverages", "damages")


def test_a_list_is_read_between_semicolons_and_lines() -> None:
    reader = ListReader("building", FEATURES, Readings())
    assert reader("orgue; vitraux, nord\nclocher;") == ("orgue", "vitraux, nord", "clocher")
    assert reader("none") == ()
    assert reader("aucun") == ()
    assert reader("") is Said.BLANK


def test_a_list_of_ids_or_choices_may_have_commas() -> None:
    assert ListReader("terms", CAUSES, Readings())("flood, sewer backup") == (
        "flood",
        "sewer backup",
    )
    assert ListReader("terms", DAMAGES, Readings())("punitifs, exemplaires") == (
        "punitive",
        "exemplary",
    )
    assert ListReader("terms", DAMAGES, Readings())("N/A") is Said.UNKNOWN


@given(st.lists(TEXT, max_size=5))
def test_a_list_survives_any_text_in_its_items(items: list[str]) -> None:
    kept = tuple(item.replace("\n", " ").strip() for item in items)
    kept = tuple(item for item in kept if item)
    assert split(joined(kept)) == kept
