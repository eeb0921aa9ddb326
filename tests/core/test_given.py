"""Inputs of a calculation are read exactly, or refused in a sentence that names the key."""

from __future__ import annotations

from datetime import date
from decimal import Decimal
from typing import Any, Literal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterday.catalogue.speech import Speech
from quarterday.core.file.records.base import Day, Number, Part
from quarterday.core.given import Unusable, read
from quarterday.core.reference import Reference


class Leaf(Part):
    kind: Literal["red", "green"]


class Tree(Part):
    height: Number
    felled: Day | None = None
    planted: date
    leaves: tuple[Leaf, ...] = ()


GOOD: dict[str, Any] = {"height": "12.5", "planted": "2026-11-25"}


def test_good_inputs_are_read_exactly() -> None:
    assert read(Tree, GOOD) == Tree(height=Decimal("12.5"), planted=date(2026, 11, 25))


@pytest.mark.parametrize(
    ("more", "wording", "key"),
    [
        ({"weight": 1}, "given-unknown-of", "weight"),
        ({"felled": "9999-12-31"}, "given-far", "felled"),
        ({"felled": "1899-12-31"}, "given-far", "felled"),
        ({"felled": "2027-02-30"}, "given-date", "felled"),
        ({"leaves": [{"kind": "red", "size": 1}]}, "given-unknown", "leaves.0.size"),
        ({"leaves": [{}]}, "given-missing", "leaves.0.kind"),
        ({"leaves": [{"kind": "blue"}]}, "given-choice", "leaves.0.kind"),
        ({"leaves": "many"}, "given-wrong", "leaves"),
        ({"height": "tall"}, "given-number", "height"),
        ({"height": 12.5}, "given-number", "height"),  # a float is not exact
        ({"height": True}, "given-number", "height"),
        ({"height": "NaN"}, "given-number", "height"),
        ({"height": "Infinity"}, "given-number", "height"),
        ({"height": "1e12"}, "given-number", "height"),  # a trillion
        ({"planted": "soon"}, "given-date", "planted"),
        ({"planted": "2026-02-30"}, "given-date", "planted"),
    ],
)
def test_what_is_wrong_is_named_by_its_key(more: dict[str, Any], wording: str, key: str) -> None:
    with pytest.raises(Unusable) as refused:
        read(Tree, {**GOOD, **more})
    said = refused.value.words
    assert (said.id, dict(said.args)["key"]) == (wording, key)


@pytest.mark.parametrize("language", ["en", "fr"])
def test_the_choices_are_said(canada: Reference, language: str) -> None:
    with pytest.raises(Unusable) as refused:
        read(Leaf, {"kind": "blue"})
    said = Speech(canada, language).say(refused.value.words)
    assert "red" in said
    assert "green" in said


anything = st.recursive(
    st.none() | st.booleans() | st.integers() | st.text(max_size=8) | st.floats(),
    lambda inner: (
        st.lists(inner, max_size=3) | st.dictionaries(st.text(max_size=6), inner, max_size=3)
    ),
    max_leaves=6,
)


@given(st.dictionaries(st.sampled_from(["height", "planted", "leaves", "x"]), anything))
def test_anything_is_read_or_refused_with_a_sentence_that_can_be_said(
    canada: Reference, some: dict[str, Any]
) -> None:
    found: Tree | Unusable
    try:
        found = read(Tree, some)
    except Unusable as refused:
        found = refused
    assert isinstance(found, Tree) or Speech(canada, "fr").say(found.words)
