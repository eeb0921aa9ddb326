"""What every page keeps: headers, sentences, pictures with words, both languages."""

from __future__ import annotations

import re
from pathlib import Path
from typing import Any

import pytest
from django.conf import settings
from django.test import Client
from tests.desk.conftest import DAY, FLAGSHIP, As

import quarterday.desk
from quarterday.catalogue.load import reference
from quarterday.catalogue.speech import Speech
from quarterday.core.review.case import Case
from quarterday.core.review.review import review
from quarterday.desk import charts
from quarterday.desk.log import NoSecretAddress
from quarterday.desk.request import voice
from quarterday.people.models import Person
from quarterday.store import ledger

F = f"/files/{FLAGSHIP}/"
PAGES = ("/", "/diary/", "/load/", "/people/", "/password/", F, f"{F}history/",
         f"{F}edit/?kind=building&key=hall", "/files/none/")  # fmt: skip
TEMPLATES = Path(quarterday.desk.__file__).parent / "templates" / "desk"
MARKS = re.compile(r"{%.*?%}|{{.*?}}|<[^>]*>|&[a-z]+;", re.DOTALL)
SAY = re.compile(r"""{% say ['"]([a-z0-9-]+)['"]((?: [a-z_]+=[^ %]+)*) *%}""")


@pytest.mark.parametrize("address", [*PAGES, "/sign-in/"])
def test_every_page_has_the_headers_that_keep_it_safe(
    address: str, book: None, signed_in: As
) -> None:
    """OWASP Secure Headers Project: policy, sniffing, framing, referrer, caching."""
    answer = signed_in("maria").get(address)
    policy = dict(
        part.strip().split(" ", 1) for part in answer["Content-Security-Policy"].split(";")
    )
    assert policy["default-src"] == "'none'"
    assert policy["script-src"] == policy["style-src"] == "'self'"
    assert policy["frame-ancestors"] == policy["base-uri"] == "'none'"
    assert answer["X-Content-Type-Options"] == "nosniff"
    assert answer["X-Frame-Options"] == "DENY"
    assert answer["Referrer-Policy"] == "same-origin"
    assert answer["Cross-Origin-Opener-Policy"] == "same-origin"
    assert "no-store" in answer["Cache-Control"]


@pytest.mark.parametrize("address", [*PAGES, "/sign-in/"])
@pytest.mark.parametrize("language", ["en", "fr"])
def test_no_page_holds_a_script_a_style_or_a_handler_of_its_own(
    address: str, language: str, book: None, signed_in: As, people: dict[str, Person]
) -> None:
    Person.objects.update(language=language)
    page = signed_in("maria").get(address).content.decode()
    assert f'<html lang="{language}-CA">' in page
    assert not re.search(r"<script(?![^>]* src=)|<style|\sstyle=|\son[a-z]+=|javascript:", page)
    assert not re.search(r'(?:src|href|action)="(?:https?:)?//', page)


def test_cookies_are_out_of_reach_of_scripts_and_other_sites(people: object) -> None:
    browser = Client()
    browser.post("/sign-in/", {"email": "ann@holliswren.example.org",
                               "password": "a long enough password"})  # fmt: skip
    cookie = browser.cookies[settings.SESSION_COOKIE_NAME]
    assert cookie["httponly"]
    assert cookie["samesite"] == "Lax"


def test_the_secret_part_of_an_address_is_not_logged() -> None:
    import logging

    record = logging.LogRecord("x", 30, "", 1, "Not Found: %s", ("/diary/feed/s3cret/x.ics",), None)
    assert NoSecretAddress().filter(record)
    assert record.getMessage() == "Not Found: /diary/feed/…/x.ics"


def uses() -> list[tuple[str, str, frozenset[str]]]:
    """Return each wording that a template says by name: where, its id, the variables given."""
    found = []
    for file in sorted(TEMPLATES.rglob("*.html")):
        for id, args in SAY.findall(file.read_text(encoding="utf-8")):
            given = frozenset(part.partition("=")[0] for part in args.split())
            found.append((file.name, id, given))
    return found


@pytest.mark.parametrize("language", ["en", "fr"])
def test_every_wording_the_templates_say_exists_and_gets_its_variables(language: str) -> None:
    speech = voice(language)
    assert len(uses()) > 200
    bundle: Any = speech._bundle
    lacking = []
    for file, id, given in uses():
        if not speech.can_say(id):
            lacking.append(f"{file}: {id}")
            continue
        _, errors = bundle.format_pattern(bundle.get_message(id).value, dict.fromkeys(given, 1))
        lacking += [f"{file}: {id}: {error}" for error in errors]
    assert lacking == []


def test_no_template_says_a_word_of_its_own() -> None:
    """Every sentence comes from the wordings, so that French is never half English."""
    own = []
    for file in sorted(TEMPLATES.rglob("*.html")):
        text = MARKS.sub(" ", file.read_text("utf-8"))
        own += [(file.name, word) for word in re.findall(r"[^\W\d_]{2,}", text)]
    names = {"Quarterday", "Français", "français", "English", "UTC"}
    allowed = names | {"doctype", "PDF", "CSV", "JSON", "SHA"}
    assert [pair for pair in own if pair[1] not in allowed] == []


def test_the_file_page_says_every_finding_in_order_with_its_evidence(
    book: None, signed_in: As
) -> None:
    page = signed_in("ann").get(F)
    done = review(ledger.load(FLAGSHIP), reference(), DAY)
    shown = [row["finding"].id for row in page.context["findings"]]
    assert shown == [f.id for f in done.findings]
    text, speech = page.content.decode(), Speech(reference(), "en")
    from django.utils.html import escape

    minus = text.replace("-", "−")
    for finding in done.findings:
        assert str(escape(speech.say(finding.title))) in text
        for node in finding.evidence:
            assert str(escape(speech.parts(node).value.replace("-", "−"))) in minus


def test_the_findings_narrow_to_one_kind_and_unfold(book: None, signed_in: As) -> None:
    browser = signed_in("ann")
    rows = browser.get(F).context["findings"]
    fixes = [row["title"] for row in rows if row["finding"].kind == "fix"]
    assert 0 < len(fixes) < len(rows)
    narrowed = browser.get(F, {"only": "fix", "unfold": "1"}).content.decode()
    assert narrowed.count('<details class="finding" open>') == len(fixes)
    whole = browser.get(F, {"only": "<b>"}).content.decode()
    assert whole.count('<details class="finding">') == len(rows)


def test_the_heading_says_what_the_findings_come_to(book: None, signed_in: As) -> None:
    """And the agenda's decisions bear the numbers that the leaders' agenda gives them."""
    page = signed_in("ann").get(F)
    done = review(ledger.load(FLAGSHIP), reference(), DAY)
    decisions = sum(f.kind == "decide" for f in done.findings)
    assert f"{decisions} decisions for the leaders, " in page.content.decode()
    placed = {row["place"]: row["finding"].id for row in page.context["findings"] if row["place"]}
    assert [placed[n] for n in sorted(placed)] == [f.id for f in done.agenda]


def test_a_decision_s_day_at_the_desk_is_the_one_the_letter_gives(
    book: None, signed_in: As
) -> None:
    """Those with no day of their own are to be settled by the renewal."""
    done = review(ledger.load(FLAGSHIP), reference(), DAY)
    page = signed_in("maria").get(F).content.decode()
    place = r'<span class="order">(?:<span class="hidden">[^<]*</span>)?(\d*)</span>'
    rows = re.findall(place + r'.*?<span class="d by">([\d-]*)</span>', page, re.DOTALL)
    shown = {int(place): day for place, day in rows if place}
    assert shown == {n: str(done.deadline(f)) for n, f in enumerate(done.agenda, start=1)}
    assert str(done.renewal) in shown.values()


def test_every_figure_of_the_page_answers_why_down_to_its_sources(
    book: None, signed_in: As
) -> None:
    browser = signed_in("ann")
    done = review(ledger.load(FLAGSHIP), reference(), DAY)
    for id in list(done.figures())[::9]:
        answer = browser.get(f"{F}why/", {"figure": id})
        assert answer.status_code == 200, id


def test_the_page_shows_the_figures_that_the_core_computed(book: None, signed_in: As) -> None:
    """One function computes, every surface shows the same figure."""
    page = signed_in("ann").get(F).content.decode()
    case, speech = Case(ledger.load(FLAGSHIP), reference(), DAY), Speech(reference(), "en")
    for picture in case.pictures.values():
        assert speech.money(picture.sum_insured.money) in page
        if picture.shortfall is not None and picture.shortfall.money:
            assert speech.money(picture.shortfall.money, cents=False) in page


def test_the_file_is_shown_as_it_was_known_on_an_earlier_day(book: None, signed_in: As) -> None:
    browser = signed_in("ann")
    browser.post(f"{F}note/", {"text": "later", "seen": "1"})
    every = browser.get(f"{F}history/").context["total"]
    assert every == len(ledger.entries(FLAGSHIP))
    day_of_loading = browser.get(f"{F}history/?known=2026-11-25").context["steps"]
    assert day_of_loading[-1]["entry"].seq == 1
    assert browser.get(f"{F}history/?known=2020-01-01").context["total"] == 0
    only = browser.get(f"{F}history/?kind=note").context["steps"]
    assert [step["kind"] for step in only] == ["note"]


def test_an_origin_leads_down_to_the_row(book: None, signed_in: As) -> None:
    assert "sheet X, row 2" in signed_in("ann").get(f"{F}history/").content.decode()


def test_charts_have_their_numbers_in_words_and_mark_nothing_by_colour_alone() -> None:
    chart = {
        "title": "Steps",
        "alt": "From one to two",
        "bars": [
            {"label": "Before <b>", "figure": "$1", "low": 0.0, "high": 0.5, "tone": "total"},
            {"label": "After", "figure": "$2", "low": 0.0, "high": 1.0, "tone": "total"},
        ],
    }
    drawn = charts.waterfall(chart, None)
    assert "Before &lt;b&gt;" in drawn
    assert drawn.count("<rect") == 2
    assert 'width="50.0"' in drawn
    stacked = charts.stacked(
        {"title": "t", "alt": "a", "keys": [{"tone": "paid", "label": "insurer"}],
         "rows": [{"label": "$5", "note": "insurer $5", "parts": [{"tone": "paid", "share": 1.0}]}]}
    )  # fmt: skip
    assert "insurer $5" in stacked


def test_the_language_is_the_persons_own_and_can_be_changed(
    book: None, signed_in: As, people: dict[str, Person]
) -> None:
    browser = signed_in("ann")
    browser.post("/language/", {"language": "fr", "next": F})
    assert Person.objects.get(pk=people["ann"].pk).language == "fr"
    assert "constatations" in browser.get(F).content.decode()
    browser.post("/language/", {"language": "xx", "next": F})
    assert Person.objects.get(pk=people["ann"].pk).language == "fr"


def test_a_visitor_is_spoken_to_in_the_browsers_language(db: None) -> None:
    page = Client().get("/sign-in/", headers={"Accept-Language": "fr-CA,fr;q=0.9"})
    assert "Mot de passe" in page.content.decode()


@pytest.mark.parametrize("frame", [charts.PAGE, charts.PHONE])
@pytest.mark.parametrize("near", [0.45, 0.6, 0.7, 0.75, 0.8, 0.9, 0.99])
def test_the_names_of_two_days_never_run_into_each_other(near: float, frame: charts.Frame) -> None:
    """A word takes ``LEAST`` units of the picture: "reconstruit" is the longest of them."""
    first, last = frame.x(near), frame.x(1.0)
    ends = []
    for x, after in ((first, last), (last, float("inf"))):
        at, anchor = charts._named_at(x, after, frame)
        start = {"start": at, "middle": at - charts.LEAST / 2, "end": at - charts.LEAST}[anchor]
        ends.append((start, start + charts.LEAST))
    assert ends[0][1] <= ends[1][0]
    assert ends[0][0] >= frame.left or frame is charts.PAGE
    assert ends[1][1] <= frame.wide
