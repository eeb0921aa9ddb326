"""Canonical JSON, and where an entry came from."""

from __future__ import annotations

import json

import pytest
from hypothesis import given
from hypothesis import strategies as st
from pydantic import ValidationError

from quarterday.core.file.entry import Origin, Place, canonical

JSON = st.recursive(
    st.none() | st.booleans() | st.integers() | st.text(),
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(st.text(), inner, max_size=3),
)


@given(JSON)
def test_canonical_json_is_json(value: object) -> None:
    assert json.loads(canonical(value)) == value


@given(st.dictionaries(st.text(), JSON))
def test_the_order_of_names_makes_no_difference(value: dict[str, object]) -> None:
    turned = dict(reversed(value.items()))
    assert canonical(turned) == canonical(value)


def test_canonical_json_has_no_spaces_and_keeps_letters_as_they_are() -> None:
    """As RFC 8785 (JSON Canonicalization Scheme) writes such values."""
    assert canonical({"b": ["é", 1], "a": None}) == '{"a":null,"b":["é",1]}'


@pytest.mark.parametrize("number", [float("nan"), float("inf")])
def test_what_json_has_no_word_for_is_refused(number: float) -> None:
    with pytest.raises(ValueError, match="JSON"):
        canonical(number)


def test_an_origin_says_nothing_that_was_not_given() -> None:
    origin = Origin(way="csv", places=(Place(sheet="Claims", row=2),))
    said = origin.model_dump(mode="json", exclude_defaults=True)
    assert said == {"way": "csv", "places": [{"row": 2, "sheet": "Claims"}]}
    assert Origin.model_validate_json(json.dumps(said)) == origin


@pytest.mark.parametrize("given_", [{"way": "e-mail"}, {"way": "csv", "colour": "red"}, {}])
def test_an_origin_of_another_kind_is_refused(given_: dict[str, str]) -> None:
    with pytest.raises(ValidationError):
        Origin.model_validate(given_)
