"""Signing a review, and when a signature stops covering the file."""

from __future__ import annotations

import pytest
from tests.office.conftest import DAY, edit

from quarterday.catalogue.load import reference
from quarterday.core.file.records import ReviewSigned
from quarterday.office import reviewing
from quarterday.store import ledger
from quarterday.store.refusals import UnknownFile


def sign(file: str) -> None:
    reviewing.sign(file, reference(), reviewer="Judith Hollis", licence="RIB-000417", as_of=DAY,
                   by="judith")  # fmt: skip


def test_an_unsigned_file_has_no_signature(flagship: str) -> None:
    assert reviewing.signature(ledger.load(flagship), reference()) is None


def test_a_signature_names_the_person_the_licence_and_the_day(flagship: str) -> None:
    sign(flagship)
    signed = reviewing.signature(ledger.load(flagship), reference())
    assert signed is not None
    assert (signed.reviewer, signed.licence, signed.as_of) == ("Judith Hollis", "RIB-000417", DAY)


def test_a_signature_lapses_when_a_fact_changes(flagship: str) -> None:
    sign(flagship)
    edit(flagship, phone="705-555-0177")
    assert reviewing.signature(ledger.load(flagship), reference()) is None


def test_signing_again_after_a_change_covers_the_file_again(flagship: str) -> None:
    sign(flagship)
    edit(flagship, phone="705-555-0177")
    sign(flagship)
    assert reviewing.signature(ledger.load(flagship), reference()) is not None


def test_a_signature_lapses_when_the_review_of_its_day_would_say_something_else(
    flagship: str,
) -> None:
    """Newer reference data counts too: what the person signed is not what would be shown."""
    sign(flagship)
    data = reference()
    stale = data.parameters["values.stale-years"]
    longer = stale.values[0].model_copy(update={"value": stale.values[0].value + 40})
    changed = data.model_copy(
        update={
            "parameters": {
                **data.parameters,
                "values.stale-years": stale.model_copy(update={"values": (longer,)}),
            }
        }
    )
    assert reviewing.signature(ledger.load(flagship), changed) is None


def test_a_signature_is_an_entry_of_the_ledger(flagship: str) -> None:
    sign(flagship)
    newest = ledger.entries(flagship)[-1]
    assert (newest.act, newest.kind, newest.by) == ("sign", ReviewSigned.kind, "judith")


def test_the_review_of_an_unknown_file_is_refused(flagship: str) -> None:
    with pytest.raises(UnknownFile):
        reviewing.review_file("HW-9999", reference(), DAY)
