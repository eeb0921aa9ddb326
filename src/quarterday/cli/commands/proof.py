"""Prove that nothing was altered."""

from __future__ import annotations

import sys
from pathlib import Path
from typing import TYPE_CHECKING

import click

from quarterday.cli.options import json_option, needs_store, screen_of
from quarterday.cli.screen import Screen

if TYPE_CHECKING:
    from quarterday.store.verify import Report


@click.command()
@click.argument("file", required=False)
@json_option
@click.pass_context
@needs_store
def verify(context: click.Context, file: str | None, as_json: bool) -> None:
    """Check the chain of entries, the index tables, the originals and the seals.

    FILE is a file's id, or a PDF: then say who sealed it, when, and whether it was changed.
    """
    from quarterday.store.verify import verify as verify_store

    screen = screen_of(context)
    if file and file.lower().endswith(".pdf") and Path(file).is_file():
        _document(screen, Path(file), as_json)
        return
    told(screen, verify_store(file), as_json)


def told(screen: Screen, report: Report, as_json: bool) -> None:
    """Tell what was verified; exit 1 when something is not as it was written."""
    said = [screen.speech.say(fault.words) for fault in report.faults]
    if as_json:
        screen.json({"files": report.files, "entries": report.entries, "seals": report.seals,
                     "originals": report.originals, "unsealed": report.unsealed,
                     "redacted": len(report.redacted), "erased": len(report.erased),
                     "faults": said})  # fmt: skip
    elif report.is_sound:
        screen.say("cli-verified", files=report.files, entries=report.entries)
        screen.say("cli-verified-seals", seals=report.seals, originals=report.originals,
                   unsealed=report.unsealed)  # fmt: skip
        if report.redacted or report.erased:
            screen.say("cli-verified-removed", redacted=len(report.redacted),
                       erased=len(report.erased))  # fmt: skip
    else:
        screen.say("cli-verify-faults", n=len(said))
        for sentence in said:
            screen.line(sentence, indent=2)
    if not report.is_sound:
        sys.exit(1)


def _document(screen: Screen, path: Path, as_json: bool) -> None:
    from quarterday.office import sealing

    verdict = sealing.judge(path.read_bytes(), path.name)
    said = [screen.speech.say(sentence) for sentence in sealing.sentences(verdict, path.name)]
    if as_json:
        told = verdict.compared
        screen.json({
            "state": verdict.state, "sound": verdict.is_sound, "signer": verdict.signer or None,
            "sealed_at": verdict.sealed_at.isoformat() if verdict.sealed_at else None,
            "own_certificate": verdict.is_own, "pages_changed": list(told.pages if told else ()),
            "fields_filled": list(told.filled if told else ()), "sentences": said,
        })  # fmt: skip
    else:
        for sentence in said:
            screen.line(sentence)
    if not verdict.is_sound:
        sys.exit(1)
