"""What a load would add, change, leave as it is, ask and refuse."""

from __future__ import annotations

from datetime import date
from decimal import Decimal
from typing import Any

import pytest

from quarterday.core.file.fold import File
from quarterday.core.file.records import (
    BY_KIND,
    Authority,
    Building,
    Claim,
    Contact,
    Interest,
    Operations,
    Organisation,
    Record,
    Valuation,
)
from quarterday.intake.plan import NotAccepted, Plan
from tests.intake.books import (
    ORGANISATIONS,
    Rows,
    Sheets,
    after,
    file_of,
    notes,
    parsed,
    plan_of,
    previewed,
    refusals,
    said,
    speech,
)

BRENDAN = Organisation(name="St. Brendan", province="ON")
HALL = Building(id="01", name="Hall", year_built=1921, roof_year=2001, sprinklers=False)
CLAIM = Claim(
    number="C-1",
    cause="fire",
    date_of_loss=date(2024, 5, 5),
    paid=Decimal(900),
    outstanding=Decimal(100),
    status="open",
    valued_on=date(2025, 9, 30),
)
BUILDINGS = ("account", "id", "name", "year built", "roof year", "sprinklers")
CLAIMS = (
    "account",
    "number",
    "cause",
    "date of loss",
    "paid",
    "outstanding",
    "status",
    "valued on",
)


def on_file(*records: Record) -> dict[str, File]:
    return {"0007": file_of("0007", [BRENDAN, *records])}


def changes(done: Plan) -> dict[str, tuple[Any, Any]]:
    return {c.field: (c.old, c.new) for item in done.items for c in item.changes}


def record(done: Plan, kind: str) -> Any:
    return next(item.record for item in done.items if item.record.kind == kind)


def test_a_new_account_is_planned_record_by_record_with_its_rows() -> None:
    book = parsed(
        {"Organisations": ORGANISATIONS, "Buildings": [BUILDINGS, ("0007", "01", "Hall")]}
    )
    done = plan_of(book)
    assert [(i.account, i.status, i.record.kind) for i in done.items] == [
        ("0007", "new", "organisation"),
        ("0007", "new", "building"),
        ("0012", "new", "organisation"),
    ]
    origin = done.items[1].origin
    assert (origin.way, origin.document, origin.name) == ("workbook", book.document, "book.xlsx")
    assert [(p.sheet, p.row) for p in origin.places] == [("Buildings", 2)]


def test_drafts_hold_the_records_as_the_file_will_keep_them() -> None:
    drafts = plan_of({"Organisations": ORGANISATIONS}).drafts()
    assert list(drafts) == ["0007", "0012"]
    draft = drafts["0007"][0]
    assert (draft.act, draft.kind, draft.key) == ("load", "organisation", "")
    assert BY_KIND[draft.kind].read(draft.body or "") == BRENDAN


def test_loading_twice_changes_nothing() -> None:
    book = parsed(
        {
            "Organisations": ORGANISATIONS,
            "Buildings": [BUILDINGS, ("0007", "01", "Hall", 1921, "N/A", "yes")],
            "Claims": [
                CLAIMS,
                ("0007", "C-1", "fire", "2024-05-05", 900, 100, "open", "2025-09-30"),
            ],
        }
    )
    files = after(plan_of(book))
    again = plan_of(book, files)
    assert {item.status for item in again.items} == {"unchanged"}
    assert again.drafts() == {}


def test_a_change_is_told_field_by_field_with_old_and_new() -> None:
    done = plan_of(
        {"Buildings": [BUILDINGS, ("0007", "01", "Hall", 1931, 2001, "oui")]}, on_file(HALL)
    )
    assert changes(done) == {"year_built": (1921, 1931), "sprinklers": (False, True)}
    assert previewed(done)[1:] == [
        "0007, building Hall: Year built was 1921 and becomes 1931.",
        "0007, building Hall: Sprinklers was no and becomes yes.",
    ]


def test_a_blank_cell_keeps_what_is_on_file_and_not_known_takes_it_away() -> None:
    done = plan_of({"Buildings": [BUILDINGS, ("0007", "01", "Hall", "", "N/A", "")]}, on_file(HALL))
    assert changes(done) == {"roof_year": (2001, None)}
    assert record(done, "building").year_built == 1921


def test_columns_that_are_not_there_keep_what_is_on_file() -> None:
    done = plan_of(
        {"Buildings": [("account", "id", "roof year"), ("0007", "01", 2020)]}, on_file(HALL)
    )
    assert not done.items
    assert any("Name" in text or "name" in text for text in refusals(done))


def test_what_is_on_file_need_not_be_said_again_in_a_row() -> None:
    done = plan_of({"Buildings": [BUILDINGS, ("0007", "01", "", "", 2020, "")]}, on_file(HALL))
    assert changes(done) == {"roof_year": (2001, 2020)}


def test_what_must_be_known_cannot_be_said_to_be_unknown() -> None:
    done = plan_of({"Claims": [CLAIMS, ("0007", "C-1", "", "", "N/A")]}, on_file(CLAIM))
    assert refusals(done) == [
        (
            "Claims, row 2, “paid”, “N/A”: This cannot be left as not known."
            " Write its value (0 where"
            " there is none), or clear the cell to keep what is on file."
        )
    ]


def test_records_that_the_workbook_does_not_mention_are_left_alone_and_counted() -> None:
    files = on_file(HALL, HALL.model_copy(update={"id": "02"}), CLAIM)
    done = plan_of({"Buildings": [BUILDINGS, ("0007", "01", "Hall")]}, files)
    assert notes(done) == [
        "One record on file (building) is not in the workbook. It stays as it is."
    ]


def test_a_claim_that_was_valued_anew_changes_with_its_day() -> None:
    row = ("0007", "C-1", "fire", "2024-05-05", 1000, 0, "closed", "2026-09-30")
    done = plan_of({"Claims": [CLAIMS, row]}, on_file(CLAIM))
    assert changes(done) == {
        "paid": (Decimal(900), Decimal(1000)),
        "outstanding": (Decimal(100), Decimal(0)),
        "status": ("open", "closed"),
        "valued_on": (date(2025, 9, 30), date(2026, 9, 30)),
    }
    assert not done.needs_acceptance


def test_an_older_valuation_of_a_claim_asks_before_it_goes_over_a_newer_one() -> None:
    row = ("0007", "C-1", "fire", "2024-05-05", 500, 400, "open", "2024-12-31")
    done = plan_of({"Claims": [CLAIMS, row]}, on_file(CLAIM))
    assert said(done.of("asks")) == [
        (
            "Claims, row 2: This was valued or confirmed on December 31, 2024,"
            " and what is on file is of"
            " September 30, 2025. The workbook may be of another year. Check it,"
            " then accept or correct"
            " it."
        )
    ]
    with pytest.raises(NotAccepted):
        done.drafts()
    assert len(done.drafts(accept_with_errors=True)["0007"]) == 1


def test_an_older_appraisal_and_an_older_confirmation_ask_too() -> None:
    newer = Valuation(building="01", amount=Decimal(5), valued_on=date(2025, 1, 1))
    contact = Contact(id="a", name="Ada", confirmed_on=date(2026, 1, 1))
    done = plan_of(
        {
            "Valuations": [
                ("account", "building", "amount", "valued on"),
                ("0007", "01", 4, "2019-01-01"),
            ],
            "Contacts": [
                ("account", "id", "name", "confirmed on"),
                ("0007", "a", "Ada", "2025-01-01"),
            ],
        },
        on_file(HALL, newer, contact),
    )
    assert [f.what.id for f in done.of("asks")] == ["intake-older-valuation", "intake-older-record"]


def test_equal_rows_count_once_and_are_told() -> None:
    row = ("0007", "C-1", "fire", "2024-05-05", 900)
    done = plan_of({"Organisations": ORGANISATIONS, "Claims": [CLAIMS, row, row]})
    assert len([i for i in done.items if isinstance(i.record, Claim)]) == 1
    assert "Claims, row 3: The row says again what Claims, row 2 says. It was taken once." in notes(
        done
    )


def test_rows_that_contradict_each_other_are_both_refused_with_the_difference() -> None:
    first = ("0007", "C-1", "fire", "2024-05-05", 900)
    second = ("0007", "C-1", "fire", "2024-05-05", 950)
    done = plan_of({"Organisations": ORGANISATIONS, "Claims": [CLAIMS, first, second]})
    assert not [i for i in done.items if isinstance(i.record, Claim)]
    assert refusals(done) == [
        (
            "Claims, row 2, “paid”, “900”: Claims, row 3 says “950” where this row says “900”."
            " Both rows are about the same thing. Keep the one that is right."
        ),
        (
            "Claims, row 3, “paid”, “950”: Claims, row 2 says “900” where this row says “950”."
            " Both rows are about the same thing. Keep the one that is right."
        ),
    ]


def test_an_account_split_over_two_sheets_is_one_account() -> None:
    done = plan_of(
        {
            "Organisations": ORGANISATIONS,
            "Buildings Ontario": [BUILDINGS, ("0007", "01", "Hall")],
            "Buildings elsewhere": [BUILDINGS, ("0007", "02", "Barn")],
        }
    )
    assert [i.record.key for i in done.items if isinstance(i.record, Building)] == ["01", "02"]


def test_a_building_split_over_two_sheets_is_one_building_with_both_origins() -> None:
    done = plan_of(
        {
            "Organisations": ORGANISATIONS,
            "Buildings": [BUILDINGS, ("0007", "01", "Hall", 1921)],
            "Buildings protection": [
                ("account", "id", "name", "fire alarm"),
                ("0007", "01", "Hall", "x"),
            ],
        }
    )
    building = record(done, "building")
    assert (building.year_built, building.fire_alarm) == (1921, True)
    item = next(i for i in done.items if i.kind == "building")
    assert [p.sheet for p in item.origin.places] == ["Buildings", "Buildings protection"]


def test_two_organisations_with_one_registration_number_are_both_refused_by_name() -> None:
    headings = ("account", "name", "province", "registration number")
    rows: Rows = [
        headings,
        ("0007", "A", "ON", "811111115RR0001"),
        ("0012", "B", "ON", "811111115 RR 0001"),
    ]
    done = plan_of({"Organisations": rows})
    assert not done.items
    assert "The organisation 0012 has the same registration number" in refusals(done)[0]
    assert "The organisation 0007 has the same registration number" in refusals(done)[1]


def test_a_registration_number_of_an_organisation_on_file_is_refused_too() -> None:
    headings = ("account", "name", "province", "registration number")
    rows: Rows = [headings, ("0012", "B", "ON", "811111115RR0001")]
    taken = {"811111115 RR0001": "0007"}
    assert (
        "The organisation 0007 has"
        in refusals(plan_of({"Organisations": rows}, registrations=taken))[0]
    )
    own = {"811111115RR0001": "0012"}
    assert not refusals(plan_of({"Organisations": rows}, registrations=own))


def test_nothing_of_a_new_organisation_that_was_refused_goes_on() -> None:
    done = plan_of(
        {
            "Organisations": [*ORGANISATIONS, ("0020", "", "ON")],
            "Buildings": [BUILDINGS, ("0020", "01", "Hall"), ("0007", "01", "Hall")],
        }
    )
    assert {i.account for i in done.items} == {"0007", "0012"}
    assert "The row of the organisation 0020 was refused" in refusals(done)[1]


def test_rows_of_an_organisation_on_file_go_on_though_its_own_row_was_refused() -> None:
    sheets: Sheets = {
        "Organisations": [ORGANISATIONS[0], ("0007", "St. Brendan", "Atlantis")],
        "Buildings": [BUILDINGS, ("0007", "01", "Hall")],
    }
    done = plan_of(sheets, on_file())
    assert [i.record.kind for i in done.items] == ["building"]
    assert "There is no province or territory called “Atlantis”" in refusals(done)[0]


@pytest.mark.parametrize(
    ("text", "province"),
    [("Québec", "QC"), ("Ont.", "ON"), ("N.-É.", "NS"), ("bc", "BC"), ("Yukon", "YT")],
)
def test_a_province_is_read_by_its_letters_and_names(text: str, province: str) -> None:
    done = plan_of({"Organisations": [ORGANISATIONS[0], ("0007", "A", text)]})
    assert record(done, "organisation").province == province


def test_an_unknown_cause_is_refused_with_the_nearest() -> None:
    done = plan_of(
        {
            "Organisations": ORGANISATIONS,
            "Claims": [
                CLAIMS,
                ("0007", "1", "seewer backup", "2024-05-05"),
                ("0007", "2", "zzz", "2024-05-05"),
            ],
        }
    )
    assert "Did you mean one of these: sewer-backup" in refusals(done)[0]
    assert "quarterday causes lists them all" in refusals(done)[1]


def test_a_claim_names_a_building_by_id_or_name() -> None:
    headings = ("account", "number", "cause", "date of loss", "location")
    rows: Rows = [
        headings,
        ("0007", "1", "fire", "2024-05-05", "hall"),
        ("0007", "2", "fire", "2024-05-05", "1"),
        ("0007", "3", "fire", "2024-05-05", "Barn"),
        ("0007", "4", "fire", "2024-05-05", "*"),
    ]
    done = plan_of({"Claims": rows}, on_file(HALL))
    assert [i.record.location for i in done.items] == ["01", "01"]  # type: ignore[attr-defined]
    assert len(refusals(done)) == 2
    assert "The account has no building “Barn”" in refusals(done)[0]


def test_a_building_whose_row_was_refused_is_told_as_such() -> None:
    done = plan_of(
        {
            "Organisations": ORGANISATIONS,
            "Buildings": [BUILDINGS, ("0007", "01", "Hall", "old")],
            "Valuations": [
                ("account", "building", "amount", "valued on"),
                ("0007", "01", 9, "2024-01-01"),
            ],
        }
    )
    assert "The row of the building “01” was refused. Mend that row first." in refusals(done)[1]


def test_people_are_authorised_by_id_or_name() -> None:
    done = plan_of(
        {
            "Organisations": ORGANISATIONS,
            "Contacts": [("account", "name", "role"), ("0007", "Ada Bell", "Trésorière")],
            "Authorities": [
                ("account", "contact", "area", "since"),
                ("0007", "ada bell", "garanties", "2025-01-01"),
                ("0007", "Bo", "claims", ""),
            ],
        }
    )
    assert record(done, "contact") == Contact(id="ada-bell", name="Ada Bell", role="treasurer")
    assert record(done, "authority") == Authority(
        contact="ada-bell", area="coverage", since=date(2025, 1, 1)
    )
    assert "The account has no contact “Bo”" in refusals(done)[0]


def test_operations_and_interests_are_read() -> None:
    done = plan_of(
        {
            "Organisations": ORGANISATIONS,
            "Operations": [
                ("account", "children", "attendance", "safe"),
                ("0007", "x", "1 200", "n/d"),
            ],
            "Interests": [
                ("account", "role", "name", "status"),
                ("0007", "Banque", "Caisse du Port", "actif"),
            ],
        }
    )
    assert record(done, "operations") == Operations(children=True, attendance=1200)
    assert record(done, "interest") == Interest(
        id="caisse-du-port", role="lender", name="Caisse du Port"
    )


def test_a_record_that_cannot_be_true_names_the_cell_to_blame() -> None:
    headings = ("account", "building", "amount", "valued on")
    rows: Rows = [headings, ("0007", "01", -5, "2024-01-01")]
    done = plan_of({"Valuations": rows}, on_file(HALL))
    assert refusals(done) == [
        "Valuations, row 2, “amount”, “-5”: This must be more than 0. Check the cell."
    ]


def test_texts_longer_than_the_file_keeps_are_refused() -> None:
    done = plan_of({"Organisations": [ORGANISATIONS[0], ("0007", "x" * 400, "ON")]})
    assert "The text has more than 300 characters" in refusals(done)[0]


def test_a_workbook_without_faults_needs_no_acceptance() -> None:
    done = plan_of({"Organisations": ORGANISATIONS})
    assert not done.needs_acceptance
    assert done.drafts() == done.drafts(accept_with_errors=True)


def test_what_is_not_accepted_says_so_in_both_languages() -> None:
    with pytest.raises(NotAccepted) as caught:
        plan_of({"Organisations": [ORGANISATIONS[0], ("0007", "", "ON")]}).drafts()
    assert speech("en").say(caught.value.words).startswith("Nothing was written")
    assert speech("fr").say(caught.value.words).startswith("Rien n'a été écrit")


def test_good_rows_go_on_when_a_person_accepts() -> None:
    done = plan_of({"Organisations": [*ORGANISATIONS, ("0020", "", "ON")]})
    assert list(done.drafts(accept_with_errors=True)) == ["0007", "0012"]


def test_faults_come_in_the_order_of_the_workbook() -> None:
    done = plan_of(
        {
            "Organisations": [*ORGANISATIONS, ("0020", "", "ON"), ("0021", "B", "ZZ")],
            "Claims": [CLAIMS, ("0007", "1", "ghost", "x"), ("", "2", "fire", "2024-01-01")],
        }
    )
    spots = [(f.spot.sheet, f.spot.row, f.spot.column) for f in done.of("refused")]
    assert spots == [
        ("Organisations", 4, 2),
        ("Organisations", 5, 3),
        ("Claims", 2, 3),
        ("Claims", 2, 4),
        ("Claims", 3, 1),
    ]
