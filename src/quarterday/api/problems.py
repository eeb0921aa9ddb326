"""Trouble in one shape (RFC 9457): what it is, and one clear sentence in the asked language."""

import json
import logging
from collections.abc import Iterable, Mapping
from typing import Any

from django.core.exceptions import RequestDataTooBig, SuspiciousOperation
from django.http import Http404, HttpRequest, HttpResponse, UnreadablePostError
from django.http.multipartparser import MultiPartParserError
from ninja.errors import AuthenticationError, HttpError

from quarterday.catalogue.speech import Speech
from quarterday.core.words import Words, words
from quarterday.office.access import Forbidden
from quarterday.office.telling import clashes, sentences
from quarterday.office.trouble import Moved
from quarterday.office.voices import LANGUAGES, accepted, voice
from quarterday.store.conflict import Clash, Conflict
from quarterday.store.refusals import Busy, NotReached, UnknownFile

MEDIA = "application/problem+json"
STATUSES: Mapping[str, int] = {
    "bad-request": 400,
    "bad-input": 400,
    "no-key": 401,
    "forbidden": 403,
    "not-found": 404,
    "bad-method": 405,
    "conflict": 409,
    "repeated": 409,
    "under-way": 409,
    "too-large": 413,
    "bad-kind": 415,
    "refused": 422,
    "too-often": 429,
    "broken": 500,
    "busy": 503,
}
PAGE = "/api/v1/problems"
_KINDS: tuple[tuple[type[Exception], str], ...] = (
    (AuthenticationError, "no-key"),
    (HttpError, "bad-request"),
    (UnknownFile, "not-found"),
    (Http404, "not-found"),
    (Forbidden, "forbidden"),
    (Conflict, "conflict"),
    (Moved, "conflict"),
    (Busy, "busy"),
    (NotReached, "busy"),
    (RequestDataTooBig, "too-large"),
    (SuspiciousOperation, "bad-request"),
    (MultiPartParserError, "bad-request"),
    (UnreadablePostError, "bad-request"),
)
_USUAL: Mapping[str, Words] = {
    "no-key": words("api-no-key"),
    "not-found": words("api-not-found"),
    "bad-request": words("api-not-read"),
    "bad-input": words("api-not-read"),
    "too-large": words("api-large", most="2 MB"),
    "busy": words("store-busy"),
}
_log = logging.getLogger("django.request")


class Problem(Exception):
    """Raised when a request cannot be answered; ``errors`` says what, each with where it stands."""

    def __init__(
        self,
        kind: str,
        *said: Words,
        where: Iterable[str] = (),
        headers: Mapping[str, str] | None = None,
    ) -> None:
        super().__init__(kind)
        self.kind = kind
        self.said = said or (_USUAL[kind],)
        self.where = tuple(where)
        self.headers = headers or {}


def speech_of(request: HttpRequest) -> Speech:
    """Return the voice of the asked language, else of the person whose key it is."""
    asked = accepted(request.headers.get("Accept-Language", "")[:200])
    own = str(getattr(request, "language", "en"))
    return voice(asked or (own if own in LANGUAGES else "en"))


def shown(
    kind: str, told: Iterable[str], speech: Speech, more: Mapping[str, Any] | None = None
) -> HttpResponse:
    """Return a problem as it is sent; further members stand beside those of the standard."""
    status = STATUSES[kind]
    body = {
        "type": f"{PAGE}#{kind}",
        "title": speech.say(words(f"problem-{kind}")),
        "status": status,
        "detail": " ".join(told),
        **(more or {}),
    }
    response = HttpResponse(json.dumps(body, ensure_ascii=False), MEDIA, status)
    response["Content-Language"] = speech.language
    if kind == "no-key":
        response["WWW-Authenticate"] = "Bearer"
    if kind == "busy":
        response["Retry-After"] = "30"
    return response


def answer(request: HttpRequest, trouble: Exception) -> HttpResponse:
    """Return the problem that tells a trouble; one that has no sentence is logged."""
    speech = speech_of(request)
    if isinstance(trouble, HttpError) and isinstance(trouble.__cause__, Problem):
        trouble = trouble.__cause__  # django-ninja wraps what a parser raises
    if isinstance(trouble, Problem):
        return _problem(trouble, speech)
    kind = next((kind for of, kind in _KINDS if isinstance(trouble, of)), None)
    told = tuple(sentences(trouble, speech))
    if isinstance(trouble, Conflict):
        return shown("conflict", told, speech, {"difference": difference(trouble, speech)})
    if told:
        return shown(kind or "refused", told, speech)
    if kind is not None:
        return _problem(Problem(kind), speech)
    _log.error("The interface failed at %s", request.path[:200], exc_info=trouble)
    return shown("broken", [speech.say(words("api-broken"))], speech)


def _problem(problem: Problem, speech: Speech) -> HttpResponse:
    told = [speech.say(said) for said in problem.said]
    more = {}
    if problem.where:
        found = zip(problem.where, told, strict=True)
        more["errors"] = [{"where": where, "sentence": sentence} for where, sentence in found]
    response = shown(problem.kind, told, speech, more)
    for name, value in problem.headers.items():
        response[name] = value
    return response


def difference(conflict: Conflict, speech: Speech) -> list[dict[str, Any]]:
    """Return, for each record that two changed, who else did, and where they differ."""
    told = clashes(conflict, speech)
    pairs = zip(conflict.clashes, told, strict=True)
    return [_clash(clash, said) for clash, said in pairs]


def _clash(clash: Clash, said: Mapping[str, Any]) -> dict[str, Any]:
    return {
        "kind": clash.kind,
        "key": clash.key,
        "name": said["kind"],
        "by": clash.theirs.by,
        "at": clash.theirs.recorded_at.isoformat(),
        "seq": clash.theirs.seq,
        "fields": [
            {"field": field.field, "name": told["name"], "before": _leaf(field.before),
             "theirs": _leaf(field.theirs), "mine": _leaf(field.mine)}
            for field, told in zip(clash.fields, said["fields"], strict=True)
        ],
    }  # fmt: skip


def _leaf(value: object) -> object:
    return value if value is None or isinstance(value, str | bool | int) else str(value)
