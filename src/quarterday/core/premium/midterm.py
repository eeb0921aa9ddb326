"""When a term changes in the middle: what was earned, what comes back, what is to be paid more.

Days are counted, never months: the first day of the term is earned as soon as it has passed, and
a term that holds 29 February has 366 days. A short-rate table made for a year of 365 days is read
by the days in force; past its last day everything is earned.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from fractions import Fraction

from quarterday.core.dates import Period
from quarterday.core.file.records.terms import Terms
from quarterday.core.given import Unusable
from quarterday.core.money import Money, round_to
from quarterday.core.premium.instalments import known_province
from quarterday.core.premium.tax import Line, TaxResult, tax
from quarterday.core.reference import Reference, ShortRate, ShortRateStep
from quarterday.core.words import Words, words

PRO_RATA = "pro-rata"


@dataclass(frozen=True, slots=True)
class Earned:
    """What the insurer keeps of a premium and what it returns; they sum to the premium.

    ``days`` of ``of_days`` were in force; ``share`` is the ratio kept, before rounding.
    """

    days: int
    of_days: int
    share: Fraction
    earned: Money
    returned: Money

    @property
    def is_leap(self) -> bool:
        """Whether the term holds a 29 February, so that a year of it has 366 days."""
        return self.of_days == 366  # noqa: PLR2004 - the days of a leap year


def earned(premium: Money, term: Period, ended_on: date, rule: ShortRate | None = None) -> Earned:
    """Return what is earned when a term ends early, from ``ended_on`` on no longer in force.

    ``rule`` None is pro rata by days, as when the insurer ends it. Unusable when the day lies
    outside the term, or the table was not published for it.
    """
    if not term.start <= ended_on <= term.end:
        raise Unusable(words("midterm-outside", day=ended_on, start=term.start, end=term.end))
    days = (ended_on - term.start).days
    share = _kept(rule, days, term.days)
    kept = _part(premium, share)
    return Earned(days, term.days, share, kept, premium - kept)


def _part(premium: Money, share: Fraction) -> Money:
    amount = Fraction(premium.amount) * share * 100
    cents = Decimal(amount.numerator) / Decimal(amount.denominator)
    return Money(round_to(cents, Decimal(1)) / 100, premium.currency)


def _kept(rule: ShortRate | None, days: int, of_days: int) -> Fraction:
    """Return the ratio of the premium that is kept."""
    used = Fraction(days, of_days)
    if rule is None or not days or days == of_days:
        return used
    if rule.returned_share is not None:
        return 1 - Fraction(rule.returned_share) * (1 - used)
    return Fraction(_looked_up(rule, days, of_days))


def _looked_up(rule: ShortRate, days: int, of_days: int) -> Decimal:
    if abs(of_days - rule.term_days) > 1:
        raise Unusable(words("midterm-other-term", days=of_days, table=rule.term_days))
    if days >= rule.term_days:
        return Decimal(1)
    step = next((s for s in rule.steps if s.first <= days <= s.last), None)
    if step is None:
        raise Unusable(_gap(rule.steps, days))
    return step.kept


def _gap(steps: tuple[ShortRateStep, ...], days: int) -> Words:
    before = max((s.last for s in steps if s.last < days), default=0)
    after = min((s.first for s in steps if s.first > days), default=0)
    return words("midterm-gap", day=days, before=before, after=after)


@dataclass(frozen=True, slots=True)
class MidTerm:
    """What a change costs for the rest of the term; below zero comes back.

    ``annual`` is the change for a whole term, ``premium`` for the days that are left.
    """

    days_left: int
    of_days: int
    annual: Money
    premium: Money
    tax: TaxResult

    @property
    def total(self) -> Money:
        """Premium and tax."""
        return self.premium + self.tax.tax.money


def change(
    terms: Terms,
    lines: Iterable[Line],
    effective_on: date,
    paid_on: date,
    province: str,
    reference: Reference,
) -> MidTerm:
    """Return what a change of ``terms`` costs from ``effective_on`` to the end, pro rata by days.

    ``lines`` say by how much the premium of a whole term changes, each with its family and
    coverage; less is below zero and comes back. Each line is rounded to the cent. The tax is the
    province's for a payment on ``paid_on``. Unusable when the day lies outside the term or the
    province is unknown.
    """
    known_province(province, reference)
    term, changes = terms.period, tuple(lines)
    if effective_on not in term:
        raise Unusable(words("midterm-outside", day=effective_on, start=term.start, end=term.end))
    left = (term.end - effective_on).days
    share = Fraction(left, term.days)
    parts = tuple((family, id, _part(amount, share)) for family, id, amount in changes)
    none = terms.money(Decimal(0))
    where, id = reference.provinces[province], f"midterm/{terms.key}/{effective_on}"
    return MidTerm(
        days_left=left,
        of_days=term.days,
        annual=sum((amount for *_, amount in changes), none),
        premium=sum((amount for *_, amount in parts), none),
        tax=tax(where, terms.start, paid_on, parts, none, id),
    )


def rule_named(name: str, reference: Reference) -> ShortRate | None:
    """Return a short-rate rule by its id, None for pro rata; Unusable names those there are."""
    if name == PRO_RATA:
        return None
    if name not in reference.short_rates:
        known = (PRO_RATA, *sorted(reference.short_rates))
        raise Unusable(words("midterm-no-rule", rule=name, known=known))
    return reference.short_rates[name]
