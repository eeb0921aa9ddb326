"""What a coinsurance clause of income is measured against: one function for every page.

Two measures are in use. Wordings of gross earnings, and of net income and operating expenses, count
a year's income whole, whatever expenses would stop (ISO CP 00 30 as printed in a public record of
the City of Santa Ana, page 98; IBC form 4029, "no other costs shall be deducted", as course notes
at docsbay.net give it). Wordings of profits count net profit and standing charges, which leaves out
the expenses that stop (h-t.ca, "Factors to consider in choosing an amount"). The course notes and
the last page were read as excerpts. Where the terms do not say which, a parameter says how much of
those expenses counts, and the figure says so.

The year is that of the policy, and the income is what needs the premises ("at the described
premises", CP 00 30 from memory).
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from datetime import date
from decimal import Decimal

from quarterday.core.figure import Figure, Node, Parameter
from quarterday.core.file.records import Terms
from quarterday.core.file.records.terms import Coverage
from quarterday.core.income.earnings import Earnings
from quarterday.core.income.worksheet import COUNTED, counted_part
from quarterday.core.review.case import Case
from quarterday.core.values.cost import number
from quarterday.core.values.facts import line_fact
from quarterday.core.values.index import DOLLAR
from quarterday.core.words import Term, words

LINE = "loss-of-income"


def measured(case: Case, terms: Terms, line: Coverage | None, day: date) -> Figure | None:
    """Return the year's income that the clause of an income line counts for a loss on ``day``.

    To the dollar; None where nobody told an income. ``line`` None: that of terms without one.
    """
    of = Earnings(case, terms)
    if not of.is_known:
        return None
    year, usual = of.year(day), case.parameter(COUNTED)
    said = line.coinsurance_of if line else None
    part = counted_part(said, number(usual))
    place = f"@{line.location}" if line else ""
    return Figure(
        id=f"income-exposure{place}/{of.grown(day)}",
        value=year.counted(part).rounded(DOLLAR),
        unit="money",
        label=words("income-exposure"),
        how=words("income-how-exposure", years=of.grown(day), counts=_case(part)),
        inputs=(*_inputs(of), *_reason(case, terms, line, usual)),
        caution=words("income-caution-clause") if said is None and year.stops else None,
    )


def _case(part: Decimal) -> str:
    return "whole" if part == 1 else "less" if not part else "part"


def _inputs(of: Earnings) -> Iterator[Node]:
    yield from of.amounts
    yield from of.facts("premises_share", "payroll_kept", unit="rate")
    yield of.growth


def _reason(case: Case, terms: Terms, line: Coverage | None, usual: Parameter) -> tuple[Node, ...]:
    """Return why so much counts: the terms where they say it, else the parameter."""
    if line is None or line.coinsurance_of is None:
        return (usual,)
    if case.file.get(Terms, terms.key) != terms:  # terms that only might stand have no entry
        return ()
    fact = line_fact(case.file, terms, line, "coinsurance_of", "text")
    return (replace(fact, value=Term("coinsurance-of", line.coinsurance_of)),)
