"""What the terms of a file pay, and how two versions of them differ."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from quarterday.core.file.records import Terms
from quarterday.core.reference import Reference
from quarterday.core.review.case import Case, Version
from quarterday.core.terms.compare import compare
from quarterday.core.terms.difference import Difference
from quarterday.core.terms.losses.loss import Loss
from quarterday.core.terms.losses.scaling import Scaled
from quarterday.core.terms.settling.account import setting_of
from quarterday.core.terms.settling.outcomes import (
    Outcome,
    Record,
    Settled,
    last_day,
    outcomes,
    past_outcomes,
    reference_outcomes,
)
from quarterday.core.terms.settling.settlement import Settlement, settle
from quarterday.core.words import Term, words
from quarterday.office.trouble import Trouble
from quarterday.store import ledger

Tried = tuple[tuple[Scaled, Outcome | None], ...]


@dataclass(frozen=True, slots=True)
class Comparison:
    """Two versions of terms: their differences, and what the same losses cost under each.

    ``tried`` are the library's losses at this account, ``past`` its own claims of ten years.
    """

    before: Terms
    after: Terms
    differences: tuple[Difference, ...]
    tried: Tried
    past: Record


def case_of(id: str, reference: Reference, as_of: date) -> Case:
    """Return a file as a case on a day; UnknownFile when there is no such file."""
    return Case(ledger.load(id), reference, as_of)


def version(case: Case, name: Version) -> Terms:
    """Return the terms that play a part in the renewal; Trouble when they are not on file."""
    found = case.version(name)
    if found is None:
        shown = Term("stage", name)
        raise Trouble(words("acts-no-terms", file=case.file.id, terms=shown, day=case.renewal))
    return found


def tried_losses(case: Case, terms: Terms) -> Tried:
    """Return the library's losses at this account, settled under one version of terms."""
    return reference_outcomes(case, terms, terms)


def paid(case: Case, terms: Terms, loss: Loss) -> Settlement:
    """Return what the terms pay for a loss, step by step; Refused says what cannot be honoured."""
    return settle(setting_of(case, terms, last_day(terms)), loss)


def tried(case: Case, terms: Terms, loss: Loss) -> Settled:
    """Return what the terms pay for a loss on the last day of their own period.

    So one loss can be held against several versions; a Refused says what cannot be honoured.
    """
    return outcomes(case, terms, terms, (loss,))[0].after


def compared(case: Case, before: Terms, after: Terms) -> Comparison:
    """Return how ``after`` differs from ``before``, in clauses and in outcomes."""
    return Comparison(
        before,
        after,
        compare(before, after),
        reference_outcomes(case, before, after),
        past_outcomes(case, before, after),
    )
