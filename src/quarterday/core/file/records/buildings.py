"""Buildings, the facts underwriting needs of them, and their valuations."""

from __future__ import annotations

from typing import ClassVar, Literal

from pydantic import Field

from quarterday.core.file.records.base import (
    Amount,
    Count,
    Day,
    Line,
    Number,
    Prose,
    Record,
    Slug,
    Year,
)

Ownership = Literal["own", "rent", "mandate"]
Construction = Literal[
    "frame", "masonry-veneer", "heavy-timber", "masonry", "stone", "concrete", "steel", "other"
]
Basement = Literal["none", "unfinished", "finished"]
Basis = Literal[
    "formal-appraisal", "desk-valuation", "cost-manual", "owner-estimate", "indexed", "unknown"
]
ValuedThing = Literal["building", "contents", "feature"]


class Building(Record):
    """A building the organisation owns, rents or looks after; None means not known."""

    kind: ClassVar[str] = "building"

    id: Slug
    name: Line
    address: Line | None = None
    town: Line | None = None
    postal_code: Line | None = None
    province: Slug | None = None  # when it is not the organisation's
    ownership: Ownership = "own"
    use: Line | None = None
    construction: Construction | None = None
    year_built: Year | None = None
    area_m2: Number | None = None
    storeys: Number | None = None
    basement: Basement | None = None
    contents_below_grade: bool | None = None
    roof_shape: Line | None = None
    roof_cover: Line | None = None
    roof_year: Year | None = None
    wiring_type: Line | None = None
    wiring_year: Year | None = None
    plumbing_type: Line | None = None
    plumbing_year: Year | None = None
    heating_type: Line | None = None
    heating_year: Year | None = None
    sprinklers: bool | None = None
    fire_alarm: bool | None = None
    burglar_alarm: bool | None = None
    alarm_monitored: bool | None = None
    hydrant_m: Number | None = None
    fire_hall_km: Number | None = None
    backwater_valve: bool | None = None
    sump_pump: bool | None = None
    sump_battery: bool | None = None
    water_sensors: bool | None = None
    automatic_shutoff: bool | None = None
    heritage: bool | None = None
    special_features: tuple[Line, ...] = Field(default=(), max_length=40)
    unoccupied_since: Day | None = None
    unoccupied_days: Count | None = None
    updates: Prose | None = None

    @property
    def key(self) -> str:
        """The building's id within the file."""
        return self.id


class Valuation(Record):
    """What a building, its contents or one special feature was found to cost to replace."""

    kind: ClassVar[str] = "valuation"

    building: Slug
    valued: ValuedThing = "building"
    feature: Line | None = None
    amount: Amount = Field(gt=0)
    valued_on: Day
    basis: Basis = "unknown"
    by: Line | None = None
    itemised: bool | None = None  # for contents: whether there is a list
    includes_fees: bool | None = None
    includes_by_laws: bool | None = None
    area_m2: Number | None = None
    storeys: Number | None = None
    year_built: Year | None = None

    @property
    def key(self) -> str:
        """The building, what of it, and the day of the valuation."""
        thing = f"{self.valued}:{self.feature}" if self.feature else self.valued
        return f"{self.building}/{thing}/{self.valued_on}"
