"""Lenders and lessors with an interest in what is insured."""

from __future__ import annotations

from typing import ClassVar, Literal

from quarterday.core.file.records.base import Amount, Day, Line, Record, Slug


class Interest(Record):
    """A lender's or lessor's interest in a building or a piece of equipment."""

    kind: ClassVar[str] = "interest"

    id: Slug
    role: Literal["lender", "lessor"]
    name: Line
    address: Line | None = None
    reference: Line | None = None  # loan or lease number
    location: Slug | None = None  # a building's id
    item: Line | None = None  # leased equipment
    amount: Amount | None = None
    status: Literal["active", "paid-off", "unknown"] = "active"
    confirmed_on: Day | None = None

    @property
    def key(self) -> str:
        """The interest's id within the file."""
        return self.id
