"""The code printed on every page of a form, by which a scanned page is known and never guessed."""

from __future__ import annotations

import re
from dataclasses import dataclass
from datetime import date
from urllib.parse import quote, unquote

MARK = "QD1"  # says whose code it is, and which version of its form
_TEXT = re.compile(
    rf"{MARK} (?P<file>[!-~]{{1,240}}) (?P<renewal>\d{{4}}-\d\d-\d\d) (?P<language>EN|FR)"
    r" (?P<version>\d{1,6}) (?P<seq>\d{1,9}) (?P<form>[A-Z-]{1,40})"
)


@dataclass(frozen=True, slots=True)
class PageCode:
    """Of which package a page is, how far the file went then, and which form the page belongs to.

    ``language`` is ``en`` or ``fr``; ``version`` and ``seq`` count from 1.
    """

    file: str
    renewal: date
    language: str
    version: int
    seq: int
    form: str

    @property
    def text(self) -> str:
        """What is printed; capitals, since those take the least room in a QR code (ISO 18004)."""
        file = quote(self.file, safe="-._")
        package = f"{file} {self.renewal} {self.language.upper()} {self.version} {self.seq}"
        return f"{MARK} {package} {self.form.upper()}"


def page_code(text: str) -> PageCode | None:
    """Return what a printed code says; None when it is none of ours."""
    found = _TEXT.fullmatch(text.strip())
    if found is None:
        return None
    try:
        renewal = date.fromisoformat(found["renewal"])
    except ValueError:
        return None
    return PageCode(
        unquote(found["file"]), renewal, found["language"].lower(), int(found["version"]),
        int(found["seq"]), found["form"].lower(),
    )  # fmt: skip
