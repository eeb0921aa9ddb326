"""The history of a file: as known on any day, who wrote what, and from which row of what."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import UTC, date, datetime, time, timedelta
from typing import Any

from django.contrib import messages
from django.http import HttpResponse
from django.shortcuts import redirect, render
from django.views.decorators.http import require_POST, require_safe

from quarterday.core.file.entry import Entry
from quarterday.core.file.fold import File
from quarterday.core.file.records import Decision, FindingSetAside, Organisation, Record
from quarterday.core.words import Term, words
from quarterday.desk.request import DeskRequest
from quarterday.desk.views.acts import seen
from quarterday.desk.views.file import shown_of
from quarterday.office import access, standings, undoing
from quarterday.office.called import Names, called_told, leaf_told, names_of, records_of
from quarterday.office.own_data import reference_in_use
from quarterday.office.telling import field_name, signer
from quarterday.store import ledger
from quarterday.store.ledger import Step

MOST = 100
LONGEST = 10  # digits of an entry's number


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
    steps = list(ledger.history(file, _end_of(day))[::-1])
    kind = request.GET.get("kind", "")
    kinds = sorted({step.entry.kind for step in steps})
    chosen = [step for step in steps if not kind or step.entry.kind == kind][:MOST]
    found = records_of(step.entry for step in reversed(steps))
    names = _names(request, held, (found.get(step.entry.seq) for step in chosen))
    total = sum(not kind or step.entry.kind == kind for step in steps)
    told = {
        "file": held,
        "title": organisation.name if (organisation := held.get(Organisation)) else file,
        "day": day,
        "kind": kind,
        "kinds": kinds,
        "steps": [_told(step, found.get(step.entry.seq), names, request) for step in chosen],
        "left": total - len(chosen),
        "total": total,
        "undoable": frozenset() if day else _undoable(request, held, steps),
        "seen": held.seq,
    }
    return render(request, "desk/history.html", told)


@require_POST
def undo(request: DeskRequest, file: str) -> HttpResponse:
    """Take one entry back."""
    sent = request.POST.get("seq", "")
    number = int(sent) if sent.isascii() and sent.isdigit() and len(sent) < LONGEST else 0
    undoing.undo(request.person, file, number, seen(request))
    standings.refresh(reference_in_use(), request.today, of=[file])
    messages.success(request, request.speech.say(words("desk-done-undo")))
    return redirect("history", file)


def _undoable(request: DeskRequest, held: File, steps: list[Step]) -> frozenset[int]:
    """Return the entries that the reader may take back; the steps are the newest first."""
    return undoing.undoable_by(request.person, held, [step.entry for step in reversed(steps)])


def _names(request: DeskRequest, held: File, records: Iterable[Record | None]) -> Names:
    """Return what the file's things are called; findings when a record names one."""
    is_asked = any(isinstance(record, Decision | FindingSetAside) for record in records)
    if not is_asked:
        return names_of(held)
    shown = shown_of(request, held.id)
    return names_of(held, shown.review if shown.is_reviewable else None)


def _told(
    step: Step, record: Record | None, names: Names, request: DeskRequest
) -> dict[str, Any]:  # fmt: skip
    entry, speech = step.entry, request.speech
    return {
        "entry": entry,
        "kind": speech.say(Term("record", entry.kind)),
        "called": called_told(record, names, speech) if record else "",
        "by": signer(entry.by),
        "act": _act(entry, request),
        "origin": speech.origin(entry.origin, entry.recorded_at.date()),
        "changes": [
            (field_name(change.field, speech),
             leaf_told(entry.kind, change.field, change.before, speech),
             leaf_told(entry.kind, change.field, change.after, speech))
            for change in step.changes
        ],
    }  # fmt: skip


def _act(entry: Entry, request: DeskRequest) -> str:
    id = f"desk-act-{entry.act}"
    return request.speech.say(words(id)) if request.speech.can_say(id) else entry.act
