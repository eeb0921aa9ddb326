"""The font of the fields: everything Windows code page 1252 can write, embedded and simple."""

from __future__ import annotations

import io

from fontTools.ttLib import TTFont
from pikepdf import Name, Pdf

from quarterday.papers.form_font import FILE, FIRST, LAST, form_font

FRENCH = "àâæçéèêëîïôœùûüÿÀÂÆÇÉÈÊËÎÏÔŒÙÛÜŸ«»’–—…€"  # the letters French needs, from memory


def test_the_subset_has_every_letter_of_french() -> None:
    shown = TTFont(io.BytesIO(form_font().program)).getBestCmap()
    assert {ord(letter) for letter in FRENCH} <= set(shown)


def test_widths_are_those_of_the_whole_font() -> None:
    """fontTools reads the shipped font: the width of each letter, in thousandths."""
    whole = TTFont(FILE)
    scale = 1000 / whole["head"].unitsPerEm
    for letter in "Aé€œ0":
        advance = whole["hmtx"][whole.getBestCmap()[ord(letter)]][0]
        assert form_font().width(letter) * 1000 == round(advance * scale)


def test_digits_are_equally_wide() -> None:
    assert len({form_font().width(digit) for digit in "0123456789"}) == 1


def test_a_letter_the_code_page_lacks_loses_its_accent_or_becomes_a_question_mark() -> None:
    assert form_font().encode("Ngũgĩ Wójcik") == b"Ngugi W\xf3jcik"
    assert form_font().encode("ᓄ") == b"?"
    assert form_font().encode("œuf à 5 €") == "œuf à 5 €".encode("cp1252")


def test_the_font_is_embedded_as_a_simple_font() -> None:
    """PDF/A-2 (ISO 19005-2), 6.2.11: a nonsymbolic TrueType font in WinAnsi, with its program."""
    pdf = Pdf.new()
    font = form_font().embed(pdf)
    assert font.Subtype == Name.TrueType
    assert font.Encoding == Name.WinAnsiEncoding
    assert len(font.Widths) == LAST - FIRST + 1
    assert TTFont(io.BytesIO(font.FontDescriptor.FontFile2.read_bytes()))["cmap"]
