"""A brokerage's folder to write into, and speech in both languages."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest

from quarterday.catalogue.load import reference
from quarterday.catalogue.speech import Speech
from quarterday.core.reference import Reference

Write = Callable[[str, str], Path]


@pytest.fixture
def own(tmp_path: Path) -> Write:
    """Write a file of a brokerage's folder; return the folder."""

    def write(name: str, text: str) -> Path:
        file = tmp_path / name
        file.parent.mkdir(parents=True, exist_ok=True)
        file.write_text(text, encoding="utf-8")
        return tmp_path

    return write


@pytest.fixture(scope="session")
def canada() -> Reference:
    return reference()


@pytest.fixture(scope="session")
def english(canada: Reference) -> Speech:
    return Speech(canada, "en")


@pytest.fixture(scope="session")
def french(canada: Reference) -> Speech:
    return Speech(canada, "fr")
