"""Who speaks for the organisation, who may decide, and whether its profile still holds."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from datetime import date
from typing import get_args

from quarterday.core.dates import add_months
from quarterday.core.figure import Fact, Node
from quarterday.core.file.records import Authority, Contact
from quarterday.core.file.records.people import Area
from quarterday.core.review.case import Case
from quarterday.core.review.finding import Finding, Subject, Tier
from quarterday.core.review.priority import placed
from quarterday.core.words import Term, Words, words

AREAS: tuple[str, ...] = get_args(Area)
Back = tuple[str, str]
"""What to do, as a wording, and the form to do it on."""
CONTACTS: Back = ("office-contacts-form-todo", "contacts-form")
OPERATIONS: Back = ("office-operations-stale-todo", "operations-form")


def oldest_confirmation(case: Case, parameter: str) -> date:
    """Return the first day on which a confirmation still holds, by a parameter in months."""
    return add_months(case.as_of, -int(str(case.parameter(parameter).value)))


def is_there(contact: Contact | None, as_of: date) -> bool:
    """Tell whether a contact is on file and has not left."""
    return contact is not None and (contact.left_on is None or contact.left_on > as_of)


def _key_contacts(case: Case) -> tuple[Contact, ...]:
    """Return the contacts marked as key who are still there; all of those there if none is."""
    there = tuple(c for c in case.file.contacts if is_there(c, case.as_of))
    return tuple(c for c in there if c.is_key) or there


def _when_confirmed(case: Case, contact: Contact) -> Fact:
    if contact.confirmed_on is None:
        return replace(case.file.fact(contact, "name", "text"), label=words("field-contact"))
    fact = case.file.fact(contact, "confirmed_on", "date")
    return replace(fact, label=words("office-contact-confirmed", name=contact.name))


def contact_unconfirmed(case: Case) -> Iterator[Finding]:
    """Ask to confirm the key contacts who were not confirmed lately, all in one finding."""
    oldest = oldest_confirmation(case, "office.confirmed-within-months")
    contacts = _key_contacts(case)
    old = [c for c in contacts if c.confirmed_on is None or c.confirmed_on < oldest]
    if old or not contacts:
        months = case.parameter("office.confirmed-within-months")
        yield _unconfirmed(tuple(old), (*(_when_confirmed(case, c) for c in old), months))


def _unconfirmed(old: tuple[Contact, ...], evidence: tuple[Node, ...]) -> Finding:
    names: tuple[str, ...] = tuple(contact.name for contact in old)
    title = (
        words("office-contact-unconfirmed-title", names=names, count=len(names))
        if names
        else words("office-no-contact-title")
    )
    return _send_back(
        "office.contact-unconfirmed",
        Subject("person", "", words("office-contacts")),
        title,
        words("office-contact-unconfirmed-means"),
        CONTACTS,
        evidence,
    )


def _send_back(
    rule: str, subject: Subject, title: Words, means: Words, back: Back, evidence: tuple[Node, ...]
) -> Finding:
    """Return what the leaders confirm on a form and send back."""
    todo, form = back
    return Finding(
        rule=rule,
        subject=subject,
        audience=("leaders", "broker"),
        kind="send back",
        priority=placed(Tier.RECORD),
        title=title,
        means=means,
        todo=words(todo),
        evidence=evidence,
        encloses=(form,),
    )


def _holds(authority: Authority, as_of: date) -> bool:
    """Tell whether an authority is in force on a day, its last day not included."""
    begun = authority.since is None or authority.since <= as_of
    return begun and (authority.until is None or as_of < authority.until)


def authorised_people(case: Case) -> Iterator[Finding]:
    """Tell which areas nobody may decide in, and who still may though they have left."""
    held = [a for a in case.file.all(Authority) if _holds(a, case.as_of)]
    gone = [a for a in held if not is_there(case.file.get(Contact, a.contact), case.as_of)]
    filled = {a.area for a in held if a not in gone}
    missing = tuple(area for area in AREAS if area not in filled)
    if gone or missing:
        yield _unauthorised(case, tuple(gone), missing)


def _name(case: Case, contact: str) -> str:
    found = case.file.get(Contact, contact)
    return found.name if found else contact


def _authorised_title(gone: tuple[str, ...], missing: tuple[Term, ...]) -> Words:
    if not gone:
        return words("office-authorised-nobody-title", areas=missing, count=len(missing))
    return words("office-authorised-gone-title", names=gone, count=len(gone))


def _unauthorised(case: Case, gone: tuple[Authority, ...], missing: tuple[str, ...]) -> Finding:
    names = tuple(dict.fromkeys(_name(case, a.contact) for a in gone))
    areas = tuple(Term("area", area) for area in missing)
    means = words("office-authorised-means")
    if gone and missing:
        means = words("office-authorised-both-means", areas=areas, count=len(areas))
    return _send_back(
        "office.authorised-people",
        Subject("person", "", words("office-authorised")),
        _authorised_title(names, areas),
        means,
        CONTACTS,
        tuple(_authority_facts(case, gone)),
    )


def _authority_facts(case: Case, gone: tuple[Authority, ...]) -> Iterator[Fact]:
    for authority in gone:
        area = Term("area", authority.area)
        yield replace(case.file.fact(authority, "area", "text"), value=area)
        contact = case.file.get(Contact, authority.contact)
        if contact and contact.left_on:
            yield case.file.fact(contact, "left_on", "date")


def operations_stale(case: Case) -> Iterator[Finding]:
    """Ask to confirm what the organisation does when the answer is old or was never given."""
    oldest = oldest_confirmation(case, "office.operations-within-months")
    confirmed = case.file.operations.confirmed_on
    if confirmed is not None and confirmed >= oldest:
        return
    months = case.parameter("office.operations-within-months")
    facts = (case.file.fact(case.file.operations, "confirmed_on", "date"),) if confirmed else ()
    title = (
        words("office-operations-stale-title", confirmed=confirmed)
        if confirmed
        else words("office-operations-never-title")
    )
    yield _send_back(
        "office.operations-stale",
        Subject("operations", "", words("office-operations")),
        title,
        words("office-operations-stale-means"),
        OPERATIONS,
        (*facts, months),
    )
