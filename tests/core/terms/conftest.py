"""Two versions of terms in few words."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from typing import Any

import pytest

from quarterday.core.file.records import Terms
from quarterday.core.terms.compare import compare
from quarterday.core.terms.difference import Difference

START = date(2026, 12, 1)
Versions = Callable[..., tuple[Difference, ...]]


def terms_from(*coverages: dict[str, Any], **fields: Any) -> Terms:
    """Return offered terms of one year from 1 December 2026."""
    start = fields.pop("start", START)
    end = fields.pop("end", start.replace(year=start.year + 1))
    return Terms.model_validate(
        {"stage": "offered", "start": start, "end": end, "coverages": coverages, **fields}
    )


@pytest.fixture(scope="session")
def terms() -> Callable[..., Terms]:
    """A maker of terms."""
    return terms_from


@pytest.fixture(scope="session")
def changed() -> Versions:
    """Compare one line of cover before and after; both are dictionaries of its fields."""

    def make(before: dict[str, Any], after: dict[str, Any]) -> tuple[Difference, ...]:
        line = {"coverage": "building", "location": "hall"}
        return compare(terms_from({**line, **before}), terms_from({**line, **after}))

    return make
