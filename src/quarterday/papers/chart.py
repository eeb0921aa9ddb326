"""Charts as definitions: what is drawn, in shares of the frame, with its message in words.

``chart.typ`` draws them on paper; any other surface draws the same definition. Positions are
shares from 0 to 1 from the lower left corner; they are for drawing alone, never figures.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from typing import Literal

Say = Callable[[Decimal], str]
Tone = Literal["total", "up", "down", "paid", "borne", "insured", "cost", "needed", "short"]


@dataclass(frozen=True, slots=True)
class Tick:
    """A rule or a day on an axis, and its label."""

    at: float
    label: str


@dataclass(frozen=True, slots=True)
class Scale:
    """A round scale that holds values from ``low`` to ``high``, with four to six steps."""

    low: Decimal
    high: Decimal
    step: Decimal

    @classmethod
    def over(cls, values: Sequence[Decimal], *, from_zero: bool = True) -> Scale:
        """Return a scale that holds ``values``; from zero unless a break in it is said."""
        least, most = min(values), max(values)
        low = min(least, Decimal(0)) if from_zero else least
        span = (most - low) or Decimal(1)
        step = _round_step(span / 5)
        first = (low / step).to_integral_value(rounding="ROUND_FLOOR") * step
        last = (most / step).to_integral_value(rounding="ROUND_CEILING") * step
        return cls(first, max(last, first + step), step)

    def share(self, value: Decimal) -> float:
        """Return where ``value`` stands on the scale, as a share of its length."""
        return round(float((value - self.low) / (self.high - self.low)), 4)

    def ticks(self, say: Say) -> tuple[Tick, ...]:
        """Return the rules of the scale with their labels."""
        count = int((self.high - self.low) / self.step)
        values = (self.low + self.step * n for n in range(count + 1))
        return tuple(Tick(self.share(value), say(value)) for value in values)


def _round_step(rough: Decimal) -> Decimal:
    unit = Decimal(10) ** math.floor(rough.log10())
    return next(unit * n for n in (1, 2, 5, 10) if unit * n >= rough)


@dataclass(frozen=True, slots=True)
class Bar:
    """A bar from ``low`` to ``high``; the line to the next bar starts at ``ends``."""

    label: str
    figure: str
    low: float
    high: float
    ends: float
    tone: Tone


@dataclass(frozen=True, slots=True)
class Waterfall:
    """Steps from one total to another."""

    title: str
    alt: str
    ticks: tuple[Tick, ...]
    bars: tuple[Bar, ...]
    starts: str | None  # where the scale starts, when that is not zero


@dataclass(frozen=True, slots=True)
class Step:
    """A step of a waterfall: its label, its amount, and whether it is a total."""

    label: str
    amount: Decimal
    total: bool = False


def waterfall(title: str, alt: str, steps: Sequence[Step], say: Say, say_change: Say) -> Waterfall:
    """Return a waterfall; a total stands on zero, a change on where the last step ended."""
    ends = _ends(steps)
    scale = Scale.over(_broken(ends), from_zero=False)
    bars = []
    for before, end, step in zip([scale.low, *ends], ends, steps, strict=False):
        start = scale.low if step.total else before
        tone: Tone = "total" if step.total else "up" if step.amount >= 0 else "down"
        shown = say(step.amount) if step.total else say_change(step.amount)
        low, high = scale.share(min(start, end)), scale.share(max(start, end))
        bars.append(Bar(step.label, shown, low, high, scale.share(end), tone))
    starts = say(scale.low) if scale.low else None
    return Waterfall(title, alt, scale.ticks(say), tuple(bars), starts)


def _ends(steps: Sequence[Step]) -> list[Decimal]:
    ends: list[Decimal] = []
    for step in steps:
        ends.append(step.amount if step.total else ends[-1] + step.amount)
    return ends


def _broken(ends: Sequence[Decimal]) -> list[Decimal]:
    """Return the values the scale must hold: from zero, unless the changes would be too small."""
    low, high = min(ends), max(ends)
    return (
        [*ends, Decimal(0)] if high - low > high * Decimal("0.4") else [*ends, low - (high - low)]
    )


@dataclass(frozen=True, slots=True)
class Series:
    """A line over time, named at its end."""

    name: str
    tone: Tone
    points: tuple[tuple[float, float], ...]
    label_at: float


@dataclass(frozen=True, slots=True)
class Lines:
    """Lines over time; what lies after ``projected`` is not published yet."""

    title: str
    alt: str
    ticks: tuple[Tick, ...]
    days: tuple[Tick, ...]
    marks: tuple[Tick, ...]
    projected: Tick | None
    series: tuple[Series, ...]


@dataclass(frozen=True, slots=True)
class Over:
    """Values over time to be drawn: name, tone, and days with their values, in order."""

    name: str
    tone: Tone
    values: tuple[tuple[date, Decimal], ...]


def lines(
    title: str,
    alt: str,
    series: Sequence[Over],
    *,
    say: Say,
    days: Sequence[tuple[date, str]],
    projected: tuple[date, str] | None,
) -> Lines:
    """Return lines over time; the days of ``days`` are marked and labelled."""
    scale = Scale.over([v for s in series for _, v in s.values])
    first = min(day for s in series for day, _ in s.values)
    last = max(day for s in series for day, _ in s.values)

    def across(day: date) -> float:
        return round((day - first).days / max((last - first).days, 1), 4)

    drawn = [
        Series(
            s.name,
            s.tone,
            tuple((across(day), scale.share(value)) for day, value in s.values),
            scale.share(s.values[-1][1]),
        )
        for s in series
    ]
    labelled = tuple(Tick(across(day), label) for day, label in days)
    shaded = Tick(across(projected[0]), projected[1]) if projected else None
    return Lines(title, alt, scale.ticks(say), labelled, labelled, shaded, _apart(drawn))


def _apart(series: Sequence[Series], least: float = 0.12) -> tuple[Series, ...]:
    """Return the series with their names far enough apart to be read."""
    placed: list[Series] = []
    for one in sorted(series, key=lambda s: s.label_at):
        floor = placed[-1].label_at + least if placed else 0.0
        at = round(max(one.label_at, floor), 4)
        placed.append(Series(one.name, one.tone, one.points, at))
    return tuple(placed)


@dataclass(frozen=True, slots=True)
class Part:
    """A part of a bar laid end to end with the others."""

    tone: Tone
    share: float


@dataclass(frozen=True, slots=True)
class Row:
    """A bar: its label, its parts, and its figures in words."""

    label: str
    note: str
    parts: tuple[Part, ...]


@dataclass(frozen=True, slots=True)
class Key:
    """What a tone stands for."""

    tone: Tone
    label: str


@dataclass(frozen=True, slots=True)
class Stacked:
    """Bars in parts, all to one scale."""

    title: str
    alt: str
    keys: tuple[Key, ...]
    rows: tuple[Row, ...]


def stacked(
    title: str,
    alt: str,
    keys: Sequence[Key],
    rows: Sequence[tuple[str, str, Sequence[Decimal]]],
) -> Stacked:
    """Return bars in parts; ``rows`` hold a label, a note and one amount for each key."""
    most = max((sum(amounts, Decimal(0)) for _, _, amounts in rows), default=Decimal(1)) or Decimal(
        1
    )
    drawn = []
    for label, note, amounts in rows:
        shares = (round(float(amount / most), 4) for amount in amounts)
        parts = (Part(k.tone, share) for k, share in zip(keys, shares, strict=True) if share)
        drawn.append(Row(label, note, tuple(parts)))
    return Stacked(title, alt, tuple(keys), tuple(drawn))
