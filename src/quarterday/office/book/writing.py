"""The book's tables as files: a workbook of several, or one as CSV or Parquet."""

from __future__ import annotations

import io
from collections.abc import Iterator, Sequence
from dataclasses import replace

from quarterday.core.book.adds import CURRENCY
from quarterday.core.words import words
from quarterday.intake.tablefiles import columnar, plainfiles
from quarterday.office.book.topics import TOPICS
from quarterday.office.book.topics.topic import Teller, Topic
from quarterday.office.trouble import Trouble
from quarterday.store.book import Asked

KINDS = {
    "xlsx": "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
    "csv": "text/csv; charset=utf-8",
    "parquet": "application/vnd.apache.parquet",
}


def about(tell: Teller, asked: Asked) -> Iterator[tuple[str, str]]:
    """Yield what a table says of itself: the day, the currency, and what was asked for."""
    yield tell.say("book-about-as-of"), tell.as_of.isoformat()
    yield tell.say("book-about-currency"), CURRENCY
    if asked.offices is not None:
        yield tell.say("book-office"), ", ".join(sorted(asked.offices))
    if asked.broker:
        yield tell.say("book-broker"), asked.broker
    if asked.province:
        yield tell.say("book-province"), tell.name("province", asked.province)
    for name in ("first", "last"):
        if month := getattr(asked, name):
            yield tell.say(f"book-{name}"), month


def written(topics: Sequence[Topic], kind: str, tell: Teller, asked: Asked) -> bytes:
    """Return topics' tables as a file of a kind; Trouble for several where it holds only one."""
    told = tuple(about(tell, asked))
    tables = [replace(topic.table, about=told) for topic in topics]
    out, language = io.BytesIO(), tell.speech.language
    if kind == "xlsx":
        plainfiles.write_workbook(tables, out, language)
        return out.getvalue()
    if len(tables) != 1:
        raise Trouble(words("book-one-table", topics=tuple(TOPICS)))
    if kind == "csv":
        plainfiles.write_csv(tables[0], out, language)
    else:
        columnar.write(tables[0], out)
    return out.getvalue()
