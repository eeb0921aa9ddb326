"""The book's shortfall in the terminal: a table, JSON, and a chart with its text alternative."""

from __future__ import annotations

import json
from decimal import Decimal
from pathlib import Path

import pytest
from defusedxml import ElementTree
from tests.cli.conftest import Run, printed

SVG = "{http://www.w3.org/2000/svg}"
AS_OF = ("--as-of", "2026-11-25")


def test_the_provinces_add_up_to_the_book(loaded: Run) -> None:
    told = printed(loaded("shortfall", *AS_OF, "--json"))
    assert set(told["provinces"]) == {"ON", "QC"}
    for name in ("valued", "grown", "cost", "gap", "short"):
        parts = sum(Decimal(line[name]) for line in told["provinces"].values())
        assert parts == Decimal(told["total"][name]), name
    total = told["total"]
    assert Decimal(total["gap"]) == Decimal(total["cost"]) - Decimal(total["grown"])


def test_the_largest_gap_comes_first(loaded: Run) -> None:
    told = printed(loaded("shortfall", *AS_OF, "--json"))
    gaps = [Decimal(line["gap"]) for line in told["provinces"].values()]
    assert gaps == sorted(gaps, reverse=True)


def test_the_table_begins_with_the_conclusion(loaded: Run) -> None:
    told = loaded("shortfall", *AS_OF).stdout
    assert told.startswith("Automatic increases added")
    assert "behind" in told
    assert "Ontario" in told
    assert "Quebec" in told


@pytest.mark.parametrize(("language", "place"), [("en", "Quebec"), ("fr", "Québec")])
def test_the_chart_says_in_words_what_it_shows(
    loaded: Run, tmp_path: Path, language: str, place: str
) -> None:
    file = tmp_path / "chart.svg"
    told = printed(
        loaded("--language", language, "shortfall", *AS_OF, "--json", "--out", str(file))
    )
    root = ElementTree.parse(file).getroot()
    assert root is not None
    assert root.get("role") == "img"
    assert root.get("aria-labelledby") == "title told"
    assert root.findtext(f"{SVG}desc") == told["in_words"]
    assert place in told["in_words"]
    assert root.findtext(f"{SVG}title")


def test_the_chart_has_two_bars_a_province_as_long_as_their_figures(
    loaded: Run, tmp_path: Path
) -> None:
    file = tmp_path / "chart.svg"
    told = printed(loaded("shortfall", *AS_OF, "--json", "--out", str(file)))
    root = ElementTree.parse(file).getroot()
    assert root is not None
    colours = {"increases": "#17527a", "index": "#e3a32f"}
    for name, colour in colours.items():
        bars = [r for r in root.findall(f"{SVG}rect") if r.get("fill") == colour][1:]  # not the key
        wide = [float(bar.get("width", "0")) for bar in bars]
        ratios = [float(line[name]) for line in told["provinces"].values()]
        assert len(wide) == len(ratios) == 2
        assert wide[0] / wide[1] == pytest.approx(ratios[0] / ratios[1], rel=0.01)


def test_nothing_of_the_chart_lies_outside_its_frame(loaded: Run, tmp_path: Path) -> None:
    file = tmp_path / "chart.svg"
    loaded("shortfall", *AS_OF, "--out", str(file))
    root = ElementTree.parse(file).getroot()
    assert root is not None
    _, _, wide, high = map(float, root.get("viewBox", "").split())
    for mark in (*root.findall(f"{SVG}rect"), *root.findall(f"{SVG}text")):
        assert 0 <= float(mark.get("x", "0")) <= wide
        assert 0 <= float(mark.get("y", "0")) <= high


def test_an_empty_book_is_told_in_a_sentence(run: Run) -> None:
    done = run("shortfall", *AS_OF)
    assert done.exit_code == 0
    assert done.stdout.startswith("No building of the book has both")


def test_a_review_names_the_index_release_it_used(loaded: Run) -> None:
    told = loaded("review", "HW-1001", *AS_OF).stdout
    assert "Building costs: index for Ontario, published on" in " ".join(told.split())
    plain = printed(loaded("review", "HW-1001", *AS_OF, "--json"))
    assert [release["geography"] for release in plain["releases"]] == ["on"]


def test_a_folder_of_ones_own_changes_what_is_reviewed(loaded: Run, tmp_path: Path) -> None:
    folder = tmp_path / "ours" / "parameters"
    folder.mkdir(parents=True)
    (folder / "ours.yaml").write_text(
        "- id: values.projected-index-rate\n  values:\n    - since: 2026-11-01\n"
        "      value: 0.09\n"
        "      source: {title: Partners' decision, publisher: Our office,"
        " checked_on: 2026-11-02}\n",
        encoding="utf-8",
    )
    own = ("--reference", str(folder.parent))
    short = [
        Decimal(printed(loaded(*option, "shortfall", *AS_OF, "--json"))["total"]["short"])
        for option in ((), own)
    ]
    assert short[1] > short[0]


def test_a_folder_that_is_not_there_is_told_in_a_sentence(loaded: Run, tmp_path: Path) -> None:
    done = loaded("--reference", str(tmp_path / "nowhere"), "review", "HW-1001", *AS_OF)
    assert done.exit_code == 1
    assert done.stderr.startswith("There is no folder")


def test_the_income_worksheet_is_run_on_its_own(run: Run) -> None:
    """abundance.ca, Plan to Give this Summer: about 30 % of a year's giving in December."""
    given = json.dumps({"revenue": {"donations": "400000"}, "months": 1})
    done = printed(run("calc", "income", "--json", given))
    assert (done["need"], done["worst_start"]) == ("120000.00", 12)
    assert done["steps"]
