"""The book's figures are kept: made when files or the day change, the same as made from nothing."""

from __future__ import annotations

from collections import Counter
from datetime import timedelta
from itertools import product

import pytest
from django.db import connection
from django.test.utils import CaptureQueriesContext
from tests.office.book.conftest import DAY, OFFICES, load_book, note, office_of

from quarterday.catalogue.load import reference
from quarterday.core.book.sums import Sums
from quarterday.core.review.case import Case
from quarterday.office.book import keeping
from quarterday.store import book, ledger
from quarterday.store.book import Asked
from quarterday.store.models import BookCell, BookLine, BookMade, IndexedFile
from quarterday.store.verify import rebuild

pytestmark = pytest.mark.django_db
EVERYTHING = Asked()


def made() -> book.Made:
    found = book.made_when()
    assert found is not None
    return found


def kept() -> tuple[Counter[object], Counter[object]]:
    lines = BookLine.objects.values_list("file", "seq", "day", "office", "month", "body")
    cells = BookCell.objects.values_list("level", "office", "broker", "province", "month", "body")
    return Counter[object](lines), Counter[object](cells)


def questions() -> list[Asked]:
    """Return questions with each filter that occurs, alone and together."""
    found = book.choices(None)
    offices = [None, frozenset({OFFICES[0]}), frozenset(OFFICES), frozenset({"none"})]
    spans = [("", ""), (found.months[1], found.months[4]), (found.months[3], ""),
             ("", found.months[2])]  # fmt: skip
    brokers, provinces = ["", *found.brokers[:2]], ["", *found.provinces[:2]]
    return [Asked(o, b, p, *s) for o, b, p, s in product(offices, brokers, provinces, spans)]


def test_every_question_is_answered_as_by_reading_every_file(invented: list[str]) -> None:
    """The cells are a projection: no filter shows anything but the sum of the files it keeps."""
    keeping.refresh(reference(), DAY)
    lines = [keeping.line_of(file, reference(), DAY) for file in ledger.many(invented)]
    asked = questions()
    assert len(asked) > 100
    answers = 0
    for one in asked:
        by_hand = Sums()
        for line in lines:
            if one.holds(line.cell):
                by_hand += line.sums
        assert book.answer(one) == by_hand, one
        answers += bool(by_hand.files)
    assert answers > 50, "most questions have an answer"


def test_rebuilt_from_the_entries_it_is_what_was_kept(invented: list[str]) -> None:
    keeping.refresh(reference(), DAY)
    before = kept()
    rebuild()
    for model in (BookLine, BookCell, BookMade):
        model.objects.all().delete()
    keeping.refresh(reference(), DAY)
    assert kept() == before
    assert all(before)


def test_figures_of_any_day_are_counted_without_writing(invented: list[str]) -> None:
    keeping.refresh(reference(), DAY)
    before = kept()
    assert keeping.counted(reference(), DAY, EVERYTHING) == book.answer(EVERYTHING)
    later = keeping.counted(reference(), DAY + timedelta(days=40), EVERYTHING)
    assert later != book.answer(EVERYTHING)
    assert kept() == before


def test_counting_reads_only_the_files_whose_line_is_not_fresh(invented: list[str]) -> None:
    keeping.refresh(reference(), DAY)
    note(invented[0])
    seen = list[str]()

    def watch(files: object, n: int) -> object:
        assert n == 1
        for file in files:  # type: ignore[attr-defined]
            seen.append(file.id)
            yield file

    keeping.counted(reference(), DAY, EVERYTHING, watch)  # type: ignore[arg-type]
    assert seen == [invented[0]]


def test_a_changed_file_is_counted_as_changed_until_its_line_is_made_again(
    invented: list[str],
) -> None:
    assert keeping.refresh(reference(), DAY) == 24
    assert keeping.refresh(reference(), DAY) == 0
    first = made()
    note(invented[3])
    assert book.changed_since(first, None) == 1
    assert book.changed_since(first, frozenset({office_of(invented[3])})) == 1
    assert book.changed_since(first, frozenset({office_of(invented[4])})) == 0
    assert keeping.refresh(reference(), DAY) == 1
    assert book.changed_since(made(), None) == 0
    assert made().seqs == first.seqs + 1


def test_the_cells_wait_for_the_last_line_of_the_day(invented: list[str]) -> None:
    """The figures of one page are all of one day, never of two."""
    keeping.refresh(reference(), DAY)
    tomorrow = DAY + timedelta(days=1)
    assert keeping.refresh(reference(), tomorrow, most=10) == 10
    assert made().day == DAY
    assert keeping.refresh(reference(), tomorrow, most=20) == 14
    assert made().day == tomorrow


def test_cells_that_were_not_made_in_time_are_made_later(
    invented: list[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    """A process that stops between the lines and the cells leaves no old figures for good."""
    keeping.refresh(reference(), DAY)
    note(invented[0])
    with monkeypatch.context() as patched:
        patched.setattr(keeping, "_make_cells", lambda _: None)
        keeping.refresh(reference(), DAY)
    assert book.is_due(DAY)
    keeping.refresh(reference(), DAY)
    assert not book.is_due(DAY)
    assert made().lines == 24


def test_nothing_is_made_anew_when_nothing_changed(invented: list[str]) -> None:
    keeping.refresh(reference(), DAY)
    first = made()
    keeping.refresh(reference(), DAY)
    assert made() == first


def test_a_file_that_is_gone_is_not_counted_any_more(invented: list[str]) -> None:
    keeping.refresh(reference(), DAY)
    IndexedFile.objects.filter(pk=invented[0]).delete()
    keeping.refresh(reference(), DAY)
    assert sum(row.files for row in book.answer(EVERYTHING).files.values()) == 23


def test_a_line_says_where_its_file_belongs(invented: list[str]) -> None:
    for id in invented:
        file = ledger.load(id)
        line = keeping.line_of(file, reference(), DAY)
        who = file.organisation
        assert line.cell[1:4] == (who.office, who.broker, who.province)
        renewal = Case(file, reference(), DAY).renewal
        assert line.cell.month <= f"{renewal:%Y-%m}"
        assert (line.file, line.seq, line.day) == (id, file.seq, DAY)


def test_no_question_costs_more_queries_in_a_book_ten_times_as_large(db: None) -> None:
    counts = []
    for files, first in ((40, 0), (400, 40)):
        load_book(files, first)
        keeping.refresh(reference(), DAY)
        with CaptureQueriesContext(connection) as asked:
            for one in questions()[:20]:
                book.answer(one)
            book.changed_since(made(), None)
        counts.append(len(asked))
    assert sum(row.files for row in book.answer(EVERYTHING).files.values()) == 400
    assert counts[0] == counts[1]
