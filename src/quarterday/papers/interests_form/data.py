"""What the interests form asks of each lender and lessor: confirm, correct, or discharge."""

from __future__ import annotations

from quarterday.core.file.records import Interest
from quarterday.core.words import Term, Words
from quarterday.papers.asking import (
    EMPTY,
    YES_NO,
    Questions,
    columns,
    confirmation,
    named,
    written,
)
from quarterday.papers.fields import Kind
from quarterday.papers.setting import Data, Setting

ID = "interests-form"
SPANS = {
    "name": 4, "role": 2, "address": 6, "location": 4, "reference": 2, "item": 4, "amount": 2,
}  # fmt: skip
LABELS = {"name": "interests-form-name", "location": "interests-form-location"}
STATUSES = ("active", "paid-off", "unknown")
NEW = "new-1"


def reason(setting: Setting) -> Words | None:
    """Return why it goes in: a finding brings it."""
    return setting.brought(ID)


def data(setting: Setting) -> Data:
    """Return a part for each interest on file, and room for a new one."""
    interests = setting.file.interests
    title = setting.say("interests-form-title", count=len(interests))
    return {
        "opening": setting.opening(ID, title, setting.say("interests-form-lead")),
        "items": [*(_known(setting, interest) for interest in interests), _new(setting)],
        "notes": [setting.say("interests-form-caution")],
        "confirm": confirmation(setting, ID),
    }


def _known(setting: Setting, interest: Interest) -> Data:
    asked = Questions(setting, ("interests", interest.id), interest.name)
    role = setting.spoken(Term("interest-role", interest.role))
    return {
        "heading": setting.say("contacts-form-person", name=interest.name, role=role),
        "status": _status(setting, asked, interest),
        "fields": _fields(setting, asked, interest),
        "discharge": setting.say("interests-form-discharge"),
        "discharged": _discharge(setting, asked),
    }


def _new(setting: Setting) -> Data:
    heading = setting.say("interests-form-new")
    fields = _fields(setting, Questions(setting, ("interests", NEW), heading), None)
    empty: Data = {"status": None, "discharge": None, "discharged": []}
    return {"heading": heading, "fields": fields} | empty


def _status(setting: Setting, asked: Questions, interest: Interest) -> Data:
    """Return the question whether it stands; nothing is filled in where nobody knows."""
    options = tuple((id, setting.say(f"interests-form-{id}")) for id in STATUSES)
    value = "" if interest.status == "unknown" else interest.status
    return asked.ask("status", setting.say("interests-form-status"), "one of", value, options)


def _fields(setting: Setting, asked: Questions, interest: Interest | None) -> list[Data]:
    """Return what is on file of an interest; empty fields for a new one."""
    choices = {
        "role": named(setting, "interest-role", columns(Interest)["role"].choices),
        "location": (*EMPTY, *((b.id, b.name) for b in setting.file.buildings)),
    }
    found = []
    for name, span in SPANS.items():
        value = written(getattr(interest, name), setting.language) if interest else ""
        label = setting.say(LABELS.get(name, f"field-{name}"))
        kind: Kind = "choice" if name in choices else "line"
        found.append(asked.ask(name, label, kind, value, choices.get(name, ()), span=span))
    return found


def _discharge(setting: Setting, asked: Questions) -> list[Data]:
    day = asked.ask("paid_off_on", setting.say("interests-form-paid-off-on"), span=2)
    options = tuple((id, setting.say(id)) for id in YES_NO)
    label = setting.say("interests-form-letter")
    return [day, asked.ask("letter", label, "one of", "", options, span=4)]
