"""The catalogues, with their sources: rules, causes, coverages, parameters."""

from __future__ import annotations

from datetime import date

import click
from rich.markdown import Markdown

from quarterday.catalogue.load import data_credits, not_covered
from quarterday.cli.options import as_of_option, json_option, screen_of
from quarterday.cli.screen import Screen
from quarterday.core.reference import Cause, CoverageType
from quarterday.core.review.rules import RULES
from quarterday.core.words import Term
from quarterday.office import catalogues


@click.command()
@json_option
@click.pass_context
def rules(context: click.Context, as_json: bool) -> None:
    """List the rules of the review and what they rest on."""
    screen = screen_of(context)
    if as_json:
        screen.json(catalogues.rules())
        return
    heads = (screen.words("cli-rule"), screen.words("cli-looks-at"), screen.words("cli-basis"))
    screen.table(heads, ((rule.id, rule.looks_at, rule.basis) for rule in RULES))


@click.command()
@json_option
@click.pass_context
def causes(context: click.Context, as_json: bool) -> None:
    """List the causes of loss."""
    screen = screen_of(context)
    if as_json:
        screen.json(catalogues.causes(screen.reference))
        return
    entries = screen.reference.causes.values()
    heads = (screen.words("cli-id"), screen.words("cli-name"), screen.words("cli-water"))
    screen.table(heads, ((c.id, c.name[screen.language], _water(screen, c)) for c in entries))


def _water(screen: Screen, cause: Cause) -> str:
    return screen.words("yes") if cause.water else ""


@click.command()
@json_option
@click.argument("id", required=False)
@click.pass_context
def coverages(context: click.Context, as_json: bool, id: str | None) -> None:
    """List the coverage library, or show one coverage by its ID."""
    screen = screen_of(context)
    library = screen.reference.coverages
    if id is not None and id not in library:
        raise click.BadParameter(screen.words("cli-no-coverage", coverage=id))
    if as_json:
        every = catalogues.coverages(screen.reference)
        screen.json([one for one in every if id in {None, one["id"]}])
    elif id:
        _one_coverage(screen, library[id])
    else:
        heads = (screen.words("cli-id"), screen.words("cli-family"), screen.words("cli-name"))
        rows = ((c.id, screen.speech.say(Term("family", c.family)), c.name[screen.language])
                for c in library.values())  # fmt: skip
        screen.table(heads, rows)


def _one_coverage(screen: Screen, coverage: CoverageType) -> None:
    language = screen.language
    screen.line(coverage.name[language], style="bold")
    screen.line(coverage.meaning[language])
    screen.say("cli-does-not", text=coverage.not_covered[language])
    screen.say("cli-board-asks", text=coverage.question[language])
    causes = tuple(Term("cause", cause) for cause in coverage.answers)
    if causes:
        screen.say("cli-answers", causes=causes)


@click.command()
@json_option
@as_of_option
@click.pass_context
def parameters(context: click.Context, as_json: bool, as_of: date) -> None:
    """List the dated parameters as in force on a day, with their sources."""
    screen = screen_of(context)
    if as_json:
        screen.json(catalogues.parameters(screen.reference, as_of, screen.speech))
        return
    for parameter in catalogues.in_force(screen.reference, as_of):
        said = screen.speech.parts(parameter)
        screen.line(f"{parameter.id}  {said.value}", style="bold")
        screen.line(" ".join(filter(None, (f"{said.label}.", said.how, said.caution))), indent=2)
    for credit in data_credits(screen.language):
        screen.line(credit)


@click.command("not-covered")
@click.pass_context
def not_covered_here(context: click.Context) -> None:
    """Say what is not modelled, so that nobody relies on it."""
    screen = screen_of(context)
    screen.out.print(Markdown(not_covered(screen.language)))
