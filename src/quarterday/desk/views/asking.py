"""The request to the insurer: what it would ask for now, its letter, and that it went out."""

from __future__ import annotations

from typing import Any

from django.contrib import messages
from django.http import Http404, HttpResponse
from django.shortcuts import redirect, render
from django.views.decorators.http import require_safe

from quarterday.catalogue.speech import Speech
from quarterday.core.file.fold import File
from quarterday.core.file.records import FormReturned, RequestSent
from quarterday.core.words import Words, words
from quarterday.desk.request import LANGUAGES, DeskRequest
from quarterday.desk.views.acts import seen, text
from quarterday.office import access, mailing, requesting, standings
from quarterday.office.brand import brokerage
from quarterday.office.delivering import Letter
from quarterday.office.own_data import reference_in_use
from quarterday.office.requesting import Prepared
from quarterday.office.trouble import Trouble
from quarterday.store import originals

KINDS = {"pdf": "application/pdf", "csv": "text/csv; charset=utf-8", "json": "application/json"}


def _language(request: DeskRequest) -> str:
    sent = request.POST.get("language") or request.GET.get("language", "")
    return sent if sent in LANGUAGES else request.speech.language


def _prepared(request: DeskRequest, id: str) -> Prepared:
    day, language = request.today, _language(request)
    return requesting.prepare(id, reference_in_use(), brokerage(), day, language)


def ask(request: DeskRequest, file: str) -> HttpResponse:
    """Show what the next request would ask for, or record that it went to the insurer."""
    held = access.open_file(request.person, file, "ask")
    told = {"file": held, "sent": held.all(RequestSent)[::-1],
            "languages": LANGUAGES}  # fmt: skip
    try:
        prepared = _prepared(request, file)
    except Trouble as nothing:
        if request.method == "POST":
            raise
        said = request.speech.say(nothing.words)
        return render(request, "desk/ask.html", {**told, "nothing": said})
    if request.method != "POST":
        return _page(request, told, prepared, _usual(request, held, prepared))
    requesting.require_seen(prepared, seen(request))
    if request.POST.get("way") == "mail":
        return _mailed(request, told, prepared)
    requesting.send(prepared, by=request.person.signed)
    return _done(request, file, words("desk-done-ask"))


def _page(
    request: DeskRequest, told: dict[str, Any], prepared: Prepared, letter: Letter,
    refused: Trouble | None = None,
) -> HttpResponse:  # fmt: skip
    more = {
        "prepared": prepared, "letter": letter, "ready": mailing.ready(),
        "in_language": _language(request),
        "refused": request.speech.say(refused.words) if refused else "",
    }  # fmt: skip
    return render(request, "desk/ask.html", {**told, **more}, status=422 if refused else 200)


def _usual(request: DeskRequest, held: File, prepared: Prepared) -> Letter:
    speech = Speech(reference_in_use(), _language(request))
    return requesting.usual_letter(held, prepared, brokerage(), speech, request.person.name)


def _mailed(request: DeskRequest, told: dict[str, Any], prepared: Prepared) -> HttpResponse:
    """Send the request by e-mail; what was typed comes back when it does not go."""
    letter = Letter("", *(text(request, name) for name in ("address", "subject", "message")))
    try:
        mailing.count(request.person)
        requesting.mail(prepared, letter, brokerage(), _language(request), by=request.person.signed)
    except Trouble as refused:
        return _page(request, told, prepared, letter, refused)
    said = words("desk-done-ask-mail", address=letter.address.strip())
    return _done(request, prepared.request.file, said)


def _done(request: DeskRequest, file: str, said: Words) -> HttpResponse:
    standings.refresh(reference_in_use(), request.today, of=[file])
    messages.success(request, request.speech.say(said))
    return redirect("ask", file)


@require_safe
def letter(request: DeskRequest, file: str, kind: str) -> HttpResponse:
    """Answer with the next request as a letter, or as a table for a program."""
    access.open_file(request.person, file, "ask")
    if kind not in KINDS:
        raise Http404
    prepared = _prepared(request, file)
    data = {"pdf": prepared.pdf, "csv": prepared.csv, "json": prepared.json}[kind]
    return attachment(data, KINDS[kind], f"{prepared.name}.{kind}")


@require_safe
def kept(request: DeskRequest, file: str, document: str) -> HttpResponse:
    """Answer with a document that was kept with a request or a returned form of this file."""
    held = access.open_file(request.person, file)
    letters = {sent.document for sent in held.all(RequestSent)}
    if document not in letters | {form.document for form in held.all(FormReturned)}:
        raise Http404
    return attachment(originals.get(document), "application/pdf", f"{file}-{document[:12]}.pdf")


def attachment(data: bytes, kind: str, name: str) -> HttpResponse:
    """Return bytes to be kept under a name, never shown as a page."""
    safe = "".join(c if c.isascii() and (c.isalnum() or c in "-_.") else "-" for c in name)
    response = HttpResponse(data, content_type=kind)
    response["Content-Disposition"] = f'attachment; filename="{safe}"'
    return response
