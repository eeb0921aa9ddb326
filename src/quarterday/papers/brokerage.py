"""The brokerage that answers for the papers: its names, address, offices and licensed people."""

from __future__ import annotations

import re
from collections.abc import Mapping
from pathlib import Path
from typing import Self

from pydantic import (
    BaseModel,
    ConfigDict,
    Field,
    PrivateAttr,
    ValidationError,
    field_validator,
    model_validator,
)

from quarterday.catalogue.problems import BadReference, sentences
from quarterday.catalogue.strict import read_yaml
from quarterday.catalogue.text import read_text, short_name
from quarterday.core.file.records.base import Line
from quarterday.papers.contrast import GRAPHIC, PAPER, TEXT, WASH, contrast
from quarterday.papers.pictures import BadPicture, read_picture


class _Told(BaseModel):
    model_config = ConfigDict(frozen=True, extra="forbid")


class Colours(_Told):
    """The papers' two colours of the house, like ``#17527a``: for text and lines, and for fills.

    ``accent`` must be readable as text, and ``tint`` must stand apart from it in a chart, in black
    and white too.
    """

    accent: str = "#17527a"
    tint: str = "#bcd3e2"

    @field_validator("accent", "tint", mode="before")
    @classmethod
    def _is_written_out(cls, value: object) -> object:
        if not (isinstance(value, str) and re.fullmatch(r"#[0-9a-fA-F]{6}", value)):
            raise ValueError('write a colour in quotes with six digits, like "#17527a"')
        return value.lower()

    @model_validator(mode="after")
    def _can_be_read(self) -> Self:
        for ground in (PAPER, WASH):
            found = contrast(self.accent, ground)
            if found < TEXT:
                raise ValueError(
                    f"accent {self.accent} is too pale: its contrast with {ground} is {found:.1f}, "
                    f"and text needs {TEXT} (WCAG 2.2, 1.4.3); choose a darker one"
                )
        found = contrast(self.accent, self.tint)
        if found < GRAPHIC:
            raise ValueError(
                f"accent {self.accent} and tint {self.tint} are too alike: their contrast is "
                f"{found:.1f}, and parts of a chart need {GRAPHIC:.0f} (WCAG 2.2, 1.4.11); choose "
                "a paler tint"
            )
        return self


class Person(_Told):
    """Somebody of the brokerage; ``licence`` None when they may not advise.

    ``signature`` is a picture's file beside the brokerage's own.
    """

    name: Line = Field(min_length=1)
    licence: Line | None = None
    office: Line = ""
    work: Line = ""
    email: Line = ""
    phone: Line = ""
    signature: Line | None = None


class Brokerage(_Told):
    """A brokerage as its papers name it; ``licence`` is the line the regulator asks for.

    ``logo`` is a picture's file beside the brokerage's own; ``picture`` gives what was read of it.
    """

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
    logo: Line | None = None
    colours: Colours = Colours()
    _pictures: Mapping[str, str] = PrivateAttr(default_factory=dict)

    def picture(self, name: str | None) -> str | None:
        """Return a picture that was read with the brokerage, as SVG text; None without one."""
        return self._pictures.get(name) if name else None

    def with_pictures(self, pictures: Mapping[str, str]) -> Brokerage:
        """Return the same brokerage with the pictures of its logo and signatures, by file."""
        made = self.model_copy()
        made._pictures = dict(pictures)  # noqa: SLF001 - its own, on a copy that nobody has yet
        return made

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
    """Read a brokerage from a YAML file and its pictures; BadReference says what is wrong."""
    told = read_yaml(read_text(file), short_name(file))
    try:
        found = Brokerage.model_validate(told)
    except ValidationError as error:
        raise BadReference(sentences(short_name(file), "brokerage", error)) from error
    wanted = {"logo": found.logo} | {f"signature of {p.name}": p.signature for p in found.people}
    pictures, problems = _pictures(file, {of: name for of, name in wanted.items() if name})
    if problems:
        raise BadReference(problems)
    return found.with_pictures(pictures)


def _pictures(file: Path, wanted: Mapping[str, str]) -> tuple[dict[str, str], list[str]]:
    """Return the pictures that could be read, by name, and a sentence for each that could not."""
    pictures: dict[str, str] = {}
    problems: list[str] = []
    for of, name in wanted.items():
        try:
            pictures[name] = read_picture(_beside(file, name))
        except BadPicture as fault:
            problems.append(f"{short_name(file)}, {of}: {fault}.")
    return pictures, problems


def _beside(file: Path, name: str) -> Path:
    """Return a picture's path; BadPicture when it lies outside the brokerage's folder."""
    home = file.parent.resolve()
    path = (home / name).resolve()
    if not path.is_relative_to(home):
        raise BadPicture(f"{name} lies outside the folder of {file.name}; put it beside that file")
    return path
