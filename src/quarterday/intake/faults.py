"""What can be wrong with a workbook, and where."""

from __future__ import annotations

import unicodedata
from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime, time, timedelta
from typing import Literal

from quarterday.core.words import Words

Severity = Literal["refused", "asks", "note"]
READ_AS = "intake-read-as"  # told once a column, not once a row
_LONGEST_SHOWN = 60


@dataclass(frozen=True, slots=True)
class Spot:
    """A place in a workbook: row and column number count from 1; None means all of them."""

    sheet: str
    row: int | None = None
    column: int | None = None
    heading: str = ""


@dataclass(frozen=True, slots=True)
class Fault:
    """What is wrong at a spot, and the remedy.

    ``refused`` rows are left out; what ``asks`` goes on only when a person accepts; a ``note`` says
    what was done or left alone.
    """

    severity: Severity
    spot: Spot
    what: Words
    remedy: Words | None = None
    value: str = ""
    account: str = ""


def refused(faults: Iterable[Fault]) -> tuple[Fault, ...]:
    """Return the faults that leave rows out."""
    return tuple(fault for fault in faults if fault.severity == "refused")


def shown(value: object) -> str:
    """Return a cell's value as it can be printed: short, on one line, without odd characters."""
    text = " ".join(_plain(value).split(" "))
    safe = "".join(_safe(c) for c in text[: _LONGEST_SHOWN + 1])
    return safe if len(text) <= _LONGEST_SHOWN else f"{safe[:_LONGEST_SHOWN]}…"


def _plain(value: object) -> str:
    """Return a value as a spreadsheet would show it; a zero that is formatted as a day is 0."""
    match value:
        case float():
            return f"{value:.0f}" if value.is_integer() else f"{value:.15g}"
        case time() | timedelta():
            return "0" if value in {time(0), timedelta(0)} else str(value)
        case datetime():
            return value.isoformat(" ")
        case _:
            return str(value)


def _safe(character: str) -> str:
    odd = unicodedata.category(character) in {"Cc", "Cf", "Cs", "Co", "Cn", "Zl", "Zp"}
    return f"U+{ord(character):04X}" if odd else character
