"""Names at the ends of a chart's lines, where they stand on the finished page."""

from __future__ import annotations

import json
import re
import subprocess
from dataclasses import dataclass
from pathlib import Path

import pytest
import typst

from quarterday.papers.press import FONTS, HERE


@pytest.mark.parametrize("apart", ["0.0", "0.02", "0.3", "0.9"])
def test_a_name_of_two_lines_at_the_end_of_a_line_does_not_meet_the_other(
    apart: str, tmp_path: Path
) -> None:
    """Where poppler finds the words of both names on the finished page."""
    words = boxes(drawn_lines("coût de reconstruction", "montant d'assurance", apart), tmp_path)
    above = [words[word] for word in ("coût", "reconstruction")]
    below = [word for name, word in words.items() if name.endswith("assurance")]
    assert above[0].bottom < above[1].bottom, "the longer name takes two lines"
    assert max(word.bottom for word in above) <= min(word.top for word in below)


@dataclass(frozen=True)
class Box:
    top: float
    bottom: float


def drawn_lines(upper: str, lower: str, apart: str) -> bytes:
    series = [
        {"name": lower, "tone": "insured", "points": [[0, 0.1], [1, 0.1]], "label_at": 0.1},
        {"name": upper, "tone": "cost", "points": [[0, 0.2], [1, 0.2]],
         "label_at": 0.1 + float(apart)},
    ]  # fmt: skip
    chart: dict[str, object] = {
        "title": "t",
        "alt": "a",
        "ticks": [],
        "days": [],
        "marks": [],
        "projected": None,
    }
    source = '#import "/chart.typ": lines\n#lines(json(bytes(sys.inputs.chart)))'
    made = typst.compile(  # type: ignore[misc]
        source.encode(), root=str(HERE), font_paths=[str(FONTS)], ignore_system_fonts=True,
        sys_inputs={"chart": json.dumps({**chart, "series": series})},
    )  # fmt: skip
    assert isinstance(made, bytes)
    return made


def boxes(pdf: bytes, folder: Path) -> dict[str, Box]:
    """Return the words of the only page and how high up each stands, as poppler reads them."""
    file = folder / "chart.pdf"
    file.write_bytes(pdf)
    told = subprocess.run(["pdftotext", "-bbox", str(file), "-"], capture_output=True, check=True)
    found = re.findall(r'yMin="([\d.]+)"[^>]*yMax="([\d.]+)">([^<]+)<', told.stdout.decode())
    return {word: Box(float(top), float(bottom)) for top, bottom, word in found}
