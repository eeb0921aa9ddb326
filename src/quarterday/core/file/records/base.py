"""What every record shares: frozen, validated, canonical, with a kind and a key."""

from __future__ import annotations

import unicodedata
from datetime import date
from decimal import Decimal
from typing import Annotated, ClassVar, Self

from pydantic import AfterValidator, BaseModel, BeforeValidator, ConfigDict, Field, PlainSerializer

from quarterday.core.dates import Period
from quarterday.core.file.entry import canonical

LARGEST = Decimal(10) ** 12
SMALLEST = -30  # the power of ten below which a number can only be a mistake
EARLIEST, LATEST = date(1900, 1, 1), date(2200, 1, 1)


def unkeepable(text: str) -> str:
    """Return the first character of ``text`` that no record keeps, as ``U+001B``; else nothing.

    Those are control characters, but for line ends and tabs, and lone surrogates.
    """
    if text.isascii() and text.isprintable():
        return ""
    bad = (c for c in text if unicodedata.category(c) in {"Cc", "Cs"} and c not in "\n\t")
    return next((f"U+{ord(c):04X}" for c in bad), "")


def _clean(text: str) -> str:
    """Return ``text`` in Unicode NFC; refuse what cannot be kept."""
    if bad := unkeepable(text):
        raise ValueError(f"holds a character that cannot be kept ({bad})")
    return unicodedata.normalize("NFC", text)


def _one_line(text: str) -> str:
    return " ".join(_clean(text).split())


def _no_float(value: object) -> object:
    if isinstance(value, bool | float):
        raise ValueError("must be an exact number, not a floating-point one")  # noqa: TRY004
    return value


def _cents(value: Decimal) -> Decimal:
    if abs(value) >= LARGEST:
        raise ValueError("is a trillion or more; check the number")
    if value != value.quantize(Decimal("0.01")):
        raise ValueError("has fractions of a cent")
    return value.quantize(Decimal("0.01")) + Decimal("0.00")


def _plain(value: Decimal) -> Decimal:
    if abs(value) >= LARGEST:
        raise ValueError("is a trillion or more; check the number")
    if value and value.adjusted() < SMALLEST:
        raise ValueError("has more zeros after the point than any real number; check it")
    return Decimal(0) if not value else value.normalize() + Decimal(0)


def _fixed_point(value: Decimal) -> str:
    return f"{value:f}"


def _sane_day(day: date) -> date:
    if not EARLIEST < day < LATEST:
        raise ValueError(f"lies outside {EARLIEST.year} to {LATEST.year}; check the year")
    return day


_AsText = PlainSerializer(_fixed_point, return_type=str, when_used="json")
Line = Annotated[str, AfterValidator(_one_line), Field(max_length=300)]
Prose = Annotated[str, AfterValidator(_clean), Field(max_length=10_000)]
Slug = Annotated[str, AfterValidator(_one_line), Field(min_length=1, max_length=80)]
Amount = Annotated[Decimal, BeforeValidator(_no_float), AfterValidator(_cents), _AsText]
Number = Annotated[Decimal, BeforeValidator(_no_float), AfterValidator(_plain), _AsText]
Day = Annotated[date, AfterValidator(_sane_day)]
Year = Annotated[int, Field(ge=1500, le=2199)]
Count = Annotated[int, Field(ge=0, le=100_000_000)]


class Part(BaseModel):
    """A frozen, validated part of a record; unknown names are refused."""

    model_config = ConfigDict(frozen=True, extra="forbid", str_strip_whitespace=True)


class Record(Part):
    """One thing a file knows, whole; ``kind`` and ``key`` say which."""

    kind: ClassVar[str]

    @property
    def key(self) -> str:
        """What tells this record from others of its kind in the same file."""
        return ""

    def body(self) -> str:
        """Return the record as canonical JSON, without the fields that are not known."""
        return canonical(self.model_dump(mode="json", exclude_none=True))

    @classmethod
    def read(cls, body: str) -> Self:
        """Return the record that ``body`` (canonical JSON) holds."""
        return cls.model_validate_json(body)


class Span(Part):
    """Days from ``start`` (included) to ``end`` (not included)."""

    start: Day
    end: Day

    @property
    def period(self) -> Period:
        """The same days as a period; ValueError when they end before they start."""
        return Period(self.start, self.end)
