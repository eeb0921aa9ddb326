"""Whether what stands in a building is insured for what its worksheet adds up to."""

from __future__ import annotations

from collections.abc import Iterator

from quarterday.core.figure import Figure
from quarterday.core.file.records import Building
from quarterday.core.file.records.terms import Coverage
from quarterday.core.review.case import Case
from quarterday.core.review.finding import Finding, Kind, Priority, Tier
from quarterday.core.review.rules.values.common import about, asked_by, parameter_number
from quarterday.core.review.told import telling
from quarterday.core.values.contents import worksheet
from quarterday.core.values.facts import line_fact
from quarterday.core.values.index import DOLLAR
from quarterday.core.values.price import own_rate
from quarterday.core.words import Rate

RULE = "values.contents-too-low"


def contents_too_low(case: Case) -> Iterator[Finding]:
    """Find each building whose contents line is below what the worksheet adds up to.

    A line that shares its amount with others is judged with its blanket, not here.
    """
    for line in case.terms.coverages if case.terms else ():
        building = case.file.get(Building, line.location)
        if line.coverage != "contents" or line.blanket or not line.limit or building is None:
            continue
        listed = worksheet(case, building)
        assert case.terms is not None
        if listed is not None and listed.money > case.terms.money(line.limit):
            yield _low(case, building, line, listed)


def _low(case: Case, building: Building, line: Coverage, listed: Figure) -> Finding:
    terms = case.terms
    assert terms is not None
    assert line.limit is not None
    limit = terms.money(line.limit)
    gap = listed.money - limit
    share = gap.ratio(listed.money)
    rate = own_rate(terms, line, building.id)
    price = None if rate is None else (gap * rate).rounded(DOLLAR)
    large = share >= parameter_number(case, "values.shortfall-to-decide")
    kind: Kind = "decide" if large else "know"
    say = telling(
        RULE, building=building.name, listed=listed.money, limit=limit, gap=gap, about=gap.about(),
        share=Rate(share, 0), price=price or "",
    )  # fmt: skip
    todo = "todo-know" if kind == "know" else "todo" if price else "todo-unpriced"
    return Finding(
        rule=RULE,
        subject=about(building),
        audience=("leaders", "broker", "insurer"),
        kind=kind,
        priority=Priority(Tier.MONEY, at_risk=gap, cost=price, reasons=(say("reason"),)),
        title=say("title"),
        means=say("means"),
        todo=say(todo),
        evidence=(listed, line_fact(case.file, terms, line, "limit", "money")),
        encloses=("statement-of-values",),
        by=asked_by(case) if kind == "decide" else None,
    )
