"""Claims that were reported late: the days from a loss to the day the insurer was told.

Policies ask for a report without delay, and an insurer that hears late may pay less (common
practice, no source). An allegation of abuse is left out: nobody is late who could not speak sooner.
"""

from __future__ import annotations

from quarterday.core.claims.record import claims_in, window
from quarterday.core.figure import Figure
from quarterday.core.file.fold import File
from quarterday.core.file.records import Claim
from quarterday.core.review.case import Case
from quarterday.core.values.cost import number
from quarterday.core.words import Term, Words, words

DAYS, YEARS = "claims.late-days", "claims.late-years"
LEFT_OUT = frozenset({"abuse-allegation"})


def days_to_report(claim: Claim) -> int | None:
    """Return the days from the loss to its report; None where it is not told, or came before."""
    if claim.reported_on is None or claim.reported_on < claim.date_of_loss:
        return None
    return (claim.reported_on - claim.date_of_loss).days


def reported_late(case: Case) -> tuple[Claim, ...]:
    """Return the claims of the last years that took more days than the parameter, oldest first."""
    period = window(case, int(number(case.parameter(YEARS))))
    most = number(case.parameter(DAYS))
    return tuple(
        claim
        for claim in claims_in(case, period)
        if claim.cause not in LEFT_OUT and (days_to_report(claim) or 0) > most
    )


def delay_figure(file: File, claim: Claim) -> Figure:
    """Return the days that the report of a claim took, from its two dates."""
    days = days_to_report(claim)
    assert days is not None
    facts = (file.fact(claim, name, "date") for name in ("date_of_loss", "reported_on"))
    return Figure(
        id=f"claim-days-to-report@{claim.number}",
        value=days,
        unit="days",
        label=words("claims-delay-label", cause=Term("cause", claim.cause), day=claim.date_of_loss),
        how=words("claims-delay-how"),
        inputs=tuple(facts),
    )


def delayed(claim: Claim) -> Words:
    """Return a claim in words, with the days that its report took."""
    return words(
        "claims-delayed",
        cause=Term("cause", claim.cause),
        day=claim.date_of_loss,
        days=days_to_report(claim) or 0,
    )
