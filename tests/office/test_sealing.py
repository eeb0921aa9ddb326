"""The seal: who vouches for the pages, and what was done to them since."""

from __future__ import annotations

import io
import json
import stat
import subprocess
from datetime import UTC, datetime
from pathlib import Path

import pikepdf
import pytest
from django.conf import settings
from tests.intake.forms import filling
from tests.office.conftest import DAY, edit

from quarterday.catalogue.load import reference
from quarterday.catalogue.speech import Speech
from quarterday.core.file.records import PackageSealed
from quarterday.intake.refusals import Unreadable
from quarterday.invent.demo.book import HERE as DEMO_DATA
from quarterday.office import packages, reviewing, sealing
from quarterday.office.brand import FILE_NAME, brokerage
from quarterday.office.trouble import Trouble
from quarterday.store import ledger, originals

NOW = datetime(2026, 11, 25, 15, 30, tzinfo=UTC)
ANSWER = {"contacts.warden.phone": "705-555-0177"}


@pytest.fixture(autouse=True)
def _own_home(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(settings, "QUARTERDAY_HOME", tmp_path)


@pytest.fixture
def sealed(flagship: str, tmp_path: Path) -> bytes:
    """The flagship's signed package, sealed."""
    reviewing.sign(flagship, reference(), reviewer="Judith Hollis", licence="RIB-000417",
                   as_of=DAY, by="judith")  # fmt: skip
    build(flagship, tmp_path)
    return seal(flagship).pdf


def build(file: str, out: Path) -> None:
    order = packages.Order(file, "en", DAY, DAY)
    packages.keep(packages.compose(order, brokerage(DEMO_DATA / FILE_NAME)), out, by="ann")


def seal(file: str) -> sealing.Sealed:
    house = brokerage(DEMO_DATA / FILE_NAME)
    return sealing.seal_package(file, None, house, by="ann", now=NOW)


def judged(data: bytes) -> sealing.Verdict:
    return sealing.judge(data, "package.pdf")


def said(verdict: sealing.Verdict, language: str = "en") -> str:
    speech = Speech(reference(), language)
    return " ".join(speech.say(s) for s in sealing.sentences(verdict, "package.pdf"))


def test_a_sealed_package_says_who_sealed_it_and_that_nothing_was_changed(sealed: bytes) -> None:
    verdict = judged(sealed)
    assert (verdict.state, verdict.is_own, verdict.is_sound) == ("intact", True, True)
    assert verdict.signer == brokerage(DEMO_DATA / FILE_NAME).name
    assert verdict.sealed_at is not None
    assert verdict.signer in said(verdict)


def test_poppler_agrees_that_the_seal_is_valid(sealed: bytes, tmp_path: Path) -> None:
    """pdfsig of poppler reads the signature independently."""
    path = tmp_path / "sealed.pdf"
    path.write_bytes(sealed)
    told = subprocess.run(["pdfsig", "-nocert", str(path)], capture_output=True, text=True,
                          check=False).stdout  # fmt: skip
    assert "Signature is Valid" in told
    assert "Total document signed" in told


def test_the_seal_permits_filling_in_and_nothing_else(sealed: bytes) -> None:
    """ISO 32000-1, table 254: permission 2 allows filling in forms."""
    with pikepdf.open(io.BytesIO(sealed)) as pdf:
        certified = pdf.Root.Perms.DocMDP
        assert int(certified.Reference[0].TransformParams.P) == 2


def test_the_unsealed_bytes_stand_at_its_start_and_their_digest_is_kept(
    sealed: bytes, flagship: str
) -> None:
    (record,) = ledger.load(flagship).all(PackageSealed)
    assert sealed.startswith(originals.get(record.document))
    assert originals.get(record.sealed) == sealed
    assert record.certificate == sealing.fingerprint()


def test_sealing_again_seals_nothing_anew(sealed: bytes, flagship: str) -> None:
    assert seal(flagship).pdf == sealed
    assert len(ledger.load(flagship).all(PackageSealed)) == 1


def test_a_draft_is_not_sealed(flagship: str, tmp_path: Path) -> None:
    build(flagship, tmp_path)
    with pytest.raises(Trouble):
        seal(flagship)


def test_sealing_does_not_make_the_signature_under_the_review_lapse(
    sealed: bytes, flagship: str
) -> None:
    assert reviewing.signature(ledger.load(flagship), reference()) is not None
    edit(flagship, phone="705-555-0100")
    assert reviewing.signature(ledger.load(flagship), reference()) is None


def test_key_and_certificate_are_their_owners_alone(sealed: bytes) -> None:
    for name in (sealing.KEY_FILE, sealing.CERTIFICATE_FILE):
        assert stat.S_IMODE((settings.QUARTERDAY_HOME / name).stat().st_mode) == 0o600


def test_a_sealed_package_that_was_filled_in_is_told_from_an_altered_one(sealed: bytes) -> None:
    verdict = judged(filling.later(sealed, ANSWER))
    assert (verdict.state, verdict.is_sound) == ("filled", True)
    assert verdict.compared is not None
    assert verdict.compared.filled == ("contacts.warden.phone",)
    assert "contacts.warden.phone" in said(verdict)


@pytest.mark.parametrize("fill", [filling.with_pikepdf, filling.with_pypdf])
def test_a_program_that_rewrites_breaks_the_seal_and_the_pages_are_compared(
    fill: filling.Fill, sealed: bytes
) -> None:
    verdict = judged(fill(sealed, ANSWER))
    assert (verdict.state, verdict.is_sound) == ("rewritten", True)
    assert verdict.compared is not None
    assert verdict.compared.filled == ("contacts.warden.phone",)


def test_an_unsealed_package_that_was_filled_in_is_compared_with_the_one_kept(
    sealed: bytes, flagship: str
) -> None:
    (record,) = ledger.load(flagship).all(PackageSealed)
    kept = originals.get(record.document)
    assert judged(kept).state == "kept"
    assert judged(filling.with_pypdf(kept, ANSWER)).state == "rewritten"


def _other_figure(pdf: pikepdf.Pdf) -> None:
    pdf.pages[0].contents_add(b"BT /F0 9 Tf 100 100 Td (you owe nothing) Tj ET")


def _swapped_pages(pdf: pikepdf.Pdf) -> None:
    pdf.pages.reverse()


def _lost_page(pdf: pikepdf.Pdf) -> None:
    del pdf.pages[3]


def _moved_field(pdf: pikepdf.Pdf) -> None:
    filling.field(pdf, "contacts.warden.phone").Rect = pikepdf.Array([0, 0, 100, 20])


ALTERED = [_other_figure, _swapped_pages, _lost_page, _moved_field, filling.with_script,
           filling.with_attachment, filling.with_renamed_field]  # fmt: skip


@pytest.mark.parametrize("change", ALTERED)
def test_a_tampered_seal_is_reported(change: object, sealed: bytes) -> None:
    assert callable(change)
    verdict = judged(filling.changed(sealed, change))
    assert (verdict.state, verdict.is_sound) == ("altered", False)


@pytest.mark.parametrize("place", [0.2, 0.5, 0.8])
def test_one_changed_byte_is_reported(place: float, sealed: bytes) -> None:
    at = int(len(sealed) * place)
    changed = sealed[:at] + bytes([sealed[at] ^ 1]) + sealed[at + 1 :]
    try:
        verdict = judged(changed)
    except Unreadable:
        return  # a byte without which nothing can be read: reported too
    assert verdict.state != "intact"
    assert verdict.compared is not None or not verdict.is_sound


@pytest.mark.parametrize("language", ["en", "fr"])
def test_a_file_that_was_only_written_anew_is_not_said_to_be_filled_in(
    sealed: bytes, language: str
) -> None:
    verdict = judged(filling.changed(sealed, lambda _: None))
    assert (verdict.state, verdict.is_sound) == ("rewritten", True)
    assert verdict.compared is not None
    assert verdict.compared.filled == ()
    told = said(verdict, language)
    assert {"en": "not those that were sealed", "fr": "ne sont pas ceux"}[language] in told
    assert {"en": "filled in", "fr": "remplis"}[language] not in told


def test_a_lost_page_is_told_with_the_counts_and_not_as_every_page_after_it(sealed: bytes) -> None:
    with pikepdf.open(io.BytesIO(sealed)) as pdf:
        count = len(pdf.pages)
    told = said(judged(filling.changed(sealed, _lost_page)))
    assert f"The document has {count - 1} pages; {count} were sent." in told
    assert "The first that differs is page 4." in told
    assert "pages differ" not in told


def test_what_does_not_belong_is_told_with_the_document_s_name(sealed: bytes) -> None:
    told = said(judged(filling.changed(sealed, filling.with_script)))
    assert "package.pdf holds a program." in told


def test_a_scan_of_a_sealed_package_is_strange_and_not_broken(sealed: bytes) -> None:
    """Pages that are pictures: JPEG, which only a picture's own reader unpacks."""
    assert judged(filling.scanned(sealed, 1)).state == "strange"


def test_a_page_added_behind_the_seal_is_an_alteration(sealed: bytes) -> None:
    from pypdf import PdfWriter

    writer = PdfWriter(io.BytesIO(sealed), incremental=True)
    writer.add_blank_page(612, 792)
    out = io.BytesIO()
    writer.write(out)
    assert judged(out.getvalue()).state == "altered"


def test_a_seal_of_somebody_else_is_not_ours(
    sealed: bytes, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    other = tmp_path / "other"
    other.mkdir()
    monkeypatch.setattr(settings, "QUARTERDAY_HOME", other)
    sealing.ensure_certificate(brokerage(DEMO_DATA / FILE_NAME), NOW)
    verdict = judged(sealed)
    assert (verdict.state, verdict.is_own, verdict.is_sound) == ("intact", False, False)
    assert "Anyone can make such a seal" in said(verdict)


def test_a_document_that_is_nothing_of_ours_is_strange(db: None) -> None:
    with pikepdf.Pdf.new() as pdf:
        pdf.add_blank_page()
        assert judged(filling.saved(pdf)).state == "strange"


def test_french_is_spoken_too(sealed: bytes) -> None:
    told = said(judged(filling.later(sealed, ANSWER)), "fr")
    assert "Les pages sont telles qu'elles ont été scellées" in told
    assert json.dumps(told)
