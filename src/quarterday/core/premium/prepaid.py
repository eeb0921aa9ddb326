"""Spread a premium over the months it is for, and write it as the lines of a journal.

A payment for a year of cover is an asset that is used up day by day. Each month bears its days;
where a fiscal year ends within a month, that month is cut there. Every fund bears its own part,
and months and funds both add up to the cent.
"""

from __future__ import annotations

import calendar
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from decimal import Decimal
from fractions import Fraction
from itertools import groupby, pairwise
from operator import attrgetter

from quarterday.core.dates import Period, add_months
from quarterday.core.given import Unusable
from quarterday.core.premium.rounding import controlled, to_margins
from quarterday.core.words import Words, words

Amounts = Mapping[str, Decimal]
YEAR_END = "12-31"


@dataclass(frozen=True, slots=True)
class Slice:
    """The days of one month in one fiscal year, and what each fund bears for them.

    ``fiscal_year`` is the day on which that year ends.
    """

    days: Period
    fiscal_year: date
    amounts: Amounts

    @property
    def total(self) -> Decimal:
        """What all funds bear for these days."""
        return sum(self.amounts.values(), Decimal(0))

    @property
    def last_day(self) -> date:
        """The last of these days."""
        return self.days.end - timedelta(days=1)


def year_end(text: str | None, year: int) -> date:
    """Return the day on which a fiscal year ends in ``year``; ``text`` is a month and a day.

    ``02-29`` and later days a month does not have are its last day. 31 December when not said.
    Unusable when it is no month and day.
    """
    month, _, day = (text or YEAR_END).partition("-")
    if not (month.isdigit() and day.isdigit() and 1 <= int(month) <= 12 and 1 <= int(day) <= 31):  # noqa: PLR2004
        raise Unusable(words("prepaid-year-end", value=str(text)))
    return date(year, int(month), min(int(day), calendar.monthrange(year, int(month))[1]))


def fiscal_year_of(day: date, ends: str | None) -> date:
    """Return the last day of the fiscal year that ``day`` falls in."""
    this = year_end(ends, day.year)
    return this if day <= this else year_end(ends, day.year + 1)


def _cuts(term: Period, ends: str | None) -> list[date]:
    """Return the days on which a slice begins, and the end of the term."""
    month = add_months(term.start.replace(day=1), 1)
    firsts = []
    while month < term.end:
        firsts.append(month)
        month = add_months(month, 1)
    years = range(term.start.year, term.end.year + 1)
    after = (year_end(ends, year) + timedelta(days=1) for year in years)
    inside = {day for day in (*firsts, *after) if term.start < day < term.end}
    return [term.start, *sorted(inside), term.end]


def spread(totals: Amounts, term: Period, fiscal_year_end: str | None = None) -> tuple[Slice, ...]:
    """Return what each fund bears in each month of ``term``, by days, in whole cents.

    ``totals`` is what each fund bears in all. A fund's months sum to its total, and no month of
    all funds is a cent off its exact part. Unusable when the fiscal year end is no day.
    """
    days = [Period(a, b) for a, b in pairwise(_cuts(term, fiscal_year_end))]
    exact = {
        (part.start, fund): Fraction(total) * part.days / term.days
        for part in days
        for fund, total in totals.items()
    }
    rounded = controlled(exact)
    return tuple(
        Slice(
            days=part,
            fiscal_year=fiscal_year_of(part.start, fiscal_year_end),
            amounts={fund: rounded[part.start, fund] for fund in totals},
        )
        for part in days
    )


def by_fiscal_year(slices: Iterable[Slice]) -> dict[date, Decimal]:
    """Return what each fiscal year bears, by its last day, in order."""
    groups = groupby(slices, key=attrgetter("fiscal_year"))
    return {year: sum((s.total for s in some), Decimal(0)) for year, some in groups}


@dataclass(frozen=True, slots=True)
class Due:
    """A payment of the journal: what it pays of the premium, and the plan's charge on top."""

    on: date
    billed: Decimal
    charge: Decimal = Decimal(0)


@dataclass(frozen=True, slots=True)
class JournalLine:
    """One line of a journal; either ``debit`` or ``credit`` is zero."""

    date: date
    account: Words
    fund: str
    debit: Decimal
    credit: Decimal
    memo: Words


def journal(
    totals: Amounts, slices: Sequence[Slice], payments: Sequence[Due]
) -> tuple[JournalLine, ...]:
    """Return the journal of a term, in order of day: owed, used up month by month, and paid.

    On the first day the premium becomes prepaid and owed; each payment settles its part, its
    charge is an expense of its day; each month's part becomes expense on its last day. Debits
    equal credits on every day and for every fund. ``payments`` settle exactly the sum of
    ``totals`` (ValueError otherwise); where nothing is owed there is nothing to settle.
    """
    first = slices[0].days.start
    opening = _booked(first, "prepaid", "payable", totals, words("journal-memo-opening"))
    used = (
        line
        for part in slices
        for line in _booked(
            part.last_day, "expense", "prepaid", part.amounts,
            words("journal-memo-month", month=part.days.start, end=part.last_day),
        )
    )  # fmt: skip
    lines = (*opening, *used, *_payments(totals, payments))
    return tuple(sorted(lines, key=lambda line: line.date))


def _payments(totals: Amounts, payments: Sequence[Due]) -> Iterator[JournalLine]:
    if not any(totals.values()):
        return
    billed = {number: due.billed for number, due in enumerate(payments)}
    settled = to_margins(billed, totals)
    charges = {number: due.charge for number, due in enumerate(payments) if due.charge}
    shares = {
        (n, fund): Fraction(charge) * Fraction(part) / sum(map(Fraction, totals.values()))
        for n, charge in charges.items()
        for fund, part in totals.items()
    }
    borne = controlled(shares)
    for n, due in enumerate(payments):
        memo = words("journal-memo-payment", n=n + 1, count=len(payments))
        yield from _booked(due.on, "payable", "bank", {f: settled[n, f] for f in totals}, memo)
        if due.charge:
            yield from _booked(due.on, "charge", "bank", {f: borne[n, f] for f in totals}, memo)


def _booked(
    day: date, debit: str, credit: str, amounts: Amounts, memo: Words
) -> Iterator[JournalLine]:
    """Yield a debit and a credit for each fund; an amount below zero goes the other way."""
    for fund, amount in amounts.items():
        if not amount:
            continue
        to, of = (debit, credit) if amount > 0 else (credit, debit)
        none = Decimal("0.00")
        yield JournalLine(day, words(f"journal-{to}"), fund, abs(amount), none, memo)
        yield JournalLine(day, words(f"journal-{of}"), fund, none, abs(amount), memo)
