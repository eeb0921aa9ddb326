"""A case in few words: records in, a file folded from a real chain out."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, date, datetime, time

import pytest

from quarterday.catalogue.load import reference
from quarterday.core.file.chain import Head, append
from quarterday.core.file.entry import Draft, Entry, Origin, Place
from quarterday.core.file.fold import fold
from quarterday.core.file.records import Organisation, Record
from quarterday.core.reference import Reference
from quarterday.core.review.case import Case

AS_OF = date(2026, 11, 25)
RENEWAL = date(2027, 1, 31)
RECORDED = date(2026, 11, 1)
ORIGIN = Origin(way="workbook", name="book.xlsx", places=(Place(sheet="Buildings", row=4),))


@pytest.fixture(scope="session")
def canada() -> Reference:
    """Everything shipped for Canada."""
    return reference("canada")


@pytest.fixture(scope="session")
def case_of(canada: Reference) -> Callable[..., Case]:
    """A maker of cases: an organisation in Ontario that renews on 31 January 2027, and more.

    A record of the same kind and key replaces an earlier one.
    """

    def make(*records: Record, as_of: date = AS_OF, recorded_on: date = RECORDED) -> Case:
        hall = Organisation(name="Elm Grove Hall", province="ON", renewal_date=RENEWAL)
        when = datetime.combine(recorded_on, time(12), UTC)
        head, entries = Head(), list[Entry]()
        for record in (hall, *records):
            draft = Draft("load", record.kind, record.key, record.body(), ORIGIN)
            entry = append(head, draft, file="elm", by="test", recorded_at=when, salt="00")
            entries.append(entry)
            head = Head(entry.seq, entry.digest)
        return Case(fold("elm", entries), canada, as_of)

    return make
