"""What a record of the workbook changes in the record on file, field by field."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field
from typing import Any, Literal, TypeVar

from pydantic import BaseModel, TypeAdapter

from quarterday.core.file.entry import Draft, Origin, Place
from quarterday.core.file.records import BY_KIND, Record
from quarterday.intake.assemble import PART_KEYS, Key, key_text

Status = Literal["new", "changed", "unchanged"]
Held = Any  # a field's value: text, amount, date, list or None
P = TypeVar("P", bound=BaseModel)
ACT = "load"
_PLACES = TypeAdapter(tuple[Place, ...])


@dataclass(frozen=True, slots=True)
class Change:
    """A field's old and new value (None: not known); ``part`` and ``line`` say of which part.

    ``field`` is "" where a whole line of a part comes or goes.
    """

    field: str
    old: Held
    new: Held
    part: str = ""
    line: Key = ()


@dataclass(frozen=True, slots=True)
class Item:
    """A record of the workbook, and what it would do to the account's file.

    The record and its places are held as canonical text, which takes a tenth of the room: a book
    has many.
    """

    account: str
    status: Status
    kind: str
    key: str
    body: str = field(repr=False)
    source: Origin = field(repr=False)
    where: str = field(repr=False)
    changes: tuple[Change, ...] = ()

    @property
    def record(self) -> Record:
        """The record, read from its text."""
        return BY_KIND[self.kind].read(self.body)

    @property
    def origin(self) -> Origin:
        """Where the record stands in the document."""
        return self.source.model_copy(update={"places": _PLACES.validate_json(self.where)})

    def draft(self) -> Draft:
        """Return the item as it would be added to the file."""
        return Draft(ACT, self.kind, self.key, self.body, self.origin)


def item_of(
    account: str, old: Record | None, record: Record, source: Origin, places: Iterable[Place]
) -> Item:
    """Return what ``record``, from these places of ``source``, would do to a file with ``old``."""
    if old is None:
        status: Status = "new"
    else:
        status = "unchanged" if old == record else "changed"
    found = changes(old, record) if old is not None else ()
    where = _PLACES.dump_json(tuple(places), exclude_defaults=True).decode()
    return Item(account, status, record.kind, record.key, record.body(), source, where, found)


def changes(old: BaseModel, new: BaseModel) -> tuple[Change, ...]:
    """Return what differs between two versions of a record."""
    return tuple(_changes(old, new))


def _changes(old: BaseModel, new: BaseModel) -> Iterator[Change]:
    for name in type(new).model_fields:
        before, after = getattr(old, name), getattr(new, name)
        if before == after:
            continue
        if name in PART_KEYS:
            yield from _of_part(name, before, after)
        elif isinstance(before, BaseModel) and isinstance(after, BaseModel):
            for change in _changes(before, after):
                yield Change(f"{name}_{change.field}", change.old, change.new)
        else:
            yield Change(name, before, after)


def by_key(part: str, lines: tuple[P, ...]) -> Mapping[Key, P]:
    """Return the lines of a part by what tells them apart."""
    return {part_key(part, line): line for line in lines}


def part_key(part: str, line: BaseModel) -> Key:
    """Return what tells one line of a part from the others."""
    return tuple(key_text(getattr(line, field)) for field in PART_KEYS[part])


def _of_part(
    part: str, before: tuple[BaseModel, ...], after: tuple[BaseModel, ...]
) -> Iterator[Change]:
    old, new = by_key(part, before), by_key(part, after)
    for key in dict.fromkeys([*old, *new]):
        if key not in new:
            yield Change("", old[key], None, part, key)
        elif key not in old:
            yield Change("", None, new[key], part, key)
        else:
            for change in _changes(old[key], new[key]):
                yield Change(change.field, change.old, change.new, part, key)
