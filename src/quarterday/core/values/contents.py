"""The contents worksheet: what stands in a building, by category.

A valuation of contents that names a category (kitchen, instruments, office …) is one line of the
worksheet; one that names none is the whole.
"""

from __future__ import annotations

from quarterday.core.figure import Figure
from quarterday.core.file.records import Building, Valuation
from quarterday.core.money import Money, total
from quarterday.core.review.case import Case
from quarterday.core.values.facts import Maker
from quarterday.core.values.index import DOLLAR
from quarterday.core.words import words


def lines(case: Case, building: Building) -> tuple[Valuation, ...]:
    """Return the newest line of each category, or the newest whole where that says more.

    A list that is not complete must not make the whole smaller, nor an old whole a newer list.
    """
    made = [v for v in case.file.valuations(building.id, "contents") if v.valued_on <= case.as_of]
    whole = next((v for v in reversed(made) if v.feature is None), None)
    newest = {v.feature.casefold(): v for v in made if v.feature is not None}
    listed = tuple(newest[category] for category in sorted(newest))
    if whole is None or whole.amount < sum(line.amount for line in listed):
        return listed
    return (whole,)


def worksheet(case: Case, building: Building) -> Figure | None:
    """Return what the contents of a building cost to replace, to the dollar; None when unknown.

    Contents are not indexed: no index of them is part of the reference data.
    """
    found = lines(case, building)
    if not found:
        return None
    currency = case.terms.currency if case.terms else "CAD"
    amount = total(Money(line.amount, currency) for line in found).rounded(DOLLAR)
    facts = tuple(case.file.fact(line, "amount", "money", currency) for line in found)
    named = tuple(line.feature for line in found if line.feature)
    how = (
        words("values-how-contents-lines", categories=named, n=len(named))
        if named
        else words("values-how-contents-whole", day=found[0].valued_on)
    )
    return Maker(building)("contents-worksheet", amount, "money", how, facts)
