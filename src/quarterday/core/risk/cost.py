"""What losses cost the organisation under each alternative, in an average and in a bad year.

The mean is in closed form: clause by clause for one loss at a time, and by one transform a purse
for what yearly maximums and the shared limit change. Where a yearly clause feeds another, that part
is added from the simulation: only years with several losses can show it. Bad years come from the
simulation, whose losses are the same for every alternative.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field

import numpy as np

from quarterday.core.dates import Period
from quarterday.core.risk.sampling import (
    Sampled,
    Seen,
    bad_years,
    changed,
    exact,
    mean_of,
)
from quarterday.core.risk.severity import Floats
from quarterday.core.risk.together import Together, together
from quarterday.core.risk.trial import Trial
from quarterday.core.risk.years import Events, simulated
from quarterday.core.terms.settling.rows import Rows

TEN, HUNDRED = 10, 100
BAD = (TEN, HUNDRED)


@dataclass(frozen=True)
class Cost:
    """What losses cost under one alternative.

    ``by_peril`` is the mean of each of the model's perils, one loss at a time.
    """

    trial: Trial
    mean: Sampled
    bad: Mapping[int, Sampled]
    by_peril: tuple[float, ...]

    @property
    def id(self) -> str:
        """The alternative's id."""
        return self.trial.id


@dataclass(frozen=True)
class Change:
    """What an alternative changes beside the base: negative is less borne."""

    mean: Sampled
    bad: Mapping[int, Sampled]


@dataclass(frozen=True)
class Comparison:
    """All alternatives over the same ``years``; the first is the base."""

    years: int
    costs: tuple[Cost, ...]
    changes: Mapping[str, Change]


@dataclass(frozen=True, slots=True)
class Effort:
    """How long to simulate: blocks of ``years``, at most ``blocks``, until ``error`` is met.

    ``error`` is the sampling error of a bad year that is small enough (a ratio of it).
    """

    years: int = 10_000
    blocks: int = 10
    error: float = 0.05


def compared(
    trials: Sequence[Trial], account: str, effort: Effort, seed: str = "quarterday"
) -> Comparison:
    """Return what losses cost under each of ``trials``, which share a model."""
    first = trials[0]
    of_base = together(first)
    closed = {t.id: of_base if t is first else together(t, of_base) for t in trials}
    years = _Years(trials, sampled=None in closed.values())
    for block in range(effort.blocks):
        years.add(simulated(first.model, account, block, effort.years, seed))
        if _is_honest(years.yearly.values(), effort.error):
            break
    seen = {id: Seen.of(costs, BAD) for id, costs in years.yearly.items()}
    costs = tuple(
        _cost(t, t.means(None if t is first else first), closed[t.id], years, seen[t.id])
        for t in trials
    )
    return Comparison(
        years=len(years.yearly[first.id]),
        costs=costs,
        changes={c.id: _change(costs[0], c, years, seen) for c in costs[1:]},
    )


@dataclass
class _Years:
    """The simulated years: what each costs, and, ``sampled``, what its losses add together."""

    trials: Sequence[Trial]
    sampled: bool
    yearly: dict[str, Floats] = field(init=False)
    extra: dict[str, Floats] = field(init=False)

    def __post_init__(self) -> None:
        self.yearly = {trial.id: np.zeros(0) for trial in self.trials}
        self.extra = {t.id: np.zeros(0) for t in self.trials if self.sampled and t.is_yearly}

    def add(self, events: Events) -> None:
        """Add a block; terms of one period share its rows."""
        rows: dict[Period, Rows] = {}
        for trial in self.trials:
            period = trial.terms.period
            if period not in rows:
                rows[period] = trial.rows(events)
            costs = trial.yearly(events, rows[period])
            self.yearly[trial.id] = np.append(self.yearly[trial.id], costs)
            if trial.id in self.extra:
                more = trial.together(events)
                self.extra[trial.id] = np.append(self.extra[trial.id], more)


def _is_honest(yearly: Iterable[Floats], error: float) -> bool:
    bad = (found for costs in yearly for found in bad_years(costs, BAD).values())
    return all(b.error <= max(error * b.value, 1.0) for b in bad)


def _cost(
    trial: Trial, means: tuple[float, ...], closed: Together | None, years: _Years, seen: Seen
) -> Cost:  # fmt: skip
    extra = years.extra.get(trial.id)
    mean = sum(means) + (closed.total if closed and extra is None else 0.0)
    return Cost(
        trial=trial,
        mean=_shifted(mean, extra),
        bad=seen.bad,
        by_peril=means,
    )


def _shifted(mean: float, extra: Floats | None) -> Sampled:
    if extra is None:
        return exact(mean)
    more = mean_of(extra)
    return Sampled(mean + more.value, mean + more.low, mean + more.high)


def _change(base: Cost, other: Cost, years: _Years, seen: Mapping[str, Seen]) -> Change:
    pair = [years.extra[c.id] for c in (other, base) if c.id in years.extra]
    if not pair:
        mean = exact(other.mean.value - base.mean.value)
    else:
        none = np.zeros(1)
        more = years.extra.get(other.id, none) - years.extra.get(base.id, none)
        mean = _shifted(sum(other.by_peril) - sum(base.by_peril), more)
    bad = {n: changed(seen[base.id], seen[other.id], n) for n in BAD}
    return Change(mean, bad)
