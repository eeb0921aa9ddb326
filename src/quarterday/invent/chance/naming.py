"""Made-up names: no two organisations of a book share theirs."""

from __future__ import annotations

from stdnum import luhn

from quarterday.invent.chance.data import names
from quarterday.invent.chance.dice import Dice

NEVER_ISSUED = 1_000_000  # written with eight digits it begins with a zero
STRIDE = 7919  # a prime, so that neighbours in the book have unlike names


def town(at: int, language: str) -> str:
    """Return the town number ``at`` of a language; after the last one they begin again."""
    parts = names()["towns"][language]
    at, first = divmod(at, len(parts["first"]))
    at, last = divmod(at, len(parts["last"]))
    after = parts["after"][at % len(parts["after"])]
    return f"{parts['first'][first]}{parts['last'][last]}{after}"


def towns(language: str) -> int:
    """Return how many towns a language has."""
    parts = names()["towns"][language]
    return len(parts["first"]) * len(parts["last"]) * len(parts["after"])


def organisation(number: int, kind: str, language: str) -> tuple[str, str]:
    """Return the name and the town of organisation ``number``; two numbers never share a name."""
    patterns = names()["organisations"][language][kind]
    many = len(patterns) * towns(language)
    again, at = divmod(number, many)
    place, pattern = divmod(at * STRIDE % many, len(patterns))
    where = town(place, language)
    name = patterns[pattern].format(town=where)
    return (f"{name} ({again + 1})" if again else name), where


def person(dice: Dice, language: str) -> str:
    """Return a person's name as is usual in the language."""
    parts = names()["people"][language]
    return f"{dice.one(parts['first'])} {dice.one(parts['last'])}"


def registration_number(number: int, is_right: bool) -> str:
    """Return a charity's number: nine digits that satisfy Luhn's check, or fail it, and RR0001.

    Its first digit is zero, which no real number has (from memory).
    """
    body = f"{NEVER_ISSUED + number:08d}"
    check = luhn.calc_check_digit(body)
    return f"{body}{check if is_right else (int(check) + 3) % 10}RR0001"
