"""The organisation, the people who speak for it, and what they may do."""

from __future__ import annotations

from typing import ClassVar, Literal

from quarterday.core.file.records.base import Count, Day, Line, Prose, Record, Slug

Language = Literal["en", "fr"]
OrganisationClass = Literal[
    "worship",
    "charity",
    "hall",
    "camp",
    "food-bank",
    "sports",
    "arts",
    "school",
    "mission",
    "other",
]
Role = Literal["treasurer", "chair", "minister", "administrator", "secretary", "property", "other"]
Area = Literal["coverage", "accounts", "claims"]


class Organisation(Record):
    """Who is insured: names, place, language, and who looks after the file. One per file."""

    kind: ClassVar[str] = "organisation"

    name: Line  # legal name
    known_as: Line | None = None
    named_insured: Line | None = None  # as the policy spells it
    organisation_class: OrganisationClass = "other"
    registration_number: Line | None = None  # charity number, e.g. 123026635RR0001
    province: Slug  # ISO 3166-2 letters, e.g. ON
    address: Line | None = None
    town: Line | None = None
    postal_code: Line | None = None
    language: Language = "en"
    founded_year: Count | None = None
    fiscal_year_end: Slug | None = None  # month and day, e.g. 12-31
    renewal_date: Day | None = None  # used while no terms are on file
    office: Line | None = None
    broker: Line | None = None
    confirmed_on: Day | None = None
    notes: Prose | None = None


class Contact(Record):
    """A person who speaks for the organisation."""

    kind: ClassVar[str] = "contact"

    id: Slug
    name: Line
    role: Role = "other"
    email: Line | None = None
    phone: Line | None = None
    language: Language | None = None
    is_key: bool = False
    confirmed_on: Day | None = None
    left_on: Day | None = None

    @property
    def key(self) -> str:
        """The contact's id within the file."""
        return self.id


class Authority(Record):
    """That a contact may decide in one area, from a day, until a day (not included)."""

    kind: ClassVar[str] = "authority"

    contact: Slug
    area: Area
    since: Day | None = None
    until: Day | None = None

    @property
    def key(self) -> str:
        """The contact and the area."""
        return f"{self.contact}/{self.area}"
