"""Files and packages for the tests of the papers."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import UTC, date, datetime
from functools import cache, lru_cache

from quarterday.catalogue.load import reference
from quarterday.core.file.chain import Head, append
from quarterday.core.file.entry import Draft, Entry, Origin, Place
from quarterday.core.file.fold import File, fold
from quarterday.core.file.records import Record, ReviewSigned
from quarterday.core.review.case import Case
from quarterday.core.review.review import Review, review_of
from quarterday.core.words import Arg, Term, Words, words
from quarterday.invent.demo.book import demo_book
from quarterday.papers.brokerage import Brokerage, read_brokerage
from quarterday.papers.package import Package, build
from quarterday.papers.press import HERE
from quarterday.papers.setting import Setting

AS_OF = date(2026, 11, 25)
RECORDED = datetime(2026, 11, 20, 9, 30, tzinfo=UTC)
FLAGSHIP = "HW-1001"
RENTER = "HW-1003"  # a food bank that rents, with a lender


def file_of(id: str, records: Iterable[Record]) -> File:
    """Return the file that holds ``records``, as a workbook brought them."""
    entries: list[Entry] = []
    head = Head()
    for row, record in enumerate(records, start=2):
        origin = Origin(
            way="workbook", name="book.xlsx", places=(Place(sheet=record.kind.title(), row=row),)
        )
        draft = Draft("load", record.kind, record.key, record.body(), origin)
        entry = append(head, draft, file=id, by="test", recorded_at=RECORDED, salt="00")
        entries.append(entry)
        head = Head(entry.seq, entry.digest)
    return fold(id, entries)


@lru_cache(maxsize=1)
def book() -> dict[str, File]:
    """Return every file of the demo book."""
    return {account.id: file_of(account.id, account.records) for account in demo_book()}


@lru_cache(maxsize=1)
def brokerage() -> Brokerage:
    """Return the invented example brokerage."""
    return read_brokerage(HERE / "example-brokerage.yaml")


@cache
def case(id: str) -> Case:
    """Return a file of the demo book as its review sees it."""
    return Case(book()[id], reference("canada"), AS_OF)


@cache
def reviewed(id: str) -> Review:
    """Return the review of a file of the demo book."""
    return review_of(case(id))


def signature(of: Review) -> ReviewSigned:
    """Return the signature of the example brokerage's broker under a review."""
    return ReviewSigned(
        renewal=of.renewal, as_of=of.as_of, reviewer="Ruth Abernethy", licence="LIC-000141",
        seq=of.seq, review_digest="0" * 64,
    )  # fmt: skip


@cache
def package(id: str = FLAGSHIP, language: str = "en", *, signed: bool = True) -> Package:
    """Return the package of a file of the demo book."""
    told = reviewed(id)
    return build(
        told, case(id), brokerage(), language, version=1, built_on=AS_OF,
        signed=signature(told) if signed else None,
    )  # fmt: skip


def setting(id: str = FLAGSHIP, language: str = "en", *, signed: bool = True) -> Setting:
    """Return what every paper of a file of the demo book is given."""
    told = reviewed(id)
    signature_or_none = signature(told) if signed else None
    return Setting(told, case(id), brokerage(), language, 1, AS_OF, signature_or_none)


def paper(id: str) -> Term:
    """Return a paper as a wording's argument."""
    return Term("paper", id)


def words_of(id: str, **args: Arg) -> Words:
    """Return a wording with its arguments."""
    return words(id, **args)
