"""Everything the page of one building and the rules about values need, as figures."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date
from decimal import Decimal
from functools import cached_property

from quarterday.core.dates import add_months
from quarterday.core.figure import Fact, Figure
from quarterday.core.file.records import Building, Terms, Valuation
from quarterday.core.file.records.terms import Coverage
from quarterday.core.money import Money
from quarterday.core.review.case import Case
from quarterday.core.values import blanket
from quarterday.core.values.coinsured import Coinsured, coinsured
from quarterday.core.values.cost import Costs, costs_of, newest
from quarterday.core.values.facts import Maker, line_fact
from quarterday.core.values.increase import Shortfall, applied, shortfall
from quarterday.core.values.index import DOLLAR, BeyondHorizonError, NotCoveredError, spoken
from quarterday.core.words import Rate, Words, words


@dataclass(frozen=True, slots=True)
class Increases:
    """Automatic yearly increases since the valuation against the index, up to the renewal."""

    applied: Figure
    index: Figure
    behind: Figure  # a share of the indexed cost; negative when ahead
    gap: Figure  # the same in money


@dataclass(frozen=True, slots=True)
class Point:
    """The cost of a building on one day of the chart."""

    day: date
    cost: Money
    projected: bool


@dataclass(frozen=True, slots=True)
class Step:
    """A sum insured from ``start`` (included) to ``end`` (not included)."""

    start: date
    end: date
    amount: Money


@dataclass(frozen=True)
class BuildingPicture:
    """One insured building: what is insured, what it costs, and how far the two are apart.

    ``sum_insured`` is the amount in the terms; ``available`` the most they pay for this building
    (more or less than that under a blanket). ``costs`` is None without a valuation or when it is
    older than the index, or the index is too old; ``not_indexed`` says which.
    """

    building: Building
    terms: Terms
    line: Coverage
    valuation: Valuation | None
    sum_insured: Figure
    available: Figure
    costs: Costs | None
    not_indexed: Words | None
    shortfall: Figure | None
    increases: Increases | None
    coinsured: Coinsured | None
    history: tuple[Step, ...] = field(repr=False)

    @cached_property
    def series(self) -> tuple[Point, ...]:
        """The cost from the day of the valuation, monthly, until rebuilt; empty without costs."""
        return tuple(_points(self.costs)) if self.costs else ()

    def figures(self) -> Mapping[str, Figure]:
        """Return the figures of the page by what they are, such as ``sum-insured``."""
        found: list[Figure | None] = [self.sum_insured, self.available, self.shortfall]
        if self.costs:
            c = self.costs
            found += [c.at_valuation, c.at_renewal, c.at_term_end, c.rebuilt]
        if self.increases:
            i = self.increases
            found += [i.applied, i.index, i.behind, i.gap]
        found += self.coinsured.figures() if self.coinsured else ()
        return {figure.id.partition("@")[0]: figure for figure in found if figure is not None}


def _points(costs: Costs) -> list[Point]:
    start, base = costs.valuation.valued_on, costs.at_valuation.money
    days, months = [start], 1
    while (day := add_months(start, months)) < costs.rebuilt_on:
        days.append(day)
        months += 1
    days.append(costs.rebuilt_on)
    found = []
    for day in days:
        change = costs.index.change(start, day)
        found.append(Point(day, (base * change.ratio).rounded(DOLLAR), change.projected))
    return found


def _steps(case: Case, building: Building, terms: Terms) -> tuple[Step, ...]:
    """Return the sums insured on file for a building, oldest first, the newest terms last."""
    issued = [t for t in case.file.all(Terms) if t.stage == "issued" and t.start < terms.start]
    found = []
    for version in (*issued, terms):
        line = blanket.line_of(version, building)
        if line is not None and line.limit is not None:
            found.append(Step(version.start, version.end, version.money(line.limit)))
    return tuple(found)


def _costs(case: Case, building: Building) -> tuple[Costs | None, Words | None]:
    """Return what a building costs, or why that cannot be said."""
    try:
        costs = costs_of(case, building)
    except BeyondHorizonError:
        last = spoken(max(case.index(building).points))
        return None, words("values-not-indexed-horizon", last=last)
    except NotCoveredError:
        valuation = newest(case, building)
        assert valuation is not None
        return None, words("values-not-indexed-old", day=valuation.valued_on)
    return costs, None if costs else words("values-not-indexed-none")


def picture(case: Case, building: Building) -> BuildingPicture | None:
    """Return the picture of a building; None when the terms insure it for no amount."""
    terms = case.terms
    line = blanket.line_of(terms, building) if terms else None
    if terms is None or line is None:
        return None
    make = Maker(building)
    costs, why_not = _costs(case, building)
    insured = _sum_insured(case, terms, line, make)
    available = _available(terms, line, insured, make)
    return BuildingPicture(
        building=building,
        terms=terms,
        line=line,
        valuation=newest(case, building),
        sum_insured=insured,
        available=available,
        costs=costs,
        not_indexed=why_not,
        shortfall=_shortfall(costs, available, make) if costs else None,
        increases=_increases(case, building, costs, make) if costs else None,
        coinsured=coinsured(case, terms, line, costs, make) if costs else None,
        history=_steps(case, building, terms),
    )


def _sum_insured(case: Case, terms: Terms, line: Coverage, make: Maker) -> Figure:
    assert line.limit is not None
    fact = line_fact(case.file, terms, line, "limit", "money")
    how = words("values-how-sum-insured", start=terms.start)
    return make("sum-insured", terms.money(line.limit), "money", how, (fact,))


def _available(terms: Terms, line: Coverage, insured: Figure, make: Maker) -> Figure:
    """Return the most the terms pay for the building; the sum insured itself without a blanket."""
    if not blanket.shares_amount(line):
        return insured
    most, whole = blanket.most_for(terms, line), blanket.carried(terms, line)
    margin = Rate(line.margin or Decimal(0))
    how = words(
        f"values-how-blanket{'-margin' if most < whole else ''}", whole=whole, margin=margin
    )
    return make("available", most, "money", how, (insured,))


def _shortfall(costs: Costs, available: Figure, make: Maker) -> Figure:
    short = max(costs.rebuilt.money - available.money, available.money * 0)
    how = words("values-how-shortfall", cost=costs.rebuilt.money, available=available.money)
    return make("shortfall", short, "money", how, (costs.rebuilt, available))


def _known_increases(case: Case, building: Building) -> dict[date, tuple[Decimal, Fact]]:
    """Return the yearly increases that terms on file state, by the day they were applied."""
    assert case.terms is not None
    found = {}
    for terms in (*(t for t in case.file.all(Terms) if t.stage == "issued"), case.terms):
        line = blanket.line_of(terms, building)
        if line is not None and line.automatic_increase is not None:
            fact = line_fact(case.file, terms, line, "automatic_increase", "rate")
            found[terms.start] = (line.automatic_increase, fact)
    return found


def _increases(case: Case, building: Building, costs: Costs, make: Maker) -> Increases | None:
    known, start = _known_increases(case, building), costs.valuation.valued_on
    if not known:
        return None
    done = applied(start, case.renewal, {day: rate for day, (rate, _) in known.items()})
    if not done.rates:
        return None
    change = costs.index.change(start, case.renewal)
    behind = shortfall(costs.at_valuation.money, done.ratio, change.ratio)
    how = words(
        f"values-how-increases{'-assumed' if done.assumed else ''}",
        times=len(done.rates),
        assumed=len(done.assumed),
    )
    increase = make(
        "increases-applied", Rate(done.ratio - 1), "rate", how, tuple(f for _, f in known.values())
    )
    ends = (costs.index.figure(start), costs.index.figure(case.renewal))
    moved = words("values-how-index-change", start=start, day=case.renewal)
    index = make("index-change", Rate(change.ratio - 1), "rate", moved, ends)
    return _behind(make, behind, costs.at_valuation, increase, index)


def _behind(
    make: Maker, behind: Shortfall, base: Figure, increase: Figure, index: Figure
) -> Increases:
    inputs = (increase, index)
    share = make("increases-behind", Rate(behind.share), "rate", words("values-how-behind"), inputs)
    gap = make(
        "increases-gap", behind.money.rounded(DOLLAR), "money", words("values-how-gap"),
        (base, *inputs),
    )  # fmt: skip
    return Increases(increase, index, share, gap)
