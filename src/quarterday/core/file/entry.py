"""An entry of the ledger, and the origin of what it says."""

from __future__ import annotations

import json
from dataclasses import dataclass, field
from datetime import datetime
from typing import Literal

from pydantic import BaseModel, ConfigDict

Way = Literal["workbook", "csv", "form", "person", "room", "office"]


class Place(BaseModel):
    """A spot in a document: sheet and row, or field; ``part`` says which part of the record."""

    model_config = ConfigDict(frozen=True, extra="forbid")

    sheet: str = ""
    row: int | None = None
    field: str = ""
    part: str = ""


class Origin(BaseModel):
    """Where an entry came from.

    ``document`` is the SHA-256 (hex) of the original kept in the store, ``name`` its file name;
    ``person`` is set when somebody typed it at the desk or answered in the leaders' room.
    """

    model_config = ConfigDict(frozen=True, extra="forbid")

    way: Way
    document: str | None = None
    name: str = ""
    places: tuple[Place, ...] = ()
    person: str = ""


@dataclass(frozen=True, slots=True)
class Draft:
    """What somebody wants to add to a file; ``body`` is canonical JSON, or None to withdraw."""

    act: str
    kind: str
    key: str
    body: str | None
    origin: Origin


@dataclass(frozen=True, slots=True)
class Entry:
    """One dated, sourced addition to a file; ``seq`` counts from 1 within the file.

    ``salt`` (hex) goes into the body's digest and away with the body when it is redacted, so that
    a redacted telephone number cannot be guessed back from its digest.
    """

    file: str
    seq: int
    recorded_at: datetime
    by: str
    act: str
    kind: str
    key: str
    body: str | None = field(repr=False)
    salt: str | None = field(repr=False)
    body_digest: str
    origin: Origin
    digest: str
    previous: str

    @property
    def is_redacted(self) -> bool:
        """Whether the body was removed on lawful request; its digest stays."""
        return self.salt is None


def canonical(value: object) -> str:
    """Return ``value`` as canonical JSON: sorted names, no spaces, characters as they are."""
    return json.dumps(
        value, sort_keys=True, separators=(",", ":"), ensure_ascii=False, allow_nan=False
    )
