"""What can go wrong in a way that a person can mend, and the sentence for it."""

from __future__ import annotations

from quarterday.catalogue.load import reference
from quarterday.catalogue.problems import BadReference
from quarterday.catalogue.speech import Speech
from quarterday.core.words import Words


def troubles() -> tuple[type[Exception], ...]:
    """Return the exceptions that carry a sentence for the person."""
    from quarterday.core.review.case import NoRenewal
    from quarterday.intake.refusals import Unreadable
    from quarterday.office.trouble import Trouble
    from quarterday.store.refusals import Refused

    return (Refused, NoRenewal, BadReference, Unreadable, Trouble)


def sentence(trouble: Exception, language: str) -> str:
    """Return the sentence in which a trouble is told."""
    said = getattr(trouble, "words", None)
    return Speech(reference(), language).say(said) if isinstance(said, Words) else str(trouble)
