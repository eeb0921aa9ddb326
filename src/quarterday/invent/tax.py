"""The tax that an invented insurer prints: that of the province, when the premium starts."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date
from decimal import Decimal

from quarterday.catalogue.load import reference
from quarterday.core.file.records.terms import Premium
from quarterday.core.money import Money, total
from quarterday.core.premium.tax import tax


def tax_on(premiums: Iterable[Premium], province: str, start: date) -> Decimal:
    """Return the tax on a premium table, all of it paid on the first day of cover."""
    known, cells = reference(), tuple(premiums)
    lines = [
        (known.coverages[cell.coverage].family, cell.coverage, Money(cell.amount))
        for cell in cells
        if cell.kind != "fee"
    ]
    fees = total(Money(cell.amount) for cell in cells if cell.kind == "fee")
    return tax(known.provinces[province], start, start, lines, fees).tax.money.amount
