"""Accounts and other ids that lost their zeros get them back only where that is beyond doubt."""

from __future__ import annotations

import pytest

from quarterday.core.file.records import Building, Organisation
from quarterday.intake.ids import Ids, accounts, loose
from tests.intake.books import ORGANISATIONS, file_of, notes, plan_of, refusals

HEADINGS = ("account", "name", "province")
BUILDINGS = ("account", "id", "name")


def organisation(name: str = "St. Brendan") -> Organisation:
    return Organisation(name=name, province="ON")


@pytest.mark.parametrize(
    ("id", "form"), [("0007", "7"), ("000", "0"), ("A-07", "a-07"), ("7a", "7a")]
)
def test_the_loose_form_is_what_a_spreadsheet_leaves(id: str, form: str) -> None:
    assert loose(id) == form


def test_an_account_on_file_is_what_a_bare_number_stands_for() -> None:
    known = accounts(["0007", "0012"], ["7"], ["7", "12"])
    assert known.meant("7") == ("0007",)
    assert known.meant("12") == ("0012",)


def test_a_listed_account_has_the_zeros_that_another_sheet_kept() -> None:
    assert accounts([], ["7"], ["7", "0007"]).meant("7") == ("0007",)
    assert accounts([], ["7"], ["7"]).meant("7") == ("7",)


def test_two_forms_with_zeros_leave_a_bare_number_undecided() -> None:
    assert accounts([], ["007", "0007"], ["7", "007", "0007"]).meant("7") == ("0007", "007")
    assert accounts(["007", "0007"], [], ["7"]).meant("7") == ("0007", "007")


def test_a_bare_number_that_is_itself_on_file_stays() -> None:
    assert Ids.of(["7", "0007"]).meant("7") == ("7",)


def test_numbers_in_a_spreadsheet_become_the_accounts_they_were_and_this_is_told() -> None:
    files = {"0007": file_of("0007", [organisation()])}
    done = plan_of({"Buildings": [BUILDINGS, (7, "01", "Hall")]}, files)
    assert [(i.account, i.record.kind) for i in done.items] == [("0007", "building")]
    assert notes(done) == [
        "Buildings, column “account”: Ids were read in the form they are kept in: “7” as 0007."
    ]


def test_an_undecided_account_is_refused_with_what_it_may_be() -> None:
    files = {a: file_of(a, [organisation(a)]) for a in ("007", "0007")}
    done = plan_of({"Buildings": [BUILDINGS, (7, "01", "Hall")]}, files)
    assert refusals(done) == [
        "Buildings, row 2, “account”, “7”: “7” can stand for 0007 and 007. Write it in full."
    ]


def test_an_account_that_nobody_knows_is_refused_with_the_nearest() -> None:
    done = plan_of(
        {"Organisations": ORGANISATIONS, "Buildings": [BUILDINGS, ("0008", "01", "Hall")]}
    )
    assert "Did you mean 0007?" in refusals(done)[0]
    done = plan_of(
        {"Organisations": ORGANISATIONS, "Buildings": [BUILDINGS, ("Zebra", "01", "Hall")]}
    )
    assert refusals(done) == [
        (
            "Buildings, row 2, “account”, “Zebra”: There is no organisation with"
            " the account “Zebra”."
            " Add it to the sheet of organisations, or correct the account."
        )
    ]


def test_an_account_on_file_needs_no_row_of_its_own() -> None:
    """Also when the caller has no list of accounts to give."""
    from quarterday.catalogue.load import reference
    from quarterday.intake.map import match
    from quarterday.intake.plan import plan
    from tests.intake.books import parsed

    book = parsed({"Buildings": [BUILDINGS, ("0007", "01", "Hall")]})
    files = {"0007": file_of("0007", [organisation()])}
    done = plan(book, match(book), files.get, reference())
    assert [i.status for i in done.items] == ["new"]


def test_a_building_keeps_the_id_it_has_on_file() -> None:
    hall = Building(id="01", name="Hall")
    files = {"0007": file_of("0007", [organisation(), hall])}
    done = plan_of({"Buildings": [BUILDINGS, ("0007", 1, "Hall")]}, files)
    assert [(i.status, i.record.key) for i in done.items] == [("unchanged", "01")]


def test_buildings_without_ids_get_the_id_of_their_name() -> None:
    files = {"0007": file_of("0007", [organisation(), Building(id="01", name="Main Hall")])}
    done = plan_of(
        {
            "Buildings": [
                ("account", "name", "use"),
                ("0007", "main hall", "worship"),
                ("0007", "Old Barn", ""),
            ]
        },
        files,
    )
    assert [(i.status, i.record.key) for i in done.items] == [
        ("changed", "01"),
        ("new", "old-barn"),
    ]
