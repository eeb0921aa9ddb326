"""A store with invented files of two offices, their part in the book not yet made."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from datetime import date

import pytest

from quarterday.catalogue.load import reference
from quarterday.catalogue.speech import Speech
from quarterday.core.file.entry import Draft, Origin
from quarterday.core.file.records import Decision, Note, Organisation, Record, Terms
from quarterday.invent.book import make_book
from quarterday.office.book.topics.topic import Teller
from quarterday.store import ledger
from quarterday.store.models import IndexedFile

DAY = date(2026, 11, 25)
OFFICES = ("port-ellery", "val-aubry")
Load = Callable[[int], list[str]]


def append(file: str, record: Record) -> None:
    """Write one more record, as somebody at the desk would."""
    draft = Draft("edit", record.kind, record.key, record.body(), Origin(way="person", person="b"))
    ledger.append(file, [draft], by="b", expected_seq=None)


def _drafts(records: tuple[Record, ...], office: str) -> Iterator[Draft]:
    for record in records:
        told = record
        if isinstance(record, Organisation):
            told = record.model_copy(update={"office": office})
        yield Draft("load", told.kind, told.key, told.body(), Origin(way="csv"))


def load_book(files: int, first: int = 0) -> list[str]:
    """Load an invented book whose files belong to two offices in turn; return their ids.

    ``first`` leaves out the files that were loaded before.
    """
    accounts = list(make_book(files, 7, DAY))[first:]
    ledger.append_many(
        (ledger.Batch(one.id, tuple(_drafts(tuple(one.records), OFFICES[n % 2])), 0)
         for n, one in enumerate(accounts)), by="load",
    )  # fmt: skip
    return [one.id for one in accounts]


@pytest.fixture
def invented(db: None) -> list[str]:
    return load_book(24)


@pytest.fixture(params=["en", "fr"])
def tell(request: pytest.FixtureRequest) -> Teller:
    return Teller(Speech(reference(), request.param), DAY)


def note(file: str) -> None:
    append(file, Note(id="1", text="Something was said."))


def decline_first_option(files: list[str]) -> Terms:
    """Decline the first option that any of these files was offered; return the terms."""
    for id in files:
        file = ledger.load(id)
        for terms in file.all(Terms):
            if terms.stage == "offered" and terms.options:
                option = terms.options[0]
                append(id, Decision.model_validate({
                    "renewal": terms.start, "answer": "leave-it", "decided_on": DAY,
                    "question": f"option/{option.coverage}/{option.location}", "by": "The board",
                }))  # fmt: skip
                return terms
    raise LookupError("The invented book has no option.")


def office_of(file: str) -> str:
    return IndexedFile.objects.get(pk=file).office
