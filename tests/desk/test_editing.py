"""Editing facts where they stand: strict readers, nothing lost, two people on one file."""

from __future__ import annotations

from decimal import Decimal
from typing import Any

import pytest
from django.test import Client
from tests.desk.conftest import FLAGSHIP, As

from quarterday.catalogue.load import reference
from quarterday.catalogue.speech import Speech
from quarterday.core.file.layout import SHEETS
from quarterday.core.file.records import Building, Claim, Contact, Note, Record, Terms
from quarterday.core.words import Term
from quarterday.invent.demo.book import demo_book
from quarterday.office import forms
from quarterday.store import ledger

F = f"/files/{FLAGSHIP}/"
HALL = f"{F}edit/?kind=building&key=hall"
EVERY_RECORD = [r for account in demo_book() for r in account.records if forms.sheet_of(r.kind)]


def form_of(browser: Client, address: str, **changed: str) -> dict[str, str]:
    """Return the form of a page as a browser would send it, some fields changed."""
    context = browser.get(address).context
    said = {field.name: field.text for field in context["fields"]}
    return {**said, "seen": str(context["seen"]), **changed}


def hall() -> Building:
    found = ledger.load(FLAGSHIP).get(Building, "hall")
    assert found is not None
    return found


@pytest.mark.parametrize("language", ["en", "fr"])
def test_every_record_of_the_demo_reads_back_from_its_form_as_it_was(language: str) -> None:
    """1,000 or so records of every kind: what a form shows is what it means."""
    changed = []
    for record in EVERY_RECORD:
        sheet = forms.sheet_of(record.kind)
        assert sheet is not None
        typed = forms.typed(sheet, forms.texts(record, sheet, language), language, record)
        if typed.record != record:
            changed.append(
                (record.kind, record.key, {n: str(f.what) for n, f in typed.faults.items()})
            )
    assert len(EVERY_RECORD) > 500
    assert changed == []


@pytest.mark.parametrize("language", ["en", "fr"])
def test_every_line_of_every_terms_reads_back_as_it_was(language: str) -> None:
    sheets = [sheet for sheet in SHEETS if sheet.part]
    count = 0
    for terms in (r for r in EVERY_RECORD if isinstance(r, Terms)):
        for sheet in sheets:
            for number, line in enumerate(forms.part_of(terms, sheet)):
                said = forms.texts(line, sheet, language)
                assert forms.typed_part(terms, sheet, number, said, language).record == terms
                count += 1
    assert count > 1000


def test_a_fact_that_was_edited_is_an_entry_with_its_author(book: None, signed_in: As) -> None:
    browser = signed_in("ann")
    answer = browser.post(HALL, form_of(browser, HALL, year_built="1931"))
    assert answer.status_code == 302
    assert answer["Location"] == f"{F}#buildings"
    assert hall().year_built == 1931
    entry = ledger.entries(FLAGSHIP)[-1]
    assert (entry.act, entry.kind, entry.key) == ("edit", "building", "hall")
    assert entry.by == "Ann <ann@holliswren.example.org>"
    assert entry.origin.way == "person"


def test_saving_without_a_change_writes_nothing(book: None, signed_in: As) -> None:
    browser, before = signed_in("ann"), len(ledger.entries(FLAGSHIP))
    assert browser.post(HALL, form_of(browser, HALL)).status_code == 302
    assert len(ledger.entries(FLAGSHIP)) == before


def test_sending_a_form_twice_writes_it_once(book: None, signed_in: As) -> None:
    browser, before = signed_in("ann"), len(ledger.entries(FLAGSHIP))
    form = form_of(browser, HALL, year_built="1931")
    assert [browser.post(HALL, form).status_code for _ in range(2)] == [302, 302]
    assert len(ledger.entries(FLAGSHIP)) == before + 1


@pytest.mark.parametrize(
    ("field", "text", "says"),
    [
        ("year_built", "19311", "The highest"),
        ("year_built", "soon", "number"),
        ("area_m2", "1,23,4", "number"),
        ("province", "", ""),
        ("roof_year", "20x4", "number"),
        ("sprinklers", "perhaps", "yes"),
        ("unoccupied_since", "2026-02-30", "date"),
        ("construction", "cheese", "not one of"),
        ("name", "", "required"),
    ],
)
def test_what_cannot_be_read_is_told_at_its_field_and_nothing_typed_is_lost(
    field: str, text: str, says: str, book: None, signed_in: As
) -> None:
    browser, before = signed_in("ann"), len(ledger.entries(FLAGSHIP))
    answer = browser.post(HALL, form_of(browser, HALL, **{field: text, "use": "dances, lunches"}))
    if not says:  # a field that may be left empty
        assert answer.status_code == 302
        return
    assert answer.status_code == 422
    shown = {one.name: one for one in answer.context["fields"]}
    assert shown[field].fault is not None
    assert shown[field].text == text
    assert shown["use"].text == "dances, lunches"
    assert len(ledger.entries(FLAGSHIP)) == before


@pytest.mark.parametrize(
    ("language", "text", "amount"),
    [
        ("en", "1,234.56", "1234.56"),
        ("en", "$1,234", "1234.00"),
        ("en", "1 234,56", None),
        ("fr", "1 234,56 $", "1234.56"),
        ("fr", "1 234,56", "1234.56"),
        ("fr", "1,234", None),
        ("fr", "1234.56", "1234.56"),
    ],
)
def test_amounts_are_read_as_canadians_write_them_and_never_guessed(
    language: str, text: str, amount: str | None
) -> None:
    """1,234 in a French form could be 1.234 or 1234: it is refused (common practice, no source)."""
    sheet = forms.sheet_of("claim")
    assert sheet is not None
    said = {"number": "C-1", "cause": "fire", "date_of_loss": "2026-01-02", "paid": text}
    typed = forms.typed(sheet, said, language)
    if amount is None and typed.record is None:
        assert "paid" in typed.faults
        return
    assert isinstance(typed.record, Claim)
    assert typed.record.paid == Decimal(amount or "1234.56")


def test_two_people_on_one_record_lose_nothing(book: None, signed_in: As) -> None:
    ann, maria = signed_in("ann"), signed_in("maria")
    mine, theirs = form_of(ann, HALL, year_built="1931"), form_of(maria, HALL, year_built="1932")
    assert maria.post(HALL, theirs).status_code == 302
    answer = ann.post(HALL, mine)
    assert answer.status_code == 409
    assert hall().year_built == 1932
    page = answer.content.decode()
    assert "Maria &lt;maria@holliswren.example.org&gt;" in page
    (clash,) = answer.context["clashes"]
    assert [(f["name"], f["theirs"], f["mine"]) for f in clash["fields"]] == [
        ("Year built", "1932", "1931")
    ]
    again = {field.name: field.text for field in answer.context["fields"]}
    assert again["year_built"] == "1931"
    saved = ann.post(HALL, {**again, "seen": str(answer.context["seen"])})
    assert saved.status_code == 302
    assert hall().year_built == 1931


def test_edits_of_different_records_stand_beside_each_other(book: None, signed_in: As) -> None:
    ann, maria = signed_in("ann"), signed_in("maria")
    church = f"{F}edit/?kind=building&key=church"
    mine, theirs = form_of(ann, HALL, year_built="1931"), form_of(maria, church, storeys="2")
    assert [maria.post(church, theirs).status_code, ann.post(HALL, mine).status_code] == [302, 302]


def test_a_record_is_added_and_a_second_one_with_its_id_is_refused(
    book: None, signed_in: As
) -> None:
    browser, address = signed_in("ann"), f"{F}edit/?kind=contact"
    form = form_of(browser, address, id="vera", name="Vera Lind", role="secretary")
    assert browser.post(address, form).status_code == 302
    assert ledger.load(FLAGSHIP).get(Contact, "vera") is not None
    assert browser.post(address, {**form, "name": "Another"}).status_code == 422


def test_a_record_cannot_slip_under_another_key(book: None, signed_in: As) -> None:
    browser = signed_in("ann")
    assert browser.post(HALL, form_of(browser, HALL, id="church")).status_code == 422


def test_a_record_taken_back_stays_in_the_history(book: None, signed_in: As) -> None:
    browser = signed_in("ann")
    seen = str(browser.get(HALL).context["seen"])
    answer = browser.post(f"{F}withdraw/?kind=building&key=hall", {"seen": seen})
    assert answer.status_code == 302
    assert ledger.load(FLAGSHIP).get(Building, "hall") is None
    assert "taken back" in browser.get(f"{F}history/").content.decode()


def test_a_coverage_of_the_offer_is_edited_added_and_taken_out(book: None, signed_in: As) -> None:
    browser = signed_in("ann")
    query = "part=coverages&key=2027-01-15/offered"
    first = f"{F}terms/?{query}&line=0"

    def offered() -> Terms:
        return next(t for t in ledger.load(FLAGSHIP).all(Terms) if t.stage == "offered")

    before = offered().coverages
    named = Speech(reference(), "en").say(Term("coverage", before[0].coverage))
    title = f"coverage {named}, terms offered, from January 15, 2027"
    assert (
        f'<h1>Edit: {title} <span class="id">{FLAGSHIP}</span></h1>'
        in browser.get(first).content.decode()
    )
    assert browser.post(first, form_of(browser, first, limit="1,000,000")).status_code == 302
    assert offered().coverages[0].limit == Decimal("1000000.00")
    assert offered().coverages[1:] == before[1:]
    new = f"{F}terms/?{query}"
    assert "<h1>New: coverage, terms offered, from" in browser.get(new).content.decode()
    form = form_of(browser, new, coverage="earthquake", limit="5000")
    assert browser.post(new, form).status_code == 302
    assert offered().coverages[-1].coverage == "earthquake"
    seen = str(ledger.load(FLAGSHIP).seq)
    last = f"{F}terms/remove/?{query}&line={len(before)}"
    assert browser.post(last, {"seen": seen}).status_code == 302
    assert len(offered().coverages) == len(before)
    assert browser.get(f"{F}terms/?{query}&line=9999").status_code == 404


HOSTILE = [
    '<script>alert("x")</script>',
    '"><img src=x onerror=alert(1)>',
    "{{ request.person.password }} {% csrf_token %}",
    "' OR 1=1; --",
    "\u202eevil\u202c שלום 🙏🏽",
    "é" * 300,
]


@pytest.mark.parametrize("text", HOSTILE)
def test_hostile_text_is_kept_as_text_in_every_field_and_shown_as_text(
    text: str, book: None, signed_in: As
) -> None:
    browser = signed_in("ann")
    for kind, key in (("building", "hall"), ("organisation", ""), ("contact", None)):
        address = f"{F}edit/?kind={kind}" + ("" if key is None else f"&key={key}")
        page = browser.get(address).context
        form = {f.name: f.text for f in page["fields"]}
        plain = [f.name for f in page["fields"]
                 if f.column.kind == "text" and not f.is_fixed and f.column.refers == ""
                 and f.name not in {"office", "registration_number", "id"}]  # fmt: skip
        form |= dict.fromkeys(plain, text) | {"seen": str(page["seen"])}
        form |= {"id": "odd"} if key is None else {}
        answer = browser.post(address, form)
        assert answer.status_code == 302, [
            (f.name, f.fault.what) for f in answer.context["fields"] if f.fault
        ]
    browser.post(f"{F}note/", {"text": text, "seen": "1"})
    for page_address in ("/?from=&until=", "/diary/", F, f"{F}history/", HALL):
        answer = browser.get(page_address)
        assert answer.status_code == 200
        shown = answer.content.decode()
        assert "<script>alert" not in shown
        assert "<img src=x" not in shown
        assert "argon2" not in shown
    assert ledger.load(FLAGSHIP).all(Note)[-1].text.startswith(text[:20].strip())


@pytest.mark.parametrize("text", ["x" * 10_001, "x" * 300_000, "\x00", "a\x01b"])
def test_text_that_cannot_be_kept_is_refused_in_a_sentence(
    text: str, book: None, signed_in: As
) -> None:
    browser = signed_in("ann")
    answer = browser.post(HALL, form_of(browser, HALL, name=text))
    assert answer.status_code in {400, 422}
    assert hall().name == "Parish hall"


def test_every_kind_of_record_has_a_form_with_a_label_for_each_field(
    book: None, signed_in: As
) -> None:
    browser, kinds = signed_in("ann"), {sheet.record.kind for sheet in SHEETS}
    for kind in kinds:
        page = browser.get(f"{F}edit/?kind={kind}")
        assert page.status_code == 200, kind
        shown = page.content.decode()
        for field in page.context["fields"]:
            assert f'for="f-{field.name}"' in shown


@pytest.mark.parametrize(
    "query", ["kind=decision", "kind=redaction&key=1", "kind=", "kind=building&key=none", ""]
)
def test_what_has_no_form_has_no_page(query: str, book: None, signed_in: As) -> None:
    assert signed_in("ann").get(f"{F}edit/?{query}").status_code == 404


def test_a_choice_that_is_not_in_the_list_any_more_is_still_shown(book: None) -> None:
    file, sheet = ledger.load(FLAGSHIP), forms.sheet_of("claim")
    assert sheet is not None
    fields = forms.fields(sheet, {"location": "gone"}, file, reference())
    location: Any = next(field for field in fields if field.name == "location")
    assert location.is_other


def test_the_records_of_a_form_are_whole_records() -> None:
    """The form knows every field of the record: none is lost by saving it."""
    for sheet in SHEETS:
        if sheet.part is None:
            left = set(sheet.record.model_fields) - {c.field for c in forms.columns(sheet)}
            assert left <= {"coverages", "premiums", "totals", "options", "shared_limit"}
            assert issubclass(sheet.record, Record)
