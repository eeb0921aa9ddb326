"""A loss as people tell it: what happened, where, when, and how much of what."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from typing import Annotated

from pydantic import Field

from quarterday.core.file.records.base import Amount, Count, Day, Line, Part, Slug
from quarterday.core.file.records.terms import EVERYWHERE
from quarterday.core.terms.losses.components import COMPONENTS
from quarterday.core.words import Term, Words, words

HOURS_A_MONTH = 720  # thirty days of 24 hours, as income forms count (ISO CP 00 30)
Months = tuple[Amount, ...]


@dataclass(frozen=True, slots=True)
class Damage:
    """One amount of a loss; ``month`` counts from 1 where amounts are given month by month."""

    component: str
    place: str
    month: int
    amount: Decimal


class Loss(Part):
    """One event. ``amounts`` are keyed ``component`` or ``component@place`` (of another building).

    An income is given as one amount, spread evenly over ``hours``, or as a list of amounts, one
    for each thirty days. ``claimed_on`` is the day the claim is made (default: the day of loss).
    """

    id: Slug = "loss"
    name: Line | None = None
    reference: Slug | None = None  # the reference loss whose name it bears
    cause: Slug
    place: Slug = EVERYWHERE
    date_of_loss: Day
    claimed_on: Day | None = None
    hours: Annotated[Count, Field(gt=0)] = HOURS_A_MONTH
    amounts: Mapping[Slug, Amount | Annotated[Months, Field(min_length=1)]]

    @property
    def damages(self) -> Iterator[Damage]:
        """The amounts one by one, as they were given."""
        for key, told in self.amounts.items():
            component, _, place = key.partition("@")
            monthly = told if isinstance(told, tuple) else (told,)
            for month, amount in enumerate(monthly, start=1):
                yield Damage(component, place or self.place, month, amount)

    @property
    def total(self) -> Decimal:
        """The whole loss."""
        return sum((damage.amount for damage in self.damages), Decimal(0))

    @property
    def reported(self) -> date:
        """The day the claim is made."""
        return self.claimed_on or self.date_of_loss

    @property
    def called(self) -> str | Words | Term:
        """The loss's own name, that of its reference loss, else its cause and day."""
        if self.name is None and self.reference is not None:
            return Term("loss", self.reference)
        return self.name or words(
            "settling-loss", cause=Term("cause", self.cause), day=self.date_of_loss
        )


def is_monthly(component: str) -> bool:
    """Tell whether amounts of this component may be given month by month."""
    return COMPONENTS[component].kind == "income"
