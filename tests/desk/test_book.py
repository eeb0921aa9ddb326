"""The book's page: whose figures it shows, as of when, how it is asked, and its tables as files."""

from __future__ import annotations

import io
from datetime import timedelta
from itertools import product
from typing import Any

import pyarrow.parquet as pq
import pytest
from django.db import connection
from django.test.utils import CaptureQueriesContext
from tests.desk.conftest import DAY, FLAGSHIP, OTHER, As, make_person

from quarterday.catalogue.load import reference
from quarterday.core.file.entry import Draft, Origin
from quarterday.core.file.records import Note, Organisation
from quarterday.invent.book import make_book
from quarterday.office import access
from quarterday.office.book import keeping
from quarterday.office.book.topics import TOPICS
from quarterday.people.models import Grant, Person
from quarterday.store import ledger
from quarterday.store.models import BookMade, LedgerEntry

KINDS = ("xlsx", "csv", "parquet")


def note(file: str) -> None:
    record = Note(id="9", text="Said on the telephone.")
    draft = Draft("note", record.kind, "9", record.body(), Origin(way="person", person="b"))
    ledger.append(file, [draft], by="b", expected_seq=None)


def files(browser: Any, query: str = "") -> int:
    """Return how many files the page counts."""
    return int(browser.get(f"/book/?{query}").context["files"].files)


def exported(browser: Any, topic: str, query: str = "") -> list[dict[str, Any]]:
    answer = browser.get(f"/book/export/{topic}/parquet/?{query}")
    assert answer.status_code == 200
    return list(pq.read_table(io.BytesIO(answer.content)).to_pylist())


def test_the_manager_sees_every_topic_with_picture_table_and_words(
    figures: None, signed_in: As
) -> None:
    page = signed_in("maria").get("/book/").content.decode()
    for id in TOPICS:
        assert f'id="{id}"' in page
        for kind in KINDS:
            assert f"/book/export/{id}/{kind}/" in page
    assert page.count("<figure") == page.count("The picture in words") > 5
    assert page.count('<table class="data figures cards across"') == len(TOPICS)


def test_each_sees_the_figures_of_their_offices_alone(
    figures: None, signed_in: As, people: dict[str, Person]
) -> None:
    """reed reads one office's book; maria every office's; both files are in different offices."""
    assert files(signed_in("maria")) == 2
    assert files(signed_in("reed")) == 1
    towns = {row["name"] for row in exported(signed_in("reed"), "values") if row["buildings"]}
    assert towns == {"Ontario"}
    page = signed_in("reed").get("/book/").content.decode()
    assert "val-aubry" not in page
    assert "Quebec" not in page


def test_an_office_out_of_reach_answers_as_one_that_does_not_exist(
    figures: None, signed_in: As
) -> None:
    browser = signed_in("reed")
    for address in ("/book/?office={}", "/book/export/work/csv/?office={}"):
        theirs, none = (browser.get(address.format(id)) for id in ("val-aubry", "nowhere"))
        assert theirs.status_code == none.status_code == 404
    assert files(browser, "office=port-ellery") == 1


def test_a_manager_of_one_office_who_reads_in_another_sees_the_book_of_the_one(
    figures: None, signed_in: As, people: dict[str, Person]
) -> None:
    Grant.objects.create(person=people["reed"], office="val-aubry", role="read-only")
    browser = signed_in("reed")
    assert files(browser) == 1
    assert browser.get("/book/?office=val-aubry").status_code == 404
    assert browser.get(f"/files/{OTHER}/").status_code == 200


def test_who_has_no_book_has_no_link_to_it(figures: None, signed_in: As) -> None:
    for who, has in (("maria", True), ("reed", True), ("ann", False), ("rhea", False)):
        assert ('href="/book/"' in signed_in(who).get("/").content.decode()) is has, who


def test_the_look_up_itself_refuses_and_not_the_page(
    figures: None, people: dict[str, Person]
) -> None:
    from quarterday.office.book.asking import look
    from quarterday.store.book import Asked

    with pytest.raises(access.Forbidden):
        look(people["ann"], Asked())
    with pytest.raises(access.UnknownOffice):
        look(people["reed"], Asked(), "val-aubry")
    assert look(people["reed"], Asked(None)).asked.offices == frozenset({"port-ellery"})


def test_filters_narrow_the_figures_to_the_files_that_fit(figures: None, signed_in: As) -> None:
    browser = signed_in("maria")
    broker = ledger.load(FLAGSHIP).organisation.broker
    months = browser.get("/book/").context["months"]
    assert files(browser, f"broker={broker}") >= 1
    assert files(browser, "province=QC") == 1
    assert files(browser, "province=YT") == 0
    assert files(browser, f"first={months[0]}&last={months[-1]}") == 2
    assert files(browser, "first=2030-01") == 0
    assert files(browser, "office=val-aubry&province=ON") == 0
    assert exported(browser, "values", "province=QC")[0]["province"] == "QC"


def test_a_choice_that_no_file_fits_leads_back_to_the_whole_book(
    figures: None, signed_in: As
) -> None:
    browser = signed_in("maria")
    page = browser.get("/book/?first=2030-01").content.decode()
    assert 'No file fits this choice. <a href="/book/">Show the whole book</a>' in page
    assert 'class="topic"' not in page  # nothing is said of files that are not there
    assert "No file fits" not in browser.get("/book/").content.decode()


HOSTILE = (
    "first=2026-13", "last=x", "first=2027-01&last=2026-01", "broker=%00", "province=%27--",
     "broker=" + "x" * 900, "province=%E2%80%AEabc", "office=%00", "first=0000-00",
     "broker=<script>alert(1)</script>",
)  # fmt: skip


def test_whatever_is_asked_gets_a_page(figures: None, signed_in: As) -> None:
    browser = signed_in("maria")
    for query in HOSTILE:
        answer = browser.get(f"/book/?{query}")
        assert answer.status_code == 200, query
        assert "<script>alert" not in answer.content.decode()


NO_TABLES = (
    "nothing/csv",
    "work/pdf",
    "work/exe",
    "all/csvx",
    "..%2Fx/csv",
    "work%00/csv",
)


def test_what_is_no_table_or_no_kind_is_not_found(figures: None, signed_in: As) -> None:
    browser = signed_in("maria")
    for address in NO_TABLES:
        assert browser.get(f"/book/export/{address}/").status_code == 404, address


def test_every_table_goes_out_as_every_kind(figures: None, signed_in: As) -> None:
    browser = signed_in("maria")
    begins = {"xlsx": b"PK\x03\x04", "csv": b"\xef\xbb\xbf", "parquet": b"PAR1"}
    for topic, kind in product(TOPICS, KINDS):
        answer = browser.get(f"/book/export/{topic}/{kind}/")
        assert answer.status_code == 200
        name = f"book-{topic}-2026-11-25.{kind}"
        assert answer["Content-Disposition"] == f'attachment; filename="{name}"'
        assert answer["Cache-Control"] == "private, no-store"
        assert answer.content.startswith(begins[kind])


def test_everything_goes_out_as_one_workbook_alone(figures: None, signed_in: As) -> None:
    browser = signed_in("maria")
    assert browser.get("/book/export/all/xlsx/").content[:2] == b"PK"
    assert browser.get("/book/export/all/csv/").status_code == 422


def test_the_page_says_as_of_when_and_what_changed_since(figures: None, signed_in: As) -> None:
    browser = signed_in("maria")
    assert "No file was changed since" in browser.get("/book/").content.decode()
    before = files(browser)
    note(FLAGSHIP)
    page = browser.get("/book/").content.decode()
    assert "One file was changed since" in page
    assert "November 25, 2026" in page
    assert files(browser) == before


def test_another_day_shows_the_figures_of_the_day_they_were_made_for(
    figures: None, signed_in: As, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("quarterday.desk.guard.today", lambda: DAY + timedelta(days=1))
    page = signed_in("maria").get("/book/").content.decode()
    assert "The book as of November 25, 2026" in page


def test_no_page_makes_figures(book: None, signed_in: As) -> None:
    """Before the server made them there are none, and asking does not make them."""
    browser = signed_in("maria")
    answer = browser.get("/book/")
    assert answer.status_code == 200
    assert "have not been made yet" in answer.content.decode()
    assert browser.get("/book/export/work/csv/").status_code == 404
    assert not BookMade.objects.exists()


def test_with_htmx_only_the_topics_come(figures: None, signed_in: As) -> None:
    part = signed_in("maria").get("/book/", headers={"HX-Request": "true"})
    assert "<html" not in part.content.decode()
    assert 'id="work"' in part.content.decode()
    assert "HX-Request" in part["Vary"]


def test_in_french_it_speaks_french(
    figures: None, signed_in: As, people: dict[str, Person]
) -> None:
    Person.objects.filter(pk=people["maria"].pk).update(language="fr")
    page = signed_in("maria").get("/book/").content.decode()
    assert "Le portefeuille au 25 novembre 2026" in page
    assert "Travail par semaine" in page
    text = signed_in("maria").get("/book/export/states/csv/").content.decode("utf-8-sig")
    assert text.splitlines()[0].startswith("État (code);État;")


def test_a_name_with_markup_is_shown_as_text(db: None, book: None, signed_in: As) -> None:
    who = ledger.load(FLAGSHIP).organisation
    record = Organisation.model_validate({**who.model_dump(), "broker": "<b>Ann</b> =1+1"})
    draft = Draft("edit", record.kind, "", record.body(), Origin(way="person", person="b"))
    ledger.append(FLAGSHIP, [draft], by="b", expected_seq=None)
    keeping.refresh(reference(), DAY)
    page = signed_in("maria").get("/book/").content.decode()
    assert "&lt;b&gt;Ann&lt;/b&gt; =1+1" in page
    assert "<b>Ann" not in page


def load(count: int, first: int) -> None:
    for account in list(make_book(count, 7, DAY))[first:]:
        drafts = [
            Draft("load", r.kind, r.key, r.body(), Origin(way="csv")) for r in account.records
        ]
        ledger.append(account.id, drafts, by="load", expected_seq=0)


def test_no_page_of_the_book_asks_more_of_a_book_ten_times_as_large(
    db: None, signed_in: As
) -> None:
    """The same queries for 40 files as for 400, and the ledger is not read."""
    browser, counts = signed_in("maria"), []
    for count, first in ((40, 0), (400, 40)):
        load(count, first)
        keeping.refresh(reference(), DAY)
        for query in ("", "province=ON&first=2026-12", "office=port-ellery"):
            with CaptureQueriesContext(connection) as asked:
                assert browser.get(f"/book/?{query}").status_code == 200
            counts.append(len(asked))
            assert all(LedgerEntry._meta.db_table not in q["sql"] for q in asked)
    assert files(browser) == 400
    assert counts[:3] == counts[3:]
    assert max(counts) <= 8


def test_a_reading_manager_is_made_like_anybody(signed_in: As, db: None) -> None:
    browser = signed_in("maria")
    form = {"name": "Nell Reading", "email": "nell@holliswren.example.org", "licence": "",
            "language": "en", "role-*": "read-only-manager"}  # fmt: skip
    assert browser.post("/people/", form).status_code == 200
    nell = Person.objects.get(email="nell@holliswren.example.org")
    assert nell.roles == {"*": "read-only-manager"}
    assert access.may(nell, "book", "port-ellery")
    assert not access.may(nell, "edit", "port-ellery")
    assert make_person("lone").roles == {}
