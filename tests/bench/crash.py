"""Killed at any moment (kill -9 in a loop): no acknowledged entry is lost, no package is half.

Each program is killed with its workers, at a seeded random moment of its work. Nothing is timed;
the run ends with an AssertionError when something was lost. ``tests/office/test_crash.py`` does the
same a few times.
"""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path
from tempfile import TemporaryDirectory

from tests.office import killing

APPENDING, LOADING, BUILDING = 12, 8, 8


def run() -> Iterator[str]:
    """Yield what was killed how often, and what was there after."""
    with TemporaryDirectory() as folder:
        home = Path(folder)
        yield from _told("entries were added", killing.appended(home / "append", APPENDING))
        yield from _told("a workbook was loaded", killing.loaded(home / "load", LOADING))
        yield from _told("packages were built", killing.built(home / "build", BUILDING))


def _told(what: str, toll: killing.Toll) -> Iterator[str]:
    things = "packages" if "packages" in what else "entries"
    yield f"{toll.kills} kills while {what}: {toll.found}"
    yield f"  {toll.acknowledged} {things} acknowledged, {toll.lost} of them lost, {toll.half} half"
    assert (toll.lost, toll.half) == (0, 0), what
