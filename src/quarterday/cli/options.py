"""Options that several commands share, and what a command finds in its context."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date, datetime, timedelta
from functools import wraps
from typing import ParamSpec, TypeVar

import click

from quarterday.cli.screen import Screen
from quarterday.core.dates import add_months

P = ParamSpec("P")
R = TypeVar("R")


class DayType(click.ParamType[date]):
    """A day written as ISO 8601 (2026-11-25)."""

    name = "date"

    def convert(
        self, value: str | date, param: click.Parameter | None, ctx: click.Context | None
    ) -> date:
        """Return the day, or fail with how to write one."""
        if isinstance(value, date):
            return value
        try:
            return date.fromisoformat(value)
        except ValueError:
            self.fail(f"{value!r} is not a day; write it like 2026-11-25.", param, ctx)


class SpanType(click.ParamType[tuple[date, date]]):
    """A day, a month (2026-12), or days from one to another, the second not included."""

    name = "from..to"

    def convert(
        self, value: str | tuple[date, date], param: click.Parameter | None,
        ctx: click.Context | None,
    ) -> tuple[date, date]:  # fmt: skip
        """Return both days, or fail with how to write them."""
        if isinstance(value, tuple):
            return value
        try:
            span = _span(value)
        except ValueError:
            span = date.max, date.min
        if span[1] <= span[0]:
            self.fail(f"{value!r}: write a day, a month like 2026-12, or two days like "
                      "2026-12-01..2027-01-01.", param, ctx)  # fmt: skip
        return span


def _span(text: str) -> tuple[date, date]:
    first, mark, last = text.partition("..")
    if mark:
        return date.fromisoformat(first), date.fromisoformat(last)
    if len(text) == len("2026-12"):
        month = date.fromisoformat(f"{text}-01")
        return month, add_months(month, 1)
    day = date.fromisoformat(text)
    return day, day + timedelta(days=1)


def today() -> date:
    """Return today's date on this machine's clock."""
    return datetime.now().astimezone().date()


DAY, SPAN = DayType(), SpanType()
json_option = click.option("--json", "as_json", is_flag=True, help="Print JSON on stdout.")
as_of_option = click.option(
    "--as-of", type=DAY, default=today, show_default="today", help="The day to reckon from."
)
due_option = click.option(
    "--due",
    type=SPAN,
    help="Renewals of a day, of a month (2026-12), or FROM..TO (TO not included).",
)
all_option = click.option("--all", "everything", is_flag=True, help="Every file of the book.")


def needs_store(command: Callable[P, R]) -> Callable[P, R]:
    """Let a command run on a store that exists and is of this version; NotStarted otherwise."""

    @wraps(command)
    def checked(*args: P.args, **options: P.kwargs) -> R:
        from quarterday.store import setup

        setup.require_started()
        return command(*args, **options)

    return checked


def screen_of(context: click.Context) -> Screen:
    """Return the screen of the running program."""
    screen = context.find_object(Screen)
    assert screen is not None
    return screen
