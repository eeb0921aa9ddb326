"""Signing in and out, the password, the second factor, and the language."""

from __future__ import annotations

from datetime import UTC, datetime
from typing import cast

from django.contrib import messages
from django.contrib.auth import login, logout
from django.http import HttpRequest, HttpResponse
from django.shortcuts import redirect, render
from django.utils.http import url_has_allowed_host_and_scheme
from django.views.decorators.debug import sensitive_post_parameters
from django.views.decorators.http import require_POST

from quarterday.core.words import words
from quarterday.desk.request import LANGUAGES, DeskRequest, voice
from quarterday.office.demo_people import needs_factor
from quarterday.office.telling import typed_told
from quarterday.people import factor, signing_in
from quarterday.people.models import Person

HALF_WAY = 600  # seconds in which the second step must follow the first
SHORTEST = 12  # characters of a password
YEAR = 365 * 24 * 3600


def _next(request: HttpRequest) -> str:
    target = request.POST.get("next") or request.GET.get("next") or "/"
    safe = url_has_allowed_host_and_scheme(target, allowed_hosts=None)
    return target if safe and target.startswith("/") else "/"


def _say(request: HttpRequest, id: str) -> str:
    return cast("DeskRequest", request).speech.say(words(id))


@sensitive_post_parameters()
def sign_in(request: HttpRequest) -> HttpResponse:
    """Ask for address and password."""
    told: dict[str, object] = {"next": _next(request), "email": request.POST.get("email", "")}
    told["is_kept"] = "kept" in request.session
    if request.method != "POST":
        return render(request, "desk/sign_in.html", told)
    now = datetime.now(UTC)
    email, secret = request.POST.get("email", "")[:300], request.POST.get("password", "")[:1000]
    machine = request.META.get("REMOTE_ADDR", "")
    person = signing_in.by_password(request, email, secret, now)
    if person is None:
        locked = signing_in.is_locked(email, machine, now)
        told["fault"] = _say(request, f"desk-sign-in-{'locked' if locked else 'wrong'}")
        return render(request, "desk/sign_in.html", told, status=429 if locked else 403)
    if needs_factor() and person.factor:
        request.session.cycle_key()
        request.session["half"] = [person.pk, now.timestamp(), _next(request)]
        return redirect("sign-in-code")
    return _in(request, person, _next(request))


def _in(request: HttpRequest, person: Person, target: str) -> HttpResponse:
    """Sign somebody in under a new session key."""
    request.session.pop("half", None)
    login(request, person)
    kept = request.session.get("kept")
    if kept and kept["who"] == person.pk:
        return redirect("kept")
    request.session.pop("kept", None)
    return redirect(target)


@sensitive_post_parameters()
def code(request: HttpRequest) -> HttpResponse:
    """Ask for the code of the moment."""
    half = request.session.get("half")
    now = datetime.now(UTC)
    if not half or now.timestamp() - half[1] > HALF_WAY:
        request.session.pop("half", None)
        return redirect("sign-in")
    person = Person.objects.filter(pk=half[0], is_active=True).first()
    if request.method != "POST" or person is None:
        return render(request, "desk/code.html")
    if signing_in.by_code(person, request.POST.get("code", "")[:40], now):
        return _in(request, person, half[2])
    told = {"fault": _say(request, "desk-code-wrong")}
    return render(request, "desk/code.html", told, status=403)


@require_POST
def sign_out(request: HttpRequest) -> HttpResponse:
    """End the session."""
    logout(request)
    return redirect("sign-in")


@sensitive_post_parameters()
def password(request: DeskRequest) -> HttpResponse:
    """Change the password."""
    if request.method != "POST":
        return render(request, "desk/password.html", {"shortest": SHORTEST})
    old, new = request.POST.get("old", "")[:1000], request.POST.get("new", "")[:1000]
    fault = _password_fault(request.person, old, new, request.POST.get("again", ""))
    if fault:
        told = {"shortest": SHORTEST, "fault": request.speech.say(words(fault))}
        return render(request, "desk/password.html", told, status=422)
    request.person.set_password(new)
    request.person.must_change = False
    request.person.save()
    login(request, request.person)  # other sessions of the person end, this one gets a new key
    messages.success(request, request.speech.say(words("desk-password-done")))
    return redirect("day")


def _password_fault(person: Person, old: str, new: str, again: str) -> str | None:
    if not person.check_password(old):
        return "desk-password-old-wrong"
    if len(new) < SHORTEST:
        return "desk-password-short"
    if new in {old, person.email, person.name}:
        return "desk-password-same"
    return None if new == again else "desk-password-differs"


@sensitive_post_parameters()
def set_up_factor(request: DeskRequest) -> HttpResponse:
    """Set up the second factor: show the secret once, and ask for a code that proves it."""
    secret = request.session.get("secret") or factor.new_secret()
    request.session["secret"] = secret
    address = factor.address(request.person, secret)
    told: dict[str, object] = {"secret": secret, "picture": factor.picture(address)}
    if request.method != "POST":
        return render(request, "desk/factor.html", told)
    if request.person.factor and not request.person.check_password(
        request.POST.get("password", "")[:1000]
    ):
        told["fault"] = request.speech.say(words("desk-password-old-wrong"))
        return render(request, "desk/factor.html", told, status=403)
    now = datetime.now(UTC)
    codes = factor.set_up(request.person, secret, request.POST.get("code", "")[:40], now)
    if codes is None:
        told["fault"] = request.speech.say(words("desk-code-wrong"))
        return render(request, "desk/factor.html", told, status=403)
    request.session.pop("secret")
    request.session.cycle_key()
    return render(request, "desk/factor_done.html", {"codes": codes})


def kept(request: DeskRequest) -> HttpResponse:
    """Show what was typed when the session ran out, to be sent again."""
    found = request.session.pop("kept", None)
    if not found or found["who"] != request.person.pk:
        return redirect("day")
    shown = typed_told(found["fields"], request.speech)
    told = {"path": found["path"], "fields": found["fields"], "shown": shown}
    return render(request, "desk/kept.html", told)


@require_POST
def language(request: HttpRequest) -> HttpResponse:
    """Choose the language: the person's own when signed in."""
    chosen = request.POST.get("language", "")
    response = redirect(_next(request))
    if chosen not in LANGUAGES:
        return response
    if isinstance(request.user, Person):
        Person.objects.filter(pk=request.user.pk).update(language=chosen)
    response.set_cookie("quarterday_language", chosen, max_age=YEAR, httponly=True, samesite="Lax")
    voice(chosen)
    return response
