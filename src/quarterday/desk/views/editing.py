"""Editing a fact where it stands: a form for each kind of record, made from its columns."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from django.contrib import messages
from django.http import Http404, HttpResponse
from django.shortcuts import redirect, render
from django.urls import reverse
from django.views.decorators.http import require_POST

from quarterday.core.file.fold import File
from quarterday.core.file.layout import Sheet
from quarterday.core.file.records import Record, Terms
from quarterday.core.words import Term, words
from quarterday.desk.request import DeskRequest
from quarterday.desk.views.acts import seen
from quarterday.office import access, acts, forms, standings
from quarterday.office.called import called_told, names_of
from quarterday.office.forms import Typed
from quarterday.office.own_data import reference_in_use
from quarterday.office.telling import clashes
from quarterday.store.conflict import Conflict

LONG = {"notes", "updates", "description", "text"}
SECTIONS: Mapping[str, str] = {
    "organisation": "people", "contact": "people", "authority": "people",
    "operations": "operations", "building": "buildings", "valuation": "buildings",
    "terms": "terms", "claim": "claims", "interest": "people",
}  # fmt: skip


def _sheet(kind: str, part: str = "") -> Sheet:
    found = forms.sheet_of(kind, part)
    if found is None:
        raise Http404
    return found


def _said(request: DeskRequest, sheet: Sheet) -> dict[str, str]:
    return {c.field: request.POST.get(c.field, "")[:20_000] for c in forms.columns(sheet)}


def edit(request: DeskRequest, file: str) -> HttpResponse:
    """Show a record as a form, or record what was typed.

    The address names the kind and, for a record that exists, its key.
    """
    kind, key = request.GET.get("kind", ""), request.GET.get("key")
    held = access.open_file(request.person, file, "edit")
    sheet = _sheet(kind)
    standing = held.held.get((kind, key)) if key is not None else None
    if key is not None and standing is None:
        raise Http404
    record = standing.record if standing else None
    if request.method != "POST":
        said = forms.texts(record, sheet, request.speech.language)
        return _form(request, held, sheet, said, record=record)
    said = _said(request, sheet)
    typed = forms.typed(sheet, said, request.speech.language, record)
    if typed.record is None:
        return _form(request, held, sheet, said, record=record, typed=typed)
    was = None if record is None else (kind, key or "")
    return _save(request, held, sheet, said, typed.record, was)


def _save(
    request: DeskRequest,
    held: File,
    sheet: Sheet,
    said: Mapping[str, str],
    record: Record,
    was: tuple[str, str] | None,
    number: int | None = None,
) -> HttpResponse:
    try:
        written = acts.edit(request.person, held, record, seen(request), was)
    except Conflict as conflict:
        return _form(request, held, sheet, said, record=record, conflict=conflict, number=number)
    done = "desk-done-edit" if written else "desk-done-nothing"
    return _done(request, held.id, sheet.record.kind, done)


def _done(request: DeskRequest, id: str, kind: str, done: str) -> HttpResponse:
    standings.refresh(reference_in_use(), request.today, of=[id])
    messages.success(request, request.speech.say(words(done)))
    return redirect(f"{reverse('file', args=[id])}#{SECTIONS.get(kind, 'main')}")


def _form(  # noqa: PLR0913 - a form is made of these
    request: DeskRequest,
    held: File,
    sheet: Sheet,
    said: Mapping[str, str],
    *,
    record: Record | None,
    typed: Typed | None = None,
    conflict: Conflict | None = None,
    number: int | None = None,
) -> HttpResponse:
    """Show the form; after a conflict with both versions, and what was typed kept."""
    faults = typed.faults if typed else {}
    newest = max((c.theirs.seq for c in conflict.clashes), default=0) if conflict else 0
    told: dict[str, Any] = {
        "file": held,
        "sheet": sheet,
        "kind": _title(request, held, sheet, record, number),
        "section": SECTIONS.get(sheet.record.kind, "main"),
        "record": record,
        "number": number,
        "is_new": record is None or (bool(sheet.part) and number is None),
        "fields": forms.fields(
            sheet, said, held, reference_in_use(), faults=faults, is_new=record is None
        ),
        "whole_fault": faults.get(forms.NO_FIELD),
        "faults": len(faults),
        "long": LONG,
        "seen": newest or (seen(request) if request.method == "POST" else held.seq),
        "clashes": clashes(conflict, request.speech) if conflict else [],
    }
    status = 409 if conflict else 422 if faults else 200
    return render(request, "desk/edit.html", told, status=status)


def _title(
    request: DeskRequest, held: File, sheet: Sheet, record: Record | None, number: int | None
) -> str:
    """Return the kind of a record, with what this one is called when it is on file.

    A line of terms comes first, by its coverage, and the terms that it is of after it.
    """
    kind = request.speech.say(Term("record", sheet.record.kind))
    is_held = record is not None and (record.kind, record.key) in held.held
    called = called_told(record, names_of(held), request.speech) if record and is_held else ""
    whole = f"{kind} {called}".strip()
    line = _line(request, sheet, record, number)
    return f"{line}, {whole}" if line else whole


def _line(
    request: DeskRequest, sheet: Sheet, terms: Record | None, number: int | None
) -> str:  # fmt: skip
    """Return what a line of terms is called: its sheet's kind, and its coverage when it has one."""
    if not sheet.part or not isinstance(terms, Terms):
        return ""
    said = request.speech.say(Term("line", sheet.part))
    lines = forms.part_of(terms, sheet)
    coverage = "" if number is None else getattr(lines[number], "coverage", "")
    known = coverage in reference_in_use().coverages
    return f"{said} {request.speech.say(Term('coverage', coverage))}" if known else said


def _part(request: DeskRequest, file: str) -> tuple[File, Sheet, Terms, int | None]:
    """Return the file, the part's sheet, the terms it belongs to, and the line's number."""
    held = access.open_file(request.person, file, "edit")
    sheet = _sheet("terms", request.GET.get("part", ""))
    terms = held.get(Terms, request.GET.get("key", ""))
    if terms is None or not sheet.part:
        raise Http404
    sent = request.GET.get("line", "")
    if not sent:
        return held, sheet, terms, None
    number = int(sent) if sent.isascii() and sent.isdigit() and len(sent) < 6 else -1  # noqa: PLR2004
    if not 0 <= number < len(forms.part_of(terms, sheet)):
        raise Http404
    return held, sheet, terms, number


def edit_part(request: DeskRequest, file: str) -> HttpResponse:
    """Show one line of terms as a form, or record the terms with what was typed."""
    held, sheet, terms, number = _part(request, file)
    language = request.speech.language
    if request.method != "POST":
        line = None if number is None else forms.part_of(terms, sheet)[number]
        said = forms.texts(line, sheet, language)
        return _form(request, held, sheet, said, record=terms, number=number)
    said = _said(request, sheet)
    typed = forms.typed_part(terms, sheet, number, said, language)
    if typed.record is None:
        return _form(request, held, sheet, said, record=terms, typed=typed, number=number)
    return _save(request, held, sheet, said, typed.record, (terms.kind, terms.key), number)


@require_POST
def remove_part(request: DeskRequest, file: str) -> HttpResponse:
    """Record the terms without one of their lines."""
    held, sheet, terms, number = _part(request, file)
    if number is None:
        raise Http404
    acts.edit(request.person, held, forms.without(terms, sheet, number), seen(request),
              (terms.kind, terms.key))  # fmt: skip
    return _done(request, held.id, terms.kind, "desk-done-edit")


@require_POST
def withdraw(request: DeskRequest, file: str) -> HttpResponse:
    """Take a record back."""
    held = access.open_file(request.person, file, "edit")
    kind, key = request.GET.get("kind", ""), request.GET.get("key", "")
    _sheet(kind)
    if (kind, key) not in held.held:
        raise Http404
    acts.withdraw(request.person, held, kind, key, seen(request))
    return _done(request, held.id, kind, "desk-done-withdraw")
