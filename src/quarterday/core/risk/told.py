"""Options, and choices of deductible, in sentences that a treasurer can weigh."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal

from quarterday.core.figure import Figure
from quarterday.core.money import Money
from quarterday.core.risk.choices import DeductibleChoice, OptionRow
from quarterday.core.risk.figures import by_cause
from quarterday.core.risk.risk import Risk
from quarterday.core.risk.weight import record_weight
from quarterday.core.words import Term, Words, words

OFTEN = 1  # losses a year from which "one every n years" says nothing
RARE = Decimal("0.001")  # below it an average says nothing, and no one knows the frequency so well


def option_told(row: OptionRow) -> Words | None:
    """Return what an option would change in an average and in a bad year; None: not measured."""
    if row.average is None:
        return row.why_not
    average, bad = row.average.money, row.bad[-1].money
    return words(
        "risk-option-told",
        case=f"{_way(average)}-{_way(bad)}",
        average=abs(average),
        bad=abs(bad),
    )


def _way(change: Money) -> str:
    return "less" if change.amount < 0 else "more" if change else "same"


def deductible_told(choice: DeductibleChoice) -> Iterator[Words]:
    """Yield what the deductible costs or saves, what it changes, and when it breaks even."""
    yield words("risk-deductible-title", name=choice.name)
    yield _premium(choice)
    yield _kept(choice.kept.money)
    bad = choice.bad.money
    yield words("risk-deductible-bad", case=_way(bad), amount=abs(bad))
    if choice.break_even is not None:
        yield _break_even(choice, choice.break_even)


def _premium(choice: DeductibleChoice) -> Words:
    if choice.premium is None:
        most = choice.kept.money
        case = "ask-saves" if most.amount < 0 else "ask-keeps"
        return words("risk-deductible-premium", case=case, amount=abs(most))
    case = "costs" if choice.premium.amount > 0 else "saves" if choice.premium else "free"
    return words("risk-deductible-premium", case=case, amount=abs(choice.premium))


def _kept(change: Money) -> Words:
    return words("risk-deductible-kept", case=_way(change), amount=abs(change))


def _break_even(choice: DeductibleChoice, figure: Figure) -> Words:
    """Return when both ways cost the same, beside what is expected, and for what that speaks."""
    even, expected = figure.number, choice.expected.number
    dearer = bool(choice.premium and choice.premium.amount > 0)
    speaks = "dearer" if dearer == choice.pays else "cheaper"
    return words(
        "risk-deductible-break-even",
        case="rare" if expected < RARE else speaks,
        per_loss=choice.per_loss,
        even=_years(even),
        expected=_years(expected),
    )


def _years(losses: Decimal) -> Words:
    if losses >= OFTEN:
        return words("risk-every", case="often", n=round(losses))
    if losses < RARE:
        return words("risk-every", case="rare", n=round(1 / RARE))
    return words("risk-every", case="years", n=round(1 / losses))


def rests_on(risk: Risk) -> Iterator[Words]:
    """Yield what the figures hold of lost income, how a record is weighed, and what is left out."""
    lost = risk.lost
    if lost is not None:
        building = risk.case.building_name(lost.place)
        amount = lost.figure.money
        yield words("risk-income-counted", building=building, months=lost.months, amount=amount)
    means = by_cause(risk, risk.base)
    if means:
        cause = max(means, key=lambda cause: (means[cause], cause))
        weight = record_weight(risk.likely[cause].credibility)
        yield words("risk-weight-told", cause=Term("cause", cause), weight=weight)
    yield from risk.left_out
