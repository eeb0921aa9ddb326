"""Acts that take long or reach outside, asked twice under one name: done once, answered alike."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, datetime, timedelta
from typing import Any

import pytest
from tests.api.conftest import FILE, FLAGSHIP, ROOT, Program
from tests.api.test_guide import CSV
from tests.intake.forms import filling
from tests.office.inbox import Inbox, inbox

from quarterday.api.service import described
from quarterday.core.file.records import Decision, Delivery, Note, PackageBuilt, RequestSent
from quarterday.office import mailing
from quarterday.office.underway import ABANDONED
from quarterday.people.models import Answered, Attempt, Grant, Person, Upload
from quarterday.store import ledger, originals

__all__ = ["inbox"]
As = Callable[[str], Program]
NAMED = {"Idempotency-Key": "job-7"}
BUILD, MESSAGES = f"{FILE}/packages", f"{FILE}/messages"
ASK = f"{FILE}/requests/messages"
QUESTIONS = {"catalogues.calculate", "terms.pay"}  # asked with a body; they write nothing


def seq() -> int:
    return ledger.entries(FLAGSHIP)[-1].seq


def counted(what: str) -> int:
    return Attempt.objects.filter(what=what).count()


def twice(ask: Callable[[], Any]) -> dict[str, Any]:
    """Ask twice; return what was answered, which must be the same."""
    first, again = ask(), ask()
    assert first.status_code == again.status_code == 200, (first.content, again.content)
    assert first.json() == again.json()
    found: dict[str, Any] = again.json()
    return found


@pytest.fixture
def letter(book: None, program: As) -> dict[str, Any]:
    """A message with the flagship's package, signed and built."""
    ann = program("ann")
    assert ann.post(f"{FILE}/signature", {"read": True, "seen": seq()}).status_code == 200
    assert ann.post(BUILD, {"language": "en"}).status_code == 200
    return {"language": "en", "to": "Priya Nathan", "address": "p@st-ebba.example.org",
            "seen": seq()}  # fmt: skip


@pytest.fixture
def request_ready(book: None, program: As) -> dict[str, Any]:
    """A message with the flagship's next request, which asks for one thing."""
    said = {"question": "option/by-laws/*", "answer": "take-it", "by": "The wardens",
            "on": "2026-11-25", "seen": seq()}  # fmt: skip
    assert program("ann").post(f"{FILE}/decisions", said).status_code == 200
    return {"address": "changes@larkmoor.example.org", "seen": seq()}


def test_every_act_takes_a_name_and_no_question_does() -> None:
    told = {
        op["operationId"]: any(p["name"] == "Idempotency-Key" for p in op["parameters"])
        for path in described()["paths"].values() for method, op in path.items()
        if method != "get"
    }  # fmt: skip
    assert {name for name, takes in told.items() if not takes} == QUESTIONS
    assert {"papers.build", "papers.mail", "papers.request_mailed", "forms.accept",
            "loading.send", "loading.leave"} <= set(told)  # fmt: skip


def test_a_package_is_built_once(book: None, program: As) -> None:
    told = twice(lambda: program("ann").post(BUILD, {"language": "fr"}, **NAMED))
    assert counted("build") == 1
    (package,) = ledger.load(FLAGSHIP).all(PackageBuilt)
    assert package.document == told["sha256"]


def test_a_workbook_is_kept_once_and_written_once(book: None, program: As) -> None:
    ann = program("ann")
    sent = twice(lambda: ann.send(f"{ROOT}/loads", "book.csv", CSV, **NAMED))
    assert (Upload.objects.count(), counted("upload")) == (1, 1)
    said = {"mark": sent["mark"], "with_errors": True}
    accept = f"{ROOT}/loads/{sent['token']}/accept"
    done = twice(lambda: ann.post(accept, said, **{"Idempotency-Key": "job-8"}))
    assert done["entries"] == sent["new"] > 0
    assert len(ledger.entries("HW-7777")) == sent["new"]


def test_a_document_is_left_once(book: None, program: As) -> None:
    ann = program("ann")
    sent = ann.send(f"{ROOT}/loads", "book.csv", CSV).json()
    leave = f"{ROOT}/loads/{sent['token']}"
    assert twice(lambda: ann.delete(leave, **NAMED)) == {"left": True}
    assert not Upload.objects.exists()


def test_another_document_under_the_same_name_is_refused(book: None, program: As) -> None:
    ann = program("ann")
    assert ann.send(f"{ROOT}/loads", "book.csv", CSV, **NAMED).status_code == 200
    for name, content in (("book.csv", CSV + b"HW-7778,Another,ON,port-ellery\n"),
                          ("other.csv", CSV)):  # fmt: skip
        other = ann.send(f"{ROOT}/loads", name, content, **NAMED)
        assert (other.status_code, other.json()["type"][-9:]) == (409, "#repeated")
    assert Upload.objects.count() == 1


def test_a_form_is_read_once_and_its_answers_are_taken_once(book: None, program: As) -> None:
    ann = program("ann")
    built = ann.post(BUILD, {"language": "en"}).json()
    answers = {"contacts-form.confirmed.by": "Ida Brandt",
               "contacts-form.confirmed.on": "2026-11-20"}  # fmt: skip
    filled = filling.with_pypdf(bytes(originals.get(built["sha256"])), answers)
    sent = twice(lambda: ann.send(f"{ROOT}/forms", "form.pdf", filled, **NAMED))
    assert (Upload.objects.count(), counted("upload")) == (1, 1)
    before = seq()
    accept = f"{ROOT}/forms/{sent['token']}/accept"
    (taken,) = twice(lambda: ann.post(accept, {}, **{"Idempotency-Key": "job-8"}))["read"]
    assert seq() - before == taken["entries"] > 0


def test_a_package_is_mailed_once(letter: dict[str, Any], program: As, inbox: Inbox) -> None:
    told = twice(lambda: program("ann").post(MESSAGES, letter, **NAMED))
    assert [entry["kind"] for entry in told["entries"]] == ["delivery"]
    assert (len(inbox.taken), len(ledger.load(FLAGSHIP).all(Delivery))) == (1, 1)
    assert counted("send") == 1


def test_a_request_is_mailed_once(request_ready: dict[str, Any], program: As, inbox: Inbox) -> None:
    told = twice(lambda: program("ann").post(ASK, request_ready, **NAMED))
    assert [entry["kind"] for entry in told["entries"]] == ["request sent"]
    assert (len(inbox.taken), len(ledger.load(FLAGSHIP).all(RequestSent))) == (1, 1)


def test_another_letter_under_the_same_name_is_refused_and_not_sent(
    request_ready: dict[str, Any], program: As, inbox: Inbox
) -> None:
    assert program("ann").post(ASK, request_ready, **NAMED).status_code == 200
    said = {**request_ready, "address": "other@larkmoor.example.org"}
    other = program("ann").post(ASK, said, **NAMED)
    assert other.status_code == 409
    assert other.json()["type"].endswith("#repeated")
    elsewhere = program("ann").post(BUILD, {"language": "en"}, **NAMED)
    assert elsewhere.json()["type"].endswith("#repeated")
    assert len(inbox.taken) == 1


def test_a_name_is_a_persons_own(request_ready: dict[str, Any], program: As, inbox: Inbox) -> None:
    """Maria's program is not answered what ann's was; her request finds nothing left to ask."""
    told = program("ann").post(ASK, request_ready, **NAMED).json()
    theirs = program("maria").post(ASK, request_ready, **NAMED)
    assert theirs.status_code in {409, 422}
    assert str(told["entries"][0]["digest"]) not in theirs.content.decode()
    assert len(inbox.taken) == 1


def test_a_message_that_was_refused_may_be_sent_again_under_its_name(
    letter: dict[str, Any], program: As, inbox: Inbox
) -> None:
    inbox.refuses = letter["address"]
    assert program("ann").post(MESSAGES, letter, **NAMED).status_code == 422
    assert not Answered.objects.exists()
    inbox.refuses = ""
    assert program("ann").post(MESSAGES, letter, **NAMED).status_code == 200
    assert len(inbox.taken) == 1


def test_who_asks_while_it_is_being_done_is_told_to_wait(
    letter: dict[str, Any], program: As, inbox: Inbox, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The second request comes in while the first one's message is with the mail server."""
    hand_over, seen = mailing.send, []

    def meanwhile(message: mailing.Message) -> None:
        seen.append(program("ann").post(MESSAGES, letter, **NAMED))
        hand_over(message)

    monkeypatch.setattr(mailing, "send", meanwhile)
    assert program("ann").post(MESSAGES, letter, **NAMED).status_code == 200
    (waiting,) = seen
    assert (waiting.status_code, waiting["Retry-After"]) == (409, "5")
    assert waiting.json()["type"].endswith("#under-way")
    assert "not done twice" in waiting.json()["detail"]
    assert len(inbox.taken) == 1
    assert program("ann").post(MESSAGES, letter, **NAMED).status_code == 200
    assert (len(seen), len(inbox.taken)) == (1, 1)


def begun(ask: Callable[[], Any], ago: timedelta) -> None:
    """Leave an act's name as a machine does that stopped while, or before, its answer was kept."""
    assert ask().status_code == 200
    then = datetime.now(UTC) - ago
    assert Answered.objects.update(answer="", at=then) == 1


def test_what_a_stopped_machine_left_is_waited_for_and_then_done_again(
    book: None, program: As
) -> None:
    def ask() -> Any:
        return program("ann").post(BUILD, {"language": "fr"}, **NAMED)

    begun(ask, ABANDONED - timedelta(minutes=1))
    assert ask().json()["type"].endswith("#under-way")
    begun_at = datetime.now(UTC) - ABANDONED - timedelta(seconds=1)
    Answered.objects.update(at=begun_at)
    assert ask().status_code == 200
    assert ask().status_code == 200
    assert counted("build") == 2  # the one that was cut off, and the one that was done again
    assert len(ledger.load(FLAGSHIP).all(PackageBuilt)) == 1


def test_a_message_that_was_recorded_before_the_machine_stopped_is_not_sent_again(
    letter: dict[str, Any], program: As, inbox: Inbox
) -> None:
    def ask() -> Any:
        return program("ann").post(MESSAGES, letter, **NAMED)

    begun(ask, ABANDONED + timedelta(minutes=1))
    again = ask()
    assert again.status_code == 422
    assert "went to Priya Nathan already" in again.json()["detail"]
    assert (len(inbox.taken), len(ledger.load(FLAGSHIP).all(Delivery))) == (1, 1)


def test_a_request_that_was_recorded_before_the_machine_stopped_is_not_sent_again(
    request_ready: dict[str, Any], program: As, inbox: Inbox
) -> None:
    begun(lambda: program("ann").post(ASK, request_ready, **NAMED),
          ABANDONED + timedelta(minutes=1))  # fmt: skip
    assert program("ann").post(ASK, request_ready, **NAMED).status_code in {409, 422}
    assert len(inbox.taken) == 1


@pytest.mark.parametrize("path", ["notes", "packages"])
def test_an_answer_is_not_given_again_to_who_may_no_longer_see_it(
    path: str, book: None, program: As, people: dict[str, Person]
) -> None:
    said = {"text": "Told once.", "seen": seq()} if path == "notes" else {"language": "en"}
    first = program("ann").post(f"{FILE}/{path}", said, **NAMED)
    assert first.status_code == 200
    Grant.objects.filter(person=people["ann"]).delete()
    again = program("ann").post(f"{FILE}/{path}", said, **NAMED)
    assert again.status_code == 409
    assert "before your rights changed" in again.json()["detail"]
    assert FLAGSHIP not in again.content.decode()
    assert len(ledger.load(FLAGSHIP).all(Note)) == (path == "notes")


@pytest.mark.parametrize("name", ["", "x" * 201, "é", "a\tb"])
def test_a_name_that_cannot_be_kept_is_refused_before_anything_is_done(
    name: str, book: None, program: As
) -> None:
    answer = program("ann").post(BUILD, {"language": "en"}, **{"Idempotency-Key": name})
    assert answer.status_code == 400
    assert answer.json()["errors"][0]["where"] == "Idempotency-Key"
    assert counted("build") == 0


def test_without_a_name_nothing_is_kept(request_ready: dict[str, Any], program: As) -> None:
    assert program("ann").post(BUILD, {"language": "en"}).status_code == 200
    assert not Answered.objects.exists()
    assert len(ledger.load(FLAGSHIP).all(Decision)) == 1
