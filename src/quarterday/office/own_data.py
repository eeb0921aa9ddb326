"""A brokerage's own reference data: newer index releases, parameters, wordings.

The folder is the one that QUARTERDAY_REFERENCE names, else ``reference`` in the store's folder
where there is one. Processes that this one starts use the same.
"""

from __future__ import annotations

import os
from pathlib import Path

from quarterday.catalogue.load import reference
from quarterday.core.reference import Reference
from quarterday.store.place import HOME

FOLDER, NAME = "QUARTERDAY_REFERENCE", "reference"


def own_folder() -> Path | None:
    """Return the brokerage's folder; None when it keeps no data of its own."""
    named = os.environ.get(FOLDER)
    if named:
        return Path(named).expanduser().absolute()
    home = os.environ.get(HOME)
    beside = Path(home) / NAME if home else None
    return beside if beside is not None and beside.is_dir() else None


def choose(folder: Path) -> None:
    """Use ``folder`` from now on, in this process and in those it starts."""
    os.environ[FOLDER] = str(folder.expanduser().absolute())


def reference_in_use() -> Reference:
    """Return the reference data with the brokerage's own on top.

    BadReference when the folder that is named is not there, or cannot be used.
    """
    return reference(overrides=own_folder())
