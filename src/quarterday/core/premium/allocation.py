"""Divide a premium among the parties of an allocation key, so that rows and columns both add up.

Each cell of the premium table (coverage × location) belongs to the part of the key that names it
most closely: its location and family, else its location, else its family, else everything left.
The parties of that part bear it by their measures. Tax follows the premium that is taxed, fees the
whole premium. The table coverage × party is rounded so that every coverage, the tax and the fees
come out as charged and no cell or column is a cent off its exact value.
"""

from __future__ import annotations

from collections.abc import Callable, Hashable, Iterable, Mapping
from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction
from typing import TypeVar

from quarterday.core.file.fold import File
from quarterday.core.file.records import AllocationKey, Terms
from quarterday.core.file.records.terms import EVERYWHERE
from quarterday.core.given import Unusable
from quarterday.core.premium.rounding import TwoWay, controlled
from quarterday.core.premium.table import Namer, PremiumTable, coverage_name, place_name, table
from quarterday.core.reference import Family, Reference
from quarterday.core.words import Rate, Term, Words, words

TAX, FEES, ROUNDING = "+tax", "+fees", "+rounding"
"""Rows of an allocation that are no coverage: tax, fees, and cents moved between parties."""
Part = tuple[str, Family | None]
Shares = Mapping[str, Fraction]
R = TypeVar("R", bound=Hashable)
Exact = dict[tuple[R, str], Fraction]


@dataclass(frozen=True, slots=True)
class Allocation:
    """What each party bears: by coverage and by location, each with ``TAX`` and ``FEES``.

    Both tables have the same columns. By location a row ``ROUNDING`` carries the cents by which
    its own rounding of a column would differ; there is none where nothing differs.
    """

    name: str
    parties: tuple[str, ...]
    funds: Mapping[str, str]
    by_coverage: TwoWay[str, str]
    by_location: TwoWay[str, str]

    @property
    def totals(self) -> Mapping[str, Decimal]:
        """What each party bears in all, tax and fees included."""
        return self.by_coverage.columns()


def key_names(file: File) -> tuple[str, ...]:
    """Return the names of the allocation keys that a file keeps, in alphabetical order."""
    return tuple(sorted({line.name for line in file.all(AllocationKey)}))


def key_lines(file: File, name: str) -> tuple[AllocationKey, ...]:
    """Return the lines of one key; Unusable names the keys that there are when there is none."""
    found = tuple(line for line in file.all(AllocationKey) if line.name == name)
    if found:
        return found
    known = key_names(file)
    if not known:
        raise Unusable(words("allocation-no-keys", key=name))
    raise Unusable(words("allocation-no-key", key=name, known=known))


def _parts(lines: Iterable[AllocationKey]) -> dict[Part, list[AllocationKey]]:
    found: dict[Part, list[AllocationKey]] = {}
    for line in lines:
        found.setdefault((line.location, line.family), []).append(line)
    return found


def shares(lines: Iterable[AllocationKey]) -> dict[str, Fraction]:
    """Return what ratio of one part each party bears; the ratios sum to one.

    Unusable when a unit divides no stated portion, the portions of a mix do not sum to one, a
    measure is missing, or the measures of a unit are all zero.
    """
    by_unit: dict[str, list[AllocationKey]] = {}
    for line in lines:
        by_unit.setdefault(line.by, []).append(line)
    found: dict[str, Fraction] = {}
    for unit, portion in _portions(by_unit).items():
        for line, share in _unit_shares(by_unit[unit]):
            found[line.party] = found.get(line.party, Fraction(0)) + portion * share
    return found


def _portions(by_unit: Mapping[str, list[AllocationKey]]) -> dict[str, Fraction]:
    """Return which ratio of a part each unit divides: the whole when there is only one."""
    if len(by_unit) == 1:
        return dict.fromkeys(by_unit, Fraction(1))
    found = {unit: _portion(lines) for unit, lines in by_unit.items()}
    whole = sum(found.values(), Decimal(0))
    if whole != 1:
        name = next(iter(by_unit.values()))[0].name
        raise Unusable(words("allocation-portions", key=name, whole=Rate(whole, 2)))
    return {unit: Fraction(portion) for unit, portion in found.items()}


def _portion(lines: list[AllocationKey]) -> Decimal:
    first = lines[0].portion
    if first is None or any(line.portion != first for line in lines):
        raise Unusable(_of_part("allocation-portion", lines[0]))
    return first


def _of_part(id: str, line: AllocationKey) -> Words:
    return words(id, key=line.name, party=line.party, by=Term("allocation-by", line.by))


def _unit_shares(lines: list[AllocationKey]) -> list[tuple[AllocationKey, Fraction]]:
    measures = [(line, _measure(line)) for line in lines]
    whole = sum((measure for _, measure in measures), Fraction(0))
    if not whole:
        raise Unusable(_of_part("allocation-nothing", lines[0]))
    return [(line, measure / whole) for line, measure in measures]


def _measure(line: AllocationKey) -> Fraction:
    if line.measure is not None:
        return Fraction(line.measure)
    if line.by == "location":
        return Fraction(1)
    raise Unusable(_of_part("allocation-measure", line))


@dataclass(frozen=True, slots=True)
class _Key:
    """A key read: who bears each part, by the part; and how what it lacks is called."""

    name: str
    parts: Mapping[Part, Shares]
    reference: Reference
    place: Namer

    def of_cell(self, coverage: str, location: str) -> Shares:
        """Return who bears a cell; Unusable when no part of the key names it."""
        known = self.reference.coverages.get(coverage)
        family = known.family if known else None
        for part in ((location, family), (location, None), (EVERYWHERE, family)):
            if part in self.parts:
                return self.parts[part]
        if (EVERYWHERE, None) in self.parts:
            return self.parts[EVERYWHERE, None]
        what, where = coverage_name(self.reference, coverage), self.place(location)
        raise Unusable(words("allocation-left-over", key=self.name, coverage=what, location=where))


def allocate(
    terms: Terms,
    province: str,
    reference: Reference,
    lines: Iterable[AllocationKey],
    place: Namer = place_name,
) -> Allocation:
    """Return what each party of a key bears of the premium of ``terms``, fees and tax included.

    ``lines`` are those of one key, at least one; ``place`` names a location in a refusal. The tax
    is that of a payment on the first day. Unusable when the key leaves a premium over, or cannot be
    read (see ``shares``).
    """
    kept = tuple(lines)
    key = _Key(kept[0].name, {p: shares(of) for p, of in _parts(kept).items()}, reference, place)
    return divided(table(terms, province, reference), key.of_cell, kept)


def divided(
    summed: PremiumTable, of_cell: Callable[[str, str], Shares], lines: tuple[AllocationKey, ...]
) -> Allocation:
    """Return a premium table divided by who bears each cell, in the order of ``lines``."""
    parties = tuple(dict.fromkeys(line.party for line in lines))
    cells = {cell: of_cell(*cell) for cell in summed.cells}
    extras = _extras(summed, cells, parties)
    by_coverage = TwoWay(controlled(_borne(summed, cells, parties, 0) | extras))
    by_location = _borne(summed, cells, parties, 1) | extras
    funds = {line.party: line.fund for line in lines if line.fund}
    return Allocation(
        name=lines[0].name,
        parties=parties,
        funds={party: funds.get(party, party) for party in parties},
        by_coverage=by_coverage,
        by_location=_like(by_location, by_coverage.columns()),
    )


def _borne(
    summed: PremiumTable, cells: Mapping[tuple[str, str], Shares], parties: tuple[str, ...], at: int
) -> Exact[str]:
    """Return the exact premium by coverage (``at`` 0) or location (1) and party."""
    found: Exact[str] = {}
    for cell, borne in cells.items():
        for party in parties:
            amount = Fraction(summed.cells[cell].amount) * borne.get(party, Fraction(0))
            found[cell[at], party] = found.get((cell[at], party), Fraction(0)) + amount
    return found


def _extras(
    summed: PremiumTable, cells: Mapping[tuple[str, str], Shares], parties: tuple[str, ...]
) -> Exact[str]:
    """Return the exact tax and fees of each party; rows that are nothing are left out."""
    taxed = {line.coverage for line in summed.tax.lines if line.is_taxed}
    weights = _borne(summed, cells, parties, 0)
    all_of_it = _by_party(weights, parties, lambda _: True)
    rows = {
        FEES: (summed.fees.amount, all_of_it),
        TAX: (summed.tax.tax.money.amount, _by_party(weights, parties, taxed.__contains__)),
    }
    found: Exact[str] = {}
    for row, (amount, borne) in rows.items():
        whole = sum(borne.values(), Fraction(0))
        base = borne if whole else all_of_it
        if amount:
            found |= {(row, p): Fraction(amount) * base[p] / _not_zero(base) for p in parties}
    return found


def _by_party(
    weights: Exact[str], parties: tuple[str, ...], counts: Callable[[str], bool]
) -> dict[str, Fraction]:
    found = dict.fromkeys(parties, Fraction(0))
    for (coverage, party), amount in weights.items():
        if counts(coverage):
            found[party] += amount
    return found


def _not_zero(base: Mapping[str, Fraction]) -> Fraction:
    """Return the sum to divide by; Unusable when the whole premium is nothing."""
    whole = sum(base.values(), Fraction(0))
    if not whole:
        raise Unusable(words("allocation-no-premium"))
    return whole


def _like(exact: Exact[str], columns: Mapping[str, Decimal]) -> TwoWay[str, str]:
    """Return ``exact`` rounded so that its columns are those given, each within a cent of exact.

    A row ROUNDING takes the difference of each column; it sums to nothing, as the totals agree.
    """
    sums = _by_party(exact, tuple(columns), lambda _: True)
    moved = {(ROUNDING, party): Fraction(amount) - sums[party] for party, amount in columns.items()}
    rounded = controlled(exact | moved)
    nothing = not any(rounded[cell] for cell in moved)
    return TwoWay({c: a for c, a in rounded.items() if not (nothing and c in moved)})
