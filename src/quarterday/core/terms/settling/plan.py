"""Compile terms and true values to a plan: the ordered list of moves."""

from __future__ import annotations

from quarterday.core.file.records import Terms
from quarterday.core.reference import Reference
from quarterday.core.terms.settling.asked import Asked, Steps
from quarterday.core.terms.settling.deductibles import deductibles
from quarterday.core.terms.settling.limits import limits
from quarterday.core.terms.settling.machine import Plan
from quarterday.core.terms.settling.refusals import check_terms
from quarterday.core.terms.settling.routing import Item, answer
from quarterday.core.terms.settling.shares import coinsurance, uncovered, waiting, wear
from quarterday.core.terms.settling.values import Values


def asked_of(terms: Terms, reference: Reference, items: tuple[Item, ...], values: Values) -> Asked:
    """Return which line of ``terms`` (checked before) answers each of ``items``."""
    answers = tuple(answer(terms, reference, item) for item in items)
    return Asked(terms, reference, values, answers)


def compiled(terms: Terms, reference: Reference, items: tuple[Item, ...], values: Values) -> Plan:
    """Return ``terms`` as a plan for ``items``; Refused for a clause it cannot honour."""
    check_terms(terms, reference)
    return plan(asked_of(terms, reference, items, values))


def plan(asked: Asked) -> Plan:
    """Return the moves that settle losses of these items; Refused for what is not known."""
    return Plan(len(asked.answers), tuple(_moves(asked)))


def _moves(asked: Asked) -> Steps:
    yield from uncovered(asked)
    yield from waiting(asked)
    yield from wear(asked)
    yield from coinsurance(asked, "coinsurance-first")
    yield from deductibles(asked)
    yield from coinsurance(asked, "deductible-first")
    yield from limits(asked)
