"""Sending the package by e-mail, and what came back."""

from __future__ import annotations

from typing import Any

from django.contrib import messages
from django.http import HttpResponse
from django.shortcuts import redirect, render
from django.views.decorators.http import require_POST

from quarterday.core.file.fold import File
from quarterday.core.file.records import Contact, Delivery
from quarterday.core.words import words
from quarterday.desk.request import LANGUAGES, DeskRequest
from quarterday.desk.views.acts import day, seen, text
from quarterday.office import access, delivering, mailing, standings
from quarterday.office.brand import brokerage
from quarterday.office.delivering import Letter
from quarterday.office.own_data import reference_in_use
from quarterday.office.trouble import Trouble


def send(request: DeskRequest, file: str) -> HttpResponse:
    """Show the message that goes with the package, or send both and record it."""
    held = access.open_file(request.person, file, "deliver")
    language = _language(request, held)
    if request.method != "POST":
        return _page(request, held, language, _usual(request, held, language))
    letter = Letter(*(text(request, name) for name in ("to", "address", "subject", "message")))
    try:
        mailing.count(request.person)
        delivering.send(
            file, reference_in_use(), language, letter, brokerage=brokerage(), on=request.today,
            by=request.person.signed, seen=seen(request),
        )  # fmt: skip
    except Trouble as refused:
        return _page(request, held, language, letter, refused)
    return _done(request, file, words("desk-done-send", to=letter.to, address=letter.address))


def _done(request: DeskRequest, file: str, said: Any) -> HttpResponse:  # noqa: ANN401 - words
    standings.refresh(reference_in_use(), request.today, of=[file])
    messages.success(request, request.speech.say(said))
    return redirect("send", file)


def _language(request: DeskRequest, held: File) -> str:
    asked = request.POST.get("language") or request.GET.get("language", "")
    return asked if asked in LANGUAGES else held.organisation.language


def _receivers(held: File) -> list[Contact]:
    """Return who can be written to, the key people first."""
    found = [c for c in held.contacts if c.email and c.left_on is None]
    return sorted(found, key=lambda contact: (not contact.is_key, contact.name))


def _usual(request: DeskRequest, held: File, language: str) -> Letter:
    known = _receivers(held)
    asked = request.GET.get("to", "")
    chosen = next((c for c in known if c.id == asked), known[0] if known else None)
    name, address = (chosen.name, chosen.email or "") if chosen else ("", "")
    return delivering.usual_letter(
        held, reference_in_use(), language, brokerage(), name, address, request.person.name
    )


def _page(
    request: DeskRequest, held: File, language: str, letter: Letter, refused: Trouble | None = None
) -> HttpResponse:
    try:
        package, missing = delivering.parcel(held, reference_in_use(), language), ""
    except Trouble as trouble:
        package, missing = None, request.speech.say(trouble.words)
    told = {
        "file": held,
        "in_language": language,
        "others": [other for other in LANGUAGES if other != language],
        "package": package,
        "missing": missing,
        "ready": mailing.ready(),
        "letter": letter,
        "receivers": _receivers(held),
        "refused": request.speech.say(refused.words) if refused else "",
        "seen": seen(request) if request.method == "POST" else held.seq,
        "deliveries": sorted(held.all(Delivery), key=lambda d: d.delivered_on, reverse=True),
    }
    return render(request, "desk/send.html", told, status=422 if refused else 200)


@require_POST
def came_back(request: DeskRequest, file: str) -> HttpResponse:
    """Record that a delivery came back."""
    access.open_file(request.person, file, "deliver")
    delivering.came_back(
        file, text(request, "key"), why=text(request, "why"), on=day(request, "on"),
        today=request.today, by=request.person.signed,
    )  # fmt: skip
    return _done(request, file, words("desk-done-came-back"))
