"""What insured things are worth on the day of a loss: what some clauses measure a loss against."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from decimal import Decimal

from quarterday.core.figure import Node
from quarterday.core.file.records.terms import EVERYWHERE, Coverage

Key = tuple[str, str]  # coverage and location


@dataclass(frozen=True, slots=True)
class Values:
    """True values by coverage and location, and how much of new each has lost by wear (a ratio).

    ``assumed`` names values that nobody knows: the scheduled amount stands for them. ``aged`` does
    the same for wear. ``unstated`` names incomes of which the terms do not say how much a clause
    counts. ``evidence`` holds the figures behind the values.
    """

    worth: Mapping[Key, Decimal] = field(default_factory=dict)
    depreciation: Mapping[Key, Decimal] = field(default_factory=dict)
    assumed: frozenset[Key] = frozenset()
    aged: frozenset[Key] = frozenset()
    unstated: frozenset[Key] = frozenset()
    evidence: Mapping[Key, Node] = field(default_factory=dict)

    @property
    def places(self) -> frozenset[str]:
        """The places that values are known of."""
        return frozenset(location for _, location in self.worth) - {EVERYWHERE}

    def of(self, coverage: str, location: str) -> Decimal | None:
        """Return the value at a location; for everywhere the sum over all places, None unknown."""
        if (coverage, location) in self.worth:
            return self.worth[coverage, location]
        if location != EVERYWHERE:
            return None
        found = [worth for (kind, _), worth in self.worth.items() if kind == coverage]
        return sum(found, Decimal(0)) if found else None

    def of_lines(self, lines: tuple[Coverage, ...]) -> Decimal | None:
        """Return what several lines insure together; None when a value is not known."""
        found = [self.of(line.coverage, line.location) for line in lines]
        known = [worth for worth in found if worth is not None]
        return None if len(known) < len(found) else sum(known, Decimal(0))

    def wear(self, coverage: str, place: str) -> Decimal | None:
        """Return the depreciation at a place, else the one for everywhere; None when unknown."""
        for location in (place, EVERYWHERE):
            if (coverage, location) in self.depreciation:
                return self.depreciation[coverage, location]
        return None
