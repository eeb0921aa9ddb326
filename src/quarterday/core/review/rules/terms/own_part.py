"""What a percentage deductible comes to in money: as the machine takes it off the largest loss.

It is a part of what the terms say: the limit, what stands there is worth at the end of the coming
term, or the loss, of which the largest is that. A line for all places has one at each building, so
one event can meet them all. Where nobody valued what stands there, the sum insured is taken for it.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from datetime import date
from decimal import Decimal

from quarterday.core.figure import Figure, Node
from quarterday.core.file.records import Terms
from quarterday.core.file.records.terms import EVERYWHERE, Coverage
from quarterday.core.money import Money
from quarterday.core.review.case import Case
from quarterday.core.review.rules.terms.evidence import cover, fact_of, line_of
from quarterday.core.terms.difference import Difference, DifferenceKind
from quarterday.core.terms.percentage import part_of
from quarterday.core.terms.settling.account import values_on
from quarterday.core.terms.settling.asked import ALL_PROPERTY, Asked
from quarterday.core.terms.settling.deductibles import base_of
from quarterday.core.terms.settling.outcomes import last_day
from quarterday.core.terms.settling.refusals import Refused
from quarterday.core.values.index import DOLLAR
from quarterday.core.words import Rate, Words, words

NOTHING = Decimal(0)
PERCENTAGES: frozenset[DifferenceKind] = frozenset(
    {
        "deductible-form",
        "deductible-percent",
        "deductible-percent-of",
        "deductible-minimum",
        "deductible-maximum",
    }
)


@dataclass(frozen=True, slots=True)
class Own:
    """What the organisation bears of the largest loss under a line's deductible.

    ``base`` is what a percentage is a part of, over all places; ``evidence`` the values behind it,
    none where the sum insured stands for them.
    """

    amount: Decimal
    base: Decimal = NOTHING
    evidence: tuple[Node, ...] = ()


def _own(case: Case, terms: Terms, line: Coverage, day: date) -> Own | None:
    """Return what the organisation bears; None where the terms do not fix it."""
    if not line.deductible_percent:
        return Own(max(line.deductible or NOTHING, line.deductible_minimum or NOTHING))
    values = values_on(case, terms, day)
    asked, places = Asked(terms, case.reference, values, ()), tuple(_places(case, line))
    try:
        bases = [base_of(asked, line, place) for place in places]
    except Refused:
        return None
    known = values.evidence
    kinds = (line.coverage, *ALL_PROPERTY)
    of_value = line.deductible_percent_of != "limit"
    behind = {(kind, at): known[kind, at] for at in places for kind in kinds if (kind, at) in known}
    amount = sum((part_of(line, base) for base in bases), NOTHING)
    base = sum(bases, NOTHING)
    return Own(amount, base, tuple(behind.values()) if of_value else ()) if base else None


def _places(case: Case, line: Coverage) -> Iterator[str]:
    """Yield the places where the deductible is taken: of a line for all, at each building."""
    if line.location != EVERYWHERE or not case.file.buildings:
        yield line.location
        return
    yield from (building.id for building in case.file.buildings)


@dataclass(frozen=True, slots=True)
class OwnPart:
    """A percentage deductible of new terms in money, and what the old ones come to."""

    terms: Terms
    line: Coverage
    percent: Decimal
    own: Own
    before: Decimal

    @property
    def more(self) -> Money:
        """What the organisation bears more of a loss than before."""
        return self.terms.money(self.own.amount - self.before).rounded(DOLLAR)

    @property
    def phrase(self) -> Words:
        """A sentence that says the amount, what it is a share of, and what it is now."""
        amount, share = self.own.amount, self.percent * self.own.base
        money = self.terms.money
        base = words(
            "own-part-base", case=self._of, percent=Rate(self.percent), base=money(self.own.base)
        )
        return words(
            "own-part",
            case="share" if amount == share else "least" if amount > share else "most",
            amount=money(amount).rounded(DOLLAR),
            base=base,
            before=money(self.before).rounded(DOLLAR),
        )

    @property
    def _of(self) -> str:
        """What the percentage is of: the sum insured also stands for a value nobody knows."""
        if self.line.deductible_percent_of == "loss":
            return "loss"
        return "value" if self.own.evidence else "insured"

    def figure(self, case: Case) -> Figure:
        """Return the amount as a figure made of the percentage and what it is a part of."""
        part, file = line_of(*self.line.place), case.file
        percent = fact_of(file, self.terms, part, "deductible-percent", Rate(self.percent))
        behind: tuple[Node, ...] = self.own.evidence
        if not behind and self.line.limit is not None:
            limit = self.terms.money(self.line.limit)
            behind = (fact_of(file, self.terms, part, "limit", limit),)
        return Figure(
            id=f"terms.own-part/{self.line.coverage}/{self.line.location}",
            value=self.terms.money(self.own.amount).rounded(DOLLAR),
            unit="money",
            label=words("figure-own-part", coverage=cover(self.line.coverage)),
            how=words("how-own-part", case=self._of),
            inputs=(percent, *behind),
        )


def largest_part(
    case: Case, before: Terms, after: Terms, found: Iterable[Difference]
) -> OwnPart | None:
    """Return the percentage deductible among the differences that moves most to the organisation.

    None when no percentage grew, or nobody can say what it is a part of.
    """
    places = {(d.coverage, d.location) for d in found if d.kind in PERCENTAGES}
    parts = [_between(case, before, after, *place) for place in sorted(places)]
    known = [part for part in parts if part and part.more.amount > 0]
    return max(known, key=lambda part: part.more.amount, default=None)


def _between(
    case: Case, before: Terms, after: Terms, coverage: str, location: str
) -> OwnPart | None:
    old, new = before.find(coverage, location), after.find(coverage, location)
    if before.currency != after.currency or not (old and new and new.deductible_percent):
        return None
    day = last_day(after)
    was, now = _own(case, before, old, day), _own(case, after, new, day)
    if was is None or now is None:
        return None
    return OwnPart(after, new, new.deductible_percent, now, was.amount)
