"""The acts on a file's page: decisions, findings set aside, signature, package, delivery."""

from __future__ import annotations

from datetime import date
from html import unescape
from typing import Any

import pytest
from django.test import Client
from tests.desk.conftest import FLAGSHIP, As

from quarterday.core.file.records import (
    Decision,
    Delivery,
    EvidenceSent,
    FindingSetAside,
    Note,
    PackageBuilt,
    PaymentChoice,
    ReviewSigned,
)
from quarterday.people import limits
from quarterday.people.models import Person
from quarterday.store import ledger

F = f"/files/{FLAGSHIP}/"


def seq() -> str:
    return str(ledger.load(FLAGSHIP).seq)


def post(browser: Client, act: str, **form: str) -> Any:
    return browser.post(f"{F}{act}/", {"seen": seq(), **form})


def first(browser: Client, kind: str) -> str:
    """Return the id of the first finding of a kind."""
    found = browser.get(F).context["findings"]
    return next(str(row["finding"].id) for row in found if row["finding"].kind == kind)


def told(answer: Any) -> str:
    return str(answer.content.decode())


def test_a_finding_is_set_aside_with_its_reason_and_taken_up_again(
    book: None, signed_in: As
) -> None:
    browser = signed_in("ann")
    finding = first(browser, "decide")
    assert (
        post(browser, "set-aside", finding=finding, reason="Asked and refused.").status_code == 302
    )
    page = browser.get(F)
    assert "Set aside: Asked and refused." in told(page)
    assert finding not in [row["finding"].id for row in page.context["findings"]]
    (aside,) = ledger.load(FLAGSHIP).all(FindingSetAside)
    assert aside.finding == finding
    assert post(browser, "take-up", finding=finding).status_code == 302
    assert ledger.load(FLAGSHIP).all(FindingSetAside) == ()


@pytest.mark.parametrize(("finding", "reason"), [("", "x"), ("no.such@rule", "x")])
def test_a_finding_that_is_not_there_cannot_be_set_aside(
    finding: str, reason: str, book: None, signed_in: As
) -> None:
    answer = post(signed_in("ann"), "set-aside", finding=finding, reason=reason)
    assert answer.status_code == 422
    assert "Load the page again" in told(answer)


def test_setting_aside_needs_a_reason_and_what_was_typed_is_shown(
    book: None, signed_in: As
) -> None:
    browser = signed_in("ann")
    answer = post(browser, "set-aside", finding=first(browser, "decide"), reason="  ")
    assert answer.status_code == 422
    assert ledger.load(FLAGSHIP).all(FindingSetAside) == ()


def test_a_decision_of_the_leaders_is_recorded_in_their_words(book: None, signed_in: As) -> None:
    browser = signed_in("ann")
    question = first(browser, "decide")
    answer = post(browser, "decide", question=question, answer="take-it", by="Board, by the chair",
                  on="2026-11-24", words="Carried, six to one.")  # fmt: skip
    assert answer.status_code == 302
    (made,) = ledger.load(FLAGSHIP).all(Decision)
    assert (made.question, made.answer, made.words) == (question, "take-it", "Carried, six to one.")
    assert "Carried, six to one." in told(browser.get(F))


@pytest.mark.parametrize(
    "change",
    [{"answer": "perhaps"}, {"by": " "}, {"on": "2026-11-26"}, {"on": "soon"}, {"question": "x"}],
)
def test_a_decision_that_is_not_whole_is_refused_and_comes_back_as_typed(
    change: dict[str, str], book: None, signed_in: As
) -> None:
    browser = signed_in("ann")
    form = {"question": first(browser, "decide"), "answer": "take-it", "by": "Board",
            "on": "2026-11-24", "words": "A long sentence they said."}  # fmt: skip
    answer = post(browser, "decide", **{**form, **change})
    assert answer.status_code == 422
    assert "A long sentence they said." in told(answer)
    assert ledger.load(FLAGSHIP).all(Decision) == ()


@pytest.mark.parametrize(
    ("language", "box", "answer"),
    [("en", '"Who said so" was left empty', "take it"), ("fr", "« Qui l'a dit »", "accepter")],
)
def test_an_empty_box_is_named_and_what_was_chosen_is_told_in_words(
    language: str, box: str, answer: str, book: None, signed_in: As
) -> None:
    """No code of ours stands on the page: the question's id is nothing that a person typed."""
    browser = signed_in("ann")
    question = first(browser, "decide")
    Person.objects.update(language=language)
    refused = post(browser, "decide", question=question, answer="take-it", by=" ", on="2026-11-24")
    page = unescape(told(refused)).replace("\u00a0", " ")
    assert refused.status_code == 422
    assert box in page
    assert f'<dd class="pre">{answer}</dd>' in page
    assert "take-it" not in page
    assert question not in page


@pytest.mark.parametrize("strange", ["nobody-knows", "language", "\u00e9", "a" * 5000])
def test_a_choice_that_is_none_comes_back_as_it_was_sent(
    strange: str, book: None, signed_in: As
) -> None:
    browser = signed_in("ann")
    form = {"question": first(browser, "decide"), "answer": strange, "on": "2026-11-24"}
    answer = post(browser, "decide", **form, by="Board")
    assert answer.status_code == 422
    assert f'<dd class="pre">{strange}</dd>' in told(answer)


@pytest.mark.parametrize(
    ("act", "form", "box"),
    [
        ("note", {"text": " "}, "Note"),
        ("payment", {"plan": "at-once", "by": " ", "on": "2026-11-24"}, "Who said so"),
        ("deliver", {"to": " ", "way": "post", "language": "en", "on": "2026-11-24"}, "To whom"),
    ],
)
def test_every_act_names_the_box_that_was_left_empty(
    act: str, form: dict[str, str], box: str, book: None, signed_in: As
) -> None:
    answer = post(signed_in("ann"), act, **form)
    assert answer.status_code == 422
    assert f'"{box}" was left empty' in unescape(told(answer))


def test_a_second_decision_by_somebody_who_has_not_seen_the_first_is_a_conflict(
    book: None, signed_in: As
) -> None:
    ann, maria = signed_in("ann"), signed_in("maria")
    question, before = first(ann, "decide"), seq()
    form = {"question": question, "by": "Board", "on": "2026-11-24", "seen": before}
    assert maria.post(f"{F}decide/", {**form, "answer": "take-it"}).status_code == 302
    answer = ann.post(f"{F}decide/", {**form, "answer": "leave-it", "words": "Too dear."})
    assert answer.status_code == 409
    assert "Too dear." in told(answer)
    again = dict(answer.context["typed"]) | {"seen": str(answer.context["seen"])}
    assert ann.post(f"{F}decide/", again).status_code == 302
    (made,) = ledger.load(FLAGSHIP).all(Decision)
    assert made.answer == "leave-it"


def test_a_payment_choice_and_a_note_are_recorded(book: None, signed_in: As) -> None:
    browser = signed_in("ann")
    payment = {"plan": "ten-withdrawals", "by": "Treasurer", "on": "2026-11-25"}
    assert post(browser, "payment", **payment).status_code == 302
    assert post(browser, "note", text="They phoned.\nTwice.").status_code == 302
    file = ledger.load(FLAGSHIP)
    assert [choice.plan for choice in file.all(PaymentChoice)] == ["ten-withdrawals"]
    assert [note.text for note in file.all(Note)] == ["They phoned.\nTwice."]


def test_a_review_is_signed_by_who_has_read_it_and_a_later_change_ends_the_signature(
    book: None, signed_in: As
) -> None:
    browser = signed_in("ann")
    assert post(browser, "sign").status_code == 422  # not said to be read
    assert post(browser, "sign", read="yes").status_code == 302
    (signed,) = ledger.load(FLAGSHIP).all(ReviewSigned)
    assert (signed.reviewer, signed.licence) == ("Ann", "RIB-000001")
    assert browser.get(F).context["head"]["signed"] is not None
    post(browser, "note", text="Something new.")
    assert browser.get(F).context["head"]["signed"] is None


def test_a_review_that_changed_after_it_was_read_is_not_signed(book: None, signed_in: As) -> None:
    ann, before = signed_in("ann"), seq()
    post(signed_in("maria"), "note", text="News.")
    answer = ann.post(f"{F}sign/", {"read": "yes", "seen": before})
    assert answer.status_code == 409
    assert ledger.load(FLAGSHIP).all(ReviewSigned) == ()


def test_a_signed_package_is_built_downloaded_and_delivered(book: None, signed_in: As) -> None:
    browser = signed_in("ann")
    delivery = {"to": "Treasurer", "way": "e-mail", "language": "en", "on": "2026-11-25"}
    post(browser, "build", language="en")
    assert post(browser, "deliver", **delivery).status_code == 422  # a draft is not delivered
    post(browser, "sign", read="yes")
    assert post(browser, "build", language="en").status_code == 302
    built = max(ledger.load(FLAGSHIP).all(PackageBuilt), key=lambda p: p.version)
    assert built.reviewer == "Ann"
    pdf = browser.get(f"{F}papers/{built.document}/")
    assert pdf["Content-Type"] == "application/pdf"
    assert pdf["Content-Disposition"].startswith("attachment; ")
    assert pdf.content.startswith(b"%PDF-")
    assert post(browser, "deliver", **delivery).status_code == 302
    assert [sent.to for sent in ledger.load(FLAGSHIP).all(Delivery)] == ["Treasurer"]
    assert browser.get(F).context["head"]["state"] == "with leaders"


def test_a_package_of_another_file_is_not_downloaded_by_its_digest(
    book: None, signed_in: As
) -> None:
    browser = signed_in("maria")
    post(browser, "build", language="en")
    (built,) = ledger.load(FLAGSHIP).all(PackageBuilt)
    assert browser.get(f"/files/HW-1010/papers/{built.document}/").status_code == 404


def test_a_certificate_is_made_recorded_downloaded_and_made_again_for_the_same(
    book: None, signed_in: As
) -> None:
    browser = signed_in("ann")
    asked = {"holder": "", "name": "Élan School Board", "address": "3 Ferry Street",
             "purpose": "the gym", "language": "fr"}  # fmt: skip
    assert post(browser, "certify", **asked).status_code == 302
    (sent,) = ledger.load(FLAGSHIP).all(EvidenceSent)
    assert (sent.holder, sent.role, sent.sent_on) == (
        "elan-school-board", "third-party", date(2026, 11, 25)
    )  # fmt: skip
    page = browser.get(F)
    assert page.context["papers"]["holders"]["elan-school-board"][1] == "certificate"
    pdf = browser.get(f"{F}papers/{sent.document}/")
    assert "certificate-elan-school-board" in pdf["Content-Disposition"]
    assert pdf.content.startswith(b"%PDF-")
    assert post(browser, "certify", holder="elan-school-board", language="fr").status_code == 302
    assert ledger.load(FLAGSHIP).all(EvidenceSent) == (sent,)


@pytest.mark.parametrize(
    "form",
    [
        {"holder": "", "name": " ", "language": "en"},
        {"holder": "nobody", "language": "en"},
        {"holder": "", "name": "A", "language": "xx"},
        {"holder": "", "name": "x" * 301, "language": "en"},
    ],
)
def test_a_certificate_for_nobody_is_refused_in_a_sentence(
    form: dict[str, str], book: None, signed_in: As
) -> None:
    assert post(signed_in("ann"), "certify", **form).status_code == 422
    assert ledger.load(FLAGSHIP).all(EvidenceSent) == ()


def test_packages_are_not_built_without_end(
    book: None, signed_in: As, monkeypatch: pytest.MonkeyPatch
) -> None:
    limit = limits.Limit(0, limits.HOUR)
    monkeypatch.setitem(limits.LIMITS, "build", limit)
    answer = post(signed_in("ann"), "build", language="en")
    assert answer.status_code == 422
    assert ledger.load(FLAGSHIP).all(PackageBuilt) == ()


def test_nothing_is_written_by_looking(book: None, signed_in: As) -> None:
    """GET never acts: a mail scanner or a prefetch that opens every address changes nothing."""
    browser, before = signed_in("ann"), seq()
    for act in ("withdraw", "terms/remove", "set-aside", "take-up", "decide", "payment", "note",
                "sign", "build", "deliver", "certify"):  # fmt: skip
        assert browser.get(f"{F}{act}/").status_code == 405
    assert seq() == before


def test_a_form_from_another_site_is_refused(book: None, signed_in: As) -> None:
    browser = signed_in("ann")
    strict = Client(enforce_csrf_checks=True)
    strict.cookies = browser.cookies
    answer = strict.post(f"{F}note/", {"text": "x", "seen": "1"})
    assert answer.status_code == 403
    assert "nothing was written" in told(answer)
