"""What of a location file goes on, and what is refused in which sentence."""

from __future__ import annotations

from datetime import date
from decimal import Decimal
from pathlib import Path

import pytest

from quarterday.catalogue.load import reference
from quarterday.core.file.records import Building, Organisation, Record, Terms
from quarterday.core.file.records.terms import Coverage
from quarterday.intake.exposure.plan import is_exposure, plan
from quarterday.intake.exposure.tables import codes
from quarterday.intake.plan import Plan
from tests.intake.books import Files, after, csv_folder, file_of, notes, refusals

BASE = {
    "PortNumber": "1", "AccNumber": "0007", "LocNumber": "hall", "LocName": "Hall",
    "CountryCode": "CA", "AreaCode": "NS", "LocCurrency": "CAD", "LocPerilsCovered": "AA1",
    "LocInceptionDate": "2026-01-15", "LocExpiryDate": "2027-01-15", "BuildingTIV": "500000",
    "LocDed1Building": "2500", "LocDedType1Building": "0",
}  # fmt: skip
ACCOUNT = (
    "PortNumber,AccNumber,AccName,AccCurrency,PolNumber,PolPerilsCovered\n"
    "1,0007,St. Brendan,CAD,P-1,AA1\n"
)
BRENDAN = Organisation(name="St. Brendan", province="NS")


def located(folder: Path, *rows: dict[str, str], files: Files | None = None, account: str = "",
            spelt: bool = True) -> Plan:  # fmt: skip
    """Return the plan of a location file with these rows over the base row."""
    columns = list(dict.fromkeys(name for row in ({}, *rows) for name in BASE | row))
    heads = columns if spelt else [name.lower() for name in columns]
    text = [",".join(heads)]
    text += [",".join((BASE | row).get(name, "") for name in columns) for row in rows]
    found = {"location.csv": "\n".join(text)} | ({"account.csv": account} if account else {})
    parsed = csv_folder(folder, found)
    assert is_exposure(parsed)
    return plan(parsed, (files or {}).get, codes(), reference())


def over(*records: Record) -> Files:
    return {"0007": file_of("0007", (BRENDAN, *records))}


def test_a_new_account_is_made_of_its_account_file(tmp_path: Path) -> None:
    done = located(tmp_path, {}, account=ACCOUNT)
    file = after(done)["0007"]
    assert (file.organisation.name, file.organisation.province) == ("St. Brendan", "NS")
    terms = file.terms(date(2026, 1, 15), "issued")
    assert terms is not None
    assert terms.policy_number == "P-1"
    line = terms.find("building", "hall")
    assert line is not None
    assert (line.limit, line.deductible) == (Decimal(500_000), Decimal(2500))


def test_an_unknown_account_without_its_account_file_is_refused(tmp_path: Path) -> None:
    done = located(tmp_path, {})
    assert done.items == ()
    assert refusals(done) == [
        (
            "location, row 2: We do not know account 0007. Put its account file, with AccName and "
            "AreaCode, in the same folder."
        )
    ]


def test_headings_may_be_in_any_case(tmp_path: Path) -> None:
    """The standard's field names do not depend on capitals (ods_tools reads them in any)."""
    done = located(tmp_path, {}, account=ACCOUNT, spelt=False)
    assert not done.needs_acceptance
    assert len(done.with_status("new")) == 3


def test_what_is_on_file_and_not_in_the_standard_stays(tmp_path: Path) -> None:
    hall = Building(id="hall", name="Hall", heritage=True, province="NS")
    liability = Coverage(coverage="general-liability", limit=Decimal(2_000_000))
    mine = Coverage(coverage="building", location="hall", limit=Decimal(1),
                    coinsurance=Decimal("0.9"))  # fmt: skip
    terms = Terms(stage="issued", start=date(2026, 1, 15), end=date(2027, 1, 15),
                  coverages=(mine, liability))  # fmt: skip
    files = over(hall, terms)
    file = after(located(tmp_path, {"YearBuilt": "1926"}, files=files), files)["0007"]
    (building,) = file.buildings
    assert (building.heritage, building.year_built) == (True, 1926)
    kept = file.all(Terms)[0]
    assert liability in kept.coverages
    line = kept.find("building", "hall")
    assert line is not None
    assert (line.limit, line.coinsurance) == (Decimal(500_000), Decimal("0.9"))


@pytest.mark.parametrize(
    ("row", "says"),
    [({"LocDed6All": "5000"}, "Our terms have no way to say this"),
     ({"LocDedType1Building": "7"}, "The deductible must be an amount (0)"),
     ({"LocPeril": "XHL"}, "These terms hold for some causes alone"),
     ({"LocExpiryDate": "next year"}, "This is not a day"),
     ({"LocExpiryDate": "2025-01-15"}, "")],
)  # fmt: skip
def test_terms_that_cannot_be_honoured_are_held_back_whole_and_the_building_goes_on(
    tmp_path: Path, row: dict[str, str], says: str
) -> None:
    done = located(tmp_path, row, {"LocNumber": "church"}, files=over())
    told = refusals(done)
    assert any(says in sentence for sentence in told)
    assert any("The terms of account 0007 were held back" in sentence for sentence in told)
    assert {item.kind for item in done.items} == {"building"}
    assert {item.key for item in done.items} == {"hall", "church"}


@pytest.mark.parametrize(
    ("row", "says"),
    [({"CountryCode": "FR"}, "not in Canada"), ({"LocCurrency": "EUR"}, "Canadian dollars"),
     ({"AreaCode": "ZZ"}, "no province"), ({"NumberOfBuildings": "3"}, "several buildings"),
     ({"YearBuilt": "12"}, "row 2"), ({"FloorArea": "wide"}, "not a number")],
)  # fmt: skip
def test_a_row_that_cannot_be_one_of_our_buildings_is_refused_with_its_place(
    tmp_path: Path, row: dict[str, str], says: str
) -> None:
    done = located(tmp_path, row, files=over())
    told = refusals(done)
    assert any(says in sentence for sentence in told)
    assert all("location, row 2" in sentence for sentence in told)
    assert not [item for item in done.items if item.kind == "building"]


def test_a_location_that_stands_twice_is_refused_and_its_terms_held_back(tmp_path: Path) -> None:
    done = located(tmp_path, {}, {"LocDed1Building": "9"}, files=over())
    assert any("Location hall stands here twice" in sentence for sentence in refusals(done))
    assert [item.kind for item in done.items] == ["building"]


def test_without_days_the_limits_are_left_out_and_told(tmp_path: Path) -> None:
    done = located(tmp_path, {"LocInceptionDate": ""}, files=over())
    assert refusals(done) == [
        (
            "location, row 2: The row does not say when its cover starts and ends. Its limits and "
            "deductibles were left out."
        )
    ]
    assert [item.kind for item in done.items] == ["building"]


def test_columns_that_say_something_and_are_not_read_are_named(tmp_path: Path) -> None:
    done = located(tmp_path, {"FloodZone": "A", "RoofCover": "5", "BIPOI": "0"}, files=over())
    assert notes(done) == [
        (
            "location: These columns say something that is not read: LocPerilsCovered, FloodZone "
            "and RoofCover."
        )
    ]


def test_every_refusal_is_spoken_in_french_too(tmp_path: Path) -> None:
    done = located(tmp_path, {"CountryCode": "FR"}, files=over())
    (told,) = refusals(done, "fr")
    assert "pas au Canada" in told


def test_a_workbook_s_csv_file_is_no_location_file(tmp_path: Path) -> None:
    parsed = csv_folder(tmp_path, {"Buildings.csv": "account,id,name\n0007,hall,Hall\n"})
    assert not is_exposure(parsed)
