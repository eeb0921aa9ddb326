"""From the answers of a returned form to changes that a person takes or refuses.

An answer counts as given when it is not what the form was printed with. What cannot be read in one
way only is asked, never guessed.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import dataclass, field, replace
from datetime import date
from decimal import Decimal
from typing import Literal

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
from quarterday.core.reference import Reference
from quarterday.core.words import Words, words
from quarterday.intake.assemble import BadField
from quarterday.intake.cells import BadCell, Readings, Said, Value, read_column
from quarterday.intake.forms.edits import (
    COLUMNS,
    LIMIT,
    AnyEdit,
    Ask,
    Edit,
    Held,
    Keep,
    asked_of,
    built,
)
from quarterday.intake.forms.mapping import AREAS, CONFIRMED, Target, target
from quarterday.intake.forms.recognise import Given, Stamp
from quarterday.intake.vocabulary import normal

Status = Literal["change", "clash", "asks", "refused"]
NEW = "new-"
NAMED: Mapping[str, type[Contact | Interest]] = {"contacts": Contact, "interests": Interest}
TICKED = "Yes"
FAR = 2  # a sum insured this many times larger or smaller than today's is asked about
_DAY = COLUMNS[Operations.kind, "confirmed_on"]


@dataclass(frozen=True, slots=True)
class Asked:
    """A question as a form put it: its field, label, what was printed in, and the choices."""

    form: str
    name: str
    parts: tuple[str, ...]
    label: str
    printed: str = ""
    options: tuple[tuple[str, str], ...] = ()


@dataclass(frozen=True, slots=True)
class Confirmed:
    """Who says that they filled a form in, and when."""

    by: str = ""
    role: str = ""
    on: date | None = None


@dataclass(frozen=True, slots=True)
class Proposal:
    """One answer beside the facts: what the form was printed with, what stands today, what it says.

    ``edit`` None: it cannot be taken as it is. ``needs`` names the proposal it hangs on.
    """

    name: str
    form: str
    label: str
    kind: str
    key: str
    field: str
    was: Held
    now: Held
    said: Held
    status: Status = "change"
    why: Words | None = None
    edit: AnyEdit | None = None
    needs: str = ""
    is_unread: bool = False  # the form holds an answer that cannot be relied on


@dataclass(frozen=True, slots=True)
class Context:
    """A form at hand: its answers and questions, the file when it was printed and as it stands."""

    stamp: Stamp
    answers: Mapping[str, Given] = field(repr=False)
    asked: Mapping[str, Asked] = field(repr=False)
    then: File = field(repr=False)
    now: File = field(repr=False)
    reference: Reference = field(repr=False)
    day: date

    @property
    def is_lapsed(self) -> bool:
        """Whether the form belongs to another renewal than the one that is coming."""
        return self.stamp.renewal != self.now.renewal

    def text(self, name: str) -> str:
        """Return what a field holds; nothing when it is not there or cannot be read."""
        found = self.answers.get(name)
        return (found.text or "") if found else ""


@dataclass(frozen=True, slots=True)
class Proposed:
    """What a form says: the changes it proposes, what has to be said, and who filled it in.

    ``filled`` are the forms in which anything was answered.
    """

    proposals: tuple[Proposal, ...]
    notes: tuple[Words, ...]
    confirmed: Mapping[str, Confirmed]
    filled: tuple[str, ...]


def propose(context: Context) -> Proposed:
    """Return what the answers of a returned form would change."""
    confirmed, unclear = _confirmed(context)
    found: list[Proposal] = []
    for asked in context.asked.values():
        found += _of(context, asked, confirmed)
    found += _new_records(context, confirmed)
    proposals = tuple(_checked(context, one) for one in found)
    filled = {one.form for one in proposals} | {f for f, who in confirmed.items() if who.by}
    notes = (*_notes(context), *unclear)
    return Proposed(proposals, notes, confirmed, tuple(sorted(filled)))


def _notes(context: Context) -> Iterator[Words]:
    missing = [name for name in context.asked if name not in context.answers]
    extra = [name for name in context.answers if name not in context.asked]
    if context.is_lapsed:
        yield words("returns-lapsed", renewal=context.stamp.renewal)
    if missing:
        first = context.asked[missing[0]].label
        yield words("returns-missing", n=len(missing), first=first)
    if extra:
        yield words("returns-unknown", n=len(extra), names=tuple(extra[:3]))


def _confirmed(context: Context) -> tuple[dict[str, Confirmed], list[Words]]:
    found: dict[str, Confirmed] = {}
    unclear: list[Words] = []
    for asked in context.asked.values():
        if len(asked.parts) != 3 or asked.parts[1:] != (CONFIRMED, "by"):  # noqa: PLR2004
            continue
        form = asked.parts[0]
        by, role, on = (context.text(f"{form}.{CONFIRMED}.{n}") for n in ("by", "role", "on"))
        day = _day(context, on)
        if isinstance(day, BadCell):
            unclear.append(words("returns-date-unclear", said=on[:60], what=day.what))
        known = day if isinstance(day, date) else None
        found[form] = Confirmed(" ".join(by.split())[:300], " ".join(role.split())[:300], known)
    return found, unclear


def _day(context: Context, text: str) -> Value | BadCell:
    value, _ = _read(Operations.kind, _DAY, text, context.stamp.language)
    return value


def _read(kind: str, column: Column, text: str, language: str) -> tuple[Value | BadCell, Readings]:
    seen = Readings()
    (value,) = read_column(kind, column, [text], language, seen)
    return value, seen


def _of(context: Context, asked: Asked, by_form: Mapping[str, Confirmed]) -> Iterator[Proposal]:
    aim, given = target(asked.parts), context.answers.get(asked.name)
    if aim is None or given is None or aim.key.startswith(NEW):
        return
    blank = Proposal(asked.name, asked.form, asked.label, "", aim.key, aim.field, None, None, None)
    if given.text is None:
        stands = _standing(context, aim, blank)
        yield replace(stands, status="asks", why=given.why, is_unread=True)
    elif not _same(given.text, asked.printed):
        who = by_form.get(asked.form, Confirmed())
        read = _Read(context, asked, aim, who, blank)
        yield from _READERS[aim.way](read, _id_of(asked, given.text))


def _standing(context: Context, aim: Target, blank: Proposal) -> Proposal:
    """Return a proposal that says nothing new of a field, and what stands in it."""
    if aim.record is None or (aim.record.kind, aim.field) not in COLUMNS:
        return blank
    then, now = (file.get(aim.record, aim.key) for file in (context.then, context.now))
    was, stands = (getattr(record, aim.field, None) for record in (then, now))
    return replace(blank, kind=aim.record.kind, was=was, now=stands)


def _same(one: str, other: str) -> bool:
    return one.split() == other.split()


def _id_of(asked: Asked, text: str) -> str:
    """Return what is stored for a choice that a program wrote as it is shown."""
    shown = [id for id, label in asked.options if label == text]
    is_id = any(id == text for id, _ in asked.options)
    return shown[0] if len(shown) == 1 and not is_id else text


@dataclass(frozen=True, slots=True)
class _Read:
    """One answer that is being read."""

    context: Context
    asked: Asked
    aim: Target
    who: Confirmed
    blank: Proposal

    @property
    def day(self) -> date:
        return self.who.on or self.context.day

    def about(self, record: type[Record], key: str, field: str = "") -> Proposal:
        return replace(self.blank, kind=record.kind, key=key, field=field or self.blank.field)

    def asks(self, proposal: Proposal, cell: BadCell) -> Proposal:
        why = words("returns-unclear", what=cell.what, remedy=cell.remedy)
        return replace(proposal, status="asks", why=why, said=self.context.text(self.asked.name))


def _field(read: _Read, text: str) -> Iterator[Proposal]:
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
    value, seen = _read(record.kind, column, text, read.context.stamp.language)
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


def _authority(read: _Read, text: str) -> Iterator[Proposal]:
    """Propose that somebody may, or may no longer, decide in an area."""
    yield from _may(read, read.aim.key, text == TICKED, "")


def _may(read: _Read, contact: str, ticked: bool, needs: str) -> Iterator[Proposal]:
    context, area = read.context, read.aim.field
    then, now = (_holds(file, contact, area, read.day) for file in (context.then, context.now))
    if ticked == now:
        return
    key = f"{contact}/{area}"
    values = {"since": read.day, "until": None} if ticked else {"until": read.day}
    edit = Edit(Authority, key, values, {"contact": contact, "area": area})
    made = replace(read.about(Authority, key, "until"), was=then, now=now, said=ticked)
    yield replace(made, edit=edit, needs=needs)


def _stays(read: _Read, text: str) -> Iterator[Proposal]:
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


def _sum(read: _Read, text: str) -> Iterator[Proposal]:
    """Propose a sum insured to ask the insurer for."""
    value, seen = _read(Terms.kind, LIMIT, text, read.context.stamp.language)
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


def _answer(read: _Read, text: str) -> Iterator[Proposal]:
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


def _decision(read: _Read, text: str) -> Iterator[Proposal]:
    """Propose what the leaders decided on one question."""
    renewal = read.context.stamp.renewal
    key = f"{renewal}/{read.aim.key}"
    start = {"renewal": renewal, "question": read.aim.key, "decided_on": read.day,
             "by": read.who.by}  # fmt: skip
    name = read.aim.field
    yield from _said(read, Edit(Decision, key, {name: text, "decided_on": read.day}, start), name)


def _payment(read: _Read, text: str) -> Iterator[Proposal]:
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


def _said(read: _Read, edit: Edit, name: str) -> Iterator[Proposal]:
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


def _confirms(read: _Read, text: str) -> Iterator[Proposal]:
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


_READERS: Mapping[str, Callable[[_Read, str], Iterator[Proposal]]] = {
    "field": _field,
    "authority": _authority,
    "stays": _stays,
    "sum": _sum,
    "answer": _answer,
    "decision": _decision,
    "payment": _payment,
    "confirmed": _confirms,
}


def _new_records(context: Context, by_form: Mapping[str, Confirmed]) -> Iterator[Proposal]:
    """Propose the people and interests for whom an empty place was filled in."""
    by_place: dict[tuple[str, str], dict[str, Asked]] = {}
    for asked in context.asked.values():
        area, place = asked.parts[0], asked.parts[1] if len(asked.parts) > 1 else ""
        if area in NAMED and place.startswith(NEW):
            by_place.setdefault((area, place), {})[asked.parts[2]] = asked
    for (area, place), questions in by_place.items():
        said = {name: context.text(asked.name) for name, asked in questions.items()}
        if any(said.values()):
            who = by_form.get(AREAS[area].form, Confirmed())
            yield from _New(context, area, place, questions, who).proposals(said)


@dataclass(frozen=True, slots=True)
class _New:
    """A new person or interest that is described in an empty place of a form."""

    context: Context
    area: str
    place: str
    questions: Mapping[str, Asked]
    who: Confirmed

    @property
    def record(self) -> type[Contact | Interest]:
        return NAMED[self.area]

    @property
    def blank(self) -> Proposal:
        name, form = f"{self.area}.{self.place}", AREAS[self.area].form
        label = self.questions["name"].label
        return Proposal(name, form, label, self.record.kind, "", "", None, None, None)

    def proposals(self, said: Mapping[str, str]) -> Iterator[Proposal]:
        values: dict[str, Held] = {}
        for name, text in said.items():
            asked = self.questions[name]
            column = COLUMNS[self.record.kind, name]
            chosen, language = _id_of(asked, text), self.context.stamp.language
            value, seen = _read(self.record.kind, column, chosen, language)
            if isinstance(value, BadCell) or seen.choices or seen.ways:
                what = value.what if isinstance(value, BadCell) else words("returns-not-exact")
                told = replace(self.blank, label=asked.label, said=text)
                yield replace(told, status="asks", why=what)
                return
            if not isinstance(value, Said):
                values[name] = value
        yield from self._named(values) if "name" in values else self._nameless(said)

    def _nameless(self, said: Mapping[str, str]) -> Iterator[Proposal]:
        told = ", ".join(filter(None, said.values()))
        yield replace(self.blank, status="asks", why=words("returns-no-name"), said=told)

    def _named(self, values: Mapping[str, Held]) -> Iterator[Proposal]:
        plain = normal(str(values["name"]))
        there: tuple[Contact | Interest, ...] = self.context.now.all(self.record)
        known = next((one for one in there if normal(one.name) == plain), None)
        id = known.id if known else _free_id(plain, {one.id for one in there})
        told = ", ".join(map(str, values.values()))
        edit = Edit(self.record, id, values, {} if known else {"id": id})
        made = replace(self.blank, key=id, said=told, edit=edit)
        needs = made.name
        if known is None:
            yield made
        elif any(getattr(known, name) != value for name, value in values.items()):
            yield replace(made, now=known.name, status="asks", why=words("returns-namesake"))
        else:
            needs = ""  # on file as it stands
        yield from self._may(id, needs)

    def _may(self, id: str, needs: str) -> Iterator[Proposal]:
        """Propose what a new person may decide on."""
        for asked in self.context.asked.values():
            aim = target(asked.parts)
            if aim and aim.way == "authority" and (self.area, self.place) == ("contacts", aim.key):
                one = replace(self.blank, name=asked.name, label=asked.label)
                read = _Read(self.context, asked, aim, self.who, one)
                ticked = self.context.text(asked.name) == TICKED
                yield from _may(read, id, ticked, needs)


def _free_id(plain: str, taken: set[str]) -> str:
    stem = plain.replace(" ", "-")[:70] or "new"
    tries: Iterable[str] = (stem, *(f"{stem}-{n}" for n in range(2, len(taken) + 3)))
    return next(id for id in tries if id not in taken)


_OF_RENEWAL = (Terms.kind, Decision.kind, PaymentChoice.kind, Answers.kind)


def _checked(context: Context, made: Proposal) -> Proposal:
    """Ask where the facts moved since the form was printed, or where the change cannot be made."""
    if made.edit is None:
        return replace(made, status="asks")
    try:
        built(context.now, [made.edit])
    except BadField as bad:
        why = words("returns-unclear", what=bad.cell.what, remedy=bad.cell.remedy)
        return replace(made, status="asks", why=why, edit=None)
    if context.is_lapsed:
        why = words("returns-lapsed-one", renewal=context.stamp.renewal)
        edit = None if made.kind in _OF_RENEWAL else made.edit
        return replace(made, status="asks", why=why, edit=edit)
    if made.was != made.now and made.status == "change":
        return replace(made, status="clash", why=words("returns-changed-since"))
    return made
