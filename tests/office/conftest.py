"""A store with one organisation of the demo book, loaded as a workbook would load it."""

from __future__ import annotations

from datetime import UTC, date, datetime

import pytest
from tests.office.inbox import inbox  # noqa: F401 - a fixture

from quarterday.core.file.entry import Draft, Origin, Place
from quarterday.core.file.records import Contact
from quarterday.invent.demo.book import demo_book
from quarterday.store import ledger

FLAGSHIP = "HW-1001"
DAY = date(2026, 11, 25)


def load_account(id: str) -> str:
    """Load an organisation of the demo book as a workbook would; return its id."""
    account = next(account for account in demo_book() if account.id == id)
    origin = Origin(way="workbook", name="book.xlsx", places=(Place(sheet="Buildings", row=2),))
    drafts = [Draft("load", r.kind, r.key, r.body(), origin) for r in account.records]
    ledger.append(
        account.id, drafts, by="ann", expected_seq=0, at=datetime(2026, 11, 25, tzinfo=UTC)
    )
    return account.id


@pytest.fixture
def flagship(db: None) -> str:
    """The flagship's id, its records in the store."""
    return load_account(FLAGSHIP)


def edit(file: str, **changes: object) -> None:
    """Change the first contact of a file, as somebody at the desk would."""
    contact = ledger.load(file).contacts[0]
    record = Contact.model_validate({**contact.model_dump(), **changes})
    origin = Origin(way="person", person="ben")
    draft = Draft("edit", record.kind, record.key, record.body(), origin)
    ledger.append(file, [draft], by="ben", expected_seq=None)
