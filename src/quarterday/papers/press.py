"""Setting: from plain data to the bytes of a tagged, archivable PDF with fields to fill in."""

from __future__ import annotations

import io
import json
import os
import re
import threading
from collections.abc import Iterable, Mapping, Sequence
from datetime import UTC, date, datetime
from functools import lru_cache
from pathlib import Path
from typing import Any

import pikepdf
from fontTools.ttLib import TTFont
from pikepdf import ObjectStreamMode, Pdf

from quarterday.core.words import Words, words
from quarterday.papers.fields import Field, make_fillable

# Threads inside one setting only get in each other's way; processes are the way to use more cores.
os.environ.setdefault("RAYON_NUM_THREADS", "1")
import typst

HERE = Path(__file__).parent
FONTS = HERE / "fonts"
_OLDER = 11  # how many settings older each one makes what the typesetter remembers; it forgets then
_APOSTROPHE = re.compile(r"(?<=\w)'")
Plain = Mapping[str, Any]  # JSON: what a template is given


class BadTemplate(RuntimeError):
    """Raised when a template does not set cleanly: a warning, or a rule of the standard broken."""


class Unprintable(ValueError):
    """Raised when a text holds letters that the papers' fonts do not have; ``words`` tell it."""

    def __init__(self, message: str, said: Words | None = None) -> None:
        super().__init__(message)
        self.words = said


class Press:
    """Sets data with one template; may be used by several threads, one at a time."""

    def __init__(self, template: Path, root: Path = HERE) -> None:
        self._lock = threading.Lock()
        self._compiler = typst.Compiler(
            str(template), root=str(root), font_paths=[str(FONTS)], ignore_system_fonts=True
        )
        self._nothing = typst.Compiler(b"", ignore_system_fonts=True)

    def set(
        self, data: Plain, built_on: date, dress: Mapping[str, str] | None = None
    ) -> bytes:  # fmt: skip
        """Return ``data`` set as PDF/UA-1 and PDF/A-2a, dated at noon UTC of ``built_on``.

        ``dress`` is the brand; without it the house's own look.
        """
        text = with_curled_apostrophes(json.dumps(data, ensure_ascii=False, sort_keys=True))
        _check_letters(data)
        with self._lock:
            try:
                pdf, warnings = self._compiler.compile_with_warnings(
                    sys_inputs={**(dress or {}), "data": text},
                    format="pdf",
                    pdf_standards=["ua-1", "a-2a"],
                    timestamp=int(datetime(*built_on.timetuple()[:3], 12, tzinfo=UTC).timestamp()),
                )
            except typst.TypstError as error:
                raise BadTemplate(str(error)) from error
            finally:
                self._age()
        if warnings:
            raise BadTemplate("; ".join(str(warning) for warning in warnings))
        assert isinstance(pdf, bytes)
        return pdf

    def _age(self) -> None:
        """Let the typesetter forget what it set: packages share little, and each is large.

        It forgets what eleven settings in a row did not use, and offers no other way to be told;
        so settings of nothing come between. They cost no more time than keeping it would: whatever
        is remembered is looked through at each setting until it is forgotten.
        """
        for _ in range(_OLDER - 1):
            self._nothing.compile(b"", format="pdf")


def with_curled_apostrophes(text: str) -> str:
    """Return ``text`` with the apostrophe of print after a letter, as in “l’eau”."""
    return _APOSTROPHE.sub("\N{RIGHT SINGLE QUOTATION MARK}", text)


@lru_cache(maxsize=4)
def press(template: Path = HERE / "package.typ") -> Press:
    """Return the press for a template, one in a process."""
    return Press(template)


def finished(set_pdf: bytes, fields: Sequence[Field], hidden: Mapping[str, str]) -> bytes:
    """Return a set PDF with its fields made fillable; the same input gives the same bytes."""
    with Pdf.open(io.BytesIO(set_pdf)) as pdf:
        make_fillable(pdf, fields, hidden)
        # An old reader takes the entry for a fault; it is false anyway.
        mark_info = pdf.Root.get("/MarkInfo", pikepdf.Dictionary())
        if "/Suspects" in mark_info:
            del mark_info["/Suspects"]
        out = io.BytesIO()
        pdf.save(out, deterministic_id=True, object_stream_mode=ObjectStreamMode.generate)
    return out.getvalue()


@lru_cache(maxsize=1)
def letters() -> frozenset[str]:
    """Return every character that all upright fonts of the papers have, and line ends."""
    fonts = [FONTS / "SourceSans3-Regular.ttf", FONTS / "SourceSerif4-Regular.ttf"]
    common = set.intersection(*(set(TTFont(font, lazy=True).getBestCmap()) for font in fonts))
    return frozenset(map(chr, common)) | {"\n"}


def _check_letters(data: Plain) -> None:
    texts = list(_texts(data))
    if set("".join(texts)) <= letters():
        return
    for text in texts:
        missing = sorted(set(text) - letters())
        if missing:
            raise Unprintable(
                f"“{text}” cannot be printed: the papers' fonts have no {', '.join(missing)}. "
                "Write it in Latin letters in the file; its history keeps the original spelling.",
                words("paper-unprintable", text=text[:100], letters=" ".join(missing[:8])),
            )


def _texts(value: object) -> Iterable[str]:
    if isinstance(value, str):
        yield value
    elif isinstance(value, Mapping):
        for part in value.values():
            yield from _texts(part)
    elif isinstance(value, Sequence):
        for part in value:
            yield from _texts(part)
