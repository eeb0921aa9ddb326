"""Removing on lawful request: what goes, what stays, and what is told of it."""

from __future__ import annotations

import io
import json
import zipfile
from collections.abc import Callable

import pytest
from django.db import IntegrityError, connection, transaction

from quarterday.catalogue.load import reference
from quarterday.core.file.entry import Draft, Entry, Origin
from quarterday.core.file.records import Contact, Organisation, OriginalErased
from quarterday.office import evidence, redacting
from quarterday.office.trouble import Trouble
from quarterday.store import ledger, originals, seals
from quarterday.store.models import Original
from quarterday.store.refusals import BadDraft, BadOriginal
from quarterday.store.verify import verify

pytestmark = pytest.mark.django_db
Save = Callable[..., tuple[Entry, ...]]
CHURCH = Organisation(name="Pinebrook Chapel", province="ON")
ANN = Contact(id="c1", name="Ann Example", phone="555-0187")
FORM = b"a form that Ann filled in: 555-0187"
WHY = "Asked in writing on 2026-11-20."


@pytest.fixture
def form(save: Save) -> str:
    """A file whose second entry came from a kept form; returns the form's SHA-256."""
    save("A1", CHURCH)
    digest = originals.put(FORM, "contacts.pdf")
    origin = Origin(way="form", name="contacts.pdf", document=digest)
    draft = Draft("load", ANN.kind, ANN.key, ANN.body(), origin)
    ledger.append("A1", [draft], by="bea", expected_seq=None)
    return digest


def test_redacting_an_entry_names_the_documents_that_may_still_say_it(form: str) -> None:
    done = redacting.redact("A1", 2, WHY, by="bea")
    assert done.still == (redacting.Document(form, "contacts.pdf"),)
    assert originals.get(form) == FORM, "it is not removed unasked: others may be in it too"


def test_an_erased_document_is_gone_and_what_was_read_from_it_stays(form: str) -> None:
    entry = redacting.erase("A1", form[:10], WHY, by="bea")
    assert bytes(Original.objects.get(digest=form).content) == b""
    assert ledger.load("A1").contacts == (ANN,)
    said = OriginalErased.read(entry.body or "")
    assert (said.document, said.reason, entry.by) == (form, WHY, "bea")
    with pytest.raises(BadOriginal) as found:
        originals.get(form)
    assert found.value.words.id == "store-original-erased"


def test_the_store_verifies_and_says_what_was_removed(form: str) -> None:
    seals.seal()
    redacting.redact("A1", 2, WHY, by="bea")
    redacting.erase("A1", form, WHY, by="bea")
    report = verify()
    assert report.faults == []
    assert (len(report.redacted), report.erased) == (1, {form})
    assert [d.digest for d in redacting.documents(ledger.entries("A1"))] == [form]


def test_once_erased_nothing_names_it_as_still_to_be_looked_at(form: str) -> None:
    redacting.erase("A1", form, WHY, by="bea")
    assert redacting.redact("A1", 2, WHY, by="bea").still == ()


def test_an_erased_document_is_not_kept_again_by_loading_it_again(form: str) -> None:
    redacting.erase("A1", form, WHY, by="bea")
    with pytest.raises(BadOriginal) as found:
        originals.put(FORM, "again.pdf")
    assert found.value.words.id == "store-original-not-again"


def test_only_a_document_that_the_file_names_can_be_erased_and_only_once(
    form: str, save: Save
) -> None:
    save("A2", CHURCH)
    other = originals.put(b"nobody's", "x.pdf")
    redacting.erase("A1", form, WHY, by="bea")
    for file, document in (("A2", form), ("A1", other), ("A1", "zzzz")):
        with pytest.raises(Trouble):
            redacting.erase(file, document, WHY, by="bea")
    with pytest.raises(BadOriginal):
        redacting.erase("A1", form, WHY, by="bea")


@pytest.mark.parametrize("reason", ["", "  ", "a\x00b"])
def test_nothing_is_erased_without_a_reason(form: str, reason: str) -> None:
    with pytest.raises(BadDraft):
        redacting.erase("A1", form, reason, by="bea")
    assert originals.get(form) == FORM


def test_the_database_lets_a_document_go_only_when_an_entry_says_so(form: str) -> None:
    empty = "X''" if connection.vendor == "sqlite" else "''::bytea"
    for change in (f"content = {empty}", "name = 'x'", "size = 1"):
        with pytest.raises(IntegrityError), transaction.atomic(), connection.cursor() as cursor:
            cursor.execute(f"UPDATE store_original SET {change}")
    redacting.erase("A1", form, WHY, by="bea")
    with pytest.raises(IntegrityError), transaction.atomic(), connection.cursor() as cursor:
        cursor.execute("UPDATE store_original SET name = 'x'")


def test_the_evidence_names_an_erased_document_and_does_not_hold_it(form: str) -> None:
    before = evidence.archive("A1", reference())
    redacting.erase("A1", form, WHY, by="bea")
    after = evidence.archive("A1", reference())
    assert (before.documents, after.documents, after.left_out) == (1, 0, (form,))
    with zipfile.ZipFile(io.BytesIO(after.data)) as held:
        manifest = json.loads(held.read("manifest.json"))
    assert manifest["not_enclosed"] == [{"sha256": form, "name": "contacts.pdf"}]
