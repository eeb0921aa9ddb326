"""Claims that two loss runs both show: linked, and counted once.

An insurer that takes over a book, or a second run in another layout, writes the same event under
another number. Two claims are one event where day of loss and cause agree, the places do not
contradict, and either the numbers are the same but for their marks or the amounts are the same.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from datetime import date
from decimal import Decimal

from quarterday.core.file.records import Claim


def counted(claims: Iterable[Claim]) -> tuple[Claim, ...]:
    """Return ``claims`` with each event once: as it was valued last."""
    return tuple(group[0] for group in linked(claims))


def linked(claims: Iterable[Claim]) -> tuple[tuple[Claim, ...], ...]:
    """Return claims grouped by event, in order of day; within a group the newest valuation first.

    Of equal valuations the claim with the higher incurred amount stands.
    """
    groups: list[list[Claim]] = []
    alike: dict[tuple[date, str], list[list[Claim]]] = {}  # by what every group has in common
    for claim in sorted(claims, key=lambda c: (c.date_of_loss, c.number)):
        near = alike.setdefault((claim.date_of_loss, claim.cause), [])
        home = next((g for g in near if any(same_event(claim, other) for other in g)), None)
        if home is None:
            home = []
            groups.append(home)
            near.append(home)
        home.append(claim)
    return tuple(tuple(sorted(group, key=_newest)) for group in groups)


def _newest(claim: Claim) -> tuple[int, Decimal, str]:
    valued = claim.valued_on or date.min
    return -valued.toordinal(), -claim.incurred, claim.number


def duplicates(claims: Iterable[Claim]) -> Iterator[tuple[Claim, ...]]:
    """Yield each event that stands under several numbers."""
    yield from (group for group in linked(claims) if len(group) > 1)


def same_event(a: Claim, b: Claim) -> bool:
    """Tell whether two claims are one event under two numbers."""
    if (a.date_of_loss, a.cause) != (b.date_of_loss, b.cause):
        return False
    if a.location and b.location and a.location != b.location:
        return False
    return _bare(a.number) == _bare(b.number) or (a.incurred == b.incurred != 0)


def _bare(number: str) -> str:
    return "".join(c for c in number.casefold() if c.isalnum()).lstrip("0")
