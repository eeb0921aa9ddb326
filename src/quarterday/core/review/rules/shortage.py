"""What a shortage of income cover asks of the leaders, and what the insurer offers for it."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from decimal import Decimal

from quarterday.core.figure import Figure
from quarterday.core.file.records.terms import Option
from quarterday.core.income.clause import LINE
from quarterday.core.income.earnings import NOTHING
from quarterday.core.income.picture import EXTRA, IncomePicture
from quarterday.core.money import Money
from quarterday.core.review.case import Case
from quarterday.core.review.finding import Kind
from quarterday.core.review.rules.values.common import asked_by, parameter_number

EXTRA_LINE = EXTRA[0]
Asks = tuple[Kind, date | None]
TO_DECIDE, UNANSWERED = "income.shortfall-to-decide", "income.shortfall-to-decide-unanswered"


def asks_of(case: Case, found: IncomePicture, short: Figure, need: Figure) -> Asks:
    """Return what is asked, and by when: a decision, answers first, or nothing for a small gap.

    A figure that rests on assumptions must show a larger gap before the leaders decide on it.
    """
    share = short.money.ratio(need.money)
    if share >= parameter_number(case, TO_DECIDE if found.answered else UNANSWERED):
        return "decide", asked_by(case)
    if share >= parameter_number(case, TO_DECIDE):
        return "send back", case.renewal
    return "know", None


@dataclass(frozen=True, slots=True)
class Offer:
    """What the insurer offers for a shortage; ``price`` None: ask.

    ``enough`` tells whether it ends it, ``cut`` whether a coinsurance clause would still cut.
    """

    option: Option
    limit: Money
    price: Money | None
    enough: bool
    cut: bool = False


def offer_for(found: IncomePicture, need: Figure, coverage: str = LINE) -> Offer | None:
    """Return the option that ends a shortage, the cheapest; else the one that goes farthest."""
    money, now = found.terms.money, found.terms.find(coverage, found.line.location)
    least = now.limit or NOTHING if now else NOTHING
    clause = found.coinsured.required.money if found.coinsured and coverage == LINE else None
    made = [
        Offer(o, limit, None if o.price is None else money(o.price),
              enough=limit >= need.money and not (clause and limit < clause),
              cut=bool(clause and limit < clause))
        for o in found.terms.options
        if o.coverage == coverage and (limit := money(o.limit or NOTHING)) > money(least)
    ]  # fmt: skip
    return min(made, key=_preferred, default=None)


def _preferred(offer: Offer) -> tuple[bool, bool, Decimal]:
    price = offer.price.amount if offer.price else NOTHING
    return not offer.enough, offer.price is None, price if offer.enough else -offer.limit.amount


def asked_about(case: Case) -> frozenset[str]:
    """Return the coverages whose options the decisions about income ask about already."""
    found = case.income
    if found is None:
        return frozenset()
    pairs = [(LINE, found.short, found.need)]
    if found.extra is not None:
        pairs.append((EXTRA_LINE, found.extra[2], found.extra[0]))
    return frozenset(
        coverage
        for coverage, short, need in pairs
        if short.money and asks_of(case, found, short, need)[0] == "decide"
    )
