"""The order of findings, and which of them the leaders decide.

Lexicographic: people's safety and legal duty; what lapses or cannot be moved; money at risk for
each dollar it costs to remove, free ones first; the accuracy of the record. Dates decide in the
first two, money in the last two. Where people may be harmed, neither price nor amount ranks.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from datetime import date
from decimal import Decimal

from quarterday.core.money import Money
from quarterday.core.review.finding import Finding, Priority, Tier
from quarterday.core.words import Words, words

MOST_DECISIONS = 5
Worth = tuple[int, Decimal, Decimal]
NO_MONEY: Worth = (0, Decimal(0), Decimal(0))


def _worth(priority: Priority) -> Worth:
    """Return what ranks money: free before priced before unknown, then money at risk a dollar."""
    money = priority.removed or priority.at_risk
    at_risk = money.amount if money else Decimal(0)
    if priority.cost is None:
        return 2, -at_risk, -at_risk
    cost = priority.cost.amount
    return (1, -at_risk / cost, -at_risk) if cost > 0 else (0, -at_risk, -at_risk)


def _rank(finding: Finding) -> tuple[bool, Tier, date, Worth, str]:
    priority = finding.priority
    by_date = priority.tier in {Tier.SAFETY_OR_DUTY, Tier.LAPSES}
    day = priority.by if priority.by and by_date else date.max
    worth = NO_MONEY if priority.tier is Tier.SAFETY_OR_DUTY else _worth(priority)
    return finding.set_aside is not None, priority.tier, day, worth, finding.id


def ordered(findings: Iterable[Finding]) -> tuple[Finding, ...]:
    """Return findings in the order of their priority, those set aside last."""
    return tuple(sorted(findings, key=_rank))


def agenda(findings: Iterable[Finding]) -> tuple[Finding, ...]:
    """Return what the leaders decide: the first five findings of kind ``decide`` for them."""
    decide = (
        f for f in ordered(findings)
        if f.kind == "decide" and "leaders" in f.audience and f.set_aside is None
    )  # fmt: skip
    return tuple(decide)[:MOST_DECISIONS]


def with_place(finding: Finding) -> Finding:
    """Return a decision whose reasons also say why it stands where it stands among the others."""
    priority = finding.priority
    place = _place(priority)
    if place in priority.reasons:
        return finding
    return replace(finding, priority=replace(priority, reasons=(*priority.reasons, place)))


def _place(priority: Priority) -> Words:
    if priority.tier is not Tier.MONEY:
        return words(_REASONS[priority.tier])
    at_risk, cost = priority.removed or priority.at_risk, priority.cost
    if cost is None:
        return words("priority-unpriced")
    if not cost:
        return words("priority-free-first")
    if not at_risk or at_risk.amount < cost.amount:
        return words("priority-no-ratio")
    each = Money(at_risk.ratio(cost), cost.currency).rounded(Decimal(1))
    cost = cost.rounded(Decimal(1))
    return words("priority-each-dollar", at_risk=at_risk, cost=cost, each=each)


_REASONS = {
    Tier.SAFETY_OR_DUTY: "priority-safety",
    Tier.LAPSES: "priority-lapses",
    Tier.MONEY: "priority-money",
    Tier.RECORD: "priority-record",
}


def placed(
    tier: Tier,
    *more: Words,
    by: date | None = None,
    at_risk: Money | None = None,
    cost: Money | None = None,
) -> Priority:
    """Return a priority that gives its reasons: the tier's, the date, the money, then ``more``."""
    reasons = [words(_REASONS[tier])]
    if by and tier is Tier.LAPSES:
        reasons.append(words("priority-by", day=by))
    if at_risk:
        reasons.append(words("priority-at-risk", amount=at_risk))
    if cost is not None:
        reasons.append(words("priority-cost", cost=cost) if cost else words("priority-free"))
    return Priority(tier, by, at_risk, cost, (*reasons, *more))
