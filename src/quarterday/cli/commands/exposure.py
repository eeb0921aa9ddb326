"""Export the files' locations in Open Exposure Data: ``export --to oed``."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

from quarterday.cli.screen import Screen


def write(screen: Screen, files: Sequence[str], out: Path) -> None:
    """Write the locations of ``files`` and their simple terms, and say by name what is lost."""
    from quarterday.office import exporting

    done = exporting.export_oed(files, out, screen.reference)
    screen.say("oed-written", locations=done.locations, accounts=done.accounts, path=str(out))
    for sentence in exporting.lost(done):
        screen.line(f"– {screen.speech.say(sentence)}")
