"""The list of renewals, the day, the diary, and whose key it is."""

from datetime import UTC, date, datetime, timedelta
from typing import Annotated, Any, Literal

from django.http import HttpRequest
from ninja import Query, Router
from pydantic import BaseModel, Field

from quarterday.api import pages
from quarterday.api.asking import asked
from quarterday.api.declaring import reads
from quarterday.api.inputs import Day, Text
from quarterday.api.problems import Problem
from quarterday.api.shapes.files import Me, Renewals, Steps, TheDay
from quarterday.core.dates import Period
from quarterday.core.words import words
from quarterday.office import access, access_keys, standings
from quarterday.office.demo_people import today
from quarterday.office.listing import plain_line, plain_step
from quarterday.office.own_data import reference_in_use
from quarterday.store import day_list
from quarterday.store.day_list import Asked

router = Router(tags=["the book"])
State = Literal[
    "gathering", "reviewing", "asked", "offered", "with leaders", "settling", "bound", "checked",
    "lapsed",
]  # fmt: skip
Waits = Literal["broker", "leaders", "insurer"]
Only = Literal["late", "impossible", "broker", "leaders", "insurer"]
Limit = Annotated[int, Field(ge=1, le=200)]
AHEAD = timedelta(days=60)


class Narrowed(BaseModel):
    """Which renewals are asked for; days from one to another, the second not included."""

    search: Text = ""
    since: Day | None = None
    until: Day | None = None
    state: State | None = None
    only: Only | None = None
    broker: Text = ""


def _asked(request: HttpRequest, said: Narrowed) -> Asked:
    since, until = said.since or date.min, said.until or date.max
    dated = said.since is not None or said.until is not None
    if until <= since:
        raise Problem("refused", words("api-span", since=since, until=until))
    return Asked(
        offices=access.offices(asked(request).person),
        search=said.search,
        due=Period(since, until) if dated else None,
        state=said.state or "",
        only=said.only or "",
        broker=said.broker,
    )


@reads(router, "/me", Me)
def me(request: HttpRequest) -> dict[str, Any]:
    """Return in whose name the key asks, and what they may do."""
    person, key = asked(request).person, asked(request).key
    return {
        "name": person.name,
        "email": person.email,
        "language": person.language,
        "is_licensed": bool(person.licence),
        "roles": dict(person.roles),
        "key": access_keys.plain(key, datetime.now(UTC)),
        "today": today().isoformat(),
    }


@reads(router, "/files", Renewals)
def renewals(
    request: HttpRequest,
    said: Query[Narrowed],
    limit: Limit = 50,
    after: Text = "",
) -> dict[str, Any]:
    """List the renewals by date, then by id; ``after`` is the mark that the part before gave."""
    narrowed, on = _asked(request, said), today()
    behind = None
    if after:
        since, (file,) = pages.read(after, 1)
        behind = (since, file)
    lines = day_list.page(narrowed, behind, limit + 1, on)
    stale = [line.file for line in lines if line.is_stale]
    if stale and standings.refresh(reference_in_use(), on, of=stale):
        lines = day_list.page(narrowed, behind, limit + 1, on)
    shown = lines[:limit]
    more = len(lines) > limit
    return {
        "as_of": on.isoformat(),
        "total": day_list.total(narrowed),
        "renewals": [plain_line(line) for line in shown],
        "next": pages.mark(shown[-1].renewal, shown[-1].file) if more else None,
    }


@reads(router, "/day", TheDay)
def the_day(request: HttpRequest, said: Query[Narrowed]) -> dict[str, Any]:
    """Return how many renewals stand where, what is late, and for whom they wait."""
    standings.refresh(reference_in_use(), today(), most=standings.CHUNK)
    narrowed = _asked(request, said)
    counts = day_list.counts(narrowed)
    return {
        "as_of": today().isoformat(),
        "total": day_list.total(narrowed),
        "by_state": {state or "unknown": n for state, n in counts.by_state.items()},
        "presses": dict(counts.by_only),
    }


class Due(BaseModel):
    """Which steps are asked for."""

    search: Text = ""
    until: Day | None = None
    waits: Waits | None = None
    broker: Text = ""


@reads(router, "/diary", Steps)
def diary(
    request: HttpRequest, said: Query[Due], limit: Limit = 50, after: Text = ""
) -> dict[str, Any]:
    """List the open steps by the day on which they are due; default: of the next sixty days."""
    standings.refresh(reference_in_use(), today(), most=standings.CHUNK)
    offices = access.offices(asked(request).person)
    narrowed = Asked(offices, search=said.search, broker=said.broker, only=said.waits or "")
    behind = None
    if after:
        on, (file, step) = pages.read(after, 2)
        behind = (on or date.min, file, step)
    until = said.until or today() + AHEAD
    found = day_list.steps(narrowed, until, limit + 1, behind)
    shown = found[:limit]
    last = shown[-1] if len(found) > limit else None
    return {
        "as_of": today().isoformat(),
        "steps": [plain_step(one, asked(request).speech) for one in shown],
        "next": pages.mark(last.latest, last.file, last.step) if last else None,
    }
