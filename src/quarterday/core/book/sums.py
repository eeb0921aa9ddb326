"""Sums that add up file by file: whole numbers, and amounts in whole cents.

Whole numbers add up to the same in any order and on any machine, so that a figure of the whole
book is the sum of its parts to the cent, however the parts are cut.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, field, fields
from decimal import Decimal
from functools import reduce
from operator import add
from typing import NamedTuple, Self, TypeVar

from quarterday.core.money import round_to

Row = tuple[int, ...]
R = TypeVar("R", bound=Row)
Plain = Mapping[str, Mapping[str, list[int]]]


def cents(amount: Decimal) -> int:
    """Return an amount in whole cents, rounded half-up."""
    return int(round_to(amount) * 100)


def dollars(cents: int) -> Decimal:
    """Return whole cents as an amount with two decimals."""
    return Decimal(cents).scaleb(-2)


class Files(NamedTuple):
    """Files: how many, and of them without a renewal, in another currency, without a premium."""

    files: int = 0
    no_renewal: int = 0
    other_currency: int = 0
    no_premium: int = 0


class Work(NamedTuple):
    """Open steps, by who does them."""

    broker: int = 0
    leaders: int = 0
    insurer: int = 0


class Stood(NamedTuple):
    """Renewals in a state: how many, with a late step, with a step out of time, their premium.

    The premium is that of the newest terms, before tax.
    """

    files: int = 0
    late: int = 0
    impossible: int = 0
    premium: int = 0


class Values(NamedTuple):
    """Insured buildings as ``quarterday.core.values.book.Line`` counts them, in cents.

    ``left_out`` could not be compared.
    """

    buildings: int = 0
    behind: int = 0
    left_out: int = 0
    valued: int = 0
    grown: int = 0
    cost: int = 0
    short: int = 0


class Experience(NamedTuple):
    """A line of ``quarterday.core.claims.book``, in cents: claims beside the premium earned."""

    files: int = 0
    claims: int = 0
    premium: int = 0
    incurred: int = 0
    capped: int = 0


class Offers(NamedTuple):
    """Options of the insurers' offers: how many, what was answered, and their yearly prices."""

    offered: int = 0
    taken: int = 0
    left: int = 0
    later: int = 0
    asked: int = 0
    unanswered: int = 0
    price: int = 0
    price_taken: int = 0
    price_left: int = 0


class Cover(NamedTuple):
    """Files that need a coverage, that hold it, and both; ``unknown`` do not say if they need it.

    ``hurting`` need it, do not hold it, and could really be hurt by a loss, as the library says.
    """

    needed: int = 0
    held: int = 0
    needed_held: int = 0
    unknown: int = 0
    hurting: int = 0


@dataclass(slots=True)
class Sums:
    """What files add up to, topic by topic; a key that adds nothing is not kept."""

    files: dict[str, Files] = field(default_factory=dict)  # under ""
    work: dict[str, Work] = field(default_factory=dict)  # by week, its Monday; late; later
    stood: dict[str, Stood] = field(default_factory=dict)  # by state
    values: dict[str, Values] = field(default_factory=dict)  # by province of the building
    causes: dict[str, Experience] = field(default_factory=dict)  # without a premium of their own
    years: dict[str, Experience] = field(default_factory=dict)  # by year of loss
    classes: dict[str, Experience] = field(default_factory=dict)
    insurers: dict[str, Experience] = field(default_factory=dict)
    provinces: dict[str, Experience] = field(default_factory=dict)
    offers: dict[str, Offers] = field(default_factory=dict)  # by coverage; * for other questions
    cover: dict[str, Cover] = field(default_factory=dict)  # by coverage

    def count(self, topic: str, key: str, row: Row) -> None:
        """Add ``row`` to what stands under a key of a topic."""
        if any(row):
            into: dict[str, Row] = getattr(self, topic)
            into[key] = added(into[key], row) if key in into else row

    def __iadd__(self, other: Sums) -> Self:
        for name in TOPICS:
            for key, row in getattr(other, name).items():
                self.count(name, key, row)
        return self

    def plain(self) -> dict[str, dict[str, list[int]]]:
        """Return the sums as JSON can hold them; topics without any are left out."""
        found = ((name, getattr(self, name)) for name in TOPICS)
        return {name: {k: list(row) for k, row in rows.items()} for name, rows in found if rows}

    @classmethod
    def of(cls, plain: Plain) -> Self:
        """Return the sums that ``plain`` holds."""
        made = cls()
        for name, rows in plain.items():
            getattr(made, name).update({key: TOPICS[name](*row) for key, row in rows.items()})
        return made


TOPICS: Mapping[str, Callable[..., Row]] = {
    "files": Files, "work": Work, "stood": Stood, "values": Values, "causes": Experience,
    "years": Experience, "classes": Experience, "insurers": Experience, "provinces": Experience,
    "offers": Offers, "cover": Cover,
}  # fmt: skip
assert tuple(TOPICS) == tuple(one.name for one in fields(Sums))


def added(one: R, other: R) -> R:
    """Return two rows of a kind added up, column by column."""
    return type(one)(*map(add, one, other))


def total(kind: type[R], rows: Iterable[R]) -> R:
    """Return rows of a kind added up; all zeros when there are none."""
    return reduce(added, rows, kind())
