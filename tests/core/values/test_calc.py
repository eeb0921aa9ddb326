"""Calculations on their own: published rows in and out, and inputs that cannot be used."""

from __future__ import annotations

from decimal import Decimal
from typing import Any

import pytest

from quarterday.catalogue.speech import Speech
from quarterday.core.given import Unusable
from quarterday.core.reference import Reference
from quarterday.core.values.calc import coinsurance, index_value

LANGUAGES = ("en", "fr")


def _told(done: Any) -> dict[str, Any]:
    return {key: value for key, value in done.items() if key != "steps"}


def test_coinsurance_gives_the_textbook_case(canada: Reference) -> None:
    """ISO CP 00 10, F.1, Example 1, from memory."""
    given = {"value": 250000, "required": "0.8", "carried": "100000", "loss": 40000,
             "deductible": 250}  # fmt: skip
    assert _told(coinsurance(given, canada)) == {
        "required_amount": "200000.00", "share": "0.5", "paid": "19750.00", "borne": "20250.00",
    }  # fmt: skip
    first = coinsurance({**given, "order": "deductible-first"}, canada)
    assert (first["paid"], first["borne"]) == ("19875.00", "20125.00")


def test_coinsurance_heeds_a_limit_of_its_own(canada: Reference) -> None:
    """ISO CP 00 30 (City of Santa Ana, page 98): the limit is the most that is paid."""
    given = {"value": 400000, "required": "0.5", "carried": 200000, "loss": 80000, "limit": 75000}
    assert coinsurance(given, canada)["paid"] == "75000.00"


def test_a_share_that_never_ends_is_cut_to_ten_places(canada: Reference) -> None:
    given = {"value": 1000000, "required": "0.9", "carried": 600000, "loss": 300000}
    done = coinsurance(given, canada)
    assert (done["share"], done["paid"]) == ("0.6666666667", "200000.00"), "no deductible is none"


COINSURANCE = {"value": 1, "required": "0.8", "carried": 1, "loss": 1, "deductible": 0}


@pytest.mark.parametrize(
    ("change", "wording", "key"),
    [
        ({"exces": 5}, "given-unknown-of", "exces"),
        ({"loss": "a lot"}, "given-number", "loss"),
        ({"loss": 0.5}, "given-number", "loss"),
        ({"required": "80"}, None, "required"),
        ({"carried": "-1"}, None, "carried"),
        ({"order": "both"}, None, "order"),
        ({"loss": None}, None, "loss"),
    ],
)
def test_coinsurance_refuses_what_it_cannot_use_by_its_name(
    canada: Reference, change: dict[str, object], wording: str | None, key: str
) -> None:
    with pytest.raises(Unusable) as refused:
        coinsurance({**COINSURANCE, **change}, canada)
    assert dict(refused.value.words.args)["key"] == key
    assert wording in (None, refused.value.words.id)


def test_coinsurance_names_what_is_missing(canada: Reference) -> None:
    with pytest.raises(Unusable) as refused:
        coinsurance({"value": 1, "required": "0.8", "carried": 1}, canada)
    assert refused.value.words.id == "given-missing-of"
    assert dict(refused.value.words.args)["key"] == "loss"


def test_index_value_takes_points_and_gives_the_published_factor(canada: Reference) -> None:
    """Statistics Canada, table 18-10-0276-01 (archived): Calgary 2019Q4 to 2023Q4 is 1.1729."""
    given = {"value": "1000000", "from": "2019-11-15", "to": "2023-11-15",
             "points": {"2019Q4": "103.5", "2023Q4": "121.4"}}  # fmt: skip
    assert _told(index_value(given, canada)) == {
        "factor": "1.1729468599", "value": "1172946.86", "projected": False, "release": None,
    }  # fmt: skip


@pytest.mark.parametrize(
    ("name", "series"),
    [("ON", "on"), ("on", "on"), ("Calgary", "calgary"), ("PE", "composite")],
)
def test_index_value_knows_provinces_and_series(canada: Reference, name: str, series: str) -> None:
    given = {"value": 1000, "from": "2020-02-15", "to": "2024-02-15", "geography": name}
    release = index_value(given, canada)["release"]
    assert release["geography"] == series
    assert release["released_on"] == canada.indices[series][-1].released_on.isoformat()


def test_index_value_projects_and_says_so(canada: Reference) -> None:
    given = {"value": 100, "from": "2026-05-15", "to": "2027-05-15", "geography": "on",
             "projected_rate": "0.04"}  # fmt: skip
    done = index_value(given, canada)
    assert (done["factor"], done["value"], done["projected"]) == ("1.04", "104.00", True)
    assert done["steps"][-1].id == "values-caution-projected-index"


def test_index_value_projects_at_the_dated_parameter_when_none_is_given(canada: Reference) -> None:
    given = {"value": 100, "from": "2026-05-15", "to": "2027-05-15", "geography": "on"}
    rate = canada.parameters["values.projected-index-rate"].values[-1].value
    assert Decimal(index_value(given, canada)["factor"]) == 1 + rate


INDEX = {"value": 100, "from": "2020-02-15", "to": "2021-02-15"}
POINTS = {"2020Q1": "100", "2020Q2": "110"}


@pytest.mark.parametrize(
    ("change", "wording"),
    [
        ({}, "values-calc-one-of"),
        ({"geography": "on", "points": POINTS}, "values-calc-one-of"),
        ({"geography": "atlantis"}, "values-calc-no-geography"),
        ({"geography": "on", "from": "2016-12-31"}, "values-calc-before"),
        ({"points": {"spring": "100"}}, "values-calc-quarter"),
        ({"points": POINTS}, "values-calc-no-rate"),
        ({"points": POINTS, "from": "2019-12-31"}, "values-calc-before"),
        ({"points": {}}, None),
        ({"points": {"2020Q1": "0"}}, None),
        ({"geography": "on", "from": "soon"}, "given-date"),
        ({"geography": "on", "value": 0}, None),
        ({"geography": "on", "projected_rate": "-1"}, None),
        ({"geography": "on", "start": "2020-01-01"}, "given-unknown-of"),
    ],
)
def test_index_value_refuses_what_it_cannot_use(
    canada: Reference, change: dict[str, object], wording: str | None
) -> None:
    with pytest.raises(Unusable) as refused:
        index_value({**INDEX, **change}, canada)
    assert wording in (None, refused.value.words.id)
    for language in LANGUAGES:
        assert Speech(canada, language).say(refused.value.words)


@pytest.mark.parametrize("language", LANGUAGES)
def test_the_steps_can_be_said(canada: Reference, language: str) -> None:
    speech = Speech(canada, language)
    done = [
        coinsurance({**COINSURANCE, "value": 100, "deductible": 1}, canada),
        coinsurance({**COINSURANCE, "required": 0}, canada),
        index_value({**INDEX, "to": "2029-01-01", "geography": "PE"}, canada),
        index_value({**INDEX, "points": POINTS, "projected_rate": "0.02"}, canada),
    ]
    said = [speech.say(step) for result in done for step in result["steps"]]
    assert len(said) == sum(len(result["steps"]) for result in done)
    assert all("{" not in sentence for sentence in said)
