"""What a percentage deductible comes to: a part of an amount, within its bounds."""

from __future__ import annotations

from decimal import Decimal

from quarterday.core.file.records.terms import Coverage

NONE = Decimal(0)


def part_of(line: Coverage, base: Decimal) -> Decimal:
    """Return what the percentage deductible of ``line`` comes to on ``base``, dollars.

    No less than its minimum, no more than its maximum, which stands above the minimum.
    """
    amount = max(base * (line.deductible_percent or NONE), line.deductible_minimum or NONE)
    return amount if line.deductible_maximum is None else min(amount, line.deductible_maximum)
