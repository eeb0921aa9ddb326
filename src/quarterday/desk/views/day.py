"""The day: the renewals by date and state, what is late, and what can no longer be done."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta
from typing import Any
from urllib.parse import urlencode

from django.contrib import messages
from django.http import HttpRequest, HttpResponse, QueryDict
from django.shortcuts import redirect, render
from django.views.decorators.http import require_POST, require_safe

from quarterday.core.dates import Period
from quarterday.core.money import Money
from quarterday.core.words import Rate, words
from quarterday.desk.request import DeskRequest
from quarterday.office import access, standings
from quarterday.office.own_data import reference_in_use
from quarterday.people.models import SavedView
from quarterday.store import day_list
from quarterday.store.day_list import ONLY, SORTS, Asked, Line

PAGE = 50
BACK, AHEAD = timedelta(days=45), timedelta(days=135)
STATES = (
    "gathering", "reviewing", "asked", "offered", "with leaders", "settling", "bound", "checked",
    "lapsed",
)  # fmt: skip
FIELDS = ("q", "from", "until", "state", "only", "broker", "sort", "down")
MOST_VIEWS = 30


def _day(text: str) -> date | None:
    try:
        return date.fromisoformat(text)
    except ValueError:
        return None


def asked_of(query: QueryDict, person_offices: frozenset[str] | None, today: date) -> Asked:
    """Return what a page's query asks; what cannot be read is left out."""
    due = _span(query, today)
    state, only, sort = query.get("state", ""), query.get("only", ""), query.get("sort", "")
    return Asked(
        offices=person_offices,
        search=query.get("q", "")[:200],
        due=due,
        state=state if state in STATES else "",
        only=only if only in ONLY else "",
        broker=query.get("broker", "")[:300].replace("\0", ""),
        sort=sort if sort in SORTS else "date",
        descending=query.get("down", "") == "1",
    )


def _span(query: QueryDict, today: date) -> Period | None:
    """Return the renewals' days: those around today at first; all when both are emptied."""
    if "from" not in query and "until" not in query:
        return Period(today - BACK, today + AHEAD)
    start, until = _day(query.get("from", "")), _day(query.get("until", ""))
    if start is None and until is None:
        return None
    start, until = start or date.min, min(until or date.max, date.max - timedelta(days=1))
    return Period(start, until + timedelta(days=1)) if start <= until else None


def _number(text: str) -> int:
    return min(max(int(text), 1), 10_000) if text.isascii() and text.isdigit() else 1


@require_safe
def day(request: DeskRequest) -> HttpResponse:
    """Show the list, or with htmx only the part that a filter changes."""
    asked = asked_of(request.GET, access.offices(request.person), request.today)
    total = day_list.total(asked)
    pages = max(1, -(-total // PAGE))
    page = min(_number(request.GET.get("page", "")), pages)
    lines, done = _fresh(asked, (page - 1) * PAGE, request.today)
    done += standings.refresh(reference_in_use(), request.today, most=standings.FEW - done)
    told = {
        "rows": [_row(line) for line in lines],
        "total": total,
        "page": page,
        "pages": pages,
        "asked": asked,
        "until": asked.due.end - timedelta(days=1) if asked.due else None,
        "counts": (counts := _counts(asked)),
        "pressing": dict(counts["only"]),
        "has_expiring": any(line.premium_offered is None for line in lines),
        "stale": done >= standings.FEW or any(line.is_stale for line in lines),
        "query": _query(request.GET),
        "heads": _heads(request, asked),
    }
    if request.htmx and not request.htmx.boosted:
        return _varied(render(request, "desk/day_list.html", told))
    more = {
        "states": STATES,
        "brokers": day_list.brokers(asked.offices),
        "views": request.person.savedview_set.order_by("name"),
        "own": day_list.own(asked.offices, request.person.name),
    }
    return _varied(render(request, "desk/day.html", {**told, **more}))


def _varied(response: HttpResponse) -> HttpResponse:
    response["Vary"] = "HX-Request, Cookie"
    return response


def _fresh(asked: Asked, first: int, today: date) -> tuple[tuple[Line, ...], int]:
    """Return the lines, a few of them brought up to date first, and how many were.

    The rest is made beside the pages; meanwhile the page asks again by itself.
    """
    lines = day_list.lines(asked, first, PAGE, today)
    stale = [line.file for line in lines if line.is_stale][: standings.FEW]
    done = standings.refresh(reference_in_use(), today, of=stale) if stale else 0
    return (day_list.lines(asked, first, PAGE, today) if done else lines), done


def _row(line: Line) -> dict[str, Any]:
    newest = line.premium_offered if line.premium_offered is not None else line.premium_expiring
    change = None
    if line.premium_offered is not None and line.premium_expiring:
        change = Rate(line.premium_offered / line.premium_expiring - 1)
    return {
        "line": line,
        "premium": Money(newest, line.currency) if newest is not None else None,
        "is_offered": line.premium_offered is not None,
        "change": change,
    }


def _counts(asked: Asked) -> dict[str, Any]:
    counts = day_list.counts(replace(asked, state="", only=""))
    states = [(state, counts.by_state.get(state, 0)) for state in STATES]
    return {
        "states": [(state, n) for state, n in states if n],
        "only": [(only, counts.by_only.get(only, 0)) for only in ONLY],
    }


def _query(query: QueryDict, **changed: str) -> str:
    """Return the page's query with something changed, as an address has it."""
    kept = {name: query[name] for name in FIELDS if name in query}
    return urlencode({n: v for n, v in {**kept, **changed}.items() if v or n in {"from", "until"}})


def _heads(request: HttpRequest, asked: Asked) -> list[dict[str, Any]]:
    """Return the headings that sort, with what each would ask."""
    found = []
    for sort in ("date", "name", "state", "next", "premium", "change"):
        is_this = asked.sort == sort
        down = "1" if is_this and not asked.descending else ""
        way = ("descending" if asked.descending else "ascending") if is_this else "none"
        found.append({"id": sort, "query": _query(request.GET, sort=sort, down=down), "way": way})
    return found


@require_POST
def keep_view(request: DeskRequest) -> HttpResponse:
    """Keep the question of the page under a name."""
    name = " ".join(request.POST.get("name", "").split())[:80]
    query = _query(QueryDict(request.POST.get("query", "")[:2000]))
    if name and request.person.savedview_set.count() < MOST_VIEWS:
        SavedView.objects.update_or_create(
            person=request.person, name=name, defaults={"query": query}
        )
        messages.success(request, request.speech.say(words("desk-view-kept", name=name)))
    return redirect(f"/?{query}")


@require_POST
def forget_view(request: DeskRequest, number: int) -> HttpResponse:
    """Forget one of the person's own views."""
    request.person.savedview_set.filter(pk=number).delete()
    return redirect("day")
