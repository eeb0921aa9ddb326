"""What a closed building costs in income, as a part of the damage that closes it.

Damage closes a building for a part of the months that a total loss does, in proportion, until a
share of what stands there is gone; then for all of them. The income lost is what the income
worksheet finds on average over the months in which a closure may begin, spread evenly over it. It
is counted for the building alone that takes longest: nobody divides an income among buildings.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from decimal import Decimal
from itertools import pairwise

from quarterday.core.figure import Figure
from quarterday.core.file.records import Terms
from quarterday.core.file.records.terms import Coverage
from quarterday.core.income.clause import LINE
from quarterday.core.income.closing import Closing, closing
from quarterday.core.review.case import Case
from quarterday.core.risk.perils import Layered
from quarterday.core.risk.sampling import exact, shown
from quarterday.core.terms.losses.loss import HOURS_A_MONTH
from quarterday.core.values.cost import number
from quarterday.core.words import Rate, words

WHOLE = "risk.closed-whole-from"


@dataclass(frozen=True, slots=True)
class Lost:
    """What a total loss stops: ``income`` over ``months``, dollars, of the building at ``place``.

    ``whole`` is the share of what stands there from which it is closed for all of them. The first
    ``waiting`` hours are told apart, and so are the months where a limit holds for each
    (``by_month``).
    """

    place: str
    months: int
    income: float
    whole: float
    causes: frozenset[str]
    waiting: int
    by_month: bool
    figure: Figure

    def parts(self, worth: float) -> Iterator[Layered]:
        """Yield the income that a loss of so much of ``worth`` stops, by layers of the loss.

        Months are numbered from the first that no waiting period reaches.
        """
        most = worth * self.whole
        begin = self.waiting / HOURS_A_MONTH
        first = -(-self.waiting // HOURS_A_MONTH)
        later = range(int(begin) + 1, self.months) if self.by_month else ()
        ends = [begin, *(month for month in later if month > begin), self.months]
        share = self.income / most
        at = most / self.months
        if begin:
            yield Layered("income", share, 0.0, begin * at, hours=self.waiting)
        for month, (start, end) in enumerate(pairwise(ends), start=first + 1):
            yield Layered("income", share, start * at, end * at, month=month)


def lost_income(case: Case, base: Terms, all_terms: Iterable[Terms]) -> Lost | None:
    """Return what a closure stops; None where nothing is known, or closing saves what it loses.

    ``all_terms`` are those to be compared: the longest of their waiting periods is told apart.
    """
    of = closing(case, base)
    if of is None:
        return None
    income = of.sheet.usual
    lines = [line for terms in all_terms for line in terms.coverages if line.coverage == LINE]
    waiting = max((line.waiting_hours or 0 for line in lines), default=0)
    months = of.sheet.closure.months
    if income.amount <= 0 or waiting >= months * HOURS_A_MONTH:
        return None
    return Lost(
        place=of.building.id,
        months=months,
        income=float(income.amount),
        whole=float(number(case.parameter(WHOLE))),
        causes=frozenset(case.reference.coverages[LINE].answers),
        waiting=waiting,
        by_month=any(_is_monthly(line) for line in lines),
        figure=_figure(case, of, income.amount),
    )


def _is_monthly(line: Coverage) -> bool:
    return line.monthly_limit is not None


def _figure(case: Case, of: Closing, income: Decimal) -> Figure:
    whole = case.parameter(WHOLE)
    return Figure(
        id="risk-closure",
        value=shown(exact(float(income)), of.terms.currency),
        unit="money",
        label=words("risk-closure", building=of.building.name, months=of.sheet.closure.months),
        how=words("risk-how-closure", share=Rate(number(whole), 0)),
        inputs=(*of.inputs, whole),
        caution=of.caution,
    )
