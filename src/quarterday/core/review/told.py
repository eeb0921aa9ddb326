"""The sentences of one finding, which share their arguments."""

from __future__ import annotations

from collections.abc import Callable

from quarterday.core.words import Arg, Words, words

Say = Callable[[str], Words]


def telling(rule: str, **args: Arg | Words | tuple[Arg | Words, ...]) -> Say:
    """Return what makes a rule's sentences: ``say("title")`` is the wording ``rule-id-title``."""
    prefix = rule.replace(".", "-")
    return lambda part: words(f"{prefix}-{part}", **args)
