"""What a returned form says beside the pictures of its pages."""

from __future__ import annotations

import io

import pytest
from PIL import Image
from tests.intake.forms import filling
from tests.office.conftest import DAY
from tests.office.test_returning import BACK, back, every, package

from quarterday.catalogue.load import reference
from quarterday.intake.forms import picture as drawing
from quarterday.intake.forms.recognise import Flat
from quarterday.intake.refusals import Unreadable
from quarterday.office import picturing, returning

__all__ = ["every"]  # the fixture
ANSWERS = {"contacts.warden.phone": "705-555-0122", "buildings.hall.roof_year": "2025",
           "contacts.new-1.name": "Edda Norby"}  # fmt: skip


def test_every_proposal_stands_beside_its_page_under_its_number(flagship: str) -> None:
    reading = back(package(flagship), ANSWERS)
    made = picturing.beside(reading)
    assert made.nowhere == ()
    told = {n: p.name for page in made.pages for n, p in page.proposals}
    assert told == {n: p.name for n, p in enumerate(reading.proposals, start=1)}
    assert set(told.values()) == {"contacts.warden.phone", "buildings.hall.roof_year",
                                  "contacts.new-1"}  # fmt: skip
    for page in made.pages:
        assert page.png is not None
        assert Image.open(io.BytesIO(page.png)).size[0] == drawing.WIDTH


def test_pages_without_a_proposal_are_left_out(flagship: str) -> None:
    reading = back(package(flagship), {"contacts.warden.phone": "705-555-0122"})
    made = picturing.beside(reading)
    assert reading.looked is not None
    assert len(made.pages) == 1 < reading.looked.pages


def test_a_scan_has_all_its_pages(flagship: str) -> None:
    found = returning.read(filling.scanned(package(flagship), 2), "scan.pdf", reference(), BACK)
    assert isinstance(found, Flat)
    assert [page.page for page in picturing.pages(found.looked)] == [1, 2]
    assert picturing.pages(None) == ()


def test_what_was_typed_in_from_a_scan_stands_beside_its_pages(flagship: str) -> None:
    scan = (filling.scanned(package(flagship), 1), "scan.pdf")
    reading = returning.enter(flagship, "contacts-form", {"contacts.warden.phone": "705-555-0122"},
                              reference(), DAY, language="en", person="ann", scan=scan)  # fmt: skip
    made = picturing.beside(reading)
    assert [page.page for page in made.pages] == [1]
    assert [p.name for _, p in made.nowhere] == ["contacts.warden.phone"]


def test_a_page_that_cannot_be_drawn_does_not_keep_the_form_from_being_read(
    flagship: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    reading = back(package(flagship), ANSWERS)

    def refuse(*_: object) -> bytes:
        raise Unreadable("returns-too-much", name="form.pdf")

    monkeypatch.setattr(picturing, "picture", refuse)
    made = picturing.beside(reading)
    assert {page.png for page in made.pages} == {None}
    assert sum(len(page.proposals) for page in made.pages) >= len(reading.proposals)
