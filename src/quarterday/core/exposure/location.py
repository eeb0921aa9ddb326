"""A building with its values and simple terms as one location of Open Exposure Data."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from decimal import Decimal
from typing import Any, Literal

from pydantic import BaseModel

from quarterday.core.exposure.codes import UNKNOWN_CONSTRUCTION, Codes, code_of
from quarterday.core.file.fold import File
from quarterday.core.file.records import Building, Terms, Valuation
from quarterday.core.file.records.terms import EVERYWHERE, PERCENT_DEDUCTIBLE, Coverage
from quarterday.core.money import round_to
from quarterday.core.reference import Reference

Row = dict[str, str]
Answers = Mapping[str, tuple[str, ...]]  # coverage id → ids of the causes that it answers for
LostOf = Literal["building", "valuation", "terms", "coverage"]
COUNTRY, PORTFOLIO, SQUARE_METRES = "CA", "1", "12"
PLACES: Mapping[str, str] = {"building": "1Building", "contents": "3Contents"}
VALUES: Mapping[str, str] = {"building": "BuildingTIV", "contents": "ContentsTIV"}
VALUED: Mapping[str, str] = {"building": "LocUserDef2", "contents": "LocUserDef3"}
NAME, NAMED, VALUED_ON = "LocUserDef1", "name: ", "valued on: "
WIDTHS: Mapping[str, int] = {
    "AccNumber": 40, "AccName": 100, "PolNumber": 20, "LocNumber": 20, "LocName": 20,
    NAME: 100, "StreetAddress": 100, "City": 50, "PostalCode": 20,
}  # fmt: skip
_TERMS = tuple(
    f"Loc{term}{place}"
    for place in PLACES.values()
    for term in ("LimitType", "Limit", "DedType", "Ded", "MinDed", "MaxDed")
)
LOCATION_COLUMNS: tuple[str, ...] = (
    "PortNumber", "AccNumber", "LocNumber", "LocName", "IsTenant", "LocInceptionDate",
    "LocExpiryDate", "CountryCode", "StreetAddress", "PostalCode", "City", "AreaCode",
    "OccupancyCode", "ConstructionCode", "YearBuilt", "NumberOfStoreys", "FloorArea",
    "FloorAreaUnit", NAME, *VALUED.values(), "LocPerilsCovered", "BuildingTIV", "OtherTIV",
    "ContentsTIV", "BITIV", "LocCurrency", "PayoutBasis", *_TERMS, "LocPeril", "SprinklerType",
    "PercentSprinklered", "RoofYearBuilt", "Basement", "OEDVersion",
)  # fmt: skip
ACCOUNT_COLUMNS: tuple[str, ...] = (
    "PortNumber", "AccNumber", "AccName", "AccCurrency", "PolNumber", "PolPerilsCovered",
    "PolInceptionDate", "PolExpiryDate", "OEDVersion",
)  # fmt: skip
_BUILDING_KEPT = {
    "id", "name", "address", "town", "postal_code", "province", "construction", "year_built",
    "area_m2", "storeys", "basement", "roof_year", "sprinklers",
}  # fmt: skip
_LINE_KEPT = {"coverage", "location", "limit", "deductible"}


@dataclass(frozen=True, slots=True)
class Lost:
    """What the standard has no place for: a field of a record, or a coverage."""

    of: LostOf
    name: str


@dataclass(frozen=True, slots=True)
class Location:
    """A row of a location file (column → text, blank ones left out), and what it does not hold."""

    row: Row
    lost: tuple[Lost, ...] = ()


def answers_of(reference: Reference) -> Answers:
    """Return the causes of loss that each coverage answers for."""
    return {coverage.id: coverage.answers for coverage in reference.coverages.values()}


def in_force(file: File) -> Terms | None:
    """Return the newest issued terms of a file, or None."""
    issued = (terms for terms in file.all(Terms) if terms.stage == "issued")
    return max(issued, key=lambda terms: terms.start, default=None)


def location(
    file: File, building: Building, terms: Terms | None, codes: Codes, answers: Answers
) -> Location:
    """Return a building as a location, with its newest valuations and its lines of ``terms``.

    Total insured values are the newest valuation of what is insured, else its sum insured.
    """
    lines = _lines(building, terms)
    valued = {thing: _valuation(file, building, thing, lines, terms) for thing in PLACES}
    row = _who(file, building, terms) | _what(file, building, codes)
    for thing in PLACES:
        row |= _value(thing, valued[thing], lines.get(thing))
    perils = ";".join(codes.perils_of(covered(building, terms, answers)))
    row |= {"LocPerilsCovered": perils, "LocPeril": perils, "OEDVersion": codes.version}
    payout = code_of(codes.basis, lines["building"].basis) if "building" in lines else None
    row["PayoutBasis"] = str(payout or "")
    lost = [*_lost_of_building(building, row, codes), *_lost_of_values(file, building, valued)]
    lost += [loss for line in lines.values() for loss in _lost_of_line(line, payout, codes)]
    return Location({name: text for name, text in row.items() if text}, tuple(lost))


def account(file: File, terms: Terms | None, perils: tuple[str, ...], codes: Codes) -> Row:
    """Return a file as a row of an account file; ``perils`` are those of its locations."""
    number = terms.policy_number if terms and terms.policy_number else file.id
    dates = (terms.start.isoformat(), terms.end.isoformat()) if terms else ("", "")
    row = {
        "PortNumber": PORTFOLIO,
        "AccNumber": file.id,
        "AccName": cut("AccName", file.organisation.name),
        "AccCurrency": terms.currency if terms else "CAD",
        "PolNumber": cut("PolNumber", number),
        "PolPerilsCovered": ";".join(perils),
        "PolInceptionDate": dates[0],
        "PolExpiryDate": dates[1],
        "OEDVersion": codes.version,
    }
    return {name: text for name, text in row.items() if text}


def cut(column: str, text: str | None) -> str:
    """Return a text as wide as its column may be."""
    return (text or "")[: WIDTHS[column]].rstrip()


def covered(building: Building, terms: Terms | None, answers: Answers) -> set[str]:
    """Return the causes that the coverage of the building or its contents answers for.

    Sewer backup, flood and earthquake have limits of their own, which a location cannot hold: a
    reader would take the whole limit for theirs, so that they are left out.
    """
    places = (building.id, EVERYWHERE)
    lines = [line for line in terms.coverages if line.location in places] if terms else []
    mine = [line for line in lines if line.coverage in PLACES]
    if not mine:
        return set(answers["building"])
    return {
        cause
        for line in mine
        for cause in answers[line.coverage]
        if cause not in line.excluded_causes
    }


def lost_of_terms(terms: Terms, buildings: tuple[str, ...]) -> Iterator[Lost]:
    """Yield the coverages of ``terms`` that no location of these ``buildings`` holds."""
    for line in terms.coverages:
        if line.coverage not in PLACES or line.location not in buildings:
            yield Lost("coverage", line.coverage)


def _lines(building: Building, terms: Terms | None) -> dict[str, Coverage]:
    found = terms.coverages if terms else ()
    here = (line for line in found if line.location == building.id)
    return {line.coverage: line for line in here if line.coverage in PLACES}


def _valuation(
    file: File, building: Building, thing: str, lines: Mapping[str, Coverage], terms: Terms | None
) -> Valuation | None:
    if terms is not None and thing not in lines:
        return None
    return next(reversed(file.valuations(building.id, thing)), None)


def _who(file: File, building: Building, terms: Terms | None) -> Row:
    whole = f"{NAMED}{building.name}" if len(building.name) > WIDTHS["LocName"] else ""
    return {
        "PortNumber": PORTFOLIO,
        "AccNumber": file.id,
        "LocNumber": building.id,
        "LocName": cut("LocName", building.name),
        NAME: cut(NAME, whole),
        "IsTenant": "1" if building.ownership == "rent" else "0",
        "LocInceptionDate": terms.start.isoformat() if terms else "",
        "LocExpiryDate": terms.end.isoformat() if terms else "",
        "LocCurrency": terms.currency if terms else "CAD",
        "CountryCode": COUNTRY,
        "StreetAddress": cut("StreetAddress", building.address),
        "PostalCode": cut("PostalCode", building.postal_code),
        "City": cut("City", building.town),
        "AreaCode": file.province_of(building),
    }


def _what(file: File, building: Building, codes: Codes) -> Row:
    occupancy = codes.occupancy_of(building.use, file.organisation.organisation_class)
    construction = code_of(codes.construction, building.construction) or UNKNOWN_CONSTRUCTION
    return {
        "OccupancyCode": str(occupancy),
        "ConstructionCode": str(construction),
        "YearBuilt": str(building.year_built or ""),
        "NumberOfStoreys": _whole(building.storeys),
        "FloorArea": f"{building.area_m2:f}" if building.area_m2 else "",
        "FloorAreaUnit": SQUARE_METRES if building.area_m2 else "",
        "RoofYearBuilt": str(building.roof_year or ""),
        "Basement": str(code_of(codes.basement, building.basement) or ""),
        "SprinklerType": "1" if building.sprinklers is False else "",
        "PercentSprinklered": "1" if building.sprinklers else "",
    }


def _whole(storeys: Decimal | None) -> str:
    return f"{storeys:f}" if storeys and storeys == int(storeys) else ""


def _value(thing: str, valuation: Valuation | None, line: Coverage | None) -> Row:
    insured = line.limit if line and line.limit else Decimal(0)
    row = {VALUES[thing]: f"{valuation.amount if valuation else insured:f}"}
    if valuation:
        row[VALUED[thing]] = f"{VALUED_ON}{valuation.valued_on}"
    return row | _terms(thing, line) if line else row


def _terms(thing: str, line: Coverage) -> Row:
    kind, deductible = _deductible(line)
    minimum, maximum = line.deductible_minimum, line.deductible_maximum
    terms = {"LimitType": "0", "Limit": f"{line.limit or 0:f}", "DedType": kind,
             "Ded": f"{deductible:f}"}  # fmt: skip
    if kind != "0":
        terms |= {"MinDed": f"{minimum or 0:f}", "MaxDed": f"{maximum or 0:f}"}
    return {f"Loc{name}{PLACES[thing]}": text for name, text in terms.items()}


def _deductible(line: Coverage) -> tuple[str, Decimal]:
    """Return the type and figure: 0 an amount, 1 a ratio of the loss, 2 a ratio of the value."""
    percent, of = line.deductible_percent, line.deductible_percent_of
    if percent and of == "loss":
        return "1", percent
    if percent and of == "value":
        return "2", percent
    if percent and of == "limit" and line.limit:
        return "0", round_to(percent * line.limit)
    return "0", line.deductible or Decimal(0)


def _said(part: BaseModel, kept: set[str]) -> Iterator[str]:
    """Yield the fields that say something and are not kept."""
    for name, field in type(part).model_fields.items():
        value: Any = getattr(part, name)
        if name not in kept and value not in (None, ()) and value != field.default:
            yield name


def _lost_of_building(building: Building, row: Row, codes: Codes) -> Iterator[Lost]:
    kept = set(_BUILDING_KEPT)
    if building.ownership == "rent":
        kept.add("ownership")
    whole = {"name": building.name, "address": building.address, "town": building.town,
             "postal_code": building.postal_code}  # fmt: skip
    shown = {"name": row[NAME].removeprefix(NAMED) or row["LocName"], "town": row["City"],
             "address": row["StreetAddress"], "postal_code": row["PostalCode"]}  # fmt: skip
    kept -= {name for name, text in whole.items() if shown[name] != (text or "")}
    if building.storeys and not row["NumberOfStoreys"]:
        kept.discard("storeys")
    if code_of(codes.construction, building.construction) is None:
        kept.discard("construction")
    yield from (Lost("building", name) for name in _said(building, kept))


def _lost_of_values(
    file: File, building: Building, valued: Mapping[str, Valuation | None]
) -> Iterator[Lost]:
    kept = {"building", "valued", "amount", "valued_on"}
    for valuation in file.all(Valuation):
        if valuation.building != building.id:
            continue
        if valuation == valued.get(valuation.valued):
            yield from (Lost("valuation", name) for name in _said(valuation, kept))
        else:
            yield Lost("valuation", "")


def _lost_of_line(line: Coverage, payout: int | None, codes: Codes) -> Iterator[Lost]:
    kept = set(_LINE_KEPT)
    if _deductible(line)[0] != "0":
        kept |= set(PERCENT_DEDUCTIBLE)
        kept.discard("deductible")
    if payout is not None and code_of(codes.basis, line.basis) == payout:
        kept.add("basis")
    yield from (Lost("terms", name) for name in _said(line, kept))
