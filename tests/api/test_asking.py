"""The request to the insurer by e-mail, over the interface: sent and recorded, or neither."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pytest
from tests.api.conftest import FILE, FLAGSHIP, ROOT, Program
from tests.office.inbox import Inbox, inbox

from quarterday.core.file.records import RequestSent
from quarterday.office import mailing
from quarterday.people import limits
from quarterday.store import ledger, originals

__all__ = ["inbox"]
As = Callable[[str], Program]
ASK = f"{FILE}/requests/messages"
ADDRESS = "changes@larkmoor.example.org"


def seq() -> int:
    return ledger.entries(FLAGSHIP)[-1].seq


def sent() -> tuple[RequestSent, ...]:
    return ledger.load(FLAGSHIP).all(RequestSent)


def mail(program: Program, **said: object) -> Any:
    return program.post(ASK, {"address": ADDRESS, "seen": seq(), **said})


def pay(program: Program, plan: str) -> None:
    said = {"plan": plan, "by": "Priya", "on": "2026-11-25", "seen": seq()}
    assert program.post(f"{FILE}/payment", said).status_code == 200


@pytest.fixture
def ann(book: None, program: As) -> Program:
    """Ann's program, after the leaders took an option of the offer."""
    said = {"question": "option/by-laws/*", "answer": "take-it", "by": "The wardens",
            "on": "2026-11-25", "seen": seq()}  # fmt: skip
    assert program("ann").post(f"{FILE}/decisions", said).status_code == 200
    return program("ann")


def test_it_goes_out_with_its_letter_and_is_recorded_with_its_words(
    ann: Program, inbox: Inbox
) -> None:
    ready = ann.get(f"{FILE}/request").json()
    answer = mail(ann, subject="Our request", message="Dear colleagues,\n\nenclosed.")
    assert answer.status_code == 200, answer.content
    assert answer.json()["request"] == ready
    (entry,), (record,), (message,) = answer.json()["entries"], sent(), inbox.taken
    assert (entry["seq"], entry["kind"]) == (seq(), "request sent")
    assert entry["by"] == "Ann <ann@holliswren.example.org>"
    assert message["To"].addresses[0].addr_spec == ADDRESS
    assert message["Subject"] == record.subject == "Our request"
    (enclosed,) = message.iter_attachments()
    assert enclosed.get_payload(decode=True) == originals.get(record.document)
    assert (record.to, record.address) == ("Larkmoor Mutual Insurance", ADDRESS)
    assert record.message == "Dear colleagues,\n\nenclosed."


@pytest.mark.parametrize("language", ["en", "fr"])
def test_the_usual_words_go_where_none_are_said(language: str, ann: Program, inbox: Inbox) -> None:
    assert mail(ann, language=language).status_code == 200
    (record,) = sent()
    assert "LM-20417" in (record.subject or "")
    said = "one change" if language == "en" else "un changement"
    assert said in (record.message or "")
    assert (record.message or "").splitlines()[-1].startswith("Ann, Hollis Wren")


def test_without_an_address_it_goes_where_the_last_one_went(ann: Program, inbox: Inbox) -> None:
    first = mail(ann, address="")
    assert (first.status_code, "not an e-mail address" in first.json()["detail"]) == (422, True)
    assert mail(ann).status_code == 200
    pay(ann, "at-once")
    assert mail(ann, address="").status_code == 200
    assert [record.address for record in sent()] == [ADDRESS, ADDRESS]
    assert len(inbox.taken) == 2


def test_what_was_not_read_is_not_asked(ann: Program, program: As, inbox: Inbox) -> None:
    seen = seq()
    pay(program("maria"), "at-once")
    stale = mail(ann, seen=seen)
    assert stale.status_code == 409
    assert stale.json()["type"].endswith("#conflict")
    assert "it may ask for more now" in stale.json()["detail"]
    assert (sent(), inbox.taken) == ((), [])
    assert mail(ann).status_code == 200


def test_asked_twice_without_a_name_it_goes_out_once(ann: Program, inbox: Inbox) -> None:
    seen = seq()
    assert mail(ann, seen=seen).status_code == 200
    assert mail(ann, seen=seen).status_code == 422  # nothing is left to ask
    assert (len(inbox.taken), len(sent())) == (1, 1)


@pytest.mark.parametrize(
    "change",
    [{"address": "nobody"}, {"address": "a@b.example.org, c@d.example.org"}, {"subject": " "},
     {"message": " \n"}, {"address": " "}],
)  # fmt: skip
def test_a_message_that_is_not_whole_is_not_sent(
    change: dict[str, str], ann: Program, inbox: Inbox
) -> None:
    assert mail(ann, **change).status_code == 422
    assert (sent(), inbox.taken) == ((), [])


@pytest.mark.parametrize(
    "change",
    [{"address": "a@b.example.org\nBcc: all@c.example.org"}, {"subject": "x\r\nBcc: all@x.org"},
     {"message": "\u0000"}, {"address": "x" * 301 + "@example.org"}, {"language": "de"},
     {"message": "x" * 10_001}, {"to": "Lou"}, {"seen": "1"}, {"address": ["a@b.example.org"]}],
)  # fmt: skip
def test_what_the_description_does_not_allow_is_not_sent(
    change: dict[str, object], ann: Program, inbox: Inbox
) -> None:
    answer = mail(ann, **change)
    assert answer.status_code == 400, answer.content
    assert answer.json()["errors"][0]["where"] == next(iter(change))
    assert (sent(), inbox.taken) == ((), [])


def test_no_word_of_the_message_is_believed(ann: Program, inbox: Inbox) -> None:
    text = "<script>alert(1)</script> שלום\u202etxt 🙏🏽"
    assert mail(ann, subject=text, message=f"Bcc: all@x.org\n\n{text}").status_code == 200
    (message,) = inbox.taken
    assert message["Bcc"] is None
    assert [a.addr_spec for a in message["To"].addresses] == [ADDRESS]
    assert message["Subject"].strip() == text


def test_what_the_server_does_not_take_is_told_and_not_recorded(ann: Program, inbox: Inbox) -> None:
    inbox.refuses = ADDRESS
    refused = mail(ann)
    assert (refused.status_code, "no such mailbox" in refused.json()["detail"]) == (422, True)
    assert sent() == ()
    inbox.refuses = ""
    assert mail(ann).status_code == 200


def test_a_request_of_what_was_not_read_is_not_recorded(ann: Program) -> None:
    answer = ann.post(f"{FILE}/requests", {"seen": seq() - 1})
    assert answer.status_code == 409
    assert ann.post(f"{FILE}/requests", {}).status_code == 400
    assert sent() == ()


def test_a_decision_that_was_asked_and_undone_is_asked_no_more(ann: Program) -> None:
    newest = seq()
    assert ann.post(f"{FILE}/requests", {"seen": newest}).status_code == 200
    done = ann.post(f"{FILE}/undo", {"entry": newest, "seen": seq()})
    assert done.status_code == 200, done.content
    (row,) = ann.get(f"{FILE}/request").json()["changes"]
    assert (row["ask"], row["earlier"], row["earlier_number"]) == ("disregard", "take-it", 1)
    assert ann.post(f"{FILE}/requests", {"seen": seq()}).status_code == 200
    assert ann.get(f"{FILE}/request").status_code == 422


def test_nothing_to_ask_is_told(book: None, program: As, inbox: Inbox) -> None:
    answer = mail(program("ann"))
    assert (answer.status_code, "nothing to ask" in answer.json()["detail"]) == (422, True)
    assert inbox.taken == []


def test_without_a_mail_server_it_can_still_be_recorded(
    ann: Program, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.delenv("QUARTERDAY_MAIL", raising=False)
    monkeypatch.setattr(mailing, "demo_day", lambda: None)
    refused = mail(ann)
    assert (refused.status_code, "QUARTERDAY_MAIL" in refused.json()["detail"]) == (422, True)
    assert ann.post(f"{FILE}/requests", {"seen": seq()}).status_code == 200
    assert [record.address for record in sent()] == [None]


def test_messages_are_not_sent_without_end(
    ann: Program, inbox: Inbox, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setitem(limits.LIMITS, "send", limits.Limit(0, limits.HOUR))
    assert mail(ann).status_code == 422
    assert inbox.taken == []


@pytest.mark.parametrize(("who", "status"), [("rhea", 403), ("reader", 403), ("cole", 404),
                                             ("sid", 404), ("none", 401)])  # fmt: skip
def test_who_may_not_ask_sends_nothing(
    who: str, status: int, ann: Program, program: As, inbox: Inbox
) -> None:
    """The matrix asks about a file that has nothing to ask; here a message would go."""
    assert mail(program(who)).status_code == status
    assert (sent(), inbox.taken) == ((), [])


def test_the_next_request_says_so_and_the_letter_is_kept_for_who_may_read(
    ann: Program, program: As, inbox: Inbox
) -> None:
    mail(ann)
    told = program("rhea").get(f"{ROOT}/files/{FLAGSHIP}").json()["records"]
    (record,) = (one["record"] for one in told if one["kind"] == "request sent")
    assert record["address"] == ADDRESS
    assert program("rhea").get(f"{FILE}/request").status_code == 422
