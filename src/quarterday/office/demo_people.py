"""The demo's own rules: its fixed day, and two people with passwords that are shown once."""

from __future__ import annotations

import os
from dataclasses import dataclass
from datetime import date, datetime
from functools import lru_cache
from pathlib import Path

from quarterday.catalogue.strict import read_yaml
from quarterday.catalogue.text import read_text
from quarterday.core.words import words
from quarterday.office.books import MARK as FOLDER_MARK
from quarterday.office.brand import brokerage
from quarterday.office.staff import one_time_password
from quarterday.office.trouble import Trouble
from quarterday.people.models import EVERY_OFFICE, Grant, Person
from quarterday.store.place import HOME

MARK = "demo.yaml"


@dataclass(frozen=True, slots=True)
class Visitor:
    """Somebody who may sign in to the demo, and the password that is shown once."""

    name: str
    email: str
    role: str
    password: str


def _mark() -> Path:
    return Path(os.environ[HOME]) / MARK


def demo_day() -> date | None:
    """Return the day on which the demo's story is told; None in a real store.

    Both marks must be there, the folder's own and this one, so that no copied file opens a store.
    """
    mark = _mark()
    if not (mark.is_file() and (mark.parent.parent / FOLDER_MARK).is_file()):
        return None
    return _told_on(mark, mark.stat().st_mtime_ns)


@lru_cache(maxsize=4)
def _told_on(mark: Path, _written: int) -> date:
    told = dict(read_yaml(read_text(mark), mark.name))
    return date.fromisoformat(str(told["day"]))


def today() -> date:
    """Return the day to reckon from: the demo's own in a demo, else this machine's."""
    return demo_day() or datetime.now().astimezone().date()


def needs_factor() -> bool:
    """Tell whether a second factor is asked for: everywhere but in a demo."""
    return demo_day() is None


def visitors(day: date) -> tuple[Visitor, ...]:
    """Make this store a demo told on ``day``, and let a broker and a manager in.

    Each time with new passwords. A demo asks for no second factor, and its pages say so. Trouble
    when the store is not in a demo's folder.
    """
    home = _mark().parent
    if not (home.parent / FOLDER_MARK).is_file():
        raise Trouble(words("acts-not-demo", path=str(home)))
    _mark().write_text(f"day: {day}\n", encoding="utf-8")
    people = brokerage().people
    broker = next(person for person in people if person.work == "account broker")
    manager = next(person for person in people if person.work == "manager")
    return (
        _visitor(broker.name, broker.email, broker.licence or "", (broker.office, "owner")),
        _visitor(manager.name, manager.email, manager.licence or "", (EVERY_OFFICE, "manager")),
    )


def _visitor(name: str, email: str, licence: str, grant: tuple[str, str]) -> Visitor:
    password = one_time_password()
    person, _ = Person.objects.get_or_create(email=email.casefold(), defaults={"name": name})
    person.name, person.licence, person.must_change = name, licence, False
    person.set_password(password)
    person.save()
    Grant.objects.update_or_create(person=person, office=grant[0], defaults={"role": grant[1]})
    return Visitor(name, person.email, grant[1], password)
