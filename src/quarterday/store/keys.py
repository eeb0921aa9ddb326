"""Keys in the store's folder: each in a file that its owner alone may read."""

from __future__ import annotations

import os
from collections.abc import Callable
from pathlib import Path


def write_once(path: Path, data: bytes) -> None:
    """Write a file that its owner alone may read, whole or not at all; never over another."""
    part = path.with_suffix(f".{os.getpid()}")
    with os.fdopen(os.open(part, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600), "wb") as out:
        out.write(data)
        out.flush()
        os.fsync(out.fileno())
    try:
        os.link(part, path)
    except FileExistsError:
        pass  # somebody else made it first: theirs counts
    finally:
        part.unlink()


def ensure(path: Path, make: Callable[[], bytes]) -> Path:
    """Make the key that ``path`` names when there is none; return its file."""
    if not path.exists():
        write_once(path, make())
    return path
