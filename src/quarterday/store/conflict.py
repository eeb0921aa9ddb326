"""Two writers on one record: who comes second is shown the difference."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from quarterday.core.file.difference import Leaf, differing, flat
from quarterday.core.file.entry import Draft, Entry
from quarterday.core.words import Term, words
from quarterday.store.refusals import Refused


@dataclass(frozen=True, slots=True)
class Disagreement:
    """A field on which two writers differ: what both saw, what theirs says, what mine says."""

    field: str
    before: Leaf
    theirs: Leaf
    mine: Leaf


@dataclass(frozen=True, slots=True)
class Clash:
    """A record that somebody else changed meanwhile, and where the two versions differ."""

    kind: str
    key: str
    theirs: Entry
    fields: tuple[Disagreement, ...]


class Conflict(Refused):
    """Raised when a record was changed after the newest entry that the second writer had seen."""

    def __init__(self, file: str, clashes: tuple[Clash, ...]) -> None:
        by = ", ".join(sorted({clash.theirs.by for clash in clashes}))
        kinds = tuple(Term("kind", kind) for kind in sorted({clash.kind for clash in clashes}))
        super().__init__(words("store-conflict", file=file, by=by, records=kinds))
        self.file = file
        self.clashes = clashes


def _disagreements(
    before: str | None, theirs: str | None, mine: str | None
) -> tuple[Disagreement, ...]:
    was, one, other = flat(before), flat(theirs), flat(mine)
    return tuple(
        Disagreement(field, was.get(field), one.get(field), other.get(field))
        for field in differing(one, other)
    )


def _clash(standing: Sequence[Entry], draft: Draft, seen: int) -> Clash | None:
    """Return how ``draft`` clashes with what came after entry ``seen``, if it does.

    Who says the same as somebody else does not disagree.
    """
    same = [entry for entry in standing if (entry.kind, entry.key) == (draft.kind, draft.key)]
    if not same:
        return None
    change = _redaction_of(same[-1], standing) or same[-1]
    if change.seq <= seen or same[-1].body == draft.body:
        return None
    before = next((entry.body for entry in reversed(same) if entry.seq <= seen), None)
    return Clash(draft.kind, draft.key, change, _disagreements(before, same[-1].body, draft.body))


def _redaction_of(entry: Entry, standing: Sequence[Entry]) -> Entry | None:
    """Return the entry that redacted ``entry``; who had not seen it would bring the body back."""
    return next((e for e in standing if (e.kind, e.key) == ("redaction", str(entry.seq))), None)


def check(file: str, standing: Sequence[Entry], drafts: Sequence[Draft], seen: int | None) -> None:
    """Raise Conflict when a draft's record was changed after entry ``seen``; None sees all."""
    if seen is None or not standing or standing[-1].seq <= seen:
        return
    found = [_clash(standing, draft, seen) for draft in drafts]
    if clashes := tuple(clash for clash in found if clash is not None):
        raise Conflict(file, clashes)
