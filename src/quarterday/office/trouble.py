"""What an act refuses, with the sentence that says why and what to do."""

from __future__ import annotations

from quarterday.core.words import Words


class Trouble(Exception):
    """Raised when an act cannot be done; ``words`` is the sentence to speak."""

    def __init__(self, words: Words) -> None:
        super().__init__(words.id)
        self.words = words
