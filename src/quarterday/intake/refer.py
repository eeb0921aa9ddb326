"""What the ids in cells name: coverages, causes, provinces, buildings and people of the account."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, field

from rapidfuzz import fuzz, process

from quarterday.core.file.layout import SHEETS, Column
from quarterday.core.file.records.terms import EVERYWHERE
from quarterday.core.words import Term, words
from quarterday.intake.cells import BadCell, Said, Value
from quarterday.intake.faults import READ_AS, Fault, shown
from quarterday.intake.ids import Ids
from quarterday.intake.table import Line
from quarterday.intake.vocabulary import Names, marks_for, normal, words_for

_REFERRING = {s.name: tuple(c for c in s.columns if c.refers) for s in SHEETS}
_MOST_SUGGESTED = 3
_SUGGEST_FROM = 70


def nearest(text: str, names: Mapping[str, str]) -> tuple[str, ...]:
    """Return the ids whose names are most like ``text``, at most three."""
    near = process.extract(
        normal(text), names.keys(), scorer=fuzz.WRatio, score_cutoff=_SUGGEST_FROM, limit=12
    )
    return tuple(dict.fromkeys(names[name] for name, _, _ in near))[:_MOST_SUGGESTED]


@dataclass(frozen=True, slots=True)
class Known:
    """Buildings or people of one account: their ids, ids by name, and those refused just now."""

    ids: Ids
    by_name: Mapping[str, tuple[str, ...]]
    refused: frozenset[str] = frozenset()

    @classmethod
    def of(cls, named: Iterable[tuple[str, str]], refused: Iterable[str] = ()) -> Known:
        """Return what is known from pairs of id and name."""
        pairs = sorted(set(named))
        by_name: dict[str, tuple[str, ...]] = {}
        for id, name in pairs:
            by_name[normal(name)] = (*by_name.get(normal(name), ()), id)
        ids = Ids.of(id for id, _ in pairs)
        return cls(ids, by_name, frozenset(refused) - ids.firm)

    @property
    def names(self) -> dict[str, str]:
        """Ids by every name and id, as compared."""
        by_name = {name: ids[0] for name, ids in self.by_name.items()}
        return by_name | {normal(id): id for id in self.ids.firm}


@dataclass(slots=True)
class Referee:
    """Finds what the ids in the lines of one account name, and refuses lines that name nothing."""

    names: Names
    buildings: Known
    contacts: Known
    notes: list[Fault] = field(default_factory=list)

    def settle(self, line: Line) -> None:
        """Replace what the cells say by ids; refuse the line where there is no such thing."""
        for column in _REFERRING[line.of.sheet.name]:
            value = line.said.get(column.field)
            if value is not None and not isinstance(value, Said):
                self._settle_cell(line, column, value)

    def _settle_cell(self, line: Line, column: Column, value: Value) -> None:
        find = self._finder(line, column)
        try:
            if isinstance(value, tuple):
                line.said[column.field] = tuple(find(item) for item in value)
            else:
                line.said[column.field] = find(str(value))
        except BadCell as cell:
            line.refuse(cell, column.field)

    def _finder(self, line: Line, column: Column) -> Callable[[str], str]:
        refers: str = column.refers
        if refers == "total":
            return lambda text: self._total(line, column, text)
        if refers == "building":
            everywhere_too = not column.required and not column.may_be_unknown
            return lambda text: self._building(line, column, text, everywhere_too=everywhere_too)
        if refers == "contact":
            return lambda text: self._one(line, column, text, self.contacts)
        return lambda text: _listed(refers, text, self.names.of(refers))

    def _total(self, line: Line, column: Column, text: str) -> str:
        """Return what a total adds up: everything, a coverage, a building, or what it says."""
        if _is_everywhere(text):
            return EVERYWHERE
        of = line.said.get("of")
        if of == "coverage":
            return _listed("coverage", text, self.names.of("coverage"))
        return self._one(line, column, text, self.buildings) if of == "location" else text

    def _building(self, line: Line, column: Column, text: str, *, everywhere_too: bool) -> str:
        if everywhere_too and text not in self.buildings.ids.firm and _is_everywhere(text):
            return EVERYWHERE
        return self._one(line, column, text, self.buildings)

    def _one(self, line: Line, column: Column, text: str, known: Known) -> str:
        """Return the id that ``text`` means: the id, what is left of it, or the only such name."""
        meant = known.ids.meant(text) or known.by_name.get(normal(text), ())
        if len(meant) == 1:
            if meant[0] != text:
                said = words(READ_AS, said=shown(text), meant=meant[0])
                spot = line.spot(column.field)
                self.notes.append(Fault("note", spot, said, account=line.account))
            return meant[0]
        refers = "contact" if column.refers == "contact" else "building"
        raise _not_one(refers, text, meant, known)


def _not_one(refers: str, text: str, meant: tuple[str, ...], known: Known) -> BadCell:
    if meant:
        remedy = words("intake-several-remedy", ids=meant)
        return BadCell(words("intake-several", said=shown(text), ids=meant), remedy)
    if text in known.refused:
        said = words(f"intake-{refers}-refused", said=shown(text))
        return BadCell(said, words("intake-mend-first-remedy"))
    said = words(f"intake-no-{refers}", said=shown(text))
    ids = nearest(text, known.names)
    remedy = words("intake-did-you-mean", ids=ids) if ids else words(f"intake-no-{refers}-remedy")
    return BadCell(said, remedy)


def _is_everywhere(text: str) -> bool:
    return text in marks_for("everywhere") or normal(text) in words_for("everywhere")


def _listed(catalogue: str, text: str, names: Mapping[str, str]) -> str:
    """Return the id of a catalogue that ``text`` names; BadCell with the nearest ones."""
    found = names.get(normal(text))
    if found is not None:
        return found
    near = nearest(text, names)
    said = words(f"intake-no-{catalogue}", said=shown(text))
    terms = tuple(words("intake-id-and-name", code=id, name=Term(catalogue, id)) for id in near)
    if terms:
        raise BadCell(said, words("intake-did-you-mean", ids=terms))
    raise BadCell(said, words(f"intake-no-{catalogue}-remedy"))
