"""How often something may be done: failed sign-ins, uploads, packages, looks at a calendar."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import datetime, timedelta

from quarterday.people.models import Attempt


@dataclass(frozen=True, slots=True)
class Limit:
    """At most ``most`` times in ``within``."""

    most: int
    within: timedelta


HOUR, QUARTER = timedelta(hours=1), timedelta(minutes=15)
# One person's address from one machine is locked first, so that a wrong password of one person
# does not lock out an office behind one address; the wider limits stop who tries many.
LIMITS: Mapping[str, Limit] = {
    "sign-in": Limit(5, QUARTER),
    "sign-in-person": Limit(20, HOUR),
    "sign-in-machine": Limit(100, HOUR),
    "code": Limit(5, QUARTER),
    "upload": Limit(60, HOUR),
    "build": Limit(120, HOUR),
    "send": Limit(120, HOUR),
    "key-wrong": Limit(60, HOUR),
    "feed": Limit(60, HOUR),
    "feed-wrong": Limit(20, HOUR),
}
LONGEST = max(limit.within for limit in LIMITS.values())


def is_over(what: str, who: str, now: datetime) -> bool:
    """Tell whether ``who`` has done ``what`` as often as may be."""
    limit = LIMITS[what]
    done = Attempt.objects.filter(what=what, who=who[:400], at__gt=now - limit.within)
    return done.count() >= limit.most


def count(what: str, who: str, now: datetime) -> None:
    """Count that ``who`` did ``what``, and forget what no limit asks for any more."""
    Attempt.objects.filter(at__lt=now - LONGEST).delete()
    Attempt.objects.create(what=what, who=who[:400], at=now)


def forget(what: str, who: str) -> None:
    """Forget what was counted: a sign-in that succeeds clears the failed ones."""
    Attempt.objects.filter(what=what, who=who[:400]).delete()
