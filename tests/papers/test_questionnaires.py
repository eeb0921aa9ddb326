"""The forms that ask: every question once in a package, nothing declared in advance, ids stored."""

from __future__ import annotations

import re
from collections.abc import Iterable
from datetime import date
from decimal import Decimal

import pytest

from quarterday.catalogue.load import reference
from quarterday.core.file.records import (
    Building,
    Claim,
    Contact,
    Decision,
    Interest,
    Operations,
    Organisation,
    Record,
    Terms,
)
from quarterday.core.file.records.terms import Coverage, Option
from quarterday.core.review.case import Case
from quarterday.core.review.review import review_of
from quarterday.core.review.rules.people import STEPS
from quarterday.core.terms.agreed import option_id
from quarterday.papers.abuse_form import data as abuse
from quarterday.papers.asking import columns
from quarterday.papers.copies_for_lenders import data as copies
from quarterday.papers.coverage_summary import data as summary
from quarterday.papers.decisions_form import data as decisions
from quarterday.papers.fields import Field, field_parts
from quarterday.papers.interests_form import data as interests
from quarterday.papers.operations_form import data as operations
from quarterday.papers.options import data as options_paper
from quarterday.papers.package import _data, _enclosed
from quarterday.papers.setting import Data, Setting
from quarterday.papers.statement_of_values import data as statement
from quarterday.papers.water_form import data as water

from . import given

LANGUAGES = ("en", "fr")
RENEWAL = date(2027, 1, 15)


def described(of: Setting) -> dict[str, Field]:
    return {field.name: field for field in of.fields.described}


def whole(id: str, language: str = "en") -> dict[str, Field]:
    """Return every field of a whole package."""
    of = given.setting(id, language)
    _data(of, _enclosed(of))
    return described(of)


def made(*records: Record, language: str = "en") -> Setting:
    """Return the setting of a file of few records, in Ontario, renewing in January."""
    organisation = Organisation(name="Quiet Hall Society", province="ON", renewal_date=RENEWAL)
    file = given.file_of("ASK-1", [organisation, *records])
    case = Case(file, reference("canada"), given.AS_OF)
    return Setting(review_of(case), case, given.brokerage(), language, 1, given.AS_OF, None)


def offer(*coverages: Coverage, options: Iterable[Option] = ()) -> Terms:
    return Terms(
        stage="offered", start=RENEWAL, end=date(2028, 1, 15), coverages=coverages,
        options=tuple(options),
    )  # fmt: skip


# What you do


def test_the_operations_form_names_every_question_of_the_profile() -> None:
    asked = [name for part in operations.PARTS.values() for name in part]
    assert len(asked) == len(set(asked))
    assert {*asked, "notes", "confirmed_on"} == set(Operations.model_fields)


def test_every_question_of_the_profile_is_asked_once_in_a_package() -> None:
    """What the declaration asks is not asked again; a package without it asks all on one form."""
    seen = set()
    for id in given.book():
        of = given.setting(id)
        inside = {paper for paper, _ in _enclosed(of)}
        if "operations-form" not in inside:
            continue
        names = [n for n in whole(id) if n.startswith("operations.")]
        assert len(names) == len(Operations.model_fields) - 1  # all but the day of confirming
        seen.add("abuse-form" in inside)
    assert seen == {True, False}


@pytest.mark.parametrize("language", LANGUAGES)
def test_yes_no_and_not_known_are_stored_alike_in_both_languages(language: str) -> None:
    found = whole(given.FLAGSHIP, language)
    file = given.book()[given.FLAGSHIP]
    for name in (n for n, c in columns(Operations).items() if c.kind == "yes-no"):
        field, value = found[f"operations.{name}"], getattr(file.operations, name)
        assert [id for id, _ in field.options] == ["yes", "no", "unknown"]
        assert field.value == {True: "yes", False: "no", None: ""}[value]


def test_shares_are_written_in_percent_and_amounts_without_cents() -> None:
    profile = Operations(
        giving_kept=Decimal("0.625"), income_growth=Decimal("-0.02"),
        revenue_rents=Decimal("46500.00"),
    )  # fmt: skip
    of = made(profile, language="fr")
    operations.data(of)
    found = described(of)
    assert found["operations.giving_kept"].value == "62,5%"
    assert found["operations.income_growth"].value == "-2%"
    assert found["operations.revenue_rents"].value == "46500"


# Water


def burst(number: str, location: str | None, day: date = date(2024, 3, 1)) -> Claim:
    return Claim(
        number=number, cause="water-escape", date_of_loss=day, location=location,
        paid=Decimal(9000),
    )  # fmt: skip


def test_each_place_with_a_water_claim_is_asked_about_with_its_own_claims() -> None:
    for id, file in given.book().items():
        of = given.setting(id)
        if water.reason(of) is None:
            continue
        rows = [row for place in water.data(of)["places"] for row in place["claims"]]
        wet = reference("canada").water_causes
        recent = [
            c for c in file.claims
            if c.cause in wet and c.date_of_loss >= of.review.renewal.replace(
                year=of.review.renewal.year - 10)
        ]  # fmt: skip
        assert len(rows) == len(recent)


def test_a_water_claim_at_no_named_place_still_has_its_questions() -> None:
    of = made(burst("1", None))
    (place,) = water.data(of)["places"]
    assert place["heading"] == "Quiet Hall Society"
    names = {field_parts(name)[1] for name in described(of) if name.startswith("water.")}
    assert names == {"*"}
    assert not [name for name in described(of) if name.startswith("buildings.")]


def test_a_building_s_protection_is_filled_in_from_the_file() -> None:
    hall = Building(id="hall", name="Hall", sump_pump=True, water_sensors=False)
    of = made(hall, burst("1", "hall"))
    water.data(of)
    found = described(of)
    values = {name: found[f"buildings.hall.{name}"].value for name in water.FACTS}
    assert values == dict.fromkeys(water.FACTS, "") | {"sump_pump": "yes", "water_sensors": "no"}


def test_the_statement_of_values_leaves_water_to_the_questionnaire_and_says_so() -> None:
    for id in given.book():
        of = given.setting(id)
        told = statement.data(of)["buildings"]
        wet = water.places(of)
        asked = {tuple(field_parts(n)[1:]) for n in described(of) if n.startswith("buildings.")}
        for building, part in zip(statement._buildings(of), told, strict=True):
            elsewhere = building.id in wet
            assert ((building.id, "sump_pump") in asked) != elsewhere
            assert any("water questionnaire" in text for _, text in part["known"]) == elsewhere


# Abuse prevention


def test_nothing_is_declared_before_the_chair_declares_it() -> None:
    of = given.setting()
    abuse.data(of)
    declared = [f for f in of.fields.described if f.name.startswith("abuse.")]
    assert declared
    assert all(field.value == "" for field in declared)


def test_every_step_can_honestly_be_answered_with_not_yet() -> None:
    of = given.setting()
    rows = [row for part in abuse.data(of)["parts"] for row in part["rows"]]
    assert [row["options"] for row in rows] == [rows[0]["options"]] * len(rows)
    labels = [option["label"] for option in rows[0]["options"]]
    assert labels == ["we do this", "not yet", "does not apply"]


def test_the_declaration_asks_for_the_days_that_the_review_looks_at() -> None:
    assert set(abuse.DATES) == {step.field for step in STEPS}
    of = given.setting()
    abuse.data(of)
    held = of.file.operations.prevention_plan_reviewed_on
    assert described(of)["operations.prevention_plan_reviewed_on"].value == str(held or "")


def test_emergency_services_come_before_every_question_and_each_standard_has_its_publisher() -> (
    None
):
    """Published guidance: Volunteer Alberta (more than one reference check); Scouts Canada, BP&P
    section 3000 (record checks every three years); Ontario child care rules (every five years);
    Coaching Association of Canada (Rule of Two); The Screening Handbook, Volunteer Canada for
    Public Safety Canada, 2012 (ten steps)."""
    told = abuse.data(given.setting())
    assert "emergency services" in told["first"][0].lower()
    notes = {row["label"]: row["note"] for part in told["parts"] for row in part["rows"]}
    shown = [note for note in notes.values() if note]
    assert len(shown) == len(abuse.NOTED)
    publishers = ("Volunteer Alberta", "Scouts Canada", "Coaching Association of Canada")
    assert all(note.startswith("Guidance:") for note in shown)
    assert all(any(p in note for p in publishers) for note in shown)
    assert any("Screening Handbook" in text for text in told["notes"])


# Decisions


def questions(told: Data) -> list[Data]:
    return [item for part in told["parts"] for item in part["items"]]


@pytest.mark.parametrize("language", LANGUAGES)
def test_each_decision_and_each_priced_option_has_the_four_answers(language: str) -> None:
    for id in given.book():
        of = given.setting(id, language)
        if decisions.reason(of) is None:
            continue
        items = questions(decisions.data(of))
        assert len(items) == len(of.review.agenda) + len(decisions.priced(of))
        for item in items:
            ids = [option["id"] for option in item["answer"]["options"]]
            assert ids == ["take-it", "leave-it", "later", "ask-us"]


def test_the_name_of_an_answer_s_field_gives_back_the_question() -> None:
    of = given.setting()
    decisions.data(of)
    answered = [field_parts(n) for n in described(of) if n.endswith(".answer")]
    asked = [finding.id for finding in of.review.agenda]
    asked += [option_id(option) for option in decisions.priced(of)]
    assert [question for _, question, _ in answered] == asked


def test_an_option_that_a_decision_asks_about_is_not_asked_twice() -> None:
    seen = 0
    for id in given.book():
        of = given.setting(id)
        alone = {f.subject.key for f in of.review.agenda if f.subject.kind == "coverage"}
        for option in decisions.priced(of):
            assert option.price is not None
            assert option.coverage not in alone
            seen += 1
    assert seen > 10


def test_an_answer_on_file_is_filled_in_with_its_words() -> None:
    option = Option(coverage="overland-flood", limit=Decimal(250_000), price=Decimal(780))
    question = option_id(option)
    said = Decision(
        renewal=RENEWAL, question=question, answer="leave-it", decided_on=date(2026, 11, 20),
        by="Ann Alder", words="Not this year",
    )  # fmt: skip
    of = made(offer(Coverage(coverage="contents"), options=[option]), said)
    items = questions(decisions.data(of))
    found = described(of)
    filled = [(found[n].value) for n in found if field_parts(n)[1] == question]
    assert items
    assert filled == ["leave-it", "Not this year"]


def test_an_option_shows_its_percentage_on_the_form_and_on_the_paper_alike() -> None:
    percent = Option(
        coverage="earthquake", limit=Decimal(900_000), price=Decimal(780),
        deductible_percent=Decimal("0.05"), deductible_percent_of="value",
        deductible_minimum=Decimal(10_000),
    )  # fmt: skip
    of = made(offer(Coverage(coverage="contents"), options=[percent]))
    (asked,) = [i for part in decisions.data(of)["parts"] if part["heading"] == of.say(
        "decisions-form-options") for i in part["items"]]  # fmt: skip
    (shown,) = options_paper.data(of)["items"]
    said = ("Deductible", "5% of the value, at least $10,000")
    assert said in [tuple(fact) for fact in asked["facts"]]
    assert said in [tuple(fact) for fact in shown["facts"]]


def test_an_option_without_a_price_is_not_put_to_the_board() -> None:
    unpriced = Option(coverage="overland-flood")
    of = made(offer(Coverage(coverage="contents"), options=[unpriced]))
    assert decisions.priced(of) == ()


# Lenders and lessors


def lender(**fields: object) -> Interest:
    told = {"id": "bank", "role": "lender", "name": "Harbour Light Credit Union", **fields}
    return Interest.model_validate(told)


def test_a_lender_s_copy_and_the_checklist_say_a_percentage_deductible_in_full() -> None:
    """The copy showed a dash, and the checklist a percentage of nobody knew what."""
    hall = Building(id="hall", name="Hall")
    line = Coverage(
        coverage="building", location="hall", limit=Decimal(900_000),
        deductible_percent=Decimal("0.02"), deductible_percent_of="value",
        deductible_minimum=Decimal(5_000),
    )  # fmt: skip
    said = "2% of the value, at least $5,000"
    of = made(hall, offer(line), lender(location="hall", status="active"))
    (page,) = copies.data(of)["copies"]
    assert [row[2] for row in page["rows"]] == [said]
    rows = [row for family in summary.data(of)["families"] for row in family["rows"]]
    assert said in [row.get("deductible") for row in rows]


@pytest.mark.parametrize(
    ("status", "filled"), [("active", "active"), ("paid-off", "paid-off"), ("unknown", "")]
)
def test_what_nobody_knows_of_an_interest_is_not_filled_in(status: str, filled: str) -> None:
    of = made(lender(status=status))
    interests.data(of)
    field = described(of)["interests.bank.status"]
    assert field.value == filled
    assert [id for id, _ in field.options] == ["active", "paid-off", "unknown"]


def test_an_interest_is_filled_in_and_a_new_one_is_empty() -> None:
    hall = Building(id="hall", name="Hall")
    of = made(hall, lender(location="hall", amount="125000.00", reference="L-1"))
    told = interests.data(of)
    found = {name: field.value for name, field in described(of).items()}
    assert found["interests.bank.location"] == "hall"
    assert found["interests.bank.amount"] == "125000"
    assert found["interests.bank.reference"] == "L-1"
    assert {v for n, v in found.items() if n.startswith("interests.new-1.")} == {""}
    assert [item["status"] is None for item in told["items"]] == [False, True]


def test_a_discharge_asks_for_the_day_and_the_letter() -> None:
    of = made(lender(status="paid-off"))
    item = interests.data(of)["items"][0]
    assert "have it confirm this in writing" in item["discharge"]
    assert {"interests.bank.paid_off_on", "interests.bank.letter"} <= set(described(of))


# All forms


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("id", [given.FLAGSHIP, given.RENTER])
def test_what_a_screen_reader_says_of_a_field_is_said_of_no_other(id: str, language: str) -> None:
    """But who filled a form in, which each form asks alike."""
    tips = [f.tip for n, f in whole(id, language).items() if ".confirmed." not in n]
    assert len(set(tips)) == len(tips)


def test_names_of_fields_begin_with_what_the_file_calls_things_and_survive_a_year() -> None:
    """The same file reviewed a year on has the same names: none holds a date or a number of it."""
    for name in whole(given.FLAGSHIP):
        first = field_parts(name)[0]
        assert re.fullmatch(r"[a-z-]+", first)
        assert "2026" not in name
        assert "2027" not in name


def test_every_form_says_who_filled_it_in() -> None:
    of = given.setting(given.FLAGSHIP)
    forms = [p for p, _ in _enclosed(of) if p.endswith("-form") or p == "statement-of-values"]
    names = set(whole(given.FLAGSHIP))
    for form in forms:
        assert {f"{form}.confirmed.{part}" for part in ("by", "role", "on")} <= names


def test_a_person_s_name_with_a_full_stop_does_not_break_a_form() -> None:
    of = made(Contact(id="c.1", name="A. B. Cole", is_key=True), burst("W.1", None))
    _data(of, _enclosed(of))
    assert all(field_parts(name) for name in described(of))
