"""A terminal with a store of its own."""

from __future__ import annotations

import json
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from click.testing import CliRunner, Result

from quarterday.cli.main import cli
from quarterday.intake.write import write_workbook
from quarterday.invent.demo.book import demo_book
from quarterday.office import own_data

Run = Callable[..., Result]


@pytest.fixture
def run(own_store: str, monkeypatch: pytest.MonkeyPatch) -> Run:
    """Run a command on a fresh store and return what it printed."""
    monkeypatch.setenv(own_data.FOLDER, "")  # a folder that a command chooses is forgotten again

    def invoke(*words: str, given: str | None = None) -> Result:
        return CliRunner().invoke(cli, words, input=given, catch_exceptions=False)

    return invoke


def printed(result: Result) -> Any:
    """Return the JSON that a command printed."""
    return json.loads(result.stdout)


@pytest.fixture(scope="session")
def workbook(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Three organisations of the demo book as a workbook."""
    path = tmp_path_factory.mktemp("book") / "three.xlsx"
    chosen = (a for a in demo_book() if a.id in {"HW-1001", "HW-1010", "HW-1014"})
    write_workbook(((account.id, record) for account in chosen for record in account.records), path)
    return path


@pytest.fixture
def loaded(run: Run, workbook: Path) -> Run:
    """The same terminal, the workbook loaded."""
    assert run("load", str(workbook)).exit_code == 0
    return run
