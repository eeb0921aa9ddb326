"""Coinsurance: what a partial loss pays when less is insured than the clause asks for.

The share is the amount insured over the amount the clause requires, at most 1. Whether the
deductible comes after the share (the usual printed order) or before it is data of the terms.
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date
from decimal import ROUND_CEILING, Decimal
from functools import partial
from statistics import NormalDist
from typing import Literal

from quarterday.core.money import Money
from quarterday.core.words import Rate, Words, words

Order = Literal["coinsurance-first", "deductible-first"]
ONE = Decimal(1)
DOLLAR = Decimal(1)


@dataclass(frozen=True, slots=True)
class Requirement:
    """How much must be insured for a loss to be paid in full, and why; zero for nothing."""

    amount: Money
    why: Words


@dataclass(frozen=True, slots=True)
class Settlement:
    """What a loss pays: ``paid + borne = loss`` to the cent, and the steps in words."""

    loss: Money
    required_amount: Money
    share: Decimal  # at most 1, unrounded
    paid: Money
    borne: Money
    steps: tuple[Words, ...]


@dataclass(frozen=True, slots=True)
class Clause:
    """A coinsurance clause as terms give it; ``required`` a ratio, None or zero for no clause.

    ``stated`` replaces the percentage of the true value by an amount stated in the terms.
    An agreed value suspends the clause on every day before ``agreed_until``. A loss of at most
    ``waived_up_to`` is paid without it.
    """

    required: Decimal | None = None
    stated: Money | None = None
    agreed_until: date | None = None
    waived_up_to: Money | None = None

    @property
    def asks(self) -> bool:
        """Whether there is a clause at all."""
        return bool(self.required) or self.stated is not None

    def suspended(self, on: date) -> bool:
        """Tell whether an agreed value suspends the clause on ``on``."""
        return self.agreed_until is not None and on < self.agreed_until

    def requirement(self, value: Money, loss: Money, on: date) -> Requirement:
        """Return what must be insured for ``loss`` on ``on`` when the true value is ``value``."""
        none = Money(Decimal(0), value.currency)
        if not self.asks:
            return Requirement(none, words("values-step-no-clause"))
        if self.suspended(on):
            assert self.agreed_until is not None
            return Requirement(none, words("values-step-agreed", until=self.agreed_until))
        if self.waived_up_to is not None and loss <= self.waived_up_to:
            return Requirement(none, words("values-step-waived", amount=self.waived_up_to))
        return self.required_of(value)

    def required_of(self, value: Money) -> Requirement:
        """Return what the clause asks for when the true value is ``value`` and it is in force."""
        if self.stated is not None:
            return Requirement(self.stated, words("values-step-stated", required=self.stated))
        return percentage(value, self.required or Decimal(0))


def small_loss(carried: Money, share: Decimal, amount: Money) -> Money:
    """Return the largest loss a small-loss waiver spares: the lesser of a share and an amount."""
    return min(carried * share, amount)


def percentage(value: Money, required: Decimal) -> Requirement:
    """Return what a clause of ``required`` (a ratio from 0 to 1) asks of the true value."""
    if not 0 <= required <= 1:
        raise ValueError(f"A coinsurance share lies from 0 to 1 (0.8 is 80 %), not at {required}.")
    if required == 0:
        return Requirement(value * 0, words("values-step-no-clause"))
    amount = value * required
    why = words(
        "values-step-required", value=value, percent=Rate(required), required=_cents(amount)
    )
    return Requirement(amount, why)


def share_of(carried: Money, required: Money) -> Decimal:
    """Return the share of a loss that is paid: ``carried / required``, at most 1."""
    return ONE if required.amount <= 0 else min(ONE, carried.ratio(required))


def settle_partial(
    value: Money,
    required: Decimal,
    carried: Money,
    loss: Money,
    deductible: Money,
    limit: Money | None = None,
    order: Order = "coinsurance-first",
) -> Settlement:
    """Return what ``loss`` pays under a clause that asks for ``required`` of ``value``.

    ``limit`` is the most that is paid; the amount carried when it is not given. For a blanket give
    the totals of value and carried. ValueError for a negative amount or a share outside 0 to 1.
    """
    return settle(percentage(value, required), carried, loss, deductible, limit, order)


def settle(
    requirement: Requirement,
    carried: Money,
    loss: Money,
    deductible: Money,
    limit: Money | None = None,
    order: Order = "coinsurance-first",
) -> Settlement:
    """Return what ``loss`` pays; rounded half-up to the cent once, at the end."""
    most = carried if limit is None else limit
    _refuse_negative(
        required=requirement.amount, carried=carried, loss=loss, deductible=deductible, limit=most
    )
    share = share_of(carried, requirement.amount)
    moves = (partial(_reduced, share=share), partial(_less, deductible=deductible))
    claim, steps = loss, [requirement.why, *_share_step(share, carried, requirement.amount)]
    for move in moves if order == "coinsurance-first" else reversed(moves):
        claim, told = move(claim)
        steps += told
    paid = min(claim, most).rounded()
    limited = "reached" if claim > most else "enough"
    steps.append(words(f"values-step-limit-{limited}", limit=most))
    steps.append(words("values-step-paid", paid=paid, borne=loss - paid))
    return Settlement(loss, _cents(requirement.amount), share, paid, loss - paid, tuple(steps))


def _cents(amount: Money) -> Money:
    return amount.rounded()


def _refuse_negative(**amounts: Money) -> None:
    below = [f"{name} ({amount.amount})" for name, amount in amounts.items() if amount.amount < 0]
    if below:
        raise ValueError(f"An amount cannot be negative: {', '.join(below)}.")


def _share_step(share: Decimal, carried: Money, required: Money) -> list[Words]:
    if not required:
        return []
    name = "values-step-share" if share < 1 else "values-step-full-share"
    return [words(name, carried=carried, required=_cents(required), share=Rate(share, 2))]


def _reduced(claim: Money, share: Decimal) -> tuple[Money, list[Words]]:
    after = claim * share
    step = words(
        "values-step-reduced", before=_cents(claim), share=Rate(share, 2), after=_cents(after)
    )
    return after, [step] if share < 1 else []


def _less(claim: Money, deductible: Money) -> tuple[Money, list[Words]]:
    after = max(claim - deductible, claim * 0)
    step = words(
        "values-step-deductible", before=_cents(claim), deductible=deductible, after=_cents(after)
    )
    return after, [step] if deductible else []


@dataclass(frozen=True, slots=True)
class Position:
    """What stands against a loss on one day: true value, amount carried, clause, deductible, limit.

    ``value`` and ``carried`` are totals when a blanket holds several buildings; ``worth`` is then
    the value of the building the loss is at, and ``limit`` the most the terms pay for it.
    """

    value: Money
    carried: Money
    clause: Clause
    deductible: Money
    limit: Money
    worth: Money
    on: date

    @property
    def asked(self) -> Requirement:
        """What the clause asks for on the day, small losses aside."""
        return self.clause.requirement(self.value, self.value, self.on)

    @property
    def share(self) -> Decimal:
        """The share of a loss that is paid."""
        return share_of(self.carried, self.asked.amount)

    def loss(self, part: Decimal) -> Money:
        """Return the loss of ``part`` (a ratio) of the building, to the dollar."""
        return (self.worth * part).rounded(DOLLAR)

    def settle(self, part: Decimal) -> Settlement:
        """Return what the loss of ``part`` of the building pays."""
        loss = self.loss(part)
        asked = self.clause.requirement(self.value, loss, self.on)
        return settle(asked, self.carried, loss, self.deductible, self.limit)

    def penalty(self, part: Decimal) -> Money:
        """Return how much less that loss pays than it would without the clause."""
        loss = self.loss(part)
        free = Requirement(loss * 0, words("values-step-no-clause"))
        full = settle(free, self.carried, loss, self.deductible, self.limit)
        return full.paid - self.settle(part).paid

    def curve(self, parts: Iterable[Decimal]) -> tuple[Settlement, ...]:
        """Return what losses of these parts of the building pay: the penalty curve."""
        return tuple(self.settle(part) for part in parts)


HUNDREDTHS = tuple(Decimal(n) / 100 for n in range(101))


def _normal_above(z: float) -> float:
    """Return the chance that a standard normal lies above ``z``."""
    return math.erfc(z / math.sqrt(2)) / 2


def _spread(relative_error: float) -> float:
    """Return the standard deviation of the logarithm for a relative standard error."""
    if relative_error < 0:
        raise ValueError(f"A relative standard error cannot be negative ({relative_error}).")
    return math.sqrt(math.log1p(relative_error**2))


def _distance(value: Money, enough: Money) -> float:
    return math.log(enough.amount / value.amount)


def penalty_chance(value: Money, carried: Money, required: Decimal, relative_error: float) -> float:
    """Return the chance that the true value is above what the amount carried is enough for.

    The true value is lognormal, as likely above ``value`` as below; ``relative_error`` is its
    standard deviation over its mean. ``required`` is a ratio above zero. A penalty applies when
    the true value is above ``carried / required``.
    """
    if not carried:
        return 1.0
    distance, spread = _distance(value, carried / required), _spread(relative_error)
    if not spread:
        return float(distance < 0)
    return _normal_above(distance / spread)


def safe_amount(value: Money, required: Decimal, relative_error: float, certainty: float) -> Money:
    """Return what must be insured for no penalty to apply with ``certainty``, up to the dollar.

    The inverse of ``penalty_chance``: ``required * value * exp(spread * z)``, where a standard
    normal lies below ``z`` with that probability (above 0 and below 1).
    """
    if not 0 < certainty < 1:
        raise ValueError(f"A certainty lies between 0 and 1 (0.95 is 95 %), not at {certainty}.")
    factor = math.exp(_spread(relative_error) * NormalDist().inv_cdf(certainty))
    amount = value * required * Decimal(repr(factor))
    return Money(amount.amount.to_integral_value(ROUND_CEILING), amount.currency)


def expected_reduction(
    value: Money, carried: Money, required: Decimal, relative_error: float
) -> float:
    """Return the mean share of a partial loss that the clause takes away, deductible aside.

    ``E[max(0, 1 - K / V)]`` in closed form, with ``K = carried / required`` and ``V`` lognormal as
    in ``penalty_chance``.
    """
    if not carried:
        return 1.0
    distance, spread = _distance(value, carried / required), _spread(relative_error)
    if not spread:
        return max(0.0, 1 - math.exp(distance))
    kept = math.exp(distance + spread**2 / 2) * _normal_above(distance / spread + spread)
    return _normal_above(distance / spread) - kept
