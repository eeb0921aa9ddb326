"""A calculation on its own: JSON in, JSON out, no store."""

from __future__ import annotations

import json
import sys
from collections.abc import Callable, Mapping
from typing import Any

import click

from quarterday.cli.options import screen_of
from quarterday.cli.screen import Screen
from quarterday.core.income import calc as income
from quarterday.core.premium import calc as premium
from quarterday.core.premium import calc_payments as payments
from quarterday.core.premium import calc_tables as tables
from quarterday.core.risk import calc as risk
from quarterday.core.terms import calc as terms
from quarterday.core.values import calc as values
from quarterday.core.words import Words

Calculation = Callable[..., Mapping[str, Any]]
CALCULATIONS: Mapping[str, Calculation] = {
    "coinsurance": values.coinsurance,
    "index-value": values.index_value,
    "income": income.income,
    "tax": premium.tax,
    "settle": terms.settle,
    "apportion": premium.apportion,
    "credibility": risk.credibility,
    "limited-mean": risk.limited_mean,
    "apportion-table": tables.apportion_table,
    "split-change": tables.split_change,
    "instalments": payments.instalments,
    "apr": payments.apr,
    "earned": payments.earned,
}


@click.command()
@click.argument("name", type=click.Choice(sorted(CALCULATIONS)))
@click.option("--json", "text", help="What to calculate, as JSON; default: read from stdin.")
@click.pass_context
def calc(context: click.Context, name: str, text: str | None) -> None:
    """Run one calculation: NAME, its inputs as JSON; the result is JSON with its steps."""
    screen = screen_of(context)
    given = _read(screen, sys.stdin.read() if text is None else text)
    done = CALCULATIONS[name](given, screen.reference)
    screen.json(_spoken(screen, done))


def _spoken(screen: Screen, done: Any) -> Any:  # noqa: ANN401 - whatever JSON can hold
    """Return a result with its sentences spoken."""
    if isinstance(done, Words):
        return screen.speech.say(done)
    if isinstance(done, Mapping):
        return {key: _spoken(screen, part) for key, part in done.items()}
    if isinstance(done, list | tuple):
        return [_spoken(screen, part) for part in done]
    return done


def _read(screen: Screen, text: str) -> dict[str, Any]:
    """Return the inputs with every number exact; a usage error when it is not a JSON object."""
    try:
        given = json.loads(text, parse_float=str, parse_constant=str)
    except ValueError as error:
        raise click.BadParameter(screen.words("cli-not-json", why=str(error))) from error
    if not isinstance(given, dict):
        raise click.BadParameter(screen.words("cli-not-object"))
    return given
