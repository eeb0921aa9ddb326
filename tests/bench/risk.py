"""Costs of losses: one file, six alternatives, and its parts, in processor time."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from datetime import date
from statistics import median
from time import process_time

from quarterday.catalogue.load import reference
from quarterday.core.file.fold import File
from quarterday.core.review.case import Case
from quarterday.core.review.review import review
from quarterday.core.risk.cost import Effort
from quarterday.core.risk.risk import risk_of
from quarterday.invent.demo.book import demo_book
from tests.invent.conftest import _file_of

AS_OF = date(2026, 11, 25)
ROUNDS = 7


def timed(act: Callable[[], object]) -> float:
    """Return the median of the milliseconds of processor time that ``act`` takes."""
    spent = []
    for _ in range(ROUNDS):
        start = process_time()
        act()
        spent.append(process_time() - start)
    return median(spent) * 1000


def run() -> Iterator[str]:
    """Yield what the bench measures."""
    files: dict[str, File] = {a.id: _file_of(a) for a in demo_book()}
    canada, flagship = reference(), files["HW-1001"]
    count = len(risk_of(Case(flagship, canada, AS_OF)).comparison.costs)
    yield f"HW-1001, {count} alternatives, milliseconds of processor time:"
    for years, blocks in ((10_000, 1), (10_000, 10)):
        effort = Effort(years, blocks, error=0.0)
        spent = timed(lambda: risk_of(Case(flagship, canada, AS_OF), effort=effort))  # noqa: B023
        yield f"  {years * blocks:>7,} years {spent:8.1f}"
    yield f"  its review    {timed(lambda: review(flagship, canada, AS_OF)):8.1f}"
    start = process_time()
    for file in files.values():
        risk_of(Case(file, canada, AS_OF), effort=Effort(10_000, 1))
    each = (process_time() - start) / len(files) * 1000
    yield f"{len(files)} demo files, 10,000 years, each: {each:.1f}"
