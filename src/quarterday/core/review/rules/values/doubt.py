"""Whether a building's valuation can be relied on, and why not."""

from __future__ import annotations

from typing import Literal

from quarterday.core.dates import add_years
from quarterday.core.file.records import Valuation
from quarterday.core.review.case import Case
from quarterday.core.review.rules.values.common import parameter_number
from quarterday.core.values.building import BuildingPicture

Doubt = Literal["none", "indexed", "unknown", "old"]


def independent(case: Case, picture: BuildingPicture) -> Valuation | None:
    """Return the newest valuation that is more than an earlier one carried forward, or None."""
    made = case.file.valuations(picture.building.id)
    own = [v for v in made if v.basis != "indexed" and v.valued_on <= case.as_of]
    return own[-1] if own else None


def doubt(case: Case, picture: BuildingPicture) -> Doubt | None:
    """Return why a building's valuation cannot be relied on, or None when it can.

    ``none``: never valued; ``indexed``: only ever indexed; ``unknown``: nobody knows how it was
    made; ``old``: on the renewal day it will be older than the parameter says.
    """
    newest = independent(case, picture)
    if newest is None:
        return "none" if picture.valuation is None else "indexed"
    if newest.basis == "unknown":
        return "unknown"
    years = int(parameter_number(case, "values.stale-years"))
    return "old" if add_years(newest.valued_on, years) < case.renewal else None
