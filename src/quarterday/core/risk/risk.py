"""What could really hurt one account, and what each thing it could decide would change."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from datetime import date, timedelta
from functools import cached_property

from quarterday.core.file.records.terms import Option
from quarterday.core.review.case import Case
from quarterday.core.risk.account import Account
from quarterday.core.risk.alternatives import Alternative, alternatives
from quarterday.core.risk.closure import Lost, lost_income
from quarterday.core.risk.cost import Change, Comparison, Cost, Effort, compared
from quarterday.core.risk.likely import Learner, Likely
from quarterday.core.risk.perils import Model, Peril
from quarterday.core.risk.priors import NO_BOOK, Book
from quarterday.core.risk.severity import Capped, exponential
from quarterday.core.risk.trial import Trial
from quarterday.core.terms.settling.account import values_on
from quarterday.core.terms.settling.refusals import Refused, check_terms
from quarterday.core.terms.settling.values import Values
from quarterday.core.values.cost import number
from quarterday.core.words import Term, Words, words

BLOCK_YEARS, MOST_BLOCKS, ERROR = (
    f"risk.{name}" for name in ("block-years", "most-blocks", "sampling-error")
)


class NoTerms(LookupError):
    """Raised when a file holds no terms to measure; ``words`` is the sentence."""

    def __init__(self, file: str) -> None:
        super().__init__(file)
        self.words = words("risk-no-terms", file=file)


@dataclass(frozen=True)
class Risk:
    """What losses cost the account under each alternative; the first is the base of comparison.

    ``likely`` is by cause. ``left_out`` says in words what is not in the figures, and why. ``lost``
    is the income that is in them. Years are simulated when a cost is first asked for.
    """

    case: Case
    currency: str
    alternatives: tuple[Alternative, ...]
    model: Model
    likely: Mapping[str, Likely]
    trials: tuple[Trial, ...]
    effort: Effort
    left_out: tuple[Words, ...]
    lost: Lost | None = None

    @cached_property
    def comparison(self) -> Comparison:
        """What losses cost under each alternative whose terms can be settled."""
        return compared(self.trials, self.case.file.id, self.effort)

    def alternative(self, id: str) -> Alternative:
        """Return an alternative by its id; KeyError when it is not there."""
        return {a.id: a for a in self.alternatives}[id]

    @property
    def base(self) -> Cost:
        """What the others are compared with."""
        return self.comparison.costs[0]

    def cost(self, id: str) -> Cost | None:
        """Return what losses cost under an alternative; None where its terms were refused."""
        return next((c for c in self.comparison.costs if c.id == id), None)

    def change(self, id: str) -> Change | None:
        """Return what an alternative changes; None for the base, and for refused terms."""
        return self.comparison.changes.get(id)


def effort_of(case: Case) -> Effort:
    """Return how long to simulate, as the parameters say."""
    years, blocks, error = (number(case.parameter(id)) for id in (BLOCK_YEARS, MOST_BLOCKS, ERROR))
    return Effort(int(years), int(blocks), float(error))


def risk_of(case: Case, book: Book = NO_BOOK, effort: Effort | None = None) -> Risk:
    """Return the risk of an account; NoTerms without terms, Refused where they contradict."""
    found = alternatives(case)
    if not found:
        raise NoTerms(case.file.id)
    base, currency = found[0], found[0].terms.currency
    values = values_on(case, base.terms, middle(case))
    left_out, bench = [words("risk-left-out-duty")], _Bench(case, base, values)
    lost = _income(bench, found, left_out)
    learner = Learner(case, currency, book)
    pairs = tuple(Account(case, base.terms, values, learner, lost).perils())
    trials = _usable(bench, found, [peril for peril, _ in pairs], left_out)
    return Risk(
        case=case,
        currency=currency,
        alternatives=found,
        model=trials[0].model,
        likely={likely.cause: likely for _, likely in pairs},
        trials=trials,
        effort=effort or effort_of(case),
        left_out=tuple(dict.fromkeys(left_out)),
        lost=lost,
    )


def _income(bench: _Bench, found: tuple[Alternative, ...], left_out: list[Words]) -> Lost | None:
    """Return the income that a closure stops, where all alternatives can settle it."""
    lost = lost_income(bench.case, bench.base.terms, [one.terms for one in found])
    left_out.append(words("risk-left-out-elsewhere" if lost else "risk-left-out-income"))
    if lost is None:
        return None
    cause = min(lost.causes)
    items = tuple(lost.parts(1.0))
    probe = Model((Peril(cause, lost.place, 1.0, Capped(exponential(1.0), 1.0), items),))
    for one in found:
        try:
            bench.trial(one, probe)
        except Refused as refusal:
            left_out[-1] = words("risk-left-out-income-refused", why=refusal.words)
            return None
    return lost


def middle(case: Case) -> date:
    """Return the day in the middle of the coming term: what things are worth then is measured."""
    coming = case.coming
    return coming.start + timedelta(days=(coming.end - coming.start).days // 2)


@dataclass(frozen=True)
class _Bench:
    """Makes alternatives executable: the values of the base serve all its options."""

    case: Case
    base: Alternative
    values: Values

    def _values_of(self, one: Alternative) -> Values:
        if one is not self.base and one.kind == "expiring":
            return values_on(self.case, one.terms, middle(self.case))
        return self.values if one.option is None else _with_amount(self.values, one.option)

    def trial(self, one: Alternative, model: Model) -> Trial:
        values = self._values_of(one)
        return Trial.of(one.id, model, one.terms, self.case.reference, values)

    def refused(
        self, one: Alternative, model: Model, made: dict[str, Trial]
    ) -> Iterator[tuple[Peril, Words]]:
        """Yield the perils that the terms cannot settle, and why: by halves, for they are few.

        Where they can settle all, ``made`` gets the alternative ready to run.
        """
        try:
            made[one.id] = self.trial(one, model)
        except Refused as refusal:
            perils = model.perils
            if len(perils) == 1:
                yield perils[0], refusal.words
                return
            half = len(perils) // 2
            yield from self.refused(one, Model(perils[:half]), {})
            yield from self.refused(one, Model(perils[half:]), {})


def _with_amount(values: Values, option: Option) -> Values:
    """Return ``values`` with the amount of an option for what nobody has valued."""
    key = option.coverage, option.location
    if option.limit is None or (key in values.worth and key not in values.assumed):
        return values
    return replace(
        values,
        worth={**values.worth, key: option.limit},
        assumed=values.assumed | {key},
    )


def _usable(
    bench: _Bench, found: tuple[Alternative, ...], perils: list[Peril], left_out: list[Words]
) -> tuple[Trial, ...]:
    """Return the alternatives made executable for the perils that all of them can settle.

    A peril that some terms cannot settle is left out of all, so that they stay comparable; terms
    that contradict themselves are left out, the base never (Refused).
    """
    model, made = Model(tuple(perils)), dict[str, Trial]()
    for one in found:
        try:
            check_terms(one.terms, bench.case.reference)
        except Refused as refusal:
            if one is bench.base:
                raise
            left_out.append(words("risk-left-out-terms", why=refusal.words))
            continue
        refused = dict(bench.refused(one, model, made))
        if refused:
            left_out += [_left_out(peril, why) for peril, why in refused.items()]
            model = Model(tuple(peril for peril in model.perils if peril not in refused))
            ready = [other for other in found if other.id in {*made, one.id}]
            made = {other.id: bench.trial(other, model) for other in ready}
    return tuple(made.values())


def _left_out(peril: Peril, why: Words) -> Words:
    return words("risk-left-out-cause", cause=Term("cause", peril.cause), why=why)
