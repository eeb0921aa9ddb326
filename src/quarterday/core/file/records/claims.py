"""Claims as the insurer's loss run shows them on a day."""

from __future__ import annotations

from decimal import Decimal
from typing import ClassVar, Literal

from quarterday.core.file.records.base import Amount, Day, Line, Prose, Record, Slug


class Claim(Record):
    """One claim, valued on a day; a later valuation replaces it and the earlier stays readable."""

    kind: ClassVar[str] = "claim"

    number: Slug
    cause: Slug  # id of the causes catalogue
    date_of_loss: Day
    reported_on: Day | None = None
    location: Slug | None = None  # a building's id
    description: Prose | None = None
    paid: Amount = Decimal("0.00")
    outstanding: Amount = Decimal("0.00")
    recovered: Amount = Decimal("0.00")
    deductible: Amount | None = None
    status: Literal["open", "closed"] = "closed"
    valued_on: Day | None = None
    last_movement_on: Day | None = None
    insurer: Line | None = None

    @property
    def key(self) -> str:
        """The claim number."""
        return self.number

    @property
    def incurred(self) -> Decimal:
        """Paid plus outstanding less recovered, as at ``valued_on``."""
        return self.paid + self.outstanding - self.recovered
