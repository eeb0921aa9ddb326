"""The list of renewals as a person asks for it, from the index tables and the standings alone."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from typing import Any

from django.db import connection
from django.db.models import Count, F, FloatField, OrderBy, Q, QuerySet
from django.db.models.functions import Cast, Coalesce, Collate, NullIf

from quarterday.core.dates import Period
from quarterday.store.drafts import keepable
from quarterday.store.index import folded
from quarterday.store.models import IndexedFile, Standing, StandingDue

SORTS = ("date", "name", "state", "next", "premium", "change")
ONLY = ("late", "impossible", "back", "broker", "leaders", "insurer")


@dataclass(frozen=True, slots=True)
class Asked:
    """What a person asks of the list; ``offices`` None is every office.

    ``only`` keeps what is late, what is impossible, what came back from the leaders, or what waits
    for one party.
    """

    offices: frozenset[str] | None
    search: str = ""
    due: Period | None = None
    state: str = ""
    only: str = ""
    broker: str = ""
    sort: str = "date"
    descending: bool = False


@dataclass(frozen=True, slots=True)
class Line:
    """A line of the list; what rests on the standing is as of ``day`` (None: not made yet)."""

    file: str
    name: str
    province: str
    office: str
    broker: str
    currency: str
    premium_expiring: Decimal | None
    premium_offered: Decimal | None
    renewal: date | None
    state: str
    late: int
    impossible: int
    next_step: str
    next_who: str
    next_by: date | None
    came_back: date | None
    day: date | None
    is_stale: bool


@dataclass(frozen=True, slots=True)
class Counts:
    """How many renewals the question has, by state and by what presses."""

    by_state: Mapping[str, int]
    by_only: Mapping[str, int]


_AT_WORK = Coalesce("standing__renewal", "renewal_date")


def _of_offices(asked: Asked) -> QuerySet[IndexedFile]:
    found = IndexedFile.objects.alias(at_work=_AT_WORK)
    return found if asked.offices is None else found.filter(office__in=asked.offices)


def _asked(asked: Asked) -> QuerySet[IndexedFile]:
    """Return the files of the question, its state and ``only`` left aside."""
    found = _of_offices(asked)
    if asked.due is not None:
        within = {"at_work__gte": asked.due.start, "at_work__lt": asked.due.end}
        found = found.filter(**within)
    if asked.broker:
        found = found.filter(broker=asked.broker)
    for word in folded(asked.search).split():
        found = found.filter(search_text__contains=word) if keepable(word) else found.none()
    return found


def _only(asked: Asked) -> Q:
    match asked.only:
        case "late" | "impossible":
            return Q(**{f"standing__{asked.only}__gt": 0})
        case "back":
            return Q(standing__came_back__isnull=False)
        case "broker" | "leaders" | "insurer":
            return Q(standing__next_who=asked.only)
        case _:
            return Q()


def _narrowed(asked: Asked) -> QuerySet[IndexedFile]:
    found = _asked(asked).filter(_only(asked))
    return found.filter(standing__state=asked.state) if asked.state else found


def _order(asked: Asked) -> list[OrderBy]:
    """Return the order asked for, then by name and id: one order of letters on both databases."""
    plain: Any = Collate(F("sort_name"), "C" if connection.vendor == "postgresql" else "BINARY")
    change: Any = Cast("premium_offered", FloatField()) / NullIf(
        Cast("premium_expiring", FloatField()), 0.0
    )
    first: Any = {
        "date": F("at_work"), "name": plain, "state": F("standing__state"),
        "next": F("standing__next_by"), "premium": Coalesce("premium_offered", "premium_expiring"),
        "change": change,
    }[asked.sort if asked.sort in SORTS else "date"]  # fmt: skip
    down = asked.descending
    return [OrderBy(first, descending=down, nulls_last=True), OrderBy(plain), OrderBy(F("file"))]


_KEPT = (
    "file", "name", "province", "office", "broker", "currency", "premium_expiring",
    "premium_offered",
)  # fmt: skip
_STOOD = ("state", "late", "impossible", "next_step", "next_who", "next_by", "came_back",
          "day")  # fmt: skip


def lines(asked: Asked, first: int, most: int, day: date) -> tuple[Line, ...]:
    """Return the lines from number ``first`` (from 0), at most ``most`` of them."""
    found = _narrowed(asked).order_by(*_order(asked)).select_related("standing")
    return tuple(_line(row, day) for row in found[first : first + most])


Mark = tuple[date | None, str]


def page(asked: Asked, after: Mark | None, most: int, day: date) -> tuple[Line, ...]:
    """Return lines by renewal date, then by id, those behind the line ``after`` (None: all).

    A file that stays where it is comes once, whatever comes or goes before it meanwhile; those
    without a date come last.
    """
    found = _narrowed(asked).order_by(OrderBy(F("at_work"), nulls_last=True), OrderBy(F("file")))
    if after is not None:
        on, file = after
        same = Q(at_work__isnull=True) if on is None else Q(at_work=on)
        later = Q() if on is None else Q(at_work__gt=on) | Q(at_work__isnull=True)
        behind = same & Q(file__gt=file)
        found = found.filter(behind | later if later else behind)
    return tuple(_line(row, day) for row in found.select_related("standing")[:most])


def _line(row: IndexedFile, day: date) -> Line:
    stood = getattr(row, "standing", None) or Standing(state="", late=0, impossible=0)
    return Line(
        **{name: getattr(row, name) for name in _KEPT},
        **{name: getattr(stood, name) for name in _STOOD},
        renewal=stood.renewal or row.renewal_date,
        is_stale=(stood.day, stood.seq) != (day, row.seq),
    )


def counts(asked: Asked) -> Counts:
    """Return the counts of the question, whatever state or ``only`` it narrows to."""
    found = _asked(asked)
    states = found.values_list("standing__state").annotate(n=Count("pk")).order_by()
    pressing = found.aggregate(**_pressing())
    return Counts({state or "": n for state, n in states}, pressing)


def _pressing() -> dict[str, Count]:
    return {only: Count("pk", filter=_only(Asked(None, only=only))) for only in ONLY}


def own(offices: frozenset[str] | None, broker: str) -> Mapping[str, int]:
    """Return the counts of one broker's own files: all of them, and by what presses."""
    found = _asked(Asked(offices, broker=broker))
    return found.aggregate(all=Count("pk"), **_pressing()) if broker else {}


def total(asked: Asked) -> int:
    """Return how many lines the question has."""
    return _narrowed(asked).count()


def brokers(offices: frozenset[str] | None) -> tuple[str, ...]:
    """Return the brokers named by the files of some offices (None: all), in order."""
    found = _of_offices(Asked(offices)).exclude(broker="").values_list("broker", flat=True)
    return tuple(sorted(set(found.distinct())))


@dataclass(frozen=True, slots=True)
class Step:
    """A line of the diary."""

    file: str
    name: str
    renewal: date
    step: str
    who: str
    start_by: date
    latest: date
    is_late: bool
    is_impossible: bool


def steps(
    asked: Asked,
    until: date | None = None,
    most: int | None = None,
    after: tuple[date, str, str] | None = None,
) -> tuple[Step, ...]:
    """Return the open steps of the question's files, those due first first.

    ``after`` keeps those behind the step that is due then, of that file and name.
    """
    found = StandingDue.objects.filter(file__in=_narrowed(asked).values("pk"))
    if until is not None:
        found = found.filter(latest__lt=until)
    if asked.only in {"broker", "leaders", "insurer"}:
        found = found.filter(who=asked.only)
    if after is not None:
        on, file, step = after
        same = Q(file__gt=file) | Q(file=file, step__gt=step)
        found = found.filter(Q(latest__gt=on) | Q(latest=on) & same)
    names = ("file_id", "file__name", "renewal", "step", "who", "start_by", "latest", "is_late",
             "is_impossible")  # fmt: skip
    rows = found.order_by("latest", "file_id", "step").values_list(*names)
    return tuple(Step(*row) for row in rows[:most])
