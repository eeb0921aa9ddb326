"""The examples of the reference data's README work as they stand."""

from __future__ import annotations

import re
from datetime import date
from decimal import Decimal
from pathlib import Path

import pytest

from quarterday.catalogue.load import PLACES, reference
from quarterday.catalogue.speech import Speech
from quarterday.core.dates import Quarter
from quarterday.core.premium.instalments import plans_of
from quarterday.core.words import Rate, words

TEXT = (PLACES / "README.md").read_text(encoding="utf-8")
EXAMPLES = dict(re.findall(r"^```\w+ (\S+)\n(.*?)^```", TEXT, re.MULTILINE | re.DOTALL))


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    """Write every example into the file it names."""
    for name, text in EXAMPLES.items():
        file = tmp_path / name
        file.parent.mkdir(parents=True, exist_ok=True)
        file.write_text(text, encoding="utf-8")
    return tmp_path


def test_a_brokerages_folder_made_of_the_examples_loads(folder: Path) -> None:
    shipped, own = reference(), reference("canada", folder)
    assert len(EXAMPLES) == 7
    december = own.season("donations", "worship").on(date(2027, 1, 1))[11]
    assert december.value == Rate(Decimal("0.21"))
    assert own.parameter("values.stale-years", date(2027, 1, 1)).value == Decimal(3)
    before = date(2026, 12, 31)
    assert own.parameter("values.stale-years", before).value == (
        shipped.parameter("values.stale-years", before).value
    )
    assert own.causes["glass"].tips[0].en.startswith("Call us before you repair")
    theirs = plans_of("Larkmoor Mutual Insurance", own)
    assert [plan.id for plan in theirs] == ["quarterly"]
    assert plans_of("Brindlegate", own) == plans_of("Brindlegate", shipped)
    newest = own.index("on", date(2026, 11, 25)).points
    assert newest[Quarter(2026, 3)] == Decimal("113.9")
    assert newest[Quarter(2026, 2)] == Decimal("113.1")
    assert newest[Quarter(2017, 1)] == shipped.indices["on"][0].points[Quarter(2017, 1)]


def test_the_examples_wording_is_spoken(folder: Path) -> None:
    assert Speech(reference(), "en", folder).say(words("everywhere")) == "at every location"


def test_the_table_names_the_folders_that_there_are() -> None:
    named = set(re.findall(r"`([a-z_]+)(?:/[a-z]+)?`", TEXT.split("## A brokerage")[0])) - {
        "canada"
    }
    assert named == {folder.name for folder in (PLACES / "canada").iterdir()}
