"""Whether the sums insured still rebuild what stands, and kept up with building costs."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from quarterday.core.figure import Figure
from quarterday.core.money import Money
from quarterday.core.review.case import Case
from quarterday.core.review.finding import Finding, Kind, Priority, Subject, Tier
from quarterday.core.review.rules.values.common import about, asked_by, parameter_number
from quarterday.core.review.rules.values.doubt import doubt
from quarterday.core.review.told import telling
from quarterday.core.values.building import BuildingPicture
from quarterday.core.values.facts import Maker
from quarterday.core.values.index import DOLLAR
from quarterday.core.values.price import own_rate, priced
from quarterday.core.words import Rate

RULE = "values.below-replacement"


def below(case: Case) -> tuple[BuildingPicture, ...]:
    """Return the buildings that cost more to rebuild than the terms pay, largest gap first."""
    short = [p for p in case.pictures.values() if p.shortfall and p.shortfall.money.amount > 0]
    return tuple(sorted(short, key=lambda p: (-_gap(p).amount, p.building.id)))


def decided(case: Case) -> tuple[BuildingPicture, ...]:
    """Return those of them whose gap is large enough to put before the leaders."""
    least = parameter_number(case, "values.shortfall-to-decide")
    return tuple(p for p in below(case) if _gap(p).ratio(_cost(p).money) >= least)


def below_replacement(case: Case) -> Iterator[Finding]:
    """Find each building that its sum insured would not rebuild.

    More buildings than the parameter allows become one question about all of them; each then
    stands behind it as something to know.
    """
    asked = decided(case)
    joined = len(asked) > parameter_number(case, "values.buildings-decided-apart")
    if joined:
        yield _together(case, asked)
    for picture in below(case):
        if picture not in asked:
            yield _short(case, picture, "know", "todo-know")
        elif joined:
            yield _short(case, picture, "know", "todo-joined")
        else:
            yield _short(case, picture, "decide", _todo(case, picture))


def _todo(case: Case, picture: BuildingPicture) -> str:
    """Return which wording tells what to do: it depends on the valuation and on a known price."""
    unsure = "-unsure" if doubt(case, picture) is not None else ""
    return f"todo{unsure}{'' if price_of_raising(picture) else '-unpriced'}"


def _gap(picture: BuildingPicture) -> Money:
    assert picture.shortfall is not None
    return picture.shortfall.money


def _cost(picture: BuildingPicture) -> Figure:
    assert picture.costs is not None
    return picture.costs.rebuilt


def price_of_raising(picture: BuildingPicture) -> Figure | None:
    """Return what closing the gap adds to the yearly premium at the building's own rate."""
    rate = own_rate(picture.terms, picture.line, picture.building.id)
    inputs = (figure for figure in (picture.shortfall, picture.sum_insured) if figure)
    return priced("price-of-raising", _gap(picture), rate, Maker(picture.building), *inputs)


def _short(case: Case, picture: BuildingPicture, kind: Kind, todo: str) -> Finding:
    gap, cost, price = _gap(picture), _cost(picture), price_of_raising(picture)
    assert picture.costs is not None
    say = telling(
        RULE,
        building=picture.building.name,
        gap=gap,
        about=gap.about(),
        share=Rate(gap.ratio(cost.money), 0),
        available=picture.available.money,
        cost=cost.money,
        rebuilt_on=picture.costs.rebuilt_on,
        price=price.money.rounded(DOLLAR) if price else "",
    )
    return Finding(
        rule=RULE,
        subject=about(picture.building),
        audience=("leaders", "broker", "insurer"),
        kind=kind,
        priority=Priority(
            Tier.MONEY,
            at_risk=gap,
            cost=price.money if price else None,
            reasons=(say("reason"),),
        ),
        title=say("title"),
        means=say("means"),
        todo=say(todo),
        evidence=_evidence(picture, price),
        encloses=("building-values",),
        by=asked_by(case) if kind == "decide" else None,
    )


def _evidence(picture: BuildingPicture, price: Figure | None) -> tuple[Figure, ...]:
    """Return the gap, the four costs, and what the automatic increases and the clause add to it."""
    assert picture.costs is not None
    found = [picture.shortfall, price, picture.costs.at_renewal, picture.costs.at_term_end]
    if picture.increases:
        found += [picture.increases.behind, picture.increases.gap]
    if picture.coinsured:
        found += picture.coinsured.figures()
    return tuple(figure for figure in found if figure is not None)


def _together(case: Case, pictures: tuple[BuildingPicture, ...]) -> Finding:
    """Return one question about all buildings that are insured too low."""
    each = [_short(case, picture, "decide", "todo") for picture in pictures]
    prices = [finding.priority.cost for finding in each]
    known = [price for price in prices if price is not None]
    worst, all_priced = pictures[0], len(known) == len(prices)
    price = sum(known[1:], known[0]) if known and all_priced else None
    say = telling(
        RULE,
        n=len(pictures),
        buildings=tuple(picture.building.name for picture in pictures),
        building=worst.building.name,
        gap=_gap(worst),
        price=price.rounded(DOLLAR) if price else "",
        doubtful=tuple(p.building.name for p in pictures if doubt(case, p) is not None),
    )
    todo = "together-todo" if price else "together-todo-unpriced"
    unsure = any(doubt(case, picture) is not None for picture in pictures)
    return replace(
        each[0],
        subject=Subject("organisation", "", case.file.organisation.name),
        priority=Priority(Tier.MONEY, None, _gap(worst), price, (say("together-reason"),)),
        title=say("together-title"),
        means=say("together-means"),
        todo=say(f"{todo}-unsure" if unsure else todo),
        evidence=tuple(e for finding in each for e in finding.evidence[:2]),
    )


def index_too_low(case: Case) -> Iterator[Finding]:
    """Find each building whose automatic increases stayed behind the construction index."""
    for picture in case.pictures.values():
        behind = picture.increases
        if behind is None or behind.gap.money.amount <= 0:
            continue
        assert picture.costs is not None
        say = telling(
            "values.index-too-low",
            building=picture.building.name,
            applied=Rate(behind.applied.number),
            index=Rate(behind.index.number),
            behind=Rate(behind.behind.number),
            gap=behind.gap.money,
            since=picture.costs.valuation.valued_on,
            place=picture.costs.index.place,
        )
        yield Finding(
            rule="values.index-too-low",
            subject=about(picture.building),
            audience=("leaders", "broker"),
            kind="know",
            priority=Priority(Tier.MONEY, at_risk=behind.gap.money, reasons=(say("reason"),)),
            title=say("title"),
            means=say("means"),
            todo=say("todo"),
            evidence=(behind.behind, behind.gap),
            encloses=("building-values",),
        )
