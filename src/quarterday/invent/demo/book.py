"""Read the demo book's files into accounts."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from datetime import date
from functools import lru_cache
from pathlib import Path
from typing import Any

from quarterday.catalogue.strict import read_yaml
from quarterday.invent.account import Account
from quarterday.invent.notation.policy import Notation
from quarterday.invent.notation.records import records

AS_OF = date(2026, 11, 25)
LOSS_RUN_ON = date(2026, 10, 31)
HERE = Path(__file__).resolve().parent


@dataclass(frozen=True, slots=True)
class Tale:
    """An account's story, and what was planted in it: findings, each with how it came about."""

    id: str
    name: str
    story: str
    plants: Mapping[str, str]
    well_run: bool


def _read(file: Path) -> Any:  # noqa: ANN401 - YAML holds anything
    return read_yaml(file.read_text(encoding="utf-8"), file.name)


@lru_cache(maxsize=1)
def _accounts() -> Mapping[str, Notation]:
    """Return what the files tell, by account id, in order."""
    files = sorted((HERE / "accounts").glob("*.yaml"))
    return {told["id"]: told for told in map(_read, files)}


def tales() -> tuple[Tale, ...]:
    """Return every account's story and planted findings, in order of id."""
    return tuple(
        Tale(
            id=id,
            name=told["organisation"]["name"],
            story=told["story"],
            plants=told.get("plants", {}),
            well_run=told.get("well_run", False),
        )
        for id, told in _accounts().items()
    )


def demo_book() -> Iterator[Account]:
    """Yield the forty accounts of the demo book, in order of id."""
    for id, told in _accounts().items():
        yield Account(id, tuple(records(told, LOSS_RUN_ON)))
