"""The request to the insurer by e-mail: sent once, recorded with its words, or not at all."""

from __future__ import annotations

from typing import Any

import pytest
from django.test import Client
from tests.desk.conftest import FLAGSHIP, As
from tests.office.inbox import Inbox

from quarterday.core.file.records import RequestSent
from quarterday.people import limits
from quarterday.store import ledger, originals

F = f"/files/{FLAGSHIP}/"
ASK = f"{F}request/"
LETTER = {"way": "mail", "language": "en", "address": "changes@larkmoor.example.org",
          "subject": "Our request", "message": "Dear colleagues,\r\n\r\nenclosed."}  # fmt: skip


def decide(browser: Client, answer: str = "take-it") -> None:
    said = {"question": "option/by-laws/*", "answer": answer, "by": "The wardens",
            "on": "2026-11-25", "seen": str(ledger.load(FLAGSHIP).seq)}  # fmt: skip
    assert browser.post(f"{F}decide/", said).status_code == 302


def mail(browser: Client, **changed: str) -> Any:
    return browser.post(ASK, {**LETTER, "seen": str(ledger.load(FLAGSHIP).seq), **changed})


def sent() -> tuple[RequestSent, ...]:
    return ledger.load(FLAGSHIP).all(RequestSent)


def test_a_request_goes_out_with_its_letter_and_is_recorded_with_its_words(
    book: None, signed_in: As, inbox: Inbox
) -> None:
    browser = signed_in("ann")
    decide(browser)
    assert mail(browser).status_code == 302
    (message,) = inbox.taken
    assert message["To"].addresses[0].addr_spec == "changes@larkmoor.example.org"
    assert message["Subject"] == "Our request"
    (enclosed,) = message.iter_attachments()
    (record,) = sent()
    assert enclosed.get_payload(decode=True) == originals.get(record.document)
    assert (record.to, record.address) == ("Larkmoor Mutual Insurance", LETTER["address"])
    assert record.message == "Dear colleagues,\n\nenclosed."
    assert LETTER["address"] in browser.get(ASK).content.decode()


def test_the_next_request_goes_where_the_last_one_went(
    book: None, signed_in: As, inbox: Inbox
) -> None:
    browser = signed_in("ann")
    decide(browser)
    assert browser.get(ASK).context["letter"].address == ""
    mail(browser)
    browser.post(f"{F}payment/", {"plan": "at-once", "by": "Priya", "on": "2026-11-25",
                                  "seen": str(ledger.load(FLAGSHIP).seq)})  # fmt: skip
    assert browser.get(ASK).context["letter"].address == LETTER["address"]


@pytest.mark.parametrize("language", ["en", "fr"])
def test_the_usual_words_say_whose_policy_and_how_much_is_asked(
    language: str, book: None, signed_in: As, inbox: Inbox
) -> None:
    browser = signed_in("ann")
    decide(browser)
    page = browser.get(f"{ASK}?language={language}")
    letter = page.context["letter"]
    assert "LM-20417" in letter.subject
    assert "2027-01-15" in letter.subject
    assert ("one change" if language == "en" else "un changement") in letter.words
    assert letter.words.endswith("Ann, Hollis Wren Insurance Brokers" if language == "en"
                                 else "Ann, Hollis Wren, courtiers d'assurance")  # fmt: skip


@pytest.mark.parametrize("language", ["en", "fr"])
def test_a_decision_that_was_asked_and_changed_is_counted_and_shown_until_it_is_told(
    language: str, book: None, signed_in: As, inbox: Inbox
) -> None:
    browser = signed_in("ann")
    decide(browser)
    mail(browser)
    decide(browser, "leave-it")
    page = browser.get(f"{ASK}?language={language}", headers={"accept-language": language})
    (row,) = page.context["prepared"].request.asked
    assert (row.is_gone, row.earlier.number) == (True, 1)
    assert "It takes back what an earlier request asked for." in page.content.decode()
    assert "Please disregard: take it, asked for in our request 1 of" in page.content.decode()
    assert TAKES_BACK[language] in page.context["letter"].words
    mail(browser)
    assert [record.taken_back for record in sent()] == [0, 1]
    assert "nothing to ask" in browser.get(ASK).content.decode()


TAKES_BACK = {
    "en": "It asks for no new change. One thing that we asked for earlier is asked no more",
    "fr": "Elle ne porte sur aucun nouveau changement. Un point demandé auparavant ne l'est plus",
}


@pytest.mark.parametrize(
    "change", [{"address": "nobody"}, {"subject": " "}, {"message": ""}, {"address": ""}]
)
def test_a_message_that_is_not_whole_comes_back_as_it_was_typed(
    change: dict[str, str], book: None, signed_in: As, inbox: Inbox
) -> None:
    browser = signed_in("ann")
    decide(browser)
    answer = mail(browser, **change)
    assert answer.status_code == 422
    letter = answer.context["letter"]
    assert (letter.address, letter.subject) == tuple(
        {**LETTER, **change}[name] for name in ("address", "subject")
    )
    assert (sent(), inbox.taken) == ((), [])


def test_what_the_server_does_not_take_is_told_and_not_recorded(
    book: None, signed_in: As, inbox: Inbox
) -> None:
    browser = signed_in("ann")
    decide(browser)
    inbox.refuses = LETTER["address"]
    answer = mail(browser)
    assert answer.status_code == 422
    assert "no such mailbox" in answer.context["refused"]
    assert sent() == ()
    inbox.refuses = ""
    assert mail(browser).status_code == 302
    assert len(sent()) == 1


def test_a_request_posted_twice_goes_out_once(book: None, signed_in: As, inbox: Inbox) -> None:
    browser = signed_in("ann")
    decide(browser)
    seen = str(ledger.load(FLAGSHIP).seq)
    assert mail(browser, seen=seen).status_code == 302
    assert mail(browser, seen=seen).status_code in {409, 422}
    assert (len(inbox.taken), len(sent())) == (1, 1)


def test_without_a_mail_server_the_page_says_so_and_it_can_still_be_recorded(
    book: None, signed_in: As, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.delenv("QUARTERDAY_MAIL", raising=False)
    browser = signed_in("ann")
    decide(browser)
    assert "QUARTERDAY_MAIL" in browser.get(ASK).content.decode()
    assert mail(browser).status_code == 422
    assert sent() == ()
    seen = str(ledger.load(FLAGSHIP).seq)
    assert browser.post(ASK, {"seen": seen, "language": "en"}).status_code == 302
    assert [record.address for record in sent()] == [None]


def test_letters_that_no_paper_can_print_are_told_by_every_act_that_prints(
    book: None, signed_in: As
) -> None:
    browser = signed_in("ann")
    decide(browser)
    address = f"{F}edit/?kind=organisation&key="
    form = {field.name: field.text for field in browser.get(address).context["fields"]}
    seen = str(ledger.load(FLAGSHIP).seq)
    assert (
        browser.post(address, {**form, "name": "Hall \u6f22 🙏🏽", "seen": seen}).status_code == 302
    )
    holder = {"language": "en", "name": "Harbour Light", "holder": ""}
    answers = [
        browser.get(ASK), browser.get(f"{ASK}letter/pdf/"), mail(browser),
        browser.post(f"{F}build/", {"language": "en"}), browser.post(f"{F}certify/", holder),
    ]  # fmt: skip
    for answer in answers:
        assert answer.status_code == 422
        assert "cannot be printed" in answer.content.decode() or "No paper can be printed" in (
            answer.content.decode()
        )
    assert browser.get(F).status_code == 200


def test_requests_are_not_sent_without_end(
    book: None, signed_in: As, inbox: Inbox, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setitem(limits.LIMITS, "send", limits.Limit(0, limits.HOUR))
    browser = signed_in("ann")
    decide(browser)
    assert mail(browser).status_code == 422
    assert inbox.taken == []


@pytest.mark.parametrize(
    "text", ["<script>alert(1)</script>", "x" * 10_000, "שלום\u202etxt 🙏🏽", "a\r\nBcc: all@x.org"]
)
def test_no_field_of_the_message_is_believed(
    text: str, book: None, signed_in: As, inbox: Inbox
) -> None:
    browser = signed_in("ann")
    decide(browser)
    answer = mail(browser, subject=text, message=text)
    assert answer.status_code in {302, 422}
    assert "<script>alert" not in answer.content.decode()
    assert "<script>alert" not in browser.get(f"{F}history/").content.decode()
    assert all("Bcc" not in message for message in inbox.taken)
