"""The printed code: read from scans as they come, by poppler's pictures and a QR reader.

segno draws the code, ZXing reads it: two independent programs (ISO/IEC 18004).
"""

from __future__ import annotations

import io
from functools import cache

import pikepdf
import pytest

from quarterday.core.file.page_code import PageCode
from quarterday.intake.forms import peek, printed
from quarterday.intake.forms.peek import Looked
from quarterday.intake.forms.printed import printed_codes
from quarterday.intake.forms.recognise import Flat, recognise
from quarterday.papers.parts import FORMS
from tests.intake.forms import filling
from tests.papers import given


@cache
def codes(language: str = "en") -> dict[int, PageCode]:
    return dict(printed_codes(looked(given.package(language=language).pdf)))


def looked(data: bytes) -> Looked:
    return Looked("scan.pdf", data, "", 1, (), (), "")


@pytest.mark.parametrize("language", ["en", "fr"])
def test_every_page_of_every_form_has_its_code_and_no_other_page_has_one(language: str) -> None:
    found = codes(language)
    enclosed = [id for id, _ in given.package(language=language).enclosed if id in FORMS]
    assert list(dict.fromkeys(code.form for code in found.values())) == enclosed
    assert {(c.file, c.language, c.version) for c in found.values()} == {("HW-1001", language, 1)}
    with pikepdf.open(io.BytesIO(given.package(language=language).pdf)) as pdf:
        holding = {n for n, page in enumerate(pdf.pages, 1) if filling.holds(page, "")}
    assert holding <= set(found)


@pytest.mark.parametrize(("dots", "tilt"), [(100, 0.0), (150, 0.0), (150, 2.0), (200, -2.0)])
def test_a_scan_is_recognised_by_its_code(dots: int, tilt: float) -> None:
    page, code = next((n, c) for n, c in codes().items() if c.form == "contacts-form")
    scan = filling.scanned(given.package().pdf, 1, first=page, dots=dots, tilt=tilt)
    found = recognise(peek.look(scan, "scan.pdf"), {}, ())
    assert isinstance(found, Flat)
    assert found.codes == {1: code}
    assert (found.files, found.forms) == (("HW-1001",), ("contacts-form",))
    assert found.stamp is not None
    assert (found.stamp.renewal, found.stamp.seq) == (code.renewal, code.seq)


def test_a_flattened_form_is_recognised_by_its_code() -> None:
    found = recognise(peek.look(filling.flattened(given.package().pdf), "flat.pdf"), {}, ())
    assert isinstance(found, Flat)
    assert dict(found.codes) == codes()


def test_a_scan_too_coarse_to_read_says_nothing_and_is_not_guessed() -> None:
    scan = filling.scanned(given.package().pdf, 1, first=next(iter(codes())), dots=30)
    found = recognise(peek.look(scan, "scan.pdf"), {}, ())
    assert isinstance(found, Flat)
    assert (found.codes, found.files, found.forms, found.stamp) == ({}, (), (), None)


def test_pages_of_two_packages_have_no_stamp_in_common() -> None:
    code = next(iter(codes().values()))
    other = PageCode("HW-1010", code.renewal, "en", 1, 5, code.form)
    flat = Flat(looked(b""), ("HW-1001", "HW-1010"), (code.form,), {1: code, 2: other})
    assert flat.stamp is None


def test_a_page_with_two_codes_or_a_foreign_one_has_none(monkeypatch: pytest.MonkeyPatch) -> None:
    one = next(iter(codes().values()))
    other = PageCode("HW-1010", one.renewal, "en", 1, 5, one.form)
    told = (
        f'[[1, "{one.text}"], [1, "{other.text}"], [2, "https://example.org"], [3, "{one.text}"]]'
    )
    monkeypatch.setattr(printed, "handled", lambda *_: told.encode())
    assert printed_codes(looked(b"")) == {3: one}


@pytest.mark.parametrize("data", [b"%PDF-1.7 nothing", b""])
def test_what_cannot_be_drawn_has_no_codes(data: bytes) -> None:
    assert printed_codes(looked(data)) == {}
