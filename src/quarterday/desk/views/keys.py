"""A person's own access keys: shown, made, ended."""

from __future__ import annotations

from datetime import UTC, datetime

from django.contrib import messages
from django.http import HttpResponse
from django.shortcuts import redirect, render
from django.views.decorators.debug import sensitive_post_parameters
from django.views.decorators.http import require_POST

from quarterday.core.words import words
from quarterday.desk.request import DeskRequest
from quarterday.desk.views.acts import text
from quarterday.office import access_keys
from quarterday.office.demo_people import needs_factor
from quarterday.office.trouble import Trouble
from quarterday.people.models import SCOPES

CHOICES = (30, 90, 180, 366)  # days


@sensitive_post_parameters()
def keys(request: DeskRequest) -> HttpResponse:
    """Show the person's keys, or make one."""
    if request.method != "POST":
        return _page(request)
    days = text(request, "days")
    try:
        _, secret = access_keys.make(
            request.person, name=text(request, "name"), scope=text(request, "scope"),
            days=int(days) if days.isascii() and days.isdigit() and len(days) < 5 else 0,  # noqa: PLR2004
            code=text(request, "code"), now=datetime.now(UTC),
        )  # fmt: skip
    except Trouble as trouble:
        return _page(request, fault=request.speech.say(trouble.words))
    return _page(request, secret=secret)


def _page(request: DeskRequest, secret: str = "", fault: str = "") -> HttpResponse:
    now = datetime.now(UTC)
    told = {
        "keys": [(key, access_keys.state(key, now)) for key in access_keys.of(request.person)],
        "secret": secret,
        "fault": fault,
        "scopes": SCOPES,
        "days": CHOICES,
        "needs_factor": needs_factor(),
        "typed": request.POST if fault else {},
    }
    return render(request, "desk/keys.html", told, status=422 if fault else 200)


@require_POST
def end_key(request: DeskRequest, number: int) -> HttpResponse:
    """End one of the person's keys at once."""
    ended = access_keys.end(request.person, number, datetime.now(UTC))
    messages.success(request, request.speech.say(words("keys-ended", name=ended.name)))
    return redirect("keys")
