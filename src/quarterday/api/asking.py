"""What an operation is asked with: in whose name, in which voice, and on which day."""

from dataclasses import dataclass
from datetime import UTC, date, datetime

from django.http import HttpRequest
from ninja.security import HttpBearer

from quarterday.api import strict
from quarterday.api.problems import Problem, speech_of
from quarterday.catalogue.speech import Speech
from quarterday.core.file.records.base import EARLIEST, LATEST
from quarterday.core.words import words
from quarterday.office import access, access_keys
from quarterday.office.demo_people import today
from quarterday.office.own_data import reference_in_use
from quarterday.office.showing import Shown
from quarterday.people import access_keys as kept
from quarterday.people import limits
from quarterday.people.models import AccessKey, Person


@dataclass(frozen=True, slots=True)
class Asking:
    """In whose name something is asked, by which key, and in which voice it is answered."""

    key: AccessKey
    speech: Speech

    @property
    def person(self) -> Person:
        """The person whose key it is."""
        return self.key.person


class Key(HttpBearer):
    """Lets nobody further without an access key that counts and may do what is asked."""

    openapi_bearerFormat = "an access key that a person made"  # noqa: N815 - as OpenAPI spells it

    def __init__(self, scope: str) -> None:
        super().__init__()
        self.scope = scope

    def authenticate(self, request: HttpRequest, token: str) -> AccessKey:
        """Return the key, counted; Problem when it does not count, was used too often, or is short.

        A wrong key never shuts out a right one that comes from the same machine.
        """
        now = datetime.now(UTC)
        key = access_keys.holder(token.strip()[:200], now)
        if key is None:
            _wrong(request.META.get("REMOTE_ADDR", ""), now)
            raise Problem("no-key")
        request.language = key.person.language  # type: ignore[attr-defined]
        if not kept.use(key, now):
            said = words("api-too-often", most=kept.MOST_A_MINUTE, seconds=60)
            raise Problem("too-often", said, headers={"Retry-After": "60"})
        if self.scope == "act" and key.scope != "act":
            raise Problem("forbidden", words("api-read-only"))
        strict.check(request)
        return key


def _wrong(machine: str, now: datetime) -> None:
    if limits.is_over("key-wrong", machine, now):
        said = words("api-too-often-wrong")
        raise Problem("too-often", said, headers={"Retry-After": "3600"})
    limits.count("key-wrong", machine, now)


READ, ACT = Key("read"), Key("act")


def asked(request: HttpRequest) -> Asking:
    """Return in whose name a request is made, once its key was accepted."""
    key: AccessKey = request.auth  # type: ignore[attr-defined]
    return Asking(key, speech_of(request))


def day(said: date | None) -> date:
    """Return the day to reckon from: today unless another was said; Problem when none can be."""
    if said is not None and not EARLIEST < said < LATEST:
        raise Problem("refused", words("api-date", key="as_of", value=str(said)))
    return said or today()


def file_shown(
    request: HttpRequest, id: str, act: access.Act = "view", as_of: date | None = None
) -> Shown:
    """Return a file as on a day, for what is about to be done with it; UnknownFile, Forbidden."""
    on = day(as_of)
    file = access.open_file(asked(request).person, id, act)
    return Shown(file, reference_in_use(), on, asked(request).speech.language)
