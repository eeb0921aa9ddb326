"""Marks with which the next part of a list is asked for; nobody needs to read them."""

import json
from base64 import urlsafe_b64decode, urlsafe_b64encode
from collections.abc import Sequence
from datetime import date

from quarterday.api.problems import Problem
from quarterday.core.words import words


def mark(*parts: str | date | None) -> str:
    """Return the mark of the last line of a part."""
    plain = json.dumps([str(part) if isinstance(part, date) else part for part in parts])
    return urlsafe_b64encode(plain.encode()).decode().rstrip("=")


def read(said: str, count: int) -> tuple[date | None, Sequence[str]]:
    """Return the day and the other parts of a mark; Problem when it was not given out here."""
    try:
        parts = json.loads(urlsafe_b64decode(said + "=" * (-len(said) % 4)))
        on = None if parts[0] is None else date.fromisoformat(parts[0])
        rest = [str(part) for part in parts[1:]]
    except (ValueError, TypeError, KeyError, IndexError, RecursionError):
        raise _wrong(said) from None
    if len(rest) != count or "\0" in "".join(rest):
        raise _wrong(said)
    return on, rest


def _wrong(said: str) -> Problem:
    return Problem("refused", words("api-after", value=ascii(said[:60])))
