"""What somebody hears who cannot see the page: tags, their order, alternatives, language.

Roles and rules: PDF/UA-1 (ISO 14289-1), 7.1 to 7.5; read with pikepdf and pypdf.
"""

from __future__ import annotations

import io
import re
from itertools import pairwise
from pathlib import Path

import pytest
from pikepdf import Pdf

from . import given
from .reading import elements, page_texts, reader

LANGUAGES = ("en", "fr")


@pytest.mark.parametrize("language", LANGUAGES)
def test_headings_start_at_one_and_skip_no_level(language: str) -> None:
    found = [e.role for e in elements(given.package(language=language).pdf)]
    levels = [int(role[1]) for role in found if re.fullmatch(r"H[1-6]", role)]
    assert levels[0] == 1
    assert all(after <= before + 1 for before, after in pairwise(levels))


def test_every_paper_opens_with_a_heading_of_its_own() -> None:
    """One first-level heading for each paper, and one more for each further building and copy."""
    package, of = given.package(), given.setting()
    found = [e.role for e in elements(package.pdf)].count("H1")
    further = len(of.pictures) - 1
    assert found == len(package.enclosed) + further


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_chart_says_its_message_and_its_numbers(language: str) -> None:
    told = [
        element.alternative
        for element in elements(given.package(language=language).pdf)
        if element.role == "Figure"
    ]
    assert len(told) >= 3
    assert all(len(text) > 60 and len(re.findall(r"\d", text)) >= 8 for text in told)


def test_the_alternative_of_a_building_s_chart_holds_the_page_s_own_figures() -> None:
    told = " ".join(e.alternative for e in elements(given.package().pdf) if e.role == "Figure")
    for picture in given.setting().pictures:
        assert picture.costs is not None
        assert given.setting().dollars(picture.costs.rebuilt.money) in told


def test_every_table_has_a_header_row_and_no_empty_header() -> None:
    found = elements(given.package().pdf)
    tables = [element for element in found if element.role == "Table"]
    heads = [element for element in found if element.role == "TH"]
    assert len(tables) > 10
    assert len(heads) >= 2 * len(tables)
    assert all(head.has_content for head in heads)


def test_the_letter_is_read_in_the_order_it_is_written(tmp_path: Path) -> None:
    """pypdf follows the content stream: conclusion, greeting, agenda, enclosures."""
    text = " ".join(reader(given.package().pdf).pages[0].extract_text().split())
    marks = ["Lantern Street", "decisions before", "Dear ", "What to decide", "are enclosed"]
    places = [text.index(mark) for mark in marks]
    assert places == sorted(places)
    assert "Lantern Street" in page_texts(given.package().pdf, tmp_path)[0]


def test_headings_are_read_in_the_order_of_the_pages() -> None:
    """The tag tree meets the pages in order: nothing is read before what stands above it."""
    pages = [
        element.page
        for element in elements(given.package().pdf)
        if element.role in {"H1", "H2", "H3"} and element.page is not None
    ]
    assert pages == sorted(pages)
    assert len(set(pages)) > 10


@pytest.mark.parametrize("language", LANGUAGES)
def test_the_language_is_stated(language: str) -> None:
    with Pdf.open(io.BytesIO(given.package(language=language).pdf)) as pdf:
        assert str(pdf.Root.Lang).startswith(language)


@pytest.mark.parametrize("language", LANGUAGES)
def test_each_building_has_one_page_in_every_package_of_the_demo_book(language: str) -> None:
    for id in given.book():
        count = len(given.setting(id, language).pictures)
        if not count:
            continue
        package = given.package(id, language)
        opened = [e.page for e in elements(package.pdf) if e.role == "H1" and e.page is not None]
        first = [paper for paper, _ in package.enclosed].index("building-values")
        pages = opened[first : first + count + 1]
        assert all(after - before == 1 for before, after in pairwise(pages)), id
