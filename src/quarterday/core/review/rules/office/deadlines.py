"""What on the diary can no longer be done in time."""

from __future__ import annotations

from collections.abc import Iterator

from quarterday.core.diary.diary import Due, diary, last_day
from quarterday.core.figure import Figure
from quarterday.core.review.case import Case
from quarterday.core.review.finding import Finding, Subject, Tier
from quarterday.core.review.priority import placed
from quarterday.core.words import words


def _could_end(case: Case, due: Due) -> Figure:
    """Return the first day on which a step could be done, beside the day it is due."""
    return Figure(
        id=f"{due.figure.id}/could-end",
        value=due.could_end,
        unit="date",
        label=words("diary-could-end", what=due.what),
        how=words("diary-could-end-how", today=case.as_of, last=last_day(case, due.id)),
        inputs=(due.figure,),
    )


def deadline(case: Case) -> Iterator[Finding]:
    """Tell which steps before the renewal can no longer be done in time, all in one finding."""
    lost = tuple(due for due in diary(case) if due.is_impossible)
    if not lost:
        return
    yield Finding(
        rule="office.deadline",
        subject=Subject("diary", "", words("office-diary")),
        audience=("broker",),
        kind="fix",
        priority=placed(Tier.LAPSES, by=case.renewal),
        title=words(
            "office-deadline-title", count=len(lost), first=lost[0].what, renewal=case.renewal
        ),
        means=words(
            "office-deadline-means",
            first=lost[0].what,
            ends=max(due.could_end for due in lost),
            last=last_day(case),
        ),
        todo=words("office-deadline-todo"),
        evidence=tuple(_could_end(case, due) for due in lost),
        by=case.renewal,
    )
