"""What a percentage deductible comes to in money, where the terms give the amount it is of.

A percentage of the value or of the limit is counted on the sum insured of its line; one of the
loss, on a loss of that size, which is the largest one that counts. Common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from decimal import Decimal

from quarterday.core.figure import Figure
from quarterday.core.file.fold import File
from quarterday.core.file.records import Terms
from quarterday.core.file.records.terms import Coverage
from quarterday.core.money import Money
from quarterday.core.review.rules.terms.evidence import cover, fact_of, line_of
from quarterday.core.terms.difference import Difference, DifferenceKind
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


def _own_part(line: Coverage) -> Decimal | None:
    """Return the most that the organisation bears of a loss; None where the terms do not fix it."""
    least = max(line.deductible or NOTHING, line.deductible_minimum or NOTHING)
    if not line.deductible_percent:
        return least
    if line.limit is None:
        return None
    part = max(least, line.deductible_percent * line.limit)
    return part if line.deductible_maximum is None else min(part, line.deductible_maximum)


@dataclass(frozen=True, slots=True)
class OwnPart:
    """A percentage deductible of new terms in money, and what the old ones come to."""

    terms: Terms
    line: Coverage
    percent: Decimal
    insured: Decimal
    amount: Decimal
    before: Decimal

    @property
    def more(self) -> Money:
        """What the organisation bears more of a loss than before."""
        return self.terms.money(self.amount - self.before)

    @property
    def phrase(self) -> Words:
        """A sentence that says the amount, what it is a share of, and what it is now."""
        share = self.percent * self.insured
        return words(
            "own-part",
            case="share" if self.amount == share else "least" if self.amount > share else "most",
            amount=self.terms.money(self.amount),
            percent=Rate(self.percent),
            insured=self.terms.money(self.insured),
            before=self.terms.money(self.before),
        )

    def figure(self, file: File) -> Figure:
        """Return the amount as a figure made of the percentage and the sum insured."""
        part = line_of(*self.line.place)
        return Figure(
            id=f"terms.own-part/{self.line.coverage}/{self.line.location}",
            value=self.terms.money(self.amount),
            unit="money",
            label=words("figure-own-part", coverage=cover(self.line.coverage)),
            how=words("how-own-part"),
            inputs=(
                fact_of(file, self.terms, part, "deductible-percent", Rate(self.percent)),
                fact_of(file, self.terms, part, "limit", self.terms.money(self.insured)),
            ),
        )


def largest_part(before: Terms, after: Terms, found: Iterable[Difference]) -> OwnPart | None:
    """Return the percentage deductible among the differences that moves most to the organisation.

    None when no percentage grew, or the terms do not give the amount that it is a share of.
    """
    places = {(d.coverage, d.location) for d in found if d.kind in PERCENTAGES}
    parts = [_between(before, after, *place) for place in sorted(places)]
    known = [part for part in parts if part and part.more.amount > 0]
    return max(known, key=lambda part: part.more.amount, default=None)


def _between(before: Terms, after: Terms, coverage: str, location: str) -> OwnPart | None:
    old, new = before.find(coverage, location), after.find(coverage, location)
    if before.currency != after.currency or not (old and new and new.deductible_percent):
        return None
    was, now = _own_part(old), _own_part(new)
    if was is None or now is None or new.limit is None:
        return None
    return OwnPart(after, new, new.deductible_percent, new.limit, now, was)
