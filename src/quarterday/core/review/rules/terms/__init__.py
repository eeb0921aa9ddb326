"""Rules of the family ``terms``."""

from __future__ import annotations

from quarterday.core.review.finding import Rule

RULES: tuple[Rule, ...] = ()
