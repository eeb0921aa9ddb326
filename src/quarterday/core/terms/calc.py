"""What terms pay for losses, on its own: plain data in, plain data and steps out."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from quarterday.core.reference import Reference
from quarterday.core.terms.settling.form import cents, values_of
from quarterday.core.terms.settling.form import given as read_given
from quarterday.core.terms.settling.settlement import (
    PartPaid,
    Setting,
    Settlement,
    settle_year,
)

Done = Mapping[str, Any]


def settle(given: Mapping[str, object], reference: Reference) -> Done:
    """Return for each of ``losses`` what ``terms`` pay and what is borne by reason, with the steps.

    All losses fall in one policy year. ``values`` holds the true values that some clauses need.
    Unusable for what the form does not know, and for what the terms cannot honour.
    """
    told = read_given(given)
    setting = Setting(told.terms, reference, values_of(told.values))
    done = settle_year(setting, told.losses)
    return {
        "losses": [_of_loss(one) for one in done],
        "steps": tuple(step for one in done for step in (*one.steps, *one.cautions)),
    }


def _of_loss(done: Settlement) -> dict[str, Any]:
    return {
        "id": done.loss.id,
        "total": cents(done.total.money.amount),
        "paid": cents(done.paid.money.amount),
        "borne": cents(done.borne.money.amount),
        "paid_by": {payer: cents(figure.money.amount) for payer, figure in done.by_payer},
        "borne_by_reason": {reason: cents(f.money.amount) for reason, f in done.by_reason},
        "amounts": [_of_part(part) for part in done.parts],
        "steps": done.steps,
        "cautions": done.cautions,
    }


def _of_part(part: PartPaid) -> dict[str, Any]:
    return {
        "component": part.component,
        "place": part.place,
        "lost": cents(part.lost.amount),
        "paid": cents(part.paid.amount),
        "borne": cents(part.borne.amount),
    }
