"""The font of the fields: a simple TrueType font in WinAnsi, embedded.

Any program that fills a form can write with it; a composite font, as the pages use, breaks some.
"""

from __future__ import annotations

import io
import unicodedata
from collections.abc import Mapping
from dataclasses import dataclass
from functools import lru_cache
from pathlib import Path

from fontTools.subset import Options, Subsetter
from fontTools.ttLib import TTFont
from pikepdf import Array, Dictionary, Name, Object, Pdf, Stream

FILE = Path(__file__).parent / "fonts" / "SourceSans3-Regular.ttf"
NAME = "/QDFORM+SourceSans3-Regular"
FIRST, LAST, DELETE = 32, 255, 127
NONSYMBOLIC = 1 << 5  # ISO 32000-1 table 123


def _characters() -> dict[int, str]:
    """Return the characters of WinAnsi by code (ISO 32000-1 annex D: Windows code page 1252)."""
    codes = (bytes([code]) for code in range(FIRST, LAST + 1))
    decoded = {code[0]: code.decode("cp1252", errors="ignore") for code in codes}
    return {code: text for code, text in decoded.items() if text and code != DELETE}


@dataclass(frozen=True)
class FormFont:
    """The subset and its measures; widths in thousandths of the type size."""

    program: bytes
    widths: Mapping[int, int]
    box: tuple[int, int, int, int]
    ascent: int
    descent: int
    capital: int

    def encode(self, text: str) -> bytes:
        """Return ``text`` in WinAnsi; a letter it lacks loses its accents, else becomes ``?``."""
        return b"".join(_code(letter) for letter in text)

    def width(self, text: str) -> float:
        """Return the width of ``text`` at size 1."""
        return sum(self.widths.get(code, 0) for code in self.encode(text)) / 1000

    def embed(self, pdf: Pdf) -> Object:
        """Return the font as an object of ``pdf``."""
        program = Stream(pdf, self.program)
        program.Length1 = len(self.program)
        descriptor = Dictionary(
            Type=Name.FontDescriptor, FontName=Name(NAME), Flags=NONSYMBOLIC, FontFile2=program,
            FontBBox=Array(list(self.box)), ItalicAngle=0, Ascent=self.ascent,
            Descent=self.descent, CapHeight=self.capital, StemV=80,
        )  # fmt: skip
        widths = [self.widths.get(code, 0) for code in range(FIRST, LAST + 1)]
        font = Dictionary(
            Type=Name.Font, Subtype=Name.TrueType, BaseFont=Name(NAME),
            Encoding=Name.WinAnsiEncoding, FirstChar=FIRST, LastChar=LAST, Widths=Array(widths),
            FontDescriptor=pdf.make_indirect(descriptor),
        )  # fmt: skip
        return pdf.make_indirect(font)


def _code(letter: str) -> bytes:
    for text in (letter, unicodedata.normalize("NFKD", letter)[:1], "?"):
        try:
            return text.encode("cp1252")
        except UnicodeEncodeError:
            continue
    return b"?"


@lru_cache(maxsize=1)
def form_font() -> FormFont:
    """Return the font of the fields, cut down once in a process to what WinAnsi can say."""
    characters = _characters()
    font = TTFont(FILE, recalcTimestamp=False)
    options = Options(hinting=False, layout_features=[], notdef_outline=True, name_IDs=[])
    subsetter = Subsetter(options)
    subsetter.populate(unicodes=[ord(text) for text in characters.values()])
    subsetter.subset(font)
    glyphs, scale = font.getBestCmap(), 1000 / font["head"].unitsPerEm
    advance = {code: font["hmtx"][glyphs[ord(text)]][0] for code, text in characters.items()}
    head, os2 = font["head"], font["OS/2"]
    written = io.BytesIO()
    font.save(written, reorderTables=True)
    box = (head.xMin, head.yMin, head.xMax, head.yMax)
    return FormFont(
        program=written.getvalue(),
        widths={code: round(width * scale) for code, width in advance.items()},
        box=(
            round(box[0] * scale),
            round(box[1] * scale),
            round(box[2] * scale),
            round(box[3] * scale),
        ),
        ascent=round(font["hhea"].ascent * scale),
        descent=round(font["hhea"].descent * scale),
        capital=round(os2.sCapHeight * scale),
    )
