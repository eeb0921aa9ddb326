"""What one file shows: the file, its review, what is due, and who signed; one call a page."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import date
from functools import cached_property, lru_cache

from quarterday.core.diary.diary import Due, diary
from quarterday.core.file.fold import File
from quarterday.core.file.records import Organisation, PackageBuilt, ReviewSigned
from quarterday.core.premium.explain import PremiumChange, premium_change
from quarterday.core.premium.table import PremiumTable, table
from quarterday.core.reference import Reference
from quarterday.core.review.case import Case
from quarterday.core.review.review import Review, review_of
from quarterday.core.review.state import State, renewal_at_work, state
from quarterday.office.brand import brokerage
from quarterday.office.reviewing import signature
from quarterday.office.trouble import Trouble
from quarterday.papers.brokerage import Brokerage
from quarterday.papers.setting import Setting

_NAMELESS = Brokerage(
    name="–", address="–", town="–", province="–", postal_code="–", phone="–", email="–"
)


def house() -> Brokerage:
    """Return the brokerage, or one without a name where nobody has described it yet."""
    try:
        return brokerage()
    except Trouble:
        return _NAMELESS


@dataclass(frozen=True)
class Shown:
    """A file as on a day, in one language."""

    file: File
    reference: Reference
    as_of: date
    language: str

    @property
    def is_reviewable(self) -> bool:
        """Whether the file says who it is about and when it renews."""
        return self.file.get(Organisation) is not None and self.file.renewal is not None

    @cached_property
    def case(self) -> Case:
        """The file as the review's rules see it."""
        return Case(self.file, self.reference, self.as_of)

    @cached_property
    def review(self) -> Review:
        """The review of the day."""
        return review_of(self.case)

    @cached_property
    def at_work(self) -> date:
        """The renewal that is being worked on."""
        return renewal_at_work(self.case)

    @cached_property
    def state(self) -> State:
        """Where that renewal stands."""
        return state(self.case, self.at_work)

    @cached_property
    def diary(self) -> tuple[Due, ...]:
        """What is due, done steps included."""
        return diary(self.case)

    @cached_property
    def signed(self) -> ReviewSigned | None:
        """The signature that covers the file as it stands."""
        return signature(self.file, self.reference, self.review)

    @cached_property
    def setting(self) -> Setting:
        """What the leaders' papers are made from, of which the desk shows the same pictures."""
        return Setting(
            self.review, self.case, house(), self.language, 1, self.as_of, self.signed
        )  # fmt: skip

    @cached_property
    def premium_change(self) -> PremiumChange | None:
        """Why the premium moves; None without two tables to compare."""
        return premium_change(self.case)

    @cached_property
    def premium_table(self) -> PremiumTable | None:
        """The newest premium table added up."""
        terms = self.case.terms
        if terms is None or not terms.premiums:
            return None
        return table(terms, self.file.organisation.province, self.reference)

    def packages(self) -> tuple[PackageBuilt, ...]:
        """Return the packages that were built, the newest first."""
        built = self.file.all(PackageBuilt)
        return tuple(sorted(built, key=lambda p: (p.renewal, p.version, p.language), reverse=True))


KEPT = 16  # files a process keeps made up: who opens one asks for its figures next


@dataclass(frozen=True)
class _Asked:
    """A file by its newest entries, a day and a language; what it is made from is not compared."""

    id: str
    seq: int
    digests: frozenset[str]
    reference_id: int
    as_of: date
    language: str
    file: File = field(compare=False)
    reference: Reference = field(compare=False)


@lru_cache(maxsize=KEPT)
def _made(asked: _Asked) -> Shown:
    return Shown(asked.file, asked.reference, asked.as_of, asked.language)


def shown_on(file: File, reference: Reference, as_of: date, language: str) -> Shown:
    """Return a file as on a day, in one language; the same object while nothing was added to it."""
    digests = frozenset(held.entry.digest for held in file.held.values())
    return _made(
        _Asked(file.id, file.seq, digests, id(reference), as_of, language, file, reference)
    )
