"""Forms that come home: send one, or type one in; read what it proposes; take it or refuse it."""

from __future__ import annotations

from base64 import b64encode
from collections.abc import Iterator, Mapping
from datetime import UTC, datetime
from typing import Any

from django.conf import settings
from django.contrib import messages
from django.http import Http404, HttpResponse
from django.shortcuts import redirect, render

from quarterday.core.file.chain import hashed
from quarterday.core.file.entry import canonical
from quarterday.core.file.fold import File
from quarterday.core.file.records import FormReturned
from quarterday.core.words import Term, words
from quarterday.desk.request import DeskRequest
from quarterday.intake.forms.recognise import Flat
from quarterday.office import (
    accepting,
    access,
    form_questions,
    picturing,
    proposals,
    returning,
    standings,
    uploads,
)
from quarterday.office.accepting import Kept
from quarterday.office.own_data import reference_in_use
from quarterday.office.picturing import Pictured
from quarterday.office.returning import Reading
from quarterday.office.trouble import Trouble
from quarterday.papers.parts import FORMS

TAKE, REFUSE, LEAVE = "take", "refuse", "leave"
MOST_TYPED = 10_000


def forms(request: DeskRequest, file: str) -> HttpResponse:
    """Show what came back and where to send the next form, or keep the one that was sent."""
    held = access.open_file(request.person, file, "edit")
    most = settings.MOST_UPLOADED
    if request.method == "POST":
        name, content = uploads.sent(request.FILES.get("document"), most)
        now = datetime.now(UTC)
        token = uploads.keep(request.person, name, content, most, now, uploads.FORM)
        return redirect("form-read", file, token)
    told = {
        "file": held,
        "most": most // 1024 // 1024,
        "forms": FORMS,
        "returned": sorted(held.all(FormReturned), key=lambda f: (f.returned_on, f.form))[::-1],
    }
    return render(request, "desk/forms.html", told)


def read(request: DeskRequest, file: str, token: str) -> HttpResponse:
    """Show what a form that was sent proposes, or write what was chosen of it."""
    held = access.open_file(request.person, file, "edit")
    if request.POST.get("leave"):
        uploads.forget(request.person, token)
        messages.success(request, request.speech.say(words("desk-done-left")))
        return redirect("forms", file)
    sent = uploads.kept(request.person, token)
    found = returning.read(
        bytes(sent.content), sent.name, reference_in_use(), request.today, expected=file
    )
    if "pictures" in request.GET:
        return render(request, "desk/form_pages.html", {"pages": list(_pictures(found))})
    if isinstance(found, Flat):
        return _flat(request, held, found, token)
    if request.method != "POST":
        return _page(request, held, found, token=token)
    if request.POST.get("mark", "") != _mark(found):
        return _page(request, held, found, moved=True, token=token)
    kept = [_accept(request, reading) for reading in found]
    uploads.forget(request.person, token)
    return _done(request, file, kept)


def _accept(request: DeskRequest, reading: Reading) -> Kept:
    chosen = {
        what: [p.name for p in reading.proposals if request.POST.get(f"p-{p.name}") == what]
        for what in (TAKE, REFUSE)
    }
    return accepting.accept(
        reading, by=request.person.signed, every=request.POST.get("every") == "yes",
        take=chosen[TAKE], refuse=chosen[REFUSE],
    )  # fmt: skip


def _done(request: DeskRequest, file: str, kept: list[Kept]) -> HttpResponse:
    standings.refresh(reference_in_use(), request.today, of=[file])
    taken, refused = (sum(len(getattr(k, n)) for k in kept) for n in ("taken", "refused"))
    said = words("desk-done-read", taken=taken, refused=refused)
    messages.success(request, request.speech.say(said))
    return redirect("forms", file)


def _mark(found: tuple[Reading, ...]) -> str:
    """Return what changes when the file, or what the form proposes for it, does."""
    return hashed(canonical([
        [r.seen, [[p.name, p.status, str(p.said), str(p.now)] for p in r.proposals]] for r in found
    ]))  # fmt: skip


def _page(
    request: DeskRequest, held: File, found: tuple[Reading, ...], *, moved: bool = False,
    typed: Mapping[str, str] | None = None, form: str = "", token: str = "",
) -> HttpResponse:  # fmt: skip
    told = {
        "file": held,
        "readings": [_reading(request, reading) for reading in found],
        "mark": _mark(found),
        "moved": moved,
        "typed": typed or {},
        "form": form,
        "n": sum(len(reading.proposals) for reading in found),
        "nothing": not any(reading.proposals for reading in found),
        "choices": (TAKE, REFUSE, LEAVE),
        "scan": token,
    }
    return render(request, "desk/form_read.html", told, status=409 if moved else 200)


def _reading(request: DeskRequest, reading: Reading) -> dict[str, Any]:
    return {
        "reading": reading,
        "notes": [request.speech.say(note) for note in reading.notes],
        "filled": list(_filled(reading)),
        "rows": [_row(request, reading, n) for n in range(len(reading.proposals))],
    }


def _pictures(found: tuple[Reading, ...] | Flat) -> Iterator[dict[str, Any]]:
    """Yield the pages of what came: those that answers stand on, or all that are read by eye.

    Drawing takes its time, so that a page asks for them once it stands.
    """
    if isinstance(found, Flat):
        yield from map(_pictured, picturing.pages(found.looked))
        return
    for reading in found:
        yield from map(_pictured, picturing.beside(reading).pages)


def _pictured(page: Pictured) -> dict[str, Any]:
    """Return a page's picture, within the page that shows it, and the answers that it frames."""
    drawn = b64encode(page.png).decode("ascii") if page.png else ""
    numbers = tuple(str(number) for number, _ in page.proposals)
    return {"page": str(page.page), "drawn": drawn, "numbers": numbers, "n": len(numbers)}


def _filled(reading: Reading) -> Iterator[dict[str, Any]]:
    """Yield each form that was filled in, and who says so."""
    for form in reading.proposed.filled:
        yield {"form": form, "who": reading.proposed.confirmed.get(form)}


def _row(request: DeskRequest, reading: Reading, number: int) -> dict[str, Any]:
    one = reading.proposals[number]
    chosen = request.POST.get(f"p-{one.name}")
    usual = {"change": TAKE, "refused": REFUSE}.get(one.status, LEAVE)
    return {
        **proposals.proposal(one, request.speech),
        "label": one.label,
        "number": number + 1,
        "chosen": chosen if chosen in {TAKE, REFUSE, LEAVE} else usual,
    }


def _flat(request: DeskRequest, held: File, found: Flat, token: str) -> HttpResponse:
    """Show that a picture of a form came, which somebody must type in."""
    told = {"file": held, "name": found.looked.name, "token": token,
            "notes": [request.speech.say(note) for note in returning.flat_notes(found)],
            "forms": found.forms or FORMS}  # fmt: skip
    return render(request, "desk/form_flat.html", told)


def by_hand(request: DeskRequest, file: str, form: str) -> HttpResponse:
    """Show a form's questions to type answers beside, what they propose, or write what was chosen.

    ``scan`` in the address names the picture that came, which is kept with what was typed.
    """
    held = access.open_file(request.person, file, "edit")
    if form not in FORMS:
        raise Http404
    _, asked = form_questions.sheet(
        held, form, reference_in_use(), request.today, _language(request)
    )
    step = request.POST.get("step", "")
    if step not in {"read", "accept"}:
        return _sheet(request, held, form, {name: one.printed for name, one in asked.items()})
    said = {name: request.POST.get(name, one.printed)[:MOST_TYPED] for name, one in asked.items()}
    if request.POST.get("again"):
        return _sheet(request, held, form, said)
    typed = {name: text for name, text in said.items() if text != asked[name].printed}
    token = request.GET.get("scan", "")
    found = _entered(request, file, form, typed, token)
    if step == "accept" and request.POST.get("mark", "") == _mark((found,)):
        kept = _accept(request, found)
        if token:
            uploads.forget(request.person, token)
        return _done(request, file, [kept])
    return _page(
        request, held, (found,), moved=step == "accept", typed=typed, form=form, token=token
    )  # fmt: skip


def _language(request: DeskRequest) -> str:
    return "fr" if request.speech.language == "fr" else "en"


def _entered(
    request: DeskRequest, file: str, form: str, typed: Mapping[str, str], token: str
) -> Reading:  # fmt: skip
    scan = uploads.kept(request.person, token) if token else None
    return returning.enter(
        file, form, typed, reference_in_use(), request.today, language=_language(request),
        person=request.person.signed, scan=(bytes(scan.content), scan.name) if scan else None,
    )  # fmt: skip


def _scan(request: DeskRequest) -> str:
    """Return the token of the picture that came; Trouble when it is not there any more."""
    token = request.GET.get("scan", "")
    return uploads.kept(request.person, token).token if token else ""


def _sheet(request: DeskRequest, held: File, form: str, said: Mapping[str, str]) -> HttpResponse:
    _, asked = form_questions.sheet(
        held, form, reference_in_use(), request.today, _language(request)
    )
    told = {
        "file": held,
        "form": form,
        "questions": [(one, said[name]) for name, one in asked.items()],
        "scan": _scan(request),
    }
    if not asked:
        raise Trouble(words("desk-form-nothing", form=Term("paper", form)))
    return render(request, "desk/form_by_hand.html", told)
