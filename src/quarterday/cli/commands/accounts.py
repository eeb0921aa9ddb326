"""The store and what it holds: start, list, show, history."""

from __future__ import annotations

from datetime import UTC, date, datetime, time, timedelta
from decimal import Decimal
from typing import TYPE_CHECKING

import click
from pydantic import BaseModel

from quarterday.cli.options import DAY, due_option, json_option, needs_store, screen_of
from quarterday.cli.screen import Screen
from quarterday.core.file.fold import File
from quarterday.core.file.records import Record, Terms
from quarterday.core.money import total
from quarterday.core.words import Rate, Term
from quarterday.intake.labels import field_label
from quarterday.intake.preview import field_told
from quarterday.office import plain

if TYPE_CHECKING:
    from quarterday.store.ledger import Listed


@click.command()
@click.pass_context
def start(context: click.Context) -> None:
    """Create or upgrade the store; say where it is and what to do next."""
    from quarterday.store import setup

    screen = screen_of(context)
    screen.say("cli-started", place=setup.start().place.shown)
    screen.say("cli-started-next")


@click.command("list")
@due_option
@click.option("--search", default="", help="Words in the name, the town or the file's id.")
@json_option
@click.pass_context
@needs_store
def list_renewals(
    context: click.Context, due: tuple[date, date] | None, search: str, as_json: bool
) -> None:
    """List the renewals by date."""
    from quarterday.office.listing import plain as plain_line
    from quarterday.office.listing import renewals

    screen = screen_of(context)
    found = renewals(due, search)
    if as_json:
        screen.json([plain_line(listed) for listed in found])
        return
    heads = tuple(screen.words(f"cli-{head}") for head in
                  ("file", "name", "province-short", "renewal", "offered", "change"))  # fmt: skip
    screen.table(heads, (_row(screen, listed) for listed in found), right="45")
    screen.say("cli-files", n=len(found))


def _row(screen: Screen, listed: Listed) -> tuple[str, ...]:
    from quarterday.office.listing import change, premium

    say, ratio = screen.speech.say, change(listed)
    newest = premium(listed, listed.premium_offered or listed.premium_expiring)
    return (
        listed.file,
        listed.name,
        listed.province,
        listed.renewal_date.isoformat() if listed.renewal_date else "–",
        say(newest) if newest else "–",
        say(Rate(ratio)) if ratio is not None else "–",
    )


@click.command()
@click.argument("file")
@click.option("--as-known", type=DAY, help="As the file was known at the end of that day.")
@json_option
@click.pass_context
@needs_store
def show(context: click.Context, file: str, as_known: date | None, as_json: bool) -> None:
    """Show what is known about a FILE."""
    from quarterday.store import ledger

    screen = screen_of(context)
    known = ledger.load(file, known_at=end_of(as_known))
    if as_json:
        screen.json(plain.file(known))
        return
    screen.line(f"{known.id}  {known.organisation.name}", style="bold")
    if known.renewal:
        screen.say("cli-renews", day=known.renewal)
    kinds = dict.fromkeys(kind for kind, _ in known.held)
    for kind in kinds:
        _section(screen, known, kind)


def end_of(day: date | None) -> datetime | None:
    """Return the last moment of a day in universal time, or None."""
    if day is None:
        return None
    return datetime.combine(day + timedelta(days=1), time(), UTC) - timedelta(microseconds=1)


def _section(screen: Screen, file: File, kind: str) -> None:
    screen.line()
    screen.line(screen.speech.say(Term("record", kind)), style="bold")
    for held in (h for (k, _), h in file.held.items() if k == kind):
        if held.record.key:
            screen.line(held.record.key, indent=2)
        for label, text in _fields(screen, held.record):
            screen.line(screen.speech.named(label[:1].upper() + label[1:], text), indent=4)


def _fields(screen: Screen, record: Record) -> list[tuple[str, str]]:
    """Return the fields that are known, in words; terms say their parts as counts and a total."""
    say = screen.speech.say
    found = [
        (say(field_label(name, record.kind)), say(field_told(record, name, value)))
        for name, value in record
        if value not in (None, "", ()) and not _is_parts(value)
    ]
    return found + (_terms(screen, record) if isinstance(record, Terms) else [])


def _is_parts(value: object) -> bool:
    """Tell whether a value is made of lines of its own, like the coverages of terms."""
    return isinstance(value, tuple) and isinstance(value[0], BaseModel)


def _terms(screen: Screen, terms: Terms) -> list[tuple[str, str]]:
    premium = total((terms.money(p.amount) for p in terms.premiums), terms.currency)
    say = screen.speech.say
    lines = [(say(Term("coverage", line.coverage)), _limit(screen, terms, line.limit))
             for line in terms.coverages]  # fmt: skip
    return [*lines, (screen.words("cli-premium"), say(premium))]


def _limit(screen: Screen, terms: Terms, limit: object) -> str:
    return screen.speech.say(terms.money(limit)) if isinstance(limit, Decimal) else "–"


@click.command()
@click.argument("file")
@click.option("--as-known", type=DAY, help="Only what was recorded by the end of that day.")
@json_option
@click.pass_context
@needs_store
def history(context: click.Context, file: str, as_known: date | None, as_json: bool) -> None:
    """List a FILE's entries: what, when, by whom, from which row of which document."""
    from quarterday.store import ledger

    screen = screen_of(context)
    moment = end_of(as_known)
    found = [e for e in ledger.entries(file) if moment is None or e.recorded_at <= moment]
    if as_json:
        screen.json([plain.entry(made) for made in found])
        return
    for made in found:
        what = f"{screen.speech.say(Term('record', made.kind))} {made.key}".rstrip()
        screen.line(f"{made.seq:>4}  {made.recorded_at:%Y-%m-%d %H:%M}  {made.act}  {what}")
        origin = screen.speech.origin(made.origin, made.recorded_at.date())
        screen.line(f"{origin} · {made.by}", style="dim", indent=6)
