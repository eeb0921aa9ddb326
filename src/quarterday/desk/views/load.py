"""Loading in the browser: send a document, read what it would do, accept it or leave it."""

from __future__ import annotations

from datetime import UTC, datetime

from django.conf import settings
from django.contrib import messages
from django.http import HttpResponse
from django.shortcuts import redirect, render
from django.views.decorators.http import require_POST

from quarterday.core.words import words
from quarterday.desk.request import DeskRequest
from quarterday.office import access, uploads
from quarterday.office.own_data import reference_in_use
from quarterday.office.uploads import Preview

MOST_SHOWN = 300


def load(request: DeskRequest) -> HttpResponse:
    """Show where to send a document, or keep the one that was sent."""
    access.require_anywhere(request.person, "load")
    most = settings.MOST_UPLOADED
    if request.method != "POST":
        return render(request, "desk/load.html", {"most": most // 1024 // 1024})
    name, content = uploads.sent(request.FILES.get("document"), most)
    token = uploads.keep(request.person, name, content, most, datetime.now(UTC))
    return redirect("load-preview", token)


def preview(request: DeskRequest, token: str) -> HttpResponse:
    """Show what accepting a document would do; nothing is written."""
    if request.method == "POST":
        uploads.forget(request.person, token)
        messages.success(request, request.speech.say(words("desk-done-left")))
        return redirect("load")
    found = uploads.preview(request.person, token, reference_in_use(), request.speech)
    return _page(request, found)


def _page(request: DeskRequest, found: Preview, *, moved: bool = False) -> HttpResponse:
    plan = found.loading.plan
    told = {
        "preview": found,
        "sentences": found.sentences[:MOST_SHOWN],
        "left": max(0, len(found.sentences) - MOST_SHOWN),
        "needs_acceptance": plan.needs_acceptance,
        "faults": len(plan.of("refused")) + len(plan.of("asks")),
        "nothing": not plan.drafts(accept_with_errors=True),
        "moved": moved,
    }
    return render(request, "desk/load_preview.html", told, status=409 if moved else 200)


@require_POST
def accept(request: DeskRequest, token: str) -> HttpResponse:
    """Write what was previewed, in one transaction."""
    done = uploads.accept(
        request.person, token, reference_in_use(), request.speech,
        mark=request.POST.get("mark", ""), with_errors=request.POST.get("with_errors") == "yes",
    )  # fmt: skip
    if isinstance(done, Preview):
        return _page(request, done, moved=True)
    said = words("desk-done-load", files=done.files, entries=done.entries)
    messages.success(request, request.speech.say(said))
    return redirect("day")
