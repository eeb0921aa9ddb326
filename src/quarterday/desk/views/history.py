"""The history of a file: as known on any day, who wrote what, and from which row of what."""

from __future__ import annotations

from datetime import UTC, date, datetime, time, timedelta
from typing import Any

from django.http import HttpResponse
from django.shortcuts import render
from django.views.decorators.http import require_safe

from quarterday.catalogue.speech import Speech
from quarterday.core.file.difference import Difference
from quarterday.core.file.entry import Entry
from quarterday.core.file.records import Organisation
from quarterday.core.words import Term, words
from quarterday.desk.request import DeskRequest
from quarterday.office import access
from quarterday.office.telling import field_name
from quarterday.store import ledger
from quarterday.store.ledger import Step

MOST = 100


def _end_of(day: date | None) -> datetime | None:
    """Return the last moment of a day, in universal time as entries are recorded."""
    if day is None:
        return None
    return datetime.combine(day + timedelta(days=1), time(), UTC) - timedelta(microseconds=1)


def _day(text: str) -> date | None:
    try:
        return date.fromisoformat(text)
    except ValueError:
        return None


@require_safe
def history(request: DeskRequest, file: str) -> HttpResponse:
    """Show the entries, the newest first, with what each changed."""
    held = access.open_file(request.person, file)
    day = _day(request.GET.get("known", ""))
    steps = ledger.history(file, _end_of(day))[::-1]
    kind = request.GET.get("kind", "")
    kinds = sorted({step.entry.kind for step in steps})
    chosen = [step for step in steps if not kind or step.entry.kind == kind]
    told = {
        "file": held,
        "title": organisation.name if (organisation := held.get(Organisation)) else file,
        "day": day,
        "kind": kind,
        "kinds": kinds,
        "steps": [_told(step, request) for step in chosen[:MOST]],
        "left": max(0, len(chosen) - MOST),
        "total": len(chosen),
    }
    return render(request, "desk/history.html", told)


def _told(step: Step, request: DeskRequest) -> dict[str, Any]:
    entry = step.entry
    return {
        "entry": entry,
        "kind": request.speech.say(Term("record", entry.kind)),
        "act": _act(entry, request),
        "origin": request.speech.origin(entry.origin, entry.recorded_at.date()),
        "changes": [_change(change, request) for change in step.changes],
    }


def _act(entry: Entry, request: DeskRequest) -> str:
    id = f"desk-act-{entry.act}"
    return request.speech.say(words(id)) if request.speech.can_say(id) else entry.act


def _change(change: Difference, request: DeskRequest) -> tuple[str, str, str]:
    speech = request.speech
    before, after = _value(change.before, speech), _value(change.after, speech)
    return field_name(change.field, speech), before, after


def _value(value: object, speech: Speech) -> str:
    if isinstance(value, bool):
        return speech.say(value)
    return "–" if value is None or value == "" else str(value)
