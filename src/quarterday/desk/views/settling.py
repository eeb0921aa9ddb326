"""Settling: what the leaders said, that cover is bound, and that the policy says so."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from django.contrib import messages
from django.http import HttpResponse
from django.shortcuts import redirect, render
from django.views.decorators.http import require_safe

from quarterday.core.file.fold import File
from quarterday.core.file.records import Bound, Decision, PaymentChoice, Terms
from quarterday.core.file.records.terms import Coverage
from quarterday.core.given import Unusable
from quarterday.core.premium.statement import Statement, statement
from quarterday.core.review.case import Case
from quarterday.core.terms.agreed import Wish, option_id, wishes
from quarterday.core.terms.option import amounts_said
from quarterday.core.words import Term, Words, words
from quarterday.desk.filepage import ANSWERS, anchor
from quarterday.desk.request import DeskRequest
from quarterday.desk.views.acts import day, seen, text
from quarterday.desk.views.file import shown_of
from quarterday.office import access, binding, checking, standings
from quarterday.office.own_data import reference_in_use
from quarterday.office.showing import Shown
from quarterday.office.trouble import Trouble
from quarterday.papers.decisions_form.data import priced

Told = dict[str, Any]


@require_safe
def decisions(request: DeskRequest, file: str) -> HttpResponse:
    """Show every question that the leaders answer, with what they said, and how they pay."""
    shown = shown_of(request, file, "record")
    told = {
        "file": shown.file,
        "seq": shown.file.seq,
        "as_of": shown.as_of,
        "questions": [*_findings(shown), *_options(shown)],
        "answers": ANSWERS,
        "statement": _statement(shown),
        "payment": shown.file.get(PaymentChoice, str(shown.review.renewal)),
        "renewal": shown.review.renewal,
    }
    return render(request, "desk/decisions.html", told)


def _decided(shown: Shown, question: str) -> Decision | None:
    return shown.file.get(Decision, f"{shown.review.renewal}/{question}")


def _question(shown: Shown, id: str, title: Any, price: Any, by: Any) -> Told:  # noqa: ANN401 - whatever can be said
    return {"id": id, "anchor": anchor(id), "title": title, "price": price, "by": by,
            "decision": _decided(shown, id)}  # fmt: skip


def _findings(shown: Shown) -> Iterator[Told]:
    for found in shown.review.agenda:
        yield _question(shown, found.id, found.title, found.priority.cost, found.by)


def _options(shown: Shown) -> Iterator[Told]:
    """Yield the options that no decision of the agenda asks about by itself, as the form has it."""
    offered = shown.case.offered
    asked = {option_id(option) for option in priced(shown.setting)} if offered else set()
    for wish in wishes(shown.file, offered) if offered else ():
        if wish.id in asked:
            price = offered.money(wish.price) if offered and wish.price is not None else None
            yield _question(shown, wish.id, _line(shown, wish), price, None)


def _line(shown: Shown, wish: Wish) -> Any:  # noqa: ANN401 - whatever can be said
    terms = shown.case.offered
    amounts = _amounts(terms, wish.line) if terms else words("desk-no-limit")
    return words("desk-wish", coverage=Term("coverage", wish.line.coverage), limit=amounts,
                 place=shown.case.building_name(wish.line.location))  # fmt: skip


def _amounts(terms: Terms, line: Coverage) -> Words:
    """Return a line's limit and deductible, or that it states none."""
    said = amounts_said(terms, line)
    return words("risk-amounts", case="-".join(said), **said) if said else words("desk-no-limit")


def _statement(shown: Shown) -> Statement | None:
    offered = shown.case.offered
    if offered is None or not offered.premiums:
        return None
    try:
        return statement(shown.case, offered)
    except Unusable:
        return None


def bind(request: DeskRequest, file: str) -> HttpResponse:
    """Show what would be agreed, or record that the insurer bound it."""
    shown = shown_of(request, file, "bind")
    found = binding.binder(shown.file)
    if request.method != "POST":
        taken = {wish.id for wish in found.wishes if wish.is_taken}
        bound = shown.file.get(Bound, str(found.offered.start))
        chosen = set(bound.accepted) if bound else taken
        return _binder(request, shown, found, chosen)
    accepted = set(request.POST.getlist("accepted"))
    try:
        binding.bind(
            shown.file, insurer_person=text(request, "by"), on=day(request, "on"),
            today=request.today, accepted=accepted, number=text(request, "binder"),
            said=text(request, "words"), by=request.person.signed, seen=seen(request),
        )  # fmt: skip
    except Trouble as refused:
        return _binder(request, shown, found, accepted, refused)
    return _done(request, file, "desk-done-bind", "bind")


def _done(request: DeskRequest, file: str, said: str, page: str) -> HttpResponse:
    standings.refresh(reference_in_use(), request.today, of=[file])
    messages.success(request, request.speech.say(words(said)))
    return redirect(page, file)


def _binder(
    request: DeskRequest, shown: Shown, found: binding.Binder, accepted: set[str],
    refused: Trouble | None = None,
) -> HttpResponse:  # fmt: skip
    offered = found.offered
    bound = shown.file.get(Bound, str(offered.start))
    told = {
        "file": shown.file,
        "offered": offered,
        "as_of": shown.as_of,
        "bound": bound,
        "bound_by": shown.file.entry_of(bound).by if bound else "",
        "typed": request.POST if request.method == "POST" else {},
        "refused": request.speech.say(refused.words) if refused else "",
        "seen": seen(request) if request.method == "POST" else shown.file.seq,
        "wishes": [
            {"wish": wish, "said": _line(shown, wish), "chosen": wish.id in accepted,
             "now": _now(offered, wish),
             "price": offered.money(wish.price) if wish.price is not None else None}
            for wish in found.wishes
        ],
    }  # fmt: skip
    return render(request, "desk/bind.html", told, status=422 if refused else 200)


def _now(offered: Any, wish: Wish) -> Any:  # noqa: ANN401 - whatever can be said
    line = offered.find(wish.line.coverage, wish.line.location)
    if line is None:
        return words("desk-not-covered")
    return _amounts(offered, line)


def check(request: DeskRequest, file: str) -> HttpResponse:
    """Show the issued policy beside what was agreed, or record that somebody compared them."""
    held = access.open_file(request.person, file, "check")
    refused = None
    if request.method == "POST":
        try:
            checking.check(
                held, on=day(request, "on"), today=request.today, said=text(request, "words"),
                by=request.person.signed, seen=seen(request),
            )  # fmt: skip
            return _done(request, file, "desk-done-check", "check")
        except Trouble as trouble:
            refused = trouble
    return _checked(request, held, refused)


def _checked(request: DeskRequest, held: File, refused: Trouble | None) -> HttpResponse:
    told: Told = {
        "file": held, "as_of": request.today, "typed": text(request, "words"), "seen": held.seq,
        "refused": request.speech.say(refused.words) if refused else "",
    }  # fmt: skip
    try:
        found = checking.check_of(held)
    except Trouble as nothing:
        told["nothing"] = request.speech.say(nothing.words)
        return render(request, "desk/check.html", told, status=422 if refused else 200)
    case = Case(held, reference_in_use(), request.today)
    told |= {
        "check": found,
        "rows": [
            {"direction": d.direction, "more": abs(d.more_borne) if d.more_borne else None,
             "is_more": bool(d.more_borne) and d.more_borne.amount > 0 if d.more_borne else False,
             "said": d.sentence(case.building_name(d.location))}
            for d in found.differences
        ],
    }  # fmt: skip
    return render(request, "desk/check.html", told, status=422 if refused else 200)
