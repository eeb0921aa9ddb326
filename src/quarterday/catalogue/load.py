"""Read the reference data of a place from its folder, and a brokerage's own on top of it.

A place's folder holds ``provinces``, ``causes``, ``coverages``, ``parameters`` and ``seasons``
(every YAML file in them is a list of entries), ``indices`` (a CSV and a YAML a release) and
``wordings``. A brokerage's folder has the same layout; its entries say only what differs.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from datetime import date
from functools import lru_cache
from pathlib import Path
from typing import Any, TypeVar

from pydantic import ValidationError

from quarterday.catalogue.check import contradictions
from quarterday.catalogue.indices import release_notes, releases
from quarterday.catalogue.problems import BadReference, sentences
from quarterday.catalogue.strict import read_yaml
from quarterday.catalogue.text import read_text, short_name
from quarterday.core.reference import (
    Cause,
    CoverageType,
    InstalmentPlan,
    ParameterSeries,
    Province,
    Reference,
    ReferenceLoss,
    Season,
    Shape,
    ShortRate,
)

PLACES = Path(__file__).resolve().parent.parent / "reference"
Entry = dict[str, Any]
S = TypeVar("S", bound=Shape)


def place_folder(place: str) -> Path:
    """Return the folder of a place's reference data; BadReference when there is none."""
    folder = PLACES / place
    if not (folder / "provinces").is_dir():
        known = ", ".join(sorted(f.parent.name for f in PLACES.glob("*/provinces")))
        raise BadReference([f"There is no reference data for {place!r}; there is for: {known}."])
    return folder


def not_covered(language: str) -> str:
    """Return what Quarterday does not model, as Markdown, in ``en`` or ``fr``."""
    name = "NOT-COVERED.fr.md" if language == "fr" else "NOT-COVERED.md"
    return read_text(PLACES / name)


def data_credits(language: str, place: str = "canada") -> tuple[str, ...]:
    """Return how the licences of the shipped data ask to be credited."""
    notes = release_notes(place_folder(place) / "indices")
    return tuple(note.attribution[language] for note in notes if note.attribution)


def _listed(file: Path) -> Iterator[Entry]:
    """Yield the entries that a YAML file lists."""
    name = short_name(file)
    entries = read_yaml(read_text(file), name) or []
    if not isinstance(entries, list) or not all(isinstance(e, dict) for e in entries):
        raise BadReference([f"{name}: must be a list of entries, each with its fields."])
    yield from entries


def _raw(folder: Path, key: str) -> dict[str, tuple[str, Entry]]:
    """Return the entries of all YAML files of ``folder`` by their ``key``, each with its file."""
    found: dict[str, tuple[str, Entry]] = {}
    for file in sorted(folder.glob("*.yaml")):
        name = short_name(file)
        for entry in _listed(file):
            id = entry.get(key)
            if not isinstance(id, str):
                raise BadReference([f"{name}: an entry has no {key}; give it one."])
            if id in found:
                raise BadReference([f"{name}, entry {id}: stands in {found[id][0]} already."])
            found[id] = (name, entry)
    return found


def _later_values(shipped: list[Entry], own: list[Any]) -> list[Any]:
    """Return the shipped values up to the brokerage's first date, and its own from there on."""
    days = [value.get("since") for value in own if isinstance(value, dict)]
    first = min((day for day in days if isinstance(day, date)), default=date.min)
    return [value for value in shipped if value["since"] < first] + own


def _merged(shipped: Entry, own: Entry) -> Entry:
    merged = {**shipped, **own}
    if isinstance(own.get("values"), list) and isinstance(shipped.get("values"), list):
        merged["values"] = _later_values(shipped["values"], own["values"])
    return merged


def _catalogue(name: str, model: type[S], key: str, folders: list[Path]) -> Mapping[str, S]:
    """Return one catalogue by key, each later folder's fields replacing the earlier ones."""
    raw: dict[str, tuple[str, Entry]] = {}
    for folder in folders:
        for id, (file, entry) in _raw(folder / name, key).items():
            raw[id] = (file, _merged(raw[id][1], entry) if id in raw else entry)
    found: dict[str, S] = {}
    problems: list[str] = []
    for id, (file, entry) in raw.items():
        try:
            found[id] = model.model_validate(entry)
        except ValidationError as error:
            problems += sentences(file, id, error)
    if problems:
        raise BadReference(problems)
    return found


def reference(place: str = "canada", overrides: Path | None = None) -> Reference:
    """Return the reference data of ``place`` with a brokerage's own on top; kept once read.

    In the folder ``overrides`` an entry with a known id replaces the fields that it names. Of a
    parameter, the brokerage's values hold from their first date on and the shipped ones before.
    An index release is added to the others of its geography. BadReference lists what is wrong.
    """
    if overrides is not None and not overrides.is_dir():
        raise BadReference(
            [f"There is no folder {overrides} to read your own reference data from."]
        )
    return _read(place, overrides)


def _with_wordings(overrides: Path | None) -> str | None:
    return str(overrides) if overrides and (overrides / "wordings").is_dir() else None


@lru_cache(maxsize=16)
def _read(place: str, overrides: Path | None) -> Reference:
    folders = [place_folder(place), *([overrides] if overrides else [])]
    found = Reference(
        place=place,
        provinces=_catalogue("provinces", Province, "code", folders),
        causes=_catalogue("causes", Cause, "id", folders),
        coverages=_catalogue("coverages", CoverageType, "id", folders),
        parameters=_catalogue("parameters", ParameterSeries, "id", folders),
        indices=releases([folder / "indices" for folder in folders]),
        seasons=_catalogue("seasons", Season, "id", folders),
        plans=_catalogue("plans", InstalmentPlan, "id", folders),
        short_rates=_catalogue("short_rates", ShortRate, "id", folders),
        losses=_catalogue("losses", ReferenceLoss, "id", folders),
        own_wordings=_with_wordings(overrides),
    )
    problems = tuple(contradictions(found))
    if problems:
        raise BadReference(problems)
    return found
