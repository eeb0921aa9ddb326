"""The look: contrast, colours that stay apart, fonts with every letter and equally wide digits."""

from __future__ import annotations

import re
from itertools import combinations

import pytest
from fontTools.ttLib import TTFont

from quarterday.papers.press import FONTS, HERE

COLOURS = dict(
    re.findall(r'#let (\w+) = rgb\(.*"#(\w{6})"\)', (HERE / "look.typ").read_text("utf-8"))
)
# W3C, WCAG 2.2, success criteria 1.4.3 (text, 4.5:1) and 1.4.11 (graphics, 3:1); its definition of
# relative luminance and contrast ratio.
TEXT, GRAPHIC = 4.5, 3.0
# Machado, Oliveira and Fernandes, "A Physiologically-based Model for Simulation of Color Vision
# Deficiency" (2009), severity 1.0; matrices from memory.
SEEN = {
    "protanopia": ((0.152286, 1.052583, -0.204868), (0.114503, 0.786281, 0.099216),
                   (-0.003882, -0.048116, 1.051998)),
    "deuteranopia": ((0.367322, 0.860646, -0.227968), (0.280085, 0.672501, 0.047413),
                     (-0.011820, 0.042940, 0.968881)),
    "tritanopia": ((1.255528, -0.076749, -0.178779), (-0.078411, 0.930809, 0.147602),
                   (0.004733, 0.691367, 0.303900)),
}  # fmt: skip


def linear(colour: str) -> tuple[float, ...]:
    shares = [int(colour[n : n + 2], 16) / 255 for n in (0, 2, 4)]
    return tuple(s / 12.92 if s <= 0.04045 else ((s + 0.055) / 1.055) ** 2.4 for s in shares)


def luminance(rgb: tuple[float, ...]) -> float:
    red, green, blue = rgb
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def contrast(one: tuple[float, ...], other: tuple[float, ...]) -> float:
    low, high = sorted((luminance(one), luminance(other)))
    return (high + 0.05) / (low + 0.05)


@pytest.mark.parametrize("ground", ["ffffff", COLOURS["wash"]])
@pytest.mark.parametrize("name", ["ink", "quiet", "deep"])
def test_text_stands_out_from_its_ground(name: str, ground: str) -> None:
    assert contrast(linear(COLOURS[name]), linear(ground)) >= TEXT


def test_text_is_never_set_in_a_colour_too_light_for_it() -> None:
    text = "".join(file.read_text("utf-8") for file in HERE.rglob("*.typ"))
    used = set(re.findall(r"text\([^()]*fill: (\w+)", text))
    assert used <= {"ink", "quiet", "deep", "if"}


@pytest.mark.parametrize("sight", ["grey", *SEEN])
def test_what_lies_side_by_side_in_a_chart_stays_apart(sight: str) -> None:
    """Paid and borne, up and down: in black and white and to a colour-blind reader."""
    for one, other in combinations(("deep", "pale"), 2):
        a, b = linear(COLOURS[one]), linear(COLOURS[other])
        if sight != "grey":
            a, b = (
                tuple(sum(m * c for m, c in zip(row, rgb, strict=True)) for row in SEEN[sight])
                for rgb in (a, b)
            )
        assert contrast(a, b) >= GRAPHIC


@pytest.mark.parametrize("file", sorted(FONTS.glob("*.ttf")), ids=lambda file: file.stem)
def test_fonts_have_french_and_equally_wide_digits_and_may_be_embedded(file: object) -> None:
    """OpenType OS/2 fsType 0: installable embedding; the digits or their tabular forms align."""
    font = TTFont(file)
    letters = font.getBestCmap()
    assert {ord(letter) for letter in "ÀÉÈÊËÎÏÔŒÙÛÜŸÇàéèêëîïôœùûüÿç«»–—’…−×→✓\u00a0\u202f"} <= set(
        letters
    )
    assert font["OS/2"].fsType == 0
    tabular = {feature.FeatureTag for feature in font["GSUB"].table.FeatureList.FeatureRecord}
    widths = {font["hmtx"][letters[ord(digit)]][0] for digit in "0123456789"}
    assert len(widths) == 1 or "tnum" in tabular


def test_every_font_comes_with_its_licence() -> None:
    families = {file.stem.split("-")[0] for file in FONTS.glob("*.ttf")}
    licences = {file.stem.removeprefix("LICENSE-") for file in FONTS.glob("LICENSE-*.md")}
    assert families == licences
    assert all(
        "SIL Open Font License, Version 1.1" in file.read_text("utf-8")
        for file in FONTS.glob("LICENSE-*.md")
    )
