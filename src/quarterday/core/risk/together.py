"""What the purses of a plan that are filled once a year add to the mean of an alternative."""

from __future__ import annotations

from collections.abc import Hashable, Iterator, Mapping
from dataclasses import dataclass

import numpy as np

from quarterday.core.risk.curves import Codes, discover
from quarterday.core.risk.perils import Peril
from quarterday.core.risk.purses import HALF_A_DOLLAR, Asking, added_by_the_year, most_added
from quarterday.core.risk.severity import Floats
from quarterday.core.risk.trial import Trial, added
from quarterday.core.terms.settling.machine import Beyond, Move, Plan, UpTo
from quarterday.core.terms.settling.rows import Flags


@dataclass(frozen=True)
class Purse:
    """A yearly purse: of which move, its size, and which items and perils ask of it."""

    at: int
    move: Move
    size: float
    items: Flags
    perils: Codes

    @property
    def key(self) -> Hashable:
        """What it shares with the same purse of other terms."""
        return self.move.source, self.move.reason, self.size, self.items.tobytes()


@dataclass(frozen=True)
class Together:
    """What yearly purses add to the mean that one loss at a time gives, by purse."""

    trial: Trial
    by_purse: Mapping[Hashable, float]

    @property
    def total(self) -> float:
        """What they add in all, dollars a year."""
        return sum(self.by_purse.values())


def together(trial: Trial, like: Together | None = None) -> Together | None:
    """Return what yearly purses add, in closed form.

    None where one clause feeds another, so that only simulation can tell. What cannot be as much
    as half a dollar counts as nothing. A purse that ``like`` has too is taken from there.
    """
    found = purses(trial)
    if found is None:
        return None
    same = like.trial.settles_like(trial) if like else ()
    made: dict[Hashable, float] = {}
    for purse in found:
        known = like.by_purse.get(purse.key) if like else None
        is_same = known is not None and all(same[n] for n in purse.perils)
        made[purse.key] = known if known is not None and is_same else _added(trial, purse)
    return Together(trial, made)


def purses(trial: Trial) -> tuple[Purse, ...] | None:
    """Return the yearly purses; None where what they do is used again, or turns on the day."""
    yearly = [at for at, move in enumerate(trial.plan.moves) if move.how.per == "year"]
    if any(trial.plan.moves[at].timed or _is_used(trial.plan, at) for at in yearly):
        return None
    return tuple(purse for at in yearly for purse in _of(trial, at))


def _is_used(plan: Plan, at: int) -> bool:
    """Tell whether a later move takes from what this one moved, or left, of the same items."""
    move, touched = plan.moves[at], plan.touches[at]
    return any(
        plan.moves[later].source in {move.source, move.reason}
        and bool((touched & plan.touches[later]).any())
        for later in range(at + 1, len(plan.moves))
    )


def _of(trial: Trial, at: int) -> Iterator[Purse]:
    move, touched = trial.plan.moves[at], trial.plan.touches[at]
    assert isinstance(move.how, UpTo | Beyond)
    sizes = {n: a for n, a in zip(move.purses, move.how.amounts, strict=True) if a is not None}
    own = np.array(move.purses)
    for number, size in sizes.items():
        items = touched & (own == number)
        perils = np.flatnonzero(trial.model.holds[:, items].any(axis=1))
        yield Purse(at, move, float(size), items, perils)


def _added(trial: Trial, purse: Purse) -> float:
    perils, size = trial.model.perils, purse.size
    whole = sum(_most_asked(perils[n], size) for n in purse.perils)
    if whole**2 < 2 * HALF_A_DOLLAR * size:
        return 0.0
    asking = tuple(_asking(trial, purse))
    if most_added(asking, size) < HALF_A_DOLLAR:
        return 0.0
    return added_by_the_year(asking, size)


def _most_asked(peril: Peril, size: float) -> float:
    """Return a bound of what a peril asks of a purse in a year, each loss up to its size.

    No loss asks for more than its size, times what its parts grow by with it.
    """
    grows = max(peril.steepest, 1.0)
    return peril.rate * grows * float(peril.severity.limited_mean(size / grows))


def _asking(trial: Trial, purse: Purse) -> Iterator[Asking]:
    """Yield what the losses of each peril ask of a purse, for each stretch of the period."""
    starts, perils, n = trial.starts, trial.model.perils, len(trial.starts)
    before = Plan(trial.plan.size, trial.plan.moves[: purse.at])

    def asked(curve: Codes, size: Floats) -> Floats:
        day = starts[curve % n]
        rows, event = trial.model.rows(purse.perils[curve // n], size, np.arange(len(size)), day)
        held = before.settle(rows).buckets[purse.move.source]
        return added(event, np.where(purse.items[rows.item], held, 0.0), len(size))

    curves = iter(discover(asked, [perils[at].marks for at in purse.perils for _ in range(n)]))
    for at in purse.perils:
        for part in trial.parts:
            yield Asking(perils[at].rate * part, perils[at].severity, next(curves))
