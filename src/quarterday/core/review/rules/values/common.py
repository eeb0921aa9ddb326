"""What the rules about values share."""

from __future__ import annotations

from datetime import date
from decimal import Decimal

from quarterday.core.file.records import Building
from quarterday.core.review.case import Case
from quarterday.core.review.finding import Subject
from quarterday.core.values.cost import number


def about(building: Building) -> Subject:
    """Return a building as the subject of a finding."""
    return Subject("building", building.id, building.name)


def asked_by(case: Case) -> date:
    """Return the day an answer is needed: the one the offer names, else the renewal."""
    return (case.terms.answer_by if case.terms else None) or case.renewal


def parameter_number(case: Case, id: str) -> Decimal:
    """Return a parameter in force on the review's day as a plain number."""
    return number(case.parameter(id))
