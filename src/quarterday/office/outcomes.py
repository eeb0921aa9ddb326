"""What terms pay, and how two versions differ, as plain data for JSON."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from quarterday.catalogue.speech import Speech
from quarterday.core.review.case import Case
from quarterday.core.terms.losses.scaling import Scaled
from quarterday.core.terms.settling.outcomes import Outcome
from quarterday.core.terms.settling.refusals import Refused
from quarterday.core.terms.settling.settlement import Settlement
from quarterday.office.plain import value

if TYPE_CHECKING:  # it needs a store, which these words do not
    from quarterday.office.terms import Comparison

Plain = dict[str, Any]


def settled(done: Settlement, speech: Speech) -> Plain:
    """Return what is paid for one loss, by whom, and what is borne, why, with the steps."""
    return {
        "loss": done.loss.id,
        "total": value(done.total.money),
        "paid": value(done.paid.money),
        "borne": value(done.borne.money),
        "paid_by": {payer: value(figure.money) for payer, figure in done.by_payer},
        "borne_by_reason": {reason: value(f.money) for reason, f in done.by_reason},
        "steps": [speech.say(step) for step in done.steps],
        "cautions": [speech.say(caution) for caution in done.cautions],
    }


def why_not(scaled: Scaled, speech: Speech) -> str:
    """Return why a loss of the library cannot happen at this account; empty when it can."""
    return speech.say(scaled.why_not) if scaled.why_not else ""


def tried(scaled: Scaled, outcome: Outcome | None, speech: Speech) -> Plain:
    """Return a loss of the library as settled, or why it is not."""
    shown = {"id": scaled.of.id, "name": scaled.of.name[speech.language]}
    if outcome is None:
        return {**shown, "why_not": why_not(scaled, speech)}
    if isinstance(outcome.after, Refused):
        return {**shown, "why_not": speech.say(outcome.after.words)}
    return {**shown, **settled(outcome.after, speech)}


def compared(case: Case, found: Comparison, speech: Speech) -> Plain:
    """Return how two versions differ: their clauses, and what the same losses cost under each."""
    past = found.past
    return {
        "file": case.file.id,
        "before": found.before.key,
        "after": found.after.key,
        "differences": [
            {"kind": d.kind, "coverage": d.coverage, "location": d.location,
             "direction": d.direction, "more_borne": value(d.more_borne),
             "sentence": speech.say(d.sentence(case.building_name(d.location)))}
            for d in found.differences
        ],
        "losses": [_both(o) for _, o in found.tried if o is not None],
        "past": {"claims": len(past.outcomes), "before": value(past.before.money),
                 "after": value(past.after.money)},
    }  # fmt: skip


def _both(outcome: Outcome) -> Plain:
    sides = {"before": outcome.before, "after": outcome.after}
    borne = {n: None if isinstance(s, Refused) else value(s.borne.money) for n, s in sides.items()}
    return {"loss": outcome.loss.id, **borne, "can_say": outcome.can_say,
            "more_borne": value(outcome.more_borne)}  # fmt: skip
