"""Killed at any moment (kill -9 in a loop): no acknowledged entry is lost, no package is half.

Nothing is timed; the run ends with an AssertionError when something was lost. The same is done a
few times by ``tests/office/test_crash.py``.
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
        kept = killing.appended(home / "append", APPENDING)
        yield f"{APPENDING} kills while entries were added: {kept} acknowledged, all there"
        loads = killing.loaded(home / "load", LOADING)
        yield f"{LOADING} kills while a workbook was loaded: {loads}; then loaded whole"
        built = killing.built(home / "build", BUILDING)
        yield f"{BUILDING} kills while packages were built: {built}; then all built, none half"
