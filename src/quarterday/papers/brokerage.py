"""The brokerage that answers for the papers: its names, address, offices and licensed people."""

from __future__ import annotations

from collections.abc import Mapping
from pathlib import Path

from pydantic import BaseModel, ConfigDict, Field, ValidationError

from quarterday.catalogue.problems import BadReference, sentences
from quarterday.catalogue.strict import read_yaml
from quarterday.catalogue.text import read_text, short_name
from quarterday.core.file.records.base import Line


class _Told(BaseModel):
    model_config = ConfigDict(frozen=True, extra="forbid")


class Person(_Told):
    """Somebody of the brokerage; ``licence`` None when they may not advise."""

    name: Line = Field(min_length=1)
    licence: Line | None = None
    office: Line = ""
    work: Line = ""
    email: Line = ""
    phone: Line = ""


class Brokerage(_Told):
    """A brokerage as its papers name it; ``licence`` is the line the regulator asks for."""

    name: Line = Field(min_length=1)
    name_fr: Line = ""
    address: Line
    town: Line
    province: Line
    postal_code: Line
    phone: Line
    email: Line
    licence: Line = ""
    licence_fr: Line = ""
    offices: Mapping[str, Line] = {}
    people: tuple[Person, ...] = ()

    def named(self, language: str) -> str:
        """Return the brokerage's name in a language."""
        return self.name_fr if language == "fr" and self.name_fr else self.name

    def licence_line(self, language: str) -> str:
        """Return the line about its licence in a language; empty when there is none."""
        return self.licence_fr if language == "fr" and self.licence_fr else self.licence

    def person(self, name: str) -> Person | None:
        """Return the person of this name, or None."""
        return next((person for person in self.people if person.name == name), None)


def read_brokerage(file: Path) -> Brokerage:
    """Read a brokerage from a YAML file; BadReference says in sentences what is wrong with it."""
    told = read_yaml(read_text(file), short_name(file))
    try:
        return Brokerage.model_validate(told)
    except ValidationError as error:
        raise BadReference(sentences(short_name(file), "brokerage", error)) from error
