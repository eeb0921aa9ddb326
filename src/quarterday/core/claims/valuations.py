"""What the loss runs of several years say of the same claims: the links of a development.

A loss run belongs to the calendar year of the day it was valued on; of several runs of one year the
newest counts. A file gives a link from one year to the next only where both have a run. A claim
that a run does not show is as the run before had it, or nothing before it was first shown.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable
from dataclasses import dataclass, field
from itertools import pairwise

from quarterday.core.claims.counted import linked
from quarterday.core.claims.development import Development, Latest, Link, developed
from quarterday.core.file.records import Claim

Cell = tuple[int, int]  # year of loss, and age in years


@dataclass(slots=True)
class Valuations:
    """Sums over files: by year of loss and age what links begin and end with, and what is latest.

    ``files`` counts the files whose claims were valued in two years in a row.
    """

    links: dict[Cell, tuple[float, float]] = field(default_factory=dict)
    latest: dict[Cell, float] = field(default_factory=dict)
    files: int = 0

    def add(self, versions: Iterable[Claim]) -> None:
        """Count one file: its claims in every version that was recorded, oldest first."""
        known = [claim for claim in versions if claim.valued_on is not None]
        events, runs = _events(known), sorted({_run(claim) for claim in known})
        pairs = [(a, b) for a, b in pairwise(runs) if b == a + 1]
        for loss_year, by_run in events:
            for before, after in pairs:
                if loss_year <= before:
                    self._link((loss_year, before - loss_year), _at(by_run, before),
                               _at(by_run, after))  # fmt: skip
            cell = loss_year, runs[-1] - loss_year
            self.latest[cell] = self.latest.get(cell, 0.0) + _at(by_run, runs[-1])
        self.files += bool(pairs)

    def _link(self, cell: Cell, before: float, after: float) -> None:
        a, b = self.links.get(cell, (0.0, 0.0))
        self.links[cell] = a + before, b + after

    def developed(self) -> Development | None:
        """Return the development, its forecasts in the order of ``latest``; None without links."""
        if not self.links:
            return None
        ages = max(age for _, age in self.links) + 1
        links = [[Link(*self.links[cell]) for cell in sorted(self.links) if cell[1] == age]
                 for age in range(ages)]  # fmt: skip
        return developed(links, [Latest(age, amount) for (_, age), amount in self.latest.items()])


def _run(claim: Claim) -> int:
    assert claim.valued_on is not None
    return claim.valued_on.year


def _events(known: list[Claim]) -> list[tuple[int, dict[int, float]]]:
    """Return each event's year of loss, and what it cost the insurer in each run that shows it."""
    newest: dict[str, Claim] = {}
    runs: dict[tuple[str, int], Claim] = {}
    for claim in known:
        newest[claim.number] = claim
        before = runs.get((claim.number, _run(claim)))
        if before is None or _day(before) <= _day(claim):
            runs[claim.number, _run(claim)] = claim
    found = []
    for group in linked(newest.values()):
        numbers = {claim.number for claim in group}
        by_run: dict[int, Claim] = {}
        for (number, run), claim in runs.items():
            if number in numbers and (run not in by_run or _day(by_run[run]) <= _day(claim)):
                by_run[run] = claim
        amounts = {run: float(claim.incurred) for run, claim in by_run.items()}
        if min(amounts) >= group[0].date_of_loss.year:  # else the run cannot have known of it
            found.append((group[0].date_of_loss.year, amounts))
    return found


def _day(claim: Claim) -> int:
    assert claim.valued_on is not None
    return claim.valued_on.toordinal()


def _at(by_run: dict[int, float], run: int) -> float:
    """Return what an event had come to by a run; nothing before it was first shown."""
    shown = [year for year in by_run if year <= run]
    return by_run[max(shown)] if shown else 0.0


@dataclass(frozen=True, slots=True)
class YearForecast:
    """What the claims of a year of loss cost so far, and in the end with its standard error."""

    year: int
    latest: float
    ultimate: float
    error: float


def by_year(found: Valuations) -> tuple[tuple[YearForecast, ...], YearForecast] | None:
    """Return the forecast of each year of loss, oldest first, and of all (year 0); None: no links.

    Where files of one year of loss were valued last at different ages, their errors are taken to
    move together, which is the careful side.
    """
    done = found.developed()
    if done is None:
        return None
    sums: dict[int, list[float]] = defaultdict(lambda: [0.0, 0.0, 0.0])
    for (year, _), one in zip(found.latest, done.forecasts, strict=True):
        for place, amount in enumerate((one.latest, one.ultimate, one.error)):
            sums[year][place] += amount
    years = tuple(YearForecast(year, *sums[year]) for year in sorted(sums))
    total = done.total
    return years, YearForecast(0, total.latest, total.ultimate, total.error)
