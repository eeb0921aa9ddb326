"""Under which questions the answer to an option is kept."""

from __future__ import annotations

from quarterday.core.file.records.terms import EVERYWHERE, Option

QUESTIONS = (
    "option/{coverage}/{location}", "terms.option-open@{coverage}/{location}",
    "terms.option-open@{coverage}", "people.activity-uncovered@{coverage}",
    "income.too-low@{coverage}", "income.extra-expense-low@{coverage}",
)  # fmt: skip


def questions_of(option: Option) -> tuple[str, ...]:
    """Return the questions whose answer is the answer to an option: its own first."""
    found = (q.format(coverage=option.coverage, location=option.location) for q in QUESTIONS)
    return tuple(q for q in found if not q.endswith(f"@{option.coverage}/{EVERYWHERE}"))
