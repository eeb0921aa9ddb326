"""The fields: named for years, filled in as the file has it, filled and read back by two libraries.

pypdf and pikepdf (qpdf) know nothing of how the fields were made; poppler shows them.
"""

from __future__ import annotations

import io
import json
import subprocess
from collections.abc import Callable
from pathlib import Path

import pikepdf
import pikepdf.form
import pytest
from hypothesis import given as for_all
from hypothesis import strategies as st
from pikepdf import Name, Object, Pdf
from pypdf import PdfReader, PdfWriter

from quarterday.core.file.records import Building, Contact
from quarterday.papers.fields import Field, Fields, field_name, field_parts, make_fillable
from quarterday.papers.parts import FORMS

from . import given
from .reading import elements, page_texts, values

Filler = Callable[[bytes, dict[str, str]], bytes]
NAME = field_name("contacts", "treasurer", "name")
UPDATES = field_name("buildings", "hall", "updates")
STAYS = field_name("contacts", "treasurer", "stays")
ROLE = field_name("contacts", "treasurer", "role")
TICK = field_name("authorities", "treasurer", "claims")
SPOKEN = "Zoé Lœwenstein-Brûlé (Ñandú) \\ “Élan”"
LINES = "Toit refait en 2024\nNouvelle chaudière: 12 500 $\n"


def widgets(pdf: Pdf) -> list[Object]:
    return [
        annotation
        for page in pdf.pages
        for annotation in page.obj.get("/Annots", pikepdf.Array()).as_list()
        if annotation.get("/Subtype") == Name.Widget
    ]


def test_a_name_comes_apart_into_the_parts_it_was_put_together_from() -> None:
    assert field_name("contacts", "c.1", "phone") == "contacts.c%2E1.phone"
    assert field_parts("contacts.c%2E1.phone") == ("contacts", "c.1", "phone")


@for_all(st.lists(st.text(min_size=1), min_size=1, max_size=4))
def test_any_ids_survive_in_a_name(parts: list[str]) -> None:
    assert field_parts(field_name(*parts)) == tuple(parts)


def test_a_field_described_twice_is_refused() -> None:
    fields = Fields()
    fields.add(Field("a.b", "line", "tip"), "label")
    with pytest.raises(ValueError, match=r"a\.b is described twice"):
        fields.add(Field("a.b", "line", "tip"), "label")


def test_a_field_without_a_place_in_the_pages_is_refused() -> None:
    with Pdf.open(io.BytesIO(given.package().pdf)) as pdf, pytest.raises(ValueError, match="0 pl"):
        make_fillable(pdf, [Field("a.b", "line", "tip")], {})


def test_pypdf_reads_what_the_file_holds() -> None:
    found, file = values(given.package().pdf), given.book()[given.FLAGSHIP]
    for contact in (c for c in file.all(Contact) if c.left_on is None):
        assert found[field_name("contacts", contact.id, "name")] == contact.name
        assert found[field_name("contacts", contact.id, "phone")] == contact.phone
        assert found[field_name("contacts", contact.id, "role")] == contact.role
    for building in file.all(Building):
        year = found[field_name("buildings", building.id, "year_built")]
        assert year == str(building.year_built or "")


def test_the_fields_that_nobody_sees_say_which_file_and_form_came_back() -> None:
    package = given.package()
    found = values(package.pdf)
    forms = [id for id, _ in package.enclosed if id in FORMS]
    assert len(forms) >= 7
    assert found["_form"] == " ".join(forms)
    record = json.loads(found["_record"])
    file = given.book()[given.FLAGSHIP]
    assert record["file"] == file.id
    assert record["seq"] == file.seq
    assert record["renewal"] == str(given.reviewed(file.id).renewal)


def test_a_field_keeps_its_name_in_the_other_language_and_version() -> None:
    english, french = (set(values(given.package(language=lang).pdf)) for lang in ("en", "fr"))
    assert english == french


def filled_by_pypdf(pdf: bytes, wanted: dict[str, str]) -> bytes:
    writer = PdfWriter(clone_from=PdfReader(io.BytesIO(pdf)))
    for page in writer.pages:
        writer.update_page_form_field_values(page, wanted, auto_regenerate=False)
    out = io.BytesIO()
    writer.write(out)
    return out.getvalue()


def filled_by_pikepdf(pdf: bytes, wanted: dict[str, str]) -> bytes:
    with Pdf.open(io.BytesIO(pdf)) as opened:
        form = pikepdf.form.Form(opened, pikepdf.form.ExtendedAppearanceStreamGenerator)
        for name, value in wanted.items():
            field = form[name]
            if isinstance(field, pikepdf.form.CheckboxField):
                field.checked = value == "/Yes"
            elif isinstance(field, pikepdf.form.RadioButtonGroup):
                field.value = Name(value)
            else:
                assert isinstance(field, pikepdf.form.TextField | pikepdf.form.ChoiceField)
                field.value = value
        out = io.BytesIO()
        opened.save(out)
    return out.getvalue()


FILL = {NAME: SPOKEN, UPDATES: LINES, STAYS: "/left", ROLE: "chair", TICK: "/Yes"}


FILLERS: list[Filler] = [filled_by_pypdf, filled_by_pikepdf]


def answers(pdf: bytes) -> dict[str, str]:
    """Return another answer for every field of a file: text, a tick, the last choice there is."""
    found: dict[str, str] = {}
    for name, field in (PdfReader(io.BytesIO(pdf)).get_fields() or {}).items():
        kind, states = field.get("/FT"), [s for s in field.get("/_States_", ()) if s != "/Off"]
        if name.startswith("_") or kind is None:
            continue
        if kind == "/Tx":
            found[name] = f"réponse à {name}"[:80]
        elif kind == "/Ch":
            found[name] = str(states[-1][0] if isinstance(states[-1], list) else states[-1])
        else:
            found[name] = str(states[-1])
    return found


@pytest.mark.parametrize("id", [given.FLAGSHIP, given.RENTER])
@pytest.mark.parametrize("fill", FILLERS)
def test_every_field_of_every_form_is_filled_and_read_back(fill: Filler, id: str) -> None:
    pdf = given.package(id, "fr").pdf
    wanted = answers(pdf)
    found = values(fill(pdf, wanted))
    assert len(wanted) > 100
    assert {name: found[name] for name in wanted} == wanted


@pytest.mark.parametrize("fill", FILLERS)
def test_what_is_filled_in_is_read_back_to_the_letter(fill: Filler) -> None:
    filled = fill(given.package(language="fr").pdf, FILL)
    before, after = values(given.package(language="fr").pdf), values(filled)
    assert {name: after[name] for name in FILL} == FILL
    changed = {name for name in before if before[name] != after[name]}
    assert changed == set(FILL)


@pytest.mark.parametrize("fill", FILLERS)
def test_poppler_shows_what_was_filled_in(fill: Filler, tmp_path: Path) -> None:
    """A field's appearance is its own: only the filled field shows the new text."""
    text = "".join(page_texts(fill(given.package().pdf, {NAME: "Zoé Brûlé"}), tmp_path))
    assert text.count("Zoé Brûlé") == 1
    assert "Harriet Boone" in text


def test_poppler_draws_every_page_without_a_complaint(tmp_path: Path) -> None:
    file = tmp_path / "p.pdf"
    file.write_bytes(given.package(language="fr").pdf)
    command = ["pdftoppm", "-r", "20", "-gray", str(file), str(tmp_path / "page")]
    drawn = subprocess.run(command, capture_output=True, check=True, timeout=120)
    assert drawn.stderr == b""
    assert len(list(tmp_path.glob("page*.pgm"))) == len(PdfReader(file).pages)


def test_every_text_field_has_an_appearance_of_its_own() -> None:
    with Pdf.open(io.BytesIO(given.package().pdf)) as pdf:
        written = [w for w in widgets(pdf) if w.get("/FT") in (Name.Tx, Name.Ch)]
        streams = [w.AP.N.objgen for w in written]
    assert len(streams) > 40
    assert len(set(streams)) == len(streams)


def test_every_widget_is_tagged_as_a_form_element_and_says_what_it_is_for() -> None:
    """PDF/UA-1 7.18.1 and 7.18.4: a widget lies in a Form element and has a description (TU)."""
    package = given.package()
    forms = [e for e in elements(package.pdf) if e.role == "Form"]
    with Pdf.open(io.BytesIO(package.pdf)) as pdf:
        found = widgets(pdf)
        assert len(forms) == len(found)
        assert all(str(w.TU).strip() for w in found)
        assert all("/A" not in w for w in found)


def test_names_of_fields_hold_no_full_stop_within_a_part() -> None:
    """ISO 32000-1, 12.7.3.2: a partial name shall not contain a full stop."""
    with Pdf.open(io.BytesIO(given.package().pdf)) as pdf:
        waiting = list(pdf.Root.AcroForm.Fields.as_list())
        while waiting:
            field = waiting.pop()
            assert "." not in str(field.T)
            waiting += [kid for kid in field.get("/Kids", []) if "/T" in kid]


def test_a_ticked_box_and_a_chosen_answer_are_shown_as_they_are_stored() -> None:
    with Pdf.open(io.BytesIO(given.package().pdf)) as pdf:
        for widget in widgets(pdf):
            if widget.get("/FT") == Name.Btn:
                assert widget.AS == widget.V
            elif "/FT" not in widget:  # one of several answers
                assert widget.AS in (Name.Off, widget.Parent.V)


def test_the_form_asks_no_viewer_to_draw_the_fields_anew() -> None:
    """PDF/A-2 (ISO 19005-2), 6.4.1: NeedAppearances is absent or false."""
    with Pdf.open(io.BytesIO(given.package().pdf)) as pdf:
        assert not pdf.Root.AcroForm.get("/NeedAppearances", False)
