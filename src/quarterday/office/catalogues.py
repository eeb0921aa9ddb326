"""The catalogues as plain data for JSON: rules, causes, coverages, parameters."""

from __future__ import annotations

from datetime import date
from typing import Any

from quarterday.catalogue.speech import Speech
from quarterday.core.figure import Parameter
from quarterday.core.reference import Reference
from quarterday.core.review.rules import RULES
from quarterday.office import plain

Plain = dict[str, Any]


def rules() -> list[Plain]:
    """Return the rules of the review and what they rest on."""
    return [
        {"id": r.id, "looks_at": r.looks_at, "parameters": list(r.parameters), "basis": r.basis}
        for r in RULES
    ]


def causes(reference: Reference) -> list[Plain]:
    """Return the causes of loss."""
    return [cause.model_dump(mode="json") for cause in reference.causes.values()]


def coverages(reference: Reference) -> list[Plain]:
    """Return the coverage library."""
    library = reference.coverages.values()
    return [coverage.model_dump(mode="json", exclude_none=True) for coverage in library]


def in_force(reference: Reference, as_of: date) -> list[Parameter]:
    """Return the parameters that have a value on a day."""
    return [series.on(as_of) for series in reference.parameters.values()
            if series.values[0].since <= as_of]  # fmt: skip


def parameters(reference: Reference, as_of: date, speech: Speech) -> list[Plain]:
    """Return the parameters as in force on a day, with their sources."""
    return [plain.node(parameter, speech) for parameter in in_force(reference, as_of)]
