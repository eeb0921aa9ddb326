"""The facts and figures behind the findings about terms."""

from __future__ import annotations

from decimal import Decimal

from quarterday.core.figure import Fact, Figure, Node, Unit, Value
from quarterday.core.file.entry import Origin
from quarterday.core.file.fold import File
from quarterday.core.file.records import Terms
from quarterday.core.money import Money
from quarterday.core.review.case import Case
from quarterday.core.terms.difference import Difference, DifferenceKind
from quarterday.core.words import Rate, Term, Words, words

_FIELDS: dict[DifferenceKind, str] = {
    "added": "limit",
    "dropped": "limit",
    "place": "location",
    "sublimit": "sublimit-of",
    "deductible-form": "deductible",
    "waiting": "waiting-hours",
    "stated-amount": "coinsurance-stated-amount",
    "agreed-value": "agreed-value-until",
    "shared-limit": "in-shared-limit",
    "exclusion": "excluded-causes",
    "reporting-period": "reporting-days",
}


def unit_of(value: Value) -> Unit:
    """Return the unit in which a value of terms is shown."""
    if isinstance(value, Money):
        return "money"
    if isinstance(value, Rate):
        return "rate"
    return "count" if isinstance(value, int) and not isinstance(value, bool) else "text"


def fact_of(file: File, terms: Terms, part: str, name: str, value: Value) -> Fact:
    """Return a value of ``terms`` as a fact that knows the row it came from.

    ``name`` is its field; ``part`` names the part of the terms as origins do
    (``coverages/sewer-backup/*``), and is empty for the terms themselves.
    """
    entry = file.entry_of(terms)
    return Fact(
        id="/".join(filter(None, ("terms", terms.key, part, name))),
        value=value,
        unit=unit_of(value),
        label=words(f"field-{name}"),
        origin=_narrowed(entry.origin, part),
        recorded_on=entry.recorded_at.date(),
    )


def line_of(coverage: str, location: str) -> str:
    """Return the part of the terms that a coverage line is; empty for the terms themselves."""
    return f"coverages/{coverage}/{location}" if coverage else ""


def _narrowed(origin: Origin, part: str) -> Origin:
    """Return an origin with the places of one part alone; unchanged when it names none such."""
    places = tuple(place for place in origin.places if place.part == part)
    return origin.model_copy(update={"places": places}) if places else origin


def cover(coverage: str) -> Words:
    """Return a coverage's name in words; empty stands for the terms as a whole."""
    if not coverage:
        return words("terms-as-a-whole")
    return words("coverage-name", coverage=Term("coverage", coverage))


def nodes(case: Case, before: Terms, after: Terms, difference: Difference) -> tuple[Node, ...]:
    """Return both versions of a difference as facts, and what it moves as a figure when exact."""
    d = difference
    name = _FIELDS.get(d.kind, d.kind)
    part = line_of(d.coverage, d.location)
    shown = ((before, d.before), (after, d.after))
    facts = tuple(fact_of(case.file, t, part, name, v) for t, v in shown if v is not None)
    return (_moved(d, facts),) if d.more_borne and facts else facts


def _moved(difference: Difference, facts: tuple[Fact, ...]) -> Figure:
    moved = difference.more_borne
    assert moved is not None
    way = "more" if moved.amount > Decimal(0) else "less"
    return Figure(
        id=f"terms.moved/{difference.coverage}/{difference.location}/{difference.kind}",
        value=abs(moved),
        unit="money",
        label=words(f"figure-{way}-borne", coverage=cover(difference.coverage)),
        how=words("how-borne", kind=difference.kind),
        inputs=facts,
    )
