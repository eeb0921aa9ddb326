"""The people and interests that a returned form describes in its empty places."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, replace

from quarterday.core.file.records import Contact, Interest
from quarterday.core.words import words
from quarterday.intake.cells import BadCell, Said
from quarterday.intake.forms.answers import TICKED, AtHand, may_decide
from quarterday.intake.forms.edits import COLUMNS, Edit, Held
from quarterday.intake.forms.mapping import AREAS, target
from quarterday.intake.forms.proposal import Asked, Confirmed, Context, Proposal, read_one
from quarterday.intake.vocabulary import normal

NEW = "new-"
NAMED: Mapping[str, type[Contact | Interest]] = {"contacts": Contact, "interests": Interest}


def new_records(context: Context, by_form: Mapping[str, Confirmed]) -> Iterator[Proposal]:
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
            chosen, language = asked.id_of(text), self.context.stamp.language
            value, seen = read_one(self.record.kind, column, chosen, language)
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
                read = AtHand(self.context, asked, aim, self.who, one)
                ticked = self.context.text(asked.name) == TICKED
                yield from may_decide(read, id, ticked, needs)


def _free_id(plain: str, taken: set[str]) -> str:
    stem = plain.replace(" ", "-")[:70] or "new"
    tries: Iterable[str] = (stem, *(f"{stem}-{n}" for n in range(2, len(taken) + 3)))
    return next(id for id in tries if id not in taken)
