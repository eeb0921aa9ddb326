"""What went wrong, as RFC 9457 has it."""

from pydantic import Field

from quarterday.api.shapes.base import Moment, Shape, Value


class Fault(Shape):
    """What of the input is wrong, and where it stands."""

    where: str
    sentence: str


class FieldDifference(Shape):
    """A field on which two writers differ: what both had seen, what stands, what was sent."""

    field: str
    name: str
    before: Value
    theirs: Value
    mine: Value


class RecordDifference(Shape):
    """A record that somebody else changed after the entry that the sender had seen."""

    kind: str
    key: str
    name: str
    by: str
    at: Moment
    seq: int
    fields: list[FieldDifference]


class Problem(Shape):
    """A problem: ``detail`` is the sentence for a person, in the asked language."""

    type: str
    title: str
    status: int
    detail: str
    errors: list[Fault] = Field(default_factory=list)
    difference: list[RecordDifference] = Field(default_factory=list)


class ProblemKind(Shape):
    """A kind of problem that this interface tells."""

    id: str
    status: int
    title: str
