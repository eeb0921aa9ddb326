"""How a process that works for a long time starts."""

from __future__ import annotations

import gc
import os

from quarterday.office.voices import LANGUAGES, voice
from quarterday.store import setup

# new objects before a young, a middle and a whole collection: most that a page or paper makes goes
# by itself, so looking for what does not may be rare
COLLECTED_AFTER = (20_000, 10, 50)


def start(store: str) -> None:
    """Make this process a worker on ``store``: it must know it before it meets any table."""
    os.environ["RAYON_NUM_THREADS"] = "1"  # processes share the cores better than threads do
    setup.configure(store)
    warm()


def warm() -> None:
    """Read the reference data and wordings, and keep them out of the collector's way for good.

    They are most of what a process holds; walking them again and again held up every thirtieth
    page by a third of a second. BadReference when the data cannot be used.
    """
    for language in LANGUAGES:
        voice(language)
    gc.collect()
    gc.freeze()
    collect_rarely()


def collect_rarely() -> None:
    """Look less often for objects that hold each other: a load of a book spent a fifth on it."""
    gc.set_threshold(*COLLECTED_AFTER)
