"""A whole book's automatic increases against the construction index, by province.

Only sums are kept, so that a book of any size can stream by.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field
from datetime import date
from decimal import Decimal
from typing import Self

from quarterday.core.file.fold import File
from quarterday.core.money import Money
from quarterday.core.reference import Reference
from quarterday.core.review.case import Case
from quarterday.core.values.building import BuildingPicture
from quarterday.core.values.index import DOLLAR

ZERO = Decimal(0)


@dataclass(slots=True)
class Line:
    """The buildings of a province that could be compared; amounts in dollars.

    ``valued`` is what they were valued at, each on its own day; ``grown`` the same with the
    automatic increases since, ``cost`` with the index, both at each one's renewal. ``short`` is
    what total losses would lack: the cost rebuilt above what the policy pays, building by building.
    """

    buildings: int = 0
    behind: int = 0  # of them, how many increases stayed behind the index
    valued: Decimal = ZERO
    grown: Decimal = ZERO
    cost: Decimal = ZERO
    short: Decimal = ZERO

    def __iadd__(self, other: Line) -> Self:
        for name in ("buildings", "behind", "valued", "grown", "cost", "short"):
            setattr(self, name, getattr(self, name) + getattr(other, name))
        return self

    @property
    def gap(self) -> Decimal:
        """How far the increases are behind the index in dollars; negative when ahead."""
        return self.cost - self.grown

    @property
    def behind_share(self) -> Decimal:
        """The gap as a share of the cost."""
        return self.gap / self.cost if self.cost else ZERO

    @property
    def increases(self) -> Decimal:
        """What the increases added since the valuations, as a ratio."""
        return self.grown / self.valued - 1 if self.valued else ZERO

    @property
    def index(self) -> Decimal:
        """How far the index rose since the valuations, as a ratio."""
        return self.cost / self.valued - 1 if self.valued else ZERO


@dataclass(slots=True)
class Book:
    """The lines by province, the total, and what could not be compared."""

    currency: str
    provinces: dict[str, Line] = field(default_factory=dict)
    total: Line = field(default_factory=Line)
    left_out: int = 0  # insured buildings without a valuation, an increase, or of another currency
    no_renewal: int = 0  # files

    def money(self, amount: Decimal) -> Money:
        """Return an amount in the book's currency."""
        return Money(amount, self.currency)

    def add(self, province: str, line: Line) -> None:
        """Count a building in its province and in the total."""
        of_province = self.provinces.setdefault(province, Line())
        of_province += line
        self.total += line


def line_of(picture: BuildingPicture) -> Line | None:
    """Return one building's line; None when its increases cannot be compared with the index."""
    increases, costs = picture.increases, picture.costs
    if increases is None or costs is None:
        return None
    valued = costs.at_valuation.money.amount
    gap = increases.gap.money.rounded(DOLLAR).amount
    cost = costs.at_renewal.money.amount
    return Line(
        buildings=1,
        behind=int(gap > 0),
        valued=valued,
        grown=cost - gap,
        cost=cost,
        short=picture.shortfall.money.amount if picture.shortfall else ZERO,
    )


def tally(cases: Iterable[Case], currency: str = "CAD") -> Book:
    """Return the book's lines; each case is looked at once and not kept."""
    book = Book(currency)
    for case in cases:
        if case.file.renewal is None:
            book.no_renewal += 1
            continue
        for province, line in _lines(case, currency):
            if line is None:
                book.left_out += 1
            else:
                book.add(province, line)
    return book


def _lines(case: Case, currency: str) -> Iterator[tuple[str, Line | None]]:
    for picture in case.pictures.values():
        same = picture.terms.currency == currency
        yield case.file.province_of(picture.building), line_of(picture) if same else None


def cases(files: Iterable[File], reference: Reference, as_of: date) -> Iterator[Case]:
    """Yield a case for each file, as on a day."""
    return (Case(file, reference, as_of) for file in files)
