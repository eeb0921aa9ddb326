"""Taking one entry back: what it said no longer counts, and what stood before it counts again.

Nothing is deleted. The taking back is an entry of its own, and can be taken back itself. Only the
newest entry of a record can be: an older one would take later ones back with it. What was done
outside (signed, built, sent, bound, received) happened, and stays.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence

from quarterday.core.file.entry import Draft, Entry, Origin
from quarterday.core.file.fold import File
from quarterday.core.file.records import (
    AllocationKey,
    Answers,
    Authority,
    Building,
    Claim,
    Contact,
    Decision,
    FindingSetAside,
    Interest,
    Note,
    Operations,
    Organisation,
    PaymentChoice,
    Record,
    Terms,
    Valuation,
)
from quarterday.core.words import words
from quarterday.office import access
from quarterday.office.trouble import Moved, Trouble
from quarterday.people.models import Person
from quarterday.store import ledger
from quarterday.store.drafts import WITHDRAW

ACT = "undo"
_FACTS: tuple[type[Record], ...] = (
    Organisation, Contact, Authority, Operations, Building, Valuation, Terms, Claim, Interest,
    AllocationKey,
)  # fmt: skip
_SAID: tuple[type[Record], ...] = (Decision, PaymentChoice, Note, Answers)
RIGHTS: Mapping[str, access.Act] = {
    **{kind.kind: "edit" for kind in _FACTS},
    **{kind.kind: "record" for kind in _SAID},
    FindingSetAside.kind: "set-aside",
}


def undoable(entries: Iterable[Entry]) -> frozenset[int]:
    """Return the numbers of the entries that can be taken back, the file's whole history given."""
    by_record: dict[tuple[str, str], list[Entry]] = {}
    for entry in entries:
        by_record.setdefault((entry.kind, entry.key), []).append(entry)
    return frozenset(of[-1].seq for of in by_record.values() if _can_go(of))


def _can_go(of: Sequence[Entry]) -> bool:
    """Tell whether the newest of a record's entries can be taken back."""
    if of[-1].kind not in RIGHTS or any(entry.is_redacted for entry in of[-2:]):
        return False
    before = of[-2].body if len(of) > 1 else None
    return before is not None or (of[-1].body is not None and of[-1].kind != Organisation.kind)


def undoable_by(person: Person, file: File, entries: Iterable[Entry]) -> frozenset[int]:
    """Return the numbers of the entries that a person may take back, the whole history given."""
    office, found = access.office_of(file), tuple(entries)
    may = {kind for kind, act in RIGHTS.items() if access.may(person, act, office)}
    kept = undoable(found)
    return frozenset(entry.seq for entry in found if entry.seq in kept and entry.kind in may)


def undo(person: Person, id: str, seq: int, seen: int) -> Entry:
    """Take entry ``seq`` of a file back; ``seen`` is the newest entry that was shown.

    Trouble when there is no such entry, or it cannot be taken back; Moved when somebody wrote to
    the file after entry ``seen``; Forbidden without the right to write such an entry.
    """
    access.open_file(person, id)
    entries = ledger.entries(id)
    entry = _meant(entries, seq)
    act = RIGHTS[entry.kind]
    access.open_file(person, id, act)
    if entries[-1].seq != seen:
        raise Moved(words("acts-undo-moved", file=id))
    draft = _back(entries, entry, person.signed)
    access.require_drafts(person, act, id, [draft])
    return ledger.append(id, [draft], by=person.signed, expected_seq=seen)[0]


def undo_at_terminal(id: str, seq: int, *, by: str) -> Entry:
    """Take entry ``seq`` back as ``undo`` does, for who has the whole store before them."""
    entries = ledger.entries(id)
    draft = _back(entries, _meant(entries, seq), by)
    return ledger.append(id, [draft], by=by, expected_seq=entries[-1].seq)[0]


def _meant(entries: Iterable[Entry], seq: int) -> Entry:
    """Return the entry of a number, when it is of a kind that can be taken back."""
    entry = next((one for one in entries if one.seq == seq), None)
    if entry is None or entry.kind not in RIGHTS:
        raise Trouble(words("acts-undo-never"))
    return entry


def _back(entries: Sequence[Entry], entry: Entry, by: str) -> Draft:
    """Return what takes an entry back: what stood before it."""
    if entry.seq not in undoable(entries):
        raise Trouble(words("acts-undo-later"))
    of = [one for one in entries if (one.kind, one.key) == (entry.kind, entry.key)]
    body = of[-2].body if len(of) > 1 else None
    origin = Origin(way="person", person=by)
    return Draft(WITHDRAW if body is None else ACT, entry.kind, entry.key, body, origin)
