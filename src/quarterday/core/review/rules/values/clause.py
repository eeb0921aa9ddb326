"""The coinsurance clause, and the agreed value that suspends it."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal

from quarterday.core.figure import Figure, Node
from quarterday.core.file.records import Terms
from quarterday.core.money import Money
from quarterday.core.review.case import Case
from quarterday.core.review.finding import Finding, Kind, Priority, Tier
from quarterday.core.review.rules.values.common import about, asked_by, parameter_number
from quarterday.core.review.rules.values.insured import decided
from quarterday.core.review.told import telling
from quarterday.core.values.building import BuildingPicture
from quarterday.core.values.coinsured import clause_of
from quarterday.core.values.facts import line_fact
from quarterday.core.values.index import DOLLAR
from quarterday.core.words import Rate

RULE = "values.coinsurance"
LAPSING = "values.agreed-value-lapsing"
FORMS = ("statement-of-values",)


def coinsurance(case: Case) -> Iterator[Finding]:
    """Find each building under a coinsurance clause that no agreed value suspends.

    Where the clause bites or may well bite, one building is put to the leaders, the one with most
    at risk: one signed statement of values answers for all of them.
    """
    exposed = [p for p in case.pictures.values() if _exposed(case, p)]
    asked_already = {picture.building.id for picture in decided(case)}
    free = [p for p in exposed if p.building.id not in asked_already and _threatens(case, p)]
    first = max(free, key=lambda p: (_at_risk(p) or p.sum_insured.money * 0).amount, default=None)
    for picture in exposed:
        known = picture.building.id in asked_already
        kind: Kind = "decide" if picture is first else "know" if known else "send back"
        yield _coinsured(case, picture, kind)


def _exposed(case: Case, picture: BuildingPicture) -> bool:
    """Tell whether a clause holds on the renewal day, other than a stated amount that is met."""
    clause = clause_of(picture.terms, picture.line)
    until = clause.agreed_until
    if not clause.asks or (until is not None and until >= case.renewal):
        return False
    met = clause.stated is not None and picture.terms.money(_limit(picture)) >= clause.stated
    return not met


def _limit(picture: BuildingPicture) -> Decimal:
    assert picture.line.limit is not None
    return picture.line.limit


def _threatens(case: Case, picture: BuildingPicture) -> bool:
    """Tell whether a penalty applies on the figures, or its chance reaches the parameter."""
    found = picture.coinsured
    if found is None:
        return False
    least = parameter_number(case, "values.penalty-chance-to-decide")
    return found.penalised or (found.chance is not None and found.chance.number >= least)


def _at_risk(picture: BuildingPicture) -> Money | None:
    """Return the largest penalty; where none applies yet, the mean one on the sum insured."""
    found = picture.coinsured
    if found is None:
        return None
    if found.penalised or found.expected is None:
        return found.worst.money
    return (picture.available.money * found.expected.number).rounded()


def _form(case: Case, picture: BuildingPicture) -> str:
    """Return which wording tells the finding: unknown, penalised, likely or unlikely."""
    if picture.coinsured is None:
        return "unknown"
    if picture.coinsured.penalised:
        return "penalised"
    return "likely" if _threatens(case, picture) else "unlikely"


def _coinsured(case: Case, picture: BuildingPicture, kind: Kind) -> Finding:
    form, found = _form(case, picture), picture.coinsured
    clause = clause_of(picture.terms, picture.line)
    quarter = found.penalties[1].money.rounded(DOLLAR) if found else ""
    say = telling(
        RULE,
        building=picture.building.name,
        required=clause.stated or Rate(clause.required or Decimal(0)),
        share=Rate(found.share.number) if found else "",
        chance=Rate(found.chance.number, 0) if found and found.chance else "",
        penalty=quarter,
        loss=found.settlements[1].loss if found else "",
        sum_insured=picture.sum_insured.money,
    )
    free = found is not None and not found.penalised
    return Finding(
        rule=RULE,
        subject=about(picture.building),
        audience=("leaders", "broker"),
        kind=kind,
        priority=Priority(
            Tier.MONEY,
            at_risk=_at_risk(picture),
            cost=picture.sum_insured.money * 0 if free else None,
            reasons=(say(f"reason-{form}"),),
        ),
        title=say(f"title-{form}"),
        means=say("means"),
        todo=say("todo-know" if kind == "know" else "todo"),
        evidence=_evidence(case, picture),
        encloses=(*FORMS, "building-values"),
        by=asked_by(case),
    )


def _evidence(case: Case, picture: BuildingPicture) -> tuple[Node, ...]:
    if picture.coinsured is not None:
        return picture.coinsured.figures()
    clause: list[Figure | Node] = [picture.sum_insured]
    if picture.line.coinsurance is not None:
        clause.append(_clause_fact(case, picture.terms, picture))
    return tuple(clause)


def _clause_fact(case: Case, terms: Terms, picture: BuildingPicture) -> Node:
    return line_fact(case.file, terms, picture.line, "coinsurance", "rate")


def agreed_value_lapsing(case: Case) -> Iterator[Finding]:
    """Find each building whose agreed value ends on the renewal day or within the coming term."""
    for picture in case.pictures.values():
        until = picture.line.agreed_value_until
        if until is not None and until in case.coming:
            yield _lapsing(case, picture)


def _lapsing(case: Case, picture: BuildingPicture) -> Finding:
    until = picture.line.agreed_value_until
    assert until is not None
    say = telling(
        LAPSING,
        building=picture.building.name,
        until=until,
        required=Rate(picture.line.coinsurance or Decimal(0)),
    )
    ending = "" if picture.line.coinsurance else "-no-clause"
    found = picture.coinsured
    fact = line_fact(case.file, picture.terms, picture.line, "agreed_value_until", "date")
    return Finding(
        rule=LAPSING,
        subject=about(picture.building),
        audience=("leaders", "broker"),
        kind="send back",
        priority=Priority(
            Tier.LAPSES,
            by=until,
            at_risk=_at_risk(picture),
            cost=picture.sum_insured.money * 0,
            reasons=(say("reason"),),
        ),
        title=say("title"),
        means=say(f"means{ending}"),
        todo=say("todo"),
        evidence=(fact, *(found.figures() if found else (picture.sum_insured,))),
        encloses=(*FORMS, "building-values"),
        by=min(until, asked_by(case)),
    )
