"""The code at the foot of a form's pages, drawn as a QR code (ISO/IEC 18004)."""

from __future__ import annotations

import io
from collections.abc import Iterable

import segno

from quarterday.core.file.page_code import PageCode
from quarterday.papers.setting import Data, Setting


def codes(setting: Setting, forms: Iterable[str]) -> dict[str, Data]:
    """Return the code of each form: its text, and its picture as SVG."""
    return {form: _code(setting, form) for form in forms}


def _code(setting: Setting, form: str) -> Data:
    review = setting.review
    code = PageCode(
        setting.file.id, review.renewal, setting.language, setting.version, review.seq, form
    )
    out = io.BytesIO()
    made = segno.make(code.text, error="m", micro=False)
    made.save(out, kind="svg", border=2, xmldecl=False, svgns=True, nl=False)
    return {"text": code.text, "svg": out.getvalue().decode("ascii")}
