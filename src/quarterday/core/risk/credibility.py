"""How much weight a group's own record deserves beside what is known of all groups.

Sources of the estimators: Bühlmann and Straub (1970) in the unbiased form of the actuar package's
vignette "Credibility theory features of actuar"; Open Actuarial Textbooks, Loss Data Analytics,
chapter 9. A variance between groups that comes out at zero or below means that the groups differ
no more than chance alone makes them: then nobody's own record gets any weight.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from statistics import NormalDist

import numpy as np

from quarterday.core.given import Unusable
from quarterday.core.words import words

FEWEST = 2  # groups, and periods of one group at least: one alone shows no variance


@dataclass(frozen=True, slots=True)
class Observed:
    """A group's results by period and the weight of each; without ``weights`` all weigh the same.

    A period without weight, or whose value is None, was not observed.
    """

    values: Sequence[float | None]
    weights: Sequence[float] | None = None

    def seen(self) -> tuple[tuple[float, float], ...]:
        """Return the observed values with their weights; Unusable where the two do not match."""
        weights = self.weights if self.weights is not None else (1.0,) * len(self.values)
        if len(weights) != len(self.values):
            raise Unusable(
                words("risk-weights-count", values=len(self.values), weights=len(weights))
            )
        if any(w < 0 for w in weights):
            raise Unusable(words("risk-weights-negative"))
        pairs = zip(self.values, weights, strict=True)
        return tuple((v, w) for v, w in pairs if v is not None and w > 0)


@dataclass(frozen=True, slots=True)
class Group:
    """What came out for one group: ``estimate`` = z × own mean + (1 − z) × collective.

    ``own`` is None where nothing was observed; then ``credibility`` is 0.
    """

    weight: float
    own: float | None
    credibility: float
    estimate: float


@dataclass(frozen=True, slots=True)
class Credibility:
    """The structure of a book: ``within`` and ``between`` are variances as estimated.

    ``between`` may come out negative; it then counts as zero. ``k`` is the weight at which a
    group's own record counts half, infinite where it never does.
    """

    collective: float
    within: float
    between: float
    groups: tuple[Group, ...]

    @property
    def k(self) -> float:
        """The weight at which the own record counts half."""
        return self.within / self.between if self.between > 0 else float("inf")


def credible(weight: float, k: float) -> float:
    """Return the credibility of a record of this ``weight`` (0 to 1)."""
    if not weight:
        return 0.0
    return weight / (weight + k)


def buhlmann_straub(observed: Sequence[Observed]) -> Credibility:
    """Return the estimates for all groups, in their order.

    Groups with one period, and with none, take part as far as they can. Unusable with fewer than
    two observed groups, or when no group has two periods.
    """
    groups = [group.seen() for group in observed]
    seen = [group for group in groups if group]
    if len(seen) < FEWEST:
        raise Unusable(words("risk-two-groups", groups=len(seen)))
    if not any(len(group) >= FEWEST for group in seen):
        raise Unusable(words("risk-two-periods"))
    within = _within(seen)
    weights, means = _totals(seen)
    return _combined(groups, within, _between(weights, means, within))


def buhlmann_straub_poisson(observed: Sequence[Observed]) -> Credibility:
    """Return the same for counts of claims, whose variance within a group is their mean.

    Values are claims for each unit of weight. A group's periods need no variance of their own, so
    one period each is enough. Unusable with fewer than two observed groups.
    """
    groups = [group.seen() for group in observed]
    seen = [group for group in groups if group]
    if len(seen) < FEWEST:
        raise Unusable(words("risk-two-groups", groups=len(seen)))
    weights, means = _totals(seen)
    within = float((weights * means).sum() / weights.sum())
    return _combined(groups, within, _between(weights, means, within))


Seen = tuple[tuple[float, float], ...]
Floats = np.ndarray[tuple[int], np.dtype[np.float64]]


def _totals(seen: Sequence[Seen]) -> tuple[Floats, Floats]:
    """Return each group's weight and weighted mean."""
    weights = np.array([sum(w for _, w in group) for group in seen])
    sums = np.array([sum(v * w for v, w in group) for group in seen])
    return weights, sums / weights


def _within(seen: Sequence[Seen]) -> float:
    spread, freedom = 0.0, 0
    _, means = _totals(seen)
    for group, mean in zip(seen, means, strict=True):
        spread += sum(w * (v - mean) ** 2 for v, w in group)
        freedom += len(group) - 1
    return float(spread / freedom)


def _between(weights: Floats, means: Floats, within: float) -> float:
    whole = weights.sum()
    mean = (weights * means).sum() / whole
    spread = (weights * (means - mean) ** 2).sum() - (len(weights) - 1) * within
    return float(spread / (whole - (weights**2).sum() / whole))


def _combined(groups: Sequence[Seen], within: float, between: float) -> Credibility:
    """Return the estimates; the collective weighs groups by credibility, else by weight."""
    k = within / between if between > 0 else float("inf")
    weights = [sum(w for _, w in group) for group in groups]
    own = [sum(v * w for v, w in group) / sum(w for _, w in group) if group else None
           for group in groups]  # fmt: skip
    zs = [credible(weight, k) for weight in weights]
    by = zs if between > 0 else weights
    collective = sum(b * m for b, m in zip(by, own, strict=True) if m is not None) / sum(by)
    made = tuple(
        Group(w, m, z, collective if m is None else z * m + (1 - z) * collective)
        for w, m, z in zip(weights, own, zs, strict=True)
    )
    return Credibility(collective, within, between, made)


@dataclass(frozen=True, slots=True)
class GammaPrior:
    """What is known of a yearly number of claims before the record: gamma with these parameters.

    ``years`` is also the length of record that would count half.
    """

    claims: float  # the gamma's shape
    years: float  # the gamma's rate

    def __post_init__(self) -> None:
        if not (self.claims >= 0 and self.years > 0):
            raise ValueError("a prior needs claims of zero or more, and years above zero")

    @property
    def mean(self) -> float:
        """Claims a year."""
        return self.claims / self.years

    def after(self, claims: int, years: float) -> GammaPrior:
        """Return what is known after a record of ``claims`` in ``years``."""
        if claims < 0 or years < 0:
            raise ValueError("claims and years of a record cannot be negative")
        return GammaPrior(self.claims + claims, self.years + years)

    def credibility(self, years: float) -> float:
        """Return the weight of a record of ``years``: years / (years + prior years)."""
        return credible(years, self.years)


def full_credibility(chance: float, within: float, dispersion: float = 1.0) -> float:
    """Return the number of claims from which a record stands for itself (limited fluctuation).

    With probability ``chance`` the result is within the ratio ``within`` of its mean;
    ``dispersion`` is the variance of claim numbers over their mean plus the squared coefficient of
    variation of their sizes.
    """
    if not 0 < chance < 1 or not within > 0 or not dispersion > 0:
        raise Unusable(words("risk-full-wrong"))
    return (NormalDist().inv_cdf((1 + chance) / 2) / within) ** 2 * dispersion


def square_root_rule(claims: float, full: float) -> float:
    """Return the credibility of a record of ``claims`` where ``full`` would count wholly."""
    return min(1.0, float(np.sqrt(claims / full)))
