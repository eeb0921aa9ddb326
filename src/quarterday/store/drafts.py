"""What may become an entry: a record that is whole and canonical, and text that can be kept."""

from __future__ import annotations

import re

from pydantic import ValidationError
from pydantic_core import PydanticSerializationError

from quarterday.core.file.entry import Draft, Origin
from quarterday.core.file.records import BY_KIND, Record
from quarterday.core.words import words
from quarterday.store.models import FILE, KEY
from quarterday.store.refusals import BadDraft

WITHDRAW = "withdraw"
_LONGEST = {"file": FILE, "by": 300, "act": 80, "kind": 80, "key": KEY}
# control characters, and halves of characters: PostgreSQL keeps no zero byte, UTF-8 no half
_UNKEEPABLE = re.compile("[\x00-\x1f\x7f-\x9f\ud800-\udfff]")


def keepable(text: str) -> bool:
    """Tell whether every database can keep ``text`` as it is."""
    return not _UNKEEPABLE.search(text)


def clean(text: str, what: str) -> str:
    """Return ``text``; BadDraft when it is empty, too long or holds what cannot be kept."""
    empty = not text.strip() and what != "key"
    if empty or len(text) > _LONGEST[what] or not keepable(text):
        raise BadDraft(words("store-bad-text", what=what, text=ascii(text)[:80]))
    return text


def checked(draft: Draft) -> Record | None:
    """Return the record of ``draft``; BadDraft unless body, kind and key are that record's.

    A withdrawal has no body and the act ``withdraw``; nothing else has.
    """
    for what in ("act", "kind", "key"):
        clean(getattr(draft, what), what)
    _clean_origin(draft.origin)
    record = _record(draft)
    withdraws = draft.body is None and draft.act == WITHDRAW and draft.kind in BY_KIND
    if record is None and not withdraws:
        raise BadDraft(words("store-bad-draft", kind=draft.kind, key=draft.key))
    return record


def _clean_origin(origin: Origin) -> None:
    try:
        origin.model_dump_json()
    except PydanticSerializationError:
        raise BadDraft(
            words("store-bad-text", what="origin", text=ascii(origin.name)[:80])
        ) from None


def _record(draft: Draft) -> Record | None:
    """Return the record that a draft holds, or None when it holds none, or not that of its key."""
    if draft.kind not in BY_KIND or draft.body is None or draft.act == WITHDRAW:
        return None
    try:
        record = BY_KIND[draft.kind].read(draft.body)
    except ValidationError:
        return None
    return record if (record.key, record.body()) == (draft.key, draft.body) else None
