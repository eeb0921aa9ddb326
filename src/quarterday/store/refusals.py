"""What the store refuses, each with the sentence that says what, why and what to do."""

from __future__ import annotations

from quarterday.core.words import Words


class Refused(Exception):
    """Raised when the store will not do what was asked; ``words`` is the sentence to speak."""

    def __init__(self, words: Words) -> None:
        super().__init__(f"{words.id} {dict(words.args)}")
        self.words = words


class BadPlace(Refused):
    """Raised when the text that should name a store names none."""


class NotStarted(Refused):
    """Raised when a store does not exist yet, or was made by an older version."""


class NotReached(Refused):
    """Raised when the database cannot be opened or written: not running, no right, disk full."""


class Busy(Refused):
    """Raised when the database did not answer in time, so that nothing was written."""


class UnknownFile(Refused):
    """Raised when a file has no entries."""


class BadDraft(Refused):
    """Raised when something that should become an entry is not whole, clean and canonical."""


class BadTime(Refused):
    """Raised when an entry is dated before the one that it follows."""


class NothingToRedact(Refused):
    """Raised when an entry that should be redacted does not exist or has no body to remove."""


class BadOriginal(Refused):
    """Raised when an original is not in the store, or not what it was."""


class BadBackup(Refused):
    """Raised when a backup cannot be made, or is not one that can be put back."""
