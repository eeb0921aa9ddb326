"""Which line of the terms answers what was lost, and why none does."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Literal

from quarterday.core.file.records import Terms
from quarterday.core.file.records.terms import EVERYWHERE, Coverage
from quarterday.core.reference import Reference
from quarterday.core.terms.losses.components import COMPONENTS, PUNISHING
from quarterday.core.terms.losses.loss import HOURS_A_MONTH
from quarterday.core.terms.settling.refusals import refused

NotCovered = Literal["no-cover", "excluded-cause", "damages-excluded", "damages-unstated"]


@dataclass(frozen=True, slots=True)
class Item:
    """What a row of a loss is: what was lost, where, why, in which month, over how many hours."""

    component: str
    place: str
    cause: str
    month: int = 1
    hours: int = HOURS_A_MONTH


@dataclass(frozen=True, slots=True)
class Answer:
    """Which lines answer an item: its own first, then those whose limit that is part of.

    ``lines`` is empty, and ``why_not`` says why, when none does; ``coverage`` is then the one that
    would be asked.
    """

    item: Item
    coverage: str
    lines: tuple[Coverage, ...] = ()
    why_not: NotCovered | None = None

    @property
    def line(self) -> Coverage | None:
        """The line that answers, or None."""
        return self.lines[0] if self.lines else None


def answer(terms: Terms, reference: Reference, item: Item) -> Answer:
    """Return the line of ``terms`` that answers ``item``; Refused where the place is not told."""
    asked = [
        coverage
        for coverage in COMPONENTS[item.component].coverages
        if coverage in reference.coverages and item.cause in reference.coverages[coverage].answers
    ]
    first = asked[0] if asked else COMPONENTS[item.component].coverages[0]
    excluded = False
    for coverage in asked:
        line = given(terms, coverage, item.place)
        if line is None:
            continue
        if item.cause not in line.excluded_causes:
            return _answered(terms, reference, item, line)
        excluded, first = True, coverage
    _refuse_unplaced(terms, item, asked)
    return Answer(item, first, why_not="excluded-cause" if excluded else "no-cover")


def given(terms: Terms, coverage: str, place: str) -> Coverage | None:
    """Return the line that gives a coverage at a place; one of no amount in the shared limit.

    A limit of zero gives nothing, except to what the shared limit tops up.
    """
    line = terms.find(coverage, place)
    if line is not None and (line.limit != 0 or is_topped_up(terms, line)):
        return line
    shared = terms.shared_limit
    if shared is not None and coverage in shared.tops_up:
        return Coverage.model_validate({"coverage": coverage, "limit": 0, "in_shared_limit": True})
    return None


def is_topped_up(terms: Terms, line: Coverage) -> bool:
    """Tell whether the shared limit tops up a line."""
    shared = terms.shared_limit
    return shared is not None and (line.in_shared_limit or line.coverage in shared.tops_up)


def _refuse_unplaced(terms: Terms, item: Item, asked: list[str]) -> None:
    placed = [line.location for line in terms.coverages if line.coverage in asked]
    if item.place == EVERYWHERE and placed:
        raise refused("needs-place", component=item.component, known=tuple(sorted(set(placed))))


def _answered(terms: Terms, reference: Reference, item: Item, line: Coverage) -> Answer:
    if item.component in PUNISHING:
        why_not = _damages(line, item.component)
        own = _own_line(terms, reference, item) if why_not else None
        if why_not and own is None:
            return Answer(item, line.coverage, why_not=why_not)
        line = own or line
    return Answer(item, line.coverage, tuple(_chain(terms, line, item.place)))


def _damages(line: Coverage, kind: str) -> NotCovered | None:
    if line.damages is None:
        return "damages-unstated"
    return None if kind in line.damages else "damages-excluded"


def _own_line(terms: Terms, reference: Reference, item: Item) -> Coverage | None:
    """Return the line for punitive damages alone, where the terms have one for this cause."""
    name = f"{item.component}-damages"
    kind = reference.coverages.get(name)
    line = given(terms, name, item.place)
    return line if kind is not None and item.cause in kind.answers else None


def _chain(terms: Terms, line: Coverage, place: str) -> Iterator[Coverage]:
    """Yield ``line`` and the lines above it; the terms were checked for circles."""
    above: Coverage | None = line
    while above is not None:
        yield above
        above = terms.find(above.sublimit_of, place) if above.sublimit_of else None
