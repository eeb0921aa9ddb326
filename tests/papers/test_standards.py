"""PDF/UA-1 (ISO 14289-1) and PDF/A-2a (ISO 19005-2), as veraPDF judges the finished files."""

from __future__ import annotations

import io
from pathlib import Path

import pytest
from pikepdf import Dictionary, Name, Pdf

from quarterday.papers.package import _enclosed
from quarterday.papers.parts import FORMS

from . import given
from .judge import judge, missing
from .test_fields import FILL, filled_by_pikepdf

pytestmark = pytest.mark.skipif(bool(missing()), reason=f"veraPDF cannot be asked: {missing()}")
STANDARDS = {"ua1", "2a"}


@pytest.fixture(scope="module")
def classes(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return tmp_path_factory.mktemp("classes")


def untagged(pdf: bytes) -> bytes:
    """Return a file with a widget that is no longer a form element in the tags."""
    with Pdf.open(io.BytesIO(pdf)) as opened:
        form = next(o for o in opened.objects if isinstance(o, Dictionary) and _is_form(o))
        form.S = Name.Span
        out = io.BytesIO()
        opened.save(out)
    return out.getvalue()


def _is_form(element: Dictionary) -> bool:
    return element.get("/S") == Name.Form and "/K" in element


def test_packages_meet_both_standards_also_when_filled_in(classes: Path, tmp_path: Path) -> None:
    """Signed and draft, English and French, filled in, and one with no form at all."""
    bare = next(
        id for id in given.book()
        if not set(FORMS) & {paper for paper, _ in _enclosed(given.setting(id))}
    )  # fmt: skip
    made = {
        "signed-en": given.package().pdf,
        "signed-fr": given.package(language="fr").pdf,
        "draft-fr": given.package(language="fr", signed=False).pdf,
        "filled": filled_by_pikepdf(given.package(language="fr").pdf, FILL),
        "bare": given.package(bare).pdf,
        "renter-en": given.package(given.RENTER).pdf,
        "renter-fr": given.package(given.RENTER, "fr").pdf,
    }
    files = [tmp_path / f"{name}.pdf" for name in made]
    for file, pdf in zip(files, made.values(), strict=True):
        file.write_bytes(pdf)
    verdicts = judge(files, classes)
    assert [v for v in verdicts if not v.passes] == []
    assert {v.standard for v in verdicts} == STANDARDS
    assert len(verdicts) == len(made) * len(STANDARDS)


def test_the_judge_does_condemn(classes: Path, tmp_path: Path) -> None:
    """A negative control: one form element turned into a span breaks PDF/UA-1, 7.18.4."""
    file = tmp_path / "broken.pdf"
    file.write_bytes(untagged(given.package().pdf))
    verdicts = judge([file], classes)
    broken = [rule for v in verdicts if v.standard == "ua1" for rule in v.broken]
    assert any(rule.startswith("7.18.4") for rule in broken)
