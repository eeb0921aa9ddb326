"""Nothing is delivered without a named licensed reviewer of exactly what is delivered."""

from __future__ import annotations

import hashlib
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from email import message_from_bytes, policy
from pathlib import Path

import pytest
from django.conf import settings
from tests.office.conftest import DAY, edit
from tests.office.inbox import MAIL, Inbox
from tests.office.test_packages import built, sign

from quarterday.catalogue.load import reference
from quarterday.catalogue.speech import Speech
from quarterday.core.file.records import Delivery, PackageBuilt
from quarterday.core.review.case import Case
from quarterday.core.review.state import state
from quarterday.invent.demo.book import HERE
from quarterday.office.delivering import Letter, came_back, deliver, send, usual_letter
from quarterday.office.sealing import seal_package
from quarterday.office.trouble import Trouble
from quarterday.papers.brokerage import read_brokerage
from quarterday.people.models import Sending
from quarterday.store import ledger, originals


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


LETTER = Letter(
    "Harriet Boone", "harriet@st-ebba.example.org", "Your renewal", "Dear Harriet,\n\n…"
)
HOUSE = read_brokerage(HERE / "brokerage.yaml")


@pytest.fixture
def signed(flagship: str, tmp_path: Path) -> str:
    """The flagship, its package signed and built."""
    sign(flagship)
    built(flagship, tmp_path)
    return flagship


def mail(file: str, letter: Letter = LETTER, seen: int | None = None) -> None:
    send(file, reference(), "en", letter, brokerage=HOUSE, on=DAY, by="ann", seen=seen)


def nothing_recorded(file: str) -> bool:
    return ledger.load(file).all(Delivery) == () and not Sending.objects.exists()


def test_a_package_goes_out_by_mail_and_the_record_says_to_whom_and_in_which_words(
    signed: str, inbox: Inbox
) -> None:
    mail(signed)
    (message,) = inbox.taken
    (record,) = ledger.load(signed).all(Delivery)
    (part,) = message.iter_attachments()
    enclosed = part.get_content()
    assert message["To"] == "Harriet Boone <harriet@st-ebba.example.org>"
    assert message["From"] == f"{HOUSE.name} <{HOUSE.email}>"
    body = message.get_body()
    assert body is not None
    assert body.get_content().split() == (record.message or "").split()
    assert (record.way, record.address, record.subject) == (
        "e-mail", LETTER.address, message["Subject"],
    )  # fmt: skip
    assert record.attachments == (hashlib.sha256(enclosed).hexdigest(),)
    assert enclosed == originals.get(record.document)
    assert not Sending.objects.exists()


def test_a_draft_is_not_sent(flagship: str, tmp_path: Path, inbox: Inbox) -> None:
    built(flagship, tmp_path)
    with pytest.raises(Trouble, match="acts-not-signed"):
        mail(flagship)
    assert inbox.taken == []
    assert nothing_recorded(flagship)


def test_a_mailbox_that_bounces_is_told_and_nothing_is_recorded(signed: str, inbox: Inbox) -> None:
    inbox.refuses = LETTER.address
    with pytest.raises(Trouble, match="mail-refused") as caught:
        mail(signed)
    assert "no such mailbox" in Speech(reference(), "en").say(caught.value.words)
    assert nothing_recorded(signed)


def test_a_server_that_does_not_take_the_message_is_told(signed: str, inbox: Inbox) -> None:
    inbox.full = True
    with pytest.raises(Trouble, match="mail-not-taken"):
        mail(signed)
    assert nothing_recorded(signed)


def test_a_server_that_cannot_be_reached_is_told(
    signed: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv(MAIL, "smtp://127.0.0.1:1")
    with pytest.raises(Trouble, match="mail-not-reached"):
        mail(signed)
    assert nothing_recorded(signed)


@pytest.mark.parametrize("server", ["", "ftp://host", "smtp://", "smtp://host:port", "just words"])
def test_without_a_mail_server_nothing_is_sent(
    server: str, signed: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv(MAIL, server)
    with pytest.raises(Trouble, match=r"mail-(no|bad)-server"):
        mail(signed)
    assert nothing_recorded(signed)


@pytest.mark.parametrize(
    "letter",
    [replace(LETTER, address="two@a.example.org, b@b.example.org"), replace(LETTER, to=" "),
     replace(LETTER, address="a@b.example.org\nBcc: all@c.example.org"),
     replace(LETTER, subject=""), replace(LETTER, words=" \n")],
)  # fmt: skip
def test_a_letter_that_is_not_whole_is_refused(letter: Letter, signed: str, inbox: Inbox) -> None:
    with pytest.raises(Trouble):
        mail(signed, letter)
    assert inbox.taken == []
    assert nothing_recorded(signed)


def test_a_subject_cannot_smuggle_in_another_receiver(signed: str, inbox: Inbox) -> None:
    mail(signed, replace(LETTER, subject="Renewal\nBcc: all@c.example.org", to="Éloïse Ö 🙂 מרים"))
    (message,) = inbox.taken
    assert message["Bcc"] is None
    assert message["Subject"] == "Renewal Bcc: all@c.example.org"
    assert message["To"].addresses[0].display_name == "Éloïse Ö 🙂 מרים"


def test_the_same_form_sent_twice_sends_one_message(signed: str, inbox: Inbox) -> None:
    seen = ledger.load(signed).seq
    mail(signed, seen=seen)
    with pytest.raises(Trouble, match="acts-went-already"):
        mail(signed, seen=seen)
    assert len(inbox.taken) == 1
    mail(signed, seen=ledger.load(signed).seq)  # a page that was loaded again may send again
    assert len(inbox.taken) == 2


def test_two_windows_at_the_same_moment_send_one_message(signed: str, inbox: Inbox) -> None:
    file = ledger.load(signed)
    (package,) = file.all(PackageBuilt)
    key = f"{package.document}/{LETTER.to}"
    Sending.objects.create(file=signed, key=key, at=datetime.now(UTC))
    with pytest.raises(Trouble, match="mail-on-its-way"):
        mail(signed)
    assert inbox.taken == []


def test_a_message_that_may_have_gone_when_the_machine_stopped_is_told_once(
    signed: str, inbox: Inbox
) -> None:
    (package,) = ledger.load(signed).all(PackageBuilt)
    long_ago = datetime.now(UTC) - timedelta(hours=2)
    Sending.objects.create(file=signed, key=f"{package.document}/{LETTER.to}", at=long_ago)
    with pytest.raises(Trouble, match="mail-perhaps"):
        mail(signed)
    assert inbox.taken == []
    mail(signed)
    assert len(inbox.taken) == 1


def test_a_demo_or_an_office_without_mail_writes_messages_into_files(
    signed: str, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    monkeypatch.setattr(settings, "QUARTERDAY_HOME", tmp_path)
    monkeypatch.setenv(MAIL, "files")
    mail(signed)
    (written,) = (tmp_path / "mail").iterdir()
    told = message_from_bytes(written.read_bytes().split(b"\n-----")[0], policy=policy.default)
    assert told["Subject"] == LETTER.subject
    assert len(ledger.load(signed).all(Delivery)) == 1


def test_a_sealed_package_is_what_goes_out(signed: str, inbox: Inbox) -> None:
    sealed = seal_package(signed, "en", HOUSE, by="ann", now=datetime.now(UTC))
    mail(signed)
    (record,) = ledger.load(signed).all(Delivery)
    assert record.attachments == (sealed.record.sealed,)
    assert record.document == sealed.record.document


def test_what_came_back_no_longer_counts_as_delivered(signed: str, inbox: Inbox) -> None:
    mail(signed)
    (record,) = ledger.load(signed).all(Delivery)
    case = Case(ledger.load(signed), reference(), DAY)
    assert state(case) == "with leaders"
    came_back(signed, record.key, why="Mailbox full.", on=DAY, today=DAY, by="ann")
    (back,) = ledger.load(signed).all(Delivery)
    assert (back.came_back, back.came_back_on, back.address) == (
        "Mailbox full.", DAY, LETTER.address,
    )  # fmt: skip
    assert state(Case(ledger.load(signed), reference(), DAY)) == "offered"
    with pytest.raises(Trouble, match="acts-no-delivery"):
        came_back(signed, record.key, why="Again.", on=DAY, today=DAY, by="ann")


@pytest.mark.parametrize(("why", "days"), [(" ", 0), ("Full.", 1)])
def test_what_came_back_needs_a_reason_and_a_day_that_has_been(
    why: str, days: int, signed: str, inbox: Inbox
) -> None:
    mail(signed)
    (record,) = ledger.load(signed).all(Delivery)
    with pytest.raises(Trouble):
        came_back(signed, record.key, why=why, on=DAY + timedelta(days=days), today=DAY, by="ann")


@pytest.mark.parametrize("language", ["en", "fr"])
def test_the_usual_words_name_the_organisation_and_whom_to_call(
    language: str, flagship: str
) -> None:
    letter = usual_letter(
        ledger.load(flagship), reference(), language, HOUSE, "Priya Nathan", "p@x.example.org",
        "Ann Example <ann@holliswren.example.org>",
    )  # fmt: skip
    assert "St. Ebba's" in letter.subject
    assert "Priya Nathan" in letter.words
    assert HOUSE.phone in letter.words
    assert "Ann Example" in letter.words
    assert "@holliswren" not in letter.words
