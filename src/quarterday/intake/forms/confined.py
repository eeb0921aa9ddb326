"""Documents from outside are handled in a process of its own, with little memory and time."""

from __future__ import annotations

import subprocess
import sys
from collections.abc import Sequence

from quarterday.intake.refusals import Unreadable

MEMORY = 1024**3  # bytes
SECONDS = 20  # of the processor's time
LOCKED, BROKEN = 3, 4  # how the process ends when there is nothing to read
_MOST_SECONDS = 2 * SECONDS  # that the caller waits
_REASONS = {LOCKED: "returns-locked", BROKEN: "returns-broken"}


def confine() -> None:
    """Bound the memory and the processor's time of this process."""
    if sys.platform != "win32":  # there, the time the caller waits is the only bound
        import resource

        resource.setrlimit(resource.RLIMIT_AS, (MEMORY, MEMORY))
        resource.setrlimit(resource.RLIMIT_CPU, (SECONDS, SECONDS))


def handled(child: Sequence[str], data: bytes, name: str) -> bytes:
    """Return what the program ``child`` makes of ``data``; Unreadable in a sentence when nothing.

    ``name`` is what the sentence calls the document.
    """
    try:
        done = subprocess.run(  # noqa: S603 - our own module, in our own interpreter
            list(child), input=data, capture_output=True, timeout=_MOST_SECONDS, check=False
        )
    except subprocess.TimeoutExpired:
        raise Unreadable("returns-too-much", name=name) from None
    if done.returncode:
        raise Unreadable(_REASONS.get(done.returncode, "returns-too-much"), name=name)
    return done.stdout
