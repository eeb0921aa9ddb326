"""The forms: everything asked that must be, filled in as the file has it, and nobody left out."""

from __future__ import annotations

from datetime import date
from decimal import Decimal

import pytest

from quarterday.core.file.records import Authority, Building
from quarterday.papers.asking import written
from quarterday.papers.contacts_form import data as contacts
from quarterday.papers.fields import Field
from quarterday.papers.setting import MINUS, Setting
from quarterday.papers.statement_of_values import data as statement

from . import given

LANGUAGES = ("en", "fr")


def described(of: Setting) -> dict[str, Field]:
    return {field.name: field for field in of.fields.described}


def filled(paper: str, id: str = given.FLAGSHIP, language: str = "en") -> dict[str, Field]:
    of = given.setting(id, language)
    (contacts if paper == contacts.ID else statement).data(of)
    return described(of)


def test_who_has_left_is_not_asked_about_and_two_places_are_empty() -> None:
    of = given.setting()
    told = contacts.data(of)
    names = [person["heading"] for person in told["people"]]
    assert not any("Douglas Fenner" in name for name in names)  # left in May, by the demo book
    assert len(names) == len(of.contacts()) + contacts.BLANKS


def test_a_tick_stands_where_somebody_may_decide_on_the_review_s_day() -> None:
    of = given.setting()
    contacts.data(of)
    for name, field in described(of).items():
        if not name.startswith("authorities."):
            continue
        _, contact, area = name.split(".")
        held = [a for a in of.file.all(Authority) if (a.contact, a.area) == (contact, area)]
        running = any(
            (a.since is None or a.since <= of.review.as_of)
            and (a.until is None or of.review.as_of < a.until)
            for a in held
        )
        assert (field.value == "Yes") == running


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_choice_stores_the_same_id_in_either_language(language: str) -> None:
    found = filled(contacts.ID, language=language)
    role = found["contacts.treasurer.role"]
    assert role.value == "treasurer"
    assert {id for id, _ in role.options} >= {"", "treasurer", "chair", "other"}
    assert dict(role.options)["treasurer"] != "treasurer" or language == "en"


def test_every_tip_names_the_field_and_the_person_or_building() -> None:
    """A tip is what a screen reader says: it must tell one telephone from another."""
    for paper in (contacts.ID, statement.ID):
        tips = [field.tip for field in filled(paper).values()]
        assert len(set(tips)) == len(tips)


def test_a_building_that_is_only_rented_and_not_insured_is_not_asked_about() -> None:
    for id, file in given.book().items():
        of = given.setting(id)
        names = [name.split(".") for name in filled(statement.ID, id)]
        asked = {parts[1] for parts in names if parts[0] == "buildings"}
        insured = {line.location for line in of.case.terms.coverages} if of.case.terms else set()
        for building in file.all(Building):
            wanted = building.ownership != "rent" or building.id in insured
            assert (building.id in asked) == wanted, (id, building.id)


def test_yes_no_and_not_known_are_three_different_answers() -> None:
    hall = Building(id="hall", name="Hall", sprinklers=True, fire_alarm=False)
    for name, expected in (("sprinklers", "yes"), ("fire_alarm", "no"), ("heritage", "")):
        assert written(getattr(hall, name), "en") == expected


def test_amounts_dates_and_lists_are_written_as_they_are_read_back() -> None:
    hall = Building.model_validate(
        {
            "id": "hall", "name": "Hall", "area_m2": "410.50",
            "special_features": ["organ", "bell"],
            "unoccupied_since": date(2026, 9, 1),
        }
    )  # fmt: skip
    assert written(hall.area_m2, "en") == "410.5"
    assert written(hall.area_m2, "fr") == "410,5"
    assert written(hall.special_features, "en") == "organ; bell"
    assert written(hall.unoccupied_since, "en") == "2026-09-01"
    assert written(Decimal("284000.00"), "en") == "284000"
    assert written(Decimal("0.025"), "fr", "ratio") == "2,5%"


def test_beside_the_sum_to_state_stand_today_s_sum_and_the_estimated_cost() -> None:
    of = given.setting()
    told = statement.data(of)
    hall = next(b for b in told["buildings"] if b["heading"] == "Parish hall")
    note = hall["parts"][-1]["fields"][0]["note"]
    picture = next(p for p in of.pictures if p.building.name == "Parish hall")
    assert picture.costs is not None
    assert of.money(picture.sum_insured.money) in note
    assert of.money(picture.costs.rebuilt.money) in note


def test_the_sum_to_insure_is_left_for_the_leaders_to_state() -> None:
    sums = [f for name, f in filled(statement.ID).items() if name.startswith("sums.")]
    assert sums
    assert all(field.value == "" for field in sums)


@pytest.mark.parametrize(
    ("values", "written"),
    [(["1234.5", "10"], "1,234.50"), (["1234", "10"], "1,234"), (["-1234.5"], f"{MINUS}1,234.50")],
)
def test_a_table_shows_all_cents_or_none(values: list[str], written: str) -> None:
    amounts = [Decimal(value) for value in values]
    assert given.setting().amounts(amounts)(amounts[0]) == written


def test_a_sentence_gets_one_stop_and_a_capital() -> None:
    assert Setting.sentence("the limit of the cover") == "The limit of the cover."
    assert Setting.sentence("Is it so?") == "Is it so?"
    assert Setting.sentence("") == ""
