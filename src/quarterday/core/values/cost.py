"""What a building would cost to rebuild: at its valuation, at renewal, at the term's end, rebuilt.

The loss that hurts most comes on the last day of the coming term, and its costs are met while the
building goes up again: half of the rebuilding time is counted (a dated parameter).
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import date, timedelta
from decimal import Decimal

from quarterday.core.dates import add_months
from quarterday.core.figure import Figure, Node, Parameter
from quarterday.core.file.records import Building, Valuation
from quarterday.core.money import Money
from quarterday.core.review.case import Case
from quarterday.core.values.index import DOLLAR, Index, Subject, indexed
from quarterday.core.words import Rate, Term, Words, words

HORIZON = "values.projection-horizon-years"


@dataclass(frozen=True, slots=True)
class Costs:
    """Four costs of one building, each a figure of money rounded to the dollar."""

    valuation: Valuation
    index: Index
    at_valuation: Figure
    at_renewal: Figure
    at_term_end: Figure
    rebuilt: Figure
    rebuilt_on: date


def number(parameter: Parameter) -> Decimal:
    """Return a parameter's value as a plain number."""
    value = parameter.value
    found = value.value if isinstance(value, Rate) else value
    assert isinstance(found, Decimal | int)
    return Decimal(found)


def index_of(case: Case, building: Building) -> Index:
    """Return the construction index of a building's place, with the rate to project it at."""
    years = int(number(case.parameter(HORIZON)))
    return Index.of(case.index(building), case.parameter("values.projected-index-rate"), years)


def newest(case: Case, building: Building) -> Valuation | None:
    """Return the newest valuation of the building itself made by the review's day, or None."""
    made = [v for v in case.file.valuations(building.id) if v.valued_on <= case.as_of]
    return made[-1] if made else None


def size_of(case: Case, building: Building) -> str:
    """Return ``small``, ``medium`` or ``large`` by floor area; medium when it is not known."""
    area = building.area_m2
    if not area or area < 0:
        return "medium"
    if area < number(case.parameter("values.small-building-m2")):
        return "small"
    return "large" if area >= number(case.parameter("values.large-building-m2")) else "medium"


def rebuilding(case: Case, building: Building) -> tuple[Parameter, Parameter]:
    """Return how many months rebuilding takes, and what share of them is counted."""
    months = case.parameter(f"values.rebuilding-months-{size_of(case, building)}")
    return months, case.parameter("values.rebuilding-share-counted")


def rebuilt_on(case: Case, building: Building) -> date:
    """Return the day whose costs a total loss at the end of the coming term is rebuilt at."""
    months, counted = rebuilding(case, building)
    return add_months(last_day(case), int(number(months) * number(counted)))


def last_day(case: Case) -> date:
    """Return the last day of the coming term."""
    return case.coming.end - timedelta(days=1)


def _called(what: str, building: Building, **args: date) -> Subject:
    return Subject(f"{what}@{building.id}", words(f"values-{what}", building=building.name, **args))


def _fees(case: Case, valuation: Valuation) -> tuple[Parameter, ...]:
    """Return the parameter for professional fees where the valuation leaves them out."""
    left_out = valuation.includes_fees is False
    return (case.parameter("values.professional-fees-share"),) if left_out else ()


def _fees_unknown(valuation: Valuation) -> Words | None:
    return words("values-caution-fees-unknown") if valuation.includes_fees is None else None


def at_valuation(case: Case, building: Building, valuation: Valuation) -> Figure:
    """Return the cost on the day of the valuation, professional fees added when left out of it."""
    name = _called("cost-at-valuation", building, day=valuation.valued_on)
    currency = case.terms.currency if case.terms else "CAD"
    fact = case.file.fact(valuation, "amount", "money", currency)
    fees = _fees(case, valuation)
    share = number(fees[0]) if fees else Decimal(0)
    how = words(
        f"values-how-valuation{'-fees' if fees else ''}",
        basis=Term("valuation-basis", valuation.basis),
        amount=Money(valuation.amount, currency),
        fees=Rate(share),
    )
    return Figure(
        id=name.id,
        value=(Money(valuation.amount, currency) * (1 + share)).rounded(DOLLAR),
        unit="money",
        label=name.label,
        how=how,
        inputs=(fact, *fees),
        caution=_fees_unknown(valuation),
    )


def costs_of(case: Case, building: Building) -> Costs | None:
    """Return what a building costs through time; None without a valuation.

    NotCoveredError when the valuation is older than the index, or the index too old for the day.
    """
    valuation = newest(case, building)
    if valuation is None:
        return None
    base, index = at_valuation(case, building, valuation), index_of(case, building)

    def cost(what: str, day: date, *more: Node) -> Figure:
        found = indexed(_called(what, building, day=day), base, valuation.valued_on, day, index)
        return replace(found, inputs=(*found.inputs, *more))

    end = rebuilt_on(case, building)
    return Costs(
        valuation=valuation,
        index=index,
        at_valuation=base,
        at_renewal=cost("cost-at-renewal", case.renewal),
        at_term_end=cost("cost-at-term-end", last_day(case)),
        rebuilt=cost("cost-rebuilt", end, *rebuilding(case, building)),
        rebuilt_on=end,
    )
