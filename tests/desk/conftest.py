"""A store with two offices' files, and named people: each test says who asks.

ann    owner: account broker of the office port-ellery, licensed
cole   colleague of another office, val-aubry
maria  manager of every office
reed   reading manager of port-ellery
rhea   read-only in port-ellery
sid    stranger: signs in, and has no role anywhere
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from datetime import UTC, date, datetime
from functools import lru_cache
from pathlib import Path
from shutil import copyfile

import pytest
from django.conf import settings
from django.contrib.auth.hashers import make_password
from django.test import Client
from tests.office.inbox import inbox  # noqa: F401 - a fixture

from quarterday.catalogue.load import reference
from quarterday.core.file.entry import Draft, Origin, Place
from quarterday.invent.demo.book import HERE, demo_book
from quarterday.office import sealing
from quarterday.office.book import keeping
from quarterday.office.brand import brokerage
from quarterday.people.models import Grant, Person
from quarterday.store import ledger

FLAGSHIP, OTHER = "HW-1001", "HW-1010"
DAY = date(2026, 11, 25)
PASSWORD = "a long enough password"
PEOPLE = {
    "ann": ("port-ellery", "owner"),
    "cole": ("val-aubry", "colleague"),
    "maria": ("*", "manager"),
    "reed": ("port-ellery", "read-only-manager"),
    "rhea": ("port-ellery", "read-only"),
    "sid": ("", ""),
}
As = Callable[[str], Client]


@pytest.fixture(autouse=True)
def _today(monkeypatch: pytest.MonkeyPatch) -> None:
    """Hold the desk to the demo's day, without a second factor unless a test asks for one."""
    for module in ("guard", "views.diary"):
        monkeypatch.setattr(f"quarterday.desk.{module}.today", lambda: DAY)
    for module in ("guard", "views.signing_in"):
        monkeypatch.setattr(f"quarterday.desk.{module}.needs_factor", lambda: False)


@pytest.fixture
def book(db: None) -> None:
    """Load one file of each office, as a workbook would."""
    copyfile(HERE / "brokerage.yaml", Path(settings.QUARTERDAY_HOME) / "brokerage.yaml")
    for account in demo_book():
        if account.id in {FLAGSHIP, OTHER}:
            origin = Origin(way="workbook", name="book.xlsx", places=(Place(sheet="X", row=2),))
            drafts = [Draft("load", r.kind, r.key, r.body(), origin) for r in account.records]
            at = datetime(2026, 11, 25, tzinfo=UTC)
            ledger.append(account.id, drafts, by="load", expected_seq=0, at=at)


@pytest.fixture
def figures(book: None) -> None:
    """Make the book's figures, as the desk's server does beside the pages."""
    keeping.refresh(reference(), DAY)


@pytest.fixture
def certificate(book: None) -> Iterator[Path]:
    """Let the brokerage have a certificate to seal with, for one test."""
    home = Path(settings.QUARTERDAY_HOME)
    yield sealing.ensure_certificate(brokerage(), datetime.now(UTC))
    for name in (sealing.KEY_FILE, sealing.CERTIFICATE_FILE):
        (home / name).unlink()


@lru_cache
def _hashed() -> str:
    """Hash the password once: a strong hash is slow on purpose."""
    return make_password(PASSWORD)


def make_person(name: str, office: str = "", role: str = "") -> Person:
    """Make somebody with one grant, or none."""
    licence = "RIB-000001" if role in {"owner", "manager"} else ""
    person = Person(email=f"{name}@holliswren.example.org", name=name.title(), licence=licence)
    person.password = _hashed()
    person.save()
    if role:
        Grant.objects.create(person=person, office=office, role=role)
    return person


@pytest.fixture
def people(db: None) -> dict[str, Person]:
    """Make the named people."""
    return {name: make_person(name, *grant) for name, grant in PEOPLE.items()}


@pytest.fixture
def signed_in(people: dict[str, Person]) -> As:
    """Return a browser in which a named person is signed in."""

    def browser(name: str) -> Client:
        client = Client(enforce_csrf_checks=False)
        client.force_login(people[name])
        return client

    return browser
