"""What is new or better in the offer, and what only the wording can judge."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal

from quarterday.core.money import Money, round_to
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
from quarterday.core.values.cost import number
from quarterday.core.words import Rate, Words, words

USUAL_RISE = "terms.usual-yearly-rise"
PERCENT = Decimal("0.01")


def better(case: Case) -> Iterator[Finding]:
    """Find what the offer makes wider: one finding for all of it.

    The usual yearly rise of sums insured is no finding by itself; beside one it is one phrase.
    """
    found = _only(case, "better", leave_out={"added"})
    wider = [d for d in found if not _is_usual_rise(case, d)]
    yield from _grouped(case, "terms.better", wider, _usual_rise(case, found))


def added(case: Case) -> Iterator[Finding]:
    """Find coverages that are new in the offer: one finding for all of them."""
    yield from _grouped(case, "terms.added", [d for d in case.changes if d.kind == "added"])


def _only(case: Case, direction: str, leave_out: set[str]) -> list[Difference]:
    changes = case.changes
    return [d for d in changes if d.direction == direction and d.kind not in leave_out]


def _rise(difference: Difference) -> Decimal | None:
    before, after = difference.before, difference.after
    if difference.kind != "limit" or not isinstance(before, Money) or not isinstance(after, Money):
        return None
    return after.amount / before.amount - 1 if before.amount else None


def _is_usual_rise(case: Case, difference: Difference) -> bool:
    """Tell whether a sum insured only follows prices, as it does every year."""
    entry, rise = case.reference.coverages.get(difference.coverage), _rise(difference)
    if entry is None or entry.family != "property" or rise is None:
        return False
    return rise <= number(case.parameter(USUAL_RISE))


def _usual_rise(case: Case, found: list[Difference]) -> tuple[Words, ...]:
    """Return the usual rise of all sums insured as one phrase; nothing when none rises."""
    rises = [rise for d in found if _is_usual_rise(case, d) and (rise := _rise(d))]
    if not rises:
        return ()
    least, most = Rate(min(rises), 0), Rate(max(rises), 0)
    same = round_to(least.value, PERCENT) == round_to(most.value, PERCENT)
    return (words("usual-rise", case="one" if same else "range", least=least, most=most),)


def _grouped(
    case: Case, rule: str, found: list[Difference], beside: tuple[Words, ...] = ()
) -> Iterator[Finding]:
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
        means=words(f"{id}-means", changes=(*named(case, found), *beside)),
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
    Rule("terms.better", "terms", better, (MOST_NAMED, USUAL_RISE)),
    Rule("terms.unclear", "terms", unclear, (MOST_NAMED,)),
)
