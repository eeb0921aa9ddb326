"""What paying over time costs: three yearly rates, each defined by somebody else.

``canada``: the rate of the federal and provincial cost-of-borrowing rules, C / (T × P).
``actuarial``: Regulation Z, appendix J, by unit periods and fractions of them.
``effective``: the yearly rate at which dated flows are worth nothing, in years of 365 days.

Rates are found between bounds by halving, in binary floating point, to twelve decimals; amounts
stay exact. A rate exists and is the only one when money changes direction once; flows that change
it more often can have several rates, and are refused.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from datetime import date
from decimal import ROUND_HALF_UP, Decimal
from fractions import Fraction
from itertools import pairwise
from math import exp, log1p

from quarterday.core.given import Unusable
from quarterday.core.words import words

YEAR = 365
PLACES = Decimal("1e-12")
EIGHTH = Decimal("0.00125")
HIGHEST = 1e6  # a yearly rate of a hundred million per cent
HALVINGS = 70  # from a span of a million to less than the twelfth decimal


@dataclass(frozen=True, slots=True)
class Paid:
    """A payment (above zero) so many years after the advance."""

    amount: Decimal
    years: Fraction


@dataclass(frozen=True, slots=True)
class UnitPayments:
    """Equal payments (or advances) in Regulation Z's time.

    The first comes ``t`` whole unit periods and the fraction ``f`` of one after the first advance;
    each of the ``count`` payments comes ``step`` unit periods after the one before.
    """

    amount: Decimal
    t: int
    f: Fraction = Fraction(0)
    count: int = 1
    step: int = 1


@dataclass(frozen=True, slots=True)
class CanadaRate:
    """The cost-of-borrowing rate and what it is made of.

    ``cost`` is C, ``average`` P, ``years`` T; ``rate`` is the ratio C / (T × P).
    """

    rate: Decimal
    cost: Decimal
    average: Decimal
    years: Fraction

    @property
    def rounded(self) -> Decimal:
        """The rate rounded to the nearest eighth of a per cent, as the rules allow."""
        eighths = (self.rate / EIGHTH).quantize(Decimal(1), rounding=ROUND_HALF_UP)
        return eighths * EIGHTH


def _root(value: Callable[[float], float], low: float, high: float) -> Decimal:
    """Return where ``value``, which falls or rises throughout, is nothing; Unusable outside."""
    below = value(low) > 0
    if below == (value(high) > 0):
        raise Unusable(words("apr-no-rate"))
    for _ in range(HALVINGS):
        middle = (low + high) / 2
        if (value(middle) > 0) == below:
            low = middle
        else:
            high = middle
    return Decimal(repr((low + high) / 2)).quantize(PLACES)


def _left(financed: float, payments: Sequence[tuple[float, float]], rate: float) -> list[float]:
    """Return the principal outstanding before each payment and, last, after all of them.

    A payment goes to the interest that has built up first; interest bears none itself.
    """
    principal, owed, found = financed, 0.0, list[float]()
    for amount, years in payments:
        found.append(principal)
        owed += principal * rate * years
        to_interest = min(owed, amount)
        owed -= to_interest
        principal -= amount - to_interest
    return [*found, principal + owed]


def canada(financed: Decimal, payments: Iterable[Paid]) -> CanadaRate:
    """Return the Canadian cost-of-borrowing rate of ``payments`` for ``financed`` dollars.

    ``financed`` is what is owed once anything due at once is paid. APR = C / (T × P): C the cost
    of borrowing, T the years to the last payment, P the average of the principal outstanding
    through the term, taken before each payment; payments go to the cost of borrowing first.
    Unusable when nothing is financed or the payments do not repay it.

    Source: Cost of Borrowing (Retail Associations) Regulations, SOR/2002-263, s. 3 (laws-lois).
    """
    ordered = sorted(payments, key=lambda paid: paid.years)
    cost = sum((paid.amount for paid in ordered), Decimal(0)) - financed
    _can_be_financed(financed, ordered, cost)
    gaps = [b - a for a, b in pairwise([Fraction(0), *(paid.years for paid in ordered)])]
    flows = [(float(paid.amount), float(gap)) for paid, gap in zip(ordered, gaps, strict=True)]
    rate = (
        _root(lambda r: _left(float(financed), flows, r)[-1], 0.0, HIGHEST) if cost else Decimal(0)
    )
    principal = _left(float(financed), flows, float(rate))
    years = ordered[-1].years
    weighted = sum(p * gap for p, (_, gap) in zip(principal, flows, strict=False))
    average = Decimal(repr(weighted / float(years))).quantize(PLACES)
    return CanadaRate(rate, cost, average, years)


def _can_be_financed(financed: Decimal, ordered: Sequence[Paid], cost: Decimal) -> None:
    if financed <= 0 or not ordered or ordered[-1].years <= 0:
        raise Unusable(words("apr-nothing-financed", financed=financed))
    if cost < 0:
        raise Unusable(words("apr-not-repaid", financed=financed, short=-cost))


def actuarial(
    advances: Iterable[UnitPayments], payments: Iterable[UnitPayments], per_year: Fraction
) -> Decimal:
    """Return Regulation Z's annual percentage rate as a ratio: the unit-period rate × ``per_year``.

    Solves Σ advances = Σ payments, each over (1 + f·i)(1 + i)^t. One advance and one payment have
    their own term as unit period, at most a year. Unusable when there is no rate of zero or more.

    Source: 12 CFR part 1026, appendix J, (b)(8) and (c); the unit period of a single payment from
    memory, held by example (c)(5)(i).
    """
    lent, repaid = _spelled_out(advances), _spelled_out(payments)
    if len(lent) == len(repaid) == 1 and lent[0][1:] == (0, 0.0):
        repaid, per_year = _by_its_term(repaid[0], per_year)
    flows = [(-a, t, f) for a, t, f in lent] + repaid
    _one_way_and_back([a for a, t, f in sorted(flows, key=lambda flow: flow[1] + flow[2])])
    return (_root(lambda i: _worth(flows, i), -0.5, HIGHEST) * Decimal(per_year.numerator)
            / Decimal(per_year.denominator)).quantize(PLACES)  # fmt: skip


def _by_its_term(
    repaid: tuple[float, int, float], per_year: Fraction
) -> tuple[list[tuple[float, int, float]], Fraction]:
    """Return a single payment and the unit periods of a year, the term being the unit period."""
    amount, t, f = repaid
    years = (t + Fraction(f).limit_denominator(10**6)) / per_year
    if 0 < years <= 1:
        return [(amount, 1, 0.0)], 1 / years
    return [(amount, int(years), float(years % 1))], Fraction(1)


def _spelled_out(some: Iterable[UnitPayments]) -> list[tuple[float, int, float]]:
    return [
        (float(each.amount), each.t + n * each.step, float(each.f))
        for each in some
        for n in range(each.count)
    ]


def _worth(flows: Sequence[tuple[float, int, float]], rate: float) -> float:
    """Return the flows' worth at the first moment, or at the last below zero: its sign is the same.

    So nothing is above what a float holds, however many periods there are.
    """
    at = max(t for _, t, _ in flows) if rate < 0 else 0
    growth = log1p(rate)
    return sum(amount * exp((at - t) * growth) / (1 + f * rate) for amount, t, f in flows)


def _one_way_and_back(amounts: Iterable[float]) -> None:
    """Refuse flows, in order of time, whose direction does not change exactly once."""
    signs = [amount > 0 for amount in amounts if amount]
    changes = sum(a != b for a, b in pairwise(signs))
    if changes > 1:
        raise Unusable(words("apr-several-rates", changes=changes))
    if not changes:
        raise Unusable(words("apr-no-rate"))


def effective(flows: Iterable[tuple[date, Decimal]]) -> Decimal:
    """Return the yearly rate at which dated ``flows`` are worth nothing on the first day.

    Money in is above zero, money out below; years have 365 days, interest compounds. Unusable when
    the direction does not change exactly once: then there is no rate, or there may be several.
    """
    ordered = sorted(flows)
    by_day: dict[date, Decimal] = {}
    for day, amount in ordered:
        by_day[day] = by_day.get(day, Decimal(0)) + amount
    _one_way_and_back(float(amount) for amount in by_day.values())
    first = ordered[0][0]
    dated = [(float(amount), (day - first).days / YEAR) for day, amount in by_day.items()]
    return _root(lambda r: sum(a / (1 + r) ** t for a, t in dated), -0.999, HIGHEST)
