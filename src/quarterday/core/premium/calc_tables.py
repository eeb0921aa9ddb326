"""Calculations on their own: a two-way table, and why a premium moved.

Amounts come in as text or whole numbers, never as floats, and go out as text.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from decimal import Decimal
from fractions import Fraction
from typing import Self

from pydantic import Field, model_validator

from quarterday.core.file.records.base import Number, Part
from quarterday.core.given import Unusable, read
from quarterday.core.money import CENT, Money, round_to
from quarterday.core.premium.calc import Done, shown
from quarterday.core.premium.rounding import TwoWay, controlled
from quarterday.core.premium.split import EFFECTS, ChargedLine, ChargedTax, LineSplit, split
from quarterday.core.reference import Reference
from quarterday.core.words import words

ZERO = Decimal("0.00")
USUAL = frozenset({"exposure", "rate", "added", "dropped", "tax-base", "tax-rate"})


class TableInputs(Part):
    """What ``calc apportion-table`` needs: exact cells by row and column."""

    cells: Mapping[str, Mapping[str, Number]] = Field(min_length=1)
    unit: Number = CENT


class ChangedLine(Part):
    """A line before or after: its amount, or an exposure and a rate."""

    line: str
    amount: Number | None = None
    exposure: Number | None = None
    rate: Number | None = None

    @model_validator(mode="after")
    def _one_or_both(self) -> Self:
        rated = self.exposure is not None and self.rate is not None
        if rated == (self.amount is not None):
            raise Unusable(words("split-amount-or-rate", line=self.line))
        return self

    def charged(self) -> ChargedLine:
        """Return the line as charged, to the cent."""
        amount = self.amount
        if amount is None:
            amount = (self.exposure or Decimal(0)) * (self.rate or Decimal(0))
        return ChargedLine((self.line, "*", "premium"), round_to(amount), self.exposure)


class Taxed(Part):
    """A tax: its amount, what it was laid on, and the rate."""

    amount: Number = Decimal(0)
    base: Number = Decimal(0)
    rate: Number = Decimal(0)

    def charged(self) -> ChargedTax:
        """Return the tax as charged, to the cent."""
        return ChargedTax(round_to(self.amount), self.base, self.rate)


class SplitInputs(Part):
    """What ``calc split-change`` needs; a tax given as an amount alone was laid on all lines."""

    before: tuple[ChangedLine, ...]
    after: tuple[ChangedLine, ...]
    tax_before: Number | Taxed = Taxed()
    tax_after: Number | Taxed = Taxed()


def apportion_table(given: Mapping[str, object], _reference: Reference) -> Done:
    """Return ``cells``, ``rows``, ``columns``, ``total`` and ``steps`` for TableInputs.

    Unusable for an unknown key or a unit that is not above zero.
    """
    inputs = read(TableInputs, given)
    if inputs.unit <= 0:
        raise Unusable(words("apportion-unit", unit=inputs.unit))
    exact = {(r, c): Fraction(v) for r, row in inputs.cells.items() for c, v in row.items()}
    done = TwoWay(controlled(exact, inputs.unit))
    step = words("calc-table", rows=len(done.rows()), columns=len(done.columns()), unit=inputs.unit)
    return {
        "cells": {
            r: {c: shown(done.cells[r, c], inputs.unit) for c in row}
            for r, row in inputs.cells.items()
        },
        "rows": {r: shown(amount, inputs.unit) for r, amount in done.rows().items()},
        "columns": {c: shown(amount, inputs.unit) for c, amount in done.columns().items()},
        "total": shown(done.total, inputs.unit),
        "steps": (step,),
    }


def split_change(given: Mapping[str, object], _reference: Reference) -> Done:
    """Return ``effects``, ``lines``, ``before``, ``after``, ``total`` and ``steps``.

    ``effects`` has the usual six, and others where they are something. Unusable for an unknown
    key or a line that is neither an amount nor an exposure and a rate.
    """
    inputs = read(SplitInputs, given)
    before = [line.charged() for line in inputs.before]
    after = [line.charged() for line in inputs.after]
    found = split(before, after, _tax(inputs.tax_before, before), _tax(inputs.tax_after, after))
    amounts = {"before": found.before, "after": found.after, "change": found.change}
    step = words("calc-split", **{name: Money(amount) for name, amount in amounts.items()})
    return {
        "effects": {
            _name(e): shown(v) for e in EFFECTS if (v := found.effects.get(e, ZERO)) or e in USUAL
        },
        "lines": [_line(line) for line in found.lines if line.before or line.after],
        "before": shown(found.before),
        "after": shown(found.after),
        "total": shown(found.change),
        "steps": (step,),
    }


def _tax(given: Decimal | Taxed, lines: Sequence[ChargedLine]) -> ChargedTax:
    if isinstance(given, Taxed):
        return given.charged()
    base = sum((line.amount for line in lines), ZERO)
    return ChargedTax(round_to(given), base, given / base if base else ZERO)


def _name(effect: str) -> str:
    return effect.replace("-", "_")


def _line(line: LineSplit) -> dict[str, object]:
    return {
        "line": line.key[0],
        "before": shown(line.before),
        "after": shown(line.after),
        "effects": {_name(e): shown(v) for e, v in line.effects.items()},
    }
