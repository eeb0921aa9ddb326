"""What a page is asked with: who asks, in which voice, and on which day."""

from __future__ import annotations

from datetime import date
from functools import lru_cache
from pathlib import Path

from django.http import HttpRequest
from django_htmx.middleware import HtmxDetails

from quarterday.catalogue.speech import Speech
from quarterday.office.own_data import own_folder, reference_in_use
from quarterday.people.models import Person

LANGUAGES = ("en", "fr")


class DeskRequest(HttpRequest):
    """A request of somebody who is signed in."""

    person: Person
    speech: Speech
    today: date
    htmx: HtmxDetails


def voice(language: str) -> Speech:
    """Return the voice of a language, with the brokerage's own wordings where it keeps some."""
    return _voice(language, own_folder())


@lru_cache(maxsize=4)
def _voice(language: str, _folder: Path | None) -> Speech:
    return Speech(reference_in_use(), language)


def language_of(request: HttpRequest) -> str:
    """Return a visitor's language: the signed-in person's, the chosen one, else the browser's."""
    user = getattr(request, "user", None)
    if isinstance(user, Person):
        return user.language if user.language in LANGUAGES else "en"
    chosen = request.COOKIES.get("quarterday_language", "")
    if chosen in LANGUAGES:
        return chosen
    accepted = request.headers.get("Accept-Language", "").strip().lower()
    return "fr" if accepted.startswith("fr") else "en"
