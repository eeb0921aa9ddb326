"""An act that is asked twice under one name is done once."""

import hashlib
import json
from collections.abc import Callable, Mapping
from datetime import UTC, datetime, timedelta
from functools import wraps
from typing import Any

from django.db import IntegrityError, transaction
from django.db.models import QuerySet
from django.http import HttpRequest

from quarterday.api.asking import asked
from quarterday.api.problems import Problem
from quarterday.api.strict import FORM
from quarterday.core.words import words
from quarterday.office.underway import ABANDONED
from quarterday.people.models import Answered, Person

HEADER = "Idempotency-Key"
LONGEST = 200
KEPT = timedelta(days=1)
PATIENCE = 5  # seconds until a program may ask how far an act is
Act = Callable[..., Mapping[str, Any]]
Done = Callable[[], Mapping[str, Any]]
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


def once(act: Act, *, apart: bool = False) -> Act:
    """Let an act be repeated under its name without being done twice.

    The answer is kept in the transaction of the act: a crash keeps both or neither. An act that
    stands ``apart`` takes its name first and keeps its answer when it is done; until then whoever
    asks again is told to wait. An act that was refused may be asked again.
    """
    do = _apart if apart else _in_one

    @wraps(act)
    def repeatable(request: HttpRequest, *args: Any, **named: Any) -> Mapping[str, Any]:  # noqa: ANN401 - the act's own
        name = request.headers.get(HEADER)
        if name is None:
            return act(request, *args, **named)
        if not (1 <= len(name) <= LONGEST and name.isascii() and name.isprintable()):
            raise Problem("bad-input", words("api-repeat-name"), where=[HEADER])
        person = asked(request).person
        now = datetime.now(UTC)
        Answered.objects.filter(at__lt=now - KEPT).delete()
        mine = Answered(person=person, key=name, asked=_digest(request, person), at=now)
        return do(mine, lambda: act(request, *args, **named))

    return repeatable


def _in_one(mine: Answered, act: Done) -> Mapping[str, Any]:
    """Do an act in one transaction with its answer, or answer again."""
    with transaction.atomic():
        if _taken(mine):  # another process that does it now was waited for
            done = act()
            mine.answer = json.dumps(done, ensure_ascii=False)
            mine.save(update_fields=["answer"])
            return done
    return _again(mine)


def _apart(mine: Answered, act: Done) -> Mapping[str, Any]:
    """Take the name, do an act, and keep its answer; or answer again."""
    if not (_taken(mine) or _taken_over(mine)):
        return _again(mine)
    try:
        done = act()
    except BaseException:
        _own(mine).delete()
        raise
    _own(mine).update(answer=json.dumps(done, ensure_ascii=False))
    return done


def _taken(mine: Answered) -> bool:
    """Take a name; False when it is taken."""
    try:
        with transaction.atomic():
            mine.save(force_insert=True)
    except IntegrityError:
        return False
    return True


def _taken_over(mine: Answered) -> bool:
    """Take over the name of the same act that was begun and given up: the machine stopped."""
    begun = _kept(mine).filter(asked=mine.asked, answer="", at__lt=mine.at - ABANDONED)
    return begun.update(at=mine.at) == 1


def _kept(mine: Answered) -> QuerySet[Answered]:
    return Answered.objects.filter(person=mine.person, key=mine.key)


def _own(mine: Answered) -> QuerySet[Answered]:
    """Return the name as it was taken, unless somebody took it over since."""
    return _kept(mine).filter(asked=mine.asked, at=mine.at)


def _again(mine: Answered) -> Mapping[str, Any]:
    kept = _kept(mine).first()
    if kept is not None and kept.asked != mine.asked:
        raise Problem("repeated", words("api-repeat-other", key=mine.key))
    if kept is None or not kept.answer:
        said = words("api-repeat-wait", key=mine.key)
        raise Problem("under-way", said, headers={"Retry-After": str(PATIENCE)})
    done: Mapping[str, Any] = json.loads(kept.answer)
    return done


def _digest(request: HttpRequest, person: Person) -> str:
    """Return the digest of what is asked, with the rights of who asks: they may be gone since.

    Of a form its parts count, for each sending divides it anew.
    """
    made = hashlib.sha256(f"{request.method} {request.get_full_path()}\n".encode())
    made.update(json.dumps(sorted(person.roles.items())).encode())
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
