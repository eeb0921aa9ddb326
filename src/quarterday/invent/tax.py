"""The tax that the invented insurers print on a premium."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date
from decimal import Decimal

RATES: Mapping[str, Decimal] = {
    "ON": Decimal("0.08"),
    "MB": Decimal("0.07"),
    "SK": Decimal("0.06"),
    "NL": Decimal("0.15"),
}
QUEBEC_UNTIL_2026, QUEBEC_SINCE_2027 = Decimal("0.09"), Decimal("0.09975")


def tax_rate(province: str, paid_on: date) -> Decimal:
    """Return the rate in a province on the day the premium is paid; zero where there is no tax."""
    if province == "QC":
        return QUEBEC_UNTIL_2026 if paid_on < date(2027, 1, 1) else QUEBEC_SINCE_2027
    return RATES.get(province, Decimal(0))
