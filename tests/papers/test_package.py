"""The package as a whole: what goes in, in which order, and that it never changes by itself."""

from __future__ import annotations

import hashlib
import subprocess
import sys
from pathlib import Path

import pytest
from pikepdf import Pdf

import quarterday
from quarterday.catalogue.load import reference
from quarterday.catalogue.speech import Speech
from quarterday.papers.decisions_form import data as decisions
from quarterday.papers.letter import data as letter
from quarterday.papers.package import PAPERS, _enclosed, build
from quarterday.papers.parts import FORMS

from . import given
from .reading import page_texts, reader

LANGUAGES = ("en", "fr")
IN_TWO_PAGES = ("HW-1001", "HW-1003", "HW-1010", "HW-1019", "HW-1028")
LEAST_WORDS = 40  # the feet alone have about twenty
IN_A_NEW_PROCESS = """
import sys; sys.path[:0] = [{tests!r}, {source!r}]
import hashlib, papers.given as given
print(hashlib.sha256(given.package({file!r}, "fr").pdf).hexdigest())
"""


@pytest.mark.parametrize("language", LANGUAGES)
def test_the_same_input_gives_the_same_bytes(language: str) -> None:
    told = given.reviewed(given.FLAGSHIP)
    again = build(
        told, given.case(given.FLAGSHIP), given.brokerage(), language, version=1,
        built_on=given.AS_OF, signed=given.signature(told),
    )  # fmt: skip
    assert again.pdf == given.package(given.FLAGSHIP, language).pdf


@pytest.mark.parametrize("zone", ["UTC", "Pacific/Auckland"])
def test_another_process_in_another_time_zone_gives_the_same_bytes(zone: str) -> None:
    here = hashlib.sha256(given.package(given.FLAGSHIP, "fr").pdf).hexdigest()
    tests = str(Path(__file__).parent.parent)
    source = str(Path(quarterday.__file__).parent.parent)
    script = IN_A_NEW_PROCESS.format(tests=tests, source=source, file=given.FLAGSHIP)
    there = subprocess.run(
        [sys.executable, "-c", script], capture_output=True, text=True, check=True, timeout=120,
        env={"TZ": zone, "LANG": "C", "PYTHONHASHSEED": "7", "PATH": ""},
    )  # fmt: skip
    assert there.stdout.strip() == here


def test_another_version_gives_other_bytes() -> None:
    """The check of sameness above could not fail if nothing made a difference."""
    told = given.reviewed(given.FLAGSHIP)
    other = build(
        told, given.case(given.FLAGSHIP), given.brokerage(), "en", version=2,
        built_on=given.AS_OF, signed=given.signature(told),
    )  # fmt: skip
    assert other.pdf != given.package().pdf


def test_every_page_of_an_unsigned_package_says_that_it_is_a_draft(tmp_path: Path) -> None:
    for language in LANGUAGES:
        mark = Speech(reference("canada"), language).say
        said = " ".join(mark(given.words_of("package-draft")).split())
        texts = page_texts(given.package(given.FLAGSHIP, language, signed=False).pdf, tmp_path)
        assert [said in " ".join(text.split()) for text in texts] == [True] * len(texts)


def test_no_page_of_a_signed_package_says_that_it_is_a_draft(tmp_path: Path) -> None:
    texts = page_texts(given.package().pdf, tmp_path)
    assert not any("not for delivery" in text for text in texts)


def test_a_signed_package_names_its_reviewer_and_the_licence(tmp_path: Path) -> None:
    letter = "".join(page_texts(given.package().pdf, tmp_path)[:4])
    assert "Ruth Abernethy" in letter
    assert "LIC-000141" in letter


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_page_says_file_term_language_day_version_and_its_number(
    language: str, tmp_path: Path
) -> None:
    texts = page_texts(given.package(given.FLAGSHIP, language).pdf, tmp_path)
    speech = Speech(reference("canada"), language)
    of = "of" if language == "en" else "de"
    name = "English" if language == "en" else "Français"
    for number, text in enumerate(texts, start=1):
        flat = " ".join(text.split())
        assert f"Page {number} {of} {len(texts)}" in flat
        assert given.FLAGSHIP in flat
        assert name in flat
        assert "version 1" in flat
        assert " ".join(speech.day(given.AS_OF).split()) in flat


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("id", IN_TWO_PAGES)
def test_two_pages_say_what_to_decide_what_is_enclosed_and_who_signed(
    id: str, language: str, tmp_path: Path
) -> None:
    """Page one: each decision with price and day, and every enclosure; page two: each in full."""
    of, made = given.setting(id, language), given.package(id, language)
    agenda = of.review.agenda
    assert len(agenda) <= 5
    first, second = (" ".join(text.split()) for text in page_texts(made.pdf, tmp_path)[:2])
    for finding in agenda:
        begins = " ".join(of.spoken(finding.title).split()[:4])
        assert begins in first
        assert begins in second
        for said in (
            letter.price(of, finding.priority.cost),
            of.short_day(of.review.deadline(finding)),
        ):
            assert " ".join(said.split()) in first
    for paper, why in made.enclosed[1:]:
        assert of.say("paper-name", paper=given.paper(paper)).split()[0] in first
        assert " ".join(of.spoken(why).split()[:3]) in first
    if agenda:
        assert "Ruth Abernethy" in second


def test_the_outline_leads_to_every_paper() -> None:
    """pypdf reads the bookmarks: one for the opening of each enclosed paper, in order."""
    package = given.package()
    tops = [item.title for item in reader(package.pdf).outline if not isinstance(item, list)]
    assert len(tops) >= len(package.enclosed)


def test_only_what_applies_is_enclosed() -> None:
    seen = set()
    for id, file in given.book().items():
        enclosed = {paper for paper, _ in _enclosed(given.setting(id))}
        active = any(i.status == "active" for i in file.interests)
        offered = file.terms(given.reviewed(id).renewal, "offered")
        assert ("copies-for-lenders" in enclosed) <= active
        assert ("options" in enclosed) == bool(offered and offered.options)
        brought = {p for f in given.reviewed(id).findings for p in f.encloses}
        agenda, priced = given.reviewed(id).agenda, decisions.priced(given.setting(id))
        assert ("decisions-form" in enclosed) == bool(agenda or priced)
        assert {form for form in FORMS if form in enclosed} - {"decisions-form"} <= brought
        seen |= enclosed
    assert seen == {"letter", *(paper.id for paper in PAPERS)}


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_file_of_the_demo_book_has_its_package(language: str, tmp_path: Path) -> None:
    """Every account, in both languages: it sets without a warning, and no page is empty."""
    for id in given.book():
        texts = page_texts(given.package(id, language).pdf, tmp_path)
        assert all(len(text.split()) > LEAST_WORDS for text in texts)


def test_every_fact_of_the_document_names_it(tmp_path: Path) -> None:
    """Title, author and language are in the file's own facts, for readers and archives."""
    for language in LANGUAGES:
        (tmp_path / "p.pdf").write_bytes(given.package(given.FLAGSHIP, language).pdf)
        with Pdf.open(tmp_path / "p.pdf") as pdf:
            assert str(pdf.Root.Lang).split("-")[0] == language
            with pdf.open_metadata() as facts:
                assert "St. Ebba" in str(facts["dc:title"])
                assert "Lantern Street" in str(facts["dc:creator"])
