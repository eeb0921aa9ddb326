"""What stays with the organisation of one loss, as a function of its size, and its mean.

Terms that look at one loss at a time make that function straight between a few amounts (the
deductible, the limit, the amount where a clause is waived). It is found by asking the machine that
settles losses, so that no clause is modelled twice; its mean then follows from limited means.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from itertools import pairwise

import numpy as np
from numpy.typing import NDArray

from quarterday.core.risk.severity import Floats, Severity

Codes = NDArray[np.int64]
Borne = Callable[[Codes, Floats], Floats]  # curve numbers and sizes of losses to what is borne
NEAR, NEAREST, NARROW, STEPS = 1e-6, 1e-3, 0.01, 80
PARALLEL = 1e-6


@dataclass(frozen=True)
class Curve:
    """What is borne: ``borne`` at the sizes ``at`` (rising), straight between them."""

    at: Floats
    borne: Floats

    def mean(self, severity: Severity) -> float:
        """Return the mean of what is borne of a loss no larger than the last size."""
        slopes = np.diff(self.borne) / np.diff(self.at)
        return float((slopes * np.diff(severity.limited_mean(self.at))).sum() + self.borne[0])


@dataclass(frozen=True)
class _Spans:
    """Spans of curves whose ends are known."""

    curve: Codes
    a: Floats
    b: Floats
    at_a: Floats
    at_b: Floats

    def __len__(self) -> int:
        return len(self.curve)

    def picked(self, which: NDArray[np.bool_]) -> _Spans:
        return _Spans(
            self.curve[which],
            self.a[which],
            self.b[which],
            self.at_a[which],
            self.at_b[which],
        )

    def split(self, at: Floats, borne: Floats) -> _Spans:
        """Return each span as two, parted at ``at``."""
        join = np.concatenate
        return _Spans(
            join([self.curve, self.curve]),
            join([self.a, at]),
            join([at, self.b]),
            join([self.at_a, borne]),
            join([borne, self.at_b]),
        )


def discover(borne: Borne, marks: Sequence[Floats]) -> tuple[Curve, ...]:
    """Return a curve for each of ``marks``: rising sizes from 0 on, where corners are known to be.

    The corner of a span is where the lines at its two ends meet. Where the machine does not agree,
    the span is parted there and looked at again; a jump is closed in on to the cent.
    """
    spans = _between(borne, marks)
    found: list[_Spans] = []
    for _ in range(STEPS):
        if not len(spans):
            break
        spans = _narrowed(borne, spans, found)
    return _joined([*found, spans], len(marks))


def _between(borne: Borne, marks: Sequence[Floats]) -> _Spans:
    """Return the spans between the marks of each curve."""
    numbers = np.repeat(np.arange(len(marks)), [len(own) for own in marks])
    sizes = np.concatenate(marks)
    at = borne(numbers, sizes)
    inner = np.flatnonzero(np.diff(numbers) == 0)
    return _Spans(numbers[inner], sizes[inner], sizes[inner + 1], at[inner], at[inner + 1])


def _narrowed(borne: Borne, spans: _Spans, found: list[_Spans]) -> _Spans:
    """Add the spans that are straight to ``found``; return the others, parted."""
    width = spans.b - spans.a
    near = np.maximum(width * NEAR, NEAREST)
    n = len(spans)
    ends = borne(np.tile(spans.curve, 2), np.concatenate([spans.a + near, spans.b - near]))
    left, right = (ends[:n] - spans.at_a) / near, (spans.at_b - ends[n:]) / near
    at, straight, meet = _corner(spans, left, right, width)
    middle = borne(spans.curve, at)
    close = 1e-4 + 1e-9 * spans.b
    fits = np.abs(middle - spans.at_a - left * (at - spans.a)) <= close
    done = width <= NARROW
    whole = straight & fits
    bent = meet & fits & ~done
    found.append(spans.picked(whole | done))
    found.append(spans.picked(bent).split(at[bent], middle[bent]))
    rest = ~(whole | bent | done)
    return spans.picked(rest).split(at[rest], middle[rest])


def _corner(
    spans: _Spans, left: Floats, right: Floats, width: Floats
) -> tuple[Floats, NDArray[np.bool_], NDArray[np.bool_]]:
    """Return where to look in each span, which look straight, and which have a corner there.

    That is where the lines at the two ends meet, else a point between, nearer to the lower end:
    corners crowd among small losses.
    """
    between = np.sqrt((spans.a + 1) * (spans.b + 1)) - 1
    rise = spans.at_b - spans.at_a
    turn = left - right
    same = np.abs(turn) < PARALLEL
    meets = spans.a + (rise - right * width) / np.where(same, 1.0, turn)
    inside = ~same & (meets > spans.a + width * NEAR) & (meets < spans.b - width * NEAR)
    straight = same & (np.abs(rise - left * width) <= 1e-4 + PARALLEL * width)
    return np.where(inside, meets, between), straight, inside


def _joined(found: list[_Spans], curves: int) -> tuple[Curve, ...]:
    curve = np.concatenate([spans.curve for spans in found])
    a = np.concatenate([spans.a for spans in found])
    b = np.concatenate([spans.b for spans in found])
    at_a = np.concatenate([spans.at_a for spans in found])
    at_b = np.concatenate([spans.at_b for spans in found])
    order = np.lexsort((a, curve))
    begins = np.searchsorted(curve[order], np.arange(curves + 1))
    made = []
    for begin, end in pairwise(begins):
        own = order[begin:end]
        made.append(Curve(np.append(a[own], b[own[-1:]]), np.append(at_a[own], at_b[own[-1:]])))
    return tuple(made)
