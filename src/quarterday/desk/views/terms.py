"""Terms: two versions compared by clauses and by losses, and what one loss would pay."""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping, Sequence
from datetime import date
from decimal import Decimal
from typing import Any

from django.http import HttpResponse
from django.shortcuts import render
from django.views.decorators.http import require_safe

from quarterday.core.file.records import Terms
from quarterday.core.file.records.terms import EVERYWHERE
from quarterday.core.given import Unusable, read
from quarterday.core.review.case import VERSIONS, Case, Version
from quarterday.core.terms.losses.components import COMPONENTS
from quarterday.core.terms.losses.loss import Loss
from quarterday.core.terms.losses.scaling import Scaled
from quarterday.core.terms.settling.outcomes import Outcome, last_day
from quarterday.core.terms.settling.refusals import Refused
from quarterday.core.terms.settling.settlement import Settlement
from quarterday.core.words import Term, words
from quarterday.desk import filepage
from quarterday.desk.request import DeskRequest
from quarterday.desk.views.file import shown_of
from quarterday.intake.cells import BadCell, Readings, read_column
from quarterday.intake.forms.edits import LIMIT
from quarterday.office import terms as office
from quarterday.office.showing import Shown

Told = dict[str, Any]
Versions = Mapping[Version, Terms]
MOST_AMOUNTS = 40
AMOUNT = "amount."


def versions_of(case: Case) -> Versions:
    """Return the versions of the terms that are on file, in the order of the year."""
    found = ((name, case.version(name)) for name in VERSIONS)
    return {name: terms for name, terms in found if terms is not None}


def _chosen(request: DeskRequest, name: str, versions: Versions, usual: int) -> Version | None:
    """Return the version that was asked for, else the usual one of those there are."""
    asked = request.GET.get(name, "")
    found = next((version for version in versions if version == asked), None)
    order = list(versions)
    return found or (order[usual] if order else None)


@require_safe
def compare(request: DeskRequest, file: str) -> HttpResponse:
    """Show every version side by side, and two of them compared."""
    shown = shown_of(request, file)
    versions = versions_of(shown.case)
    before = _chosen(request, "before", versions, 0)
    after = _chosen(request, "after", versions, -1)
    told: Told = {
        "file": shown.file,
        "as_of": shown.as_of,
        "versions": list(versions),
        "before": before,
        "after": after,
        "terms": filepage.terms(shown, request.speech) if shown.is_reviewable else {},
    }
    if before and after and before != after:
        told |= _compared(request, shown, versions[before], versions[after])
    return render(request, "desk/compare.html", told)


def _compared(request: DeskRequest, shown: Shown, before: Terms, after: Terms) -> Told:
    say = request.speech.say
    try:
        found = office.compared(shown.case, before, after)
    except Refused as refused:
        return {"refused": say(refused.words)}
    return {
        "found": found,
        "ways": Counter(d.direction for d in found.differences),
        "differences": [
            {"direction": d.direction, "said": d.sentence(shown.case.building_name(d.location)),
             "more": abs(d.more_borne) if d.more_borne else None,
             "is_more": d.more_borne is not None and d.more_borne.amount > 0}
            for d in found.differences
        ],
        "losses": [_outcome(scaled.of.id, outcome) for scaled, outcome in found.tried if outcome],
        "past": [_outcome("", outcome) for outcome in found.past.outcomes],
        "assumed": [say(assumed) for assumed in found.past.history.assumed],
    }  # fmt: skip


def _outcome(id: str, outcome: Outcome) -> Told:
    more = outcome.more_borne if outcome.can_say else None
    return {
        "id": id,
        "name": outcome.loss.called,
        "before": None if isinstance(outcome.before, Refused) else outcome.before.borne.money,
        "after": None if isinstance(outcome.after, Refused) else outcome.after.borne.money,
        "more": abs(more) if more else None,
        "is_more": more is not None and more.amount > 0,
        "is_same": more is not None and not more,
    }


@require_safe
def pay(request: DeskRequest, file: str) -> HttpResponse:
    """Show what the terms pay for the library's losses, and one of them step by step.

    The amounts of the chosen loss may be changed in the address: nothing is written.
    """
    shown = shown_of(request, file)
    versions = versions_of(shown.case)
    name = _chosen(request, "terms", versions, -1)
    told: Told = {"file": shown.file, "as_of": shown.as_of, "versions": list(versions),
                  "name": name}  # fmt: skip
    if name is None:
        return render(request, "desk/pay.html", told)
    terms = versions[name]
    try:
        tried = office.tried_losses(shown.case, terms)
    except Refused as refused:
        return render(request, "desk/pay.html", {**told, "refused": _said(request, refused)})
    told |= {"tried": [_tried(request, *one) for one in tried]}
    told |= _one(request, shown, versions, name, tried)
    return render(request, "desk/pay.html", told)


def _said(request: DeskRequest, trouble: Refused | Unusable) -> str:
    said = getattr(trouble, "words", None)
    return request.speech.say(said) if said is not None else str(trouble)


def _tried(request: DeskRequest, scaled: Scaled, outcome: Outcome | None) -> Told:
    """Return a loss of the library with what is paid, or why it does not happen here."""
    done = outcome.after if outcome else None
    why = scaled.why_not if done is None else done.words if isinstance(done, Refused) else None
    return {
        "id": scaled.of.id,
        "name": scaled.of.name[request.speech.language],
        "done": done if isinstance(done, Settlement) else None,
        "why": request.speech.say(why) if why else "",
    }


def _one(
    request: DeskRequest, shown: Shown, versions: Versions, name: Version,
    tried: office.Tried,
) -> Told:  # fmt: skip
    """Return the chosen loss, its amounts to change, and what every version pays for it."""
    losses = {scaled.of.id: scaled.loss for scaled, _ in tried if scaled.loss is not None}
    asked = request.GET.get("loss", "")
    base = losses.get(asked) or next(iter(losses.values()), None)
    if base is None:
        return {}
    known = list(shown.reference.causes)
    loss, fields, faults = _edited(request, base, last_day(versions[name]), known)
    return {
        "loss": loss or base,
        "called": (loss or base).called,
        "base": base.id,
        "fields": fields,
        "faults": faults,
        "causes": known,
        "places": [(EVERYWHERE, words("everywhere")),
                   *((b.id, b.name) for b in shown.file.buildings)],
        "components": [c for c in COMPONENTS if c not in {f["component"] for f in fields}],
        "paid": [_paid(request, shown.case, version, terms, loss)
                 for version, terms in versions.items()] if loss else [],
        "steps": _steps(request, shown.case, versions[name], loss) if loss else {},
    }  # fmt: skip


def _edited(
    request: DeskRequest, base: Loss, on: date, causes: Sequence[str]
) -> tuple[Loss | None, list[Told], list[str]]:
    """Return the loss with the amounts that were typed; None with faults when one is none."""
    sent = _sent(request)
    new = request.GET.get("component", "")
    if new in COMPONENTS:
        sent[new] = request.GET.get("new", "")
    typed: Mapping[str, Any] = dict(list(sent.items())[:MOST_AMOUNTS]) or dict(base.amounts)
    amounts, fields, faults = {}, [], []
    for component, said in typed.items():
        value = _amount(request, said)
        fault = request.speech.say(value.what) if isinstance(value, BadCell) else ""
        if isinstance(value, BadCell):
            named = request.speech.say(Term("settling-component", component.partition("@")[0]))
            told = f"{fault} {request.speech.say(value.remedy)}"
            faults.append(request.speech.named(named, told))
        elif value:
            amounts[component] = value
        fields.append({"component": component.partition("@")[0], "key": component,
                       "text": said if isinstance(said, str) else _text(request, said),
                       "fault": fault})  # fmt: skip
    if faults:
        return None, fields, faults
    asked = request.GET.get("cause", "")
    cause = asked if asked in causes else base.cause
    return _loss(request, base, on, cause, amounts or dict(base.amounts), fields)


def _sent(request: DeskRequest) -> dict[str, Any]:
    """Return the amounts in the address, by component and place; unknown components are left."""
    found = {key.removeprefix(AMOUNT): text for key, text in request.GET.items()
             if key.startswith(AMOUNT)}  # fmt: skip
    return {key: text for key, text in found.items() if key.partition("@")[0] in COMPONENTS}


def _loss(
    request: DeskRequest,
    base: Loss,
    on: date,
    cause: str,
    amounts: Mapping[str, Any],
    fields: list[Told],
) -> tuple[Loss | None, list[Told], list[str]]:
    same = dict(amounts) == dict(base.amounts)
    place = request.GET.get("place", base.place)
    is_base = same and (cause, place) == (base.cause, base.place)
    told = {"id": base.id, "reference": base.reference if is_base else None, "cause": cause,
            "place": place or EVERYWHERE, "date_of_loss": on, "hours": base.hours,
            "amounts": amounts}  # fmt: skip
    try:
        return read(Loss, told), fields, []
    except Unusable as refused:
        return None, fields, [_said(request, refused)]


def _amount(request: DeskRequest, said: Any) -> Any:  # noqa: ANN401 - an amount, months, or a fault
    if not isinstance(said, str):
        return said
    (value,) = read_column(Terms.kind, LIMIT, [said[:40]], request.speech.language, Readings())
    return value if isinstance(value, Decimal | BadCell) else None


def _text(request: DeskRequest, amount: Any) -> str:  # noqa: ANN401 - one amount or several
    whole = sum(amount, Decimal(0)) if isinstance(amount, tuple) else amount
    said = f"{whole:f}".removesuffix(".00")
    return said.replace(".", ",") if request.speech.language == "fr" else said


def _paid(request: DeskRequest, case: Case, name: Version, terms: Terms, loss: Loss) -> Told:
    done = office.tried(case, terms, loss)
    if isinstance(done, Refused):
        return {"version": name, "why": _said(request, done)}
    whole = float(done.total.money.amount) or 1.0
    share = float(done.paid.money.amount) / whole
    return {"version": name, "done": done, "share": share, "rest": 1 - share}


def _steps(request: DeskRequest, case: Case, terms: Terms, loss: Loss) -> Told:
    done = office.tried(case, terms, loss)
    if isinstance(done, Refused):
        return {"why": _said(request, done)}
    return {
        "done": done,
        "reasons": [(Term("settling-reason", reason), figure.money)
                    for reason, figure in done.by_reason],
        "payers": [(Term("settling-reason", payer), figure.money)
                   for payer, figure in done.by_payer],
    }  # fmt: skip
