"""What every paper is given: the file, its review, who speaks, in which language, and when."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import dataclass, field
from datetime import date
from decimal import Decimal
from functools import cached_property
from typing import Any, get_args

from babel.numbers import format_decimal

from quarterday.catalogue import formats
from quarterday.catalogue.speech import Speech, Spoken
from quarterday.core.file.fold import File
from quarterday.core.file.records import Contact, ReviewSigned
from quarterday.core.file.records.terms import EVERYWHERE
from quarterday.core.money import CENT, Money, round_to
from quarterday.core.reference import Family, Reference
from quarterday.core.review.case import Case
from quarterday.core.review.finding import Finding
from quarterday.core.review.need import Need, need
from quarterday.core.review.review import Review
from quarterday.core.terms.settling.outcomes import ReferenceLosses
from quarterday.core.values.building import BuildingPicture
from quarterday.core.words import Arg, Term, Words, words
from quarterday.papers.brokerage import Brokerage
from quarterday.papers.fields import Fields

Data = dict[str, Any]  # JSON: what a template is given
FAMILIES = get_args(Family)
MINUS = "\N{MINUS SIGN}"


@dataclass(frozen=True)
class Setting:
    """All that a package is made from; ``fields`` collects what is to be filled in.

    ``case`` is the one that was reviewed: what its rules worked out is not worked out again.
    """

    review: Review
    case: Case
    brokerage: Brokerage
    language: str
    version: int
    built_on: date
    signed: ReviewSigned | None
    fields: Fields = field(default_factory=Fields)

    @cached_property
    def speech(self) -> Speech:
        """Who speaks."""
        return Speech(self.reference, self.language)

    @property
    def file(self) -> File:
        """The file of the organisation."""
        return self.case.file

    @property
    def reference(self) -> Reference:
        """The reference data that the review rests on."""
        return self.case.reference

    @cached_property
    def told(self) -> tuple[Finding, ...]:
        """The leaders' findings, in order, without those set aside."""
        return tuple(
            f for f in self.review.findings if "leaders" in f.audience and f.set_aside is None
        )

    @cached_property
    def pictures(self) -> tuple[BuildingPicture, ...]:
        """The picture of every building insured for an amount."""
        return tuple(self.case.pictures.values())

    @cached_property
    def needs(self) -> Mapping[str, Need]:
        """Whether each coverage of the library is needed, by its id."""
        known = self.reference.coverages.values()
        return {c.id: need(c.needed_when, self.file) for c in known}

    @cached_property
    def losses(self) -> ReferenceLosses | None:
        """The library's losses under this year's and these terms; None without any terms."""
        case, terms = self.case, self.case.terms
        return ReferenceLosses(case, case.expiring or terms, terms) if terms else None

    @property
    def name(self) -> str:
        """What the organisation is called."""
        organisation = self.file.organisation
        return organisation.known_as or organisation.name

    def say(self, id: str, **args: Arg | Words | tuple[Arg | Words, ...]) -> str:
        """Return the wording ``id`` with ``args`` in the reader's language."""
        return self.speech.say(words(id, **args))

    def spoken(self, what: Spoken) -> str:
        """Return anything in the reader's language."""
        return self.speech.say(what)

    def named(self, label: str, value: str) -> str:
        """Return a label and its value as the language joins them."""
        return self.speech.named(label, value)

    @staticmethod
    def sentence(text: str) -> str:
        """Return ``text`` as a sentence: a capital first, a stop at its end."""
        stop = "" if text.endswith((".", "?", "!")) else "."
        return f"{text[:1].upper()}{text[1:]}{stop}" if text else ""

    def coverage(self, id: str) -> str:
        """Return a coverage's name; its id when the library does not know it."""
        known = id in self.reference.coverages
        return self.spoken(Term("coverage", id)) if known else id

    @cached_property
    def _ranks(self) -> Mapping[str, tuple[int, int]]:
        known = self.reference.coverages.values()
        return {c.id: (FAMILIES.index(c.family), n) for n, c in enumerate(known)}

    def order(self, id: str) -> tuple[int, int]:
        """Return where a coverage stands: by family, then as the library lists it; unknown last."""
        return self._ranks.get(id, (len(FAMILIES), 0))

    def place(self, id: str) -> str:
        """Return a location's name."""
        return self.spoken(self.case.building_name(id))

    def coverage_at(self, coverage: str, location: str) -> str:
        """Return a coverage's name with the building it is for, unless it is for everywhere."""
        name = self.coverage(coverage)
        if location == EVERYWHERE:
            return name
        return self.say("paper-coverage-at", coverage=name, place=self.place(location))

    def amounts(self, values: Iterable[Decimal]) -> Callable[[Decimal], str]:
        """Return how to write a table's amounts: all with cents, or none when none has any."""
        whole = all(value == value.to_integral_value() for value in values)
        pattern, unit = ("#,##0", Decimal(1)) if whole else ("#,##0.00", CENT)

        def say(value: Decimal) -> str:
            shown = format_decimal(round_to(value, unit), pattern, locale=self.speech.locale)
            return shown.replace("-", MINUS)

        return say

    def money(self, value: Money) -> str:
        """Return an amount with its sign, to the dollar unless it has cents."""
        return self.speech.money(value).replace("-", MINUS)

    def dollars(self, value: Money) -> str:
        """Return an amount with its sign, to the dollar."""
        return self.speech.money(value, cents=False).replace("-", MINUS)

    def short_day(self, day: date) -> str:
        """Return a date as short as its language writes it."""
        return formats.short_day(day, self.language)

    def contacts(self) -> tuple[Contact, ...]:
        """Return the people who are still there, the key contacts first."""
        here = [c for c in self.file.contacts if c.left_on is None]
        return tuple(sorted(here, key=lambda c: (not c.is_key, c.id)))

    def bringing(self, paper: str) -> Iterator[Finding]:
        """Yield the findings that bring a paper, in order."""
        return (f for f in self.review.findings if f.set_aside is None and paper in f.encloses)

    def brought(self, paper: str) -> Words | None:
        """Return why a paper is enclosed: the title of the first finding that brings it."""
        return next((f.title for f in self.bringing(paper)), None)

    def opening(
        self, paper: str, title: str, lead: str | None = None, *, first: bool = True
    ) -> Data:
        """Return a paper's opening; only its first page is what the list of enclosures names."""
        kicker = self.say("paper-kicker", paper=Term("paper", paper), organisation=self.name)
        return {"id": paper if first else None, "kicker": kicker, "title": title, "lead": lead}


@dataclass(frozen=True, slots=True)
class Paper:
    """A paper: its id, why it is enclosed (None when it does not apply), and its data."""

    id: str
    reason: Callable[[Setting], Words | None]
    data: Callable[[Setting], Data]
