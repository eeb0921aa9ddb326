"""Facts of the terms and of valuations, and the figures of one building made from them."""

from __future__ import annotations

from dataclasses import dataclass

from quarterday.core.figure import Fact, Figure, Node, Unit, Value
from quarterday.core.file.fold import File
from quarterday.core.file.records import Building, Terms, Valuation
from quarterday.core.file.records.terms import Coverage
from quarterday.core.words import Rate, Term, Words, words


def line_fact(file: File, terms: Terms, line: Coverage, name: str, unit: Unit) -> Fact:
    """Return the field ``name`` of a coverage line as a fact with the origin of its terms."""
    entry, value = file.entry_of(terms), getattr(line, name)
    shown: Value = value
    if value is not None and unit in ("money", "rate"):
        shown = terms.money(value) if unit == "money" else Rate(value)
    return Fact(
        id=f"terms/{terms.key}/{line.coverage}@{line.location}/{name}",
        value=shown,
        unit=unit,
        label=words(f"field-{name.replace('_', '-')}"),
        origin=entry.origin,
        recorded_on=entry.recorded_at.date(),
    )


def basis_fact(file: File, valuation: Valuation) -> Fact:
    """Return how a valuation was made, by its name in the reader's language."""
    entry = file.entry_of(valuation)
    return Fact(
        id=f"valuation/{valuation.key}/basis",
        value=Term("valuation-basis", valuation.basis),
        unit="text",
        label=words("field-basis"),
        origin=entry.origin,
        recorded_on=entry.recorded_at.date(),
    )


@dataclass(frozen=True, slots=True)
class Maker:
    """Makes the figures of one building: their ids end in its id, their labels name it."""

    building: Building

    def __call__(
        self,
        what: str,
        value: Value,
        unit: Unit,
        how: Words,
        inputs: tuple[Node, ...],
        label: Words | None = None,
    ) -> Figure:
        """Return the figure ``what@building``, labelled by the wording ``values-what``."""
        named = label or words(f"values-{what}", building=self.building.name)
        return Figure(f"{what}@{self.building.id}", value, unit, named, how, inputs)
