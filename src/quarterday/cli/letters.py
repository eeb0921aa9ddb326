"""A message that a command sends: to which address, and in whose words."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import Any, TypeVar

import click

from quarterday.cli.screen import Screen
from quarterday.core.words import words

NOBODY = "cli"  # who acts at a terminal, unless they say
F = TypeVar("F", bound=Callable[..., Any])


def letter_options(command: F) -> F:
    """Let a command be told where to send by e-mail, and in which words."""
    for option in (
        click.option("--message", type=click.Path(exists=True, dir_okay=False, path_type=Path),
                     help="A text file with the message."),
        click.option("--subject", help="The message's subject."),
        click.option("--mail", "address", help="Send it by e-mail to this address."),
    ):  # fmt: skip
        command = option(command)
    return command


def own_words(
    screen: Screen, address: str | None, subject: str | None, message: Path | None, *, by: str
) -> tuple[str | None, str | None]:
    """Return the subject and words of one's own; None where the usual ones do.

    A usage error when there is no address to send them to, or no name to sign the usual words
    with; Trouble when the file is no text.
    """
    from quarterday.office.trouble import Trouble

    if address is None and (subject is not None or message is not None):
        raise click.UsageError(screen.words("cli-letter-not-mailed"))
    if address is not None and message is None and by == NOBODY:
        raise click.UsageError(screen.words("cli-letter-who"))
    try:
        return subject, message.read_text("utf-8") if message else None
    except UnicodeDecodeError:
        raise Trouble(words("cli-letter-not-text", path=str(message))) from None
