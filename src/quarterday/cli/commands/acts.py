"""What people said and did: decide, choose a payment, deliver, bind, check the policy."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from pathlib import Path

import click

from quarterday.cli.letters import letter_options, own_words
from quarterday.cli.options import DAY, as_of_option, json_option, needs_store, screen_of, today
from quarterday.cli.screen import Screen
from quarterday.core.words import Term

_by = click.option(
    "--by", envvar="QUARTERDAY_USER", default="cli", show_default=True, help="Who records it."
)
_on = click.option("--on", type=DAY, default=today, show_default="today", help="On which day.")
_said_by = click.option("--said-by", required=True, help="Who of the organisation said so.")
ANSWERS = ("take-it", "leave-it", "later", "ask-us")


@dataclass(frozen=True, slots=True)
class Typist:
    """Who acts at a terminal, as entries name them."""

    signed: str


@click.command()
@click.argument("file")
@click.argument("question", required=False)
@click.argument("answer", type=click.Choice(ANSWERS), required=False)
@click.option("--said-by", help="Who of the organisation said so.")
@click.option("--words", "said", default="", help="What they said, in their words.")
@_on
@_by
@json_option
@click.pass_context
@needs_store
def decide(
    context: click.Context, /, *, file: str, question: str | None, answer: str | None,
    said_by: str | None, said: str, on: date, by: str, as_json: bool,
) -> None:  # fmt: skip
    """Record what the leaders of FILE decided on a QUESTION; without one, list the questions."""
    from quarterday.office import acts, reviewing

    screen = screen_of(context)
    held, done = reviewing.review_file(file, screen.reference, on)
    if question is None:
        _questions(screen, sorted(acts.questions(held, done)), as_json)
        return
    if answer is None or said_by is None:
        raise click.UsageError(screen.words("cli-decide-what"))
    acts.decide(Typist(by), held, done, question=question, answer=answer, by=said_by, on=on,
                said=said, seen=None)  # fmt: skip
    if as_json:
        screen.json({"file": file, "question": question, "answer": answer})
    else:
        screen.say("cli-decided", by=said_by, answer=Term("answer", answer), question=question)


def _questions(screen: Screen, questions: list[str], as_json: bool) -> None:
    if as_json:
        screen.json(questions)
        return
    for question in questions:
        screen.line(question)
    if not questions:
        screen.say("cli-decide-none")


@click.command()
@click.argument("file")
@click.argument("plan")
@_said_by
@_on
@_by
@click.pass_context
@needs_store
def payment(
    context: click.Context, /, *, file: str, plan: str, said_by: str, on: date, by: str
) -> None:
    """Record by which PLAN (or at-once) the premium of FILE is paid."""
    from quarterday.office import acts, reviewing

    screen = screen_of(context)
    held, done = reviewing.review_file(file, screen.reference, on)
    acts.choose_payment(Typist(by), held, done, plan=plan, by=said_by, on=on, seen=None)
    screen.say("cli-payment", file=file, plan=plan, by=said_by)


@click.command()
@click.argument("file")
@click.option("--to", required=True, help="The name of who receives it.")
@click.option("--way", type=click.Choice(["post", "by hand", "room", "e-mail"]), default="by hand",
              show_default=True, help="How it went, when it is only recorded.")  # fmt: skip
@click.option("--language", "paper", type=click.Choice(["en", "fr"]),
              help="Which package; default: the organisation's language.")  # fmt: skip
@letter_options
@click.option("--brokerage", "brand", type=click.Path(exists=True, path_type=Path),
              help="The file that describes the brokerage.")  # fmt: skip
@_on
@_by
@click.pass_context
@needs_store
def deliver(
    context: click.Context, /, *, file: str, to: str, address: str | None, way: str,
    paper: str | None, subject: str | None, message: Path | None, brand: Path | None, on: date,
    by: str,
) -> None:  # fmt: skip
    """Send the signed package of FILE by e-mail, or record that it went another way."""
    from quarterday.office import delivering
    from quarterday.office.brand import brokerage
    from quarterday.store import ledger

    screen = screen_of(context)
    own = own_words(screen, address, subject, message, by=by)
    held = ledger.load(file)
    language = paper or held.organisation.language
    if address is None:
        delivering.deliver(file, screen.reference, language, to=to, way=way, on=on, by=by)
        screen.say("cli-delivered", file=file, to=to)
        return
    house = brokerage(brand)
    usual = delivering.usual_letter(held, screen.reference, language, house, to, address, by)
    delivering.send(
        file, screen.reference, language, usual.worded(*own), brokerage=house, on=on, by=by
    )
    screen.say("cli-mailed", file=file, to=to, address=address)


@click.command()
@click.argument("file")
@click.option("--confirmed-by", help="Who at the insurer confirmed it.")
@click.option("--accept", "accepted", multiple=True, metavar="CHANGE",
              help="A change beyond the offer that the insurer accepted.")  # fmt: skip
@click.option("--binder", default="", help="The number of the binder or cover note.")
@click.option("--words", "said", default="", help="What was said.")
@_on
@_by
@as_of_option
@json_option
@click.pass_context
@needs_store
def bind(
    context: click.Context, /, *, file: str, confirmed_by: str | None, accepted: tuple[str, ...],
    binder: str, said: str, on: date, by: str, as_of: date, as_json: bool,
) -> None:  # fmt: skip
    """Record that the insurer bound FILE; without --confirmed-by, show what may be agreed."""
    from quarterday.office import binding
    from quarterday.store import ledger

    screen = screen_of(context)
    held = ledger.load(file)
    if confirmed_by is None:
        _changes(screen, binding.binder(held), as_json)
        return
    entry = binding.bind(
        held, insurer_person=confirmed_by, on=on, today=as_of, accepted=accepted, number=binder,
        said=said, by=by, seen=None,
    )  # fmt: skip
    if as_json:
        screen.json({"file": file, "entry": entry.seq, "accepted": sorted(accepted)})
    else:
        screen.say("cli-bound", file=file, by=confirmed_by, n=len(accepted))


def _changes(screen: Screen, found: object, as_json: bool) -> None:
    from quarterday.office.binding import Binder, plain

    assert isinstance(found, Binder)
    money = found.offered.money
    if as_json:
        screen.json(plain(found))
        return
    heads = tuple(screen.words(f"cli-{head}") for head in ("wish", "limit", "price", "wish-taken"))
    say = screen.speech.say
    screen.table(heads, (
        (w.id, say(money(w.line.limit)) if w.line.limit is not None else "–",
         say(money(w.price)) if w.price is not None else "–",
         screen.words("yes") if w.is_taken else "–")
        for w in found.wishes
    ), right="12")  # fmt: skip
    screen.say("cli-bind-next")


@click.command()
@click.argument("file")
@click.option("--done", "is_done", is_flag=True, help="Record that the policy was checked.")
@click.option("--about", "said", default="", help="What was done about what it lacks.")
@_on
@_by
@as_of_option
@json_option
@click.pass_context
@needs_store
def check(
    context: click.Context, /, *, file: str, is_done: bool, said: str, on: date, by: str,
    as_of: date, as_json: bool,
) -> None:  # fmt: skip
    """Compare the issued policy of FILE with what was agreed; --done records it."""
    from quarterday.core.review.case import Case
    from quarterday.office import checking
    from quarterday.store import ledger

    screen = screen_of(context)
    held = ledger.load(file)
    found = checking.check_of(held)
    case = Case(held, screen.reference, as_of)
    told = checking.plain(found, case, screen.speech)
    if is_done:
        checking.check(held, on=on, today=as_of, said=said, by=by, seen=held.seq)
    if as_json:
        screen.json({"file": file, "recorded": is_done, "differences": told})
        return
    for one in told:
        named = screen.words(f"cli-direction-{one['direction'].replace(' ', '-')}")
        screen.line(f"{named} · {one['sentence']}")
    screen.say("cli-check", file=file, day=found.issued.start, n=len(told))
    screen.say("cli-checked" if is_done else "cli-check-next")
