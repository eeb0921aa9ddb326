"""Killed at any moment: no acknowledged entry is lost, a load is whole or nothing, no half package.

A few kills only; ``python -m tests.bench crash`` does many.
"""

from __future__ import annotations

from pathlib import Path

from tests.office import killing


def test_no_acknowledged_entry_is_lost(tmp_path: Path) -> None:
    toll = killing.appended(tmp_path, 2)
    assert toll.acknowledged > 0
    assert (toll.kills, toll.lost) == (2, 0)


def test_a_load_is_whole_or_nothing(tmp_path: Path) -> None:
    toll = killing.loaded(tmp_path, 2)
    assert toll.acknowledged > 0
    assert (toll.kills, toll.lost, toll.half) == (2, 0, 0)


def test_no_package_is_half_and_the_run_goes_on(tmp_path: Path) -> None:
    toll = killing.built(tmp_path, 1)
    assert toll.acknowledged > 0
    assert (toll.kills, toll.lost, toll.half) == (1, 0, 0)


def test_what_is_gone_is_counted_as_lost(tmp_path: Path) -> None:
    """A negative control: a journal that tells of a package nobody kept."""
    killing.ran(tmp_path / "store", "start")
    (tmp_path / killing.JOURNAL).write_text('{"sha256": "00"}\n', "utf-8")
    (tmp_path / "HW-1.pdf").write_bytes(b"half")
    state = killing._there(tmp_path / "store", tmp_path)
    assert (state.lost, state.half) == (1, 1)
