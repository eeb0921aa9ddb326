"""A location of Open Exposure Data as fields of a building, its valuations and its terms."""

from __future__ import annotations

import re
from collections.abc import Callable, Container, Iterator, Mapping
from dataclasses import dataclass
from datetime import date
from decimal import Decimal, InvalidOperation
from typing import Any

from quarterday.core.exposure.codes import UNKNOWN_CONSTRUCTION, Codes, ours_of
from quarterday.core.exposure.location import (
    COUNTRY,
    LOCATION_COLUMNS,
    NAME,
    NAMED,
    PLACES,
    SQUARE_METRES,
    VALUED,
    VALUED_ON,
    VALUES,
    Row,
)
from quarterday.core.file.records.terms import PERCENT_DEDUCTIBLE
from quarterday.core.words import Words, words

SQUARE_FEET = "11"
FOOT = Decimal("0.3048")  # metres, exact by definition (international yard and pound, 1959)
ALL_PERILS = "AA1"
_MONEY_TERM = re.compile(r"Loc(?:Ded|MinDed|MaxDed|Limit|DedCode|LimitCode|LimitType)\d\w+|CondTag")
_COUNTED_ONCE = ("NumberOfBuildings", "IsAggregate")
_SPRINKLERS = {"1": False, "2": True, "3": True, "4": True, "5": True}
Fields = dict[str, Any]


class Unfit(ValueError):
    """Raised when a cell cannot be honoured; ``words`` says why."""

    def __init__(self, column: str, words: Words) -> None:
        super().__init__(column)
        self.column, self.words = column, words


@dataclass(frozen=True, slots=True)
class Cells:
    """The cells of a row by column, as the specification spells it; blank ones are ""."""

    row: Mapping[str, str]

    def text(self, column: str) -> str:
        """Return a cell's text."""
        return self.row.get(column, "").strip()

    def number(self, column: str) -> Decimal:
        """Return a cell's number, zero or more; a blank is 0. Unfit when it holds something else.

        The standard marks an unknown number with -999, which is read as 0 too.
        """
        text = self.text(column) or "0"
        try:
            value = Decimal(text)
        except InvalidOperation:
            raise Unfit(column, words("oed-not-a-number")) from None
        if value == Decimal(-999):
            return Decimal(0)
        if not value.is_finite() or value < 0:
            raise Unfit(column, words("oed-not-a-number"))
        return value

    def whole(self, column: str) -> int:
        """Return a cell's whole number; Unfit when it is none."""
        value = self.number(column)
        if value != int(value):
            raise Unfit(column, words("oed-not-whole"))
        return int(value)

    def day(self, column: str) -> date | None:
        """Return a cell's day, a time of day left out; Unfit when it is none."""
        text = self.text(column)
        if not text:
            return None
        try:
            return date.fromisoformat(text[:10])
        except ValueError:
            raise Unfit(column, words("oed-not-a-day")) from None

    def same(self, columns: tuple[str, ...], written: Row) -> bool:
        """Tell whether these columns say what ``written`` says in them."""
        return all(_plain(self.text(c)) == _plain(written.get(c, "")) for c in columns)


def _plain(text: str) -> str | Decimal:
    try:
        return Decimal(text or "0")
    except InvalidOperation:
        return text


def refuse_place(cells: Cells, areas: Container[str]) -> None:
    """Raise Unfit when a row is no single building in Canada that can be told from others."""
    for column in ("AccNumber", "LocNumber"):
        if not cells.text(column):
            raise Unfit(column, words("oed-no-number"))
    if cells.text("CountryCode").upper() != COUNTRY:
        raise Unfit("CountryCode", words("oed-not-canada"))
    if cells.text("AreaCode") and cells.text("AreaCode") not in areas:
        raise Unfit("AreaCode", words("oed-no-area"))
    if cells.text("LocCurrency").upper() != "CAD":
        raise Unfit("LocCurrency", words("oed-not-dollars"))
    if cells.number("IsAggregate") or cells.number("NumberOfBuildings") > 1:
        column = next(c for c in _COUNTED_ONCE if cells.text(c) not in {"", "0"})
        raise Unfit(column, words("oed-several-buildings"))


def _name(cells: Cells, _: Codes) -> str:
    whole = cells.text(NAME)
    return whole.removeprefix(NAMED) if whole.startswith(NAMED) else cells.text("LocName")


def _area(cells: Cells, _: Codes) -> Decimal | None:
    area, unit = cells.number("FloorArea"), cells.text("FloorAreaUnit") or SQUARE_FEET
    if unit not in {SQUARE_METRES, SQUARE_FEET}:
        raise Unfit("FloorAreaUnit", words("oed-area-unit"))
    metres = area if unit == SQUARE_METRES else area * FOOT * FOOT
    return metres or None


def _construction(cells: Cells, codes: Codes) -> str | None:
    code = cells.whole("ConstructionCode") or UNKNOWN_CONSTRUCTION
    found = ours_of(codes.construction, code)
    return found if found or code == UNKNOWN_CONSTRUCTION else "other"


def _sprinklers(cells: Cells, _: Codes) -> bool | None:
    known = _SPRINKLERS.get(cells.text("SprinklerType"))
    return True if known is None and cells.number("PercentSprinklered") else known


def _text(column: str) -> Callable[[Cells, Codes], str | None]:
    return lambda cells, _: cells.text(column) or None


def _year(column: str) -> Callable[[Cells, Codes], int | None]:
    return lambda cells, _: cells.whole(column) or None


def _storeys(cells: Cells, _: Codes) -> Decimal | None:
    text = cells.text("NumberOfStoreys")
    return None if text.startswith("-") else cells.number("NumberOfStoreys") or None


def _basement(cells: Cells, codes: Codes) -> str | None:
    return ours_of(codes.basement, cells.whole("Basement"))


def _ownership(cells: Cells, _: Codes) -> str:
    return "rent" if cells.number("IsTenant") else "own"


_READERS: Mapping[str, tuple[tuple[str, ...], Callable[[Cells, Codes], Any]]] = {
    "name": (("LocName", NAME), _name),
    "ownership": (("IsTenant",), _ownership),
    "address": (("StreetAddress",), _text("StreetAddress")),
    "postal_code": (("PostalCode",), _text("PostalCode")),
    "town": (("City",), _text("City")),
    "construction": (("ConstructionCode",), _construction),
    "year_built": (("YearBuilt",), _year("YearBuilt")),
    "storeys": (("NumberOfStoreys",), _storeys),
    "area_m2": (("FloorArea", "FloorAreaUnit"), _area),
    "roof_year": (("RoofYearBuilt",), _year("RoofYearBuilt")),
    "basement": (("Basement",), _basement),
    "sprinklers": (("SprinklerType", "PercentSprinklered"), _sprinklers),
    "province": (("AreaCode",), _text("AreaCode")),
}


_READ = {
    *(column for columns, _ in _READERS.values() for column in columns), *VALUES.values(),
    *VALUED.values(), *_COUNTED_ONCE, "PortNumber", "AccNumber", "LocNumber", "CountryCode",
    "LocCurrency", "LocInceptionDate", "LocExpiryDate", "LocPeril", "LocParticipation",
    "PayoutBasis", "OEDVersion",
}  # fmt: skip


def building_fields(cells: Cells, codes: Codes, written: Row) -> Fields:
    """Return what a row says of a building, by field.

    ``written`` is the row that the building on file would be written as: what the standard cannot
    hold is not lost where the row still says the same. Nothing is said by an unknown code.
    """
    found = {
        field: read(cells, codes)
        for field, (columns, read) in _READERS.items()
        if not cells.same(columns, written)
    }
    return {field: value for field, value in found.items() if value not in {None, ""}}


def valued(cells: Cells, thing: str) -> tuple[Decimal, date] | None:
    """Return the value of the building or its contents and its day, where the row says the day."""
    text = cells.text(VALUED[thing])
    amount = cells.number(VALUES[thing])
    if not text.startswith(VALUED_ON) or not amount:
        return None
    try:
        return amount, date.fromisoformat(text.removeprefix(VALUED_ON))
    except ValueError:
        raise Unfit(VALUED[thing], words("oed-not-a-day")) from None


def says_line(cells: Cells, thing: str, written: Row) -> bool:
    """Tell whether a row's terms of the building or its contents differ from ``written``."""
    terms = (c for c in LOCATION_COLUMNS if c.startswith("Loc") and c.endswith(PLACES[thing]))
    return not cells.same((*terms, "PayoutBasis", VALUES[thing]), written)


def line_fields(cells: Cells, thing: str, codes: Codes) -> Fields:
    """Return what a row says of the coverage of the building or its contents; empty when nothing.

    A location without a limit is insured for its total insured value.
    """
    place = PLACES[thing]
    limit = cells.number(f"LocLimit{place}") or cells.number(VALUES[thing])
    if not limit:
        return {}
    basis = ours_of(codes.basis, cells.whole("PayoutBasis"))
    return {"limit": limit, **_deductible(cells, place), **({"basis": basis} if basis else {})}


def _deductible(cells: Cells, place: str) -> Fields:
    kind, amount = cells.whole(f"LocDedType{place}"), cells.number(f"LocDed{place}")
    least, most = cells.number(f"LocMinDed{place}"), cells.number(f"LocMaxDed{place}")
    if kind == 0:
        if least or most:
            raise Unfit(f"LocMinDed{place}", words("oed-minimum-alone"))
        return dict.fromkeys(PERCENT_DEDUCTIBLE) | {"deductible": amount or None}
    of = {1: "loss", 2: "value"}.get(kind)
    if of is None or amount > 1:
        raise Unfit(f"LocDedType{place}", words("oed-deductible-type"))
    return {
        "deductible": None,
        "deductible_percent": amount,
        "deductible_percent_of": of,
        "deductible_minimum": least or None,
        "deductible_maximum": most or None,
    }


def refused_terms(cells: Cells) -> Iterator[Unfit]:
    """Yield what a row's terms say that these terms have no way to say."""
    for column, text in cells.row.items():
        if _MONEY_TERM.fullmatch(column) and _plain(text) and not _honoured(column):
            yield Unfit(column, words("oed-term-unknown"))
    if _plain(cells.text("LocParticipation")) not in {Decimal(0), Decimal(1)}:
        yield Unfit("LocParticipation", words("oed-term-unknown"))
    mine, theirs = (set(cells.text(c).split(";")) for c in ("LocPeril", "LocPerilsCovered"))
    if mine not in ({""}, {ALL_PERILS}) and mine != theirs:
        yield Unfit("LocPeril", words("oed-some-perils"))


def _honoured(column: str) -> bool:
    return column in LOCATION_COLUMNS and not column.startswith("LocLimitType")


def is_read(column: str) -> bool:
    """Tell whether a column of a location file is read, or refused by name when it says much."""
    return column in _READ or _MONEY_TERM.fullmatch(column) is not None
