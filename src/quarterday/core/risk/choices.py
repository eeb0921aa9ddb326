"""The tables the leaders decide with: options taken and open, and the choice of deductible."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from decimal import Decimal
from typing import Literal

import numpy as np

from quarterday.core.figure import Figure
from quarterday.core.file.records import Decision
from quarterday.core.file.records.terms import Option
from quarterday.core.money import Money
from quarterday.core.risk.account import BY_DUTY
from quarterday.core.risk.alternatives import Alternative, with_option
from quarterday.core.risk.cost import BAD, HUNDRED, Cost
from quarterday.core.risk.figures import Told, change_figure, name_of, reach, told
from quarterday.core.risk.risk import Risk
from quarterday.core.risk.sampling import exact, shown
from quarterday.core.terms.answers import questions_of
from quarterday.core.terms.option import is_bare
from quarterday.core.words import Words, words

State = Literal["taken", "left", "open"]
NO_CHANGE = 0.005
FOUR_PLACES, SIX_PLACES = 4, 6


@dataclass(frozen=True, slots=True)
class OptionRow:
    """An option: whether it is taken, its price (None: ask), and what it would have changed.

    ``average`` and ``bad`` (1-in-10, 1-in-100) are None where ``why_not`` says why nobody measured;
    ``reach`` is the sampling interval of the last. Negative amounts are less borne.
    """

    option: Option
    name: Words
    state: State
    price: Money | None
    average: Figure | None = None
    bad: tuple[Figure, ...] = ()
    why_not: Words | None = None
    reach: tuple[Money, Money] | None = None

    @property
    def saves_in_bad_year(self) -> Money | None:
        """What it saves in a 1-in-100 year; None where that is not known."""
        return -self.bad[-1].money if self.bad else None


def options(risk: Risk) -> tuple[OptionRow, ...]:
    """Return the options on offer: taken ones first, then by what they save in an average year.

    What was not measured comes last; harm to people is never put in money.
    """
    rows = [_row(risk, one) for one in risk.alternatives if one.option is not None]
    rows += _without_amounts(risk)
    return tuple(sorted(rows, key=_order))


def _order(row: OptionRow) -> tuple[bool, bool, Decimal]:
    average = row.average.money.amount if row.average else Decimal(0)
    return row.state != "taken", row.average is None, average


def state_of(risk: Risk, option: Option) -> State:
    """Return whether the leaders took an option for this renewal, left it, or have it open."""
    questions = questions_of(option)
    renewal = risk.case.renewal
    made = [d for d in risk.case.file.all(Decision)
            if d.renewal == renewal and d.question in questions]  # fmt: skip
    answers = {d.answer for d in made}
    return "taken" if "take-it" in answers else "left" if "leave-it" in answers else "open"


def _row(risk: Risk, one: Alternative) -> OptionRow:
    assert one.option is not None
    why_not = _why_not(risk, one)
    name, state = name_of(risk, one), state_of(risk, one.option)
    if why_not is not None:
        return OptionRow(one.option, name, state, one.price, why_not=why_not)
    return OptionRow(
        option=one.option,
        name=name,
        state=state,
        price=one.price,
        average=change_figure(risk, one.id, None),
        bad=tuple(change_figure(risk, one.id, one_in) for one_in in BAD),
        reach=reach(risk, one.id),
    )


def _why_not(risk: Risk, one: Alternative) -> Words | None:
    """Return why nobody measured an option; None where it was measured."""
    assert one.option is not None
    cost, coverage = risk.cost(one.id), one.option.coverage
    if _is_duty(risk, coverage):
        return words("risk-why-not", case="duty")
    if cost is None:
        return words("risk-why-not", case="refused")
    is_met = coverage == "umbrella" or coverage in cost.trial.answered_by
    return None if is_met else words("risk-why-not", case="not-modelled")


def _is_duty(risk: Risk, coverage: str) -> bool:
    """Tell whether harm to people stands behind a coverage, which no sum may weigh."""
    library = risk.case.reference.coverages.get(coverage)
    return library is not None and (library.safety or set(library.answers) <= BY_DUTY)


def _without_amounts(risk: Risk) -> Iterator[OptionRow]:
    """Yield the options that name no amount, or what the terms give: nobody can say more."""
    base = risk.alternatives[0].terms
    for option in base.options:
        if with_option(base, option) is None:
            bare = Alternative(option.coverage, "option", base, option)
            why = words("risk-why-not", case="no-amount" if is_bare(option) else "as-now")
            yield OptionRow(option, name_of(risk, bare), state_of(risk, option), bare.price,
                            why_not=why)  # fmt: skip


@dataclass(frozen=True, slots=True)
class DeductibleChoice:
    """A deductible on offer beside the one in the offer.

    ``premium`` is what it adds to the yearly premium (negative: saves; None: ask), ``kept`` what it
    changes in the organisation's own cost of an average year. ``per_loss`` is the most it changes
    of one loss; ``break_even`` the number of such losses a year at which both ways cost the same,
    and ``expected`` how many are to be expected.
    """

    name: Words
    premium: Money | None
    kept: Figure
    bad: Figure
    per_loss: Money
    expected: Figure
    break_even: Figure | None

    @property
    def pays(self) -> bool | None:
        """Whether the dearer cover, or the larger deductible, pays in an average year."""
        if self.premium is None:
            return None
        return self.premium.amount + self.kept.money.amount < 0


def deductibles(risk: Risk) -> tuple[DeductibleChoice, ...]:
    """Return the deductibles on offer, in the order of the offer."""
    known = {t.alternative.id: t for t in told(risk)}
    return tuple(
        _choice(risk, one, known)
        for one in risk.alternatives
        if one.kind == "deductible" and one.id in known
    )


def _choice(risk: Risk, one: Alternative, known: dict[str, Told]) -> DeductibleChoice:
    cost, other = risk.cost(one.id), known[one.id]
    assert cost is not None
    per_loss, expected = _per_loss(risk.base, cost)
    losses = Figure(
        id=f"risk-losses@{one.id}",
        value=round(Decimal(repr(expected)), SIX_PLACES),
        unit="ratio",
        label=words("risk-losses"),
        how=words("risk-how-losses"),
        inputs=other.mean.inputs,
        caution=other.mean.caution,
    )
    return DeductibleChoice(
        name=other.name,
        premium=one.price,
        kept=change_figure(risk, one.id, None),
        bad=change_figure(risk, one.id, HUNDRED),
        per_loss=shown(exact(per_loss), risk.currency),
        expected=losses,
        break_even=_break_even(risk, one, per_loss),
    )


def _per_loss(base: Cost, other: Cost) -> tuple[float, float]:
    """Return the most one loss differs, and how many losses a year differ at all.

    Losses below both deductibles stay with the organisation in any case.
    """
    most, count = 0.0, 0.0
    perils = base.trial.model.perils
    for peril, old, new in zip(perils, base.trial.curves(), other.trial.curves(), strict=True):
        sizes = np.unique(np.concatenate([old[0].at, new[0].at]))
        gap = np.abs(np.interp(sizes, new[0].at, new[0].borne)
                     - np.interp(sizes, old[0].at, old[0].borne))  # fmt: skip
        if gap.max() <= NO_CHANGE:
            continue
        first = sizes[max(int(np.argmax(gap > NO_CHANGE)) - 1, 0)]
        most = max(most, float(gap.max()))
        count += peril.rate * float(peril.severity.beyond(first))
    return most, count


def _break_even(risk: Risk, one: Alternative, per_loss: float) -> Figure | None:
    from quarterday.core.review.rules.terms.evidence import fact_of  # its package needs this module

    if one.option is None or one.price is None or not one.price or per_loss <= 0:
        return None
    losses = round(Decimal(repr(abs(float(one.price.amount)) / per_loss)), FOUR_PLACES)
    part = f"options/{one.option.coverage}/{one.option.location}"
    most = Figure(
        id=f"risk-per-loss@{one.id}",
        value=shown(exact(per_loss), risk.currency),
        unit="money",
        label=words("risk-per-loss"),
        how=words("risk-how-per-loss"),
    )
    return Figure(
        id=f"risk-break-even@{one.id}",
        value=losses,
        unit="ratio",
        label=words("risk-break-even"),
        how=words("risk-how-break-even", years=round(1 / losses) if losses else 0),
        inputs=(
            fact_of(risk.case.file, risk.alternatives[0].terms, part, "price", one.price),
            most,
        ),
    )
