"""The manager's page of who may come in."""

from __future__ import annotations

from collections.abc import Mapping

from django.contrib import messages
from django.http import HttpResponse
from django.shortcuts import get_object_or_404, redirect, render
from django.views.decorators.http import require_POST

from quarterday.core.words import words
from quarterday.desk.request import LANGUAGES, DeskRequest
from quarterday.desk.views.acts import text
from quarterday.office import access, staff
from quarterday.office.showing import house
from quarterday.people.models import EVERY_OFFICE, ROLES, Person


def _offices() -> list[str]:
    return [EVERY_OFFICE, *house().offices]


def _grants(request: DeskRequest) -> Mapping[str, str]:
    """Return the role chosen for each office; an office without one is left out."""
    sent = ((office, request.POST.get(f"role-{office}", "")) for office in _offices())
    return {office: role for office, role in sent if role}


def people(request: DeskRequest) -> HttpResponse:
    """Show everybody, or add somebody."""
    access.require_anywhere(request.person, "people")
    if request.method == "POST":
        person, secret = staff.add(
            name=text(request, "name"), email=text(request, "email"),
            licence=text(request, "licence"), language=text(request, "language"),
            grants=_grants(request),
        )  # fmt: skip
        return _page(request, shown=(person, secret))
    return _page(request)


def _page(request: DeskRequest, shown: tuple[Person, str] | None = None) -> HttpResponse:
    everybody = Person.objects.prefetch_related("grants").order_by("name", "email")
    names = house().offices
    told = {
        "everybody": [
            {"one": one, "grants": {g.office: g.role for g in one.grants.all()}}
            for one in everybody
        ],
        "offices": [(id, names.get(id, "")) for id in _offices()],
        "named": names,
        "roles": ROLES,
        "languages": LANGUAGES,
        "shown": shown,
    }
    return render(request, "desk/people.html", told)


@require_POST
def change(request: DeskRequest, number: int) -> HttpResponse:
    """Change what somebody may do, or give a new password."""
    access.require_anywhere(request.person, "people")
    person = get_object_or_404(Person, pk=number)
    if request.POST.get("renew"):
        return _page(request, shown=(person, staff.renew(request.person, person)))
    staff.change(
        request.person, person, licence=text(request, "licence"),
        language=text(request, "language"), is_active=request.POST.get("active") == "yes",
        grants=_grants(request),
    )  # fmt: skip
    messages.success(request, request.speech.say(words("desk-done-person", name=person.name)))
    return redirect("people")
