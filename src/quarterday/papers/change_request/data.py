"""What the change request says: what stands today, what is asked instead, and since when."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date
from pathlib import Path

from quarterday.catalogue.speech import Speech, Spoken
from quarterday.core.dates import Period
from quarterday.core.file.records import Organisation, Terms
from quarterday.core.words import Term, words
from quarterday.papers import alone
from quarterday.papers.brokerage import Brokerage
from quarterday.papers.dress import dress
from quarterday.papers.setting import Data

TEMPLATE = Path(__file__).parent / "template.typ"
HEADER = ("request-what", "request-was", "request-now", "request-since")


@dataclass(frozen=True, slots=True)
class Asked:
    """One change: the kind of record and its name, what of it, both values, and since when."""

    kind: str
    subject: Spoken
    what: Spoken
    was: Spoken
    now: Spoken
    since: date


@dataclass(frozen=True, slots=True)
class Request:
    """A request: whose, of which policy, its number within the renewal, and the changes."""

    file: str
    organisation: Organisation
    terms: Terms
    term: Period
    number: int
    day: date
    asked: tuple[Asked, ...]


def letter(request: Request, brokerage: Brokerage, speech: Speech) -> bytes:
    """Return the letter as PDF; the same request makes the same bytes."""
    told, brand = data(request, brokerage, speech), dress(brokerage, speech)
    return alone.printed(TEMPLATE, told, request.day, brand)


def data(request: Request, brokerage: Brokerage, speech: Speech) -> Data:
    """Return what the letter says, part by part."""
    say, organisation = speech.say, request.organisation
    name = organisation.known_as or organisation.name
    title = say(words("request-title", organisation=name, n=len(request.asked)))
    of = alone.Alone(request.file, organisation, request.term, request.day, request.number)
    return {
        "house": alone.house(of, title, brokerage, speech),
        "title": title,
        "lead": say(words("request-lead", start=request.term.start)),
        "sender": list(alone.sender(brokerage, speech.language)),
        "to": [speech.day(request.day), request.terms.insurer or say(words("request-insurer"))],
        "facts": [[say(words(f"request-{id}")), text] for id, text in _facts(request, speech)],
        "parts": list(_parts(request.asked, speech)),
        "notes": [say(words("request-not-bound"))],
        "closing": alone.closing(brokerage, speech.language),
    }


def _facts(request: Request, speech: Speech) -> Iterator[tuple[str, str]]:
    organisation = request.organisation
    yield "insured", organisation.named_insured or organisation.name
    if request.terms.policy_number:
        yield "policy", request.terms.policy_number
    term = words("copies-from-to", start=request.term.start, end=request.term.end)
    yield "term", speech.say(term)
    yield "number", str(request.number)


def _parts(asked: Sequence[Asked], speech: Speech) -> Iterator[Data]:
    kinds = dict.fromkeys(one.kind for one in asked)
    for kind in kinds:
        rows = [_row(one, speech) for one in asked if one.kind == kind]
        heading = speech.say(words("paper-name", paper=Term("record", kind)))
        header = [speech.say(words(id)) for id in HEADER]
        yield {"heading": heading, "header": header, "rows": rows}


def _row(one: Asked, speech: Speech) -> list[str]:
    told = words("request-of", subject=speech.say(one.subject), what=speech.say(one.what))
    values = [speech.say(value) or "–" for value in (one.was, one.now)]
    return [speech.say(told), *values, speech.day(one.since)]
