"""What was agreed: the offer, with the changes beyond it that the insurer accepted."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from decimal import Decimal
from typing import Literal

from quarterday.core.file.fold import File
from quarterday.core.file.records import Decision, Terms
from quarterday.core.file.records.terms import EVERYWHERE, Coverage, Option, Premium
from quarterday.core.review.rules.terms.offers import option_of
from quarterday.core.terms.option import line_with

OPTION = "option"
REQUESTED = "requested"
TAKEN = "take-it"


@dataclass(frozen=True, slots=True)
class Wish:
    """A change beyond the offer: a line of the terms as it would be, and its price a year.

    ``id`` is ``option/COVERAGE/PLACE`` or ``requested/COVERAGE/PLACE``; ``is_taken`` whether the
    leaders took it or the insurer was asked for it; ``price`` None: the insurer has not said.
    """

    id: str
    of: Literal["option", "requested"]
    line: Coverage
    price: Decimal | None
    is_taken: bool


def wishes(file: File, offered: Terms) -> tuple[Wish, ...]:
    """Return every change beyond the offer that may be agreed: options, then what was asked for."""
    return (*_options(file, offered), *_requests(file, offered))


def _options(file: File, offered: Terms) -> Iterator[Wish]:
    taken = set(_taken(file, offered))
    for option in dict.fromkeys(offered.options):
        line = _widened(offered, option)
        id = option_id(option)
        yield Wish(id, "option", line, option.price, id in taken)


def option_id(option: Option) -> str:
    """Return what an option is called, and what the answer to it is kept under."""
    return f"{OPTION}/{option.coverage}/{option.location}"


def _taken(file: File, offered: Terms) -> Iterator[str]:
    """Yield the options that the leaders took: by name, or as the remedy of a finding."""
    for decision in file.all(Decision):
        if decision.renewal != offered.start or decision.answer != TAKEN:
            continue
        rule, at, subject = decision.question.partition("@")
        if not at:
            yield rule
            continue
        coverage, _, place = subject.partition("/")
        option = option_of(offered, coverage, place or None)
        if option is not None:
            yield option_id(option)


def _widened(offered: Terms, option: Option) -> Coverage:
    """Return the line that an option makes of the offered one."""
    return line_with(offered.find(option.coverage, option.location), option)


def _requests(file: File, offered: Terms) -> Iterator[Wish]:
    asked = file.terms(offered.start, "requested")
    for line in asked.coverages if asked else ():
        standing = offered.find(line.coverage, line.location)
        said = line.model_dump(exclude_unset=True, exclude_none=True)
        wished = standing.model_copy(update=_parsed(line, said)) if standing else line
        if (
            standing is None
            or wished.model_copy(update={"location": standing.location}) != standing
        ):
            id = f"{REQUESTED}/{line.coverage}/{line.location}"
            yield Wish(id, "requested", wished, None, is_taken=False)


def _parsed(line: Coverage, names: Iterable[str]) -> dict[str, object]:
    return {name: getattr(line, name) for name in names}


def agreed(offered: Terms, accepted: Iterable[Wish]) -> Terms:
    """Return the offer with ``accepted`` changes.

    An option's price joins the premium table; what the insurer printed as totals no longer holds,
    and is left out as soon as anything was accepted.
    """
    found, taken = offered, tuple(accepted)
    for wish in taken:
        found = _with(found, wish)
    ids = {wish.id for wish in taken}
    left = tuple(o for o in offered.options if option_id(o) not in ids)
    return found.model_copy(update={"options": left, **({"totals": ()} if taken else {})})


def _with(terms: Terms, wish: Wish) -> Terms:
    line = wish.line
    kept = [one for one in terms.coverages if one.place != line.place]
    others = [one for one in terms.coverages if one.place == line.place][1:]
    premiums = _priced(terms, line, wish.price) if wish.price else terms.premiums
    return terms.model_copy(
        update={"coverages": (*kept, line, *others), "premiums": premiums}
    )  # fmt: skip


def _priced(terms: Terms, line: Coverage, price: Decimal) -> tuple[Premium, ...]:
    """Return the premium table with a price added to its cell."""
    place = (line.coverage, line.location, "premium")
    standing = next((p for p in terms.premiums if p.line == place), None)
    if standing is None:
        new = Premium(coverage=line.coverage, location=line.location or EVERYWHERE, amount=price)
        return (*terms.premiums, new)
    more = standing.model_copy(
        update={"amount": standing.amount + price, "exposure": None, "rate": None}
    )
    return tuple(more if p is standing else p for p in terms.premiums)
