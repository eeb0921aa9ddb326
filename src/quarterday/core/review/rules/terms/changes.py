"""Expiring, requested, offered and issued terms against each other."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from itertools import groupby

from quarterday.core.figure import Node
from quarterday.core.file.records import Decision, Terms
from quarterday.core.file.records.terms import EVERYWHERE, Option
from quarterday.core.money import Money
from quarterday.core.review.case import Case
from quarterday.core.review.finding import Finding, Kind, Priority, Rule, Subject, Tier
from quarterday.core.review.need import Need, need
from quarterday.core.review.rules.terms.evidence import cover, nodes
from quarterday.core.review.rules.terms.offers import option_facts, option_of, price_of, priced
from quarterday.core.terms.compare import compare
from quarterday.core.terms.difference import Difference, DifferenceKind
from quarterday.core.terms.presence import gives, lines_of
from quarterday.core.values.cost import number
from quarterday.core.words import Words, words

WORTH_DECIDING = "terms.change-worth-deciding"
MOST_NAMED = "terms.most-named"
ABUSE = "abuse-liability"
OPTION_QUESTION = "terms.option-open@"
THE_TERMS = Subject("terms", "", cover(""))
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
# These have a rule of their own, which says more.
TOLD_ELSEWHERE: frozenset[DifferenceKind] = frozenset(
    {"damages", "defence", "claims-made", "retroactive-date", "reporting-period", "qualified"}
)


def offered_changes(case: Case) -> tuple[Difference, ...]:
    """Return how the offer differs from the expiring terms; nothing when one is missing."""
    if case.expiring is None or case.offered is None:
        return ()
    return compare(case.expiring, case.offered)


def _by_coverage(found: Iterable[Difference]) -> Iterator[tuple[str, tuple[Difference, ...]]]:
    for coverage, group in groupby(found, key=lambda d: d.coverage):
        yield coverage, tuple(group)


def _evidence(case: Case, found: Iterable[Difference]) -> tuple[Node, ...]:
    assert case.expiring is not None
    assert case.offered is not None
    return tuple(n for d in found for n in nodes(case, case.expiring, case.offered, d))


def _at_risk(found: Iterable[Difference]) -> Money | None:
    """Return the largest amount that one difference moves to the organisation, where exact."""
    moved = [d.more_borne for d in found if d.more_borne and d.more_borne.amount > 0]
    return max(moved, key=lambda m: m.amount, default=None)


def _places(case: Case, found: Iterable[Difference]) -> tuple[str | Words, ...]:
    return tuple(dict.fromkeys(case.building_name(d.location) for d in found))


def _one_place(case: Case, found: Iterable[Difference]) -> str | Words | None:
    """Return the one named place of all differences; None when there is no such place."""
    at = {d.location for d in found}
    return case.building_name(at.pop()) if len(at) == 1 and at != {EVERYWHERE} else None


def _phrases(
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
    return words("change-at-places", change=phrase, places=_places(case, found))


def need_of(case: Case, coverage: str) -> Need:
    """Return whether the organisation needs a coverage; unknown when the library has none such."""
    entry = case.reference.coverages.get(coverage)
    return need(entry.needed_when, case.file) if entry else Need("unknown")


def is_safety(case: Case, coverage: str) -> bool:
    """Tell whether harm to people stands behind a coverage."""
    entry = case.reference.coverages.get(coverage)
    return entry is not None and entry.safety


def is_gone(case: Case, coverage: str) -> bool:
    """Tell whether the expiring terms give a coverage that the offer does not give at all."""
    had = case.expiring is not None and gives(case.expiring, coverage)
    return had and case.offered is not None and not gives(case.offered, coverage)


def dropped(case: Case) -> Iterator[Finding]:
    """Find coverages that expire and are not offered again; one finding a coverage.

    Abuse cover has a rule of its own, ``people.abuse-unqualified``, while people are in care.
    """
    gone = (d for d in offered_changes(case) if d.kind == "dropped")
    for coverage, found in _by_coverage(gone):
        needed = need_of(case, coverage)
        if coverage != ABUSE or needed.answer == "no":
            yield _dropped(case, coverage, found, needed)


def _dropped(case: Case, coverage: str, found: tuple[Difference, ...], needed: Need) -> Finding:
    assert case.offered is not None
    at_risk = _at_risk(found)
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
            places=_places(case, found),
        ),
        means=words("terms-dropped-means", day=case.renewal, **limit),
        todo=words(
            "terms-dropped-todo",
            act=words("terms-dropped-act", kind="know" if told else "decide", **priced(price)),
            basis=_basis_of_claims(case, coverage),
            day=case.renewal,
        ),
        evidence=(
            *_evidence(case, found),
            *option_facts(case, case.offered, option_of(case.offered, coverage)),
            *needed.facts,
        ),
        encloses=("what-changed",),
        by=case.renewal,
    )


def reasons(needed: Need) -> tuple[Words, ...]:
    """Return why a coverage matters, as sentences."""
    return tuple(words("reason-because", fact=reason) for reason in needed.because)


def _basis_of_claims(case: Case, coverage: str) -> str:
    """Say whether the expiring cover counts claims by when they are made."""
    lines = case.expiring.coverages if case.expiring else ()
    made = any(line.claims_made for line in lines if line.coverage == coverage)
    return "claims-made" if made else "other"


def worse(case: Case) -> Iterator[Finding]:
    """Find coverages that the offer makes narrower; one finding a coverage."""
    narrower = (
        d
        for d in offered_changes(case)
        if d.direction == "worse" and d.kind not in {"dropped", *TOLD_ELSEWHERE}
    )
    for coverage, found in _by_coverage(narrower):
        yield _worse(case, coverage, found)


def _worse(case: Case, coverage: str, found: tuple[Difference, ...]) -> Finding:
    threshold = case.parameter(WORTH_DECIDING)
    at_risk = _at_risk(found)
    large = at_risk is not None and at_risk.amount >= number(threshold)
    kind: Kind = "decide" if large or any(d.kind in GRAVE for d in found) else "know"
    amount = {"case": "money", "amount": at_risk} if at_risk else {"case": "plain"}
    option = _restoring(case, coverage)
    price = price_of(case.offered, option) if case.offered else None
    at = _one_place(case, found)
    name = words("coverage-at", coverage=cover(coverage), place=at) if at else cover(coverage)
    return Finding(
        rule="terms.worse",
        subject=Subject("coverage" if coverage else "terms", coverage, cover(coverage)),
        audience=("leaders", "broker"),
        kind=kind,
        priority=Priority(
            tier=Tier.SAFETY_OR_DUTY if is_safety(case, coverage) else Tier.MONEY,
            at_risk=at_risk,
            cost=price,
            reasons=(words("reason-less-than-this-year"),),
        ),
        title=words("terms-worse-title", coverage=name, **amount),
        means=words("terms-worse-means", changes=shortened(case, _phrases(case, found, said=at))),
        todo=words("terms-worse-todo", kind=kind, **priced(price)),
        evidence=(*_evidence(case, found), *_option_facts(case, option), threshold),
        encloses=("what-changed",),
    )


def _restoring(case: Case, coverage: str) -> Option | None:
    """Return the cheapest option that gives at least the limit of the expiring terms."""
    if case.offered is None or case.expiring is None or not coverage:
        return None
    limits = [line.limit for line in lines_of(case.expiring, coverage)]
    most = max((limit for limit in limits if limit is not None), default=None)
    return option_of(case.offered, coverage, at_least=most)


def _option_facts(case: Case, option: Option | None) -> tuple[Node, ...]:
    return option_facts(case, case.offered, option) if case.offered else ()


def better(case: Case) -> Iterator[Finding]:
    """Find what the offer makes wider: one finding for all of it."""
    yield from _grouped(case, "terms.better", _only(case, "better", leave_out={"added"}))


def added(case: Case) -> Iterator[Finding]:
    """Find coverages that are new in the offer: one finding for all of them."""
    yield from _grouped(
        case, "terms.added", [d for d in offered_changes(case) if d.kind == "added"]
    )


def _only(case: Case, direction: str, leave_out: set[str]) -> list[Difference]:
    changes = offered_changes(case)
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
        means=words(f"{id}-means", changes=_named(case, found)),
        todo=words(f"{id}-todo"),
        evidence=_evidence(case, found),
        encloses=("what-changed",),
    )


def _named(case: Case, found: list[Difference]) -> tuple[Words, ...]:
    """Return the differences by coverage, only so many; the last then says how many more."""
    return shortened(case, (_of(case, *group) for group in _by_coverage(found)))


def _of(case: Case, coverage: str, found: tuple[Difference, ...]) -> Words:
    at = _one_place(case, found)
    name = words("coverage-at", coverage=cover(coverage), place=at) if at else cover(coverage)
    return words("changes-of-coverage", coverage=name, changes=_phrases(case, found, said=at))


def shortened(case: Case, each: Iterable[Words]) -> tuple[Words, ...]:
    """Return the first items and, when there are more than the parameter says, how many more."""
    items = tuple(each)
    most = int(number(case.parameter(MOST_NAMED)))
    if len(items) <= most:
        return items
    return (*items[:most], words("and-more", count=len(items) - most))


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
        means=words("terms-unclear-means", changes=_named(case, found)),
        todo=words("terms-unclear-todo"),
        evidence=_evidence(case, found),
    )


def not_as_requested(case: Case) -> Iterator[Finding]:
    """Find where the offer gives less than was asked for."""
    if case.requested is None or case.offered is None:
        return
    found = _falls_short(case.requested, case.offered)
    if found:
        yield _short(case, "terms.not-as-requested", found, (case.requested, case.offered))


def _falls_short(wanted: Terms, given: Terms) -> list[Difference]:
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
            at_risk=_at_risk(found),
            reasons=(words(f"reason-{id}"),),
        ),
        title=words(f"{id}-title", count=len(found)),
        means=words(f"{id}-means", changes=_named(case, found)),
        todo=words(f"{id}-todo"),
        evidence=tuple(n for d in found for n in nodes(case, *terms, d)),
    )


def not_as_agreed(case: Case) -> Iterator[Finding]:
    """Find where the policy in force gives less than was offered, or lacks an option taken."""
    issued = case.expiring
    offered = case.file.terms(issued.start, "offered") if issued else None
    if issued is None or offered is None:
        return
    found = _falls_short(offered, issued)
    if found:
        yield _short(case, "terms.not-as-agreed", found, (offered, issued))
    for coverage in _taken(case, issued):
        if not gives(issued, coverage):
            yield _missing(coverage)


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
    Rule("terms.dropped", "coverage", dropped, (WORTH_DECIDING,)),
    Rule("terms.worse", "coverage", worse, (WORTH_DECIDING, MOST_NAMED)),
    Rule("terms.added", "terms", added, (MOST_NAMED,)),
    Rule("terms.better", "terms", better, (MOST_NAMED,)),
    Rule("terms.unclear", "terms", unclear, (MOST_NAMED,)),
    Rule("terms.not-as-requested", "terms", not_as_requested, (MOST_NAMED,)),
    Rule("terms.not-as-agreed", "terms", not_as_agreed, (MOST_NAMED,)),
)
