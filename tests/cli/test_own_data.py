"""A brokerage's own reference data counts for every command that speaks or finds."""

from __future__ import annotations

from pathlib import Path

import pytest
from tests.cli.conftest import Run, printed
from tests.own_reference import FOUND, SAID, lay

from quarterday.office import own_data

DAY = ("--as-of", "2026-11-25")
FILE = "HW-1001"


@pytest.fixture
def ours(loaded: Run, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Run:
    """A terminal with three organisations and the brokerage's own data."""
    monkeypatch.setenv(own_data.FOLDER, str(lay(tmp_path / "ours")))
    return loaded


def test_a_review_finds_by_it(ours: Run) -> None:
    review = printed(ours("review", FILE, *DAY, "--json"))
    assert FOUND in {finding["id"] for finding in review["findings"]}


@pytest.mark.parametrize(
    "command", [("review", FILE), ("pay", FILE), ("premium", FILE),
                ("compare", FILE, "expiring", "offered")],
)  # fmt: skip
def test_a_command_speaks_by_it(ours: Run, command: tuple[str, ...]) -> None:
    assert SAID in ours(*command, *DAY).stdout


def test_the_parameters_are_shown_with_its_source(ours: Run) -> None:
    assert "What our office holds" in ours("parameters").stdout


def test_a_trouble_is_told_in_its_words(ours: Run, tmp_path: Path) -> None:
    wording = tmp_path / "ours" / "wordings" / "en" / "more.ftl"
    wording.write_text("store-unknown-file = We keep no { $file }.\n", encoding="utf-8")
    assert ours("show", "HW-9999").stderr == "We keep no HW-9999.\n"


def test_data_that_cannot_be_read_is_told_all_the_same(ours: Run, tmp_path: Path) -> None:
    (tmp_path / "ours" / "parameters" / "ours.yaml").write_text("- id: [\n", encoding="utf-8")
    done = ours("review", FILE, *DAY)
    assert done.exit_code == 1
    assert "ours.yaml, line" in done.stderr
