"""What the pages of building values say."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import asdict
from datetime import date
from decimal import Decimal
from itertools import pairwise

from quarterday.core.money import Money
from quarterday.core.values.building import BuildingPicture, Point
from quarterday.core.values.coinsurance import Settlement
from quarterday.core.values.coinsured import Coinsured
from quarterday.core.words import Rate, Term, Words, words
from quarterday.papers.chart import Key, Over, lines, stacked
from quarterday.papers.setting import Data, Setting

ID = "building-values"
MOST_TODO = 3  # the most pressing, so that a building stays on its page


def reason(setting: Setting) -> Words | None:
    """Return why the pages go in: a building is insured for an amount."""
    found = setting.pictures
    short = sum(1 for p in found if _short(p))
    return words("building-values-reason", count=len(found), short=short) if found else None


def data(setting: Setting) -> Data:
    """Return a page for each insured building, the one that is short by most first."""
    order = sorted(setting.pictures, key=lambda p: -(_short(p) or Decimal(0)))
    return {"buildings": [_page(setting, p, n == 0) for n, p in enumerate(order)]}


def _short(picture: BuildingPicture) -> Decimal | None:
    """Return by how much the building is short; None when it is not, or nobody knows."""
    short = picture.shortfall
    return short.money.amount if short and short.money else None


def _page(setting: Setting, p: BuildingPicture, first: bool) -> Data:
    return {
        "opening": setting.opening(ID, _title(setting, p), _lead(setting, p), first=first),
        "glance_items": list(_glance(setting, p)),
        "chart": _chart(setting, p),
        "reasons": list(_reasons(setting, p)),
        "coinsurance": _coinsurance(setting, p.coinsured) if p.coinsured else None,
        "todo": _todo(setting, p),
        "caution": _caution(setting, p),
    }


def _title(setting: Setting, p: BuildingPicture) -> str:
    name = p.building.name
    if p.costs is None or p.shortfall is None:
        return setting.say("building-values-title-unknown", building=name)
    if p.shortfall.money:
        amount = setting.dollars(p.shortfall.money.about())
        return setting.say("building-values-title-short", building=name, amount=amount)
    return setting.say("building-values-title-enough", building=name)


def _lead(setting: Setting, p: BuildingPicture) -> str:
    if p.costs is None:
        assert p.not_indexed is not None
        return setting.spoken(p.not_indexed)
    day = p.costs.rebuilt_on
    return setting.say("building-values-lead", end=p.terms.end, day=day)


def _glance(setting: Setting, p: BuildingPicture) -> Iterator[Data]:
    available = p.available is not p.sum_insured
    note = setting.say("building-values-available") if available else None
    figure = setting.dollars(p.available.money)
    yield {"label": setting.say("building-values-insured"), "figure": figure, "note": note}
    if p.costs is None or p.shortfall is None:
        return
    cost, day = p.costs.rebuilt, p.costs.rebuilt_on
    note = setting.say("building-values-by", day=day)
    figure = setting.dollars(cost.money)
    yield {"label": setting.say("building-values-cost"), "figure": figure, "note": note}
    left = p.available.money - cost.money
    label = "building-values-short" if p.shortfall.money else "building-values-spare"
    share = Rate(abs(left).ratio(cost.money), 0)
    note = setting.say("building-values-share", share=share)
    yield {"label": setting.say(label), "figure": setting.dollars(abs(left)), "note": note}


def _chart(setting: Setting, p: BuildingPicture) -> Data | None:
    if p.costs is None:
        return None
    cost = tuple((point.day, point.cost.amount) for point in p.series)
    insured = tuple(_steps(p, p.series[0].day, p.series[-1].day))
    series = [
        Over(setting.say("building-values-line-cost"), "cost", cost),
        Over(setting.say("building-values-line-insured"), "insured", insured),
    ]
    drawn = lines(
        setting.say("building-values-chart"),
        _alternative(setting, p),
        series,
        say=lambda value: setting.dollars(p.terms.money(value)),
        days=list(_days(setting, p)),
        projected=_projected(setting, p.series),
    )
    return asdict(drawn)


def _steps(p: BuildingPicture, start: date, end: date) -> Iterator[tuple[date, Decimal]]:
    """Yield the corners of the sum insured between two days; the last amount is held to the end."""
    last = p.history[-1]
    for step in p.history:
        until = end if step is last else step.end
        if until > start:
            yield max(step.start, start), step.amount.amount
            yield min(until, end), step.amount.amount


def _projected(setting: Setting, series: tuple[Point, ...]) -> tuple[date, str] | None:
    for before, after in pairwise(series):
        if after.projected:
            return before.day, setting.say("building-values-projected")
    return None


def _days(setting: Setting, p: BuildingPicture) -> Iterator[tuple[date, str]]:
    """Yield the days of the four costs, those too near to their neighbour left out."""
    assert p.costs is not None
    days = {
        p.costs.valuation.valued_on: "valued",
        setting.review.renewal: "renewal",
        p.costs.rebuilt_on: "rebuilt",
    }
    for day, what in sorted(days.items()):
        yield day, f"{setting.say(f'building-values-day-{what}')}\n{day:%Y-%m}"


def _alternative(setting: Setting, p: BuildingPicture) -> str:
    assert p.costs is not None
    return setting.say(
        "building-values-alternative",
        building=p.building.name,
        valued_on=p.costs.valuation.valued_on,
        valued=p.costs.at_valuation.money,
        renewal=setting.review.renewal,
        at_renewal=p.costs.at_renewal.money,
        day=p.costs.rebuilt_on,
        rebuilt=p.costs.rebuilt.money,
        insured=p.sum_insured.money,
    )


def _reasons(setting: Setting, p: BuildingPicture) -> Iterator[str]:
    if p.increases and p.valuation:
        applied, index = p.increases.applied.value, p.increases.index.value
        assert isinstance(applied, Rate)
        assert isinstance(index, Rate)
        ahead = p.increases.behind.number <= 0
        id = f"building-values-increases-{'ahead' if ahead else 'behind'}"
        yield setting.say(id, day=p.valuation.valued_on, applied=applied, index=index)
    if p.available is not p.sum_insured:
        yield setting.spoken(p.available.how)


def _coinsurance(setting: Setting, c: Coinsured) -> Data:
    share = c.share.value
    assert isinstance(share, Rate)
    which = "short" if c.penalised else "suspended" if not c.required.money else "full"
    lead = setting.say(
        f"building-values-clause-{which}",
        required=c.required.money,
        carried=c.position.carried,
        share=share,
    )
    return {
        "heading": setting.say(f"building-values-clause-title-{which}", share=share),
        "lead": " ".join((lead, *_safe(setting, c))),
        "chart": _losses(setting, c) if c.penalised else None,
    }


def _safe(setting: Setting, c: Coinsured) -> Iterator[str]:
    """Yield the amount that is safe from the clause and its price, where the amount just does.

    Where a penalty applies already the page has one message: raise it to the cost.
    """
    if c.penalised or c.safe is None or not c.required.money:
        return
    if c.safe.money <= c.position.carried:
        return
    certainty = setting.case.parameter("values.safe-certainty").value
    priced = "" if c.price_of_safe else "-unpriced"
    price = _dollar(c.price_of_safe.money) if c.price_of_safe else ""
    assert isinstance(certainty, Rate)
    yield setting.say(
        f"values-page-safe{priced}", amount=c.safe.money, certainty=certainty, price=price
    )


def _losses(setting: Setting, c: Coinsured) -> Data:
    keys = [
        Key("paid", setting.say("building-values-paid")),
        Key("borne", setting.say("building-values-borne")),
    ]
    rows = [(_loss(setting, s), _note(setting, s), _parts(s)) for s in c.settlements]
    notes = tuple(setting.named(label, note) for label, note, _ in rows)
    title = setting.say("building-values-losses")
    return asdict(
        stacked(title, setting.say("chart-alternative", title=title, rows=notes), keys, rows)
    )


def _parts(settlement: Settlement) -> tuple[Decimal, Decimal]:
    return settlement.paid.amount, settlement.borne.amount


def _loss(setting: Setting, settlement: Settlement) -> str:
    return setting.dollars(settlement.loss)


def _note(setting: Setting, settlement: Settlement) -> str:
    paid, borne = _dollar(settlement.paid), _dollar(settlement.borne)
    return setting.say("building-values-pays", paid=paid, borne=borne)


def _dollar(amount: Money) -> Money:
    return amount.rounded(Decimal(1))


def _todo(setting: Setting, p: BuildingPicture) -> Data:
    about = [
        f for f in setting.told if (f.subject.kind, f.subject.key) == ("building", p.building.id)
    ]
    items = [setting.spoken(f.todo) for f in about][:MOST_TODO]
    return {
        "heading": setting.say("building-values-todo"),
        "items": list(dict.fromkeys(items)) or [setting.say("building-values-todo-none")],
    }


def _caution(setting: Setting, p: BuildingPicture) -> str:
    if p.valuation is None:
        return setting.say("building-values-caution-none")
    basis = Term("valuation-basis", p.valuation.basis)
    by = p.valuation.by or setting.say("building-values-by-unknown")
    day = p.valuation.valued_on
    return setting.say("building-values-caution", basis=basis, day=day, by=by)
