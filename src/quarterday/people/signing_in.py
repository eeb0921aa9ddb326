"""Signing in: the password first, under one lock-out policy, then the second factor.

Five wrong passwords for one address from one machine lock that pair for a quarter of an hour;
twenty for one address from anywhere, or a hundred from one machine, lock for an hour. Five wrong
codes lock the second step. What is locked is not tried at all, so a right guess tells nothing.
"""

from __future__ import annotations

from datetime import datetime

from django.contrib.auth import authenticate
from django.http import HttpRequest

from quarterday.people import factor, limits
from quarterday.people.models import Person


def _places(email: str, machine: str) -> tuple[tuple[str, str], ...]:
    folded = email.strip().casefold()
    return (
        ("sign-in", f"{folded} {machine}"),
        ("sign-in-person", folded),
        ("sign-in-machine", machine),
    )


def is_locked(email: str, machine: str, now: datetime) -> bool:
    """Tell whether this address, this machine, or both together have failed too often."""
    return any(limits.is_over(what, who, now) for what, who in _places(email, machine))


def by_password(request: HttpRequest, email: str, password: str, now: datetime) -> Person | None:
    """Return who signs in with this address and password; None when wrong or locked."""
    machine = request.META.get("REMOTE_ADDR", "")
    if is_locked(email, machine, now):
        return None
    found = authenticate(request, username=email.strip().casefold(), password=password)
    if isinstance(found, Person):
        limits.forget("sign-in", _places(email, machine)[0][1])
        return found
    for what, who in _places(email, machine):
        limits.count(what, who, now)
    return None


def by_code(person: Person, code: str, now: datetime) -> bool:
    """Tell whether the second step passes; five wrong codes lock it."""
    if limits.is_over("code", person.email, now):
        return False
    if factor.passes(person, code, now):
        limits.forget("code", person.email)
        return True
    limits.count("code", person.email, now)
    return False
