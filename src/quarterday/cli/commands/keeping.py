"""Keep the store: back it up, put it back."""

from __future__ import annotations

from pathlib import Path

import click

from quarterday.cli.commands.proof import told
from quarterday.cli.options import json_option, needs_store, screen_of


@click.command()
@click.argument("out", type=click.Path(path_type=Path, dir_okay=False))
@click.pass_context
@needs_store
def backup(context: click.Context, out: Path) -> None:
    """Write the embedded store, its keys and its settings to the file OUT.

    Others may go on working. Keep the file as safe as the store: it holds personal data and keys.
    """
    from quarterday.store import backup as backups
    from quarterday.store import setup

    kept = backups.backup(setup.configure(), out)
    screen = screen_of(context)
    screen.say("cli-backed-up", path=str(out), megabytes=_megabytes(kept.size))
    screen.say("cli-backed-up-next", path=str(out))


def _megabytes(size: int) -> int:
    return max(1, round(size / 1_000_000))


@click.command("new-seal-key")
@click.pass_context
@needs_store
def new_seal_key(context: click.Context) -> None:
    """Let a new key sign the seals from now on; what the old one sealed stays proven."""
    from quarterday.store import seals

    screen = screen_of(context)
    screen.say("cli-seal-key-changed", seal=seals.change_key().last)


@click.command()
@click.argument("backup", type=click.Path(exists=True, path_type=Path, dir_okay=False))
@json_option
@click.pass_context
def restore(context: click.Context, backup: Path, as_json: bool) -> None:
    """Put BACKUP back as the store that --store names, a new folder, and verify all of it."""
    from quarterday.store import backup as backups
    from quarterday.store import setup
    from quarterday.store.verify import verify

    screen, place = screen_of(context), setup.configure()
    kept = backups.restore(backup, place)
    setup.start()
    screen.tell("cli-restored", place=place.shown, made=kept.made_at.date())
    told(screen, verify(), as_json)
