"""What the rules about changed terms share: the differences, their places, words and evidence."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from itertools import groupby

from quarterday.core.figure import Node
from quarterday.core.file.records.terms import EVERYWHERE
from quarterday.core.money import Money
from quarterday.core.review.case import Case
from quarterday.core.review.finding import Subject
from quarterday.core.review.need import Need, need
from quarterday.core.review.rules.terms.evidence import cover, nodes
from quarterday.core.terms.difference import Difference, DifferenceKind
from quarterday.core.terms.presence import gives
from quarterday.core.values.cost import number
from quarterday.core.words import Words, words

WORTH_DECIDING = "terms.change-worth-deciding"
MOST_NAMED = "terms.most-named"
ABUSE = "abuse-liability"
TO_INSURE = frozenset({"own", "mandate"})  # whose building it is theirs to insure
THE_TERMS = Subject("terms", "", cover(""))
# These have a rule of their own, which says more.
TOLD_ELSEWHERE: frozenset[DifferenceKind] = frozenset(
    {"damages", "defence", "claims-made", "retroactive-date", "reporting-period", "qualified"}
)


def is_gone(case: Case, coverage: str) -> bool:
    """Tell whether the expiring terms give a coverage that the offer does not give at all."""
    had = case.expiring is not None and gives(case.expiring, coverage)
    return had and case.offered is not None and not gives(case.offered, coverage)


def by_coverage(found: Iterable[Difference]) -> Iterator[tuple[str, tuple[Difference, ...]]]:
    """Yield the differences of each coverage, in order."""
    for coverage, group in groupby(found, key=lambda d: d.coverage):
        yield coverage, tuple(group)


def evidence_of(case: Case, found: Iterable[Difference]) -> tuple[Node, ...]:
    """Return both versions of each difference, and what it moves, as facts and figures."""
    assert case.expiring is not None
    assert case.offered is not None
    return tuple(n for d in found for n in nodes(case, case.expiring, case.offered, d))


def most_moved(found: Iterable[Difference]) -> Money | None:
    """Return the largest amount that one difference moves to the organisation, where exact."""
    moved = [d.more_borne for d in found if d.more_borne and d.more_borne.amount > 0]
    return max(moved, key=lambda m: m.amount, default=None)


def places_of(case: Case, found: Iterable[Difference]) -> tuple[str | Words, ...]:
    """Return the places of the differences, each once, as people say them."""
    return tuple(dict.fromkeys(case.building_name(d.location) for d in found))


def one_place(case: Case, found: Iterable[Difference]) -> str | Words | None:
    """Return the one named place of all differences; None when there is no such place."""
    at = {d.location for d in found}
    return case.building_name(at.pop()) if len(at) == 1 and at != {EVERYWHERE} else None


def phrases(
    case: Case, found: Iterable[Difference], said: str | Words | None = None
) -> tuple[Words, ...]:
    """Return the differences in words, each once, with its places unless one was ``said``."""
    by_phrase: dict[Words, list[Difference]] = {}
    for difference in found:
        by_phrase.setdefault(difference.phrase, []).append(difference)
    if said:
        return tuple(by_phrase)
    return tuple(_at_places(case, phrase, same) for phrase, same in by_phrase.items())


def _at_places(case: Case, phrase: Words, found: list[Difference]) -> Words:
    if all(d.location == EVERYWHERE for d in found):
        return phrase
    return words("change-at-places", change=phrase, places=places_of(case, found))


def shortened(case: Case, each: Iterable[Words]) -> tuple[Words, ...]:
    """Return the first items and, when there are more than the parameter says, how many more."""
    items = tuple(each)
    most = int(number(case.parameter(MOST_NAMED)))
    if len(items) <= most:
        return items
    return (*items[:most], words("and-more", count=len(items) - most))


def named(case: Case, found: list[Difference]) -> tuple[Words, ...]:
    """Return the differences by coverage, only so many; the last then says how many more."""
    return shortened(case, (_of(case, *group) for group in by_coverage(found)))


def _of(case: Case, coverage: str, found: tuple[Difference, ...]) -> Words:
    at = one_place(case, found)
    name = words("coverage-at", coverage=cover(coverage), place=at) if at else cover(coverage)
    return words("changes-of-coverage", coverage=name, changes=phrases(case, found, said=at))


def need_of(case: Case, coverage: str) -> Need:
    """Return whether the organisation needs a coverage; unknown when the library has none such."""
    entry = case.reference.coverages.get(coverage)
    return need(entry.needed_when, case.file) if entry else Need("unknown")


def is_safety(case: Case, coverage: str) -> bool:
    """Tell whether harm to people stands behind a coverage."""
    entry = case.reference.coverages.get(coverage)
    return entry is not None and entry.safety


def reasons(needed: Need) -> tuple[Words, ...]:
    """Return why a coverage matters, as sentences."""
    return tuple(words("reason-because", fact=reason) for reason in needed.because)
