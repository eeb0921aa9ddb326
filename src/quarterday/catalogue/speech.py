"""Speak what the core says, in the reader's language."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from functools import cached_property
from itertools import accumulate
from pathlib import Path
from typing import Protocol

from fluent.runtime.resolver import MAX_PART_LENGTH

from quarterday.catalogue import formats
from quarterday.catalogue.text import set_french
from quarterday.catalogue.wordings import MissingWording, bundle
from quarterday.core.figure import Fact, Figure, Node, Parameter, Source, Unit, Value
from quarterday.core.file.entry import Origin, Place
from quarterday.core.money import Money
from quarterday.core.reference import Both, Reference
from quarterday.core.words import Arg, Rate, Term, Words, words

__all__ = ["MissingWording", "Parts", "Speech", "Spoken"]

Spoken = Arg | Words | bool | Iterable["Spoken"]
_NAMED = {
    "coverage": "coverages",
    "cause": "causes",
    "province": "provinces",
    "loss": "losses",
    "plan": "plans",
    "short-rate": "short_rates",
}
LONGEST_LIST = 1000  # characters
_MOST_PLACES = 4  # of a rate in per cent
_COUNTED: tuple[Unit, ...] = ("days", "months", "years", "m2")
_DECIMALS: dict[Unit, int] = {"index": 2, "ratio": 4}


class _HasName(Protocol):
    @property
    def name(self) -> Both: ...


@dataclass(frozen=True, slots=True)
class Parts:
    """A figure in words: what it is, its value, how it came about, and what to beware of."""

    label: str
    value: str
    how: str
    caution: str = ""


def wording_id(catalogue: str, id: str) -> str:
    """Return the id of the wording that names a catalogue's entry: ``role-treasurer``."""
    text = f"{catalogue}-{id}".lower()
    return "".join(c if c.isascii() and c.isalnum() else "-" for c in text)


def _runs(places: Iterable[Place]) -> list[tuple[Place, Place]]:
    """Return places as first and last of each run of rows that follow each other on a sheet."""
    runs: list[tuple[Place, Place]] = []
    for place in places:
        first, last = runs[-1] if runs else (place, place)
        follows = runs and place.sheet == last.sheet and last.row is not None
        if follows and place.row is not None and place.row == (last.row or 0) + 1:
            runs[-1] = (first, place)
        else:
            runs.append((place, place))
    return runs


class Speech:
    """Speaks in one language; a brokerage's folder may hold wordings of its own.

    That is the folder the reference was read with, or ``overrides``.

    ``language`` is ``en`` or ``fr`` (LookupError otherwise). What cannot be said whole is not said:
    MissingWording names the wording, the name or the variable that is not there.
    """

    def __init__(self, reference: Reference, language: str, overrides: Path | None = None) -> None:
        self.reference = reference
        self.language = language
        self.locale = formats.locale(language)
        own = Path(reference.own_wordings) if reference.own_wordings else None
        self._bundle = bundle(reference.place, language, overrides or own)

    def say(self, what: Spoken) -> str:
        """Return ``what`` in words; several things become a list ("a, b and c")."""
        if isinstance(what, str):
            return what
        if isinstance(what, Words):
            return self._sentence(what)
        if isinstance(what, Term):
            return self._name(what)
        if isinstance(what, bool):
            return self._sentence(words("yes" if what else "no"))
        return self._plain(what)

    def _plain(self, what: Money | Rate | Decimal | int | date | Iterable[Spoken]) -> str:
        match what:
            case Money():
                return self.money(what)
            case Rate():
                return self.rate(what)
            case Decimal() | int():
                return self.number(what)
            case date():
                return self.day(what)
            case _:
                return self.listing(what)

    def named(self, label: str, value: str) -> str:
        """Return a label and its value as the language joins them."""
        return self.say(words("named-value", label=label, value=value))

    def money(self, amount: Money, *, cents: bool | None = None) -> str:
        """Return an amount with its sign: cents when there are any, always, or never."""
        return formats.money(amount, self.language, cents=cents)

    def rate(self, ratio: Rate) -> str:
        """Return a ratio as a percentage with up to its decimals."""
        return formats.rate(ratio, self.language)

    def number(self, value: Decimal | int, decimals: int = 6) -> str:
        """Return a number in groups of three, with up to ``decimals`` decimals."""
        return formats.number(value, self.language, decimals)

    def day(self, when: date) -> str:
        """Return a date in full."""
        return formats.day(when, self.language)

    def listing(self, items: Iterable[Spoken]) -> str:
        """Return several things as a list in a sentence."""
        return formats.listing(self._shortened([self.say(item) for item in items]), self.language)

    def _shortened(self, said: Sequence[str]) -> Sequence[str]:
        """Return a list that a wording can hold: its first items, and how many more there are.

        Fluent refuses a variable of more than 2,500 characters (fluent.runtime, MAX_PART_LENGTH).
        """
        ends = list(accumulate(len(item) + 2 for item in said))
        if not ends or ends[-1] <= LONGEST_LIST:
            return said
        kept = max(sum(end <= LONGEST_LIST for end in ends), 1)
        return [*said[:kept], self._sentence(words("listing-more", n=len(said) - kept))]

    def can_say(self, id: str) -> bool:
        """Tell whether a wording with this id exists."""
        return id in self._labels or self._bundle.has_message(id)

    def parts(self, node: Node) -> Parts:
        """Return a figure, a fact or a parameter in words."""
        match node:
            case Figure():
                caution = self.say(node.caution) if node.caution else ""
                how = self.say(node.how)
                return Parts(self.say(node.label), self.value(node.value, node.unit), how, caution)
            case Fact():
                how = self.origin(node.origin, node.recorded_on)
                return Parts(self.say(node.label), self.value(node.value, node.unit), how)
            case Parameter():
                return self._parameter(node)

    def value(self, value: Value, unit: Unit) -> str:
        """Return a figure's value with its unit."""
        if unit == "money" and isinstance(value, Decimal | int):
            return self.money(Money(Decimal(value)))
        if unit == "rate" and isinstance(value, Decimal):
            return self.rate(Rate(value))
        if not isinstance(value, Decimal | int) or isinstance(value, bool):
            return self.say(value)
        if unit in _COUNTED:
            return self._sentence(words(f"unit-{unit}", n=value))
        return self.number(value, _DECIMALS.get(unit, 6))

    def source(self, source: Source) -> str:
        """Return where a published value was read."""
        place = f", {source.place}" if source.place else ""
        said = words("source", title=source.title, publisher=source.publisher, place=place)
        if source.checked_on is None:
            return self.say(said)
        return self.say(words("source-checked", source=said, day=source.checked_on))

    def origin(self, origin: Origin, recorded_on: date) -> str:
        """Return where something on file came from, down to the sheet and row."""
        places = tuple(filter(None, map(self._place, _runs(origin.places))))
        name = f" {origin.name}" if origin.name else ""
        who = f" ({origin.person})" if origin.person else ""
        came = words(f"origin-{origin.way}", name=name, who=who, day=recorded_on)
        return f"{self.say(came)} ({self.listing(places)})" if places else self.say(came)

    def _place(self, run: tuple[Place, Place]) -> str:
        place, last = run
        if place.sheet and place.row is not None:
            rows = {"row": str(place.row), "last": str(last.row)}
            id = "origin-row" if last == place else "origin-rows"
            return self.say(words(id, sheet=place.sheet, **rows))
        return self.say(words("origin-field", field=place.field)) if place.field else ""

    def _parameter(self, node: Parameter) -> Parts:
        value = node.value
        if isinstance(value, Rate):  # as exact as it is kept; a twelfth has no end
            places = -int(value.value.normalize().as_tuple().exponent) - 2
            value = Rate(value.value, min(max(places, 0), _MOST_PLACES))
        said = words("in-force-since", source=self.source(node.source), day=node.since)
        caution = self.say(words("caution-illustrative")) if node.illustrative else ""
        return Parts(self.say(node.label), self.value(value, node.unit), self.say(said), caution)

    @cached_property
    def _labels(self) -> Mapping[str, Both]:
        parameters = self.reference.parameters
        return {f"parameter-{id.replace('.', '-')}": p.what for id, p in parameters.items()}

    def _name(self, term: Term) -> str:
        if term.catalogue not in _NAMED:
            return self._sentence(words(wording_id(term.catalogue, term.id)))
        entries: Mapping[str, _HasName] = getattr(self.reference, _NAMED[term.catalogue])
        if term.id not in entries:
            raise MissingWording(f"There is no {term.catalogue} with the id {term.id!r}.")
        return self._of_both(entries[term.id].name)

    def _of_both(self, text: Both) -> str:
        return set_french(text.fr) if self.language == "fr" else text.en

    def _sentence(self, what: Words) -> str:
        if what.id in self._labels:
            return self._of_both(self._labels[what.id])
        if not self._bundle.has_message(what.id):
            raise MissingWording(f"There is no wording {what.id!r} in {self.language!r}.")
        pattern = self._bundle.get_message(what.id).value
        if pattern is None:
            raise MissingWording(f"The wording {what.id!r} is empty in {self.language!r}.")
        said, errors = self._bundle.format_pattern(pattern, dict(map(self._variable, what.args)))
        if errors:
            why = "; ".join(map(str, errors))
            raise MissingWording(f"The wording {what.id!r} in {self.language!r}: {why}.")
        return str(said)

    def _variable(self, arg: tuple[str, Spoken]) -> tuple[str, str | int]:
        """Return a wording's variable: whole numbers as such, so that plurals work; else words."""
        name, what = arg
        if isinstance(what, Decimal) and what == what.to_integral_value():
            return name, int(what)
        if isinstance(what, int) and not isinstance(what, bool):
            return name, what
        said = self.say(what)
        return name, said if len(said) <= MAX_PART_LENGTH else f"{said[: MAX_PART_LENGTH - 1]}…"
