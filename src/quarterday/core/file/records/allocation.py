"""How an organisation divides its premium among ministries, properties, funds or programmes."""

from __future__ import annotations

from typing import ClassVar, Literal

from pydantic import Field

from quarterday.core.file.records.base import Line, Number, Record, Slug
from quarterday.core.file.records.terms import EVERYWHERE
from quarterday.core.reference import Family

Measure = Literal["location", "area", "headcount", "revenue", "share"]


class AllocationKey(Record):
    """One line of an allocation key: what one party bears of one part of the premium.

    A line speaks of the premium at ``location`` (``*``: wherever no line names the location) and of
    one ``family`` of coverages (None: of those that no line names). Parties of the same part bear
    it by their ``measure`` in the unit ``by``: square metres, people, revenue in dollars or shares;
    ``location`` means that the party bears what stands there, whole unless measures say otherwise.
    Several units in one part are a mix; ``portion`` then says which ratio of it each unit divides.
    """

    kind: ClassVar[str] = "allocation key"

    name: Slug  # of the key, e.g. ministries
    party: Line
    location: Slug = EVERYWHERE  # a building's id
    family: Family | None = None
    by: Measure = "share"
    measure: Number | None = Field(default=None, ge=0)
    portion: Number | None = Field(default=None, gt=0, le=1)  # a ratio
    fund: Line | None = None  # where the books carry it

    @property
    def key(self) -> str:
        """The key's name, the part of the premium, the unit and the party."""
        part = f"{self.location}/{self.family or EVERYWHERE}/{self.by}"
        return f"{self.name}/{part}/{self.party}"
