"""Rules of published worksheets for income insurance, to set beside our own months.

Sources: the business income coverage form CP 00 30 as printed in a public record of the City of
Santa Ana (pages 98 and 99); a printed worksheet of its 2009 series (mynewmarkets.com, 97229); a
worksheet for farm businesses with a peak season (formsbank.com, template 154539, page 2).
"""

from __future__ import annotations

from collections.abc import Iterable
from decimal import Decimal

from quarterday.core.money import Money, total

YEAR = 12


def maximum_coinsurance(months: int) -> Decimal:
    """Return the largest coinsurance share that fits a closure of ``months``: months over twelve.

    It is also the period's factor: 6 months 0.5, 9 months 0.75, 12 months 1, 18 months 1.5.
    """
    return Decimal(months) / YEAR


def amount_needed(exposure: Money, months: int, largest_share: Decimal) -> Money:
    """Return what a closure of ``months`` asks for of a year's ``exposure``.

    The period's factor times the exposure. A season counts when the closure is shorter than a year:
    then the largest share of the year it can hit, divided by the factor, times that amount.
    """
    factor = maximum_coinsurance(months)
    base = exposure * factor
    seasonal = months < YEAR and largest_share > factor
    return base * (largest_share / factor) if seasonal else base


def paid_by_month(limit: Money, fraction: Decimal, losses: Iterable[Money]) -> Money:
    """Return what a monthly limit pays: of each month's loss at most ``fraction`` of the limit.

    All months together never more than the limit. The clause stands in place of coinsurance.
    """
    most = limit * fraction
    paid = total((min(loss, most) for loss in losses), limit.currency)
    return min(paid, limit).rounded()
