"""What the terms insure at a building: its own amount, or its part of a blanket.

Lines that name the same blanket share one amount: the limit of the line whose basis is
``blanket`` where there is one, else the sum of the scheduled amounts. A line for every place
without a blanket's name is a blanket over all buildings that have no line of their own.
"""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal

from quarterday.core.file.records import Building, Terms
from quarterday.core.file.records.terms import EVERYWHERE, Coverage
from quarterday.core.money import Money, total
from quarterday.core.review.case import Case
from quarterday.core.values.contents import worksheet
from quarterday.core.values.cost import costs_of
from quarterday.core.values.index import NotCoveredError


def line_of(terms: Terms, building: Building) -> Coverage | None:
    """Return the line that insures a building for an amount, or None.

    A line for every place is taken to mean the buildings the organisation owns or looks after.
    """
    line = terms.find("building", building.id)
    if line is None or line.limit is None:
        return None
    return None if line.location == EVERYWHERE and building.ownership == "rent" else line


def shares_amount(line: Coverage) -> bool:
    """Tell whether a line's amount stands for more than one building."""
    return line.blanket is not None or line.location == EVERYWHERE


def lines_under(terms: Terms, line: Coverage) -> tuple[Coverage, ...]:
    """Return the building and contents lines that share the amount of ``line``, itself included."""
    if line.blanket is None:
        return (line,)
    kinds = ("building", "contents")
    return tuple(c for c in terms.coverages if c.blanket == line.blanket and c.coverage in kinds)


def carried(terms: Terms, line: Coverage) -> Money:
    """Return the amount insured that ``line`` belongs to: its own, or its blanket's."""
    lines = lines_under(terms, line)
    whole = [c.limit for c in lines if c.limit_basis == "blanket" and c.limit is not None]
    parts = [c.limit for c in lines if c.limit is not None]
    return terms.money(max(whole) if whole else sum(parts, Decimal(0)))


def most_for(terms: Terms, line: Coverage) -> Money:
    """Return the most ``line`` pays at its place: a margin clause caps its part of a blanket."""
    amount = carried(terms, line)
    scheduled = line.limit if line.limit_basis != "blanket" else None
    if line.margin is None or scheduled is None or line.blanket is None:
        return amount
    return min(amount, terms.money(scheduled) * line.margin)


def value_under(case: Case, terms: Terms, line: Coverage) -> Money:
    """Return what everything that shares the amount of ``line`` costs at the end of the term.

    A building without a usable valuation counts with its scheduled amount; contents with what
    their worksheet adds up to, else with their scheduled amount.
    """
    amounts = (a for item in lines_under(terms, line) for a in _amounts(case, terms, item))
    return total(amounts, terms.currency)


def _amounts(case: Case, terms: Terms, line: Coverage) -> Iterator[Money]:
    of = _cost if line.coverage == "building" else _contents
    scheduled = terms.money(line.limit or Decimal(0)) if line.limit_basis != "blanket" else None
    for building in _places(case, terms, line):
        found = of(case, building) or scheduled
        if found is not None:
            yield found


def _places(case: Case, terms: Terms, line: Coverage) -> tuple[Building, ...]:
    if line.location != EVERYWHERE:
        return tuple(b for b in case.file.buildings if b.id == line.location)
    return tuple(b for b in case.file.buildings if terms.find(line.coverage, b.id) == line)


def _cost(case: Case, building: Building) -> Money | None:
    try:
        costs = costs_of(case, building)
    except NotCoveredError:
        return None
    return costs.at_term_end.money if costs else None


def _contents(case: Case, building: Building) -> Money | None:
    found = worksheet(case, building)
    return found.money if found else None
