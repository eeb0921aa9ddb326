"""How the terms stand on abuse cover, and which one finding about it the leaders decide.

However many coverages of the family are gone, narrower or not confirmed, the agenda holds one.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import Literal

from quarterday.core.file.records import Terms
from quarterday.core.review.case import Case
from quarterday.core.review.need import Need
from quarterday.core.review.rules.terms.changes import ABUSE, TOLD_ELSEWHERE, is_gone, need_of
from quarterday.core.terms.presence import lines_of

State = Literal["dropped", "absent", "unqualified", "unstated", "qualified"]
Leader = tuple[str, str]
_CLAIMS_MADE = frozenset({"claims-made", "retroactive-date"})


def is_abuse(case: Case, coverage: str) -> bool:
    """Tell whether a coverage is one of the abuse family."""
    entry = case.reference.coverages.get(coverage)
    return entry is not None and entry.family == "abuse"


def in_our_care(case: Case) -> Need:
    """Return whether children, youth or vulnerable adults are in the organisation's care."""
    return need_of(case, ABUSE)


def abuse_state(case: Case, terms: Terms) -> State:
    """Return how the terms stand on abuse cover: the weakest of its lines decides."""
    if is_gone(case, ABUSE):
        return "dropped"
    answers = {line.qualified for line in lines_of(terms, ABUSE)}
    if not answers:
        return "absent"
    if False in answers:
        return "unqualified"
    return "unstated" if None in answers else "qualified"


def waits_for_declaration(case: Case) -> bool:
    """Tell whether the leaders decide about the prevention plan, before any amount."""
    if case.terms is None or in_our_care(case).answer != "yes":
        return False
    return abuse_state(case, case.terms) != "qualified"


def leads(case: Case, rule: str, *coverages: str) -> bool:
    """Tell whether a rule's finding about ``coverages`` may be decided.

    True outside the abuse family; within it, for the first finding only.
    """
    if not any(is_abuse(case, coverage) for coverage in coverages):
        return True
    if waits_for_declaration(case):
        return False
    first = next(_leaders(case), None)
    return first is None or (first[0] == rule and first[1] in coverages)


def _leaders(case: Case) -> Iterator[Leader]:
    """Yield the rules that tell changes of the family, and the coverage, the gravest first."""
    changes = [d for d in case.changes if is_abuse(case, d.coverage) and d.direction == "worse"]
    care_is_out = in_our_care(case).answer == "no"
    for d in changes:
        if d.kind == "dropped" and (d.coverage != ABUSE or care_is_out):
            yield "terms.dropped", d.coverage
    for d in changes:
        if d.kind in _CLAIMS_MADE:
            yield "terms.claims-made", d.coverage
    for d in changes:
        if d.kind not in {"dropped", *TOLD_ELSEWHERE}:
            yield "terms.worse", d.coverage
