"""Books of any size, the same for the same seed."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, timedelta
from typing import Any

from quarterday.invent.account import Account
from quarterday.invent.chance import cover, losses, people
from quarterday.invent.chance.dice import Dice
from quarterday.invent.chance.premises import premises
from quarterday.invent.notation.records import records

LOSS_RUN_AGE = timedelta(days=25)


def make_book(files: int, seed: int, as_of: date) -> Iterator[Account]:
    """Yield ``files`` invented accounts, one after the other.

    Each is drawn from its own number and ``seed`` alone, so an account is the same however many
    come before or after it.
    """
    for number in range(1, files + 1):
        yield account(number, seed, as_of)


def account(number: int, seed: int, as_of: date) -> Account:
    """Return one account of an invented book, by its number from 1."""
    told = _told(number, seed, as_of)
    return Account(f"B{number:06d}", tuple(records(told, as_of - LOSS_RUN_AGE)))


def _told(number: int, seed: int, as_of: date) -> dict[str, Any]:
    dice = Dice(f"{seed}/{number}")
    of = people.who(dice, number)
    places = premises(dice, of, as_of)
    persons = people.contacts(dice, of, as_of)
    profile = people.operations(dice, of, as_of)
    return {
        "office": "port-ellery",
        "mail": f"b{number:06d}",
        "organisation": people.organisation(dice, of, as_of),
        "contacts": persons,
        "authorities": people.authorities(dice, persons),
        "operations": profile,
        "buildings": {place.id: place.facts for place in places},
        "valuations": [valuation for place in places for valuation in place.valuations],
        "policy": cover.policy(dice, of, places, profile["does"], as_of),
        "claims": losses.losses(dice, of, places, as_of - LOSS_RUN_AGE),
        "interests": people.interests(dice, of, as_of, places[0].id),
    }
