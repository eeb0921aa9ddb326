"""The request to the insurer: what it would ask for now, its letter, and that it went out."""

from __future__ import annotations

from django.contrib import messages
from django.http import Http404, HttpResponse
from django.shortcuts import redirect, render
from django.views.decorators.http import require_safe

from quarterday.core.file.records import FormReturned, RequestSent
from quarterday.core.words import words
from quarterday.desk.request import LANGUAGES, DeskRequest
from quarterday.desk.views.acts import seen
from quarterday.office import access, requesting, standings
from quarterday.office.brand import brokerage
from quarterday.office.own_data import reference_in_use
from quarterday.office.requesting import Prepared
from quarterday.office.trouble import Moved, Trouble
from quarterday.store import originals

KINDS = {"pdf": "application/pdf", "csv": "text/csv; charset=utf-8", "json": "application/json"}


def _prepared(request: DeskRequest, id: str) -> Prepared:
    sent = request.POST.get("language") or request.GET.get("language", "")
    language = sent if sent in LANGUAGES else request.speech.language
    return requesting.prepare(id, reference_in_use(), brokerage(), request.today, language)


def ask(request: DeskRequest, file: str) -> HttpResponse:
    """Show what the next request would ask for, or record that it went to the insurer."""
    held = access.open_file(request.person, file, "ask")
    told = {"file": held, "sent": held.all(RequestSent)[::-1], "kinds": KINDS}
    try:
        prepared = _prepared(request, file)
    except Trouble as nothing:
        if request.method == "POST":
            raise
        said = request.speech.say(nothing.words)
        return render(request, "desk/ask.html", {**told, "nothing": said})
    if request.method != "POST":
        return render(request, "desk/ask.html", {**told, "prepared": prepared})
    if prepared.seq != seen(request):
        raise Moved(words("acts-request-moved", file=file))
    requesting.send(prepared, by=request.person.signed)
    standings.refresh(reference_in_use(), request.today, of=[file])
    messages.success(request, request.speech.say(words("desk-done-ask")))
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
