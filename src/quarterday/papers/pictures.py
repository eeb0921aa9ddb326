"""Logos and signatures: read from a file, held to shapes or a plain photograph, kept as SVG text.

An SVG may hold shapes and nothing else: no script, no link, no text that would need a font, nothing
from outside. A PNG or JPEG is wrapped as it is. The papers take both the same way.
"""

from __future__ import annotations

import base64
import io
import re
from collections.abc import Iterator
from pathlib import Path
from xml.etree.ElementTree import Element, ParseError

from defusedxml import DefusedXmlException
from defusedxml.ElementTree import fromstring
from PIL import Image, UnidentifiedImageError

LARGEST = 500_000  # bytes
WIDEST = 4_000  # pixels
_SPACE = "{http://www.w3.org/2000/svg}"
SHAPES = frozenset(
    {
        "svg", "g", "path", "rect", "circle", "ellipse", "line", "polyline", "polygon", "defs",
        "linearGradient", "radialGradient", "stop", "clipPath", "mask", "use", "symbol", "title",
        "desc", "metadata",
    }
)  # fmt: skip
_OUTSIDE = re.compile(r"url\(\s*['\"]?(?!#)|@import|expression\(|javascript:", re.IGNORECASE)
_RASTER = {"PNG": "image/png", "JPEG": "image/jpeg"}


class BadPicture(ValueError):
    """Raised when a file cannot serve as a picture; its text says why and what to do."""


def read_picture(file: Path) -> str:
    """Return a picture as SVG text; BadPicture says in a sentence why it cannot be used."""
    try:
        size = file.stat().st_size
    except OSError as error:
        raise BadPicture(
            f"there is no file {file.name}; put it there or remove the line"
        ) from error
    if size > LARGEST:
        raise BadPicture(f"{file.name} has {size:,} bytes; make it smaller than {LARGEST:,}")
    content = file.read_bytes()
    is_drawn = file.suffix.lower() == ".svg" or content.lstrip()[:1] == b"<"
    return _drawn(content, file.name) if is_drawn else _photographed(content, file.name)


def _drawn(content: bytes, name: str) -> str:
    try:
        root = fromstring(content, forbid_dtd=True)
    except (ParseError, DefusedXmlException, ValueError, RecursionError) as error:
        raise BadPicture(f"{name} is not a plain SVG drawing; export it anew") from error
    if root.tag != f"{_SPACE}svg" or not ({"viewBox", "width"} & set(root.keys())):
        raise BadPicture(f"{name} is not a plain SVG drawing with a size; export it anew")
    for fault in _faults(root):
        raise BadPicture(
            f"{name} holds {fault}; a picture may hold shapes alone. Export it as plain SVG, its "
            "text turned to outlines, or as PNG"
        )
    return content.decode("utf-8-sig")


def _faults(root: Element) -> Iterator[str]:
    for element in root.iter():
        tag = str(element.tag).removeprefix(_SPACE)
        if tag not in SHAPES and "}" not in tag:
            yield f"<{tag}>"
        for name, value in element.items():
            plain = name.rpartition("}")[2]
            if plain.lower().startswith("on"):
                yield f"the script {plain}"
            if (plain == "href" and not value.startswith("#")) or _OUTSIDE.search(value):
                yield "something from outside the drawing"


def _photographed(content: bytes, name: str) -> str:
    try:
        with Image.open(io.BytesIO(content), formats=list(_RASTER)) as picture:
            kind, (width, height) = picture.format or "", picture.size
            if max(width, height) > WIDEST:
                raise BadPicture(f"{name} is {width} by {height} pixels; {WIDEST} are enough")
            picture.load()
    except (UnidentifiedImageError, OSError, SyntaxError, Image.DecompressionBombError) as error:
        raise BadPicture(f"{name} is not an image; use SVG, PNG or JPEG") from error
    data = base64.b64encode(content).decode()
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {width} {height}" '
        f'width="{width}" height="{height}"><image width="{width}" height="{height}" '
        f'href="data:{_RASTER[kind]};base64,{data}"/></svg>'
    )
