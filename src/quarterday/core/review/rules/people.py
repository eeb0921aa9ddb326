"""Rules of the family ``people``: abuse cover, abuse prevention, and activities nothing covers.

Prevention comes first, insurance second; and where a person may be at risk now, emergency services
and child protection come before both, as the law of the province requires.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from typing import Literal

from quarterday.core.dates import add_months
from quarterday.core.figure import Node, Parameter
from quarterday.core.file.records import Terms
from quarterday.core.review.case import Case
from quarterday.core.review.finding import Finding, Priority, Rule, Subject, Tier
from quarterday.core.review.need import Need, need
from quarterday.core.review.rules.terms.abuse import State, abuse_state, in_our_care
from quarterday.core.review.rules.terms.changes import ABUSE, is_gone, reasons
from quarterday.core.review.rules.terms.evidence import cover, fact_of, line_of
from quarterday.core.review.rules.terms.gaps import ACTIVITY_COVERAGES, Gap, gap_of
from quarterday.core.review.rules.terms.offers import (
    a_year,
    option_facts,
    option_of,
    price_of,
    priced,
)
from quarterday.core.terms.presence import lines_of
from quarterday.core.values.cost import number
from quarterday.core.words import Words, words


def abuse_unqualified(case: Case) -> Iterator[Finding]:
    """Find people in the organisation's care while abuse cover is missing or not confirmed."""
    terms, care = case.terms, in_our_care(case)
    if terms is None or care.answer == "no":
        return
    state = abuse_state(case, terms)
    if state == "qualified":
        return
    yield _abuse(case, terms, care, state) if care.answer == "yes" else _care_unknown(care)


def _abuse(case: Case, terms: Terms, care: Need, state: State) -> Finding:
    told = tuple(
        fact_of(case.file, terms, line_of(*line.place), "qualified", line.qualified)
        for line in lines_of(terms, ABUSE)
        if line.qualified is not None
    )
    return Finding(
        rule="people.abuse-unqualified",
        subject=Subject("coverage", ABUSE, cover(ABUSE)),
        audience=("leaders", "broker"),
        kind="decide",
        priority=Priority(
            tier=Tier.SAFETY_OR_DUTY,
            cost=terms.money(Decimal(0)),  # what is decided is the plan and its declaration
            reasons=(
                words("reason-people-first"),
                *reasons(care),
                words("reason-declaration-free"),
            ),
        ),
        title=words("people-abuse-unqualified-title", state=state),
        means=_means(terms, state),
        todo=words("people-abuse-unqualified-todo"),
        evidence=(*told, *option_facts(case, terms, option_of(terms, ABUSE)), *care.facts),
        encloses=("abuse-form",),
    )


def _means(terms: Terms, state: State) -> Words:
    """Return why it matters, and what the insurer offers to who shows a plan."""
    said, option = words("people-abuse-unqualified-means", state=state), option_of(terms, ABUSE)
    price = price_of(terms, option)
    if option is None or option.limit is None or price is None:
        return said
    limit = terms.money(option.limit)
    return words("people-abuse-offer", means=said, limit=limit, price=a_year(price))


def _care_unknown(care: Need) -> Finding:
    return Finding(
        rule="people.abuse-unqualified",
        subject=Subject("operations", "in-our-care", words("people-in-our-care")),
        audience=("leaders", "broker"),
        kind="send back",
        priority=Priority(Tier.SAFETY_OR_DUTY, reasons=(words("reason-people-first"),)),
        title=words("people-care-unknown-title"),
        means=words("people-care-unknown-means", questions=care.open_questions),
        todo=words("people-care-unknown-todo"),
        encloses=("operations-form",),
    )


@dataclass(frozen=True, slots=True)
class Step:
    """A step of abuse prevention that must be repeated: its field and its interval."""

    id: Literal["plan", "training", "checks"]
    field: str
    interval: str


STEPS: tuple[Step, ...] = (
    Step("plan", "prevention_plan_reviewed_on", "people.plan-review-months"),
    Step("training", "screening_training_on", "people.training-months"),
    Step("checks", "record_checks_on", "people.record-check-months"),
)


@dataclass(frozen=True, slots=True)
class Due:
    """A step that is due: the day it was (None: nobody recorded one), and its interval."""

    step: Step
    last_on: date | None
    interval: Parameter
    as_of: date

    @property
    def phrase(self) -> Words:
        """The step in words, with the day its interval ran out."""
        months = int(number(self.interval))
        if self.last_on is None:
            return words(f"screening-{self.step.id}", case="never", months=months)
        day = add_months(self.last_on, months)
        state = "late" if day < self.as_of else "due"
        return words(f"screening-{self.step.id}", case=state, day=day, months=months)


def screening_due(case: Case) -> Iterator[Finding]:
    """Find steps of abuse prevention whose interval runs out by the renewal, or never recorded."""
    care = in_our_care(case)
    due = tuple(_due(case)) if care.answer == "yes" else ()
    if not due:
        return
    yield Finding(
        rule="people.screening-due",
        subject=Subject("operations", "screening", words("abuse-prevention")),
        audience=("leaders", "broker"),
        kind="send back",
        priority=Priority(Tier.SAFETY_OR_DUTY, reasons=(words("reason-people-first"),)),
        title=words("people-screening-due-title", count=len(due)),
        means=words("people-screening-due-means", steps=tuple(d.phrase for d in due)),
        todo=words("people-screening-due-todo"),
        evidence=(*_dates(case, due), *(d.interval for d in due), *care.facts),
        encloses=("abuse-form",),
    )


def _due(case: Case) -> Iterator[Due]:
    until = max(case.as_of, case.renewal)
    for step in STEPS:
        last_on = getattr(case.file.operations, step.field)
        interval = case.parameter(step.interval)
        if last_on is None or add_months(last_on, int(number(interval))) <= until:
            yield Due(step, last_on, interval, case.as_of)


def _dates(case: Case, due: tuple[Due, ...]) -> tuple[Node, ...]:
    known = (d.step.field for d in due if d.last_on is not None)
    return tuple(case.file.fact(case.file.operations, field, "date") for field in known)


def activity_uncovered(case: Case) -> Iterator[Finding]:
    """Find declared activities that no coverage of the terms answers for.

    Day care, schools and camps need general liability and abuse cover; where those are missing,
    ``terms.option-open`` and ``people.abuse-unqualified`` say so.
    """
    terms = case.terms
    for id in ACTIVITY_COVERAGES if terms else ():
        coverage = case.reference.coverages.get(id)
        gap = gap_of(case, terms, coverage) if terms and coverage else None
        if terms and gap and gap.need.answer == "yes" and not is_gone(case, id):
            yield _activity(case, terms, gap)


def _activity(case: Case, terms: Terms, gap: Gap) -> Finding:
    hurts = gap.coverage.hurts_when
    alone = hurts is not None and need(hurts, case.file).answer == "yes"
    price = price_of(terms, gap.option)
    limit = gap.option.limit if gap.option else None
    wording = "people-activity-uncovered" if alone else "people-activity-unnamed"
    return Finding(
        rule="people.activity-uncovered",
        subject=Subject("coverage", gap.coverage.id, cover(gap.coverage.id)),
        audience=("leaders", "broker") if alone else ("broker",),
        kind="decide" if alone else "fix",
        priority=Priority(
            tier=Tier.MONEY if alone else Tier.RECORD,
            at_risk=terms.money(limit) if limit else None,
            cost=price,
            reasons=reasons(gap.need),
        ),
        title=words(f"{wording}-title", because=gap.need.because),
        means=words(f"{wording}-means", coverage=cover(gap.coverage.id)),
        todo=words(f"{wording}-todo", **priced(price)),
        evidence=(*option_facts(case, terms, gap.option), *gap.need.facts),
        encloses=("options", "decisions-form") if alone else (),
    )


RULES: tuple[Rule, ...] = (
    Rule("people.abuse-unqualified", "coverage", abuse_unqualified),
    Rule(
        "people.screening-due",
        "operations",
        screening_due,
        tuple(step.interval for step in STEPS),
        "record checks: Scouts Canada, section 3000; other intervals illustrative",
    ),
    Rule("people.activity-uncovered", "coverage", activity_uncovered),
)
