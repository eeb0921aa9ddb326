"""Who may come in: adding people, changing what they may do, and giving new passwords."""

from __future__ import annotations

import secrets
from collections.abc import Mapping

from django.core.exceptions import ValidationError
from django.core.validators import validate_email
from django.db import transaction

from quarterday.core.words import words
from quarterday.office.access import require_anywhere
from quarterday.office.trouble import Trouble
from quarterday.people.models import ROLES, Grant, Person

LANGUAGES = ("en", "fr")


def one_time_password() -> str:
    """Return a password that is shown once, and has to be changed at the first sign-in."""
    return "-".join(secrets.token_hex(2) for _ in range(4))


def add(
    *, name: str, email: str, licence: str, language: str, grants: Mapping[str, str]
) -> tuple[Person, str]:
    """Add a person with their role by office; return them and their one-time password.

    Trouble when the address is taken or is none, or a role is unknown.
    """
    _check(name, email, language, grants)
    if Person.objects.filter(email=email.strip().casefold()).exists():
        raise Trouble(words("acts-person-taken", email=email))
    secret = one_time_password()
    with transaction.atomic():
        person = Person(name=name.strip(), email=email, licence=licence.strip(), language=language,
                        must_change=True)  # fmt: skip
        person.set_password(secret)
        person.save()
        _grant(person, grants)
    return person, secret


def change(
    by: Person,
    person: Person,
    *,
    licence: str,
    language: str,
    is_active: bool,
    grants: Mapping[str, str],
) -> None:
    """Change a person's licence, language, grants, and whether they may come in.

    Trouble when a manager would lock themselves out.
    """
    require_anywhere(by, "people")
    _check(person.name, person.email, language, grants)
    if by.pk == person.pk and not (is_active and "manager" in grants.values()):
        raise Trouble(words("acts-person-self"))
    with transaction.atomic():
        person.licence, person.language, person.is_active = licence.strip(), language, is_active
        person.save()
        _grant(person, grants)


def renew(by: Person, person: Person) -> str:
    """Give a person a new one-time password and let them set up a new second factor."""
    require_anywhere(by, "people")
    secret = one_time_password()
    person.set_password(secret)
    person.must_change, person.factor = True, ""
    person.save()
    return secret


def _grant(person: Person, grants: Mapping[str, str]) -> None:
    Grant.objects.filter(person=person).delete()
    Grant.objects.bulk_create(
        Grant(person=person, office=office, role=role) for office, role in grants.items()
    )


def _check(name: str, email: str, language: str, grants: Mapping[str, str]) -> None:
    if not name.strip() or len(name) > 300:  # noqa: PLR2004 - as long as the table keeps
        raise Trouble(words("acts-empty", what=words("typed-name")))
    try:
        validate_email(email.strip())
    except ValidationError:
        raise Trouble(words("acts-person-email", email=email[:100])) from None
    if language not in LANGUAGES or not set(grants.values()) <= set(ROLES):
        raise Trouble(words("acts-not-possible"))
