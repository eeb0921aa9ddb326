"""Trouble in words: the sentences of a refusal, and where two writers differ."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from typing import TYPE_CHECKING, Any

from quarterday.catalogue.speech import Speech
from quarterday.core.words import Term, Words, words

_CHOSEN = ("answer", "language", "way")  # fields whose values are names of a catalogue
_KEYS = frozenset({"question", "finding"})  # fields that hold a key nobody typed

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


def signer(signed: str) -> str:
    """Return the name in a signature such as ``Ada Byron <ada@example.org>``."""
    return signed.partition(" <")[0]


def clashes(conflict: Conflict, speech: Speech) -> list[dict[str, Any]]:
    """Return, for each record that two people changed, who else did and where they differ."""
    from quarterday.office.called import leaf_told  # what tells no conflict need not wait for it

    return [
        {
            "kind": speech.say(Term("record", clash.kind)),
            "by": signer(clash.theirs.by),
            "signed": clash.theirs.by,
            "at": clash.theirs.recorded_at,
            "fields": [
                {"name": field_name(f.field, speech),
                 **{side: leaf_told(clash.kind, f.field, getattr(f, side), speech)
                    for side in ("theirs", "mine", "before")}}
                for f in clash.fields
            ],
        }
        for clash in conflict.clashes
    ]  # fmt: skip


def typed_told(fields: Iterable[tuple[str, str]], speech: Speech) -> list[tuple[str, str]]:
    """Return what somebody typed into a form, by its fields' names; marks and keys are left out."""
    return [
        (speech.say(words(f"typed-{name}")), text)
        for name, text in fields
        if text.strip() and speech.can_say(f"typed-{name}")
    ] + [
        (field_name(name, speech), _chosen(name, text, speech))
        for name, text in fields
        if text.strip() and _is_field(name, speech)
    ]


def _is_field(name: str, speech: Speech) -> bool:
    """Tell whether a form's field is a field of a record, with a name of its own."""
    plain = name.replace("_", "-")
    return (
        name not in _KEYS
        and not speech.can_say(f"typed-{name}")
        and speech.can_say(f"field-{plain}")
    )


def _chosen(name: str, text: str, speech: Speech) -> str:
    """Return a value that was chosen from a list as the list showed it."""
    id = f"{name}-{text}"
    return speech.say(words(id)) if name in _CHOSEN and speech.can_say(id) else text


def field_name(path: str, speech: Speech) -> str:
    """Return the name of a field by its path; of a part's field, with the part's own name."""
    before, _, name = path.rpartition(".")
    id = f"field-{(name or path).replace('_', '-')}"
    said = speech.say(words(id)) if speech.can_say(id) else name or path
    where = before.partition("[")[2].rstrip("]")
    return f"{said} ({where})" if where else said
