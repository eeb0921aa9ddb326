"""Read a finished package back with libraries that had no part in making it."""

from __future__ import annotations

import io
import subprocess
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

import pikepdf
from pypdf import PdfReader


def reader(pdf: bytes) -> PdfReader:
    """Return pypdf's view of a file."""
    return PdfReader(io.BytesIO(pdf))


def values(pdf: bytes) -> dict[str, str]:
    """Return what pypdf finds in each field that holds a value of its own."""
    fields = reader(pdf).get_fields() or {}
    return {name: str(f.get("/V", "")) for name, f in fields.items() if "/FT" in f}


def page_texts(pdf: bytes, folder: Path) -> list[str]:
    """Return the text of each page as poppler reads it; fail on anything poppler complains of.

    The apostrophe of print is told as the plain one, which the wordings have.
    """
    file = folder / "package.pdf"
    file.write_bytes(pdf)
    told = subprocess.run(
        ["pdftotext", "-layout", str(file), "-"], capture_output=True, check=True, timeout=60
    )
    assert told.stderr == b""
    return told.stdout.decode().replace("’", "'").split("\f")[:-1]


@dataclass(frozen=True)
class Element:
    """An element of the tag tree: role, alternative text, page (from 0), whether it is empty."""

    role: str
    alternative: str
    page: int | None
    has_content: bool


def elements(pdf: bytes) -> list[Element]:
    """Return every element of the tag tree in reading order."""
    with pikepdf.open(io.BytesIO(pdf)) as opened:
        pages = {page.obj.objgen: number for number, page in enumerate(opened.pages)}
        return list(_below(opened.Root.StructTreeRoot.K, pages))


def _below(node: object, pages: dict[tuple[int, int], int]) -> Iterator[Element]:
    if isinstance(node, pikepdf.Array):
        for child in node.as_list():
            yield from _below(child, pages)
    elif isinstance(node, pikepdf.Dictionary) and "/S" in node:
        page = pages[node.Pg.objgen] if "/Pg" in node else None
        role = str(node.S).removeprefix("/")
        yield Element(role, str(node.get("/Alt", "")), page, "/K" in node)
        yield from _below(node.get("/K"), pages)
