"""Originals: what keeping and asking for a document costs the rest of the store."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from django.db import connection
from django.test.utils import CaptureQueriesContext

from quarterday.core.file.entry import Entry
from quarterday.core.file.records import Organisation
from quarterday.store import ledger, originals
from quarterday.store.models import LedgerEntry
from quarterday.store.refusals import BadOriginal

Save = Callable[..., tuple[Entry, ...]]


@pytest.mark.django_db
def test_keeping_and_reading_a_document_asks_nothing_of_the_ledger() -> None:
    """The ledger is as long as the book; a document is found by its digest alone."""
    with CaptureQueriesContext(connection) as asked:
        digest = originals.put(b"a package", "package.pdf")
        originals.put(b"a package", "package.pdf")
        assert originals.get(digest) == b"a package"
        assert not originals.is_erased(digest)
    of_ledger = [q["sql"] for q in asked if LedgerEntry._meta.db_table in q["sql"]]
    assert of_ledger == []


@pytest.mark.django_db
def test_what_was_erased_is_known_as_such_and_does_not_come_again(save: Save) -> None:
    save("A1", Organisation(name="Pinebrook Chapel", province="ON"))
    digest = originals.put(b"a loss run", "loss-run.pdf")
    ledger.erase("A1", digest, "Asked by the person on 2026-11-20.", by="bea")
    assert originals.is_erased(digest)
    with pytest.raises(BadOriginal):
        originals.put(b"a loss run", "again.pdf")
    with pytest.raises(BadOriginal):
        originals.get(digest)


@pytest.mark.django_db
def test_a_document_without_content_that_nobody_erased_is_not_called_erased() -> None:
    digest = originals.put(b"", "empty.txt")
    assert not originals.is_erased(digest)
    assert originals.get(digest) == b""
