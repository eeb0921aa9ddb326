"""What may be agreed, and how what was issued differs from it."""

from quarterday.api.shapes.base import Money, Shape


class Questions(Shape):
    """The questions that the leaders may answer."""

    file: str
    questions: list[str]


class Wish(Shape):
    """A change beyond the offer that the insurer may accept; ``taken``: the leaders decided it."""

    change: str
    limit: Money | None
    price: Money | None
    taken: bool


class IssuedDifference(Shape):
    """Where the issued policy differs from what was agreed."""

    direction: str
    sentence: str


class Checked(Shape):
    """The issued policy beside what was agreed; ``recorded``: a check of it stands on file."""

    file: str
    recorded: bool
    differences: list[IssuedDifference]
