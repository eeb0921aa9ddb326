"""Nothing is delivered without a named licensed reviewer of exactly what is delivered."""

from __future__ import annotations

from pathlib import Path

import pytest
from tests.office.conftest import DAY, edit
from tests.office.test_packages import built, sign

from quarterday.catalogue.load import reference
from quarterday.core.file.records import Delivery
from quarterday.office.delivering import deliver
from quarterday.office.trouble import Trouble
from quarterday.store import ledger


def delivered(file: str) -> None:
    deliver(file, reference(), "en", to="Harriet Boone", way="by hand", on=DAY, by="ann")


def test_a_draft_is_not_delivered(flagship: str, tmp_path: Path) -> None:
    built(flagship, tmp_path)
    with pytest.raises(Trouble):
        delivered(flagship)


def test_a_draft_is_not_delivered_under_a_later_signature(flagship: str, tmp_path: Path) -> None:
    built(flagship, tmp_path)
    sign(flagship)
    with pytest.raises(Trouble):
        delivered(flagship)


def test_a_signed_package_is_delivered_and_the_delivery_is_on_record(
    flagship: str, tmp_path: Path
) -> None:
    sign(flagship)
    made = built(flagship, tmp_path)
    delivered(flagship)
    (record,) = ledger.load(flagship).all(Delivery)
    assert (record.document, record.to) == (made.document, "Harriet Boone")


def test_a_signed_package_is_not_delivered_after_a_change(flagship: str, tmp_path: Path) -> None:
    sign(flagship)
    built(flagship, tmp_path)
    edit(flagship, phone="705-555-0177")
    with pytest.raises(Trouble):
        delivered(flagship)


def test_a_package_in_the_other_language_is_not_the_one_that_was_built(
    flagship: str, tmp_path: Path
) -> None:
    sign(flagship)
    built(flagship, tmp_path, "fr")
    with pytest.raises(Trouble):
        delivered(flagship)
