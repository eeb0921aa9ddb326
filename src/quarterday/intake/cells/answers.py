"""Texts, yes and no, choices and lists as people write them."""

from __future__ import annotations

import re
import unicodedata
from datetime import date, time, timedelta

from rapidfuzz import fuzz, process

from quarterday.core.file.layout import EMPTY_LIST, CellKind, Column, split
from quarterday.core.words import Words, words
from quarterday.intake.cells.base import Readings, Said, Value, bad, is_unknown, text_of
from quarterday.intake.faults import shown
from quarterday.intake.labels import choice
from quarterday.intake.parse import Raw
from quarterday.intake.vocabulary import choices, marks_for, normal, words_for

ALIKE = 88
_CONTROLS = re.compile(r"[\x00-\x08\x0b-\x1f\x7f-\x9f\ud800-\udfff]")
_CARRIAGE = re.compile(r"\r\n?")
_GUARDED = re.compile(r"'(?=[=+\-@\t\r'])", re.DOTALL)
_IDS = frozenset({"account", "id", "number"})
_MARKS = "'\\"
_FORMULA = ("=", "+", "-", "@", "\t", "\r")


def guarded(text: str, kind: CellKind = "text") -> str:
    """Return ``text`` as it is written into a CSV cell, so that no program runs it as a formula."""
    return f"'{text}" if text.startswith(_FORMULA) else marked(text, kind)


def marked(text: str, kind: CellKind = "text") -> str:
    """Return ``text`` as it is written into a cell, so that it is read again as it stands.

    An apostrophe marks a text that would be read as "not known", a list that would be read as
    none, and what would be read as marked.
    """
    if kind not in {"text", "list"}:
        return text
    misread = is_unknown(text.strip()) or unguarded(text) != text
    is_items = kind == "list" and text != EMPTY_LIST and _is_none(text)
    return f"'{text}" if misread or is_items else text


def unguarded(text: str) -> str:
    """Return the text that a guarded or marked cell holds."""
    rest = text[1:]
    is_marked = _GUARDED.match(text) or is_unknown(rest.strip()) or _is_none(rest)
    return rest if text.startswith("'") and is_marked else text


def _is_none(text: str) -> bool:
    return normal(text) in words_for("empty_list")


def _checked_text(text: str) -> str:
    text = _CARRIAGE.sub("\n", text)
    odd = _CONTROLS.search(text)
    if odd:
        raise bad("odd-character", character=shown(odd[0]))
    return text


class TextReader:
    """Reads the cells of a column of text; a number becomes its digits, an id is tidied."""

    def __init__(self, column: Column) -> None:
        self._is_id = bool(column.refers) or column.field in _IDS

    def __call__(self, raw: Raw) -> Value:
        """Return a cell's text; BadCell for odd characters and for what a spreadsheet changed."""
        if isinstance(raw, date | time | timedelta):
            raise bad("date-for-text")
        if isinstance(raw, bool):
            return str(raw).upper()
        if isinstance(raw, int | float):
            return f"{raw:.0f}" if float(raw).is_integer() else f"{raw:.15g}"
        text = text_of(raw)
        if not text:
            return Said.BLANK
        if is_unknown(text):
            return Said.UNKNOWN
        checked = _checked_text(unguarded(str(raw).strip()))
        return unicodedata.normalize("NFC", " ".join(checked.split())) if self._is_id else checked


class YesNoReader:
    """Reads yes and no, in English, French and signs."""

    def __call__(self, raw: Raw) -> Value:
        """Return whether a cell says yes; BadCell when it says neither yes nor no."""
        if isinstance(raw, bool):
            return raw
        if isinstance(raw, int | float):
            raw = f"{raw:g}"
        text = text_of(raw)
        if not text:
            return Said.BLANK
        for answer, name in ((True, "yes"), (False, "no")):
            if text.casefold() in marks_for(name) or normal(text) in words_for(name):
                return answer
        if is_unknown(text):
            return Said.UNKNOWN
        raise bad("not-yes-no")


class ChoiceReader:
    """Reads one of a column's choices, by id, synonym or likeness."""

    def __init__(self, kind: str, column: Column, readings: Readings) -> None:
        self._names = choices(kind, column)
        self._kind = kind
        self._column = column
        self._readings = readings

    def __call__(self, raw: Raw) -> Value:
        """Return the choice a cell names; BadCell with the choices when it names none."""
        text = text_of(raw)
        if not text:
            return Said.BLANK
        if is_unknown(text) and normal(text) not in self._names:
            return "unknown" if "unknown" in self._column.choices else Said.UNKNOWN
        return self.named(text)

    def named(self, text: str) -> str:
        """Return the choice that ``text`` names; BadCell with the choices when it names none."""
        plain = normal(text)
        if plain not in self._names:
            self._names = {**self._names, plain: self._alike(text, plain)}
        found = self._names[plain]
        if plain != normal(found):
            self._readings.choice(shown(text), choice(self._kind, self._column.field, found))
        return found

    def _all(self) -> tuple[Words, ...]:
        return tuple(
            words("intake-id-and-name", code=id, name=choice(self._kind, self._column.field, id))
            for id in self._column.choices
        )

    def _alike(self, text: str, plain: str) -> str:
        near = process.extract(plain, self._names.keys(), scorer=fuzz.ratio, score_cutoff=ALIKE)
        ids = {self._names[name] for name, _, _ in near}
        if len(ids) != 1:
            raise bad("not-a-choice", said=shown(text), choices=self._all())
        return ids.pop()


class ListReader:
    """Reads several texts, ids or choices in one cell, between semicolons."""

    def __init__(self, kind: str, column: Column, readings: Readings) -> None:
        self._choice = ChoiceReader(kind, column, readings) if column.choices else None
        self._commas = bool(column.choices or column.refers)
        self._optional = column.may_be_unknown

    def __call__(self, raw: Raw) -> Value:
        """Return the items of a cell; "none" is the empty list."""
        text = text_of(raw)
        if not text:
            return Said.BLANK
        if _is_none(text) and text[0] not in _MARKS:
            return ()
        if is_unknown(text):
            return Said.UNKNOWN if self._optional else ()
        text = text.replace(",", ";") if self._commas else unguarded(str(raw).strip())
        items = split(_checked_text(text))
        return tuple(map(self._choice.named, items)) if self._choice else items
