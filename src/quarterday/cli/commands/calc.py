"""A calculation on its own: JSON in, JSON out, no store."""

from __future__ import annotations

import json
import sys
from typing import Any

import click

from quarterday.cli.options import screen_of
from quarterday.cli.screen import Screen
from quarterday.office.calculating import CALCULATIONS, calculated


@click.command()
@click.argument("name", type=click.Choice(sorted(CALCULATIONS)))
@click.option("--json", "text", help="What to calculate, as JSON; default: read from stdin.")
@click.pass_context
def calc(context: click.Context, name: str, text: str | None) -> None:
    """Run one calculation: NAME, its inputs as JSON; the result is JSON with its steps."""
    screen = screen_of(context)
    given = _read(screen, sys.stdin.read() if text is None else text)
    screen.json(calculated(name, given, screen.reference, screen.speech))


def _read(screen: Screen, text: str) -> dict[str, Any]:
    """Return the inputs with every number exact; a usage error when it is not a JSON object."""
    try:
        given = json.loads(text, parse_float=str, parse_constant=str)
    except ValueError as error:
        raise click.BadParameter(screen.words("cli-not-json", why=str(error))) from error
    if not isinstance(given, dict):
        raise click.BadParameter(screen.words("cli-not-object"))
    return given
