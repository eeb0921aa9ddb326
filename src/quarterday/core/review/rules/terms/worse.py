"""Coverages that the offer makes narrower."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from quarterday.core.figure import Node
from quarterday.core.file.records.terms import Option
from quarterday.core.money import Money
from quarterday.core.review.case import Case
from quarterday.core.review.finding import Finding, Kind, Priority, Rule, Subject, Tier
from quarterday.core.review.rules.terms.abuse import is_abuse, leads, waits_for_declaration
from quarterday.core.review.rules.terms.changes import (
    MOST_NAMED,
    TOLD_ELSEWHERE,
    WORTH_DECIDING,
    by_coverage,
    evidence_of,
    is_safety,
    most_moved,
    one_place,
    phrases,
    shortened,
)
from quarterday.core.review.rules.terms.evidence import cover
from quarterday.core.review.rules.terms.offers import (
    gives_back,
    option_facts,
    option_of,
    price_of,
)
from quarterday.core.review.rules.terms.own_part import OwnPart, largest_part
from quarterday.core.terms.difference import Difference, DifferenceKind
from quarterday.core.terms.presence import lines_of
from quarterday.core.values.cost import number
from quarterday.core.words import Words, words

LONGEST_KEY = 60
GRAVE: frozenset[DifferenceKind] = frozenset(
    {
        "limit-basis",
        "sublimit",
        "coinsurance",
        "agreed-value",
        "basis",
        "blanket",
        "exclusion",
    }
)


def worse(case: Case) -> Iterator[Finding]:
    """Find coverages that the offer makes narrower.

    One finding a coverage; coverages that change alike at the same places share one.
    """
    narrower = (d for d in case.changes if d.direction == "worse" and not _elsewhere(d))
    for narrowed in _alike(by_coverage(narrower)):
        yield _worse(case, narrowed)


def _elsewhere(difference: Difference) -> bool:
    """Tell whether another rule tells it: of a building, also an agreed value that ends early."""
    if _ends_early(difference) and difference.coverage == "building":
        return True
    return difference.kind in {"dropped", *TOLD_ELSEWHERE}


def _ends_early(difference: Difference) -> bool:
    return difference.kind == "agreed-value" and difference.after is not None


def _is_grave(difference: Difference) -> bool:
    return difference.kind in GRAVE and not _ends_early(difference)


@dataclass(frozen=True, slots=True)
class Narrowed:
    """Coverages that change alike, and the differences of the first of them and of all."""

    coverages: tuple[str, ...]
    each: tuple[Difference, ...]
    all: tuple[Difference, ...]

    @property
    def key(self) -> str:
        """The coverages; the first and a count when there are many."""
        joined = "+".join(self.coverages)
        return (
            joined
            if len(joined) <= LONGEST_KEY
            else f"{self.coverages[0]}+{len(self.coverages) - 1}"
        )

    @property
    def name(self) -> tuple[Words, ...]:
        """The coverages in words."""
        return tuple(map(cover, self.coverages))


def _alike(groups: Iterable[tuple[str, tuple[Difference, ...]]]) -> Iterator[Narrowed]:
    alike: dict[tuple[tuple[Words, str], ...], list[tuple[Difference, ...]]] = {}
    for _, found in groups:
        alike.setdefault(tuple((d.phrase, d.location) for d in found), []).append(found)
    for same in alike.values():
        coverages = tuple(found[0].coverage for found in same)
        yield Narrowed(coverages, same[0], tuple(d for found in same for d in found))


def _worse(case: Case, narrowed: Narrowed) -> Finding:
    threshold, part = case.parameter(WORTH_DECIDING), _own_part(case, narrowed)
    moved = _larger(most_moved(narrowed.each), part.more if part else None)
    grave = next(filter(_is_grave, narrowed.each), None)
    large = moved is not None and moved.amount >= number(threshold)
    decide = (large or grave is not None) and leads(case, "terms.worse", *narrowed.coverages)
    kind: Kind = "decide" if decide else "know"
    option = _restoring(case, narrowed)
    price = price_of(case.offered, option) if case.offered else None
    at = one_place(case, narrowed.each)
    changes = shortened(case, phrases(case, narrowed.each, said=at))
    return Finding(
        rule="terms.worse",
        subject=_subject(narrowed),
        audience=("leaders", "broker"),
        kind=kind,
        priority=Priority(
            tier=_tier(case, narrowed),
            at_risk=moved,
            cost=price,
            reasons=(words("reason-less-than-this-year"),),
        ),
        title=words("terms-worse-title", coverage=_at(narrowed, at), **_told(grave, moved)),
        means=_means(changes, part),
        todo=_todo(case, narrowed, kind, option),
        evidence=(
            *((part.figure(case),) if part else ()),
            *evidence_of(case, narrowed.all),
            *_option_facts(case, option),
            threshold,
        ),
        encloses=("what-changed", *(("decisions-form",) if decide else ())),
    )


def _own_part(case: Case, narrowed: Narrowed) -> OwnPart | None:
    assert case.expiring is not None
    assert case.offered is not None
    return largest_part(case, case.expiring, case.offered, narrowed.all)


def _larger(one: Money | None, other: Money | None) -> Money | None:
    known = [money for money in (one, other) if money is not None]
    return max(known, key=lambda money: money.amount, default=None)


def _means(changes: tuple[Words, ...], part: OwnPart | None) -> Words:
    said = words("terms-worse-means", changes=changes)
    return words("and-own-part", change=said, part=part.phrase) if part else said


def _todo(case: Case, narrowed: Narrowed, kind: Kind, option: Option | None) -> Words:
    if any(is_abuse(case, c) for c in narrowed.coverages) and waits_for_declaration(case):
        return words("terms-worse-with-the-plan")
    return words("terms-worse-todo", kind=kind, **gives_back(case.offered, option))


def _subject(narrowed: Narrowed) -> Subject:
    name = words("coverages-name", coverages=narrowed.name)
    return Subject("coverage" if narrowed.key else "terms", narrowed.key, name)


def _tier(case: Case, narrowed: Narrowed) -> Tier:
    safety = any(is_safety(case, coverage) for coverage in narrowed.coverages)
    return Tier.SAFETY_OR_DUTY if safety else Tier.MONEY


def _at(narrowed: Narrowed, at: str | Words | None) -> Words:
    name = words("coverages-name", coverages=narrowed.name)
    return words("coverage-at", coverage=name, place=at) if at else name


def _told(grave: Difference | None, moved: Money | None) -> dict[str, str | Words | Money]:
    """Return what the title says: a grave change, else the amount, else that it is less."""
    if grave:
        return {"case": "grave", "change": grave.phrase}
    return {"case": "money", "amount": moved} if moved else {"case": "plain"}


def _restoring(case: Case, narrowed: Narrowed) -> Option | None:
    """Return the cheapest option that gives at least the limit of the expiring terms."""
    coverage = narrowed.coverages[0]
    if case.offered is None or case.expiring is None or len(narrowed.coverages) > 1:
        return None
    limits = [line.limit for line in lines_of(case.expiring, coverage)]
    most = max((limit for limit in limits if limit is not None), default=None)
    return option_of(case.offered, coverage, at_least=most)


def _option_facts(case: Case, option: Option | None) -> tuple[Node, ...]:
    return option_facts(case, case.offered, option) if case.offered else ()


RULES: tuple[Rule, ...] = (Rule("terms.worse", "coverage", worse, (WORTH_DECIDING, MOST_NAMED)),)
