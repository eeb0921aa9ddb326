"""Which brokerage answers for the papers: a file of the brokerage's own beside the store."""

from __future__ import annotations

import os
from pathlib import Path

from quarterday.core.words import words
from quarterday.office.trouble import Trouble
from quarterday.papers.brokerage import Brokerage, read_brokerage
from quarterday.store.place import HOME

FILE_NAME = "brokerage.yaml"


def brokerage(file: Path | None = None) -> Brokerage:
    """Return the brokerage that ``file`` describes; default: the file in the store's folder.

    Trouble when there is no such file; BadReference when it cannot be used.
    """
    chosen = file or Path(os.environ[HOME]) / FILE_NAME
    if not chosen.is_file():
        raise Trouble(words("acts-no-brokerage", path=str(chosen)))
    return read_brokerage(chosen)
