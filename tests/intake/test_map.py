"""Sheets and columns are matched by name, synonym and likeness; nothing is guessed or dropped."""

from __future__ import annotations

from functools import lru_cache
from pathlib import Path
from typing import Any

import pytest
import yaml

import quarterday.reference
from quarterday.core.file.layout import SHEETS, Column, Sheet
from quarterday.intake.map import MappedSheet, WorkbookMap, corrected, keep, match
from quarterday.intake.profile import LEFT_OUT, Profile, load, save
from quarterday.intake.refusals import Unreadable
from quarterday.intake.vocabulary import heading, normal, sheet_name, targets, unclear
from tests.intake.books import ORGANISATIONS, parsed, plan_of, refusals, said, speech

BUILDINGS = ("account", "id", "name")
COLUMNS = Path(quarterday.reference.__file__).parent / "intake" / "columns.yaml"


def mapped(*headings: str, sheet: str = "Buildings", profile: Profile | None = None) -> WorkbookMap:
    book = parsed({sheet: [headings, *[["x"] * len(headings)] * 2]})
    return match(book, profile) if profile else match(book)


def columns(found: WorkbookMap) -> dict[str, tuple[str, str]]:
    return {m.heading: (m.target, m.how) for s in found.sheets for m in s.matches}


@pytest.mark.parametrize("language", ["en", "fr"])
def test_every_heading_of_the_layout_is_its_own_column(language: str) -> None:
    for sheet in SHEETS:
        headings = [heading(sheet, column, language) for column in sheet.columns]
        found = mapped(*headings, sheet=sheet_name(sheet, language)).sheets[0]
        assert found.sheet is sheet
        assert [m.column for m in found.matches] == list(sheet.columns), sheet.name
        assert not found.unmapped
        assert found.language == language


def test_every_sheet_and_column_of_the_layout_has_a_french_name() -> None:
    """A new field needs its names in reference/intake/columns.yaml, and the schema made anew."""
    missing = [
        f"{sheet.name}: {column.heading}"
        for sheet in SHEETS
        for column in sheet.columns
        if not french_name(sheet, column)
    ]
    assert missing == []


@lru_cache(maxsize=1)
def listed_names() -> dict[str, Any]:
    found: dict[str, Any] = yaml.safe_load(COLUMNS.read_text("utf-8"))
    return found


def french_name(sheet: Sheet, column: Column) -> str | None:
    listed = listed_names()
    here = listed["on_sheet"].get(sheet.name, {}).get(column.heading)
    found = here or listed["columns"].get(column.heading) or {"fr": [None]}
    assert listed["sheets"][sheet.name]["fr"]
    name: str | None = found["fr"][0]
    return name


def test_no_name_of_a_column_stands_for_two_columns_of_one_list() -> None:
    """A synonym that two columns of a sheet share would silently go to the later one."""
    for sheet in SHEETS:
        for name, target in targets(sheet).items():
            assert name == normal(name)
            assert target.column in sheet.columns
        assert not set(targets(sheet)) & set(unclear(sheet)), sheet.name


@pytest.mark.parametrize(
    ("text", "plain"),
    [
        ("N° d'immeuble (pi²)", "no d immeuble pi2"),
        ("Année  de\u00a0construction", "annee de construction"),
        ("year_built", "year built"),
        ("Account #", "account number"),
        ("Coinsurance %", "coinsurance %"),
        ("œuvres d’art", "oeuvres d art"),
    ],
)
def test_names_are_compared_without_accents_case_and_marks(text: str, plain: str) -> None:
    assert normal(text) == plain


def test_a_column_is_found_by_name_synonym_and_likeness() -> None:
    found = mapped(
        "Account #", "ID", "Building nmae", "Year of construction", "Year bilt", "Sprinklered"
    )
    assert columns(found) == {
        "Account #": ("account", "synonym"),
        "ID": ("id", "name"),
        "Building nmae": ("name", "likeness"),
        "Year of construction": ("year built", "synonym"),
        "Sprinklered": ("sprinklers", "synonym"),
    }
    assert [u.heading for u in found.sheets[0].unmapped] == ["Year bilt"]


def test_a_column_taken_by_likeness_is_told_with_its_score() -> None:
    found = mapped(*BUILDINGS, "Roof coverr")
    (told,) = said(found.faults)
    assert told == (
        "Buildings, row 1, “Roof coverr”: This heading was taken for “roof cover” (95 % alike)."
    )


def test_a_column_that_is_like_nothing_is_listed() -> None:
    found = mapped(*BUILDINGS, "Shoe size")
    assert "The column was left out: the layout has none like it." in said(found.faults)[0]


def test_a_name_that_says_too_little_is_refused_with_what_it_may_mean() -> None:
    """An area in square feet read as square metres would be wrong by a factor of eleven."""
    found = mapped(*BUILDINGS, "Area")
    assert [f.severity for f in found.faults] == ["refused"]
    assert "can mean area m2 and area sq ft" in said(found.faults)[0]
    assert "area m2" not in {m.column.heading for m in found.sheets[0].matches}


def test_two_headings_for_one_column_the_surer_wins_and_equals_are_refused() -> None:
    surer = mapped(*BUILDINGS, "building name")
    assert columns(surer)["name"] == ("name", "name")
    assert [f.severity for f in surer.faults] == ["note"]
    equals = mapped("account", "id", "building name", "location name")
    assert "refused" in {f.severity for f in equals.faults}


def test_a_sheet_is_known_by_its_name_in_either_language_with_more_around_it() -> None:
    for name in ("Buildings", "Immeubles", "Buildings (Ontario)", "BÂTIMENTS 2026", "Bulidings"):
        assert mapped(*BUILDINGS, sheet=name).sheets[0].sheet.name == "Buildings"


def test_a_sheet_without_a_telling_name_is_known_by_its_headings() -> None:
    found = mapped("account", "number", "cause", "date of loss", "paid", sheet="Sheet1")
    assert found.sheets[0].sheet.name == "Claims"


def test_a_sheet_that_could_be_two_is_refused_with_both() -> None:
    found = mapped("account", "start", "stage", "coverage", "location", sheet="Sheet1")
    assert not found.sheets
    assert [f.what.id for f in found.faults] == ["intake-sheet-unclear"]


def test_a_sheet_of_something_else_is_left_out_and_told() -> None:
    found = mapped("To do", "Done", sheet="Notes")
    assert not found.sheets
    assert [(f.severity, f.what.id) for f in found.faults] == [("note", "intake-sheet-left-out")]


def test_a_sheet_with_a_known_name_and_no_headings_is_refused() -> None:
    found = mapped("7", "8", sheet="Claims")
    assert [(f.severity, f.what.id) for f in found.faults] == [("refused", "intake-no-headings")]


def test_a_sheet_without_a_column_it_must_have_is_refused() -> None:
    found = mapped("account", "number", "paid", sheet="Claims")
    assert not found.sheets
    missing = [dict(f.what.args)["column"] for f in found.faults if f.severity == "refused"]
    assert [speech().say(m) for m in missing] == ["Cause", "Date of loss"]


@pytest.mark.parametrize("row", [1, 4, 30])
def test_headings_are_found_below_titles_and_remarks(row: int) -> None:
    above = [["Portfolio of buildings", "", "name"]] + [[""]] * (row - 2) if row > 1 else []
    book = parsed({"Buildings": [*above, BUILDINGS, ["0007", "01", "Hall"]]})
    sheet = match(book).sheets[0]
    assert sheet.header_row == row
    assert isinstance(sheet, MappedSheet)


def test_a_profile_goes_before_every_name(tmp_path: Path) -> None:
    profile = Profile(
        sheets={"page 3": "Buildings"},
        columns={
            ("page 3", "area"): "area sq ft",
            ("page 3", "name"): "use",
            ("page 3", "label"): "name",
        },
    )
    found = mapped("account", "id", "Area", "name", "Label", sheet="Page 3", profile=profile)
    assert columns(found)["Area"] == ("area sq ft", "profile")
    assert columns(found)["name"] == ("use", "profile")
    assert columns(found)["Label"] == ("name", "profile")


def test_a_profile_may_leave_sheets_and_columns_out() -> None:
    left = mapped(*BUILDINGS, profile=Profile(sheets={"buildings": LEFT_OUT}))
    assert [f.what.id for f in left.faults] == ["intake-sheet-left-out-by-profile"]
    without = mapped(*BUILDINGS, "use", profile=Profile(columns={("buildings", "use"): LEFT_OUT}))
    assert "use" not in {m.column.heading for m in without.sheets[0].matches}


def test_a_mapping_is_corrected_kept_and_read_again(tmp_path: Path) -> None:
    book = parsed({"Buildings": [(*BUILDINGS, "Area"), ("0007", "01", "Hall", 5000)]})
    profile = corrected(match(book), "Buildings", "Area", "area sq ft")
    save(profile, tmp_path / "p.yaml")
    again = load(tmp_path / "p.yaml")
    assert again == profile
    assert keep(match(book, again)) == profile
    assert not match(book, again).faults


@pytest.mark.parametrize(
    ("text", "id"),
    [
        ("- a list", "intake-profile-broken"),
        ("Page: {sheet: Buildings, colour: red}", "intake-profile-broken"),
        ("Page: {sheet: [", "intake-profile-broken"),
        ("Page: {sheet: Boats}", "intake-profile-sheet"),
        ("Page: {sheet: Buildings, columns: {x: colour}}", "intake-profile-column"),
    ],
)
def test_a_profile_that_names_what_is_not_there_is_refused(
    tmp_path: Path, text: str, id: str
) -> None:
    (tmp_path / "p.yaml").write_text(text, "utf-8")
    with pytest.raises(Unreadable) as caught:
        load(tmp_path / "p.yaml")
    assert caught.value.words.id == id
    assert speech("fr").say(caught.value.words)


def test_a_missing_profile_is_refused(tmp_path: Path) -> None:
    with pytest.raises(Unreadable):
        load(tmp_path / "none.yaml")


def test_areas_in_square_feet_become_square_metres() -> None:
    """5,000 square feet are 464.5 square metres: NIST SP 811 (2008), B.8, 1 ft2 = 0.09290304 m2."""
    done = plan_of(
        {
            "Organisations": ORGANISATIONS,
            "Buildings": [(*BUILDINGS, "Square footage"), ("0007", "01", "Hall", "5 000")],
        }
    )
    building = next(item.record for item in done.items if item.record.kind == "building")
    assert str(building.area_m2) == "464.5"  # type: ignore[attr-defined]
    assert not refusals(done)
