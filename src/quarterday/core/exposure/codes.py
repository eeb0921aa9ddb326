"""The code lists of Open Exposure Data, and which of our words stands for which code."""

from __future__ import annotations

from functools import cached_property

from quarterday.core.reference import Cited, Shape

UNKNOWN_CONSTRUCTION, UNKNOWN_OCCUPANCY = 5000, 1000


class Coded(Shape):
    """One of our words and its code, with the standard's own name for it."""

    ours: str
    code: int
    name: str
    source: Cited


class Occupancy(Shape):
    """An occupancy code: words of a building's use, and classes of organisations, that mean it."""

    code: int
    name: str
    words: tuple[str, ...]
    classes: tuple[str, ...]
    source: Cited


class Perils(Shape):
    """One of our causes of loss and the peril codes that name it."""

    ours: str
    codes: tuple[str, ...]
    source: Cited


class Codes(Shape):
    """All code lists, of one version of the specification."""

    version: str
    source: Cited
    construction: tuple[Coded, ...]
    basement: tuple[Coded, ...]
    basis: tuple[Coded, ...]
    occupancy: tuple[Occupancy, ...]
    perils: tuple[Perils, ...]

    @cached_property
    def _perils(self) -> dict[str, tuple[str, ...]]:
        return {cause.ours: cause.codes for cause in self.perils}

    def occupancy_of(self, use: str | None, organisation_class: str) -> int:
        """Return the occupancy that ``use`` names first, else that of the organisation's class."""
        said = (use or "").casefold()
        named = [(said.find(w), o.code) for o in self.occupancy for w in o.words if w in said]
        if named:
            return min(named)[1]
        classes = (o.code for o in self.occupancy if organisation_class in o.classes)
        return next(classes, UNKNOWN_OCCUPANCY)

    def perils_of(self, causes: set[str]) -> tuple[str, ...]:
        """Return the peril codes of these causes, in order."""
        return tuple(sorted({code for cause in causes for code in self._perils.get(cause, ())}))


def code_of(coded: tuple[Coded, ...], ours: str | None) -> int | None:
    """Return the code of one of our words, or None."""
    return next((one.code for one in coded if one.ours == ours), None)


def ours_of(coded: tuple[Coded, ...], code: int) -> str | None:
    """Return our word for a code, or None."""
    return next((one.ours for one in coded if one.code == code), None)
