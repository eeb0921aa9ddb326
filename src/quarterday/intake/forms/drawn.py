"""Draw one page of a PDF that came from outside, in a process of its own.

``python -m quarterday.intake.forms.drawn`` reads a line of JSON and then the document on stdin, and
writes the page as PNG on stdout, each spot framed and numbered. Nothing in the document is run.
"""

from __future__ import annotations

import json
import sys
from typing import Any

import pypdfium2 as pdfium
import pypdfium2.raw as pdfium_c
from PIL import Image, ImageDraw, ImageFont

from quarterday.intake.forms.confined import BROKEN, LOCKED, confine

TALLEST = 3  # a page is drawn at most this many times as tall as it is wide
FRAME = (176, 52, 24)  # a red that is dark in black and white too
MARGIN = 3  # pixels between a field and its frame
BADGE = 22  # pixels high and wide
Spot = tuple[float, float, float, float]


def draw(data: bytes, page: int, width: int, spots: dict[str, Spot]) -> Image.Image:
    """Return page ``page`` (from 1), ``width`` pixels wide, with the spots framed and numbered."""
    with pdfium.PdfDocument(data) as pdf:
        pdf.init_forms()  # else what was filled in is not drawn
        sheet = pdf[page - 1]
        across, up = sheet.get_size()
        scale = min(width / across, TALLEST * width / up)
        image: Image.Image = sheet.render(scale=scale, may_draw_forms=True).to_pil().convert("RGB")
        for number, spot in spots.items():
            _frame(image, number, _corners(sheet, image.size, spot))
        return image


def _corners(sheet: pdfium.PdfPage, size: tuple[int, int], spot: Spot) -> tuple[int, ...]:
    """Return a spot in pixels: left, top, right, bottom, wherever the page is turned to."""
    across, down = [], []
    for x, y in (spot[:2], spot[2:]):
        at = pdfium_c.c_int(), pdfium_c.c_int()
        pdfium_c.FPDF_PageToDevice(sheet, 0, 0, *size, 0, x, y, *at)
        across.append(at[0].value)
        down.append(at[1].value)
    return min(across), min(down), max(across), max(down)


def _frame(image: Image.Image, number: str, corners: tuple[int, ...]) -> None:
    left, top, right, bottom = corners
    pen = ImageDraw.Draw(image)
    box = (left - MARGIN, top - MARGIN, right + MARGIN, bottom + MARGIN)
    pen.rectangle(box, outline=FRAME, width=2)
    wide = BADGE + 8 * (len(number) - 1)
    at = max(0, left - MARGIN - wide), max(0, top - MARGIN)
    pen.rectangle((*at, at[0] + wide, at[1] + BADGE), fill=FRAME)
    middle = at[0] + wide / 2, at[1] + BADGE / 2
    pen.text(middle, number, fill="white", anchor="mm", font=ImageFont.load_default(15))


def main() -> int:
    """Read stdin, write the page; return how the process ends."""
    confine()
    asked: dict[str, Any] = json.loads(sys.stdin.buffer.readline())
    try:
        image = draw(sys.stdin.buffer.read(), asked["page"], asked["width"], asked["spots"])
    except pdfium.PdfiumError as error:
        locked = getattr(error, "err_code", None) == pdfium_c.FPDF_ERR_PASSWORD
        return LOCKED if locked else BROKEN
    except (IndexError, ValueError, ZeroDivisionError, OverflowError):
        return BROKEN
    image.save(sys.stdout.buffer, "PNG", optimize=True)
    return 0


if __name__ == "__main__":
    sys.exit(main())
