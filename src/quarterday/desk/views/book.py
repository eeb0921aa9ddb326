"""The whole book, for who may see it: what it says, topic by topic, and its tables as files."""

from __future__ import annotations

import re
from typing import Any
from urllib.parse import urlencode

from django.http import Http404, HttpResponse, QueryDict
from django.shortcuts import render
from django.views.decorators.http import require_safe

from quarterday.core.book.sums import Files, total
from quarterday.desk.request import DeskRequest
from quarterday.office.book import asking, writing
from quarterday.office.book.topics import TOPICS, told
from quarterday.office.book.topics.topic import Teller, Topic
from quarterday.office.showing import house
from quarterday.store.book import Asked

MONTH = re.compile(r"[0-9]{4}-(0[1-9]|1[0-2])")
FIELDS = ("office", "broker", "province", "first", "last")
EVERY = "all"


def _asked(query: QueryDict) -> Asked:
    """Return what a page's query asks; a month that cannot be read is left out."""
    return Asked(
        broker=query.get("broker", "")[:300].replace("\0", ""),
        province=query.get("province", "")[:80].replace("\0", ""),
        first=_month(query.get("first", "")),
        last=_month(query.get("last", "")),
    )


def _month(text: str) -> str:
    return text if MONTH.fullmatch(text) else ""


def _seen(request: DeskRequest) -> asking.Seen:
    office = request.GET.get("office", "")[:300].replace("\0", "")
    return asking.look(request.person, _asked(request.GET), office)


@require_safe
def book(request: DeskRequest) -> HttpResponse:
    """Show the book, or with htmx only the part that a filter changes."""
    seen = _seen(request)
    page = {"seen": seen, **_filters(seen), **_told(request, seen)}
    is_part = request.htmx and not request.htmx.boosted
    response = render(request, "desk/book_topics.html" if is_part else "desk/book.html", page)
    response["Vary"] = "HX-Request, Cookie"
    return response


def _filters(seen: asking.Seen) -> dict[str, Any]:
    names = house().offices
    return {
        "offices": [(id, names.get(id, id)) for id in seen.choices.offices],
        "brokers": seen.choices.brokers,
        "provinces": seen.choices.provinces,
        "months": seen.choices.months,
    }


def _told(request: DeskRequest, seen: asking.Seen) -> dict[str, Any]:
    if seen.made is None:
        return {}
    tell = Teller(request.speech, seen.made.day)
    query = urlencode({n: request.GET[n] for n in FIELDS if request.GET.get(n)})
    return {
        "topics": [_topic(topic, tell) for topic in told(tell, seen.sums)],
        "files": total(Files, seen.sums.files.values()),
        "query": query,
        "kinds": tuple(writing.KINDS),
    }


def _topic(topic: Topic, tell: Teller) -> dict[str, Any]:
    """Return a topic with the cells of its table in words."""
    fields = topic.fields()
    rows = [[tell.shown(row[at], field) for at, field in fields] for row in topic.table.rows]
    return {
        "topic": topic,
        "heads": [field.heading for _, field in fields],
        "rows": rows,
    }


@require_safe
def export(request: DeskRequest, topic: str, kind: str) -> HttpResponse:
    """Answer with a topic's table, or with all of them, as a file."""
    seen = _seen(request)
    if kind not in writing.KINDS or (topic != EVERY and topic not in TOPICS) or seen.made is None:
        raise Http404
    tell = Teller(request.speech, seen.made.day)
    chosen = told(tell, seen.sums) if topic == EVERY else (TOPICS[topic](tell, seen.sums),)
    data = writing.written(chosen, kind, tell, seen.asked)
    response = HttpResponse(data, content_type=writing.KINDS[kind])
    name = f"book-{topic}-{seen.made.day}.{kind}"
    response["Content-Disposition"] = f'attachment; filename="{name}"'
    return response
