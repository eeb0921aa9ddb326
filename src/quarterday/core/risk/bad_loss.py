"""The loss that comes once in so many years, of what one line of the terms answers.

It is the amount that is exceeded by some loss in one year of so many: losses of the line's causes
are Poisson, so the numbers of losses beyond an amount add up over causes and places.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from decimal import Decimal
from functools import cached_property
from math import log1p

import numpy as np

from quarterday.core.figure import Figure
from quarterday.core.file.records.terms import Coverage
from quarterday.core.money import round_to
from quarterday.core.risk.cost import HUNDRED
from quarterday.core.risk.figures import caution
from quarterday.core.risk.perils import Layered, Peril
from quarterday.core.risk.risk import Risk
from quarterday.core.risk.sampling import exact, shown
from quarterday.core.risk.severity import Floats
from quarterday.core.values.index import DOLLAR
from quarterday.core.words import Term, words

CLOSE = 1e-5


@dataclass(frozen=True, slots=True)
class BadLoss:
    """A loss once in so many years: its likeliest cause and place, and how it divides, dollars."""

    cause: str
    place: str
    amounts: dict[str, Decimal]
    figure: Figure


@dataclass(frozen=True)
class _Met:
    """A peril, and the parts of its losses that the line answers."""

    peril: Peril
    parts: tuple[Layered, ...]

    @cached_property
    def _corners(self) -> tuple[Floats, Floats]:
        """The sizes at which parts begin and end, and what the line is asked for there."""
        marks = self.peril.marks
        return marks, np.sum([_part(p, marks) for p in self.parts], axis=0)

    @property
    def most(self) -> float:
        """The most that the line is asked for."""
        return float(self._corners[1][-1])

    def size(self, amount: float) -> float:
        """Return the size of a loss beyond which it asks for more; infinite: never."""
        marks, asked = self._corners
        at = int(asked.searchsorted(amount, side="right")) - 1
        if at + 1 == len(marks):
            return float("inf")
        slope = (asked[at + 1] - asked[at]) / (marks[at + 1] - marks[at])
        return float(marks[at] + (amount - asked[at]) / slope)

    def beyond(self, amount: float) -> float:
        """Return how many losses a year ask for more than ``amount``."""
        size = self.size(amount)
        if size == float("inf"):
            return 0.0
        return self.peril.rate * float(self.peril.severity.beyond(size))


def _part(part: Layered, sizes: Floats) -> Floats:
    return part.share * (np.minimum(sizes, part.end) - np.minimum(sizes, part.start))


def bad_loss(risk: Risk, line: Coverage, one_in: int = HUNDRED) -> BadLoss | None:
    """Return the loss that ``line`` of the base terms is asked for once in ``one_in`` years.

    None where that is no more than its limit, or nothing in the model asks it for anything.
    """
    met, often = tuple(_met(risk, line)), -log1p(-1 / one_in)
    if not met or _beyond(met, float(line.limit or 0)) <= often:
        return None
    found = _amount(met, float(line.limit or 0), often)
    worst = max(met, key=lambda m: m.beyond(found))
    told = shown(exact(found), risk.currency)
    amounts = _divided(worst, found, float(told.amount) / found)
    figure = Figure(
        id=f"risk-loss-1-in-{one_in}@{line.coverage}/{line.location}",
        value=told,
        unit="money",
        label=words("risk-loss", one_in=one_in, coverage=Term("coverage", line.coverage)),
        how=words("risk-how-loss", one_in=one_in),
        inputs=tuple(_inputs(risk, met)),
        caution=caution(),
    )
    return BadLoss(worst.peril.cause, worst.peril.place, amounts, figure)


def _amount(met: tuple[_Met, ...], low: float, often: float) -> float:
    """Return the amount that so many losses a year ask more than, above ``low``, by halving."""
    high = max(m.most for m in met)
    while high - low > CLOSE * high:
        middle = (low + high) / 2
        low, high = (middle, high) if _beyond(met, middle) > often else (low, middle)
    return high


def _divided(met: _Met, amount: float, scale: float) -> dict[str, Decimal]:
    """Return a loss that asks for ``amount``, by component, times ``scale``, in whole dollars."""
    sizes, found = np.array([met.size(amount * (1 - CLOSE))]), dict[str, Decimal]()
    for part in met.parts:
        asked = round_to(Decimal(repr(float(_part(part, sizes)[0]) * scale)), DOLLAR)
        found[part.component] = found.get(part.component, Decimal(0)) + asked
    return found


def _beyond(met: tuple[_Met, ...], amount: float) -> float:
    return sum(m.beyond(amount) for m in met)


def _met(risk: Risk, line: Coverage) -> Iterator[_Met]:
    trial = risk.trials[0]
    asks = {a.item for a in trial.asked.answers if a.line and a.line.place == line.place}
    for peril in risk.model.perils:
        pairs = zip(peril.parts, peril.items, strict=True)
        parts = tuple(part for part, item in pairs if item in asks)
        if parts:
            yield _Met(peril, parts)


def _inputs(risk: Risk, met: tuple[_Met, ...]) -> Iterator[Figure]:
    for cause in dict.fromkeys(m.peril.cause for m in met):
        yield risk.likely[cause].rate_figure
        yield risk.likely[cause].size_figure
