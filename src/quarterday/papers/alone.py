"""A document that goes out alone, not in a package: the brokerage's head, the feet, its bytes."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from datetime import date
from pathlib import Path

from quarterday.catalogue.speech import Speech
from quarterday.core.dates import Period
from quarterday.core.file.records import Organisation, Terms
from quarterday.core.words import Term, words
from quarterday.papers import press
from quarterday.papers.brokerage import Brokerage
from quarterday.papers.setting import Data


@dataclass(frozen=True, slots=True)
class Alone:
    """Whose file it is of, of which term, and the day and number of the document."""

    file: str
    organisation: Organisation
    term: Period
    day: date
    number: int


@dataclass(frozen=True, slots=True)
class InForce:
    """The policy in force: its terms, and the binder's number while it is bound but not issued."""

    terms: Terms
    binder: str | None = None

    def named(self) -> tuple[str, str | None]:
        """Return the wording that labels its number, and the number."""
        if self.binder is not None:
            return "certificate-binder", self.binder
        return "copies-policy", self.terms.policy_number


def printed(template: Path, data: Data, day: date, brand: Mapping[str, str] | None = None) -> bytes:
    """Return a document without fields as PDF; the same data make the same bytes."""
    return press.finished(press.press(template).set(data, day, brand), (), {})


def house(of: Alone, title: str, brokerage: Brokerage, speech: Speech) -> Data:
    """Return what stands on every page of a document that goes out alone."""
    name = of.organisation.known_as or of.organisation.name
    built = words("package-built", language=Term("language", speech.language), built_on=of.day,
                  version=str(of.number))  # fmt: skip
    foot = words("package-foot", organisation=name, file=of.file, start=of.term.start,
                 end=of.term.end)  # fmt: skip
    return {
        "language": speech.language, "title": title, "draft": None,
        "author": brokerage.named(speech.language),
        "footer": [speech.say(foot), speech.say(built)],
        "page_words": [speech.say(words("package-page")), speech.say(words("package-of"))],
    }  # fmt: skip


def sender(brokerage: Brokerage, language: str) -> Iterator[str]:
    """Yield the lines of the brokerage's head: name, address, how to reach it, licence."""
    yield brokerage.named(language)
    yield f"{brokerage.address}, {brokerage.town} ({brokerage.province}) {brokerage.postal_code}"
    yield f"{brokerage.phone} · {brokerage.email}"
    yield from filter(None, [brokerage.licence_line(language)])


def closing(brokerage: Brokerage, language: str) -> list[str]:
    """Return the lines under a letter that nobody signs by name."""
    return [brokerage.named(language), f"{brokerage.phone} · {brokerage.email}"]


def street(organisation: Organisation) -> Iterator[str]:
    """Yield the parts of an organisation's address that are known."""
    town = f"{organisation.town} ({organisation.province})" if organisation.town else None
    last = " ".join(filter(None, (town, organisation.postal_code)))
    yield from filter(None, (organisation.address, last))
