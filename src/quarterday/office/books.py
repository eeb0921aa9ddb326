"""Invented books: the demo's forty organisations, and books of any size."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date
from pathlib import Path
from shutil import copyfile

from quarterday.core.words import words
from quarterday.intake.write import Records, write_csv, write_workbook
from quarterday.invent.account import Account
from quarterday.invent.book import make_book
from quarterday.invent.demo.book import HERE as DEMO_DATA
from quarterday.invent.demo.book import demo_book
from quarterday.office.brand import FILE_NAME
from quarterday.office.loading import Loaded, accept, preview
from quarterday.office.own_data import reference_in_use
from quarterday.office.trouble import Trouble
from quarterday.papers.brokerage import read_brokerage
from quarterday.store import setup

DEMO_DAY = date(2026, 11, 25)  # the day on which the demo's story is told
FLAGSHIP = "HW-1001"
WORKBOOK, STORE, PACKAGES, MARK = "book.xlsx", "store", "packages", "made-by-quarterday-demo"


@dataclass(frozen=True, slots=True)
class Demo:
    """A demo that is ready: its folder, workbook, and what was loaded from it."""

    folder: Path
    workbook: Path
    loaded: Loaded

    @property
    def store(self) -> Path:
        """The folder of the demo's own store."""
        return self.folder / STORE

    @property
    def packages(self) -> Path:
        """The folder for its packages."""
        return self.folder / PACKAGES


def fresh_demo(folder: Path) -> Demo:
    """Make a fresh store in ``folder`` with the demo book, loaded from its workbook.

    An earlier demo there is replaced; Trouble when the folder holds anything else.
    """
    _clear(folder)
    workbook = folder / WORKBOOK
    write_workbook(pairs(demo_book()), workbook)
    setup.configure(str(folder / STORE))
    setup.start()
    copyfile(DEMO_DATA / FILE_NAME, folder / STORE / FILE_NAME)
    loaded = accept(preview(workbook, reference_in_use()), by="demo", accept_with_errors=False)
    return Demo(folder, workbook, loaded)


def pairs(accounts: Iterable[Account]) -> Records:
    """Return every record of the accounts with its account's id, one after the other."""
    return ((account.id, record) for account in accounts for record in account.records)


def reviewer() -> tuple[str, str]:
    """Return the name and licence of the invented broker who signs in the demo."""
    people = read_brokerage(DEMO_DATA / FILE_NAME).people
    return next((person.name, person.licence) for person in people if person.licence)


def _clear(folder: Path) -> None:
    mark = folder / MARK
    if folder.exists() and any(folder.iterdir()) and not mark.exists():
        raise Trouble(words("cli-demo-not-ours", path=str(folder)))
    for part in sorted(folder.rglob("*"), reverse=True):
        part.rmdir() if part.is_dir() and not part.is_symlink() else part.unlink()
    folder.mkdir(parents=True, exist_ok=True)
    mark.touch()


def write_book(files: int, seed: int, as_of: date, out: Path) -> Path:
    """Write an invented book: a workbook when ``out`` ends in .xlsx, else a folder of CSV files."""
    records = pairs(make_book(files, seed, as_of))
    if out.suffix.lower() == ".xlsx":
        out.parent.mkdir(parents=True, exist_ok=True)
        write_workbook(records, out)
    else:
        write_csv(records, out)
    return out
