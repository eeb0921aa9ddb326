"""Index releases: a CSV of three columns, checked row by row, added to what is known."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from decimal import Decimal
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterday.catalogue.indices import ReleaseNote, read_release
from quarterday.catalogue.load import place_folder, reference
from quarterday.catalogue.problems import BadReference
from quarterday.core.dates import Quarter
from quarterday.core.reference import Cited, IndexRelease, Reference

Write = Callable[[str, str], Path]
CITED = Cited(title="A table", publisher="An office", checked_on=date(2026, 11, 6))
NOTE = ReleaseNote(file="new.csv", base="2023", released_on=date(2026, 11, 5), source=CITED)
HEAD = "geography,quarter,index\n"
YAML = """
file: new.csv
base: "2023"
released_on: 2026-11-05
source: {title: A table, publisher: An office, checked_on: 2026-11-06}
"""


def told(text: str) -> tuple[tuple[IndexRelease, ...], tuple[str, ...]]:
    """Return what a CSV's rows hold, or what is wrong with them."""
    try:
        return read_release(HEAD + text, NOTE, earlier()), ()
    except BadReference as error:
        return (), error.problems


def earlier() -> dict[str, IndexRelease]:
    points = {Quarter(2026, 1): Decimal(110), Quarter(2026, 2): Decimal(111)}
    release = IndexRelease(
        geography="on", base="2023", released_on=date(2026, 8, 27), points=points, source=CITED
    )
    return {"on": release}


def test_a_release_is_read_by_geography() -> None:
    text = HEAD + "on,2026Q1,110.0\nqc,2026Q1,112.5\non,2026Q2,110.7\n"
    found = {release.geography: release for release in read_release(text, NOTE)}
    assert found["on"].points == {Quarter(2026, 1): Decimal("110.0"),
                                  Quarter(2026, 2): Decimal("110.7")}  # fmt: skip
    assert found["qc"].released_on == date(2026, 11, 5)


def test_the_order_of_the_rows_does_not_matter() -> None:
    rows = ["on,2026Q2,110.7", "on,2025Q4,109", "on,2026Q1,110.0"]
    forwards = read_release(HEAD + "\n".join(rows), NOTE)
    assert forwards == read_release(HEAD + "\n".join(reversed(rows)), NOTE)


@pytest.mark.parametrize(
    ("rows", "said"),
    [
        ("on,2026Q1,110\non,2026Q1,111\n", "new.csv, line 3: on 2026Q1 stands here twice"),
        ("on,2026Q1,110\non,2026Q3,111\n", "new.csv: on has no index for 2026Q2; a gap"),
        ("on,2026Q1,0\n", "new.csv, line 2: the index 0 must be above zero"),
        ("on,2026Q1,-3\n", "new.csv, line 2: the index -3 must be above zero"),
        ("on,2026Q1,NaN\n", "line 2: the index NaN must be above zero"),
        ("on,2026Q1,\n", "line 2: the index '' is not a number"),
        ("on,2026Q1\n", "line 2: the index '' is not a number"),
        ('on,2026Q1,"110,5"\n', "line 2: the index '110,5' is not a number; write it like 109.9"),
        ("on,2026-Q1,110\n", "line 2: '2026-Q1' is not a quarter; write it like 2025Q4"),
        ("mars,2026Q1,110\n", "new.csv: the geography 'mars' is not known; use one of on"),
        ("", "new.csv: holds no index values"),
    ],
)
def test_each_fault_gets_its_sentence(rows: str, said: str) -> None:
    with pytest.raises(BadReference) as caught:
        read_release(HEAD + rows, NOTE, earlier())
    assert said in str(caught.value)
    assert len(caught.value.problems) == 1


def test_all_faults_of_a_file_are_told_at_once() -> None:
    rows = "on,2026Q1,0\non,Q1,110\nmars,2026Q1,110\n"
    with pytest.raises(BadReference) as caught:
        read_release(HEAD + rows, NOTE, earlier())
    assert len(caught.value.problems) == 3


@pytest.mark.parametrize("head", ["", "place,quarter,index\n", "geography;quarter;index\n"])
def test_other_columns_are_refused(head: str) -> None:
    with pytest.raises(BadReference, match="the first line must read geography,quarter,index"):
        read_release(head + "on,2026Q1,110\n", NOTE)


def test_a_release_of_new_quarters_keeps_the_earlier_ones() -> None:
    """A broker may type the newest quarter only; the rest of the series stands as published."""
    (found,) = read_release(HEAD + "on,2026Q3,112\n", NOTE, earlier())
    assert list(found.points) == [Quarter(2026, 1), Quarter(2026, 2), Quarter(2026, 3)]


def test_a_restated_quarter_replaces_the_earlier_figure() -> None:
    """Recent quarters are revised: Calgary's 2025Q3 went from 107.9 to 108.1."""
    (found,) = read_release(HEAD + "on,2026Q2,111.2\non,2026Q3,112\n", NOTE, earlier())
    assert found.points[Quarter(2026, 2)] == Decimal("111.2")
    assert found.points[Quarter(2026, 1)] == Decimal(110)


def test_new_quarters_that_leave_a_gap_to_the_earlier_ones_are_refused() -> None:
    with pytest.raises(BadReference, match="on has no index for 2026Q3"):
        read_release(HEAD + "on,2026Q4,113\n", NOTE, earlier())


def test_another_base_needs_the_whole_series() -> None:
    """Figures on 2017 = 100 and 2023 = 100 cannot be mixed in one series."""
    note = NOTE.model_copy(update={"base": "2030"})
    with pytest.raises(BadReference, match=r"2030 = 100, before it was 2023; give the whole"):
        read_release(HEAD + "on,2026Q3,80\n", note, earlier())
    (whole,) = read_release(HEAD + "on,2026Q1,79\non,2026Q2,80\n", note, earlier())
    assert whole.base == "2030"


@given(st.text(max_size=80))
def test_any_text_is_read_or_refused_in_sentences(text: str) -> None:
    found, problems = told(text)
    assert bool(found) != bool(problems)
    assert all(problem.startswith("new.csv") for problem in problems)
    assert all(value > 0 for release in found for value in release.points.values())


def test_a_brokerages_release_is_used_from_its_day_on(own: Write, canada: Reference) -> None:
    own("indices/new.yaml", YAML)
    found = reference("canada", own("indices/new.csv", HEAD + "on,2026Q3,115\n"))
    before, after = date(2026, 11, 4), date(2026, 11, 5)
    assert found.index("on", before) == canada.index("on", before)
    assert found.index("on", after).points[Quarter(2026, 3)] == Decimal(115)
    assert found.index("qc", after) == canada.index("qc", after)


def test_a_release_without_its_note_is_refused(own: Write) -> None:
    with pytest.raises(BadReference, match=r"indices/new.csv: no YAML file beside it"):
        reference("canada", own("indices/new.csv", HEAD + "on,2026Q3,115\n"))


def test_a_note_without_its_release_is_refused(own: Write) -> None:
    with pytest.raises(BadReference, match=r"indices/new.csv: is named by its YAML file"):
        reference("canada", own("indices/new.yaml", YAML))


def test_a_note_that_says_too_little_is_refused(own: Write) -> None:
    with pytest.raises(BadReference, match=r"indices/new.yaml, entry new, field released_on"):
        reference("canada", own("indices/new.yaml", YAML.replace("released_on: 2026-11-05", "")))


def test_a_release_of_an_unknown_geography_is_refused(own: Write) -> None:
    own("indices/new.yaml", YAML)
    with pytest.raises(BadReference, match="the geography 'mars' is not known"):
        reference("canada", own("indices/new.csv", HEAD + "mars,2026Q3,115\n"))


def test_the_shipped_csv_is_a_release_a_brokerage_could_add(canada: Reference) -> None:
    """Output is input: the shipped file passes the check for a brokerage's own."""
    text = (place_folder("canada") / "indices" / "bcpi_nonres.csv").read_text(encoding="utf-8")
    newest = {geography: releases[-1] for geography, releases in canada.indices.items()}
    found = {release.geography: release.points for release in read_release(text, NOTE, newest)}
    assert found == {geography: release.points for geography, release in newest.items()}


# --- a base that changes on the way

# Statistics Canada, The Daily of 2024-08 and 2024-11 as transcribed: Edmonton, 2017 = 100 until
# 2024Q2, 2023 = 100 from 2024Q3.
EDMONTON = (("2024Q1", "136.7"), ("2024Q2", "139.6"), ("2024Q3", "105.4"), ("2024Q4", "106.0"))


def _csv(rows: tuple[tuple[str, str], ...]) -> str:
    return "".join(f"edmonton,{quarter},{index}\n" for quarter, index in rows)


def test_a_series_whose_base_changes_on_the_way_is_refused_in_a_sentence() -> None:
    with pytest.raises(BadReference) as refused:
        read_release(HEAD + _csv(EDMONTON), NOTE)
    (said,) = refused.value.problems
    assert said.startswith("new.csv: edmonton goes from 139.6 to 105.4 in 2024Q3")
    assert "whole series on one base" in said


@pytest.mark.parametrize("part", [EDMONTON[:2], EDMONTON[2:]])
def test_each_part_on_its_own_base_is_read(part: tuple[tuple[str, str], ...]) -> None:
    (found,) = read_release(HEAD + _csv(part), NOTE)
    assert len(found.points) == 2


def test_the_fastest_quarter_ever_shipped_is_no_leap() -> None:
    """6.25 %, Ottawa in the spring of 2021, in the shipped release of table 18-10-0289-01."""
    fastest = max(
        abs(r.points[q] / r.points[q.shifted(-1)] - 1)
        for of_it in reference().indices.values() for r in of_it
        for q in r.points if q.shifted(-1) in r.points
    )  # fmt: skip
    assert Decimal("0.06") < fastest < Decimal("0.1")


@pytest.mark.parametrize(("index", "leaps"), [("122.1", 0), ("122.2", 1), ("99.9", 0), ("99.8", 1)])
def test_a_tenth_in_a_quarter_is_let_pass_and_more_is_not(index: str, leaps: int) -> None:
    """From 111 in the quarter before."""
    assert len(told(f"on,2026Q3,{index}\n")[1]) == leaps


def test_a_leap_against_the_earlier_release_is_seen_too() -> None:
    """The new rows alone are even; joined to what was known they are on another base."""
    assert "goes from 111 to 88" in told("on,2026Q3,88\non,2026Q4,88.5\n")[1][0]


def test_revised_quarters_replace_the_earlier_ones_and_the_rest_stays() -> None:
    """Calgary's 2025Q3 was first published as 107.9 and revised to 108.1 in January 2026
    (The Daily 2025-11-04 and 2026-01-27)."""
    first = IndexRelease(
        geography="calgary", base="2023", released_on=date(2025, 11, 4), source=CITED,
        points={Quarter(2025, 2): Decimal("107.5"), Quarter(2025, 3): Decimal("107.9")},
    )  # fmt: skip
    text = "calgary,2025Q3,108.1\ncalgary,2025Q4,108.5\n"
    (second,) = read_release(HEAD + text, NOTE, {"calgary": first})
    assert [str(second.points[q]) for q in sorted(second.points)] == ["107.5", "108.1", "108.5"]
    assert first.points[Quarter(2025, 3)] == Decimal("107.9"), "the earlier release stays"
