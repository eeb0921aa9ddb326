"""The whole book in figures: work, states, shortfall, offers, take-up and claims."""

from __future__ import annotations

import re
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, Any

import click

from quarterday.cli.commands.evidence import written
from quarterday.cli.options import as_of_option, json_option, needs_store, screen_of
from quarterday.cli.screen import Screen

if TYPE_CHECKING:
    from quarterday.core.book.sums import Sums
    from quarterday.office.book.topics.topic import Teller, Topic
    from quarterday.store.book import Asked

TOPIC_IDS = ("work", "states", "values", "offers", "cover", "causes", "years", "classes",
             "insurers", "provinces")  # fmt: skip
SPAN = re.compile(r"(\d{4}-(?:0[1-9]|1[0-2]))\.\.(\d{4}-(?:0[1-9]|1[0-2]))")


def _months(_: click.Context, __: click.Parameter, value: str | None) -> tuple[str, str]:
    """Return the first and the last month, both included; empty when not asked for."""
    if value is None:
        return "", ""
    found = SPAN.fullmatch(value)
    if found is None or found[1] > found[2]:
        raise click.BadParameter(f"{value!r}: write two months like 2026-12..2027-02.")
    return found[1], found[2]


@click.command()
@click.argument("topics", nargs=-1, type=click.Choice(TOPIC_IDS), metavar="[TOPIC]...")
@click.option("--office", default="", help="Only the files of this office.")
@click.option("--owner", default="", help="Only the files of this broker.")
@click.option("--province", default="", help="Only organisations of this province.")
@click.option("--months", metavar="FROM..TO", callback=_months,
              help="Only renewals of these months, both included.")  # fmt: skip
@click.option("--to", "kind", type=click.Choice(["xlsx", "csv", "parquet"]),
              help="Write the tables: a workbook, or one table as CSV or Parquet.")  # fmt: skip
@click.option("--out", type=click.Path(path_type=Path, dir_okay=False), help="The file to write.")
@as_of_option
@json_option
@click.pass_context
@needs_store
def book(
    context: click.Context, /, *, topics: tuple[str, ...], office: str, owner: str, province: str,
    months: tuple[str, str], kind: str | None, out: Path | None, as_of: date, as_json: bool,
) -> None:  # fmt: skip
    """Tell the whole book: work by week, states, shortfall, offers, take-up, claims.

    TOPIC is one of work, states, values, offers, cover, causes, years, classes, insurers and
    provinces; default: all of them.
    """
    from quarterday.office.book import keeping
    from quarterday.office.book.topics import TOPICS
    from quarterday.office.book.topics.topic import Teller
    from quarterday.store.book import Asked

    if (kind is None) != (out is None):
        raise click.UsageError("--to and --out go together.")
    screen = screen_of(context)
    asked = Asked(frozenset({office}) if office else None, owner, province, *months)
    sums = keeping.counted(screen.reference, as_of, asked,
                           lambda files, n: screen.progress(files, n, "cli-reviewing"))  # fmt: skip
    tell = Teller(screen.speech, as_of)
    told = [TOPICS[id](tell, sums) for id in topics or TOPICS]
    if kind is not None and out is not None:
        _write(screen, tell, told, asked, (kind, out))
    elif as_json:
        screen.json(_plain(tell, told, asked, sums))
    else:
        _show(screen, tell, told, sums)


def _write(
    screen: Screen, tell: Teller, told: list[Topic], asked: Asked, to: tuple[str, Path]
) -> None:
    from quarterday.office.book import writing

    kind, out = to
    path = written(out, writing.written(told, kind, tell, asked))
    screen.say("book-written", topic=", ".join(one.title for one in told), path=str(path))


def _show(screen: Screen, tell: Teller, told: list[Topic], sums: Sums) -> None:
    whole = sums.files.get("")
    screen.say("book-title", day=tell.as_of)
    screen.say("book-files", n=whole.files if whole else 0)
    if whole and whole.no_renewal:
        screen.say("book-no-renewal", n=whole.no_renewal)
    if whole and whole.other_currency:
        screen.say("book-other-currency", n=whole.other_currency)
    for topic in told:
        _topic(screen, tell, topic)


def _topic(screen: Screen, tell: Teller, topic: Topic) -> None:
    fields = topic.fields()
    screen.line()
    screen.line(topic.title, style="bold")
    screen.line(topic.message)
    screen.line()
    right = "".join(str(n) for n, (_, field) in enumerate(fields) if field.kind != "text")
    rows = ([tell.shown(row[at], f) for at, f in fields] for row in topic.table.rows)
    screen.table([field.heading for _, field in fields], rows, right=right)
    for note in topic.notes:
        screen.line(note, style="dim")


def _plain(tell: Teller, told: list[Topic], asked: Asked, sums: Sums) -> dict[str, Any]:
    from quarterday.office.book.writing import about

    whole = sums.files.get("")
    return {
        "as_of": tell.as_of.isoformat(),
        "asked": dict(about(tell, asked)),
        "files": whole._asdict() if whole else None,
        "topics": {topic.id: _topic_plain(topic) for topic in told},
    }


def _topic_plain(topic: Topic) -> dict[str, Any]:
    from quarterday.office import plain

    rows = [
        {f.id: plain.value(cell) for f, cell in zip(topic.table.fields, row, strict=True)}
        for row in topic.table.rows
    ]
    return {"title": topic.title, "message": topic.message, "rows": rows}
