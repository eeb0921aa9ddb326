"""A finding: one thing the review noticed, with its evidence and what it asks for."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from datetime import date
from enum import IntEnum
from typing import TYPE_CHECKING, Literal

from quarterday.core.figure import Node
from quarterday.core.money import Money
from quarterday.core.words import Words

if TYPE_CHECKING:
    from quarterday.core.review.case import Case

Audience = Literal["leaders", "broker", "insurer"]
Kind = Literal["decide", "send back", "know", "fix"]
SubjectKind = Literal[
    "organisation", "building", "coverage", "claim", "person", "terms", "premium", "interest",
    "operations", "diary",
]  # fmt: skip


class Tier(IntEnum):
    """The first thing the order looks at; smaller comes first."""

    SAFETY_OR_DUTY = 1
    LAPSES = 2
    MONEY = 3
    RECORD = 4


@dataclass(frozen=True, slots=True)
class Subject:
    """What a finding is about: its kind, its key in the file, and its name as people say it."""

    kind: SubjectKind
    key: str = ""
    name: str | Words = ""


@dataclass(frozen=True, slots=True)
class Priority:
    """Why a finding stands where it stands.

    Order: ``tier``; for safety and what lapses an earlier ``by`` date; then, except for safety,
    ``at_risk`` per dollar of ``cost`` (what is free first; an unknown cost last), then ``at_risk``.
    Where what is asked removes only a part of it, ``removed`` says how much, and ranks instead.
    """

    tier: Tier
    by: date | None = None
    at_risk: Money | None = None
    cost: Money | None = None
    reasons: tuple[Words, ...] = ()
    removed: Money | None = None


@dataclass(frozen=True, slots=True)
class Finding:
    """One thing the review noticed.

    ``title`` says the conclusion, ``means`` why it matters, ``todo`` what to do; ``evidence`` holds
    the figures and facts; ``encloses`` the ids of the forms and papers it brings.
    """

    rule: str
    subject: Subject
    audience: tuple[Audience, ...]
    kind: Kind
    priority: Priority
    title: Words
    means: Words
    todo: Words
    evidence: tuple[Node, ...] = ()
    encloses: tuple[str, ...] = ()
    by: date | None = None
    set_aside: str | None = None  # the broker's reason, when set aside for this renewal

    @property
    def id(self) -> str:
        """The rule and its subject: stable from year to year."""
        return f"{self.rule}@{self.subject.key}" if self.subject.key else self.rule


@dataclass(frozen=True, slots=True)
class Rule:
    """A rule: its id, what it looks at, the function, and the parameters and papers it uses."""

    id: str
    looks_at: SubjectKind
    find: Callable[[Case], Iterable[Finding]]
    parameters: tuple[str, ...] = ()
    basis: str = "common practice, no source"
