"""The list, the day, the diary, a file and its entries."""

from typing import Any, Literal

from quarterday.api.shapes.base import Day, Moment, Money, Number, Origin, Shape

State = Literal["counts", "over", "ended"]


class KeyShown(Shape):
    """An access key, without its secret."""

    number: int
    name: str
    scope: Literal["read", "act"]
    state: State
    made_at: Moment
    until: Moment
    last_used: Moment | None


class Me(Shape):
    """In whose name the key asks, and what they may do where."""

    name: str
    email: str
    language: Literal["en", "fr"]
    is_licensed: bool
    roles: dict[str, str]
    key: KeyShown
    today: Day


class Renewal(Shape):
    """A line of the list."""

    file: str
    name: str
    province: str
    renewal: Day | None
    premium_expiring: Money | None
    premium_offered: Money | None
    change: Number | None
    office: str
    broker: str
    state: str
    late: int
    impossible: int
    next_step: str
    next_who: str
    next_by: Day | None


class Renewals(Shape):
    """A part of the list; ``next`` is the mark with which to ask for what comes after."""

    as_of: Day
    total: int
    renewals: list[Renewal]
    next: str | None


class TheDay(Shape):
    """How many renewals stand where, and what presses."""

    as_of: Day
    total: int
    by_state: dict[str, int]
    presses: dict[str, int]


class StepDue(Shape):
    """A step that is still to be done."""

    file: str
    name: str
    renewal: Day
    step: str
    what: str
    who: str
    start_by: Day
    latest: Day
    is_late: bool
    is_impossible: bool


class Steps(Shape):
    """A part of the diary."""

    as_of: Day
    steps: list[StepDue]
    next: str | None


class Record(Shape):
    """A record of a file; what it holds depends on its kind, as the workbook's columns say."""

    kind: str
    key: str
    seq: int
    record: dict[str, Any]
    origin: Origin


class File(Shape):
    """What is known about one organisation; ``seq`` is its newest entry."""

    file: str
    seq: int
    records: list[Record]


class Entry(Shape):
    """One dated, sourced addition to a file."""

    seq: int
    recorded_at: Moment
    by: str
    act: str
    kind: str
    key: str
    redacted: bool
    origin: Origin
    digest: str


class Entries(Shape):
    """A part of a file's entries, oldest first; ``undoable``: those of them you may take back."""

    file: str
    total: int
    entries: list[Entry]
    undoable: list[int]
    next: int | None


class Written(Shape):
    """What an act wrote; ``seq`` is the file's newest entry now."""

    file: str
    seq: int
    entries: list[Entry]
