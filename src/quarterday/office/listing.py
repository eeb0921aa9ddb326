"""The renewals of the book, in the order in which they come."""

from __future__ import annotations

from datetime import date
from decimal import Decimal

from quarterday.core.dates import Period
from quarterday.store import ledger
from quarterday.store.ledger import Listed


def renewals(due: tuple[date, date] | None = None, search: str = "") -> tuple[Listed, ...]:
    """Return the book by renewal date, then name; ``due`` keeps dates from .. to (excluded)."""
    found = ledger.listed(Period(*due) if due else None, search)
    return tuple(sorted(found, key=lambda listed: listed.renewal_date or date.max))


def change(listed: Listed) -> Decimal | None:
    """Return the offered premium against the expiring one as a ratio; None where unknown."""
    if listed.premium_offered is None or not listed.premium_expiring:
        return None
    return listed.premium_offered / listed.premium_expiring - 1
