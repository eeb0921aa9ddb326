"""Whether the cover for lost income, and for living elsewhere, lasts until the building is back."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from datetime import date
from decimal import Decimal

from quarterday.core.figure import Figure
from quarterday.core.file.records.terms import Premium
from quarterday.core.income.closing import PARAMETERS as OF_THE_CLOSURE
from quarterday.core.income.picture import IncomePicture
from quarterday.core.money import Money
from quarterday.core.review.case import Case
from quarterday.core.review.finding import Finding, Kind, Priority, Rule, Subject, Tier
from quarterday.core.review.rules.values.common import asked_by, parameter_number
from quarterday.core.review.told import telling
from quarterday.core.values.index import DOLLAR
from quarterday.core.words import Arg, Rate, Term, Words, words

TOO_LOW, EXTRA_LOW = "income.too-low", "income.extra-expense-low"
FORMS = ("operations-form",)
Asks = tuple[Kind, date | None]
TO_DECIDE, UNANSWERED = "income.shortfall-to-decide", "income.shortfall-to-decide-unanswered"


def too_low(case: Case) -> Iterator[Finding]:
    """Find the organisation whose income cover ends before its building can be back."""
    found = case.income
    if found is not None and found.short.money:
        yield _low(case, found)


def _low(case: Case, found: IncomePicture) -> Finding:
    price = price_of(found)
    say = telling(TOO_LOW, **_told(found), price=price or "")
    asks = _asks(case, found, found.short, found.need)
    clause = found.coinsured is not None and found.coinsured.share.number < 1
    todo = asks[0].replace(" ", "-") + ("" if price or asks[0] != "decide" else "-unpriced")
    texts = (say("title"), say("means-clause" if clause else "means"), say(f"todo-{todo}"))
    priority = Priority(Tier.MONEY, at_risk=found.short.money, cost=price, reasons=(say("reason"),))
    return _finding(TOO_LOW, asks, texts, priority, tuple(found.figures().values()))


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
    say = telling(
        EXTRA_LOW, need=need.money, limit=limit.money, short=short.money,
        about=short.money.about(),
        months=len(found.worst.months),
    )  # fmt: skip
    asks = _asks(case, found, short, need)
    todo = asks[0].replace(" ", "-")
    texts = (say("title"), say("means"), say(f"todo-{todo}"))
    priority = Priority(Tier.MONEY, at_risk=short.money, reasons=(say("reason"),))
    yield _finding(EXTRA_LOW, asks, texts, priority, found.extra)


def _asks(case: Case, found: IncomePicture, short: Figure, need: Figure) -> Asks:
    """Return what is asked, and by when: a decision, answers first, or nothing for a small gap.

    A figure that rests on assumptions must show a larger gap before the leaders decide on it.
    """
    share = short.money.ratio(need.money)
    if share >= parameter_number(case, TO_DECIDE if found.answered else UNANSWERED):
        return "decide", asked_by(case)
    if share >= parameter_number(case, TO_DECIDE):
        return "send back", case.renewal
    return "know", None


def _finding(
    rule: str,
    asks: Asks,
    texts: tuple[Words, Words, Words],
    priority: Priority,
    evidence: tuple[Figure, ...],
) -> Finding:
    kind, by = asks
    title, means, todo = texts
    return Finding(
        rule=rule,
        subject=Subject("coverage", "", words("income-subject")),
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
    offers = (
        option.price for option in found.terms.options
        if option.coverage == found.line.coverage and option.price is not None
        and option.limit is not None and found.terms.money(option.limit) >= found.need.money
    )  # fmt: skip
    offered = min(offers, default=None)
    if offered is not None:
        return found.terms.money(offered).rounded(DOLLAR)
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
    Rule(TOO_LOW, "coverage", too_low, (*OF_THE_CLOSURE, TO_DECIDE, UNANSWERED)),
    Rule(EXTRA_LOW, "coverage", extra_low, (TO_DECIDE, UNANSWERED)),
)
