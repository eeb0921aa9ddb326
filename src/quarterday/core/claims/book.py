"""A whole book's claims beside its premium: by cause, province, class, insurer and year of loss.

Each file brings its own experience, so the book is the sum of what the files show: the premium of
the terms that end now stands for every year, and a large claim counts up to a cap. Claims and
premium stand under the insurer of those terms, whose record they are at the renewal. Only sums are
kept, so that a book of any size can stream by.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field
from datetime import date, timedelta
from decimal import Decimal
from typing import Literal, Self

from quarterday.core.claims.experience import CAP, Experience, experience
from quarterday.core.file.records import Claim, Organisation, Terms
from quarterday.core.money import Money, round_to
from quarterday.core.review.case import Case
from quarterday.core.values.cost import number

ZERO = Decimal(0)
Axis = Literal["cause", "province", "class", "insurer", "year"]
AXES: tuple[Axis, ...] = ("cause", "province", "class", "insurer", "year")


@dataclass(slots=True)
class Line:
    """Some of the book; amounts in its currency.

    ``incurred`` is what claims cost the insurers, ``capped`` with each counted up to the cap;
    ``premium`` is what the days that passed earned. ``files`` counts those that were insured, of a
    cause those that it struck.
    """

    files: int = 0
    claims: int = 0
    incurred: Decimal = ZERO
    capped: Decimal = ZERO
    premium: Decimal = ZERO

    def __iadd__(self, other: Line) -> Self:
        for name in ("files", "claims", "incurred", "capped", "premium"):
            setattr(self, name, getattr(self, name) + getattr(other, name))
        return self

    @property
    def ratio(self) -> Decimal | None:
        """Claims as a ratio of the premium; None where nothing was charged."""
        return self.incurred / self.premium if self.premium else None

    @property
    def capped_ratio(self) -> Decimal | None:
        """Capped claims as a ratio of the premium; None where nothing was charged."""
        return self.capped / self.premium if self.premium else None


@dataclass(slots=True)
class BookExperience:
    """The book's lines by axis and what tells them apart on it, each file over its own ``years``.

    A line of a cause has the premium of the whole book. ``no_premium`` counts the files that show
    none, ``other_currency`` those in another, ``no_renewal`` those without a renewal date: nothing
    of them is in the lines.
    """

    years: int
    currency: str = "CAD"
    lines: dict[Axis, dict[str, Line]] = field(default_factory=lambda: {axis: {} for axis in AXES})
    total: Line = field(default_factory=Line)
    no_premium: int = 0
    other_currency: int = 0
    no_renewal: int = 0

    def money(self, amount: Decimal) -> Money:
        """Return an amount in the book's currency."""
        return Money(amount, self.currency)

    def add(self, case: Case) -> None:
        """Count a file."""
        file = case.file
        if file.get(Organisation) is None or file.renewal is None:
            self.no_renewal += 1
            return
        terms, found = case.expiring, experience(case, self.years)
        if terms is None or found is None:
            self.no_premium += 1
        elif terms.currency != self.currency:
            self.other_currency += 1
        else:
            self._count(case, terms, found)

    def _count(self, case: Case, terms: Terms, found: Experience) -> None:
        cap, about = number(case.parameter(CAP)), case.file.organisation
        of_claims = [(claim, _line(claim, cap)) for claim in found.claims]
        whole = Line(files=1, premium=found.premium.money.amount)
        for claim, line in of_claims:
            whole += line
            self._at("cause", claim.cause, line)
            self._at("year", str(claim.date_of_loss.year), line)
        for cause in {claim.cause for claim in found.claims}:
            self._at("cause", cause, Line(files=1))
        for year, premium in _by_year(found):
            self._at("year", str(year), Line(files=1, premium=premium))
        self._at("province", about.province, whole)
        self._at("class", about.organisation_class, whole)
        self._at("insurer", terms.insurer or "", whole)
        self.total += whole

    def _at(self, axis: Axis, name: str, line: Line) -> None:
        kept = self.lines[axis].setdefault(name, Line())
        kept += line

    def of(self, axis: Axis) -> list[tuple[str, Line]]:
        """Return the lines of an axis: years in order, else what cost the insurers most first."""
        found = self.lines[axis].items()
        if axis == "year":
            return sorted(found)
        if axis == "cause":
            for _, line in found:
                line.premium = self.total.premium
        return sorted(found, key=lambda item: (-item[1].incurred, item[0]))


def _line(claim: Claim, cap: Decimal) -> Line:
    return Line(0, 1, claim.incurred, min(claim.incurred, cap))


def _by_year(found: Experience) -> Iterator[tuple[int, Decimal]]:
    """Yield what each calendar year earned of a file's premium, by days; they sum up exactly."""
    period, premium, told = found.period, found.premium.money.amount, ZERO
    for year in range(period.start.year, (period.end - timedelta(days=1)).year + 1):
        days = (min(period.end, date(year + 1, 1, 1)) - period.start).days
        earned = round_to(premium * days / period.days)
        yield year, earned - told
        told = earned


def tally(cases: Iterable[Case], years: int) -> BookExperience:
    """Return the experience of a book; each case is looked at once and not kept."""
    book = BookExperience(years)
    for case in cases:
        book.add(case)
    return book
