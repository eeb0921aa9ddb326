"""Credibility and limited means on their own: plain values in, plain values and steps out.

Numbers come in as text or whole numbers and go out as text. ``steps`` are the sentences a person
reads.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from decimal import Decimal
from typing import Annotated, Any, Literal

from pydantic import Field

from quarterday.core.file.records.base import Count, Number, Part
from quarterday.core.given import Unusable, read
from quarterday.core.money import Money
from quarterday.core.reference import Reference
from quarterday.core.risk.credibility import (
    Credibility,
    GammaPrior,
    Observed,
    buhlmann_straub,
    full_credibility,
    square_root_rule,
)
from quarterday.core.risk.severity import (
    Capped,
    Gamma,
    Layer,
    Lognormal,
    Pareto,
    Severity,
    borne_mean,
    eliminated,
    exponential,
    paid_mean,
)
from quarterday.core.risk.weight import record_weight
from quarterday.core.words import Arg, Rate, Words, words

Done = Mapping[str, Any]
Positive = Annotated[Number, Field(gt=0)]
Zero = Annotated[Number, Field(ge=0)]
Chance = Annotated[Number, Field(gt=0, lt=1)]
SIX_PLACES = 6


class RowsInputs(Part):
    """Groups as rows: ``values`` by period, and their ``weights``; null where nothing was seen.

    With weights the estimators are those of Bühlmann and Straub; without, all periods weigh alike.
    """

    values: Annotated[tuple[tuple[Number | None, ...], ...], Field(min_length=1)]
    weights: tuple[tuple[Zero | None, ...], ...] | None = None


class PoissonInputs(Part):
    """A record of ``claims`` in ``years`` beside a prior of ``mean`` claims a year.

    The prior counts as much as ``prior_years`` of record.
    """

    model: Literal["gamma-poisson"]
    claims: Count
    years: Zero
    mean: Zero
    prior_years: Positive


class FullInputs(Part):
    """When a record stands for itself: within ``within`` of its mean with ``chance``."""

    model: Literal["full"]
    chance: Chance
    within: Positive
    dispersion: Positive = Decimal(1)
    claims: Count | None = None


class ModelInputs(Part):
    """Which record is weighed, where it is not that of groups."""

    model: Literal["gamma-poisson", "full"]


def credibility(given: Mapping[str, object], _reference: Reference) -> Done:
    """Return what records are worth beside each other, and ``steps``.

    Groups come as rows (see RowsInputs). Another ``model`` asks for one record beside a prior, or
    for the length of one that stands for itself: see PoissonInputs and FullInputs. Unusable for an
    unknown key, groups that show no variance, or numbers that cannot be.
    """
    if "model" not in given:
        return _of_rows(given)
    model = read(ModelInputs, {"model": given.get("model", "")}).model
    return _MODELS[model](given)


def _of_rows(given: Mapping[str, object]) -> Done:
    inputs = read(RowsInputs, given)
    done = buhlmann_straub(tuple(_observed(inputs)))
    return {
        "collective": _text(done.collective),
        "within": _text(done.within),
        "between": _text(done.between),
        "k": _text(done.k),
        "weights": [_text(group.credibility) for group in done.groups],
        "estimates": [_text(group.estimate) for group in done.groups],
        "steps": tuple(_group_steps(done)),
    }


def _observed(inputs: RowsInputs) -> Iterator[Observed]:
    """Yield each row's values and weights; a period without either was not observed."""
    if inputs.weights is None:
        for row in inputs.values:
            yield Observed([None if v is None else float(v) for v in row])
        return
    if list(map(len, inputs.weights)) != list(map(len, inputs.values)):
        raise Unusable(words("risk-rows-differ"))
    for row, weights in zip(inputs.values, inputs.weights, strict=True):
        pairs = [(v, w) for v, w in zip(row, weights, strict=True) if v is not None and w]
        yield Observed([float(v) for v, _ in pairs], [float(w) for _, w in pairs])


def _group_steps(done: Credibility) -> list[Words]:
    between = _number(done.between)
    first = "risk-step-structure" if done.between > 0 else "risk-step-no-between"
    steps = [words(first, within=_number(done.within), between=between,
                   collective=_number(done.collective))]  # fmt: skip
    for number, group in enumerate(done.groups, start=1):
        own: dict[str, Arg] = {} if group.own is None else {"own": _number(group.own)}
        id = "risk-step-group" if own else "risk-step-group-unseen"
        steps.append(words(id, group=str(number), z=_number(group.credibility),
                           estimate=_number(group.estimate), **own))  # fmt: skip
    return steps


def _of_poisson(given: Mapping[str, object]) -> Done:
    inputs = read(PoissonInputs, given)
    years = float(inputs.years)
    prior = GammaPrior(float(inputs.mean * inputs.prior_years), float(inputs.prior_years))
    after = prior.after(inputs.claims, years)
    z = prior.credibility(years)
    step = words(
        "risk-step-poisson",
        claims=inputs.claims,
        years=inputs.years,
        prior=inputs.mean,
        mean=_number(after.mean),
    )
    return {
        "credibility": _text(z),
        "mean": _text(after.mean),
        "posterior": {"claims": _text(after.claims), "years": _text(after.years)},
        "steps": (step, record_weight(z)),
    }


def _of_full(given: Mapping[str, object]) -> Done:
    inputs = read(FullInputs, given)
    full = full_credibility(float(inputs.chance), float(inputs.within), float(inputs.dispersion))
    step = words("risk-step-full", full=_whole(full), chance=Rate(inputs.chance),
                 within=Rate(inputs.within))  # fmt: skip
    done: dict[str, Any] = {"claims_for_full": _text(full), "steps": (step,)}
    if inputs.claims is not None:
        z = square_root_rule(inputs.claims, full)
        done |= {"credibility": _text(z), "steps": (step, record_weight(z))}
    return done


_MODELS: Mapping[str, Callable[[Mapping[str, object]], Done]] = {
    "gamma-poisson": _of_poisson,
    "full": _of_full,
}


class LimitedInputs(Part):
    """What ``calc limited-mean`` needs: a distribution, and what is paid of each loss.

    ``lognormal`` takes ``mu`` and ``sigma``; ``pareto`` and ``gamma`` take ``alpha``, their shape,
    and ``theta``, their scale; ``exponential`` takes ``theta``, its mean. ``most`` is the largest
    loss there can be. ``limit`` is the most that is paid, ``share`` the part paid of what is over
    the ``deductible``.
    """

    distribution: Literal["lognormal", "pareto", "gamma", "exponential"]
    mu: Number | None = None
    sigma: Positive | None = None
    alpha: Positive | None = None
    theta: Positive | None = None
    most: Positive | None = None
    factor: Positive = Decimal(1)
    deductible: Zero = Decimal(0)
    limit: Zero | None = None
    share: Annotated[Number, Field(gt=0, le=1)] = Decimal(1)


_NEEDS: Mapping[str, tuple[str, ...]] = {
    "lognormal": ("mu", "sigma"),
    "pareto": ("alpha", "theta"),
    "gamma": ("alpha", "theta"),
    "exponential": ("theta",),
}
_MAKE: Mapping[str, Callable[..., Severity]] = {
    "lognormal": Lognormal,
    "pareto": Pareto,
    "gamma": Gamma,
    "exponential": exponential,
}


def limited_mean(given: Mapping[str, object], _reference: Reference) -> Done:
    """Return the ``mean`` of what counts up to the limit, and what is paid and kept.

    ``unlimited`` is the mean of all. Of one loss ``paid`` and ``kept`` are means over all losses,
    ``paid_when_paid`` over those that something is paid of, ``eliminated`` the share of all losses
    that the deductible keeps. Unusable for parameters that the distribution does not have or that
    leave it without a mean.
    """
    inputs = read(LimitedInputs, given)
    severity = _severity(inputs)
    limit = float("inf") if inputs.limit is None else float(inputs.limit)
    layer = Layer(float(inputs.deductible), limit, float(inputs.share))
    paid, kept = paid_mean(severity, layer), borne_mean(severity, layer)
    over = float(severity.beyond(layer.deductible))
    return {
        "mean": _text(float(severity.limited_mean(limit))),
        "unlimited": _text(severity.mean),
        "paid": _text(paid),
        "paid_when_paid": _text(paid / over) if over else None,
        "kept": _text(kept),
        "eliminated": _text(eliminated(severity, layer.deductible)),
        "steps": tuple(_limited_steps(inputs, severity, paid, kept)),
    }  # fmt: skip


def _severity(inputs: LimitedInputs) -> Severity:
    needs = _NEEDS[inputs.distribution]
    told = {name: getattr(inputs, name) for name in ("mu", "sigma", "alpha", "theta")}
    if {name for name, value in told.items() if value is not None} != set(needs):
        raise Unusable(
            words("risk-distribution-needs", distribution=inputs.distribution, names=needs)
        )
    found = _MAKE[inputs.distribution](*(float(told[name]) for name in needs))
    found = found.scaled(float(inputs.factor))
    if inputs.most is not None:
        return Capped(found, float(inputs.most))
    if found.mean == float("inf"):
        raise Unusable(words("risk-no-mean", shape=inputs.alpha or Decimal(0)))
    return found


def _limited_steps(
    inputs: LimitedInputs, severity: Severity, paid: float, kept: float
) -> list[Words]:
    steps = [words("risk-step-mean", mean=_money(severity.mean))]
    if inputs.limit is not None:
        limited = _money(float(severity.limited_mean(float(inputs.limit))))
        steps.append(words("risk-step-limited", most=Money(inputs.limit), limited=limited))
    return [*steps, words("risk-step-paid", paid=_money(paid), kept=_money(kept))]


def _money(amount: float) -> Money:
    return Money(Decimal(repr(amount))).rounded()


def _number(value: float) -> Decimal:
    return round(Decimal(repr(value)), SIX_PLACES)


def _whole(value: float) -> int:
    return -int(-value // 1)


def _text(value: float) -> str:
    """Return a number as text with six decimals, ``unlimited`` where there is none."""
    return "unlimited" if value == float("inf") else f"{value:.{SIX_PLACES}f}"
