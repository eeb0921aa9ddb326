"""Ids that a spreadsheet changed: leading zeros lost, capitals changed."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Mapping
from dataclasses import dataclass


def loose(id: str) -> str:
    """Return an id without what spreadsheets lose: leading zeros of a number, capitals."""
    plain = id.strip().casefold()
    return plain.lstrip("0") or "0" if plain.isdecimal() else plain


@dataclass(frozen=True, slots=True)
class Ids:
    """Ids as they are kept, and the ids by their loose form."""

    firm: frozenset[str]
    by_loose: Mapping[str, tuple[str, ...]]

    @classmethod
    def of(cls, ids: Iterable[str]) -> Ids:
        """Return the ids so that they can be looked up by what is left of them."""
        firm = frozenset(ids)
        groups: dict[str, list[str]] = defaultdict(list)
        for id in sorted(firm):
            groups[loose(id)].append(id)
        return cls(firm, {form: tuple(group) for form, group in groups.items()})

    def meant(self, id: str) -> tuple[str, ...]:
        """Return the ids that ``id`` may stand for: itself when it is kept so, else its likes."""
        return (id,) if id in self.firm else self.by_loose.get(loose(id), ())


def accounts(on_file: Iterable[str], listed: Iterable[str], mentioned: Iterable[str]) -> Ids:
    """Return the accounts a workbook speaks of, as they are kept.

    ``on_file`` are those of the store, ``listed`` those the workbook lists as organisations,
    ``mentioned`` those in its other sheets. An account on file is kept as it is; of a listed one,
    the only form that has zeros in front is the form it had before a spreadsheet took them.
    """
    kept = Ids.of(on_file)
    new: dict[str, set[str]] = defaultdict(set)
    for id in listed:
        if not kept.meant(id):
            new[loose(id)].add(id)
    for id in mentioned:
        if loose(id) in new:
            new[loose(id)].add(id)
    return Ids.of([*kept.firm, *(id for forms in new.values() for id in _firm(forms))])


def _firm(forms: set[str]) -> set[str]:
    padded = {form for form in forms if form.casefold() != loose(form)}
    return padded or forms
