"""Whether a building's facts are complete, and whether its sources agree."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from decimal import Decimal

from quarterday.core.figure import Fact, Unit
from quarterday.core.file.records import Building, Valuation
from quarterday.core.review.case import Case
from quarterday.core.review.finding import Finding
from quarterday.core.review.rules.values.common import for_answer, for_record, parameter_number
from quarterday.core.review.told import telling
from quarterday.core.words import Words, words

# What insurers of property ask of every building (common practice, no source).
ALWAYS_NEEDED = (
    "postal_code", "construction", "year_built", "area_m2", "storeys", "basement", "sprinklers",
    "fire_alarm",
)  # fmt: skip
UPDATES = ("roof_year", "wiring_year", "plumbing_year", "heating_year")
COMPARED: tuple[tuple[str, Unit], ...] = (
    ("area_m2", "m2"), ("storeys", "count"), ("year_built", "count"),
)  # fmt: skip


def missing_facts(case: Case, building: Building) -> tuple[Words, ...]:
    """Return the facts underwriting needs of a building and the file does not hold."""
    needed = (*ALWAYS_NEEDED, *(UPDATES if _needs_updates(case, building) else ()))
    missing = [name for name in needed if getattr(building, name) in (None, "")]
    sizes = ((name, getattr(building, name)) for name in ("area_m2", "storeys"))
    missing += [name for name, size in sizes if size is not None and size <= 0]
    found = [words(f"field-{name.replace('_', '-')}") for name in missing]
    if building.id not in case.pictures:
        found.append(words("values-sum-insured-field"))
    return tuple(found)


def _needs_updates(case: Case, building: Building) -> bool:
    """Tell whether the building is old enough, or its age unknown, for renewals to be asked."""
    years = parameter_number(case, "values.updates-needed-after-years")
    return building.year_built is None or case.renewal.year - building.year_built >= years


def incomplete_building(case: Case) -> Iterator[Finding]:
    """Find each building of the organisation's own or in its care with a needed fact missing."""
    rule = "values.incomplete-building"
    for building in case.file.buildings:
        missing = missing_facts(case, building) if building.ownership != "rent" else ()
        if not missing:
            continue
        say = telling(rule, building=building.name, missing=missing, n=len(missing))
        yield for_answer(case, rule, building, say)


@dataclass(frozen=True, slots=True)
class Mismatch:
    """Two sources that disagree about one fact of a building."""

    name: str
    ours: Fact
    theirs: Fact


def mismatches(case: Case, building: Building) -> tuple[Mismatch, ...]:
    """Return the facts on which the building's record and its newest valuation disagree."""
    found = []
    for name, unit in COMPARED:
        valuation = _newest_with(case, building, name)
        if valuation is None or getattr(building, name) is None:
            continue
        if _differ(case, name, getattr(building, name), getattr(valuation, name)):
            facts = (case.file.fact(record, name, unit) for record in (building, valuation))
            found.append(Mismatch(name, *facts))
    return tuple(found)


def _newest_with(case: Case, building: Building, name: str) -> Valuation | None:
    made = case.file.valuations(building.id)
    known = [v for v in made if getattr(v, name) is not None and v.valued_on <= case.as_of]
    return known[-1] if known else None


def _differ(case: Case, name: str, ours: Decimal | int, theirs: Decimal | int) -> bool:
    apart = abs(Decimal(ours) - Decimal(theirs))
    if name == "area_m2":
        return apart > parameter_number(case, "values.area-tolerance") * max(ours, theirs)
    kind = "storeys" if name == "storeys" else "year"
    return apart > parameter_number(case, f"values.{kind}-tolerance")


def area_mismatch(case: Case) -> Iterator[Finding]:
    """Find each building whose record and valuation disagree on area, storeys or year."""
    for building in case.file.buildings:
        found = mismatches(case, building)
        if found:
            yield _mismatch(case, building, found)


def _mismatch(case: Case, building: Building, found: tuple[Mismatch, ...]) -> Finding:
    rule = "values.area-mismatch"
    items = tuple(
        words(
            f"values-mismatch-{m.name.replace('_', '-')}",
            ours=_text(m.ours),
            theirs=_text(m.theirs),
        )
        for m in found
    )
    say = telling(rule, building=building.name, items=items, n=len(items))
    evidence = tuple(fact for m in found for fact in (m.ours, m.theirs))
    return for_record(case, rule, building, say, evidence)


def _text(fact: Fact) -> Decimal | str:
    """Return a fact's number as it is told: a year without a thousands separator."""
    number = fact.value
    assert isinstance(number, Decimal | int)
    return str(number) if fact.id.endswith("year_built") else Decimal(number)
