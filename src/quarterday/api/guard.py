"""What stands before and behind every request to the interface."""

from collections.abc import Callable

from django.conf import settings
from django.http import HttpRequest, HttpResponse

from quarterday.api.problems import MEDIA, Problem, answer
from quarterday.core.words import words

PREFIX = "/api/"
ROOM = 64 * 1024  # beside a document: what the parts of a form take
_KINDS = {400: "bad-request", 401: "no-key", 403: "forbidden", 404: "not-found", 413: "too-large"}
Answer = Callable[[HttpRequest], HttpResponse]


class Problems:
    """Tells as a problem whatever went wrong on the way to an operation, or at none."""

    def __init__(self, get_response: Answer) -> None:
        self.get_response = get_response

    def __call__(self, request: HttpRequest) -> HttpResponse:
        """Answer; what goes wrong under ``/api/`` is never a page."""
        if not request.path.startswith(PREFIX):
            return self.get_response(request)
        response = _too_large(request) or self.get_response(request)
        if response.status_code >= 400 and response["Content-Type"] != MEDIA:  # noqa: PLR2004
            response = answer(request, _trouble(request, response))
        response["Vary"] = "Accept-Language, Authorization"
        return response


def _too_large(request: HttpRequest) -> HttpResponse | None:
    sent = request.META.get("CONTENT_LENGTH") or "0"
    most = settings.MOST_UPLOADED
    if not sent.isdigit() or int(sent) <= most + ROOM:
        return None
    said = words("api-large", most=f"{most // 1024 // 1024} MB")
    return answer(request, Problem("too-large", said))


def _trouble(request: HttpRequest, response: HttpResponse) -> Problem:
    if response.status_code == 405:  # noqa: PLR2004 - not done that way
        allowed = {"Allow": response.get("Allow", "")}
        said = words("api-no-way", method=str(request.method)[:20])
        return Problem("bad-method", said, headers=allowed)
    if response.status_code >= 500:  # noqa: PLR2004 - the program failed
        return Problem("broken", words("api-broken"))
    return Problem(_KINDS.get(response.status_code, "bad-request"))
