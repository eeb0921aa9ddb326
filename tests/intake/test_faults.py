"""Values and faults are shown so that they can be printed and commented."""

from __future__ import annotations

import unicodedata
from datetime import date, datetime, time, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterday.core.words import words
from quarterday.intake.faults import Fault, Spot, shown
from tests.intake.books import said


@pytest.mark.parametrize(
    ("value", "text"),
    [
        ("two words", "two words"),
        (900.0, "900"),
        (12.5, "12.5"),
        (1e15, "1000000000000000"),
        (0.1 + 0.2, "0.3"),
        (True, "True"),
        (date(2024, 1, 31), "2024-01-31"),
        (datetime(2024, 1, 31, 14, 5), "2024-01-31 14:05:00"),  # noqa: DTZ001 - a cell has no zone
        (time(0, 0), "0"),
        (timedelta(0), "0"),
        (time(9, 30), "09:30:00"),
        ("a\nb", "aU+000Ab"),
        ("\ud800", "U+D800"),
        ("\u202eevil", "U+202Eevil"),
        ("\x1b[2J", "U+001B[2J"),
    ],
)
def test_a_value_is_shown_as_a_spreadsheet_would_and_without_odd_characters(
    value: object, text: str
) -> None:
    assert shown(value) == text


@given(st.text(st.characters(), max_size=300))
def test_what_is_shown_is_short_and_can_be_printed_and_encoded(text: str) -> None:
    found = shown(text)
    assert not {unicodedata.category(c) for c in found} & {"Cc", "Cf", "Cs", "Co", "Cn", "Zl", "Zp"}
    assert found.encode("utf-8").decode("utf-8") == found
    assert len(found) <= 61 * len("U+10FFFF")


def test_a_fault_says_where_what_and_the_remedy_as_far_as_it_knows() -> None:
    what, remedy = words("intake-not-a-date"), words("intake-not-a-date-remedy")
    spots = [
        Spot(""),
        Spot("Claims"),
        Spot("Claims", 7),
        Spot("Claims", None, 3, "DOL"),
        Spot("Claims", 7, 3, "DOL"),
    ]
    with_remedy = said(Fault("refused", spot, what, remedy) for spot in spots)
    told = " This is not a date. Write year, month and day, such as 2026-03-31."
    assert with_remedy == [
        told.strip(),
        f"Claims:{told}",
        f"Claims, row 7:{told}",
        f"Claims, column “DOL”:{told}",
        f"Claims, row 7, “DOL”:{told}",
    ]
    assert said([Fault("note", spots[4], what, value="soon")]) == [
        "Claims, row 7, “DOL”, “soon”: This is not a date."
    ]
    assert said([Fault("note", spots[0], what, value="soon")]) == ["“soon”: This is not a date."]
