"""YAML 1.1 turns some plain text into something else; none of it gets in silently.

The traps are those of YAML 1.1 (yaml.org, type repository: bool, int, float, timestamp).
"""

from __future__ import annotations

from datetime import date
from decimal import Decimal
from typing import Any

import pytest
import yaml
from hypothesis import given
from hypothesis import strategies as st

from quarterday.catalogue.problems import BadReference
from quarterday.catalogue.strict import read_yaml


def test_decimals_stay_exact() -> None:
    """0.1 is a Decimal of one tenth, not the nearest binary float."""
    assert read_yaml("a: 0.1", "f") == {"a": Decimal("0.1")}
    assert isinstance(read_yaml("a: 0.1", "f")["a"], Decimal)


@given(st.decimals(min_value=-(10**9), max_value=10**9, places=4))
def test_every_plain_decimal_comes_back_as_written(number: Decimal) -> None:
    assert read_yaml(f"a: {number:f}", "f") == {"a": number}


def test_dates_whole_numbers_and_true_are_read() -> None:
    assert read_yaml("{a: 2027-01-01, b: -12, c: true, d: false, e: null, f: text}", "f") == {
        "a": date(2027, 1, 1), "b": -12, "c": True, "d": False, "e": None, "f": "text",
    }  # fmt: skip


@pytest.mark.parametrize("word", ["NO", "ON", "no", "on", "Yes", "OFF", "True", "FALSE"])
def test_a_word_that_would_become_a_boolean_is_refused(word: str) -> None:
    """Ontario's code ON is true and a bare NO is false in YAML 1.1."""
    with pytest.raises(BadReference, match=f"f, line 2: the bare word {word} .* put it in quotes"):
        read_yaml(f"a: 1\ncode: {word}\n", "f")
    assert read_yaml(f'code: "{word}"', "f") == {"code": word}


@pytest.mark.parametrize("number", ["010", "0x1F", "12:30:45", "1_000", "0b11"])
def test_a_number_that_does_not_mean_what_it_shows_is_refused(number: str) -> None:
    """010 is eight, 12:30:45 is 45,045 and so on."""
    with pytest.raises(BadReference, match="does not read as the number it looks like"):
        read_yaml(f"a: {number}", "f")


@pytest.mark.parametrize("number", [".inf", "-.Inf", ".nan", "1_0.5", "1.5e+3", "1."])
def test_a_decimal_that_is_not_plain_is_refused(number: str) -> None:
    with pytest.raises(BadReference, match="not a plain decimal number"):
        read_yaml(f"a: {number}", "f")


def test_a_key_that_stands_twice_is_refused_with_its_line() -> None:
    with pytest.raises(BadReference, match="f, line 3: the key 'a' stands here twice"):
        read_yaml("a: 1\nb: 2\na: 3\n", "f")


def test_a_key_that_stands_twice_deep_inside_is_refused() -> None:
    with pytest.raises(BadReference, match="the key 'en' stands here twice"):
        read_yaml("- name: {en: one, en: two}\n", "f")


def test_a_date_with_a_time_is_refused() -> None:
    with pytest.raises(BadReference, match="has a time of day"):
        read_yaml("a: 2027-01-01 10:00:00", "f")


@pytest.mark.parametrize(
    "text", ["a: [1, 2", "a: b: c", "\tx: 1", "a: !!python/object:os.system x", "<<: {a: 1}",
             "a: 2026-13-45", "a: \x07", "a: *nowhere", "[1, 2]: x\n{a: 1}: y", "1: one",
             "[" * 20_000],
)  # fmt: skip
def test_what_cannot_be_read_gives_one_sentence_that_names_the_file(text: str) -> None:
    with pytest.raises(BadReference) as caught:
        read_yaml(text, "folder/file.yaml")
    assert len(caught.value.problems) == 1
    assert caught.value.problems[0].startswith("folder/file.yaml")


@given(st.text(max_size=60))
def test_any_text_is_read_or_refused_in_a_sentence(text: str) -> None:
    """Nothing but BadReference ever comes out, and what is read holds no binary float."""
    found, problems = told(text)
    assert all(problem.startswith("f") for problem in problems)
    assert not _floats(found)


def told(text: str) -> tuple[Any, tuple[str, ...]]:
    """Return what a text holds, or what is wrong with it."""
    try:
        return read_yaml(text, "f"), ()
    except BadReference as error:
        return None, error.problems


def _floats(found: Any) -> bool:
    if isinstance(found, dict):
        return any(map(_floats, [*found, *found.values()]))
    return any(map(_floats, found)) if isinstance(found, list) else isinstance(found, float)


def test_the_usual_loader_falls_into_the_traps() -> None:
    """The reason for this module: the library's own safe loader says nothing."""
    assert yaml.safe_load("{a: ON, b: 010, c: 12:30:45, d: 1, d: 2}") == {
        "a": True, "b": 8, "c": 45045, "d": 2,
    }  # fmt: skip
