"""An act that is asked twice under one name is done once."""

import hashlib
import json
from collections.abc import Callable, Mapping
from datetime import UTC, datetime, timedelta
from functools import wraps
from typing import Any

from django.db import IntegrityError, transaction
from django.http import HttpRequest

from quarterday.api.asking import asked
from quarterday.api.problems import Problem
from quarterday.api.strict import FORM
from quarterday.core.words import words
from quarterday.people.models import Answered, Person

HEADER = "Idempotency-Key"
LONGEST = 200
KEPT = timedelta(days=1)
Act = Callable[..., Mapping[str, Any]]
DESCRIBED = {
    "parameters": [
        {
            "name": HEADER,
            "in": "header",
            "required": False,
            "schema": {"type": "string", "minLength": 1, "maxLength": LONGEST,
                       "pattern": "^[!-~]+$"},
            "description": "A name for this act. Asked again within a day under the same name, it "
                           "is not done again: the first answer comes back.",
        }
    ]
}  # fmt: skip


def once(act: Act) -> Act:
    """Let an act be repeated under its name without being done twice.

    The answer is kept in the transaction of the act: a crash keeps both or neither, and an act that
    was refused may be asked again.
    """

    @wraps(act)
    def repeatable(request: HttpRequest, *args: Any, **named: Any) -> Mapping[str, Any]:  # noqa: ANN401 - the act's own
        name = request.headers.get(HEADER)
        if name is None:
            return act(request, *args, **named)
        if not (1 <= len(name) <= LONGEST and name.isascii() and name.isprintable()):
            raise Problem("bad-input", words("api-repeat-name"), where=[HEADER])
        person, digest = asked(request).person, _digest(request)
        _forget()
        try:
            with transaction.atomic():
                return _first(person, name, digest, lambda: act(request, *args, **named))
        except _Again:
            return _again(person, name, digest)

    return repeatable


class _Again(Exception):
    pass


def _first(
    person: Person, name: str, digest: str, act: Callable[[], Mapping[str, Any]]
) -> Mapping[str, Any]:
    now = datetime.now(UTC)
    kept = Answered(person=person, key=name, asked=digest, answer="", at=now)
    try:
        with transaction.atomic():
            kept.save(force_insert=True)  # another process that does it now is waited for
    except IntegrityError as before:
        raise _Again from before
    done = act()
    kept.answer = json.dumps(done, ensure_ascii=False)
    kept.save(update_fields=["answer"])
    return done


def _again(person: Person, name: str, digest: str) -> Mapping[str, Any]:
    kept = Answered.objects.get(person=person, key=name)
    if kept.asked != digest:
        raise Problem("repeated", words("api-repeat-other", key=name))
    done: Mapping[str, Any] = json.loads(kept.answer)
    return done


def _digest(request: HttpRequest) -> str:
    """Return the digest of what is asked; of a form its parts, for each sending divides it anew."""
    made = hashlib.sha256(f"{request.method} {request.get_full_path()}\n".encode())
    if request.content_type != FORM:
        made.update(request.body)
        return made.hexdigest()
    for name, value in sorted(request.POST.items()):
        made.update(f"{name}={value}\n".encode("utf-8", "surrogatepass"))
    for name in sorted(request.FILES):
        for file in request.FILES.getlist(name):
            made.update(f"{name}:{file.name}\n".encode("utf-8", "surrogatepass"))
            made.update(hashlib.sha256(file.read()).digest())
            file.seek(0)
    return made.hexdigest()


def _forget() -> None:
    Answered.objects.filter(at__lt=datetime.now(UTC) - KEPT).delete()
