"""The order of findings, and which of them the leaders decide.

Lexicographic: people's safety and legal duty; what lapses or cannot be moved; money at risk for
each dollar it costs to remove, free ones first; the accuracy of the record.
"""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date
from decimal import Decimal

from quarterday.core.review.finding import Finding, Tier

MOST_DECISIONS = 5


def _rank(finding: Finding) -> tuple[bool, int, date, int, Decimal, Decimal, str]:
    priority = finding.priority
    at_risk = priority.at_risk.amount if priority.at_risk else Decimal(0)
    cost = priority.cost.amount if priority.cost is not None else None
    free_priced_unknown = 2 if cost is None else int(cost > 0)
    worth = at_risk / cost if cost and cost > 0 else at_risk
    day = priority.by if priority.by and priority.tier is Tier.LAPSES else date.max
    aside = finding.set_aside is not None
    return (aside, priority.tier, day, free_priced_unknown, -worth, -at_risk, finding.id)


def ordered(findings: Iterable[Finding]) -> tuple[Finding, ...]:
    """Return findings in the order of their priority, those set aside last."""
    return tuple(sorted(findings, key=_rank))


def agenda(findings: Iterable[Finding]) -> tuple[Finding, ...]:
    """Return what the leaders decide: the first five findings of kind ``decide`` for them."""
    decide = (
        f for f in findings
        if f.kind == "decide" and "leaders" in f.audience and f.set_aside is None
    )  # fmt: skip
    return tuple(decide)[:MOST_DECISIONS]
