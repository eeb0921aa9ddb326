"""The figures of a risk: an average year and bad years under each alternative, and what they say.

Every one says what it rests on, and that only chance is in its interval: whether the model is right
is not. Amounts are shown in two digits at most, fewer where chance would decide them.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from decimal import Decimal

from quarterday.core.figure import Figure
from quarterday.core.file.records.terms import EVERYWHERE
from quarterday.core.money import Money
from quarterday.core.risk.alternatives import Alternative
from quarterday.core.risk.cost import BAD, HUNDRED, Cost
from quarterday.core.risk.risk import Risk
from quarterday.core.risk.sampling import Sampled, exact, shown
from quarterday.core.terms.option import amounts_said
from quarterday.core.words import Term, Words, words


@dataclass(frozen=True, slots=True)
class Told:
    """One alternative in figures; ``bad`` is in the order of a 1-in-10 and a 1-in-100 year."""

    alternative: Alternative
    name: Words
    mean: Figure
    bad: tuple[Figure, ...]


def told(risk: Risk) -> tuple[Told, ...]:
    """Return every alternative that could be measured, the base of comparison first."""
    return tuple(_told(risk, cost) for cost in risk.comparison.costs)


def _told(risk: Risk, cost: Cost) -> Told:
    alternative = risk.alternative(cost.id)
    mean = mean_figure(risk, cost)
    bad = tuple(bad_figure(risk, cost, one_in, mean) for one_in in BAD)
    return Told(alternative, name_of(risk, alternative), mean, bad)


def name_of(risk: Risk, alternative: Alternative) -> Words:
    """Return an alternative's name as people say it."""
    option = alternative.option
    if option is None:
        case = "expiring" if alternative.kind == "expiring" else "offered"
        return words("risk-alternative", case=case)
    coverage: Words = words("coverage-name", coverage=Term("coverage", option.coverage))
    if option.location != EVERYWHERE:
        place = risk.case.building_name(option.location)
        coverage = words("coverage-at", coverage=coverage, place=place)
    amounts = amounts_said(alternative.terms, option)
    if alternative.kind == "deductible":
        amounts.pop("limit", None)
    said = words("risk-amounts", case="-".join(amounts), **amounts)
    return words("risk-option", coverage=coverage, amounts=said)


def caution() -> Words:
    """Return what no interval holds: that the model itself may be wrong."""
    return words("risk-caution-model")


def mean_figure(risk: Risk, cost: Cost) -> Figure:
    """Return what losses cost in an average year, made of its causes, the dearest first."""
    return Figure(
        id=f"risk-mean@{cost.id}",
        value=shown(cost.mean, risk.currency),
        unit="money",
        label=words("risk-mean", alternative=name_of(risk, risk.alternative(cost.id))),
        how=words("risk-how-mean", case="sampled" if cost.trial.is_yearly else "closed",
                  years=risk.comparison.years),
        inputs=tuple(_of_causes(risk, cost)),
        caution=caution(),
    )  # fmt: skip


def _of_causes(risk: Risk, cost: Cost) -> Iterator[Figure]:
    means = by_cause(risk, cost)
    for cause, mean in sorted(means.items(), key=lambda item: (-item[1], item[0])):
        if mean >= HALF_A_DOLLAR:
            yield _cause_figure(risk, cost, cause, mean)


def by_cause(risk: Risk, cost: Cost) -> dict[str, float]:
    """Return what each cause costs in an average year, one loss at a time, dollars."""
    found: dict[str, float] = {}
    for peril, mean in zip(risk.model.perils, cost.by_peril, strict=True):
        found[peril.cause] = found.get(peril.cause, 0.0) + mean
    return found


def _cause_figure(risk: Risk, cost: Cost, cause: str, mean: float) -> Figure:
    likely = risk.likely[cause]
    alternative = name_of(risk, risk.alternative(cost.id))
    return Figure(
        id=f"risk-mean-cause@{cost.id}/{cause}",
        value=shown(exact(mean), risk.currency),
        unit="money",
        label=words("risk-mean-cause", cause=Term("cause", cause), alternative=alternative),
        how=words("risk-how-cause"),
        inputs=(likely.rate_figure, likely.size_figure, *_closure(risk, cause)),
        caution=likely.rate_figure.caution or likely.size_figure.caution,
    )


def _closure(risk: Risk, cause: str) -> tuple[Figure, ...]:
    """Return what a closure costs in income, where the cause can close the building."""
    lost = risk.lost
    return (lost.figure,) if lost is not None and cause in lost.causes else ()


CENT = 0.01
HALF_A_DOLLAR = 0.5  # what costs less a year than this is not told


def bad_figure(risk: Risk, cost: Cost, one_in: int, mean: Figure) -> Figure:
    """Return what losses cost in a year of which one in ``one_in`` is as bad or worse."""
    bad = cost.bad[one_in]
    return Figure(
        id=f"risk-1-in-{one_in}@{cost.id}",
        value=shown(bad, risk.currency),
        unit="money",
        label=words("risk-bad", one_in=one_in,
                    alternative=name_of(risk, risk.alternative(cost.id))),
        how=words("risk-how-bad", one_in=one_in, years=risk.comparison.years,
                  **_interval(risk, bad)),
        inputs=mean.inputs,
        caution=caution(),
    )  # fmt: skip


def _interval(risk: Risk, sampled: Sampled) -> dict[str, Money]:
    ends = {"low": sampled.low, "high": sampled.high}
    return {name: shown(exact(end), risk.currency) for name, end in ends.items()}


def change_figure(risk: Risk, id: str, one_in: int | None) -> Figure:
    """Return what an alternative changes in an average year (None) or in a bad one.

    Negative is less borne. An interval that reaches over zero says: no difference to be seen. It is
    made from the causes that the alternative changes, before and after.
    """
    change = risk.change(id)
    assert change is not None
    amount = change.mean if one_in is None else change.bad[one_in]
    value = shown(amount, risk.currency) if is_clear(amount) else Money(Decimal(0))
    year = "mean" if one_in is None else f"1-in-{one_in}"
    closed = one_in is None and not amount.error
    how = "closed" if closed else "clear" if is_clear(amount) else "unclear"
    return Figure(
        id=f"risk-change-{year}@{id}",
        value=Money(value.amount, risk.currency),
        unit="money",
        label=words("risk-change", one_in=one_in or 0,
                    alternative=name_of(risk, risk.alternative(id))),
        how=words("risk-how-change", case=how, **_interval(risk, amount)),
        inputs=tuple(_changed(risk, id)),
        caution=caution(),
    )  # fmt: skip


def reach(risk: Risk, id: str) -> tuple[Money, Money]:
    """Return between which changes of a 1-in-100 year chance alone puts an alternative's."""
    change = risk.change(id)
    assert change is not None
    ends = _interval(risk, change.bad[HUNDRED])
    return ends["low"], ends["high"]


def _changed(risk: Risk, id: str) -> Iterator[Figure]:
    """Yield what each changed cause costs in an average year, in the base and then changed."""
    other = risk.cost(id)
    assert other is not None
    before, after = by_cause(risk, risk.base), by_cause(risk, other)
    for cause in sorted(before, key=lambda cause: after[cause] - before[cause]):
        if abs(after[cause] - before[cause]) >= HALF_A_DOLLAR:
            yield _cause_figure(risk, risk.base, cause, before[cause])
            yield _cause_figure(risk, other, cause, after[cause])


def is_clear(amount: Sampled) -> bool:
    """Tell whether chance alone does not explain a difference of a cent or more."""
    return amount.low >= CENT or amount.high <= -CENT
