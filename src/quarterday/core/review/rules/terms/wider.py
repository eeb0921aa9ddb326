"""What is new or better in the offer, and what only the wording can judge."""

from __future__ import annotations

from collections.abc import Iterator

from quarterday.core.review.case import Case
from quarterday.core.review.finding import Finding, Priority, Rule, Tier
from quarterday.core.review.rules.terms.changes import (
    MOST_NAMED,
    THE_TERMS,
    TOLD_ELSEWHERE,
    evidence_of,
    named,
)
from quarterday.core.terms.difference import Difference
from quarterday.core.words import words


def better(case: Case) -> Iterator[Finding]:
    """Find what the offer makes wider: one finding for all of it."""
    yield from _grouped(case, "terms.better", _only(case, "better", leave_out={"added"}))


def added(case: Case) -> Iterator[Finding]:
    """Find coverages that are new in the offer: one finding for all of them."""
    yield from _grouped(case, "terms.added", [d for d in case.changes if d.kind == "added"])


def _only(case: Case, direction: str, leave_out: set[str]) -> list[Difference]:
    changes = case.changes
    return [d for d in changes if d.direction == direction and d.kind not in leave_out]


def _grouped(case: Case, rule: str, found: list[Difference]) -> Iterator[Finding]:
    if not found:
        return
    id = rule.replace(".", "-")
    coverages = dict.fromkeys(d.coverage for d in found)
    yield Finding(
        rule=rule,
        subject=THE_TERMS,
        audience=("leaders", "broker"),
        kind="know",
        priority=Priority(Tier.RECORD, reasons=(words("reason-good-to-know"),)),
        title=words(f"{id}-title", count=len(coverages)),
        means=words(f"{id}-means", changes=named(case, found)),
        todo=words(f"{id}-todo"),
        evidence=evidence_of(case, found),
        encloses=("what-changed",),
    )


def unclear(case: Case) -> Iterator[Finding]:
    """Find changes of which only the wording can tell whether they are better or worse."""
    found = _only(case, "cannot say", leave_out=set(TOLD_ELSEWHERE))
    if not found:
        return
    yield Finding(
        rule="terms.unclear",
        subject=THE_TERMS,
        audience=("broker",),
        kind="fix",
        priority=Priority(Tier.RECORD, reasons=(words("reason-wording-decides"),)),
        title=words("terms-unclear-title", count=len(found)),
        means=words("terms-unclear-means", changes=named(case, found)),
        todo=words("terms-unclear-todo"),
        evidence=evidence_of(case, found),
    )


RULES: tuple[Rule, ...] = (
    Rule("terms.added", "terms", added, (MOST_NAMED,)),
    Rule("terms.better", "terms", better, (MOST_NAMED,)),
    Rule("terms.unclear", "terms", unclear, (MOST_NAMED,)),
)
