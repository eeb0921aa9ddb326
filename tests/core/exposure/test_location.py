"""A building as a location of Open Exposure Data."""

from __future__ import annotations

from datetime import date
from decimal import Decimal
from typing import Any

import pytest
from tests.intake.books import file_of

from quarterday.catalogue.load import reference
from quarterday.core.exposure.location import (
    Location,
    Lost,
    answers_of,
    in_force,
    location,
    lost_of_terms,
)
from quarterday.core.file.records import Building, Organisation, Record, Terms, Valuation
from quarterday.core.file.records.terms import Coverage
from quarterday.intake.exposure.tables import codes

HALL: dict[str, Any] = {"id": "hall", "name": "Hall", "construction": "stone"}
START, END = date(2026, 1, 15), date(2027, 1, 15)


def terms_of(*lines: Coverage, start: date = START, stage: str = "issued") -> Terms:
    return Terms(stage=stage, start=start, end=END, coverages=lines)


def line(**fields: Any) -> Coverage:
    return Coverage.model_validate(
        {"coverage": "building", "location": "hall", "limit": Decimal(1_000_000), **fields}
    )


def valued(amount: int, on: date, **fields: Any) -> Valuation:
    return Valuation.model_validate(
        {"building": "hall", "amount": Decimal(amount), "valued_on": on, **fields}
    )


def written(building: dict[str, Any], *records: Record, of: str = "worship") -> Location:
    hall = Building.model_validate({**HALL, **building})
    organisation = Organisation.model_validate(
        {"name": "St. Brendan", "province": "NS", "organisation_class": of}
    )
    file = file_of("0007", (organisation, hall, *records))
    return location(file, hall, in_force(file), codes(), answers_of(reference()))


@pytest.mark.parametrize(
    ("construction", "code"),
    # Open Exposure Data specification 5.0.0, Construction Values
    [("frame", "5050"), ("masonry-veneer", "5052"), ("heavy-timber", "5053"),
     ("masonry", "5100"), ("stone", "5102"), ("concrete", "5150"), ("steel", "5200"),
     ("other", "5000"), (None, "5000")],
)  # fmt: skip
def test_a_construction_has_the_code_of_the_standard(construction: str | None, code: str) -> None:
    assert written({"construction": construction}).row["ConstructionCode"] == code


@pytest.mark.parametrize(
    ("use", "of", "code"),
    # Open Exposure Data specification 5.0.0, Occupancy Values; the choice is our own
    [("Worship, kitchen", "worship", "1201"), ("Culte et salle paroissiale", "worship", "1201"),
     ("House, let to the minister", "worship", "1051"), ("Hall, kitchen", "worship", "1200"),
     ("Salle de spectacle, bureaux", "arts", "1110"), (None, "school", "1231"),
     ("Ten flats", "charity", "1055"), (None, "worship", "1201"), ("Kiln", "other", "1200")],
)  # fmt: skip
def test_the_use_decides_the_occupancy_before_the_class(
    use: str | None, of: str, code: str
) -> None:
    assert written({"use": use}, of=of).row["OccupancyCode"] == code


def test_the_total_insured_value_is_the_newest_valuation_and_the_limit_stands_beside_it() -> None:
    old, new = valued(900_000, date(2015, 5, 1)), valued(1_400_000, date(2024, 5, 1))
    row = written({}, old, new, terms_of(line())).row
    assert (row["BuildingTIV"], row["LocLimit1Building"]) == ("1400000.00", "1000000.00")
    assert (row["LocLimitType1Building"], row["LocUserDef2"]) == ("0", "valued on: 2024-05-01")


def test_without_a_valuation_the_sum_insured_is_the_total_insured_value() -> None:
    row = written({}, terms_of(line())).row
    assert row["BuildingTIV"] == "1000000.00"
    assert "LocUserDef2" not in row


def test_what_is_not_insured_has_no_insured_value() -> None:
    contents = valued(50_000, date(2024, 5, 1), valued="contents")
    found = written({}, contents, terms_of(line()))
    assert found.row["ContentsTIV"] == "0"
    assert "LocLimit3Contents" not in found.row
    assert Lost("valuation", "") in found.lost


@pytest.mark.parametrize(
    ("fields", "kind", "figure"),
    # Open Exposure Data, Financial Code Values: DedType 0 amount, 1 % of loss, 2 % of TIV (<= 1)
    [({"deductible": Decimal(2500)}, "0", "2500.00"),
     ({"deductible_percent": Decimal("0.05"), "deductible_percent_of": "loss"}, "1", "0.05"),
     ({"deductible_percent": Decimal("0.02"), "deductible_percent_of": "value"}, "2", "0.02"),
     ({"deductible_percent": Decimal("0.02"), "deductible_percent_of": "limit"}, "0", "20000.00"),
     ({}, "0", "0")],
)  # fmt: skip
def test_a_deductible_is_an_amount_or_a_share_of_the_loss_or_of_the_value(
    fields: dict[str, Any], kind: str, figure: str
) -> None:
    row = written({}, terms_of(line(**fields))).row
    assert (row["LocDedType1Building"], row["LocDed1Building"]) == (kind, figure)


def test_a_percentage_keeps_its_least_and_highest_amounts() -> None:
    share = line(
        deductible_percent=Decimal("0.02"), deductible_percent_of="value",
        deductible_minimum=Decimal(10_000), deductible_maximum=Decimal(90_000),
    )  # fmt: skip
    found = written({}, terms_of(share))
    assert found.row["LocMinDed1Building"] == "10000.00"
    assert found.row["LocMaxDed1Building"] == "90000.00"
    assert not [one for one in found.lost if one.name.startswith("deductible")]


def test_a_percentage_of_the_limit_is_told_as_lost() -> None:
    share = line(deductible_percent=Decimal("0.02"), deductible_percent_of="limit")
    assert Lost("terms", "deductible_percent_of") in written({}, terms_of(share)).lost


def test_what_the_standard_has_no_field_for_is_named() -> None:
    """Open Exposure Data 5.0.0 has neither a coinsurance nor a heritage field for locations."""
    found = written({"heritage": True, "storeys": Decimal("1.5")},
                    terms_of(line(coinsurance=Decimal("0.9"))))  # fmt: skip
    assert {Lost("terms", "coinsurance"), Lost("building", "heritage"),
            Lost("building", "storeys")} <= set(found.lost)  # fmt: skip
    assert "NumberOfStoreys" not in found.row


def test_a_long_name_is_cut_to_twenty_and_kept_whole_beside_it() -> None:
    name = "Church of the Holy Protection"
    found = written({"name": name})
    assert found.row["LocName"] == "Church of the Holy P"
    assert found.row["LocUserDef1"] == f"name: {name}"
    assert Lost("building", "name") not in found.lost
    assert Lost("building", "name") in written({"name": "N" * 120}).lost


def test_perils_are_those_that_the_location_s_own_terms_answer_for() -> None:
    """Sewer backup has a limit of its own, which the location's limit must not stand for."""
    backup = Coverage(coverage="sewer-backup", limit=Decimal(25_000))
    terms = terms_of(line(excluded_causes=("windstorm-hail",)), backup)
    perils = written({}, terms).row["LocPerilsCovered"].split(";")
    assert "BFR" in perils
    assert not {"SBU", "QEQ", "ORF", "XHL"} & set(perils)
    assert set(lost_of_terms(terms, ("hall",))) == {Lost("coverage", "sewer-backup")}


def test_a_coverage_for_all_places_together_is_lost_by_name() -> None:
    terms = terms_of(Coverage(coverage="building", limit=Decimal(9_000_000)))
    assert list(lost_of_terms(terms, ("hall",))) == [Lost("coverage", "building")]


def test_the_newest_issued_terms_are_written() -> None:
    older = terms_of(line(limit=Decimal(7)), start=date(2025, 1, 15))
    offered = terms_of(line(limit=Decimal(8)), start=date(2026, 6, 1), stage="offered")
    row = written({}, older, terms_of(line()), offered).row
    assert (row["LocInceptionDate"], row["LocLimit1Building"]) == ("2026-01-15", "1000000.00")


@pytest.mark.parametrize(
    ("sprinklers", "kind", "share"),
    # Open Exposure Data, Other Values: SprinklerType 0 unknown, 1 no sprinkler
    [(True, None, "1"), (False, "1", None), (None, None, None)],
)
def test_sprinklers_of_an_unknown_type_are_told_by_their_share(
    sprinklers: bool | None, kind: str | None, share: str | None
) -> None:
    row = written({"sprinklers": sprinklers}).row
    assert (row.get("SprinklerType"), row.get("PercentSprinklered")) == (kind, share)
