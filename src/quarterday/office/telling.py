"""Trouble in words: the sentences of a refusal, and where two writers differ."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING, Any

from quarterday.catalogue.speech import Speech
from quarterday.core.words import Term, Words, words

if TYPE_CHECKING:  # it needs a store, which the sentences do not
    from quarterday.store.conflict import Conflict


def sentences(trouble: Exception, speech: Speech) -> Iterator[str]:
    """Yield the sentences in which a trouble is told; none when it carries no sentence."""
    problems = getattr(trouble, "problems", None)
    said = getattr(trouble, "words", None)
    told = said if isinstance(said, tuple) else (said,)
    if isinstance(problems, tuple):
        yield from problems
    yield from (speech.say(sentence) for sentence in told if isinstance(sentence, Words))


def clashes(conflict: Conflict, speech: Speech) -> list[dict[str, Any]]:
    """Return, for each record that two people changed, who else did and where they differ."""
    return [
        {
            "kind": speech.say(Term("record", clash.kind)),
            "by": clash.theirs.by,
            "at": clash.theirs.recorded_at,
            "fields": [
                {"name": field_name(f.field, speech), "theirs": _shown(f.theirs),
                 "mine": _shown(f.mine), "before": _shown(f.before)}
                for f in clash.fields
            ],
        }
        for clash in conflict.clashes
    ]  # fmt: skip


def field_name(path: str, speech: Speech) -> str:
    """Return the name of a field by its path; of a part's field, with the part's own name."""
    before, _, name = path.rpartition(".")
    id = f"field-{(name or path).replace('_', '-')}"
    said = speech.say(words(id)) if speech.can_say(id) else name or path
    where = before.partition("[")[2].rstrip("]")
    return f"{said} ({where})" if where else said


def _shown(value: object) -> str:
    return "–" if value is None or value == "" else str(value)
