"""What an act refuses, with the sentence that says why and what to do."""

from __future__ import annotations

from typing import TypeVar

from pydantic import ValidationError

from quarterday.core.file.records import Record
from quarterday.core.words import Words, words

R = TypeVar("R", bound=Record)


class Trouble(Exception):
    """Raised when an act cannot be done; ``words`` is the sentence to speak."""

    def __init__(self, words: Words) -> None:
        super().__init__(words.id)
        self.words = words


class Moved(Trouble):
    """Raised when a file is not any more what somebody read before they acted."""


def made(kind: type[R], **values: object) -> R:
    """Return a record; Trouble when what was given cannot be one."""
    try:
        return kind.model_validate(values)
    except ValidationError:
        raise Trouble(words("acts-not-possible")) from None
