"""Reviews, findings and figures."""

from typing import Literal

from pydantic import Field

from quarterday.api.shapes.base import Day, Money, Origin, Shape, Value


class Source(Shape):
    """Where a published value was read."""

    title: str
    publisher: str
    place: str | None
    link: str | None
    checked_on: Day | None


class Node(Shape):
    """A figure with what it was made from, a fact with its origin, a parameter with its source."""

    id: str
    value: Value
    unit: str | None
    label: str
    shown: str
    how: str = ""
    caution: str | None = None
    inputs: "list[Node]" = Field(default_factory=list)
    origin: Origin = Field(default_factory=dict)
    recorded_on: Day = ""
    source: Source | None = None
    since: Day = ""
    illustrative: bool = False


class Subject(Shape):
    """What a finding is about."""

    kind: str
    key: str


class Finding(Shape):
    """One thing the review noticed."""

    id: str
    rule: str
    subject: Subject
    kind: Literal["decide", "send back", "know", "fix"]
    audience: list[str]
    title: str
    means: str
    todo: str
    by: Day | None
    tier: str
    at_risk: Money | None
    cost: Money | None
    reasons: list[str]
    encloses: list[str]
    evidence: list[Node]
    set_aside: str | None


class Release(Shape):
    """Which release of a construction price index was used."""

    geography: str
    base: str
    released_on: Day
    last_quarter: str


class Review(Shape):
    """A review as on a day; ``agenda`` lists the leaders' decisions in their order."""

    file: str
    seq: int
    renewal: Day
    as_of: Day
    findings: list[Finding]
    agenda: list[str]
    releases: list[Release]


class FigureShown(Shape):
    """A figure by its id; ask why to see what it was made from."""

    id: str
    label: str
    value: Value
    unit: str | None
    shown: str


class Figures(Shape):
    """The figures of a review."""

    file: str
    as_of: Day
    figures: list[FigureShown]
