"""Who may do what with which file. Looking a file up is the check: there is no other way to one.

A file of an office where a person has no grant is to them as if it were not there.

| role | may |
|---|---|
| read-only | view |
| colleague | view, load, edit, record, ask the insurer, build, deliver, check, certify |
| owner | all that, set findings aside, bind, and sign the review when licensed |
| read-only-manager | view, and see the whole book |
| manager | all that an owner may, see the whole book, and say who may come in |
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from datetime import datetime
from typing import Literal

from quarterday.core.file.entry import Draft
from quarterday.core.file.fold import File
from quarterday.core.file.records import Organisation
from quarterday.core.words import Term, words
from quarterday.office.trouble import Trouble
from quarterday.people.models import EVERY_OFFICE, Person
from quarterday.store import ledger
from quarterday.store.models import IndexedFile
from quarterday.store.refusals import UnknownFile

Act = Literal[
    "view", "load", "edit", "record", "ask", "build", "deliver", "check", "certify",
    "set-aside", "bind", "sign", "book", "people",
]  # fmt: skip
_COLLEAGUE: frozenset[Act] = frozenset(
    {"view", "load", "edit", "record", "ask", "build", "deliver", "check", "certify"}
)
_OWNER: frozenset[Act] = _COLLEAGUE | {"set-aside", "bind", "sign"}
RIGHTS: Mapping[str, frozenset[Act]] = {
    "read-only": frozenset({"view"}),
    "colleague": _COLLEAGUE,
    "owner": _OWNER,
    "read-only-manager": frozenset({"view", "book"}),
    "manager": _OWNER | {"book", "people"},
}


class Forbidden(Trouble):
    """Raised when somebody may see a thing but not do this with it."""

    def __init__(self, act: Act) -> None:
        super().__init__(words("acts-forbidden", act=Term("right", act)))


def may(person: Person, act: Act, office: str) -> bool:
    """Tell whether a person may do something with the files of an office."""
    roles = (person.roles.get(office, ""), person.roles.get(EVERY_OFFICE, ""))
    return person.is_active and any(act in RIGHTS.get(role, frozenset()) for role in roles)


def offices(person: Person, act: Act = "view") -> frozenset[str] | None:
    """Return the offices where a person may do something; None means every office."""
    where = {office for office in person.roles if may(person, act, office)}
    return None if EVERY_OFFICE in where else frozenset(where)


def may_anywhere(person: Person, act: Act) -> bool:
    """Tell whether there is an office where a person may do something."""
    return offices(person, act) != frozenset()


def require_anywhere(person: Person, act: Act) -> None:
    """Raise Forbidden unless there is an office where a person may do something."""
    if not may_anywhere(person, act):
        raise Forbidden(act)


class UnknownOffice(UnknownFile):
    """Raised for an office of whose book a person may see nothing, as for one that is not there."""


def book_offices(person: Person, office: str = "") -> frozenset[str] | None:
    """Return the offices whose book a person may see, or the one asked for; None means every one.

    Forbidden without the right anywhere; UnknownOffice without it for the office asked for.
    """
    require_anywhere(person, "book")
    if not office:
        return offices(person, "book")
    if not may(person, "book", office):
        raise UnknownOffice(words("acts-no-office", office=office[:80]))
    return frozenset({office})


def office_of(file: File) -> str:
    """Return the office that looks after a file; empty when none is named."""
    organisation = file.get(Organisation)
    return (organisation.office if organisation else None) or ""


def open_file(
    person: Person, id: str, act: Act = "view", known_at: datetime | None = None
) -> File:  # fmt: skip
    """Return a file for what a person is about to do with it.

    UnknownFile when it does not exist or they may not see it; Forbidden when they may see it only.
    The right is looked up on the file as it stands, also when it is shown as known earlier.
    """
    file = ledger.load(id)
    office = office_of(file)
    if not may(person, "view", office):
        raise UnknownFile(words("store-unknown-file", file=id))
    if not may(person, act, office):
        raise Forbidden(act)
    if act == "sign" and not person.licence:
        raise Trouble(words("acts-no-licence"))
    return file if known_at is None else ledger.load(id, known_at)


def require_drafts(person: Person, act: Act, id: str, drafts: Iterable[Draft]) -> None:
    """Raise Forbidden when drafts would write to, or move a file to, an office out of reach."""
    kept = IndexedFile.objects.filter(pk=id).values_list("office", flat=True).first()
    moved = {
        Organisation.read(draft.body).office or ""
        for draft in drafts
        if draft.kind == Organisation.kind and draft.body is not None
    }
    where = moved | ({kept} if kept is not None else set())
    if not all(may(person, act, office) for office in where or {""}):
        raise Forbidden(act)
