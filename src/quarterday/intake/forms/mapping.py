"""Which record a field of a form speaks of. A field's name has parts: ``contacts.warden.phone``."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Literal

from quarterday.core.file.records import Building, Contact, Interest, Operations, Record

Way = Literal[
    "field",  # a field of a record that is on file
    "authority",  # a tick: this person may decide in this area
    "stays",  # whether a person is still there
    "status",  # whether an interest goes on
    "sum",  # an amount to ask the insurer for
    "answer",  # an answer to a questionnaire or declaration, kept in its own words
    "decision",  # what the leaders decided on a question
    "payment",  # how they pay
    "confirmed",  # who filled the form in, and when
]


@dataclass(frozen=True, slots=True)
class Area:
    """The fields whose name begins with one word: the form they are on, and what they speak of.

    ``depth`` is how many parts follow the first. ``only`` names the last parts that are fields of
    ``record``; empty means all. What is not is read as ``other``.
    """

    form: str
    way: Way
    depth: int
    record: type[Record] | None = None
    only: tuple[str, ...] = ()
    other: Way | None = None


AREAS: Mapping[str, Area] = {
    "contacts": Area("contacts-form", "field", 2, Contact, other="stays",
                     only=("name", "role", "language", "phone", "email")),
    "authorities": Area("contacts-form", "authority", 2),
    "operations": Area("operations-form", "field", 1, Operations),
    "buildings": Area("statement-of-values", "field", 2, Building),
    "sums": Area("statement-of-values", "sum", 2),
    "water": Area("water-form", "answer", 2),
    "abuse": Area("abuse-form", "answer", 1),
    "decisions": Area("decisions-form", "decision", 2),
    "payment": Area("payment-form", "payment", 1),
    "interests": Area("interests-form", "field", 2, Interest, other="answer",
                      only=("name", "role", "address", "location", "reference", "item", "amount",
                            "status")),
}  # fmt: skip
FORMS: tuple[str, ...] = tuple(dict.fromkeys(area.form for area in AREAS.values()))
CONFIRMED = "confirmed"


@dataclass(frozen=True, slots=True)
class Target:
    """What one field speaks of: its form, the way it is read, the record's kind, key and field."""

    form: str
    way: Way
    record: type[Record] | None
    key: str
    field: str


def target(parts: tuple[str, ...]) -> Target | None:
    """Return what the field with these parts of its name speaks of; None when no form has it."""
    if len(parts) == 3 and parts[1] == CONFIRMED and parts[0] in FORMS:  # noqa: PLR2004
        return Target(parts[0], "confirmed", None, "", parts[2])
    area = AREAS.get(parts[0])
    if area is None or len(parts) != area.depth + 1:
        return None
    key = parts[1] if area.depth > 1 else ""
    is_field = not area.only or parts[-1] in area.only
    way = area.way if is_field else area.other
    if way is None:
        return None
    return Target(area.form, way, area.record if way == "field" else None, key, parts[-1])
