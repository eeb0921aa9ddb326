"""One premium as plain data, for JSON."""

from __future__ import annotations

from datetime import date
from typing import Any

from quarterday.catalogue.speech import Speech
from quarterday.core.given import Unusable
from quarterday.core.premium.allocation import Allocation
from quarterday.core.premium.explain import PremiumChange, premium_change
from quarterday.core.premium.instalments import Schedule
from quarterday.core.premium.prepaid import by_fiscal_year
from quarterday.core.premium.rounding import TwoWay
from quarterday.core.premium.statement import Statement, statement
from quarterday.core.reference import Reference
from quarterday.core.review.case import Case, Version
from quarterday.core.words import words
from quarterday.office.plain import node, value
from quarterday.office.terms import case_of, version

Plain = dict[str, Any]


def premium_of(
    id: str,
    reference: Reference,
    as_of: date,
    stage: Version | None = None,
    key: str | None = None,
) -> tuple[Case, Statement]:
    """Return the case of a file and the statement of its terms at ``stage`` (the newest if None).

    UnknownFile when there is no such file; Trouble when it has no such terms; Unusable when they
    have no premium, or the allocation key cannot be used.
    """
    case = case_of(id, reference, as_of)
    terms = (None if stage else case.terms) or version(case, stage or "offered")
    if not terms.premiums:
        raise Unusable(words("cli-premium-no-premium"))
    return case, statement(case, terms, key)


def change_of(case: Case, made: Statement) -> PremiumChange | None:
    """Return why the premium moved, when the statement is that of the offer."""
    return premium_change(case) if made.terms == case.offered else None


def premium(case: Case, made: Statement, speech: Speech) -> Plain:
    """Return a statement as JSON can hold it."""
    summed, change = made.table, change_of(case, made)
    return {
        "file": case.file.id,
        "terms": made.terms.key,
        "cells": [
            {"coverage": coverage, "location": place, "amount": value(amount)}
            for (coverage, place), amount in summed.cells.items()
        ],
        "subtotal": value(summed.subtotal),
        "fees": value(summed.fees),
        "tax": value(summed.tax.tax.money),
        "total": value(summed.total),
        "faults": [
            {"what": speech.say(f.computed.label), "stated": value(f.stated),
             "computed": value(f.computed.money)}
            for f in made.faults
        ],
        "doubts": [speech.say(doubt) for doubt in made.doubts],
        "change": [node(figure, speech) for figure in change.figures] if change else [],
        "allocation": _allocation(made.allocation) if made.allocation else None,
        "plans": [_plan(plan) for plan in made.plans.values()],
        "prepaid": [
            {"from": str(s.days.start), "to": str(s.last_day), "days": s.days.days,
             "fiscal_year": str(s.fiscal_year), "amount": f"{s.total:.2f}"}
            for s in made.slices
        ],
        "fiscal_years": {str(y): f"{a:.2f}" for y, a in by_fiscal_year(made.slices).items()},
    }  # fmt: skip


def _allocation(made: Allocation) -> Plain:
    return {
        "key": made.name,
        "by_coverage": _two_way(made.by_coverage),
        "by_location": _two_way(made.by_location),
        "totals": {party: f"{amount:.2f}" for party, amount in made.totals.items()},
    }


def _two_way(made: TwoWay[str, str]) -> Plain:
    found: Plain = {row: {} for row in made.rows()}
    for (row, party), amount in made.cells.items():
        found[row][party] = f"{amount:.2f}"
    return found


def _plan(made: Schedule) -> Plain:
    return {
        "plan": made.plan.id,
        "illustrative": made.plan.illustrative,
        "payments": [
            {"due": str(p.due), "amount": value(p.amount), "premium": value(p.premium),
             "fees": value(p.fees), "tax": value(p.tax), "charge": value(p.charge)}
            for p in made.payments
        ],
        "total": value(made.total),
        "extra": value(made.extra),
        "extra_tax": value(made.extra_tax),
        "cost_of_borrowing": f"{made.canada.rate.normalize() + 0:f}",
        "effective": f"{made.effective.normalize() + 0:f}",
    }  # fmt: skip
