"""Take an entry back: what stood before it counts again."""

from __future__ import annotations

import click

from quarterday.cli.options import json_option, needs_store, screen_of
from quarterday.core.words import Term


@click.command()
@click.argument("file")
@click.argument("seq", type=click.IntRange(min=1))
@click.option("--by", envvar="QUARTERDAY_USER", default="cli", show_default=True,
              help="Who takes it back.")  # fmt: skip
@json_option
@click.pass_context
@needs_store
def undo(context: click.Context, /, *, file: str, seq: int, by: str, as_json: bool) -> None:
    """Take entry SEQ of FILE back: what stood before it counts again.

    Nothing is deleted, and the taking back can be taken back. "history FILE" lists the numbers.
    """
    from quarterday.office import plain, undoing

    screen = screen_of(context)
    made = undoing.undo_at_terminal(file, seq, by=by)
    if as_json:
        screen.json({"file": file, "entries": [plain.entry(made)]})
        return
    what = f"{screen.speech.say(Term('record', made.kind))} {made.key}".rstrip()
    said = "cli-undone-gone" if made.body is None else "cli-undone"
    screen.say(said, file=file, seq=str(seq), what=what, by=str(made.seq))
