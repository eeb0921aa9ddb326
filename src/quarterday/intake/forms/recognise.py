"""Recognise a returned form by the two fields nobody sees, or by its printed words."""

from __future__ import annotations

import re
from collections import defaultdict
from collections.abc import Collection, Iterable, Mapping
from dataclasses import dataclass, field, replace
from datetime import date
from typing import Literal

from pydantic import BaseModel, ConfigDict, Field, ValidationError

from quarterday.core.file.page_code import PageCode
from quarterday.core.file.records.base import unkeepable
from quarterday.core.words import Words, words
from quarterday.intake.forms.mapping import AREAS, CONFIRMED
from quarterday.intake.forms.peek import Cell, Looked
from quarterday.intake.forms.printed import printed_codes
from quarterday.intake.refusals import Unreadable

FORM, RECORD = "_form", "_record"
OFF = "Off"
_AGAIN = re.compile(r"\+(\d+)$")  # what joining two documents puts behind a name that both have


class Stamp(BaseModel):
    """What a form says of itself: of which package it is, and how far the file went then."""

    model_config = ConfigDict(frozen=True, extra="forbid")

    file: str = Field(min_length=1, max_length=80)
    renewal: date
    language: Literal["en", "fr"]
    version: int = Field(ge=1)
    seq: int = Field(ge=1)


@dataclass(frozen=True, slots=True)
class Given:
    """What a field holds: its text, or why there is none that can be relied on; and where it is."""

    text: str | None
    why: Words | None = None
    at: tuple[Cell, ...] = field(default=(), compare=False, repr=False)


@dataclass(frozen=True, slots=True)
class Returned:
    """The forms of one package that came home, and what stands in each field that has a place.

    ``answers`` are by the field's name as the package gave it.
    """

    looked: Looked
    stamp: Stamp
    forms: tuple[str, ...]
    answers: Mapping[str, Given] = field(repr=False)


@dataclass(frozen=True, slots=True)
class Flat:
    """A document without fields: scanned or flattened, with what its pages give away, if anything.

    ``codes`` are the printed codes by page; without one, ``files`` and ``forms`` are what its words
    name.
    """

    looked: Looked
    files: tuple[str, ...]
    forms: tuple[str, ...]
    codes: Mapping[int, PageCode] = field(default_factory=dict)

    @property
    def stamp(self) -> Stamp | None:
        """Of which package the codes say the pages are; None without codes, or when of several."""
        codes = self.codes.values()
        told = {(c.file, c.renewal, c.language, c.version, c.seq) for c in codes}
        if len(told) != 1:
            return None
        names = ("file", "renewal", "language", "version", "seq")
        try:
            return Stamp.model_validate(dict(zip(names, told.pop(), strict=True)))
        except ValidationError:
            return None


@dataclass(frozen=True, slots=True)
class Unstamped:
    """Pages that lost the fields nobody sees; the feet of the pages say whose they are."""

    looked: Looked
    files: tuple[str, ...]
    forms: tuple[str, ...]
    answers: Mapping[str, Given] = field(repr=False)

    def stamped(self, stamp: Stamp, forms: tuple[str, ...]) -> Returned:
        """Return the pages as ``forms`` of the package that their feet name."""
        return Returned(self.looked, stamp, forms, self.answers)


def recognise(
    looked: Looked, titles: Mapping[str, Iterable[str]], files: Collection[str]
) -> tuple[Returned, ...] | Unstamped | Flat:
    """Return the forms in a document; Flat when it has no fields to read.

    ``titles`` are the printed titles of each form, ``files`` the ids of the book. Unreadable when a
    document has fields and is none of ours.
    """
    groups = _groups(looked.cells)
    stamped = {n: cells for n, cells in groups.items() if RECORD in cells}
    if stamped:
        return tuple(_returned(looked, cells) for _, cells in sorted(stamped.items()))
    if any(cell.shown and cell.kind != "Sig" for cell in looked.cells):
        return _unstamped(looked, groups, files)
    return _flat(looked, titles, files)


def _unstamped(
    looked: Looked, groups: Mapping[int, Mapping[str, list[Cell]]], files: Collection[str]
) -> Unstamped:
    parts = [_shown(cells) for cells in groups.values()]  # taken out page by page, each has a part
    answers = {name: one for part in parts for name, one in part.items()}
    forms = tuple(dict.fromkeys(filter(None, map(_form_of, answers))))
    if not forms:
        raise Unreadable("returns-not-ours", name=looked.name)
    found = _files(looked, files)
    if len(answers) < sum(map(len, parts)) or len(found) > 1:
        raise Unreadable("returns-several", name=looked.name)
    return Unstamped(looked, found, forms, answers)


def _form_of(name: str) -> str | None:
    first, _, rest = name.partition(".")
    if rest.startswith(f"{CONFIRMED}."):
        return first if first in {area.form for area in AREAS.values()} else None
    return AREAS[first].form if first in AREAS else None


def _groups(cells: Iterable[Cell]) -> dict[int, dict[str, list[Cell]]]:
    """Return the fields of each document that was joined into this one, by name."""
    found: dict[int, dict[str, list[Cell]]] = defaultdict(lambda: defaultdict(list))
    for cell in cells:
        first, dot, rest = cell.name.partition(".")
        again = _AGAIN.search(first)
        plain = first[: again.start()] if again else first
        found[int(again[1]) if again else 0][plain + dot + rest].append(cell)
    return found


def _returned(looked: Looked, cells: Mapping[str, list[Cell]]) -> Returned:
    try:
        stamp = Stamp.model_validate_json(_hidden(cells[RECORD]))
    except ValidationError:
        raise Unreadable("returns-bad-stamp", name=looked.name) from None
    forms = tuple(_hidden(cells.get(FORM, [])).split())
    return Returned(looked, stamp, forms, _shown(cells))


def _shown(cells: Mapping[str, list[Cell]]) -> dict[str, Given]:
    shown = {name: [c for c in of if c.shown] for name, of in cells.items()}
    return {name: replace(given(of), at=tuple(of)) for name, of in shown.items() if of}


def _hidden(cells: Iterable[Cell]) -> str:
    values = {cell.value for cell in cells}
    return (values.pop() or "") if len(values) == 1 else ""


def given(cells: list[Cell]) -> Given:
    """Return what a field holds, from every place it has on a page."""
    values = {cell.value for cell in cells}
    longest = max(cell.size for cell in cells)
    if None in values:
        id = "returns-field-too-long" if longest else "returns-field-odd"
        return Given(None, words(id, n=longest))
    if cells[0].kind == "Btn":
        return _switch(cells)
    if len(values) > 1:
        return Given(None, words("returns-field-twice"))
    return said(values.pop() or "")


def said(text: str) -> Given:
    """Return an answer in words; without its text when it holds what no record can keep."""
    lines = text.replace("\r\n", "\n").replace("\r", "\n").strip()
    odd = unkeepable(lines)
    return Given(None, words("returns-field-character", character=odd)) if odd else Given(lines)


def _switch(cells: list[Cell]) -> Given:
    """Return the choice of a switch; none when it shows something else than it holds."""
    held = {cell.value or "" for cell in cells} - {OFF, ""}
    states = {cell.state for cell in cells} - {None}
    on = {state for state in states if state} - {OFF}
    if len(held) > 1 or (states and held != on):
        return Given(None, words("returns-field-split"))
    return said(held.pop() if held else "")


def _flat(looked: Looked, titles: Mapping[str, Iterable[str]], files: Collection[str]) -> Flat:
    codes = printed_codes(looked)
    if codes:
        of = dict.fromkeys(code.file for code in codes.values())
        on = dict.fromkeys(code.form for code in codes.values())
        return Flat(looked, tuple(of), tuple(on), codes)
    text = " ".join(looked.text.split())
    forms = tuple(id for id, named in titles.items() if any(t in text for t in named))
    return Flat(looked, _files(looked, files), forms)


def _files(looked: Looked, files: Collection[str]) -> tuple[str, ...]:
    found = {word.strip(".,;:·()") for word in looked.text.split()} & set(files)
    return tuple(sorted(found))
