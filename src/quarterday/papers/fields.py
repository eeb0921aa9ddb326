"""Fields to fill in: described while a paper's data is gathered, made into widgets after setting.

A template sets a box with a link ``urn:field:N``; ``make_fillable`` turns the link's annotation
into the widget of field N where it stands, so position, reading order and tags are the page's own.
Tags, fields and appearances: ISO 32000-1, 12.7 and 14.8; PDF/UA-1 (ISO 14289-1), 7.18.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from typing import Literal
from urllib.parse import quote, unquote

import pikepdf
from pikepdf import Array, Dictionary, Name, NumberTree, Object, Pdf, Stream, String

from quarterday.papers.form_font import FormFont, form_font

Kind = Literal["line", "lines", "tick", "one of", "choice"]
URI = "urn:field:"
SIZE = 10.0  # of the text in a field, in points
LEADING = 12.0
INDENT = 3.0
# Flags of a field, ISO 32000-1 tables 221, 226, 228 and 230; bit 1 is the lowest.
READ_ONLY, MULTILINE, NO_TOGGLE_TO_OFF, RADIO, COMBO = 1, 1 << 12, 1 << 14, 1 << 15, 1 << 17
PRINT = 4  # an annotation that prints, table 165


def field_name(*parts: str) -> str:
    """Return the name of the field for a record's kind, key and field: ``contacts.c-1.phone``.

    A full stop divides the parts (ISO 32000-1, 12.7.3.2), so one inside a part is escaped.
    """
    return ".".join(quote(part, safe=" -_~/:@").replace(".", "%2E") for part in parts)


def field_parts(name: str) -> tuple[str, ...]:
    """Return the parts that ``field_name`` put together."""
    return tuple(unquote(part) for part in name.split("."))


@dataclass(frozen=True, slots=True)
class Field:
    """A field: its name, what it holds now, what a screen reader says of it, and its choices."""

    name: str
    kind: Kind
    tip: str
    value: str = ""
    options: tuple[tuple[str, str], ...] = ()  # what is stored, what is shown


@dataclass
class Fields:
    """The fields of one package, numbered in the order they are described."""

    described: list[Field] = field(default_factory=list)

    def add(self, described: Field, label: str, **more: object) -> dict[str, object]:
        """Keep a field; return what the template needs to draw it."""
        if any(other.name == described.name for other in self.described):
            raise ValueError(f"The field {described.name} is described twice.")
        self.described.append(described)
        options = [{"id": id, "label": shown} for id, shown in described.options]
        number = len(self.described) - 1
        drawn = {"number": number, "kind": described.kind, "label": label}
        return drawn | ({"options": options} if options else {}) | more


@dataclass(frozen=True, slots=True)
class Spot:
    """A link that stands for a field: its page, annotation, element, and option when it has one."""

    page: pikepdf.Page
    annotation: Object
    element: Object
    option: str


def make_fillable(pdf: Pdf, fields: Sequence[Field], hidden: Mapping[str, str]) -> None:
    """Turn the field links of ``pdf`` into widgets and add the ``hidden`` read-only fields.

    Raises ValueError when a field has no place in the pages, or the wrong number of them.
    """
    if not fields:
        return
    spots: dict[int, list[Spot]] = {}
    for number, spot in _spots(pdf):
        spots.setdefault(number, []).append(spot)
    maker = _Maker(pdf, form_font())
    tree = _Tree(pdf)
    for number, described in enumerate(fields):
        tree.put(described.name, maker.make(described, spots.get(number, [])))
    for name, value in hidden.items():
        holder = Dictionary(FT=Name.Tx, V=String(value), Ff=READ_ONLY)
        tree.put(name, pdf.make_indirect(holder))
    pdf.Root.AcroForm = Dictionary(
        Fields=tree.top, DR=Dictionary(Font=Dictionary(QdForm=maker.font)), DA=maker.look
    )


def _spots(pdf: Pdf) -> Iterator[tuple[int, Spot]]:
    elements = NumberTree(pdf.Root.StructTreeRoot.ParentTree)
    for page in pdf.pages:
        for annotation in page.obj.get("/Annots", ()):
            address = str(annotation.get("/A", Dictionary()).get("/URI", ""))
            if address.startswith(URI):
                number, _, option = address.removeprefix(URI).partition("/")
                element = elements[int(annotation.StructParent)]
                yield int(number), Spot(page, annotation, element, option)


class _Tree:
    """The hierarchy of fields: a parent for each part of a name but the last."""

    def __init__(self, pdf: Pdf) -> None:
        self.pdf = pdf
        self.top = Array()
        self.parents: dict[tuple[str, ...], Object] = {}

    def put(self, name: str, leaf: Object) -> None:
        *above, last = name.split(".")
        leaf.T = String(last)
        self._hang(tuple(above), leaf)

    def _hang(self, above: tuple[str, ...], leaf: Object) -> None:
        if not above:
            self.top.append(leaf)
            return
        if above not in self.parents:
            parent = self.pdf.make_indirect(Dictionary(T=String(above[-1]), Kids=Array()))
            self.parents[above] = parent
            self._hang(above[:-1], parent)
        leaf.Parent = self.parents[above]
        self.parents[above].Kids.append(leaf)


class _Maker:
    """Makes the widgets of one document."""

    def __init__(self, pdf: Pdf, font: FormFont) -> None:
        self.pdf = pdf
        self.letters = font
        self.font = font.embed(pdf)
        self.look = String(f"/QdForm {SIZE:g} Tf 0 g")
        self.marks: dict[tuple[str, float, float], Object] = {}

    def make(self, described: Field, spots: list[Spot]) -> Object:
        wanted = max(1, len(described.options)) if described.kind == "one of" else 1
        if len(spots) != wanted:
            raise ValueError(f"Field {described.name} has {len(spots)} places, not {wanted}.")
        for spot in spots:
            _become_widget(spot, described.tip)
        if described.kind == "one of":
            return self._one_of(described, spots)
        widget = spots[0].annotation
        widget.TU = String(described.tip)
        if described.kind == "tick":
            self._tick(widget, described)
        else:
            self._written(widget, described)
        return widget

    def _written(self, widget: Object, described: Field) -> None:
        shown = dict(described.options).get(described.value, described.value)
        widget.FT = Name.Tx
        widget.DA = self.look
        widget.V = String(described.value)
        if described.kind == "lines":
            widget.Ff = MULTILINE
        if described.kind == "choice":
            widget.FT = Name.Ch
            widget.Ff = COMBO
            widget.Opt = Array([Array([String(a), String(b)]) for a, b in described.options])
        # Each field owns its appearance: fillers rewrite it in place.
        widget.AP = Dictionary(N=self._text(widget, shown, described.kind == "lines"))

    def _tick(self, widget: Object, described: Field) -> None:
        widget.FT = Name.Btn
        self._switch(widget, "Yes", on=described.value == "Yes", mark=_tick_mark)
        widget.V = widget.AS

    def _one_of(self, described: Field, spots: list[Spot]) -> Object:
        parent = self.pdf.make_indirect(
            Dictionary(
                FT=Name.Btn,
                Ff=RADIO | NO_TOGGLE_TO_OFF,
                TU=String(described.tip),
                V=Name("/" + (described.value or "Off")),
                Kids=Array([spot.annotation for spot in spots]),
            )
        )
        for spot in spots:
            self._switch(spot.annotation, spot.option, spot.option == described.value, _dot_mark)
            spot.annotation.Parent = parent
            shown = dict(described.options)[spot.option]
            spot.annotation.TU = String(f"{described.tip}: {shown}")
        return parent

    def _switch(
        self, widget: Object, state: str, on: bool, mark: Callable[[float, float], str]
    ) -> None:
        width, height = _extent(widget)
        name = Name("/" + state)
        drawn = self._mark(mark.__name__, width, height, mark(width, height))
        blank = self._mark("blank", width, height, "")
        widget.AP = Dictionary(N=Dictionary({str(name): drawn, "/Off": blank}))
        widget.AS = name if on else Name.Off

    def _mark(self, kind: str, width: float, height: float, drawing: str) -> Object:
        key = (kind, width, height)
        if key not in self.marks:
            self.marks[key] = self._appearance(width, height, drawing.encode("ascii"))
        return self.marks[key]

    def _text(self, widget: Object, text: str, many: bool) -> Object:
        width, height = _extent(widget)
        lines = list(_wrapped(text, width - 2 * INDENT, self.letters)) if many else [text]
        first = height - SIZE - 2 if many else (height - SIZE) / 2 + 2.2
        shown = "".join(f"{_literal(self.letters.encode(line))} Tj T*\n" for line in lines if line)
        drawing = (
            f"/Tx BMC q 1 1 {width - 2:.2f} {height - 2:.2f} re W n BT "
            f"/QdForm {SIZE:g} Tf 0 g {LEADING:g} TL {INDENT:g} {first:.2f} Td\n{shown}ET Q EMC"
        )
        return self._appearance(width, height, drawing.encode("latin-1"))

    def _appearance(self, width: float, height: float, drawing: bytes) -> Object:
        stream = Stream(self.pdf, drawing)
        stream.Type = Name.XObject
        stream.Subtype = Name.Form
        stream.BBox = Array([0, 0, round(width, 2), round(height, 2)])
        stream.Resources = Dictionary(Font=Dictionary(QdForm=self.font))
        return stream


def _become_widget(spot: Spot, tip: str) -> None:
    for key in ("/A", "/Border", "/Contents"):
        if key in spot.annotation:
            del spot.annotation[key]
    spot.annotation.Subtype = Name.Widget
    spot.annotation.F = PRINT
    spot.element.S = Name.Form
    spot.element.Alt = String(tip)
    spot.page.obj.Tabs = Name.S


def _extent(widget: Object) -> tuple[float, float]:
    left, bottom, right, top = (float(number) for number in widget.Rect.as_list())
    return right - left, top - bottom


def _tick_mark(width: float, height: float) -> str:
    at = ((0.2, 0.5), (0.42, 0.24), (0.82, 0.8))
    points = [f"{x * width:.2f} {y * height:.2f}" for x, y in at]
    return f"q 1.4 w 1 J 1 j {points[0]} m {points[1]} l {points[2]} l S Q"


def _dot_mark(width: float, height: float) -> str:
    return f"q {width * 0.5:.2f} w 1 J {width / 2:.2f} {height / 2:.2f} m h S Q"


def _literal(text: bytes) -> str:
    escaped = re.sub(rb"([\\()])", rb"\\\1", text)
    return f"({escaped.decode('latin-1')})"


def _wrapped(text: str, width: float, letters: FormFont) -> Iterable[str]:
    """Yield the lines of ``text`` that fit ``width`` points, broken between words."""
    for paragraph in text.split("\n"):
        line = ""
        for word in paragraph.split(" "):
            longer = f"{line} {word}" if line else word
            if line and letters.width(longer) * SIZE > width:
                yield line
                line = word
            else:
                line = longer
        yield line
