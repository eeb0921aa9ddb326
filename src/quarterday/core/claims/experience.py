"""What claims cost the insurer beside the premium it earned: the experience of several years.

A large claim counts up to a cap, so that one event does not stand for many years. The premium of
the terms that end now stands for every year: it is the one at today's rates, and files seldom hold
those of all years. Claims count at the prices of their own year.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from quarterday.core.claims.record import (
    claims_in,
    currency_of,
    incurred_figure,
    window,
)
from quarterday.core.dates import Period
from quarterday.core.figure import Figure, Node
from quarterday.core.file.records import Claim, Terms
from quarterday.core.money import Money, total
from quarterday.core.review.case import Case
from quarterday.core.values.cost import number
from quarterday.core.words import Rate, words

CAP = "claims.large-loss-cap"


@dataclass(frozen=True, slots=True)
class Experience:
    """Claims against premium over ``period``, which ends with the day they were looked at.

    ``incurred`` is what claims cost the insurer, ``capped`` with each counted up to the cap;
    the ratios are None where nothing was charged.
    """

    period: Period
    claims: tuple[Claim, ...]
    premium: Figure
    incurred: Figure
    capped: Figure
    ratio: Figure | None
    capped_ratio: Figure | None


def experience(case: Case, years: int) -> Experience | None:
    """Return the experience of the last ``years`` policy years, or since the organisation began.

    None when the expiring terms show no premium, or no day has passed.
    """
    terms, period = case.expiring, _passed(case, years)
    if terms is None or not terms.premiums or period is None:
        return None
    currency, cap = currency_of(case), case.parameter(CAP)
    claims = claims_in(case, period)
    most = Money(number(cap), currency)
    each = [Money(c.incurred, currency) for c in claims]
    of_claims = tuple(incurred_figure(case.file, c, currency) for c in claims)
    make = _Maker(period.start, years)
    premium = make.money("premium", _earned(terms, period), ())
    incurred = make.money("incurred", total(each, currency), of_claims)
    capped = make.money("capped", total((min(c, most) for c in each), currency), (*of_claims, cap))
    return Experience(
        period=period,
        claims=claims,
        premium=premium,
        incurred=incurred,
        capped=capped,
        ratio=make.ratio("ratio", incurred, premium),
        capped_ratio=make.ratio("capped-ratio", capped, premium),
    )


def _passed(case: Case, years: int) -> Period | None:
    founded = case.file.organisation.founded_year
    start = window(case, years).start
    start = max(start, date(founded, 1, 1)) if founded else start
    end = min(case.as_of, case.renewal)
    return Period(start, end) if start < end else None


def _earned(terms: Terms, period: Period) -> Money:
    """Return the yearly premium times the years of the period, by days."""
    whole = total((terms.money(p.amount) for p in terms.premiums), terms.currency)
    days = (terms.end - terms.start).days
    return (whole * (period.end - period.start).days / days).rounded()


@dataclass(frozen=True, slots=True)
class _Maker:
    """Makes the figures of one experience."""

    start: date
    years: int

    def money(self, what: str, amount: Money, inputs: tuple[Node, ...]) -> Figure:
        return self._made(what, amount, inputs)

    def ratio(self, what: str, part: Figure, whole: Figure) -> Figure | None:
        if not whole.money:
            return None
        return self._made(what, Rate(part.money.ratio(whole.money), 0), (part, whole))

    def _made(self, what: str, value: Money | Rate, inputs: tuple[Node, ...]) -> Figure:
        return Figure(
            id=f"claims-experience-{what}/{self.start}",
            value=value,
            unit="money" if isinstance(value, Money) else "rate",
            label=words(f"claims-experience-{what}", years=self.years),
            how=words(f"claims-experience-how-{what}", years=self.years),
            inputs=inputs,
        )
