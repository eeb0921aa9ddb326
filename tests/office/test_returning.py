"""Forms that come home: proposed beside today's facts, taken or refused, never guessed."""

from __future__ import annotations

import io
from collections.abc import Mapping
from datetime import UTC, date, datetime
from decimal import Decimal

import pytest
from pikepdf import Name, Pdf, String
from tests.intake.forms import filling
from tests.office.conftest import DAY

from quarterday.catalogue.load import reference
from quarterday.catalogue.speech import Speech
from quarterday.core.file.entry import Draft, Origin
from quarterday.core.file.page_code import PageCode
from quarterday.core.file.records import (
    Answers,
    Authority,
    Building,
    Contact,
    Decision,
    FormReturned,
    Interest,
    PackageBuilt,
    PaymentChoice,
    Record,
    Terms,
)
from quarterday.intake.forms.peek import Looked
from quarterday.intake.forms.proposal import Proposal
from quarterday.intake.forms.recognise import Flat
from quarterday.intake.forms.telling import sentence
from quarterday.invent.demo.book import HERE as DEMO_DATA
from quarterday.invent.demo.book import demo_book
from quarterday.office import accepting, form_questions, packages, returning
from quarterday.office.accepting import Kept
from quarterday.office.brand import FILE_NAME, brokerage
from quarterday.office.returning import Reading
from quarterday.office.trouble import Trouble
from quarterday.papers.parts import FORMS
from quarterday.store import ledger, originals
from quarterday.store.conflict import Conflict

EVERY = "HW-1019"  # it has all eight forms
BACK = date(2026, 12, 3)
SIGNED = {"contacts-form.confirmed.by": "Ida Brandt", "contacts-form.confirmed.on": "2026-12-01"}
Answered = Mapping[str, str]


@pytest.fixture
def every(db: None) -> str:
    """The id of a file whose package has all eight forms, its records in the store."""
    account = next(account for account in demo_book() if account.id == EVERY)
    origin = Origin(way="workbook", name="book.xlsx")
    drafts = [Draft("load", r.kind, r.key, r.body(), origin) for r in account.records]
    moment = datetime(2026, 11, 25, tzinfo=UTC)
    ledger.append(account.id, drafts, by="ann", expected_seq=0, at=moment)
    return account.id


def package(file: str, language: str = "en", *, keep: bool = True) -> bytes:
    order = packages.Order(file, language, DAY, DAY)
    composed = packages.compose(order, brokerage(DEMO_DATA / FILE_NAME))
    if keep:
        document = originals.put(composed.pdf, "package.pdf")
        record = PackageBuilt.model_validate(
            {"renewal": composed.renewal, "language": language, "version": composed.version,
             "built_on": DAY, "document": document, "seq": composed.seq}
        )  # fmt: skip
        write(file, record)
    return composed.pdf


def write(file: str, record: Record) -> None:
    draft = Draft("edit", record.kind, record.key, record.body(), Origin(way="person", person="b"))
    ledger.append(file, [draft], by="ben", expected_seq=None)


def back(
    data: bytes, answers: Answered, name: str = "form.pdf", fill: filling.Fill = filling.with_pypdf
) -> Reading:
    filled = fill(data, answers)
    found = returning.read(filled, name, reference(), BACK)
    assert isinstance(found, tuple)
    (one,) = found
    return one


def by_name(reading: Reading) -> dict[str, Proposal]:
    return {proposal.name: proposal for proposal in reading.proposals}


def take(reading: Reading, *names: str, refuse: tuple[str, ...] = ()) -> Kept:
    return accepting.accept(reading, by="ann", every=not names, take=names, refuse=refuse)


def said(reading: Reading, language: str = "en") -> list[str]:
    speech = Speech(reference(), language)
    told = [speech.say(sentence(p)) for p in reading.proposals]
    told += [speech.say(p.why) for p in reading.proposals if p.why]
    return told + [speech.say(note) for note in reading.notes]


def test_a_form_nobody_touched_proposes_nothing(every: str) -> None:
    data = package(every)
    found = returning.read(data, "form.pdf", reference(), BACK)
    assert isinstance(found, tuple)
    assert [(r.proposals, r.notes, r.proposed.filled) for r in found] == [((), (), ())]
    assert take(found[0]).entries == ()


def test_the_package_of_these_tests_has_every_form(every: str) -> None:
    stamp, asked = form_questions.sheet(ledger.load(every), "contacts-form", reference(), DAY, "en")
    assert stamp.file == every
    assert asked
    composed = packages.compose(
        packages.Order(every, "en", DAY, DAY), brokerage(DEMO_DATA / FILE_NAME)
    )
    assert set(FORMS) <= {id for id, _ in composed.enclosed}


def of_each_form(file: str) -> dict[str, str]:
    """One answer or more to each of the eight forms."""
    held = ledger.load(file)
    contact, building, interest = held.contacts[0], held.buildings[0], held.interests[0]
    questions = [form_questions.sheet(held, form, reference(), DAY, "en")[1] for form in FORMS]
    asked = {name: one for part in questions for name, one in part.items()}
    decision = next(name for name in asked if name.startswith("decisions."))
    water = next(n for n, one in asked.items() if n.startswith("water.") and one.options)
    plan = [id for id, _ in asked["payment.plan"].options][-1]
    signed = {f"{form}.confirmed.by": "Ida Brandt" for form in FORMS}
    return signed | {
        f"contacts.{contact.id}.phone": "705-555-0188",
        "operations.volunteers": "61",
        f"buildings.{building.id}.roof_year": "2025",
        water: "no",
        "abuse.written": "do",
        decision: "take-it",
        "payment.plan": plan,
        f"interests.{interest.id}.status": "paid-off",
    }


@pytest.mark.parametrize("fill", [filling.with_pypdf, filling.with_pikepdf])
def test_every_form_writes_into_the_file_with_its_origin(fill: filling.Fill, every: str) -> None:
    answers = of_each_form(every)
    reading = back(package(every), answers, fill=fill)
    assert {p.name for p in reading.proposals} >= {n for n in answers if "confirmed" not in n}
    assert {p.status for p in reading.proposals} == {"change"}, said(reading)
    kept = take(reading)
    file = ledger.load(every)
    assert file.contacts[0].phone == "705-555-0188"
    assert file.operations.volunteers == 61
    assert file.operations.confirmed_on == BACK
    assert file.buildings[0].roof_year == 2025
    assert [d.answer for d in file.all(Decision)] == ["take-it"]
    assert [d.by for d in file.all(Decision)] == ["Ida Brandt"]
    assert [p.plan for p in file.all(PaymentChoice)] == [answers["payment.plan"]]
    assert file.interests[0].status == "paid-off"
    assert file.interests[0].confirmed_on == BACK
    assert {(a.form, x.question, x.answer) for a in file.all(Answers) for x in a.answers} == {
        ("abuse-form", "written", "do"),
        ("water-form", next(n for n in answers if n.startswith("water.")).split(".")[2], "no"),
    }
    assert {f.form for f in file.all(FormReturned)} == set(FORMS)
    assert reading.looked is not None
    facts = [e for e in kept.entries if e.kind != FormReturned.kind]
    assert {e.origin.way for e in kept.entries} == {"form"}
    assert {e.origin.document for e in kept.entries} == {reading.looked.document}
    assert {p.field for e in facts for p in e.origin.places} == {p.name for p in reading.proposals}
    assert originals.get(reading.looked.document) == reading.looked.data


def test_reading_the_same_form_twice_changes_nothing(every: str) -> None:
    data = filling.with_pypdf(package(every), of_each_form(every) | {
        "contacts.new-1.name": "Edda Norby", "contacts.new-1.role": "secretary",
        "authorities.new-1.claims": "/Yes", "sums.hall.building": "",
    })  # fmt: skip
    data = filling.with_pikepdf(data, {"authorities.new-1.claims": "Yes"})
    first = returning.read(data, "form.pdf", reference(), BACK)
    assert isinstance(first, tuple)
    assert take(first[0]).entries
    before = ledger.load(every).seq
    again = returning.read(data, "form.pdf", reference(), BACK)
    assert isinstance(again, tuple)
    assert again[0].proposals == ()
    assert [note.id for note in again[0].notes] == ["returns-again"]
    assert take(again[0]).entries == ()
    assert ledger.load(every).seq == before


def test_a_new_person_comes_with_what_they_may_decide(flagship: str) -> None:
    reading = back(package(flagship), {
        "contacts.new-1.name": "Edda Norby", "contacts.new-1.role": "secretary",
        "contacts.new-1.email": "edda@example.org", "authorities.new-1.claims": "Yes", **SIGNED,
    })  # fmt: skip
    take(reading)
    file = ledger.load(flagship)
    person = file.get(Contact, "edda-norby")
    assert person is not None
    assert (person.role, person.email) == ("secretary", "edda@example.org")
    given = file.get(Authority, "edda-norby/claims")
    assert given is not None
    assert given.since == date(2026, 12, 1)


def test_what_hangs_on_a_refused_person_is_not_taken(flagship: str) -> None:
    answers = {"contacts.new-1.name": "Edda Norby", "authorities.new-1.claims": "Yes"}
    kept = take(back(package(flagship), answers), refuse=("contacts.new-1",))
    assert kept.taken == ()
    assert ledger.load(flagship).get(Authority, "edda-norby/claims") is None


def test_somebody_of_the_same_name_is_asked_about(flagship: str) -> None:
    reading = back(package(flagship), {"contacts.new-1.name": "PRIYA NATHAN",
                                       "contacts.new-1.phone": "705-555-0101"})  # fmt: skip
    (one,) = reading.proposals
    assert (one.status, one.key) == ("asks", "treasurer")


def test_a_new_person_without_a_name_is_asked_about(flagship: str) -> None:
    (one,) = back(package(flagship), {"contacts.new-1.phone": "705-555-0101"}).proposals
    assert one.status == "asks"
    assert one.edit is None


def test_who_left_and_who_may_not_decide_any_more(flagship: str) -> None:
    answers = {"contacts.warden.stays": "left", "authorities.property.claims": "", **SIGNED}
    take(back(package(flagship), answers))
    file = ledger.load(flagship)
    warden, ended = file.get(Contact, "warden"), file.get(Authority, "property/claims")
    assert warden is not None
    assert warden.left_on == date(2026, 12, 1)
    assert ended is not None
    assert (ended.since, ended.until) == (date(2024, 2, 1), date(2026, 12, 1))


UNCLEAR = {
    "buildings.hall.area_m2": "four hundred",
    "buildings.church.unoccupied_since": "03/04/2026",
    "buildings.hall.roof_year": "1066",
    "buildings.hall.special_features": "",
    "buildings.hall.storeys": "1,234.567,8",
    "sums.hall.contents": "1,5",
    "sums.hall.building": "16500000",
}


def test_what_is_unclear_is_asked_and_never_guessed(flagship: str) -> None:
    reading = back(package(flagship), UNCLEAR)
    assert {p.name: p.status for p in reading.proposals} == dict.fromkeys(UNCLEAR, "asks")
    before = ledger.load(flagship)
    assert take(reading).taken == ()
    after = ledger.load(flagship)
    assert after.buildings == before.buildings
    assert after.all(Terms) == before.all(Terms)


def test_what_was_asked_is_taken_when_a_person_names_it(flagship: str) -> None:
    reading = back(package(flagship), UNCLEAR)
    take(reading, "buildings.hall.special_features", "sums.hall.building")
    file = ledger.load(flagship)
    hall = file.get(Building, "hall")
    requested = file.terms(date(2027, 1, 15), "requested")
    assert hall is not None
    assert hall.special_features == ()
    assert requested is not None
    line = requested.find("building", "hall")
    assert line is not None
    assert line.limit == Decimal("16500000.00")


def test_what_cannot_be_read_cannot_be_taken_by_name(flagship: str) -> None:
    with pytest.raises(Trouble) as refused:
        take(back(package(flagship), UNCLEAR), "buildings.hall.area_m2")
    assert refused.value.words.id == "returns-cannot-take"


def test_a_sum_to_insure_becomes_what_is_asked_of_the_insurer(flagship: str) -> None:
    take(back(package(flagship), {"sums.hall.building": "$1,650,000"}))
    file = ledger.load(flagship)
    requested, offered = (file.terms(date(2027, 1, 15), s) for s in ("requested", "offered"))
    assert requested is not None
    assert offered is not None
    changed = {
        (new.place, old.limit, new.limit)
        for new, old in zip(requested.coverages, offered.coverages, strict=True) if new != old
    }  # fmt: skip
    assert changed == {(("building", "hall"), Decimal(1423000), Decimal(1650000))}
    assert requested.premiums == ()


def test_a_fact_changed_since_the_form_was_built_is_shown_with_both_values(flagship: str) -> None:
    data = package(flagship)
    warden = ledger.load(flagship).get(Contact, "warden")
    assert warden is not None
    write(flagship, Contact.model_validate({**warden.model_dump(), "phone": "705-555-0111"}))
    reading = back(data, {"contacts.warden.phone": "705-555-0122"})
    (one,) = reading.proposals
    assert (one.status, one.was, one.now, one.said) == (
        "clash", "705-555-0140", "705-555-0111", "705-555-0122",
    )  # fmt: skip
    assert take(reading).taken == ()
    reading = back(data, {"contacts.warden.phone": "705-555-0122"})
    assert take(reading, "contacts.warden.phone").taken == ("contacts.warden.phone",)
    after = ledger.load(flagship).get(Contact, "warden")
    assert after is not None
    assert after.phone == "705-555-0122"


def test_what_stands_already_is_not_proposed_again(flagship: str) -> None:
    data = package(flagship)
    warden = ledger.load(flagship).get(Contact, "warden")
    assert warden is not None
    write(flagship, Contact.model_validate({**warden.model_dump(), "phone": "705-555-0122"}))
    assert back(data, {"contacts.warden.phone": "705-555-0122"}).proposals == ()


def test_somebody_who_writes_meanwhile_is_not_overwritten(flagship: str) -> None:
    reading = back(package(flagship), {"contacts.warden.phone": "705-555-0122"})
    warden = ledger.load(flagship).get(Contact, "warden")
    assert warden is not None
    write(flagship, Contact.model_validate({**warden.model_dump(), "email": "w@example.org"}))
    with pytest.raises(Conflict):
        take(reading)


def test_one_answer_refused_stays_refused_until_it_is_named(flagship: str) -> None:
    answers = {"contacts.warden.phone": "705-555-0122", "buildings.hall.roof_year": "2025"}
    data = filling.with_pypdf(package(flagship), answers)
    first = returning.read(data, "form.pdf", reference(), BACK)
    assert isinstance(first, tuple)
    kept = take(first[0], refuse=("contacts.warden.phone",))
    assert (kept.taken, kept.refused) == (("buildings.hall.roof_year",), ("contacts.warden.phone",))
    again = returning.read(data, "form.pdf", reference(), BACK)
    assert isinstance(again, tuple)
    assert [(p.name, p.status) for p in again[0].proposals] == [
        ("contacts.warden.phone", "refused")
    ]
    assert take(again[0]).taken == ()
    assert take(again[0], "contacts.warden.phone").taken == ("contacts.warden.phone",)
    records = ledger.load(flagship).all(FormReturned)
    assert {n for r in records for n in r.refused} == set()


def test_last_years_form_is_read_and_nothing_of_it_is_taken_unless_named(flagship: str) -> None:
    data = package(flagship)
    file = ledger.load(flagship)
    offered = file.terms(date(2027, 1, 15), "offered")
    assert offered is not None
    write(flagship, Terms.model_validate({**dict(offered), "stage": "issued"}))
    assert ledger.load(flagship).renewal == date(2028, 1, 15)
    answers = {"contacts.warden.phone": "705-555-0122", "sums.hall.building": "1650000"}
    reading = back(data, answers)
    assert "returns-lapsed" in [note.id for note in reading.notes]
    assert {p.status for p in reading.proposals} == {"asks"}
    assert take(reading).taken == ()
    with pytest.raises(Trouble):
        take(reading, "sums.hall.building")  # of a renewal that is over
    reading = back(data, answers)
    assert take(reading, "contacts.warden.phone").taken == ("contacts.warden.phone",)


def test_a_decision_without_a_name_is_asked_about(every: str) -> None:
    decision = next(n for n in of_each_form(every) if n.startswith("decisions."))
    (one,) = back(package(every), {decision: "leave-it"}).proposals
    assert (one.status, one.edit) == ("asks", None)


PAID = {"payment.plan": "ten-withdrawals", "payment-form.confirmed.by": "Ida Brandt"}


@pytest.mark.parametrize("language", ["en", "fr"])
def test_a_plan_that_is_no_longer_offered_is_told_and_not_taken(every: str, language: str) -> None:
    """It was printed on the form; since then the insurer takes no instalments any more."""
    data = package(every)
    offered = ledger.load(every).terms(ledger.load(every).renewal or DAY, "offered")
    assert offered is not None
    write(every, Terms.model_validate({**dict(offered), "instalments_available": False}))
    reading = back(data, PAID)
    (one,) = reading.proposals
    assert (one.status, one.edit) == ("asks", None)
    assert one.why is not None
    why = Speech(reference(), language).say(one.why)
    plan = {"en": "ten monthly withdrawals", "fr": "dix prélèvements mensuels"}[language]
    assert plan in why
    with pytest.raises(Trouble):
        take(reading, "payment.plan")
    assert ledger.load(every).all(PaymentChoice) == ()


def test_a_plan_that_was_never_on_the_form_is_told_and_not_taken(every: str) -> None:
    with Pdf.open(io.BytesIO(package(every))) as pdf:
        group = next(f for f in pdf.Root.AcroForm.Fields if str(f.get("/T", "")) == "payment")
        plan = group.Kids[0]
        plan.V = Name("/weekly")
        for widget in plan.Kids:
            del widget.AS
        data = filling.saved(pdf)
    (one,) = back(data, {"payment-form.confirmed.by": "Ida Brandt"}).proposals
    assert (one.status, one.edit, one.said) == ("asks", None, "weekly")
    assert one.why is not None
    assert "weekly" in Speech(reference(), "en").say(one.why)


def test_a_form_of_another_organisation_is_refused_where_it_was_not_expected(every: str) -> None:
    with pytest.raises(Trouble) as refused:
        returning.read(package(every), "form.pdf", reference(), BACK, expected="HW-1001")
    assert refused.value.words.id == "returns-other-file"


def test_a_form_of_a_file_that_is_not_in_the_book_is_refused(every: str) -> None:
    data = package(every).replace(b"HW-1019", b"HW-9919")
    changed = filling.changed(data, _other_file)
    with pytest.raises(Trouble) as refused:
        returning.read(changed, "form.pdf", reference(), BACK)
    assert refused.value.words.id == "returns-no-file"


def _other_file(pdf: Pdf) -> None:
    for hidden in pdf.Root.AcroForm.Fields:
        if str(hidden.get("/T", "")) == "_record":
            hidden.V = String(str(hidden.V).replace(EVERY, "HW-9919"))


def test_a_form_of_a_package_that_was_never_built_here_is_refused(every: str) -> None:
    with pytest.raises(Trouble) as refused:
        returning.read(package(every, keep=False), "form.pdf", reference(), BACK)
    assert refused.value.words.id == "returns-not-built"


def test_a_missing_page_and_a_renamed_field_are_said_and_the_rest_is_read(flagship: str) -> None:
    data = filling.changed(package(flagship), filling.with_renamed_field)
    data = filling.without_pages(data, "sums.rectory")
    reading = back(data, {"contacts.warden.email": "w@example.org"})
    assert [p.name for p in reading.proposals] == ["contacts.warden.email"]
    ids = [note.id for note in reading.notes]
    assert ids == ["returns-missing", "returns-unknown"]
    assert "contacts.warden.telephone" in said(reading)[-1]


def test_pages_taken_out_of_a_package_are_known_by_their_feet(flagship: str) -> None:
    data = filling.with_pypdf(package(flagship), {"contacts.warden.phone": "705-555-0122"})
    found = returning.read(filling.extracted(data), "pages.pdf", reference(), BACK)
    assert isinstance(found, tuple)
    assert [(p.name, p.said) for p in found[0].proposals] == [
        ("contacts.warden.phone", "705-555-0122")
    ]


def test_a_scanned_form_is_typed_in_beside_its_picture(flagship: str) -> None:
    scan = filling.scanned(package(flagship), 1)
    assert isinstance(returning.read(scan, "scan.pdf", reference(), BACK), Flat)
    typed = {"contacts.warden.phone": "705-555-0122", **SIGNED}
    reading = returning.enter(flagship, "contacts-form", typed, reference(), BACK, language="en",
                              person="ann", scan=(scan, "scan.pdf"))  # fmt: skip
    kept = take(reading)
    assert kept.taken == ("contacts.warden.phone",)
    assert {e.origin.person for e in kept.entries} == {"ann"}
    assert reading.looked is not None
    assert originals.get(reading.looked.document) == scan
    (record,) = ledger.load(flagship).all(FormReturned)
    assert (record.by, record.signed_on) == ("Ida Brandt", date(2026, 12, 1))


def test_an_answer_to_no_question_is_refused_when_typed_in(flagship: str) -> None:
    with pytest.raises(Trouble) as refused:
        returning.enter(flagship, "contacts-form", {"contacts.nobody.phone": "1"}, reference(),
                        BACK, language="en", person="ann")  # fmt: skip
    assert refused.value.words.id == "returns-no-question"


def test_a_french_form_is_read_with_french_numbers_and_choices(flagship: str) -> None:
    data = package(flagship, "fr")
    reading = back(data, {"sums.hall.building": "1 650 000,00 $",
                          "buildings.hall.construction": "steel",
                          "buildings.hall.area_m2": "812,5"})  # fmt: skip
    found = by_name(reading)
    assert found["sums.hall.building"].said == Decimal("1650000.00")
    assert found["buildings.hall.area_m2"].said == Decimal("812.5")
    assert found["buildings.hall.construction"].said == "steel"
    assert {p.status for p in reading.proposals} == {"change"}


@pytest.mark.parametrize("language", ["en", "fr"])
def test_everything_is_said_in_both_languages(flagship: str, language: str) -> None:
    data = package(flagship)
    reading = back(data, {**UNCLEAR, "contacts.warden.stays": "stays", "contacts.new-1.name": "Z",
                          "contacts-form.confirmed.on": "soon"})  # fmt: skip
    told = said(reading, language)
    assert len(told) > 15
    assert not [text for text in told if "{" in text or "returns-" in text]


def test_interests_can_be_added(every: str) -> None:
    take(back(package(every), {"interests.new-1.name": "Harbour Copiers", "interests.new-1.role":
                               "lessor", "interests.new-1.amount": "4,200"}))  # fmt: skip
    added = ledger.load(every).get(Interest, "harbour-copiers")
    assert added is not None
    assert (added.role, added.amount) == ("lessor", Decimal("4200.00"))


def test_each_answer_is_credited_to_who_signed_the_form_it_stands_on(every: str) -> None:
    """A building's valve stands on the water form, a training day on the abuse declaration."""
    held = ledger.load(every)
    water = form_questions.sheet(held, "water-form", reference(), DAY, "en")[1]
    abuse = form_questions.sheet(held, "abuse-form", reference(), DAY, "en")[1]
    valve = next(n for n in water if n.startswith("buildings.") and n.endswith("backwater_valve"))
    training = next(n for n in abuse if n.startswith("operations."))
    other = "no" if water[valve].printed == "yes" else "yes"
    reading = back(package(every), {
        valve: other, training: "2026-10-10", "abuse.written": "do",
        "water-form.confirmed.by": "Wanda Alder", "abuse-form.confirmed.by": "Abel Reed",
        "statement-of-values.confirmed.by": "Vera Holm", "operations-form.confirmed.by": "Olga Fen",
    })  # fmt: skip
    assert {p.name: p.form for p in reading.proposals if p.name in {valve, training}} == {
        valve: "water-form", training: "abuse-form",
    }  # fmt: skip
    take(reading)
    returned = {r.form: r for r in ledger.load(every).all(FormReturned)}
    assert (returned["water-form"].by, returned["water-form"].taken) == ("Wanda Alder", (valve,))
    assert returned["abuse-form"].by == "Abel Reed"
    assert set(returned["abuse-form"].taken) == {training, "abuse.written"}
    assert [a.by for a in ledger.load(every).all(Answers)] == ["Abel Reed"]
    assert valve not in returned["statement-of-values"].taken


def test_pages_of_one_form_taken_out_are_that_form_and_nobody_else_s(every: str) -> None:
    """The water form asks of buildings too: it is not taken for the statement of values."""
    water = form_questions.sheet(ledger.load(every), "water-form", reference(), DAY, "en")[1]
    valve = next(n for n in water if n.startswith("buildings."))
    other = "no" if water[valve].printed == "yes" else "yes"
    filled = filling.with_pypdf(package(every), {valve: other, "water-form.confirmed.by": "Wanda"})
    pages = filling.extracted(filled, ("water.", "water-form."))
    found = returning.read(pages, "water.pdf", reference(), BACK)
    assert isinstance(found, tuple)
    assert [(p.name, p.form) for p in found[0].proposals] == [(valve, "water-form")]
    assert found[0].proposed.confirmed["water-form"].by == "Wanda"
    assert found[0].proposed.filled == ("water-form",)
    assert "statement-of-values" not in found[0].proposed.confirmed


def test_a_new_interest_keeps_every_field_that_the_form_asks(every: str) -> None:
    building = ledger.load(every).buildings[0].id
    told = {
        "name": "Harbour Copiers", "role": "lessor", "address": "4 Quay Road",
        "location": building, "reference": "L-77", "item": "A copier", "amount": "4,200",
    }  # fmt: skip
    named = {f"interests.new-1.{field}": said for field, said in told.items()}
    asked = form_questions.sheet(ledger.load(every), "interests-form", reference(), DAY, "en")[1]
    assert {n for n in asked if n.startswith("interests.new-1.")} == set(named)
    take(back(package(every), named))
    added = ledger.load(every).get(Interest, "harbour-copiers")
    assert added is not None
    assert added.model_dump(exclude_none=True) == told | {
        "id": "harbour-copiers", "amount": Decimal("4200.00"), "status": added.status,
    }  # fmt: skip


def test_a_scan_says_by_its_code_which_form_it_is_and_of_whom(flagship: str) -> None:
    scan = filling.scanned(package(flagship), 60, dots=110)
    flat = returning.read(scan, "scan.pdf", reference(), BACK)
    assert isinstance(flat, Flat)
    assert flat.files == (flagship,)
    speech = Speech(reference(), "en")
    told = [speech.say(note) for note in returning.flat_notes(flat)]
    assert len([one for one in told if flagship in one]) == len(flat.forms) > 3
    with pytest.raises(Trouble) as refused:
        returning.read(scan, "scan.pdf", reference(), BACK, expected="HW-1010")
    assert refused.value.words.id == "returns-other-file"


def test_a_scan_of_a_form_whose_term_is_over_says_so(flagship: str) -> None:
    code = PageCode(flagship, date(2026, 1, 15), "en", 1, 3, "contacts-form")
    looked = Looked("scan.pdf", b"", "", 2, (), (), "")
    flat = Flat(looked, (flagship,), ("contacts-form",), {1: code})
    ids = [note.id for note in returning.flat_notes(flat)]
    assert ids == ["returns-flat-code", "returns-lapsed", "returns-flat-no-code"]


def test_no_question_is_told_with_a_stop_and_a_colon(every: str) -> None:
    held = ledger.load(every)
    for language in ("en", "fr"):
        for form in FORMS:
            for one in form_questions.sheet(held, form, reference(), DAY, language)[1].values():
                told = one.label.replace("\u00a0", " ")
                assert not any(mark in told for mark in (".:", ". :", "?:", "? :")), told
                assert told.split(": ")[0] != told.split(": ")[-1] or ": " not in told
