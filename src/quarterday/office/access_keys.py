"""Access keys as a person has them: made with the second factor, listed, ended."""

from __future__ import annotations

from datetime import datetime, timedelta
from typing import Any

from quarterday.core.words import words
from quarterday.office.demo_people import needs_factor
from quarterday.office.trouble import Trouble
from quarterday.people import access_keys, signing_in
from quarterday.people.models import SCOPES, AccessKey, Person
from quarterday.store.drafts import keepable

LONGEST = 366  # days
MOST = 20  # keys of one person that count at a time
STATES = ("counts", "over", "ended")


def state(key: AccessKey, now: datetime) -> str:
    """Return whether a key counts, is over, or was ended."""
    if key.revoked_at is not None:
        return "ended"
    return "counts" if key.until > now else "over"


def make(
    person: Person, *, name: str, scope: str, days: int, code: str, now: datetime
) -> tuple[AccessKey, str]:
    """Make a key that counts for ``days`` days; return it with its secret, which is shown once.

    Trouble without a name, with too many keys or days, or when the second factor does not pass.
    """
    called = " ".join(name.split())
    if not called or len(called) > 80 or not keepable(called):  # noqa: PLR2004 - as the table keeps
        raise Trouble(words("keys-no-name"))
    if scope not in SCOPES:
        raise Trouble(words("acts-not-possible"))
    if not 1 <= days <= LONGEST:
        raise Trouble(words("keys-days-wrong", most=LONGEST))
    if person.access_keys.filter(revoked_at=None, until__gt=now).count() >= MOST:
        raise Trouble(words("keys-too-many", most=MOST))
    _require_factor(person, code, now)
    return access_keys.new(person, called, scope, now + timedelta(days=days), now)


def _require_factor(person: Person, code: str, now: datetime) -> None:
    if not needs_factor():
        return
    if not person.factor:
        raise Trouble(words("keys-no-factor"))
    if not signing_in.by_code(person, code[:40], now):
        raise Trouble(words("desk-code-wrong"))


def of(person: Person) -> tuple[AccessKey, ...]:
    """Return a person's keys, the newest first, those that do not count any more included."""
    return tuple(person.access_keys.order_by("-made_at", "-pk"))


def end(person: Person, number: int, now: datetime) -> AccessKey:
    """End one of a person's own keys at once; Trouble when they have no such key."""
    ended = access_keys.revoke(person, number, now)
    if ended is None:
        raise Trouble(words("keys-none", number=number))
    return ended


def holder(secret: str, now: datetime) -> AccessKey | None:
    """Return the key of a secret while it and its person may come in as at the desk."""
    key = access_keys.holder(secret, now)
    if key is None or key.person.must_change or (needs_factor() and not key.person.factor):
        return None
    return key


def plain(key: AccessKey, now: datetime) -> dict[str, Any]:
    """Return a key without its secret, as JSON can hold it."""
    return {
        "number": key.pk,
        "name": key.name,
        "scope": key.scope,
        "state": state(key, now),
        "made_at": key.made_at.isoformat(),
        "until": key.until.isoformat(),
        "last_used": key.last_used.isoformat() if key.last_used else None,
    }
