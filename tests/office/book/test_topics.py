"""What the book says: each topic's sentence, picture and table tell the same numbers."""

from __future__ import annotations

import io
from dataclasses import asdict
from decimal import Decimal
from pathlib import Path

import pytest
from pikepdf import Pdf
from tests.office.book.conftest import DAY, decline_first_option

from quarterday.catalogue.load import reference
from quarterday.catalogue.speech import Speech
from quarterday.core.book.adds import WEEKS
from quarterday.core.book.sums import (
    Cover,
    Experience,
    Files,
    Offers,
    Stood,
    Sums,
    Values,
    Work,
)
from quarterday.office import experience as experience_office
from quarterday.office import shortfall
from quarterday.office.book import keeping
from quarterday.office.book.topics import TOPICS, told
from quarterday.office.book.topics.topic import Teller, Topic
from quarterday.office.book.topics.values import as_book
from quarterday.office.book.topics.work import weeks
from quarterday.papers.press import HERE, Press
from quarterday.store.book import Asked

MILLION = 100_000_000  # in cents
GIVEN = Sums(
    files={"": Files(9, 1, 1, 1)},
    work={"late": Work(3, 1, 0), "2026-11-23": Work(1), "2026-12-07": Work(0, 5, 0),
          "later": Work(0, 0, 9)},
    stood={"offered": Stood(5, 2, 1, 1_000_00), "bound": Stood(3, 0, 0, 2_000_00)},
    values={"ON": Values(4, 3, 1, 10 * MILLION, 11 * MILLION, 12 * MILLION, 2 * MILLION),
            "QC": Values(2, 0, 0, 5 * MILLION, 6 * MILLION, 5 * MILLION, 0)},
    causes={"fire": Experience(1, 1, 0, 30_000_00, 30_000_00),
            "water-escape": Experience(3, 4, 0, 90_000_00, 80_000_00)},
    years={"2025": Experience(8, 4, 40_000_00, 100_000_00, 90_000_00),
           "2026": Experience(8, 1, 60_000_00, 20_000_00, 20_000_00)},
    classes={"hall": Experience(8, 5, 100_000_00, 120_000_00, 110_000_00)},
    insurers={"": Experience(1, 0, 10_000_00), "=Larch()": Experience(7, 5, 90_000_00, 120_000_00,
                                                                     110_000_00)},
    provinces={"ON": Experience(8, 5, 100_000_00, 120_000_00, 110_000_00)},
    offers={"earthquake": Offers(4, 1, 2, 0, 0, 1, 800_00, 200_00, 350_00),
            "*": Offers(1, 1)},
    cover={"earthquake": Cover(6, 2, 2, 1, 3), "building": Cover(4, 4, 4)},
)  # fmt: skip


def teller(language: str = "en") -> Teller:
    return Teller(Speech(reference(), language), DAY)


def topic(id: str, sums: Sums = GIVEN, language: str = "en") -> Topic:
    return TOPICS[id](teller(language), sums)


def rows(found: Topic) -> list[dict[str, object]]:
    names = [field.id for field in found.table.fields]
    return [dict(zip(names, row, strict=True)) for row in found.table.rows]


SAID = {
    "id": ("said"),
    "work": (
        "4 steps are late. One falls due this week and next; "
        "the week of Dec 7, 2026 has the most: 5."
    ),
    "states": (
        "8 renewals: 2 have something late, and one has a step that can no longer be done in time."
    ),
    "values": (
        "Automatic increases added 13.3%; building costs rose 13.3%. "
        "The book is $0 ahead, 0% of what its buildings cost."
    ),
    "offers": (
        "4 options were offered: 1 taken, 2 declined, 1 not decided. "
        "What was declined would have cost $350 a year."
    ),
    "cover": (
        "3 gaps could really hurt; most often Earthquake: 3 of the 6 who need it. "
        "In all, what is needed is not in the terms 4 times."
    ),
    "causes": ("Water caused 75% of what 5 claims cost in 10 years: $90,000 of $120,000."),
    "years": ("2025 was the costliest year: $100,000 for 4 claims."),
    "classes": ("Claims cost 110% of the premium of 10 years, each counted up to $100,000."),
    "insurers": ("=Larch(), with the most premium: claims cost 122% of it (5 claims)."),
    "provinces": ("Ontario, with the most premium: claims cost 110% of it (5 claims)."),
}


@pytest.mark.parametrize("id", TOPICS)
def test_each_topic_begins_with_what_its_numbers_mean(id: str) -> None:
    """Reckoned by hand from the numbers above."""
    assert " ".join(topic(id).message.split()) == SAID[id]


@pytest.mark.parametrize("id", TOPICS)
@pytest.mark.parametrize("language", ["en", "fr"])
def test_the_picture_in_words_says_its_message_and_every_number_that_is_drawn(
    id: str, language: str
) -> None:
    found = topic(id, language=language)
    assert found.chart is not None
    assert found.message.strip() in found.chart.alt
    assert found.chart.title in found.chart.alt
    for row in found.chart.rows:
        assert row.label in found.chart.alt
        assert row.note in found.chart.alt
        assert 0 < sum(part.share for part in row.parts) <= 1.0005


@pytest.mark.parametrize("id", TOPICS)
@pytest.mark.parametrize("language", ["en", "fr"])
def test_a_book_without_anything_is_told_without_a_picture(id: str, language: str) -> None:
    found = topic(id, Sums(), language)
    assert found.chart is None
    assert found.message
    assert all(cell in {0, None, Decimal(0)} or isinstance(cell, str)
               for row in rows(found) for cell in row.values())  # fmt: skip


@pytest.mark.parametrize("id", TOPICS)
def test_a_table_has_a_heading_for_each_column_and_shows_some_of_them(id: str) -> None:
    found = topic(id)
    ids = [field.id for field in found.table.fields]
    assert len(set(ids)) == len(ids)
    assert set(found.shown) <= set(ids)
    assert len(found.fields()) == len(found.shown) <= 6
    assert all(len(row) == len(ids) for row in found.table.rows)
    headings = [field.heading for field in found.table.fields]
    assert len(set(headings)) == len(headings), "two columns never bear one heading"


def test_the_work_is_told_week_by_week_even_where_there_is_none() -> None:
    found = rows(topic("work"))
    assert [row["week"] for row in found] == weeks(DAY)
    assert len(found) == WEEKS + 2
    assert [row["steps"] for row in found if row["steps"]] == [4, 1, 5, 9]


def test_shares_of_the_causes_add_up_and_water_is_drawn_apart() -> None:
    found = topic("causes")
    assert [row["share"] for row in rows(found)] == [Decimal("0.7500"), Decimal("0.2500")]
    assert found.chart is not None
    assert [[part.tone for part in row.parts] for row in found.chart.rows] == [["borne"], ["paid"]]


def test_a_ratio_above_the_premium_fills_the_bar_and_leaves_nothing() -> None:
    found = topic("classes")
    assert found.chart is not None
    (row,) = found.chart.rows
    assert [(part.tone, part.share) for part in row.parts] == [("borne", 1.0)]
    assert rows(found)[0]["capped_ratio"] == Decimal("1.1000")


def test_a_year_without_claims_is_told_as_none_and_joined_as_each_language_does() -> None:
    """CLDR counts 0 as one in French, so that "un sinistre" would stand for none."""
    one = Experience(8, 1, 60_000_00, 20_000_00, 20_000_00)
    sums = Sums(years={"2025": Experience(8, 0, 40_000_00), "2026": one})
    pictures = {
        language: TOPICS["years"](teller(language), sums).chart for language in ("en", "fr")
    }
    assert pictures["fr"]
    assert pictures["en"]
    assert "2025 : 0 %, aucun sinistre" in pictures["fr"].alt.replace("\u00a0", " ")
    assert "2026 : 33 %, un sinistre" in pictures["fr"].alt.replace("\u00a0", " ")
    assert "2025: 0%, 0 claims" in pictures["en"].alt


def test_years_are_told_newest_first_and_as_years() -> None:
    found = topic("years")
    assert [row["year"] for row in rows(found)] == [2026, 2025]
    (at, field), *_ = found.fields()
    shown = [teller().shown(row[at], field) for row in found.table.rows]
    assert shown == ["2026", "2025"]


def test_what_is_not_an_option_stands_last_and_counts_in_no_sentence() -> None:
    found = topic("offers")
    assert [row["coverage"] for row in rows(found)] == ["earthquake", "*"]
    assert rows(found)[-1]["name"] == "other questions of the agendas"


def test_a_coverage_or_cause_that_no_catalogue_knows_keeps_its_id() -> None:
    odd = Sums(cover={"tent": Cover(1)}, causes={"meteor": Experience(1, 1, 0, 100, 100)})
    assert rows(topic("cover", odd))[0]["name"] == "tent"
    assert rows(topic("causes", odd))[0]["name"] == "meteor"


@pytest.mark.django_db
def test_the_page_shows_the_figures_of_the_commands(invented: list[str], tell: Teller) -> None:
    """One function computes a figure: shortfall and experience are what their commands print."""
    sums = keeping.counted(reference(), DAY, Asked())
    book = shortfall.of_the_book(reference(), DAY)
    assert asdict(as_book(sums)) == asdict(book)
    assert TOPICS["values"](tell, sums).message == tell.speech.say(shortfall.sentence(book))
    found = experience_office.plain(experience_office.of_the_book(reference(), DAY))
    for axis, id in (("cause", "causes"), ("class", "classes"), ("year", "years")):
        for row in rows(TOPICS[id](tell, sums)):
            line = found[axis][str(next(iter(row.values())))]
            assert (row["files"], row["claims"]) == (line["files"], line["claims"])
            assert f"{row['incurred']:.2f}" == line["incurred"]
            ratio = row.get("capped_ratio")
            assert ratio is None or f"{ratio:.4f}" == line["capped_ratio"]


@pytest.mark.django_db
def test_a_declined_option_is_told_with_its_price(invented: list[str]) -> None:
    terms = decline_first_option(invented)
    option = terms.options[0]
    sums = keeping.counted(reference(), DAY, Asked())
    found = {str(row["coverage"]): row for row in rows(topic("offers", sums))}
    assert found[option.coverage]["left"] == 1
    assert found[option.coverage]["price_left"] == (option.price or 0)
    assert "1 declined" in topic("offers", sums).message


@pytest.mark.django_db
def test_every_topic_is_told_of_an_invented_book_in_both_languages(
    invented: list[str], tell: Teller
) -> None:
    sums = keeping.counted(reference(), DAY, Asked())
    found = told(tell, sums)
    assert [one.id for one in found] == list(TOPICS)
    assert all(one.chart is not None for one in found)
    assert all(one.message.strip() and one.title for one in found)


PAPER = """#import "{papers}/chart.typ": stacked
#set document(title: "The book")
#let data = json(bytes(sys.inputs.data))
#set text(lang: "en")
= The book
#for chart in data.charts {{ stacked(chart) }}
"""


def test_paper_draws_the_definitions_that_the_desk_draws(tmp_path: Path) -> None:
    """One definition a picture: set as PDF/UA-1, which asks for the text alternative too."""
    template = tmp_path / "book.typ"
    template.write_text(PAPER.format(papers=HERE), encoding="utf-8")
    charts = [asdict(chart) for id in TOPICS if (chart := topic(id).chart)]
    assert len(charts) == len(TOPICS)
    pdf = Press(template, root=Path("/")).set({"charts": charts}, DAY)
    with Pdf.open(io.BytesIO(pdf)) as read:
        text = " ".join(str(one.get("/Alt", "")) for one in read.objects if hasattr(one, "get"))
        text = text.replace("’", "'")  # the press sets print's apostrophe
    for drawn in charts:
        assert drawn["title"] in text
