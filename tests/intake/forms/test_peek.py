"""Reading back: every field of every form, filled by two libraries, and what must not harm."""

from __future__ import annotations

import io
import sys
from collections.abc import Iterator
from functools import cache

import pikepdf
import pytest

from quarterday.intake.forms import confined, peek
from quarterday.intake.forms.recognise import Flat, Given, Returned, Unstamped, recognise
from quarterday.intake.refusals import Unreadable
from quarterday.papers.fields import Field
from quarterday.papers.package import PAPERS
from quarterday.papers.parts import FORMS
from tests.intake.forms import filling
from tests.papers import given

# Between them, these have every form.
FILES = ("HW-1001", "HW-1019")
FILLERS = (filling.with_pikepdf, filling.with_pypdf)
LONG_LINES = "Érable, œuvre « neuve » (2019)\nand a second line; 50 % done \\ checked"


@cache
def fields(file: str, language: str) -> tuple[Field, ...]:
    setting = given.setting(file, language)
    for paper in PAPERS:
        if paper.id in FORMS and paper.reason(setting) is not None:
            paper.data(setting)
    return tuple(setting.fields.described)


def answers(file: str, language: str) -> dict[str, str]:
    """Another answer than the one printed in, for every field."""
    return {field.name: _other(field, n) for n, field in enumerate(fields(file, language))}


def _other(field: Field, number: int) -> str:
    match field.kind:
        case "tick":
            return "" if field.value == "Yes" else "Yes"
        case "one of" | "choice":
            ids = [id for id, _ in field.options if id and id != field.value]
            return ids[number % len(ids)]
        case "lines":
            return f"{number} {LONG_LINES}"
        case _:
            return f"{number} Noël (né le 3 août)"


def returned(data: bytes) -> Returned:
    found = recognise(peek.look(data, "form.pdf"), {}, ())
    assert isinstance(found, tuple)
    (one,) = found
    return one


@pytest.mark.parametrize("language", ["en", "fr"])
@pytest.mark.parametrize("fill", FILLERS)
@pytest.mark.parametrize("file", FILES)
def test_every_field_filled_by_two_libraries_is_read_back(
    file: str, fill: filling.Fill, language: str
) -> None:
    wanted = answers(file, language)
    read = returned(fill(given.package(file, language).pdf, wanted)).answers
    assert {name: read[name] for name in wanted} == {n: Given(v) for n, v in wanted.items()}
    assert set(read) == set(wanted)


def test_the_files_of_these_tests_have_every_form_between_them() -> None:
    enclosed = {id for file in FILES for id, _ in given.package(file).enclosed}
    assert set(FORMS) <= enclosed


def test_a_form_nobody_touched_holds_what_was_printed_in() -> None:
    read = returned(given.package().pdf)
    assert read.stamp.file == given.FLAGSHIP
    assert {n: g.text for n, g in read.answers.items()} == {
        f.name: f.value.strip() for f in fields(given.FLAGSHIP, "en")
    }


def test_a_form_filled_by_a_program_that_only_adds_to_the_end_is_read() -> None:
    read = returned(filling.later(given.package().pdf, {"contacts.warden.phone": "705-555-0177"}))
    assert read.answers["contacts.warden.phone"] == Given("705-555-0177")


MARKED = [
    (filling.with_script, ("program",)),
    (filling.with_script_in_a_field, ("program",)),
    (filling.with_attachment, ("attachment",)),
]


@pytest.mark.parametrize(("spoil", "marks"), MARKED)
def test_what_does_not_belong_is_told_and_the_answers_are_read_all_the_same(
    spoil: object, marks: tuple[str, ...]
) -> None:
    assert callable(spoil)
    filled = filling.with_pikepdf(given.package().pdf, {"contacts.warden.phone": "705-555-0177"})
    read = returned(filling.changed(filled, spoil))
    assert read.looked.marks == marks
    assert read.answers["contacts.warden.phone"] == Given("705-555-0177")


def test_the_packages_themselves_hold_nothing_that_does_not_belong() -> None:
    for file in FILES:
        assert peek.look(given.package(file).pdf, "x").marks == ()


ODD = [
    (filling.with_huge_answer, "contacts.warden.phone", "returns-field-too-long"),
    (filling.with_stream_answer, "contacts.warden.phone", "returns-field-odd"),
    (filling.with_control_character, "contacts.warden.phone", "returns-field-character"),
    (filling.with_split_switch, "authorities.warden.claims", "returns-field-split"),
]


@pytest.mark.parametrize(("spoil", "name", "why"), ODD)
def test_an_answer_that_cannot_be_relied_on_is_none(spoil: object, name: str, why: str) -> None:
    assert callable(spoil)
    found = returned(filling.changed(given.package().pdf, spoil)).answers
    assert found[name].text is None
    assert [told.id for told in (found[name].why,) if told] == [why]
    assert found["contacts.warden.email"].text == "harriet.boone@st-ebba.example.org"


def _bomb() -> bytes:
    """A small file whose object stream unfolds to four gigabytes of blanks."""
    import zlib

    packer = zlib.compressobj(9)
    parts = [packer.compress(b" " * 1024**2) for _ in range(4096)]
    packed = b"".join(parts) + packer.flush()
    head = b"%PDF-1.5\n1 0 obj<</Type/Catalog/Pages 2 0 R>>endobj\n"
    head += b"2 0 obj<</Type/Pages/Kids[]/Count 0>>endobj\n"
    at = len(head)
    head += b"3 0 obj<</Type/ObjStm/N 1/First 4/Filter/FlateDecode/Length %d>>stream\n" % len(
        packed
    )
    head += packed + b"\nendstream endobj\n"
    start = len(head)
    rows = [(1, 9), (1, head.index(b"2 0 obj")), (1, at), (1, start), (2, 3)]
    table = b"\0\0\0\0\0\xff" + b"".join(
        bytes([kind]) + place.to_bytes(4, "big") + b"\0" for kind, place in rows
    )
    body = b"4 0 obj<</Type/XRef/Size 6/W[1 4 1]/Root 1 0 R/Length %d>>stream\n" % len(table)
    return head + body + table + b"\nendstream endobj\nstartxref\n%d\n%%%%EOF" % start


def _hostile() -> Iterator[tuple[str, bytes, str]]:
    good = given.package().pdf
    yield "empty", b"", "returns-not-pdf"
    yield "text", b"Dear broker, please find ...", "returns-not-pdf"
    yield "broken", good[:2000], "returns-broken"
    yield "a head alone", b"%PDF-1.7\n", "returns-broken"
    yield "locked", filling.locked(good, "secret"), "returns-locked"
    yield "stamp", filling.changed(good, filling.with_changed_stamp), "returns-bad-stamp"


@pytest.mark.parametrize(("name", "data", "why"), list(_hostile()), ids=lambda v: str(v)[:20])
def test_what_cannot_be_read_is_refused_in_one_sentence(name: str, data: bytes, why: str) -> None:
    with pytest.raises(Unreadable) as refused:
        recognise(peek.look(data, f"{name}.pdf"), {}, ())
    assert refused.value.words.id == why


def test_a_small_file_that_unfolds_to_gigabytes_harms_nobody() -> None:
    found = recognise(peek.look(_bomb(), "bomb.pdf"), {}, ())
    assert isinstance(found, Flat)
    assert (found.looked.cells, found.looked.text) == ((), "")


GREEDY = "from quarterday.intake.forms.confined import confine; confine(); x = b' ' * 2 * 1024**3"


@pytest.mark.parametrize("program", [GREEDY, "while True: pass"])
def test_reading_that_takes_too_much_is_stopped(
    program: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(peek, "_CHILD", [sys.executable, "-c", program])
    monkeypatch.setattr(confined, "_MOST_SECONDS", 3)
    with pytest.raises(Unreadable) as refused:
        peek.look(given.package().pdf, "form.pdf")
    assert refused.value.words.id == "returns-too-much"


def test_a_file_locked_only_against_changes_is_read() -> None:
    assert returned(filling.locked(given.package().pdf, "")).stamp.file == given.FLAGSHIP


def test_a_file_larger_than_any_form_is_not_even_looked_at(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(peek, "LARGEST", 100)
    with pytest.raises(Unreadable) as refused:
        peek.look(given.package().pdf, "form.pdf")
    assert refused.value.words.id == "returns-too-large"


def test_a_form_of_somebody_else_is_none_of_ours() -> None:
    with pikepdf.Pdf.new() as pdf:
        page = pdf.add_blank_page()
        widget = pdf.make_indirect(
            pikepdf.Dictionary(
                Type=pikepdf.Name.Annot, Subtype=pikepdf.Name.Widget, FT=pikepdf.Name.Tx,
                T=pikepdf.String("name"), Rect=[0, 0, 100, 20],
            )
        )  # fmt: skip
        page.obj.Annots = pikepdf.Array([widget])
        pdf.Root.AcroForm = pikepdf.Dictionary(Fields=[widget])
        data = filling.saved(pdf)
    with pytest.raises(Unreadable) as refused:
        recognise(peek.look(data, "form.pdf"), {}, ())
    assert refused.value.words.id == "returns-not-ours"


def test_flattened_forms_are_all_known_by_what_is_printed_on_them() -> None:
    titles = {"contacts-form": ("Contacts and authorised people",), "water-form": ("Ponds",)}
    filled = filling.with_pypdf(given.package().pdf, {"contacts.warden.phone": "705-555-0177"})
    found = recognise(peek.look(filling.flattened(filled), "f.pdf"), titles, ["HW-1001", "HW-1002"])
    assert isinstance(found, Flat)
    assert found.files == ("HW-1001",)
    assert found.forms == (
        "decisions-form", "contacts-form", "operations-form", "statement-of-values", "water-form",
        "abuse-form", "payment-form",
    )  # fmt: skip


def test_a_scanned_form_says_nothing_and_nothing_is_guessed() -> None:
    data = filling.scanned(given.package().pdf)
    with pikepdf.open(io.BytesIO(data)) as pdf:
        assert len(pdf.pages) == 2
    found = recognise(peek.look(data, "scan.pdf"), {"contacts-form": ("Contacts",)}, ["HW-1001"])
    assert isinstance(found, Flat)
    assert (found.files, found.forms) == ((), ())


JOINERS = (filling.joined, filling.appended)


@pytest.mark.parametrize("join", JOINERS)
def test_two_packages_run_together_are_refused_with_what_to_do(join: object) -> None:
    assert callable(join)
    data = join(given.package().pdf, given.package("HW-1010").pdf)
    with pytest.raises(Unreadable) as refused:
        recognise(peek.look(data, "two.pdf"), {}, ["HW-1001", "HW-1010"])
    assert refused.value.words.id == "returns-several"


def test_pages_taken_out_of_a_package_lose_its_mark_and_keep_their_answers() -> None:
    filled = filling.with_pypdf(given.package().pdf, {"contacts.warden.phone": "705-555-0177"})
    found = recognise(peek.look(filling.extracted(filled), "pages.pdf"), {}, ["HW-1001"])
    assert isinstance(found, Unstamped)
    assert found.files == ("HW-1001",)
    enclosed = {id for id, _ in given.package().enclosed}
    assert set(found.forms) == set(FORMS) & enclosed
    assert found.answers["contacts.warden.phone"] == Given("705-555-0177")


def test_pages_that_are_missing_have_no_answers() -> None:
    read = returned(filling.without_pages(given.package().pdf, "contacts."))
    assert not any(name.startswith("contacts.") for name in read.answers)
    assert any(name.startswith("buildings.") for name in read.answers)
