"""What is wrong with reference data, in sentences a person can act on."""

from __future__ import annotations

from collections.abc import Iterable

from pydantic import ValidationError
from pydantic_core import ErrorDetails


class BadReference(ValueError):
    """Raised when reference data cannot be used; ``problems`` holds one sentence for each fault."""

    def __init__(self, problems: Iterable[str]) -> None:
        self.problems = tuple(problems)
        super().__init__("\n".join(self.problems))


def _place(location: tuple[int | str, ...]) -> str:
    parts = (f"{part + 1}" if isinstance(part, int) else part for part in location)
    return ".".join(parts) or "the whole entry"


def _follows(fault: ErrorDetails, faults: Iterable[ErrorDetails]) -> bool:
    """Tell whether a list is too short only because its items are faulty."""
    here = fault["loc"]
    inside = (f["loc"] for f in faults if len(f["loc"]) > len(here))
    return fault["type"] == "too_short" and any(loc[: len(here)] == here for loc in inside)


def _said(fault: ErrorDetails) -> str:
    return fault["msg"].removeprefix("Value error, ")  # what pydantic puts before our own words


def sentences(file: str, entry: str, error: ValidationError) -> tuple[str, ...]:
    """Return one sentence for each fault of ``error``, naming the file, the entry and the field.

    A number within the field's name counts from one: ``values.1.since`` is the first value.
    """
    faults = error.errors()
    return tuple(
        f"{file}, entry {entry}, field {_place(fault['loc'])}: {_said(fault)}."
        for fault in faults
        if not _follows(fault, faults)
    )
