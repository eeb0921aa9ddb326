"""Put lines together that speak of one thing, and make the thing's record of them."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass
from decimal import Decimal
from typing import Any, TypeVar

from pydantic import BaseModel, ValidationError

from quarterday.core.file.layout import SHEETS, Column, Sheet
from quarterday.core.file.records import (
    AllocationKey,
    Authority,
    Building,
    Claim,
    Contact,
    Interest,
    Operations,
    Organisation,
    Record,
    Terms,
    Valuation,
)
from quarterday.core.words import words
from quarterday.intake.cells import BadCell, Said, Value
from quarterday.intake.faults import Fault, shown
from quarterday.intake.labels import field_label
from quarterday.intake.table import Line
from quarterday.intake.vocabulary import normal

M = TypeVar("M", bound=BaseModel)
Key = tuple[str, ...]
SaidOf = Mapping[str, Value]
KEYS: Mapping[type[Record], Key] = {
    Organisation: (),
    Operations: (),
    Contact: ("id",),
    Authority: ("contact", "area"),
    Building: ("id",),
    Valuation: ("building", "valued", "feature", "valued_on"),
    Terms: ("start", "stage"),
    Claim: ("number",),
    Interest: ("id",),
    AllocationKey: ("name", "location", "family", "by", "party"),
}
PART_KEYS: Mapping[str, Key] = {
    "coverages": ("coverage", "location"),
    "premiums": ("coverage", "location", "kind", "reason"),
    "totals": ("of", "id"),
    "options": ("coverage", "location", "limit"),
}
_DEFAULTS = {
    "valued": "building",
    "location": "*",
    "kind": "premium",
    "id": "*",
    "by": "share",
}
_COLUMNS: Mapping[str, Mapping[str, Column]] = {
    s.name: {c.field: c for c in s.columns if c.field in s.model.model_fields} for s in SHEETS
}
_LONGEST_ID = 80
_BOUNDS = {
    "greater_than": "gt",
    "greater_than_equal": "ge",
    "less_than": "lt",
    "less_than_equal": "le",
    "string_too_long": "max_length",
    "too_long": "max_length",
}


@dataclass(frozen=True, slots=True)
class Group:
    """The lines that speak of one thing, and what they say together."""

    key: Key
    lines: tuple[Line, ...]
    said: SaidOf

    @property
    def first(self) -> Line:
        """The line that spoke first."""
        return self.lines[0]

    def saying(self, field: str) -> Line:
        """Return the line that says a field, else the first."""
        return next((line for line in self.lines if field in line.said), self.first)


def key_of(said: SaidOf, fields: Key) -> Key:
    """Return the key that cells give, each part as text, its default where it is not said."""
    return tuple([_key_part(said.get(field), field) for field in fields])


def _key_part(part: Value | None, field: str) -> str:
    if isinstance(part, str):
        return part
    return _DEFAULTS.get(field, "") if part is None or isinstance(part, Said) else key_text(part)


def key_text(part: object) -> str:
    """Return a part of a key as text; equal amounts and unknown values are the same text."""
    if part is None:
        return ""
    return f"{part.normalize():f}" if isinstance(part, Decimal) else str(part)


def give_ids(lines: Iterable[Line], on_file: Iterable[tuple[str, str]]) -> None:
    """Give lines that have a name and no id the id of that name on file, else one made of it."""
    by_name = {normal(name): id for id, name in on_file}
    for line in lines:
        name = line.said.get("name")
        if "id" in line.said or not isinstance(name, str):
            continue
        plain = normal(name)
        line.said["id"] = by_name.get(plain) or plain.replace(" ", "-")[:_LONGEST_ID]


def require(line: Line, fields: Iterable[str]) -> bool:
    """Refuse the line when it does not say one of ``fields``; tell whether it says them all."""
    missing = [f for f in fields if isinstance(line.said.get(f, Said.BLANK), Said)]
    for field in missing:
        said = words("intake-required", column=field_label(field))
        line.refuse(BadCell(said, words("intake-required-remedy")), field)
    return not missing


def grouped(lines: Iterable[Line], fields: Key, notes: list[Fault]) -> list[Group]:
    """Return the lines in groups of one thing each, in the order of their first line.

    Equal lines count once, which is noted; lines that complete each other are put together; lines
    that contradict each other are refused.
    """
    by_key: dict[Key, list[Line]] = defaultdict(list)
    for line in lines:
        by_key[key_of(line.said, fields)].append(line)
    return [_group(key, tuple(same), notes) for key, same in by_key.items()]


def _group(key: Key, lines: tuple[Line, ...], notes: list[Fault]) -> Group:
    if len(lines) == 1:
        return Group(key, lines, lines[0].said)
    said: dict[str, Value] = {}
    for line in lines:
        clashing = [f for f, v in line.said.items() if _clash(said.get(f, Said.BLANK), v)]
        if clashing:
            _contradict(line, lines, clashing)
        elif said and all(f in said for f in line.said):
            notes.append(_twice(line, lines[0]))
        said |= {f: v for f, v in line.said.items() if f not in said or said[f] is Said.UNKNOWN}
    return Group(key, lines, said)


def _clash(one: Value, other: Value) -> bool:
    return one != other and not isinstance(one, Said) and not isinstance(other, Said)


def _twice(line: Line, first: Line) -> Fault:
    said = words("intake-twice", sheet=first.of.name, row=str(first.row))
    return Fault("note", line.spot(), said, account=line.account)


def _contradict(line: Line, lines: Sequence[Line], fields: list[str]) -> None:
    """Refuse a line, and the earlier ones it contradicts, each with the other's value."""
    for field in fields:
        for other in lines[: lines.index(line)]:
            if _clash(other.said.get(field, Said.BLANK), line.said[field]):
                for this, that in ((line, other), (other, line)):
                    this.refuse(_contradiction(this, that, field), field)


def _contradiction(this: Line, that: Line, field: str) -> BadCell:
    said = words(
        "intake-contradicts",
        sheet=that.of.name,
        row=str(that.row),
        here=shown(this.raw(field)),
        there=shown(that.raw(field)),
    )
    return BadCell(said, words("intake-contradicts-remedy"))


def _values(said: SaidOf, columns: Mapping[str, Column]) -> dict[str, Any]:
    """Return what cells say as a record's fields; BadField when one must not be unknown."""
    values: dict[str, Any] = {}
    for name, value in said.items():
        column = columns.get(name)
        if column is None:
            continue
        if value is Said.UNKNOWN and not column.may_be_unknown:
            remedy = words("intake-must-be-known-remedy")
            raise BadField(name, BadCell(words("intake-must-be-known"), remedy))
        values[name] = None if value is Said.UNKNOWN else value
    return values


class BadField(ValueError):
    """Raised when a record cannot be made; ``field`` is the one to blame, "" for none alone."""

    def __init__(self, field: str, cell: BadCell) -> None:
        super().__init__(field)
        self.field = field
        self.cell = cell


def made(model: type[M], said: SaidOf, base: M | None, sheet: Sheet, **more: object) -> M:
    """Return a record (or part) of what cells say, over ``base`` where they say nothing.

    ``more`` are fields that come from elsewhere. BadField names the field that cannot be.
    """
    known = {name: getattr(base, name) for name in model.model_fields} if base else {}
    values = known | _values(said, _COLUMNS[sheet.name]) | more
    try:
        return model.model_validate(values)
    except ValidationError as error:
        first = error.errors(include_url=False)[0]
        field = str(first["loc"][0]) if first["loc"] else ""
        kind = first["type"]
        if kind == "too_long" and isinstance(first["input"], str):
            kind = "string_too_long"
        raise BadField(field, _bad_value(kind, first.get("ctx") or {}, field)) from error


def _bad_value(kind: str, context: Mapping[str, Any], field: str) -> BadCell:
    if kind == "missing":
        said = words("intake-required", column=field_label(field))
        return BadCell(said, words("intake-required-remedy"))
    if kind in _BOUNDS:
        bound = str(context.get(_BOUNDS[kind], ""))
        id = f"intake-{kind.replace('_', '-')}"
        return BadCell(words(id, bound=bound), words("intake-bound-remedy"))
    return BadCell(words("intake-not-possible"), words("intake-not-possible-remedy"))


def each_made(groups: Iterable[Group], make: Callable[[Group], M]) -> list[tuple[Group, M]]:
    """Return what could be made of the good groups; a group that cannot be is refused."""
    found: list[tuple[Group, M]] = []
    for group in groups:
        if any(line.is_bad for line in group.lines):
            continue
        try:
            found.append((group, make(group)))
        except BadField as error:
            group.saying(error.field).refuse(error.cell, error.field)
    return found
