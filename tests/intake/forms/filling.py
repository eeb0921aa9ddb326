"""What people and programs do to a form: fill, flatten, scan, join, cut, spoil. Two libraries fill.

pypdf and pikepdf stand for the programs people fill forms with; poppler and pikepdf for printers
and scanners.
"""

from __future__ import annotations

import io
import subprocess
import tempfile
from collections.abc import Callable, Mapping
from pathlib import Path

import pikepdf
from pikepdf import AttachedFileSpec, Dictionary, Name, Pdf, String
from pikepdf.form import ExtendedAppearanceStreamGenerator, Form
from PIL import Image
from pypdf import PdfReader, PdfWriter

Fill = Callable[[bytes, Mapping[str, str]], bytes]


def saved(pdf: Pdf, encryption: pikepdf.Encryption | None = None) -> bytes:
    out = io.BytesIO()
    pdf.save(out, encryption=encryption)
    return out.getvalue()


def with_pikepdf(data: bytes, answers: Mapping[str, str]) -> bytes:
    """Fill with pikepdf's form support, which rewrites the file."""
    with Pdf.open(io.BytesIO(data)) as pdf:
        form = Form(pdf, ExtendedAppearanceStreamGenerator)
        for name, value in answers.items():
            _set(form[name], value)
        return saved(pdf)


def _set(field: object, value: str) -> None:
    match field:
        case pikepdf.form.CheckboxField():
            field.checked = value == "Yes"
        case pikepdf.form.RadioButtonGroup():
            field.value = Name(f"/{value}")
        case pikepdf.form.ChoiceField() | pikepdf.form.TextField():
            field.value = value
        case _:
            raise TypeError(type(field))


def with_pypdf(data: bytes, answers: Mapping[str, str]) -> bytes:
    """Fill with pypdf, which copies the file into a new one."""
    writer = PdfWriter(clone_from=io.BytesIO(data))
    fields = PdfReader(io.BytesIO(data)).get_fields() or {}
    switches = {name for name, field in fields.items() if field.get("/FT") == "/Btn"}
    given = {n: f"/{v or 'Off'}" if n in switches else v for n, v in answers.items()}
    for page in writer.pages:
        if "/Annots" in page:
            writer.update_page_form_field_values(page, given, auto_regenerate=False)
    out = io.BytesIO()
    writer.write(out)
    return out.getvalue()


def later(data: bytes, answers: Mapping[str, str]) -> bytes:
    """Fill with pypdf as viewers do that only add to the end of a file."""
    writer = PdfWriter(io.BytesIO(data), incremental=True)
    for page in writer.pages:
        if "/Annots" in page:
            writer.update_page_form_field_values(page, dict(answers), auto_regenerate=False)
    out = io.BytesIO()
    writer.write(out)
    return out.getvalue()


def flattened(data: bytes) -> bytes:
    """Paint every field into its page and take the form away, as printing to a file does."""
    with Pdf.open(io.BytesIO(data)) as pdf:
        pdf.generate_appearance_streams()
        pdf.flatten_annotations("all")
        if "/AcroForm" in pdf.Root:
            del pdf.Root.AcroForm
        return saved(pdf)


def scanned(
    data: bytes, pages: int = 2, *, first: int = 1, dots: int = 40, tilt: float = 0.0
) -> bytes:
    """Print and scan: pages that are pictures and nothing else.

    ``dots`` an inch; ``tilt`` in degrees, as paper lies askew on the glass.
    """
    with tempfile.TemporaryDirectory() as folder, Pdf.new() as pdf:
        source = Path(folder) / "form.pdf"
        source.write_bytes(data)
        of = ["-f", str(first), "-l", str(first + pages - 1)]
        subprocess.run(
            ["pdftoppm", "-r", str(dots), "-gray", "-jpeg", *of, str(source), f"{folder}/page"],
            check=True,
        )
        for picture in sorted(Path(folder).glob("*.jpg")):
            _picture_page(pdf, Image.open(picture), tilt)
        return saved(pdf)


def _picture_page(pdf: Pdf, picture: Image.Image, tilt: float) -> None:
    turned = picture.convert("L").rotate(tilt, Image.Resampling.BILINEAR, fillcolor=245)
    out = io.BytesIO()
    turned.save(out, "JPEG", quality=60)
    page = pdf.add_blank_page(page_size=(612, 792))
    image = pikepdf.Stream(pdf, out.getvalue())
    image.Type, image.Subtype, image.Filter = Name.XObject, Name.Image, Name.DCTDecode
    image.Width, image.Height, image.BitsPerComponent = (*turned.size, 8)
    image.ColorSpace = Name.DeviceGray
    page.obj.Resources = Dictionary(XObject=Dictionary(Page=pdf.make_indirect(image)))
    page.contents_add(b"q 612 0 0 792 0 0 cm /Page Do Q")


def without_pages(data: bytes, holding: str) -> bytes:
    """Lose every page that holds a field whose name begins with ``holding``."""
    with Pdf.open(io.BytesIO(data)) as pdf:
        lost = [n for n, page in enumerate(pdf.pages) if holds(page, holding)]
        for number in reversed(lost):
            del pdf.pages[number]
        return saved(pdf)


def holds(page: pikepdf.Page, start: str) -> bool:
    names = [name_of(w) for w in page.obj.get("/Annots", ()) if w.get("/Subtype") == Name.Widget]
    return any(name.startswith(start) for name in names)


def name_of(node: pikepdf.Object) -> str:
    above = name_of(node.Parent) if "/Parent" in node else ""
    own = str(node.T) if "/T" in node else ""
    return f"{above}.{own}" if above and own else above or own


def changed(data: bytes, change: Callable[[Pdf], None]) -> bytes:
    """Do something to a file by hand."""
    with Pdf.open(io.BytesIO(data)) as pdf:
        change(pdf)
        return saved(pdf)


def field(pdf: Pdf, name: str) -> pikepdf.Object:
    """Return the field of this name."""
    found = [
        widget for page in pdf.pages for widget in page.obj.get("/Annots", ())
        if name_of(widget) == name
    ]  # fmt: skip
    return found[0]


def with_script(pdf: Pdf) -> None:
    action = Dictionary(S=Name.JavaScript, JS=String("app.alert('hello')"))
    pdf.Root.OpenAction = pdf.make_indirect(action)


def with_script_in_a_field(pdf: Pdf) -> None:
    action = Dictionary(S=Name.JavaScript, JS=String("event.value = 1"))
    field(pdf, "contacts.warden.phone").AA = Dictionary(K=action)


def with_attachment(pdf: Pdf) -> None:
    pdf.attachments["letter.txt"] = AttachedFileSpec(pdf, b"hello", filename="letter.txt")


def with_huge_answer(pdf: Pdf) -> None:
    field(pdf, "contacts.warden.phone").V = String("9" * 10 * 1024**2)


def with_renamed_field(pdf: Pdf) -> None:
    field(pdf, "contacts.warden.phone").T = String("telephone")


def with_stream_answer(pdf: Pdf) -> None:
    field(pdf, "contacts.warden.phone").V = pikepdf.Stream(pdf, b"705-555-0100")


def with_control_character(pdf: Pdf) -> None:
    field(pdf, "contacts.warden.phone").V = String("\x1b[31m705-555-0100")


def with_long_name(pdf: Pdf) -> None:
    field(pdf, "contacts.warden.phone").T = String("phone\x1b[31m" + "x" * 3000)


def with_split_switch(pdf: Pdf) -> None:
    widget = field(pdf, "authorities.warden.claims")
    widget.V, widget.AS = Name.Yes, Name.Off


def with_changed_stamp(pdf: Pdf) -> None:
    for hidden in pdf.Root.AcroForm.Fields:
        if str(hidden.get("/T", "")) == "_record":
            hidden.V = String('{"file": "HW-1001", "renewal": "soon"}')


def extracted(data: bytes, holding: tuple[str, ...] = ("",)) -> bytes:
    """Take the pages with fields out of a file, as "print these pages to a file" does.

    ``holding`` are what the names of the fields of the wanted pages begin with.
    """
    with tempfile.TemporaryDirectory() as folder, Pdf.open(io.BytesIO(data)) as pdf:
        wanted = ",".join(
            str(n) for n, p in enumerate(pdf.pages, 1) if any(holds(p, start) for start in holding)
        )
        source, out = Path(folder) / "in.pdf", Path(folder) / "out.pdf"
        source.write_bytes(data)
        subprocess.run(["qpdf", "--empty", "--pages", source, wanted, "--", out], check=True)
        return out.read_bytes()


def appended(one: bytes, other: bytes) -> bytes:
    """Put one file behind the other with pypdf."""
    writer = PdfWriter()
    for data in (one, other):
        writer.append(io.BytesIO(data))
    out = io.BytesIO()
    writer.write(out)
    return out.getvalue()


def joined(one: bytes, other: bytes) -> bytes:
    """Join two files into one, names that both have getting a number, as qpdf joins."""
    with tempfile.TemporaryDirectory() as folder:
        paths = [Path(folder) / "one.pdf", Path(folder) / "other.pdf"]
        for path, data in zip(paths, (one, other), strict=True):
            path.write_bytes(data)
        out = Path(folder) / "joined.pdf"
        subprocess.run(["qpdf", "--empty", "--pages", *map(str, paths), "--", str(out)], check=True)
        return out.read_bytes()


def locked(data: bytes, password: str) -> bytes:
    """Lock a file; without a password anyone opens it, but programs are told not to change it."""
    with Pdf.open(io.BytesIO(data)) as pdf:
        return saved(pdf, encryption=pikepdf.Encryption(user=password, owner="owner"))
