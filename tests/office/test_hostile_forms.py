"""Whatever comes back as a form: one clear sentence each, and nothing of it or beside it lost."""

from __future__ import annotations

import io
from collections.abc import Callable

import pikepdf
import pytest
from pikepdf import Pdf
from tests.intake.forms import filling
from tests.office.conftest import load_account
from tests.office.test_returning import BACK, package, take

from quarterday.catalogue.load import reference
from quarterday.catalogue.speech import Speech
from quarterday.core.file.records import Contact, FormReturned
from quarterday.intake.forms.recognise import Flat
from quarterday.intake.forms.telling import sentence
from quarterday.intake.refusals import Unreadable
from quarterday.office import returning
from quarterday.office.returning import Reading
from quarterday.office.trouble import Trouble
from quarterday.store import ledger, originals

NAME = "returned.pdf"
LANGUAGES = ("en", "fr")
LONGEST = 60  # words of what is told of one form
Spoil = Callable[[bytes], bytes]


def cut_short(data: bytes) -> bytes:
    return data[: len(data) * 3 // 5]


def locked(data: bytes) -> bytes:
    return filling.locked(data, "secret")


def run_together(data: bytes) -> bytes:
    return filling.joined(data, package("HW-1010"))


def of_nobody(data: bytes) -> bytes:
    def other(pdf: Pdf) -> None:
        for hidden in pdf.Root.AcroForm.Fields:
            if str(hidden.get("/T", "")) == "_record":
                hidden.V = pikepdf.String(str(hidden.V).replace("HW-1001", "HW-9919"))

    return filling.changed(data, other)


def somebody_else_s(_: bytes) -> bytes:
    """A form that any other program may have made: one field, no mark of ours."""
    with Pdf.new() as pdf:
        page = pdf.add_blank_page()
        widget = pikepdf.Dictionary(
            Type=pikepdf.Name.Annot, Subtype=pikepdf.Name.Widget, FT=pikepdf.Name.Tx,
            T=pikepdf.String("name"), Rect=[0, 0, 100, 20],
        )  # fmt: skip
        page.obj.Annots = pikepdf.Array([pdf.make_indirect(widget)])
        pdf.Root.AcroForm = pikepdf.Dictionary(Fields=page.obj.Annots)
        return filling.saved(pdf)


def with_changed_stamp(data: bytes) -> bytes:
    return filling.changed(data, filling.with_changed_stamp)


REFUSED = {
    "returns-not-pdf": lambda _: b"Dear broker, please find our form below.",
    "returns-broken": cut_short,
    "returns-locked": locked,
    "returns-several": run_together,
    "returns-no-file": of_nobody,
    "returns-not-ours": somebody_else_s,
    "returns-bad-stamp": with_changed_stamp,
}


@pytest.mark.parametrize("why", REFUSED)
def test_what_is_refused_whole_is_told_in_a_sentence_and_changes_nothing(
    why: str, flagship: str
) -> None:
    load_account("HW-1010")
    data = REFUSED[why](package(flagship))
    before = ledger.load(flagship).seq
    with pytest.raises((Unreadable, Trouble)) as caught:
        returning.read(data, NAME, reference(), BACK)
    refused = caught.value
    assert isinstance(refused, Unreadable | Trouble)
    assert refused.words.id == why
    assert ledger.load(flagship).seq == before
    for language in LANGUAGES:
        said = Speech(reference(), language).say(refused.words)
        assert NAME in said  # where
        assert said.count(".") >= 3  # what and why, then what to do
        assert len(said.split()) < LONGEST
        assert "{" not in said


def spoiled(change: Callable[[Pdf], None]) -> Spoil:
    return lambda data: filling.changed(data, change)


def without_a_page(data: bytes) -> bytes:
    return filling.without_pages(data, "sums.rectory")


TOLD = {
    "returns-holds-program": spoiled(filling.with_script),
    "returns-holds-attachment": spoiled(filling.with_attachment),
    "returns-field-too-long": spoiled(filling.with_huge_answer),
    "returns-field-odd": spoiled(filling.with_stream_answer),
    "returns-field-character": spoiled(filling.with_control_character),
    "returns-field-split": spoiled(filling.with_split_switch),
    "returns-unknown": spoiled(filling.with_renamed_field),
    "returns-missing": without_a_page,
}


def test_a_foreign_field_s_name_is_shown_short_and_without_orders_to_a_terminal(
    flagship: str,
) -> None:
    data = spoiled(filling.with_long_name)(package(flagship))
    found = returning.read(data, NAME, reference(), BACK)
    assert isinstance(found, tuple)
    (note,) = (one for one in found[0].notes if one.id == "returns-unknown")
    for language in LANGUAGES:
        said = Speech(reference(), language).say(note)
        assert "\x1b" not in said
        assert len(said) < 200


@pytest.mark.parametrize("why", TOLD)
def test_what_does_not_belong_is_told_and_the_other_answers_are_taken(
    why: str, flagship: str
) -> None:
    answer = {"contacts.warden.email": "warden@example.org"}
    data = TOLD[why](filling.with_pikepdf(package(flagship), answer))
    found = returning.read(data, NAME, reference(), BACK)
    assert isinstance(found, tuple)
    (reading,) = found
    told = [*reading.notes, *(p.why for p in reading.proposals if p.why)]
    assert why in {one.id for one in told}
    for language in LANGUAGES:
        for said in map(Speech(reference(), language).say, told):
            assert said.endswith(".")
            assert len(said.split()) < LONGEST
    take(reading)
    file = ledger.load(flagship)
    warden = file.get(Contact, "warden")
    assert warden is not None
    assert (warden.email, warden.phone) == ("warden@example.org", "705-555-0140")
    (returned,) = file.all(FormReturned)
    assert originals.get(returned.document) == data


@pytest.mark.parametrize("fill", [filling.with_pypdf, filling.with_pikepdf])
def test_two_forms_of_one_package_in_one_file_are_both_read(
    fill: filling.Fill, flagship: str
) -> None:
    answers = {"contacts.warden.phone": "705-555-0122", "buildings.hall.roof_year": "2024",
               "statement-of-values.confirmed.by": "Ida Brandt"}  # fmt: skip
    starts = ("contacts.", "contacts-form.", "buildings.", "sums.", "statement-of-values.")
    pages = filling.extracted(fill(package(flagship), answers), starts)
    found = returning.read(pages, NAME, reference(), BACK)
    assert isinstance(found, tuple)
    (reading,) = found
    assert {p.form for p in reading.proposals} == {"contacts-form", "statement-of-values"}
    assert reading.proposed.confirmed["statement-of-values"].by == "Ida Brandt"
    take(reading)
    assert {r.form for r in ledger.load(flagship).all(FormReturned)} == {
        "contacts-form", "statement-of-values",
    }  # fmt: skip


@pytest.mark.parametrize("how", ["flattened", "scanned at 150 dots an inch, 1.5 degrees askew"])
def test_paper_is_recognised_by_its_printed_code_and_never_guessed(how: str, flagship: str) -> None:
    data = filling.with_pypdf(package(flagship), {"contacts.warden.phone": "705-555-0122"})
    pages = filling.extracted(data, ("contacts.", "contacts-form."))
    paper = (
        filling.flattened(pages)
        if how == "flattened"
        else filling.scanned(pages, dots=150, tilt=1.5)
    )
    flat = returning.read(paper, NAME, reference(), BACK)
    assert isinstance(flat, Flat)
    assert (flat.files, flat.forms) == ((flagship,), ("contacts-form",))
    assert ledger.load(flagship).all(FormReturned) == ()
    typed = {"contacts.warden.phone": "705-555-0122"}
    reading = returning.enter(flagship, "contacts-form", typed, reference(), BACK, language="en",
                              person="ann", scan=(paper, NAME))  # fmt: skip
    take(reading)
    (returned,) = ledger.load(flagship).all(FormReturned)
    assert originals.get(returned.document) == paper


def in_words(reading: Reading, language: str) -> list[str]:
    speech = Speech(reference(), language)
    return [speech.say(sentence(p)) for p in reading.proposals]


def test_an_answer_of_ten_megabytes_is_not_repeated_to_the_reader(flagship: str) -> None:
    data = filling.changed(package(flagship), filling.with_huge_answer)
    assert len(data) > 0
    found = returning.read(data, NAME, reference(), BACK)
    assert isinstance(found, tuple)
    for language in LANGUAGES:
        assert max(map(len, in_words(found[0], language))) < 500
    (unread,) = found[0].proposals
    assert (unread.now, unread.said, unread.is_unread) == ("705-555-0140", None, True)
    told = "Telephone: Harriet Boone. The form says: an answer that cannot be relied on."
    assert in_words(found[0], "en") == [told]
    with pikepdf.open(io.BytesIO(data)) as pdf:
        assert len(str(filling.field(pdf, "contacts.warden.phone").V)) == 10 * 1024**2
