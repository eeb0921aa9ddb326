"""In which language a visitor is spoken to."""

from __future__ import annotations

from functools import lru_cache
from pathlib import Path

from django.utils.translation.trans_real import parse_accept_lang_header

from quarterday.catalogue.speech import Speech
from quarterday.office.own_data import own_folder, reference_in_use

LANGUAGES = ("en", "fr")


def voice(language: str) -> Speech:
    """Return the voice of a language, with the brokerage's own wordings where it keeps some."""
    return _voice(language, own_folder())


@lru_cache(maxsize=4)
def _voice(language: str, _folder: Path | None) -> Speech:
    return Speech(reference_in_use(), language)


def accepted(header: str) -> str | None:
    """Return the language that an Accept-Language header (RFC 9110) likes best of those spoken."""
    asked = (name.partition("-")[0] for name, weight in parse_accept_lang_header(header) if weight)
    return next((language for language in asked if language in LANGUAGES), None)
