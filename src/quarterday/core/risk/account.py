"""The perils of one account: what it has, what can befall it, and what stands for duty instead.

Abuse, and injury to volunteers, are left out: harm to people ranks by duty, never by probability.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from decimal import Decimal
from functools import cached_property

from quarterday.core.file.records import Building, Terms
from quarterday.core.file.records.terms import EVERYWHERE
from quarterday.core.reference import Cause
from quarterday.core.review.case import Case
from quarterday.core.review.need import need
from quarterday.core.risk.closure import Lost
from quarterday.core.risk.likely import Learner, Likely
from quarterday.core.risk.perils import Layered, Peril
from quarterday.core.risk.severity import Capped
from quarterday.core.terms.losses.components import COMPONENTS
from quarterday.core.terms.losses.history import AS_COMPONENT
from quarterday.core.terms.presence import gives
from quarterday.core.terms.settling.values import Values
from quarterday.core.values.cost import number

BY_DUTY = frozenset({"abuse-allegation", "volunteer-injury"})
AT_EQUIPMENT = frozenset({"power-surge"})  # what the library answers only there
EXTRA, LARGEST = "risk.total-loss-extra", "risk.largest-claim"


@dataclass(frozen=True, slots=True)
class Place:
    """A place with what can be damaged there, in dollars."""

    id: str
    building: float
    contents: float

    @property
    def worth(self) -> float:
        """All that can be damaged."""
        return self.building + self.contents


def places_of(case: Case, terms: Terms, values: Values) -> tuple[Place, ...]:
    """Return the places with property that the organisation stands to lose, the dearest first."""
    found = [_place(terms, building, values) for building in case.file.buildings]
    return tuple(sorted((p for p in found if p.worth > 0), key=lambda p: (-p.worth, p.id)))


def _place(terms: Terms, building: Building, values: Values) -> Place:
    own_line = any(line.place == ("building", building.id) for line in terms.coverages)
    own = building.ownership != "rent" or own_line
    worth = values.of("building", building.id) if own else None
    contents = values.of("contents", building.id)
    return Place(building.id, float(worth or Decimal(0)), float(contents or Decimal(0)))


@dataclass(frozen=True)
class Account:
    """Makes the perils of an account out of what its things are worth."""

    case: Case
    terms: Terms
    values: Values
    learner: Learner
    lost: Lost | None = None  # income, while a building is closed

    @cached_property
    def _places(self) -> tuple[Place, ...]:
        return places_of(self.case, self.terms, self.values)

    def perils(self) -> Iterator[tuple[Peril, Likely]]:
        """Yield each peril with what makes it likely."""
        for cause in self.case.reference.causes.values():
            if cause.id in BY_DUTY or not self._concerns(cause):
                continue
            likely = self.learner.of(cause)
            if likely is not None and likely.rate > 0:
                yield from ((peril, likely) for peril in self._of(cause, likely))

    def _concerns(self, cause: Cause) -> bool:
        """Tell whether some coverage that answers the cause is given, or may be needed."""
        reference, file = self.case.reference, self.case.file
        return any(
            gives(self.terms, c.id) or need(c.needed_when, file).answer != "no"
            for c in reference.coverages.values()
            if cause.id in c.answers and c.id in self._routes(cause)
        )

    def _routes(self, cause: Cause) -> tuple[str, ...]:
        return COMPONENTS[_component(cause)].coverages

    def _of(self, cause: Cause, likely: Likely) -> Iterator[Peril]:
        component = _component(cause)
        if component != "building":
            yield from self._single(cause, likely, component)
            return
        whole = sum(place.worth for place in self._places)
        for at in self._places:
            parts = tuple(self._parts(cause, at))
            severity = Capped(likely.severity, parts[-1].end)
            rate = likely.rate_at(at.id, at.worth / whole)
            income = tuple(self._income(cause, at))
            yield Peril(cause.id, at.id, rate, severity, parts + income)

    def _income(self, cause: Cause, at: Place) -> Iterator[Layered]:
        """Yield the income that damage there stops."""
        lost = self.lost
        if lost is not None and lost.place == at.id and cause.id in lost.causes:
            yield from lost.parts(at.worth)

    def _single(self, cause: Cause, likely: Likely, component: str) -> Iterator[Peril]:
        """Yield the peril of what stands at no building of its own, or in one: the contents."""
        place, most = self._places[0].id if self._places else EVERYWHERE, self._largest
        if component == "contents":
            dearest = max(self._places, key=lambda p: p.contents, default=None)
            if dearest is None or not dearest.contents:
                return
            place, most = dearest.id, dearest.contents
        part = Layered(component, 1.0, 0.0, most)
        yield Peril(cause.id, place, likely.rate, Capped(likely.severity, most), (part,))

    @cached_property
    def _largest(self) -> float:
        return float(number(self.case.parameter(LARGEST)))

    def _parts(self, cause: Cause, at: Place) -> Iterator[Layered]:
        if at.building:
            yield Layered("building", at.building / at.worth, 0.0, at.worth)
        if at.contents:
            yield Layered("contents", at.contents / at.worth, 0.0, at.worth)
        extra = float(number(self.case.parameter(EXTRA))) * at.building
        if extra and cause.id in self.case.reference.coverages["by-laws"].answers:
            yield Layered("by-laws", 1.0, at.worth, at.worth + extra)


def _component(cause: Cause) -> str:
    """Return what a cause strikes: what claims of it are taken to be, else the building."""
    if cause.id in AT_EQUIPMENT:
        return "equipment"
    found = AS_COMPONENT.get(cause.id)
    return found or ("building" if cause.party == "first" else "compensatory")
