"""A record as a form: its fields as text, and what somebody typed as a record again.

The fields are the workbook's columns, and the same strict readers read them: an amount that could
be two amounts is refused, not guessed. An empty field means "not known".
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from typing import Any

from pydantic import BaseModel

from quarterday.core.file.fold import File
from quarterday.core.file.layout import (
    ACCOUNT,
    EMPTY_LIST,
    SHEETS,
    TERMS_KEY,
    Column,
    Sheet,
    joined,
)
from quarterday.core.file.records import Building, Contact, Record, Terms
from quarterday.core.file.records.terms import EVERYWHERE, SharedLimit
from quarterday.core.reference import Reference
from quarterday.core.words import Term, Words, words
from quarterday.intake.assemble import KEYS, BadField, made
from quarterday.intake.cells import BadCell, Readings, Said, Value, read_column
from quarterday.intake.cells.answers import marked
from quarterday.intake.labels import choice, field_label

SHARED = "shared_limit_"
NO_FIELD = ""
Choice = tuple[str, Words | Term | str]


@dataclass(frozen=True, slots=True)
class Field:
    """A field of a form: its column, its text, what may be chosen, and what is wrong with it."""

    column: Column
    label: Words
    text: str
    choices: tuple[Choice, ...] = ()
    fault: BadCell | None = None
    is_fixed: bool = False  # it names the record, and stays while the record does

    @property
    def name(self) -> str:
        """The field's name in the record."""
        return self.column.field

    @property
    def is_other(self) -> bool:
        """Whether the text is none of what may be chosen, such as a building that is gone."""
        return bool(self.text) and all(id != self.text for id, _ in self.choices)


@dataclass(frozen=True, slots=True)
class Typed:
    """What somebody typed into a form: the record it makes, or what is wrong field by field."""

    record: Record | None
    faults: Mapping[str, BadCell]


def sheet_of(kind: str, part: str = "") -> Sheet | None:
    """Return the layout's sheet of a kind of record, or of a part of it; None when it has none."""
    found = (s for s in SHEETS if (s.record.kind, s.part or "") == (kind, part))
    return next(found, None)


def columns(sheet: Sheet) -> tuple[Column, ...]:
    """Return the columns that a form shows: all but the account and the terms a part is of."""
    left_out = {ACCOUNT, *(TERMS_KEY if sheet.part else ())}
    return tuple(column for column in sheet.columns if column.field not in left_out)


def texts(held: BaseModel | None, sheet: Sheet, language: str) -> dict[str, str]:
    """Return a record's (or a part's) fields as the text that reads back as the same record."""
    shared = getattr(held, "shared_limit", None)
    found = {}
    for column in columns(sheet):
        source, name = held, column.field
        if name.startswith(SHARED):
            source, name = shared, name.removeprefix(SHARED)
        value = getattr(source, name) if source is not None else None
        found[column.field] = _text(value, column, language)
    return found


def _text(value: Any, column: Column, language: str) -> str:  # noqa: ANN401 - a field may hold any
    if value is None:
        return ""
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, Decimal):
        return _number(value, language)
    if isinstance(value, tuple):
        return _list(value, column)
    return value.isoformat() if isinstance(value, date) else marked(str(value), column.kind)


def _list(items: tuple[str, ...], column: Column) -> str:
    """Return a list; an empty one is written as such where a field can also be not known."""
    if not items:
        return EMPTY_LIST if column.may_be_unknown else ""
    return marked(joined(items), column.kind)


def _number(value: Decimal, language: str) -> str:
    """Return a number without groups, with its language's decimal mark."""
    return f"{value:f}".replace(".", ",") if language == "fr" else f"{value:f}"


def fields(
    sheet: Sheet,
    said: Mapping[str, str],
    file: File,
    reference: Reference,
    *,
    faults: Mapping[str, BadCell] | None = None,
    is_new: bool = False,
) -> tuple[Field, ...]:
    """Return a form's fields with their texts, choices and faults."""
    fixed = () if is_new or sheet.part else KEYS[sheet.record]
    return tuple(
        Field(
            column,
            field_label(column.field, sheet.record.kind),
            said.get(column.field, ""),
            _choices(column, sheet.record.kind, file, reference),
            (faults or {}).get(column.field),
            column.field in fixed,
        )
        for column in columns(sheet)
    )


def _choices(column: Column, kind: str, file: File, reference: Reference) -> tuple[Choice, ...]:
    if column.kind == "yes-no":
        return ("yes", words("yes")), ("no", words("no"))
    if column.kind == "list":
        return ()
    if column.choices:
        return tuple((id, choice(kind, column.field, id)) for id in column.choices)
    return _named(column.refers, kind, file, reference)


def _named(refers: str, kind: str, file: File, reference: Reference) -> tuple[Choice, ...]:
    """Return what a field that names something may name."""
    known: Mapping[str, Mapping[str, object]] = {
        "coverage": reference.coverages,
        "cause": reference.causes,
        "province": reference.provinces,
    }
    if refers in known:
        return tuple((id, Term(refers, id)) for id in known[refers])
    if refers == "contact":
        return tuple((contact.id, contact.name) for contact in file.all(Contact))
    if refers != "building":
        return ()
    own = tuple((building.id, building.name) for building in file.all(Building))
    return ((EVERYWHERE, words("everywhere")), *own) if kind == "terms" else own


def typed(
    sheet: Sheet, said: Mapping[str, str], language: str, base: Record | None = None
) -> Typed:  # fmt: skip
    """Return the record that the texts of a form make.

    For terms, ``base`` gives the parts that the form does not show.
    """
    values, faults = _read(sheet, said, language)
    if faults:
        return Typed(None, faults)
    try:
        return Typed(_record(sheet, values, base), {})
    except BadField as bad:
        return Typed(None, {bad.field: bad.cell})


def _read(
    sheet: Sheet, said: Mapping[str, str], language: str
) -> tuple[dict[str, Value], dict[str, BadCell]]:
    values: dict[str, Value] = {}
    faults: dict[str, BadCell] = {}
    for column in columns(sheet):
        text = said.get(column.field, "")
        (value,) = read_column(sheet.record.kind, column, [text], language, Readings())
        if isinstance(value, BadCell):
            faults[column.field] = value
        elif isinstance(value, Said):
            if column.required:
                named = words("intake-required", column=field_label(column.field))
                faults[column.field] = BadCell(named, words("intake-required-remedy"))
        else:
            values[column.field] = value
    return values, faults


def _record(sheet: Sheet, values: Mapping[str, Value], base: Record | None) -> Record:
    own = {name: value for name, value in values.items() if not name.startswith(SHARED)}
    if sheet.record is not Terms:
        return made(sheet.record, own, None, sheet)
    held = base if isinstance(base, Terms) else None
    parts = {name: getattr(held, name, ()) for name in ("coverages", "premiums", "totals",
                                                        "options")}  # fmt: skip
    return made(Terms, own, None, sheet, **parts, shared_limit=_shared(values))


def _shared(values: Mapping[str, Value]) -> SharedLimit | None:
    own = {n.removeprefix(SHARED): v for n, v in values.items() if n.startswith(SHARED)}
    if not own:
        return None
    for must in ("amount", "tops_up"):
        if must not in own:
            named = words("intake-required", column=field_label(f"{SHARED}{must}"))
            cell = BadCell(named, words("intake-required-remedy"))
            raise BadField(f"{SHARED}{must}", cell)
    return SharedLimit.model_validate(own)


def typed_part(
    terms: Terms, sheet: Sheet, number: int | None, said: Mapping[str, str], language: str
) -> Typed:
    """Return the terms with line ``number`` of a part as typed; None adds a line at the end."""
    values, faults = _read(sheet, said, language)
    if faults:
        return Typed(None, faults)
    try:
        line = made(sheet.model, values, None, sheet)
    except BadField as bad:
        return Typed(None, {bad.field: bad.cell})
    return Typed(_with(terms, sheet, _placed(part_of(terms, sheet), number, line)), {})


def without(terms: Terms, sheet: Sheet, number: int) -> Terms:
    """Return the terms without line ``number`` of a part."""
    lines = part_of(terms, sheet)
    return _with(terms, sheet, [*lines[:number], *lines[number + 1 :]])


def part_of(terms: Terms, sheet: Sheet) -> tuple[BaseModel, ...]:
    """Return the lines of a part, in the order of the terms."""
    found: tuple[BaseModel, ...] = getattr(terms, str(sheet.part))
    return found


def _placed(
    lines: Sequence[BaseModel], number: int | None, line: BaseModel
) -> Iterable[BaseModel]:  # fmt: skip
    if number is None:
        return [*lines, line]
    return [*lines[:number], line, *lines[number + 1 :]]


def _with(terms: Terms, sheet: Sheet, lines: Iterable[BaseModel]) -> Terms:
    return Terms.model_validate({**dict(terms), str(sheet.part): tuple(lines)})
