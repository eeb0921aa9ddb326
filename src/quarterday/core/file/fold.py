"""The fold: from a file's entries to what is known about it, now or on an earlier day."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, field
from datetime import date, datetime
from types import MappingProxyType
from typing import TypeVar, cast

from quarterday.core.dates import Period, add_years
from quarterday.core.figure import Fact, Unit, Value
from quarterday.core.file.entry import Entry
from quarterday.core.file.records import (
    BY_KIND,
    Bound,
    Building,
    Claim,
    Contact,
    Delivery,
    EvidenceSent,
    Interest,
    Operations,
    Organisation,
    PackageBuilt,
    PackageSealed,
    PolicyChecked,
    Record,
    RequestSent,
    ReviewSigned,
    Terms,
    Valuation,
)
from quarterday.core.file.records.terms import Stage
from quarterday.core.money import Money
from quarterday.core.words import words

R = TypeVar("R", bound=Record)
Ref = tuple[str, str]
PROOF = frozenset(
    kind.kind for kind in (Bound, Delivery, EvidenceSent, PackageBuilt, PackageSealed,
                           PolicyChecked, RequestSent, ReviewSigned)
)  # fmt: skip


@dataclass(frozen=True, slots=True)
class Held:
    """A record as it stands, and the entry that put it there."""

    record: Record
    entry: Entry


@dataclass(frozen=True, slots=True)
class File:
    """Everything known about one organisation after entry ``seq``.

    ``last_change`` is the newest entry that says something about the organisation, or takes
    something back; 0 when there is none. Signatures, packages, deliveries and binders prove what
    was said; they change nothing of it.
    """

    id: str
    seq: int
    last_change: int
    held: Mapping[Ref, Held] = field(repr=False)

    def all(self, kind: type[R]) -> tuple[R, ...]:
        """Return the records of one kind, in order of key."""
        found = {key: h.record for (k, key), h in self.held.items() if k == kind.kind}
        return tuple(cast("R", found[key]) for key in sorted(found))

    def get(self, kind: type[R], key: str = "") -> R | None:
        """Return the record of this kind and key, or None."""
        held = self.held.get((kind.kind, key))
        return cast("R", held.record) if held else None

    def entry_of(self, record: Record) -> Entry:
        """Return the entry that holds ``record``; KeyError when the file does not hold it."""
        return self.held[record.kind, record.key].entry

    @property
    def organisation(self) -> Organisation:
        """Who the file is about; LookupError when no entry says."""
        found = self.get(Organisation)
        if found is None:
            raise LookupError(f"File {self.id} does not say which organisation it is about.")
        return found

    @property
    def operations(self) -> Operations:
        """The operations profile; one with nothing answered when it was never given."""
        return self.get(Operations) or Operations()

    @property
    def contacts(self) -> tuple[Contact, ...]:
        """All contacts, those who left included."""
        return self.all(Contact)

    @property
    def buildings(self) -> tuple[Building, ...]:
        """All buildings."""
        return self.all(Building)

    @property
    def claims(self) -> tuple[Claim, ...]:
        """All claims."""
        return self.all(Claim)

    @property
    def interests(self) -> tuple[Interest, ...]:
        """All lenders and lessors."""
        return self.all(Interest)

    def valuations(self, building: str, valued: str = "building") -> tuple[Valuation, ...]:
        """Return the valuations of a building, its contents or its features, oldest first."""
        found = (v for v in self.all(Valuation) if (v.building, v.valued) == (building, valued))
        return tuple(sorted(found, key=lambda v: v.valued_on))

    def terms(self, start: date, stage: Stage) -> Terms | None:
        """Return the version ``stage`` of the terms that start on ``start``."""
        return self.get(Terms, f"{start}/{stage}")

    def expiring(self, renewal: date) -> Terms | None:
        """Return the issued terms whose period ends on the renewal date."""
        ending = (t for t in self.all(Terms) if t.stage == "issued" and t.end == renewal)
        return next(ending, None)

    @property
    def renewal(self) -> date | None:
        """The next renewal date: where the newest issued terms end, else as the file states it."""
        ends = [t.end for t in self.all(Terms) if t.stage == "issued"]
        starts = [t.start for t in self.all(Terms) if t.stage == "offered"]
        return max([*ends, *starts], default=self.organisation.renewal_date)

    def province_of(self, building: Building | None) -> str:
        """Return the province of a building: its own, else the organisation's."""
        return (building.province if building else None) or self.organisation.province

    def fact(self, record: Record, name: str, unit: Unit, currency: str = "CAD") -> Fact:
        """Return the field ``name`` of ``record`` as a fact with its origin.

        Its label is the wording ``field-{name}``; an amount of unit ``money`` becomes Money.
        """
        entry, value = self.entry_of(record), getattr(record, name)
        shown: Value = Money(value, currency) if unit == "money" else value
        return Fact(
            id=f"{record.kind}/{record.key}/{name}",
            value=shown,
            unit=unit,
            label=words(f"field-{name.replace('_', '-')}"),
            origin=entry.origin,
            recorded_on=entry.recorded_at.date(),
        )


def read(kind: str, body: str) -> Record:
    """Return the record that an entry's body holds."""
    return BY_KIND[kind].read(body)


def fold(
    id: str,
    entries: Iterable[Entry],
    known_at: datetime | None = None,
    reader: Callable[[str, str], Record] = read,
) -> File:
    """Return the file that ``entries`` (in order of ``seq``) add up to.

    A later entry of the same kind and key replaces an earlier one; a withdrawal removes it; a
    redacted entry holds nothing. ``known_at`` leaves out what was recorded after that moment.
    ``reader`` makes a record of kind and body, for who has some of them already.
    """
    held: dict[Ref, Held] = {}
    seq = last_change = 0
    for entry in entries:
        if known_at is not None and entry.recorded_at > known_at:
            break
        seq = entry.seq
        last_change = last_change if entry.kind in PROOF else entry.seq
        held.pop((entry.kind, entry.key), None)
        if entry.body is not None:
            record = reader(entry.kind, entry.body)
            held[entry.kind, entry.key] = Held(record, entry)
    return File(id, seq, last_change, MappingProxyType(held))


def renewal_period(file: File, renewal: date) -> Period:
    """Return the coming term: as offered, else one year from the renewal."""
    offered = file.terms(renewal, "offered")
    return offered.period if offered else Period(renewal, add_years(renewal, 1))
