"""Review files, ask why, and sign."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date

import click

from quarterday.cli.choice import chosen_files
from quarterday.cli.options import (
    DAY,
    all_option,
    as_of_option,
    due_option,
    json_option,
    needs_store,
    screen_of,
)
from quarterday.cli.screen import Screen
from quarterday.core.figure import Figure, Node
from quarterday.core.file.fold import File
from quarterday.core.reference import IndexRelease
from quarterday.core.review.finding import Finding
from quarterday.core.review.review import Review
from quarterday.core.values.index import spoken
from quarterday.core.words import Term


@click.command("review")
@click.argument("files", nargs=-1)
@due_option
@all_option
@as_of_option
@json_option
@click.pass_context
@needs_store
def review_files(
    context: click.Context, /, *, files: tuple[str, ...], due: tuple[date, date] | None,
    everything: bool, as_of: date, as_json: bool,
) -> None:  # fmt: skip
    """Review FILES: what was noticed, in order, and what the leaders decide."""
    from quarterday.office import plain, reviewing

    screen = screen_of(context)
    ids = chosen_files(screen, files, due, everything)
    bar = screen.progress(ids, len(ids), "cli-reviewing") if len(ids) > 1 else ids
    done = [reviewing.review_file(id, screen.reference, as_of) for id in bar]
    if as_json:
        said = [plain.review(review, screen.speech) for _, review in done]
        screen.json(said if len(said) != 1 else said[0])
    elif len(done) == 1:
        _one(screen, *done[0])
    else:
        _many(screen, done)


def _one(screen: Screen, file: File, review: Review) -> None:
    screen.line(f"{file.id}  {file.organisation.name}", style="bold")
    screen.say("cli-review-of", renewal=review.renewal, day=review.as_of)
    if review.agenda:
        screen.line()
        screen.say("cli-agenda")
        for number, finding in enumerate(review.agenda, 1):
            screen.line(f"{number}. {screen.speech.say(finding.title)}", indent=2)
    for finding in review.findings:
        _finding(screen, finding)
    screen.line()
    for used in review.releases:
        _release(screen, used)
    screen.say("cli-why-hint", file=file.id)
    screen.say("caution-wording-governs")


def _release(screen: Screen, used: IndexRelease) -> None:
    screen.say(
        "values-release-used",
        place=Term("index", used.geography),
        day=used.released_on,
        last=spoken(max(used.points)),
        base=used.base,
    )


def _finding(screen: Screen, finding: Finding) -> None:
    say = screen.speech.say
    screen.line()
    kind = say(Term("finding-kind", finding.kind))
    screen.line(f"{kind} · {say(finding.title)}", style="bold")
    screen.line(say(finding.means), indent=2)
    screen.line(say(finding.todo), indent=2)
    for node in finding.evidence:
        said = screen.speech.parts(node)
        screen.line(f"{screen.speech.named(said.label, said.value)}   [{node.id}]", indent=4)
    if finding.set_aside is not None:
        screen.line(screen.words("cli-set-aside", reason=finding.set_aside), indent=2)


def _many(screen: Screen, done: Iterable[tuple[File, Review]]) -> None:
    heads = tuple(screen.words(f"cli-{head}") for head in
                  ("file", "name", "renewal", "findings", "decisions", "first"))  # fmt: skip
    screen.table(heads, (_row(screen, file, review) for file, review in done), right="34")


def _row(screen: Screen, file: File, review: Review) -> tuple[str, ...]:
    first = screen.speech.say(review.findings[0].title) if review.findings else ""
    counts = (str(len(review.findings)), str(len(review.agenda)))
    return (file.id, file.organisation.name, review.renewal.isoformat(), *counts, first)


@click.command()
@click.argument("file")
@click.argument("figure")
@as_of_option
@json_option
@click.pass_context
@needs_store
def why(context: click.Context, file: str, figure: str, as_of: date, as_json: bool) -> None:
    """Show what a FIGURE of a FILE's review was made from, down to its sources."""
    from quarterday.office import plain, reviewing

    screen = screen_of(context)
    figures = reviewing.review_file(file, screen.reference, as_of)[1].figures()
    if figure not in figures:
        near = ", ".join(sorted(id for id in figures if figure.partition("@")[0] in id)[:6])
        raise click.BadParameter(screen.words("cli-no-figure", figure=figure, near=near or "–"))
    if as_json:
        screen.json(plain.node(figures[figure], screen.speech))
    else:
        tree(screen, figures[figure])


def tree(screen: Screen, node: Node, depth: int = 0) -> None:
    """Show a figure and, under it, what it was made from."""
    said = screen.speech.parts(node)
    told = screen.speech.named(said.label, said.value)
    screen.line(told, style="bold" if depth == 0 else None, indent=2 * depth)
    for text in filter(None, (said.how, said.caution)):
        screen.line(text, style="dim", indent=2 * depth + 2)
    if isinstance(node, Figure):
        for part in node.inputs:
            tree(screen, part, depth + 1)


@click.command()
@click.argument("file")
@click.option("--reviewer", required=True, help="Name of the licensed person.")
@click.option("--licence", required=True, help="Number of the licence.")
@click.option("--as-of", type=DAY, required=True, help="The day of the review that was read.")
@click.pass_context
@needs_store
def sign(context: click.Context, file: str, reviewer: str, licence: str, as_of: date) -> None:
    """Sign a FILE's review as the licensed person who read it."""
    from quarterday.office import reviewing

    screen = screen_of(context)
    reviewing.sign(file, screen.reference, reviewer=reviewer, licence=licence, as_of=as_of,
                   by=reviewer)  # fmt: skip
    screen.say("cli-signed", file=file, reviewer=reviewer, day=as_of)
