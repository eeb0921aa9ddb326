"""What stands before every page: headers, the signed-in person, and trouble told in sentences."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from django.core import signing
from django.http import HttpRequest, HttpResponse, HttpResponseRedirect
from django.shortcuts import redirect
from django.urls import reverse

from quarterday.desk.request import language_of, voice
from quarterday.desk.trouble import answer
from quarterday.office.demo_people import needs_factor, today
from quarterday.people.models import Person

Answer = Callable[[HttpRequest], HttpResponse]
KEYED = "/api/"  # asked with an access key; who is signed in to the desk does not count there
OPEN = {"sign-in", "sign-in-code", "feed", "language"}
SETTING_UP = {"password", "factor", "sign-out"}
POLICY = (
    "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; "
    "font-src 'self'; connect-src 'self'; form-action 'self'; frame-ancestors 'none'; "
    "base-uri 'none'"
)
MOST_KEPT = 200_000  # characters of a form that is kept for who was signed out


class SecurityHeaders:
    """Sets the headers of every answer: nothing inline, nothing from elsewhere, nothing stored."""

    def __init__(self, get_response: Answer) -> None:
        self.get_response = get_response

    def __call__(self, request: HttpRequest) -> HttpResponse:
        """Answer with the headers."""
        response = self.get_response(request)
        response["Content-Security-Policy"] = POLICY
        response["Permissions-Policy"] = "camera=(), microphone=(), geolocation=(), payment=()"
        response["X-Robots-Tag"] = "noindex, nofollow"
        if "Cache-Control" not in response:
            response["Cache-Control"] = "private, no-store"
        return response


class SignedIn:
    """Lets nobody further who is not signed in, or has not set up password and second factor.

    What somebody typed while their session ran out is kept until they are signed in again.
    """

    def __init__(self, get_response: Answer) -> None:
        self.get_response = get_response

    def __call__(self, request: HttpRequest) -> HttpResponse:
        """Give the request its voice and its day."""
        if request.path.startswith(KEYED):
            return self.get_response(request)
        request.speech = voice(language_of(request))  # type: ignore[attr-defined]
        request.today = today()  # type: ignore[attr-defined]
        return self.get_response(request)

    def process_view(
        self,
        request: HttpRequest,
        _view: Callable[..., Any],
        _args: tuple[Any, ...],
        _named: dict[str, Any],
    ) -> HttpResponse | None:
        """Return None to go on to the view."""
        name = request.resolver_match.url_name if request.resolver_match else ""
        if name in OPEN or request.path.startswith(KEYED):
            return None
        user = getattr(request, "user", None)
        if not isinstance(user, Person):
            _keep(request)
            return _away(request)
        request.person = user  # type: ignore[attr-defined]
        if name not in SETTING_UP:
            return _to_set_up(user)
        return None


def _to_set_up(person: Person) -> HttpResponseRedirect | None:
    if person.must_change:
        return redirect("password")
    return redirect("factor") if needs_factor() and not person.factor else None


def _away(request: HttpRequest) -> HttpResponse:
    target = f"{reverse('sign-in')}?next={request.path}" if request.path != "/" else None
    where = target or reverse("sign-in")
    if request.headers.get("HX-Request"):
        response = HttpResponse(status=204)
        response["HX-Redirect"] = reverse("sign-in")
        return response
    return HttpResponseRedirect(where)


def who_mark(person: Person) -> str:
    """Return the mark in a form that says whose it is."""
    return signing.dumps(person.pk, salt="whose-form")


def _keep(request: HttpRequest) -> None:
    """Keep a form whose sender was signed out, under the name of who was signed in."""
    if request.method != "POST" or request.FILES:
        return
    try:
        whose = signing.loads(request.POST.get("_who", ""), salt="whose-form")
    except signing.BadSignature:
        return
    fields = [(n, v) for n, vs in request.POST.lists() for v in vs if not n.startswith("csrf")]
    if sum(len(n) + len(str(v)) for n, v in fields) <= MOST_KEPT:
        request.session["kept"] = {"who": whose, "path": request.path, "fields": fields}


class Told:
    """Tells trouble that a person can mend in a page of sentences."""

    def __init__(self, get_response: Answer) -> None:
        self.get_response = get_response

    def __call__(self, request: HttpRequest) -> HttpResponse:
        """Answer as it is."""
        return self.get_response(request)

    def process_exception(self, request: HttpRequest, trouble: Exception) -> HttpResponse | None:
        """Return the page that tells the trouble; None when it carries no sentence."""
        return answer(request, trouble)
