"""Terms in few words."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from typing import Any

import pytest

from quarterday.core.file.records import Terms

START = date(2026, 12, 1)


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
