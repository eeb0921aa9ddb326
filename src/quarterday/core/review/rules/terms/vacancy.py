"""Buildings that stand empty longer than the terms allow."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, timedelta

from quarterday.core.figure import Figure, Node
from quarterday.core.file.records import Building, Terms
from quarterday.core.file.records.terms import EVERYWHERE
from quarterday.core.money import Money, total
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

    def is_past(self, day: date) -> bool:
        """Tell whether the allowed days are over on ``day``."""
        return self.last_day is None or day > self.last_day


def vacancy(case: Case) -> Iterator[Finding]:
    """Find buildings empty longer than the terms allow, now or before the coming term ends.

    Those past the allowed days are one finding, those that come to it another.
    """
    terms = case.terms
    standing = [b for b in case.file.buildings if b.unoccupied_since or b.unoccupied_days]
    if not standing and case.file.operations.unoccupied_buildings:
        yield _which_is_empty()
    elif standing and terms and terms.vacancy_days is None:
        yield _days_unknown(standing)
    elif terms:
        yield from _too_long(case, terms, standing)


def _too_long(case: Case, terms: Terms, standing: list[Building]) -> Iterator[Finding]:
    found = [empty for b in standing for empty in _empty(case, b, terms.vacancy_days or 0)]
    for past in (True, False):
        same = [empty for empty in found if empty.is_past(case.as_of) is past]
        if same:
            yield _finding(case, terms, same, past=past)


def _empty(case: Case, building: Building, allowed: int) -> Iterator[Empty]:
    if building.unoccupied_since:
        last = building.unoccupied_since + timedelta(days=allowed)
        if last < case.coming.end:
            yield Empty(building, allowed, last)
    elif (building.unoccupied_days or 0) > allowed:
        yield Empty(building, allowed, None)


def _finding(case: Case, terms: Terms, found: list[Empty], *, past: bool) -> Finding:
    names = tuple(empty.building.name for empty in found)
    last = min((e.last_day for e in found if e.last_day), default=None)
    day = {} if last is None or past else {"day": last}
    others = f"+{len(found) - 1}" if len(found) > 1 else ""
    return Finding(
        rule="terms.vacancy",
        subject=Subject(
            "building", f"{found[0].building.id}{others}", words("buildings-name", buildings=names)
        ),
        audience=("leaders", "broker"),
        kind="decide",
        priority=Priority(
            Tier.LAPSES,
            by=last,
            at_risk=_sums_insured(terms, found),
            reasons=(words("reason-empty-building"),),
        ),
        title=words(
            "terms-vacancy-title", buildings=names, state="past" if past else "coming", **day
        ),
        means=words("terms-vacancy-means", days=found[0].allowed),
        todo=words("terms-vacancy-todo"),
        evidence=_evidence(case, terms, found),
        by=last,
    )


def _sums_insured(terms: Terms, found: list[Empty]) -> Money | None:
    """Return what the buildings are insured for together; None when one sum is not known."""
    sums = [_sum_insured(terms, empty.building) for empty in found]
    known = [money for money in sums if money is not None]
    return total(known) if len(known) == len(sums) else None


def _sum_insured(terms: Terms, building: Building) -> Money | None:
    line = terms.find("building", building.id)
    if line is None or line.limit is None or line.location == EVERYWHERE:
        return None
    return terms.money(line.limit)


def _evidence(case: Case, terms: Terms, found: list[Empty]) -> tuple[Node, ...]:
    allowed = fact_of(case.file, terms, "", "vacancy-days", found[0].allowed)
    return (*(_days_empty(case, empty.building) for empty in found), allowed)


def _days_empty(case: Case, building: Building) -> Node:
    since = building.unoccupied_since
    if since is None:
        return case.file.fact(building, "unoccupied_days", "days")
    first = case.file.fact(building, "unoccupied_since", "date")
    if since > case.as_of:
        return first
    return Figure(
        id=f"terms.days-empty/{building.id}",
        value=(case.as_of - since).days,
        unit="days",
        label=words("figure-days-empty", building=building.name),
        how=words("how-days-empty", day=case.as_of),
        inputs=(first,),
    )


def _days_unknown(standing: list[Building]) -> Finding:
    names = tuple(building.name for building in standing)
    return Finding(
        rule="terms.vacancy",
        subject=Subject("terms", "vacancy-days", words("buildings-name", buildings=names)),
        audience=("broker",),
        kind="fix",
        priority=Priority(Tier.LAPSES, reasons=(words("reason-empty-building"),)),
        title=words("terms-vacancy-unknown-title", buildings=names),
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
