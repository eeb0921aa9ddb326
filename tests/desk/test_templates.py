"""What templates and views name is there: a missing wording would fail a page in use."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from quarterday import desk
from quarterday.catalogue.load import reference
from quarterday.catalogue.speech import Speech

HERE = Path(desk.__file__).parent
NAMED = re.compile(r"""\{% say ["']([a-z0-9-]+)["']|words\("([a-z0-9-]+)"[,)]""")


@pytest.mark.parametrize("language", ["en", "fr"])
def test_every_wording_that_the_desk_names_can_be_said(language: str) -> None:
    speech = Speech(reference(), language)
    files = [*HERE.rglob("*.html"), *HERE.rglob("*.py")]
    named = {(file.name, a or b) for file in files for a, b in NAMED.findall(file.read_text())}
    assert len(named) > 300
    assert sorted(pair for pair in named if not speech.can_say(pair[1])) == []
