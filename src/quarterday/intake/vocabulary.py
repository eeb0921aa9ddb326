"""The names people use for sheets, columns and values, read from the reference data."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from decimal import Decimal
from functools import lru_cache
from pathlib import Path
from typing import Any, Literal

from quarterday.catalogue.strict import read_yaml
from quarterday.core.file.layout import SHEETS, Column, Sheet
from quarterday.core.reference import Reference

_FOLDER = Path(__file__).resolve().parent.parent / "reference" / "intake"
How = Literal["name", "synonym", "likeness", "profile"]
Languages = frozenset[str]


@lru_cache(maxsize=65_536)
def normal(text: str) -> str:
    """Return ``text`` as it is compared: no accents, no case, words and digits only.

    ``Nº d'immeuble (pi²)`` becomes ``no d immeuble pi2``.
    """
    folded = unicodedata.normalize("NFKD", text.replace("°", "o").replace("œ", "oe").casefold())
    plain = "".join(c for c in folded if not unicodedata.combining(c))
    plain = re.sub(r"[#%]", lambda m: " number " if m[0] == "#" else " % ", plain)
    return " ".join(re.sub(r"[^\w%*]+|_", " ", plain).split())


@dataclass(frozen=True, slots=True)
class Measure:
    """A unit that a column's cells may come in: multiply by ``factor``, keep ``decimals``."""

    name: str
    factor: Decimal
    decimals: int


@dataclass(frozen=True, slots=True)
class Target:
    """What a heading names: a column, the unit when it is not the layout's, and in which languages.

    ``how`` is ``name`` for the layout's own heading and ``synonym`` for another name of it.
    """

    column: Column
    how: How
    languages: Languages
    measure: Measure | None = None

    @property
    def name(self) -> str:
        """The name a profile keeps: the column's heading or the measure's name."""
        return self.measure.name if self.measure else self.column.heading


@lru_cache(maxsize=4)
def _read(name: str) -> Mapping[str, Any]:
    file = _FOLDER / name
    data: Mapping[str, Any] = read_yaml(file.read_text("utf-8"), file.name)
    return data


def _names(entry: Mapping[str, Iterable[str]]) -> dict[str, Languages]:
    """Return each name of an entry, as compared, with the languages it is a word of."""
    found: dict[str, Languages] = {}
    for language in ("en", "fr"):
        for name in entry.get(language, ()):
            found[normal(name)] = found.get(normal(name), frozenset()) | {language}
    return found


def _measures(column: Column) -> Iterator[tuple[str, Target]]:
    for unit in _read("columns.yaml")["units"]:
        if unit["column"] == column.heading:
            names = unit["names"]
            measure = Measure(names[0], Decimal(unit["factor"]), unit["decimals"])
            for name in names:
                yield normal(name), Target(column, "synonym", frozenset(), measure)


def _entry(sheet: Sheet, column: Column) -> Iterator[tuple[str, Target]]:
    """Yield every name of a column; what a sheet says of it comes before what all sheets say."""
    data = _read("columns.yaml")
    here = _names(data["on_sheet"].get(sheet.name, {}).get(column.heading, {}))
    anywhere = _names(data["columns"].get(column.heading, {}))
    for name, languages in {**anywhere, **here}.items():
        yield name, Target(column, "synonym", languages)
    yield from _measures(column)
    yield normal(column.heading), Target(column, "name", frozenset({"en"}))


def _said_here(sheet: Sheet, name: str, target: Target) -> bool:
    here = _read("columns.yaml")["on_sheet"].get(sheet.name, {}).get(target.column.heading, {})
    return target.how == "name" or name in _names(here)


@lru_cache(maxsize=64)
def targets(sheet: Sheet) -> Mapping[str, Target]:
    """Return what each name means on a sheet; the layout's own headings win, then the sheet's."""
    found: dict[str, Target] = {}
    own = {normal(column.heading) for column in sheet.columns}
    for column in sheet.columns:
        for name, target in _entry(sheet, column):
            if target.how == "synonym" and name in own:
                continue
            if name not in found or _said_here(sheet, name, target):
                found[name] = target
    return found


@lru_cache(maxsize=64)
def unclear(sheet: Sheet) -> Mapping[str, tuple[Target, ...]]:
    """Return the names that say too little on a sheet, with what they may mean."""
    by_name = {t.name: t for t in targets(sheet).values()}
    may_mean = {
        normal(name): tuple(by_name[c] for c in candidates if c in by_name)
        for name, candidates in _read("columns.yaml")["unclear"].items()
    }
    return {name: meanings for name, meanings in may_mean.items() if meanings}


@lru_cache(maxsize=1)
def sheet_names() -> Mapping[str, frozenset[str]]:
    """Return the layout's sheets by each name, as compared, that people give them."""
    found: dict[str, frozenset[str]] = {}
    for sheet in SHEETS:
        names = _names(_read("columns.yaml")["sheets"].get(sheet.name, {}))
        for name in (normal(sheet.name), *names):
            found[name] = found.get(name, frozenset()) | {sheet.name}
    return found


def heading(sheet: Sheet, column: Column, language: str) -> str:
    """Return a column's heading in English or French, the layout's own where the list has none."""
    data = _read("columns.yaml")
    here = data["on_sheet"].get(sheet.name, {}).get(column.heading)
    names = (
        (here or data["columns"].get(column.heading, {})).get(language) if language == "fr" else ()
    )
    return str(names[0]) if names else column.heading


def sheet_name(sheet: Sheet, language: str) -> str:
    """Return a sheet's name in English or French, the layout's own where the list has none."""
    names = _read("columns.yaml")["sheets"].get(sheet.name, {}).get("fr")
    return str(names[0]) if names and language == "fr" else sheet.name


@lru_cache(maxsize=16)
def words_for(list_name: str) -> frozenset[str]:
    """Return a list of values as they are compared: ``yes``, ``no``, ``totals``, and so on."""
    return frozenset(filter(None, map(normal, _read("values.yaml")[list_name])))


@lru_cache(maxsize=16)
def marks_for(list_name: str) -> frozenset[str]:
    """Return a list of values letter by letter, for those that are signs and not words."""
    return frozenset(value.casefold() for value in _read("values.yaml")[list_name])


@lru_cache(maxsize=1)
def months() -> Mapping[str, int]:
    """Return the months' numbers by their names and short names, as compared."""
    lists = _read("values.yaml")["months"]
    return {normal(name): n for n, names in enumerate(lists, 1) for name in names}


@lru_cache(maxsize=128)
def choices(kind: str, column: Column) -> Mapping[str, str]:
    """Return a choice column's values by every name they go by."""
    lists = _read("values.yaml")["choices"]
    synonyms = lists.get(f"{kind}_{column.field}") or lists.get(column.field) or {}
    named = {normal(name): id for id in column.choices for name in synonyms.get(id, ())}
    return named | {normal(id): id for id in column.choices}


class Names:
    """The ids of coverages, causes and provinces by every name they go by."""

    def __init__(self, reference: Reference) -> None:
        self._by_catalogue: dict[str, dict[str, str]] = {
            "coverage": _by_name(
                "coverage", {c.id: (c.name.en, c.name.fr) for c in reference.coverages.values()}
            ),
            "cause": _by_name(
                "cause", {c.id: (c.name.en, c.name.fr) for c in reference.causes.values()}
            ),
            "province": _by_name(
                "province", {p.code: (p.name.en, p.name.fr) for p in reference.provinces.values()}
            ),
        }

    def of(self, catalogue: str) -> Mapping[str, str]:
        """Return the ids of a catalogue by their names, as compared."""
        return self._by_catalogue[catalogue]


def _by_name(catalogue: str, names: Mapping[str, tuple[str, ...]]) -> dict[str, str]:
    """Return ids by name: what people say, then the reference's names, then the ids themselves."""
    synonyms = _read("values.yaml")[catalogue]
    said = {normal(n): id for id, also in synonyms.items() if id in names for n in also}
    named = {normal(n): id for id, both in names.items() for n in both}
    return said | named | {normal(id): id for id in names}
