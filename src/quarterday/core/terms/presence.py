"""Whether terms give a coverage: by a line, by the shared limit, or by a clause of a line."""

from __future__ import annotations

from collections.abc import Callable

from quarterday.core.file.records import Terms
from quarterday.core.file.records.terms import EVERYWHERE, Coverage

BY_CLAUSE: dict[str, Callable[[Coverage], bool]] = {
    "inflation-protection": lambda line: bool(line.automatic_increase),
    "defence-costs": lambda line: line.defence is not None,
    "punitive-damages": lambda line: "punitive" in (line.damages or ()),
}


def lines_of(terms: Terms, coverage: str) -> tuple[Coverage, ...]:
    """Return the lines that give ``coverage``; a limit of zero gives nothing."""
    return tuple(line for line in terms.coverages if line.coverage == coverage and line.limit != 0)


def gives(terms: Terms, coverage: str, location: str | None = None) -> bool:
    """Tell whether ``terms`` give ``coverage`` (at ``location``, or anywhere when None)."""
    places = {line.location for line in lines_of(terms, coverage)}
    if location is not None:
        return bool(places & {location, EVERYWHERE})
    shared = terms.shared_limit
    clause = BY_CLAUSE.get(coverage)
    return (
        bool(places)
        or (shared is not None and coverage in shared.tops_up)
        or (clause is not None and any(map(clause, terms.coverages)))
    )
