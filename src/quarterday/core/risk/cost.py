"""What losses cost the organisation under each alternative, in an average and in a bad year.

The mean is in closed form for every clause that looks at one loss at a time. What yearly maximums
and the shared limit change is added from the simulation: only years with several losses can show
it. Bad years come from the simulation, whose losses are the same for every alternative.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from functools import cached_property

import numpy as np

from quarterday.core.file.records import Terms
from quarterday.core.reference import Reference
from quarterday.core.risk.curves import Codes, Curve, discover
from quarterday.core.risk.perils import Model
from quarterday.core.risk.sampling import (
    Sampled,
    bad_year,
    change_of_bad_year,
    exact,
    mean_of,
)
from quarterday.core.risk.severity import Floats
from quarterday.core.risk.years import Events, simulated
from quarterday.core.terms.settling.asked import Asked
from quarterday.core.terms.settling.machine import Plan
from quarterday.core.terms.settling.plan import asked_of, plan
from quarterday.core.terms.settling.routing import Answer
from quarterday.core.terms.settling.values import Values

TEN, HUNDRED = 10, 100
BAD = (TEN, HUNDRED)


@dataclass(frozen=True)
class Trial:
    """One alternative made executable for a model's perils."""

    id: str
    model: Model
    terms: Terms
    asked: Asked
    plan: Plan
    _curves: tuple[tuple[Curve, ...], ...] | None = field(default=None, repr=False)

    @classmethod
    def of(cls, id: str, model: Model, terms: Terms, reference: Reference, values: Values) -> Trial:
        """Return terms (checked before) made executable; Refused for what cannot be honoured."""
        asked = asked_of(terms, reference, model.items, values)
        return cls(id, model, terms, asked, plan(asked))

    @property
    def answered_by(self) -> frozenset[str]:
        """The coverages that some peril meets under these terms."""
        return frozenset(line.coverage for answer in self.asked.answers for line in answer.lines)

    @property
    def is_yearly(self) -> bool:
        """Whether a clause adds up the losses of a year."""
        return any(move.how.per == "year" for move in self.plan.moves)

    @cached_property
    def _starts(self) -> Codes:
        """The days on which a clause begins or ends to hold within the period, its first before."""
        first, last = self.terms.start.toordinal(), self.terms.end.toordinal()
        days = {
            day
            for move in self.plan.moves
            for days in (move.since, move.before)
            for day in days or ()
            if day is not None and first < day < last
        }
        return np.array(sorted({first, *days}), dtype=np.int64)

    @cached_property
    def _by_peril(self) -> tuple[tuple[Answer, ...], ...]:
        """What answers each peril, and its place."""
        answers = dict(zip(self.model.items, self.asked.answers, strict=True))
        return tuple(tuple(answers[item] for item in p.items) for p in self.model.perils)

    def settles_like(self, other: Trial) -> tuple[bool, ...]:
        """Tell for each peril whether ``other`` settles a loss of it, alone, just as this does.

        It does where the same lines answer, and nothing that stands over them differs.
        """
        if self._over != other._over:
            return (False,) * len(self.model.perils)
        return tuple(a == b for a, b in zip(self._by_peril, other._by_peril, strict=True))

    @property
    def _over(self) -> tuple[object, ...]:
        """What stands over several lines: the period, umbrellas, the shared limit, blankets."""
        terms = self.terms
        lines = tuple(c for c in terms.coverages if c.coverage == "umbrella" or c.blanket)
        return terms.period, lines, terms.shared_limit, terms.deductible_rule

    def curves(self, like: Trial | None = None) -> tuple[tuple[Curve, ...], ...]:
        """Return what is borne of one loss alone: by peril, a curve a stretch of the period.

        What ``like`` settles the same way is taken from there.
        """
        if self._curves is None:
            object.__setattr__(self, "_curves", self._found(like))
        assert self._curves is not None
        return self._curves

    def _found(self, like: Trial | None) -> tuple[tuple[Curve, ...], ...]:
        if like is None:
            return self.discovered(self._starts)
        same = like.settles_like(self)
        perils = tuple(p for p, s in zip(self.model.perils, same, strict=True) if not s)
        terms, reference, values = self.terms, self.asked.reference, self.asked.values
        alone = Trial.of(self.id, Model(perils), terms, reference, values)
        made = iter(alone.discovered(self._starts))
        return tuple(own if s else next(made) for own, s in zip(like.curves(), same, strict=True))

    def discovered(self, starts: Codes) -> tuple[tuple[Curve, ...], ...]:
        """Return the curves of all perils, found anew, for stretches that begin on ``starts``."""
        perils, n = self.model.perils, len(starts)
        if not perils:
            return ()

        def borne(curve: Codes, size: Floats) -> Floats:
            return self._alone(curve // n, size, starts[curve % n])

        made = discover(borne, [peril.marks for peril in perils for _ in range(n)])
        return tuple(made[at * n : at * n + n] for at in range(len(perils)))

    def _alone(self, peril: Codes, size: Floats, day: Codes) -> Floats:
        """Return what is borne of each loss as if it were the only one of its year."""
        rows, event = self.model.rows(peril, size, np.arange(len(size)), day)
        return added(event, self.plan.settle(rows).borne, len(size))

    def means(self, like: Trial | None = None) -> tuple[float, ...]:
        """Return what each peril costs in an average year, one loss at a time, in closed form."""
        last = self.terms.end.toordinal()
        parts = np.diff(np.append(self._starts, last)) / (last - self._starts[0])
        return tuple(
            peril.rate * sum(
                float(part) * curve.mean(peril.severity)
                for part, curve in zip(parts, curves, strict=True)
            )
            for peril, curves in zip(self.model.perils, self.curves(like), strict=True)
        )  # fmt: skip

    def _days(self, events: Events) -> Codes:
        first, last = self.terms.start.toordinal(), self.terms.end.toordinal()
        return first + (events.moment * (last - first)).astype(np.int64)

    def yearly(self, events: Events) -> Floats:
        """Return what each simulated year costs."""
        rows, _ = self.model.rows(events.peril, events.size, events.year, self._days(events))
        return added(rows.year, self.plan.settle(rows).borne, events.years)

    def together(self, events: Events) -> Floats:
        """Return what each year costs more (or less) because its losses add up."""
        crowd = events.crowded()
        alone = self._alone(crowd.peril, crowd.size, self._days(crowd))
        return self.yearly(crowd) - added(crowd.year, alone, events.years)


def added(groups: Codes, amounts: Floats, count: int) -> Floats:
    """Return the sum of ``amounts`` by group, for groups 0 to ``count`` (not included)."""
    return np.asarray(np.bincount(groups, amounts, count), dtype=np.float64)


@dataclass(frozen=True)
class Cost:
    """What losses cost under one alternative; ``by_peril`` is in the order of the model's."""

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
    model = trials[0].model
    yearly: dict[str, Floats] = {trial.id: np.zeros(0) for trial in trials}
    extra: dict[str, Floats] = {trial.id: np.zeros(0) for trial in trials if trial.is_yearly}
    for block in range(effort.blocks):
        events = simulated(model, account, block, effort.years, seed)
        for trial in trials:
            yearly[trial.id] = np.append(yearly[trial.id], trial.yearly(events))
            if trial.id in extra:
                extra[trial.id] = np.append(extra[trial.id], trial.together(events))
        if _is_honest(yearly.values(), effort.error):
            break
    first = trials[0]
    costs = tuple(
        _cost(t, t.means(None if t is first else first), yearly[t.id], extra.get(t.id))
        for t in trials
    )
    base = costs[0]
    return Comparison(
        years=len(yearly[base.id]),
        costs=costs,
        changes={c.id: _change(base, c, yearly, extra) for c in costs[1:]},
    )


def _is_honest(yearly: Iterable[Floats], error: float) -> bool:
    bad = (bad_year(costs, one_in) for costs in yearly for one_in in BAD)
    return all(b.error <= max(error * b.value, 1.0) for b in bad)


def _cost(trial: Trial, means: tuple[float, ...], yearly: Floats, extra: Floats | None) -> Cost:
    return Cost(
        trial=trial,
        mean=_shifted(sum(means), extra),
        bad={one_in: bad_year(yearly, one_in) for one_in in BAD},
        by_peril=means,
    )


def _shifted(mean: float, extra: Floats | None) -> Sampled:
    if extra is None:
        return exact(mean)
    more = mean_of(extra)
    return Sampled(mean + more.value, mean + more.low, mean + more.high)


def _change(
    base: Cost, other: Cost, yearly: Mapping[str, Floats], extra: Mapping[str, Floats]
) -> Change:
    closed = sum(other.by_peril) - sum(base.by_peril)
    none = np.zeros(1)
    both = [extra[c.id] for c in (other, base) if c.id in extra]
    more = extra.get(other.id, none) - extra.get(base.id, none) if both else None
    return Change(
        mean=_shifted(closed, more),
        bad={n: change_of_bad_year(yearly[base.id], yearly[other.id], n) for n in BAD},
    )
