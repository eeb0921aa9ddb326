"""What the change request says: what stands today, what is asked instead, and since when."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date
from pathlib import Path

from quarterday.catalogue.speech import Speech, Spoken
from quarterday.core.dates import Period
from quarterday.core.file.records import Organisation, Terms
from quarterday.core.words import Said, Term, words
from quarterday.papers import alone
from quarterday.papers.brokerage import Brokerage
from quarterday.papers.dress import dress
from quarterday.papers.setting import Data

TEMPLATE = Path(__file__).parent / "template.typ"
HEADER = ("request-what", "request-was", "request-now", "request-since")
GONE = ("request-what", "request-earlier", "request-earlier-in", "request-since")


@dataclass(frozen=True, slots=True)
class Earlier:
    """What an earlier request of the renewal asked for: its number, its day, and the value."""

    number: int
    day: date
    value: Said


@dataclass(frozen=True, slots=True)
class Asked:
    """One change: the kind of record and its name, what of it, both values, and since when.

    ``earlier`` is what was asked in its place before; where it ``is_gone``, nothing is asked in its
    place.
    """

    kind: str
    subject: Spoken
    what: Spoken
    was: Spoken
    now: Said
    since: date
    earlier: Earlier | None = None
    is_gone: bool = False

    @property
    def asks(self) -> Said:
        """What is asked, and in place of what an earlier request asked."""
        if self.earlier is None:
            return self.now
        told: dict[str, Said] = {"earlier": self.earlier.value, "number": self.earlier.number,
                                 "day": self.earlier.day}  # fmt: skip
        if self.is_gone:
            return words("request-gone", **told)
        return words("request-instead", now=self.now, **told)


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

    @property
    def gone(self) -> int:
        """How many things that were asked are asked no more."""
        return sum(one.is_gone for one in self.asked)

    @property
    def changes(self) -> int:
        """How many changes are asked for."""
        return len(self.asked) - self.gone


def letter(request: Request, brokerage: Brokerage, speech: Speech) -> bytes:
    """Return the letter as PDF; the same request makes the same bytes."""
    told, brand = data(request, brokerage, speech), dress(brokerage, speech)
    return alone.printed(TEMPLATE, told, request.day, brand)


def data(request: Request, brokerage: Brokerage, speech: Speech) -> Data:
    """Return what the letter says, part by part."""
    say, organisation = speech.say, request.organisation
    name = organisation.known_as or organisation.name
    title = say(words(f"request-title{_tail(request)}", organisation=name, n=request.changes,
                      gone=request.gone))  # fmt: skip
    of = alone.Alone(request.file, organisation, request.term, request.day, request.number)
    return {
        "house": alone.house(of, title, brokerage, speech),
        "title": title,
        "lead": say(words(_lead(request), start=request.term.start)),
        "sender": list(alone.sender(brokerage, speech.language)),
        "to": [speech.day(request.day), request.terms.insurer or say(words("request-insurer"))],
        "facts": [[say(words(f"request-{id}")), text] for id, text in _facts(request, speech)],
        "parts": [*_gone(request.asked, speech), *_parts(request.asked, speech)],
        "notes": [say(words("request-not-bound"))],
        "closing": alone.closing(brokerage, speech.language),
    }


def _tail(request: Request) -> str:
    """Return which title and lead: for changes, for what is asked no more, or for both."""
    if not request.gone:
        return ""
    return "-both" if request.changes else "-gone"


def _lead(request: Request) -> str:
    return "request-lead" if request.changes else "request-lead-gone"


def _facts(request: Request, speech: Speech) -> Iterator[tuple[str, str]]:
    organisation = request.organisation
    yield "insured", organisation.named_insured or organisation.name
    if request.terms.policy_number:
        yield "policy", request.terms.policy_number
    term = words("copies-from-to", start=request.term.start, end=request.term.end)
    yield "term", speech.say(term)
    yield "number", str(request.number)


def _gone(asked: Sequence[Asked], speech: Speech) -> Iterator[Data]:
    """Yield the part that asks to disregard what was asked before, if any."""
    rows = [_gone_row(one, one.earlier, speech) for one in asked if one.is_gone and one.earlier]
    if rows:
        say = speech.say
        yield {"heading": say(words("request-disregard")), "header": [say(words(h)) for h in GONE],
               "about": say(words("request-disregard-about")), "rows": rows}  # fmt: skip


def _gone_row(one: Asked, earlier: Earlier, speech: Speech) -> list[str]:
    request = words("request-number-of", number=earlier.number, day=earlier.day)
    value = speech.say(earlier.value) or "–"
    return [_of(one, speech), value, speech.say(request), speech.day(one.since)]


def _parts(asked: Sequence[Asked], speech: Speech) -> Iterator[Data]:
    changes = [one for one in asked if not one.is_gone]
    for kind in dict.fromkeys(one.kind for one in changes):
        rows = [_row(one, speech) for one in changes if one.kind == kind]
        heading = speech.say(words("paper-name", paper=Term("record", kind)))
        header = [speech.say(words(id)) for id in HEADER]
        yield {"heading": heading, "header": header, "rows": rows}


def _row(one: Asked, speech: Speech) -> list[str]:
    values = [speech.say(value) or "–" for value in (one.was, one.asks)]
    return [_of(one, speech), *values, speech.day(one.since)]


def _of(one: Asked, speech: Speech) -> str:
    told = words("request-of", subject=speech.say(one.subject), what=speech.say(one.what))
    return speech.say(told)
