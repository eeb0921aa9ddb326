"""One alternative made executable: what its terms leave with the organisation.

What is borne of one loss alone is a curve a peril, found by asking the machine; its mean is in
closed form. Whole simulated years are settled as columns.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from functools import cached_property

import numpy as np

from quarterday.core.file.records import Terms
from quarterday.core.reference import Reference
from quarterday.core.risk.curves import Codes, Curve, discover
from quarterday.core.risk.perils import Model, Peril
from quarterday.core.risk.severity import Floats
from quarterday.core.risk.years import Events
from quarterday.core.terms.settling.asked import Asked
from quarterday.core.terms.settling.machine import Plan
from quarterday.core.terms.settling.plan import asked_of, plan
from quarterday.core.terms.settling.routing import Answer
from quarterday.core.terms.settling.rows import Rows
from quarterday.core.terms.settling.values import Values


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
    def starts(self) -> Codes:
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
            return self._discovered(np.arange(len(self.model.perils)))
        same, theirs = like.settles_like(self), like.curves()
        anew = np.flatnonzero(~np.array(same, dtype=bool))
        made = iter(self._discovered(anew))
        return tuple(own if s else next(made) for own, s in zip(theirs, same, strict=True))

    def _discovered(self, perils: Codes) -> tuple[tuple[Curve, ...], ...]:
        """Return the curves of perils by their numbers, found anew."""
        starts, n = self.starts, len(self.starts)
        if not len(perils):
            return ()

        def borne(curve: Codes, size: Floats) -> Floats:
            return self._alone(perils[curve // n], size, starts[curve % n])

        marks = [self.model.perils[number].marks for number in perils for _ in range(n)]
        made = discover(borne, marks)
        return tuple(made[at * n : at * n + n] for at in range(len(perils)))

    def _alone(self, peril: Codes, size: Floats, day: Codes) -> Floats:
        """Return what is borne of each loss as if it were the only one of its year."""
        rows, event = self.model.rows(peril, size, np.arange(len(size)), day)
        return added(event, self.plan.settle(rows).borne, len(size))

    def means(self, like: Trial | None = None) -> tuple[float, ...]:
        """Return what each peril costs in an average year, one loss at a time, in closed form.

        What ``like`` settles the same way is taken from there.
        """
        if like is None:
            return self._means
        found = zip(self.model.perils, self.curves(like), like.curves(), like.means(), strict=True)
        return tuple(mean if own is other else self._mean(peril, own)
                     for peril, own, other, mean in found)  # fmt: skip

    @cached_property
    def _means(self) -> tuple[float, ...]:
        return tuple(map(self._mean, self.model.perils, self.curves()))

    def _mean(self, peril: Peril, curves: tuple[Curve, ...]) -> float:
        return peril.rate * sum(
            part * curve.mean(peril.severity)
            for part, curve in zip(self.parts, curves, strict=True)
        )

    @cached_property
    def parts(self) -> tuple[float, ...]:
        """The share of the period that each stretch takes."""
        last = self.terms.end.toordinal()
        days = np.diff(np.append(self.starts, last))
        return tuple(float(n) for n in days / (last - self.starts[0]))

    def rows(self, events: Events) -> Rows:
        """Return simulated losses as rows, on days of the period of these terms."""
        first, last = self.terms.start.toordinal(), self.terms.end.toordinal()
        day = first + (events.moment * (last - first)).astype(np.int64)
        return self.model.rows(events.peril, events.size, events.year, day)[0]

    def yearly(self, events: Events, rows: Rows | None = None) -> Floats:
        """Return what each simulated year costs; ``rows`` are those of the events, if made."""
        rows = self.rows(events) if rows is None else rows
        return added(rows.year, self.plan.settle(rows).borne, events.years)

    def together(self, events: Events) -> Floats:
        """Return what each year costs more (or less) because its losses add up."""
        crowd = events.crowded()
        first, last = self.terms.start.toordinal(), self.terms.end.toordinal()
        day = first + (crowd.moment * (last - first)).astype(np.int64)
        alone = self._alone(crowd.peril, crowd.size, day)
        return self.yearly(crowd) - added(crowd.year, alone, events.years)


def added(groups: Codes, amounts: Floats, count: int) -> Floats:
    """Return the sum of ``amounts`` by group, for groups 0 to ``count`` (not included)."""
    return np.asarray(np.bincount(groups, amounts, count), dtype=np.float64)
