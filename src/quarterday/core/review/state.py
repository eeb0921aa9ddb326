"""The state of a renewal, from the file's records and the day.

The first line that holds is the state:

| state | holds when |
|---|---|
| checked | issued terms start on the renewal, and were compared with what was agreed |
| bound | the insurer bound the renewal, or issued terms start on it |
| lapsed | the renewal day has come, and none of the above |
| settling | a decision or a payment choice for the renewal is on file |
| with leaders | a package for the renewal was delivered |
| offered | the insurer's offer is on file |
| asked | a request went to the insurer, or the terms requested of it are on file |
| reviewing | the updates are back, or the day by which they are due has passed |
| gathering | none of the above |
"""

from __future__ import annotations

from datetime import date, timedelta
from typing import Literal

from quarterday.core.diary.diary import (
    FOLLOW_UP,
    is_checked,
    is_delivered,
    updates_are_back,
    was_asked,
)
from quarterday.core.file.records import (
    Bound,
    Decision,
    FormReturned,
    PaymentChoice,
    RequestSent,
)
from quarterday.core.review.case import Case

State = Literal[
    "gathering", "reviewing", "asked", "offered", "with leaders", "settling", "bound", "checked",
    "lapsed",
]  # fmt: skip


def renewal_at_work(case: Case) -> date:
    """Return the renewal being worked on: the one just bound until it is checked, else the next.

    A policy may be issued before its first day. A term that began longer ago than the parameter
    ``diary.follow-up-days`` is no longer worked on.
    """
    begun = case.expiring.start if case.expiring else None
    days = int(str(case.parameter(FOLLOW_UP).value))
    if begun is None or case.as_of >= begun + timedelta(days=days):
        return case.renewal
    return case.renewal if is_checked(case, begun) else begun


def state(case: Case, renewal: date | None = None) -> State:
    """Return the state of ``renewal`` (the case's own if None) on the case's day."""
    day = renewal or case.renewal
    if case.file.terms(day, "issued"):
        return "checked" if is_checked(case, day) else "bound"
    if case.file.get(Bound, str(day)):
        return "bound"
    if case.as_of >= day:
        return "lapsed"
    return _with_leaders(case, day) or _with_insurer(case, day)


def came_back(case: Case, renewal: date) -> date | None:
    """Return the newest day on which something came back from the leaders and waits for us.

    That is a form, a decision or a payment choice of the renewal; None once the insurer was asked
    on or after that day, and when the renewal is bound or its day has come.
    """
    if state(case, renewal) in {"bound", "checked", "lapsed"}:
        return None
    file = case.file
    days = [d.decided_on for d in file.all(Decision) if d.renewal == renewal]
    days += [p.chosen_on for p in file.all(PaymentChoice) if p.renewal == renewal]
    days += [f.returned_on for f in file.all(FormReturned) if f.renewal == renewal]
    asked = [r.sent_on for r in file.all(RequestSent) if r.renewal == renewal]
    newest = max(days, default=None)
    return None if newest is None or any(day >= newest for day in asked) else newest


def _with_leaders(case: Case, day: date) -> State | None:
    file = case.file
    if file.get(PaymentChoice, str(day)) or any(d.renewal == day for d in file.all(Decision)):
        return "settling"
    return "with leaders" if is_delivered(file, day) else None


def _with_insurer(case: Case, day: date) -> State:
    if case.file.terms(day, "offered"):
        return "offered"
    if case.file.terms(day, "requested") or was_asked(case.file, day):
        return "asked"
    due = int(str(case.parameter("diary.updates-due-days").value))
    is_past = case.as_of > day - timedelta(days=due)
    return "reviewing" if is_past or updates_are_back(case) else "gathering"
