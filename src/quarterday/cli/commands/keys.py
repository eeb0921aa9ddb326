"""Access keys, by which a person's programs ask in their name."""

from __future__ import annotations

from datetime import UTC, datetime
from typing import TYPE_CHECKING

import click

from quarterday.cli.options import json_option, needs_store, screen_of
from quarterday.cli.screen import Screen
from quarterday.core.words import words

if TYPE_CHECKING:
    from quarterday.people.models import Person


@click.command("key")
@click.argument("email")
@click.option("--new", "name", metavar="NAME", help="Make a key, for what NAME says.")
@click.option("--scope", type=click.Choice(["read", "act"]), default="read", show_default=True,
              help="What a new key may do.")  # fmt: skip
@click.option("--days", type=int, default=90, show_default=True, help="How long it counts.")
@click.option("--code", default="", help="Code of the person's second factor.")
@click.option("--end", "number", type=int, metavar="NUMBER", help="End a key at once.")
@json_option
@click.pass_context
@needs_store
def key(
    context: click.Context, /, *, email: str, name: str | None, scope: str, days: int, code: str,
    number: int | None, as_json: bool,
) -> None:  # fmt: skip
    """List the access keys of the person who signs in as EMAIL, make one, or end one."""
    from quarterday.office import access_keys

    screen, now = screen_of(context), datetime.now(UTC)
    person = _person(email)
    if number is not None:
        ended = access_keys.end(person, number, now)
        screen.tell("keys-ended", name=ended.name)
    if name is not None:
        made, secret = access_keys.make(
            person, name=name, scope=scope, days=days, code=code, now=now
        )
        screen.tell("keys-made", name=made.name, day=made.until.date())
        if as_json:
            screen.json({**access_keys.plain(made, now), "key": secret})
        else:
            screen.line(secret)
        return
    told = [access_keys.plain(one, now) for one in access_keys.of(person)]
    if as_json:
        screen.json(told)
    else:
        _table(screen, told)


def _person(email: str) -> Person:
    from quarterday.office.trouble import Trouble
    from quarterday.people.models import Person

    found = Person.objects.filter(email=email.strip().casefold()).first()
    if found is None:
        raise Trouble(words("keys-no-person", email=email[:100]))
    return found


def _table(screen: Screen, told: list[dict[str, object]]) -> None:
    if not told:
        screen.say("keys-none-yet")
        return
    heads = ("keys-head-name", "keys-head-scope", "keys-head-state", "keys-head-until",
             "keys-head-used")  # fmt: skip
    screen.table(
        ("", *(screen.words(head) for head in heads)),
        [
            (str(one["number"]), str(one["name"]), screen.words(f"keys-scope-{one['scope']}"),
             screen.words(f"keys-state-{one['state']}"), str(one["until"])[:10],
             str(one["last_used"] or screen.words("keys-never"))[:16].replace("T", " "))
            for one in told
        ],
    )  # fmt: skip
