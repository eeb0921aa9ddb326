"""Lenders and lessors: whose copies go out, and whose interest is over."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from quarterday.core.figure import Fact
from quarterday.core.file.records import Interest
from quarterday.core.review.case import Case
from quarterday.core.review.finding import Finding, Subject, Tier
from quarterday.core.review.priority import placed
from quarterday.core.review.rules.office.confirmations import oldest_confirmation
from quarterday.core.words import Term, words


def interests(case: Case) -> Iterator[Finding]:
    """Enclose the copies and ask for what is to be confirmed; ask for the discharge of the rest."""
    current = tuple(i for i in case.file.interests if i.status != "paid-off")
    paid_off = tuple(i for i in case.file.interests if i.status == "paid-off")
    if current:
        yield _current(case, current)
    if paid_off:
        yield _paid_off(case, paid_off)


def _status(case: Case, interest: Interest) -> Fact:
    fact = case.file.fact(interest, "status", "text")
    label = words("office-interest-of", name=interest.name)
    return replace(fact, value=Term("interest-status", interest.status), label=label)


def _names(some: tuple[Interest, ...]) -> tuple[str, ...]:
    return tuple(dict.fromkeys(interest.name for interest in some))


def _current(case: Case, some: tuple[Interest, ...]) -> Finding:
    """Return the finding for active interests: to be confirmed, or only for information."""
    oldest = oldest_confirmation(case, "office.confirmed-within-months")
    open_ = tuple(
        i for i in some
        if i.status == "unknown" or i.confirmed_on is None or i.confirmed_on < oldest
    )  # fmt: skip
    names = _names(open_ or some)
    which = "confirm" if open_ else "copies"
    months = case.parameter("office.confirmed-within-months")
    return Finding(
        rule="office.interests",
        subject=Subject("interest", "current", words("office-interests")),
        audience=("leaders",),
        kind="send back" if open_ else "know",
        priority=placed(Tier.RECORD),
        title=words(f"office-interests-{which}-title", names=names, count=len(names)),
        means=words("office-interests-means"),
        todo=words(f"office-interests-{which}-todo"),
        evidence=(*(_status(case, i) for i in open_ or some), months),
        encloses=("interests-form", "copies-for-lenders") if open_ else ("copies-for-lenders",),
    )


def _paid_off(case: Case, some: tuple[Interest, ...]) -> Finding:
    names = _names(some)
    return Finding(
        rule="office.interests",
        subject=Subject("interest", "paid-off", words("office-interests")),
        audience=("leaders",),
        kind="send back",
        priority=placed(Tier.RECORD),
        title=words("office-interests-paid-off-title", names=names, count=len(names)),
        means=words("office-interests-paid-off-means"),
        todo=words("office-interests-paid-off-todo"),
        evidence=tuple(_status(case, i) for i in some),
        encloses=("interests-form",),
    )
