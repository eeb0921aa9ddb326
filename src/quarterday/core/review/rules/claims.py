"""Rules of the family ``claims``."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date
from decimal import Decimal

from quarterday.core.claims.counted import duplicates
from quarterday.core.claims.doubts import Doubt, doubts
from quarterday.core.claims.experience import CAP, experience
from quarterday.core.claims.late import DAYS, days_to_report, delay_figure, delayed, reported_late
from quarterday.core.claims.late import YEARS as LATE_YEARS
from quarterday.core.claims.record import (
    claims_in,
    currency_of,
    incurred_figure,
    summed,
    window,
)
from quarterday.core.dates import add_months
from quarterday.core.figure import Fact, Node, Parameter, Unit
from quarterday.core.file.records import Claim
from quarterday.core.money import Money
from quarterday.core.review.case import Case
from quarterday.core.review.finding import Finding, Priority, Rule, Subject, Tier
from quarterday.core.review.told import Say, telling
from quarterday.core.values.cost import number
from quarterday.core.words import Rate, Term, words

LOOKBACK, YEARS, COUNT, STALE = (
    f"claims.{name}"
    for name in ("water-lookback-years", "repeat-years", "repeat-count", "stale-months")
)
EXPERIENCE_YEARS, EXPERIENCE_SHARE = "claims.experience-years", "claims.experience-share"


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


def experience_found(case: Case) -> Iterator[Finding]:
    """Find that claims, each up to the cap, took more of the premium than the parameter says."""
    years, most = case.parameter(EXPERIENCE_YEARS), case.parameter(EXPERIENCE_SHARE)
    found = experience(case, _whole(years))
    if found is None or found.capped_ratio is None or found.ratio is None:
        return
    if found.capped_ratio.number < number(most):
        return
    ratio = found.capped_ratio.value
    assert isinstance(ratio, Rate)
    say = telling(
        "claims.experience",
        share=ratio,
        years=_whole(years),
        n=len(found.claims),
        premium=found.premium.money,
        incurred=found.capped.money,
        most=Rate(number(most), 0),
        start=found.period.start,
    )
    yield Finding(
        rule="claims.experience",
        subject=Subject("organisation", "", case.file.organisation.name),
        audience=("leaders", "broker"),
        kind="know",
        priority=Priority(Tier.MONEY, reasons=(say("reason"),)),
        title=say("title"),
        means=say("means"),
        todo=say("todo"),
        evidence=(found.capped_ratio, found.ratio, years, most),
    )


def late(case: Case) -> Iterator[Finding]:
    """Find claims of the last years that were reported late: one finding for all of them."""
    claims = reported_late(case)
    if not claims:
        return
    causes = case.reference.causes
    of_others = any(c.cause in causes and causes[c.cause].party == "third" for c in claims)
    say = telling(
        "claims.reported-late",
        n=len(claims),
        most=max(days_to_report(claim) or 0 for claim in claims),
        each=tuple(map(delayed, claims)),
        whose="others" if of_others else "own",
        days=_whole(case.parameter(DAYS)),
    )
    yield Finding(
        rule="claims.reported-late",
        subject=Subject("organisation", "", case.file.organisation.name),
        audience=("leaders", "broker"),
        kind="know",
        priority=Priority(Tier.MONEY, reasons=(say("reason"),)),
        title=say("title"),
        means=say("means"),
        todo=say("todo"),
        evidence=(
            *(delay_figure(case.file, claim) for claim in claims),
            case.parameter(DAYS),
            case.parameter(LATE_YEARS),
        ),
    )


def duplicate(case: Case) -> Iterator[Finding]:
    """Find each event that two loss runs show under two numbers; it is counted once."""
    currency = currency_of(case)
    for group in duplicates(case.file.claims):
        kept, others = group[0], group[1:]
        say = telling(
            "claims.duplicate",
            claim=kept.number,
            others=tuple(claim.number for claim in others),
            n=len(group),
            cause=Term("cause", kept.cause),
            day=kept.date_of_loss,
            amount=Money(kept.incurred, currency),
        )
        evidence = tuple(incurred_figure(case.file, claim, currency) for claim in group)
        yield _to_fix("claims.duplicate", kept, say, evidence)


def contradiction(case: Case) -> Iterator[Finding]:
    """Find each claim that cannot be as the loss run shows it."""
    for claim in case.file.claims:
        for doubt in doubts(case, claim):
            yield _doubtful(case, doubt)


def _doubtful(case: Case, doubt: Doubt) -> Finding:
    currency, claim = currency_of(case), doubt.claim
    beside = doubt.beside
    shown = Money(beside, currency) if isinstance(beside, Decimal) else beside
    say = telling(
        "claims.contradiction",
        case=doubt.kind,
        claim=claim.number,
        cause=Term("cause", claim.cause),
        day=claim.date_of_loss,
        amount=Money(claim.incurred, currency),
        beside=str(shown) if isinstance(shown, int) else shown or "",
    )
    fields = (_claim_fact(case, claim, name, currency) for name in doubt.fields)
    return _to_fix("claims.contradiction", claim, say, tuple(fields), doubt.kind)


def _claim_fact(case: Case, claim: Claim, name: str, currency: str) -> Fact:
    value = getattr(claim, name)
    unit: Unit = "money" if isinstance(value, Decimal) else "text"
    return case.file.fact(claim, name, "date" if isinstance(value, date) else unit, currency)


def _to_fix(
    rule: str, claim: Claim, say: Say, evidence: tuple[Node, ...], part: str = ""
) -> Finding:
    return Finding(
        rule=rule,
        subject=Subject("claim", "/".join(filter(None, (claim.number, part))), claim.number),
        audience=("broker",),
        kind="fix",
        priority=Priority(Tier.RECORD, reasons=(say("reason"),)),
        title=say("title"),
        means=say("means"),
        todo=say("todo"),
        evidence=evidence,
    )


RULES: tuple[Rule, ...] = (
    Rule("claims.water-lookback", "claim", water_lookback, (LOOKBACK,)),
    Rule("claims.repeat", "claim", repeat, (YEARS, COUNT)),
    Rule("claims.stale-reserve", "claim", stale_reserve, (STALE,)),
    Rule(
        "claims.experience", "organisation", experience_found,
        (EXPERIENCE_YEARS, EXPERIENCE_SHARE, CAP),
    ),
    Rule("claims.reported-late", "organisation", late, (DAYS, LATE_YEARS)),
    Rule("claims.duplicate", "claim", duplicate),
    Rule("claims.contradiction", "claim", contradiction),
)  # fmt: skip
