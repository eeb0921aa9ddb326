"""The same file through tools that had no part in making it: poppler and pypdf.

Reading order: poppler's ``pdfinfo -struct-text`` walks the tag tree on its own. Alternatives: pypdf
walks it again. Rendering: poppler's picture of each page beside the typesetter's own.
"""

from __future__ import annotations

import io
import json
import re
import subprocess
from collections.abc import Iterator
from functools import cache
from pathlib import Path
from typing import Any

import numpy as np
import pytest
import typst
from PIL import Image
from pypdf import PdfReader
from pypdf.generic import ArrayObject, DictionaryObject

from quarterday.papers.dress import dress
from quarterday.papers.package import _data, _enclosed
from quarterday.papers.press import FONTS, HERE, with_curled_apostrophes

from . import given
from .reading import elements

LANGUAGES = ("en", "fr")
FILES = (given.FLAGSHIP, given.RENTER)
RESOLUTION = 30  # dots an inch; both are drawn so
# Poppler reads the renter's package alone: it goes over a page again for each of its elements.
# Two rasterisers smooth edges differently, and a form's own look is drawn by poppler alone.
MOST_APART = 0.06  # mean difference of a page's grey, of 1
LEAST_ALIKE = 0.55  # correlation of a page's ink

Page = np.ndarray[Any, np.dtype[np.float64]]


@cache
def read_aloud(id: str, language: str) -> tuple[tuple[str, str], ...]:
    """Return what poppler reads along the tags: role and text, in order."""
    told = subprocess.run(
        ["pdfinfo", "-struct-text", "-"], input=given.package(id, language).pdf,
        capture_output=True, check=True, timeout=500,
    ).stdout.decode(errors="replace")  # fmt: skip # poppler prints attributes as the file has them
    return tuple(_read(told))


def _read(told: str) -> Iterator[tuple[str, str]]:
    role = ""
    for line in told.splitlines():
        plain = line.strip()
        text = re.fullmatch(r'"(.*)"', plain)
        if text:
            yield role, text[1]
        elif plain and not plain.startswith("/"):
            role = re.split(r"[ :]", plain)[0]
            if role == "Form":
                yield role, ""


def headings(id: str, language: str) -> list[str]:
    """Return the first-level headings as poppler reads them, lines joined."""
    found: list[str] = []
    before = ""
    for role, text in read_aloud(id, language):
        if role == "H1" and before == "H1":
            found[-1] = f"{found[-1]} {text}"
        elif role == "H1":
            found.append(text)
        before = role
    return found


def heard(text: str) -> str:
    """Return what poppler prints of ``text``: it stops at a no-break space of a heading."""
    return " ".join(re.split("[\u00a0\u202f]", text)[0].split())


@pytest.mark.parametrize("language", LANGUAGES)
def test_poppler_reads_the_papers_in_the_order_the_letter_lists_them(language: str) -> None:
    id = given.RENTER
    of = given.setting(id, language)
    papers = _data(of, _enclosed(of))["papers"]
    firsts = [p["data"].get("opening", {}).get("title") for p in papers]
    wanted = [heard(with_curled_apostrophes(title)) for title in firsts if title]
    read = [heard(text) for text in headings(id, language)]
    places = [next(n for n, h in enumerate(read) if h.startswith(title)) for title in wanted]
    assert len(wanted) > 10
    assert places == sorted(places)


@pytest.mark.parametrize("language", LANGUAGES)
def test_poppler_reads_a_field_s_question_before_the_field(language: str) -> None:
    """In the letter's form of decisions: the decision, then its four answers, then the words."""
    read = read_aloud(given.RENTER, language)
    titles = {heard(with_curled_apostrophes(given.setting(given.RENTER, language).spoken(f.title)))
              for f in given.reviewed(given.RENTER).agenda}  # fmt: skip
    at = [n for n, (role, text) in enumerate(read) if role == "H3" and heard(text[3:]) in titles]
    assert len(at) == len(titles)
    fields = [n for n, (role, _) in enumerate(read) if role == "Form"]
    for start in at:
        following = [n for n in fields if n > start][:5]
        assert following[-1] - start < 40


@pytest.mark.parametrize("language", LANGUAGES)
def test_poppler_meets_every_field_once(language: str) -> None:
    id = given.RENTER
    met = sum(role == "Form" for role, _ in read_aloud(id, language))
    pages = PdfReader(io.BytesIO(given.package(id, language).pdf)).pages
    widgets = [a for page in pages for a in page.get("/Annots", [])
               if a.get_object()["/Subtype"] == "/Widget"]  # fmt: skip
    assert met == len(widgets) > 50


def alternatives(node: Any) -> Iterator[str]:
    """Yield every alternative text below a node of pypdf's view of the tags, in order."""
    node = node.get_object()
    if isinstance(node, ArrayObject):
        for child in node:
            yield from alternatives(child)
    elif isinstance(node, DictionaryObject) and "/S" in node:
        if "/Alt" in node:
            yield str(node["/Alt"])
        if "/K" in node:
            yield from alternatives(node["/K"])


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("id", FILES)
def test_pypdf_finds_the_same_alternatives_in_the_same_order(id: str, language: str) -> None:
    pdf = given.package(id, language).pdf
    root: Any = PdfReader(io.BytesIO(pdf)).trailer["/Root"]
    found = list(alternatives(root["/StructTreeRoot"]["/K"]))
    assert found == [e.alternative for e in elements(pdf) if e.alternative]
    assert len(found) >= 3


def as_typeset(id: str, language: str) -> list[Page]:
    """Return the pages as the typesetter itself draws them."""
    of = given.setting(id, language)
    data = {"house": house_of(id, language), "papers": _data(of, _enclosed(of))["papers"]}
    text = with_curled_apostrophes(json.dumps(data, ensure_ascii=False, sort_keys=True))
    pages: Any = typst.compile(
        str(HERE / "package.typ"), root=str(HERE), font_paths=[str(FONTS)],
        ignore_system_fonts=True, format="png", ppi=RESOLUTION,
        sys_inputs={**dress(of.brokerage, of.speech), "data": text},
    )  # fmt: skip
    drawn: list[bytes] = list(pages) if not isinstance(pages, bytes) else [pages]
    return [_grey(Image.open(io.BytesIO(page))) for page in drawn]


def house_of(id: str, language: str) -> Any:
    of = given.setting(id, language)
    return _data(of, _enclosed(of))["house"]


def as_poppler(pdf: bytes, folder: Path) -> list[Page]:
    command = ["pdftoppm", "-r", str(RESOLUTION), "-png", "-", str(folder / "page")]
    subprocess.run(command, input=pdf, check=True, timeout=300, capture_output=True)
    return [_grey(Image.open(file)) for file in sorted(folder.glob("page-*.png"))]


def _grey(picture: Image.Image) -> Page:
    return np.asarray(picture.convert("L"), dtype=float) / 255


def apart(one: Page, other: Page) -> tuple[float, float]:
    """Return how far two pictures of a page are apart: mean difference, and correlation."""
    rows, columns = (min(a, b) for a, b in zip(one.shape, other.shape, strict=True))
    a, b = one[:rows, :columns], other[:rows, :columns]
    return float(np.abs(a - b).mean()), float(np.corrcoef(a.ravel(), b.ravel())[0, 1])


@pytest.mark.parametrize("language", LANGUAGES)
def test_poppler_renders_each_page_as_it_was_typeset(language: str, tmp_path: Path) -> None:
    mine = as_typeset(given.RENTER, language)
    theirs = as_poppler(given.package(given.RENTER, language).pdf, tmp_path)
    assert len(mine) == len(theirs) > 20
    found = [apart(a, b) for a, b in zip(mine, theirs, strict=True)]
    assert [(n, f) for n, f in enumerate(found, 1) if f[0] > MOST_APART] == []
    assert [(n, f) for n, f in enumerate(found, 1) if f[1] < LEAST_ALIKE] == []
    # A control: a page beside another one is found out.
    assert all(apart(a, b)[1] < LEAST_ALIKE for a, b in zip(mine, theirs[1:], strict=False))
