"""What would it pay, and which terms are better."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING

import click

from quarterday.catalogue.strict import read_yaml
from quarterday.cli.options import as_of_option, json_option, needs_store, screen_of
from quarterday.cli.screen import Screen
from quarterday.core.given import read
from quarterday.core.review.case import VERSIONS, Version
from quarterday.core.terms.losses.loss import Loss
from quarterday.core.terms.settling.refusals import Refused
from quarterday.core.terms.settling.settlement import Settlement
from quarterday.office import outcomes

if TYPE_CHECKING:
    from quarterday.core.money import Money
    from quarterday.core.review.case import Case
    from quarterday.core.terms.settling.outcomes import Outcome
    from quarterday.office.terms import Comparison, Tried


@click.command()
@click.argument("file")
@click.option("--loss", help="One loss: its id in the library, or a YAML file that tells it.")
@click.option("--terms", "stage", type=click.Choice(VERSIONS), default="offered",
              show_default=True, help="Which terms.")  # fmt: skip
@as_of_option
@json_option
@click.pass_context
@needs_store
def pay(
    context: click.Context, file: str, loss: str | None, stage: Version, as_of: date, as_json: bool
) -> None:
    """Show what a FILE's terms pay for losses, and what the organisation bears."""
    from quarterday.office import terms as office

    screen = screen_of(context)
    case = office.case_of(file, screen.reference, as_of)
    terms = office.version(case, stage)
    tried = office.tried_losses(case, terms)
    if loss is not None:
        told = _loss(screen, loss, tried)
        _one(screen, office.paid(case, terms, told), _name(screen, told), as_json)
    elif as_json:
        screen.json([outcomes.tried(*one, screen.speech) for one in tried])
    else:
        _all(screen, case, tried)


def _loss(screen: Screen, said: str, tried: Tried) -> Loss:
    """Return the loss of the library, or the one that a file tells."""
    if Path(said).is_file():
        return read(Loss, read_yaml(Path(said).read_text("utf-8"), Path(said).name))
    found = {scaled.of.id: scaled for scaled, _ in tried}
    if said not in found:
        raise click.BadParameter(screen.words("cli-no-loss", loss=said, known=tuple(found)))
    loss = found[said].loss
    if loss is None:
        raise click.BadParameter(outcomes.why_not(found[said], screen.speech))
    return loss


def _name(screen: Screen, loss: Loss) -> str:
    of = screen.reference.losses.get(loss.reference or "")
    return of.name[screen.language] if of else loss.id


def _one(screen: Screen, done: Settlement, name: str, as_json: bool) -> None:
    say = screen.speech.say
    if as_json:
        screen.json(outcomes.settled(done, screen.speech))
        return
    screen.line(name, style="bold")
    for part in done.parts:
        screen.line(screen.speech.named(say(part.what), say(part.lost)))
        for step in part.steps:
            screen.line(f"– {say(step)}", indent=2)
    screen.line(say(done.steps[-1]), style="bold")
    for caution in done.cautions:
        screen.line(say(caution))
    screen.say("caution-wording-governs")


def _all(screen: Screen, case: Case, tried: Tried) -> None:
    screen.line(f"{case.file.id}  {case.file.organisation.name}", style="bold")
    heads = tuple(screen.words(f"cli-{head}") for head in ("loss", "lost", "paid", "borne"))
    screen.table(heads, _rows(screen, tried), right="123")
    for scaled, outcome in tried:
        if outcome is None:
            name = scaled.of.name[screen.language]
            screen.line(screen.speech.named(name, outcomes.why_not(scaled, screen.speech)))
    screen.say("cli-pay-hint", file=case.file.id)
    screen.say("caution-wording-governs")


def _rows(screen: Screen, tried: Tried) -> Iterator[tuple[str, ...]]:
    say = screen.speech.say
    for scaled, outcome in tried:
        if outcome is None:
            continue
        name = f"{scaled.of.name[screen.language]} [{scaled.of.id}]"
        if isinstance(outcome.after, Refused):
            yield name, "–", "–", say(outcome.after.words)
        else:
            done = outcome.after
            yield name, say(done.total.money), say(done.paid.money), say(done.borne.money)


@click.command()
@click.argument("file")
@click.argument("before", type=click.Choice(VERSIONS))
@click.argument("after", type=click.Choice(VERSIONS))
@as_of_option
@json_option
@click.pass_context
@needs_store
def compare(
    context: click.Context,
    file: str,
    before: Version,
    after: Version,
    as_of: date,
    as_json: bool,
) -> None:
    """Compare two versions of a FILE's terms: clauses, and what the same losses would cost."""
    from quarterday.office import terms as office

    screen = screen_of(context)
    case = office.case_of(file, screen.reference, as_of)
    found = office.compared(case, office.version(case, before), office.version(case, after))
    if as_json:
        screen.json(outcomes.compared(case, found, screen.speech))
        return
    screen.line(f"{case.file.id}  {case.file.organisation.name}", style="bold")
    _differences(screen, case, found)
    _outcomes(screen, (o for _, o in found.tried if o is not None))
    _past(screen, found)
    screen.say("caution-wording-governs")


def _differences(screen: Screen, case: Case, found: Comparison) -> None:
    if not found.differences:
        screen.say("cli-compare-same")
    for difference in found.differences:
        said = difference.sentence(case.building_name(difference.location))
        way = screen.words(f"cli-direction-{difference.direction.replace(' ', '-')}")
        screen.line(f"{way} · {screen.speech.say(said)}")


def _outcomes(screen: Screen, found: Iterable[Outcome]) -> None:
    rows = [_row(screen, outcome) for outcome in found]
    if not rows:
        return
    screen.line()
    heads = tuple(screen.words(f"cli-{head}") for head in
                  ("loss", "borne-before", "borne-after", "more-borne"))  # fmt: skip
    screen.table(heads, rows, right="123")


def _row(screen: Screen, outcome: Outcome) -> tuple[str, ...]:
    sides = (outcome.before, outcome.after)
    borne = ("–" if isinstance(s, Refused) else _dollars(screen, s.borne.money) for s in sides)
    more = outcome.more_borne
    told = _dollars(screen, more) if outcome.can_say and more is not None else None
    return (_name(screen, outcome.loss), *borne, told or screen.words("cli-cannot-say"))


def _dollars(screen: Screen, amount: Money) -> str:
    """Say an amount to the dollar: sizes of supposed losses deserve no cents."""
    return screen.speech.money(amount, cents=False)


def _past(screen: Screen, found: Comparison) -> None:
    past = found.past
    if not past.outcomes:
        return
    screen.line()
    screen.say("cli-compare-past", n=len(past.outcomes),
               before=_dollars(screen, past.before.money),
               after=_dollars(screen, past.after.money))  # fmt: skip
    for assumed in past.history.assumed:
        screen.line(screen.speech.say(assumed), indent=2)
