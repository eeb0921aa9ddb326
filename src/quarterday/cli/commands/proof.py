"""Prove that nothing was altered."""

from __future__ import annotations

import sys

import click

from quarterday.cli.options import json_option, needs_store, screen_of


@click.command()
@click.argument("file", required=False)
@json_option
@click.pass_context
@needs_store
def verify(context: click.Context, file: str | None, as_json: bool) -> None:
    """Check the chain of entries, the index tables, the originals and the seals."""
    from quarterday.store.verify import verify as verify_store

    screen = screen_of(context)
    report = verify_store(file)
    said = [screen.speech.say(fault.words) for fault in report.faults]
    if as_json:
        screen.json({"files": report.files, "entries": report.entries, "seals": report.seals,
                     "originals": report.originals, "unsealed": report.unsealed,
                     "redacted": len(report.redacted), "faults": said})  # fmt: skip
    elif report.is_sound:
        screen.say("cli-verified", files=report.files, entries=report.entries)
        screen.say("cli-verified-seals", seals=report.seals, originals=report.originals,
                   unsealed=report.unsealed)  # fmt: skip
    else:
        screen.say("cli-verify-faults", n=len(said))
        for sentence in said:
            screen.line(sentence, indent=2)
    if not report.is_sound:
        sys.exit(1)
