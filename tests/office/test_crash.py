"""Killed at any moment: no acknowledged entry is lost, a load is whole or nothing, no half package.

A few kills only; ``python -m tests.bench crash`` does many.
"""

from __future__ import annotations

from pathlib import Path

from tests.office import killing


def test_no_acknowledged_entry_is_lost(tmp_path: Path) -> None:
    assert killing.appended(tmp_path, 2) > 0


def test_a_load_is_whole_or_nothing(tmp_path: Path) -> None:
    assert "times" in killing.loaded(tmp_path, 2)


def test_no_package_is_half_and_the_run_goes_on(tmp_path: Path) -> None:
    assert "packages there" in killing.built(tmp_path, 1)
