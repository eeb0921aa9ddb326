"""Whether a building's valuations agree with each other, and with what buildings cost at all."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal

from quarterday.core.dates import add_years
from quarterday.core.figure import Fact, Figure
from quarterday.core.file.records import Building, Valuation
from quarterday.core.money import Money
from quarterday.core.review.case import Case
from quarterday.core.review.finding import Finding
from quarterday.core.review.rules.values.common import for_record, parameter_number
from quarterday.core.review.told import telling
from quarterday.core.values.cost import index_of, newest
from quarterday.core.values.facts import Maker
from quarterday.core.values.index import DOLLAR, NotCoveredError
from quarterday.core.words import Rate, words

PLAUSIBLE = ("values.least-cost-per-m2", "values.most-cost-per-m2")


def valuations_disagree(case: Case) -> Iterator[Finding]:
    """Find each building whose two newest valuations differ once both stand at the same day.

    A value that only carries an earlier one forward is no second opinion, and a valuation that was
    too old to rely on when the next was made is none either.
    """
    for building in case.file.buildings:
        pair = _pair(case, building)
        if pair is not None:
            yield from _compared(case, building, *pair)


def _pair(case: Case, building: Building) -> tuple[Valuation, Valuation] | None:
    made = [
        v for v in case.file.valuations(building.id)
        if v.basis != "indexed" and v.valued_on <= case.as_of
    ]  # fmt: skip
    if len(made) < len(("older", "newer")):
        return None
    older, newer = made[-2:]
    years = int(parameter_number(case, "values.stale-years"))
    return (older, newer) if add_years(older.valued_on, years) >= newer.valued_on else None


def _compared(
    case: Case, building: Building, older: Valuation, newer: Valuation
) -> Iterator[Finding]:
    currency = case.terms.currency if case.terms else "CAD"
    amounts = [Money(valuation.amount, currency) for valuation in (older, newer)]
    try:
        change = index_of(case, building).change(older.valued_on, newer.valued_on)
    except NotCoveredError:
        return
    brought = (amounts[0] * change.ratio).rounded(DOLLAR)
    apart = abs(amounts[1] - brought).ratio(max(amounts[1], brought))
    if apart <= parameter_number(case, "values.valuation-tolerance"):
        return
    say = telling(
        "values.valuations-disagree",
        building=building.name,
        older=older.valued_on,
        newer=newer.valued_on,
        was=amounts[0],
        brought=brought,
        amount=amounts[1],
        apart=Rate(apart, 0),
    )
    facts = [case.file.fact(v, "amount", "money", currency) for v in (older, newer)]
    figure = _brought(building, brought, (older, newer), facts)
    yield for_record(case, "values.valuations-disagree", building, say, (figure, facts[1]))


def _brought(
    building: Building, amount: Money, pair: tuple[Valuation, Valuation], facts: list[Fact]
) -> Figure:
    older, newer = pair
    label = words("values-brought-forward", building=building.name, day=newer.valued_on)
    base = facts[0].value
    assert isinstance(base, Money)
    how = words("values-how-indexed", base=base, start=older.valued_on, day=newer.valued_on)
    return Maker(building)("brought-forward", amount, "money", how, (facts[0],), label)


def implausible_value(case: Case) -> Iterator[Finding]:
    """Find each building whose value by square metre lies outside what buildings cost.

    It is told with the figure and changes nothing: an unusual building may be right.
    """
    for building in case.file.buildings:
        valuation = newest(case, building)
        area = (valuation.area_m2 if valuation else None) or building.area_m2
        if valuation is not None and area is not None and area > 0:
            yield from _judged(case, building, valuation, area)


def _judged(
    case: Case, building: Building, valuation: Valuation, area: Decimal
) -> Iterator[Finding]:
    currency = case.terms.currency if case.terms else "CAD"
    least, most = (Money(parameter_number(case, id), currency) for id in PLAUSIBLE)
    each = (Money(valuation.amount, currency) / area).rounded(DOLLAR)
    if least <= each <= most:
        return
    rule = "values.implausible-value"
    say = telling(
        rule, building=building.name, each=each, least=least, most=most, area=area,
        amount=Money(valuation.amount, currency), day=valuation.valued_on,
    )  # fmt: skip
    source = valuation if valuation.area_m2 else building
    facts = (
        case.file.fact(valuation, "amount", "money", currency),
        case.file.fact(source, "area_m2", "m2"),
    )
    bounds = tuple(case.parameter(id) for id in PLAUSIBLE)
    how = words("values-how-per-m2")
    figure = Maker(building)("value-per-m2", each, "money", how, (*facts, *bounds))
    yield for_record(case, rule, building, say, (figure,))
