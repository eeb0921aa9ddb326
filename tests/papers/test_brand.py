"""The brand of the brokerage: pictures, colours and signatures on the papers, or why not."""

from __future__ import annotations

import io
import pickle
from collections.abc import Callable
from pathlib import Path

import pikepdf
import pytest
from PIL import Image

from quarterday.catalogue.load import reference
from quarterday.catalogue.problems import BadReference
from quarterday.catalogue.speech import Speech
from quarterday.papers import contrast
from quarterday.papers.brokerage import Brokerage, read_brokerage
from quarterday.papers.dress import dress
from quarterday.papers.package import build
from quarterday.papers.pictures import LARGEST, BadPicture, read_picture
from quarterday.papers.press import HERE

from . import given
from .judge import judge, missing
from .reading import elements, page_texts
from .test_look import contrast as by_hand
from .test_look import linear

EXAMPLE = (HERE / "example-brokerage.yaml").read_text("utf-8")
LANTERN = """<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 120 40" width="120" height="40">
<title>Lantern</title><path d="M4 36 L20 4 L36 36 Z" fill="#5b2a6e"/>
<circle cx="20" cy="24" r="6" fill="#f2e6c8"/><rect x="46" y="17" width="70" height="6"/></svg>"""
STROKE = """<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 90 30">
<path d="M2 20 C 20 0 30 40 45 15 S 70 0 88 22" fill="none" stroke="#16232e"/></svg>"""
COLOURS = 'colours: {accent: "#5b2a6e", tint: "#e3cfea"}\n'


def png(width: int = 40, height: int = 20) -> bytes:
    out = io.BytesIO()
    Image.new("RGBA", (width, height), (91, 42, 110, 128)).save(out, "PNG")
    return out.getvalue()


def folder(home: Path, text: str = "", /, **files: bytes | str) -> Path:
    """Write a brokerage's folder with a logo and a signature; return its file."""
    told = EXAMPLE.replace("email: ruth.", "signature: ruth.svg, email: ruth.", 1)
    (home / "brokerage.yaml").write_text(f"{told}logo: logo.svg\n{COLOURS}{text}", "utf-8")
    for name, content in {"logo_svg": LANTERN, "ruth_svg": STROKE, **files}.items():
        data = content.encode() if isinstance(content, str) else content
        (home / name.replace("_", ".")).write_bytes(data)
    return home / "brokerage.yaml"


def package(house: Brokerage, language: str = "en", *, signed: bool = True) -> bytes:
    told = given.reviewed(given.RENTER)
    return build(
        told, given.case(given.RENTER), house, language, version=1, built_on=given.AS_OF,
        signed=given.signature(told) if signed else None,
    ).pdf  # fmt: skip


def figures(pdf: bytes) -> list[str]:
    return [e.alternative for e in elements(pdf) if e.role == "Figure"]


def colours(pdf: bytes) -> set[tuple[float, ...]]:
    """Return every colour that the pages fill or draw with, as pikepdf reads their content."""
    found = set()
    with pikepdf.open(io.BytesIO(pdf)) as opened:
        for page in opened.pages:
            for drawn in pikepdf.parse_content_stream(page):
                operands = list(drawn.operands)
                if str(drawn.operator) in {"scn", "SCN", "rg", "RG"} and len(operands) == 3:
                    found.add(tuple(round(float(str(o)), 2) for o in operands))
    return found


def shares(colour: str) -> tuple[float, ...]:
    return tuple(round(int(colour[n : n + 2], 16) / 255, 2) for n in (1, 3, 5))


@pytest.mark.parametrize("language", ["en", "fr"])
def test_logo_and_signature_stand_on_the_letter_each_with_its_alternative(
    language: str, tmp_path: Path
) -> None:
    house = read_brokerage(folder(tmp_path))
    said = figures(package(house, language))
    logo, signature = {
        "en": ("Logo of Lantern Street Insurance Brokers", "Signature of Ruth Abernethy"),
        "fr": ("Logo de Lantern Street, courtiers d'assurance", "Signature de Ruth Abernethy"),
    }[language]
    assert logo in said
    assert signature in said


def test_nobody_s_signature_stands_under_a_draft(tmp_path: Path) -> None:
    house = read_brokerage(folder(tmp_path))
    assert not any("Signature" in alt for alt in figures(package(house, signed=False)))


def test_the_colours_of_the_brand_replace_those_of_the_house(tmp_path: Path) -> None:
    branded, plain = package(read_brokerage(folder(tmp_path))), package(given.brokerage())
    accent, tint = shares("#5b2a6e"), shares("#e3cfea")
    house = shares("#17527a"), shares("#bcd3e2")
    assert {accent, tint} <= colours(branded)
    assert not set(house) & colours(branded)
    assert set(house) <= colours(plain)


def test_a_brand_changes_no_word_and_no_page(tmp_path: Path) -> None:
    branded = page_texts(package(read_brokerage(folder(tmp_path))), tmp_path)
    plain = page_texts(package(given.brokerage()), tmp_path)
    assert [sorted(page.split()) for page in branded] == [sorted(page.split()) for page in plain]


def test_a_brand_reaches_another_process_whole(tmp_path: Path) -> None:
    house = read_brokerage(folder(tmp_path))
    again = pickle.loads(pickle.dumps(house))
    speech = Speech(reference(), "en")
    assert dress(again, speech, "Ruth Abernethy") == dress(house, speech, "Ruth Abernethy")
    assert set(dress(house, speech)) == {"accent", "tint", "logo", "logo-alt"}


@pytest.mark.skipif(bool(missing()), reason=f"veraPDF cannot be asked: {missing()}")
def test_a_branded_package_meets_both_standards(tmp_path: Path) -> None:
    """Drawn and photographed logo, the latter half transparent; PDF/UA-1 and PDF/A-2a."""
    drawn = folder(tmp_path)
    (tmp_path / "drawn.pdf").write_bytes(package(read_brokerage(drawn), "fr"))
    drawn.write_text(drawn.read_text("utf-8").replace("logo.svg", "logo.png"), "utf-8")
    (tmp_path / "logo.png").write_bytes(png())
    (tmp_path / "photo.pdf").write_bytes(package(read_brokerage(drawn)))
    verdicts = judge([tmp_path / "drawn.pdf", tmp_path / "photo.pdf"], tmp_path)
    assert len(verdicts) == 4
    assert [v for v in verdicts if not v.passes] == []


def script(inside: str) -> str:
    return LANTERN.replace("</svg>", f"{inside}</svg>")


@pytest.mark.parametrize(
    ("name", "content", "said"),
    [
        ("logo_svg", script("<script>alert(1)</script>"), "holds <script>"),
        ("logo_svg", LANTERN.replace("<rect", '<rect onclick="x()"'), "the script onclick"),
        ("logo_svg", script("<text>Lantern</text>"), "text turned to outlines"),
        ("logo_svg", script("<foreignObject/>"), "holds <foreignObject>"),
        ("logo_svg", script('<use href="http://example.org/a.svg#b"/>'), "outside the drawing"),
        ("logo_svg", script('<image href="data:image/png;base64,AA"/>'), "holds <image>"),
        ("logo_svg", LANTERN.replace('fill="#5b2a6e"', 'fill="url(http://example.org)"'),
         "outside the drawing"),
        ("logo_svg", '<!DOCTYPE svg [<!ENTITY a "b">]>' + LANTERN, "not a plain SVG"),
        ("logo_svg", "<svg", "not a plain SVG"),
        ("logo_svg", "<html/>", "not a plain SVG"),
        ("logo_svg", LANTERN.replace('viewBox="0 0 120 40" width="120"', ""), "with a size"),
        ("logo_svg", "x" * (LARGEST + 1), "make it smaller"),
        ("ruth_svg", b"GIF89a", "not a plain SVG"),
    ],
)  # fmt: skip
def test_a_picture_that_cannot_serve_is_refused_with_file_and_reason(
    name: str, content: bytes | str, said: str, tmp_path: Path
) -> None:
    with pytest.raises(BadReference) as refused:
        read_brokerage(folder(tmp_path, "", **{name: content}))
    assert said in str(refused.value)
    assert "brokerage.yaml, " in str(refused.value)
    assert name.replace("_", ".") in str(refused.value)


@pytest.mark.parametrize(
    ("content", "said"),
    [
        (b"not an image at all", "not an image"),
        (b"%PDF-1.7", "not an image"),
        (png()[:40], "not an image"),
        (png(4001, 1), "4000 are enough"),
    ],
)
def test_a_photograph_is_one_or_it_is_refused(content: bytes, said: str, tmp_path: Path) -> None:
    (tmp_path / "logo.png").write_bytes(content)
    with pytest.raises(BadPicture, match=said):
        read_picture(tmp_path / "logo.png")


def test_every_fault_is_told_at_once_and_nothing_outside_the_folder_is_read(tmp_path: Path) -> None:
    file = folder(tmp_path)
    text = file.read_text("utf-8").replace("logo: logo.svg", "logo: ../../etc/hosts")
    file.write_text(text.replace("ruth.svg", "gone.svg"), "utf-8")
    with pytest.raises(BadReference) as refused:
        read_brokerage(file)
    assert len(refused.value.problems) == 2
    assert "lies outside the folder" in refused.value.problems[0]
    assert "signature of Ruth Abernethy: there is no file gone.svg" in refused.value.problems[1]


@pytest.mark.parametrize(
    ("told", "said"),
    [
        ('{accent: "#e3a32f"}', "too pale"),
        ('{accent: "#767676"}', "too pale"),  # 4.54 on white, less on the wash
        ('{accent: "#5b2a6e", tint: "#7b4a8e"}', "too alike"),
        ("{accent: #5b2a6e}", "line"),
        ("{accent: purple}", "in quotes with six digits"),
        ('{accent: "#5b2"}', "in quotes with six digits"),
        ('{acent: "#5b2a6e"}', "field colours.acent"),
        ("{accent: null}", "in quotes with six digits"),
    ],
)
def test_a_colour_that_cannot_be_read_is_refused(told: str, said: str, tmp_path: Path) -> None:
    file = folder(tmp_path)
    file.write_text(file.read_text("utf-8").replace(COLOURS, f"colours: {told}\n"), "utf-8")
    with pytest.raises(BadReference) as refused:
        read_brokerage(file)
    assert said in str(refused.value)


@pytest.mark.parametrize(
    "line", ["margins: 3\n", "fonts: Comic\n", "pictures: {}\n", "_pictures: {}\n"]
)
def test_nothing_else_can_be_changed(line: str, tmp_path: Path) -> None:
    with pytest.raises(BadReference, match=f"field {line.split(':', maxsplit=1)[0]}"):
        read_brokerage(folder(tmp_path, line))


# W3C, Understanding SC 1.4.3 (technique G18): black on white is 21:1, #767676 on white passes AA.
def test_contrast_is_that_of_the_guidelines() -> None:
    assert contrast.contrast("#000000", "#ffffff") == pytest.approx(21)
    assert contrast.contrast("#ffffff", "#ffffff") == 1
    assert 4.5 <= contrast.contrast("#767676", "#ffffff") < 4.6
    pairs: list[tuple[str, str]] = [("#17527a", "#bcd3e2"), ("#5b2a6e", "#f0f3f5")]
    same: Callable[[str], tuple[float, ...]] = lambda colour: linear(colour[1:])  # noqa: E731
    for one, other in pairs:
        assert contrast.contrast(one, other) == pytest.approx(by_hand(same(one), same(other)))
