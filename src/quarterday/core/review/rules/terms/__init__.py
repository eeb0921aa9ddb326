"""Rules of the family ``terms``."""

from __future__ import annotations

from quarterday.core.review.finding import Rule
from quarterday.core.review.rules.terms import (
    agreed,
    clauses,
    dropped,
    gaps,
    losses,
    vacancy,
    wider,
    worse,
)

RULES: tuple[Rule, ...] = (
    *dropped.RULES,
    *worse.RULES,
    *wider.RULES,
    *agreed.RULES,
    *gaps.RULES,
    *losses.RULES,
    *clauses.RULES,
    *vacancy.RULES,
)
