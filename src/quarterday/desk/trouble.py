"""Trouble that a person can mend, as a page of sentences with the right status."""

from __future__ import annotations

from typing import Any

from django.http import HttpRequest, HttpResponse
from django.shortcuts import render

from quarterday.catalogue.speech import Speech
from quarterday.core.words import Term, Words, words
from quarterday.desk.request import language_of, voice
from quarterday.office.access import Forbidden
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
    said = getattr(trouble, "words", None)
    problems = getattr(trouble, "problems", ())
    speech = voice(language_of(request))
    told = list(problems) if isinstance(problems, tuple) else []
    if isinstance(said, Words):
        told.append(speech.say(said))
    if not told:
        return None
    status = status_of(trouble)
    where = {"sentences": told, "status": status, "speech": speech, "typed": _typed(request)}
    if isinstance(trouble, Conflict):
        where |= {"clashes": clashes(trouble, speech), "file_id": trouble.file,
                  "seen": max(clash.theirs.seq for clash in trouble.clashes)}  # fmt: skip
        return render(request, "desk/conflict.html", where, status=status)
    return render(request, "desk/trouble.html", where, status=status)


def _typed(request: HttpRequest) -> list[tuple[str, str]]:
    """Return what the person sent, so that nothing of it is lost."""
    hidden = {"csrfmiddlewaretoken", "seen", "_who", "password", "old", "new", "again", "code"}
    return [(n, v) for n, vs in request.POST.lists() if n not in hidden for v in vs]


def clashes(conflict: Conflict, speech: Speech) -> list[dict[str, Any]]:
    """Return, for each record that two people changed, who else did and where they differ."""
    return [
        {
            "kind": speech.say(Term("record", clash.kind)),
            "by": clash.theirs.by,
            "at": clash.theirs.recorded_at,
            "fields": [
                {"name": field_name(f.field, speech), "theirs": _shown(f.theirs),
                 "mine": _shown(f.mine), "before": _shown(f.before)}
                for f in clash.fields
            ],
        }
        for clash in conflict.clashes
    ]  # fmt: skip


def field_name(path: str, speech: Speech) -> str:
    """Return the name of a field by its path; of a part's field, with the part's own name."""
    before, _, name = path.rpartition(".")
    id = f"field-{(name or path).replace('_', '-')}"
    said = speech.say(words(id)) if speech.can_say(id) else name or path
    where = before.partition("[")[2].rstrip("]")
    return f"{said} ({where})" if where else said


def _shown(value: object) -> str:
    return "–" if value is None or value == "" else str(value)
