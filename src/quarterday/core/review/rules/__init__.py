"""Every rule, a module a family; ``RULES`` is the visible list."""

from __future__ import annotations

from quarterday.core.review.finding import Rule
from quarterday.core.review.rules import claims, income, money, office, people, terms, values

RULES: tuple[Rule, ...] = (
    *values.RULES,
    *terms.RULES,
    *income.RULES,
    *claims.RULES,
    *people.RULES,
    *money.RULES,
    *office.RULES,
)
