"""Trouble that a person can mend, as a page of sentences with the right status."""

from __future__ import annotations

from django.http import HttpRequest, HttpResponse
from django.shortcuts import render
from django.utils.http import url_has_allowed_host_and_scheme

from quarterday.desk.request import language_of, voice
from quarterday.office.access import Forbidden
from quarterday.office.telling import clashes, sentences, typed_told
from quarterday.office.trouble import Moved
from quarterday.store.conflict import Conflict
from quarterday.store.refusals import Busy, NotReached, UnknownFile

_STATUS: tuple[tuple[type[Exception], int], ...] = (
    (UnknownFile, 404),
    (Forbidden, 403),
    (Conflict, 409),
    (Moved, 409),
    (Busy, 503),
    (NotReached, 503),
)
MENDABLE = 422


def status_of(trouble: Exception) -> int:
    """Return the HTTP status of a trouble."""
    return next((n for kind, n in _STATUS if isinstance(trouble, kind)), MENDABLE)


def answer(request: HttpRequest, trouble: Exception) -> HttpResponse | None:
    """Return the page that tells a trouble; None when it carries no sentence."""
    speech = voice(language_of(request))
    told = list(sentences(trouble, speech))
    if not told:
        return None
    status = status_of(trouble)
    where = {"sentences": told, "status": status, "speech": speech, "typed": _typed(request),
             "told": typed_told(_typed(request), speech), "back": _back(request)}  # fmt: skip
    if isinstance(trouble, Conflict):
        where |= {"clashes": clashes(trouble, speech), "file_id": trouble.file,
                  "seen": max(clash.theirs.seq for clash in trouble.clashes)}  # fmt: skip
        return render(request, "desk/conflict.html", where, status=status)
    return render(request, "desk/trouble.html", where, status=status)


def _back(request: HttpRequest) -> str:
    """Return the address of the page that a form was sent from; empty when it was not one's own."""
    came = request.headers.get("Referer", "")
    is_own = url_has_allowed_host_and_scheme(came, allowed_hosts={request.get_host()})
    return came if is_own and request.method == "POST" else ""


def _typed(request: HttpRequest) -> list[tuple[str, str]]:
    """Return what the person sent, so that nothing of it is lost."""
    hidden = {"csrfmiddlewaretoken", "seen", "_who", "password", "old", "new", "again", "code"}
    return [(n, v) for n, vs in request.POST.lists() if n not in hidden for v in vs]
