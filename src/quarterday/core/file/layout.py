"""The workbook's layout: which sheet and column holds which field of which record.

The layout is derived from the record types, so a field that is added has its column. Intake reads
by it, the invented book and the exports write by it, and the published schema is made from it.
"""

from __future__ import annotations

import re
import types
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from typing import Annotated, Any, Literal, Union, get_args, get_origin, get_type_hints

from pydantic import BaseModel

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
from quarterday.core.file.records.base import Amount
from quarterday.core.file.records.terms import Coverage, Option, Premium, SharedLimit, StatedTotal

CellKind = Literal[
    "text", "amount", "number", "integer", "ratio", "date", "month-day", "yes-no", "choice", "list"
]
Refers = Literal["", "coverage", "cause", "building", "contact", "province", "total"]
Cell = str | Decimal | int | date | bool | None
ACCOUNT = "account"
TERMS_KEY = ("start", "stage")
LIST_MARK = "; "
EMPTY_LIST = "none"


@dataclass(frozen=True, slots=True)
class Column:
    """A column: its heading, the field it fills, what its cells hold, and whether it must be.

    ``refers`` says what the ids in its cells name (``total``: a coverage or a building, as the
    row's ``of`` says); ``may_be_unknown`` whether the field can hold "not known".
    """

    heading: str
    field: str
    kind: CellKind
    required: bool = False
    choices: tuple[str, ...] = ()
    refers: Refers = ""
    may_be_unknown: bool = False


@dataclass(frozen=True, slots=True)
class Sheet:
    """A sheet: its name, the record it holds, and the part of that record when not the whole.

    A sheet of a part (coverages, premiums, totals, options of terms) names the account and the
    ``start`` and ``stage`` of the terms its rows belong to.
    """

    name: str
    record: type[Record]
    columns: tuple[Column, ...]
    part: str | None = None

    @property
    def model(self) -> type[BaseModel]:
        """What one row holds: the record, or one line of its part."""
        return _PARTS[self.part][1] if self.part else self.record

    @property
    def by_heading(self) -> Mapping[str, Column]:
        """The columns by heading."""
        return {column.heading: column for column in self.columns}


def _bare(hint: Any) -> Any:  # noqa: ANN401 - a type hint has no narrower type
    """Return a type hint without Annotated and without None."""
    if get_origin(hint) is Annotated:
        return _bare(get_args(hint)[0])
    if get_origin(hint) in (Union, types.UnionType):
        return _bare(next(a for a in get_args(hint) if a is not type(None)))
    return hint


_KINDS: dict[Any, CellKind] = {bool: "yes-no", date: "date", int: "integer", str: "text"}
_KINDS_BY_FIELD: dict[str, CellKind] = {
    "deductible_percent": "ratio",
    "coinsurance": "ratio",
    "automatic_increase": "ratio",
    "margin": "ratio",
    "monthly_limit": "ratio",
    "coinsurance_waived_share": "ratio",
    "portion": "ratio",
    "income_growth": "ratio",
    "premises_share": "ratio",
    "giving_kept": "ratio",
    "payroll_kept": "ratio",
    "fiscal_year_end": "month-day",
}
_REFERS: dict[str, Refers] = {
    "coverage": "coverage",
    "sublimit_of": "coverage",
    "tops_up": "coverage",
    "attaches_to": "coverage",
    "cause": "cause",
    "excluded_causes": "cause",
    "building": "building",
    "location": "building",
    "contact": "contact",
    "province": "province",
}


def _kind(hint: Any) -> CellKind:  # noqa: ANN401 - a type hint has no narrower type
    bare = _bare(hint)
    if get_origin(bare) is Literal:
        return "choice"
    if get_origin(bare) is tuple:
        return "list"
    if bare is Decimal:
        return "amount" if Amount in (hint, *get_args(hint)) else "number"
    return _KINDS[bare]


def _column(model: type[BaseModel], field: str, prefix: str = "") -> Column:
    hint = get_type_hints(model, include_extras=True)[field]
    bare = _bare(hint)
    inner = _bare(get_args(bare)[0]) if get_origin(bare) is tuple else bare
    return Column(
        heading=f"{prefix}{field}".replace("_", " "),
        field=f"{prefix}{field}",
        kind=_KINDS_BY_FIELD.get(field) or _kind(hint),
        required=model.model_fields[field].is_required() and not prefix,
        choices=get_args(inner) if get_origin(inner) is Literal else (),
        refers="total" if (model, field) == (StatedTotal, "id") else _REFERS.get(field, ""),
        may_be_unknown=bool(prefix) or _takes_none(hint),
    )


def _takes_none(hint: Any) -> bool:  # noqa: ANN401 - a type hint has no narrower type
    if get_origin(hint) is Annotated:
        return _takes_none(get_args(hint)[0])
    return type(None) in get_args(hint)


def _columns(model: type[BaseModel], leave_out: tuple[str, ...] = ()) -> tuple[Column, ...]:
    fields = (field for field in model.model_fields if field not in leave_out)
    return tuple(_column(model, field) for field in fields)


_ACCOUNT = Column(ACCOUNT, ACCOUNT, "text", required=True)
_OF_TERMS = (_ACCOUNT, *(_column(Terms, field) for field in TERMS_KEY))
_PARTS: dict[str, tuple[str, type[BaseModel]]] = {
    "coverages": ("Coverages", Coverage),
    "premiums": ("Premiums", Premium),
    "totals": ("Totals", StatedTotal),
    "options": ("Options", Option),
}
_SHARED = tuple(_column(SharedLimit, f, "shared_limit_") for f in SharedLimit.model_fields)


def _whole(name: str, record: type[Record]) -> Sheet:
    return Sheet(name, record, (_ACCOUNT, *_columns(record)))


SHEETS: tuple[Sheet, ...] = (
    _whole("Organisations", Organisation),
    _whole("Contacts", Contact),
    _whole("Authorities", Authority),
    _whole("Operations", Operations),
    _whole("Buildings", Building),
    _whole("Valuations", Valuation),
    Sheet("Terms", Terms, (_ACCOUNT, *_columns(Terms, (*_PARTS, "shared_limit")), *_SHARED)),
    *(
        Sheet(name, Terms, (*_OF_TERMS, *_columns(model)), part)
        for part, (name, model) in _PARTS.items()
    ),
    _whole("Claims", Claim),
    _whole("Interests", Interest),
    _whole("Allocation", AllocationKey),
)
Row = dict[str, Cell]


def joined(items: Iterable[str]) -> str:
    """Return a list as one cell's text; what would be read as a mark or as none is escaped."""
    text = LIST_MARK.join(re.sub(r"([\\;])", r"\\\1", item) for item in items)
    return f"\\{text}" if text.casefold() == EMPTY_LIST else text


def split(text: str) -> tuple[str, ...]:
    """Return the items of a list written in one cell: at semicolons and line ends."""
    parts = re.findall(r"(?:\\.|[^\\;\n]|\\$)+", text)
    items = (re.sub(r"\\(.)", r"\1", part).strip() for part in parts)
    return tuple(item for item in items if item)


def _cells(part: BaseModel, columns: tuple[Column, ...], prefix: str = "") -> Row:
    values = {f"{prefix}{name}": getattr(part, name) for name in type(part).model_fields}
    return {c.heading: _shown(values[c.field], c) for c in columns if c.field in values}


def _shown(value: Any, column: Column) -> Cell:  # noqa: ANN401 - a field may hold any cell
    if not isinstance(value, tuple):
        return value  # type: ignore[no-any-return]
    return joined(value) or (EMPTY_LIST if column.may_be_unknown else "")


def rows(account: str, record: Record) -> Iterator[tuple[Sheet, Row]]:
    """Yield the rows that hold ``record``: one, and for terms one for each of their parts."""
    for sheet in SHEETS:
        if sheet.record is not type(record):
            continue
        if sheet.part is None:
            shared = getattr(record, "shared_limit", None)
            extra = _cells(shared, sheet.columns, "shared_limit_") if shared else {}
            yield sheet, {ACCOUNT: account, **_cells(record, sheet.columns), **extra}
        else:
            of_terms = {f: getattr(record, f) for f in TERMS_KEY}
            for part in getattr(record, sheet.part):
                yield sheet, {ACCOUNT: account, **of_terms, **_cells(part, sheet.columns)}
