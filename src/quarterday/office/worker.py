"""How a worker process starts: it must know its store before it meets any table."""

from __future__ import annotations

import os

from quarterday.store import setup


def start(store: str) -> None:
    """Make this process a worker on ``store``."""
    os.environ["RAYON_NUM_THREADS"] = "1"  # processes share the cores better than threads do
    setup.configure(store)
