"""An account's own terms, values, names and facts: what its losses are settled under."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date
from decimal import Decimal

from quarterday.core.figure import Fact, Figure, Node, Unit
from quarterday.core.file.records import Building, Terms
from quarterday.core.file.records.terms import EVERYWHERE, Coverage
from quarterday.core.income.clause import LINE, measured
from quarterday.core.review.case import Case
from quarterday.core.terms.settling.machine import Note
from quarterday.core.terms.settling.refusals import AMOUNTS, RATIOS
from quarterday.core.terms.settling.settlement import Setting
from quarterday.core.terms.settling.values import Key, Values
from quarterday.core.values.cost import costs_of, last_day, number
from quarterday.core.values.facts import line_fact
from quarterday.core.values.index import NotCoveredError, Subject, indexed
from quarterday.core.words import words

WEAR_YEARLY, WEAR_MOST = "settling.wear-yearly", "settling.wear-most"
INCOME = (LINE, EVERYWHERE)
_DAYS = ("agreed_value_until", "retroactive_date")
_RATES = (*RATIOS, "coinsurance", "margin")


def setting_of(case: Case, terms: Terms, day: date) -> Setting:
    """Return what a loss on ``day`` is settled under by ``terms`` of the account.

    A value that nobody knows counts as its scheduled amount, and the settlement says so.
    """
    return Setting(
        terms=terms,
        reference=case.reference,
        values=values_on(case, terms, day),
        names={building.id: building.name for building in case.file.buildings},
        facts=_Facts(case, terms),
    )


@dataclass(frozen=True, slots=True)
class Worth:
    """What one insured thing is worth: the amount, what of it is not known, the evidence."""

    key: Key
    amount: Decimal
    assumed: bool = False
    unstated: bool = False
    evidence: Node | None = None


def values_on(case: Case, terms: Terms, day: date) -> Values:
    """Return what is insured and what it is worth on ``day``."""
    found = tuple(_worths(case, terms, day))
    return Values(
        worth={w.key: w.amount for w in found},
        assumed=frozenset(w.key for w in found if w.assumed),
        unstated=frozenset(w.key for w in found if w.unstated),
        evidence={w.key: w.evidence for w in found if w.evidence is not None},
        depreciation={
            (coverage, building.id): part
            for building in case.file.buildings
            for coverage, part in _wear(case, building, day)
        },
        aged=frozenset(
            (coverage, building.id)
            for building in case.file.buildings
            for coverage in ("building", "contents")
        ),
    )


def _worths(case: Case, terms: Terms, day: date) -> Iterator[Worth]:
    known = (*_valued(case, day), *_incomes(case, terms, day))
    yield from known
    yield from _scheduled(terms, {worth.key for worth in known})


def _valued(case: Case, day: date) -> Iterator[Worth]:
    """Yield what buildings and contents are worth where somebody valued them."""
    for building in case.file.buildings:
        cost = _cost(case, building, day)
        if cost is not None:
            yield Worth(("building", building.id), cost.money.amount, evidence=cost)
        made = case.file.valuations(building.id, "contents")
        if known := [v for v in made if v.valued_on <= case.as_of]:
            fact = case.file.fact(known[-1], "amount", "money")
            yield Worth(("contents", building.id), known[-1].amount, evidence=fact)


def _cost(case: Case, building: Building, day: date) -> Figure | None:
    """Return what rebuilding costs on ``day``; None where nobody knows."""
    if day == last_day(case) and building.id in case.pictures:
        known = case.pictures[building.id].costs
        return known.at_term_end if known else None
    try:
        costs = costs_of(case, building)
        if costs is None:
            return None
        label = words("settling-worth", building=building.name, day=day)
        name = Subject(f"settling-worth@{building.id}/{day}", label)
        return indexed(name, costs.at_valuation, costs.valuation.valued_on, day, costs.index)
    except NotCoveredError:
        return None


def _scheduled(terms: Terms, known: set[Key]) -> Iterator[Worth]:
    """Yield the scheduled amounts of what nobody has valued."""
    for line in terms.coverages:
        if line.place in known or line.limit is None or line.place == INCOME:
            continue
        if line.location != EVERYWHERE or not any(kind == line.coverage for kind, _ in known):
            yield Worth(line.place, line.limit, assumed=True)


def _incomes(case: Case, terms: Terms, day: date) -> Iterator[Worth]:
    """Yield the year's income that the clause of each income line is measured against."""
    lines = {line.place: line for line in terms.coverages if line.coverage == LINE}
    for place in dict.fromkeys((INCOME, *lines)):
        found = measured(case, terms, lines.get(place), day)
        if found is not None:
            is_open = found.caution is not None
            yield Worth(place, found.money.amount, unstated=is_open, evidence=found)


def _wear(case: Case, building: Building, day: date) -> Iterator[tuple[str, Decimal]]:
    """Yield how much of new a building and its contents have lost, as the parameters estimate."""
    most = number(case.parameter(WEAR_MOST))
    yearly = number(case.parameter(WEAR_YEARLY))
    built = building.year_built
    yield "building", most if built is None else min(most, yearly * max(0, day.year - built))
    yield "contents", most


@dataclass(frozen=True, slots=True)
class _Facts:
    """Returns the fields of a clause as facts of the file, where the file holds these terms."""

    case: Case
    terms: Terms

    def __call__(self, note: Note) -> tuple[Fact, ...]:
        line = self._line(note)
        if line is None or self.case.file.get(Terms, self.terms.key) != self.terms:
            return ()
        return tuple(
            line_fact(self.case.file, self.terms, line, name, _unit(name))
            for name in note.fields
            if isinstance(getattr(line, name), Decimal | int | date)
        )

    def _line(self, note: Note) -> Coverage | None:
        place = note.coverage, note.location
        return next((line for line in self.terms.coverages if line.place == place), None)


def _unit(name: str) -> Unit:
    if name in _RATES:
        return "rate"
    if name in _DAYS:
        return "date"
    return "money" if name in AMOUNTS else "count"
