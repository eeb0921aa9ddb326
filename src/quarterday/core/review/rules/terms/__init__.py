"""Rules of the family ``terms``."""

from __future__ import annotations

from quarterday.core.review.finding import Rule
from quarterday.core.review.rules.terms import changes, clauses, gaps, vacancy

RULES: tuple[Rule, ...] = (*changes.RULES, *gaps.RULES, *clauses.RULES, *vacancy.RULES)
