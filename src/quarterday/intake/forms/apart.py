"""Look into a PDF that came from outside, in a process of its own with little memory and time.

``python -m quarterday.intake.forms.apart`` reads the document on stdin and writes what it saw on
stdout, as JSON. Nothing of the document is run or opened further. Fields: ISO 32000-1, 12.7.
"""

from __future__ import annotations

import io
import json
import sys
from collections.abc import Iterator
from typing import Any

import pikepdf
from pikepdf import Dictionary, Name, Object, Pdf

MEMORY = 1024**3  # bytes
SECONDS = 20  # of the processor's time
LONGEST = 20_000  # characters of a field that are handed on
DEEPEST = 40  # levels of fields
MOST_TEXT = 600_000
MOST_PAGES_OF_TEXT = 150
LOCKED, BROKEN = 3, 4  # how the process ends when there is nothing to read
PROGRAMS = {"/JavaScript", "/Launch", "/SubmitForm", "/ImportData", "/Rendition", "/GoToE"}
OFF = "Off"
Seen = dict[str, Any]


def look(data: bytes) -> Seen:
    """Return what stands in a PDF: fields with what they hold, and whatever does not belong."""
    with Pdf.open(io.BytesIO(data)) as pdf:
        fields = list(_fields(pdf))
        marks = set(_marks(pdf))
        named = {field["name"] for field in fields}
        return {
            "pages": len(pdf.pages),
            "fields": fields,
            "marks": sorted(marks),
            "text": "" if "_record" in named else _text(data),
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
    for page in pdf.pages:
        for annotation in page.obj.get("/Annots", Dictionary()):
            if isinstance(annotation, Dictionary) and annotation.get("/Subtype") == Name.Widget:
                placed.add(annotation.objgen)
                yield _seen(annotation, shown=True)
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


def _confine() -> None:
    if sys.platform != "win32":  # there, the time the caller waits is the only bound
        import resource

        resource.setrlimit(resource.RLIMIT_AS, (MEMORY, MEMORY))
        resource.setrlimit(resource.RLIMIT_CPU, (SECONDS, SECONDS))


def main() -> int:
    """Read stdin, write what was seen; return how the process ends."""
    _confine()
    try:
        seen = look(sys.stdin.buffer.read())
    except pikepdf.PasswordError:
        return LOCKED
    except (pikepdf.PdfError, ValueError, RuntimeError, TypeError, AttributeError, KeyError):
        return BROKEN
    sys.stdout.buffer.write(json.dumps(seen).encode("ascii"))
    return 0


if __name__ == "__main__":
    sys.exit(main())
