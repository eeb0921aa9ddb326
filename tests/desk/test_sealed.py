"""A package that may be delivered is sealed at the desk where the brokerage has a certificate."""

from __future__ import annotations

from datetime import UTC, datetime
from pathlib import Path

from django.conf import settings
from django.test import Client
from tests.desk.conftest import FLAGSHIP, As
from tests.office.inbox import Inbox

from quarterday.core.file.records import Delivery, PackageBuilt, PackageSealed
from quarterday.office import sealing
from quarterday.office.brand import brokerage
from quarterday.store import ledger

F = f"/files/{FLAGSHIP}/"
LETTER = {"to": "Priya Nathan", "address": "priya@st-ebba.example.org", "subject": "Your renewal",
          "message": "Here it is.", "language": "en"}  # fmt: skip


def build(browser: Client, *, is_signed: bool) -> None:
    if is_signed:
        seen = str(ledger.load(FLAGSHIP).seq)
        assert browser.post(f"{F}sign/", {"read": "yes", "seen": seen}).status_code == 302
    assert browser.post(f"{F}build/", {"language": "en"}).status_code == 302


def seals() -> tuple[PackageSealed, ...]:
    return ledger.load(FLAGSHIP).all(PackageSealed)


def test_building_a_signed_package_seals_it_and_the_page_offers_the_sealed_one(
    certificate: Path, signed_in: As
) -> None:
    browser = signed_in("ann")
    build(browser, is_signed=True)
    (seal,) = seals()
    assert f"/papers/{seal.sealed}/" in browser.get(F).content.decode()
    answer = browser.get(f"{F}papers/{seal.sealed}/")
    assert "-sealed.pdf" in answer["Content-Disposition"]
    verdict = sealing.judge(answer.content, "package.pdf")
    assert (verdict.state, verdict.is_own) == ("intact", True)
    build(browser, is_signed=False)
    assert len(seals()) == 1


def test_a_draft_is_not_sealed(certificate: Path, signed_in: As) -> None:
    build(signed_in("ann"), is_signed=False)
    assert len(ledger.load(FLAGSHIP).all(PackageBuilt)) == 1
    assert seals() == ()


def test_without_a_certificate_nothing_is_sealed_and_none_is_made(
    book: None, signed_in: As
) -> None:
    build(signed_in("ann"), is_signed=True)
    assert seals() == ()
    assert not (Path(settings.QUARTERDAY_HOME) / sealing.CERTIFICATE_FILE).exists()


def test_a_package_built_before_the_certificate_is_sealed_as_it_is_sent(
    book: None, signed_in: As, inbox: Inbox
) -> None:
    browser, home = signed_in("ann"), Path(settings.QUARTERDAY_HOME)
    build(browser, is_signed=True)
    assert seals() == ()
    sealing.ensure_certificate(brokerage(), datetime.now(UTC))
    try:
        seen = str(ledger.load(FLAGSHIP).seq)
        assert browser.post(f"{F}send/", {**LETTER, "seen": seen}).status_code == 302
        (enclosed,) = inbox.taken[0].iter_attachments()
        data = enclosed.get_payload(decode=True)
        assert isinstance(data, bytes)
        verdict = sealing.judge(data, "package.pdf")
    finally:
        for name in (sealing.KEY_FILE, sealing.CERTIFICATE_FILE):
            (home / name).unlink()
    assert (verdict.state, verdict.is_own) == ("intact", True)
    (seal,) = seals()
    (delivery,) = ledger.load(FLAGSHIP).all(Delivery)
    assert delivery.attachments == (seal.sealed,)
    assert browser.get(F).context["head"]["state"] == "with leaders"
