"""What a returned document says beside the picture of its pages."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from quarterday.intake.forms.peek import Looked
from quarterday.intake.forms.picture import Spot, picture, spots_of
from quarterday.intake.forms.proposal import Proposal
from quarterday.intake.refusals import Unreadable
from quarterday.office.returning import Reading

MOST_PAGES = 60  # of a scan that are drawn


@dataclass(frozen=True, slots=True)
class Pictured:
    """One page as PNG, and the proposals whose fields stand on it, by their numbers there.

    ``png`` None: the page could not be drawn; ``page`` counts from 1.
    """

    page: int
    png: bytes | None
    proposals: tuple[tuple[int, Proposal], ...] = ()


@dataclass(frozen=True, slots=True)
class Beside:
    """A reading with its pages, and the proposals that stand on none, by number."""

    pages: tuple[Pictured, ...]
    nowhere: tuple[tuple[int, Proposal], ...]


def beside(reading: Reading) -> Beside:
    """Return the proposals of a returned form beside the pages that they stand on."""
    numbered = list(enumerate(reading.proposals, start=1))
    spots = {n: spots_of(reading.answers, one.name) for n, one in numbered}
    if reading.looked is None or not any(spots.values()):
        return Beside(pages(reading.looked), tuple(numbered))
    on = sorted({page for of in spots.values() for page in of})
    looked = reading.looked
    drawn = (
        (page, {n: of[page] for n, of in spots.items() if page in of}) for page in on
    )  # fmt: skip
    made = tuple(
        Pictured(page, _png(looked, page, of), tuple((n, p) for n, p in numbered if n in of))
        for page, of in drawn
    )
    return Beside(made, tuple((n, p) for n, p in numbered if not spots[n]))


def pages(looked: Looked | None) -> tuple[Pictured, ...]:
    """Return every page of a document that has to be read by eye."""
    return tuple(_pages(looked)) if looked else ()


def _pages(looked: Looked) -> Iterator[Pictured]:
    for page in range(1, min(looked.pages, MOST_PAGES) + 1):
        yield Pictured(page, _png(looked, page, {}))


def _png(looked: Looked, page: int, spots: dict[int, Spot]) -> bytes | None:
    try:
        return picture(looked, page, spots)
    except Unreadable:
        return None  # one page that cannot be drawn does not keep the others from being read
