"""Whether the cover for lost income, and for living elsewhere, lasts until the building is back."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from decimal import Decimal

from quarterday.core.figure import Figure, Node
from quarterday.core.file.records.terms import Premium
from quarterday.core.income.clause import LINE
from quarterday.core.income.closing import PARAMETERS as OF_THE_CLOSURE
from quarterday.core.income.picture import IncomePicture
from quarterday.core.income.worksheet import COUNTED
from quarterday.core.money import Money
from quarterday.core.review.case import Case
from quarterday.core.review.finding import Finding, Priority, Rule, Subject, Tier
from quarterday.core.review.rules.shortage import (
    EXTRA_LINE,
    TO_DECIDE,
    UNANSWERED,
    Asks,
    Offer,
    asks_of,
    offer_for,
)
from quarterday.core.review.rules.terms.offers import option_facts
from quarterday.core.review.told import telling
from quarterday.core.values.index import DOLLAR
from quarterday.core.words import Arg, Rate, Term, Words, words

TOO_LOW, EXTRA_LOW = "income.too-low", "income.extra-expense-low"
FORMS = ("operations-form",)


def too_low(case: Case) -> Iterator[Finding]:
    """Find the organisation whose income cover ends before its building can be back.

    An option that the insurer offers for it is part of the same question.
    """
    found = case.income
    if found is not None and found.short.money:
        yield _low(case, found)


def _low(case: Case, found: IncomePicture) -> Finding:
    asks = asks_of(case, found, found.short, found.need)
    offer = offer_for(found, found.need) if asks[0] == "decide" else None
    price = offer.price if offer else price_of(found)
    say = telling(TOO_LOW, **_told(found), price=price or "", **_offered(offer, found))
    clause = found.coinsured is not None and found.coinsured.share.number < 1
    todo = asks[0].replace(" ", "-") + ("" if price or asks[0] != "decide" else "-unpriced")
    means = say("means-clause" if clause else "means")
    texts = (say("title"), means, say(f"todo-{todo}"))
    if offer is not None:
        said = words("said-then", first=means, then=say("offer"))
        texts = (say("offer-title"), said, say("offer-todo"))
    priority = Priority(
        Tier.MONEY,
        at_risk=found.short.money,
        cost=price,
        reasons=(say("reason"),),
        removed=_removed(offer, found.need, found.limit),
    )
    evidence = (*found.figures().values(), *_facts(case, found, offer))
    return _finding(TOO_LOW, LINE, asks, texts, priority, evidence)


def _removed(offer: Offer | None, need: Figure, limit: Figure) -> Money | None:
    """Return how much of a shortage an offer ends; None without one."""
    return min(offer.limit, need.money) - limit.money if offer else None


def _offered(offer: Offer | None, found: IncomePicture) -> dict[str, Arg | Words]:
    if offer is None:
        return {}
    case = "ask" if offer.price is None else "priced"
    return {
        "offered": offer.limit,
        "for_price": words("income-offer-price", case=case, price=offer.price or ""),
        "reach": "all" if offer.enough else "part",
        "pays": "cut" if offer.cut else "all" if offer.enough else "part",
        "required": found.coinsured.required.money if found.coinsured else "",
        "then_lasts": found.worst.lasts(offer.limit),
    }


def _facts(case: Case, found: IncomePicture, offer: Offer | None) -> tuple[Node, ...]:
    return option_facts(case, found.terms, offer.option if offer else None)


def _told(found: IncomePicture) -> dict[str, Arg | Words]:
    share = found.coinsured.share.number if found.coinsured else Decimal(1)
    start = found.worst.start
    return {
        "short": found.short.money,
        "about": found.short.money.about(),
        "need": found.need.money,
        "limit": found.limit.money,
        "lasts": found.lasts,
        "months": len(found.worst.months),
        "building": found.building.name,
        "start": words("income-month", month=Term("month", str(start.month)), year=str(start.year)),
        "share": Rate(share),
    }


def extra_low(case: Case) -> Iterator[Finding]:
    """Find the organisation whose cover for living elsewhere ends before its building is back."""
    found = case.income
    if found is None or found.extra is None or not found.extra[2].money:
        return
    need, limit, short = found.extra
    asks = asks_of(case, found, short, need)
    offer = offer_for(found, need, EXTRA_LINE) if asks[0] == "decide" else None
    say = telling(
        EXTRA_LOW, need=need.money, limit=limit.money, short=short.money,
        about=short.money.about(),
        months=len(found.worst.months), **_offered(offer, found),
    )  # fmt: skip
    todo = asks[0].replace(" ", "-")
    texts = (say("title"), say("means"), say(f"todo-{todo}"))
    if offer is not None:
        said = words("said-then", first=say("means"), then=say("offer"))
        texts = (say("offer-title"), said, say("offer-todo"))
    price = offer.price if offer else None
    priority = Priority(
        Tier.MONEY,
        at_risk=short.money,
        cost=price,
        reasons=(say("reason"),),
        removed=_removed(offer, need, limit),
    )
    evidence = (*found.extra, *_facts(case, found, offer))
    yield _finding(EXTRA_LOW, EXTRA_LINE, asks, texts, priority, evidence)


def _finding(
    rule: str,
    coverage: str,
    asks: Asks,
    texts: tuple[Words, Words, Words],
    priority: Priority,
    evidence: tuple[Node, ...],
) -> Finding:
    kind, by = asks
    title, means, todo = texts
    return Finding(
        rule=rule,
        subject=Subject("coverage", coverage, words("income-subject")),
        audience=("leaders", "broker", "insurer"),
        kind=kind,
        priority=priority,
        title=title,
        means=means,
        todo=todo,
        evidence=evidence,
        encloses=FORMS,
        by=by,
    )


def price_of(found: IncomePicture) -> Money | None:
    """Return what covering the need adds a year: the insurer's own offer, else the line's rate."""
    offer = offer_for(found, found.need)
    if offer is not None and offer.enough and offer.price is not None:
        return offer.price.rounded(DOLLAR)
    rate = next(filter(None, map(_rate(found), found.terms.premiums)), None)
    return None if rate is None else (found.short.money * rate).rounded(DOLLAR)


def _rate(found: IncomePicture) -> Callable[[Premium], Decimal | None]:
    """Return what reads the rate of the income line off a premium; None for other premiums."""
    place = (found.line.coverage, found.line.location, "premium")

    def rate(premium: Premium) -> Decimal | None:
        if premium.line != place or not premium.amount:
            return None
        base = premium.exposure or found.line.limit
        return premium.rate or (premium.amount / base if base else None)

    return rate


RULES: tuple[Rule, ...] = (
    Rule(TOO_LOW, "coverage", too_low, (*OF_THE_CLOSURE, COUNTED, TO_DECIDE, UNANSWERED)),
    Rule(EXTRA_LOW, "coverage", extra_low, (TO_DECIDE, UNANSWERED)),
)
