"""Sentences still to be spoken: a wording's id and what goes into it.

Core never holds a language. It returns ``Words``; a surface speaks them in the reader's own.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from decimal import Decimal

from quarterday.core.money import Money


@dataclass(frozen=True, slots=True)
class Rate:
    """A ratio that is read as a percentage: ``Rate(Decimal("0.08"))`` is 8 %."""

    value: Decimal
    decimals: int = 1


@dataclass(frozen=True, slots=True)
class Term:
    """A catalogue entry that has a name of its own in each language (coverage, cause, role …)."""

    catalogue: str
    id: str


Arg = Money | Rate | Term | Decimal | int | date | str


@dataclass(frozen=True, slots=True)
class Words:
    """A wording's id with its arguments, sorted by name."""

    id: str
    args: tuple[tuple[str, Arg | Words | tuple[Arg | Words, ...]], ...] = ()


Said = Arg | Words | tuple[Arg | Words, ...]


def words(id: str, **args: Said) -> Words:
    """Return the sentence ``id`` with ``args``; a tuple is spoken as a list ("a, b and c")."""
    return Words(id, tuple(sorted(args.items())))
