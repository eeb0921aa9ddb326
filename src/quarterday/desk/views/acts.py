"""The acts on a file's page: each one is a form, a right, an entry, and the page again."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date

from django.contrib import messages
from django.http import HttpResponse
from django.shortcuts import redirect
from django.urls import reverse
from django.views.decorators.http import require_POST

from quarterday.core.words import words
from quarterday.desk.filepage import anchor
from quarterday.desk.request import DeskRequest
from quarterday.desk.views.file import shown_of
from quarterday.office import access, acts, reviewing, standings
from quarterday.office.own_data import reference_in_use
from quarterday.office.showing import Shown
from quarterday.office.trouble import Trouble

MOST = 10_000


def text(request: DeskRequest, name: str) -> str:
    """Return a field as it was sent, without more than can be kept.

    Browsers end the lines of a text area with CR LF (HTML, form submission); they are kept as LF.
    """
    return request.POST.get(name, "").replace("\r\n", "\n")[:MOST]


def seen(request: DeskRequest) -> int:
    """Return the newest entry that the sender had seen; 0 when the form does not say."""
    sent = request.POST.get("seen", "")
    return int(sent) if sent.isascii() and sent.isdigit() and len(sent) < MOST else 0


def day(request: DeskRequest, name: str) -> date:
    """Return a day as it was sent; Trouble when it is none."""
    try:
        return date.fromisoformat(text(request, name).strip())
    except ValueError:
        raise Trouble(words("acts-no-day", text=text(request, name)[:40])) from None


def back(request: DeskRequest, id: str, where: str, done: str) -> HttpResponse:
    """Bring the file's standing up to date, say what was done, and show the page again.

    That is the file's own, or that of the decisions when the form came ``from`` there.
    """
    standings.refresh(reference_in_use(), request.today, of=[id])
    messages.success(request, request.speech.say(words(done)))
    page = "decisions" if request.POST.get("from") == "decisions" else "file"
    return redirect(f"{reverse(page, args=[id])}#{where}")


def _act(
    request: DeskRequest, id: str, right: access.Act, do: Callable[[Shown], object], where: str,
    done: str,
) -> HttpResponse:  # fmt: skip
    shown = shown_of(request, id, right)
    do(shown)
    return back(request, id, where, done)


@require_POST
def set_aside(request: DeskRequest, file: str) -> HttpResponse:
    """Set a finding aside for this renewal, with the reason."""
    finding, reason = text(request, "finding"), text(request, "reason")

    def do(shown: Shown) -> object:
        return acts.set_aside(
            request.person, shown.file, shown.review, finding, reason, seen(request)
        )

    return _act(request, file, "set-aside", do, anchor(finding), "desk-done-set-aside")


@require_POST
def take_up(request: DeskRequest, file: str) -> HttpResponse:
    """Take up a finding that was set aside."""
    finding = text(request, "finding")

    def do(shown: Shown) -> object:
        return acts.take_up(request.person, shown.file, shown.review, finding, seen(request))

    return _act(request, file, "set-aside", do, anchor(finding), "desk-done-take-up")


@require_POST
def decide(request: DeskRequest, file: str) -> HttpResponse:
    """Record the leaders' decision on one question."""
    question = text(request, "question")

    def do(shown: Shown) -> object:
        return acts.decide(
            request.person, shown.file, shown.review, question=question,
            answer=text(request, "answer"), by=text(request, "by"), on=day(request, "on"),
            said=text(request, "words"), seen=seen(request),
        )  # fmt: skip

    return _act(request, file, "record", do, anchor(question), "desk-done-decide")


@require_POST
def choose_payment(request: DeskRequest, file: str) -> HttpResponse:
    """Record how the organisation pays."""

    def do(shown: Shown) -> object:
        return acts.choose_payment(
            request.person, shown.file, shown.review, plan=text(request, "plan"),
            by=text(request, "by"), on=day(request, "on"), seen=seen(request),
        )  # fmt: skip

    return _act(request, file, "record", do, "papers", "desk-done-payment")


@require_POST
def note(request: DeskRequest, file: str) -> HttpResponse:
    """Keep a note."""

    def do(shown: Shown) -> object:
        return acts.note(request.person, shown.file, text(request, "text"), seen(request))

    return _act(request, file, "record", do, "notes", "desk-done-note")


@require_POST
def sign(request: DeskRequest, file: str) -> HttpResponse:
    """Sign the review as the licensed person who is signed in and has read it."""

    def do(shown: Shown) -> object:
        if request.POST.get("read") != "yes":
            raise Trouble(words("acts-not-read"))
        person = request.person
        return reviewing.sign(
            file, reference_in_use(), reviewer=person.name, licence=person.licence,
            as_of=shown.as_of, by=person.signed, seen=seen(request),
        )  # fmt: skip

    return _act(request, file, "sign", do, "papers", "desk-done-sign")
