"""Which brokerage answers for the papers: its own file and pictures, beside the store."""

from __future__ import annotations

import os
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

from quarterday.catalogue.problems import BadReference
from quarterday.catalogue.speech import Speech
from quarterday.catalogue.text import short_name
from quarterday.catalogue.wordings import own_wordings
from quarterday.core.words import words
from quarterday.office.own_data import own_folder, reference_in_use
from quarterday.office.trouble import Trouble
from quarterday.papers.brokerage import Brokerage, read_brokerage
from quarterday.store.place import HOME

FILE_NAME = "brokerage.yaml"
LANGUAGES = ("en", "fr")
WORDINGS = "wordings"


@dataclass(frozen=True, slots=True)
class Brand:
    """A brand that can be used: the brokerage, and the ids of the wordings that are its own."""

    brokerage: Brokerage
    path: Path
    wordings: dict[str, tuple[str, ...]]


def brokerage_file(file: Path | None = None) -> Path:
    """Return the brokerage's file: ``file``, or the one in that folder; default: the store's.

    Trouble when there is none.
    """
    chosen = file or Path(os.environ[HOME])
    chosen = chosen / FILE_NAME if chosen.is_dir() else chosen
    if not chosen.is_file():
        raise Trouble(words("acts-no-brokerage", path=str(chosen)))
    return chosen


def brokerage(file: Path | None = None) -> Brokerage:
    """Return the brokerage that ``file`` describes; default: the file in the store's folder.

    Trouble when there is no such file; BadReference when it cannot be used.
    """
    return read_brokerage(brokerage_file(file))


def brand(file: Path | None = None) -> Brand:
    """Return the whole brand, read as the papers read it.

    Trouble when there is no brokerage's file; BadReference has a sentence for each fault of the
    file, of its pictures and of the wordings, and for each file that nobody would read.
    """
    path, problems = brokerage_file(file), list(_strays())
    found: Brokerage | None = None
    try:
        found = read_brokerage(path)
    except BadReference as faults:
        problems += faults.problems
    for language in LANGUAGES:
        try:
            Speech(reference_in_use(), language)
        except BadReference as faults:
            problems += faults.problems
    if problems or found is None:
        raise BadReference(problems)
    own = own_folder()
    return Brand(found, path, {n: own_wordings(own, n) if own else () for n in LANGUAGES})


def _strays() -> Iterator[str]:
    """Yield a sentence for each file among the wordings that would change nothing."""
    own = own_folder()
    for file in sorted((own / WORDINGS).rglob("*")) if own else ():
        is_read = file.suffix == ".ftl" and file.parent.name in LANGUAGES
        if file.is_file() and not (is_read and file.parent.parent.name == WORDINGS):
            yield (
                f"{short_name(file)}: nobody reads this file. Wordings stand in "
                f"{WORDINGS}/en or {WORDINGS}/fr, in files that end in .ftl."
            )
