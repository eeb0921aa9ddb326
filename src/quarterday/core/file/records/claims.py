"""Claims as the insurer's loss run shows them on a day."""

from __future__ import annotations

from decimal import Decimal
from typing import ClassVar, Literal

from quarterday.core.file.records.base import Amount, Day, Line, Prose, Record, Slug


class Claim(Record):
    """One claim, valued on a day; a later valuation replaces it and the earlier stays readable.

    Amounts are the insurer's, so what the deductible left with the organisation is not in them,
    unless ``includes_deductible`` says that the loss run counts from the ground up.
    """

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
    includes_deductible: bool = False
    status: Literal["open", "closed"] = "closed"
    valued_on: Day | None = None
    last_movement_on: Day | None = None
    insurer: Line | None = None

    @property
    def key(self) -> str:
        """The claim number."""
        return self.number

    @property
    def shown(self) -> Decimal:
        """Paid plus outstanding less recovered, as the loss run of ``valued_on`` shows them."""
        return self.paid + self.outstanding - self.recovered

    @property
    def incurred(self) -> Decimal:
        """What the claim costs the insurer: net of the deductible."""
        if not self.includes_deductible or self.shown <= 0:
            return self.shown
        return max(self.shown - (self.deductible or Decimal(0)), Decimal("0.00"))

    @property
    def ground_up(self) -> Decimal:
        """What the loss came to in all: gross of the deductible; zero where nothing was shown."""
        if self.shown <= 0:
            return Decimal("0.00")
        own = Decimal(0) if self.includes_deductible else self.deductible or Decimal(0)
        return self.shown + own
