"""Pages for what cannot be shown."""

from __future__ import annotations

from django.http import HttpRequest, HttpResponse
from django.shortcuts import render

from quarterday.core.words import words
from quarterday.desk.request import language_of, voice


def _page(request: HttpRequest, status: int, id: str) -> HttpResponse:
    speech = voice(language_of(request))
    told = {"sentences": [speech.say(words(id))], "status": status, "speech": speech}
    return render(request, "desk/trouble.html", told, status=status)


def bad(request: HttpRequest, exception: Exception) -> HttpResponse:  # noqa: ARG001 - Django's form
    """Tell that the request could not be read."""
    return _page(request, 400, "desk-error-bad")


def forbidden(request: HttpRequest, exception: Exception) -> HttpResponse:  # noqa: ARG001 - as above
    """Tell that this may not be done."""
    return _page(request, 403, "desk-error-forbidden")


def missing(request: HttpRequest, exception: Exception) -> HttpResponse:  # noqa: ARG001 - as above
    """Tell that there is no such page."""
    return _page(request, 404, "desk-error-missing")


def broken(request: HttpRequest) -> HttpResponse:
    """Tell that the program failed, and that nothing was written."""
    return _page(request, 500, "desk-error-broken")


def csrf(request: HttpRequest, reason: str = "") -> HttpResponse:  # noqa: ARG001 - as above
    """Tell that a form was too old, or came from another site."""
    return _page(request, 403, "desk-error-csrf")
