"""The day and the diary: what the lists show, how they are asked, and what a question costs."""

from __future__ import annotations

from datetime import date, timedelta
from typing import Any

import pytest
from django.db import connection
from django.test.utils import CaptureQueriesContext
from icalendar import Calendar
from tests.desk.conftest import DAY, FLAGSHIP, OTHER, As

from quarterday.catalogue.load import reference
from quarterday.catalogue.speech import Speech
from quarterday.core.dates import Period
from quarterday.core.diary.diary import diary
from quarterday.core.file.records import FormReturned, Organisation, Record, RequestSent
from quarterday.core.review.case import Case
from quarterday.core.review.state import came_back, renewal_at_work, state
from quarterday.core.words import words
from quarterday.invent.book import make_book
from quarterday.office import standings
from quarterday.people import limits
from quarterday.people.models import Person, SavedView
from quarterday.store import day_list, ledger
from quarterday.store.day_list import Asked
from quarterday.store.models import Standing, StandingDue

EVERYWHERE = Asked(None)


@pytest.fixture
def invented(db: None) -> list[str]:
    """Thirty invented files, their standings made."""
    from quarterday.core.file.entry import Draft, Origin

    accounts = list(make_book(30, 7, DAY))
    for account in accounts:
        drafts = [Draft("load", r.kind, r.key, r.body(), Origin(way="csv"))
                  for r in account.records]  # fmt: skip
        ledger.append(account.id, drafts, by="load", expected_seq=0)
    standings.refresh(reference(), DAY)
    return [account.id for account in accounts]


def lines(asked: Asked = EVERYWHERE, **changes: Any) -> tuple[day_list.Line, ...]:
    from dataclasses import replace

    return day_list.lines(replace(asked, **changes), 0, 100, DAY)


def test_a_kept_standing_says_what_the_file_itself_says(invented: list[str]) -> None:
    """The list is a projection: each line equals what the rules say of the file on that day."""
    for line in lines():
        case = Case(ledger.load(line.file), reference(), DAY)
        open_steps = [due for due in diary(case) if not due.is_done]
        assert line.renewal == renewal_at_work(case)
        assert line.state == state(case, renewal_at_work(case))
        assert line.late == sum(due.is_late for due in open_steps)
        assert line.impossible == sum(due.is_impossible for due in open_steps)
        assert line.came_back == came_back(case, renewal_at_work(case))
        assert line.next_by == min((due.latest for due in open_steps), default=None)
        assert not line.is_stale


def test_a_newer_entry_or_another_day_makes_a_standing_stale_until_it_is_made_again(
    book: None,
) -> None:
    assert standings.refresh(reference(), DAY) == 2
    assert standings.refresh(reference(), DAY) == 0
    note = {"name": "The Other Name", "province": "QC"}
    from quarterday.core.file.entry import Draft, Origin

    record = Organisation.model_validate(note)
    ledger.append(OTHER, [Draft("edit", record.kind, "", record.body(), Origin(way="person"))],
                  by="x", expected_seq=None)  # fmt: skip
    assert {line.file for line in lines() if line.is_stale} == {OTHER}
    assert standings.refresh(reference(), DAY) == 1
    tomorrow = DAY + timedelta(days=1)
    assert all(line.is_stale for line in day_list.lines(EVERYWHERE, 0, 9, tomorrow))
    assert standings.refresh(reference(), tomorrow, most=1) == 1
    assert standings.refresh(reference(), tomorrow) == 1


def test_a_file_that_says_nothing_yet_is_listed_without_a_date(db: None, signed_in: As) -> None:
    from quarterday.core.file.entry import Draft, Origin
    from quarterday.core.file.records import Note

    record = Note(id="1", text="To come.")
    ledger.append("NEW-1", [Draft("note", record.kind, "1", record.body(), Origin(way="person"))],
                  by="x", expected_seq=0)  # fmt: skip
    browser = signed_in("maria")
    page = browser.get("/?from=&until=").content.decode()
    assert ">NEW-1</a>" in page
    assert '<span class="id">NEW-1</span>' not in page  # said once, where there is no name
    assert "does not say which organisation" in browser.get("/files/NEW-1/").content.decode()


def test_filters_search_and_sorting_agree_with_doing_it_by_hand(invented: list[str]) -> None:
    every = lines()
    assert len(every) == 30
    month = Period(date(2027, 1, 1), date(2027, 2, 1))
    assert {x.file for x in lines(due=month)} == {
        x.file for x in every if x.renewal and x.renewal in month
    }
    for one in {x.state for x in every}:
        assert {x.file for x in lines(state=one)} == {x.file for x in every if x.state == one}
    assert {x.file for x in lines(only="late")} == {x.file for x in every if x.late}
    assert {x.file for x in lines(only="leaders")} == {
        x.file for x in every if x.next_who == "leaders"
    }
    dates = [x.renewal or date.max for x in every]
    assert dates == sorted(dates)
    by_premium = lines(sort="premium", descending=True)
    premiums = [x.premium_offered or x.premium_expiring for x in by_premium]
    known = [p for p in premiums if p is not None]
    assert known == sorted(known, reverse=True)
    assert premiums[len(known):] == [None] * (len(premiums) - len(known))  # fmt: skip
    counts = day_list.counts(EVERYWHERE)
    assert sum(counts.by_state.values()) == 30
    assert counts.by_only["late"] == sum(bool(x.late) for x in every)


def test_what_came_back_from_the_leaders_is_listed_until_it_is_passed_on(
    book: None, signed_in: As
) -> None:
    from quarterday.core.file.entry import Draft, Origin

    def write(record: Record) -> None:
        draft = Draft("x", record.kind, record.key, record.body(), Origin(way="person", person="b"))
        ledger.append(FLAGSHIP, [draft], by="b", expected_seq=None)
        standings.refresh(reference(), DAY)

    browser, renewal = signed_in("ann"), date(2027, 1, 15)
    standings.refresh(reference(), DAY)
    assert day_list.counts(EVERYWHERE).by_only["back"] == 0
    write(FormReturned(renewal=renewal, form="operations-form", document="d", returned_on=DAY))
    assert [line.file for line in lines(only="back")] == [FLAGSHIP]
    page = browser.get("/?only=back&from=&until=").content.decode()
    assert FLAGSHIP in page
    assert "back 11-25" in page
    write(RequestSent(renewal=renewal, number=1, sent_on=DAY, to="The insurer", document="d",
                      seq=1, changes=1))  # fmt: skip
    assert lines(only="back") == ()


def test_a_person_sees_the_counts_of_their_own_files(
    invented: list[str], signed_in: As, people: dict[str, Person]
) -> None:
    own = lines()[0].broker
    mine = [line for line in lines() if line.broker == own]
    counts = day_list.own(None, own)
    assert counts["all"] == len(mine)
    assert counts["late"] == sum(bool(line.late) for line in mine) > 0
    assert counts["insurer"] == sum(line.next_who == "insurer" for line in mine)
    assert day_list.own(frozenset(), own)["all"] == 0
    assert day_list.own(None, "") == {}
    Person.objects.filter(pk=people["maria"].pk).update(name=own)
    page = signed_in("maria").get("/?from=&until=").content.decode()
    assert f"Mine</a> {len(mine)}" in page
    assert f"late</a> {counts['late']}" in page


def test_pages_cut_the_list_without_losing_or_repeating_a_line(invented: list[str]) -> None:
    for sort in day_list.SORTS:
        asked = Asked(None, sort=sort)
        cut = [x.file for n in range(0, 30, 7) for x in day_list.lines(asked, n, 7, DAY)]
        assert cut == [x.file for x in day_list.lines(asked, 0, 30, DAY)]
        assert len(set(cut)) == 30


@pytest.mark.parametrize(
    "query",
    [
        "q=%25", "q=_", "q=%27%3B%20DROP%20TABLE%20x%3B--", "q=%00", "q=" + "x" * 900,
        "q=%E2%80%AEabc", "from=2026-99-99&until=x", "from=2027-01-01&until=2026-01-01", "page=-1",
        "page=999999999999999999999", "page=%D9%A3", "sort=password", "state=none", "only=all",
        "broker=%00", "down=2", "from=0001-01-01&until=9999-12-31",
    ],
)  # fmt: skip
def test_whatever_is_asked_gets_a_page(query: str, book: None, signed_in: As) -> None:
    browser = signed_in("ann")
    assert browser.get(f"/?{query}").status_code == 200
    assert browser.get(f"/diary/?{query}").status_code == 200


def test_a_search_for_a_percent_sign_finds_no_name_without_one(book: None, signed_in: As) -> None:
    assert "Nothing fits" in signed_in("ann").get("/?q=%25&from=&until=").content.decode()


@pytest.mark.parametrize("htmx", [{}, {"HX-Request": "true"}])
def test_a_diary_whose_search_fits_nothing_does_not_say_that_nothing_is_late(
    htmx: dict[str, str], book: None, signed_in: As
) -> None:
    browser = signed_in("ann")
    whole = browser.get("/diary/", headers=htmx).content.decode()
    none = browser.get("/diary/?q=%25", headers=htmx).content.decode()
    assert "late" in whole
    assert "No step fits" in none
    assert "Nothing is late" not in none
    assert 'href="/diary/"' in none.partition('id="say"')[2]


@pytest.mark.parametrize(
    ("late", "week", "en", "fr"),
    [
        (0, 0, "Nothing is late, nothing due within a week",
         "Rien n'est en retard, rien n'est dû d'ici une semaine"),
        (1, 1, "One step is late, 1 due within a week",
         "Une étape est en retard, 1 est due d'ici une semaine"),
        (30, 17, "30 steps are late, 17 due within a week",
         "30 étapes sont en retard, 17 dues d'ici une semaine"),
    ],
)  # fmt: skip
def test_the_diary_says_in_its_heading_how_much_is_due(
    late: int, week: int, en: str, fr: str
) -> None:
    said = words("desk-diary-title", late=late, week=week)
    assert [Speech(reference(), language).say(said) for language in ("en", "fr")] == [en, fr]


def test_the_search_knows_no_accents_and_no_capitals(book: None, signed_in: As) -> None:
    page = signed_in("maria").get("/?q=FABRIQUE+saint-aubry&from=&until=").content.decode()
    assert OTHER in page
    assert FLAGSHIP not in page


def test_no_query_grows_with_the_book(invented: list[str], signed_in: As) -> None:
    browser = signed_in("maria")
    counts = {}
    for address in ("/?from=&until=", "/?from=&until=&q=the&sort=premium", "/diary/"):
        with CaptureQueriesContext(
            connection,
        ) as asked:
            browser.get(address)
        counts[address] = len(asked)
    assert max(counts.values()) <= 12, counts


def test_a_page_makes_few_standings_itself_and_asks_again_until_all_are_fresh(
    invented: list[str], signed_in: As
) -> None:
    StandingDue.objects.all().delete()
    Standing.objects.all().delete()
    browser, looks, is_stale = signed_in("maria"), 0, True
    while is_stale:
        before = Standing.objects.count()
        page = browser.get("/?from=&until=")
        assert Standing.objects.count() - before <= standings.FEW
        is_stale = page.context["stale"]
        assert ('hx-trigger="load delay' in page.content.decode()) == is_stale
        looks += 1
    assert looks >= len(invented) // standings.FEW
    assert Standing.objects.count() == len(ledger.files())


def test_with_htmx_only_the_list_comes_and_without_it_the_page(book: None, signed_in: As) -> None:
    browser = signed_in("ann")
    part = browser.get("/?q=ebba", headers={"HX-Request": "true"})
    assert "<html" not in part.content.decode()
    assert FLAGSHIP in part.content.decode()
    assert "HX-Request" in part["Vary"]
    assert "<html" in browser.get("/?q=ebba").content.decode()


def test_a_view_is_kept_for_the_person_alone(book: None, signed_in: As) -> None:
    ann, maria = signed_in("ann"), signed_in("maria")
    ann.post("/views/", {"name": "My <b>late</b> ones", "query": "only=late&evil=1"})
    view = SavedView.objects.get()
    assert view.query == "only=late"
    assert "My &lt;b&gt;late" in ann.get("/").content.decode()
    assert "My &lt;b&gt;late" not in maria.get("/").content.decode()
    maria.post(f"/views/{view.pk}/forget/")
    assert SavedView.objects.count() == 1
    ann.post(f"/views/{view.pk}/forget/")
    assert SavedView.objects.count() == 0


def new_feed(browser: Any) -> str:
    browser.post("/diary/address/")
    address = str(browser.get("/diary/").context["address"])
    return address.partition("testserver")[2]


def test_the_calendar_is_what_the_diary_says_and_is_read_by_another_library(
    book: None, signed_in: As, people: dict[str, Person]
) -> None:
    """RFC 5545, read back by the icalendar library: whole days, one event a step, lines folded."""
    browser = signed_in("ann")
    browser.get("/")
    answer = browser.__class__().get(new_feed(browser))  # no session: the address is the key
    assert answer["Content-Type"].startswith("text/calendar")
    read: Any = Calendar.from_ical(answer.content)
    events = list(read.walk("VEVENT"))
    assert events
    expected = {(step.file, step.step, step.latest) for step in day_list.steps(
        Asked(frozenset({"port-ellery"})))}  # fmt: skip
    found = {(str(e["uid"]).split("/")[0], str(e["uid"]).split("/")[2].partition("@")[0],
              e["dtstart"].dt) for e in events}  # fmt: skip
    assert found == expected
    assert len({str(event["uid"]) for event in events}) == len(events)
    assert all(len(line) <= 75 for line in answer.content.split(b"\r\n"))  # RFC 5545, section 3.1
    assert OTHER not in answer.content.decode()


def test_an_address_stops_when_a_new_one_is_made_or_the_person_is_out(
    book: None, signed_in: As, people: dict[str, Person]
) -> None:
    browser = signed_in("ann")
    first, second = new_feed(browser), new_feed(browser)
    assert browser.get(first).status_code == 404
    assert browser.get(second).status_code == 200
    Person.objects.filter(pk=people["ann"].pk).update(is_active=False)
    assert browser.get(second).status_code == 404


def test_the_address_is_kept_as_a_digest_and_shown_once(
    book: None, signed_in: As, people: dict[str, Person]
) -> None:
    browser = signed_in("ann")
    token = new_feed(browser).split("/")[3]
    assert len(token) >= 40
    assert token not in Person.objects.get(pk=people["ann"].pk).feed
    assert token not in browser.get("/diary/").content.decode()


def test_addresses_cannot_be_tried_without_end(book: None, signed_in: As) -> None:
    browser = signed_in("ann")
    most = limits.LIMITS["feed-wrong"].most
    answers = [browser.get(f"/diary/feed/guess-{n}/quarterday.ics").status_code
               for n in range(most + 1)]  # fmt: skip
    assert answers == [404] * most + [429]


def test_standings_go_with_a_rebuild_and_come_back(book: None) -> None:
    from quarterday.store.verify import rebuild

    standings.refresh(reference(), DAY)
    before = list(StandingDue.objects.order_by("pk").values_list("file", "step", "latest"))
    rebuild()
    Standing.objects.all().delete()
    standings.refresh(reference(), DAY)
    after = list(StandingDue.objects.order_by("pk").values_list("file", "step", "latest"))
    assert sorted(before) == sorted(after)
