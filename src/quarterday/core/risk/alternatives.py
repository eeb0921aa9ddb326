"""What could stand next year: the expiring terms, the offer, and the offer with each option.

An option replaces the line of its coverage and place, or adds one. One that changes nothing but the
deductible is a choice of deductible.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Literal

from quarterday.core.file.records import Terms
from quarterday.core.file.records.terms import Option
from quarterday.core.money import Money
from quarterday.core.review.case import Case
from quarterday.core.terms.option import changes_deductible, is_bare, line_with

Kind = Literal["expiring", "offered", "option", "deductible"]


@dataclass(frozen=True, slots=True)
class Alternative:
    """Terms that could stand; ``option`` is what tells them from the offer, where one does."""

    id: str
    kind: Kind
    terms: Terms
    option: Option | None = None

    @property
    def price(self) -> Money | None:
        """What the option adds to the yearly premium before tax (negative: it saves)."""
        price = self.option.price if self.option else None
        return None if price is None else self.terms.money(price)


def base_of(case: Case) -> Alternative | None:
    """Return what the others are compared with: the offer, else the newest terms on file."""
    if case.offered is not None:
        return Alternative("offered", "offered", case.offered)
    if case.terms is not None:
        return Alternative("expiring", "expiring", case.terms)
    return None


def alternatives(case: Case) -> tuple[Alternative, ...]:
    """Return all alternatives, the base of comparison first; nothing when no terms are on file."""
    base = base_of(case)
    if base is None:
        return ()
    found = [base]
    if case.expiring is not None and base.kind == "offered":
        found.append(Alternative("expiring", "expiring", case.expiring))
    found += _options(base.terms)
    return tuple(found)


def _options(terms: Terms) -> Iterator[Alternative]:
    seen: dict[str, int] = {}
    for option in terms.options:
        taken = with_option(terms, option)
        if taken is None:
            continue
        id = f"{option.coverage}/{option.location}"
        seen[id] = seen.get(id, 0) + 1
        id = id if seen[id] == 1 else f"{id}/{seen[id]}"
        kind: Kind = "deductible" if _only_deductible(terms, option) else "option"
        yield Alternative(id, kind, taken, option)


def _only_deductible(terms: Terms, option: Option) -> bool:
    line = terms.find(option.coverage, option.location)
    if line is None or not changes_deductible(line, option):
        return False
    return option.limit is None or option.limit == line.limit


def with_option(terms: Terms, option: Option) -> Terms | None:
    """Return ``terms`` with ``option`` taken; None where it names no amount that would change."""
    line = terms.find(option.coverage, option.location)
    if is_bare(option) or (line is None and option.limit is None):
        return None
    taken = line_with(line, option)
    if taken == line:
        return None
    others = tuple(c for c in terms.coverages if c.place != taken.place)
    return terms.model_copy(update={"coverages": (*others, taken)})
