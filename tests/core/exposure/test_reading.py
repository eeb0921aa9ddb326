"""A location of Open Exposure Data as fields of our records."""

from __future__ import annotations

from datetime import date
from decimal import Decimal

import pytest

from quarterday.core.exposure.reading import (
    Cells,
    Unfit,
    building_fields,
    line_fields,
    refuse_place,
    refused_terms,
    valued,
)
from quarterday.intake.exposure.tables import codes

PLACE = {"AccNumber": "1", "LocNumber": "2", "CountryCode": "CA", "LocCurrency": "CAD"}


def cells(**row: str) -> Cells:
    return Cells(PLACE | row)


def why(unfit: Unfit) -> tuple[str, str]:
    return unfit.column, unfit.words.id


@pytest.mark.parametrize(
    ("unit", "metres"),
    # Open Exposure Data, Other Values: 11 square feet (the default), 12 square metres;
    # a foot is 0.3048 m exactly (international yard and pound, 1959)
    [("11", Decimal("92.90304")), ("", Decimal("92.90304")), ("12", Decimal(1000))],
)
def test_an_area_is_read_in_its_unit(unit: str, metres: Decimal) -> None:
    found = building_fields(cells(FloorArea="1000", FloorAreaUnit=unit), codes(), {})
    assert found["area_m2"] == metres


def test_codes_are_read_as_our_words() -> None:
    row = cells(ConstructionCode="5102", Basement="6", SprinklerType="3", IsTenant="1")
    found = building_fields(row, codes(), {})
    assert (found["construction"], found["basement"]) == ("stone", "none")
    assert (found["sprinklers"], found["ownership"]) == (True, "rent")


def test_a_known_code_of_another_kind_is_other_and_an_unknown_one_says_nothing() -> None:
    assert building_fields(cells(ConstructionCode="5101"), codes(), {})["construction"] == "other"
    assert "construction" not in building_fields(cells(ConstructionCode="5000"), codes(), {})


def test_what_a_row_repeats_of_the_file_changes_nothing() -> None:
    written = {"LocName": "Church of the Holy P", "ConstructionCode": "5000", "IsTenant": "0"}
    assert building_fields(Cells(PLACE | written), codes(), written) == {}
    changed = building_fields(Cells(PLACE | written | {"LocName": "Chapel"}), codes(), written)
    assert changed == {"name": "Chapel"}


@pytest.mark.parametrize("text", ["about ten", "-5", "NaN", "Infinity", "1,200"])
def test_what_is_no_number_is_refused(text: str) -> None:
    with pytest.raises(Unfit) as refused:
        building_fields(cells(FloorArea=text), codes(), {})
    assert why(refused.value) == ("FloorArea", "oed-not-a-number")


@pytest.mark.parametrize(
    ("row", "expected"),
    [({"CountryCode": "US"}, ("CountryCode", "oed-not-canada")),
     ({"LocCurrency": "USD"}, ("LocCurrency", "oed-not-dollars")),
     ({"LocNumber": " "}, ("LocNumber", "oed-no-number")),
     ({"AreaCode": "TX"}, ("AreaCode", "oed-no-area")),
     ({"NumberOfBuildings": "4"}, ("NumberOfBuildings", "oed-several-buildings")),
     ({"IsAggregate": "1"}, ("IsAggregate", "oed-several-buildings"))],
)  # fmt: skip
def test_a_place_that_cannot_be_one_building_in_canada_is_refused(
    row: dict[str, str], expected: tuple[str, str]
) -> None:
    with pytest.raises(Unfit) as refused:
        refuse_place(cells(**row), {"ON", "QC"})
    assert why(refused.value) == expected


def test_a_value_is_read_with_its_day_alone() -> None:
    row = {"BuildingTIV": "1400000.0", "LocUserDef2": "valued on: 2024-05-01"}
    assert valued(cells(**row), "building") == (Decimal(1_400_000), date(2024, 5, 1))
    assert valued(cells(BuildingTIV="1400000", LocUserDef2="our own note"), "building") is None
    with pytest.raises(Unfit):
        valued(cells(BuildingTIV="5", LocUserDef2="valued on: spring"), "building")


def test_without_a_limit_the_total_insured_value_is_the_sum_insured() -> None:
    """Open Exposure Data, Financial Code Values: a limit of 0 is unlimited."""
    found = line_fields(cells(ContentsTIV="90000", LocDed3Contents="1000"), "contents", codes())
    assert (found["limit"], found["deductible"]) == (Decimal(90_000), Decimal(1000))
    assert line_fields(cells(ContentsTIV="0"), "contents", codes()) == {}


def test_a_share_of_the_value_is_read_with_its_bounds() -> None:
    row = cells(BuildingTIV="100", LocDedType1Building="2", LocDed1Building="0.02",
                LocMinDed1Building="5")  # fmt: skip
    found = line_fields(row, "building", codes())
    assert found["deductible_percent"] == Decimal("0.02")
    assert found["deductible_percent_of"] == "value"
    assert (found["deductible_minimum"], found["deductible_maximum"]) == (Decimal(5), None)
    assert found["deductible"] is None


@pytest.mark.parametrize(
    "row",
    [{"LocDedType1Building": "3"}, {"LocDedType1Building": "2", "LocDed1Building": "2"},
     {"LocMinDed1Building": "500"}],
)  # fmt: skip
def test_a_deductible_that_means_something_else_is_refused(row: dict[str, str]) -> None:
    with pytest.raises(Unfit):
        line_fields(cells(BuildingTIV="100", **row), "building", codes())


@pytest.mark.parametrize(
    ("row", "column"),
    [({"LocDed6All": "5000"}, "LocDed6All"), ({"LocLimit5PD": "1"}, "LocLimit5PD"),
     ({"LocDedCode1Building": "2"}, "LocDedCode1Building"),
     ({"LocLimitType3Contents": "1"}, "LocLimitType3Contents"),
     ({"LocParticipation": "0.5"}, "LocParticipation"),
     ({"LocPeril": "XHL", "LocPerilsCovered": "AA1"}, "LocPeril")],
)  # fmt: skip
def test_terms_that_ours_cannot_say_are_refused_by_column(row: dict[str, str], column: str) -> None:
    assert [unfit.column for unfit in refused_terms(cells(**row))] == [column]


def test_terms_that_ours_can_say_are_not_refused() -> None:
    row = cells(LocDed1Building="5000", LocDed6All="0", LocParticipation="1", LocPeril="BFR;XHL",
                LocPerilsCovered="XHL;BFR")  # fmt: skip
    assert list(refused_terms(row)) == []
