"""A store in which every state that the desk can show has come about, for checks and pictures.

Four files that are the flagship's under other names stand further on in their year than the
flagship does, and five people look on. Everything happens through the office's own acts.
"""

from __future__ import annotations

import io
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from datetime import UTC, date, datetime, timedelta
from pathlib import Path
from tempfile import TemporaryDirectory

import openpyxl
from django.conf import settings
from django.contrib.auth import BACKEND_SESSION_KEY, HASH_SESSION_KEY, SESSION_KEY
from django.contrib.sessions.backends.db import SessionStore
from django.http import HttpRequest
from playwright.sync_api import BrowserContext
from tests.intake.forms import filling

from quarterday.catalogue.speech import Speech
from quarterday.core.file.entry import Draft, Origin, Place
from quarterday.core.file.records import (
    Bound,
    Contact,
    Delivery,
    Organisation,
    PackageBuilt,
    Record,
    Terms,
)
from quarterday.core.review.review import review
from quarterday.desk.views import errors
from quarterday.intake.write import write_workbook
from quarterday.invent.demo.book import demo_book
from quarterday.office import (
    accepting,
    acts,
    binding,
    certifying,
    checking,
    delivering,
    packages,
    requesting,
    returning,
    reviewing,
    sealing,
)
from quarterday.office.brand import brokerage
from quarterday.office.own_data import reference_in_use
from quarterday.people.models import EVERY_OFFICE, Attempt, Grant, Person
from quarterday.store import ledger, originals

FLAGSHIP, BARE = "HW-1001", "HW-9101"
BUSY, BOUND, THIN, CHECKED = "HW-9102", "HW-9103", "HW-9104", "HW-9105"
NAMES = {BUSY: "Lantern Hill Fellowship", BOUND: "Mill Pond Camp", THIN: "Quarry Road Hall Society",
         CHECKED: "Tamarack Food Bank"}  # fmt: skip
OFFICE = "port-ellery"
PASSWORD = "a long enough password"
OPTION = "option/by-laws/*"
ANSWERS = {"contacts.treasurer.phone": "705-555-0188", "operations.attendance": "180",
           "contacts-form.confirmed.by": "Priya Nathan"}  # fmt: skip
LATER = {"contacts.treasurer.phone": "705-555-0199", "contacts.warden.phone": "705-555-0122",
         "buildings.hall.roof_year": "2025", "contacts.new-1.name": "Edda Norby",
         "operations.attendance": "about two hundred"}  # fmt: skip
BY_ROLE = {
    "manager": (EVERY_OFFICE, "Eleanor Wren"),
    "owner": (OFFICE, "Judith Hollis"),
    "read-only": (OFFICE, "Rhea Lindqvist"),
    "colleague": (OFFICE, "Noor Castell"),
}
NEW = "colleague"  # in the scenes, who has just been let in


@dataclass(frozen=True, slots=True)
class Stage:
    """The people by role, and documents to be sent to the desk."""

    people: Mapping[str, Person]
    form: bytes
    scan: bytes
    faulty: bytes
    same: bytes

    def enter(self, context: BrowserContext, base: str, role: str) -> None:
        """Let the browser of ``role`` in, or nobody's when it is empty."""
        context.clear_cookies()
        if role:
            self.carry(context, base, session_of(Person.objects.get(pk=self.people[role].pk)))

    def carry(self, context: BrowserContext, base: str, session: str) -> None:
        """Give a browser a session."""
        context.add_cookies([{"name": "quarterday_session", "value": session, "url": base}])

    def half_way(self) -> str:
        """Return the session of somebody who gave the right password, and no code yet."""
        session = SessionStore()
        session["half"] = [self.people["owner"].pk, datetime.now(UTC).timestamp(), "/"]
        session.save()
        return str(session.session_key)

    def speak(self, language: str) -> None:
        """Let everybody speak a language, and forget who was wrong how often."""
        Person.objects.update(language=language)
        Attempt.objects.all().delete()


def session_of(person: Person) -> str:
    """Return a session in which a person is signed in, as signing in makes it."""
    session = SessionStore()
    session[SESSION_KEY] = str(person.pk)
    session[BACKEND_SESSION_KEY] = settings.AUTHENTICATION_BACKENDS[0]
    session[HASH_SESSION_KEY] = person.get_session_auth_hash()
    session.save()
    return str(session.session_key)


def error_page(status: int, language: str) -> str:
    """Return the page for a request that cannot be read, or for a program that failed."""
    request = HttpRequest()
    request.method, request.path = "GET", "/"
    request.META["HTTP_ACCEPT_LANGUAGE"] = f"{language}-CA"
    answer = errors.bad(request, Exception()) if status == 400 else errors.broken(request)
    return answer.content.decode()


def prepare(day: date) -> Stage:
    """Let everything come about in the store in use, as on a day."""
    people = {role: _person(role) for role in BY_ROLE}
    Person.objects.filter(pk=people[NEW].pk).update(must_change=True)
    for id in NAMES:
        _load(id)
    _load_bare()
    return Stage(people, **_busy(people["owner"], day), **_bound(people["owner"], day))


def _person(role: str) -> Person:
    office, name = BY_ROLE[role]
    grant = Grant.objects.filter(role=role, office=office).select_related("person").first()
    person = grant.person if grant else None
    if person is None:
        email = f"{name.split()[0].lower()}@holliswren.example.org"
        person = Person.objects.create(name=name, email=email)
        Grant.objects.create(person=person, office=office, role=role)
    person.set_password(PASSWORD)
    person.save()
    return person


def _records(id: str) -> Iterator[Record]:
    """Yield the flagship's records under another name."""
    account = next(account for account in demo_book() if account.id == FLAGSHIP)
    for record in account.records:
        if isinstance(record, Organisation):
            called = {"name": NAMES[id], "known_as": None, "registration_number": None}
            yield record.model_copy(update=called)
        else:
            yield record


def _load(id: str) -> None:
    origin = Origin(way="workbook", name="book.xlsx", places=(Place(sheet="Buildings", row=2),))
    drafts = [Draft("load", r.kind, r.key, r.body(), origin) for r in _records(id)]
    ledger.append(id, drafts, by="load", expected_seq=0)


def _load_bare() -> None:
    contact = Contact(id="warden", name="Ottilie Brandt", role="property")
    draft = Draft("edit", contact.kind, contact.key, contact.body(), Origin(way="office"))
    ledger.append(BARE, [draft], by="load", expected_seq=0)


def _busy(who: Person, day: date) -> dict[str, bytes]:
    """Bring a file as far as a package that came back, and return what comes home of it."""
    sealing.ensure_certificate(brokerage(), datetime.now(UTC))
    packages.built_by(who, BUSY, "en", day)
    draft = originals.get(ledger.load(BUSY).all(PackageBuilt)[0].document)
    _take(filling.with_pikepdf(draft, ANSWERS), who, day)
    _decide(BUSY, who, day)
    _ask(who, day)
    _pay(BUSY, who, day)
    _sign_and_send(who, day)
    return {"form": filling.with_pikepdf(draft, LATER), "scan": filling.scanned(draft, 2)}


def _take(form: bytes, who: Person, day: date) -> None:
    found = returning.read(form, "forms.pdf", reference_in_use(), day, expected=BUSY)
    assert isinstance(found, tuple)
    for reading in found:
        accepting.accept(reading, by=who.signed, every=True, take=(), refuse=())


def _decide(id: str, who: Person, day: date) -> None:
    file = ledger.load(id)
    done = review(file, reference_in_use(), day)
    aside = next(f for f in done.findings if f.kind == "know")
    acts.set_aside(who, file, done, aside.id, "Asked twice; it stays as it is.", file.seq)
    acts.note(who, file, "Spoke to the treasurer. She asks for the evening.", ledger.load(id).seq)
    first = next(f.id for f in done.findings if f.kind == "decide")
    for question, answer in ((OPTION, "take-it"), (first, "later")):
        acts.decide(who, ledger.load(id), done, question=question, answer=answer, by="The wardens",
                    on=day - timedelta(days=1), said="Six to one.", seen=None)  # fmt: skip


def _ask(who: Person, day: date) -> None:
    asked = requesting.prepare(BUSY, reference_in_use(), brokerage(), day, "en")
    requesting.send(asked, by=who.signed)


def _pay(id: str, who: Person, day: date) -> None:
    file = ledger.load(id)
    done = review(file, reference_in_use(), day)
    acts.choose_payment(who, file, done, plan="ten-withdrawals", by="Priya Nathan", on=day,
                        seen=None)  # fmt: skip


def _sign_and_send(who: Person, day: date) -> None:
    data, house = reference_in_use(), brokerage()
    reviewing.sign(BUSY, data, reviewer=who.name, licence=who.licence, as_of=day, by=who.signed)
    packages.built_by(who, BUSY, "en", day)
    file = ledger.load(BUSY)
    letter = delivering.usual_letter(file, data, "en", house, "Priya Nathan",
                                     "priya@lanternhill.example.org", who.name)  # fmt: skip
    delivering.send(BUSY, data, "en", letter, brokerage=house, on=day, by=who.signed)
    delivering.deliver(BUSY, data, "en", to="The wardens", way="by hand", on=day, by=who.signed)
    (sent,) = (d for d in ledger.load(BUSY).all(Delivery) if d.way == "e-mail")
    delivering.came_back(BUSY, sent.key, why="550 no such mailbox", on=day, today=day,
                         by=who.signed)  # fmt: skip
    for interest in ledger.load(BUSY).interests[:2]:
        known = certifying.Stranger(None, None, None)
        made = certifying.asked(ledger.load(BUSY), interest.id, known, house, Speech(data, "en"),
                                day=day, by=who.name)  # fmt: skip
        certifying.send(made, by=who.signed)


def _bound(who: Person, day: date) -> dict[str, bytes]:
    """Bind three files, and bring two of them to their policy, which gives less or was checked."""
    for id in (BOUND, THIN, CHECKED):
        file = ledger.load(id)
        binding.bind(file, insurer_person="Ines Marlow", on=day, today=day, accepted={OPTION},
                     number="B-77", by=who.signed, seen=None)  # fmt: skip
        if id == BOUND:
            continue
        (bound,) = ledger.load(id).all(Bound)
        lines = binding.binder(file).offered.coverages if id == THIN else bound.agreed.coverages
        _issue(id, bound.agreed.model_copy(
            update={"stage": "issued", "options": (), "coverages": lines}
        ))  # fmt: skip
    checking.check(ledger.load(CHECKED), on=day, today=day, by=who.signed, seen=None)
    return {"faulty": _workbook(spoilt=True), "same": _workbook(spoilt=False)}


def _issue(id: str, policy: Terms) -> None:
    draft = Draft("load", policy.kind, policy.key, policy.body(), Origin(way="workbook", name="x"))
    ledger.append(id, [draft], by="load", expected_seq=None)


def _workbook(*, spoilt: bool) -> bytes:
    """Return a workbook that would change nothing; or one with faults, and good rows beside."""
    with TemporaryDirectory() as folder:
        path = Path(folder) / "book.xlsx"
        write_workbook(((THIN, record) for record in _records(THIN)), path)
        if not spoilt:
            return path.read_bytes()
        book = openpyxl.load_workbook(path)
    for sheet, heading, said in (("Contacts", "role", "wizard of everything"),
                                 ("Buildings", "year built", "long ago"),
                                 ("Buildings", "area m2", "1,234,5")):  # fmt: skip
        found = [cell.value for cell in book[sheet][1]]
        book[sheet].cell(2, found.index(heading) + 1).value = said
    names = [cell.value for cell in book["Contacts"][1]]
    book["Contacts"].cell(3, names.index("phone") + 1).value = "705-555-0166"
    out = io.BytesIO()
    book.save(out)
    return out.getvalue()
