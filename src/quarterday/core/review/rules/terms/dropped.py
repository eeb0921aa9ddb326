"""Coverages that expire and are not offered again."""

from __future__ import annotations

from collections.abc import Iterator

from quarterday.core.review.case import Case
from quarterday.core.review.finding import Finding, Priority, Rule, Subject, Tier
from quarterday.core.review.need import Need
from quarterday.core.review.rules.terms.changes import (
    ABUSE,
    WORTH_DECIDING,
    by_coverage,
    evidence_of,
    is_safety,
    most_moved,
    need_of,
    places_of,
    reasons,
)
from quarterday.core.review.rules.terms.evidence import cover
from quarterday.core.review.rules.terms.offers import option_facts, option_of, price_of, priced
from quarterday.core.terms.difference import Difference
from quarterday.core.terms.presence import gives
from quarterday.core.values.cost import number
from quarterday.core.words import words


def dropped(case: Case) -> Iterator[Finding]:
    """Find coverages that expire and are not offered again; one finding a coverage.

    Abuse cover has a rule of its own, ``people.abuse-unqualified``, while people are in care.
    """
    gone = (d for d in case.changes if d.kind == "dropped")
    for coverage, found in by_coverage(gone):
        needed = need_of(case, coverage)
        if coverage != ABUSE or needed.answer == "no":
            yield _dropped(case, coverage, found, needed)


def _dropped(case: Case, coverage: str, found: tuple[Difference, ...], needed: Need) -> Finding:
    assert case.offered is not None
    at_risk = most_moved(found)
    extent = "some" if gives(case.offered, coverage) else "all"
    limit = {"case": "limit", "limit": at_risk} if at_risk else {"case": "plain"}
    small = at_risk is not None and at_risk.amount < number(case.parameter(WORTH_DECIDING))
    told = needed.answer == "no" or (small and not is_safety(case, coverage))
    tier = Tier.MONEY if told else Tier.LAPSES
    price = price_of(case.offered, option_of(case.offered, coverage))
    return Finding(
        rule="terms.dropped",
        subject=Subject("coverage", coverage, cover(coverage)),
        audience=("leaders", "broker"),
        kind="know" if told else "decide",
        priority=Priority(
            tier=Tier.SAFETY_OR_DUTY if is_safety(case, coverage) else tier,
            by=case.renewal,
            at_risk=at_risk,
            cost=price,
            reasons=(words("reason-ends-on", day=case.renewal), *reasons(needed)),
        ),
        title=words(
            "terms-dropped-title",
            coverage=cover(coverage),
            extent=extent,
            places=places_of(case, found),
        ),
        means=words("terms-dropped-means", day=case.renewal, **limit),
        todo=words(
            "terms-dropped-todo",
            act=words("terms-dropped-act", kind="know" if told else "decide", **priced(price)),
            basis=_basis_of_claims(case, coverage),
            day=case.renewal,
        ),
        evidence=(
            *evidence_of(case, found),
            *option_facts(case, case.offered, option_of(case.offered, coverage)),
            *needed.facts,
        ),
        encloses=("what-changed",) if told else ("what-changed", "decisions-form"),
        by=case.renewal,
    )


def _basis_of_claims(case: Case, coverage: str) -> str:
    """Say whether the expiring cover counts claims by when they are made."""
    lines = case.expiring.coverages if case.expiring else ()
    made = any(line.claims_made for line in lines if line.coverage == coverage)
    return "claims-made" if made else "other"


RULES: tuple[Rule, ...] = (Rule("terms.dropped", "coverage", dropped, (WORTH_DECIDING,)),)
