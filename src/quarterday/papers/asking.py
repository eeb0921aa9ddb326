"""How every form asks: labelled fields, filled in as the file has it, that store the same ids."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from decimal import Decimal
from typing import Any

from quarterday.core.file.layout import SHEETS, CellKind, Column
from quarterday.core.file.records import Building, Record
from quarterday.core.words import Term
from quarterday.papers.fields import Field, Kind, field_name
from quarterday.papers.setting import Data, Setting

Options = tuple[tuple[str, str], ...]
EMPTY: Options = (("", "–"),)  # what a choice shows while nothing is chosen
YES_NO = ("yes", "no")
YES_NO_UNKNOWN = ("yes", "no", "unknown")
SIGNED_BY = ("by", "role", "on")


@dataclass(frozen=True, slots=True)
class Questions:
    """Asks about one record: ``key`` begins its fields' names, ``subject`` ends what is read out.

    A name is made of what the file calls things, so that next year's form has the same ones.
    """

    setting: Setting
    key: tuple[str, ...]
    subject: str

    def ask(
        self,
        name: str,
        label: str,
        kind: Kind = "line",
        value: str = "",
        options: Options = (),
        **drawn: object,
    ) -> Data:
        """Return a field as the template draws it; ``drawn`` adds its span, note or height."""
        tip = self.setting.say("form-tip", field=label, subject=self.subject)
        described = Field(field_name(*self.key, name), kind, tip, value, options)
        return self.setting.fields.add(described, label, **drawn)

    def answers(
        self, name: str, label: str, value: str, answers: Sequence[str], **drawn: object
    ) -> Data:
        """Return a question with one answer out of several, whose wordings are their ids."""
        options = tuple((id, self.setting.say(id)) for id in answers)
        return self.ask(name, label, "one of", value, options, **drawn)

    def of_record(
        self,
        record: Record,
        name: str,
        *,
        answers: Sequence[str] = YES_NO,
        kind: Kind = "line",
        catalogue: str = "",
        **drawn: object,
    ) -> Data:
        """Return the question about a field of ``record``, filled in as the file has it.

        ``catalogue`` names the choices where that is not the field itself.
        """
        label = self.setting.say(f"field-{name.replace('_', '-')}")
        column = columns(type(record))[name]
        value = written(getattr(record, name), self.setting.language, column.kind)
        if column.kind == "yes-no":
            return self.answers(name, label, value, answers, **drawn)
        if column.choices:
            options = named(self.setting, catalogue or name, column.choices)
            return self.ask(name, label, "choice", value, options, **drawn)
        return self.ask(name, label, kind, value, (), **drawn)


def of_building(setting: Setting, building: Building) -> Questions:
    """Return who asks about a building."""
    return Questions(setting, ("buildings", building.id), building.name)


def columns(record: type[Record]) -> Mapping[str, Column]:
    """Return the workbook's column of each field of a record, which says what it holds."""
    sheet = next(s for s in SHEETS if s.record is record and s.part is None)
    return {column.field: column for column in sheet.columns}


def written(value: Any, language: str, kind: CellKind = "text") -> str:  # noqa: ANN401 - any cell
    """Return a fact as a form shows it and as the file's readers read it back."""
    match value:
        case None:
            return ""
        case bool():
            return "yes" if value else "no"
        case tuple():
            return "; ".join(value)
        case Decimal() if kind == "ratio":
            return f"{_number(value * 100, language)}%"
        case Decimal():
            return _number(value, language)
        case _:
            return str(value)


def _number(value: Decimal, language: str) -> str:
    text = f"{value.normalize():f}"
    return text.replace(".", ",") if language == "fr" else text


def named(setting: Setting, catalogue: str, ids: Iterable[str]) -> Options:
    """Return the choices of a catalogue by their names, nothing chosen first."""
    return (*EMPTY, *((id, setting.spoken(Term(catalogue, id))) for id in ids))


def confirmation(
    setting: Setting, form: str, *, heading: str = "form-confirm", lead: str | None = None
) -> Data:
    """Return who filled a form in, and when; a wording may say more of what that means."""
    fields = []
    for name in SIGNED_BY:
        label = setting.say(f"form-confirmed-{name}")
        tip = setting.say("form-tip-confirm", field=label)
        fields.append(setting.fields.add(Field(f"{form}.confirmed.{name}", "line", tip), label))
    sending = setting.say("form-confirm-lead", email=setting.brokerage.email)
    return {
        "heading": setting.say(heading),
        "lead": f"{setting.say(lead)} {sending}" if lead else sending,
        "fields": fields,
    }
