"""What every page is given."""

from __future__ import annotations

from typing import Any

from django.http import HttpRequest

from quarterday.desk.guard import who_mark
from quarterday.desk.request import language_of, voice
from quarterday.office import access
from quarterday.office.demo_people import demo_day
from quarterday.people.models import Person


def shared(request: HttpRequest) -> dict[str, Any]:
    """Return the voice, the day, who is signed in and what they may do anywhere."""
    user = getattr(request, "user", None)
    person = user if isinstance(user, Person) else None
    language = language_of(request)
    return {
        "speech": voice(language),
        "language": language,
        "today": getattr(request, "today", None),
        "demo_day": demo_day(),
        "person": person,
        "who_mark": who_mark(person) if person else "",
        "may_load": person is not None and access.may_anywhere(person, "load"),
        "may_book": person is not None and access.may_anywhere(person, "book"),
        "may_people": person is not None and access.may_anywhere(person, "people"),
    }
