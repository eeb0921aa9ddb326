"""The chart of the book's increases against building costs, drawn from lines made by hand."""

from __future__ import annotations

from decimal import Decimal

import pytest
from defusedxml import ElementTree

from quarterday.catalogue.load import reference
from quarterday.catalogue.speech import Speech
from quarterday.core.values.book import Book, Line
from quarterday.office import shortfall

SVG = "{http://www.w3.org/2000/svg}"
DEEP, AMBER = shortfall.DEEP, shortfall.AMBER


def line(grown: str, cost: str, buildings: int = 1) -> Line:
    valued = Decimal(1_000_000)
    return Line(
        buildings, int(Decimal(cost) > Decimal(grown)), valued, valued * Decimal(grown),
        valued * Decimal(cost), Decimal(5),
    )  # fmt: skip


def book(**lines: Line) -> Book:
    made = Book("CAD")
    for province, of_it in lines.items():
        made.add(province, of_it)
    return made


def bars(made: Book, colour: str, language: str = "en") -> list[tuple[float, float]]:
    """Return where each bar of a colour begins and how wide it is; the key left out."""
    root = ElementTree.fromstring(shortfall.svg(made, Speech(reference(), language)))
    found = [r for r in root.findall(f"{SVG}rect") if r.get("fill") == colour][1:]
    return [(float(r.get("x", "")), float(r.get("width", ""))) for r in found]


def test_bars_of_all_provinces_are_to_one_scale() -> None:
    made = book(ON=line("1.1", "1.4"), QC=line("1.2", "1.3"))
    (_, first), (_, second) = bars(made, DEEP)
    assert second == pytest.approx(2 * first, abs=0.3)
    (_, first), (_, second) = bars(made, AMBER)
    assert first / second == pytest.approx(4 / 3, rel=0.01)


def test_costs_that_fell_are_drawn_to_the_left_of_nothing() -> None:
    made = book(MB=line("1.1", "0.9"))
    ((start, _),) = bars(made, DEEP)
    ((left, wide),) = bars(made, AMBER)
    assert left + wide == pytest.approx(start, abs=0.2)


def test_the_largest_gap_comes_first_and_equals_by_name() -> None:
    made = book(QC=line("1", "1.1"), BC=line("1", "1.1"), ON=line("1", "1.3"), MB=line("1.2", "1"))
    assert [province for province, _ in shortfall.ordered(made)] == ["ON", "BC", "QC", "MB"]


@pytest.mark.parametrize("language", ["en", "fr"])
@pytest.mark.parametrize(
    ("made", "which"),
    [
        (book(), "none"),
        (book(ON=line("1.1", "1.3")), "behind"),
        (book(ON=line("1.3", "1.1")), "ahead"),
        (book(ON=line("1.1", "1.1")), "ahead"),
    ],
)
def test_the_conclusion_is_said_in_both_languages(made: Book, which: str, language: str) -> None:
    said = shortfall.sentence(made)
    assert said.id == f"shortfall-{which}"
    assert Speech(reference(), language).say(said)
    assert ElementTree.fromstring(shortfall.svg(made, Speech(reference(), language))) is not None


def test_the_alternative_has_a_sentence_a_province() -> None:
    made = book(ON=line("1.1", "1.3"), QC=line("1.1", "1.25"))
    told = shortfall.alternative(made, Speech(reference(), "en"))
    assert told == (
        "Automatic increases since the valuations against the rise of building costs. "
        "Ontario: increases 10%, costs 30%, gap $200,000. "
        "Quebec: increases 10%, costs 25%, gap $150,000."
    )


def test_plain_figures_are_exact_text() -> None:
    told = shortfall.plain(book(ON=line("1.1", "1.3", 3)))["provinces"]["ON"]
    assert (told["gap"], told["behind_share"]) == ("200000.00", "0.1538")
    assert (told["buildings"], told["increases"], told["index"]) == (3, "0.1000", "0.3000")
