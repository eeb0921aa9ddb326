"""The offer against the request, and the policy in force against the offer."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date

from quarterday.core.file.fold import File
from quarterday.core.file.records import Bound, Decision, Terms
from quarterday.core.review.case import Case
from quarterday.core.review.finding import Finding, Priority, Rule, Subject, Tier
from quarterday.core.review.rules.terms.changes import (
    MOST_NAMED,
    THE_TERMS,
    most_moved,
    named,
)
from quarterday.core.review.rules.terms.evidence import cover, nodes
from quarterday.core.terms.compare import compare
from quarterday.core.terms.difference import Difference
from quarterday.core.terms.presence import gives
from quarterday.core.words import words

OPTION_QUESTION = "terms.option-open@"


def not_as_requested(case: Case) -> Iterator[Finding]:
    """Find where the offer gives less than was asked for."""
    if case.requested is None or case.offered is None:
        return
    found = falls_short(case.requested, case.offered)
    if found:
        yield _short(case, "terms.not-as-requested", found, (case.requested, case.offered))


def falls_short(wanted: Terms, given: Terms) -> list[Difference]:
    """Return where ``given`` is worse than ``wanted``."""
    return [d for d in compare(wanted, given) if d.direction == "worse"]


def _short(case: Case, rule: str, found: list[Difference], terms: tuple[Terms, Terms]) -> Finding:
    id = rule.replace(".", "-")
    return Finding(
        rule=rule,
        subject=THE_TERMS,
        audience=("broker", "insurer"),
        kind="fix",
        priority=Priority(
            Tier.LAPSES,
            at_risk=most_moved(found),
            reasons=(words(f"reason-{id}"),),
        ),
        title=words(f"{id}-title", count=len(found)),
        means=words(f"{id}-means", changes=named(case, found)),
        todo=words(f"{id}-todo"),
        evidence=tuple(n for d in found for n in nodes(case, *terms, d)),
    )


def not_as_agreed(case: Case) -> Iterator[Finding]:
    """Find where the policy in force gives less than was agreed: bound, else offered and taken."""
    issued = case.expiring
    wanted = agreed_terms(case.file, issued.start) if issued else None
    if issued is None or wanted is None:
        return
    found = falls_short(wanted, issued)
    if found:
        yield _short(case, "terms.not-as-agreed", found, (wanted, issued))
    if case.file.get(Bound, str(issued.start)) is not None:
        return
    for coverage in _taken(case, issued):
        if not gives(issued, coverage):
            yield _missing(coverage)


def agreed_terms(file: File, start: date) -> Terms | None:
    """Return the terms that were bound for the period from ``start``, else those offered."""
    bound = file.get(Bound, str(start))
    return bound.agreed if bound else file.terms(start, "offered")


def _taken(case: Case, issued: Terms) -> Iterator[str]:
    """Yield the coverages whose option the leaders took for the period of ``issued``."""
    for decision in case.file.all(Decision):
        for_period = decision.renewal == issued.start and decision.answer == "take-it"
        if for_period and decision.question.startswith(OPTION_QUESTION):
            yield decision.question.removeprefix(OPTION_QUESTION)


def _missing(coverage: str) -> Finding:
    return Finding(
        rule="terms.not-as-agreed",
        subject=Subject("coverage", coverage, cover(coverage)),
        audience=("broker", "insurer"),
        kind="fix",
        priority=Priority(Tier.LAPSES, reasons=(words("reason-terms-not-as-agreed"),)),
        title=words("terms-taken-but-missing-title", coverage=cover(coverage)),
        means=words("terms-taken-but-missing-means"),
        todo=words("terms-not-as-agreed-todo"),
    )


RULES: tuple[Rule, ...] = (
    Rule("terms.not-as-requested", "terms", not_as_requested, (MOST_NAMED,)),
    Rule("terms.not-as-agreed", "terms", not_as_agreed, (MOST_NAMED,)),
)
