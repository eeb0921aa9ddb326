"""What a past claim would cost in the coming term."""

from __future__ import annotations

from dataclasses import replace

from quarterday.core.claims.record import ground_up_figure
from quarterday.core.figure import Figure
from quarterday.core.file.records import Building, Claim
from quarterday.core.review.case import Case
from quarterday.core.values.cost import index_of
from quarterday.core.values.index import NotCoveredError, Subject, indexed
from quarterday.core.words import Term, words


def trended(case: Case, claim: Claim, currency: str) -> Figure:
    """Return what a claim came to in all, at the renewal's prices by its building's index.

    What others claim, money, and what names no building have no index here: their cost stands as
    it was, and the figure says so.
    """
    cost = ground_up_figure(case.file, claim, currency)
    label = words("claims-trended", cause=Term("cause", claim.cause), day=claim.date_of_loss)
    name = Subject(f"claim-trended@{claim.number}", label)
    building = _building(case, claim)
    if building is not None:
        try:
            index = index_of(case, building)
            return indexed(name, cost, claim.date_of_loss, case.renewal, index)
        except NotCoveredError:
            pass
    how = words("claims-how-not-trended")
    return replace(cost, id=name.id, label=label, how=how, inputs=(cost,))


def _building(case: Case, claim: Claim) -> Building | None:
    cause = case.reference.causes.get(claim.cause)
    if cause is None or cause.party == "third" or claim.ground_up <= 0:
        return None
    return case.file.get(Building, claim.location or "")
