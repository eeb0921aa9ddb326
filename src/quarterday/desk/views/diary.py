"""The diary: what is due, as a list and as a calendar at a secret address."""

from __future__ import annotations

import hashlib
import secrets
from datetime import UTC, date, datetime, timedelta

from django.http import Http404, HttpRequest, HttpResponse
from django.shortcuts import redirect, render
from django.urls import reverse
from django.views.decorators.http import require_POST, require_safe

from quarterday.desk.request import DeskRequest, voice
from quarterday.desk.views.day import asked_of
from quarterday.office import access, standings
from quarterday.office.calendar import calendar
from quarterday.office.demo_people import today
from quarterday.office.own_data import reference_in_use
from quarterday.people import limits
from quarterday.people.models import Person
from quarterday.store import day_list
from quarterday.store.day_list import ONLY, Asked, Step

AHEAD = timedelta(days=60)
MOST = 200
WHO = ("broker", "leaders", "insurer")


@require_safe
def diary(request: DeskRequest) -> HttpResponse:
    """Show the open steps by the day on which they are due."""
    standings.refresh(reference_in_use(), request.today, most=standings.FEW)
    offices = access.offices(request.person)
    asked = asked_of(request.GET, offices, request.today)
    narrowed = Asked(offices, search=asked.search, broker=asked.broker, only=asked.only)
    steps = day_list.steps(narrowed, request.today + AHEAD, MOST + 1)
    groups = _grouped(steps[:MOST], request.today)
    told = {
        "groups": groups,
        "n_of": {when: len(part) for when, part in groups},
        "more": len(steps) > MOST,
        "asked": narrowed,
        "brokers": day_list.brokers(offices),
        "only": ONLY,
        "who": WHO,
        "n": min(len(steps), MOST),
        "narrowed": bool(narrowed.search or narrowed.broker or narrowed.only),
        "has_address": bool(request.person.feed),
        "address": request.session.pop("feed-shown", ""),
    }
    if request.htmx and not request.htmx.boosted:
        return render(request, "desk/diary_list.html", told)
    return render(request, "desk/diary.html", told)


def _grouped(steps: tuple[Step, ...], today: date) -> list[tuple[str, list[Step]]]:
    """Return the steps that are late, of this week, and later."""
    week = today + timedelta(days=7)
    found: dict[str, list[Step]] = {"late": [], "week": [], "later": []}
    for step in steps:
        when = "late" if step.is_late else "week" if step.latest < week else "later"
        found[when].append(step)
    return [(when, part) for when, part in found.items() if part]


def _digest(token: str) -> str:
    return hashlib.sha256(token.encode("utf-8", "surrogatepass")).hexdigest()


@require_POST
def new_address(request: DeskRequest) -> HttpResponse:
    """Make a new secret address of the person's calendar; the old one stops at once."""
    if request.POST.get("stop"):
        Person.objects.filter(pk=request.person.pk).update(feed="")
        return redirect("diary")
    token = secrets.token_urlsafe(32)
    Person.objects.filter(pk=request.person.pk).update(feed=_digest(token))
    request.session["feed-shown"] = request.build_absolute_uri(reverse("feed", args=[token]))
    return redirect("diary")


@require_safe
def feed(request: HttpRequest, token: str) -> HttpResponse:
    """Answer a program that knows a secret address with that person's calendar."""
    now, machine = datetime.now(UTC), request.META.get("REMOTE_ADDR", "")
    digest = _digest(token)
    person = Person.objects.filter(feed=digest, is_active=True).first()
    if limits.is_over("feed", digest, now) or limits.is_over("feed-wrong", machine, now):
        return HttpResponse(status=429, headers={"Retry-After": "3600"})
    if person is None:
        limits.count("feed-wrong", machine, now)
        raise Http404
    limits.count("feed", digest, now)
    day = today()
    steps = day_list.steps(Asked(access.offices(person)), day + 2 * AHEAD, 4 * MOST)
    address = request.build_absolute_uri("/") + "files/{file}/"
    made = calendar(steps, voice(person.language), day, address)
    return HttpResponse(made, content_type="text/calendar; charset=utf-8")
