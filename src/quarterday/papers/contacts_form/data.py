"""What the contacts form asks, filled in as the file has it."""

from __future__ import annotations

from collections.abc import Sequence
from typing import get_args

from quarterday.core.file.records import Authority, Contact
from quarterday.core.file.records.people import Area, Language, Role
from quarterday.core.words import Term, Words
from quarterday.papers.asking import confirmation
from quarterday.papers.fields import Field, Kind, field_name
from quarterday.papers.setting import Data, Setting

ID = "contacts-form"
BLANKS = 2  # empty places for new people
SPANS = {"name": 2, "role": 3, "language": 1, "phone": 2, "email": 4}
LABELS = {"name": "contacts-form-who"}
STAYS = ("stays", "left")


def reason(setting: Setting) -> Words | None:
    """Return why it goes in: a finding brings it."""
    return setting.brought(ID)


def data(setting: Setting) -> Data:
    """Return the form with everyone on file who has not left, and room for new people."""
    title, lead = setting.say("contacts-form-title"), setting.say("contacts-form-lead")
    people = [_known(setting, contact) for contact in setting.contacts()]
    blanks = [_new(setting, number) for number in range(1, BLANKS + 1)]
    return {
        "opening": setting.opening(ID, title, lead),
        "people": people + blanks,
        "confirm": confirmation(setting, ID),
    }


def _known(setting: Setting, contact: Contact) -> Data:
    values = {name: getattr(contact, name) or "" for name in SPANS}
    role = setting.spoken(Term("role", contact.role))
    fields = _asked(setting, contact.id, contact.name, values)
    fields.append(_stays(setting, contact))
    return {
        "heading": setting.say("contacts-form-person", name=contact.name, role=role),
        "fields": fields,
        "may": _may(setting, contact.id, contact.name),
    }


def _new(setting: Setting, number: int) -> Data:
    id, heading = f"new-{number}", setting.say("contacts-form-new", n=number)
    return {
        "heading": heading,
        "fields": _asked(setting, id, heading, dict.fromkeys(SPANS, "")),
        "may": _may(setting, id, heading),
    }


def _asked(setting: Setting, id: str, who: str, values: dict[str, str]) -> list[Data]:
    return [_field(setting, id, who, name, values[name]) for name in SPANS]


def _field(setting: Setting, id: str, who: str, name: str, value: str) -> Data:
    label = setting.say(LABELS.get(name, f"field-{name}"))
    options = _options(setting, name)
    kind: Kind = "choice" if options else "line"
    tip = setting.say("form-tip", field=label, subject=who)
    described = Field(field_name("contacts", id, name), kind, tip, value, options)
    return setting.fields.add(described, label, span=SPANS[name])


def _options(setting: Setting, name: str) -> tuple[tuple[str, str], ...]:
    choices: Sequence[str] = {"role": get_args(Role), "language": get_args(Language)}.get(name, ())
    if not choices:
        return ()
    named = ((id, setting.spoken(Term(name, id))) for id in choices)
    return (("", "–"), *named)


def _stays(setting: Setting, contact: Contact) -> Data:
    label = setting.say("contacts-form-stays-label")
    options = tuple((id, setting.say(f"contacts-form-{id}")) for id in STAYS)
    tip = setting.say("form-tip", field=label, subject=contact.name)
    described = Field(field_name("contacts", contact.id, "stays"), "one of", tip, "", options)
    return setting.fields.add(described, label, span=6)


def _may(setting: Setting, id: str, who: str) -> Data:
    held = {a.area for a in setting.file.all(Authority) if a.contact == id and _holds(setting, a)}
    fields = []
    for area in get_args(Area):
        label = setting.spoken(Term("area", area))
        tip = setting.say("contacts-form-may-tip", who=who, area=label)
        value = "Yes" if area in held else ""
        described = Field(field_name("authorities", id, area), "tick", tip, value)
        fields.append(setting.fields.add(described, label))
    return {"label": setting.say("contacts-form-may"), "fields": fields}


def _holds(setting: Setting, authority: Authority) -> bool:
    day = setting.review.as_of
    return (authority.since is None or authority.since <= day) and (
        authority.until is None or day < authority.until
    )
