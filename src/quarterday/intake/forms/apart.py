"""Look into a PDF that came from outside, in a process of its own with little memory and time.

``python -m quarterday.intake.forms.apart`` reads the document on stdin and writes what it saw on
stdout, as JSON; with the word ``pages`` it writes each page's digest too, which stays the same when
fields are filled in. Nothing of the document is run or opened further. Fields: ISO 32000-1, 12.7.
"""

from __future__ import annotations

import hashlib
import io
import json
import sys
from collections.abc import Iterator
from decimal import Decimal
from typing import Any

import pikepdf
from pikepdf import Dictionary, Name, Object, Pdf

from quarterday.intake.forms.confined import BROKEN, LOCKED, confine

LONGEST = 20_000  # characters of a field that are handed on
DEEPEST = 40  # levels of fields
MOST_TEXT = 600_000
MOST_PAGES_OF_TEXT = 150
PROGRAMS = {"/JavaScript", "/Launch", "/SubmitForm", "/ImportData", "/Rendition", "/GoToE"}
SIDES = 4  # of a rectangle
OFF = "Off"
Seen = dict[str, Any]


def look(data: bytes, *, with_pages: bool = False) -> Seen:
    """Return what stands in a PDF: fields with what they hold, and whatever does not belong."""
    with Pdf.open(io.BytesIO(data)) as pdf:
        fields = list(_fields(pdf))
        marks = set(_marks(pdf))
        named = {field["name"] for field in fields}
        return {
            "pages": len(pdf.pages),
            "fields": fields,
            "marks": sorted(marks),
            "text": "" if "_record" in named or with_pages else _text(data),
            "digests": _Digests().of_pages(pdf) if with_pages else [],
        }


def _marks(pdf: Pdf) -> Iterator[str]:
    """Yield what a form of ours never has: a program, an embedded file, a form of another kind."""
    for thing in pdf.objects:
        yield from _marks_of(thing, 0)
    if "/XFA" in pdf.Root.get("/AcroForm", Dictionary()):
        yield "xfa"


def _marks_of(thing: object, depth: int) -> Iterator[str]:
    if depth > DEEPEST:
        return
    if isinstance(thing, pikepdf.Array):
        for part in thing.as_list():
            yield from _below(part, depth)
    elif isinstance(thing, Dictionary | pikepdf.Stream):
        if "/JS" in thing or str(thing.get("/S", "")) in PROGRAMS:
            yield "program"
        if "/EF" in thing:
            yield "attachment"
        for part in thing.values():
            yield from _below(part, depth)


def _below(part: object, depth: int) -> Iterator[str]:
    if isinstance(part, Object) and not part.is_indirect:  # what is indirect has its own turn
        yield from _marks_of(part, depth + 1)


def _fields(pdf: Pdf) -> Iterator[Seen]:
    """Yield each field once for each place it has on a page, then those without a place."""
    placed = set()
    for number, page in enumerate(pdf.pages, start=1):
        for annotation in page.obj.get("/Annots", Dictionary()):
            if isinstance(annotation, Dictionary) and annotation.get("/Subtype") == Name.Widget:
                placed.add(annotation.objgen)
                yield _seen(annotation, shown=True) | {"page": number, "spot": _spot(annotation)}
    for leaf in _leaves(pdf.Root.get("/AcroForm", Dictionary()).get("/Fields"), set()):
        if leaf.objgen not in placed:
            yield _seen(leaf, shown=False)


def _leaves(nodes: object, met: set[tuple[int, int]]) -> Iterator[Object]:
    if not isinstance(nodes, pikepdf.Array):
        return
    for node in nodes.as_list():
        if not isinstance(node, Dictionary) or (node.is_indirect and node.objgen in met):
            continue
        met.add(node.objgen)
        if "/Kids" in node:
            yield from _leaves(node.get("/Kids"), met)
        else:
            yield node


def _seen(widget: Object, *, shown: bool) -> Seen:
    chain = list(_up(widget))
    names = [str(node.T) for node in reversed(chain) if isinstance(node.get("/T"), pikepdf.String)]
    value, size = _value(_inherited(chain, "/V"))
    return {
        "name": ".".join(names),
        "kind": str(_inherited(chain, "/FT") or "").lstrip("/"),
        "value": value,
        "size": size,
        "state": _state(widget),
        "shown": shown,
    }


def _spot(widget: Object) -> list[float] | None:
    """Return the rectangle of a place on its page, in points: left, bottom, right, top."""
    held = widget.get("/Rect")
    sides = list(held.as_list()) if isinstance(held, pikepdf.Array) else []
    if len(sides) != SIDES or not all(map(_is_number, sides)):
        return None
    left, bottom, right, top = map(float, sides)
    return [min(left, right), min(bottom, top), max(left, right), max(bottom, top)]


def _up(node: Object) -> Iterator[Object]:
    for _ in range(DEEPEST):
        yield node
        above = node.get("/Parent")
        if not isinstance(above, Dictionary):
            return
        node = above


def _inherited(chain: list[Object], key: str) -> object:
    return next((node.get(key) for node in chain if key in node), None)


def _value(held: object) -> tuple[str | None, int]:
    """Return a field's value as text and its length; no text when it is none or too long."""
    if held is None:
        return "", 0
    if isinstance(held, Name):
        return str(held).lstrip("/"), len(str(held))
    if not isinstance(held, pikepdf.String):
        return None, 0
    text = str(held)
    return (text if len(text) <= LONGEST else None), len(text)


def _state(widget: Object) -> str | None:
    """Return the state a switch shows; None for what is not a switch."""
    state = widget.get("/AS")
    return str(state).lstrip("/") if isinstance(state, Name) else None


def _text(data: bytes) -> str:
    """Return the words printed on the pages, as far as they are words and not a picture."""
    from pypdf import PdfReader
    from pypdf.errors import PyPdfError

    try:
        pages = PdfReader(io.BytesIO(data)).pages
        parts = [page.extract_text() for page in pages[:MOST_PAGES_OF_TEXT]]
    except (PyPdfError, ValueError, KeyError, TypeError, AttributeError, RecursionError):
        return ""  # a page that cannot be read has no words; its picture is still there
    return "\n".join(parts)[:MOST_TEXT]


class _Digests:
    """The digest of each page: what is drawn on it and where its fields lie, not what they hold."""

    LEFT_OUT = frozenset(
        {"/Parent", "/P", "/StructParent", "/StructParents", "/Annots", "/Metadata", "/Length",
         "/Filter", "/DecodeParms", "/Tabs"}
    )  # fmt: skip

    def __init__(self) -> None:
        self._known: dict[tuple[int, int], str] = {}

    def of_pages(self, pdf: Pdf) -> list[str]:
        return [self._page(page) for page in pdf.pages]

    def _page(self, page: pikepdf.Page) -> str:
        contents = page.obj.get("/Contents")
        parts = contents.as_list() if isinstance(contents, pikepdf.Array) else [contents]
        drawn = b"\n".join(p.read_bytes() for p in parts if isinstance(p, pikepdf.Stream))
        told = [hashlib.sha256(b" ".join(drawn.split())).hexdigest()]
        told += [self._of(page.obj.get("/MediaBox"), 0), self._of(page.obj.get("/Resources"), 0)]
        told += sorted(filter(None, map(self._annotation, page.obj.get("/Annots", Dictionary()))))
        return _hashed("\n".join(told))

    def _annotation(self, annotation: Object) -> str:
        if annotation.get("/Subtype") != Name.Widget:
            return self._of(annotation, 0)
        seen = _seen(annotation, shown=True)
        if seen["kind"] == "Sig":
            return ""
        flags = int(annotation.get("/F", 0))
        return f"{seen['name']} {flags} {self._of(annotation.get('/Rect'), 0)}"

    def _of(self, thing: object, depth: int) -> str:
        if not isinstance(thing, Object) or depth > DEEPEST:
            return _plain(thing)
        if not thing.is_indirect:
            return self._made(thing, depth)
        if thing.objgen not in self._known:
            self._known[thing.objgen] = "above"  # for what leads back to itself
            self._known[thing.objgen] = self._made(thing, depth)
        return self._known[thing.objgen]

    def _made(self, thing: Object, depth: int) -> str:
        if isinstance(thing, pikepdf.Array):
            return _hashed(" ".join(self._of(part, depth + 1) for part in thing.as_list()))
        if not isinstance(thing, Dictionary | pikepdf.Stream):
            return _hashed(str(thing))
        named = sorted(key for key in thing.keys() if key not in self.LEFT_OUT)  # noqa: SIM118
        told = [f"{key} {self._of(thing.get(key), depth + 1)}" for key in named]
        if isinstance(thing, pikepdf.Stream):
            told.append(hashlib.sha256(_unpacked(thing)).hexdigest())
        return _hashed("\n".join(told))


def _unpacked(stream: pikepdf.Stream) -> bytes:
    """Return what a stream holds; as it is packed where only a picture's own reader unpacks it."""
    try:
        return stream.read_bytes()
    except pikepdf.PdfError:
        return stream.read_raw_bytes()


def _plain(thing: object) -> str:
    """Return a number in one form: a program may write 612 as 612.0."""
    return f"{Decimal(str(thing)).normalize():f}" if _is_number(thing) else str(thing)


def _is_number(thing: object) -> bool:
    return isinstance(thing, int | Decimal) and not isinstance(thing, bool)


def _hashed(text: str) -> str:
    return hashlib.sha256(text.encode("utf-8", "backslashreplace")).hexdigest()


def main() -> int:
    """Read stdin, write what was seen; return how the process ends."""
    confine()
    try:
        seen = look(sys.stdin.buffer.read(), with_pages="pages" in sys.argv[1:])
    except pikepdf.PasswordError:
        return LOCKED
    except (pikepdf.PdfError, ValueError, RuntimeError, TypeError, AttributeError, KeyError):
        return BROKEN
    sys.stdout.buffer.write(json.dumps(seen).encode("ascii"))
    return 0


if __name__ == "__main__":
    sys.exit(main())
