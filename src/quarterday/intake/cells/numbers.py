"""Amounts, numbers, ratios and whole numbers as people and spreadsheets write them."""

from __future__ import annotations

import math
import re
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from typing import Literal

from quarterday.core.file.layout import CellKind
from quarterday.core.file.records.base import LARGEST
from quarterday.core.words import words
from quarterday.intake.cells.base import (
    BadCell,
    Readings,
    Said,
    Value,
    bad,
    is_unknown,
    plain_spaces,
    text_of,
)
from quarterday.intake.parse import Raw

Mark = Literal[",", ".", "?"]
_CURRENCY = re.compile(r"(?i)c\$|ca\$|\$\s*ca[dn]?\b|\bcad\b|\bcdn\b|dollars?|\$")
_FOREIGN = re.compile(r"(?i)us\$|\$\s*us|\busd\b|€|£|\beur\b|\bgbp\b")
_GROUPED = r"[1-9]\d{0,2}(?:[%s]\d{3})+"
_READS: dict[Mark, re.Pattern[str]] = {
    ".": re.compile(rf"(?:{_GROUPED % ', ’'}|\d+)(?:\.\d*)?|\.\d+".replace("’", "'’")),
    ",": re.compile(rf"(?:{_GROUPED % '. ’'}|\d+)(?:,\d*)?|,\d+".replace("’", "'’")),
}
_BY_LANGUAGE: dict[str, Mark] = {"en": ".", "fr": ","}
_CENT = Decimal("0.01")
_HIGHEST_RATIO = {
    "margin": Decimal(3),
    "deductible_percent": Decimal("0.5"),
    "automatic_increase": Decimal("0.5"),
    "income_growth": Decimal("0.5"),
}
_HUNDRED = Decimal(100)


def from_float(number: float) -> Decimal:
    """Return a spreadsheet's number exactly as it shows it: at most 15 significant digits."""
    if not math.isfinite(number):
        raise bad("not-a-number")
    return Decimal(f"{number:.15g}")


def highest_ratio(field: str) -> Decimal:
    """Return the highest ratio a bare number of a column can mean; a higher one is a percentage."""
    return _HIGHEST_RATIO.get(field, Decimal(1))


def _bare(text: str) -> tuple[str, bool]:
    """Return the digits and marks of a written number, and whether it is below zero."""
    if _FOREIGN.search(text):
        raise bad("other-currency")
    body = plain_spaces(_CURRENCY.sub("", text)).replace("−", "-")
    if body.startswith("(") and body.endswith(")"):
        return body[1:-1].strip(), True
    if body.startswith("-") or body.endswith("-"):
        return body.strip("-").strip(), True
    return body.removeprefix("+").strip(), False


def _readings(body: str) -> dict[Mark, Decimal]:
    """Return what the digits mean with each decimal mark that they can be read with."""
    found: dict[Mark, Decimal] = {}
    for mark, pattern in _READS.items():
        if pattern.fullmatch(body):
            digits = re.sub(rf"[^\d{re.escape(mark)}]", "", body).replace(mark, ".")
            found[mark] = Decimal(digits)
    return found


def marks_of(texts: Iterable[str]) -> set[Mark]:
    """Return the decimal marks that the clear values of a column have."""
    marks: set[Mark] = set()
    for text in texts:
        body = _evidence(text)
        readings = _readings(body)
        if len(readings) == 1 and not body.isdigit():
            marks |= set(readings)
    return marks


def _evidence(text: str) -> str:
    try:
        return _bare(text.replace("%", ""))[0]
    except BadCell:
        return ""


@dataclass(frozen=True, slots=True)
class _Marks:
    """What tells the decimal mark of a column: its clear values, and the language of its sheet."""

    of_column: frozenset[Mark]
    of_language: Mark | None

    def of(self, text: str) -> Mark | None:
        """Return the decimal mark of a text: the column's, else the sign's, else the language's.

        None when the column contradicts itself or nothing tells.
        """
        if len(self.of_column) == 1:
            return next(iter(self.of_column))
        by_sign = _mark_by_sign(text)
        return by_sign or (None if self.of_column else self.of_language)


def _written(text: str, marks: _Marks, *, is_money: bool = False) -> Decimal:
    """Return a written number; BadCell when it is none, or could be two.

    Money has no thousandths: ``1,234`` in a column of decimal commas is refused, not read as 1.234.
    """
    body, below_zero = _bare(text)
    readings = _readings(body)
    if not readings:
        raise bad("not-a-number")
    values = sorted(set(readings.values()))
    value = values[0] if len(values) == 1 else readings.get(marks.of(text) or "?")
    if value is None or (is_money and len(values) > 1 and value == values[0]):
        raise bad("two-readings", smaller=values[0], larger=values[1])
    return -value if below_zero else value


def _mark_by_sign(text: str) -> Mark | None:
    """Return the decimal mark that the place of the dollar sign tells, if any.

    In Canada the sign stands before an English amount and after a French one (common practice).
    """
    plain = plain_spaces(text).strip("()-− ")
    if plain.startswith("$"):
        return "."
    return "," if plain.endswith("$") else None


def _amount(value: Decimal, _: Readings) -> Value:
    if abs(value) >= LARGEST:
        raise bad("trillion")
    if value != value.quantize(_CENT):
        raise bad("fraction-of-cent")
    return value


def _number(value: Decimal, _: Readings) -> Value:
    if abs(value) >= LARGEST:
        raise bad("trillion")
    return value


def _whole(value: Decimal, _: Readings) -> Value:
    if abs(value) >= LARGEST:
        raise bad("trillion")
    if value != value.to_integral_value():
        raise bad("not-whole")
    return int(value)


_CHECKS: dict[CellKind, Callable[[Decimal, Readings], Value]] = {
    "amount": _amount,
    "number": _number,
    "ratio": _number,
    "integer": _whole,
}


class NumberReader:
    """Reads the cells of one column of numbers, knowing the column's other cells."""

    def __init__(
        self, kind: CellKind, field: str, raws: Iterable[Raw], language: str, readings: Readings
    ) -> None:
        cells = list(raws)
        self._kind: CellKind = kind
        self._field = field
        self._readings = readings
        self._check = _CHECKS[kind]
        texts = {cell for cell in cells if isinstance(cell, str)}
        self._marks = _Marks(frozenset(marks_of(texts)), _BY_LANGUAGE.get(language))
        self._as_percent = kind == "ratio" and self._percentages(cells)

    def __call__(self, raw: Raw) -> Value:
        """Return the number a cell holds; BadCell when it holds none."""
        if isinstance(raw, bool):
            raise bad("not-a-number")
        if isinstance(raw, int | float):
            return self._check(self._ratio(from_float(raw)), self._readings)
        if isinstance(raw, date):
            return self._of_date(raw)
        text = text_of(raw)
        if not text:
            return Said.BLANK
        if is_unknown(text):
            return Said.UNKNOWN
        try:
            return self._check(self._of_text(text), self._readings)
        except BadCell as refused:
            raise self._told(refused) from None

    def _told(self, refused: BadCell) -> BadCell:
        """Return a refusal with a remedy that fits a column of years or of whole numbers."""
        if self._kind != "integer" or refused.what != words("intake-not-a-number"):
            return refused
        fits = "year" if "year" in self._field else "count"
        return BadCell(refused.what, words(f"intake-not-a-{fits}-remedy"))

    def _of_text(self, text: str) -> Decimal:
        if "%" not in text:
            return self._ratio(_written(text, self._marks, is_money=self._kind == "amount"))
        if self._kind not in {"ratio", "number"}:
            raise bad("percent-here")
        return _written(text.replace("%", ""), self._marks) / _HUNDRED

    def _of_date(self, raw: date) -> Value:
        if "year" not in self._field:
            raise bad("date-for-number")
        self._readings.add("year-of-date")
        return raw.year

    def _ratio(self, value: Decimal) -> Decimal:
        """Return a bare number as the ratio it stands for: itself, or so many per cent."""
        if self._kind != "ratio":
            return value
        if not self._as_percent:
            return value
        if abs(value) <= highest_ratio(self._field) and value:
            raise BadCell(
                words("intake-two-ratios", ratio=value * _HUNDRED, percent=value),
                words("intake-two-ratios-remedy"),
            )
        return value / _HUNDRED

    def _percentages(self, cells: list[Raw]) -> bool:
        """Tell whether the column's bare numbers are percentages: one is too high for a ratio."""
        for raw in cells:
            if isinstance(raw, bool | date) or (isinstance(raw, str) and "%" in raw):
                continue
            try:
                value = _bare_value(raw, self._marks)
            except BadCell:
                continue
            if value is not None and abs(value) > highest_ratio(self._field):
                return True
        return False


def _bare_value(raw: Raw, marks: _Marks) -> Decimal | None:
    if isinstance(raw, int | float):
        return from_float(raw)
    text = text_of(raw)
    return _written(text, marks) if text and not is_unknown(text) else None
