"""What the rules about values share."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from decimal import Decimal

from quarterday.core.figure import Node
from quarterday.core.file.records import Building
from quarterday.core.review.case import Case
from quarterday.core.review.finding import Finding, Priority, Subject, Tier
from quarterday.core.review.told import Say
from quarterday.core.values.cost import number


def about(building: Building) -> Subject:
    """Return a building as the subject of a finding."""
    return Subject("building", building.id, building.name)


def for_record(
    case: Case, rule: str, building: Building, say: Say, evidence: tuple[Node, ...] = ()
) -> Finding:
    """Return what the broker must mend in a building's record before the renewal."""
    return Finding(
        rule=rule,
        subject=about(building),
        audience=("broker",),
        kind="fix",
        priority=Priority(Tier.RECORD, reasons=(say("reason"),)),
        title=say("title"),
        means=say("means"),
        todo=say("todo"),
        evidence=evidence,
        by=case.renewal,
    )


def for_answer(
    case: Case, rule: str, building: Building, say: Say, evidence: tuple[Node, ...] = ()
) -> Finding:
    """Return what the leaders fill in about a building and send back before the renewal."""
    return replace(
        for_record(case, rule, building, say, evidence),
        audience=("leaders", "broker"),
        kind="send back",
        encloses=("statement-of-values",),
    )


def asked_by(case: Case) -> date:
    """Return the day an answer is needed: the one the offer names, else the renewal."""
    return (case.terms.answer_by if case.terms else None) or case.renewal


def parameter_number(case: Case, id: str) -> Decimal:
    """Return a parameter in force on the review's day as a plain number."""
    return number(case.parameter(id))
