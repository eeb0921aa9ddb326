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
from quarterday.office import plain


@click.command()
@json_option
@click.pass_context
def rules(context: click.Context, as_json: bool) -> None:
    """List the rules of the review and what they rest on."""
    screen = screen_of(context)
    if as_json:
        screen.json([
            {"id": r.id, "looks_at": r.looks_at, "parameters": list(r.parameters), "basis": r.basis}
            for r in RULES
        ])  # fmt: skip
        return
    heads = (screen.words("cli-rule"), screen.words("cli-looks-at"), screen.words("cli-basis"))
    screen.table(heads, ((rule.id, rule.looks_at, rule.basis) for rule in RULES))


@click.command()
@json_option
@click.pass_context
def causes(context: click.Context, as_json: bool) -> None:
    """List the causes of loss."""
    screen = screen_of(context)
    entries = screen.reference.causes.values()
    if as_json:
        screen.json([cause.model_dump(mode="json") for cause in entries])
        return
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
    chosen = [library[id]] if id else list(library.values())
    if as_json:
        screen.json([coverage.model_dump(mode="json", exclude_none=True) for coverage in chosen])
    elif id:
        _one_coverage(screen, chosen[0])
    else:
        heads = (screen.words("cli-id"), screen.words("cli-family"), screen.words("cli-name"))
        rows = ((c.id, screen.speech.say(Term("family", c.family)), c.name[screen.language])
                for c in chosen)  # fmt: skip
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
    found = [series.on(as_of) for series in screen.reference.parameters.values()
             if series.values[0].since <= as_of]  # fmt: skip
    if as_json:
        screen.json([plain.node(parameter, screen.speech) for parameter in found])
        return
    for parameter in found:
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
