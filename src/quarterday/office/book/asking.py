"""Asking the book: what a person may see of it, narrowed to what they ask."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import datetime

from quarterday.core.book.sums import Sums
from quarterday.office import access
from quarterday.people.models import Person
from quarterday.store import book
from quarterday.store.book import Asked, Choices, Made


@dataclass(frozen=True, slots=True)
class Seen:
    """What a person sees of the book: the question, the sums, when they were made, what is newer.

    ``made`` is None where the sums were never made; ``changed`` counts the files that were changed
    since.
    """

    asked: Asked
    office: str
    choices: Choices
    made: Made | None
    changed: int
    sums: Sums

    @property
    def at(self) -> datetime | None:
        """The moment the sums were made."""
        return self.made.at if self.made else None


def look(person: Person, asked: Asked, office: str = "") -> Seen:
    """Return what a person sees of the book, of one ``office`` or of all that they may.

    Forbidden without the right anywhere; UnknownOffice for an office of which they have it not.
    """
    theirs = access.book_offices(person)
    chosen = access.book_offices(person, office) if office else theirs
    asked = replace(asked, offices=chosen)
    made = book.made_when()
    return Seen(
        asked=asked,
        office=office,
        choices=book.choices(theirs),
        made=made,
        changed=book.changed_since(made, chosen) if made else 0,
        sums=book.answer(asked) if made else Sums(),
    )
