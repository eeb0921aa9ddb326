"""Claims and premiums in few words."""

from __future__ import annotations

from datetime import date
from decimal import Decimal
from typing import Any

from quarterday.core.file.records import Claim, Terms


def claim(number: str, day: date, cause: str = "water-escape", **more: Any) -> Claim:
    given = {"number": number, "cause": cause, "date_of_loss": day, "paid": Decimal(10_000),
             "location": "hall", **more}  # fmt: skip
    return Claim.model_validate(given)


def policy(year: int, premium: int | None = 4_000) -> Terms:
    """Issued terms from 31 January, with a premium where one is known."""
    premiums = [] if premium is None else [{"coverage": "building", "amount": premium}]
    start = date(year, 1, 31)
    return Terms.model_validate(
        {"stage": "issued", "start": start, "end": start.replace(year=year + 1),
         "premiums": premiums}
    )  # fmt: skip
