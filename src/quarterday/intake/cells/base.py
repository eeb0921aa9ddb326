"""What a cell can say, and how a cell that cannot be read is told."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Callable
from dataclasses import dataclass, field
from datetime import date
from decimal import Decimal
from enum import Enum

from quarterday.core.words import Arg, Term, Words, words
from quarterday.intake.parse import CellError, Raw
from quarterday.intake.vocabulary import marks_for

_INVISIBLE = "\u200b\u2060\ufeff"
_SPACES = re.compile(r"[\u00a0\u2000-\u200a\u202f\u205f\u3000]")


class Said(Enum):
    """What a cell without a value says: nothing at all, or that it is not known."""

    BLANK = "blank"
    UNKNOWN = "unknown"


Value = str | Decimal | int | date | bool | tuple[str, ...] | Said
Read = Callable[[Raw], Value]


class BadCell(ValueError):
    """Raised for a cell that cannot be read: ``what`` is wrong, and the ``remedy``."""

    def __init__(self, what: Words, remedy: Words) -> None:
        super().__init__(what.id)
        self.what = what
        self.remedy = remedy


def bad(id: str, **args: Arg | tuple[Arg | Words, ...]) -> BadCell:
    """Return a bad cell with the wordings ``intake-{id}`` and ``intake-{id}-remedy``."""
    return BadCell(words(f"intake-{id}", **args), words(f"intake-{id}-remedy", **args))


@dataclass(slots=True)
class Readings:
    """How many cells of a column were read in a way that a person should know of.

    ``times`` is how many cells hold the value that is being read; ``ways`` are sentences of their
    own, ``choices`` the choices that other words were taken for.
    """

    times: int = 1
    ways: Counter[Words] = field(default_factory=Counter)
    choices: Counter[tuple[str, Term]] = field(default_factory=Counter)

    def add(self, id: str) -> None:
        """Count a reading, told by the wording ``intake-read-{id}``."""
        self.ways[words(f"intake-read-{id}")] += self.times

    def choice(self, said: str, taken_for: Term) -> None:
        """Count a choice that was written in other words."""
        self.choices[said, taken_for] += self.times


def plain_spaces(text: str) -> str:
    """Return ``text`` with every kind of space made plain, and trimmed."""
    return _SPACES.sub(" ", text).strip().strip(_INVISIBLE).strip()


def is_unknown(text: str) -> bool:
    """Tell whether a text says that something is not known (N/A, n/d, -)."""
    return text.casefold() in marks_for("unknown")


def text_of(raw: Raw) -> str:
    """Return a cell as trimmed text; BadCell for a cell that shows an error."""
    if isinstance(raw, CellError):
        raise bad(raw.why, code=raw.code)
    return plain_spaces(raw) if isinstance(raw, str) else str(raw)
