"""The premium table, coverage × location, and whether the insurer's totals agree with it.

Premiums, flat charges, surcharges and discounts stand in the cells; a discount lowers the premium
whichever sign it was typed with. Fees stand apart. Subtotal = the cells; total = subtotal + fees +
tax.
"""

from __future__ import annotations

from collections.abc import Callable, Hashable, Iterable, Iterator, Mapping
from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from typing import Literal, TypeVar

from quarterday.core.figure import Figure
from quarterday.core.file.records import Terms
from quarterday.core.file.records.terms import EVERYWHERE, Premium, StatedTotal
from quarterday.core.money import CENT, Money
from quarterday.core.premium.tax import Line, TaxResult, percentage, tax
from quarterday.core.reference import Family, Reference
from quarterday.core.words import Arg, Term, Words, words

Of = Literal["cell", "coverage", "location", "subtotal", "tax", "total"]
K = TypeVar("K", bound=Hashable)
Namer = Callable[[str], str | Words]
HALF_CENT = CENT / 2


@dataclass(frozen=True, slots=True)
class PremiumTable:
    """A premium table added up: what each coverage, each location and the whole costs.

    ``cells`` by coverage and location, ``rows`` by coverage, ``columns`` by location, all without
    fees and tax. ``tax`` is that of a payment on the first day.
    """

    cells: Mapping[tuple[str, str], Money]
    rows: Mapping[str, Money]
    columns: Mapping[str, Money]
    subtotal: Money
    fees: Money
    tax: TaxResult
    total: Money


@dataclass(frozen=True, slots=True)
class TableFault:
    """A place where the table does not add up: what is printed and what it should be.

    ``parts`` are the cells that ``computed`` was made from.
    """

    of: Of
    coverage: str
    location: str
    stated: Money
    computed: Figure
    parts: tuple[Premium, ...] = ()

    @property
    def difference(self) -> Money:
        """What is printed less what it should be."""
        return self.stated - self.computed.money


def signed(premium: Premium) -> Decimal:
    """Return what a cell adds to the premium: a discount always lowers it."""
    return -abs(premium.amount) if premium.kind == "discount" else premium.amount


def coverage_name(reference: Reference, id: str) -> Term | Words | str:
    """Return a coverage as people say it; "the whole policy" for ``*``, an unknown id as it is."""
    if id == EVERYWHERE:
        return words("money-whole-policy")
    return Term("coverage", id) if id in reference.coverages else id


def place_name(id: str) -> str | Words:
    """Return "everywhere" for ``*``, any other location by its id."""
    return words("everywhere") if id == EVERYWHERE else id


def _family(reference: Reference, coverage: str) -> Family | None:
    known = reference.coverages.get(coverage)
    return known.family if known else None


def _cells(terms: Terms) -> tuple[Premium, ...]:
    return tuple(premium for premium in terms.premiums if premium.kind != "fee")


def _sum(terms: Terms, premiums: Iterable[Premium]) -> Money:
    return terms.money(sum(map(signed, premiums), Decimal(0)))


def _sums(terms: Terms, by: Callable[[Premium], K]) -> dict[K, Money]:
    """Return the sums of the cells that ``by`` puts together, in the order of the table."""
    found: dict[K, Decimal] = {}
    for cell in _cells(terms):
        found[by(cell)] = found.get(by(cell), Decimal(0)) + signed(cell)
    return {key: terms.money(amount) for key, amount in found.items()}


def _fees(terms: Terms) -> Money:
    return _sum(terms, (premium for premium in terms.premiums if premium.kind == "fee"))


def tax_of(
    terms: Terms, province: str, reference: Reference, pay_on: date | None = None
) -> TaxResult:
    """Return the tax on the premium of ``terms`` paid on ``pay_on`` (their first day if None)."""
    lines: list[Line] = [
        (_family(reference, p.coverage), p.coverage, terms.money(signed(p))) for p in _cells(terms)
    ]
    where, paid_on = reference.provinces[province], pay_on or terms.start
    return tax(where, terms.start, paid_on, lines, _fees(terms), f"tax/{terms.key}")


def table(terms: Terms, province: str, reference: Reference) -> PremiumTable:
    """Return the premium table of ``terms`` added up, with the tax of ``province``."""
    fees, result = _fees(terms), tax_of(terms, province, reference)
    subtotal = _sum(terms, _cells(terms))
    return PremiumTable(
        cells=_sums(terms, lambda cell: (cell.coverage, cell.location)),
        rows=_sums(terms, lambda cell: cell.coverage),
        columns=_sums(terms, lambda cell: cell.location),
        subtotal=subtotal,
        fees=fees,
        tax=result,
        total=subtotal + fees + result.tax.money,
    )


@dataclass(frozen=True, slots=True)
class _Check:
    """The table being checked, and how its coverages and locations are called."""

    terms: Terms
    reference: Reference
    province: str
    place: Namer

    def stated(self, of: Of) -> Iterator[StatedTotal]:
        return (s for s in self.terms.totals if s.of == of)

    def figure(self, of: Of, ids: tuple[str, str], value: Money, how: Words) -> Figure:
        coverage, location = ids
        named: dict[str, Term | Words | str] = {}
        if of in {"cell", "coverage"}:
            named["coverage"] = coverage_name(self.reference, coverage)
        if of in {"cell", "location"}:
            named["location"] = self.place(location)
        label = words(f"money-table-{of}", **named)
        id = f"premium/{self.terms.key}/{of}/{coverage}/{location}"
        return Figure(id, value, "money", label, how)


def faults(
    terms: Terms, province: str, reference: Reference, place: Namer = place_name
) -> tuple[TableFault, ...]:
    """Return every place where the insurer's table does not add up; none when no cell is known.

    A cell may differ from exposure × rate, and a sum from its parts, by less than the table's
    rounding. The tax may differ by half a cent for each taxed line, for insurers that tax line by
    line, and where a rate turns on the day of payment, anything from the one to the other rate is
    right. ``place`` names a location.
    """
    if not _cells(terms):
        return ()
    check = _Check(terms, reference, province, place)
    found = (_cell_faults(check), _sum_faults(check), _tax_faults(check), _total_faults(check))
    return tuple(fault for some in found for fault in some)


def _unit(terms: Terms) -> Decimal:
    """Return what the table rounds to; nothing is printed finer than a cent."""
    return max(terms.rounding, CENT)


def _differs(terms: Terms, stated: Money, computed: Money) -> bool:
    return abs(stated.amount - computed.amount) >= _unit(terms)


def _cell_faults(check: _Check) -> Iterator[TableFault]:
    terms = check.terms
    for cell in _cells(terms):
        if cell.kind != "premium" or cell.exposure is None or cell.rate is None:
            continue
        exact, stated = terms.money(cell.exposure * cell.rate), terms.money(cell.amount)
        if _differs(terms, stated, exact):
            how = words(
                "money-cell-how", exposure=terms.money(cell.exposure), rate=percentage(cell.rate)
            )
            ids = cell.coverage, cell.location
            figure = check.figure("cell", ids, exact.rounded(_unit(terms)), how)
            yield TableFault("cell", *ids, stated, figure, (cell,))


def _sum_faults(check: _Check) -> Iterator[TableFault]:
    """Yield the rows, columns and subtotals that are not the sum of their cells."""
    cells = _cells(check.terms)
    for printed in check.terms.totals:
        if printed.of == "coverage":
            parts = tuple(p for p in cells if p.coverage == printed.id)
            yield from _sum_fault(check, printed.of, (printed.id, EVERYWHERE), printed, parts)
        elif printed.of == "location":
            parts = tuple(p for p in cells if p.location == printed.id)
            yield from _sum_fault(check, printed.of, (EVERYWHERE, printed.id), printed, parts)
        elif printed.of == "subtotal":
            yield from _sum_fault(check, printed.of, (EVERYWHERE, EVERYWHERE), printed, cells)


def _sum_fault(
    check: _Check, of: Of, ids: tuple[str, str], printed: StatedTotal, parts: tuple[Premium, ...]
) -> Iterator[TableFault]:
    terms = check.terms
    stated, computed = terms.money(printed.amount), _sum(terms, parts)
    if _differs(terms, stated, computed):
        figure = check.figure(of, ids, computed, words("money-sum-how", count=len(parts)))
        yield TableFault(of, *ids, stated, figure, parts)


def _possible_taxes(check: _Check) -> tuple[TaxResult, ...]:
    """Return the tax if all is paid on the first day and, where it differs, if paid later."""
    terms, province, reference = check.terms, check.province, check.reference
    now = tax_of(terms, province, reference)
    if not now.later:
        return (now,)
    return now, tax_of(terms, province, reference, pay_on=now.later.since)


def _tax_slack(terms: Terms, result: TaxResult) -> Decimal:
    """Return by how much a printed tax may differ: rounded line by line, or as the table rounds."""
    lines = sum(line.is_taxed for line in result.lines)
    return max(lines * HALF_CENT, _unit(terms) - HALF_CENT)


def _tax_faults(check: _Check) -> Iterator[TableFault]:
    possible = _possible_taxes(check)
    now = possible[0]
    if not now.is_known:
        return
    amounts = [result.tax.money for result in possible]
    slack = check.terms.money(_tax_slack(check.terms, now))
    for printed in check.stated("tax"):
        stated = check.terms.money(printed.amount)
        if not min(amounts) - slack <= stated <= max(amounts) + slack:
            yield TableFault("tax", EVERYWHERE, EVERYWHERE, stated, now.tax)


def _total_faults(check: _Check) -> Iterator[TableFault]:
    """Yield the printed totals that are not subtotal + fees + tax, the tax as it is printed.

    Where no tax is printed, the total may be with or without it.
    """
    terms = check.terms
    summed = table(terms, check.province, check.reference)
    taxes = [terms.money(s.amount) for s in check.stated("tax")]
    before = summed.subtotal + summed.fees
    possible = [before + t for t in taxes] or [before + summed.tax.tax.money, before]
    for printed in check.stated("total"):
        stated = terms.money(printed.amount)
        if all(_differs(terms, stated, value) for value in possible):
            yield TableFault("total", EVERYWHERE, EVERYWHERE, stated,
                             _total(check, summed, possible[0]))  # fmt: skip


def _total(check: _Check, summed: PremiumTable, value: Money) -> Figure:
    used = value - summed.subtotal - summed.fees
    args: dict[str, Arg] = {"subtotal": summed.subtotal, "fees": summed.fees, "tax": used}
    return check.figure("total", (EVERYWHERE, EVERYWHERE), value, words("money-total-how", **args))
