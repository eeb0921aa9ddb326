"""What insuring a building for more costs: the gap times the building's own rate."""

from __future__ import annotations

from decimal import Decimal

from quarterday.core.figure import Figure
from quarterday.core.file.records import Terms
from quarterday.core.file.records.terms import Coverage, Premium
from quarterday.core.money import Money
from quarterday.core.values.facts import Maker
from quarterday.core.words import Rate, words


def own_rate(terms: Terms, line: Coverage, building: str) -> Decimal | None:
    """Return the yearly premium for each dollar that a line insures at a building, or None.

    Stated in the premium table, else the premium over its exposure, else over the sum insured.
    """
    for place in dict.fromkeys((building, line.location)):
        for premium in terms.premiums:
            if premium.line == (line.coverage, place, "premium"):
                rate = _rate(premium, line)
                if rate is not None:
                    return rate
    return None


def _rate(premium: Premium, line: Coverage) -> Decimal | None:
    if premium.rate is not None:
        return premium.rate
    base = premium.exposure or line.limit
    return premium.amount / base if base else None


def priced(
    what: str, gap: Money, rate: Decimal | None, make: Maker, *inputs: Figure
) -> Figure | None:
    """Return what ``gap`` more adds to the yearly premium before tax; None without a rate."""
    if rate is None:
        return None
    how = words("values-how-price", gap=gap, rate=Rate(rate, 4))
    return make(what, (gap * rate).rounded(), "money", how, inputs)
