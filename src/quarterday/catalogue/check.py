"""Contradictions between catalogues that no single entry can show."""

from __future__ import annotations

from collections.abc import Iterator

from pydantic import BaseModel

from quarterday.core.file.records import Building, Operations, Organisation
from quarterday.core.reference import Condition, Reference
from quarterday.core.terms.losses.components import COMPONENTS

_RECORDS: dict[str, type[BaseModel]] = {
    "profile": Operations,
    "building": Building,
    "organisation": Organisation,
}


def _unknown_fields(condition: Condition) -> Iterator[str]:
    """Yield the fields a condition tests that no record has."""
    for subject, record in _RECORDS.items():
        field = getattr(condition, subject)
        if field is not None and field not in record.model_fields:
            yield f"{subject} {field}"
    for inner in (*(condition.any or ()), *(condition.all or ())):
        yield from _unknown_fields(inner)


def _of_coverages(reference: Reference) -> Iterator[str]:
    for coverage in reference.coverages.values():
        for cause in coverage.answers:
            if cause not in reference.causes:
                yield f"coverages, entry {coverage.id}: there is no cause {cause!r} to answer."
        for condition in filter(None, (coverage.needed_when, coverage.hurts_when)):
            for field in _unknown_fields(condition):
                yield f"coverages, entry {coverage.id}: tests {field}; records have no such field."


def _of_provinces(reference: Reference) -> Iterator[str]:
    for province in reference.provinces.values():
        if province.index_geography not in reference.indices:
            yield (
                f"provinces, entry {province.code}: uses the index {province.index_geography!r}; "
                "no release has it."
            )
        since = [rate.since for rate in province.tax.rates]
        if len(set(since)) != len(since) or since != sorted(since):
            yield f"provinces, entry {province.code}: the dates of its tax must rise."


def _of_losses(reference: Reference) -> Iterator[str]:
    for loss in reference.losses.values():
        if loss.cause not in reference.causes:
            yield f"losses, entry {loss.id}: there is no cause {loss.cause!r}."
        if loss.where_insured is not None and loss.where_insured not in reference.coverages:
            yield f"losses, entry {loss.id}: there is no coverage {loss.where_insured!r}."
        for component in loss.amounts:
            if component not in COMPONENTS:
                yield f"losses, entry {loss.id}: there is no kind of loss {component!r}."
        for field in _unknown_fields(loss.fits_when) if loss.fits_when else ():
            yield f"losses, entry {loss.id}: tests {field}; records have no such field."


def contradictions(reference: Reference) -> Iterator[str]:
    """Yield a sentence for each place where one catalogue names what another does not have."""
    yield from _of_coverages(reference)
    yield from _of_provinces(reference)
    yield from _of_losses(reference)
