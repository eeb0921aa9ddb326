"""Originals: documents as they were received or built, kept under their SHA-256."""

from __future__ import annotations

import hashlib
from datetime import UTC, datetime

from quarterday.core.file.records import OriginalErased
from quarterday.core.words import words
from quarterday.store.drafts import clean
from quarterday.store.models import LedgerEntry, Original
from quarterday.store.refusals import BadOriginal


def put(content: bytes, name: str) -> str:
    """Keep ``content`` and return its SHA-256 (hex); what is kept already is not kept twice.

    Joins the caller's transaction. ``name`` is what the document is called; the name it first came
    under stays. BadDraft when the name cannot be kept; BadOriginal when it was erased before.
    """
    digest = hashlib.sha256(content).hexdigest()
    original = Original(
        digest=digest,
        kept_at=datetime.now(UTC),
        name=clean(name, "by"),
        size=len(content),
        content=content,
    )
    if is_erased(digest):
        raise BadOriginal(words("store-original-not-again", name=name))
    if not Original.objects.filter(digest=digest).exists():
        Original.objects.bulk_create([original], ignore_conflicts=True)
    return digest


def get(digest: str) -> bytes:
    """Return the document with this SHA-256; BadOriginal when it is not kept, erased or altered."""
    kept = Original.objects.filter(digest=digest).values_list("content", flat=True).first()
    if kept is None:
        raise BadOriginal(words("store-original-missing", digest=digest))
    content = bytes(kept)
    if not content and is_erased(digest):
        raise BadOriginal(words("store-original-erased", digest=digest))
    if hashlib.sha256(content).hexdigest() != digest:
        raise BadOriginal(words("store-original-altered", digest=digest))
    return content


def is_erased(digest: str) -> bool:
    """Tell whether an entry says that the document was erased on lawful request.

    What was erased stays on the list without its content, so the ledger is only asked of those:
    it has no index by kind, and is as long as the book.
    """
    if not Original.objects.filter(digest=digest, content=b"").exists():
        return False
    return LedgerEntry.objects.filter(kind=OriginalErased.kind, key=digest).exists()
