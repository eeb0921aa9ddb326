"""Coverages that expire and are not offered again."""

from __future__ import annotations

from collections.abc import Iterator

from quarterday.core.money import Money
from quarterday.core.review.case import Case
from quarterday.core.review.finding import Finding, Kind, Priority, Rule, Subject, Tier
from quarterday.core.review.need import Need
from quarterday.core.review.rules.terms.abuse import leads
from quarterday.core.review.rules.terms.changes import (
    ABUSE,
    WORTH_DECIDING,
    by_coverage,
    evidence_of,
    is_gone,
    is_safety,
    most_moved,
    need_of,
    places_of,
    reasons,
)
from quarterday.core.review.rules.terms.evidence import cover
from quarterday.core.review.rules.terms.offers import option_facts, option_of, price_of, priced
from quarterday.core.terms.difference import Difference
from quarterday.core.values.cost import number
from quarterday.core.words import Words, words


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
    kind, option = _kind(case, coverage, found, needed), option_of(case.offered, coverage)
    return Finding(
        rule="terms.dropped",
        subject=Subject("coverage", coverage, cover(coverage)),
        audience=("leaders", "broker"),
        kind=kind,
        priority=Priority(
            tier=_tier(case, coverage, kind),
            by=case.renewal,
            at_risk=most_moved(found),
            cost=price_of(case.offered, option),
            reasons=(words("reason-ends-on", day=case.renewal), *reasons(needed)),
        ),
        title=_title(case, coverage, found),
        means=_means(case, found),
        todo=_todo(case, coverage, kind, price_of(case.offered, option)),
        evidence=(
            *evidence_of(case, found),
            *option_facts(case, case.offered, option),
            *needed.facts,
            case.parameter(WORTH_DECIDING),
        ),
        encloses=("what-changed", *(("decisions-form",) if kind == "decide" else ())),
        by=case.renewal,
    )


def _kind(case: Case, coverage: str, found: tuple[Difference, ...], needed: Need) -> Kind:
    """Return whether it is decided: it is needed or may be, and is not small."""
    moved = most_moved(found)
    small = moved is not None and moved.amount < number(case.parameter(WORTH_DECIDING))
    told = needed.answer == "no" or (small and not is_safety(case, coverage))
    return "know" if told or not leads(case, "terms.dropped", coverage) else "decide"


def _tier(case: Case, coverage: str, kind: Kind) -> Tier:
    if is_safety(case, coverage):
        return Tier.SAFETY_OR_DUTY
    return Tier.LAPSES if kind == "decide" else Tier.MONEY


def _title(case: Case, coverage: str, found: tuple[Difference, ...]) -> Words:
    extent = "all" if is_gone(case, coverage) else "some"
    places = places_of(case, found)
    return words("terms-dropped-title", coverage=cover(coverage), extent=extent, places=places)


def _means(case: Case, found: tuple[Difference, ...]) -> Words:
    moved = most_moved(found)
    limit = {"case": "limit", "limit": moved} if moved else {"case": "plain"}
    return words("terms-dropped-means", day=case.renewal, **limit)


def _todo(case: Case, coverage: str, kind: Kind, price: Money | None) -> Words:
    act = words("terms-dropped-act", kind=kind, **priced(price))
    basis = _basis_of_claims(case, coverage)
    return words("terms-dropped-todo", act=act, basis=basis, day=case.renewal)


def _basis_of_claims(case: Case, coverage: str) -> str:
    """Say whether the expiring cover counts claims by when they are made."""
    lines = case.expiring.coverages if case.expiring else ()
    made = any(line.claims_made for line in lines if line.coverage == coverage)
    return "claims-made" if made else "other"


RULES: tuple[Rule, ...] = (Rule("terms.dropped", "coverage", dropped, (WORTH_DECIDING,)),)
