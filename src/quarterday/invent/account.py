"""An invented account: its id and the records of its file."""

from __future__ import annotations

from typing import NamedTuple

from quarterday.core.file.records import Record


class Account(NamedTuple):
    """One organisation's id in the book and what its file holds, in the order it is read."""

    id: str
    records: tuple[Record, ...]
