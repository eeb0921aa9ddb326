"""Terms, values and losses as plain data: the documented form, read and written.

Read from YAML or JSON without floats; what is written reads back as itself.
"""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date
from decimal import Decimal
from typing import Annotated, Any

from pydantic import Field

from quarterday.core.dates import add_years
from quarterday.core.file.records import Terms
from quarterday.core.file.records.base import LATEST, Amount, Number, Part, Slug
from quarterday.core.file.records.terms import EVERYWHERE
from quarterday.core.given import read
from quarterday.core.terms.losses.loss import Loss
from quarterday.core.terms.settling.refusals import refused
from quarterday.core.terms.settling.values import Values

Plain = dict[str, Any]


class Valued(Part):
    """What is insured by a coverage at a location: its true value, and how much wear it has."""

    coverage: Slug
    location: Slug = EVERYWHERE
    value: Annotated[Amount, Field(ge=0)] | None = None
    depreciation: Annotated[Number, Field(ge=0, le=1)] | None = None


class Given(Part):
    """What can be settled: terms, the true values some clauses need, and losses."""

    terms: Terms
    values: tuple[Valued, ...] = ()
    losses: tuple[Loss, ...] = Field(min_length=1)


def given(told: Mapping[str, object]) -> Given:
    """Return plain data as what can be settled; Unusable names the first key that is wrong.

    Terms without a stage are issued ones, without an end they run a year; losses without an id
    are numbered.
    """
    terms, losses = told.get("terms"), told.get("losses")
    filled = dict(told)
    if isinstance(terms, Mapping):
        filled["terms"] = _with_defaults(terms)
    if isinstance(losses, list | tuple):
        filled["losses"] = [_numbered(n, loss) for n, loss in enumerate(losses, start=1)]
    return read(Given, filled)


def _with_defaults(terms: Mapping[str, object]) -> Plain:
    filled = {"stage": "issued", **terms}
    start, end = _day(terms.get("start")), _day(terms.get("end"))
    if start is not None and start < LATEST and "end" not in terms:
        filled["end"] = add_years(start, 1)
    if start is not None and end is not None and end <= start:
        raise refused("period", start=start, end=end)
    return filled


def _day(told: object) -> date | None:
    """Return a day that is told as such or as text; what it cannot be is refused later."""
    if isinstance(told, str):
        try:
            return date.fromisoformat(told)
        except ValueError:
            return None
    return told if isinstance(told, date) else None


def _numbered(number: int, loss: object) -> object:
    return {"id": f"loss-{number}", **loss} if isinstance(loss, Mapping) else loss


def written(what: Part) -> Plain:
    """Return terms, values or losses as plain data that JSON and YAML can hold, defaults left out.

    Amounts and ratios become text, so that they stay exact.
    """
    return what.model_dump(mode="json", exclude_defaults=True)


def values_of(valued: tuple[Valued, ...]) -> Values:
    """Return told values by coverage and location."""
    keys = {(v.coverage, v.location): v for v in valued}
    worth = {key: v.value for key, v in keys.items() if v.value is not None}
    wear = {key: v.depreciation for key, v in keys.items() if v.depreciation is not None}
    return Values(worth=worth, depreciation=wear)


def cents(amount: Decimal) -> str:
    """Return an amount as text with two decimals."""
    return f"{amount:.2f}"
