"""The acts of the year at the desk: forms, request, message, decisions, binder, check."""

from __future__ import annotations

import io
import json
from datetime import date
from typing import Any

import pytest
from django.core.files.uploadedfile import SimpleUploadedFile
from django.test import Client
from pypdf import PdfReader, PdfWriter
from tests.desk.conftest import FLAGSHIP, OTHER, PASSWORD, As
from tests.office.inbox import Inbox

from quarterday.core.file.entry import Draft, Origin
from quarterday.core.file.records import (
    Bound,
    Contact,
    Decision,
    Delivery,
    FormReturned,
    Note,
    PackageBuilt,
    PaymentChoice,
    PolicyChecked,
    RequestSent,
    Terms,
)
from quarterday.people import limits
from quarterday.people.models import Upload
from quarterday.store import ledger, originals

F = f"/files/{FLAGSHIP}/"
PAGES = ("forms", "request", "compare", "pay", "premium", "send", "decisions", "bind", "check")
NASTY = "<script>alert(1)</script>\" onload='x' & מרים 🙂 \u202etxt"


def seq() -> str:
    return str(ledger.load(FLAGSHIP).seq)


def post(browser: Client, act: str, **form: Any) -> Any:
    return browser.post(f"{F}{act}/", {"seen": seq(), **form})


def told(answer: Any) -> str:
    return str(answer.content.decode())


def state(browser: Client) -> str:
    return str(browser.get(F).context["head"]["state"])


def signed(browser: Client) -> PackageBuilt:
    """Sign and build, and return the package."""
    post(browser, "sign", read="yes")
    post(browser, "build", language="en")
    return max(ledger.load(FLAGSHIP).all(PackageBuilt), key=lambda p: p.version)


def filled(document: str, **answers: str) -> bytes:
    """Return a package with some of its fields filled in, as any program for PDF would (pypdf)."""
    writer = PdfWriter(clone_from=PdfReader(io.BytesIO(originals.get(document))))
    for page in writer.pages:
        writer.update_page_form_field_values(page, answers, auto_regenerate=False)
    out = io.BytesIO()
    writer.write(out)
    return out.getvalue()


def upload(browser: Client, data: bytes, name: str = "form.pdf") -> Any:
    return browser.post(f"{F}forms/", {"document": SimpleUploadedFile(name, data)})


# Every page


@pytest.mark.parametrize("page", PAGES)
@pytest.mark.parametrize("language", ["en", "fr"])
def test_every_page_of_the_year_opens_for_who_may_act_in_both_languages(
    page: str, language: str, book: None, signed_in: As, people: Any
) -> None:
    people["ann"].language = language
    people["ann"].save()
    answer = signed_in("ann").get(f"{F}{page}/")
    assert answer.status_code == 200
    assert f'lang="{language}-CA"' in told(answer)


@pytest.mark.parametrize("page", PAGES)
def test_a_file_of_another_office_is_not_there(page: str, book: None, signed_in: As) -> None:
    for who in ("cole", "sid"):
        browser = signed_in(who)
        assert browser.get(f"{F}{page}/").status_code == 404
        assert browser.post(f"{F}{page}/", {"seen": seq()}).status_code in {404, 405}


@pytest.mark.parametrize("page", PAGES)
def test_who_may_only_look_sees_figures_and_acts_on_nothing(
    page: str, book: None, signed_in: As
) -> None:
    browser, before = signed_in("rhea"), seq()
    open_to_all = page in {"compare", "pay", "premium"}
    assert browser.get(f"{F}{page}/").status_code == (200 if open_to_all else 403)
    assert browser.post(f"{F}{page}/", {"seen": before}).status_code in {403, 405}
    assert seq() == before


def test_a_colleague_does_not_bind(book: None, signed_in: As) -> None:
    """cole is a colleague of the other file's office."""
    browser = signed_in("cole")
    assert browser.get(f"/files/{OTHER}/request/").status_code == 200
    assert browser.get(f"/files/{OTHER}/bind/").status_code == 403
    assert "/bind/" not in told(browser.get(f"/files/{OTHER}/"))
    assert "/check/" in told(browser.get(f"/files/{OTHER}/"))


def test_looking_writes_nothing(book: None, signed_in: As) -> None:
    browser, before = signed_in("ann"), seq()
    for page in (*PAGES, "forms/by-hand/contacts-form", "request/letter/pdf"):
        browser.get(f"{F}{page}/")
    assert browser.get(f"{F}came-back/").status_code == 405
    assert seq() == before


# Forms that come home


def read(browser: Client, data: bytes, name: str = "form.pdf") -> tuple[str, Any]:
    address = upload(browser, data, name)["Location"]
    return address, browser.get(address)


def test_a_returned_form_is_read_and_its_answers_are_taken_and_refused_one_by_one(
    book: None, signed_in: As
) -> None:
    browser = signed_in("ann")
    package = signed(browser)
    form = filled(package.document, **{
        "contacts.treasurer.phone": "705-555-0188", "contacts.warden.phone": "705-555-0189",
        "contacts-form.confirmed.by": "Priya Nathan",
    })  # fmt: skip
    address, page = read(browser, form)
    rows = {row["field"]: row for one in page.context["readings"] for row in one["rows"]}
    assert {"contacts.treasurer.phone", "contacts.warden.phone"} <= set(rows)
    assert rows["contacts.treasurer.phone"]["chosen"] == "take"
    done = browser.post(address, {
        "mark": page.context["mark"], "p-contacts.treasurer.phone": "take",
        "p-contacts.warden.phone": "refuse",
    })  # fmt: skip
    assert done.status_code == 302
    file = ledger.load(FLAGSHIP)
    contacts = {c.id: c for c in file.contacts}
    assert contacts["treasurer"].phone == "705-555-0188"
    assert contacts["warden"].phone != "705-555-0189"
    returned = next(f for f in file.all(FormReturned) if f.form == "contacts-form")
    assert (returned.by, "contacts.warden.phone" in returned.refused) == ("Priya Nathan", True)
    original = browser.get(f"{F}kept/{returned.document}/")
    assert original.content == form
    assert original["Content-Disposition"].startswith("attachment; ")
    assert file.entry_of(contacts["treasurer"]).origin.way == "form"
    assert not Upload.objects.exists()


def test_all_that_is_clear_is_taken_with_one_press(book: None, signed_in: As) -> None:
    browser = signed_in("ann")
    form = filled(signed(browser).document, **{"contacts.treasurer.phone": "705-555-0188"})
    address, page = read(browser, form)
    browser.post(address, {"mark": page.context["mark"], "every": "yes"})
    treasurer = ledger.load(FLAGSHIP).get(Contact, "treasurer")
    assert treasurer is not None
    assert treasurer.phone == "705-555-0188"


def test_a_form_that_was_read_before_the_file_changed_is_read_again(
    book: None, signed_in: As
) -> None:
    ann = signed_in("ann")
    form = filled(signed(ann).document, **{"contacts.treasurer.phone": "705-555-0188"})
    address, page = read(ann, form)
    post(signed_in("maria"), "note", text="News.")
    late = ann.post(address, {"mark": page.context["mark"], "every": "yes"})
    assert late.status_code == 409
    assert "The file was changed since" in told(late)
    assert ann.post(address, {"mark": late.context["mark"], "every": "yes"}).status_code == 302


def test_the_same_press_twice_writes_once(book: None, signed_in: As) -> None:
    browser = signed_in("ann")
    form = filled(signed(browser).document, **{"contacts.treasurer.phone": "705-555-0188"})
    address, page = read(browser, form)
    chosen = {"mark": page.context["mark"], "every": "yes"}
    browser.post(address, chosen)
    before = seq()
    again = browser.post(address, chosen)
    assert (again.status_code, seq()) == (422, before)
    assert "not waiting any more" in told(again)


def test_a_form_of_another_file_is_refused_by_name(book: None, signed_in: As) -> None:
    browser = signed_in("maria")
    package = signed(browser)
    form = SimpleUploadedFile("f.pdf", filled(package.document))
    answer = browser.post(f"/files/{OTHER}/forms/", {"document": form})
    page = browser.get(answer["Location"])
    assert page.status_code == 422
    assert FLAGSHIP in told(page)


@pytest.mark.parametrize(
    ("name", "data"),
    [("form.docx", b"PK"), ("form.pdf", b""), ("form.pdf", b"%PDF-1.7 and nothing"),
     ("form.pdf", b"MZ\x90\x00"), ("form.pdf.exe", b"%PDF-1.7"), ("../../x.pdf", b"no")],
)  # fmt: skip
def test_a_document_of_the_wrong_kind_is_told_in_a_sentence(
    name: str, data: bytes, book: None, signed_in: As
) -> None:
    browser, before = signed_in("ann"), seq()
    answer = upload(browser, data, name)
    if answer.status_code == 302:
        answer = browser.get(answer["Location"])
    assert answer.status_code == 422
    assert "Traceback" not in told(answer)
    assert seq() == before


def test_a_document_that_is_too_large_is_told(book: None, signed_in: As, settings: Any) -> None:
    settings.MOST_UPLOADED = 1024
    answer = upload(signed_in("ann"), b"%PDF-1.7" + b"x" * 2000)
    assert answer.status_code == 422
    assert "larger than" in told(answer)


def test_a_form_that_was_sent_belongs_to_who_sent_it(book: None, signed_in: As) -> None:
    ann = signed_in("ann")
    address = upload(ann, filled(signed(ann).document))["Location"]
    assert signed_in("maria").get(address).status_code == 422


def test_a_form_on_paper_is_typed_in_and_names_who_typed(book: None, signed_in: As) -> None:
    browser = signed_in("ann")
    address = f"{F}forms/by-hand/contacts-form/"
    empty = browser.get(address)
    assert "<h1>Type in a form: contacts and authorised people</h1>" in told(empty)
    asked = {one.name: text for one, text in empty.context["questions"]}
    answers = {**asked, "contacts.treasurer.phone": "705-555-0188", "step": "read"}
    page = browser.post(address, answers)
    assert page.status_code == 200
    back = browser.post(address, {**answers, "again": "yes"})
    said = {one.name: text for one, text in back.context["questions"]}
    assert said["contacts.treasurer.phone"] == "705-555-0188"
    done = browser.post(address, {**page.context["typed"], "step": "accept", "every": "yes",
                                  "mark": page.context["mark"]})  # fmt: skip
    assert done.status_code == 302
    treasurer = ledger.load(FLAGSHIP).get(Contact, "treasurer")
    assert treasurer is not None
    assert treasurer.phone == "705-555-0188"
    assert ledger.load(FLAGSHIP).entry_of(treasurer).origin.person.startswith("Ann <")


def test_an_unknown_form_is_not_there(book: None, signed_in: As) -> None:
    assert signed_in("ann").get(f"{F}forms/by-hand/no-such-form/").status_code == 404


# The request to the insurer


def test_what_was_changed_is_asked_of_the_insurer_and_recorded_once(
    book: None, signed_in: As
) -> None:
    browser = signed_in("ann")
    nothing = browser.get(f"{F}request/")
    assert nothing.context["nothing"]
    decide(browser, "option/by-laws/*")
    page = browser.get(f"{F}request/")
    assert len(page.context["prepared"].moved) == 1
    assert browser.get(f"{F}request/letter/pdf/").content.startswith(b"%PDF-")
    assert json.loads(browser.get(f"{F}request/letter/json/").content)["changes"]
    assert browser.get(f"{F}request/letter/exe/").status_code == 404
    sent = {"seen": str(page.context["prepared"].seq), "language": "en"}
    assert browser.post(f"{F}request/", sent).status_code == 302
    (record,) = ledger.load(FLAGSHIP).all(RequestSent)
    assert (record.number, record.changes) == (1, 1)
    assert browser.get(f"{F}kept/{record.document}/").content.startswith(b"%PDF-")
    again = browser.post(f"{F}request/", sent)  # the back button, and once more
    assert again.status_code == 422
    assert len(ledger.load(FLAGSHIP).all(RequestSent)) == 1


def test_a_request_that_would_ask_for_more_now_is_read_again(book: None, signed_in: As) -> None:
    ann = signed_in("ann")
    decide(ann, "option/by-laws/*")
    before = seq()
    decide(signed_in("maria"), "option/overland-flood/*")
    late = ann.post(f"{F}request/", {"seen": before})
    assert late.status_code == 409
    assert ledger.load(FLAGSHIP).all(RequestSent) == ()


def test_a_letter_of_another_file_is_not_downloaded_by_its_digest(
    book: None, signed_in: As
) -> None:
    browser = signed_in("maria")
    decide(browser, "option/by-laws/*")
    post(browser, "request")
    (record,) = ledger.load(FLAGSHIP).all(RequestSent)
    assert browser.get(f"/files/{OTHER}/kept/{record.document}/").status_code == 404
    assert browser.get(f"{F}kept/{'0' * 64}/").status_code == 404


# The message


LETTER = {"to": "Priya Nathan", "address": "priya@st-ebba.example.org", "subject": "Your renewal",
          "message": "Dear Priya,\n\nhere it is.", "language": "en"}  # fmt: skip


def test_a_package_is_sent_and_the_state_moves_on(
    book: None,
    signed_in: As,
    inbox: Inbox,
) -> None:
    browser = signed_in("ann")
    signed(browser)
    page = browser.get(f"{F}send/?to=treasurer")
    assert page.context["letter"].to == "Priya Nathan"
    assert post(browser, "send", **LETTER).status_code == 302
    assert inbox.taken[0]["Subject"] == "Your renewal"
    (sent,) = ledger.load(FLAGSHIP).all(Delivery)
    assert (sent.to, sent.delivered_on) == ("Priya Nathan", date(2026, 11, 25))
    assert state(browser) == "with leaders"
    back = post(browser, "came-back", key=sent.key, why="550 no such user", on="2026-11-25")
    assert back.status_code == 302
    assert state(browser) == "offered"


def test_what_a_browser_sends_of_several_lines_is_kept_as_lines(
    book: None,
    signed_in: As,
    inbox: Inbox,
) -> None:
    """A text area is sent with CR LF between its lines (HTML Standard, form submission)."""
    browser = signed_in("ann")
    assert decide(browser, "option/by-laws/*", words="Carried.\r\nSix to one.").status_code == 302
    assert post(browser, "note", text="One.\r\nTwo.").status_code == 302
    signed(browser)
    assert post(browser, "send", **{**LETTER, "message": "Dear\r\n\r\nPriya"}).status_code == 302
    file = ledger.load(FLAGSHIP)
    assert [d.words for d in file.all(Decision)] == ["Carried.\nSix to one."]
    assert [n.text for n in file.all(Note)] == ["One.\nTwo."]
    assert [d.message for d in file.all(Delivery)] == ["Dear\n\nPriya"]


def test_a_binder_typed_when_the_session_ran_out_comes_back_after_signing_in(
    book: None, signed_in: As
) -> None:
    browser = signed_in("ann")
    whose = browser.get(f"{F}bind/").context["who_mark"]
    browser.post("/sign-out/")
    late = browser.post(f"{F}bind/", {**BINDER, "seen": "1", "_who": whose})
    assert late["Location"].startswith("/sign-in/")
    assert ledger.load(FLAGSHIP).all(Bound) == ()
    browser.post("/sign-in/", {"email": "ann@holliswren.example.org", "password": PASSWORD})
    page = browser.get("/kept/")
    fields = dict(page.context["fields"])
    assert (fields["by"], fields["accepted"]) == ("Ines Marlow", "option/by-laws/*")


@pytest.mark.parametrize(
    "change", [{"address": "nobody"}, {"subject": " "}, {"message": ""}, {"to": ""}]
)
def test_a_message_that_is_not_whole_comes_back_as_it_was_typed(
    change: dict[str, str],
    book: None,
    signed_in: As,
    inbox: Inbox,
) -> None:
    browser = signed_in("ann")
    signed(browser)
    answer = post(browser, "send", **{**LETTER, "message": "A long letter.", **change})
    assert answer.status_code == 422
    kept = "here" if change.get("message") == "" else "A long letter."
    assert change.get("message") == "" or kept in told(answer)
    assert inbox.taken == []
    assert ledger.load(FLAGSHIP).all(Delivery) == ()


def test_a_bounce_is_told_and_the_letter_is_not_lost(
    book: None,
    signed_in: As,
    inbox: Inbox,
) -> None:
    browser = signed_in("ann")
    signed(browser)
    inbox.refuses = LETTER["address"]
    answer = post(browser, "send", **LETTER)
    assert answer.status_code == 422
    assert "no such mailbox here" in told(answer)
    assert "here it is." in told(answer)
    assert state(browser) == "offered"


def test_without_a_signature_nothing_is_sent(
    book: None,
    signed_in: As,
    inbox: Inbox,
) -> None:
    browser = signed_in("ann")
    post(browser, "build", language="en")
    assert "no licensed person" in told(browser.get(f"{F}send/"))
    assert post(browser, "send", **LETTER).status_code == 422
    assert inbox.taken == []


def test_a_message_posted_twice_goes_out_once(
    book: None,
    signed_in: As,
    inbox: Inbox,
) -> None:
    browser = signed_in("ann")
    signed(browser)
    before = seq()
    browser.post(f"{F}send/", {**LETTER, "seen": before})
    again = browser.post(f"{F}send/", {**LETTER, "seen": before})
    assert (again.status_code, len(inbox.taken)) == (422, 1)
    assert "It was not sent again" in told(again)


def test_messages_are_not_sent_without_end(
    book: None,
    signed_in: As,
    inbox: Inbox,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setitem(limits.LIMITS, "send", limits.Limit(0, limits.HOUR))
    browser = signed_in("ann")
    answer = post(browser, "send", **LETTER)
    assert (answer.status_code, inbox.taken) == (422, [])
    assert "Wait a while" in told(answer)


def test_a_delivery_by_hand_that_is_recorded_twice_is_one_entry(book: None, signed_in: As) -> None:
    browser = signed_in("ann")
    signed(browser)
    before = int(seq())
    form = {"to": "Harriet Boone", "way": "by hand", "language": "en", "on": "2026-11-25"}
    for _ in range(2):
        assert post(browser, "deliver", **form).status_code == 302
    assert int(seq()) == before + 1


# Decisions and payment


def decide(browser: Client, question: str, answer: str = "take-it", **more: str) -> Any:
    return post(browser, "decide", question=question, answer=answer, by="The board",
                on="2026-11-24", **{"words": "", "from": "decisions", **more})  # fmt: skip


def test_an_option_is_decided_where_every_question_stands(book: None, signed_in: As) -> None:
    browser = signed_in("ann")
    ids = {q["id"] for q in browser.get(f"{F}decisions/").context["questions"]}
    assert {"option/by-laws/*", "option/overland-flood/*"} <= ids
    done = decide(browser, "option/by-laws/*", words="Carried.")
    assert done["Location"].startswith(f"{F}decisions/#f-option-by-laws")
    (made,) = ledger.load(FLAGSHIP).all(Decision)
    assert (made.question, made.words) == ("option/by-laws/*", "Carried.")
    assert state(browser) == "settling"


@pytest.mark.parametrize(("plan", "status"), [("at-once", 302), ("three-cheques", 302), ("x", 422)])
def test_a_plan_is_chosen_from_those_there_are(
    plan: str, status: int, book: None, signed_in: As
) -> None:
    browser = signed_in("ann")
    form = {"plan": plan, "by": "Treasurer", "on": "2026-11-24", "from": "decisions"}
    assert post(browser, "payment", **form).status_code == status
    assert len(ledger.load(FLAGSHIP).all(PaymentChoice)) == (status == 302)
    assert browser.get(f"{F}decisions/").status_code == 200


def test_the_same_decision_sent_twice_is_one_entry(book: None, signed_in: As) -> None:
    browser, before = signed_in("ann"), seq()
    for _ in range(2):
        assert decide(browser, "option/by-laws/*", seen=before).status_code == 302
    assert int(seq()) == int(before) + 1


# Bind and check


BINDER = {"by": "Ines Marlow", "binder": "B-77", "on": "2026-11-25", "words": "By telephone.",
          "accepted": ["option/by-laws/*"]}  # fmt: skip


def test_what_the_leaders_took_is_ticked_and_what_was_agreed_is_bound(
    book: None, signed_in: As
) -> None:
    browser = signed_in("ann")
    decide(browser, "option/by-laws/*")
    page = browser.get(f"{F}bind/")
    assert [row["wish"].id for row in page.context["wishes"] if row["chosen"]] == [
        "option/by-laws/*"
    ]  # fmt: skip
    assert post(browser, "bind", **BINDER).status_code == 302
    (bound,) = ledger.load(FLAGSHIP).all(Bound)
    assert (bound.by, bound.accepted) == ("Ines Marlow", ("option/by-laws/*",))
    assert state(browser) == "bound"
    said = told(browser.get(f"{F}bind/"))
    assert "Ines Marlow" in said
    assert "Binder B-77. In their words: &quot;By telephone.&quot;" in said
    assert "Recorded by Ann" in said


@pytest.mark.parametrize(
    "change", [{"by": " "}, {"on": "2026-11-26"}, {"on": "soon"}, {"accepted": ["option/x/*"]}]
)
def test_a_binder_that_is_not_whole_comes_back_as_it_was_typed(
    change: dict[str, Any], book: None, signed_in: As
) -> None:
    browser = signed_in("ann")
    answer = post(browser, "bind", **{**BINDER, **change})
    assert answer.status_code == 422
    assert "By telephone." in told(answer)
    assert ledger.load(FLAGSHIP).all(Bound) == ()


def test_two_people_who_bind_at_once_are_shown_each_other(book: None, signed_in: As) -> None:
    ann, maria, before = signed_in("ann"), signed_in("maria"), seq()
    assert maria.post(f"{F}bind/", {**BINDER, "seen": before}).status_code == 302
    assert maria.post(f"{F}bind/", {**BINDER, "seen": before}).status_code == 302  # twice: the same
    late = ann.post(f"{F}bind/", {**BINDER, "by": "Somebody else", "seen": before})
    assert late.status_code == 409
    assert "Somebody else" in told(late)
    assert [b.by for b in ledger.load(FLAGSHIP).all(Bound)] == ["Ines Marlow"]


def issue(browser: Client, **changes: Any) -> None:
    (bound,) = ledger.load(FLAGSHIP).all(Bound)
    made = bound.agreed.model_copy(update={"stage": "issued", "options": (), **changes})
    draft = Draft("load", Terms.kind, made.key, made.body(), Origin(way="workbook", name="p.xlsx"))
    ledger.append(FLAGSHIP, [draft], by="ann", expected_seq=None)


def test_the_policy_is_held_to_the_binder_and_the_check_is_recorded(
    book: None, signed_in: As
) -> None:
    browser = signed_in("ann")
    assert "Load the terms that were issued first" in told(browser.get(f"{F}check/"))
    post(browser, "bind", **BINDER)
    offered = ledger.load(FLAGSHIP).terms(date(2027, 1, 15), "offered")
    assert offered is not None
    issue(browser, coverages=offered.coverages, policy_number="LM-20417")
    page = browser.get(f"{F}check/")
    assert [row["direction"] for row in page.context["rows"]] == ["worse"]
    silent = post(browser, "check", on="2026-11-25", words=" ")
    assert (silent.status_code, "on one point" in told(silent)) == (422, True)
    stale = browser.post(f"{F}check/", {"seen": "1", "on": "2026-11-25", "words": "Asked."})
    assert (stale.status_code, "Asked." in told(stale)) == (422, True)
    assert post(browser, "check", on="2026-11-25", words="Asked.").status_code == 302
    (record,) = ledger.load(FLAGSHIP).all(PolicyChecked)
    assert (record.differences, record.done_about) == (1, "Asked.")
    assert "Asked." in told(browser.get(f"{F}check/"))


# Terms, losses, premium


@pytest.mark.parametrize("query", ["", "?before=offered&after=expiring", "?before=x&after=%00"])
def test_two_versions_are_compared_by_clauses_losses_and_own_claims(
    query: str, book: None, signed_in: As
) -> None:
    page = signed_in("rhea").get(f"{F}compare/{query}")
    assert page.status_code == 200
    assert page.context["losses"]
    assert page.context["past"]
    sewer = [d for d in page.context["differences"] if "ewer backup" in told(page)]
    assert sewer


def test_a_loss_is_walked_through_under_every_version(book: None, signed_in: As) -> None:
    """The offer cut sewer backup to a quarter of the expiring limit (the demo's own story)."""
    page = signed_in("rhea").get(f"{F}pay/?loss=basement-backup")
    assert [one["version"] for one in page.context["paid"]] == ["expiring", "offered"]
    paid = {one["version"]: one["done"].paid.money.amount for one in page.context["paid"]}
    assert paid["offered"] == 25_000 < paid["expiring"]
    done = page.context["steps"]["done"]
    assert done.paid.money + done.borne.money == done.total.money
    assert "step" in told(page).lower()


@pytest.mark.parametrize(
    ("query", "fault"),
    [("amount.building=100000", False), ("amount.building=1,234.5.6", True),
     ("amount.building=abc", True), ("amount.nothing=5", False), ("cause=no-such", False),
     ("place=no-such", False), ("component=money&new=900", False), ("amount.building=-5", True),
     ("amount.building=" + "9" * 60, True)],
)  # fmt: skip
def test_a_loss_is_changed_in_the_address_and_a_bad_amount_is_told(
    query: str, fault: bool, book: None, signed_in: As
) -> None:
    browser, before = signed_in("rhea"), seq()
    page = browser.get(f"{F}pay/?loss=total-fire&terms=offered&{query}")
    assert page.status_code == 200
    failed = bool(page.context["faults"] or page.context["steps"].get("why"))
    if fault:
        assert failed
    assert seq() == before


def test_the_premium_page_divides_by_the_key_that_is_asked_for(book: None, signed_in: As) -> None:
    browser = signed_in("rhea")
    page = browser.get(f"{F}premium/?key=ministries")
    made = page.context["made"]
    assert sum(made.allocation.totals.values()) == made.table.total.amount
    assert "Youth drop-in" in told(page)
    assert f'href="{F}why/?figure=' in page.content.decode()
    strange = browser.get(f"{F}premium/?key=no-such")
    assert strange.status_code == 200
    assert strange.context["refused"]


# Hostile words


@pytest.mark.parametrize("text", [NASTY, "x" * 10_000, "%' OR 1=1 --", "{{ 7*7 }}", "\x00bad"])
def test_no_field_of_an_act_is_believed(
    text: str,
    book: None,
    signed_in: As,
    inbox: Inbox,
) -> None:
    """What people type comes back escaped, or is refused in a sentence; never a failure."""
    browser = signed_in("ann")
    signed(browser)
    answers = [
        decide(browser, "option/by-laws/*", words=text),
        decide(browser, text),
        post(browser, "payment", plan=text, by=text, on="2026-11-24"),
        post(browser, "bind", **{**BINDER, "by": text[:300], "words": text, "binder": text}),
        post(browser, "check", on=text, words=text),
        post(browser, "send", **{**LETTER, "to": text, "subject": text, "message": text}),
        post(browser, "came-back", key=text, why=text, on="2026-11-25"),
        browser.get(f"{F}pay/", {"loss": text, "cause": text, "place": text, "terms": text}),
        browser.get(f"{F}premium/", {"key": text, "terms": text}),
        browser.get(f"{F}compare/", {"before": text, "after": text}),
    ]
    for answer in [*answers, *(browser.get(f"{F}{page}/") for page in PAGES)]:
        assert answer.status_code in {200, 302, 409, 422}
        assert "<script>alert" not in told(answer)
