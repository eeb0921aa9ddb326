"""Rules of the family ``claims``."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date

from quarterday.core.claims.record import (
    claims_in,
    currency_of,
    incurred_figure,
    summed,
    window,
)
from quarterday.core.dates import add_months
from quarterday.core.figure import Parameter
from quarterday.core.file.records import Claim
from quarterday.core.money import Money
from quarterday.core.review.case import Case
from quarterday.core.review.finding import Finding, Priority, Rule, Subject, Tier
from quarterday.core.review.told import telling
from quarterday.core.words import Term, words

LOOKBACK, YEARS, COUNT, STALE = (
    f"claims.{name}"
    for name in ("water-lookback-years", "repeat-years", "repeat-count", "stale-months")
)


def _whole(parameter: Parameter) -> int:
    assert not isinstance(parameter.value, str | bool | date)
    return int(str(parameter.value))


def _where(case: Case, location: str) -> Subject:
    """Return a claim's building, or the organisation when the claim names none."""
    if not location:
        return Subject("organisation", "", case.file.organisation.name)
    return Subject("building", location, case.building_name(location))


def water_lookback(case: Case) -> Iterator[Finding]:
    """Find each place that had a water claim in the years insurers look back on."""
    years = case.parameter(LOOKBACK)
    in_window = claims_in(case, window(case, _whole(years)))
    wet = [claim for claim in in_window if claim.cause in case.reference.water_causes]
    for location in sorted({claim.location or "" for claim in wet}):
        here = [claim for claim in wet if (claim.location or "") == location]
        yield _water(case, _where(case, location), here, years)


def _water(case: Case, subject: Subject, claims: list[Claim], years: Parameter) -> Finding:
    currency = currency_of(case)
    sums = summed(claims, currency)
    say = telling(
        "claims.water-lookback",
        building=subject.name,
        n=len(claims),
        years=_whole(years),
        amount=sums.incurred,
        day=claims[-1].date_of_loss,
        renewal=case.renewal,
    )
    return Finding(
        rule="claims.water-lookback",
        subject=subject,
        audience=("leaders", "broker"),
        kind="send back",
        priority=Priority(
            Tier.MONEY,
            at_risk=sums.incurred,
            reasons=(say("reason"),),
        ),
        title=say("title"),
        means=say("means"),
        todo=say("todo"),
        evidence=(*(incurred_figure(case.file, c, currency) for c in claims), years),
        encloses=("water-form",),
        by=case.renewal,
    )


def repeat(case: Case) -> Iterator[Finding]:
    """Find each known cause that struck again within the years counted together."""
    years, count = case.parameter(YEARS), case.parameter(COUNT)
    in_window = claims_in(case, window(case, _whole(years)))
    for cause in sorted({claim.cause for claim in in_window}):
        same = [claim for claim in in_window if claim.cause == cause]
        if cause != "other" and len(same) >= _whole(count):
            yield _repeat(case, cause, same, (years, count))


def _repeat(
    case: Case, cause: str, claims: list[Claim], parameters: tuple[Parameter, Parameter]
) -> Finding:
    currency, name = currency_of(case), Term("cause", cause)
    sums = summed(claims, currency)
    say = telling(
        "claims.repeat",
        cause=name,
        n=len(claims),
        years=_whole(parameters[0]),
        amount=sums.incurred,
        days=tuple(claim.date_of_loss for claim in claims),
    )
    return Finding(
        rule="claims.repeat",
        subject=Subject("claim", cause, words("claims-cause", cause=name)),
        audience=("leaders", "broker"),
        kind="know",
        priority=Priority(Tier.MONEY, at_risk=sums.incurred, reasons=(say("reason"),)),
        title=say("title"),
        means=say("means"),
        todo=say("todo"),
        evidence=(*(incurred_figure(case.file, c, currency) for c in claims), *parameters),
    )


def stale_reserve(case: Case) -> Iterator[Finding]:
    """Find each open claim whose last known movement is longer ago than the parameter says."""
    months = case.parameter(STALE)
    for claim in case.file.claims:
        moved = claim.last_movement_on
        if claim.status == "open" and moved and add_months(moved, _whole(months)) <= case.as_of:
            yield _stale(case, claim, moved, months)


def _stale(case: Case, claim: Claim, moved: date, months: Parameter) -> Finding:
    currency = currency_of(case)
    outstanding = case.file.fact(claim, "outstanding", "money", currency)
    say = telling(
        "claims.stale-reserve",
        claim=claim.number,
        cause=Term("cause", claim.cause),
        day=claim.date_of_loss,
        moved=moved,
        months=_whole(months),
        outstanding=Money(claim.outstanding, currency),
    )
    return Finding(
        rule="claims.stale-reserve",
        subject=Subject("claim", claim.number, claim.number),
        audience=("broker",),
        kind="fix",
        priority=Priority(Tier.RECORD, reasons=(say("reason"),)),
        title=say("title"),
        means=say("means"),
        todo=say("todo"),
        evidence=(outstanding, case.file.fact(claim, "last_movement_on", "date"), months),
        by=case.renewal,
    )


RULES: tuple[Rule, ...] = (
    Rule("claims.water-lookback", "claim", water_lookback, (LOOKBACK,)),
    Rule("claims.repeat", "claim", repeat, (YEARS, COUNT)),
    Rule("claims.stale-reserve", "claim", stale_reserve, (STALE,)),
)
