"""What a returned form is read into: its questions and answers, and the changes they propose."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date
from typing import Literal

from quarterday.core.file.fold import File
from quarterday.core.file.layout import Column
from quarterday.core.reference import Reference
from quarterday.core.words import Words
from quarterday.intake.cells import BadCell, Readings, Value, read_column
from quarterday.intake.forms.edits import AnyEdit, Held
from quarterday.intake.forms.recognise import Given, Stamp

Status = Literal["change", "clash", "asks", "refused"]


@dataclass(frozen=True, slots=True)
class Asked:
    """A question as a form put it: its field, label, what was printed in, and the choices."""

    form: str
    name: str
    parts: tuple[str, ...]
    label: str
    printed: str = ""
    options: tuple[tuple[str, str], ...] = ()

    def id_of(self, text: str) -> str:
        """Return what is stored for a choice that a program wrote as it is shown."""
        shown = [id for id, label in self.options if label == text]
        is_id = any(id == text for id, _ in self.options)
        return shown[0] if len(shown) == 1 and not is_id else text


@dataclass(frozen=True, slots=True)
class Confirmed:
    """Who says that they filled a form in, and when."""

    by: str = ""
    role: str = ""
    on: date | None = None


@dataclass(frozen=True, slots=True)
class Proposal:
    """One answer beside the facts: what the form was printed with, what stands today, what it says.

    ``edit`` None: it cannot be taken as it is. ``needs`` names the proposal it hangs on.
    """

    name: str
    form: str
    label: str
    kind: str
    key: str
    field: str
    was: Held
    now: Held
    said: Held
    status: Status = "change"
    why: Words | None = None
    edit: AnyEdit | None = None
    needs: str = ""
    is_unread: bool = False  # the form holds an answer that cannot be relied on


@dataclass(frozen=True, slots=True)
class Context:
    """A form at hand: its answers and questions, the file when it was printed and as it stands."""

    stamp: Stamp
    answers: Mapping[str, Given] = field(repr=False)
    asked: Mapping[str, Asked] = field(repr=False)
    then: File = field(repr=False)
    now: File = field(repr=False)
    reference: Reference = field(repr=False)
    day: date

    @property
    def is_lapsed(self) -> bool:
        """Whether the form belongs to another renewal than the one that is coming."""
        return self.stamp.renewal != self.now.renewal

    def text(self, name: str) -> str:
        """Return what a field holds; nothing when it is not there or cannot be read."""
        found = self.answers.get(name)
        return (found.text or "") if found else ""


def read_one(
    kind: str, column: Column, text: str, language: str
) -> tuple[Value | BadCell, Readings]:
    """Return what one answer says as a column of a kind of record reads it, and in which ways."""
    seen = Readings()
    (value,) = read_column(kind, column, [text], language, seen)
    return value, seen
