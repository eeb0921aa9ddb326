"""What losses could cost an organisation next year, and what its options would change."""

from __future__ import annotations

from datetime import date

import click

from quarterday.cli.choice import chosen_files
from quarterday.cli.commands.reviewing import tree
from quarterday.cli.options import as_of_option, json_option, needs_store, screen_of
from quarterday.cli.screen import Screen
from quarterday.core.figure import Figure, Node, walk
from quarterday.core.money import Money
from quarterday.core.risk.choices import DeductibleChoice, OptionRow, deductibles, options
from quarterday.core.risk.figures import caution, told
from quarterday.core.risk.priors import NO_BOOK, Book
from quarterday.core.risk.risk import Risk
from quarterday.core.risk.told import deductible_told, rests_on


@click.command()
@click.argument("file")
@click.option("--book", "from_book", is_flag=True, help="Learn from the claims of the whole book.")
@click.option("--why", "figure", metavar="FIGURE", help="Show what a figure was made from.")
@as_of_option
@json_option
@click.pass_context
@needs_store
def risk(
    context: click.Context, /, *, file: str, from_book: bool, figure: str | None, as_of: date,
    as_json: bool,
) -> None:  # fmt: skip
    """Show what losses could cost FILE next year: an average year, and bad ones."""
    from quarterday.office import plain
    from quarterday.office import risk as office

    screen = screen_of(context)
    book = _book(screen, as_of) if from_book else NO_BOOK
    _, found = office.risk_file(file, screen.reference, as_of, book)
    if figure is not None:
        node = _figure(screen, found, figure)
        if as_json:
            screen.json(plain.node(node, screen.speech))
        else:
            tree(screen, node)
    elif as_json:
        screen.json(office.as_plain(found, screen.speech))
    else:
        _show(screen, found)


def _book(screen: Screen, as_of: date) -> Book:
    from quarterday.office import risk as office

    ids = chosen_files(screen, (), None, everything=True)
    bar = screen.progress(ids, len(ids), "cli-risk-learning")
    return office.fit_book(bar, screen.reference, as_of)


def _nodes(found: Risk) -> dict[str, Node]:
    """Return every figure of the risk with what it was made from, by id."""
    tops: list[Figure | None] = [f for one in told(found) for f in (one.mean, *one.bad)]
    for row in options(found):
        tops += [row.average, *row.bad]
    for choice in deductibles(found):
        tops += [choice.kept, choice.bad, choice.expected, choice.break_even]
    return {node.id: node for top in tops if top for _, node in walk(top)}


def _figure(screen: Screen, found: Risk, id: str) -> Node:
    nodes = _nodes(found)
    if id not in nodes:
        kind = f"{id.partition('@')[0]}@"
        near = ", ".join(sorted(known for known in nodes if known.startswith(kind))[:6])
        raise click.BadParameter(screen.words("cli-no-figure", figure=id, near=near or "–"))
    return nodes[id]


def _show(screen: Screen, found: Risk) -> None:
    case = found.case
    screen.line(f"{case.file.id}  {case.file.organisation.name}", style="bold")
    screen.say("risk-title", renewal=case.renewal)
    screen.line()
    _costs(screen, found)
    _options(screen, options(found))
    for choice in deductibles(found):
        screen.line()
        _deductible(screen, choice)
    screen.line()
    for said in (caution(), *rests_on(found)):
        screen.line(screen.speech.say(said))
    screen.say("cli-risk-why", file=case.file.id, figure=f"risk-mean@{found.base.id}")


def _heads(screen: Screen, *ids: str) -> tuple[str, ...]:
    return tuple(screen.words(f"risk-head-{id}") for id in ids)


def _costs(screen: Screen, found: Risk) -> None:
    say = screen.speech.say
    rows = [
        (say(one.name), *(say(figure.money) for figure in (one.mean, *one.bad)))
        for one in told(found)
        if one.alternative.option is None
    ]
    screen.table(_heads(screen, "terms", "average", "ten", "hundred"), rows, right="123")


def _options(screen: Screen, rows: tuple[OptionRow, ...]) -> None:
    if not rows:
        return
    screen.line()
    screen.say("risk-options-lead")
    heads = _heads(screen, "option", "state", "price", "average", "ten", "hundred")
    screen.table(heads, [_option(screen, row) for row in rows], right="2345")
    for row in rows:
        if row.why_not is not None:
            screen.say("risk-not-measured", option=row.name, why=row.why_not)


def _option(screen: Screen, row: OptionRow) -> tuple[str, ...]:
    say = screen.speech.say
    state = screen.words("risk-state", state=row.state)
    price = screen.words("paper-ask-us") if row.price is None else say(row.price)
    if row.average is None:
        return say(row.name), state, price, "–", "–", "–"
    return (
        say(row.name),
        state,
        price,
        *(_change(screen, figure.money) for figure in (row.average, *row.bad)),
    )


def _change(screen: Screen, amount: Money) -> str:
    if not amount:
        return screen.words("risk-same")
    return screen.words("risk-less" if amount.amount < 0 else "risk-more", amount=abs(amount))


def _deductible(screen: Screen, choice: DeductibleChoice) -> None:
    for said in deductible_told(choice):
        screen.line(screen.speech.say(said))
