"""The shipped provinces, a small coverage library, and terms in few words."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from decimal import Decimal
from typing import Any

import pytest

from quarterday.catalogue.load import PLACES, _catalogue
from quarterday.core.file.records import Terms
from quarterday.core.reference import CoverageType, Province, Reference

START = date(2026, 12, 1)
SMALL_LIBRARY = {
    "building": "property",
    "contents": "property",
    "general-liability": "liability",
    "non-owned-vehicle": "vehicles",
    "volunteer-accident": "people",
}


def _coverage(id: str, family: str) -> CoverageType:
    text = {"en": id, "fr": id}
    return CoverageType.model_validate({
        "id": id, "family": family, "name": text, "meaning": text, "not_covered": text,
        "question": text, "needed_when": {"always": True}, "basis": "blanket", "answers": (),
    })  # fmt: skip


@pytest.fixture(scope="session")
def canada() -> Reference:
    """The shipped provinces with their taxes; the coverages are a small library of the test's."""
    return Reference(
        place="canada",
        provinces=_catalogue("provinces", Province, "code", [PLACES / "canada"]),
        causes={},
        coverages={id: _coverage(id, family) for id, family in SMALL_LIBRARY.items()},
        parameters={},
        indices={},
    )


@pytest.fixture(scope="session")
def terms() -> Callable[..., Terms]:
    """A maker of offered terms of one year from 1 December 2026."""

    def make(premiums: tuple[dict[str, Any], ...] = (), **fields: Any) -> Terms:
        start = fields.pop("start", START)
        end = fields.pop("end", start.replace(year=start.year + 1))
        return Terms.model_validate(
            {"stage": "offered", "start": start, "end": end, "premiums": premiums, **fields}
        )

    return make


def cell(coverage: str, location: str, amount: str, **fields: Any) -> dict[str, Any]:
    """Return a cell of the premium table."""
    return {"coverage": coverage, "location": location, "amount": Decimal(amount), **fields}
