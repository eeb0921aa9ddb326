"""Terms and one loss in few words, settled."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from datetime import date
from decimal import Decimal
from typing import Any

import pytest
from tests.core.terms.losses.conftest import account

from quarterday.core.file.records import Terms
from quarterday.core.reference import Reference
from quarterday.core.terms.losses.loss import Loss
from quarterday.core.terms.settling.settlement import Setting, Settlement, settle
from quarterday.core.terms.settling.values import Values

__all__ = ["account"]

START, END, DAY = date(2027, 1, 1), date(2028, 1, 1), date(2027, 6, 1)
Pay = Callable[..., Settlement]


def terms_of(*coverages: Mapping[str, Any], **fields: Any) -> Terms:
    """Return issued terms of the year 2027."""
    whole = {"stage": "issued", "start": START, "end": END, "coverages": coverages, **fields}
    return Terms.model_validate(whole)


def loss_of(cause: str, amounts: Mapping[str, Any], **fields: Any) -> Loss:
    """Return a loss of 1 June 2027."""
    return Loss.model_validate({"cause": cause, "date_of_loss": DAY, "amounts": amounts, **fields})


def reasons(done: Settlement) -> dict[str, Decimal]:
    """Return what is borne by reason."""
    return {reason: figure.money.amount for reason, figure in done.by_reason}


def payers(done: Settlement) -> dict[str, Decimal]:
    """Return what is paid by payer."""
    return {payer: figure.money.amount for payer, figure in done.by_payer}


@pytest.fixture(scope="session")
def pay(canada: Reference) -> Pay:
    """Settle one loss; ``lines`` and more of the terms, ``values`` by coverage and place."""

    def make(
        lines: list[dict[str, Any]],
        cause: str,
        amounts: Mapping[str, Any],
        values: Values | None = None,
        terms: Mapping[str, Any] | None = None,
        **loss: Any,
    ) -> Settlement:
        setting = Setting(terms_of(*lines, **(terms or {})), canada, values or Values())
        return settle(setting, loss_of(cause, amounts, **loss))

    return make
