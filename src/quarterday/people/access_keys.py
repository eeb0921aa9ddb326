"""Access keys: how a person's program shows in whose name it asks.

The secret has 256 random bits, so its plain SHA-256 can be kept: there is nothing to guess from.
"""

from __future__ import annotations

import hashlib
import secrets
from datetime import datetime, timedelta

from django.db.models import F

from quarterday.people.models import AccessKey, Person

PREFIX = "quarterday_"  # so that a secret is recognised where it should not be
MINUTE = timedelta(minutes=1)
MOST_A_MINUTE = 600


def digest_of(secret: str) -> str:
    """Return the digest under which a secret is kept."""
    return hashlib.sha256(secret.encode("utf-8", "surrogatepass")).hexdigest()


def new(
    person: Person, name: str, scope: str, until: datetime, now: datetime
) -> tuple[AccessKey, str]:
    """Make a key and return it with its secret, which nobody can read again."""
    secret = PREFIX + secrets.token_urlsafe(32)
    made = AccessKey.objects.create(
        person=person, name=name, scope=scope, digest=digest_of(secret), made_at=now, until=until
    )
    return made, secret


def holder(secret: str, now: datetime) -> AccessKey | None:
    """Return the key of this secret while it counts: not revoked, not over, its person active."""
    counts = AccessKey.objects.filter(revoked_at=None, until__gt=now, person__is_active=True)
    return counts.select_related("person").filter(digest=digest_of(secret)).first()


def use(key: AccessKey, now: datetime) -> bool:
    """Count that a key is used; False when it was used as often as may be in a minute."""
    this = AccessKey.objects.filter(pk=key.pk)
    within = this.filter(minute__gt=now - MINUTE)
    if within.filter(used__lt=MOST_A_MINUTE).update(used=F("used") + 1, last_used=now):
        return True
    if within.exists():
        return False
    this.update(minute=now, used=1, last_used=now)
    return True


def revoke(person: Person, number: int, now: datetime) -> AccessKey | None:
    """End one of a person's own keys at once; None when they have no such key."""
    found = AccessKey.objects.filter(person=person, pk=number).first()
    if found is not None and found.revoked_at is None:
        found.revoked_at = now
        found.save(update_fields=["revoked_at"])
    return found
