"""Terms in few words, for rules that look at what is insured."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from typing import Any

import pytest

from quarterday.core.file.records import Terms

RENEWAL = date(2027, 1, 31)
STARTS = {"issued": date(2026, 1, 31), "offered": RENEWAL, "requested": RENEWAL}


@pytest.fixture(scope="session")
def terms_of() -> Callable[..., Terms]:
    """A maker of terms of one year: ``issued`` ones expire on 31 January 2027, others begin then.

    Each coverage is a dictionary of its fields.
    """

    def make(stage: str, *coverages: dict[str, Any], **fields: Any) -> Terms:
        start = fields.pop("start", STARTS[stage])
        end = fields.pop("end", start.replace(year=start.year + 1))
        return Terms.model_validate(
            {"stage": stage, "start": start, "end": end, "coverages": coverages, **fields}
        )

    return make
