"""Text files of the reference data."""

from __future__ import annotations

from pathlib import Path

from quarterday.catalogue.problems import BadReference

_HARD = "\N{NO-BREAK SPACE}"
_FRENCH = {" :": f"{_HARD}:", " »": f"{_HARD}»", "« ": f"«{_HARD}", " %": f"{_HARD}%"}


def set_french(text: str) -> str:
    """Return French text with the spaces that must not break a line (colon, guillemets, %)."""
    for loose, hard in _FRENCH.items():
        text = text.replace(loose, hard)
    return text


def short_name(file: Path) -> str:
    """Return a file's name with its folder's, as messages give it."""
    return f"{file.parent.name}/{file.name}"


def read_text(file: Path) -> str:
    """Return the text of ``file``; BadReference when it is not UTF-8."""
    try:
        return file.read_text(encoding="utf-8-sig")
    except UnicodeDecodeError as error:
        raise BadReference([f"{short_name(file)}: is not UTF-8; save it as UTF-8 text."]) from error
