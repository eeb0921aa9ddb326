"""What can go wrong in a way that a person can mend, and the sentences for it."""

from __future__ import annotations

from collections.abc import Iterator

from quarterday.catalogue.load import reference
from quarterday.catalogue.speech import Speech
from quarterday.core.words import Words


def sentences(trouble: Exception, language: str) -> Iterator[str]:
    """Yield the sentences in which a trouble is told; none when it carries no sentence."""
    problems = getattr(trouble, "problems", None)
    said = getattr(trouble, "words", None)
    told = said if isinstance(said, tuple) else (said,)
    if isinstance(problems, tuple):
        yield from problems
    speech = Speech(reference(), language)
    yield from (speech.say(sentence) for sentence in told if isinstance(sentence, Words))
