"""Remove on lawful request what the ledger otherwise keeps for good."""

from __future__ import annotations

import click

from quarterday.cli.options import needs_store, screen_of

_reason = click.option("--reason", required=True, help="Who asked, when, and by what right.")
_by = click.option(
    "--by", envvar="QUARTERDAY_USER", default="cli", show_default=True, help="Who does it."
)


@click.command()
@click.argument("file")
@click.argument("seq", type=int)
@_reason
@_by
@click.pass_context
@needs_store
def redact(context: click.Context, file: str, seq: int, reason: str, by: str) -> None:
    """Remove the content of entry SEQ of a FILE; its digest stays, so the chain still verifies.

    Say nothing personal in the reason: it is kept.
    """
    from quarterday.office import redacting

    screen = screen_of(context)
    done = redacting.redact(file, seq, reason, by=by)
    screen.say("cli-redacted", file=file, seq=str(seq))
    if done.still:
        screen.say("cli-redacted-still", count=len(done.still))
        for document in done.still:
            screen.line(f"{document.digest[:12]}  {document.name}", indent=2)
        screen.say("cli-redacted-next", file=file)


@click.command()
@click.argument("file")
@click.argument("document")
@_reason
@_by
@click.pass_context
@needs_store
def erase(context: click.Context, file: str, document: str, reason: str, by: str) -> None:
    """Remove the content of a DOCUMENT (its SHA-256, or how that begins) that a FILE names.

    It cannot be brought back. Say nothing personal in the reason: it is kept.
    """
    from quarterday.office import redacting

    entry = redacting.erase(file, document, reason, by=by)
    screen_of(context).say("cli-erased", document=entry.key[:12])
