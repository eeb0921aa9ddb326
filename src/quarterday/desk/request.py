"""What a page is asked with: who asks, in which voice, and on which day."""

from __future__ import annotations

from datetime import date

from django.http import HttpRequest
from django_htmx.middleware import HtmxDetails

from quarterday.catalogue.speech import Speech
from quarterday.office.voices import LANGUAGES, accepted, voice
from quarterday.people.models import Person

__all__ = ["LANGUAGES", "DeskRequest", "language_of", "voice"]


class DeskRequest(HttpRequest):
    """A request of somebody who is signed in."""

    person: Person
    speech: Speech
    today: date
    htmx: HtmxDetails


def language_of(request: HttpRequest) -> str:
    """Return a visitor's language: the signed-in person's, the chosen one, else the browser's."""
    user = getattr(request, "user", None)
    if isinstance(user, Person):
        return user.language if user.language in LANGUAGES else "en"
    chosen = request.COOKIES.get("quarterday_language", "")
    if chosen in LANGUAGES:
        return chosen
    return accepted(request.headers.get("Accept-Language", "")) or "en"
