"""From one answer of a returned form to what it would change.

What cannot be read in one way only is asked, never guessed.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, replace
from datetime import date
from decimal import Decimal

from quarterday.core.file.fold import File
from quarterday.core.file.layout import Column
from quarterday.core.file.records import (
    Answer,
    Answers,
    Authority,
    Contact,
    Decision,
    Interest,
    Operations,
    PaymentChoice,
    Record,
    Terms,
)
from quarterday.core.file.records.terms import Coverage
from quarterday.core.premium.instalments import check_offered
from quarterday.core.words import words
from quarterday.intake.cells import BadCell, Readings, Said, Value
from quarterday.intake.forms.edits import COLUMNS, LIMIT, Ask, Edit, Keep, asked_of
from quarterday.intake.forms.mapping import Target
from quarterday.intake.forms.proposal import Asked, Confirmed, Context, Proposal, read_one

TICKED = "Yes"
FAR = 2  # a sum insured this many times larger or smaller than today's is asked about


@dataclass(frozen=True, slots=True)
class AtHand:
    """One answer that is being read."""

    context: Context
    asked: Asked
    aim: Target
    who: Confirmed
    blank: Proposal

    @property
    def day(self) -> date:
        """The day on which the form says it was filled in, else the day it is read."""
        return self.who.on or self.context.day

    def about(self, record: type[Record], key: str, field: str = "") -> Proposal:
        """Return a proposal about one field of one record, still without an answer."""
        return replace(self.blank, kind=record.kind, key=key, field=field or self.blank.field)

    def asks(self, proposal: Proposal, cell: BadCell) -> Proposal:
        """Return a proposal as a question, because its answer cannot be read."""
        why = words("returns-unclear", what=cell.what, remedy=cell.remedy)
        return replace(proposal, status="asks", why=why, said=self.context.text(self.asked.name))


def _field(read: AtHand, text: str) -> Iterator[Proposal]:
    """Propose a field of a record on file."""
    record, key, name = read.aim.record, read.aim.key, read.aim.field
    column = COLUMNS.get((record.kind, name)) if record else None
    if record is None or column is None:
        return
    then, now = (file.get(record, key) for file in (read.context.then, read.context.now))
    blank = read.about(record, key)
    was, stands = getattr(then, name, None), getattr(now, name, None)
    blank = replace(blank, was=was, now=stands)
    if now is None and record is not Operations:
        yield replace(blank, said=text, status="asks", why=words("returns-record-gone"))
        return
    value, seen = read_one(record.kind, column, text, read.context.stamp.language)
    if isinstance(value, BadCell):
        yield read.asks(blank, value)
        return
    nothing = () if column.kind == "list" else None
    said = nothing if isinstance(value, Said) else value
    if said in (was, stands):
        return
    also = {"confirmed_on": read.day} if record is Interest else {}
    edit = Edit(record, key, {name: said, **also}, {})
    yield _doubted(replace(blank, said=said, edit=edit), value, seen, column)


def _doubted(made: Proposal, value: Value, seen: Readings, column: Column) -> Proposal:
    """Ask where an answer was emptied, or was read in a way that a person should know of."""
    if isinstance(value, Said):
        edit = made.edit if column.may_be_unknown or column.kind == "list" else None
        return replace(made, status="asks", why=words("returns-emptied"), edit=edit)
    ways = (*seen.ways, *(words("returns-taken-for", choice=to) for _, to in seen.choices))
    return replace(made, status="asks", why=ways[0]) if ways else made


def _holds(file: File, contact: str, area: str, day: date) -> bool:
    held = file.get(Authority, f"{contact}/{area}")
    return held is not None and (held.until is None or day < held.until)


def _authority(read: AtHand, text: str) -> Iterator[Proposal]:
    """Propose that somebody may, or may no longer, decide in an area."""
    yield from may_decide(read, read.aim.key, text == TICKED, "")


def may_decide(read: AtHand, contact: str, ticked: bool, needs: str) -> Iterator[Proposal]:
    """Propose that ``contact`` may, or may no longer, decide in the area that is asked about."""
    context, area = read.context, read.aim.field
    then, now = (_holds(file, contact, area, read.day) for file in (context.then, context.now))
    if ticked == now:
        return
    key = f"{contact}/{area}"
    values = {"since": read.day, "until": None} if ticked else {"until": read.day}
    edit = Edit(Authority, key, values, {"contact": contact, "area": area})
    made = replace(read.about(Authority, key, "until"), was=then, now=now, said=ticked)
    yield replace(made, edit=edit, needs=needs)


def _stays(read: AtHand, text: str) -> Iterator[Proposal]:
    """Propose that a contact is confirmed, or has left."""
    now = read.context.now.get(Contact, read.aim.key)
    then = read.context.then.get(Contact, read.aim.key)
    name = {"stays": "confirmed_on", "left": "left_on"}.get(text)
    if now is None or name is None:
        return
    stands = getattr(now, name)
    if stands is not None and (name == "left_on" or stands >= read.day):
        return
    edit = Edit(Contact, now.id, {name: read.day}, {})
    was, here = (known is not None and known.left_on is None for known in (then, now))
    made = replace(read.about(Contact, now.id, name), was=was, now=here, said=text == "stays")
    yield replace(made, edit=edit)


def _sum(read: AtHand, text: str) -> Iterator[Proposal]:
    """Propose a sum insured to ask the insurer for."""
    value, seen = read_one(Terms.kind, LIMIT, text, read.context.stamp.language)
    building, coverage = read.aim.key, read.aim.field
    key = f"{read.context.stamp.renewal}/requested"
    was, now = (_limit(file, coverage, building) for file in (read.context.then, read.context.now))
    blank = replace(read.about(Terms, key, "limit"), was=was, now=now)
    if isinstance(value, BadCell):
        yield read.asks(blank, value)
    elif isinstance(value, Decimal) and value != now:
        line = Coverage(coverage=coverage, location=building, limit=value)
        can = asked_of(read.context.now) is not None
        made = replace(blank, said=value, edit=Ask(key, line) if can else None)
        yield _doubted(_likely(made, value, now), value, seen, LIMIT)


def _likely(made: Proposal, said: Decimal, now: Decimal | None) -> Proposal:
    """Ask about a sum that is far from today's: a comma or a zero may have slipped."""
    if not now or now / FAR <= said <= now * FAR:
        return made
    return replace(made, status="asks", why=words("returns-far"))


def _limit(file: File, coverage: str, building: str) -> Decimal | None:
    terms = asked_of(file)
    line = terms.find(coverage, building) if terms else None
    return line.limit if line else None


def _answer(read: AtHand, text: str) -> Iterator[Proposal]:
    """Propose to keep an answer of a questionnaire in its own words."""
    stamp, subject = read.context.stamp, read.aim.key or "*"
    key = f"{stamp.renewal}/{read.aim.form}/{subject}"
    was, now = (
        _kept(file.get(Answers, key), read.aim.field)
        for file in (read.context.then, read.context.now)
    )
    if text in (was, now) or not text:
        return
    start = {"renewal": stamp.renewal, "form": read.aim.form, "subject": subject,
             "answered_on": read.day, "by": read.who.by or None}  # fmt: skip
    edit = Keep(key, start, Answer(question=read.aim.field, answer=text))
    yield replace(read.about(Answers, key), was=was, now=now, said=text, edit=edit)


def _kept(answers: Answers | None, question: str) -> str | None:
    found = (a.answer for a in (answers.answers if answers else ()) if a.question == question)
    return next(found, None)


def _decision(read: AtHand, text: str) -> Iterator[Proposal]:
    """Propose what the leaders decided on one question."""
    renewal = read.context.stamp.renewal
    key = f"{renewal}/{read.aim.key}"
    start = {"renewal": renewal, "question": read.aim.key, "decided_on": read.day,
             "by": read.who.by}  # fmt: skip
    name = read.aim.field
    yield from _said(read, Edit(Decision, key, {name: text, "decided_on": read.day}, start), name)


def _payment(read: AtHand, text: str) -> Iterator[Proposal]:
    """Propose how the organisation pays: at once, or by a plan that was offered."""
    context = read.context
    renewal, file = context.stamp.renewal, context.now
    start = {"renewal": renewal, "chosen_on": read.day, "by": read.who.by}
    edit = Edit(PaymentChoice, str(renewal), {"plan": text, **start}, start)
    terms = file.terms(renewal, "issued") or file.terms(renewal, "offered")
    wrong = check_offered(text, terms, file.organisation.province, context.reference)
    for made in _said(read, edit, "plan"):
        if wrong is None:
            yield made
        else:
            why = words("returns-no-plan", why=wrong)
            yield replace(made, status="asks", why=why, edit=None)


def _said(read: AtHand, edit: Edit, name: str) -> Iterator[Proposal]:
    """Propose what only a person with a name can say."""
    text = edit.values[name]
    was, now = (
        getattr(file.get(edit.record, edit.key), name, None)
        for file in (read.context.then, read.context.now)
    )
    if not text or text in (was, now):
        return
    made = replace(read.about(edit.record, edit.key, name), was=was, now=now, said=text, edit=edit)
    if read.who.by:
        yield made
    else:
        yield replace(made, status="asks", why=words("returns-nobody"), edit=None)


def _confirms(read: AtHand, text: str) -> Iterator[Proposal]:
    """Propose that the organisation confirmed what it does, when its form is filled in."""
    if read.asked.form != "operations-form" or read.aim.field != "by" or not text:
        return
    stands = read.context.now.operations.confirmed_on
    if stands is not None and stands >= read.day:
        return
    edit = Edit(Operations, "", {"confirmed_on": read.day}, {})
    was = read.context.then.operations.confirmed_on
    made = replace(read.about(Operations, "", "confirmed_on"), was=was, now=stands)
    yield replace(made, said=read.day, edit=edit)


READERS: Mapping[str, Callable[[AtHand, str], Iterator[Proposal]]] = {
    "field": _field,
    "authority": _authority,
    "stays": _stays,
    "sum": _sum,
    "answer": _answer,
    "decision": _decision,
    "payment": _payment,
    "confirmed": _confirms,
}
