"""Buildings that stand empty longer than the terms allow."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, timedelta

from quarterday.core.figure import Figure, Node
from quarterday.core.file.records import Building, Terms
from quarterday.core.file.records.terms import EVERYWHERE
from quarterday.core.money import Money
from quarterday.core.review.case import Case
from quarterday.core.review.finding import Finding, Priority, Rule, Subject, Tier
from quarterday.core.review.rules.terms.evidence import fact_of
from quarterday.core.words import words


@dataclass(frozen=True, slots=True)
class Empty:
    """A building that stands empty: how many days the terms allow, and the last allowed day."""

    building: Building
    allowed: int
    last_day: date | None  # None: the file gives a number of days and no first day


def vacancy(case: Case) -> Iterator[Finding]:
    """Find buildings empty longer than the terms allow, now or before the coming term ends."""
    terms = case.terms
    standing = [b for b in case.file.buildings if b.unoccupied_since or b.unoccupied_days]
    if not standing and case.file.operations.unoccupied_buildings:
        yield _which_is_empty()
    for building in standing if terms else ():
        assert terms is not None
        yield from _vacancy(case, terms, building)


def _vacancy(case: Case, terms: Terms, building: Building) -> Iterator[Finding]:
    allowed = terms.vacancy_days
    if allowed is None:
        yield _days_unknown(building)
    elif building.unoccupied_since:
        last = building.unoccupied_since + timedelta(days=allowed)
        if last < case.coming.end:
            yield _empty(case, terms, Empty(building, allowed, last))
    elif (building.unoccupied_days or 0) > allowed:
        yield _empty(case, terms, Empty(building, allowed, None))


def _empty(case: Case, terms: Terms, empty: Empty) -> Finding:
    past = empty.last_day is None or case.as_of > empty.last_day
    day = {} if empty.last_day is None or past else {"day": empty.last_day}
    state = "past" if past else "coming"
    return Finding(
        rule="terms.vacancy",
        subject=Subject("building", empty.building.id, empty.building.name),
        audience=("leaders", "broker"),
        kind="decide",
        priority=Priority(
            Tier.LAPSES,
            by=empty.last_day,
            at_risk=_sum_insured(terms, empty.building),
            reasons=(words("reason-empty-building"),),
        ),
        title=words("terms-vacancy-title", building=empty.building.name, state=state, **day),
        means=words("terms-vacancy-means", days=empty.allowed),
        todo=words("terms-vacancy-todo"),
        evidence=_vacancy_evidence(case, terms, empty),
        by=empty.last_day,
    )


def _sum_insured(terms: Terms, building: Building) -> Money | None:
    line = terms.find("building", building.id)
    if line is None or line.limit is None or line.location == EVERYWHERE:
        return None
    return terms.money(line.limit)


def _vacancy_evidence(case: Case, terms: Terms, empty: Empty) -> tuple[Node, ...]:
    allowed = fact_of(case.file, terms, "", "vacancy-days", empty.allowed)
    since = empty.building.unoccupied_since
    if since is None:
        return allowed, case.file.fact(empty.building, "unoccupied_days", "days")
    first = case.file.fact(empty.building, "unoccupied_since", "date")
    if since > case.as_of:
        return first, allowed
    days = Figure(
        id=f"terms.days-empty/{empty.building.id}",
        value=(case.as_of - since).days,
        unit="days",
        label=words("figure-days-empty", building=empty.building.name),
        how=words("how-days-empty", day=case.as_of),
        inputs=(first,),
    )
    return days, allowed


def _days_unknown(building: Building) -> Finding:
    return Finding(
        rule="terms.vacancy",
        subject=Subject("building", building.id, building.name),
        audience=("broker",),
        kind="fix",
        priority=Priority(Tier.LAPSES, reasons=(words("reason-empty-building"),)),
        title=words("terms-vacancy-unknown-title", building=building.name),
        means=words("terms-vacancy-unknown-means"),
        todo=words("terms-vacancy-unknown-todo"),
    )


def _which_is_empty() -> Finding:
    return Finding(
        rule="terms.vacancy",
        subject=Subject("operations", "", words("empty-buildings")),
        audience=("leaders", "broker"),
        kind="send back",
        priority=Priority(Tier.LAPSES, reasons=(words("reason-empty-building"),)),
        title=words("terms-vacancy-which-title"),
        means=words("terms-vacancy-which-means"),
        todo=words("terms-vacancy-which-todo"),
        encloses=("statement-of-values",),
    )


RULES: tuple[Rule, ...] = (Rule("terms.vacancy", "building", vacancy),)
