"""The renewals of the book, in the order in which they come."""

from __future__ import annotations

from datetime import date
from decimal import Decimal
from typing import Any, Protocol

from quarterday.catalogue.speech import Speech
from quarterday.core.dates import Period
from quarterday.core.money import Money
from quarterday.core.words import words
from quarterday.office.plain import value
from quarterday.store import ledger
from quarterday.store.day_list import Line, Step
from quarterday.store.ledger import Listed


class Premiums(Protocol):
    """A line of a list with a file's premiums before tax, in its currency."""

    @property
    def currency(self) -> str: ...  # noqa: D102 - a field
    @property
    def premium_expiring(self) -> Decimal | None: ...  # noqa: D102 - as above
    @property
    def premium_offered(self) -> Decimal | None: ...  # noqa: D102 - as above


def renewals(due: tuple[date, date] | None = None, search: str = "") -> tuple[Listed, ...]:
    """Return the book by renewal date, then name; ``due`` keeps dates from .. to (excluded)."""
    found = ledger.listed(Period(*due) if due else None, search)
    return tuple(sorted(found, key=lambda listed: listed.renewal_date or date.max))


def change(listed: Premiums) -> Decimal | None:
    """Return the offered premium against the expiring one as a ratio; None where unknown."""
    if listed.premium_offered is None or not listed.premium_expiring:
        return None
    return listed.premium_offered / listed.premium_expiring - 1


def premium(line: Premiums, amount: Decimal | None) -> Money | None:
    """Return an amount of a line as money in the line's currency."""
    return Money(amount, line.currency) if amount is not None else None


def plain(listed: Listed) -> dict[str, Any]:
    """Return a line as JSON can hold it."""
    return {
        "file": listed.file,
        "name": listed.name,
        "province": listed.province,
        "renewal": value(listed.renewal_date),
        **premiums(listed),
    }


def premiums(line: Premiums) -> dict[str, Any]:
    """Return a line's premiums, and the change from one to the other, as JSON can hold them."""
    return {
        "premium_expiring": value(premium(line, line.premium_expiring)),
        "premium_offered": value(premium(line, line.premium_offered)),
        "change": value(change(line)),
    }


def plain_line(line: Line) -> dict[str, Any]:
    """Return a line of the day's list as JSON can hold it: the line, and where its renewal is."""
    return {
        "file": line.file,
        "name": line.name,
        "province": line.province,
        "renewal": value(line.renewal),
        **premiums(line),
        "office": line.office,
        "broker": line.broker,
        "state": line.state,
        "late": line.late,
        "impossible": line.impossible,
        "next_step": line.next_step,
        "next_who": line.next_who,
        "next_by": value(line.next_by),
    }


def plain_step(step: Step, speech: Speech) -> dict[str, Any]:
    """Return a line of the diary as JSON can hold it."""
    return {
        "file": step.file,
        "name": step.name,
        "renewal": value(step.renewal),
        "step": step.step,
        "what": speech.say(words(f"diary-{step.step}")),
        "who": step.who,
        "start_by": value(step.start_by),
        "latest": value(step.latest),
        "is_late": step.is_late,
        "is_impossible": step.is_impossible,
    }
