"""The desk with 20 people who click every three seconds, on the embedded store and PostgreSQL.

The book has QUARTERDAY_BENCH_FILES files (7,000 unless said otherwise), ten years of claims, and
is kept in QUARTERDAY_BENCH_FOLDER when that names a folder. PostgreSQL is measured when
QUARTERDAY_DATABASE names a server: ``sh tests/postgres.sh python -m tests.bench desk``.
"""

from __future__ import annotations

import os
import subprocess
import sys
from collections.abc import Iterator
from datetime import date
from pathlib import Path
from shutil import copyfile
from statistics import median
from tempfile import TemporaryDirectory

from tests.bench._clicks import Waited, drive, percentile
from tests.browser.pictures import served

DAY = date(2026, 11, 25)
AIM = 150.0  # milliseconds at the 95th percentile


def run() -> Iterator[str]:
    """Yield what the bench measures."""
    server = os.environ.pop("QUARTERDAY_DATABASE", "")
    kept = os.environ.get("QUARTERDAY_BENCH_FOLDER", "")
    with TemporaryDirectory() as passing:
        folder = Path(kept or passing)
        home = folder / "store"
        os.environ["QUARTERDAY_HOME"] = str(home)
        book = _book(folder)
        for store in filter(None, (str(home), server)):
            loaded = store == str(home) and (home / "brokerage.yaml").exists()
            if not loaded:
                _quarterday("--store", store, "start")
                _quarterday("--store", store, "load", str(book), "--accept-with-errors")
            yield from _measured(store, home)


def _quarterday(*words: str) -> None:
    command = [sys.executable, "-m", "quarterday.cli", *words]
    subprocess.run(command, check=True, stdout=subprocess.DEVNULL)


def _book(folder: Path) -> Path:
    """Return the invented book, made when it is not there yet."""
    book, files = folder / "book.xlsx", os.environ.get("QUARTERDAY_BENCH_FILES", "7000")
    if not book.exists():
        _quarterday("make-book", "--files", files, "--as-of", str(DAY), "--out", str(book))
    return book


def _measured(store: str, home: Path) -> Iterator[str]:
    email, password = _opened(store, home)
    before = os.getloadavg()[0]
    with served(store, workers=2) as base:
        waited = drive(base, email, password)
    after = os.getloadavg()[0]
    yield f"{'PostgreSQL' if '://' in store else 'SQLite'}, {os.cpu_count()} cores, two workers; "
    yield f"  load average of a minute: {before:.1f} before, {after:.1f} at the end"
    yield from _lines(waited)


def _opened(store: str, home: Path) -> tuple[str, str]:
    """Open the store to a manager as a demo does, with its day and no second factor."""
    from quarterday.store import setup

    setup.configure(store)
    from quarterday.invent.demo.book import HERE
    from quarterday.office.books import MARK

    copyfile(HERE / "brokerage.yaml", home / "brokerage.yaml")
    (home.parent / MARK).touch()
    from quarterday.office import standings
    from quarterday.office.demo_people import visitors
    from quarterday.office.own_data import reference_in_use

    people = visitors(DAY)
    standings.refresh(reference_in_use(), DAY)
    return next((one.email, one.password) for one in people if one.role == "manager")


def _lines(waited: Waited) -> Iterator[str]:
    """Yield a line a page, and one for all clicks."""
    every = [ms for each in waited.values() for ms in each]
    yield f"  {'page':10}{'clicks':>8}{'median ms':>11}{'95th ms':>9}"
    for page, spent in [*waited.items(), ("all", every)]:
        yield f"  {page:10}{len(spent):8}{median(spent):11.0f}{percentile(spent, 0.95):9.0f}"
    ratio = percentile(every, 0.95) / AIM
    yield f"  the 95th percentile is {ratio:.2f} of the aim of {AIM:.0f} ms"
