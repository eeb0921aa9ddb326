"""Read the codes printed on the pages of a document from outside, in a process of its own.

``python -m quarterday.intake.forms.codes`` reads the document on stdin, draws page after page and
writes, as JSON, the text of every QR code with its page. What a code says is text and no more.
"""

from __future__ import annotations

import json
import sys
from collections.abc import Iterator

import pypdfium2 as pdfium
import zxingcpp

from quarterday.intake.forms.confined import BROKEN, LOCKED, confine

MOST_PAGES = 60
WIDTH = 1700  # pixels: US Letter at 200 dots an inch
TALLEST = 3  # a page is drawn at most this many times as tall as it is wide
LONGEST = 400  # characters of a code that are handed on
MOST_CODES = 200
_QR = zxingcpp.BarcodeFormats(zxingcpp.BarcodeFormat.QRCode)


def read(data: bytes) -> Iterator[tuple[int, str]]:
    """Yield each code and the page (from 1) on which it stands."""
    with pdfium.PdfDocument(data) as pdf:
        pdf.init_forms()
        for number in range(min(len(pdf), MOST_PAGES)):
            page = pdf[number]
            across, up = page.get_size()
            scale = min(WIDTH / across, TALLEST * WIDTH / up)
            image = page.render(scale=scale, may_draw_forms=True, grayscale=True).to_pil()
            for found in zxingcpp.read_barcodes(image, formats=_QR):
                yield number + 1, found.text[:LONGEST]


def main() -> int:
    """Read stdin, write the codes; return how the process ends."""
    confine()
    try:
        found = list(read(sys.stdin.buffer.read()))[:MOST_CODES]
    except pdfium.PdfiumError as error:
        is_locked = getattr(error, "err_code", None) == pdfium.raw.FPDF_ERR_PASSWORD
        return LOCKED if is_locked else BROKEN
    except (ValueError, ZeroDivisionError, OverflowError):
        return BROKEN
    sys.stdout.write(json.dumps(found))
    return 0


if __name__ == "__main__":
    sys.exit(main())
