"""Whether terms give a coverage: by a line, by the shared limit, or by a clause of a line."""

from __future__ import annotations

from collections.abc import Callable

from quarterday.core.file.records import Terms
from quarterday.core.file.records.terms import EVERYWHERE, Coverage

SHARED = "shared-limit"  # what gives a coverage that only the shared limit tops up
BY_CLAUSE: dict[str, Callable[[Coverage], bool]] = {
    "inflation-protection": lambda line: bool(line.automatic_increase),
    "defence-costs": lambda line: line.defence is not None,
    "punitive-damages": lambda line: "punitive" in (line.damages or ()),
}


def lines_of(terms: Terms, coverage: str) -> tuple[Coverage, ...]:
    """Return the lines that give ``coverage``; a limit of zero gives nothing."""
    return tuple(line for line in terms.coverages if line.coverage == coverage and line.limit != 0)


def within(terms: Terms, coverage: str) -> tuple[str, ...]:
    """Return what gives ``coverage`` without a line of its own, in the order of the terms.

    That is the coverages whose clauses state it, and SHARED where the shared limit tops it up.
    """
    clause, shared = BY_CLAUSE.get(coverage), terms.shared_limit
    stated = (line.coverage for line in terms.coverages if clause and clause(line))
    tops_up = shared is not None and coverage in shared.tops_up
    return (*dict.fromkeys(stated), *((SHARED,) if tops_up else ()))


def gives(terms: Terms, coverage: str, location: str | None = None) -> bool:
    """Tell whether ``terms`` give ``coverage`` (at ``location``, or anywhere when None)."""
    places = {line.location for line in lines_of(terms, coverage)}
    if location is not None:
        return bool(places & {location, EVERYWHERE})
    return bool(places) or bool(within(terms, coverage))
