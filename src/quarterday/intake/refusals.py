"""What is refused whole, before anything of it is read."""

from __future__ import annotations

from quarterday.core.words import Arg, words


class Unreadable(ValueError):
    """Raised when nothing of a file can be read; ``words`` is the sentence for the person."""

    def __init__(self, id: str, **args: Arg) -> None:
        super().__init__(id)
        self.words = words(id, **args)
