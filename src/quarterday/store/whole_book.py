"""Questions to the whole book, answered from the index tables."""

from __future__ import annotations

from quarterday.store.models import IndexedFile


def registrations() -> dict[str, str]:
    """Return the file of every charity registration number, as the newest entries have it."""
    known = IndexedFile.objects.exclude(registration_number="").order_by("file")
    return dict(known.values_list("registration_number", "file"))


def heads() -> dict[str, int]:
    """Return the number of every file's newest entry."""
    return dict(IndexedFile.objects.values_list("file", "seq"))
